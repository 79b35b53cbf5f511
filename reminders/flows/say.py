"""Queueing what is to be said: to a client, to staff, to the operator. Only rows are written; flows/deliver.py sends.

The words are rendered when a row is claimed, so only a template's name and plain values are kept.
"""

from collections.abc import Callable, Sequence
from datetime import datetime, timedelta
from typing import Any

from sqlmodel import col, select

from reminders.core.schedule import local_date, next_inside_window, parse_window
from reminders.store import bulk, clients, outbox
from reminders.store.db import Tx
from reminders.store.slim import AnyClient, AnyContact
from reminders.store.tables import Client, Clinic, ClinicNote, Contact, InboundRow, Outbound, Staff

LATE_ANSWER = timedelta(minutes=15)  # an answer later than this after the text it answers waits for the window
DANGER_ANSWER = timedelta(hours=12)  # a danger answer does not, while its text is younger than this


def answer(
    tx: Tx,
    clinic: Clinic,
    inbound: InboundRow,
    client: Client | None,
    kind: str,
    template: str,
    details: dict[str, Any],
    now: datetime,
    *,
    due_at: datetime | None = None,
    session_id: int | None = None,
    key: str = "",
    contact_id: int | None = None,
) -> int | None:
    """Queue an answer to the address that a message came from; return its id, None when it was queued before.

    `contact_id` saves a look where the caller knows which of the client's contacts that address is.
    """
    values = bulk.message(
        key=key or outbox.answer_key(inbound.id or 0, kind),
        clinic_id=clinic.id or 0,
        client_id=client.id if client else None,
        contact_id=contact_id or (contact_id_at(tx, client, inbound.address) if client else None),
        session_id=session_id,
        inbound_id=inbound.id,
        kind=kind,
        channel="email" if "@" in inbound.address else "sms",
        to=inbound.address,
        language=client.language if client else "en",
        template=template,
        details=details,
        due_at=due_at or answer_due_at(clinic, client, inbound.received_at, kind, now, template),
        created_at=now,
    )
    return bulk.queue_one(tx, values)


def contact_id_at(tx: Tx, client: Client, address: str) -> int | None:
    """Return which of a client's contacts an address is."""
    found = [contact.id for contact in clients.contacts_of(tx, client.id or 0) if contact.address == address]
    return found[0] if found else None


def answer_due_at(
    clinic: Clinic, client: AnyClient | None, received_at: datetime, kind: str, now: datetime, template: str = ""
) -> datetime:
    """Return when an answer goes: at once, or in the next window (the clinic's for a stranger) when its text is old."""
    age = now - received_at
    if age <= LATE_ANSWER or (age < DANGER_ANSWER and is_danger_answer(kind, template)):
        return now
    window = clients.window_of(clinic, client) if client else parse_window(clinic.window)
    return next_inside_window(now, window, client.time_zone if client else clinic.time_zone)


def is_danger_answer(kind: str, template: str) -> bool:
    """Return whether an answer is to danger words, so that it may wake somebody; HELP and a high rating may not."""
    return kind == "danger" or (kind == "stranger" and template != "help_stranger")


def tell_client(
    tx: Tx,
    clinic: Clinic,
    client: Client,
    kind: str,
    template: str,
    details: dict[str, Any],
    now: datetime,
    key: Callable[[int], str],
    *,
    due_at: datetime | None = None,
    session_id: int | None = None,
    alert_id: int | None = None,
    expires_at: datetime | None = None,
    text_only: bool = False,
) -> list[int]:
    """Queue what the service begins, to each open address her channel setting names; `key` takes a contact's id."""
    queued: list[int] = []
    for contact in clients.answered_contacts(client, clients.contacts_of(tx, client.id or 0)):
        if text_only and contact.kind != "sms":
            continue
        window = clients.window_of(clinic, client)
        values = bulk.message(
            kind,
            **frame(clinic, client, contact, now),
            key=key(contact.id or 0),
            template=template,
            details=details,
            session_id=session_id,
            alert_id=alert_id,
            expires_at=expires_at,
            due_at=due_at or next_inside_window(now, window, client.time_zone),
        )
        found = bulk.queue_one(tx, values)
        if found is not None:
            queued.append(found)
    return queued


