"""Texts that came while another is handled: kept and answered at once, then handled together.

A provider waits some seconds for an answer and then counts the call as failed, and handling many texts together costs
half as much as each by itself. So a text that comes alone is handled within its call; in a crowd it is kept, the call
is answered, and a thread of this process handles what is waiting. What the thread does not reach, the next round of
the worker does.
"""

import logging
import threading
import time
from datetime import datetime

from reminders.clock import Clock
from reminders.flows import receive
from reminders.store.db import Database

LOG = logging.getLogger("reminders.receive")
MOMENT_SECONDS = 0.03  # what comes meanwhile is handled together; nobody notices so short a wait
MOST_AT_ONCE = 1  # texts that are handled within their calls at the same time


class Backlog:
    """Handles kept texts within their calls, or in a thread where there are too many."""

    def __init__(self, db: Database, clock: Clock) -> None:
        """Begin with nothing waiting."""
        self.db, self.clock = db, clock
        self.lock = threading.Lock()
        self.handling = 0
        self.left = 0  # texts left to the thread since it last looked
        self.thread: threading.Thread | None = None

    def handle(self, row_id: int, now: datetime, *, at_once: bool = False) -> None:
        """Handle a kept text now, or leave it to the thread: also while older ones wait, so that none overtakes.

        `at_once`: it waits for no other phone's.
        """
        if at_once:
            receive.handle_at_once(self.db, row_id, now)
            return
        with self.lock:
            is_now = self.thread is None and self.handling < MOST_AT_ONCE
            if is_now:
                self.handling += 1
            else:
                self.left += 1
                if self.thread is None:
                    self.thread = threading.Thread(target=self.catch_up, name="backlog", daemon=True)
                    self.thread.start()
        if is_now:
            try:
                receive.handle_one(self.db, row_id, now)
            finally:
                with self.lock:
                    self.handling -= 1

    def catch_up(self) -> None:
        """Handle what is waiting, a moment's texts together, until nothing is and none was left meanwhile."""
        while True:
            time.sleep(MOMENT_SECONDS)
            with self.lock:
                self.left = 0
            handled = self.handle_waiting()
            with self.lock:
                if not handled and not self.left:
                    self.thread = None
                    return

    def handle_waiting(self) -> int:
        """Handle what is waiting; 0 where it cannot be done, which the worker's next round does."""
        try:
            return receive.handle_round(self.db, self.clock(), receive.BATCH, set())
        except Exception as error:  # noqa: BLE001 - whatever went wrong, the texts are kept
            LOG.error("backlog not handled", extra={"error": type(error).__name__})
            return 0
