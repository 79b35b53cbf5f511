"""A database whose every moment of the story is one transaction: what is heard, done, planned and handed over at it.

The weeks hold a few hundred moments and tens of thousands of questions; a commit each would be most of the time. The
door is the same: one BEGIN IMMEDIATE, one commit, full sync.
"""

from collections.abc import Iterator
from contextlib import contextmanager

from reminders.store.db import Database, Tx


class MomentDatabase(Database):
    """A database in which transactions begun inside a moment are part of it; outside one it is like any other."""

    running: Tx | None = None

    @classmethod
    def instead_of(cls, db: Database) -> "MomentDatabase":
        """Return such a database in the place of another one, which is closed."""
        made = cls(db.url)
        made.journal = db.journal
        db.close()
        return made

    @contextmanager
    def moment(self) -> Iterator[Tx]:
        """Run a block in one write transaction that every other one inside it joins."""
        with super().begin() as tx:
            self.running = tx
            try:
                yield tx
            finally:
                self.running = None

    @contextmanager
    def begin(self) -> Iterator[Tx]:
        """Run a block in the running moment, else in a write transaction of its own."""
        if self.running is None:
            with super().begin() as tx:
                yield tx
            return
        yield self.running
        self.running.flush()

    @contextmanager
    def read(self) -> Iterator[Tx]:
        """Run a block that only looks, in the running moment where there is one."""
        if self.running is None:
            with super().read() as tx:
                yield tx
            return
        yield self.running
