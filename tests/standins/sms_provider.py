"""A stand-in for the SMS provider on loopback: its Messages API well enough for its own client, and its misbehaviour.

In a test: `with SmsProvider() as provider: ... provider.url`. As a process, controlled over HTTP:
`python -m tests.standins.sms_provider --port 0` prints its address, then `POST /_control` takes the fields of `Play`
as JSON, `POST /_hear` {"from", "to", "body"} lets a text come in and `GET /_accepted` lists what was accepted.
"""

import argparse
import random
import threading
import time
from collections import deque
from collections.abc import Callable
from dataclasses import dataclass, field, fields, replace
from datetime import UTC, datetime
from email.utils import format_datetime
from typing import Any

from tests.standins.callbacks import Callbacks
from tests.standins.forms import ACCOUNT_SID, AUTH_TOKEN, SENDER, inbound_fields
from tests.standins.sms_http import Server, passes


@dataclass(frozen=True)
class Act:
    """What the next call to send does.

    `kind`: `ok`, `refuse` (400 with `code`), `throttle` (429 with Retry-After), `broken` (500 before the text was
    taken), `broken after`, `drop` (connection cut before it was taken), `drop after`, `unready` (503).
    `delay`: seconds until the answer. `status`: HTTP status of a refusal.
    """

    kind: str = "ok"
    code: str = "21211"
    retry_after: str = "7"
    delay: float = 0.0
    status: int = 400

    @property
    def takes(self) -> bool:
        """Whether the text is taken, whatever the answer."""
        return self.kind in ("ok", "broken after", "drop after")


@dataclass
class Play:
    """How the provider behaves; may be changed at any moment.

    `acts` are used up by the next sends, then `chances` (kind -> probability) are drawn from `seed`. `list_delay`:
    seconds until a text shows in the list. `hides_unsent`: a list filtered by date leaves out what has no date_sent.
    `list_breaks`: the next so many list calls answer 500;
    `list_breaks_from`: those for this page and later. `max_page`: rows a page at most. `callbacks`: statuses sent
    to a text's StatusCallback in this order; `final` is the state the list shows.
    """

    acts: deque[Act] = field(default_factory=deque)
    chances: dict[str, float] = field(default_factory=dict)
    late: float = 0.0
    list_delay: float = 0.0
    hides_unsent: bool = True
    list_breaks: int = 0
    list_breaks_from: int = 0
    max_page: int = 1000
    callbacks: tuple[str, ...] = ()
    callback_code: str = ""
    sends_at_once: bool = True
    seed: int = 1


@dataclass(frozen=True)
class Text:
    """A text that the provider has, either way."""

    sid: str
    to: str
    sender: str
    body: str
    direction: str
    created_at: datetime
    shown_from: float
    sent_at: datetime | None
    asked: dict[str, str]
    status: str = "queued"

    def row(self, account: str) -> dict[str, Any]:
        """Return the text as the API shows it; times have whole seconds there."""
        return {
            "sid": self.sid,
            "account_sid": account,
            "to": self.to,
            "from": self.sender,
            "body": self.body,
            "direction": self.direction,
            "status": self.status,
            "num_media": "0",
            "num_segments": "1",
            "date_created": format_datetime(self.created_at),
            "date_updated": format_datetime(self.created_at),
            "date_sent": format_datetime(self.sent_at) if self.sent_at else None,
            "error_code": None,
            "error_message": None,
            "price": None,
            "price_unit": "USD",
            "api_version": "2010-04-01",
            "uri": f"/2010-04-01/Accounts/{account}/Messages/{self.sid}.json",
            "messaging_service_sid": None,
            "subresource_uris": {},
        }


