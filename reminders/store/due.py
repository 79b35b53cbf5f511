"""Whether any recurring work is due, each by a look into an index and all in one question: a quiet round is cheap.

Only for the scheduler's rounds; what is done about it is in the flows.
"""

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Date, and_, bindparam, exists, or_, select

from reminders.store.bulk import OUTBOUND, SESSION, table_of
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Hold, InboundRow, Pause, Question
from reminders.store.tables.record import WAITS_FOR_A_NAME

A_DAY, TWO_MINUTES = timedelta(days=1), timedelta(minutes=2)
LONG_HOLD = timedelta(days=2)  # the fewest working days that a clinic can set
TABLES = (Alert, Client, Hold, InboundRow, Pause, Question)
ALERT, CLIENT, HOLD, INBOUND, PAUSE, QUESTION = (table_of(row) for row in TABLES)
MOMENT = SESSION.c.due_at.type
NOW, DAYS_AGO, MINUTES_AGO = (bindparam(name, type_=MOMENT) for name in ("now", "days_ago", "minutes_ago"))
TODAY, TOMORROW = bindparam("today", type_=Date()), bindparam("tomorrow", type_=Date())


def there_is(*conditions: ColumnElement[bool]) -> ColumnElement[bool]:
    """Return the question whether any row meets these conditions on its columns."""
    return exists().where(*conditions)


TO_PLAN = there_is(SESSION.c.state == "planned", SESSION.c.due_at <= NOW, SESSION.c.queued_at.is_(None))
TO_CLOSE = there_is(SESSION.c.state.in_(("reminded", "planned")), SESSION.c.closes_at <= NOW)
TO_REVIEW = there_is(CLIENT.c.review_at <= NOW)
TO_ASK = there_is(CLIENT.c.morning_on <= TOMORROW)
TO_CALL = there_is(ALERT.c.state.in_(("open", "acknowledged")), ALERT.c.next_step_at <= NOW)
TO_READ = there_is(INBOUND.c.handled_at.is_(None))
TO_WATCH = or_(
    there_is(PAUSE.c.ended_at.is_(None), PAUSE.c.until_on <= TODAY),
    there_is(HOLD.c.ended_at.is_(None), HOLD.c.lead_told_at.is_(None), HOLD.c.opened_at <= DAYS_AGO),
    there_is(
        OUTBOUND.c.state.in_(("waiting", "claimed", "unknown")),
        OUTBOUND.c.priority == 0,
        or_(
            OUTBOUND.c.due_at <= MINUTES_AGO,
            and_(OUTBOUND.c.attempts > 0, OUTBOUND.c.created_at <= MINUTES_AGO),  # each refusal moves the due time
        ),
    ),
    there_is(WAITS_FOR_A_NAME, or_(QUESTION.c.closed_at.is_not(None), QUESTION.c.lapses_at <= NOW)),
)
WORK: Mapping[str, ColumnElement[bool]] = {
    "sweep": TO_CLOSE,
    "plan": TO_PLAN,
    "watch": TO_WATCH,
    "review": TO_REVIEW,
    "morning": TO_ASK,
    "escalate": TO_CALL,
}
ALL_WORK = select(*(question.label(name) for name, question in WORK.items()))


def moments(now: datetime) -> dict[str, Any]:
    """Return the instants and dates that the questions ask by."""
    return {
        "now": now,
        "days_ago": now - LONG_HOLD,
        "minutes_ago": now - TWO_MINUTES,
        "today": now.date(),
        "tomorrow": now.date() + A_DAY,
    }


def jobs_due(tx: Tx, now: datetime) -> frozenset[str]:
    """Return the names of the jobs that have something to do, by one question."""
    row = tx.connection().execute(ALL_WORK, moments(now)).one()
    return frozenset(name for name, is_due in zip(WORK, row, strict=True) if is_due)


def is_so(tx: Tx, question: ColumnElement[bool], now: datetime) -> bool:
    """Return the answer to one of the questions."""
    return bool(tx.connection().execute(select(question), moments(now)).scalar_one())


def sessions_to_plan(tx: Tx, now: datetime) -> bool:
    """Return whether a planned session's hour has come."""
    return is_so(tx, TO_PLAN, now)


def sessions_to_close(tx: Tx, now: datetime) -> bool:
    """Return whether a session that was reminded, or whose reminders came to nothing, is over."""
    return is_so(tx, TO_CLOSE, now)


def clients_to_review(tx: Tx, now: datetime) -> bool:
    """Return whether a client's dose, silence or dates are to be looked at."""
    return is_so(tx, TO_REVIEW, now)


def mornings_to_ask(tx: Tx, now: datetime) -> bool:
    """Return whether a morning question may be due anywhere on the globe."""
    return is_so(tx, TO_ASK, now)


def things_to_watch(tx: Tx, now: datetime) -> bool:
    """Return whether a pause is past its date, a hold some days old, an urgent answer not taken, or words unnamed."""
    return is_so(tx, TO_WATCH, now)


def alerts_to_call(tx: Tx, now: datetime) -> bool:
    """Return whether an alert's next call is due."""
    return is_so(tx, TO_CALL, now)


def inbound_to_read(tx: Tx, now: datetime) -> bool:
    """Return whether a message waits to be read."""
    return is_so(tx, TO_READ, now)


def newest_alert_id(tx: Tx) -> int:
    """Return the id of the newest alert, 0 when there is none."""
    newest = select(ALERT.c.id).order_by(ALERT.c.id.desc()).limit(1)
    return tx.connection().execute(newest).scalar_one_or_none() or 0
