"""The audit log: who saw, changed, exported or was sent what; a clinic's entries are chained by their hashes.

Details hold ids, field names and counts, never a name, an address or a client's words: entries outlive an erasure.
What counts as a view or a change is decided where it happens, not here.
"""

import hashlib
import json
from collections.abc import Iterator, Mapping
from datetime import UTC, datetime
from typing import Any

from sqlalchemy import text
from sqlmodel import col, select

from reminders.store.db import Tx
from reminders.store.tables import Audit

CHAIN_LOCK = 0x41554454  # the first half of PostgreSQL's two-part advisory lock; the second is the clinic's id
PAGE = 500


def record(
    tx: Tx,
    clinic_id: int | None,
    by: str,
    action: str,
    client_id: int | None,
    details: Mapping[str, Any],
    now: datetime,
) -> Audit:
    """Write one entry at the end of the clinic's chain and return it.

    `by` is a staff e-mail, `client`, `command` or `service`; `action` two words such as `client viewed`. Call it as
    the last thing of a transaction: on PostgreSQL it holds the chain until the commit.
    """
    hold_chain(tx, clinic_id)
    plain = json.loads(json.dumps(dict(details), default=str))  # as the database gives it back
    entry = Audit(clinic_id=clinic_id, at=now, by=by, action=action, client_id=client_id, details=plain)
    entry.previous_hash = last_hash(tx, clinic_id)
    entry.hash = hash_of(entry)
    tx.add(entry)
    tx.flush()
    return entry


def hold_chain(tx: Tx, clinic_id: int | None) -> None:
    """Let one writer at a time add to a chain; SQLite has one writer anyway."""
    if tx.get_bind().dialect.name == "postgresql":
        tx.execute(
            text("SELECT pg_advisory_xact_lock(:chain, :clinic)"), {"chain": CHAIN_LOCK, "clinic": clinic_id or 0}
        )


def last_hash(tx: Tx, clinic_id: int | None) -> str:
    """Return the hash of a chain's newest entry, empty for a chain that has none."""
    statement = select(Audit.hash).where(
        col(Audit.clinic_id).is_(clinic_id) if clinic_id is None else col(Audit.clinic_id) == clinic_id
    )
    return tx.exec(statement.order_by(col(Audit.id).desc()).limit(1)).first() or ""


def hash_of(entry: Audit) -> str:
    """Return the SHA-256 of an entry and of the hash before it (FIPS 180-4), as 64 hex digits."""
    words = [
        entry.previous_hash,
        entry.clinic_id,
        entry.at.astimezone(UTC).isoformat(timespec="microseconds"),
        entry.by,
        entry.action,
        entry.client_id,
        entry.details,
    ]
    return hashlib.sha256(json.dumps(words, sort_keys=True, separators=(",", ":")).encode()).hexdigest()


def broken_entries(tx: Tx) -> list[int]:
    """Return the ids of the entries whose own hash or whose link to the entry before does not hold; empty when all do.

    An entry changed in place breaks itself, one taken out of the middle breaks the next. One cut off at the end
    cannot be seen here, which is why backups and exports of the log carry the last hash.
    """
    before: dict[int | None, str] = {}
    broken: list[int] = []
    for entry in entries(tx):
        if entry.hash != hash_of(entry) or entry.previous_hash != before.get(entry.clinic_id, ""):
            broken.append(entry.id or 0)
        before[entry.clinic_id] = entry.hash
    return broken


def entries(tx: Tx) -> Iterator[Audit]:
    """Yield every entry in the order written, a page at a time."""
    after = 0
    while page := list(tx.exec(select(Audit).where(col(Audit.id) > after).order_by(col(Audit.id)).limit(PAGE))):
        after = page[-1].id or 0
        yield from page
