"""`reminders alerts`: what asks for a person."""

import argparse

from reminders.commands.opening import add_clinic, opened, print_json, print_table, the_clinic
from reminders.store import correspondence


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    add_clinic(parser)


def run(args: argparse.Namespace) -> int:
    """Print the alerts."""
    app = opened(args)
    with app.db.read() as tx:
        rows = correspondence.alerts_json(tx, the_clinic(tx, args.clinic).id or 0)
    if args.json:
        print_json(rows)
        return 0
    names = ("id", "client", "level", "rule", "state", "opened")
    print_table([[row[name] for name in names] for row in rows], names)
    return 0
