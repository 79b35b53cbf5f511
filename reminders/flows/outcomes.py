"""What follows when a message was accepted, refused, or did not go at all: for its session, its address, its people."""

import hashlib
from collections.abc import Sequence
from datetime import datetime, timedelta
from typing import Any

from sqlmodel import col, select

from reminders.core.kinds import kind_of
from reminders.core.provider_codes import state_of, treatment
from reminders.core.schedule import evening_at
from reminders.errors import SendError
from reminders.flows import alert, easy_day, escalate, gate, inquire, other_ways, riders, say
from reminders.store import bulk, clients, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, Contact, DeliveryEvent, ExerciseSession, Outbound

TRIED_FOR = timedelta(hours=12)  # what has no end of its own is given up when it was refused for so long
FIRST_WAIT_SECONDS, LONGEST_WAIT_SECONDS = 15.0, 600.0
URGENT_WAIT_SECONDS = 120.0  # an urgent message is tried again by then, whatever the provider asks: nobody may wait
EVENING_AFTER = timedelta(hours=3)  # no evening prompt when the reminder went less than this before
UNCONFIRMED_AFTER = 3  # reminders to a contact that never answered


def ending(row: Outbound, outcome: str | SendError, now: datetime) -> dict[str, Any]:
    """Return how an attempt ended, as the outbox keeps it."""
    said = "accepted"
    if isinstance(outcome, SendError):
        said = "unknown" if outcome.unknown else "failed" if outcome.permanent else "retry"
    return {
        "row": row.id,
        "try": row.attempts,
        "at": now,
        "how": said,
        "said": outcome.code if isinstance(outcome, SendError) else "",
        "given": outcome if isinstance(outcome, str) else "",
    }


def accepted(tx: Tx, rows: Sequence[tuple[Outbound, str]], now: datetime) -> None:
    """Write down that channels took messages (each with its receipt), and what follows from it."""
    for row, receipt in rows:
        row.state, row.receipt, row.accepted_at, row.settled_at, row.claim_until = "accepted", receipt, now, now, None
    tx.flush()
    after_acceptance(tx, [row for row, _ in rows], now)


def accepted_at_once(tx: Tx, rows: Sequence[tuple[Outbound, str]], now: datetime) -> None:
    """Write the same of many messages that this process claimed and holds by itself."""
    bulk.accept(tx, [(row.id or 0, receipt) for row, receipt in rows], now)
    for row, receipt in rows:
        bulk.put(row, state="accepted", receipt=receipt)
    after_acceptance(tx, [row for row, _ in rows], now)


def after_acceptance(tx: Tx, rows: Sequence[Outbound], now: datetime) -> None:
    """Let questions be open that were asked, and sessions be reminded."""
    for row in rows:
        if row.details.get("asks"):
            inquire.accepted(tx, row, now)
    reminders = [row for row in rows if row.kind == "reminder" and row.client_id is not None]
    if reminders:
        bulk.count_unconfirmed(tx, [row.contact_id for row in reminders])
        reminded(tx, reminders, now)


def reminded(tx: Tx, rows: Sequence[Outbound], now: datetime) -> None:
    """Make sessions reminded when one address accepted them; count the easy day and queue the evening prompts."""
    sessions = bulk.sessions_to_remind(tx, [row.session_id for row in rows])
    people = bulk.reminded_clients(tx, [row.client_id for row in rows])
    evenings, done = [], []
    for row in rows:
        session, client = sessions.pop(row.session_id or 0, None), people.get(row.client_id or 0)
        if session is None or client is None:
            continue
        if session.is_easy or row.details.get(bulk.RIDES):
            carried(tx, row, session, now)
        if row.channel == "sms" and not client.weekly_only:
            evenings += evening_of(row, session, now)
        done.append(session.id)
    bulk.remind(tx, done, now)
    bulk.queue(tx, evenings)


def carried(tx: Tx, row: Outbound, session: bulk.ToRemind, now: datetime) -> None:
    """Count the easy day that a reminder announced, and note what rode in it."""
    client = tx.get(Client, row.client_id)
    assert client is not None
    if session.is_easy:
        easy_day.spend(client)
    if row.details.get(bulk.RIDES):
        riders.ridden(tx, row, client, session, now)


