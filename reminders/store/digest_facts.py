"""What the digest of one therapist's week is made from, read in a constant number of questions."""

import json
from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from functools import lru_cache
from itertools import pairwise
from typing import Any

from sqlalchemy import Row, Text, func, or_
from sqlalchemy import cast as as_type
from sqlalchemy import select as columns
from sqlmodel import col

from reminders.core.digest import AlertFact, ClientFacts, SessionFact, StepFact, week_days
from reminders.core.dose import written
from reminders.core.levels import Levels, merged
from reminders.core.program_json import from_json
from reminders.core.schedule import at_local, local_date
from reminders.core.usual import UsualFacts, usual
from reminders.store.db import Tx
from reminders.store.shapes import CHUNK
from reminders.store.tables import (
    Alert,
    Client,
    ClientProgram,
    Clinic,
    ClinicNote,
    ExerciseSession,
    Flag,
    Hold,
    InboundRow,
    Pause,
    Proposal,
    Question,
    Staff,
)

SHOWN_STATES = ("active", "opted_out")
ASKED_OF_US = ("question", "reschedule", "unclear", "written")


FACTS_SINCE = timedelta(weeks=6)  # of sessions; ratings that lie further back are read for those who have few
RATINGS = 6  # the trend compares three with three
OF_CLIENT = (
    Client.id, Client.name, Client.state, Client.time_zone, Client.levels, Client.usual_pain, Client.pinned_usual,
    Client.kept_usual, Client.kept_usual_on, Client.precautions_stated,
)  # fmt: skip
OF_VERSION = (
    ClientProgram.client_id, ClientProgram.from_on, ClientProgram.rung, ClientProgram.why, ClientProgram.recheck_on,
    ClientProgram.rechecked_on, ClientProgram.end_on,
)  # fmt: skip


@dataclass(frozen=True)
class ClientRows:
    """The rows that hang on one client, each in the order of time; holds, pauses and proposals are the open ones."""

    sessions: Sequence[SessionFact]
    versions: Sequence[Row[Any]]
    holds: Sequence[Row[Any]]
    pauses: Sequence[Row[Any]]
    proposals: Sequence[Row[Any]]
    flags: Sequence[Row[Any]]
    notes: Sequence[Row[Any]]
    alerts: Sequence[Row[Any]]
    falls: int | None = None


def facts_of(tx: Tx, clinic: Clinic, therapist: Staff, week: str, now: datetime) -> list[ClientFacts]:
    """Return what is known of each of a therapist's clients at the end of an ISO week, or now while it runs.

    Who was closed before the week began, had not said yes by its end or not yet at all, is left out.
    """
    monday, sunday = week_days(week)
    begins = at_local(monday, "00:00", clinic.time_zone)
    # What came at this very instant counts; what comes at Monday's first is the next week's.
    ends = min(at_local(sunday + timedelta(days=1), "00:00", clinic.time_zone), now + timedelta.resolution)
    shown = or_(col(Client.state).in_(SHOWN_STATES), col(Client.closed_at) >= begins)
    begun = or_(col(Client.active_on).is_(None), col(Client.active_on) <= sunday)
    hers = columns(*(col(one) for one in OF_CLIENT)).where(col(Client.therapist_id) == therapist.id, shown, begun)
    clients = list(tx.connection().execute(hers.order_by(col(Client.id))))
    shared = merged(clinic.levels, therapist.levels)
    levels = {
        client.id: merged(clinic.levels, therapist.levels, client.levels) if client.levels else shared
        for client in clients
    }
    most = max([RATINGS, *(max(one.usual_of, one.usual_needs) for one in levels.values())])
    rows = rows_by_client(tx, clients, sunday, most, (begins, ends, now))
    return [client_facts(client, levels[client.id], (monday, sunday), rows[client.id]) for client in clients]


