"""The therapist's day: everything that needs her in order of harm, each thing acted on where it stands."""

import secrets
from datetime import datetime

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.schedule import local_date
from reminders.flows import alert as alerts
from reminders.flows import audit, care, programs, waiting_words, whose
from reminders.store import today as today_facts
from reminders.store.db import Tx
from reminders.web import sight
from reminders.web.auth import Person
from reminders.web.console.rows import GROUPS, day_rows
from reminders.web.deps import AppDep, FormDep, PersonDep
from reminders.web.forms import Form
from reminders.web.pages import PagesDep, see

router = APIRouter(include_in_schema=False)


@router.get("/today")
def today(app: AppDep, pages: PagesDep, person: PersonDep) -> Response:
    """Show what needs her."""
    now = app.clock()
    with app.db.read() as tx:
        seen = sight.sight_of(tx, person, now)
        rows = day_rows(today_facts.facts_of(tx, seen.clinic_id, seen.therapist_ids, now), now)
    ids = sorted({row.client.id or 0 for row in rows if row.client is not None and row.said})
    with app.db.begin() as tx:
        audit.record(tx, person.clinic_id, person.email, "day's list viewed", None, {"clients": ids}, now)
    groups = [(group, sum(row.group == group for row in rows)) for group in GROUPS]
    return pages.show(
        "today.html",
        today=local_date(now, person.time_zone),
        rows=[{"place": GROUPS.index(row.group), "row": row} for row in rows],
        groups=[(group, count) for group, count in groups if count],
        once=new_once(),
    )


def new_once() -> str:
    """Return a number of a form's own, so that the same form sent twice acts once."""
    return str(secrets.randbits(48))


def back(form: Form, done: str, default: str = "/today") -> Response:
    """Lead back to the page and row that a form came from."""
    origin = form.text("from", most=200)
    is_ours = origin == "/today" or (origin.startswith("/clients/") and origin.removeprefix("/clients/").isdigit())
    anchor = form.text("row", most=60)
    is_anchor = anchor.replace("-", "").isalnum()
    return see(origin if is_ours else default, done, anchor if is_anchor else "")


@router.post("/alerts/{alert_id}/acknowledge")
def acknowledge(app: AppDep, person: PersonDep, form: FormDep, alert_id: int) -> Response:
    """Say that she has an alert; its words stand on the page that she pressed the button on."""
    now = app.clock()
    with app.db.begin() as tx:
        found = sight.alert_seen(tx, sight.sight_of(tx, person, now), alert_id)
        if found.state == "open":
            found.words_opened_by = person.email
        alerts.acknowledge(tx, found, person.email, "console", now)
        record(tx, person, "alert acknowledged", found.client_id, {"alert": found.number}, now)
    return back(form, "acknowledged")


def record(
    tx: Tx, person: Person, action: str, client_id: int | None, details: dict[str, object], now: datetime
) -> None:
    """Write a line of the log in a person's name."""
    audit.record(tx, person.clinic_id, person.email, action, client_id, details, now)


@router.post("/alerts/{alert_id}/close")
def close(app: AppDep, person: PersonDep, form: FormDep, alert_id: int) -> Response:
    """Close an alert with what was done."""
    now = app.clock()
    with app.db.begin() as tx:
        found = sight.alert_seen(tx, sight.sight_of(tx, person, now), alert_id)
        alerts.close(tx, found, person.email, form.text("outcome"), form.text("note", most=500), now)
        record(tx, person, "alert closed", found.client_id, {"alert": found.number, "outcome": found.outcome}, now)
    return back(form, "closed")


@router.post("/alerts/{alert_id}/hers")
def hers(app: AppDep, person: PersonDep, form: FormDep, alert_id: int) -> Response:
    """Say that a danger sign from a shared phone was this client's; the others' alerts and holds of it end."""
    now = app.clock()
    with app.db.begin() as tx:
        found = sight.alert_seen(tx, sight.sight_of(tx, person, now), alert_id)
        whose.settle_whose(tx, found, person.email, now)
    return back(form, "hers")


@router.post("/notes/{note_id}/close")
def settle(app: AppDep, person: PersonDep, form: FormDep, note_id: int) -> Response:
    """Take an item out of the inbox."""
    now = app.clock()
    with app.db.begin() as tx:
        care.settle_note(tx, sight.note_seen(tx, sight.sight_of(tx, person, now), note_id), person.email, now)
    return back(form, "closed", "/work" if person.role == "admin" else "/today")


@router.post("/notes/{note_id}/hers")
def note_hers(app: AppDep, person: PersonDep, form: FormDep, note_id: int) -> Response:
    """Say which client of a shared phone wrote words that nobody was named for; they are read again as hers."""
    now = app.clock()
    client_id = form.whole("client", most=2**31, default=0) or 0
    with app.db.begin() as tx:
        note = sight.note_seen(tx, sight.sight_of(tx, person, now), note_id)
        waiting_words.say_whose(tx, note, client_id, person.email, now)
    return back(form, "named")


@router.post("/proposals/{proposal_id}")
def answer_proposal(app: AppDep, person: PersonDep, form: FormDep, proposal_id: int) -> Response:
    """Set the proposed step, or put the proposal aside."""
    now = app.clock()
    answer = form.choice("answer", ("approve", "decline"), "The answer")
    with app.db.begin() as tx:
        proposal, client = sight.proposal_seen(tx, sight.sight_of(tx, person, now), proposal_id)
        programs.answer_proposal(tx, client, proposal, answer == "approve", person.email, now)
    return back(form, "approved" if answer == "approve" else "declined")


@router.post("/clients/{client_id}/write")
def write(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Send a client her words."""
    now = app.clock()
    words = form.text("words", "Your words", needed=True)
    once = form.whole("once", most=2**48, default=secrets.randbits(48)) or 0
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        care.write(tx, clinic, client, words, person.name, person.email, once, now)
    return back(form, "written", f"/clients/{client_id}")


@router.post("/clients/{client_id}/hold")
def hold(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Hold a client."""
    now = app.clock()
    with app.db.begin() as tx:
        client, _ = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        care.put_on_hold(tx, client, form.text("note", most=300), person.email, now)
    return back(form, "held", f"/clients/{client_id}")


@router.post("/clients/{client_id}/clear")
def clear(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Clear a client's hold."""
    now = app.clock()
    with app.db.begin() as tx:
        client, _ = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        care.clear_hold(tx, client, person.email, now)
    return back(form, "cleared", f"/clients/{client_id}")


@router.post("/clients/{client_id}/easy")
def easy(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Make the next session an easy day."""
    now = app.clock()
    with app.db.begin() as tx:
        client, _ = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        care.ease(tx, client, person.email, now)
    return back(form, "easy", f"/clients/{client_id}")


@router.post("/clients/{client_id}/dose")
def dose(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Move a client along her ladder."""
    now = app.clock()
    step = form.choice("step", programs.STEPS, "The step")
    with app.db.begin() as tx:
        client, _ = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        programs.step(tx, client, step, person.email, now)
    return back(form, "dose", f"/clients/{client_id}")
