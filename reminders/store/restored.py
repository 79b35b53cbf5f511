"""Whether a database was brought back from a file and has not been let send again; set by restore and import alone."""

from datetime import datetime

from reminders.store import marks
from reminders.store.db import Tx

RESTORED = "restored"


def mark_restored(tx: Tx, made_at: datetime) -> None:
    """Let nothing be sent from now on; `made_at` is the moment that the file holds."""
    marks.set_mark(tx, RESTORED, at=made_at, value="waiting")


def waits_since(tx: Tx) -> datetime | None:
    """Return the moment that a restored database holds, None where sending is not held back."""
    found = marks.mark(tx, RESTORED)
    return found.at if found is not None and found.value == "waiting" else None


def let_send(tx: Tx) -> None:
    """Let the database send again."""
    found = marks.mark(tx, RESTORED)
    if found is not None:
        marks.set_mark(tx, RESTORED, at=found.at, value="resumed")
