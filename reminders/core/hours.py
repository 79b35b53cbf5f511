"""A clinic's opening hours: parsed, asked and said. Pure."""

from dataclasses import dataclass
from datetime import date, datetime, timedelta

from reminders.core.schedule import WEEKDAYS, at_local, parse_time, zone_of


@dataclass(frozen=True)
class Hours:
    """Opening times by weekday (0 Monday), closed dates, and the zone."""

    spans: tuple[tuple[int, str, str], ...]  # weekday, opens, closes
    closed: frozenset[date]
    time_zone: str

    def is_working_day(self, day: date) -> bool:
        """Return whether the clinic opens on a date."""
        return day not in self.closed and any(span[0] == day.weekday() for span in self.spans)

    def is_open(self, now: datetime) -> bool:
        """Return whether the clinic is open at an instant."""
        local = now.astimezone(zone_of(self.time_zone))
        if local.date() in self.closed:
            return False
        wall = local.strftime("%H:%M")
        return any(day == local.weekday() and opens <= wall < closes for day, opens, closes in self.spans)

    def next_opening(self, now: datetime) -> datetime | None:
        """Return the next instant after now at which the clinic opens; None when it never does."""
        local = now.astimezone(zone_of(self.time_zone)).date()
        for offset in range(60):
            day = local + timedelta(days=offset)
            if day in self.closed:
                continue
            starts = [
                at_local(day, opens, self.time_zone) for weekday, opens, _ in self.spans if weekday == day.weekday()
            ]
            later = [start for start in sorted(starts) if start > now]
            if later:
                return later[0]
        return None

    def next_working_noon(self, after: datetime) -> datetime:
        """Return noon of the next working day after an instant."""
        day = after.astimezone(zone_of(self.time_zone)).date() + timedelta(days=1)
        for _ in range(60):
            if self.is_working_day(day):
                break
            day += timedelta(days=1)
        return at_local(day, "12:00", self.time_zone)

    def working_days_between(self, first: date, last: date) -> int:
        """Return how many working days lie after the first date up to and with the last."""
        span = (last - first).days
        return sum(self.is_working_day(first + timedelta(days=offset)) for offset in range(1, span + 1))


def parse_hours(text: str, time_zone: str, closed: list[str] | tuple[str, ...] = ()) -> Hours:
    """Return hours from "mon-fri/08:00-17:00,sat/09:00-12:00"; raises ValueError naming what is wrong."""
    spans: list[tuple[int, str, str]] = []
    for piece in (part.strip() for part in text.split(",")):
        if not piece:
            continue
        names, slash, times = piece.partition("/")
        opens, dash, closes = times.partition("-")
        if not (slash and dash):
            raise ValueError(f"{piece!r} is not like mon-fri/08:00-17:00")
        if parse_time(opens) >= parse_time(closes):
            raise ValueError(f"{piece!r} must open before it closes")
        spans += [(day, opens.zfill(5), closes.zfill(5)) for day in day_range(names)]
    if not spans:
        raise ValueError("no opening hours are given; write them like mon-fri/08:00-17:00")
    return Hours(tuple(sorted(spans)), frozenset(date.fromisoformat(day) for day in closed), time_zone)


def day_range(text: str) -> list[int]:
    """Return the weekdays of "mon-fri" or "sat"; raises ValueError for an unknown name."""
    first, dash, last = (part.strip().lower() for part in text.partition("-"))
    for name in (first, last) if dash else (first,):
        if name not in WEEKDAYS:
            raise ValueError(f"{name!r} is not a day such as mon")
    start = WEEKDAYS.index(first)
    end = WEEKDAYS.index(last) if dash else start
    return [(start + step) % 7 for step in range((end - start) % 7 + 1)]
