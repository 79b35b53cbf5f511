"""Sends what is waiting: claim in a transaction, call with none open, settle in a transaction.

Every step can be killed at any line and run again: what was claimed and not settled has an unknown attempt, which
`flows/unknown.py` settles by the provider's word, never by simply sending again.
"""

import math
import time
from collections.abc import Sequence
from concurrent.futures import ThreadPoolExecutor
from datetime import datetime

from reminders.core.channel import LONGEST_VALID_SECONDS, Outgoing
from reminders.core.provider_codes import NO_WORDS
from reminders.errors import SendError
from reminders.flows import gate, outcomes, unknown
from reminders.flows.claiming import claim, scene_of
from reminders.flows.sender import BATCH, CLAIM_AHEAD_SECONDS, LEASE, LEAST_LEASE, THREADS, Claim, Sender, Sent
from reminders.store import outbox
from reminders.store.tables import Outbound

__all__ = ["BATCH", "LEASE", "THREADS", "Claim", "Sender", "Sent", "claim", "scene_of", "send_due"]

MOST_SECONDS = 5.0  # an impatient round ends after this, so that its process can look after other things


def send_due(sender: Sender, *, patient: bool = True) -> Sent:
    """Send until nothing more is due at the clock's instant, and look up what was cut off.

    `patient` waits for the pace and looks up all; else it ends where the pace is full, or after some seconds and a few
    looks. What waits is claimed before and after each few looks: a provider whose list hangs holds up nothing urgent.
    """
    done = Sent()
    ends_at = math.inf if patient else time.monotonic() + MOST_SECONDS
    unknown.release(sender.db, sender.clock)
    send_waiting(sender, done, ends_at, patient=patient)
    while unknown.settle(sender.db, sender.channels, sender.clock):
        send_waiting(sender, done, ends_at, patient=patient)
        if not patient:
            break
    done.waiting = waiting_count(sender)
    return done


def send_waiting(sender: Sender, done: Sent, ends_at: float, *, patient: bool) -> None:
    """Claim and hand over what is due, batch by batch, until nothing is or this machine's instant has come.

    Nothing is claimed while calls are under way: their threads would share one interpreter with it, and all would be
    slower.
    """
    while time.monotonic() < ends_at:
        claims, pause, touched = claim(sender)
        if claims:
            add(done, hand_over(sender, claims))
        elif pause > 0 and patient:
            sender.wait(min(pause, CLAIM_AHEAD_SECONDS))
        elif not touched:
            break


def add(done: Sent, more: Sent) -> None:
    """Count what a batch did."""
    done.sent += more.sent
    done.failed += more.failed
    done.ids += more.ids


def waiting_count(sender: Sender) -> int:
    """Return how many messages are still waiting, claimed or unknown at the clock's instant."""
    with sender.db.read() as tx:
        return outbox.still_open(tx, sender.clock())


def hand_over(sender: Sender, claims: Sequence[Claim]) -> Sent:
    """Call the channels for claimed rows, a few at a time, and settle what came back in one transaction a batch."""
    began = time.monotonic()
    if sender.threads <= 1 or len(claims) == 1:
        results = [call(sender, one) for one in claims]
    else:
        if sender.pool is None:
            sender.pool = ThreadPoolExecutor(sender.threads, thread_name_prefix="sender")
        results = list(sender.pool.map(lambda one: call(sender, one), claims))
    sender.learn((time.monotonic() - began) / len(claims))
    return settle(sender, list(zip((one.row for one in claims), results, strict=True)))


def call(sender: Sender, one: Claim) -> str | SendError:
    """Hand one row to its channel, after reading consent, hold and pause once more; return a receipt or the error."""
    if not one.worded:
        return SendError("its words could not be written", permanent=True, code=NO_WORDS)
    ahead = one.slot - time.monotonic()
    if ahead > 0:
        sender.wait(ahead)
    if one.until - time.monotonic() < LEAST_LEASE.total_seconds():
        return SendError("lease too short", code="lease")
    why = gate.still_allowed(sender.db, one.row, sender.clock())
    if why:
        return SendError(why, permanent=True, code="withdrawn")
    try:
        return sender.channels[one.row.channel].send(outgoing(sender, one.row, one.ends_at))
    except SendError as error:
        return error


def outgoing(sender: Sender, row: Outbound, ends_at: datetime | None) -> Outgoing:
    """Return a claimed row as a channel takes it."""
    is_mail = row.channel == "email"
    return Outgoing(
        key=row.key,
        to=row.to,
        body=row.body,
        row=row.id or 0,
        attempt=row.attempts,
        valid_seconds=valid_seconds(ends_at, sender.clock()),
        subject=row.subject,
        html=row.html,
        headers=row.headers,
        claimed_at=row.claimed_at,
        unsubscribe_url=sender.links.unsubscribe(row.contact_id, row.to) if is_mail and row.contact_id else "",
        reply_token=sender.links.reply_token(row.id or 0, row.key) if is_mail and row.client_id else "",
    )


def valid_seconds(ends_at: datetime | None, now: datetime) -> int:
    """Return for how long the provider may still try: to the end of what it may be sent in, 60 to 36,000 seconds."""
    if ends_at is None:
        return LONGEST_VALID_SECONDS
    return int(min(max((ends_at - now).total_seconds(), 60), LONGEST_VALID_SECONDS))


def settle(sender: Sender, results: Sequence[tuple[Outbound, str | SendError]]) -> Sent:
    """Write down what the channels said, in one transaction; a row that was settled meanwhile is left alone."""
    done = Sent()
    with sender.db.begin() as tx:
        now = sender.clock()
        stands = outbox.standing(tx, [row.id or 0 for row, _ in results])
        open_ones = [(row, outcome) for row, outcome in results if is_ours(row, stands.get(row.id or 0))]
        taken = [(row, outcome) for row, outcome in open_ones if isinstance(outcome, str)]
        wrong = {row.id or 0: outcome for row, outcome in open_ones if isinstance(outcome, SendError)}
        outcomes.accepted_at_once(tx, taken, now)
        for number, row in outbox.locked(tx, list(wrong)).items():
            done.failed += outcomes.refused(tx, row, wrong[number], now)
        outbox.end_attempts(tx, [outcomes.ending(row, outcome, now) for row, outcome in open_ones])
        tx.flush()
        outcomes.match_events(tx, [row for row, _ in taken], now)
        done.sent, done.ids = len(taken), [row.id or 0 for row, _ in taken]
    return done


def is_ours(row: Outbound, stands: tuple[str, int] | None) -> bool:
    """Return whether a row still waits for what came of this very attempt, by its state and attempts now."""
    return stands is not None and stands[0] in ("claimed", "unknown") and stands[1] == row.attempts


def close(sender: Sender) -> None:
    """End the sender's threads."""
    if sender.pool is not None:
        sender.pool.shutdown(wait=True)
        sender.pool = None
