"""`reminders db`: creates the schema or brings it to the newest, looks at it, backs it up, brings it back."""

import argparse
import os
import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import timedelta
from pathlib import Path

from sqlalchemy.exc import SQLAlchemyError

from reminders import jobs
from reminders.clock import system_clock
from reminders.errors import BadInput, Refused
from reminders.flows import audit, tick
from reminders.flows import restore as flow
from reminders.settings import Settings
from reminders.settings.key_file import signing_keys
from reminders.store import backup as store_backup
from reminders.store import integrity, marks, schema, seed
from reminders.store.db import Database
from reminders.wiring import App, build_app, journal_of

RUNNING = timedelta(minutes=1)  # a sender's heartbeat younger than this means that it runs


def configure(parser: argparse.ArgumentParser) -> None:
    """Fill in the options."""
    actions = parser.add_subparsers(dest="action", required=True, metavar="upgrade|check|backup|restore|resume")
    actions.add_parser("upgrade", help="create the database, or bring it to the newest schema")
    actions.add_parser("check", help="look whether the file, the schema and the audit log are whole")
    backup = actions.add_parser("backup", help="write a backup while everything runs")
    backup.add_argument("file", metavar="FILE", nargs="?", help="without it, a dated file in REMINDERS_BACKUP_DIR")
    bring = actions.add_parser(
        "restore", help="put a backup in the place of the database; what was there is kept aside"
    )
    bring.add_argument("file", metavar="FILE")
    actions.add_parser("resume", help="let a restored database send again, once it knows what happened since")


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


def backup(settings: Settings, args: argparse.Namespace) -> int:
    """Write a backup; say what it does not hold."""
    db = Database(settings.database_url)
    schema.require_ready(db)
    path = Path(args.file) if args.file else dated(settings)
    if not path.absolute().parent.is_dir():
        raise BadInput(f"FILE: the folder of {path} is not there.")
    store_backup.write(db, path, settings.backup_key, system_clock())
    db.close()
    print(f"{path} holds the whole database{', sealed' if settings.backup_key else ''}.")
    print("Keep with it, elsewhere: the secret key and the journal, which a backup does not hold.")
    return 0


def dated(settings: Settings) -> Path:
    """Return a file in the folder for backups, named by the day; raises BadInput when no folder is set."""
    if settings.backup_dir is None:
        raise BadInput("FILE is needed where REMINDERS_BACKUP_DIR is not set.")
    return settings.backup_dir / f"reminders-{system_clock():%Y-%m-%d}.backup"


def restore(settings: Settings, args: argparse.Namespace) -> int:
    """Put a backup in the place of the database."""
    app = build_app(settings)
    refuse_while_running(app)
    made_at = store_backup.bring_back(app.db, Path(args.file), settings.backup_key, aside_of(settings))
    app.db.close()
    signing_keys(settings)
    print(f"{integrity.place_of(app.db)} holds the record up to {made_at:%Y-%m-%d %H:%M} UTC.")
    print("What was there before is kept beside it. Nothing is sent before: reminders db resume")
    return 0


def aside_of(settings: Settings) -> Path:
    """Return where the database that a restore replaces is kept."""
    path = settings.database_path or (settings.backup_dir or Path.cwd()) / "reminders"
    return path.absolute().with_name(f"{path.name}.before-restore-{system_clock():%Y%m%dT%H%M%SZ}")


def refuse_while_running(app: App) -> None:
    """Raise Refused while a process sends from the database that would be replaced, or has its file open.

    What a process hears that keeps the old file open would be written into what is kept aside, and read by nobody.
    """
    path = app.settings.database_path
    if path is not None and not path.exists():
        return
    if path is not None and is_open_elsewhere(path):
        raise Refused("The service is running: stop `reminders serve` and `reminders work`, then restore.")
    try:
        with app.db.read() as tx:
            beat = marks.mark(tx, f"{tick.HEARTBEAT}sender")
    except SQLAlchemyError:
        return  # what is there is no database of ours, or too old to be at work
    if beat is not None and beat.at is not None and timedelta(0) <= app.clock() - beat.at < RUNNING:
        raise Refused(
            "The service is running: stop `reminders serve` and `reminders work`, wait a minute, then restore."
        )


def is_open_elsewhere(path: Path) -> bool:
    """Return whether another process has an SQLite file open: only who has it alone may change how it keeps its log
    (SQLite documentation, Write-Ahead Logging, from memory).
    """
    with closing(sqlite3.connect(path, timeout=0)) as connection:
        try:
            for mode in ("DELETE", "WAL"):
                connection.execute(f"PRAGMA journal_mode={mode}").fetchone()
        except sqlite3.OperationalError:
            return True
        except sqlite3.DatabaseError:
            return False  # no database of ours
    return False


def resume(settings: Settings, _args: argparse.Namespace) -> int:
    """Let a restored database send again; print what was found."""
    app = build_app(settings)
    schema.require_ready(app.db)
    worker = jobs.worker_of(app)
    done = flow.resume(worker.sender, worker.fetchers, journal_of(settings).lines(), app.clock())
    app.db.close()
    for line in flow.said(done):
        print(line)
    return 0


ACTIONS: dict[str, Callable[[Settings, argparse.Namespace], int]] = {
    "upgrade": upgrade,
    "check": check,
    "backup": backup,
    "restore": restore,
    "resume": resume,
}
