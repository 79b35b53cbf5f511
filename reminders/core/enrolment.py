"""One row of an enrolment file as plain values: what each column may hold, and what is wrong with it. Pure.

Whether a therapist, a program or the same person is already there is asked elsewhere, of the record.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date

import phonenumbers

from reminders.core.languages import LANGUAGES
from reminders.core.library import read_precautions
from reminders.core.schedule import days_text, has_adjacent_days, parse_days, parse_time, parse_window, zone_of

COLUMNS = (
    *("name", "mobile", "email", "language", "time_zone", "days", "time", "channel", "therapist", "program"),
    *("usual_pain", "precautions", "holder", "emergency_note", "chart_id", "birth_year", "consent_on", "consent_how"),
)
NEEDED = ("name", "therapist", "program")
HOLDERS = ("self", "helper", "shared")
CHANNELS = ("sms", "email", "sms+email")
CONSENT_WAYS = ("signed form", "spoken at desk", "START")
OLDEST_BIRTH_YEAR = 1900


@dataclass(frozen=True)
class Defaults:
    """What an empty column takes: the clinic's zone and window, each program's days; `region` reads bare numbers."""

    time_zone: str
    window: str
    program_days: Mapping[str, str]
    today: date
    time: str = "08:30"
    region: str = "US"


@dataclass(frozen=True)
class Enrolment:
    """A client as a row states her; addresses are normalised."""

    name: str
    mobile: str
    email: str
    language: str
    time_zone: str
    days: str
    time: str
    channel: str
    therapist: str
    program: str
    usual_pain: int | None
    precautions: tuple[str, ...] | None
    holder: str
    emergency_note: str
    chart_id: str
    birth_year: int | None
    consent_on: date | None
    consent_how: str
    warnings: tuple[str, ...] = ()

    @property
    def addresses(self) -> tuple[tuple[str, str], ...]:
        """Her addresses as (kind, address)."""
        pairs = (("sms", self.mobile), ("email", self.email))
        return tuple(pair for pair in pairs if pair[1])


@dataclass
class Reader:
    """Reads the columns of one row and gathers what is wrong, by column."""

    row: Mapping[str, str]
    problems: list[tuple[str, str]] = field(default_factory=list)

    def text(self, column: str) -> str:
        """Return a column's text without outer spaces, empty when it is not there."""
        return " ".join((self.row.get(column) or "").split())

    def wrong(self, column: str, reason: str) -> None:
        """Note what is wrong with a column."""
        self.problems.append((column, reason))

    def one_of(self, column: str, choices: tuple[str, ...], default: str) -> str:
        """Return a column that must be one of some words."""
        text = self.text(column).lower() or default
        if text not in choices:
            self.wrong(column, f"{text!r} is not one of {', '.join(choices)}")
        return text

    def number(self, column: str, least: int, most: int) -> int | None:
        """Return a column that is a whole number in a range, None when empty."""
        text = self.text(column)
        if not text:
            return None
        if not text.isascii() or not text.isdigit() or not least <= int(text) <= most:
            self.wrong(column, f"{text!r} is not a whole number from {least} to {most}")
            return None
        return int(text)


def phone_number(text: str, region: str = "US") -> str:
    """Return a phone number in E.164; raises ValueError for one that cannot be texted."""
    try:
        parsed = phonenumbers.parse(text, region)
    except phonenumbers.NumberParseException:
        raise ValueError(f"{text!r} is not a phone number; write it like +12025550123") from None
    if not phonenumbers.is_possible_number(parsed):
        raise ValueError(f"{text!r} is not a phone number; write it like +12025550123")
    return phonenumbers.format_number(parsed, phonenumbers.PhoneNumberFormat.E164)


def mail_address(text: str) -> str:
    """Return a mail address in small letters; raises ValueError for what is none."""
    lowered = text.strip().lower()
    name, at, host = lowered.rpartition("@")
    odd = any(sign in lowered for sign in ' <>,;"\n\r\t')
    if not (at and name and "." in host and not host.startswith(".") and not host.endswith(".")) or odd:
        raise ValueError(f"{text!r} is not an e-mail address")
    return lowered


