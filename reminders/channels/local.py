"""The channel that needs no account: the outbox row is the message, and the demo's phone page shows it.

Nothing is kept here and nothing leaves the machine.
"""

from datetime import datetime

from reminders.core.channel import Outgoing
from reminders.settings import Settings


class LocalChannel:
    """Accepts everything at once."""

    def send(self, outgoing: Outgoing) -> str:
        """Return a receipt built from the key, the same at every try."""
        return f"local-{outgoing.key}"

    def find(
        self, outgoing: Outgoing, since: datetime, taken: frozenset[str], until: datetime | None = None
    ) -> str | None:
        """Return the same receipt: what was claimed has been accepted."""
        return self.send(outgoing)


def build(settings: Settings) -> LocalChannel:
    """Return the local channel; it has no settings."""
    return LocalChannel()
