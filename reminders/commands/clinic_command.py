"""`reminders clinic set|add`: the clinic's name, phone, hours, window, emergency number and lead."""

import argparse
from datetime import datetime
from typing import Any

from reminders.commands.opening import add_clinic, opened, print_json, the_clinic
from reminders.errors import BadInput
from reminders.flows.clinic import change
from reminders.store.db import Tx
from reminders.store.tables import Clinic

# Option -> the field that it sets; what a field may hold stands in core/clinic_fields.
OPTIONS = {
    "name": "name",
    "phone": "phone",
    "time-zone": "time_zone",
    "hours": "hours",
    "closed": "closed_days",
    "emergency-number": "emergency_number",
    "crisis-line": "crisis_line",
    "window": "window",
    "note-hours": "note_hours",
    "on-call": "on_call_email",
    "lead": "lead_email",
    "retain": "retain_days",
    "words-in-mail": "words_in_mail",
}
NONE, CAN_BE_NONE = "-", ("closed", "on-call", "lead")


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    actions = parser.add_subparsers(dest="action", metavar="set|add", required=True)
    for name in ("set", "add"):
        sub = actions.add_parser(name, help=f"{name} a clinic's details")
        sub.add_argument("--name")
        sub.add_argument("--phone", help="the clinic's phone, as clients should dial it")
        sub.add_argument("--time-zone", help="such as America/New_York")
        sub.add_argument("--hours", help="such as mon-fri/08:00-17:00,sat/09:00-12:00")
        sub.add_argument("--closed", help="closed dates to add, such as 2027-12-24,2027-12-25; - for none")
        sub.add_argument("--emergency-number", help="such as 911")
        sub.add_argument("--crisis-line", help="such as 988")
        sub.add_argument("--window", help="when clients may be written to, such as 08:00-20:00")
        sub.add_argument("--note-hours", help="when notes go to staff, such as 11:30,16:00")
        sub.add_argument("--on-call", help="e-mail of the staff member called outside hours; - for none")
        sub.add_argument("--lead", metavar="EMAIL", help="who is called when a therapist does not answer; - for none")
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
        shown |= {"hours": clinic.hours, "window": clinic.window, "changed": changed}
    if args.json:
        print_json(shown)
    else:
        print(f"Clinic {shown['id']}: {shown['name'] or 'no name yet'}, {shown['phone'] or 'no phone yet'}.")
    return 0


def apply(tx: Tx, clinic: Clinic, args: argparse.Namespace, now: datetime) -> list[str]:
    """Check and set what was given; nothing is set when anything is wrong. Returns the names of what has changed."""
    given: dict[str, str] = {}
    for option, name in OPTIONS.items():
        text = getattr(args, option.replace("-", "_"))
        if text is not None:
            given[name] = "" if text.strip() == NONE and option in CAN_BE_NONE else text
    if given.get("closed_days"):  # dates come to those already there
        given["closed_days"] += " " + " ".join(clinic.closed_days)
    options = {name: f"--{option}" for option, name in OPTIONS.items()}
    return change(tx, clinic, given, "command", now, called=options)
