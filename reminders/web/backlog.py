"""Texts that come in a crowd: kept and answered at once, then handled together.

A provider waits some seconds for an answer and then counts the call as failed. So a text that comes alone is kept and
handled within its call; in a crowd it is kept beside the database, the call is answered, and what is waiting is handled
by the process beside this one, or by a thread where there is none. What neither reaches, the worker's next round does.
"""

import logging
import threading
import time
from datetime import datetime

from reminders.clock import Clock
from reminders.core.channel import Inbound
from reminders.flows import keeping, receive
from reminders.store.db import Database
from reminders.web.beside import Beside

LOG = logging.getLogger("reminders.receive")


class Backlog:
    """Handles texts within their calls, or leaves them where there are too many."""

    def __init__(self, db: Database, clock: Clock, beside: Beside | None = None) -> None:
        """Begin with nothing waiting; `beside` is the process that catches up, where there is one."""
        self.db, self.clock, self.beside = db, clock, beside
        self.lock = threading.Lock()
        self.is_handling = False  # a text is handled within its call
        self.left = 0  # texts left to the thread since it last looked
        self.thread: threading.Thread | None = None

    def hear(self, inbound: Inbound, now: datetime, *, at_once: bool = False) -> None:
        """Keep a text, and handle it now or leave it: also while older ones wait, so that none overtakes.

        `at_once`: it waits for no other phone's.
        """
        if at_once:
            keeping.bring_in(self.db)  # its phone's older texts among them
            row_id = self.keep(inbound, now)
            if row_id is not None:
                receive.handle_at_once(self.db, row_id, now)
        elif self.may_begin():
            try:
                row_id = self.keep(inbound, now)
                if row_id is not None:
                    receive.handle_one(self.db, row_id, now)
            finally:
                with self.lock:
                    self.is_handling = False
        else:
            if self.db.arrivals is not None:
                keeping.keep_beside(self.db.arrivals, inbound, now)
            else:
                self.keep(inbound, now)
            self.leave()

    def keep(self, inbound: Inbound, now: datetime) -> int | None:
        """Keep a text in the database; return its id, None when it was kept before."""
        with self.db.begin() as tx:
            return keeping.keep(tx, inbound, now)

    def may_begin(self) -> bool:
        """Return whether a text can be handled within its call: none else is, none waits, and nobody else writes."""
        with self.lock:
            is_behind = self.beside is not None and self.beside.is_behind()
            if self.is_handling or is_behind or self.thread is not None or not self.db.is_free():
                return False
            self.is_handling = True
            return True

    def leave(self) -> None:
        """Leave what was kept to the process, or to the thread."""
        if self.beside is not None and self.beside.leave():
            return
        with self.lock:
            self.left += 1
            if self.thread is None:
                self.thread = threading.Thread(target=self.catch_up, name="backlog", daemon=True)
                self.thread.start()

    def catch_up(self) -> None:
        """Handle what is waiting, a moment's texts together, until nothing is and none was left meanwhile."""
        while True:
            time.sleep(receive.MOMENT_SECONDS)
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
