"""The sessions of the last days that a reply may speak of, and the exercises that they showed."""

from collections.abc import Mapping
from datetime import date, timedelta
from typing import Any

from sqlalchemy import Date, bindparam
from sqlmodel import col, select

from reminders.core.attribution import LATE_REPORT_DAYS, KnownSession
from reminders.core.reading.model import SessionExercise
from reminders.store import around
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession

Weeks = dict[tuple[int | None, date], list[ExerciseSession]]
TODAY = bindparam("today", type_=Date())
# What every text asks, made once.
ITEMS = (
    select(col(ExerciseSession.items))
    .where(col(ExerciseSession.client_id) == bindparam("client"), col(ExerciseSession.on_date) <= TODAY)
    .order_by(col(ExerciseSession.on_date).desc())
    .limit(LATE_REPORT_DAYS)
)
WEEK = (
    select(ExerciseSession)
    .where(
        col(ExerciseSession.client_id) == bindparam("client"),
        col(ExerciseSession.on_date) >= bindparam("since", type_=Date()),
        col(ExerciseSession.on_date) <= TODAY,
    )
    .order_by(col(ExerciseSession.on_date).desc(), col(ExerciseSession.id))
)


WEEKS = (
    select(ExerciseSession)
    .where(
        col(ExerciseSession.client_id).in_(bindparam("clients", expanding=True)),
        col(ExerciseSession.on_date) >= bindparam("since", type_=Date()),
        col(ExerciseSession.on_date) <= TODAY,
    )
    .order_by(col(ExerciseSession.on_date).desc(), col(ExerciseSession.id))
)


def exercises_for(tx: Tx, client: Client, today: date) -> tuple[SessionExercise, ...]:
    """Return the exercises that a reply is likely to speak of: today's as shown, else the latest that were shown."""
    shown = next((one.items for one in week_of(tx, client, today) if one.items), None)
    if shown is None:
        shown = next((items for items in tx.exec(ITEMS, params={"client": client.id, "today": today}) if items), [])
    return tuple(exercise_of(item) for item in shown)


def exercise_of(item: dict[str, Any]) -> SessionExercise:
    """Return a session's line as the reader takes it."""
    side = item.get("side") or "both"
    return SessionExercise(
        item["letter"], item["name"], item.get("sets"), item.get("reps"), item.get("seconds"), side != "both"
    )


def recent_sessions(tx: Tx, client: Client, today: date) -> list[KnownSession]:
    """Return a client's program sessions of the last 7 days up to today."""
    week = [one for one in week_of(tx, client, today) if one.kind == "planned"]
    return [KnownSession(one.id or 0, one.on_date, one.state) for one in week]


def week_of(tx: Tx, client: Client, today: date) -> list[ExerciseSession]:
    """Return a client's sessions of the last 7 days up to today, newest first; a transaction asks but once.

    She is locked and planned no session of the past meanwhile, so the rows stay the same, and their values are those
    that this transaction gave them.
    """
    weeks: Weeks = tx.info.setdefault("weeks", {})
    if (client.id, today) not in weeks:
        since = today - timedelta(days=LATE_REPORT_DAYS)
        weeks[client.id, today] = list(tx.exec(WEEK, params={"client": client.id, "since": since, "today": today}))
    return weeks[client.id, today]


def gather(tx: Tx, days: Mapping[int, date]) -> None:
    """Fetch at once the sessions of the last 7 days of many clients, each up to a day of hers."""
    if not days:
        return
    since = min(days.values()) - timedelta(days=LATE_REPORT_DAYS)
    weeks: Weeks = tx.info.setdefault("weeks", {})
    weeks |= {(client_id, day): [] for client_id, day in days.items()}
    for one in tx.exec(WEEKS, params={"clients": list(days), "since": since, "today": max(days.values())}):
        day = days[one.client_id]
        if day - timedelta(days=LATE_REPORT_DAYS) <= one.on_date <= day:
            weeks[one.client_id, day].append(one)
    shown = [one for week in weeks.values() for one in week]
    around.note_unreported(tx, {one.id or 0: one.client_id for one in shown})
