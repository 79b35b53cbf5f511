"""Alerts that nobody has taken: called again, then cover, then lead; notes at their hours; opened again at noon.

What a call says and who gets it stands in flows/calling, an alert's life in flows/alert.
"""

from collections.abc import Sequence
from datetime import datetime, timedelta
from functools import partial

from sqlmodel import col, select

from reminders.core.levels import Levels
from reminders.core.rules import RULE_NAMES
from reminders.core.rules.danger import LEVELS
from reminders.flows import alert as alerts
from reminders.flows import calling, say
from reminders.store import clients, outbox
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Clinic, Contact, Outbound, Staff

BATCH = 100
# A note names at most so many alerts; the console shows the rest.
MOST_IN_A_NOTE = 4
# A routine note that nobody took comes again after this many days: common practice, no source.
ROUTINE_AGAIN_DAYS = 7


def run(tx: Tx, now: datetime, limit: int = BATCH) -> int:
    """Do what is due about alerts, return how many were dealt with; call it again until it returns 0."""
    statement = (
        select(Alert)
        .where(Alert.state != "closed", col(Alert.next_step_at) <= now)
        .order_by(col(Alert.next_step_at), col(Alert.id))
        .limit(limit)
        .with_for_update(skip_locked=True)
    )
    due = list(tx.exec(statement))
    notes: list[Alert] = []
    for one in due:
        clinic = clients.the_clinic(tx, one.clinic_id)
        if one.state == "acknowledged":
            alerts.open_again(tx, clinic, one, now)
        elif one.level == "urgent":
            step_on(tx, clinic, one, now)
        else:
            notes.append(one)
    send_notes(tx, notes, now)
    tx.flush()
    return len(due)


def step_on(tx: Tx, clinic: Clinic, one: Alert, now: datetime) -> None:
    """Make the furthest call that is due and set when the next one is."""
    levels = alerts.levels_for(tx, clinic, one)
    since = (now - (one.steps_from_at or one.opened_at)).total_seconds() / 60
    step = max(one.step, furthest_step(since, levels))
    calling.call(tx, clinic, one, step, now)
    one.step = step + 1
    one.next_step_at = next_call_at(clinic, one, levels, now)


