"""Consent, address by address: opting out and in, wrong numbers, one-click unsubscribe, contacts confirmed by a reply.

Consent belongs to the address and its history is only added to. What may still be sent is read again in flows/gate.
"""

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import update
from sqlmodel import col, select

from reminders.core.attribution import Holder, named_holders
from reminders.core.kinds import KINDS
from reminders.core.scope import is_keyword, means_every_way
from reminders.flows import joining, perhaps_meant, plan, questions, say
from reminders.flows.understand import Heard, next_said
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, ConsentEvent, Contact, InboundRow, Outbound

WORDING_VERSION = joining.WORDING_VERSION
NEED_CONSENT = tuple(name for name, kind in KINDS.items() if kind.needs_consent and not kind.to_staff)


@dataclass(frozen=True)
class Closing:
    """Why an address closes: the change as the history keeps it, how, by whom, and the message it came with."""

    change: str
    how: str
    by: str = "client"
    inbound_id: int | None = None


def opt_out(tx: Tx, heard: Heard) -> None:
    """Close the address a reply came from, for all on it or for the person it names; with "all", every address.

    All on it are all whose address it is, also where a mail or page told which one of them wrote.
    """
    row = heard.row
    named = named_people(heard)
    everyone = not named or len(named) == len(heard.people)
    chosen = heard.people if everyone else named
    kind = "email" if row.source == "email" else "sms"
    how = "STOP" if is_blocking(row) else "in words"
    closing = Closing("withdrawn", how, inbound_id=row.id)
    contacts = [contact for contact, _ in chosen]
    if means_every_way(row.text, kind):
        contacts = [one for _, client in chosen for one in clients.contacts_of(tx, client.id or 0)]
    if everyone:
        chosen = all_on(tx, contacts)
        contacts = [contact for contact, _ in chosen]
    were_open = [contact for contact in contacts if contact.consent != "closed"]
    people = {client.id or 0: client for _, client in chosen}
    perhaps = [client for client in people.values() if perhaps_meant.may_mean_exercises(tx, client, heard.now)]
    close_contacts(tx, heard.clinic, contacts, people, closing, heard.now, for_all=everyone)
    for contact in contacts:
        if contact.address == row.address and row.source == "sms" and is_blocking(row):
            contact.provider_blocked = True
    for client in people.values():
        tell_desk(tx, heard, client, "opted out")
    perhaps_meant.say_meant(tx, perhaps, row.text, heard.now)
    if were_open and row.opt_out_type != "STOP":
        names = [] if everyone else [client.name.split()[0] for client in people.values()]
        heard.say("stopped", "stopped", names=names)
    heard.outcome = "opt_out"


def all_on(tx: Tx, contacts: Sequence[Contact]) -> list[tuple[Contact, Client]]:
    """Return every client whose address one of these is, locked: consent belongs to the address."""
    found = list(dict.fromkeys(contact.address for contact in contacts))
    clients.lock_at(tx, found)
    return [pair for address in found for pair in clients.clients_at(tx, address)]


def is_blocking(row: InboundRow) -> bool:
    """Return whether the provider blocks the number by itself: it says so, or the text is one of its bare words."""
    return row.opt_out_type == "STOP" or is_keyword(row.text)


def named_people(heard: Heard) -> list[tuple[Contact, Client]]:
    """Return the people on a shared phone whom a reply names."""
    if len(heard.people) == 1:
        return []
    everyone = [Holder(client.id or 0, (client.name, client.name.split()[0])) for _, client in heard.people]
    named = {holder.client_id for holder in named_holders(heard.row.text, everyone)}
    return [(contact, client) for contact, client in heard.people if client.id in named]


