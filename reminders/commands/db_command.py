"""`reminders db`: creates the schema or brings it to the newest, looks at it, backs it up, brings it back."""

import argparse
import os
from collections.abc import Callable
from pathlib import Path

from reminders.clock import system_clock
from reminders.flows import audit
from reminders.settings import Settings
from reminders.settings.key_file import signing_keys
from reminders.store import integrity, schema, seed
from reminders.store.db import Database


def configure(parser: argparse.ArgumentParser) -> None:
    """Fill in the options."""
    actions = parser.add_subparsers(dest="action", required=True, metavar="upgrade|check|backup|restore|resume")
    actions.add_parser("upgrade", help="create the database, or bring it to the newest schema")
    actions.add_parser("check", help="look whether the file, the schema and the audit log are whole")


def run(args: argparse.Namespace) -> int:
    """Do what was asked; 0 when it was done."""
    settings = Settings.from_env(os.environ, Path(".env"))
    action: Callable[[Settings, argparse.Namespace], int] = ACTIONS[args.action]
    return action(settings, args)


def upgrade(settings: Settings, _args: argparse.Namespace) -> int:
    """Create the database or bring it to the newest schema; say where it is."""
    db = Database(settings.database_url)
    schema.upgrade(db)
    signing_keys(settings)
    with db.begin() as tx:
        seed.first_clinic(tx, system_clock())
    db.close()
    print(f"The database {integrity.place_of(db)} is ready, at schema {schema.newest()}.")
    return 0


def check(settings: Settings, _args: argparse.Namespace) -> int:
    """Print what is wrong with the database, a line each; 0 when nothing is."""
    db = Database(settings.database_url)
    schema.require_ready(db)
    found = integrity.faults(db)
    with db.read() as tx:
        found += [
            f"Entry {number} of the audit log was changed after it was written." for number in audit.broken_entries(tx)
        ]
    db.close()
    for line in found:
        print(line)
    if not found:
        print(f"The database {integrity.place_of(db)} is whole: file, keys, schema {schema.newest()} and audit log.")
    return 1 if found else 0


ACTIONS: dict[str, Callable[[Settings, argparse.Namespace], int]] = {"upgrade": upgrade, "check": check}
