"""`reminders clients`: the clients of a clinic."""

import argparse

from reminders.commands.opening import add_clinic, opened, print_json, print_table, the_clinic
from reminders.store import record


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    add_clinic(parser)


def run(args: argparse.Namespace) -> int:
    """Print the clients."""
    app = opened(args)
    with app.db.read() as tx:
        rows = record.clients_json(tx, the_clinic(tx, args.clinic).id or 0, app.clock())
    if args.json:
        print_json(rows)
        return 0
    names = ("id", "name", "state", "therapist", "program", "days", "time")
    print_table([[row[name] for name in names] for row in rows], names)
    return 0
