"""The client's own pause: begun, changed and ended. A hold is something else and stands in flows/hold."""

from datetime import date, datetime, timedelta

from sqlalchemy import Date, bindparam
from sqlmodel import col, select

from reminders.core.schedule import WEEKDAYS, client_day, local_date
from reminders.flows import plan, steps
from reminders.store import around, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession, Pause

DEFAULT_DAYS, MOST_DAYS = 14, 90
OPEN = (
    select(Pause)
    .where(
        col(Pause.client_id) == bindparam("client"),
        col(Pause.ended_at).is_(None),
        col(Pause.until_on) >= bindparam("today", type_=Date()),
    )
    .order_by(col(Pause.from_on), col(Pause.id))
)
PAUSED_KINDS = ("reminder", "evening", "morning", "reason", "question", "praise")


def end_named(said: str | int | None, today: date) -> date | None:
    """Return the last paused day that a reply names: an ISO date or the next such weekday; None when it names none."""
    if not isinstance(said, str):
        return None
    if said in WEEKDAYS:
        return today + timedelta(days=(WEEKDAYS.index(said) - today.weekday() - 1) % 7 + 1)
    try:
        day = date.fromisoformat(said)
    except ValueError:
        return None
    return day if day > today else None


def open_pause(tx: Tx, client_id: int, today: date) -> Pause | None:
    """Return the pause that runs or is still to come."""
    if around.lacks(tx, "pause", client_id):
        return None
    return tx.exec(OPEN, params={"client": client_id, "today": today}).first()


def begin(
    tx: Tx,
    client: Client,
    until_on: date | None,
    by: str,
    now: datetime,
    *,
    reason: str = "",
    from_on: date | None = None,
) -> Pause:
    """Pause a client until a date (the last paused day), by default 14 days, at most 90; a running one is changed.

    One that the service began for silence becomes hers or the desk's when they set it: no report ends it any more.
    """
    today = client_day(now, client.time_zone)
    first = max(from_on or today, today)
    until = min(until_on or first + timedelta(days=DEFAULT_DAYS - 1), first + timedelta(days=MOST_DAYS - 1))
    pause = open_pause(tx, client.id or 0, today)
    if pause is None:
        pause = Pause(client_id=client.id or 0, from_on=first, until_on=until, reason=reason, by=by, opened_at=now)
        tx.add(pause)
    else:
        pause.until_on = until
        pause.from_on = min(pause.from_on, first)
        if by != "service":
            pause.reason, pause.by = reason, by
    tx.flush()
    if pause.from_on <= today:
        outbox.withdraw(tx, now, "paused", client_id=client.id or 0, kinds=PAUSED_KINDS)
        set_open_session(tx, client, today, "paused", now)
    return pause


def set_open_session(tx: Tx, client: Client, today: date, state: str, now: datetime) -> None:
    """Make the session of today held or paused when its reminder is written or went out and nobody reported it.

    One whose hour has not come stays planned: at its hour the pause or hold is read, and may be over.
    """
    statement = select(ExerciseSession).where(
        ExerciseSession.client_id == client.id,
        ExerciseSession.on_date == today,
        ExerciseSession.kind == "planned",
        col(ExerciseSession.state).in_(("planned", "reminded")),
        col(ExerciseSession.queued_at).is_not(None),
    )
    for session in tx.exec(statement):
        session.state, session.settled_at = state, now
    tx.flush()


def end(tx: Tx, client: Client, by: str, now: datetime) -> bool:
    """End a client's pause; False when there was none. A day whose hour has passed stays as it is."""
    today = local_date(now, client.time_zone)
    pause = open_pause(tx, client.id or 0, today)
    if pause is None:
        return False
    pause.ended_at, pause.ended_by = now, by
    tx.flush()
    steps.after_pause(tx, client, pause, now)
    plan.replan(tx, client, now)
    return True
