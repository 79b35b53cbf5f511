"""What a sender is and holds: its ways out, its clock and pace, what it has claimed, what a round of it did."""

import time
import uuid
from collections.abc import Callable, Mapping
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from sqlalchemy import text

from reminders.clock import Clock
from reminders.core.channel import Channel
from reminders.flows.render import Links
from reminders.store.db import Database, Tx
from reminders.store.tables import Outbound
from reminders.texts import Texts

LEASE = timedelta(seconds=90)
LEAST_LEASE = timedelta(seconds=50)  # a call is not begun with less left: it may take 45 s
BATCH = 200  # no write transaction holds more rows
THREADS = 8
CLAIM_AHEAD_SECONDS = 2.0  # each claim takes at most this much of the pace, and of what the provider takes
FIRST_GUESS_SECONDS = 0.02  # for one message, until it has been seen


@dataclass
class Sender:
    """What a sender needs; one a process."""

    db: Database
    channels: Mapping[str, Channel]
    texts: Texts
    clock: Clock
    links: Links
    parts_per_second: float = 0.0
    operator_email: str = ""
    own_clock: bool = False  # a given clock rules leases too; without one PostgreSQL's does
    threads: int = THREADS
    batch: int = BATCH
    answers_only: bool = False  # after a stop, until what came meanwhile has been fetched
    name: str = field(default_factory=lambda: uuid.uuid4().hex)
    wait: Callable[[float], None] = time.sleep
    pool: ThreadPoolExecutor | None = None
    seconds_each: float = FIRST_GUESS_SECONDS

    def batch_now(self) -> int:
        """Return how many rows a claim takes: what two seconds are enough for, so that urgent ones wait no longer."""
        return min(self.batch, max(self.threads, int(CLAIM_AHEAD_SECONDS / self.seconds_each)))

    def learn(self, seconds_each: float) -> None:
        """Note how long a message of the last claim took."""
        self.seconds_each = max((self.seconds_each + seconds_each) / 2, 1e-6)

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
    """A claimed row with the machine's moment from which the pace lets it go, and until when its lease lasts.

    One that is not `worded` is never handed over: its words could not be written. `ends_at`: until when it may arrive.
    """

    row: Outbound
    slot: float
    until: float
    worded: bool = True
    ends_at: datetime | None = None
