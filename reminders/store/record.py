"""The record as plain values, in the shapes that the commands, the API and the exports show.

Only questions to the database that end in these shapes belong here; how they are printed is the caller's.
"""

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from datetime import date, datetime
from typing import Any

from sqlmodel import col, select

from reminders.core.schedule import local_date
from reminders.store.correspondence import alerts_json, messages_json
from reminders.store.db import Tx
from reminders.store.shapes import CHUNK, Row, day, stamp
from reminders.store.tables import Client, Contact, ExerciseSession, Hold, Pause, Report, Schedule, Staff

__all__ = ["alerts_json", "clients_json", "loose_reports_json", "messages_json", "sessions_json"]


def clients_json(tx: Tx, clinic_id: int, now: datetime, client_id: int | None = None) -> list[Row]:
    """Return a clinic's clients, or one of them, with the holds and pauses that are open at an instant."""
    statement = select(Client).where(Client.clinic_id == clinic_id)
    if client_id is not None:
        statement = statement.where(Client.id == client_id)
    return rows_json(tx, clinic_id, list(tx.exec(statement.order_by(col(Client.id)))), now)


def clients_by_id_json(tx: Tx, clinic_id: int, now: datetime, client_ids: Sequence[int]) -> list[Row]:
    """Return some of a clinic's clients, by their numbers."""
    statement = select(Client).where(Client.clinic_id == clinic_id, col(Client.id).in_(client_ids))
    return rows_json(tx, clinic_id, list(tx.exec(statement.order_by(col(Client.id)))), now)


def rows_json(tx: Tx, clinic_id: int, clients: Sequence[Client], now: datetime) -> list[Row]:
    """Return clients in the record's shape, in a constant number of questions."""
    staff = {member.id: member.email for member in tx.exec(select(Staff).where(Staff.clinic_id == clinic_id))}
    ids = [client.id for client in clients if client.id is not None]
    schedules = by_client(rows_of(tx, Schedule, ids))
    contacts = by_client(rows_of(tx, Contact, ids))
    holds = by_client(row for row in rows_of(tx, Hold, ids) if row.ended_at is None)
    pauses = by_client(row for row in rows_of(tx, Pause, ids) if row.ended_at is None)
    return [
        client_json(
            client,
            staff.get(client.therapist_id, ""),
            schedule_on(schedules[client.id], local_date(now, client.time_zone)),
            contacts[client.id],
            holds[client.id],
            [pause for pause in pauses[client.id] if pause.until_on >= local_date(now, client.time_zone)],
        )
        for client in clients
    ]


def client_json(
    client: Client,
    therapist: str,
    schedule: Schedule | None,
    contacts: Sequence[Contact],
    holds: Sequence[Hold],
    pauses: Sequence[Pause],
) -> Row:
    """Return one client in the record's shape."""
    return {
        "id": client.id,
        "name": client.name,
        "state": client.state,
        "closed_reason": client.closed_reason,
        "therapist": therapist,
        "program": client.program_code,
        "language": client.language,
        "channel": client.channel,
        "days": schedule.days if schedule else "",
        "time": schedule.time if schedule else "",
        "time_zone": schedule.time_zone if schedule else client.time_zone,
        "contacts": [contact_json(contact) for contact in contacts],
        "usual_pain": client.usual_pain,
        "holds": [{"rule": hold.rule, "opened": stamp(hold.opened_at), "by": hold.by} for hold in holds],
        "pauses": [
            {"from": day(pause.from_on), "until": day(pause.until_on), "reason": pause.reason, "by": pause.by}
            for pause in pauses
        ],
    }


def contact_json(contact: Contact) -> Row:
    """Return one address of a client and what may be sent there."""
    return {
        "channel": contact.kind,
        "address": contact.address,
        "consent": contact.consent,
        "confirmed": stamp(contact.confirmed_at),
        "unusable": contact.unusable,
    }


def schedule_on(schedules: Iterable[Schedule], today: date) -> Schedule | None:
    """Return the newest schedule that has begun by a date, else the first to come."""
    ordered = sorted(schedules, key=lambda row: (row.from_on, row.id or 0))
    begun = [row for row in ordered if row.from_on <= today]
    return begun[-1] if begun else next(iter(ordered), None)


def rows_of(tx: Tx, table: Any, client_ids: Sequence[int]) -> list[Any]:
    """Return the rows of a table that hang on these clients, in the order written."""
    found: list[Any] = []
    for start in range(0, len(client_ids), CHUNK):
        ids = client_ids[start : start + CHUNK]
        found += tx.exec(select(table).where(col(table.client_id).in_(ids)).order_by(col(table.id)))
    return found


def by_client(rows: Iterable[Any]) -> Mapping[int | None, list[Any]]:
    """Return rows gathered by the client they hang on; a client without any has an empty list."""
    gathered: defaultdict[int | None, list[Any]] = defaultdict(list)
    for row in rows:
        gathered[row.client_id].append(row)
    return gathered


def sessions_json(tx: Tx, client_id: int) -> list[Row]:
    """Return a client's sessions by date, each with its reports in the order they came."""
    statement = select(ExerciseSession).where(ExerciseSession.client_id == client_id)
    sessions = list(tx.exec(statement.order_by(col(ExerciseSession.on_date), col(ExerciseSession.id))))
    reports: defaultdict[int | None, list[Row]] = defaultdict(list)
    for report in tx.exec(select(Report).where(Report.client_id == client_id).order_by(col(Report.at), col(Report.id))):
        reports[report.session_id].append(report_json(report))
    return [session_json(session, reports[session.id]) for session in sessions]


def session_json(session: ExerciseSession, reports: list[Row]) -> Row:
    """Return one session in the record's shape."""
    return {
        "id": session.id,
        "date": day(session.on_date),
        "state": session.state,
        "kind": session.kind,
        "due": stamp(session.due_at),
        "reminded": stamp(session.reminded_at),
        "completed": session.completed,
        "sets": session.sets,
        "reps": session.reps,
        "pain": session.pain,
        "pain_before": session.pain_before,
        "pain_after": session.pain_after,
        "easy": session.is_easy,
        "list": session.list_letter,
        "items": session.items,
        "reports": reports,
    }


def report_json(report: Report) -> Row:
    """Return one report in the record's shape; `settling`: a morning rating of an earlier session."""
    return {
        "id": report.id,
        "at": stamp(report.at),
        "channel": report.channel,
        "text": report.text,
        "reading": report.reading,
        "by": report.by,
        "replaces": report.replaces,
        "settling": report.is_settling,
        "inbound": f"in-{report.inbound_id}" if report.inbound_id is not None else None,
    }


def loose_reports_json(tx: Tx, client_id: int) -> list[Row]:
    """Return the reports of a client that belong to no session, in the order they came."""
    statement = select(Report).where(Report.client_id == client_id, col(Report.session_id).is_(None))
    return [report_json(report) for report in tx.exec(statement.order_by(col(Report.at), col(Report.id)))]
