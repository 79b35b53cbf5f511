"""A provider whose list runs late by the service's clock, which tests set forward instead of waiting."""

import random
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from tests.standins.sms_provider import SmsProvider, Text

LATEST_SECONDS = 60.0  # a text stands in the list up to this long after it was taken
EARLY = datetime(2000, 1, 1, tzinfo=UTC)
# Shares of calls that end otherwise than well; the rest is taken and answered.
BAD_DAY = {
    "refuse": 0.02,
    "throttle": 0.08,
    "unready": 0.04,
    "broken": 0.04,
    "broken after": 0.05,
    "drop": 0.05,
    "drop after": 0.08,
}


class FileClock:
    """A clock that a file holds, as REMINDERS_CLOCK=@FILE reads it; set forward in one step, never half written."""

    def __init__(self, path: Path, now: datetime) -> None:
        self.path = path
        self.set(now)

    def __call__(self) -> datetime:
        return self.now

    def set(self, now: datetime) -> None:
        self.now = now
        draft = self.path.with_suffix(".draft")
        draft.write_text(now.isoformat(), encoding="utf-8")
        draft.replace(self.path)

    def pass_time(self, seconds: float) -> None:
        self.set(self.now + timedelta(seconds=seconds))


class LateProvider(SmsProvider):
    """Takes texts at once and shows each in its list up to a minute later, in pages of three.

    `slow`: seconds until an answer for a share of the calls; a channel whose time-out is shorter loses that answer.
    """

    def __init__(self, service_clock: Callable[[], datetime], seed: int, **more: Any) -> None:
        super().__init__(**more)
        self.service_clock, self.slow = service_clock, 0.0
        self.shown_at: dict[str, datetime] = {}
        self.fate = random.Random(seed)
        self.play.max_page = 3
        self.change({"seed": seed})

    def bad_day(self, slow: float) -> None:
        self.play.chances, self.slow = dict(BAD_DAY), slow

    def good_day(self) -> None:
        self.play.chances, self.play.late, self.slow = {}, 0.0, 0.0

    def next_act(self) -> Any:
        act = super().next_act()
        if act.kind in ("ok", "drop after", "broken after") and self.fate.random() < 0.1 and self.slow:
            return type(act)(act.kind, delay=self.slow)
        return act

    def take(self, asked: dict[str, str]) -> Text:
        text = super().take(asked)
        late = timedelta(seconds=self.fate.uniform(0.0, LATEST_SECONDS))
        self.shown_at[text.sid] = self.service_clock() + late
        return text

    def listed(self, asked: dict[str, str]) -> list[Text]:
        now = self.service_clock()
        return [text for text in super().listed(asked) if self.shown_at.get(text.sid, EARLY) <= now]
