"""Sends what is waiting: claim in a transaction, call with none open, settle in a transaction.

Every step can be killed at any line and run again: what was claimed and not settled has an unknown attempt, which
`flows/unknown.py` settles by the provider's word, never by simply sending again.
"""

import time
import uuid
from collections.abc import Callable, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import insert, text

from reminders.clock import Clock, machine_seconds, system_clock
from reminders.core.channel import Channel, Outgoing
from reminders.core.pace import Pace
from reminders.errors import SendError
from reminders.flows import gate, outcomes, render, unknown
from reminders.store import marks, outbox, restored
from reminders.store.db import Database, Tx, free_clients
from reminders.store.tables import Attempt, Client, Outbound
from reminders.texts import Texts

LEASE = timedelta(seconds=90)
LEAST_LEASE = timedelta(seconds=50)  # a call is not begun with less left: it may take 45 s
BATCH = 100
THREADS = 8
CLAIM_AHEAD_SECONDS = 2.0  # each claim takes at most this much of the pace


@dataclass
class Sender:
    """What a sender needs; one a process."""

    db: Database
    channels: Mapping[str, Channel]
    texts: Texts
    clock: Clock
    links: render.Links
    parts_per_second: float = 0.0
    operator_email: str = ""
    own_clock: bool = False  # a given clock rules leases too; without one PostgreSQL's does
    threads: int = THREADS
    batch: int = BATCH
    answers_only: bool = False  # after a stop, until what came meanwhile has been fetched
    name: str = field(default_factory=lambda: uuid.uuid4().hex)
    wait: Callable[[float], None] = time.sleep
    pool: ThreadPoolExecutor | None = None

    def leases_at(self, tx: Tx) -> datetime:
        """Return the instant that leases follow: a given clock, else the database's on PostgreSQL."""
        if self.db.is_postgres and not self.own_clock:
            found: datetime = tx.connection().execute(text("SELECT clock_timestamp()")).scalar_one()
            return found
        return self.clock()


@dataclass
class Sent:
    """What a round did, by the words of the tick command."""

    sent: int = 0
    failed: int = 0
    waiting: int = 0
    ids: list[int] = field(default_factory=list)


@dataclass(frozen=True)
class Claim:
    """A claimed row with the machine's moment from which the pace lets it go, and until when its lease lasts."""

    row: Outbound
    slot: float
    until: float


def send_due(sender: Sender, *, patient: bool = True) -> Sent:
    """Send until nothing more is due at the clock's instant; `patient` waits for the pace, else one claim is made."""
    done = Sent()
    unknown.settle(sender.db, sender.channels, sender.clock)
    while True:
        claims, pause, touched = claim(sender)
        if claims:
            done_now = hand_over(sender, claims)
            done.sent += done_now.sent
            done.failed += done_now.failed
            done.ids += done_now.ids
        elif touched:
            continue
        elif pause > 0 and patient:
            sender.wait(min(pause, CLAIM_AHEAD_SECONDS))
            continue
        if not claims:
            break
        if not patient:
            break
    done.waiting = waiting_count(sender)
    return done


def waiting_count(sender: Sender) -> int:
    """Return how many messages are still waiting, claimed or unknown at the clock's instant."""
    with sender.db.read() as tx:
        return outbox.still_open(tx, sender.clock())


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
        rows = outbox.due(tx, now, sender.batch, channels, answers_only=sender.answers_only)
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
    until = sender.leases_at(tx) + LEASE
    taken, attempts = [], []
    for row in rows:
        if not admit(sender, tx, row, facts, now):
            continue
        if row.channel == "sms" and not pace.has_room(CLAIM_AHEAD_SECONDS):
            row.body, row.html, row.subject, row.parts = "", "", "", 0
            continue
        row.state, row.claimed_at, row.claim_until, row.claimed_by = "claimed", now, until, sender.name
        row.called_at = system_clock()
        row.attempts += 1
        row.lookups = 0
        slot = pace.take(row.parts) if row.channel == "sms" else 0.0
        attempts.append({"outbound_id": row.id, "number": row.attempts, "began_at": now})
        taken.append(Claim(row, moment + slot, moment + LEASE.total_seconds()))
    if attempts:
        tx.execute(insert(Attempt), attempts)
    return taken


def pace_free_at(sender: Sender, tx: Tx) -> float:
    """Return from when the text sender is free; without a pace nothing is shared and nothing locked."""
    return marks.pace_free_at(tx) if sender.parts_per_second > 0 else 0.0


