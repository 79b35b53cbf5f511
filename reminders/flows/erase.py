"""A client's record is erased: name, addresses, words, sessions and ratings go; what the law keeps stays.

Kept are her number, the audit log (45 CFR 164.316(b)(2)(i): required documentation for six years), the numbers of her
alerts (never used again), and keyed hashes of addresses that opted out, so that they are never written to again.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime

from sqlmodel import col, select

from reminders.errors import NotFound
from reminders.flows import audit
from reminders.flows.forgetting import (
    blank_digests,
    blank_mentions,
    forget_answers,
    parts,
    removed,
    silence,
    take_messages,
)
from reminders.flows.joining import closed_elsewhere
from reminders.store import addresses, clients, journal
from reminders.store.db import Tx, lock_client
from reminders.store.tables import (
    Alert,
    AlertEvent,
    Client,
    ClientProgram,
    ClinicNote,
    ConsentEvent,
    Contact,
    DailyAnswer,
    ExerciseSession,
    Flag,
    Hold,
    Outbound,
    Pause,
    Precaution,
    Proposal,
    Question,
    Report,
    Schedule,
    Staff,
)
from reminders.texts import Texts

# In the order in which nothing is left hanging on what is gone.
HANGING = (
    Question,
    Flag,
    Report,
    Proposal,
    Hold,
    Pause,
    Precaution,
    DailyAnswer,
    ClinicNote,
    ExerciseSession,
    ClientProgram,
    Schedule,
    Contact,
)
GONE = "erased client"


@dataclass(frozen=True)
class Erased:
    """What an erasure did: how many rows went, how many alert numbers and closed addresses were kept."""

    rows: int
    alerts: int
    closed_addresses: int


def erase(tx: Tx, texts: Texts, clinic_id: int, client_id: int, by: str, why: str, now: datetime) -> Erased:
    """Erase a client's record and return what went and what stayed. Raises NotFound."""
    client = tx.get(Client, client_id)
    if client is None or client.clinic_id != clinic_id or client.closed_reason == "erased":
        raise NotFound(f"--client: there is no client {client_id}.")
    lock_client(tx, client_id)
    journal.note_erasure(tx, client)
    alone = [address for address in addresses_of(tx, client_id) if is_hers_alone(tx, address, client_id)]
    closed = keep_closed(tx, client, now)
    rows = take_messages(tx, client_id, alone, now)
    alerts = blank_alerts(tx, client_id, alone, now)
    blank_digests(tx, texts, client, now)
    blank_mentions(tx, client, now)
    forget_answers(tx, client)
    for table in HANGING:
        rows += removed(tx, table, table.client_id == client_id)
    blank_client(client, now)
    tx.flush()
    details = {"reason": why, "rows": rows, "kept": {"alert numbers": alerts, "closed addresses": closed}}
    audit.record(tx, clinic_id, by, "record erased", client_id, details, now)
    return Erased(rows, alerts, closed)


def keep_closed(tx: Tx, client: Client, now: datetime) -> int:
    """Leave of her consent history one hashed line for each address of hers that is closed; return how many.

    Her former addresses count too. One that another client has keeps its own history: what closed it for all stands
    there, and what closed it for her alone ends with her.
    """
    closed = 0
    contacts = {one.address: one for one in clients.contacts_of(tx, client.id or 0)}
    for address, kind in addresses_of(tx, client.id or 0).items():
        if is_shared(tx, address, client.id or 0):
            continue
        contact = contacts.get(address) or Contact(client_id=client.id or 0, kind=kind, address=address)
        if contact.consent == "closed" or closed_elsewhere(tx, contact):
            event = ConsentEvent(
                clinic_id=client.clinic_id,
                address=addresses.address_hash(tx, address),
                kind=kind,
                change="closed",
                how="record erased",
                by="service",
                at=now,
            )
            tx.add(event)
            closed += 1
        removed(tx, ConsentEvent, col(ConsentEvent.address) == address)
    removed(tx, ConsentEvent, col(ConsentEvent.client_id) == client.id)
    return closed


def addresses_of(tx: Tx, client_id: int) -> dict[str, str]:
    """Return every address that is or was hers, with its kind: by her contacts, consents and what was sent to her."""
    found: dict[str, str] = {}
    for table in (Contact, ConsentEvent):
        found |= dict(tx.exec(select(table.address, table.kind).where(table.client_id == client_id)).all())
    sent = select(Outbound.to, Outbound.channel).where(
        Outbound.client_id == client_id, col(Outbound.contact_id).is_not(None)
    )
    return dict(tx.exec(sent.distinct()).all()) | found


def is_shared(tx: Tx, address: str, client_id: int) -> bool:
    """Return whether an address is another client's too."""
    others = select(Contact.id).where(Contact.address == address, Contact.client_id != client_id)
    return tx.exec(others.limit(1)).first() is not None


def is_hers_alone(tx: Tx, address: str, client_id: int) -> bool:
    """Return whether all that came from an address is hers: no other client's, and no staff member's own."""
    staff = select(Staff.id).where((col(Staff.mobile) == address) | (col(Staff.email) == address))
    return not is_shared(tx, address, client_id) and tx.exec(staff.limit(1)).first() is None


def blank_alerts(tx: Tx, client_id: int, alone: Sequence[str], now: datetime) -> int:
    """Leave of her alerts their numbers, rules and instants; return how many. What staff were sent goes blank.

    Hers are also those about the addresses that are hers `alone`, from when no client had them.
    """
    unknown = col(Alert.client_id).is_(None) & col(Alert.address).in_(alone)
    alerts = list(tx.exec(select(Alert).where((col(Alert.client_id) == client_id) | unknown)))
    for alert in alerts:
        alert.because, alert.session_ids, alert.note, alert.address = [], [], "", ""
        alert.state, alert.next_step_at = "closed", None
    ids = [alert.id for alert in alerts if alert.id is not None]
    for part in parts(ids):
        removed(tx, AlertEvent, col(AlertEvent.alert_id).in_(part))
        silence(tx, col(Outbound.alert_id).in_(part), now)
    return len(alerts)


def blank_client(client: Client, now: datetime) -> None:
    """Leave of the client her number, clinic and the day she was enrolled; nobody is written to under it again."""
    client.name = f"{GONE} {client.id}"
    client.state, client.closed_reason, client.closed_at = "closed", "erased", client.closed_at or now
    client.chart_id, client.emergency_note, client.birth_year = "", "", None
    client.usual_pain = client.pinned_usual = client.kept_usual = client.kept_usual_on = None
    client.died_on = client.bereaved_until_on = client.last_heard_at = client.staff_wrote_at = None
    client.morning_on = client.morning_session_id = client.review_at = None
    client.news, client.levels = {}, {}
