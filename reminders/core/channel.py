"""The shape of what goes out and comes in, and the protocols of what carries it: types only, no input or output.

What a provider's code or status means is in `core.provider_codes`; the real channels are in `channels` and `inbound`.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime
from typing import Protocol

LONGEST_VALID_SECONDS = 36_000  # the provider tries no longer (Twilio, "Message resource", ValidityPeriod)


@dataclass(frozen=True)
class Outgoing:
    """One message to one address.

    `key` names its cause and is unique. `row` and `attempt` ride in the status callback. `valid_seconds`: how
    long the provider may still try (60 to 36,000). For mail `subject`, `html`, `headers` (threading and
    Auto-Submitted), `unsubscribe_url` and `reply_token` are set; for a text only `body`.
    `claimed_at` is the mail's Date.
    """

    key: str
    to: str
    body: str
    row: int = 0
    attempt: int = 1
    valid_seconds: int = LONGEST_VALID_SECONDS
    subject: str = ""
    html: str = ""
    headers: Mapping[str, str] = field(default_factory=dict)
    claimed_at: datetime | None = None
    unsubscribe_url: str = ""
    reply_token: str = ""


@dataclass(frozen=True)
class Inbound:
    """One message as it came in.

    `source` (`sms` or `email`) and `provider_id` together are unique. `raw` is the form or mail as bytes; `text` is
    what the person wrote, with NUL and lone surrogates replaced, quoted text and signature of a mail cut off.
    `whole_text` is a mail's subject and whole text, where danger words are sought (see `core.mail_text.less_ours`).
    `address` is the sender's, normalised (E.164, or a lower-case mail address). `answers` are the Message-IDs that a
    mail names as its parents, nearest first; `reply_token` the token of the address it was sent to; only the record
    knows whether they are ours. `automatic`: never to be answered. `bounce_of`: the Message-ID that could not be
    delivered, `bounce_code` why (as `provider_codes.treatment` takes it). `verified`: the provider's signature or list
    vouches for the sender; a mail is never verified by itself.
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
    bounce_code: str = ""
    answers: tuple[str, ...] = ()
    reply_token: str = ""
    subject: str = ""
    whole_text: str = ""


@dataclass(frozen=True)
class StatusReport:
    """What the provider says became of a text it accepted.

    `row` and `attempt` are ours, from the callback's address, 0 where it has none.
    """

    provider_id: str
    status: str
    code: str
    to: str
    row: int
    attempt: int
    raw: bytes


@dataclass(frozen=True)
class MailProgress:
    """How far a mailbox has been read: every mail up to `uid` under this UIDVALIDITY (RFC 3501, section 2.3.1.1)."""

    validity: int
    uid: int


@dataclass(frozen=True)
class MailBatch:
    """Some mails in the order of the mailbox, the progress once they are kept, and whether more wait."""

    inbound: tuple[Inbound, ...]
    progress: MailProgress
    more: bool


class Channel(Protocol):
    """One way to reach a person."""

    def send(self, outgoing: Outgoing) -> str:
        """Hand one message over and return the provider's receipt.

        Raises SendError: `permanent` when trying again cannot help, `unknown` when the provider may have it.
        """

    def find(
        self, outgoing: Outgoing, since: datetime, taken: frozenset[str], until: datetime | None = None
    ) -> str | None:
        """Return the receipt of an attempt whose answer was lost, None when the provider has none.

        `since` is the claim's instant by the machine's clock, `taken` are receipts that other rows hold.
        `until` is given where the attempt may have been made long after `since`. Raises CannotSay.
        """


class InboundList(Protocol):
    """A provider that keeps what it heard, so that nothing is lost while we are down."""

    def inbound_since(self, moment: datetime) -> list[Inbound]:
        """Return every message that came in at or after this instant, oldest first. Raises CannotSay."""


class Mailbox(Protocol):
    """The mailbox that answers by mail come to."""

    def fetch(self, progress: MailProgress | None) -> MailBatch:
        """Return the next mails after this progress, all of them with None. Raises CannotSay when it cannot be read."""
