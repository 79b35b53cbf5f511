"""The levels of the rules: a clinic's, a therapist's own, one client's, and what changed ones would have raised."""

from collections.abc import Mapping
from typing import Any

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.levels import DEFAULTS, FACTS, checked
from reminders.errors import BadInput
from reminders.flows import alert as alerts
from reminders.flows import audit, rehearse
from reminders.store import clients
from reminders.store.tables import Staff
from reminders.web import sight
from reminders.web.deps import AppDep, FormDep, PersonDep
from reminders.web.forms import Form
from reminders.web.pages import Pages, PagesDep, see

router = APIRouter(include_in_schema=False)

WEEKS = 8


@router.get("/levels")
def levels_page(app: AppDep, pages: PagesDep, person: PersonDep) -> Response:
    """Show the levels that hold for her clients, or for the clinic when she leads it."""
    with app.db.read() as tx:
        clinic = clients.the_clinic(tx, person.clinic_id)
        staff = sight.staff_seen(tx, person.clinic_id, person.staff_id)
        shares = alerts.shares(tx, clinic)
    own = clinic.levels if person.role == "lead" else staff.levels
    below = {} if person.role == "lead" else clinic.levels
    return shown(pages, own, below, whose="clinic" if person.role == "lead" else "you", action="/levels", shares=shares)


def shown(
    pages: Pages,
    own: Mapping[str, Any],
    below: Mapping[str, Any],
    *,
    whose: str,
    action: str,
    client: Any = None,
    result: Any = None,
    shares: Any = None,
    wrong: str = "",
) -> Response:
    """Show the form: each level with its default, what holds without a change, and the change."""
    rows = [
        {
            "name": name,
            "fact": fact,
            "default": getattr(DEFAULTS, name),
            "stands": below.get(name, getattr(DEFAULTS, name)),
            "own": own.get(name, ""),
        }
        for name, fact in FACTS.items()
        if client is not None or not fact.client_only
    ]
    values = {"rows": rows, "whose": whose, "action": action, "client": client, "result": result, "wrong": wrong}
    return pages.show("levels.html", status=422 if wrong else 200, shares=shares or {}, weeks=WEEKS, **values)


def levels_in(form: Form, *, client: bool = False) -> dict[str, int]:
    """Return the levels that the form changes; raises BadInput with one sentence."""
    given = {name: form.whole(name, name.replace("_", " "), most=10_000) for name in FACTS if form.text(name)}
    try:
        return checked({name: value for name, value in given.items() if value is not None}, client=client)
    except ValueError as error:
        raise BadInput(str(error)) from None


@router.post("/levels")
def save_levels(app: AppDep, person: PersonDep, form: FormDep) -> Response:
    """Keep changed levels for her clients, or for the clinic when she leads it."""
    now = app.clock()
    changes = levels_in(form)
    with app.db.begin() as tx:
        row: Any = tx.get(Staff, person.staff_id)
        if person.role == "lead":
            row = clients.the_clinic(tx, person.clinic_id)
        row.levels = changes
        tx.add(row)
        whose = "clinic" if person.role == "lead" else "own"
        audit.record(tx, person.clinic_id, person.email, "levels changed", None, {"whose": whose, **changes}, now)
    return see("/levels", "saved")


@router.post("/levels/rehearse")
def rehearse_levels(app: AppDep, pages: PagesDep, person: PersonDep, form: FormDep) -> Response:
    """Show what changed levels would have raised over the clinic's own record; nothing is sent or kept."""
    now = app.clock()
    try:
        changes = levels_in(form)
    except BadInput as error:
        return shown(pages, {}, {}, whose="you", action="/levels", wrong=str(error))
    with app.db.read() as tx:
        clinic = clients.the_clinic(tx, person.clinic_id)
        result = rehearse.rehearse(tx, clinic, changes, WEEKS, now)
    below = {} if person.role == "lead" else clinic.levels
    whose = "clinic" if person.role == "lead" else "you"
    return shown(pages, changes, below, whose=whose, action="/levels", result=result)


@router.get("/clients/{client_id}/levels")
def client_levels_page(app: AppDep, pages: PagesDep, person: PersonDep, client_id: int) -> Response:
    """Show the levels of one client."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        therapist = tx.get(Staff, client.therapist_id)
        audit.record(tx, clinic.id, person.email, "levels viewed", client_id, {}, now)
    below = {**clinic.levels, **(therapist.levels if therapist else {})}
    return shown(pages, client.levels, below, whose="client", action=f"/clients/{client_id}/levels", client=client)


@router.post("/clients/{client_id}/levels")
def save_client_levels(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Keep the levels of one client, her pinned usual, and what a stop-level rating brings."""
    now = app.clock()
    changes = levels_in(form, client=True)
    pinned = form.number("pinned_usual", "Her usual pain", least=0, most=10)
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        client.levels, client.pinned_usual = changes, pinned
        client.stop_with_easy_days = form.checked("stop_with_easy_days")
        tx.add(client)
        audit.record(tx, clinic.id, person.email, "levels changed", client_id, {"whose": "client", **changes}, now)
    return see(f"/clients/{client_id}/levels", "saved")
