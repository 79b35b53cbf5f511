"""Keeping what came in, as it came: one row a message, whoever hands it over and however often."""

from datetime import UTC, datetime, timedelta
from typing import Any

from sqlalchemy import select

from reminders.store.bulk import table_of, unless_there
from reminders.store.db import Tx, ask, is_postgres
from reminders.store.tables import InboundRow

SOME_DAY = datetime(2000, 1, 1, tzinfo=UTC)
INBOX = table_of(InboundRow)
EMPTY = InboundRow(
    source="", provider_id="", address="", text="", raw=b"", received_at=SOME_DAY, kept_at=SOME_DAY
).model_dump(exclude={"id"})
KEEP = {
    is_theirs: statement.returning(INBOX.c.id)
    for is_theirs, statement in unless_there(INBOX, "source", "provider_id").items()
}

NEWEST = select(INBOX.c.kept_at).order_by(INBOX.c.id.desc()).limit(1)
LATELY = timedelta(seconds=2)
WHILE_HEARING = 64  # rows: SQLite's one writer is then free again within some hundredths of a second


def keep(tx: Tx, **values: Any) -> int | None:
    """Write a message by the names of its columns; return its id, None when it was kept before."""
    found: int | None = tx.connection().execute(KEEP[is_postgres(tx)], {**EMPTY, **values}).scalar_one_or_none()
    return found


def rows_at_once(tx: Tx, now: datetime, most: int) -> int:
    """Return how many rows one write transaction may hold: fewer while texts come in and wait for the same writer."""
    if is_postgres(tx):
        return most
    newest = ask(tx, NEWEST).scalar_one_or_none()
    return min(most, WHILE_HEARING) if newest is not None and newest > now - LATELY else most
