"""When a client's dose, silence and periodic questions are looked at: away from the crowd of the morning."""

from datetime import date, datetime, timedelta

from reminders.core.schedule import at_local
from reminders.store.tables import Client

FROM_HOUR = "10:30"
SPREAD_MINUTES = 120


def review_on(client: Client, day: date) -> datetime:
    """Return the instant at which a client is looked at on a local date; clients are spread over two hours."""
    return at_local(day, FROM_HOUR, client.time_zone) + timedelta(minutes=(client.id or 0) % SPREAD_MINUTES)


def sooner(client: Client, day: date) -> datetime:
    """Return the earlier of the review that is set and the one of a local date."""
    wanted = review_on(client, day)
    return wanted if client.review_at is None else min(client.review_at, wanted)
