"""`reminders export`: a client's record as a file, or the whole record to take elsewhere."""

import argparse
import os
import sys
from pathlib import Path

from reminders.commands.opening import add_at, add_clinic, opened, the_clinic
from reminders.errors import BadInput
from reminders.exports import FORMATS
from reminders.flows import export
from reminders.store import archive
from reminders.wiring import App


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    what = parser.add_mutually_exclusive_group(required=True)
    what.add_argument("--client", type=int, metavar="ID", help="one client's record")
    what.add_argument("--all", action="store_true", help="the whole record, for `reminders import` elsewhere")
    parser.add_argument("--format", choices=tuple(FORMATS), help="how one client's record is written (default json)")
    parser.add_argument("--out", metavar="FILE", help="write to a file instead of printing")
    parser.add_argument("--reason", default="", help="why it leaves; written into the audit log")
    parser.add_argument("--recipient", default="", help="to whom it goes; written into the audit log")
    add_at(parser)
    add_clinic(parser)


def run(args: argparse.Namespace) -> int:
    """Write the record out."""
    app = opened(args)
    return whole(app, args) if args.all else one_client(app, args)


def one_client(app: App, args: argparse.Namespace) -> int:
    """Write one client's record."""
    how = args.format or "json"
    why = {"reason": args.reason, "recipient": args.recipient}
    with app.db.begin() as tx:
        clinic_id = the_clinic(tx, args.clinic).id or 0
        text = export.export_client(tx, clinic_id, args.client, how, FORMATS[how], why, "command", app.clock())
        if args.out:
            save(args.out, text)  # before the commit: what could not be written did not leave
    if not args.out:
        sys.stdout.write(text)
    return 0


def save(name: str, text: str) -> None:
    """Write a file that only its owner may read; raises BadInput when it cannot be written."""
    try:
        handle = os.open(name, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
        with os.fdopen(handle, "w", encoding="utf-8", newline="") as file:
            file.write(text)
    except OSError as error:
        raise BadInput(f"--out: {name} cannot be written: {error.strerror}.") from None


def whole(app: App, args: argparse.Namespace) -> int:
    """Write the whole record, a row a line."""
    if args.format:
        raise BadInput("--format goes with --client; --all has one format of its own.")
    if not args.out:
        raise BadInput("--out FILE is needed with --all.")
    why = {"reason": args.reason or "whole record", "recipient": args.recipient or Path(args.out).name}
    rows = export.export_all(app.db, Path(args.out), archive.PORTABLE, why, "command", app.clock())
    print(f"{rows} rows are in {args.out}. Bring them into a fresh database with: reminders import {args.out}")
    return 0
