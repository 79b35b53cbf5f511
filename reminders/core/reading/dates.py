"""Days and dates told in a reply: which day it speaks of (`when`), and until when a pause lasts.

Which words name days and months is a language's own; the year always comes from `today`, never from a clock.
"""

import re
from collections.abc import Iterator
from datetime import date, timedelta

from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.scope import Scope
from reminders.core.reading.tokens import Text

DAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
_ISO = re.compile(r"(\d{4})-(\d{1,2})-(\d{1,2})")
_SLASHED = re.compile(r"(\d{1,2})/(\d{1,2})(?:/(\d{2,4}))?")
_MONTH_DAYS = 30  # "a month" from today
_LAST_DAY = 31


def day_told(scope: Scope, hits: dict[str, list[tuple[int, int]]], today: date | None) -> str | None:
    """Return today, yesterday, a weekday's three letters or an ISO date: the day whose session a report tells.

    "Did Thursday's today" is Thursday's session; "yesterday all, today half" is today's.
    """
    weekdays = scope.lexicon.weekdays
    words = scope.text.words
    is_named = not weekdays.keys().isdisjoint(words)
    named = [(at, weekdays[word]) for at, word in enumerate(words) if word in weekdays] if is_named else []
    possessive = [day for at, day in named if scope.text.raw[at].endswith("s") and scope.text.words[at] not in DAYS]
    dated = next(_dates(scope.text, scope.lexicon, today, forward=False), None)
    if dated is not None:
        return dated.isoformat()
    if "day.today" in hits and not (named and possessive and scope.lexicon.languages[0].marks_possessive):
        return "today"
    if "day.yesterday" in hits:
        return "yesterday"
    return DAYS[named[0][1]] if named else None


def until_told(text: Text, lexicon: Lexicon, today: date | None) -> date | None:
    """Return the date until which she will be away: a date, a day of the month, a weekday, or a stretch from today."""
    dated = list(_dates(text, lexicon, today, forward=True))
    if dated:
        return max(dated)
    if today is None:
        return None
    return _stretch(text, lexicon, today) or _weekday(text, lexicon, today) or _day_of_month(text, lexicon, today)


def _dates(text: Text, lexicon: Lexicon, today: date | None, forward: bool) -> Iterator[date]:
    """Yield the dates written out; one without a year is the nearest before today, or after it when looking forward."""
    if lexicon.months.keys().isdisjoint(text.words) and lexicon.chars("DATE").isdisjoint(text.signature):
        return
    for at, raw in enumerate(text.raw):
        month = lexicon.months.get(text.words[at])
        if match := _ISO.fullmatch(raw):
            found = _made(int(match[1]), int(match[2]), int(match[3]))
        elif (match := _SLASHED.fullmatch(raw)) and lexicon.is_in("DATE", text.signature[at]):
            year = int(match[3])
            found = _made(year if year > 99 else 2000 + year, int(match[1]), int(match[2]))
        elif month is not None:
            day = _number_beside(text, at)
            found = _nearest(month, day, today, forward) if day else None
        else:
            continue
        if found is not None:
            yield found


def _number_beside(text: Text, at: int) -> int | None:
    """Return the day of the month beside a month's name: "march 3", "3 de marzo"."""
    for place in (at + 1, at + 2, at - 1, at - 2):
        if 0 <= place < len(text.values):
            value = text.values[place]
            if value is not None and value == int(value) and 1 <= value <= _LAST_DAY:
                return int(value)
    return None


def _nearest(month: int, day: int, today: date | None, forward: bool) -> date | None:
    """Return a day and month in the year that fits: the next one, or the last one."""
    if today is None:
        return None
    for year in (today.year, today.year + 1) if forward else (today.year, today.year - 1):
        found = _made(year, month, day)
        if found is not None and (found >= today if forward else found <= today):
            return found
    return None


def _made(year: int, month: int, day: int) -> date | None:
    """Return a date, None when there is no such day."""
    try:
        return date(year, month, day)
    except ValueError:
        return None


def _stretch(text: Text, lexicon: Lexicon, today: date) -> date | None:
    """Return today plus "two weeks", "10 days", "next week", "a month"."""
    for at, word in enumerate(text.words):
        days = lexicon.stretches.get(word)
        if days is None:
            continue
        number = next((text.values[k] for k in range(at - 1, max(-1, at - 4), -1) if text.values[k] is not None), None)
        counted = lexicon.near_numbers.get(text.words[at - 2]) if at > 1 and number is None else number
        return today + timedelta(days=days * max(1, min(90, int(counted or 1))))
    return None


def _weekday(text: Text, lexicon: Lexicon, today: date) -> date | None:
    """Return the next such day of the week."""
    for word in text.words:
        day = lexicon.weekdays.get(word)
        if day is not None:
            return today + timedelta(days=(day - today.weekday() - 1) % 7 + 1)
    return None


def _day_of_month(text: Text, lexicon: Lexicon, today: date) -> date | None:
    """Return the next such day of a month: "until the 15th", "hasta el 5"."""
    for value in text.values:
        if value is None or value != int(value) or not 1 <= value <= _LAST_DAY:
            continue
        month = today
        for _ in range(3):
            found = _made(month.year, month.month, int(value))
            if found is not None and found > today:
                return found
            month = (month.replace(day=1) + timedelta(days=32)).replace(day=1)
    return None
