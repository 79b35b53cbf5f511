"""Keeping what came in, as it came: one row a message, whoever hands it over and however often."""

from collections.abc import Mapping, Sequence
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
    is_theirs: statement.returning(INBOX.c.id, INBOX.c.source, INBOX.c.provider_id)
    for is_theirs, statement in unless_there(INBOX, "source", "provider_id").items()
}

NEWEST = select(INBOX.c.kept_at).order_by(INBOX.c.id.desc()).limit(1)
LATELY = timedelta(seconds=2)
WHILE_HEARING = 64  # rows: SQLite's one writer is then free again within some hundredths of a second


def keep(tx: Tx, messages: Sequence[Mapping[str, Any]]) -> list[int | None]:
    """Write messages by the names of their columns; return their ids, None for one that was kept before."""
    rows = [{**EMPTY, **values} for values in messages]
    found = tx.connection().execute(KEEP[is_postgres(tx)], rows if len(rows) > 1 else rows[0])
    ids = {(row.source, row.provider_id): row.id for row in found}
    return [ids.pop((values["source"], values["provider_id"]), None) for values in messages]


def rows_at_once(tx: Tx, now: datetime, most: int) -> int:
    """Return how many rows one write transaction may hold: fewer while texts come in and wait for the same writer."""
    if is_postgres(tx):
        return most
    newest = ask(tx, NEWEST).scalar_one_or_none()
    return min(most, WHILE_HEARING) if newest is not None and newest > now - LATELY else most