def admit(sender: Sender, tx: Tx, row: Outbound, facts: gate.Facts, now: datetime) -> bool:
    """Judge one due row and write its words; False when it does not go now, which is written on it."""
    verdict = gate.judge(row, facts, now)
    if verdict.action == "send":
        scene = scene_of(row, facts)
        if row.to == "operator":
            if not sender.operator_email:
                row.state, row.why, row.settled_at = "withdrawn", "no operator address", now
                return False
            row.to = sender.operator_email
        if scene.session is not None and row.kind == "reminder":
            scene.session.is_easy = wants_easy(scene.client)
        render.render(sender.texts, scene, row, sender.links, now)
        return True
    if verdict.action == "wait":
        row.due_at = verdict.until or now
        row.why = verdict.why
        return False
    row.state = "expired" if verdict.action == "expire" else "withdrawn"
    row.why, row.settled_at = verdict.why, now
    outcomes.reminder_not_sent(tx, row, facts, now)
    return False


def wants_easy(client: Client | None) -> bool:
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
    )


def hand_over(sender: Sender, claims: Sequence[Claim]) -> Sent:
    """Call the channels for claimed rows, a few at a time, and settle what came back in one transaction a batch."""
    if sender.threads <= 1 or len(claims) == 1:
        results = [call(sender, one) for one in claims]
    else:
        if sender.pool is None:
            sender.pool = ThreadPoolExecutor(sender.threads, thread_name_prefix="sender")
        results = list(sender.pool.map(lambda one: call(sender, one), claims))
    return settle(sender, list(zip((one.row for one in claims), results, strict=True)))


def call(sender: Sender, one: Claim) -> str | SendError:
    """Hand one row to its channel, after reading consent, hold and pause once more; return a receipt or the error."""
    ahead = one.slot - time.monotonic()
    if ahead > 0:
        sender.wait(ahead)
    if one.until - time.monotonic() < LEAST_LEASE.total_seconds():
        return SendError("lease too short", code="lease")
    why = gate.still_allowed(sender.db, one.row, sender.clock())
    if why:
        return SendError(why, permanent=True, code="withdrawn")
    try:
        return sender.channels[one.row.channel].send(outgoing(sender, one.row))
    except SendError as error:
        return error


def outgoing(sender: Sender, row: Outbound) -> Outgoing:
    """Return a claimed row as a channel takes it."""
    is_mail = row.channel == "email"
    return Outgoing(
        key=row.key,
        to=row.to,
        body=row.body,
        row=row.id or 0,
        attempt=row.attempts,
        valid_seconds=valid_seconds(row, sender.clock()),
        subject=row.subject,
        html=row.html,
        headers=row.headers,
        claimed_at=row.claimed_at,
        unsubscribe_url=sender.links.unsubscribe(row.contact_id) if is_mail and row.contact_id else "",
        reply_token=sender.links.reply_token(row.id or 0) if is_mail and row.client_id else "",
    )


def valid_seconds(row: Outbound, now: datetime) -> int:
    """Return for how long the provider may still try: to the end of what it may be sent in, 60 to 36,000 seconds."""
    if row.expires_at is None:
        return 36_000
    return int(min(max((row.expires_at - now).total_seconds(), 60), 36_000))


def settle(sender: Sender, results: Sequence[tuple[Outbound, str | SendError]]) -> Sent:
    """Write down what the channels said, in one transaction; a row that was settled meanwhile is left alone."""
    done = Sent()
    with sender.db.begin() as tx:
        now = sender.clock()
        fresh = outbox.locked(tx, [row.id or 0 for row, _ in results])
        ended: list[dict[str, Any]] = []
        taken: list[tuple[Outbound, str]] = []
        for claimed, outcome in results:
            row = fresh[claimed.id or 0]
            if row.state not in ("claimed", "unknown") or row.attempts != claimed.attempts:
                continue
            ended.append(outcomes.ending(row, outcome, now))
            if isinstance(outcome, str):
                taken.append((row, outcome))
            elif outcomes.refused(tx, row, outcome, now):
                done.failed += 1
        outcomes.accepted(tx, taken, now)
        done.sent, done.ids = len(taken), [row.id or 0 for row, _ in taken]
        outbox.end_attempts(tx, ended)
        tx.flush()
        outcomes.match_events(tx, [row for row in fresh.values() if row.receipt], now)
    return done


def close(sender: Sender) -> None:
    """End the sender's threads."""
    if sender.pool is not None:
        sender.pool.shutdown(wait=True)
        sender.pool = None
