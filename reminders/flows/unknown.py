"""Settles attempts that were cut off: by the provider's own list, never by simply sending again.

Looked up 2, 5 and 10 minutes after the claim; only the third "not found" allows another send, for an urgent alert or
danger answer the first does. Where the provider cannot say, a reminder waits until it expires, and an urgent alert or
danger answer goes again, marked as perhaps doubled. A mail goes again under its one Message-ID.
"""

import time
from collections.abc import Mapping
from datetime import datetime, timedelta

from reminders.clock import Clock
from reminders.core.channel import LONGEST_VALID_SECONDS, Channel, Outgoing
from reminders.errors import CannotSay
from reminders.flows import outcomes
from reminders.store import outbox
from reminders.store.db import Database, Tx
from reminders.store.tables import Outbound

LOOK_UPS = (timedelta(minutes=2), timedelta(minutes=5), timedelta(minutes=10))
# When a provider cannot say for so long, a row without an end of its own is given up: no text is tried for longer.
LATEST = timedelta(seconds=LONGEST_VALID_SECONDS)
# For so long a row is left alone whose provider could not say: else a list that hangs would be asked in each round.
AGAIN = timedelta(minutes=2)
MOST_SECONDS = 2.0  # one call looks up no longer


def settle(db: Database, channels: Mapping[str, Channel], clock: Clock) -> int:
    """Look up the most pressing unknown attempts whose time has come; return how many rows were settled.

    A few at a time: it ends after two seconds, or once a provider could not say, so that what is urgent and waits is
    claimed in between. The others' turn comes with the next call.
    """
    ends_at = time.monotonic() + MOST_SECONDS
    with db.read() as tx:
        rows = outbox.unknown(tx, clock(), LOOK_UPS)
    settled = 0
    for row in rows:
        with db.read() as tx:
            held = outbox.receipts_held(tx, row.to)  # read again: a twin of this row may just have taken a receipt
        found, can_say = look_up(channels[row.channel], row, held)
        with db.begin() as tx:
            fresh = outbox.locked(tx, [row.id or 0]).get(row.id or 0)
            if fresh is None or not is_same(fresh, row):
                continue
            apply(tx, fresh, found, can_say, clock())
            settled += 1
        if not can_say or time.monotonic() >= ends_at:
            break
    return settled


def release(db: Database, clock: Clock) -> None:
    """Make claims whose lease ran out unknown; mails go back to waiting, since one Message-ID is one mail."""
    with db.read() as tx:
        if not outbox.has_lapsed(tx, clock()):
            return
    with db.begin() as tx:
        now = clock()
        for row in outbox.lapsed_claims(tx, now):
            row.claim_until = None
            row.state = "unknown" if row.channel == "sms" else "waiting"
            row.lookups = 0


def is_same(fresh: Outbound, row: Outbound) -> bool:
    """Return whether a row is still as it was before the look-up; else another worker, or a callback, was first."""
    return (fresh.state, fresh.attempts, fresh.lookups) == ("unknown", row.attempts, row.lookups)


def look_up(channel: Channel, row: Outbound, held: frozenset[str]) -> tuple[str | None, bool]:
    """Ask the provider; return the receipt it has, and whether it could say."""
    asked = Outgoing(key=row.key, to=row.to, body=row.body, row=row.id or 0, attempt=row.attempts)
    try:
        return channel.find(asked, row.called_at or row.created_at, held), True
    except CannotSay:
        return None, False


def apply(tx: Tx, row: Outbound, found: str | None, can_say: bool, now: datetime) -> None:
    """Write down what a look-up said."""
    if found is not None:
        outcomes.accepted(tx, [(row, found)], now)
        tx.flush()
        outcomes.match_events(tx, [row], now)
        return
    urgent = row.priority == 0
    if not can_say:
        if urgent:
            row.state, row.maybe_doubled, row.claim_until = "waiting", True, None
        else:
            wait_or_end(tx, row, now)
        return
    row.lookups, row.claim_until = row.lookups + 1, None  # only a "not found" counts
    if urgent or row.lookups >= len(LOOK_UPS):
        row.state = "waiting"
        row.due_at = min(row.due_at, now)


def wait_or_end(tx: Tx, row: Outbound, now: datetime) -> None:
    """Let a row whose provider cannot say wait until it expires, and be asked about again in a while."""
    row.claim_until = now + AGAIN
    ends_at = row.expires_at or (row.claimed_at or row.created_at) + LATEST
    if now >= ends_at:
        row.state, row.why, row.settled_at, row.claim_until = "expired", "the provider cannot say", now, None
        outcomes.tell_of_giving_up(tx, row, now)
        outcomes.session_not_reminded(tx, row, "unsent", now)
