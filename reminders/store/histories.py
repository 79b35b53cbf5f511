"""A client's record as the rules see it: sessions, mornings, usual and levels as plain values.

Only the way from rows to `core.rules.history` belongs here; what a rule makes of it stands in core/rules.
"""

from collections.abc import Collection, Iterable
from datetime import date
from typing import Any

from sqlalchemy import Row, bindparam
from sqlalchemy import select as columns
from sqlmodel import col, select

from reminders.core.levels import Levels, merged
from reminders.core.rules.history import History, Morning, SessionFact
from reminders.core.schedule import client_day
from reminders.core.usual import UsualFacts
from reminders.store import around
from reminders.store.db import Tx, ask
from reminders.store.tables import Client, ClientProgram, Clinic, ExerciseSession, Precaution, Report, Staff

# The rules look back ten ratings and a few weeks; more sessions than these change nothing.
SESSIONS_SEEN = 60
# What a rule looks at of a session; the exercises it showed are the bulk of a row and stay unread.
SEEN = (
    col(ExerciseSession.id),
    col(ExerciseSession.on_date),
    col(ExerciseSession.kind),
    col(ExerciseSession.state),
    col(ExerciseSession.pain),
    col(ExerciseSession.pain_before),
    col(ExerciseSession.pain_after),
    col(ExerciseSession.reps),
    col(ExerciseSession.rung),
    col(ExerciseSession.program_id),
    col(ExerciseSession.is_easy),
    col(ClientProgram.rung_since_on),
)

# What every report and review asks, made once.
SESSIONS = (
    columns(*SEEN)
    .outerjoin(ClientProgram, col(ClientProgram.id) == col(ExerciseSession.program_id))
    .where(col(ExerciseSession.client_id) == bindparam("client"), col(ExerciseSession.state) != "planned")
    .order_by(col(ExerciseSession.on_date).desc(), col(ExerciseSession.id).desc())
)
NEWEST_SESSIONS = SESSIONS.limit(SESSIONS_SEEN)
PRECAUTIONS = select(Precaution.kind).where(
    col(Precaution.client_id) == bindparam("client"), col(Precaution.ended_on).is_(None)
)
MORNINGS = (
    columns(col(Report.id), col(Report.session_id), col(Report.at), col(Report.replaces), col(Report.reading))
    .where(col(Report.client_id) == bindparam("client"), col(Report.is_settling).is_(True))
    .order_by(col(Report.at), col(Report.id))
)


def levels_of(clinic: Clinic | None, therapist: Staff | None, client: Client) -> Levels:
    """Return the levels that hold for a client."""
    return merged(clinic.levels if clinic else {}, therapist.levels if therapist else {}, client.levels)


def history_of(tx: Tx, client: Client, *, most: int | None = SESSIONS_SEEN) -> History:
    """Return a client's history, the newest sessions only unless `most` is None."""
    statement = NEWEST_SESSIONS if most == SESSIONS_SEEN else SESSIONS.limit(most) if most else SESSIONS
    rows: list[Row[Any]] = list(ask(tx, statement, {"client": client.id}))
    mornings = mornings_of(tx, client, {row.id or 0 for row in rows})
    facts = [session_fact(row, mornings.get(row.id or 0, ())) for row in rows]
    is_free = around.lacks(tx, "precaution", client.id or 0)
    precautions = () if is_free else tx.exec(PRECAUTIONS, params={"client": client.id})
    return History(
        sessions=tuple(sorted(facts, key=lambda one: (one.on, one.id))),
        usual_facts=UsualFacts(client.usual_pain, client.pinned_usual, client.kept_usual, client.kept_usual_on),
        precautions=frozenset(precautions),
        precautions_stated=client.precautions_stated,
        levels=levels_of(tx.get(Clinic, client.clinic_id), tx.get(Staff, client.therapist_id), client),
    )


def session_fact(row: Row[Any], mornings: Iterable[Morning]) -> SessionFact:
    """Return one session as the rules see it."""
    return SessionFact(
        id=row.id or 0,
        on=row.on_date,
        state=row.state,
        pain=row.pain,
        before=row.pain_before,
        after=row.pain_after,
        reps=row.reps,
        rung=row.rung,
        rung_on=row.rung_since_on or date.min,
        is_extra=row.kind == "extra",
        is_easy=row.is_easy,
        mornings=tuple(mornings),
    )


def mornings_of(tx: Tx, client: Client, session_ids: Collection[int]) -> dict[int, list[Morning]]:
    """Return the morning ratings by session; one that a later report corrects is left out."""
    if around.lacks(tx, "morning", client.id or 0):
        return {}
    told = ask(tx, MORNINGS, {"client": client.id})
    reports = [report for report in told if report.session_id in session_ids]
    replaced = {report.replaces for report in reports if report.replaces is not None}
    found: dict[int, list[Morning]] = {}
    for report in reports:
        pain = report.reading.get("pain")
        if report.id in replaced or pain is None:
            continue
        is_new = "new_back_pain" in (report.reading.get("concerns") or ())
        morning = Morning(client_day(report.at, client.time_zone), int(pain), is_new)
        found.setdefault(report.session_id or 0, []).append(morning)
    return found
