"""Messages and alerts as the record shows them: what went out and came in, who was told of an alert and how that went.

Only questions that end in these shapes belong here; queueing is in `outbox`, keeping what came in with those who hear.
"""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from datetime import date, datetime
from typing import Any

from sqlalchemy import or_
from sqlmodel import col, select

from reminders.store.db import Tx
from reminders.store.shapes import CHUNK, Row, day, stamp
from reminders.store.tables import (
    Alert,
    Client,
    Clinic,
    ClinicNote,
    Contact,
    ExerciseSession,
    InboundRow,
    Outbound,
    Report,
)


def messages_json(tx: Tx, clinic_id: int, client_id: int | None = None, since: datetime | None = None) -> list[Row]:
    """Return what went out and came in, oldest first, of a clinic or of one client, from an instant on."""
    out = select(Outbound).where(Outbound.clinic_id == clinic_id)
    inbound = select(InboundRow).where(heard_by(tx, clinic_id, client_id))
    if client_id is not None:
        out = out.where(Outbound.client_id == client_id)
    if since is not None:
        out = out.where(col(Outbound.created_at) >= since)
        inbound = inbound.where(col(InboundRow.received_at) >= since)
    dated = [(row.created_at, 1, outbound_json(row)) for row in tx.exec(out.order_by(col(Outbound.id)))]
    dated += [(row.received_at, 0, inbound_json(row)) for row in tx.exec(inbound.order_by(col(InboundRow.id)))]
    return [row for _, _, row in sorted(dated, key=lambda one: one[:2])]


def heard_by(tx: Tx, clinic_id: int, client_id: int | None) -> Any:
    """Return the condition under which an inbound message is a clinic's, or one client's.

    One that no client is known for belongs to the clinics that have its address or a note of it; where there is one
    clinic, to that one.
    """
    if client_id is not None:
        reported = select(Report.inbound_id).where(Report.client_id == client_id, col(Report.inbound_id).is_not(None))
        return or_(col(InboundRow.client_id) == client_id, col(InboundRow.id).in_(reported))
    ours = select(Client.id).where(Client.clinic_id == clinic_id)
    if len(tx.exec(select(Clinic.id).limit(2)).all()) == 1:
        return or_(col(InboundRow.client_id).is_(None), col(InboundRow.client_id).in_(ours))
    addresses = select(Contact.address).where(col(Contact.client_id).in_(ours))
    noted = select(ClinicNote.inbound_id).where(
        ClinicNote.clinic_id == clinic_id, col(ClinicNote.inbound_id).is_not(None)
    )
    strangers = col(InboundRow.client_id).is_(None) & or_(
        col(InboundRow.address).in_(addresses), col(InboundRow.id).in_(noted)
    )
    return or_(col(InboundRow.client_id).in_(ours), strangers)


def outbound_json(row: Outbound) -> Row:
    """Return one message of ours in the record's shape; its body is empty until it is claimed."""
    return {
        "id": f"out-{row.id}",
        "client": row.client_id,
        "direction": "out",
        "kind": row.kind,
        "channel": row.channel,
        "to": row.to,
        "subject": row.subject,
        "body": row.body,
        "state": row.state,
        "at": stamp(row.created_at),
        "due": stamp(row.due_at),
        "accepted": stamp(row.accepted_at),
        "delivered": stamp(row.delivered_at),
        "parts": row.parts,
        "key": row.key,
        "why": row.why or row.code,
    }


def inbound_json(row: InboundRow) -> Row:
    """Return one message that came in, in the record's shape: `from` is the sender, `state` what became of it."""
    reading = row.reading or {}
    return {
        "id": f"in-{row.id}",
        "client": row.client_id,
        "direction": "in",
        "kind": str(reading.get("intent") or "message"),
        "channel": row.source,
        "from": row.address,
        "to": row.to,
        "body": row.text,
        "state": (row.outcome or "handled") if row.handled_at else "waiting",
        "at": stamp(row.received_at),
        "due": None,
        "accepted": stamp(row.kept_at),
        "parts": None,
        "key": f"{row.source}:{row.provider_id}",
        "reading": row.reading,
    }


def alerts_json(tx: Tx, clinic_id: int, client_id: int | None = None) -> list[Row]:
    """Return a clinic's alerts in the order raised, each with everyone who was told of it and how that went."""
    statement = select(Alert).where(Alert.clinic_id == clinic_id)
    if client_id is not None:
        statement = statement.where(Alert.client_id == client_id)
    return alerts_by_row_json(tx, list(tx.exec(statement.order_by(col(Alert.id)))))


def alerts_by_row_json(tx: Tx, alerts: Sequence[Alert]) -> list[Row]:
    """Return alerts in the record's shape, in a constant number of questions."""
    told: defaultdict[int | None, list[Row]] = defaultdict(list)
    ids = [alert.id for alert in alerts if alert.id is not None]
    dates = dates_of(tx, sorted({session_id for alert in alerts for session_id in alert.session_ids}))
    for start in range(0, len(ids), CHUNK):
        part = ids[start : start + CHUNK]
        for row in tx.exec(select(Outbound).where(col(Outbound.alert_id).in_(part)).order_by(col(Outbound.id))):
            told[row.alert_id].append(told_json(row))
    return [alert_json(alert, told[alert.id], dates) for alert in alerts]


def dates_of(tx: Tx, session_ids: Sequence[int]) -> dict[int, date]:
    """Return the dates of these sessions by id."""
    dates: dict[int, date] = {}
    for start in range(0, len(session_ids), CHUNK):
        part = session_ids[start : start + CHUNK]
        wanted = select(col(ExerciseSession.id), col(ExerciseSession.on_date)).where(col(ExerciseSession.id).in_(part))
        dates |= {session_id: on for session_id, on in tx.exec(wanted) if session_id is not None}
    return dates


def told_json(row: Outbound) -> Row:
    """Return one telling of an alert: to whom, how, and whether it arrived."""
    return {
        "who": "staff" if row.staff_id is not None else "client",
        "staff": row.staff_id,
        "kind": row.kind,
        "channel": row.channel,
        "to": row.to,
        "state": row.state,
        "due": stamp(row.due_at),
        "accepted": stamp(row.accepted_at),
        "delivered": stamp(row.delivered_at),
    }


def alert_json(alert: Alert, told: list[Row], dates: Mapping[int, date]) -> Row:
    """Return one alert in the record's shape; `sessions` are dates."""
    return {
        "id": alert.id,
        "number": alert.number,
        "client": alert.client_id,
        "address": alert.address,
        "rule": alert.rule,
        "level": alert.level,
        "state": alert.state,
        "opened": stamp(alert.opened_at),
        "acknowledged": stamp(alert.acknowledged_at),
        "acknowledged_by": alert.acknowledged_by,
        "closed": stamp(alert.closed_at),
        "outcome": alert.outcome,
        "one_of_two": alert.one_of_two,
        "told": told,
        "because": alert.because,
        "sessions": [day(dates[session_id]) for session_id in alert.session_ids if session_id in dates],
    }
