"""What each field of a clinic's details may hold: text in, the value kept out; ValueError says what is wrong. Pure.

Whoever takes the text (a page, a command, a program) names the field before the sentence.
"""

from collections.abc import Callable
from datetime import date
from typing import Any

from reminders.core.enrolment import mail_address, phone_number
from reminders.core.hours import parse_hours
from reminders.core.schedule import parse_time, parse_window, zone_of


def words(text: str) -> str:
    """Return a text that is not empty, blanks squeezed."""
    if not text.strip():
        raise ValueError("is empty")
    return " ".join(text.split())


def phone(text: str) -> str:
    """Return the clinic's phone as it was written, checked."""
    phone_number(text)
    return text.strip()


def zone(text: str) -> str:
    """Return a known time zone's name."""
    zone_of(text.strip())
    return text.strip()


def hours(text: str) -> str:
    """Return opening hours such as "mon-fri/08:00-17:00,sat/09:00-12:00"."""
    parse_hours(text, "UTC")
    return text.strip()


def closed_days(text: str) -> list[str]:
    """Return ISO dates from a text with commas, blanks or lines between, in order; an empty text is none."""
    return sorted({date.fromisoformat(part).isoformat() for part in text.replace(",", " ").split()})


def number(text: str) -> str:
    """Return a short number to dial."""
    if not text.replace(" ", "").replace("-", "").lstrip("+").isdigit():
        raise ValueError(f"{text!r} is not a number to dial")
    return text.strip()


def window(text: str) -> str:
    """Return a window such as "08:00-20:00"."""
    return "-".join(parse_window(text))


def note_hours(text: str) -> str:
    """Return the hours at which notes go to staff, in order."""
    return ",".join(sorted(parse_time(part).strftime("%H:%M") for part in text.split(",")))


def address(text: str) -> str:
    """Return a mail address in small letters, empty for none."""
    return mail_address(text) if text.strip() else ""


def days(text: str) -> int:
    """Return for how many days a closed client's record is kept."""
    if not text.strip().isdigit() or not 365 <= int(text) <= 36_500:
        raise ValueError(f"{text!r} is not a number of days from 365 to 36500")
    return int(text)


def switch(text: str) -> bool:
    """Return whether a switch is on: "yes", or nothing or "no"."""
    if text not in ("", "yes", "no"):
        raise ValueError(f"{text!r} is neither yes nor no")
    return text == "yes"


READERS: dict[str, Callable[[str], Any]] = {
    "name": words,
    "phone": phone,
    "time_zone": zone,
    "hours": hours,
    "closed_days": closed_days,
    "emergency_number": number,
    "crisis_line": number,
    "window": window,
    "note_hours": note_hours,
    "on_call_email": address,
    "lead_email": address,
    "retain_days": days,
    "words_in_mail": switch,
}
