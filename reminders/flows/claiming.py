"""Claiming what is due: the most pressing first, judged by the gate, its words written, as far as the pace allows."""

import logging
import time
from collections.abc import Sequence
from datetime import datetime

from reminders.clock import machine_seconds, system_clock
from reminders.core.pace import Pace
from reminders.flows import gate, outcomes, render
from reminders.flows.sender import CLAIM_AHEAD_SECONDS, LEASE, Claim, Sender
from reminders.store import bulk, inbox, marks, outbox, restored
from reminders.store.db import Tx, free_clients
from reminders.store.slim import ShownClient, ShownSession
from reminders.store.tables import Outbound

LOG = logging.getLogger("reminders.claiming")


def claim(sender: Sender) -> tuple[list[Claim], float, int]:
    """Claim the most pressing rows; return them, the seconds to wait when the pace is full, and how many were read."""
    with sender.db.read() as tx:
        if not outbox.is_due(tx, sender.clock(), answers_only=sender.answers_only):
            return [], 0.0, 0
        if restored.waits_since(tx) is not None:
            return [], 0.0, 0
    with sender.db.begin() as tx:
        now, moment = sender.clock(), time.monotonic()
        pace = Pace(sender.parts_per_second, pace_free_at(sender, tx), machine_seconds())
        channels = tuple(sender.channels)
        if not pace.has_room(CLAIM_AHEAD_SECONDS):
            channels = tuple(channel for channel in channels if channel != "sms")
        most = inbox.rows_at_once(tx, now, sender.batch_now())
        rows = outbox.due(tx, now, most, channels, answers_only=sender.answers_only)
        if not rows:
            return [], pace.seconds_until_room(CLAIM_AHEAD_SECONDS) if "sms" not in channels else 0.0, 0
        free = free_clients(tx, [row.client_id for row in rows])
        rows = [row for row in rows if row.client_id is None or row.client_id in free]
        taken = take(sender, tx, rows, pace, now, moment)
        if sender.parts_per_second > 0:
            marks.set_pace(tx, pace.free_at)
        tx.flush()
    return taken, 0.0, len(rows)


def take(sender: Sender, tx: Tx, rows: Sequence[Outbound], pace: Pace, now: datetime, moment: float) -> list[Claim]:
    """Claim those of the due rows that may go now and that the pace has room for."""
    facts = gate.read_facts(tx, rows, now)
    taken: list[Claim] = []
    shown: dict[int, ShownSession] = {}
    for row in gate.in_line(rows):
        if not may_go(sender, tx, row, facts, now):
            continue
        if row.channel == "sms" and not pace.has_room(CLAIM_AHEAD_SECONDS):
            continue
        worded = is_worded(sender, row, facts, shown, now)
        slot = pace.take(row.parts) if row.channel == "sms" and worded else 0.0
        taken.append(Claim(row, moment + slot, moment + LEASE.total_seconds(), worded, gate.ends_at(row, facts, now)))
    until = sender.leases_at(tx) + LEASE
    bulk.write_claims(tx, [one.row for one in taken], now, until, system_clock(), sender.name)
    bulk.write_shown(tx, shown.values())
    return taken


def pace_free_at(sender: Sender, tx: Tx) -> float:
    """Return from when the text sender is free; without a pace nothing is shared and nothing locked."""
    return marks.pace_free_at(tx) if sender.parts_per_second > 0 else 0.0


def may_go(sender: Sender, tx: Tx, row: Outbound, facts: gate.Facts, now: datetime) -> bool:
    """Return whether a due row goes now; where it does not, what becomes of it is written on it."""
    verdict = gate.judge(row, facts, now)
    if verdict.action == "send" and row.to == "operator":
        row.to = sender.operator_email or row.to
        verdict = verdict if sender.operator_email else gate.Verdict("withdraw", "no operator address")
    if verdict.action == "send":
        return True
    if verdict.action == "wait":
        row.due_at, row.why = verdict.until or now, verdict.why
        return False
    row.state = "expired" if verdict.action == "expire" else "withdrawn"
    row.why, row.settled_at = verdict.why, now
    outcomes.not_sent(tx, row, facts, now)
    return False


def is_worded(sender: Sender, row: Outbound, facts: gate.Facts, shown: dict[int, ShownSession], now: datetime) -> bool:
    """Write a row's words; return whether it could be done. A row that cannot be written holds up no other."""
    try:
        word(sender, row, facts, shown, now)
    except Exception:
        LOG.exception("words not written", extra={"row": row.id, "kind": row.kind})
        return False
    return True


def word(sender: Sender, row: Outbound, facts: gate.Facts, shown: dict[int, ShownSession], now: datetime) -> None:
    """Write a row's words, and what its session shows, which is then among the `shown`; once accepted, that stays."""
    scene = scene_of(row, facts)
    session = facts.sessions.get(row.session_id or 0)
    if session is not None and row.kind in ("reminder", "resend") and render.is_to_show(session):
        bulk.put(session, is_easy=wants_easy(facts.clients.get(row.client_id or 0)))
        render.show_session(scene, row.language)
        shown[session.id] = session
    render.render(sender.texts, scene, row, sender.links, now)


def wants_easy(client: ShownClient | None) -> bool:
    """Return whether the next session is an easy day."""
    if client is None:
        return False
    return client.next_session_easy or client.easy_sessions_left > 0 or client.easy_until_alert_closed


def scene_of(row: Outbound, facts: gate.Facts) -> render.Scene:
    """Return the people and rows that a message speaks of."""
    clinic = facts.clinics[row.clinic_id]
    client = facts.clients.get(row.client_id or 0)
    session = facts.sessions.get(row.session_id or 0)
    program, days = None, ""
    if client is not None and session is not None:
        program = facts.program(client.id or 0, session.on_date)
        days = facts.days_on(client.id or 0, session.on_date)
    return render.Scene(
        clinic,
        facts.hours[row.clinic_id],
        client,
        facts.staff.get(client.therapist_id) if client else None,
        facts.staff.get(row.staff_id or 0),
        session,
        program,
        days,
        facts.sharers.get(row.to, 1) > 1,
        facts.alerts.get(row.alert_id or 0),
    )
