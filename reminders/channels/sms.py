"""Texts through Twilio, by the provider's own client, and its list of what was sent and what came in.

What a failure then means for a client is in the flows; what a code means is in `core.provider_codes`.
"""

import logging
import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from email.utils import parsedate_to_datetime
from functools import partial
from ssl import SSLCertVerificationError
from typing import Any
from urllib.parse import urlencode

from twilio.base.exceptions import TwilioException, TwilioRestException, TwilioServiceException
from twilio.rest import Client
from urllib3.exceptions import (
    ConnectTimeoutError,
    HTTPError,
    LocationValueError,
    NewConnectionError,
    ProxyError,
    SSLError,
)
from urllib3.response import BaseHTTPResponse
from urllib3.util import Timeout

from reminders.channels.sms_http import KeptAlive
from reminders.core.channel import Inbound, Outgoing
from reminders.core.intake import clean, number, whole
from reminders.core.provider_codes import RETRY, is_final
from reminders.errors import CannotSay, SendError
from reminders.settings import Settings, host_of, is_loopback

TIMEOUT_SECONDS, CONNECT_SECONDS = 45.0, 10.0
LONGEST_WAIT_SECONDS = 86_400.0
PAGE_SIZE = 1000  # the list's largest page (Twilio, "Message resource", read multiple)
TRIES = 3  # of each page of what came in
BEFORE_CLAIM, AFTER_CLAIM = timedelta(seconds=60), timedelta(minutes=10)
# The provider writes whole seconds; what it made in the second of our moment must not fall out.
SECOND = timedelta(seconds=1)
# What a call or a page can end in when the provider or the way to it misbehaves.
LOST = (TwilioException, HTTPError, ValueError, KeyError, TypeError, OSError)
# The provider's client logs whole requests, numbers and texts included.
SILENT = logging.Logger("silent", logging.CRITICAL + 1)


class SmsChannel:
    """Hands texts to the provider and asks it what it has."""

    def __init__(self, settings: Settings, timeout_seconds: float = TIMEOUT_SECONDS) -> None:
        settings.check_texts()
        self.sender = settings.twilio_sender
        self.callback = f"{settings.public_url}/sms/status" if settings.has_status_callback else ""
        self.clients = tuple(client(settings, token, timeout_seconds) for token in settings.twilio_auth_tokens)

    def send(self, outgoing: Outgoing) -> str:
        """Hand one text over and return the provider's SID.

        Raises SendError, `unknown` when the call was cut off or ended in a way that does not tell.
        """
        asked: dict[str, object] = {
            "to": outgoing.to,
            "body": outgoing.body,
            "validity_period": outgoing.valid_seconds,
            # Else the provider might swap signs, and the text in its list would no longer be ours word for word.
            "smart_encoded": False,
        }
        asked["messaging_service_sid" if self.sender.startswith("MG") else "from_"] = self.sender
        if self.callback:
            marks = urlencode({"row": outgoing.row, "attempt": outgoing.attempt})
            asked["status_callback"] = f"{self.callback}?{marks}"
        sid = self.call(lambda one: one.messages.create(**asked).sid)
        if not sid:
            raise SendError("The SMS provider accepted a text without naming it.", unknown=True)
        return str(sid)

    def call(self, act: Callable[[Any], str | None]) -> str | None:
        """Return what a call gives with the first token that the provider takes; raises SendError."""
        for one in self.clients:
            try:
                return act(one)
            except LOST as error:
                # The provider's client drops the headers of a refusal; how long to wait is among them.
                answer = one.http_client.last_answer()
                failure = send_error(error, retry_after(answer) if answer else None)
                if failure.code not in ("20003", "http:401") or one is self.clients[-1]:
                    raise failure from None
        raise AssertionError("a channel has at least one client")

    def find(
        self, outgoing: Outgoing, since: datetime, taken: frozenset[str], until: datetime | None = None
    ) -> str | None:
        """Return the SID of a text whose answer was lost, None when the provider's list has none; raises CannotSay.

        Ours has our To, our exact body and was made from 60 s before the claim to 10 minutes after it (or to
        `until`, after a restore, where nobody knows when it was claimed). A text that
        has not left yet has no date_sent, and a list filtered by it may leave that text out, so the whole list for
        this number is read when the filtered one has none.
        """
        for bounds in ({"date_sent_after": day_before(since)}, {}):
            made = [
                (row.created_at, row.sid)
                for row in self.listed(to=outgoing.to, **bounds)
                if not row.is_inbound
                and (row.to, row.body) == (outgoing.to, outgoing.body)
                and row.sid not in taken
                and since - BEFORE_CLAIM - SECOND < row.created_at <= (until or since + AFTER_CLAIM)
            ]
            if made:
                return min(made)[1]
        return None

    def inbound_since(self, moment: datetime) -> list[Inbound]:
        """Return what came in at or after this instant by the provider's time, oldest first; raises CannotSay."""
        bounds: dict[str, object] = {"date_sent_after": day_before(moment)}
        if not self.sender.startswith("MG"):
            bounds["to"] = self.sender
        rows = [row for row in self.listed(TRIES, **bounds) if row.is_inbound and row.created_at > moment - SECOND]
        return [row.inbound() for row in oldest_first(rows)]

    def listed(self, tries: int = 1, /, **bounds: object) -> list["Listed"]:
        """Return every row of every page of the provider's list; raises CannotSay when a page cannot be had, asked for
        so many times.
        """
        for one in self.clients:
            rows: list[Listed] = []
            try:
                page = asked(partial(one.messages.page, page_size=PAGE_SIZE, **bounds), tries)
                while page is not None:
                    rows += [Listed.of(row) for row in page]
                    page = asked(page.next_page, tries)
            except LOST as error:
                if one is not self.clients[-1] and is_wrong_token(error):
                    continue
                raise CannotSay("The SMS provider's list of messages cannot be read.") from None
            return rows
        raise AssertionError("a channel has at least one client")


