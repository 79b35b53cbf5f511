"""A clinic on a clock that anything may happen to, and witnesses of everything that was handed over."""

import shutil
import tempfile
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, datetime
from functools import cache
from pathlib import Path
from typing import Any

from reminders.channels.recording import RecordingChannel
from reminders.core.channel import Outgoing
from reminders.errors import SendError
from reminders.flows import fetch
from reminders.flows.tick import Worker
from reminders.store import schema, seed
from reminders.store.db import Database
from tests.clinic import World, a_world

ZONE = "America/New_York"
MEMORY = Path("/dev/shm")  # a disk that is not waited for, where the machine has one


@cache
def template() -> Path:
    """Return an empty database to copy."""
    path = folder() / "template.db"
    db = Database(f"sqlite:///{path}")
    schema.upgrade(db)
    with db.begin() as tx:
        seed.first_clinic(tx, datetime.fromisoformat("2027-03-01T15:00:00Z"))
    with db.engine.connect() as connection:
        connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")
    db.close()
    return path


def folder() -> Path:
    """Return a folder of this run's own."""
    return Path(tempfile.mkdtemp(prefix="reminders-model-", dir=MEMORY if MEMORY.is_dir() else None))


@dataclass
class Witness(RecordingChannel):
    """Keeps with each hand-over when it was; may lose answers, and what it was given, as it is told."""

    world: "Living | None" = None
    seen: list[tuple[datetime, Outgoing]] = field(default_factory=list)
    on_loss: Callable[[], None] = lambda: None
    loses: list[bool] = field(default_factory=list)  # the next answers are lost; True: the text was taken all the same

    def send(self, outgoing: Outgoing) -> str:
        assert self.world is not None
        lost = self.loses.pop(0) if self.loses else None
        if lost is not None:
            self.on_loss()
        if lost is False:
            raise SendError("cut off", unknown=True)
        self.seen.append((self.world.now, outgoing))
        receipt = super().send(outgoing)
        if lost:
            raise SendError("cut off", unknown=True)
        return receipt


@dataclass
class Living(World):
    """The clinic with its recurring work, in rounds."""

    place: Path = Path()

    @property
    def sender(self) -> Any:
        """Return the one sender of this process."""
        if not hasattr(self, "own_sender"):
            self.own_sender = super().sender
        return self.own_sender

    def worker(self) -> Worker:
        """Return the worker of a process that has just begun."""
        return Worker(self.db, self.sender, self.clock, fetch.Fetchers(), self.sender.name, self.now)

    def close(self) -> None:
        """Give everything back."""
        self.db.close()
        shutil.rmtree(self.place, ignore_errors=True)


def living(now: datetime) -> Living:
    """Set up a fresh clinic at an instant."""
    place = folder()
    shutil.copy(template(), place / "reminders.db")
    made = a_world(Database(f"sqlite:///{place / 'reminders.db'}"), now)
    witness = Witness()
    world = Living(made.db, now, witness, RecordingChannel(), place=place)
    witness.world = world
    return world


@dataclass
class Person:
    """What the model knows of a client: since which local date her address is open, None while it is closed."""

    client_id: int
    mobile: str
    open_since: date | None
    troubled: set[date] = field(default_factory=set)  # local dates on which a reminder may rightly have been unsent
