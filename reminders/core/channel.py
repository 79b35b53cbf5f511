"""The shape of what goes out and comes in, and the protocol of a channel: types only, no input or output."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Protocol


@dataclass(frozen=True)
class Outgoing:
    """One message to one address.

    `key` names its cause and is unique. `row` and `attempt` ride in the status callback. `valid_seconds`: how
    long the provider may still try (60 to 36,000). For mail `subject`, `html` and `headers` are set; for a text only `body`.
    """

    key: str
    to: str
    body: str
    row: int = 0
    attempt: int = 1
    valid_seconds: int = 36_000
    subject: str = ""
    html: str = ""
    headers: Mapping[str, str] = field(default_factory=dict)
    claimed_at: datetime | None = None


@dataclass(frozen=True)
class Inbound:
    """One message as it came in.

    `source` and `provider_id` together are unique. `raw` is the form or mail as bytes; `text` has NUL and lone surrogates replaced.
    `address` is the sender's, normalised (E.164, or a lower-case mail address). `verified`: it answers one of our own mails.
    """

    source: str
    provider_id: str
    address: str
    to: str
    text: str
    raw: bytes
    received_at: datetime
    pictures: int = 0
    opt_out_type: str = ""
    verified: bool = True
    automatic: bool = False
    bounce_of: str = ""
    answers: str = ""


class Channel(Protocol):
    """One way to reach a person."""

    def send(self, outgoing: Outgoing) -> str:
        """Hand one message over and return the provider's receipt.

        Raises SendError: `permanent` when trying again cannot help, `unknown` when the provider may have it.
        """

    def find(self, outgoing: Outgoing, since: datetime, taken: frozenset[str]) -> str | None:
        """Return the receipt of an attempt whose answer was lost, None when the provider has none.

        `since` is the claim's instant; `taken` are receipts that other rows hold. Raises CannotSay.
        """
