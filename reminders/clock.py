"""The one reader of the time. Everything else is given `now`, an aware UTC instant."""

import time
from collections.abc import Callable
from datetime import UTC, datetime
from pathlib import Path

from reminders.errors import BadInput

Clock = Callable[[], datetime]


def system_clock() -> datetime:
    """Return the machine's time as an aware UTC instant."""
    return datetime.now(UTC)


def machine_seconds() -> float:
    """Return the machine's seconds, which its processes share; for pace alone, whatever clock is given."""
    return time.time()


def instant(text: str, field: str) -> datetime:
    """Return the UTC instant that an ISO 8601 text with an offset or Z names; raises BadInput naming the field."""
    try:
        moment = datetime.fromisoformat(text.strip())
    except ValueError:
        raise BadInput(f"{field} is not an ISO 8601 instant such as 2027-03-01T08:30:00Z: {text!r}.") from None
    if moment.tzinfo is None:
        raise BadInput(f"{field} needs an offset or Z, such as 2027-03-01T08:30:00-05:00: {text!r}.")
    return moment.astimezone(UTC)


def clock_from(setting: str | None) -> Clock:
    """Return the clock that REMINDERS_CLOCK asks for: the machine's, a fixed instant, or a file read at every use."""
    if not setting:
        return system_clock
    if setting.startswith("@"):
        path = Path(setting[1:])
        file_instant(path)
        return lambda: file_instant(path)
    fixed = instant(setting, "REMINDERS_CLOCK")
    return lambda: fixed


def file_instant(path: Path) -> datetime:
    """Return the instant that a clock file holds; raises BadInput when it cannot be read."""
    try:
        text = path.read_text(encoding="utf-8")
    except OSError:
        raise BadInput(f"REMINDERS_CLOCK names a file that cannot be read: {path}.") from None
    return instant(text, "REMINDERS_CLOCK")
