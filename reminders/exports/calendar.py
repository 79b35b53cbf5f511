"""The exercise days as a calendar (RFC 5545): one weekly event at her local hour, without a word on health."""

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from icalendar import Calendar, Event, vRecur

from reminders.texts_said import names

DAYS = {"mon": "MO", "tue": "TU", "wed": "WE", "thu": "TH", "fri": "FR", "sat": "SA", "sun": "SU"}
LASTS = timedelta(minutes=30)  # common practice, no source


def calendar(course: Mapping[str, Any]) -> str:
    """Return the weekly days and hour in force, from the day they began; wall time is kept over clock changes."""
    client = course["client"]
    made = Calendar()
    made.add("prodid", "-//Reminders//Exercise days//EN")
    made.add("version", "2.0")
    if client["days"]:
        made.add_component(weekly(course))
    text: bytes = made.to_ical()
    return text.decode()


def in_force(course: Mapping[str, Any]) -> Mapping[str, Any]:
    """Return the days that count when the export is made, else the first to come."""
    begun = [one for one in course["schedules"] if one["from_on"] <= course["made"][:10]]
    chosen: Mapping[str, Any] = (begun or course["schedules"][:1])[-1]
    return chosen


def weekly(course: Mapping[str, Any]) -> Event:
    """Return the weekly event; its start is moved to the first listed day, which RFC 5545 3.8.5.3 asks for."""
    client = course["client"]
    days = client["days"].split("+")
    version = in_force(course)
    zone = ZoneInfo(client["time_zone"])
    hour, minute = (int(part) for part in client["time"].split(":"))
    begins = datetime.fromisoformat(version["from_on"]).replace(hour=hour, minute=minute)
    weekdays = [list(DAYS).index(day) for day in days]
    begins += timedelta(days=min((day - begins.weekday()) % 7 for day in weekdays))
    begins = begins.replace(tzinfo=zone)
    event = Event()
    event.add("uid", f"client-{client['id']}-days@reminders.invalid")
    event.add("dtstamp", datetime.fromisoformat(course["made"]))
    event.add("sequence", version["id"])
    event.add("dtstart", begins)
    event.add("duration", LASTS)
    event.add("summary", names(client["language"])["calendar"])
    event.add("rrule", vRecur({"FREQ": "WEEKLY", "BYDAY": [DAYS[day] for day in days]}))
    return event
