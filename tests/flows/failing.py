"""Providers that fail as long as they are told to, and a sender over them."""

from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

from reminders.core.channel import Outgoing
from reminders.errors import CannotSay
from reminders.flows import deliver
from tests.clinic import World
from tests.flows.rounds import do_jobs


@dataclass
class Failing:
    """A channel that refuses each message with an error, those to one address or all, until an instant."""

    world: World
    error: Exception
    to: str = ""
    until: datetime | None = None
    inner: Any = None
    tried: list[datetime] = field(default_factory=list)

    def send(self, outgoing: Outgoing) -> str:
        if outgoing.to != (self.to or outgoing.to) or (self.until is not None and self.world.now >= self.until):
            receipt: str = (self.inner or self.world.sms).send(outgoing)
            return receipt
        self.tried.append(self.world.now)
        raise self.error

    def find(self, outgoing: Outgoing, since: datetime, taken: frozenset[str], until: datetime | None = None) -> None:
        raise CannotSay("down")


def rounds(world: World, channels: dict[str, Any], minutes: float, step: float = 0.5) -> None:
    """Let time pass, a round each half minute, over these channels instead of the recording ones."""
    end = world.now + timedelta(minutes=minutes)
    sender = world.sender
    sender.channels = {**sender.channels, **channels}
    while True:
        do_jobs(world)
        deliver.send_due(sender)
        if world.now >= end:
            return
        world.pass_time(minutes=step)
