"""What lasts too long: pauses past their date, long holds, danger answers not taken in two minutes, words unnamed.

Sessions that close stand in flows/sweep, alerts that nobody takes in flows/escalate.
"""

from datetime import datetime, timedelta
from functools import partial

from sqlalchemy import or_
from sqlmodel import col, select

from reminders.core.hours import Hours
from reminders.core.levels import Levels
from reminders.core.schedule import local_date
from reminders.flows import calling, explain, other_ways, outcomes, say, steps, waiting_words
from reminders.store import around, clients, histories, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, Hold, Outbound, Pause, Staff

BATCH = 100
ANSWER_WITHIN = timedelta(minutes=2)
LATE = "late answer"


def run(tx: Tx, now: datetime, limit: int = BATCH) -> int:
    """Do what is due; return how much was done, 0 when nothing is left."""
    done = end_pauses(tx, now, limit) + tell_of_long_holds(tx, now, limit) + help_late_answers(tx, now, limit)
    done += waiting_words.let_go(tx, now, limit)
    tx.flush()
    return done


def end_pauses(tx: Tx, now: datetime, limit: int) -> int:
    """End the pauses whose last day has passed; who was away for long comes back to a lower rung."""
    statement = (
        select(Pause, Client)
        .join(Client, col(Pause.client_id) == col(Client.id))
        .where(col(Pause.ended_at).is_(None), col(Pause.until_on) <= now.date())
        .order_by(col(Pause.until_on), col(Pause.id))
    )
    done = 0
    for pause, client in tx.exec(statement):
        if pause.until_on < local_date(now, client.time_zone):
            pause.ended_at, pause.ended_by = now, "date"
            steps.after_pause(tx, client, pause, now)
            done += 1
        if done >= limit:
            break
    return done


def tell_of_long_holds(tx: Tx, now: datetime, limit: int) -> int:
    """Tell the lead of holds that last over seven working days, once each."""
    statement = (
        select(Hold, Client)
        .join(Client, col(Hold.client_id) == col(Client.id))
        .where(col(Hold.ended_at).is_(None), col(Hold.lead_told_at).is_(None), col(Client.state) != "closed")
        .order_by(col(Hold.opened_at), col(Hold.id))
    )
    done = 0
    for hold, client in tx.exec(statement):
        clinic = clients.the_clinic(tx, client.clinic_id)
        days = working_days(hold, clients.hours_of(clinic), clinic.time_zone, now)
        if days <= histories.levels_of(clinic, tx.get(Staff, client.therapist_id), client).hold_lead_days:
            continue
        details = {"initials": explain.initials(client.name), "client_id": client.id, "rule": hold.rule, "days": days}
        for staff in calling.lead_or_admins(tx, clinic, local_date(now, clinic.time_zone)):
            key = partial(outbox.staff_key, f"hold-{hold.id}", staff.id or 0)
            say.tell_staff(tx, clinic, staff, "desk", "hold_long", details, now, key, channels=("email",))
        hold.lead_told_at = now
        done += 1
        if done >= limit:
            break
    return done


def working_days(hold: Hold, hours: Hours, time_zone: str, now: datetime) -> int:
    """Return how many of the clinic's working days a hold has lasted."""
    return hours.working_days_between(local_date(hold.opened_at, time_zone), local_date(now, time_zone))


def is_long(days: int, levels: Levels) -> bool:
    """Return whether a hold of so many working days tops the list."""
    return days > levels.hold_top_days


def help_late_answers(tx: Tx, now: datetime, limit: int) -> int:
    """Send danger answers that no channel took within two minutes by her other address, and call staff again.

    Each refusal moves a row's due time ahead, so that of one that was tried counts from when it was written.
    """
    by = now - ANSWER_WITHIN
    was_refused = (col(Outbound.state) == "waiting") & (col(Outbound.attempts) > 0) & (col(Outbound.created_at) <= by)
    statement = select(Outbound).where(
        col(Outbound.state).in_(around.UNDER_WAY),
        Outbound.priority == 0,
        col(Outbound.kind).in_(other_ways.URGENT_ANSWERS),
        or_(col(Outbound.due_at) <= by, was_refused),
        Outbound.why != LATE,
    )
    rows = list(tx.exec(statement.order_by(col(Outbound.id)).limit(limit)))
    # In the one order in which a crowd's texts lock their clients: their alerts are written here too.
    outbox.lock_owners(tx, [row.id or 0 for row in rows])
    for row in rows:
        row.why = LATE
        outcomes.urgent_answer_failed(tx, row, now)
    return len(rows)