def evening_of(row: Outbound, session: bulk.ToRemind, now: datetime) -> list[bulk.Values]:
    """Return the one evening prompt of a session, none when its reminder went too late; a report withdraws it."""
    at = evening_at(session.on_date, (row.window_from, row.window_until), row.time_zone)
    if at - now < EVENING_AFTER:
        return []
    prompt = bulk.message(
        kind="evening",
        key=outbox.evening_key(session.id),
        clinic_id=row.clinic_id,
        client_id=row.client_id,
        contact_id=row.contact_id,
        session_id=session.id,
        channel="sms",
        to=row.to,
        language=row.language,
        template="evening",
        due_at=at,
        window_from=row.window_from,
        window_until=row.window_until,
        time_zone=row.time_zone,
        created_at=now,
    )
    return [prompt]


def refused(tx: Tx, row: Outbound, error: SendError, now: datetime) -> bool:
    """Write down that a channel did not take a message; return whether it failed for good."""
    row.claim_until = None
    if error.code == "lease":
        row.state = "waiting"
        return False
    if error.code == "withdrawn":
        row.state, row.why, row.settled_at = "withdrawn", str(error), now
        session_not_reminded(tx, row, str(error), now)
        if row.why == gate.STAFF_STOPPED:
            after_failure(tx, row, now)  # somebody else must hear of the alert
        return False
    row.code = error.code
    if error.unknown and row.channel == "sms":
        row.state, row.lookups = "unknown", 0
        return False
    if error.permanent:
        give_up(tx, row, now)
        return True
    return try_later(tx, row, error, now)


def try_later(tx: Tx, row: Outbound, error: SendError, now: datetime) -> bool:
    """Let a message wait before the next try: growing, jittered, as long as the provider asks; urgent ones briefly."""
    wait = min(FIRST_WAIT_SECONDS * 2 ** (row.attempts - 1), LONGEST_WAIT_SECONDS)
    spread = int.from_bytes(hashlib.sha256(f"{row.key}:{row.attempts}".encode()).digest()[:2]) / 65_536
    wait = max(wait * (0.8 + 0.4 * spread), error.retry_after or 0.0)
    if row.priority == 0:
        wait = min(wait, URGENT_WAIT_SECONDS)
    due_at = now + timedelta(seconds=wait)
    if treatment(error.code) == "operator":
        say.tell_operator(tx, clients.the_clinic(tx, row.clinic_id), "sender refused", {"code": error.code}, now)
    if row.expires_at is not None and due_at >= row.expires_at:
        row.state, row.why, row.settled_at = "expired", "too late to try again", now
        after_failure(tx, row, now)
        return True
    if row.expires_at is None and now - outbox.first_tried_at(tx, row) >= TRIED_FOR:
        tell_of_giving_up(tx, row, now)
        give_up(tx, row, now)
        return True
    row.state, row.due_at = "waiting", due_at
    return False


def tell_of_giving_up(tx: Tx, row: Outbound, now: datetime) -> None:
    """Tell the operator, once a day, that a message ran out of time while no provider took it."""
    if row.kind != "operator":
        what = "late reminders" if row.kind == "reminder" else "messages given up"
        say.tell_operator(tx, clients.the_clinic(tx, row.clinic_id), what, {"code": row.code}, now)


def give_up(tx: Tx, row: Outbound, now: datetime) -> None:
    """Write down a final failure and what it means for the address, the clinic and the operator."""
    row.state, row.settled_at = "failed", now
    clinic = clients.the_clinic(tx, row.clinic_id)
    wanted = treatment(row.code)
    contact = tx.get(Contact, row.contact_id) if row.contact_id else None
    if contact is not None and contact.address != row.to:
        contact = None  # the desk gave her another since: it is not the one that failed
    client = tx.get(Client, row.client_id) if row.client_id else None
    if wanted == "operator":
        say.tell_operator(tx, clinic, "sender refused", {"code": row.code}, now)
    if contact is not None and wanted == "unusable" and not contact.unusable:
        contact.unusable = row.code or "refused"
        say.tell_desk(tx, clinic, client, "desk", "address unusable", {"code": row.code, "contact": contact.id}, now)
    if contact is not None and wanted == "opted_out":
        contact.provider_blocked = True
        say.tell_desk(tx, clinic, client, "desk", "blocked at the provider", {"contact": contact.id}, now)
    after_failure(tx, row, now)


