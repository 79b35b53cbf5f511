"""Which report of hers a client's correction means. Pure; what it then changes is for `core.session_value`.

A wrong number in the record is worse than a question asked: a correction that may mean one of two has no answer here.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from reminders.core.words import VOCABULARIES


def _of(use: str) -> str:
    """Return the words of one use, of all languages, as alternatives of an expression."""
    return "|".join(word for one in VOCABULARIES.values() for word in one.talk[use].split())


# What a correction takes back, "not a 6", "no 6"; sets and repetitions are none of the pain.
TAKES_BACK = re.compile(
    rf"\b(?:{_of('not')}) (?:(?:{_of('article')}) )?(\d{{1,2}})\b(?! *(?:\*|(?:{_of('counted')})\b))", re.IGNORECASE
)


@dataclass(frozen=True)
class Earlier:
    """A report that came before a correction: `given_on` her local date then, `pain` 0-10, `session_id` None for none.

    `on`: the date of its session; of a morning rating, and of one without a session, the day on which it was given.
    """

    id: int
    on: date
    given_on: date
    session_id: int | None = None
    pain: int | None = None
    is_settling: bool = False
    replaces: int | None = None
    by_staff: bool = False

    @property
    def is_of_session(self) -> bool:
        """Return whether it tells of a session itself, not of the morning after it or of none."""
        return self.session_id is not None and not self.is_settling

    @property
    def place(self) -> tuple[int | None, bool]:
        """Return where it stands in the record: two of one place are told apart by their order alone."""
        return (self.session_id, self.is_settling)


@dataclass(frozen=True)
class Correcting:
    """What a correction says. `taken_back`: ratings that it names as wrong. `on`: the day that it names.

    `asked_session`: the session of our open question about pain or amount, which it may answer. `asks_morning`: the
    morning question is open. `open_on`: the date of the newest session that may still be reported.
    """

    today: date
    states_pain: bool
    tells_session: bool
    taken_back: frozenset[int] = frozenset()
    on: date | None = None
    asked_session: int | None = None
    asks_morning: bool = False
    open_on: date | None = None


@dataclass(frozen=True)
class Meant:
    """The report that a correction means, None when there is nothing to correct; `is_torn`: it may mean another."""

    report: Earlier | None = None
    is_torn: bool = False


TORN = Meant(is_torn=True)


def taken_back(text: str) -> frozenset[int]:
    """Return the numbers that a correction says it was not."""
    return frozenset(int(number) for number in TAKES_BACK.findall(" ".join(text.split())))


def meant(earlier: Sequence[Earlier], said: Correcting) -> Meant:
    """Return which of the reports before it, oldest first, a correction means: her newest that still counts.

    What it names as wrong tells more than the order; where neither is sure it is torn.
    """
    own = [one for one in earlier if not one.by_staff and (said.on is None or one.on == said.on)]
    if said.tells_session or not said.states_pain:
        own = [one for one in own if one.is_of_session]
    if not said.states_pain:
        return unless_open(own[-1] if own else None, said)
    gone = {one.replaces for one in earlier}
    rated = [one for one in own if one.pain is not None and one.id not in gone]
    named = [one for one in rated if one.pain in said.taken_back]
    if named:
        is_sure = named[-1] is rated[-1] or len({one.place for one in named}) == 1
        return Meant(named[-1]) if is_sure else TORN
    if said.asked_session is not None:
        return of_asked(rated, said)
    if not rated:
        return unless_open(next((one for one in reversed(own) if one.is_of_session), None), said)
    counts = [one for one in own if one.is_of_session or one.pain is not None]
    is_torn = counts[-1].place != rated[-1].place or (said.asks_morning and not said.tells_session)
    if is_torn or (said.on is not None and len({one.place for one in rated}) > 1):
        return TORN
    return unless_open(rated[-1], said)


def of_asked(rated: Sequence[Earlier], said: Correcting) -> Meant:
    """Return what a correction means that comes while a question about a session is open.

    It answers that question, unless she has rated something else today and of that session nothing.
    """
    mine = [one for one in rated if one.session_id == said.asked_session and not one.is_settling]
    if mine:
        return Meant(mine[-1])
    return TORN if any(one.given_on == said.today for one in rated) else Meant()


def unless_open(found: Earlier | None, said: Correcting) -> Meant:
    """Return a report, unless what she tells of a session may be a newer one's, not reported yet."""
    is_newer = said.open_on is not None and found is not None and said.open_on > found.on
    return TORN if is_newer and said.tells_session and said.on is None else Meant(found)
