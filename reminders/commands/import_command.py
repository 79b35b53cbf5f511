"""`reminders import`: a whole record that `reminders export --all` wrote comes into a fresh database."""

import argparse
from pathlib import Path

from reminders.commands.opening import opened
from reminders.flows import import_


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("file", metavar="FILE", help="what `reminders export --all --out FILE` wrote")


def run(args: argparse.Namespace) -> int:
    """Bring the record in."""
    app = opened(args)
    rows = import_.bring_in(app.db, Path(args.file), "command", app.clock())
    print(f"{rows} rows were brought in. Nothing is sent before: reminders db resume")
    return 0
