"""One client's record: pain and sessions over time, what she wrote beside what was read, and the rest."""

from datetime import date, datetime
from typing import Any

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.adherence import adherence
from reminders.core.levels import stop_level
from reminders.core.schedule import local_date
from reminders.errors import BadInput
from reminders.flows import audit, care, explain
from reminders.store.client_view import ClientView, client_view
from reminders.store.tables import ExerciseSession
from reminders.texts_said import said_days, said_time
from reminders.web import sight
from reminders.web.chart import STATE_WORDS, Drawn, Mark, chart
from reminders.web.console.reading_words import in_words, why_words
from reminders.web.console.today import new_once
from reminders.web.deps import AppDep, FormDep, PersonDep
from reminders.web.forms import Form
from reminders.web.pages import PagesDep, safe, see
from reminders.web.state_words import state_word

router = APIRouter(include_in_schema=False)

FOUR_WEEKS = 28


@router.get("/clients/{client_id}")
def client_page(app: AppDep, pages: PagesDep, person: PersonDep, client_id: int) -> Response:
    """Show one client's record."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        view = client_view(tx, client, clinic)
        audit.record(tx, clinic.id, person.email, "client viewed", client_id, {}, now)
    return pages.show("client.html", **values(view, now))


def values(view: ClientView, now: datetime) -> dict[str, Any]:
    """Return what the page shows."""
    client = view.client
    today = local_date(now, client.time_zone)
    recent = [one.state for one in view.sessions if (today - one.on_date).days < FOUR_WEEKS and one.kind == "planned"]
    usual = view.history.usual_now
    schedule = next((one for one in view.schedules if one.from_on <= today), None)
    return {
        "view": view,
        "client": client,
        "chart": safe(chart(drawn(view, usual), f"Pain and sessions of {client.name}")),
        "usual": usual,
        "stop": stop_level(usual, view.history.levels),
        "four_weeks": adherence(recent),
        "records": [record_of(view, session) for session in view.sessions],
        "loose": [report_values(one) for one in view.reports.get(None, ())],
        "messages": messages(view),
        "pause": view.pause(now),
        "schedule": schedule,
        "days": said_days(schedule.days, "en") if schedule else "",
        "hour_words": said_time(schedule.time, "en") if schedule else "",
        "rule_name": explain.rule_name,
        "state_words": STATE_WORDS,
        "open_alerts": [one for one in view.alerts if one.state != "closed"],
        "own_notes": [one for one in view.notes if one.kind == "own"],
        "today": today,
        "once": new_once(),
    }


def drawn(view: ClientView, usual: float) -> Drawn:
    """Return the chart's values: every closed session, the dose steps, the alerts."""
    shown = [one for one in reversed(view.sessions) if one.state != "planned"]
    zone = view.client.time_zone
    versions = [version for version in view.programs[::-1] if version.rung_since_on == version.from_on]
    return Drawn(
        sessions=[Mark(one.on_date, one.state, one.pain, one.is_easy) for one in shown],
        steps=[(version.from_on, version.rung + 1) for version in versions],
        alerts=[(local_date(one.opened_at, zone), one.number) for one in view.alerts],
        usual=usual,
        stop=stop_level(usual, view.history.levels),
    )


def record_of(view: ClientView, session: ExerciseSession) -> dict[str, Any]:
    """Return one session with what was said of it."""
    return {
        "session": session,
        "state": STATE_WORDS.get(session.state, session.state),
        "reports": [report_values(one) for one in view.reports.get(session.id, ())],
    }


def report_values(report: Any) -> dict[str, Any]:
    """Return one report: the raw words, what was read, and which words led to it."""
    return {"report": report, "read": in_words(report.reading), "why": why_words(report.why)}


def messages(view: ClientView) -> list[dict[str, Any]]:
    """Return what went out and came in, newest first."""
    made = [
        {
            "at": row.accepted_at or row.created_at,
            "out": True,
            "words": row.body or "Not worded yet: a message is worded when it is sent.",
            "channel": row.channel,
            "kind": row.kind.replace("_", " "),
            "state": state_word(row.state),
            "why": row.why or row.code,
            "read": "",
        }
        for row in view.outbound
    ]
    made += [
        {
            "at": row.received_at,
            "out": False,
            "words": row.text,
            "channel": row.source,
            "kind": "",
            "state": row.outcome or "waiting",
            "why": "",
            "read": in_words(row.reading) if row.reading else "",
        }
        for row in view.inbound
    ]
    return sorted(made, key=lambda one: one["at"], reverse=True)


@router.post("/clients/{client_id}/note")
def keep_note(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Keep her own note in the record."""
    now = app.clock()
    words = form.text("words", "The note", needed=True, most=2000)
    with app.db.begin() as tx:
        client, _ = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        care.keep_note(tx, client, words, person.email, now)
    return see(f"/clients/{client_id}", "noted", "notes")


@router.post("/sessions/{session_id}/correct")
def correct_session(app: AppDep, person: PersonDep, form: FormDep, session_id: int) -> Response:
    """Correct what stands recorded for a session; kept as a correction."""
    now = app.clock()
    stated = stated_in(form)
    with app.db.begin() as tx:
        session, client = sight.session_seen(tx, sight.sight_of(tx, person, now), session_id)
        _, clinic = sight.client_seen(tx, sight.Sight(client.clinic_id), client.id or 0)
        care.correct(tx, clinic, client, session, stated, form.text("why", most=500), person.email, now)
    return see(f"/clients/{client.id}", "corrected", f"session-{session_id}")


def stated_in(form: Form) -> dict[str, Any]:
    """Return the session's values as the form states them; an empty field is "not stated"."""
    return {
        "completed": form.choice("completed", ("all", "part", "none", ""), "What was done") or None,
        "sets": form.whole("sets", "Sets", most=20),
        "reps": form.whole("reps", "Reps", most=100),
        "pain": form.whole("pain", "Pain", most=10),
    }


@router.post("/reports/{report_id}/correct")
def place_report(app: AppDep, person: PersonDep, form: FormDep, report_id: int) -> Response:
    """Say to which day a report belongs that stands alone, and what it states."""
    now = app.clock()
    stated = stated_in(form)
    day = day_of(form)
    with app.db.begin() as tx:
        report, client = sight.report_seen(tx, sight.sight_of(tx, person, now), report_id)
        if not 0 <= (local_date(now, client.time_zone) - day).days <= 366:
            raise BadInput("The day must be today or within the last year.")
        _, clinic = sight.client_seen(tx, sight.Sight(client.clinic_id), client.id or 0)
        session = care.session_on(tx, client, day, now)
        why = form.text("why", most=500) or f"report {report.id} placed"
        care.correct(tx, clinic, client, session, stated, why, person.email, now, replaces=report.id)
    return see(f"/clients/{client.id}", "corrected")


def day_of(form: Form) -> date:
    """Return the day that the form names."""
    day = form.day("on", "The day", needed=True)
    assert day is not None
    return day