@dataclass(frozen=True)
class Listed:
    """One row of the provider's list."""

    sid: str
    to: str
    sender: str
    body: str
    is_inbound: bool
    created_at: datetime
    pictures: int

    @classmethod
    def of(cls, row: Any) -> "Listed":
        """Return a row of the provider's own client; raises ValueError for one without a name or a time."""
        created_at = row.date_created or row.date_sent
        if not row.sid or created_at is None:
            raise ValueError("a row of the list has no SID or no date")
        return cls(
            sid=row.sid,
            to=row.to or "",
            sender=row.from_ or "",
            body=row.body or "",
            is_inbound=row.direction == "inbound",
            created_at=created_at,
            pictures=whole(str(row.num_media or 0)),
        )

    def inbound(self) -> Inbound:
        """Return the row as a message that came in, under the same name as its webhook has."""
        fields = {"MessageSid": self.sid, "From": self.sender, "To": self.to, "Body": self.body}
        return Inbound(
            source="sms",
            provider_id=self.sid,
            address=number(self.sender),
            to=number(self.to),
            text=clean(self.body),
            raw=urlencode(fields, errors="surrogatepass").encode("ascii"),
            received_at=self.created_at,
            pictures=self.pictures,
        )


def oldest_first(rows: Sequence["Listed"]) -> list["Listed"]:
    """Return rows of the provider's list, which stands newest first (from memory), in the order of time.

    Its times are whole seconds: within one of them its own order counts, since a correction follows what it corrects.
    """
    ordered = list(reversed(rows))
    ordered.sort(key=lambda row: row.created_at)
    return ordered


def asked(page: Callable[[], Any], tries: int) -> Any:
    """Return a page, asked for again when it cannot be had, so that one of many lost does not lose all of them."""
    for _ in range(tries - 1):
        try:
            return page()
        except LOST as error:
            if is_wrong_token(error):
                raise
    return page()


def day_before(moment: datetime) -> datetime:
    """Return the start of the UTC day before this instant's."""
    day = moment.astimezone(UTC) - timedelta(days=1)
    return day.replace(hour=0, minute=0, second=0, microsecond=0)


def client(settings: Settings, token: str, timeout_seconds: float) -> Any:
    """Return the provider's own client for one token, against the base address of the settings."""
    url = settings.twilio_api_url
    limits = Timeout(connect=CONNECT_SECONDS, total=timeout_seconds)
    http = KeptAlive(SILENT, limits, url, is_loopback=is_loopback(host_of(url)))
    # An environment of its own: TWILIO_EDGE or TWILIO_REGION would rewrite the address that we were given.
    made = Client(settings.twilio_account_sid, token, http_client=http, environment={"TWILIO_EDGE": ""})
    made.api.base_url = url
    return made


def retry_after(response: BaseHTTPResponse) -> float | None:
    """Return the seconds that an answer asks us to wait (RFC 9110, section 10.2.3), None when it does not say."""
    text = response.headers.get("Retry-After", "").strip()
    if re.fullmatch(r"[0-9]{1,9}", text, re.ASCII):
        return min(float(text), LONGEST_WAIT_SECONDS)
    try:
        until = parsedate_to_datetime(text)
        waits = (until - parsedate_to_datetime(response.headers.get("Date", ""))).total_seconds()
    except (TypeError, ValueError):
        return None
    return min(max(waits, 0.0), LONGEST_WAIT_SECONDS)


def send_error(error: Exception, wait: float | None) -> SendError:
    """Return how a failed call is to be treated; its sentence holds no number and no text."""
    if isinstance(error, TwilioRestException | TwilioServiceException):
        code = str(error.code) if error.code and error.code != error.status else f"http:{error.status}"
        # 500, 502, 504: something broke, and nobody says before or after the text was taken.
        unknown = error.status >= 500 and code not in RETRY
        return SendError(
            f"The SMS provider refused the text ({code}).",
            permanent=not unknown and is_final(code),
            unknown=unknown,
            code=code,
            retry_after=wait,
        )
    if is_before_the_call(error):
        return SendError("The SMS provider could not be reached.")
    return SendError("The call to the SMS provider was cut off.", unknown=True)


def is_before_the_call(error: Exception) -> bool:
    """Whether a call failed before anything of it reached the provider."""
    inner = error.original_error if isinstance(error, ProxyError) else error
    if isinstance(inner, SSLError):
        return any(isinstance(cause, SSLCertVerificationError) for cause in inner.args)
    return isinstance(inner, NewConnectionError | ConnectTimeoutError | LocationValueError)


def is_wrong_token(error: Exception) -> bool:
    """Whether the list was refused because of the token."""
    return any(getattr(part, "status_code", 0) in (401, 403) for part in error.args)


def build(settings: Settings) -> SmsChannel:
    """Return the channel for texts; raises BadInput when a setting is missing."""
    return SmsChannel(settings)
