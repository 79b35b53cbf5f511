"""Holds: clinical stops, opened by a rule or a therapist and ended only by a therapist.

A client's own pause is something else and stands in flows/pause.
"""

from datetime import date, datetime

from sqlmodel import col, select

from reminders.core.kinds import KINDS
from reminders.core.schedule import client_day, local_date
from reminders.errors import Refused
from reminders.flows import answers, easy_day, questions, say
from reminders.flows.pause import set_open_session
from reminders.store import clients, outbox
from reminders.store.db import Tx, lock_client
from reminders.store.tables import Client, ExerciseSession, Hold

HELD_KINDS = tuple(name for name, kind in KINDS.items() if kind.ends_with_hold)


def is_held(tx: Tx, client_id: int) -> bool:
    """Return whether a hold stops a client."""
    return clients.open_hold(tx, client_id) is not None


def open_hold(
    tx: Tx, client: Client, rule: str, by: str, now: datetime, alert_id: int | None = None, note: str = ""
) -> Hold:
    """Stop a client's reminders; one hold a rule, a second call changes nothing.

    What waits for her is withdrawn, an open question ends, and today's session is held unless it is done or part.
    """
    client_id = client.id or 0
    lock_client(tx, client_id)
    statement = select(Hold).where(Hold.client_id == client_id, Hold.rule == rule, col(Hold.ended_at).is_(None))
    there = tx.exec(statement).first()
    if there is not None:
        there.alert_id = there.alert_id or alert_id
        return there
    made = Hold(client_id=client_id, rule=rule, note=note, by=by, opened_at=now, alert_id=alert_id)
    tx.add(made)
    tx.flush()
    outbox.withdraw(tx, now, "held", client_id=client_id, kinds=HELD_KINDS)
    answers.take_back_asked(tx, client_id, now)
    questions.close_all(tx, client_id, "lapsed", now)
    set_open_session(tx, client, client_day(now, client.time_zone), "held", now)
    client.morning_on, client.morning_session_id = None, None
    return made


def end_hold(tx: Tx, client: Client, by: str, now: datetime) -> list[Hold]:
    """End every hold of a client and tell her once; her first session afterwards is an easy day.

    Only staff can. A day whose reminder hour has passed stays held.
    """
    if "@" not in by:
        raise Refused("A hold is ended by a staff member.")
    client_id = client.id or 0
    lock_client(tx, client_id)
    statement = select(Hold).where(Hold.client_id == client_id, col(Hold.ended_at).is_(None))
    ended = list(tx.exec(statement.order_by(col(Hold.id))))
    for one in ended:
        one.ended_at, one.ended_by = now, by
    if not ended:
        return []
    easy_day.ease(client)
    tx.flush()
    if client.died_on is None and client.state == "active":
        tell_her(tx, client, ended[-1], now)
    return ended


def tell_her(tx: Tx, client: Client, hold: Hold, now: datetime) -> None:
    """Queue the one text that says she may start again, with her next day where it is known."""
    clinic = clients.the_clinic(tx, client.clinic_id)
    day = next_day(tx, client, now)
    is_paused = clients.pause_on(tx, client.id or 0, day or local_date(now, client.time_zone)) is not None
    details = {"next": day.isoformat() if day and not is_paused else None}
    say.tell_client(
        tx,
        clinic,
        client,
        "hold_cleared",
        "hold_cleared",
        details,
        now,
        lambda contact: outbox.client_key("hold_cleared", client.id or 0, hold.id or 0, contact),
    )


def next_day(tx: Tx, client: Client, now: datetime) -> date | None:
    """Return the date of a client's next planned session that is still to be reminded."""
    statement = select(col(ExerciseSession.on_date)).where(
        ExerciseSession.client_id == client.id,
        ExerciseSession.state == "planned",
        col(ExerciseSession.due_at) > now,
    )
    return tx.exec(statement.order_by(col(ExerciseSession.on_date)).limit(1)).first()
