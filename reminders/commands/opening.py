"""What most commands begin with: settings, the clock or --at, a ready database, the clinic meant."""

import argparse
import json
import os
import sys
from collections.abc import Iterable
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlmodel import col, select

from reminders.clock import instant, system_clock
from reminders.errors import BadInput
from reminders.flows import keeping
from reminders.settings import Settings
from reminders.store import schema
from reminders.store.db import Tx
from reminders.store.tables import Clinic
from reminders.wiring import App, build_app, local_if_demo


def settings_here() -> Settings:
    """Return the settings of the environment and of `.env` in the current folder."""
    return Settings.from_env(os.environ, Path(".env"))


def add_at(parser: argparse.ArgumentParser) -> None:
    """Let a command take --at."""
    parser.add_argument("--at", metavar="INSTANT", help="act as at this instant, such as 2027-03-01T08:30:00-05:00")


def add_clinic(parser: argparse.ArgumentParser) -> None:
    """Let a command take --clinic."""
    parser.add_argument("--clinic", metavar="NAME", help="which clinic, by name or number, where there are several")


def opened(args: argparse.Namespace, *, ready: bool = True) -> App:
    """Return an App whose clock follows --at; raises when the database is not ready or the clock is odd."""
    settings = settings_here()
    at = getattr(args, "at", None)
    moment = instant(at, "--at") if at else None
    if moment is not None:
        settings.refuse_odd_clock(moment, system_clock(), "--at")
    app = build_app(settings, (lambda: moment) if moment is not None else None)
    if moment is None and settings.clock:
        settings.refuse_odd_clock(app.clock(), system_clock(), "REMINDERS_CLOCK")
    if ready:
        schema.require_ready(app.db)
        local_if_demo(app)
        keeping.bring_in(app.db)  # no command must miss what a killed web process had kept
    return app


def the_clinic(tx: Tx, wanted: str | None) -> Clinic:
    """Return the clinic that a command means; raises BadInput when it cannot be told."""
    rows = list(tx.exec(select(Clinic).order_by(col(Clinic.id))))
    if wanted:
        found = [row for row in rows if str(row.id) == wanted or row.name.casefold() == wanted.casefold()]
        if not found:
            raise BadInput(f"--clinic: there is no clinic {wanted!r}.")
        return found[0]
    if len(rows) > 1:
        raise BadInput("--clinic: there are several clinics; say which, by name or number.")
    return rows[0]


def at_of(args: argparse.Namespace, app: App) -> datetime:
    """Return the instant that a command acts at."""
    return app.clock()


def print_json(value: Any) -> None:
    """Print one JSON document."""
    print(json.dumps(value, ensure_ascii=False, indent=2, default=str))


def print_table(rows: Iterable[Iterable[object]], header: Iterable[str]) -> None:
    """Print rows in columns, for people."""
    table = [[str(cell) if cell is not None else "" for cell in row] for row in (tuple(header), *rows)]
    widths = [max(len(row[place]) for row in table) for place in range(len(table[0]))]
    for row in table:
        print("  ".join(cell.ljust(width) for cell, width in zip(row, widths, strict=True)).rstrip())


def fail(sentence: str) -> int:
    """Say on standard error what is wrong with the input; return exit code 2."""
    print(sentence, file=sys.stderr)
    return 2
