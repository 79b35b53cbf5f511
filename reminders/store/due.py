"""Whether any of the recurring work is due, each by one look into an index: a quiet round is cheap."""

from datetime import datetime, timedelta
from typing import Any

from sqlmodel import col, select

from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, ExerciseSession, Hold, InboundRow, Outbound, Pause

A_WEEK = timedelta(days=7)
TWO_MINUTES = timedelta(minutes=2)


def there_is(tx: Tx, table: Any, *conditions: Any) -> bool:
    """Return whether any row of a table meets the conditions."""
    return tx.exec(select(table.id).where(*conditions).limit(1)).first() is not None


def sessions_to_plan(tx: Tx, now: datetime) -> bool:
    """Return whether a planned session's hour has come."""
    return there_is(
        tx,
        ExerciseSession,
        ExerciseSession.state == "planned",
        col(ExerciseSession.due_at) <= now,
        col(ExerciseSession.queued_at).is_(None),
    )


def sessions_to_close(tx: Tx, now: datetime) -> bool:
    """Return whether a session that was reminded, or whose reminders came to nothing, is over."""
    open_states = ("reminded", "planned")
    return there_is(
        tx, ExerciseSession, col(ExerciseSession.state).in_(open_states), col(ExerciseSession.closes_at) <= now
    )


def clients_to_review(tx: Tx, now: datetime) -> bool:
    """Return whether a client's dose, silence or dates are to be looked at."""
    return there_is(tx, Client, col(Client.review_at) <= now)


def mornings_to_ask(tx: Tx, now: datetime) -> bool:
    """Return whether a morning question may be due anywhere on the globe."""
    return there_is(tx, Client, col(Client.morning_on) <= now.date() + timedelta(days=1))


def things_to_watch(tx: Tx, now: datetime) -> bool:
    """Return whether a pause is past its date, a hold a week old, or an urgent answer still not taken."""
    return (
        there_is(tx, Pause, col(Pause.ended_at).is_(None), col(Pause.until_on) <= now.date())
        or there_is(
            tx,
            Hold,
            col(Hold.ended_at).is_(None),
            col(Hold.lead_told_at).is_(None),
            col(Hold.opened_at) <= now - timedelta(days=7),
        )
        or there_is(
            tx,
            Outbound,
            col(Outbound.state).in_(("waiting", "claimed", "unknown")),
            Outbound.priority == 0,
            col(Outbound.due_at) <= now - timedelta(minutes=2),
            Outbound.channel == "sms",
        )
    )


def alerts_to_call(tx: Tx, now: datetime) -> bool:
    """Return whether an alert's next call is due."""
    return there_is(tx, Alert, col(Alert.state).in_(("open", "acknowledged")), col(Alert.next_step_at) <= now)


def long_lasting(tx: Tx, now: datetime) -> bool:
    """Return whether a pause has passed its date, a hold lasts long, or a danger answer is stuck."""
    return (
        there_is(tx, Pause, col(Pause.ended_at).is_(None), col(Pause.until_on) <= now.date())
        or there_is(
            tx,
            Hold,
            col(Hold.ended_at).is_(None),
            col(Hold.lead_told_at).is_(None),
            col(Hold.opened_at) <= now - A_WEEK,
        )
        or there_is(
            tx,
            Outbound,
            col(Outbound.state).in_(("waiting", "claimed", "unknown")),
            Outbound.priority == 0,
            col(Outbound.due_at) <= now - TWO_MINUTES,
        )
    )


def inbound_to_read(tx: Tx, _now: datetime) -> bool:
    """Return whether a message waits to be read."""
    return there_is(tx, InboundRow, col(InboundRow.handled_at).is_(None))


def newest_alert_id(tx: Tx) -> int:
    """Return the id of the newest alert, 0 when there is none."""
    return tx.exec(select(Alert.id).order_by(col(Alert.id).desc()).limit(1)).first() or 0
