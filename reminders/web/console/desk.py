"""The desk's lists: clients, what to look at, how messages fare. Contacts, consent, delivery and counts only."""

from datetime import timedelta

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.schedule import local_date
from reminders.flows import audit
from reminders.store import clients, desk_view
from reminders.web import sight
from reminders.web.deps import AppDep, PersonDep
from reminders.web.pages import PagesDep

router = APIRouter(include_in_schema=False)

STATES = ("", "active", "invited", "opted_out", "closed")
DELIVERY_DAYS = 14


@router.get("/clients")
def clients_page(
    app: AppDep, pages: PagesDep, person: PersonDep, q: str = "", state: str = "", after: int = 0
) -> Response:
    """Show the clients she may see, a page at a time, found by name, address or chart number."""
    now = app.clock()
    words, wanted = q.strip()[:80], state if state in STATES else ""
    with app.db.begin() as tx:
        seen = sight.sight_of(tx, person, now)
        found = desk_view.clients_found(tx, seen.clinic_id, seen.therapist_ids, words, wanted, max(after, 0))
        shown = found[: desk_view.PAGE]
        lines = desk_view.lines(tx, shown, now)
        ids = [client.id for client in shown]
        audit.record(tx, person.clinic_id, person.email, "client list viewed", None, {"clients": ids}, now)
    return pages.show(
        "clients.html",
        lines=lines,
        q=words,
        state=wanted,
        states=STATES,
        more=shown[-1].id if len(found) > desk_view.PAGE else None,
    )


@router.get("/work")
def work_page(app: AppDep, pages: PagesDep, person: PersonDep) -> Response:
    """Show what the desk should look at."""
    now = app.clock()
    with app.db.begin() as tx:
        clinic = clients.the_clinic(tx, person.clinic_id)
        todo = desk_view.work_list(tx, clinic, now)
        counts = desk_view.counts(tx, person.clinic_id, local_date(now, clinic.time_zone))
        audit.record(tx, person.clinic_id, person.email, "work list viewed", None, {"things": todo.count}, now)
    return pages.show("work.html", todo=todo, counts=counts, clinic=clinic)


@router.get("/delivery")
def delivery_page(app: AppDep, pages: PagesDep, person: PersonDep) -> Response:
    """Show how messages fared in the last two weeks."""
    now = app.clock()
    since = now - timedelta(days=DELIVERY_DAYS)
    with app.db.begin() as tx:
        rows = desk_view.delivery(tx, person.clinic_id, since)
        failures = desk_view.failures(tx, person.clinic_id, since)
        audit.record(tx, person.clinic_id, person.email, "delivery viewed", None, {"failures": len(failures)}, now)
    return pages.show("delivery.html", rows=rows, failures=failures, days=DELIVERY_DAYS)
