"""The one-click link of a mail: which address it speaks of, and closing that one.

A link means the address that its mail went to. After a change of address that is a former one of hers; how an address
that clients have is closed stands in consent.py.
"""

from collections.abc import Callable
from datetime import datetime

from sqlmodel import select

from reminders.flows import consent
from reminders.flows.joining import closed_elsewhere
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, ConsentEvent, Contact, Outbound


def address_meant(tx: Tx, contact: Contact, is_meant: Callable[[str], bool]) -> str | None:
    """Return which address of a contact, present or former, a link was made for; None when for none of them."""
    sent = select(Outbound.to).where(Outbound.contact_id == contact.id, Outbound.channel == "email")
    told = select(ConsentEvent.address).where(
        ConsentEvent.client_id == contact.client_id, ConsentEvent.kind == contact.kind
    )
    known = [contact.address, *sorted({*tx.exec(sent.distinct()), *tx.exec(told.distinct())})]
    return next((address for address in known if is_meant(address)), None)


def is_closed(tx: Tx, contact: Contact, address: str) -> bool:
    """Return whether a present or former address of a contact is closed."""
    if address == contact.address:
        return contact.consent == "closed"
    return closed_elsewhere(tx, Contact(client_id=0, kind=contact.kind, address=address))


def close(tx: Tx, contact: Contact, address: str, now: datetime) -> None:
    """Close an address for everyone on it; of a former one nobody has now, the history alone is told."""
    there = [contact] if address == contact.address else []
    if not there:
        there = [one for one, _ in clients.clients_at(tx, address) if one.consent != "closed"]
    if there:
        consent.unsubscribe(tx, there[0], now)
        return
    client = tx.get(Client, contact.client_id)
    if client is None or is_closed(tx, contact, address):
        return
    event = ConsentEvent(
        clinic_id=client.clinic_id,
        address=address,
        kind=contact.kind,
        change="withdrawn",
        how="one-click",
        language=client.language,
        by="client",
        at=now,
    )
    tx.add(event)
    tx.flush()