def furthest_step(minutes: float, levels: Levels) -> int:
    """Return the last call whose time has come: 0 the first, then again, cover, lead, and every 30 minutes."""
    if minutes < levels.call_lead_minutes:
        offsets = (levels.call_again_minutes, levels.call_cover_minutes)
        return sum(minutes >= offset for offset in offsets)
    return calling.LEAD + int((minutes - levels.call_lead_minutes) // levels.call_every_minutes)


def offset_of(step: int, levels: Levels) -> int:
    """Return how many minutes after its beginning a call is due."""
    first = (0, levels.call_again_minutes, levels.call_cover_minutes, levels.call_lead_minutes)
    if step < len(first):
        return first[step]
    return levels.call_lead_minutes + (step - calling.LEAD) * levels.call_every_minutes


def next_call_at(clinic: Clinic, one: Alert, levels: Levels, now: datetime) -> datetime:
    """Return when the next call is due; those after the lead's first go in hours only."""
    due = (one.steps_from_at or now) + timedelta(minutes=offset_of(one.step, levels))
    due = max(due, now + timedelta(minutes=1))
    hours = clients.hours_of(clinic)
    if one.step > calling.LEAD and not hours.is_open(due):
        return hours.next_opening(due) or due
    return due


def call_failed(tx: Tx, row: Outbound, now: datetime) -> None:
    """Step on at once when the newest call about an open alert could not be handed over."""
    one = tx.get(Alert, row.alert_id) if row.alert_id else None
    if one is None or one.state != "open":
        return
    calling.add_event(tx, one, "call failed", now, details={"channel": row.channel, "staff": row.staff_id})
    is_newest = row.details.get("round") == one.round and row.details.get("step") == one.step - 1
    if row.kind != "alert" or one.level != "urgent" or not is_newest:
        return
    clinic = clients.the_clinic(tx, one.clinic_id)
    levels = alerts.levels_for(tx, clinic, one)
    # The steps after it keep their distance from this one.
    one.steps_from_at = now - timedelta(minutes=offset_of(one.step, levels))
    step_on(tx, clinic, one, now)


def answer_failed(tx: Tx, row: Outbound, now: datetime) -> None:
    """Call staff again when a danger or stop-level answer did not reach the client: she may think we answered."""
    for one in alerts_from(tx, row):
        entry = next(e for e in one.because if e.get("inbound") == row.inbound_id)
        if "not_delivered" in entry.get("notes", ()):
            continue
        marked = {**entry, "notes": [*entry.get("notes", ()), "not_delivered"]}
        one.because = [marked if e is entry else e for e in one.because]
        clinic = clients.the_clinic(tx, one.clinic_id)
        calling.add_event(tx, one, "answer not delivered", now, details={"row": row.id})
        if one.level == "urgent" and one.state == "acknowledged":
            alerts.open_again(tx, clinic, one, now)
        elif one.level == "urgent":
            one.round += 1
            alerts.begin_calls(tx, clinic, one, now)
        else:
            one.next_step_at = min(one.next_step_at or now, alerts.next_note_at(tx, clinic, one, now))


def alerts_from(tx: Tx, row: Outbound) -> list[Alert]:
    """Return the alerts that the text which a row answers raised: of her, of all on that phone, or of a stranger."""
    if row.inbound_id is None:
        return []
    on_that_phone = select(Contact.client_id).where(Contact.address == row.to)
    hers = col(Alert.client_id).in_(on_that_phone) | (col(Alert.address) == row.to)
    if row.client_id is not None:
        hers |= col(Alert.client_id) == row.client_id
    found = tx.exec(select(Alert).where(hers, Alert.state != "closed").order_by(col(Alert.id)))
    return [one for one in found if any(e.get("inbound") == row.inbound_id for e in one.because)]


def send_notes(tx: Tx, due: Sequence[Alert], now: datetime) -> None:
    """Send each staff member one note about all alerts of hers that are due, and set when they come again."""
    gathered: dict[tuple[int, int], list[Alert]] = {}
    people: dict[int, Staff] = {}
    for one in due:
        clinic = clients.the_clinic(tx, one.clinic_id)
        client = tx.get(Client, one.client_id) if one.client_id else None
        chosen = calling.in_charge(tx, clinic, client, now)
        if not chosen:
            say.tell_operator(tx, clinic, "nobody to call", {"alert": one.number}, now)
        for staff in chosen:
            people[staff.id or 0] = staff
            gathered.setdefault((clinic.id or 0, staff.id or 0), []).append(one)
        calling.add_event(tx, one, "noted", now, details={"staff": [staff.id for staff in chosen]})
    for (clinic_id, staff_id), mine in gathered.items():
        send_note(tx, clients.the_clinic(tx, clinic_id), people[staff_id], mine, now)
    for one in due:
        one.next_step_at = note_again_at(tx, clients.the_clinic(tx, one.clinic_id), one, now)


def send_note(tx: Tx, clinic: Clinic, staff: Staff, mine: list[Alert], now: datetime) -> None:
    """Queue one note: the gravest first, at most a few named."""
    ordered = sorted(mine, key=lambda one: (-LEVELS.index(one.level), rank(one.rule), one.id or 0))
    lines = []
    for one in ordered:
        client = tx.get(Client, one.client_id) if one.client_id else None
        lines.append(calling.call_details(tx, clinic, client, one, 0))
    details = {"alerts": lines[:MOST_IN_A_NOTE], "more": max(0, len(lines) - MOST_IN_A_NOTE)}
    slot = max(one.next_step_at or now for one in mine)
    say.tell_staff(
        tx,
        clinic,
        staff,
        "note",
        "note",
        details,
        now,
        partial(outbox.note_key, staff.id or 0, slot),
        channels=calling.channels_of(staff),
        alert_id=ordered[0].id if len(ordered) == 1 else None,
    )


def rank(rule: str) -> int:
    """Return a rule's place in the order in which a therapist should read them."""
    return RULE_NAMES.index(rule) if rule in RULE_NAMES else len(RULE_NAMES)


def note_again_at(tx: Tx, clinic: Clinic, one: Alert, now: datetime) -> datetime:
    """Return when a note that nobody takes comes again: `today` on the next open day, `routine` a week later."""
    days = ROUTINE_AGAIN_DAYS if one.level == "routine" else 1
    later = clients.hours_of(clinic).next_working_noon(now + timedelta(days=days - 1))
    # From that day's start, so that the first hour of the day is the one.
    return alerts.next_note_at(tx, clinic, one, later - timedelta(hours=12))