def rows_by_client(
    tx: Tx, clients: Sequence[Row[Any]], sunday: date, ratings: int, times: tuple[datetime, datetime, datetime]
) -> dict[int, ClientRows]:
    """Return the rows that hang on each client; the times are the week's beginning, its end, and now."""
    begins, ends, now = times
    ids = [client.id for client in clients]
    sessions = sessions_of(tx, ids, sunday, ratings)
    body = as_type(col(ClientProgram.body), Text).label("body")  # a crowd shares a few programs: read once each
    versions = gathered(tx, (*OF_VERSION, body), ids, ClientProgram.number)
    holds = gathered(tx, (Hold.client_id, Hold.rule, Hold.opened_at), ids, Hold.id, col(Hold.ended_at).is_(None))
    pauses = gathered(
        tx, (Pause.client_id, Pause.from_on, Pause.until_on), ids, Pause.id, col(Pause.ended_at).is_(None)
    )
    proposals = gathered(tx, (Proposal.client_id, Proposal.direction), ids, Proposal.id, col(Proposal.state) == "open")
    in_week = (col(Flag.at) >= begins, col(Flag.at) < ends)
    flags = gathered(tx, (Flag.client_id, Flag.kind, Flag.grade, Flag.at), ids, Flag.id, *in_week)
    asked = (col(ClinicNote.kind).in_(ASKED_OF_US), col(ClinicNote.closed_at).is_(None))
    notes = gathered(tx, (ClinicNote.client_id, ClinicNote.words, ClinicNote.at), ids, ClinicNote.id, *asked)
    alerts = alerts_of(tx, ids, begins, ends)
    falls = falls_told(tx, ids, begins, ends)
    return {
        client.id: ClientRows(
            sessions=sessions[client.id],
            versions=versions[client.id],
            holds=holds[client.id],
            pauses=[one for one in pauses[client.id] if one.from_on <= local_date(now, client.time_zone)],
            proposals=proposals[client.id],
            flags=flags[client.id],
            notes=notes[client.id],
            alerts=alerts[client.id],
            falls=falls.get(client.id),
        )
        for client in clients
    }


def gathered(
    tx: Tx, wanted: Sequence[Any], client_ids: Sequence[int], order: Any, *conditions: Any
) -> Mapping[int, list[Row[Any]]]:
    """Return some columns, the client's number first, of the rows that hang on these clients, by client."""
    found: defaultdict[int, list[Row[Any]]] = defaultdict(list)
    for start in range(0, len(client_ids), CHUNK):
        part = col(wanted[0]).in_(client_ids[start : start + CHUNK])
        asked = columns(*wanted).where(part, *conditions).order_by(col(order))
        for row in tx.connection().execute(asked).all():
            found[row[0]].append(row)
    return found


def sessions_of(tx: Tx, client_ids: Sequence[int], sunday: date, ratings: int) -> Mapping[int, list[SessionFact]]:
    """Return the sessions of six weeks up to a Sunday, oldest first, and before them as many older rated ones as her
    usual and the trend may need.
    """
    since, found = sunday - FACTS_SINCE, defaultdict[int, list[SessionFact]](list)
    table = (ExerciseSession.client_id, ExerciseSession.on_date, ExerciseSession.state, ExerciseSession.pain)
    wanted = columns(*(col(one) for one in table), (col(ExerciseSession.kind) == "extra").label("is_extra"))
    in_time = wanted.where(col(ExerciseSession.on_date) > since, col(ExerciseSession.on_date) <= sunday)
    for start in range(0, len(client_ids), CHUNK):
        part = client_ids[start : start + CHUNK]
        for row in tx.connection().execute(in_time.where(col(ExerciseSession.client_id).in_(part))).all():
            found[row.client_id].append(SessionFact._make(row[1:]))
        for one in part:  # short lists are put in order quicker here than the whole of them by the database
            found[one].sort(key=lambda fact: fact.on)
        few = [one for one in part if sum(fact.is_rated for fact in found[one]) < ratings]
        for client_id, facts in older_ratings(tx, few, since, ratings).items():
            found[client_id] = facts + found[client_id]
    return found


def older_ratings(tx: Tx, client_ids: Sequence[int], until: date, ratings: int) -> Mapping[int, list[SessionFact]]:
    """Return the newest rated sessions up to a day, oldest first, so many a client."""
    newest = func.row_number().over(
        partition_by=col(ExerciseSession.client_id),
        order_by=(col(ExerciseSession.on_date).desc(), col(ExerciseSession.id).desc()),
    )
    rated = columns(
        col(ExerciseSession.client_id),
        col(ExerciseSession.on_date),
        col(ExerciseSession.state),
        col(ExerciseSession.pain),
        newest.label("place"),
    ).where(
        col(ExerciseSession.client_id).in_(client_ids),
        col(ExerciseSession.on_date) <= until,
        col(ExerciseSession.pain).is_not(None),
        col(ExerciseSession.kind) != "extra",
    )
    numbered = rated.subquery()
    found: defaultdict[int, list[SessionFact]] = defaultdict(list)
    chosen = columns(numbered).where(numbered.c.place <= ratings).order_by(numbered.c.place.desc())
    for row in tx.connection().execute(chosen):
        found[row.client_id].append(SessionFact(row.on_date, row.state, row.pain))
    return found


