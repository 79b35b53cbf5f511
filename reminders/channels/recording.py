"""The channel of tests: keeps what it was given and fails as it was told to. It has no place in a running service."""

from dataclasses import dataclass, field
from datetime import datetime

from reminders.core.channel import Outgoing
from reminders.errors import SendError


@dataclass
class RecordingChannel:
    """Keeps what it was given; fails first with each error it was handed.

    An error with `unknown` keeps the message all the same when `keeps_unknown` is set, as a provider does whose
    answer was lost; `find` tells.
    """

    sent: list[Outgoing] = field(default_factory=list)
    errors: list[SendError] = field(default_factory=list)
    keeps_unknown: bool = False
    receipts: dict[str, str] = field(default_factory=dict)
    given: int = 0

    def send(self, outgoing: Outgoing) -> str:
        """Keep the message and return `recorded-N`, or raise the next error."""
        error = self.errors.pop(0) if self.errors else None
        if error and not (error.unknown and self.keeps_unknown):
            raise error
        self.sent.append(outgoing)
        self.given += 1
        self.receipts[outgoing.key] = f"recorded-{self.given}"
        if error:
            raise error
        return self.receipts[outgoing.key]

    def find(
        self, outgoing: Outgoing, since: datetime, taken: frozenset[str], until: datetime | None = None
    ) -> str | None:
        """Return the receipt kept for this key, unless another row holds it."""
        receipt = self.receipts.get(outgoing.key)
        return None if receipt in taken else receipt
