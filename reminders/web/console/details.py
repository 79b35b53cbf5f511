"""One client as the desk keeps her: contacts, consent, days, pause, the end of her care. No words, no pain."""

from datetime import datetime
from typing import Any

from fastapi import APIRouter
from sqlmodel import col, select
from starlette.responses import Response

from reminders.core.enrolment import CHANNELS, CONSENT_WAYS, HOLDERS
from reminders.core.languages import LANGUAGES
from reminders.core.schedule import WEEKDAYS, days_text, local_date
from reminders.errors import BadInput, Refused
from reminders.flows import audit, closing, details, pause
from reminders.store import clients, desk_view
from reminders.store.client_view import consents_of
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, Outbound, Pause
from reminders.texts_said import said_days, said_hours, said_time
from reminders.web import sight
from reminders.web.console.enrol import therapists
from reminders.web.deps import AppDep, FormDep, PersonDep
from reminders.web.forms import Form
from reminders.web.pages import PagesDep, see
from reminders.web.state_words import state_word

router = APIRouter(include_in_schema=False)

MESSAGES = 30


@router.get("/clients/{client_id}/details")
def details_page(app: AppDep, pages: PagesDep, person: PersonDep, client_id: int) -> Response:
    """Show what the desk keeps of a client."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        values = page_values(tx, client, clinic, now)
        audit.record(tx, clinic.id, person.email, "details viewed", client_id, {}, now)
    return pages.show("details.html", **values)


def page_values(tx: Tx, client: Client, clinic: Clinic, now: datetime) -> dict[str, Any]:
    """Return what the page shows."""
    client_id = client.id or 0
    contacts = clients.contacts_of(tx, client_id)
    plans = clients.plans_of(tx, client_id)
    sent = select(Outbound).where(Outbound.client_id == client_id).order_by(col(Outbound.id).desc()).limit(MESSAGES)
    today = local_date(now, client.time_zone)
    return {
        "client": client,
        "clinic": clinic,
        "line": desk_view.lines(tx, [client], now)[0],
        "contacts": contacts,
        "addresses": {one.kind: one.address for one in contacts if one.unusable != "taken away at the desk"},
        "consents": consents_of(tx, client_id, [one.address for one in contacts]),
        "days": days_text(plans[-1].days).split("+") if plans else [],
        "time": plans[-1].time if plans else "08:30",
        "from_on": plans[-1].from_on if plans and plans[-1].from_on > today else None,
        "messages": [
            {
                "at": row.accepted_at or row.created_at,
                "kind": row.kind.replace("_", " "),
                "channel": row.channel,
                "to": row.to,
                "state": state_word(row.state),
                "why": row.why or row.code,
            }
            for row in tx.exec(sent)
        ],
        "team": therapists(tx, clinic.id or 0),
        "weekdays": WEEKDAYS,
        "languages": LANGUAGES,
        "channels": CHANNELS,
        "holders": HOLDERS,
        "ways": CONSENT_WAYS[:2],
        "reasons": closing.REASONS,
        "today": today,
    }


@router.post("/clients/{client_id}/details")
def save_details(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Keep changed details."""
    now = app.clock()
    wanted = wanted_in(form)
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        details.change(tx, clinic, client, wanted, person.email, now)
    return see(f"/clients/{client_id}/details", "saved")


def wanted_in(form: Form) -> details.Wanted:
    """Return what the form states."""
    return details.Wanted(
        fields={
            "name": form.text("name", "The name", needed=True, most=120),
            "language": form.text("language"),
            "channel": form.text("channel"),
            "holder": form.text("holder"),
            "window": form.text("window", most=20),
            "emergency_note": form.text("emergency_note", "The emergency note", most=300),
            "chart_id": form.text("chart_id", "The chart number", most=60),
            "birth_year": form.whole("birth_year", "The birth year", least=1900, most=2100),
            "compact_doses": form.checked("compact_doses"),
        },
        days="+".join(form.many("days")) or None,
        time=form.text("time") or None,
        time_zone=form.text("time_zone") or None,
        therapist_id=form.whole("therapist_id", "The therapist"),
    )


@router.post("/clients/{client_id}/contacts")
def save_contacts(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Keep other addresses; each new one needs a consent of its own."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        for kind in ("sms", "email"):
            details.change_address(tx, clinic, client, kind, form.text(kind, most=320), person.email, now)
    return see(f"/clients/{client_id}/details", "saved", "contacts")


@router.post("/clients/{client_id}/consent")
def save_consent(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Record a consent taken at the desk, or that she wants no more messages."""
    now = app.clock()
    what = form.choice("do", ("given", "withdrawn"), "What she said")
    day = form.day("on", "The day of the consent")
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        if day is not None and day > local_date(now, clinic.time_zone):
            raise BadInput("The day of the consent lies ahead; give the day she agreed.")
        if what == "given":
            details.consent_given(tx, clinic, client, form.text("how"), day, person.email, now)
        else:
            details.consent_withdrawn(tx, clinic, client, person.email, now)
    return see(f"/clients/{client_id}/details", "consent", "consent")


@router.post("/clients/{client_id}/pause")
def begin_pause(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Pause a client until a day, as she asked."""
    now = app.clock()
    until = form.day("until", "The last day of the pause")
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        if until is not None and until < local_date(now, client.time_zone):
            raise BadInput("The last day of the pause lies behind; choose a later one.")
        made: Pause = pause.begin(tx, client, until, person.email, now, reason=form.text("reason", most=80))
        audit.record(tx, clinic.id, person.email, "pause begun", client_id, {"pause": made.id}, now)
    return see(f"/clients/{client_id}/details", "paused")


@router.post("/clients/{client_id}/resume")
def end_pause(app: AppDep, person: PersonDep, client_id: int) -> Response:
    """End a client's pause."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        if not pause.end(tx, client, person.email, now):
            raise Refused("This client is not paused.")
        audit.record(tx, clinic.id, person.email, "pause ended", client_id, {}, now)
    return see(f"/clients/{client_id}/details", "resumed")


@router.post("/clients/{client_id}/close")
def close_client(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Close a client's care with a reason."""
    now = app.clock()
    with app.db.begin() as tx:
        client, _ = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        closing.close(tx, client, form.text("reason"), person.email, now)
    return see(f"/clients/{client_id}/details", "left")


@router.post("/clients/{client_id}/reopen")
def reopen_client(app: AppDep, person: PersonDep, client_id: int) -> Response:
    """Invite a closed client again."""
    now = app.clock()
    with app.db.begin() as tx:
        client, _ = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        closing.reopen(tx, client, person.email, now)
    return see(f"/clients/{client_id}/details", "reopened")


@router.get("/clients/{client_id}/consent-sheet")
def consent_sheet(app: AppDep, pages: PagesDep, person: PersonDep, client_id: int, lang: str = "") -> Response:
    """Show the consent sheet to print and sign, in her language or the other one."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        contacts = clients.contacts_of(tx, client_id)
        plans = clients.plans_of(tx, client_id)
        audit.record(tx, clinic.id, person.email, "consent sheet made", client_id, {}, now)
    language = lang if lang in LANGUAGES else client.language
    newest = plans[-1] if plans else None
    return pages.show(
        "consent_sheet.html",
        language=language,
        other=next(one for one in LANGUAGES if one != language),
        client=client,
        clinic=clinic,
        contacts=contacts,
        hours=said_hours(clinic.hours, language),
        days=said_days(days_text(newest.days), language) if newest else "",
        hour=said_time(newest.time, language) if newest else "",
    )