class SmsProvider:
    """The provider: what it took, in order, and what it does next."""

    def __init__(
        self,
        *,
        port: int = 0,
        account: str = ACCOUNT_SID,
        token: str = AUTH_TOKEN,
        clock: Callable[[], datetime] | None = None,
        inbound_url: str = "",
    ) -> None:
        self.account, self.token, self.inbound_url = account, token, inbound_url
        self.clock = clock or (lambda: datetime.now(UTC))
        self.play = Play()
        self.texts: list[Text] = []
        self.asked = 0
        self.lists_asked: list[dict[str, str]] = []
        self.lock = threading.Lock()
        self.chance = random.Random(1)
        self.callbacks = Callbacks(token)
        self.passes = passes(account, (token,))
        self.server = Server(port, self)
        self.thread = threading.Thread(target=self.server.serve_forever, args=(0.05,), daemon=True)

    @property
    def url(self) -> str:
        """The base address for REMINDERS_TWILIO_API_URL."""
        return f"http://127.0.0.1:{self.server.server_address[1]}"

    @property
    def accepted(self) -> list[Text]:
        """What was taken to be sent, in order."""
        return [text for text in self.texts if text.direction != "inbound"]

    def __enter__(self) -> "SmsProvider":
        self.thread.start()
        return self

    def __exit__(self, *_: object) -> None:
        self.server.shutdown()
        self.thread.join()
        self.server.server_close()
        self.callbacks.close()

    def next_act(self) -> Act:
        """Return what the next send does."""
        with self.lock:
            self.asked += 1
            if self.play.acts:
                return self.play.acts.popleft()
            draw = self.chance.random()
            for kind, share in self.play.chances.items():
                if draw < share:
                    return Act(kind, delay=self.play.late)
                draw -= share
            return Act(delay=self.play.late)

    def take(self, asked: dict[str, str]) -> Text:
        """Keep a text that we were asked to send, and send its callbacks."""
        now = self.clock()
        play = self.play
        with self.lock:
            text = Text(
                sid=f"SM{len(self.texts) + 1:032x}",
                to=asked["To"],
                sender=asked.get("From", SENDER),
                body=asked["Body"],
                direction="outbound-api",
                created_at=now,
                shown_from=time.monotonic() + play.list_delay,
                sent_at=now if play.sends_at_once else None,
                asked=asked,
                status=play.callbacks[-1] if play.callbacks else "queued",
            )
            self.texts.append(text)
        if asked.get("StatusCallback"):
            for status in play.callbacks:
                self.callbacks.report(asked["StatusCallback"], text.sid, status, text.to, play.callback_code)
        return text

    def hear(self, sender: str, body: str, to: str = SENDER, *, post: bool | None = None) -> Text:
        """Let a text come in: it stands in the list and, where there is an inbound address, is posted there."""
        now = self.clock()
        with self.lock:
            text = Text(
                sid=f"SM{len(self.texts) + 1:032x}",
                to=to,
                sender=sender,
                body=body,
                direction="inbound",
                created_at=now,
                shown_from=time.monotonic() + self.play.list_delay,
                sent_at=now,
                asked={},
                status="received",
            )
            self.texts.append(text)
        if post if post is not None else bool(self.inbound_url):
            self.callbacks.post(self.inbound_url, inbound_fields(text.sid, sender, body, to))
        return text

    def listed(self, asked: dict[str, str]) -> list[Text]:
        """Return the texts that a list shows, newest first."""
        after, before = asked.get("DateSent>", ""), asked.get("DateSent<", "")
        with self.lock:
            found = [text for text in self.texts if text.shown_from <= time.monotonic()]
        found = [t for t in found if asked.get("To", t.to) == t.to and asked.get("From", t.sender) == t.sender]
        if after or before:
            found = [t for t in found if self.is_within(t, after, before)]
        return sorted(found, key=lambda t: (t.created_at, t.sid), reverse=True)

    def is_within(self, text: Text, after: str, before: str) -> bool:
        """Whether a text was sent within the asked days; the API counts whole UTC days, both ends included."""
        if text.sent_at is None:
            return not self.play.hides_unsent
        day = text.sent_at.astimezone(UTC).date().isoformat()
        return (not after or day >= after[:10]) and (not before or day <= before[:10])

    def change(self, play: dict[str, Any]) -> None:
        """Take new behaviour as JSON gives it; what it does not name stays."""
        names = {one.name for one in fields(Play)}
        given = {name: value for name, value in play.items() if name in names}
        if "acts" in given:
            given["acts"] = deque(Act(**act) for act in given["acts"])
        if "callbacks" in given:
            given["callbacks"] = tuple(given["callbacks"])
        if "seed" in given:
            self.chance = random.Random(given["seed"])
        self.play = replace(self.play, **given)

    def show_all(self) -> None:
        """Let the list show at once what it still held back."""
        with self.lock:
            self.texts = [replace(text, shown_from=0.0) for text in self.texts]

    def will(self, *acts: Act) -> None:
        """Let the next sends do this, one after the other."""
        self.play.acts.extend(acts)

    def will_refuse(self, code: str, times: int = 1, status: int = 400) -> None:
        """Refuse the next sends with this code of the provider."""
        self.will(*[Act("refuse", code=code, status=status)] * times)


def main() -> None:
    """Serve until killed, first printing the address on one line."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--port", type=int, default=0)
    parser.add_argument("--inbound-url", default="")
    parser.add_argument("--clock-file", help="a file with one instant, read at every use")
    given = parser.parse_args()
    clock = file_clock(given.clock_file) if given.clock_file else None
    with SmsProvider(port=given.port, inbound_url=given.inbound_url, clock=clock) as provider:
        print(provider.url, flush=True)
        provider.thread.join()


def file_clock(path: str) -> Callable[[], datetime]:
    """Return a clock that a file holds, the service's own REMINDERS_CLOCK=@FILE."""

    def read() -> datetime:
        with open(path, encoding="utf-8") as file:
            return datetime.fromisoformat(file.read().strip()).astimezone(UTC)

    return read


if __name__ == "__main__":
    main()