def read_row(row: Mapping[str, str], defaults: Defaults) -> tuple[Enrolment | None, list[tuple[str, str]]]:
    """Return a row's enrolment, or None with what is wrong as (column, reason) pairs."""
    reader = Reader(row)
    for column in NEEDED:
        if not reader.text(column):
            reader.wrong(column, "is empty")
    mobile, email = read_addresses(reader, defaults)
    program = reader.text("program")
    if program and program not in defaults.program_days:
        reader.wrong(
            "program", f"there is no program {program!r}; use one of {', '.join(sorted(defaults.program_days))}"
        )
    days, warnings = read_days(reader, defaults, program)
    made = Enrolment(
        name=reader.text("name"),
        mobile=mobile,
        email=email,
        language=reader.one_of("language", LANGUAGES, "en"),
        time_zone=read_zone(reader, defaults),
        days=days,
        time=read_time(reader, defaults),
        channel=read_channel(reader, mobile, email),
        therapist=reader.text("therapist").lower(),
        program=program,
        usual_pain=reader.number("usual_pain", 0, 10),
        precautions=read_known_precautions(reader),
        holder=reader.one_of("holder", HOLDERS, "self"),
        emergency_note=reader.text("emergency_note"),
        chart_id=reader.text("chart_id"),
        birth_year=reader.number("birth_year", OLDEST_BIRTH_YEAR, defaults.today.year),
        consent_on=read_consent_date(reader, defaults),
        consent_how=read_consent_way(reader),
        warnings=warnings,
    )
    if bool(reader.text("consent_on")) != bool(reader.text("consent_how")):
        missing = "consent_how" if reader.text("consent_on") else "consent_on"
        reader.wrong(missing, "is empty although the other consent column is filled; give both or neither")
    return (None, reader.problems) if reader.problems else (made, [])


def read_addresses(reader: Reader, defaults: Defaults) -> tuple[str, str]:
    """Return the mobile and mail address of a row; at least one must be there."""
    mobile, email = "", ""
    if not reader.text("mobile") and not reader.text("email"):
        reader.wrong("mobile", "is empty and so is email; give at least one")
    if reader.text("mobile"):
        try:
            mobile = phone_number(reader.text("mobile"), defaults.region)
        except ValueError as error:
            reader.wrong("mobile", str(error))
    if reader.text("email"):
        try:
            email = mail_address(reader.text("email"))
        except ValueError as error:
            reader.wrong("email", str(error))
    return mobile, email


def read_days(reader: Reader, defaults: Defaults, program: str) -> tuple[str, tuple[str, ...]]:
    """Return the exercise days of a row, by default the program's, and a warning for adjacent ones."""
    text = reader.text("days").lower() or defaults.program_days.get(program, "mon+wed+fri")
    try:
        days = parse_days(text)
    except ValueError as error:
        reader.wrong("days", str(error))
        return text, ()
    alone = reader.text("days") and has_adjacent_days(days)
    return days_text(days), ("two exercise days follow each other",) if alone else ()


def read_zone(reader: Reader, defaults: Defaults) -> str:
    """Return the time zone of a row, by default the clinic's."""
    text = reader.text("time_zone") or defaults.time_zone
    try:
        zone_of(text)
    except ValueError as error:
        reader.wrong("time_zone", str(error))
    return text


def read_time(reader: Reader, defaults: Defaults) -> str:
    """Return the local hour of a row, which must lie inside the clinic's window."""
    text = reader.text("time") or defaults.time
    try:
        text = parse_time(text).strftime("%H:%M")
    except ValueError as error:
        reader.wrong("time", str(error))
        return text
    first, last = parse_window(defaults.window)
    if not first <= text < last:
        reader.wrong("time", f"{text} is outside the clinic's window {defaults.window}")
    return text


def read_channel(reader: Reader, mobile: str, email: str) -> str:
    """Return the channel of a row: by default texts where there is a mobile, else e-mail."""
    channel = reader.one_of("channel", CHANNELS, "sms" if mobile or not email else "email")
    if "sms" in channel.split("+") and not reader.text("mobile"):
        reader.wrong("channel", "asks for texts but mobile is empty")
    if "email" in channel.split("+") and not reader.text("email"):
        reader.wrong("channel", "asks for e-mail but email is empty")
    return channel


def read_known_precautions(reader: Reader) -> tuple[str, ...] | None:
    """Return the precautions of a row, None when nobody was asked."""
    try:
        return read_precautions(reader.text("precautions"))
    except ValueError as error:
        reader.wrong("precautions", str(error))
        return None


def read_consent_date(reader: Reader, defaults: Defaults) -> date | None:
    """Return the date of consent, not after today."""
    text = reader.text("consent_on")
    if not text:
        return None
    try:
        day = date.fromisoformat(text)
    except ValueError:
        reader.wrong("consent_on", f"{text!r} is not a date such as 2027-02-28")
        return None
    if day > defaults.today:
        reader.wrong("consent_on", f"{text} lies in the future")
    return day


def read_consent_way(reader: Reader) -> str:
    """Return how consent was given."""
    text = reader.text("consent_how")
    if not text:
        return ""
    for way in CONSENT_WAYS:
        if text.lower() == way.lower():
            return way
    reader.wrong("consent_how", f"{text!r} is not one of {', '.join(CONSENT_WAYS)}")
    return text
