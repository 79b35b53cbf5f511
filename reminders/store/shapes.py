"""How instants, dates and rows look in the record's plain values; what is shown is decided by those who use this."""

from datetime import UTC, date, datetime
from typing import Any

Row = dict[str, Any]
CHUNK = 500  # ids in one IN (…): SQLite takes 32,766 values at most, and shorter statements are cached better


def stamp(at: datetime | None) -> str | None:
    """Return an instant as ISO 8601 in UTC with a Z, to the second."""
    return at.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ") if at else None


def day(on: date | None) -> str | None:
    """Return a date as ISO 8601."""
    return on.isoformat() if on else None
