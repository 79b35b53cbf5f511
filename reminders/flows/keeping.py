"""Keeping what comes in as it came, before anything of it is understood: in the database, or beside it in a crowd."""

import logging
from collections.abc import Sequence
from contextlib import suppress
from datetime import datetime
from pathlib import Path
from typing import Any

from reminders.core.channel import Inbound
from reminders.store import inbox
from reminders.store.arrivals import Arrivals
from reminders.store.db import Database, Tx

LOG = logging.getLogger("reminders.receive")
MOST_FILES = 100  # brought in by one transaction


def keep(tx: Tx, inbound: Inbound, now: datetime, *, fetched: bool = False) -> int | None:
    """Keep a message as it came and return its id; None when it was kept before, which changes nothing."""
    return inbox.keep(tx, [columns_of(inbound, now, fetched)])[0]


def keep_beside(arrivals: Arrivals, inbound: Inbound, now: datetime) -> None:
    """Keep a message as it came beside the database, where nobody waits for its writer. Raises OSError."""
    arrivals.put(columns_of(inbound, now, False))


def bring_in(db: Database) -> None:
    """Bring what was kept beside the database into it, oldest first; what was brought in before changes nothing."""
    arrivals = db.arrivals
    files = arrivals.files() if arrivals is not None else []
    for begin in range(0, len(files), MOST_FILES):
        some = files[begin : begin + MOST_FILES]
        try:
            bring_files(db, some)
        except Exception as error:  # noqa: BLE001 - one bad file must hold up no other; it stays and is tried again
            LOG.error("arrivals not brought in", extra={"error": type(error).__name__, "files": len(some)})
            for one in some:
                with suppress(Exception):
                    bring_files(db, [one])


def bring_files(db: Database, files: Sequence[Path]) -> None:
    """Keep what some files hold in one transaction, then forget them."""
    assert db.arrivals is not None
    rows = [row for path in files for row in db.arrivals.rows_in(path)]
    if rows:
        with db.begin() as tx:
            inbox.keep(tx, rows)
    db.arrivals.forget(files)


def columns_of(inbound: Inbound, now: datetime, fetched: bool) -> dict[str, Any]:
    """Return a message's row."""
    names = [*inbound.answers, *([f"token:{inbound.reply_token}"] if inbound.reply_token else [])]
    return {
        "source": inbound.source,
        "provider_id": inbound.provider_id,
        "address": inbound.address,
        "to": inbound.to,
        "text": inbound.text,
        "raw": inbound.raw,
        "received_at": inbound.received_at,
        "kept_at": now,
        "pictures": inbound.pictures,
        "is_verified": inbound.verified,
        "is_automatic": inbound.automatic,
        "bounce_of": inbound.bounce_of,
        "bounce_code": inbound.bounce_code,
        "opt_out_type": inbound.opt_out_type,
        "answers": " ".join(names),
        "whole_text": inbound.whole_text,
        "fetched": fetched,
    }
