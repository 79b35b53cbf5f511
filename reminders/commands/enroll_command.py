"""`reminders enroll FILE.csv`: every row becomes a client, or none does."""

import argparse
import sys
from datetime import datetime
from pathlib import Path

from reminders.commands.opening import add_at, add_clinic, opened, print_json, the_clinic
from reminders.errors import BadInput
from reminders.flows import enrol
from reminders.flows.enrol import Enrolled, Problem
from reminders.store.db import Tx


class NothingKept(Exception):
    """Rolls an enrolment back: a dry run, or a file with bad rows."""


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("file", metavar="FILE.csv", help="the file, UTF-8 with comma or semicolon")
    parser.add_argument("--dry-run", action="store_true", help="check the file and change nothing")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    add_at(parser)
    add_clinic(parser)


def run(args: argparse.Namespace) -> int:
    """Enrol a file's rows."""
    try:
        data = Path(args.file).read_bytes()
    except OSError:
        raise BadInput(f"FILE.csv cannot be read: {args.file}.") from None
    app = opened(args)
    enrolled: list[Enrolled] = []
    problems: list[Problem] = []
    try:
        with app.db.begin() as tx:
            enrolled, problems = enrol_all(tx, args, data, app.clock())
            if problems or args.dry_run:
                raise NothingKept
    except NothingKept:
        pass
    if problems:
        for problem in problems:
            print(problem, file=sys.stderr)
        return 2
    show(args, enrolled)
    return 0


def enrol_all(tx: Tx, args: argparse.Namespace, data: bytes, now: datetime) -> tuple[list[Enrolled], list[Problem]]:
    """Enrol into the clinic that is meant."""
    clinic = the_clinic(tx, args.clinic)
    return enrol.enrol_file(tx, clinic, data, "command", now)


def show(args: argparse.Namespace, enrolled: list[Enrolled]) -> None:
    """Print who was enrolled."""
    if args.json:
        print_json([one.as_dict() for one in enrolled])
        return
    for one in enrolled:
        row = one.as_dict()
        first = f", first session {row['first_session']}" if row["first_session"] else ""
        print(f"line {one.line}: {row['name']} is client {row['id']}, {row['state']}{first}")
        for warning in one.warnings:
            print(f"line {one.line}: note: {warning}.")
    print(f"{len(enrolled)} {'would be ' if args.dry_run else ''}enrolled.")
