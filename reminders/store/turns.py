"""Turns: SQLite has one writer, and the threads of a process take turns at it and share a write to the disk."""

import threading
from collections.abc import Callable
from typing import Any, Generic, Protocol, TypeVar

from sqlalchemy import Connection
from sqlmodel import Session as Tx

Got = TypeVar("Got")


class Watcher(Protocol):
    """Sees what each write transaction writes, and keeps of it what must outlive the database."""

    def watch(self, tx: Tx) -> Any:
        """Return what a transaction writes from here on, filled in as it goes."""

    def keep(self, tx: Tx, seen: Any) -> None:
        """Keep what was seen; called right before the commit."""


class Job(Generic[Got]):
    """One thing to be done in a transaction that others share, and what came of it."""

    def __init__(self, work: Callable[[Tx], Got]) -> None:
        """Keep what is to be done."""
        self.work = work
        self.done = threading.Event()
        self.found: list[Got] = []
        self.error: BaseException | None = None

    def do(self, connection: Connection, journal: Watcher | None) -> None:
        """Do it in a savepoint; where it fails that alone is undone, and who waits for it hears of it."""
        tx = Tx(bind=connection, expire_on_commit=False, join_transaction_mode="create_savepoint")
        seen = journal.watch(tx) if journal else None
        try:
            self.found.append(self.work(tx))
            tx.flush()
            if journal:
                journal.keep(tx, seen)
            tx.commit()
        except Exception as error:  # noqa: BLE001 - it is raised again where it is waited for
            tx.rollback()
            self.error = error
        finally:
            tx.close()

    def result(self) -> Got:
        """Return what the work returned, or raise what it raised."""
        if self.error is not None:
            raise self.error
        return self.found[0]


class Turn:
    """Whose turn it is to write to SQLite, among the threads of one process."""

    def __init__(self) -> None:
        """Begin with nobody's turn."""
        self.lock = threading.Lock()
        self.counting = threading.Lock()
        self.waiting = 0

    def __enter__(self) -> None:
        """Wait for the turn."""
        self.count(1)
        self.lock.acquire()
        self.count(-1)

    def __exit__(self, *_: object) -> None:
        """Give the turn back."""
        self.lock.release()

    def count(self, one: int) -> None:
        """Count who waits."""
        with self.counting:
            self.waiting += one

    def is_taken_now(self) -> bool:
        """Take the turn where it is nobody's and nobody waits for it, so that one busy thread cannot keep it."""
        return not self.waiting and self.lock.acquire(blocking=False)
