"""Who works here: added, given links, changed, covered, moved from. Each change asks once more who is asking."""

from datetime import datetime

from fastapi import APIRouter
from starlette.responses import Response

from reminders.errors import BadInput
from reminders.flows import audit, sign_in, staffing
from reminders.store import clients, staff_view
from reminders.store.db import Tx
from reminders.store.tables import Staff
from reminders.web import auth, sight
from reminders.web.access_rules import ROLES
from reminders.web.auth import Person
from reminders.web.deps import AppDep, FormDep, PersonDep
from reminders.web.pages import PagesDep, see

router = APIRouter(include_in_schema=False)


@router.get("/staff")
def staff_page(app: AppDep, pages: PagesDep, person: PersonDep) -> Response:
    """Show everyone who works here, with what hangs on her."""
    with app.db.read() as tx:
        clinic = clients.the_clinic(tx, person.clinic_id)
        rows = staff_view.team(tx, person.clinic_id)
    return pages.show("staff.html", rows=rows, roles=ROLES, clinic=clinic)


@router.post("/staff")
def add(app: AppDep, person: PersonDep, form: FormDep) -> Response:
    """Add a staff member and mail her the first sign-in link."""
    now = app.clock()
    with app.db.begin() as tx:
        clinic = clients.the_clinic(tx, person.clinic_id)
        staff = staffing.add(
            tx,
            clinic,
            form.text("role"),
            form.text("name", most=120),
            form.text("email", most=320),
            form.text("mobile", most=40),
            person.email,
            now,
        )
        sign_in.mail_link(tx, clinic, staff, app.settings.public_url, now, first=True)
    return see("/staff", "added")


@router.post("/staff/{staff_id}")
def change(app: AppDep, person: PersonDep, form: FormDep, staff_id: int) -> Response:
    """Change a role, a mobile, cover, or switch somebody off; her sessions end when her role does."""
    now = app.clock()
    with app.db.begin() as tx:
        staff = sight.staff_seen(tx, person.clinic_id, staff_id)
        role, was_active = staff.role, staff.is_active
        staffing.change(
            tx, staff, form.text("role"), form.checked("is_active"), form.text("mobile", most=40), person.email, now
        )
        staffing.set_cover(
            tx, staff, form.whole("cover_id") or None, form.day("cover_from", "From"), form.day("cover_until", "Until")
        )
        if form.checked("no_code"):
            staff.totp_secret = ""
            audit.record(tx, person.clinic_id, person.email, "second factor taken away", None, {"staff": staff.id}, now)
        tx.add(staff)
        if staff.role != role or staff.is_active != was_active:
            auth.end_all_sessions(tx, staff_id, now)
    return see("/staff", "saved")


@router.post("/staff/{staff_id}/link")
def link(app: AppDep, person: PersonDep, staff_id: int) -> Response:
    """Mail somebody a new sign-in link."""
    now = app.clock()
    with app.db.begin() as tx:
        staff = sight.staff_seen(tx, person.clinic_id, staff_id)
        sign_in.mail_link(
            tx, clients.the_clinic(tx, person.clinic_id), staff, app.settings.public_url, now, first=is_new(tx, staff)
        )
        record(tx, person, "sign-in link mailed", staff, now)
    return see("/staff", "link")


def is_new(tx: Tx, staff: Staff) -> bool:
    """Return whether somebody has never signed in: her link lives a day."""
    return staff_view.has_never_signed_in(tx, staff.id or 0)


def record(tx: Tx, person: Person, action: str, staff: Staff, now: datetime) -> None:
    """Write a line of the log about a colleague."""
    audit.record(tx, person.clinic_id, person.email, action, None, {"staff": staff.id}, now)


@router.post("/staff/{staff_id}/move")
def move(app: AppDep, person: PersonDep, form: FormDep, staff_id: int) -> Response:
    """Give all of somebody's clients to a colleague."""
    now = app.clock()
    to_id = form.whole("to", "The colleague")
    if to_id is None:
        raise BadInput("Choose the colleague who takes over.")
    with app.db.begin() as tx:
        staff = sight.staff_seen(tx, person.clinic_id, staff_id)
        staffing.move_clients(tx, staff, sight.staff_seen(tx, person.clinic_id, to_id), person.email, now)
    return see("/staff", "moved")
