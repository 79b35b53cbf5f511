"""Questions asked of clients and their clinic: plans, open addresses, pauses, holds, staff in charge."""

from collections.abc import Sequence
from datetime import date, datetime
from typing import TypeVar

from sqlalchemy import Date, bindparam
from sqlmodel import col, select

from reminders.core.hours import Hours, parse_hours
from reminders.core.schedule import Plan, parse_days, parse_window
from reminders.store import around
from reminders.store.db import Tx, is_postgres, lock_clients
from reminders.store.slim import AnyClient, AnyContact, SlimContact
from reminders.store.tables import Client, ClientProgram, Clinic, Contact, Hold, Pause, Schedule, Staff

Some = TypeVar("Some", Contact, SlimContact)
MOST_UNANSWERED = 3  # reminders to an address that was never confirmed by an answer or by the desk

# What every text and review asks, made once: making and comparing a question costs more than asking it.
CONTACTS = select(Contact).where(col(Contact.client_id) == bindparam("client"))
OPEN_HOLDS = (
    select(Hold).where(col(Hold.client_id) == bindparam("client"), col(Hold.ended_at).is_(None)).order_by(col(Hold.id))
)
PAUSES_ON = (
    select(Pause)
    .where(
        col(Pause.client_id) == bindparam("client"),
        col(Pause.ended_at).is_(None),
        col(Pause.from_on) <= bindparam("day", type_=Date()),
        col(Pause.until_on) >= bindparam("day", type_=Date()),
    )
    .order_by(col(Pause.id))
)
PROGRAMS = (
    select(ClientProgram)
    .where(col(ClientProgram.client_id) == bindparam("client"))
    .order_by(col(ClientProgram.number).desc())
)
CLIENTS_AT = (
    select(Contact, Client, Clinic, Staff)
    .join(Client, col(Contact.client_id) == col(Client.id))
    .join(Clinic, col(Client.clinic_id) == col(Clinic.id))
    .join(Staff, col(Client.therapist_id) == col(Staff.id))
    .where(col(Contact.address).in_(bindparam("addresses", expanding=True)))
    .order_by(col(Client.id))
)
CONTACTS_OF_ALL = select(Contact).where(col(Contact.client_id).in_(bindparam("clients", expanding=True)))


def the_clinic(tx: Tx, clinic_id: int) -> Clinic:
    """Return a clinic that is known to exist."""
    clinic = tx.get(Clinic, clinic_id)
    assert clinic is not None
    return clinic


def has_demo(tx: Tx) -> bool:
    """Return whether a database is marked as a demo's, which it stays for good."""
    return tx.exec(select(Clinic.id).where(col(Clinic.is_demo).is_(True)).limit(1)).first() is not None


def hours_of(clinic: Clinic) -> Hours:
    """Return a clinic's opening hours."""
    return parse_hours(clinic.hours, clinic.time_zone, clinic.closed_days)


def plans_of(tx: Tx, client_id: int) -> list[Plan]:
    """Return a client's schedule versions, oldest first."""
    rows = tx.exec(select(Schedule).where(Schedule.client_id == client_id).order_by(col(Schedule.from_on)))
    return [Plan(parse_days(row.days), row.time, row.time_zone, row.from_on) for row in rows]


def window_of(clinic: Clinic, client: AnyClient) -> tuple[str, str]:
    """Return the local hours between which the service may begin a message to a client."""
    return parse_window(client.window or clinic.window)


def contacts_of(tx: Tx, client_id: int) -> list[Contact]:
    """Return a client's addresses, texts first."""
    known: dict[int, list[Contact]] = tx.info.get("contacts", {})
    rows = known[client_id] if client_id in known else tx.exec(CONTACTS, params={"client": client_id})
    return sorted(rows, key=lambda contact: (contact.kind != "sms", contact.id or 0))


def wanted_contacts(client: AnyClient, contacts: Sequence[Some]) -> list[Some]:
    """Return the open, usable addresses that her channel setting names; nothing moves to another by itself."""
    wanted = client.channel.split("+")
    return [
        contact for contact in contacts if contact.consent == "open" and not contact.unusable and contact.kind in wanted
    ]


def is_unanswered(contact: AnyContact) -> bool:
    """Return whether an address took three reminders and nobody ever answered from it: nothing more goes there."""
    return contact.confirmed_at is None and contact.reminders_unconfirmed >= MOST_UNANSWERED


def answered_contacts(client: AnyClient, contacts: Sequence[Some]) -> list[Some]:
    """Return the addresses that her channel setting names, less those that nobody ever answered from."""
    return [contact for contact in wanted_contacts(client, contacts) if not is_unanswered(contact)]


def open_contacts(contacts: Sequence[Some]) -> list[Some]:
    """Return the addresses that may be written to."""
    return [contact for contact in contacts if contact.consent == "open" and not contact.unusable]