def alerts_of(tx: Tx, client_ids: Sequence[int], begins: datetime, ends: datetime) -> Mapping[int, list[Row[Any]]]:
    """Return the alerts that are not closed, or were opened or closed in the week."""
    wanted = (
        Alert.client_id, Alert.number, Alert.rule, Alert.level, Alert.state, Alert.opened_at, Alert.outcome,
    )  # fmt: skip
    told = (col(Alert.opened_at) < ends, or_(col(Alert.state) != "closed", col(Alert.closed_at) >= begins))
    return gathered(tx, wanted, client_ids, Alert.id, *told)


def client_facts(client: Row[Any], levels: Levels, days: tuple[date, date], rows: ClientRows) -> ClientFacts:
    """Return what is known of one client from her rows."""

    def day_of(at: datetime) -> date:
        return local_date(at, client.time_zone)

    begun = [version for version in rows.versions if version.from_on <= days[1]]
    newest = begun[-1] if begun else None
    return ClientFacts(
        id=client.id,
        name=client.name,
        state=client.state,
        sessions=tuple(rows.sessions),
        usual=usual_by(client, levels, rows.sessions),
        flags=tuple((flag.kind, flag.grade, day_of(flag.at)) for flag in rows.flags),
        alerts=tuple(
            AlertFact(one.number, one.rule, one.level, one.state, day_of(one.opened_at), one.outcome)
            for one in rows.alerts
        ),
        hold=(rows.holds[0].rule, day_of(rows.holds[0].opened_at)) if rows.holds else None,
        paused_until=max((pause.until_on for pause in rows.pauses if pause.until_on >= days[0]), default=None),
        questions=tuple((note.words, day_of(note.at)) for note in rows.notes),
        steps=tuple(steps_of(begun, days)),
        proposal=rows.proposals[-1].direction if rows.proposals else "",
        rung=newest.rung if newest else 0,
        dose=first_dose(newest.body, newest.rung) if newest else "",
        recheck_on=newest.recheck_on if newest and not is_rechecked(newest) else None,
        end_on=newest.end_on if newest else None,
        program_unchecked=not client.precautions_stated,
        falls=rows.falls,
    )


def is_rechecked(version: Row[Any]) -> bool:
    """Return whether the re-check of a version was done on its date or later: an earlier one's day is no answer."""
    return version.rechecked_on is not None and (
        version.recheck_on is None or version.rechecked_on >= version.recheck_on
    )


def falls_told(tx: Tx, client_ids: Sequence[int], begins: datetime, ends: datetime) -> dict[int, int]:
    """Return how many falls each client counted when she was asked, for those who answered between two instants."""
    told: dict[int, int] = {}
    answered = (
        columns(col(Question.client_id), col(InboundRow.reading))
        .join(InboundRow, col(InboundRow.client_id) == col(Question.client_id))
        .where(
            col(Question.kind) == "falls",
            col(Question.closed_how) == "answered",
            col(Question.closed_at) >= begins,
            col(Question.closed_at) < ends,
            col(InboundRow.received_at) >= col(Question.asked_at),
            col(InboundRow.received_at) <= col(Question.closed_at),
        )
        .order_by(col(Question.id), col(InboundRow.received_at))
    )
    for start in range(0, len(client_ids), CHUNK):
        hers = col(Question.client_id).in_(client_ids[start : start + CHUNK])
        for client_id, reading in tx.connection().execute(answered.where(hers)):
            count = str((reading or {}).get("choice"))
            if count.isdigit():
                told[client_id] = int(count)
    return told


def usual_by(client: Row[Any], levels: Levels, sessions: Sequence[SessionFact]) -> float:
    """Return her usual pain (0-10) from sessions."""
    facts = UsualFacts(client.usual_pain, client.pinned_usual, client.kept_usual, client.kept_usual_on)
    rated = [(one.on, one.pain) for one in sessions if one.pain is not None and not one.is_extra]
    return usual(rated, facts, levels)


def steps_of(versions: Sequence[Row[Any]], days: tuple[date, date]) -> list[StepFact]:
    """Return the changes of rung that began in some days, oldest first."""
    return [
        StepFact(after.from_on, before.rung, after.rung, first_dose(after.body, after.rung), after.why)
        for before, after in pairwise(versions)
        if days[0] <= after.from_on <= days[1] and after.rung != before.rung
    ]


@lru_cache(maxsize=256)
def first_dose(body: str, rung: int) -> str:
    """Return the dose of a program's first exercise on a rung, as "2x10"; empty where nothing is prescribed."""
    program = json.loads(body or "{}")
    if not program:
        return ""
    items = from_json(program).lists[0].items
    rungs = items[0].ladder.rungs if items else ()
    return written(rungs[min(rung, len(rungs) - 1)].dose) if rungs else ""
