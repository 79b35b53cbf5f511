"""`reminders sessions --client ID`: one client's sessions with their reports."""

import argparse

from reminders.commands.opening import add_clinic, opened, print_json, print_table
from reminders.errors import NotFound
from reminders.store import record
from reminders.store.tables import Client


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--client", type=int, required=True, metavar="ID")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    add_clinic(parser)


def run(args: argparse.Namespace) -> int:
    """Print the sessions."""
    app = opened(args)
    with app.db.read() as tx:
        if tx.get(Client, args.client) is None:
            raise NotFound(f"--client: there is no client {args.client}.")
        rows = record.sessions_json(tx, args.client)
    if args.json:
        print_json(rows)
        return 0
    names = ("date", "state", "completed", "sets", "reps", "pain")
    print_table([[row[name] for name in names] for row in rows], names)
    return 0