def open_hold(tx: Tx, client_id: int) -> Hold | None:
    """Return the hold that stops a client, if there is one."""
    if around.lacks(tx, "hold", client_id):
        return None
    return tx.exec(OPEN_HOLDS, params={"client": client_id}).first()


def pause_on(tx: Tx, client_id: int, day: date) -> Pause | None:
    """Return the pause that covers a local date."""
    if around.lacks(tx, "pause", client_id):
        return None
    return tx.exec(PAUSES_ON, params={"client": client_id, "day": day}).first()


def program_on(tx: Tx, client_id: int, day: date) -> ClientProgram | None:
    """Return the program version that counts on a local date."""
    statement = select(ClientProgram).where(ClientProgram.client_id == client_id, col(ClientProgram.from_on) <= day)
    return tx.exec(statement.order_by(col(ClientProgram.number).desc())).first()


def newest_program(tx: Tx, client_id: int) -> ClientProgram | None:
    """Return a client's newest program version, begun or not."""
    return tx.exec(PROGRAMS, params={"client": client_id}).first()


def therapist_of(tx: Tx, client: Client) -> Staff | None:
    """Return the therapist in charge of a client."""
    return tx.get(Staff, client.therapist_id)


def staff_by_email(tx: Tx, email: str) -> Staff | None:
    """Return a staff member by her e-mail address."""
    return tx.exec(select(Staff).where(Staff.email == email.strip().lower())).first()


def admins_of(tx: Tx, clinic_id: int) -> list[Staff]:
    """Return a clinic's admins who are at work."""
    statement = select(Staff).where(Staff.clinic_id == clinic_id, Staff.role == "admin", col(Staff.is_active).is_(True))
    return list(tx.exec(statement.order_by(col(Staff.id))))


def lead_of(tx: Tx, clinic: Clinic) -> Staff | None:
    """Return the clinic's lead: the one its setting names, else its first staff member of that role."""
    if clinic.lead_email:
        named = staff_by_email(tx, clinic.lead_email)
        if named and named.is_active:
            return named
    statement = select(Staff).where(Staff.clinic_id == clinic.id, Staff.role == "lead", col(Staff.is_active).is_(True))
    return tx.exec(statement.order_by(col(Staff.id))).first()


def on_leave(staff: Staff, day: date) -> bool:
    """Return whether a staff member's cover is in force on a date."""
    if staff.cover_id is None or staff.cover_from_on is None:
        return False
    return staff.cover_from_on <= day and (staff.cover_until_on is None or day <= staff.cover_until_on)


def clients_at(tx: Tx, address: str) -> list[tuple[Contact, Client]]:
    """Return every client whose contact an address is; the transaction keeps their clinics and therapists at hand."""
    known = gathered(tx)
    if address in known:
        return known[address]
    found = list(tx.exec(CLIENTS_AT, params={"addresses": [address]}))
    tx.info.setdefault("at hand", []).extend(found)
    return [(contact, client) for contact, client, _, _ in found]


def gathered(tx: Tx) -> dict[str, list[tuple[Contact, Client]]]:
    """Return who is at the addresses that were looked up at once."""
    found: dict[str, list[tuple[Contact, Client]]] = tx.info.get("people", {})
    return found


def lock_at(tx: Tx, addresses: Sequence[str]) -> None:
    """Lock who is at these addresses before anything is read of them, in one order; SQLite has one writer anyway."""
    if is_postgres(tx):
        found = tx.exec(select(Contact.client_id).where(col(Contact.address).in_(addresses)))
        lock_clients(tx, found.all())


def gather(tx: Tx, addresses: Sequence[str]) -> list[Client]:
    """Fetch at once who is at these addresses, and their other addresses; return the clients. For one transaction
    that then handles a message from each: who comes to an address meanwhile, or leaves it, is not noticed.
    """
    people: dict[str, list[tuple[Contact, Client]]] = {address: [] for address in addresses}
    found = list(tx.exec(CLIENTS_AT, params={"addresses": list(addresses)}))
    tx.info.setdefault("at hand", []).extend(found)
    for contact, client, _, _ in found:
        people[contact.address].append((contact, client))
    known = {client.id or 0: client for _, client, _, _ in found}
    contacts: dict[int, list[Contact]] = {client_id: [] for client_id in known}
    for contact in tx.exec(CONTACTS_OF_ALL, params={"clients": list(known)}):
        contacts[contact.client_id].append(contact)
    tx.info["people"], tx.info["contacts"] = people, contacts
    return list(known.values())


def last_heard(client: Client, now: datetime) -> None:
    """Note that a client was heard at an instant."""
    if client.last_heard_at is None or client.last_heard_at < now:
        client.last_heard_at = now
