"""A client's text or mail on its way to the clinic, and how it comes in: as a provider or a mailbox hands it over."""

from dataclasses import dataclass
from datetime import datetime

from reminders.core.channel import Inbound
from reminders.demo.answering import Life
from reminders.demo.people import LINE


@dataclass(frozen=True)
class Text:
    """A text or mail on its way from a client."""

    life: Life
    address: str
    words: str
    answers: str = ""  # the mail of ours that a mail answers


def inbound_of(text: Text, number: int, now: datetime) -> Inbound:
    """Return a client's text or mail as it comes in."""
    is_mail = "@" in text.address
    return Inbound(
        source="email" if is_mail else "sms",
        provider_id=f"<demo-{number}@example.org>" if is_mail else f"SM{number:032x}",
        address=text.address,
        to="clinic@example.org" if is_mail else LINE,
        text=text.words,
        raw=text.words.encode(),
        received_at=now,
        answers=(text.answers,) if text.answers else (),
        whole_text=text.words if is_mail else "",
    )
