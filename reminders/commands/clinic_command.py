"""`reminders clinic set|add`: the clinic's name, phone, hours, window, emergency number and lead."""

import argparse
from collections.abc import Callable
from datetime import date, datetime
from typing import Any

from reminders.commands.opening import add_clinic, opened, print_json, the_clinic
from reminders.core.enrolment import mail_address, phone_number
from reminders.core.hours import parse_hours
from reminders.core.schedule import parse_time, parse_window, zone_of
from reminders.errors import BadInput
from reminders.flows import audit
from reminders.store.db import Tx
from reminders.store.tables import Clinic


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    actions = parser.add_subparsers(dest="action", metavar="set|add", required=True)
    for name in ("set", "add"):
        sub = actions.add_parser(name, help=f"{name} a clinic's details")
        sub.add_argument("--name")
        sub.add_argument("--phone", help="the clinic's phone, as clients should dial it")
        sub.add_argument("--time-zone", help="such as America/New_York")
        sub.add_argument("--hours", help="such as mon-fri/08:00-17:00,sat/09:00-12:00")
        sub.add_argument("--closed", help="closed dates, such as 2027-12-24,2027-12-25")
        sub.add_argument("--emergency-number", help="such as 911")
        sub.add_argument("--crisis-line", help="such as 988")
        sub.add_argument("--window", help="when clients may be written to, such as 08:00-20:00")
        sub.add_argument("--note-hours", help="when notes go to staff, such as 11:30,16:00")
        sub.add_argument("--on-call", help="e-mail of the staff member called outside hours; - for none")
        sub.add_argument("--lead", metavar="EMAIL", help="who is called when a therapist does not answer")
        sub.add_argument("--retain", metavar="DAYS", help="how many days a closed client's record is kept")
        sub.add_argument("--words-in-mail", choices=("yes", "no"), help="whether staff mails carry clients' words")
        sub.add_argument("--json", action="store_true")
        if name == "set":
            add_clinic(sub)


def run(args: argparse.Namespace) -> int:
    """Set or add a clinic."""
    app = opened(args)
    now = app.clock()
    with app.db.begin() as tx:
        if args.action == "add":
            if not args.name:
                raise BadInput("--name is needed to add a clinic.")
            clinic = Clinic(created_at=now)
            tx.add(clinic)
            tx.flush()
        else:
            clinic = the_clinic(tx, args.clinic)
        changed = apply(tx, clinic, args, now)
        shown: dict[str, Any] = {
            "id": clinic.id,
            "name": clinic.name,
            "phone": clinic.phone,
            "time_zone": clinic.time_zone,
        }
        shown |= {"hours": clinic.hours, "window": clinic.window, "changed": sorted(changed)}
    if args.json:
        print_json(shown)
    else:
        print(f"Clinic {shown['id']}: {shown['name'] or 'no name yet'}, {shown['phone'] or 'no phone yet'}.")
    return 0


def apply(tx: Tx, clinic: Clinic, args: argparse.Namespace, now: datetime) -> dict[str, Any]:
    """Check and set what was given; nothing is set when anything is wrong."""
    changes: dict[str, Any] = {}
    for option, field, read in READERS:
        given = getattr(args, option.replace("-", "_"))
        if given is None:
            continue
        try:
            changes[field] = read(given, clinic)
        except ValueError as error:
            raise BadInput(f"--{option}: {error}.") from None
    for field, value in changes.items():
        setattr(clinic, field, value)
    tx.add(clinic)
    if changes:
        audit.record(tx, clinic.id, "command", "clinic changed", None, {"fields": sorted(changes)}, now)
    return changes


def words(text: str, _clinic: Clinic) -> str:
    """Return a text that is not empty."""
    if not text.strip():
        raise ValueError("is empty")
    return " ".join(text.split())


def zone(text: str, _clinic: Clinic) -> str:
    """Return a known time zone."""
    zone_of(text)
    return text


def hours(text: str, clinic: Clinic) -> str:
    """Return opening hours that can be read."""
    parse_hours(text, clinic.time_zone)
    return text


def closed(text: str, clinic: Clinic) -> list[str]:
    """Return the closed dates, added to those already there; "-" clears them."""
    if text.strip() == "-":
        return []
    days = {date.fromisoformat(day.strip()).isoformat() for day in text.split(",") if day.strip()}
    return sorted(days | set(clinic.closed_days))


def window(text: str, _clinic: Clinic) -> str:
    """Return a window that can be read."""
    first, last = parse_window(text)
    return f"{first}-{last}"


def number(text: str, _clinic: Clinic) -> str:
    """Return a short number to dial."""
    digits = text.replace(" ", "").replace("-", "")
    if not digits.lstrip("+").isdigit():
        raise ValueError(f"{text!r} is not a number to dial")
    return text.strip()


def phone(text: str, _clinic: Clinic) -> str:
    """Return the clinic's phone as it was written, checked."""
    phone_number(text)
    return text.strip()


def note_hours(text: str, _clinic: Clinic) -> str:
    """Return the hours at which notes go to staff, in order."""
    return ",".join(sorted(parse_time(part).strftime("%H:%M") for part in text.split(",")))


def address(text: str, _clinic: Clinic) -> str:
    """Return a staff member's mail address; "-" for none."""
    return "" if text.strip() == "-" else mail_address(text)


def days(text: str, _clinic: Clinic) -> int:
    """Return a number of days."""
    if not text.isdigit() or not 365 <= int(text) <= 36_500:
        raise ValueError(f"{text!r} is not a number of days from 365 to 36500")
    return int(text)


def yes(text: str, _clinic: Clinic) -> bool:
    """Return whether a switch is on."""
    return text == "yes"


READERS: tuple[tuple[str, str, Callable[[str, Clinic], Any]], ...] = (
    ("name", "name", words),
    ("phone", "phone", phone),
    ("time-zone", "time_zone", zone),
    ("hours", "hours", hours),
    ("closed", "closed_days", closed),
    ("emergency-number", "emergency_number", number),
    ("crisis-line", "crisis_line", number),
    ("window", "window", window),
    ("note-hours", "note_hours", note_hours),
    ("on-call", "on_call_email", address),
    ("lead", "lead_email", address),
    ("retain", "retain_days", days),
    ("words-in-mail", "words_in_mail", yes),
)
