"""What the digest of one therapist's week is made from, read in a constant number of questions."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from itertools import pairwise

from sqlalchemy import or_
from sqlmodel import col, select

from reminders.core.digest import AlertFact, ClientFacts, SessionFact, StepFact, week_days
from reminders.core.dose import written
from reminders.core.levels import Levels, merged
from reminders.core.program_json import from_json
from reminders.core.schedule import at_local, local_date
from reminders.core.usual import UsualFacts, usual
from reminders.store.db import Tx
from reminders.store.record import by_client, rows_of
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


@dataclass(frozen=True)
class ClientRows:
    """The rows that hang on one client, each in the order of time; holds, pauses and proposals are the open ones."""

    sessions: Sequence[ExerciseSession]
    versions: Sequence[ClientProgram]
    holds: Sequence[Hold]
    pauses: Sequence[Pause]
    proposals: Sequence[Proposal]
    flags: Sequence[Flag]
    notes: Sequence[ClinicNote]
    alerts: Sequence[Alert]
    falls: int | None = None


def facts_of(tx: Tx, clinic: Clinic, therapist: Staff, week: str, now: datetime) -> list[ClientFacts]:
    """Return what is known of each of a therapist's clients at the end of an ISO week, or now while it runs.

    Who was closed before the week began, had not said yes by its end or not yet at all, is left out.
    """
    monday, sunday = week_days(week)
    begins = at_local(monday, "00:00", clinic.time_zone)
    ends = min(at_local(sunday + timedelta(days=1), "00:00", clinic.time_zone), now)
    shown = or_(col(Client.state).in_(SHOWN_STATES), col(Client.closed_at) >= begins)
    begun = or_(col(Client.active_on).is_(None), col(Client.active_on) <= sunday)
    hers = select(Client).where(Client.therapist_id == therapist.id, shown, begun)
    clients = list(tx.exec(hers.order_by(col(Client.id))))
    rows = rows_by_client(tx, clients, begins, ends, now)
    return [
        client_facts(client, merged(clinic.levels, therapist.levels, client.levels), (monday, sunday), rows[client.id])
        for client in clients
    ]


def rows_by_client(
    tx: Tx, clients: Sequence[Client], begins: datetime, ends: datetime, now: datetime
) -> dict[int | None, ClientRows]:
    """Return the rows that hang on each client."""
    ids = [client.id for client in clients if client.id is not None]
    sessions = by_client(rows_of(tx, ExerciseSession, ids))
    versions = by_client(rows_of(tx, ClientProgram, ids))
    holds = by_client(row for row in rows_of(tx, Hold, ids) if row.ended_at is None)
    pauses = by_client(row for row in rows_of(tx, Pause, ids) if row.ended_at is None)
    proposals = by_client(row for row in rows_of(tx, Proposal, ids) if row.state == "open")
    flags = by_client(row for row in rows_of(tx, Flag, ids) if begins <= row.at < ends)
    notes = by_client(row for row in rows_of(tx, ClinicNote, ids) if row.kind in ASKED_OF_US and row.closed_at is None)
    alerts = by_client(alerts_of(tx, ids, begins, ends))
    falls = falls_told(tx, rows_of(tx, Question, ids), begins, ends)
    return {
        client.id: ClientRows(
            sessions=sorted(sessions[client.id], key=lambda row: (row.on_date, row.id)),
            versions=sorted(versions[client.id], key=lambda row: row.number),
            holds=holds[client.id],
            pauses=[one for one in pauses[client.id] if one.from_on <= local_date(now, client.time_zone)],
            proposals=proposals[client.id],
            flags=flags[client.id],
            notes=notes[client.id],
            alerts=alerts[client.id],
            falls=falls.get(client.id or 0),
        )
        for client in clients
    }


def alerts_of(tx: Tx, client_ids: Sequence[int], begins: datetime, ends: datetime) -> list[Alert]:
    """Return the alerts that are not closed, or were opened or closed in the week."""
    found: list[Alert] = []
    for start in range(0, len(client_ids), CHUNK):
        statement = select(Alert).where(
            col(Alert.client_id).in_(client_ids[start : start + CHUNK]),
            col(Alert.opened_at) < ends,
            or_(col(Alert.state) != "closed", col(Alert.closed_at) >= begins),
        )
        found += tx.exec(statement.order_by(col(Alert.id)))
    return found


def client_facts(client: Client, levels: Levels, days: tuple[date, date], rows: ClientRows) -> ClientFacts:
    """Return what is known of one client from her rows."""

    def day_of(at: datetime) -> date:
        return local_date(at, client.time_zone)

    begun = [version for version in rows.versions if version.from_on <= days[1]]
    newest = begun[-1] if begun else None
    return ClientFacts(
        id=client.id or 0,
        name=client.name,
        state=client.state,
        sessions=tuple(SessionFact(one.on_date, one.state, one.pain, one.kind == "extra") for one in rows.sessions),
        usual=usual_by(client, levels, days[1], rows.sessions),
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
        recheck_on=newest.recheck_on if newest and newest.rechecked_on is None else None,
        end_on=newest.end_on if newest else None,
        program_unchecked=not client.precautions_stated,
        falls=rows.falls,
    )


def falls_told(tx: Tx, questions: Sequence[Question], begins: datetime, ends: datetime) -> dict[int, int]:
    """Return how many falls each client counted when she was asked, for those who answered between two instants."""
    told: dict[int, int] = {}
    for question in questions:
        answered_at = question.closed_at
        if question.kind != "falls" or question.closed_how != "answered" or answered_at is None:
            continue
        if not begins <= answered_at < ends:
            continue
        replies = select(InboundRow).where(
            InboundRow.client_id == question.client_id,
            col(InboundRow.received_at) >= question.asked_at,
            col(InboundRow.received_at) <= answered_at,
        )
        for reply in tx.exec(replies.order_by(col(InboundRow.received_at))):
            count = str((reply.reading or {}).get("choice"))
            if count.isdigit() and question.client_id is not None:
                told[question.client_id] = int(count)
    return told


def usual_by(client: Client, levels: Levels, last: date, sessions: Sequence[ExerciseSession]) -> float:
    """Return her usual pain (0-10) from the sessions up to a day."""
    facts = UsualFacts(client.usual_pain, client.pinned_usual, client.kept_usual, client.kept_usual_on)
    rated = [(one.on_date, one.pain) for one in sessions if one.kind != "extra" and one.on_date <= last]
    return usual([(on, pain) for on, pain in rated if pain is not None], facts, levels)


def steps_of(versions: Sequence[ClientProgram], days: tuple[date, date]) -> list[StepFact]:
    """Return the changes of rung that began in some days, oldest first."""
    return [
        StepFact(after.from_on, before.rung, after.rung, first_dose(after.body, after.rung), after.why)
        for before, after in pairwise(versions)
        if days[0] <= after.from_on <= days[1] and after.rung != before.rung
    ]


def first_dose(body: Mapping[str, object], rung: int) -> str:
    """Return the dose of a program's first exercise on a rung, as "2x10"; empty where nothing is prescribed."""
    if not body:
        return ""
    items = from_json(body).lists[0].items
    rungs = items[0].ladder.rungs if items else ()
    return written(rungs[min(rung, len(rungs) - 1)].dose) if rungs else ""
