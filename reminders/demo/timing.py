"""When something happens next in a story: what the service waits for, and at which hours of a day people stir."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import func
from sqlalchemy import select as sql_select
from sqlmodel import col

from reminders.core.schedule import at_local, local_date
from reminders.demo.people import CLINIC
from reminders.flows import digest
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, ExerciseSession, Outbound

# Texts that nobody hurries with come after breakfast, at eleven and so on, each day at minutes of its own: fewer
# moments are lived through.
HABITS_OF_THE_DAY = ("08:50", "10:20", "12:35", "15:10", "18:20", "19:30")
DAYS_MINUTES = 20
WORK_HOUR = "09:00"


def minimum(column: Any, *conditions: Any) -> Any:
    """Return the question for the earliest instant of a column."""
    return sql_select(func.min(column)).where(*conditions).scalar_subquery()


NEXT_DUE = sql_select(
    minimum(Outbound.due_at, col(Outbound.state) == "waiting"),
    minimum(ExerciseSession.due_at, col(ExerciseSession.state) == "planned", col(ExerciseSession.queued_at).is_(None)),
    minimum(Alert.next_step_at, col(Alert.state) != "closed"),
    minimum(ExerciseSession.closes_at, col(ExerciseSession.state).in_(("reminded", "planned"))),
    minimum(Client.review_at),
)


@dataclass(frozen=True)
class Due:
    """When the next thing of each kind is due: messages, plans and calls at once, the others at their hour."""

    send: datetime | None = None
    plan: datetime | None = None
    call: datetime | None = None
    closing: datetime | None = None
    review: datetime | None = None


def next_due(tx: Tx) -> Due:
    """Return when the next thing of each kind is due."""
    return Due(*tx.connection().execute(NEXT_DUE).one())


def is_come(at: datetime | None, now: datetime) -> bool:
    """Return whether an instant has come."""
    return at is not None and at <= now


def next_hour(now: datetime) -> datetime:
    """Return when what lasts long, and the mornings, are looked at next: once a day."""
    day = local_date(now, CLINIC["time_zone"])
    today = at_local(day, WORK_HOUR, CLINIC["time_zone"])
    return today if today > now else at_local(day + timedelta(days=1), WORK_HOUR, CLINIC["time_zone"])


def on_grid(at: datetime) -> datetime:
    """Return the next common moment from an instant on: some hours of each day, at a minute of that day."""
    zone = CLINIC["time_zone"]
    day = local_date(at, zone)
    while True:
        later = timedelta(minutes=day.toordinal() * 7 % DAYS_MINUTES)
        for hour in HABITS_OF_THE_DAY:
            moment = at_local(day, hour, zone) + later
            if moment >= at:
                return moment
        day += timedelta(days=1)


def is_digest_hour(now: datetime) -> bool:
    """Return whether the weekly digest is made now."""
    day = local_date(now, CLINIC["time_zone"])
    return day.weekday() == 0 and now == at_local(day, digest.HOUR, CLINIC["time_zone"])
