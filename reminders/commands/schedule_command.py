"""`reminders schedule`: the instants of a weekly schedule, windows ignored. Needs no database."""

import argparse
from collections.abc import Callable
from datetime import date, timedelta
from typing import TypeVar

from reminders.commands.opening import print_json, print_table
from reminders.core.schedule import at_local, days_between, parse_days, parse_time, zone_of
from reminders.errors import BadInput

Read = TypeVar("Read")


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--days", required=True, help="such as mon+wed+fri")
    parser.add_argument("--time", required=True, help="such as 08:30")
    parser.add_argument("--time-zone", required=True, help="such as America/New_York")
    parser.add_argument("--from", dest="first", required=True, metavar="DATE")
    parser.add_argument("--weeks", type=int, default=4, help="how many weeks, 1 to 520")
    parser.add_argument("--json", action="store_true")


def run(args: argparse.Namespace) -> int:
    """Print the schedule."""
    try:
        first = date.fromisoformat(args.first)
    except ValueError:
        raise BadInput(f"--from is not a date such as 2027-03-01: {args.first!r}.") from None
    if not 1 <= args.weeks <= 520:
        raise BadInput("--weeks must be 1 to 520.")
    days = checked("--days", parse_days, args.days)
    hour = checked("--time", parse_time, args.time).strftime("%H:%M")
    zone = checked("--time-zone", zone_of, args.time_zone)
    rows = []
    for day in days_between(days, first, first + timedelta(weeks=args.weeks, days=-1)):
        moment = at_local(day, hour, args.time_zone)
        local = moment.astimezone(zone)
        rows.append(
            {
                "date": day.isoformat(),
                "local": local.strftime("%Y-%m-%dT%H:%M"),
                "utc": moment.strftime("%Y-%m-%dT%H:%M:%SZ"),
            }
        )
    if args.json:
        print_json(rows)
    else:
        print_table([row.values() for row in rows], ("date", "local", "UTC"))
    return 0


def checked(option: str, read: Callable[[str], Read], text: str) -> Read:
    """Return what an option says; raises BadInput naming it."""
    try:
        return read(text)
    except ValueError as error:
        raise BadInput(f"{option}: {error}.") from None
