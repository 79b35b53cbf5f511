"""How dates, days and hours are said in a language. The names stand in templates/said/<language>.toml."""

import tomllib
from datetime import date, datetime, timedelta
from functools import lru_cache
from typing import Any

from reminders.core.hours import Hours
from reminders.core.schedule import WEEKDAYS, local_date, parse_days, zone_of
from reminders.texts_folder import templates_folder


@lru_cache(maxsize=8)
def names(language: str) -> dict[str, Any]:
    """Return a language's names of days and months, and how dates and hours are put together."""
    return tomllib.loads((templates_folder() / "said" / f"{language}.toml").read_text(encoding="utf-8"))


def said_date(day: date, language: str) -> str:
    """Return a date as a person says it: "Mon Mar 1", "lun 1 mar"."""
    table = names(language)
    said: str = table["date"].format(
        day=table["short_days"][day.weekday()], month=table["months"][day.month - 1], number=day.day
    )
    return said


def said_days(days: str, language: str) -> str:
    """Return weekdays as a person says them: "Monday, Wednesday and Friday"."""
    table = names(language)
    said: list[str] = [table["days"][day] for day in parse_days(days)]
    if len(said) == 1:
        return said[0]
    return str(table["and"]).join([", ".join(said[:-1]), said[-1]])


def said_time(text: str, language: str) -> str:
    """Return a local time as a person says it: "8:30 am" for "08:30"."""
    table = names(language)
    hour, minute = int(text[:2]), text[3:5]
    form: str = table["am" if hour < 12 else "pm"]
    return form.format(hour=(hour + 11) % 12 + 1 if table["twelve_hours"] else hour, minute=minute)


def said_hours(hours: str, language: str) -> str:
    """Return opening hours as a person says them: "Mon-Fri 8:00 am-5:00 pm"."""
    short = names(language)["short_days"]
    said = []
    for piece in hours.split(","):
        days, _, times = piece.strip().partition("/")
        opens, _, closes = times.partition("-")
        span = "-".join(short[WEEKDAYS.index(day.strip().lower())] for day in days.split("-"))
        said.append(f"{span} {said_time(opens.zfill(5), language)}-{said_time(closes.zfill(5), language)}")
    return ", ".join(said)


def said_opening(hours: Hours, now: datetime, language: str) -> str:
    """Return the next opening in words: weekday and hour, with the date when it is six days or more away."""
    opening = hours.next_opening(now)
    if opening is None:
        return ""
    day = local_date(opening, hours.time_zone)
    clock = opening.astimezone(zone_of(hours.time_zone)).strftime("%H:%M")
    far = opening - now > timedelta(days=6)
    name = said_date(day, language) if far else names(language)["days"][day.weekday()]
    return f"{name} {said_time(clock, language)}"
