"""What makes a client's reminders begin: her program, her consent, becoming active, the welcome."""

from collections.abc import Callable, Sequence
from datetime import date, datetime, timedelta

from sqlmodel import col, select

from reminders.core.fitting import fitted, unfit
from reminders.core.program_json import to_json
from reminders.core.programs import Program
from reminders.core.schedule import days_text, local_date
from reminders.errors import BadInput
from reminders.flows import plan, say
from reminders.store import addresses, clients, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, ClientProgram, Clinic, ConsentEvent, Contact, ExerciseSession, Staff

WORDING_VERSION = "1"


def give_program(
    tx: Tx,
    client: Client,
    program: Program,
    precautions: Sequence[str],
    from_on: date,
    by: str,
    now: datetime,
    *,
    rung: int = 0,
    why: str = "enrolled",
) -> ClientProgram:
    """Give a client a new dated version of her program, fitted to her precautions."""
    newest = clients.newest_program(tx, client.id or 0)
    suited = fitted(program, precautions)
    changed = sorted({row.code for row in unfit(program, precautions)})
    version = ClientProgram(
        client_id=client.id or 0,
        number=newest.number + 1 if newest else 1,
        from_on=from_on,
        body=to_json(suited),
        rung=rung,
        rung_since_on=from_on,
        recheck_on=from_on + timedelta(weeks=program.recheck_weeks),
        end_on=from_on + timedelta(weeks=program.end_weeks),
        why=why if not changed else f"{why}; changed for her precautions: {', '.join(changed)}",
        by=by,
        created_at=now,
    )
    client.program_code = program.code
    tx.add(version)
    tx.flush()
    return version


def consent_at_desk(
    tx: Tx, clinic: Clinic, client: Client, how: str, on: date, by: str, now: datetime
) -> list[ConsentEvent]:
    """Record the consent that the desk took, for each address that never opted out; she becomes active and is welcomed.

    An address that opted out comes back only by a reply from it.
    """
    events = []
    for contact in clients.contacts_of(tx, client.id or 0):
        if contact.consent == "open" or contact.ever_closed or closed_elsewhere(tx, contact):
            continue
        event = open_contact(tx, clinic, client, contact, how, by, now, given_on=on)
        events.append(event)
    if events:
        become_active(tx, client, now)
        welcome(tx, clinic, client, events, now)
    return events


def closed_elsewhere(tx: Tx, contact: Contact) -> bool:
    """Return whether an address opted out under another client's name: consent belongs to the address.

    That it was taken from a record, or changed there, is no opt-out and hides none.
    """
    known_as = (contact.address, addresses.address_hash(tx, contact.address))  # the hash outlives an erased record
    events = tx.exec(select(ConsentEvent).where(col(ConsentEvent.address).in_(known_as)).order_by(col(ConsentEvent.id)))
    state = ""
    for event in events:
        if event.client_id in (None, contact.client_id) and event.change != "taken away":
            state = event.change
    return state in ("withdrawn", "closed")


def open_contact(
    tx: Tx,
    clinic: Clinic,
    client: Client,
    contact: Contact,
    how: str,
    by: str,
    now: datetime,
    *,
    given_on: date | None = None,
    inbound_id: int | None = None,
) -> ConsentEvent:
    """Open an address for a client and keep how that came about."""
    event = ConsentEvent(
        clinic_id=clinic.id or 0,
        address=contact.address,
        kind=contact.kind,
        change="restored" if contact.ever_closed else "given",
        client_id=client.id,
        how=how if given_on is None else f"{how} on {given_on.isoformat()}",
        wording_version=WORDING_VERSION,
        language=client.language,
        by=by,
        at=now,
        inbound_id=inbound_id,
    )
    contact.consent, contact.consent_changed_at = "open", now
    contact.provider_blocked = False
    tx.add(event)
    tx.flush()
    return event


def become_active(tx: Tx, client: Client, now: datetime) -> None:
    """Make a client active; her first session is the first exercise day strictly after this local date."""
    if client.state in ("invited", "opted_out"):
        client.state = "active"
        client.active_on = client.active_on or local_date(now, client.time_zone)
    tx.flush()
    plan.plan_next_session(tx, client, local_date(now, client.time_zone), now)


def welcome(tx: Tx, clinic: Clinic, client: Client, events: Sequence[ConsentEvent], now: datetime) -> None:
    """Queue the welcome to each address that was just opened and that she is written to on."""
    by_address = {event.address: event.id or 0 for event in events}
    newest = clients.plans_of(tx, client.id or 0)[-1]
    details = {"days": days_text(newest.days), "time": newest.time}
    contacts = {one.id or 0: one.address for one in clients.contacts_of(tx, client.id or 0)}
    key: Callable[[int], str] = lambda contact_id: outbox.welcome_key(  # noqa: E731 - named for its type
        contact_id, by_address.get(contacts[contact_id], 0)
    )
    say.tell_client(tx, clinic, client, "welcome", "welcome", details, now, key)
    client.welcomed_at = now


def first_session_on(tx: Tx, client: Client) -> date | None:
    """Return the date of a client's next planned session."""
    statement = select(col(ExerciseSession.on_date)).where(
        ExerciseSession.client_id == client.id, ExerciseSession.state == "planned"
    )
    return min(tx.exec(statement), default=None)


def staff_named(tx: Tx, clinic: Clinic, email: str) -> Staff:
    """Return a clinic's staff member by e-mail; raises BadInput when there is none."""
    found = clients.staff_by_email(tx, email)
    if found is None or found.clinic_id != clinic.id:
        raise BadInput(f"Nobody on the staff has the e-mail {email!r}.")
    return found
