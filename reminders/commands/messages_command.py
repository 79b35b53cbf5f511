"""`reminders messages`: what came in and what went out."""

import argparse

from reminders.clock import instant
from reminders.commands.opening import add_clinic, opened, print_json, print_table, the_clinic
from reminders.store import correspondence


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--client", type=int, metavar="ID", help="only this client's")
    parser.add_argument("--since", metavar="INSTANT", help="only from this instant on")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    add_clinic(parser)


def run(args: argparse.Namespace) -> int:
    """Print the messages."""
    app = opened(args)
    since = instant(args.since, "--since") if args.since else None
    with app.db.read() as tx:
        clinic_id = the_clinic(tx, args.clinic).id or 0
        rows = correspondence.messages_json(tx, clinic_id, client_id=args.client, since=since)
    if args.json:
        print_json(rows)
        return 0
    names = ("id", "client", "direction", "kind", "channel", "state", "due", "body")
    print_table([[row[name] for name in names] for row in rows], names)
    return 0
