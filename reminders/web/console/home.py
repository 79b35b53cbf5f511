"""The start page: each role is led to the page where its work is."""

from fastapi import APIRouter
from starlette.responses import Response

from reminders.web.access_rules import ADMIN, RECORDS
from reminders.web.deps import PersonDep
from reminders.web.pages import see

router = APIRouter(include_in_schema=False)

STARTS = {ADMIN: "/work", RECORDS: "/audit"}


@router.get("/")
def home(person: PersonDep) -> Response:
    """Lead to the day's page, the desk's list or the log."""
    return see(STARTS.get(person.role, "/today"))
