"""A client's days and hours: local dates, instants, windows. Pure; zones come from the standard library.

A local time that a clock change skips moves later by the gap; one that comes twice is taken the first time.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from functools import lru_cache
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
REPLY_DAY_ENDS = 3  # a reply before 03:00 local belongs to the day before
ALL_DAY = ("00:00", "24:00")


@dataclass(frozen=True)
class Plan:
    """Exercise days (0 Monday to 6 Sunday), the local hour as "08:30", and the zone, from a local date on."""

    days: tuple[int, ...]
    time: str
    time_zone: str
    from_on: date = date.min


@lru_cache(maxsize=1024)
def zone_of(name: str) -> ZoneInfo:
    """Return a time zone by its IANA name; raises ValueError for an unknown one."""
    try:
        return ZoneInfo(name)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        raise ValueError(f"{name!r} is not a time zone such as America/New_York") from None


@lru_cache(maxsize=1024)
def parse_days(text: str) -> tuple[int, ...]:
    """Return weekdays from "mon+wed+fri", in week order; raises ValueError naming what is wrong."""
    names = [name.strip().lower() for name in text.split("+") if name.strip()]
    unknown = [name for name in names if name not in WEEKDAYS]
    if unknown:
        raise ValueError(f"{unknown[0]!r} is not a day; write days like mon+wed+fri")
    if not names:
        raise ValueError("no day is named; write days like mon+wed+fri")
    if len(set(names)) != len(names):
        raise ValueError("a day is named twice")
    return tuple(sorted(WEEKDAYS.index(name) for name in names))


def days_text(days: tuple[int, ...]) -> str:
    """Return weekdays as "mon+wed+fri"."""
    return "+".join(WEEKDAYS[day] for day in days)


def has_adjacent_days(days: tuple[int, ...]) -> bool:
    """Return whether two of the days follow each other (Sunday and Monday too)."""
    chosen = set(days)
    return any((day + 1) % 7 in chosen for day in chosen)


@lru_cache(maxsize=4096)
def parse_time(text: str) -> time:
    """Return the local time of "08:30"; raises ValueError for anything else."""
    hour, colon, minute = text.strip().partition(":")
    if not (colon and hour.isdigit() and minute.isdigit() and len(minute) == 2 and len(hour) in (1, 2)):
        raise ValueError(f"{text!r} is not a time such as 08:30")
    if int(hour) > 23 or int(minute) > 59:
        raise ValueError(f"{text!r} is not a time such as 08:30")
    return time(int(hour), int(minute))


def local_date(now: datetime, zone: str) -> date:
    """Return the local date of an instant."""
    return now.astimezone(zone_of(zone)).date()


def client_day(now: datetime, zone: str) -> date:
    """Return the day that a reply at an instant belongs to: the local date, which for replies ends at 03:00."""
    return (now.astimezone(zone_of(zone)) - timedelta(hours=REPLY_DAY_ENDS)).date()


@lru_cache(maxsize=8192)
def at_local(day: date, hour: str, zone: str) -> datetime:
    """Return the UTC instant of a local time: "24:00" is the next day's start."""
    if hour == "24:00":
        return at_local(day + timedelta(days=1), "00:00", zone)
    # Fold 0 takes the first of two; for a skipped time it takes the offset before, which moves it later by the gap.
    return datetime.combine(day, parse_time(hour), zone_of(zone)).astimezone(UTC)


def occurrences(plan: Plan, after: datetime, until: datetime) -> list[datetime]:
    """Return the instants in (after, until] at which this plan asks for a session.

    At a clock change a local time that does not exist moves later by the gap; one
    that occurs twice is taken the first time.
    """
    first = max(local_date(after, plan.time_zone) - timedelta(days=1), plan.from_on)
    last = local_date(until, plan.time_zone) + timedelta(days=1)
    moments = (at_local(day, plan.time, plan.time_zone) for day in days_between(plan.days, first, last))
    return [moment for moment in moments if after < moment <= until]


def days_between(days: tuple[int, ...], first: date, last: date) -> Iterator[date]:
    """Return the dates from first to last that fall on the weekdays given."""
    for offset in range((last - first).days + 1):
        day = first + timedelta(days=offset)
        if day.weekday() in days:
            yield day


def next_day(plans: list[Plan], after: date, closed: frozenset[date], horizon: int = 400) -> tuple[date, Plan] | None:
    """Return the first exercise day after a date and the plan that holds on it, past closed days."""
    for offset in range(1, horizon):
        day = after + timedelta(days=offset)
        plan = plan_on(plans, day)
        if plan and day.weekday() in plan.days and day not in closed:
            return day, plan
    return None


def plan_on(plans: list[Plan], day: date) -> Plan | None:
    """Return the plan that holds on a date: the newest that has begun."""
    begun = [plan for plan in plans if plan.from_on <= day]
    return max(begun, key=lambda plan: plan.from_on) if begun else None


@lru_cache(maxsize=256)
def parse_window(text: str) -> tuple[str, str]:
    """Return the two local times of "08:00-20:00"; raises ValueError unless the first is before the second."""
    first, dash, last = (part.strip() for part in text.partition("-"))
    if not dash:
        raise ValueError(f"{text!r} is not a window such as 08:00-20:00")
    start = parse_time(first)
    if last != "24:00" and parse_time(last) <= start:
        raise ValueError(f"{text!r} must begin before it ends, like 08:00-20:00")
    return first.zfill(5), last.zfill(5)


def inside_window(now: datetime, window: tuple[str, str], zone: str) -> bool:
    """Return whether the local time of an instant is from the window's start to before its end."""
    local = now.astimezone(zone_of(zone)).strftime("%H:%M")
    return window[0] <= local < window[1]


def window_end(now: datetime, window: tuple[str, str], zone: str) -> datetime:
    """Return the instant at which the window of the local day ends."""
    return at_local(local_date(now, zone), window[1], zone)


def next_inside_window(now: datetime, window: tuple[str, str], zone: str) -> datetime:
    """Return the instant itself when it is inside the window, else the start of the next one."""
    if inside_window(now, window, zone):
        return now
    today = local_date(now, zone)
    start = at_local(today, window[0], zone)
    return start if start > now else at_local(today + timedelta(days=1), window[0], zone)


def evening_at(day: date, window: tuple[str, str], zone: str) -> datetime:
    """Return when an evening prompt goes: 18:00 local or 30 minutes before the window ends, whichever is earlier."""
    return min(at_local(day, "18:00", zone), at_local(day, window[1], zone) - timedelta(minutes=30))


def week_of(day: date) -> str:
    """Return the ISO week of a date, such as 2027-W10."""
    year, week, _ = day.isocalendar()
    return f"{year}-W{week:02d}"


def week_days(week: str) -> tuple[date, date]:
    """Return Monday and Sunday of an ISO week; raises ValueError for a text that is none."""
    year, letter, number = week.strip().upper().partition("-W")
    if not (letter and year.isdigit() and number.isdigit()):
        raise ValueError(f"{week!r} is not a week such as 2027-W10")
    monday = date.fromisocalendar(int(year), int(number), 1)
    return monday, monday + timedelta(days=6)
