"""Everything the record holds of one client, as plain values: what an export is made from."""

from datetime import datetime
from typing import Any

from sqlmodel import col, or_, select

from reminders.store import record
from reminders.store.db import Tx
from reminders.store.shapes import Row, stamp
from reminders.store.tables import (
    Client,
    ClientProgram,
    Clinic,
    ClinicNote,
    ConsentEvent,
    Contact,
    DailyAnswer,
    Flag,
    Hold,
    Pause,
    Precaution,
    Proposal,
    Question,
    Schedule,
    Staff,
)

FORMAT, VERSION = "reminders client record", 1
HANGING = {
    "schedules": Schedule,
    "precautions": Precaution,
    "programs": ClientProgram,
    "daily_answers": DailyAnswer,
    "flags": Flag,
    "holds": Hold,
    "pauses": Pause,
    "questions": Question,
    "notes": ClinicNote,
    "proposals": Proposal,
}


def course_of(tx: Tx, client: Client, now: datetime) -> Row:
    """Return a client's whole record: who she is, what was prescribed, asked, answered, judged, said and agreed to."""
    clinic, therapist = tx.get(Clinic, client.clinic_id), tx.get(Staff, client.therapist_id)
    assert clinic is not None
    (shown,) = record.clients_json(tx, client.clinic_id, now, client.id)
    own = {
        "holder": client.holder,
        "chart_id": client.chart_id,
        "birth_year": client.birth_year,
        "emergency_note": client.emergency_note,
        "active_on": client.active_on.isoformat() if client.active_on else None,
        "created": stamp(client.created_at),
        "closed": stamp(client.closed_at),
        "died_on": client.died_on.isoformat() if client.died_on else None,
    }
    return {
        "format": FORMAT,
        "version": VERSION,
        "made": stamp(now),
        "clinic": {"id": clinic.id, "name": clinic.name, "phone": clinic.phone, "time_zone": clinic.time_zone},
        "therapist": {"id": therapist.id, "name": therapist.name, "email": therapist.email} if therapist else None,
        "client": {**shown, **own},
        **{name: hanging(tx, table, client.id or 0) for name, table in HANGING.items()},
        "consents": consents(tx, client.id or 0),
        "sessions": record.sessions_json(tx, client.id or 0),
        "loose_reports": record.loose_reports_json(tx, client.id or 0),
        "alerts": record.alerts_json(tx, client.clinic_id, client.id),
        "messages": record.messages_json(tx, client.clinic_id, client.id),
    }


def hanging(tx: Tx, table: Any, client_id: int) -> list[Row]:
    """Return the rows of a table that hang on a client, in the order written."""
    rows = tx.exec(select(table).where(table.client_id == client_id).order_by(table.id))
    return [row.model_dump(mode="json") for row in rows]


def consents(tx: Tx, client_id: int) -> list[Row]:
    """Return what was agreed to and withdrawn for her addresses, for her or for all on a shared one."""
    addresses = select(Contact.address).where(Contact.client_id == client_id)
    shared = (col(ConsentEvent.address).in_(addresses)) & col(ConsentEvent.client_id).is_(None)
    statement = select(ConsentEvent).where(or_(col(ConsentEvent.client_id) == client_id, shared))
    return [row.model_dump(mode="json") for row in tx.exec(statement.order_by(col(ConsentEvent.id)))]
