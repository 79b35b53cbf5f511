"""A whole record that `export --all` wrote comes into a fresh database, which sends nothing until it is resumed.

Nothing that was closed is opened by it: consents, holds and what was sent come along as they are.
"""

from datetime import datetime
from pathlib import Path

from sqlmodel import col, select

from reminders.errors import Refused
from reminders.flows import audit
from reminders.store import archive, restored
from reminders.store.db import Database, Tx
from reminders.store.tables import Client, Clinic, Staff


def bring_in(db: Database, path: Path, by: str, now: datetime) -> int:
    """Put a file's record into a fresh database, all or nothing; return how many rows. Raises BadInput, Refused."""
    header = archive.checked_header(path)
    with db.begin() as tx:
        if not is_fresh(tx):
            raise Refused("Import needs a fresh database: this one holds a clinic's record already.")
        archive.empty_tables(tx)
        rows = archive.read_into(tx, path)
        restored.mark_restored(tx, datetime.fromisoformat(header["made"]))
        for clinic_id in tx.exec(select(Clinic.id).order_by(col(Clinic.id))).all():
            audit.record(tx, clinic_id, by, "whole record imported", None, {"rows": rows}, now)
    return rows


def is_fresh(tx: Tx) -> bool:
    """Return whether nobody has used a database yet."""
    return all(tx.exec(select(table.id).limit(1)).first() is None for table in (Client, Staff))
