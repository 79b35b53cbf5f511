"""Whose a reply is and which session a report goes to. Pure: the record is passed in as plain values.

What a session is worth once the report is attached stands in `core.session_value`; who is asked what, in `core.decide`.
"""

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from reminders.core.words import VOCABULARIES

LATE_REPORT_DAYS = 7  # a report within 7 days still turns a session into done or part
WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
# Words of one who speaks of herself, and what stands before or behind her own name when she says who she is.
FIRST_PERSON = frozenset(word for one in VOCABULARIES.values() for word in one.talk["first_person"].split())
# `DIED` behind a client's name tells of her death where nothing, or one of `BEHIND_DIED`, follows.
BEFORE_OWN_NAME, BEHIND_OWN_NAME, DIED, BEHIND_DIED = (
    tuple(phrase for one in VOCABULARIES.values() for phrase in one.talk[use].split("; "))
    for use in ("before_name", "behind_name", "died", "behind_died")
)
LAUGHS = frozenset(word for one in VOCABULARIES.values() for word in one.talk["laughs"].split())
MY = "|".join(one.talk["my"] for one in VOCABULARIES.values())
OPEN_STATES = frozenset({"reminded", "skipped", "missed", "unsent"})  # what a report without a day may turn


@dataclass(frozen=True)
class KnownSession:
    """A session as far as attribution needs it."""

    id: int
    on_date: date
    state: str


@dataclass(frozen=True)
class Place:
    """Where a report goes: a session of the program, or `session_id` None for an extra on `on_date`."""

    session_id: int | None
    on_date: date


@dataclass(frozen=True)
class Holder:
    """One of the clients on a phone: the names she goes by there, and whether an answer from her is awaited."""

    client_id: int
    names: tuple[str, ...]
    awaits: bool = False
    was_asked: bool = False


def named_day(when: str | None, today: date) -> date | None:
    """Return the local date that a reply speaks of, None when it names none or one still to come.

    A weekday is the latest such day up to today.
    """
    if when is None:
        return None
    if when == "today":
        return today
    if when == "yesterday":
        return today - timedelta(days=1)
    if when in WEEKDAYS:
        return today - timedelta(days=(today.weekday() - WEEKDAYS.index(when)) % 7)
    try:
        day = date.fromisoformat(when)
    except ValueError:
        return None
    return day if day <= today else None


def place(when: str | None, today: date, sessions: Sequence[KnownSession], *, only_pain: bool = False) -> Place:
    """Return the session that a report belongs to; `sessions` are the program's own, extras left out.

    The day that it names, or where that day has none the latest before it; without a day today's; else the latest of
    the last 7 days that is reminded, skipped, missed or unsent; else an extra. A reply of pain alone (`only_pain`) says
    nothing of a session done, so without a day it joins an earlier one only while that is still awaited.
    """
    recent = [known for known in sessions if today - timedelta(days=LATE_REPORT_DAYS) <= known.on_date <= today]
    recent.sort(key=lambda known: known.on_date, reverse=True)
    day = named_day(when, today)
    if day is not None and not (only_pain and day == today):  # "pain 3 today" says nothing of an earlier session
        found = next((known for known in recent if known.on_date <= day), None)
        return Place(found.id, found.on_date) if found else Place(None, day)
    if recent and recent[0].on_date == today:
        return Place(recent[0].id, today)
    wanted = frozenset({"reminded"}) if only_pain else OPEN_STATES
    found = next((known for known in recent if known.state in wanted), None)
    return Place(found.id, found.on_date) if found else Place(None, today)


def folded(text: str) -> str:
    """Return a text in lower case without accents."""
    parts = unicodedata.normalize("NFD", text.casefold())
    return "".join(mark for mark in parts if not unicodedata.combining(mark))


def words_of(text: str) -> list[str]:
    """Return the words of a text, folded, without punctuation or a possessive s."""
    cleaned = "".join(mark if mark.isalnum() or mark in "'’" else " " for mark in folded(text))
    words = [word.replace("’", "'").removesuffix("'s").strip("'") for word in cleaned.split()]
    return [word for word in words if word]


def named_holders(text: str, holders: Sequence[Holder]) -> list[Holder]:
    """Return the holders whose name stands in a text as whole words, case and accents aside."""
    line = f" {' '.join(words_of(text))} "
    return [
        holder
        for holder in holders
        if any(f" {' '.join(words_of(name))} " in line for name in holder.names if words_of(name))
    ]


def speaks_of_another(text: str, holder: Holder) -> bool:
    """Return whether somebody speaks of herself and the name may be another's: "I fell, Hugo is calling"."""
    line = f" {' '.join(words_of(text))} "
    for name in (" ".join(words_of(one)) for one in holder.names):
        if says_who_she_is(text, line, name):
            return False
        line = re.sub(rf" (?:{MY}) \w+ {re.escape(name)} ", f" {name} ", line)  # "my husband Hugo fell"
    return bool(set(line.split()) & FIRST_PERSON)


def says_who_she_is(text: str, line: str, name: str) -> bool:
    """Return whether the writer gives a name as her own, by a greeting, a colon or a signature."""
    ways = [f" {before} {name} " for before in BEFORE_OWN_NAME] + [f" {name} {behind} " for behind in BEHIND_OWN_NAME]
    marks = rf"^\s*{re.escape(name)}\s*[:–—-]|[\n–—-]\s*{re.escape(name)}\W*$"
    return any(way in line for way in ways) or re.search(marks, folded(text)) is not None


def tells_of_death(text: str, names: Sequence[str]) -> bool:
    """Return whether a text says that somebody of these names has died: "Ana died last night", not "Ana's dog died".

    The reader does not know who her clients are: to it the name may be a dog's.
    """
    if LAUGHS & set(words_of(text)):
        return False
    name = "|".join(re.escape(" ".join(words_of(one))) for one in names if words_of(one))
    died, behind = "|".join(DIED), "|".join(BEHIND_DIED)
    clauses = (" ".join(words_of(one)) for one in re.split(r"[.,;:!?\n]", text))
    told = re.compile(rf"(?:^|(?<!\bde )\b)(?:{name}) (?:{died})(?:$| (?:{behind})\b)")
    return bool(name) and any(told.search(one) for one in clauses)


def whose(text: str, holders: Sequence[Holder], *, is_answer: bool, is_danger: bool = False) -> int | None:
    """Return the client that a reply from a phone belongs to, None when it must be asked.

    Hers whom it names; else hers who was asked, when it answers that (`is_answer`); else hers who alone could have
    sent it, because only from her an answer is awaited. A danger sign without a name may be anybody's, and so may
    that of somebody who speaks of herself and names another.
    """
    if len(holders) == 1:
        return holders[0].client_id
    named = named_holders(text, holders)
    if named:
        is_clear = len(named) == 1 and not (is_danger and speaks_of_another(text, named[0]))
        return named[0].client_id if is_clear else None
    asked = [holder for holder in holders if holder.was_asked]
    if is_answer and len(asked) == 1:
        return asked[0].client_id
    if is_danger:
        return None
    awaited = [holder for holder in holders if holder.awaits]
    return awaited[0].client_id if len(awaited) == 1 else None