def after_failure(tx: Tx, row: Outbound, now: datetime) -> None:
    """Go by her other address, or tell the clinic; a failed alert text steps on at once."""
    rules = kind_of(row.kind)
    if rules.to_staff:
        if row.alert_id is not None:
            escalate.call_failed(tx, row, now)
        return
    if row.kind in other_ways.URGENT_ANSWERS:
        urgent_answer_failed(tx, row, now)
        return
    client = tx.get(Client, row.client_id) if row.client_id else None
    if client is None:
        return
    clinic = clients.the_clinic(tx, row.clinic_id)
    moved = other_ways.go(tx, row, client, now)
    if row.state == "expired" and not moved:
        tell_of_giving_up(tx, row, now)
    if row.kind == "reminder" and not moved:
        session_not_reminded(tx, row, "failed", now)
    if row.kind == "reminder" and not moved and row.state == "failed":
        alert.raise_alert(tx, clinic, client, "unreachable", "routine", {"code": row.code}, now)


def urgent_answer_failed(tx: Tx, row: Outbound, now: datetime) -> None:
    """Send a danger or stop-level answer by the other addresses of all it was for, and call staff about each again."""
    for client in other_ways.meant_for(tx, row):
        other_ways.go(tx, row, client, now)
    escalate.answer_failed(tx, row, now)


def not_sent(tx: Tx, row: Outbound, facts: gate.Facts, now: datetime) -> None:
    """Settle the session of a reminder that was taken back or expired before it was handed over.

    A call about an alert to a number that said STOP since steps on to somebody else.
    """
    if row.why == gate.STAFF_STOPPED:
        after_failure(tx, row, now)
    if row.kind != "reminder" or row.session_id is None:
        return
    if row.state == "expired":
        say.tell_operator(tx, facts.clinics[row.clinic_id], "late reminders", {}, now)
    session_not_reminded(tx, row, row.why, now)


def session_not_reminded(tx: Tx, row: Outbound, why: str, now: datetime) -> None:
    """Make a session held, paused or unsent when no reminder of it went or is still under way.

    So also one that was reminded: what was accepted and later failed on every address is unsent.
    """
    if row.kind != "reminder" or row.session_id is None:
        return
    tx.flush()
    session = tx.get(ExerciseSession, row.session_id)
    if session is None or session.state not in ("planned", "reminded", "missed"):
        return
    reminders = outbox.reminders_of(tx, row.session_id)
    if any(one.id != row.id and one.state in outbox.ALIVE for one in reminders):
        return
    client = tx.get(Client, session.client_id)
    if client is not None and session.state != "planned":
        version = clients.newest_program(tx, client.id or 0)
        first = min(reminders, key=lambda one: one.accepted_at or now)
        riders.not_told(first, client, session, version.rung if version else None)
    session.state = why if session.state == "planned" and why in ("held", "paused") else "unsent"
    session.settled_at = now


def match_events(tx: Tx, rows: Sequence[Outbound], now: datetime) -> None:
    """Apply status callbacks that came before we had recorded the receipt."""
    receipts = {row.receipt: row for row in rows}
    if not receipts:
        return
    waiting = tx.exec(
        select(DeliveryEvent).where(col(DeliveryEvent.receipt).in_(receipts), col(DeliveryEvent.is_matched).is_(False))
    )
    for event in waiting:
        row = tx.get(Outbound, receipts[event.receipt].id)
        assert row is not None
        event.is_matched, event.outbound_id = True, row.id
        apply_status(tx, row, event.status, event.code, now)


def apply_status(tx: Tx, row: Outbound, status: str, code: str, now: datetime) -> None:
    """Let a status take effect on an accepted row: the furthest stands, delivered beats failed."""
    state = state_of(status)
    if state == "delivered" and row.state in ("accepted", "failed"):
        had_failed = row.state == "failed"
        row.state, row.delivered_at = "delivered", now
        if had_failed and row.kind == "reminder":
            tx.flush()
            reminded(tx, [row], now)
    elif state == "failed" and row.state == "accepted":
        row.code = code
        give_up(tx, row, now)
