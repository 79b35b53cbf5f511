"""A client's record as the rules see it: sessions, mornings, usual and levels as plain values.

Only the way from rows to `core.rules.history` belongs here; what a rule makes of it stands in core/rules.
"""

from collections.abc import Collection, Iterable, Sequence
from datetime import date
from types import SimpleNamespace
from typing import Any

from sqlalchemy import Date, bindparam, event
from sqlalchemy import select as columns
from sqlmodel import col, select

from reminders.core.levels import Levels, merged
from reminders.core.rules.history import History, Morning, SessionFact
from reminders.core.schedule import client_day
from reminders.core.usual import UsualFacts
from reminders.store import around
from reminders.store.db import Tx, ask
from reminders.store.tables import Client, ClientProgram, Clinic, ExerciseSession, Precaution, Report, Staff

# The rules look back ten ratings and a few weeks: so many sessions, and more of the rated ones where few of these are.
SESSIONS_SEEN = 60
RATINGS_SEEN = 10  # besides those that her usual is made of
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

OF_SESSION = (
    "id", "on_date", "kind", "state", "pain", "pain_before", "pain_after", "reps", "rung", "program_id", "is_easy",
)  # fmt: skip
Seen = Any  # a row with these columns, or what stands for one

# What every report and review asks, made once.
SESSIONS = (
    columns(*SEEN)
    .outerjoin(ClientProgram, col(ClientProgram.id) == col(ExerciseSession.program_id))
    .where(col(ExerciseSession.client_id) == bindparam("client"), col(ExerciseSession.state) != "planned")
    .order_by(col(ExerciseSession.on_date).desc(), col(ExerciseSession.id).desc())
)
NEWEST_SESSIONS = SESSIONS.limit(SESSIONS_SEEN)
OLDER_RATED = SESSIONS.where(
    col(ExerciseSession.on_date) <= bindparam("until", type_=Date()),
    col(ExerciseSession.pain).is_not(None),
    col(ExerciseSession.kind) != "extra",
)
SESSIONS_OF_ALL = (
    columns(col(ExerciseSession.client_id), *SEEN)
    .outerjoin(ClientProgram, col(ClientProgram.id) == col(ExerciseSession.program_id))
    .where(
        col(ExerciseSession.client_id).in_(bindparam("clients", expanding=True)),
        (col(ExerciseSession.state) != "planned") | (col(ExerciseSession.on_date) <= bindparam("until", type_=Date())),
    )
    .order_by(col(ExerciseSession.on_date).desc(), col(ExerciseSession.id).desc())
)
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
    """Return a client's history: unless `most` says otherwise (None: all) the sessions that the rules look at."""
    levels = levels_of(tx.get(Clinic, client.clinic_id), tx.get(Staff, client.therapist_id), client)
    if most == SESSIONS_SEEN:
        rows = newest_sessions(tx, client, max(levels.usual_of, levels.usual_needs) + RATINGS_SEEN)
    else:
        rows = list(ask(tx, SESSIONS.limit(most) if most else SESSIONS, {"client": client.id}))
    mornings = mornings_of(tx, client, {row.id or 0 for row in rows})
    facts = [session_fact(row, mornings.get(row.id or 0, ())) for row in rows]
    is_free = around.lacks(tx, "precaution", client.id or 0)
    precautions = () if is_free else tx.exec(PRECAUTIONS, params={"client": client.id})
    return History(
        sessions=tuple(sorted(facts, key=lambda one: (one.on, one.id))),
        usual_facts=UsualFacts(client.usual_pain, client.pinned_usual, client.kept_usual, client.kept_usual_on),
        precautions=frozenset(precautions),
        precautions_stated=client.precautions_stated,
        levels=levels,
    )


def newest_sessions(tx: Tx, client: Client, ratings: int) -> list[Seen]:
    """Return the newest sessions of a client, and before them as many older rated ones as her usual may need.

    Sessions without a rating, a long pause's or silence's, must not push her ratings out of sight.
    """
    rows = gathered(tx, client)
    if rows is None:
        rows = list(ask(tx, NEWEST_SESSIONS, {"client": client.id}))
    rows, more = rows[:SESSIONS_SEEN], rows[SESSIONS_SEEN:]
    missing = ratings - sum(is_rated(row) for row in rows)
    if missing <= 0 or len(rows) < SESSIONS_SEEN:
        return rows
    if not more:
        known = {row.id for row in rows}
        older = OLDER_RATED.limit(missing + len(known))
        more = [row for row in ask(tx, older, {"client": client.id, "until": rows[-1].on_date}) if row.id not in known]
    return rows + [row for row in more if is_rated(row)][:missing]


def is_rated(row: Seen) -> bool:
    """Return whether a session counts for her usual."""
    return row.pain is not None and row.kind != "extra"


def gather(tx: Tx, client_ids: Sequence[int], until: date) -> None:
    """Fetch at once what the rules look at of many clients' sessions, of planned ones those up to a local date."""
    found: dict[int, list[Seen]] = {client_id: [] for client_id in client_ids}
    for row in tx.connection().execute(SESSIONS_OF_ALL, {"clients": list(client_ids), "until": until}):
        found[row.client_id].append(row)
    tx.info["histories"] = found


def gathered(tx: Tx, client: Client) -> list[Seen] | None:
    """Return a client's sessions as they were fetched with others', newest first, None when they were not.

    What this transaction has changed of them since is taken from its own rows.
    """
    fetched: list[Seen] | None = tx.info.get("histories", {}).get(client.id)
    if fetched is None:
        return None
    rows: list[Seen] = []
    for row in fetched:
        mine: ExerciseSession | None = tx.identity_map.get((ExerciseSession, (row.id,), None))
        row = row if mine is None else as_it_is(mine, row)
        if row.state != "planned":
            rows.append(row)
    return rows


def as_it_is(session: ExerciseSession, fetched: Seen) -> Seen:
    """Return a session as this transaction has it; what belongs to its program is as it was fetched."""
    values = {name: getattr(session, name) for name in OF_SESSION}
    return SimpleNamespace(**values, rung_since_on=fetched.rung_since_on)


@event.listens_for(Tx, "after_attach")
def forget_gathered(tx: Any, row: Any) -> None:
    """Forget what was fetched of a client's sessions when one is added."""
    if isinstance(row, ExerciseSession) and "histories" in tx.info:
        tx.info["histories"].pop(row.client_id, None)


def session_fact(row: Seen, mornings: Iterable[Morning]) -> SessionFact:
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
