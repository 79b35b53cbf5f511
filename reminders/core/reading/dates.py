"""Which day a reply speaks of, when it is not today's session: a day's name, yesterday, or a date."""

from datetime import date

from reminders.core.reading.intent import Evidence

_DAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")


def day_told(evidence: Evidence, today: date | None) -> str | None:
    """Return today, yesterday, a weekday's three letters or an ISO date, for reports and reasons of another day."""
    hits = evidence.hits
    for label in ("day.yesterday", "day.today"):
        if label in hits:
            return label.removeprefix("day.")
    for name in _DAYS:
        if f"day.{name}" in hits:
            return name
    return None
