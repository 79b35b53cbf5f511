"""Keeping what a reply reports: to which session it goes, and that session's value worked out anew.

Reports add; nothing is overwritten. What the report means clinically is flows/judge, what is answered flows/replies.
"""

from dataclasses import replace
from datetime import datetime
from typing import Any

from sqlalchemy import Row, bindparam
from sqlalchemy import select as columns
from sqlmodel import col, func, select

from reminders.core.attribution import Place, named_day, place
from reminders.core.reading.model import Reading
from reminders.core.schedule import at_local, client_day
from reminders.core.session_value import SessionValue, Stated, corrected, session_value, so_far
from reminders.flows import plan, sweep
from reminders.flows.lately import recent_sessions
from reminders.flows.understand import Heard, channel_of
from reminders.store import around, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession, Question, Report

UNWRITTEN = 2**62  # stands for the number of a report that is written last
FLOOD = 30  # no person reports one session more often

# What every report asks, made once.
REPORTS_OF = (
    select(Report).where(col(Report.session_id) == bindparam("session")).order_by(col(Report.at), col(Report.id))
)
FIRST_REPORTS = (
    columns(*(col(getattr(Report, name)) for name in ("id", "at", "reading", "replaces", "by", "is_settling")))
    .where(col(Report.session_id) == bindparam("session"))
    .order_by(col(Report.at), col(Report.id))
    .limit(FLOOD + 1)
)
SOME_REPORTS = select(Report.id).where(col(Report.session_id) == bindparam("session")).limit(FLOOD + 1)


def session_of(tx: Tx, heard: Heard, client: Client, *, settles: bool = False) -> ExerciseSession | None:
    """Return the session that a reply speaks of; an extra one is made when it reports one on a day without any.

    The answer to a question about a session belongs to that session, unless it names another day or reports today's;
    a morning rating (`settles`) always does: "6 this morning" names the day it is given, not the session's.
    """
    row, reading = heard.row, heard.reading
    if row.source == "page":
        return tx.get(ExerciseSession, int(row.answers.removeprefix("session:")))
    if heard.corrects is not None:
        found = heard.corrects.session_id
        return tx.get(ExerciseSession, found) if found is not None else None
    asked = session_asked_about(tx, heard.question, client)
    if settles and asked is not None:
        return asked
    today = client_day(row.received_at, client.time_zone)
    recent = recent_sessions(tx, client, today)
    is_done = says_done(reading)
    reports_today = is_done and reading.pain is not None and any(one.on_date == today for one in recent)
    if asked is not None and reading.when is None and not reports_today and answers_about_it(heard, is_done):
        return asked
    where = place(reading.when, today, recent, only_pain=not is_done)
    if where.session_id is not None:
        return tx.get(ExerciseSession, where.session_id)
    return extra_session(tx, client, where) if is_done else None


def says_done(reading: Reading) -> bool:
    """Return whether a reply tells of exercises done."""
    return reading.completed in ("all", "part") or reading.sets is not None or bool(reading.by_exercise)


def answers_about_it(heard: Heard, says_done: bool) -> bool:
    """Return whether a reply speaks of the session that was asked about rather than of a new one.

    Where it hurts and how it is this morning are no answer to "how much did you do?": who tells that reports a session.
    """
    kind = heard.question.kind if heard.question else ""
    is_morning = kind == "settling" and heard.reading.pain is None
    return kind in ("pain", "amount") or ((kind == "where" or is_morning) and not says_done)


def session_asked_about(tx: Tx, question: Question | None, client: Client) -> ExerciseSession | None:
    """Return the session of an open question, when it is this client's."""
    if question is None or question.session_id is None:
        return None
    session = tx.get(ExerciseSession, question.session_id)
    return session if session is not None and session.client_id == client.id else None


def extra_session(tx: Tx, client: Client, where: Place) -> ExerciseSession:
    """Return the extra session of a day without one, outside adherence and usual."""
    statement = select(ExerciseSession).where(
        ExerciseSession.client_id == client.id,
        ExerciseSession.on_date == where.on_date,
        ExerciseSession.kind == "extra",
    )
    found = tx.exec(statement).first()
    if found is not None:
        return found
    made = ExerciseSession(
        client_id=client.id or 0,
        on_date=where.on_date,
        kind="extra",
        due_at=at_local(where.on_date, "12:00", client.time_zone),
        state="done",
    )
    tx.add(made)
    tx.flush()
    return made


