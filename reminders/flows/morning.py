"""The morning question after a session at the up level, on days without a reminder; else it rides in the reminder.

When it is due is remembered on the client's row by flows/follow_ups; what the answer means is judged like any report.
"""

from datetime import datetime, timedelta

from sqlmodel import col, select

from reminders.core.schedule import local_date
from reminders.flows import inquire
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession

BATCH = 100
RIDES = ("planned", "reminded")


def run(tx: Tx, now: datetime, limit: int = BATCH) -> int:
    """Ask the morning questions that are due; return how many clients were dealt with, 0 when nothing is left."""
    tomorrow = now.date() + timedelta(days=1)  # the furthest local date anywhere
    statement = (
        select(Client)
        .where(col(Client.morning_on) <= tomorrow)
        .order_by(col(Client.morning_on), col(Client.id))
        .with_for_update(skip_locked=True)
    )
    done = 0
    for client in tx.exec(statement):
        done += ask(tx, client, now)
        if done >= limit:
            break
    tx.flush()
    return done


def ask(tx: Tx, client: Client, now: datetime) -> bool:
    """Ask one client, or let a day that has passed go; False while her hour has not come or the reminder carries it."""
    today = local_date(now, client.time_zone)
    if client.morning_on is None or client.morning_on > today:
        return False
    if client.morning_on == today and (rides_in_a_reminder(tx, client) or now < hour_of(tx, client)):
        return False
    if client.morning_on == today:
        clinic = clients.the_clinic(tx, client.clinic_id)
        session_id = client.morning_session_id
        inquire.begin(tx, clinic, client, "morning", "settling", now, session_id=session_id, replaces=True)
    client.morning_on, client.morning_session_id = None, None
    return True


def rides_in_a_reminder(tx: Tx, client: Client) -> bool:
    """Return whether a reminder of today carries the question, or did."""
    statement = select(ExerciseSession.id).where(
        ExerciseSession.client_id == client.id,
        ExerciseSession.on_date == client.morning_on,
        ExerciseSession.kind == "planned",
        col(ExerciseSession.state).in_(RIDES),
    )
    return tx.exec(statement.limit(1)).first() is not None


def hour_of(tx: Tx, client: Client) -> datetime:
    """Return the instant of her hour on the day of the question."""
    assert client.morning_on is not None
    return inquire.at_her_hour(tx, client, client.morning_on)
