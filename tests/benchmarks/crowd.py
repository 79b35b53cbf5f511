"""Many clients at once, copied by plain SQL from one who was enrolled the real way."""

import shutil
import subprocess
import sys
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy import Table, insert, select

from reminders.store import schema, seed
from reminders.store.db import Database, Tx
from reminders.store.tables import Client, ClientProgram, Contact, ExerciseSession, Outbound, Schedule
from tests.chaos.crowd import MONDAY, mobile
from tests.clinic import a_world

DUE = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)  # Wednesday 08:30 in New York
NUMBERS = 10_000  # texts go to so many; whoever comes after them has a mail address
NAMES = ("Ana", "Bea", "Carl", "Dora", "Emil", "Flora", "Georg", "Hanna", "Ida", "Jonas")
CHUNK = 5_000


def fresh(url: str) -> Database:
    """Return a database with the clinic and one client, Ana, who has a session on Wednesday."""
    db = Database(url)
    schema.upgrade(db)
    with db.begin() as tx:
        seed.first_clinic(tx, MONDAY)
    world = a_world(db, MONDAY)
    world.enrol()
    with db.begin() as tx:
        tx.execute(Outbound.__table__.delete())  # type: ignore[attr-defined]
        tx.execute(table_of(Contact).update().values(confirmed_at=MONDAY))
    return db


def table_of(row: Any) -> Table:
    """Return the table of a row class."""
    found: Table = row.__table__
    return found


def enrol_many(db: Database, clients: int, spread: timedelta = timedelta(0)) -> None:
    """Copy Ana until there are so many clients; their sessions are due within a span from Wednesday's hour on."""
    for start in range(1, clients, CHUNK):
        with db.begin() as tx:
            copy(tx, range(start, min(start + CHUNK, clients)), clients, spread)


def copy(tx: Tx, numbers: range, clients: int, spread: timedelta) -> None:
    """Write the clients with these numbers; their ids are one more."""
    for row in (Client, Contact, Schedule, ClientProgram, ExerciseSession):
        table = table_of(row)
        owner = table.c.id if row is Client else table.c.client_id
        first = tx.execute(select(table).where(owner == 1)).mappings().one()
        values = [changed(row, dict(first), number, clients, spread) for number in numbers]
        tx.execute(insert(table), values)


def changed(row: Any, values: dict[str, Any], number: int, clients: int, spread: timedelta) -> dict[str, Any]:
    """Return Ana's values of a table as another client's."""
    values["id"] = number + 1
    if row is Client:
        by_text = number < NUMBERS
        return values | {
            "name": f"{NAMES[number % len(NAMES)]} {number}",
            "channel": "sms" if by_text else "email",
            "chart_id": str(number),
        }
    values["client_id"] = number + 1
    if row is Contact:
        if number < NUMBERS:
            return values | {"address": mobile(number)}
        return values | {"kind": "email", "address": f"client{number}@example.org"}
    if row is ExerciseSession:
        values["due_at"] = DUE + spread * (number / clients)
    return values


@contextmanager
def folder() -> Iterator[Path]:
    """Lend a folder of this run's own."""
    made = Path(tempfile.mkdtemp(prefix="reminders-benchmark-"))
    try:
        yield made
    finally:
        shutil.rmtree(made, ignore_errors=True)


def sqlite_crowd(place: Path, clients: int, name: str = "crowd", spread: timedelta = timedelta(0)) -> Path:
    """Return an SQLite file with so many clients, in one piece so that it can be copied."""
    path = place / f"{name}-{clients}.db"
    if path.exists():
        return path
    db = fresh(f"sqlite:///{path}")
    enrol_many(db, clients, spread)
    with db.engine.connect() as connection:
        connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")
        connection.exec_driver_sql("ANALYZE")
    db.close()
    return path


@contextmanager
def provider_process() -> Iterator[str]:
    """Run the provider's stand-in in a process of its own; lend its address."""
    command = [sys.executable, "-m", "tests.standins.sms_provider"]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True) as process:
        assert process.stdout is not None
        try:
            yield process.stdout.readline().strip()
        finally:
            process.kill()
