"""The record leaves, one client's or all of it, and the audit log says why, to whom and what exactly."""

import hashlib
from collections.abc import Callable, Mapping, Sequence
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlmodel import col, select

from reminders.errors import BadInput, NotFound
from reminders.flows import audit
from reminders.store import archive
from reminders.store.course import course_of
from reminders.store.db import Database, Tx
from reminders.store.shapes import stamp
from reminders.store.tables import Client, Clinic

Write = Callable[[Mapping[str, Any]], str]


def export_client(
    tx: Tx, clinic_id: int, client_id: int, how: str, write: Write, why: Mapping[str, str], by: str, now: datetime
) -> str:
    """Return a client's record as a file's text; `why` holds reason and recipient. Raises NotFound, BadInput."""
    client = tx.get(Client, client_id)
    if client is None or client.clinic_id != clinic_id:
        raise NotFound(f"--client: there is no client {client_id}.")
    for name in ("reason", "recipient"):
        if not why.get(name, "").strip():
            raise BadInput(f"--{name} is needed: it is written into the audit log.")
    text = write(course_of(tx, client, now))
    details = {
        "format": how,
        "reason": why["reason"].strip(),
        "recipient": why["recipient"].strip(),
        "sha256": hashlib.sha256(text.encode()).hexdigest(),
    }
    audit.record(tx, clinic_id, by, "record exported", client_id, details, now)
    return text


def export_all(db: Database, path: Path, tables: Sequence[str], why: Mapping[str, str], by: str, now: datetime) -> int:
    """Write the whole record to a file and say so in the audit log of every clinic; return how many rows."""
    with db.begin() as tx:
        details = {"format": "all", "reason": why["reason"], "recipient": why["recipient"]}
        for clinic_id in tx.exec(select(Clinic.id).order_by(col(Clinic.id))).all():
            audit.record(tx, clinic_id, by, "whole record exported", None, details, now)
    return archive.write(db, path, tables, stamp(now) or "")