def close_contacts(
    tx: Tx,
    clinic: Clinic,
    contacts: Sequence[Contact],
    people: dict[int, Client],
    closing: Closing,
    now: datetime,
    *,
    for_all: bool = True,
) -> None:
    """Close addresses for these clients, keep how it came about, and take back what waits for them.

    `for_all`: for everyone on the address, now and later; else for these clients alone, unless nobody else's consent
    stands there: then whoever is enrolled with it later is invited by a text from it alone.
    """
    seen: set[str] = set()
    for contact in contacts:
        fresh = contact.consent != "closed"
        contact.consent, contact.ever_closed = "closed", True
        if fresh:
            contact.consent_changed_at = now
        take_back(tx, contact, now)
        hers = not for_all and is_others_too(tx, contact, people)
        if hers or contact.address not in seen:
            seen.add(contact.address)
            tx.add(history(clinic, contact, people[contact.client_id] if hers else None, closing, now))
    tx.flush()
    for client in people.values():
        after_closing(tx, client, now)


def is_others_too(tx: Tx, contact: Contact, people: Collection[int]) -> bool:
    """Return whether a contact's address is open, or not asked about yet, for somebody else."""
    return any(
        one.consent != "closed" and client.id not in people for one, client in clients.clients_at(tx, contact.address)
    )


def history(clinic: Clinic, contact: Contact, client: Client | None, closing: Closing, now: datetime) -> ConsentEvent:
    """Return the line of the consent history that a closing adds."""
    return ConsentEvent(
        clinic_id=clinic.id or 0,
        address=contact.address,
        kind=contact.kind,
        change=closing.change,
        client_id=client.id if client else None,
        how=closing.how,
        wording_version=WORDING_VERSION,
        language=client.language if client else "en",
        by=closing.by,
        at=now,
        inbound_id=closing.inbound_id,
    )


def take_back(tx: Tx, contact: Contact, now: datetime) -> None:
    """Withdraw what waits for an address and needs its consent."""
    statement = update(Outbound).where(
        col(Outbound.contact_id) == contact.id, col(Outbound.state) == "waiting", col(Outbound.kind).in_(NEED_CONSENT)
    )
    tx.execute(statement.values(state="withdrawn", why="no consent", settled_at=now))


def after_closing(tx: Tx, client: Client, now: datetime) -> None:
    """Let a client without an open address be opted out: nothing is planned, nothing asked."""
    if any(one.consent == "open" for one in clients.contacts_of(tx, client.id or 0)):
        return
    if client.state == "active":
        client.state = "opted_out"
    questions.close_all(tx, client.id or 0, "lapsed", now)
    tx.flush()
    plan.replan(tx, client, now)


def opt_in(tx: Tx, heard: Heard) -> None:
    """Open the address again by a reply from it; on a shared phone ask whose reminders unless it names them."""
    row = heard.row
    could = [(contact, client) for contact, client in heard.people if client.state != "closed"]
    if len(could) > 1:
        named = {client.id for _, client in named_people(heard)}
        chosen = [pair for pair in could if pair[1].id in named]
        if not chosen:
            names = [client.name.split()[0] for _, client in could]
            questions.ask(
                tx, "who", row.address, None, heard.now, inbound_id=row.id, details={"start": True, "names": names}
            )
            heard.say("help", "ask_who_start", slot="ask", names=names)
            heard.outcome = "asked who"
            return
        could = chosen
    heard.outcome = "opt_in"
    if not could:
        tell_desk(tx, heard, heard.people[0][1], "START after discharge")
        return
    start(tx, heard, could)


def start(tx: Tx, heard: Heard, chosen: Sequence[tuple[Contact, Client]]) -> None:
    """Open the address for these clients, plan them, and say so; a first START brings the welcome."""
    row = heard.row
    again = []
    for contact, client in chosen:
        clinic = clients.the_clinic(tx, client.clinic_id)
        blocked = contact.provider_blocked and not is_keyword(row.text)
        is_first = client.state == "invited"
        event = None
        if contact.consent != "open":
            event = joining.open_contact(tx, clinic, client, contact, "START", "client", heard.now, inbound_id=row.id)
        contact.provider_blocked = blocked
        contact.unusable = ""
        contact.confirmed_at = contact.confirmed_at or heard.now
        joining.become_active(tx, client, heard.now)
        if blocked:
            tell_desk(tx, heard, client, "must text START")
        if is_first and event is not None:
            joining.welcome(tx, clinic, client, [event], heard.now)
        else:
            again.append(client)
    if again:
        names = [client.name.split()[0] for client in again] if len(heard.people) > 1 else []
        heard.say("started", "started", names=names, next=next_said(tx, again[0]))


