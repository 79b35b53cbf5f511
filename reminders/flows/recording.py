"""Keeping a report, having it judged, and saying back what was recorded with the one question that it leaves open."""

from dataclasses import replace
from typing import Any

from reminders.core.decide import Decision, Situation, decide
from reminders.core.reading.model import Reading
from reminders.flows import judge, questions, reports
from reminders.flows.understand import Heard
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession, Report
from reminders.texts_said import said_date


def judged(tx: Tx, heard: Heard, client: Client, session: ExerciseSession | None, report: Report) -> bool:
    """Have a report judged; True when its answer says to do no more, or more than that."""
    made = judge.judge_report(tx, heard.clinic, client, session, report, heard.now)
    if made.template:
        session_id = session.id if session else None
        heard.say(made.kind or "said_back", made.template, session_id=session_id, **made.details)
    return made.kind is not None or made.held


def keep(tx: Tx, heard: Heard, client: Client, decision: Decision, situation: Situation) -> None:
    """Keep a report, have it judged, and say back what was recorded with the one question that it leaves open."""
    reading = heard.reading
    session = reports.session_of(tx, heard, client, settles=decision.settles)
    if decision.closes and heard.question is not None:
        questions.close(heard.question, decision.closes, heard.now, inbound=heard.row.id)
    before = worth_now(session)
    report = reports.keep_report(tx, heard, client, session, settles=decision.settles)
    says_nothing_new = before == worth_now(session) and not (reading.red_flags or reading.concerns or decision.settles)
    warned = False
    if session is None or not (says_nothing_new and reports.is_flood(tx, session.id)):
        warned = judged(tx, heard, client, session, report)
    heard.outcome = "settling" if decision.settles else reading.intent
    if decision.settles:
        heard.say("thanks", "thanks_settling", slot="settling", pain=reading.pain)
        return
    situation = Situation(
        asked=situation.asked,
        asked_before=questions.asked_about(tx, session),
        awaits=session is not None and session.completed is None and session.state in ("planned", "reminded"),
        is_held=situation.is_held or warned,
        is_closed=situation.is_closed,
        staff_wrote=situation.staff_wrote,
        is_page=situation.is_page,
    )
    asks = decide(worth(reading, session), heard.row.text, situation).ask
    values = said_values(heard, client, session)
    slot = f"session:{session.id}" if session else "report"
    if asks in ("pain", "amount"):
        questions.ask(
            tx, asks, heard.row.address, client, heard.now,
            session_id=session.id if session else None, inbound_id=heard.row.id,
        )  # fmt: skip
        heard.say("ask", f"ask_{asks}", slot, session.id if session else None, **values)
    elif says_something(values["r"]):
        heard.say("thanks", "thanks", slot, session.id if session else None, easy=client.next_session_easy, **values)


def keep_unanswered(tx: Tx, heard: Heard, client: Client) -> None:
    """Keep and judge what she tells of a session beside her wish to hear no more; nothing of it is answered."""
    if tells_of_a_session(heard.reading):
        session = reports.session_of(tx, heard, client)
        report = reports.keep_report(tx, heard, client, session)
        judge.judge_report(tx, heard.clinic, client, session, report, heard.now)


def keep_judged(tx: Tx, heard: Heard, client: Client) -> None:
    """Keep what she tells of a session beside a sign that was judged before it was known to be hers."""
    if tells_of_a_session(heard.reading):
        reports.keep_report(tx, heard, client, reports.session_of(tx, heard, client))


def tells_of_a_session(reading: Reading) -> bool:
    """Return whether a reply says what was done or how it hurt."""
    return reading.completed is not None or reading.pain is not None or bool(reading.by_exercise)


def ask_again(tx: Tx, heard: Heard, client: Client, kind: str) -> None:
    """Ask about a reply that was not understood: what was asked before once more, else what it means."""
    session_id = heard.question.session_id if heard.question else None
    questions.ask(
        tx, kind, heard.row.address, client, heard.now, session_id=session_id, inbound_id=heard.row.id
    )  # fmt: skip
    nothing_yet = said_values(Heard(heard.row, heard.clinic, heard.now, heard.people), client, None)
    heard.say("ask", f"ask_{kind}", slot="ask", **(nothing_yet if kind in ("pain", "amount") else {}))
    heard.outcome = "unclear"


def worth_now(session: ExerciseSession | None) -> tuple[object, ...]:
    """Return what the rules look at of a session."""
    return (session.completed, session.pain, session.pain_before, session.pain_after) if session else ()


def worth(reading: Reading, session: ExerciseSession | None) -> Reading:
    """Return the reading with what the session already has, so that nothing is asked twice."""
    if session is None:
        return reading
    known = session.pain if reading.pain is None else reading.pain
    has_pain = reading.ask == "pain" and reading.intent == "report" and session.pain is not None
    has_amount = reading.ask == "amount" and session.completed is not None
    if has_pain or has_amount or reading.ask is None:
        return replace(reading, ask=None, pain=known)
    return reading


def said_values(heard: Heard, client: Client, session: ExerciseSession | None) -> dict[str, Any]:
    """Return what an answer repeats: the session's value, else what the reply itself says."""
    reading, day = heard.reading, reports.said_day(heard, client, session)
    source: Any = session or reading
    names = {
        "completed": source.completed,
        "sets": source.sets,
        "reps": source.reps,
        "pain": source.pain,
        "before": session.pain_before if session else reading.before,
        "after": session.pain_after if session else reading.after,
        "by_exercise": reading.as_dict()["by_exercise"],
    }
    return {"r": names, "day": said_date(day, client.language) if day else ""}


def says_something(recorded: dict[str, Any]) -> bool:
    """Return whether anything was recorded that can be said back."""
    return any(value not in (None, []) for value in recorded.values())
