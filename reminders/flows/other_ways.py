"""The other address of a client: where a message goes when the one it was meant for did not take it.

When it goes is decided in flows/outcomes (a final failure) and flows/watch (a danger answer that nobody took in time).
"""

from collections.abc import Sequence
from datetime import datetime

from sqlmodel import col, select

from reminders.core.kinds import kind_of
from reminders.flows import escalate
from reminders.store import bulk, clients, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, Contact, Outbound

# Answers that may not be lost; a stranger's goes no other way, but staff are called.
URGENT_ANSWERS = ("danger", "stop_level", "stranger")
# What a copy to another address shares with the message it stands in for.
SHARED = {
    "clinic_id", "session_id", "alert_id", "inbound_id", "kind", "language", "template", "details", "expires_at",
    "window_from", "window_until", "time_zone",
}  # fmt: skip


def go(tx: Tx, row: Outbound, client: Client, now: datetime) -> bool:
    """Queue the same message to another address that she agreed to; return whether one carries it.

    A text goes by mail. A mail goes by text only where it is an answer to a danger sign or a rating at stop level.
    """
    if row.expires_at is not None and now >= row.expires_at:
        return False
    for contact in ways(tx, row, client):
        copy = Outbound(
            **row.model_dump(include=SHARED),
            client_id=client.id,
            key=f"{row.key}:{'mail' if contact.kind == 'email' else 'text'}:{contact.id}",
            contact_id=contact.id,
            channel=contact.kind,
            to=contact.address,
            due_at=now,
            created_at=now,
        )
        if bulk.RIDES in row.details:
            copy.details = {**row.details, bulk.STANDS_IN_FOR: row.details[bulk.RIDES]}
        if not goes_there_anyway(tx, row, contact):
            outbox.queue(tx, copy)
        return True
    return False


def ways(tx: Tx, row: Outbound, client: Client) -> Sequence[Contact]:
    """Return a client's open addresses of the other kind, less those that were tried for the same message already."""
    if row.channel == "sms":
        kind = "email"
    elif kind_of(row.kind).priority == 0:
        kind = "sms"
    else:
        return []
    known = clients.open_contacts([one for one in clients.contacts_of(tx, client.id or 0) if one.kind == kind])
    if kind == "email" or row.inbound_id is None:
        return known
    same = select(Outbound.to).where(Outbound.inbound_id == row.inbound_id, Outbound.kind == row.kind)
    tried = set(tx.exec(same.where(col(Outbound.channel) == "sms")))
    return [one for one in known if one.address not in tried]


def meant_for(tx: Tx, row: Outbound) -> list[Client]:
    """Return the clients whom an urgent answer is for: on a shared phone all about whom its text raised an alert."""
    ids = {one.client_id for one in escalate.alerts_from(tx, row)} | {row.client_id}
    found = [tx.get(Client, one) for one in sorted(one for one in ids if one is not None)]
    return [client for client in found if client is not None]


def goes_there_anyway(tx: Tx, row: Outbound, contact: Contact) -> bool:
    """Return whether the same message was written to that address too, and went or is still under way."""
    if row.kind == "reminder":
        others = outbox.reminders_of(tx, row.session_id or 0)
        return any(one.contact_id == contact.id and one.state in outbox.ALIVE for one in others)
    same = select(Outbound.id).where(
        Outbound.contact_id == contact.id,
        Outbound.kind == row.kind,
        Outbound.template == row.template,
        Outbound.created_at == row.created_at,  # what goes to several addresses is written at once
        col(Outbound.inbound_id).is_(None),
        col(Outbound.state).in_(outbox.ALIVE),
    )
    return row.inbound_id is None and tx.exec(same.limit(1)).first() is not None
