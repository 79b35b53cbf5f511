"""What tells a row from a later one that was given its number: the mark that a link's proof covers.

SQLite gives the highest numbers again after an erasure, and a restored database goes on from older ones: without a
mark an old link would open another client's page, or quiet another client's alert.
"""

from datetime import date, datetime

from reminders.store.shapes import stamp


def client_mark(created_at: datetime | None) -> str:
    """Return the mark of a client: when she was enrolled."""
    return f"client {stamp(created_at)}"


def session_mark(client_id: int, created_at: datetime | None, on_date: date) -> str:
    """Return the mark of a session: whose it is, and her day."""
    return f"session {client_id} {stamp(created_at)} {on_date.isoformat()}"


def alert_mark(opened_at: datetime) -> str:
    """Return the mark of an alert: when it was first raised."""
    return f"alert {stamp(opened_at)}"


def message_mark(key: str) -> str:
    """Return the mark of a message: its key, since a mail's reply address means the mail that was sent."""
    return f"message {key}"


def contact_mark(address: str) -> str:
    """Return the mark of a contact: its address, so that a mail's link means the address that it went to."""
    return f"address {address}"