def keep_report(
    tx: Tx, heard: Heard, client: Client, session: ExerciseSession | None, *, settles: bool = False
) -> Report:
    """Write a report and work out its session anew."""
    row, reading = heard.row, heard.reading
    report = Report(
        client_id=client.id or 0,
        session_id=session.id if session else None,
        at=row.received_at,
        channel=channel_of(row),
        text=row.text,
        reading=reading.as_dict(),
        why=heard.why,
        by="helper" if client.holder == "helper" or reading.about == "client" else "client",
        replaces=replaced_by(tx, heard, session),
        is_settling=settles,
        inbound_id=row.id,
        body_part=reading.where or "",
    )
    if session is not None and not settles:
        before = first_stated(tx, session)
        tx.add(report)
        revalue(tx, client, session, heard.now, value_with(tx, session, before, report))
    else:
        tx.add(report)
        tx.flush()
    return report


def replaced_by(tx: Tx, heard: Heard, session: ExerciseSession | None) -> int | None:
    """Return the report that this one corrects; a second submission of a page corrects the first."""
    if heard.corrects is not None:
        return heard.corrects.id
    if session is None:
        return None
    if heard.row.source == "page":
        mine = [one for one in rows_of(tx, session.id) if one.channel == "page" and one.by != "staff"]
        return mine[-1].id if mine else None
    if not heard.reading.correction:
        return None
    before = [one for one in stated(tx, session.id) if one.at <= heard.row.received_at]
    return corrected(before, states_pain=heard.reading.pain is not None)


def rows_of(tx: Tx, session_id: int | None) -> list[Report]:
    """Return the reports of a session in the order they came."""
    return list(tx.exec(REPORTS_OF, params={"session": session_id}))


def stated(tx: Tx, session_id: int | None) -> list[Stated]:
    """Return what the reports of a session state."""
    return [stated_in(one) for one in rows_of(tx, session_id)]


def stated_in(report: Report | Row[Any]) -> Stated:
    """Return what one report, or these columns of it, states."""
    is_staff = "@" in report.by
    return Stated(report.id or 0, report.at, report.reading, report.replaces, is_staff, report.is_settling)


def is_flood(tx: Tx, session_id: int | None) -> bool:
    """Return whether a session has so many reports that somebody's phone must be sending by itself."""
    return len(tx.exec(SOME_REPORTS, params={"session": session_id}).all()) > FLOOD


def first_stated(tx: Tx, session: ExerciseSession) -> list[Stated]:
    """Return what the first reports of a session state, one more of them than a person sends."""
    if around.lacks(tx, f"reports:{session.id}", session.client_id):
        return []
    return [stated_in(one) for one in tx.connection().execute(FIRST_REPORTS, {"session": session.id})]


def value_with(tx: Tx, session: ExerciseSession, before: list[Stated], newest: Report) -> SessionValue:
    """Return a session's value from its reports in order, the newest not written yet.

    In a flood the newest report, when it is plain, is added to the value so far: the same, without reading all again.
    """
    if len(before) > FLOOD:
        if newest.replaces is not None or not comes_last(tx, session, newest):
            tx.flush()
            return session_value(stated(tx, session.id))
        value = SessionValue(
            session.completed, session.sets, session.reps, session.pain, session.pain_before, session.pain_after
        )
        before = [so_far(value, newest.at)]
    return session_value([*before, replace(stated_in(newest), id=UNWRITTEN)])


def comes_last(tx: Tx, session: ExerciseSession, newest: Report) -> bool:
    """Return whether a report that is not written yet comes after all others, none of them by staff."""
    others = select(func.max(Report.at), func.count().filter(col(Report.by).contains("@"))).where(
        col(Report.session_id) == session.id
    )
    with tx.no_autoflush:
        latest, by_staff = tx.exec(others).one()
    return not by_staff and latest is not None and latest <= newest.at


def revalue(
    tx: Tx,
    client: Client,
    session: ExerciseSession,
    now: datetime,
    value: SessionValue | None = None,
    *,
    by_staff: bool = False,
) -> SessionValue:
    """Give a session its value, by default from its reports in order, and do what follows for reminder and next one.

    What staff corrects is no word of hers: she may be as silent as before.
    """
    value = value or session_value(stated(tx, session.id))
    session.completed, session.sets, session.reps = value.completed, value.sets, value.reps
    session.pain, session.pain_before, session.pain_after = value.pain, value.before, value.after
    was_ahead = session.state == "planned" and session.queued_at is None
    if value.state is not None and session.state != value.state:
        session.state, session.settled_at = value.state, now
    if value.state is not None and session.kind == "planned":
        outbox.withdraw(
            tx, now, "reported", client_id=client.id or 0, kinds=("reminder", "evening"), session_id=session.id
        )
        if was_ahead:
            session.queued_at = now
            plan.plan_next_session(tx, client, session.on_date, now)
        if not by_staff:
            sweep.report_arrived(tx, client, session, now)
    return value


def said_day(heard: Heard, client: Client, session: ExerciseSession | None) -> Any:
    """Return the date to name in an answer: a session's that is not today's, or the day that the reply named."""
    today = client_day(heard.row.received_at, client.time_zone)
    day = session.on_date if session else named_day(heard.reading.when, today)
    return day if day is not None and day != today else None
