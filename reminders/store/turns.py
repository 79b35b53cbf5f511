"""Turns: SQLite has one writer, and the threads of a process take turns at it and share a write to the disk."""

import threading
from collections.abc import Callable
from typing import Any, Generic, Protocol, TypeVar

from sqlmodel import Session as Tx

Given = TypeVar("Given")
Got = TypeVar("Got")


class Watcher(Protocol):
    """Sees what each write transaction writes, and keeps of it what must outlive the database."""

    def watch(self, tx: Tx) -> Any:
        """Return what a transaction writes from here on, filled in as it goes."""

    def keep(self, tx: Tx, seen: Any) -> None:
        """Keep what was seen; called right before the commit."""


class Job(Generic[Given, Got]):
    """One of the things that may be done together, and what came of it."""

    def __init__(self, work: Callable[[Tx, list[Given]], list[Got]], given: Given) -> None:
        """Keep what is to be done."""
        self.work, self.given = work, given
        self.is_done = False
        self.news = threading.Event()  # it is done, or the turn is free
        self.found: list[Got] = []
        self.error: BaseException | None = None

    def end(self) -> None:
        """Let who waits for it go on."""
        self.is_done = True
        self.news.set()

    def result(self) -> Got:
        """Return what the work returned, or raise what it raised."""
        if self.error is not None:
            raise self.error
        return self.found[0]


class Turn:
    """Whose turn it is to write to SQLite, among the threads of one process."""

    def __init__(self, when_free: Callable[[], None]) -> None:
        """Begin with nobody's turn; `when_free` is called each time that a turn ends."""
        self.when_free = when_free
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
        self.give_back()

    def give_back(self) -> None:
        """Give the turn back, and say so."""
        self.lock.release()
        self.when_free()

    def count(self, one: int) -> None:
        """Count who waits."""
        with self.counting:
            self.waiting += one

    def is_taken_now(self) -> bool:
        """Take the turn where it is nobody's and nobody waits for it, so that one busy thread cannot keep it."""
        return not self.waiting and self.lock.acquire(blocking=False)