def wrong_number(tx: Tx, heard: Heard) -> None:
    """Close a number that is not the client's any more, and tell the clinic what had been sent there."""
    row = heard.row
    people = {client.id or 0: client for _, client in heard.people}
    contacts = [contact for contact, _ in heard.people]
    were_open = any(contact.consent == "open" for contact in contacts)
    for contact, client in heard.people:
        sent = delivered_since(tx, contact)
        tell_desk(tx, heard, client, "wrong number", since_sure=sent)
    closing = Closing("closed", "wrong number", inbound_id=row.id)
    close_contacts(tx, heard.clinic, contacts, people, closing, heard.now)
    for contact in contacts:
        contact.unusable = contact.unusable or "wrong number"
    if were_open:
        heard.say("stopped", "wrong_number")
    heard.outcome = "wrong_number"


def delivered_since(tx: Tx, contact: Contact) -> list[dict[str, Any]]:
    """Return what was handed over to an address since her last sure reply from it."""
    statement = select(Outbound).where(
        Outbound.contact_id == contact.id, col(Outbound.state).in_(("accepted", "delivered", "unknown"))
    )
    if contact.last_sure_at is not None:
        statement = statement.where(col(Outbound.accepted_at) >= contact.last_sure_at)
    return [
        {"id": row.id, "kind": row.kind, "at": (row.accepted_at or row.created_at).isoformat()}
        for row in tx.exec(statement.order_by(col(Outbound.id)))
    ]


def unsubscribe(tx: Tx, contact: Contact, now: datetime) -> None:
    """Close one mail address by its one-click link, for all on it (RFC 8058); a second click changes nothing."""
    pairs = [pair for pair in all_on(tx, [contact]) if pair[0].consent != "closed"]
    people = {one.id or 0: one for _, one in pairs}
    if not people:
        return
    perhaps = [one for one in people.values() if perhaps_meant.may_mean_exercises(tx, one, now)]
    clinic = clients.the_clinic(tx, pairs[0][1].clinic_id)
    closing = Closing("withdrawn", "one-click")
    close_contacts(tx, clinic, [one for one, _ in pairs], people, closing, now)
    for one in people.values():
        details = {"what": "opted out", "channel": "email"}
        say.tell_desk(tx, clients.the_clinic(tx, one.clinic_id), one, "desk", "", details, now)
    perhaps_meant.say_meant(tx, perhaps, "", now)


def tell_desk(tx: Tx, heard: Heard, client: Client, what: str, **details: Any) -> None:
    """Tell a client's clinic what became of an address."""
    clinic = clients.the_clinic(tx, client.clinic_id)
    found = {"what": what, "channel": "email" if heard.row.source == "email" else "sms", **details}
    say.tell_desk(tx, clinic, client, "desk", heard.row.text, found, heard.now, inbound_id=heard.row.id)


def confirm(heard: Heard) -> None:
    """Note that the address answers sensibly, and for a sure reply that it is still hers."""
    reading, own = heard.reading, heard.contact
    if own is None or reading.intent in ("unclear", "wrong_number"):
        return
    for contact in (one for one, _ in heard.people if one.address == own.address):
        if contact.confirmed_at is None:
            contact.confirmed_at = heard.now
        if contact.reminders_unconfirmed:
            contact.reminders_unconfirmed = 0
    if reading.intent in ("report", "skip", "pain") and reading.ask is None and heard.client is not None:
        heard.is_sure = True
