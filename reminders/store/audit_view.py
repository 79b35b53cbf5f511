"""The audit log as it is looked at: filtered, a page at a time. Writing it is flows/audit."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from sqlmodel import col, select

from reminders.store.db import Tx
from reminders.store.tables import Audit

PAGE = 100


@dataclass(frozen=True)
class Filter:
    """What is looked for: who (part of the name), which action, which client, from an instant and before one."""

    by: str = ""
    action: str = ""
    client_id: int | None = None
    since: datetime | None = None
    until: datetime | None = None


def filtered(clinic_id: int, wanted: Filter) -> Any:
    """Return the question for a clinic's entries that fit."""
    statement = select(Audit).where(Audit.clinic_id == clinic_id)
    if wanted.by:
        statement = statement.where(col(Audit.by).ilike(f"%{wanted.by.replace('%', '').replace('_', '')}%"))
    if wanted.action:
        statement = statement.where(Audit.action == wanted.action)
    if wanted.client_id is not None:
        statement = statement.where(Audit.client_id == wanted.client_id)
    if wanted.since is not None:
        statement = statement.where(col(Audit.at) >= wanted.since)
    if wanted.until is not None:
        statement = statement.where(col(Audit.at) < wanted.until)
    return statement


def entries(tx: Tx, clinic_id: int, wanted: Filter, before: int = 0) -> list[Audit]:
    """Return a page of entries, newest first, and one more where there are more."""
    statement = filtered(clinic_id, wanted)
    if before > 0:
        statement = statement.where(col(Audit.id) < before)
    return list(tx.exec(statement.order_by(col(Audit.id).desc()).limit(PAGE + 1)))


def every(tx: Tx, clinic_id: int, wanted: Filter) -> Iterator[Audit]:
    """Yield every entry that fits, oldest first, a page at a time."""
    after = 0
    while True:
        statement = filtered(clinic_id, wanted).where(col(Audit.id) > after)
        page: list[Audit] = list(tx.exec(statement.order_by(col(Audit.id)).limit(500)))
        yield from page
        if not page:
            return
        after = page[-1].id or 0


def actions(tx: Tx, clinic_id: int) -> list[str]:
    """Return the actions that stand in a clinic's log."""
    return sorted(tx.exec(select(Audit.action).where(Audit.clinic_id == clinic_id).distinct()))
