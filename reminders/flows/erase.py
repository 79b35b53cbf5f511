"""A client's record is erased: name, addresses, words, sessions and ratings go; what the law keeps stays.

Kept are her number, the audit log (45 CFR 164.316(b)(2)(i): required documentation for six years), the numbers of her
alerts (never used again), and keyed hashes of addresses that opted out, so that they are never written to again.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlalchemy import String, cast, delete, or_, update
from sqlmodel import col, select

from reminders.errors import NotFound
from reminders.flows import audit, digest
from reminders.flows.joining import closed_elsewhere
from reminders.store import addresses, clients, journal
from reminders.store.db import Tx, lock_client
from reminders.store.tables import (
    Alert,
    AlertEvent,
    Attempt,
    Client,
    ClientProgram,
    ClinicNote,
    ConsentEvent,
    Contact,
    DailyAnswer,
    DeliveryEvent,
    Digest,
    ExerciseSession,
    Flag,
    Hold,
    IdempotentAnswer,
    InboundRow,
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
    closed = keep_closed(tx, client, now)
    rows = take_messages(tx, client_id)
    alerts = blank_alerts(tx, client_id)
    blank_digests(tx, texts, client)
    blank_mentions(tx, client)
    for table in HANGING:
        rows += removed(tx, table, table.client_id == client_id)
    blank_client(client, now)
    tx.flush()
    details = {"reason": why, "rows": rows, "kept": {"alert numbers": alerts, "closed addresses": closed}}
    audit.record(tx, clinic_id, by, "record erased", client_id, details, now)
    return Erased(rows, alerts, closed)


def removed(tx: Tx, table: Any, condition: Any) -> int:
    """Take rows away; return how many."""
    tx.flush()
    result = tx.execute(delete(table).where(condition).execution_options(synchronize_session="fetch"))
    return int(result.rowcount)  # type: ignore[attr-defined]


def keep_closed(tx: Tx, client: Client, now: datetime) -> int:
    """Leave of her consent history one hashed line for each address that is closed; return how many."""
    closed = 0
    for contact in clients.contacts_of(tx, client.id or 0):
        if contact.consent == "closed" or closed_elsewhere(tx, contact):
            hashed = addresses.address_hash(tx, contact.address)
            event = ConsentEvent(
                clinic_id=client.clinic_id,
                address=hashed,
                kind=contact.kind,
                change="closed",
                how="record erased",
                by="service",
                at=now,
            )
            tx.add(event)
            closed += 1
        if not is_shared(tx, contact):
            removed(tx, ConsentEvent, col(ConsentEvent.address) == contact.address)
    removed(tx, ConsentEvent, col(ConsentEvent.client_id) == client.id)
    return closed


def is_shared(tx: Tx, contact: Contact) -> bool:
    """Return whether an address is another client's too."""
    others = select(Contact.id).where(Contact.address == contact.address, Contact.client_id != contact.client_id)
    return tx.exec(others.limit(1)).first() is not None


def take_messages(tx: Tx, client_id: int) -> int:
    """Take away what was sent to her and what she wrote; a message that is another client's report too stays his."""
    heard = select(InboundRow.id).where(InboundRow.client_id == client_id)
    told = select(Report.inbound_id).where(Report.client_id == client_id)
    others = select(Report.inbound_id).where(Report.client_id != client_id, col(Report.inbound_id).is_not(None))
    inbound = [
        number for number in {*tx.exec(heard), *tx.exec(told)} - set(tx.exec(others)) - {None} if number is not None
    ]
    shared = select(ExerciseSession.id).where(ExerciseSession.client_id == client_id)
    outbound = [row for row in tx.exec(select(Outbound.id).where(Outbound.client_id == client_id)) if row is not None]
    tx.execute(
        update(Outbound)
        .where(col(Outbound.session_id).in_(shared), col(Outbound.client_id).is_(None))
        .values(session_id=None)
    )
    rows = 0
    for part in parts(outbound):
        for table in (Attempt, DeliveryEvent):
            rows += removed(tx, table, col(table.outbound_id).in_(part))
        rows += removed(tx, Outbound, col(Outbound.id).in_(part))
    for part in parts(inbound):
        tx.execute(
            update(Outbound).where(col(Outbound.inbound_id).in_(part)).values(inbound_id=None, details={}, body="")
        )
        for linked in (Report, Flag, Question, ClinicNote, ConsentEvent):
            tx.execute(update(linked).where(col(linked.inbound_id).in_(part)).values(inbound_id=None))
        rows += removed(tx, InboundRow, col(InboundRow.id).in_(part))
    return rows


def parts(ids: Sequence[int], size: int = 200) -> list[Sequence[int]]:
    """Return ids in pieces that one statement takes."""
    return [ids[start : start + size] for start in range(0, len(ids), size)]


def blank_alerts(tx: Tx, client_id: int) -> int:
    """Leave of her alerts their numbers, rules and instants; return how many. What staff were sent goes blank."""
    alerts = list(tx.exec(select(Alert).where(Alert.client_id == client_id)))
    for alert in alerts:
        alert.because, alert.session_ids, alert.note, alert.address = [], [], "", ""
        alert.state, alert.next_step_at = "closed", None
    ids = [alert.id for alert in alerts if alert.id is not None]
    for part in parts(ids):
        removed(tx, AlertEvent, col(AlertEvent.alert_id).in_(part))
        blank = update(Outbound).where(col(Outbound.alert_id).in_(part))
        tx.execute(blank.values(details={}, subject="", body="", html="", session_id=None))
    return len(alerts)


def blank_digests(tx: Tx, texts: Texts, client: Client) -> None:
    """Take her out of the digests that were kept, and of the mails that carried them."""
    clinic = clients.the_clinic(tx, client.clinic_id)
    kept = select(Digest, Staff).join(Staff, col(Digest.therapist_id) == col(Staff.id))
    for made, therapist in tx.exec(kept.where(Staff.clinic_id == client.clinic_id)):
        values = digest.without(made.values, client.id or 0)
        if values == made.values:
            continue
        mail = digest.rendered(texts, clinic, therapist, values)
        made.values, made.text, made.html = values, mail.text, mail.html
        sent = update(Outbound).where(col(Outbound.kind) == "digest", col(Outbound.key).contains(f":{made.week}"))
        mine = sent.where(col(Outbound.clinic_id) == client.clinic_id)
        tx.execute(mine.values(details={}, body="", html=""))


def blank_mentions(tx: Tx, client: Client) -> None:
    """Blank what staff and other programs were sent with her name in it."""
    named = or_(col(Outbound.body).contains(client.name), col(Outbound.html).contains(client.name))
    tx.execute(update(Outbound).where(named).values(details={}, subject="", body="", html=""))
    removed(tx, IdempotentAnswer, cast(col(IdempotentAnswer.body), String).contains(client.name))


def blank_client(client: Client, now: datetime) -> None:
    """Leave of the client her number, clinic and the day she was enrolled; nobody is written to under it again."""
    client.name = f"{GONE} {client.id}"
    client.state, client.closed_reason, client.closed_at = "closed", "erased", client.closed_at or now
    client.chart_id, client.emergency_note, client.birth_year = "", "", None
    client.usual_pain = client.pinned_usual = client.kept_usual = client.kept_usual_on = None
    client.died_on = client.bereaved_until_on = client.last_heard_at = client.staff_wrote_at = None
    client.morning_on = client.morning_session_id = client.review_at = None
    client.news, client.levels = {}, {}