def frame(clinic: Clinic, client: AnyClient, contact: AnyContact, now: datetime) -> dict[str, Any]:
    """Return what every message that the service begins has: whose it is, where to, her language and window."""
    window = clients.window_of(clinic, client)
    return {
        "clinic_id": clinic.id or 0,
        "client_id": client.id,
        "contact_id": contact.id,
        "channel": contact.kind,
        "to": contact.address,
        "language": client.language,
        "window_from": window[0],
        "window_until": window[1],
        "time_zone": client.time_zone,
        "created_at": now,
    }


def tell_staff(
    tx: Tx,
    clinic: Clinic,
    staff: Staff,
    kind: str,
    template: str,
    details: dict[str, Any],
    now: datetime,
    key: Callable[[str], str],
    *,
    channels: Sequence[str] = ("sms", "email"),
    alert_id: int | None = None,
    due_at: datetime | None = None,
) -> list[int]:
    """Queue a message to a staff member; with no mobile (or after STOP) by e-mail. `key` takes a channel."""
    has_mobile = bool(staff.mobile) and staff.mobile_stopped_at is None
    wanted = [channel for channel in channels if channel != "sms" or has_mobile] or ["email"]
    queued: list[int] = []
    for channel in wanted:
        row = Outbound(
            key=key(channel),
            clinic_id=clinic.id or 0,
            staff_id=staff.id,
            alert_id=alert_id,
            kind=kind,
            channel=channel,
            to=staff.mobile if channel == "sms" else staff.email,
            template=template,
            details=details,
            due_at=due_at or now,
            created_at=now,
        )
        found = outbox.queue(tx, row)
        if found is not None:
            queued.append(found)
    return queued


def tell_desk(
    tx: Tx,
    clinic: Clinic,
    client: Client | None,
    kind: str,
    words: str,
    details: dict[str, Any],
    now: datetime,
    *,
    inbound_id: int | None = None,
) -> ClinicNote:
    """Put an item into the clinic's inbox: a question, a wish for other days, an unclear reply, a stranger's words."""
    note = ClinicNote(
        clinic_id=clinic.id or 0,
        client_id=client.id if client else None,
        inbound_id=inbound_id,
        kind=kind,
        words=words,
        details=details,
        at=now,
    )
    tx.add(note)
    tx.flush()
    return note


def is_on_desk(tx: Tx, client: Client, words: str) -> bool:
    """Return whether the desk has an open item about a client already."""
    statement = select(ClinicNote.id).where(
        ClinicNote.client_id == client.id, ClinicNote.words == words, col(ClinicNote.closed_at).is_(None)
    )
    return tx.exec(statement.limit(1)).first() is not None


def tell_operator(tx: Tx, clinic: Clinic, what: str, details: dict[str, Any], now: datetime) -> None:
    """Tell whoever runs the service, each thing once a day a clinic or alert: an inbox item, and a mail where set up.

    The row's address is filled in when it is sent (`operator`), since settings are not known here.
    """
    key = outbox.operator_key(clinic.id or 0, what, local_date(now, clinic.time_zone), details.get("alert", 0))
    row = Outbound(
        key=key,
        clinic_id=clinic.id or 0,
        kind="operator",
        channel="email",
        to="operator",
        template="operator",
        details={"what": what, **details},
        due_at=now,
        created_at=now,
    )
    if outbox.queue(tx, row) is not None:
        tell_desk(tx, clinic, None, "operator", what, details, now)


def is_reachable(contacts: Sequence[Contact]) -> bool:
    """Return whether any of a client's addresses may be written to."""
    return bool(clients.open_contacts(contacts))
