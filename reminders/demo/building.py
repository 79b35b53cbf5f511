"""Makes the demo's database afresh: schema, clinic, staff, clients enrolled from a file's rows; marked as a demo."""

import csv
import hashlib
import io
import os
from collections.abc import Sequence
from datetime import date, datetime
from pathlib import Path

from sqlmodel import col, select

from reminders.clock import Clock
from reminders.core.enrolment import COLUMNS
from reminders.core.schedule import at_local
from reminders.demo.people import CLINIC, STAFF, Person
from reminders.errors import BadInput, DatabaseNotReady
from reminders.flows import enrol
from reminders.settings import Settings
from reminders.store import clients, schema
from reminders.store.db import Database, Tx
from reminders.store.tables import Clinic, Staff
from reminders.wiring import App, build_app

FIRST_DAY = date(2027, 1, 4)  # a Monday; eight weeks from it lie outside any clock change of the clinic's zone
OPENS, ENDS = "08:20", "10:20"
BESIDE = ("", "-wal", "-shm", "-journal", ".journal", ".key")


def demo_settings(path: Path, port: int) -> Settings:
    """Return the settings of a demo: nothing leaves the machine, whatever the environment says."""
    return Settings(database_url=f"sqlite:///{path}", public_url=f"http://127.0.0.1:{port}", sms_per_second=0.0)


def begins_at() -> datetime:
    """Return the instant at which the story begins."""
    return at_local(FIRST_DAY, OPENS, CLINIC["time_zone"])


def is_demo(db: Database) -> bool:
    """Return whether a database is a demo's; raises DatabaseNotReady when its schema is not this program's."""
    schema.require_ready(db)
    with db.read() as tx:
        return clients.has_demo(tx)


def clear_away(path: Path) -> None:
    """Remove the demo of before; raises BadInput for a file that is no demo's, which is left alone."""
    if not path.exists():
        return
    db = Database(f"sqlite:///{path}")
    try:
        known = is_demo(db)
    except DatabaseNotReady:
        known = path.stat().st_size == 0 or is_marked(db)
    finally:
        db.close()
    if not known:
        raise BadInput(f"{path} is not a demo's database; move it away, or run the demo in another folder.")
    for ending in BESIDE:
        path.with_name(path.name + ending).unlink(missing_ok=True)


def is_marked(db: Database) -> bool:
    """Return whether a database of another version of this program is marked as a demo's."""
    with db.engine.connect() as connection:
        tables = connection.exec_driver_sql("SELECT count(*) FROM sqlite_master WHERE name = 'clinic'").scalar_one()
        if not tables:
            return False
        return bool(connection.exec_driver_sql("SELECT max(is_demo) FROM clinic").scalar_one())


def build(path: Path, port: int, people: Sequence[Person], seed: int, clock: Clock) -> App:
    """Return the App of a new demo clinic with these people enrolled on its first morning."""
    clear_away(path)
    make_key(path.with_name(path.name + ".key"), seed)
    app = build_app(demo_settings(path, port), clock)
    schema.upgrade(app.db)
    now = clock()
    with app.db.begin() as tx:  # at once, so that whatever cuts this off leaves a file that is known as a demo's
        mark(tx, now)
    with app.db.begin() as tx:
        clinic = open_clinic(tx, now)
        enrolled, problems = enrol.enrol_file(tx, clinic, file_of(people), "demo", now)
        if problems:
            raise BadInput("; ".join(str(problem) for problem in problems))
        if len(enrolled) != len(people):
            raise BadInput("The demo's people are not all enrolled.")
    return app


def make_key(path: Path, seed: int) -> None:
    """Write a key that follows from the seed, so that links too are the same; a demo's key protects nothing real."""
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
    with os.fdopen(handle, "w", encoding="ascii") as file:
        file.write(hashlib.sha256(f"demo {seed}".encode()).hexdigest() + "\n")


def mark(tx: Tx, now: datetime) -> None:
    """Mark a fresh database as a demo's, for good."""
    clinic = tx.exec(select(Clinic).order_by(col(Clinic.id))).first() or Clinic()
    clinic.is_demo, clinic.created_at = True, now
    tx.add(clinic)


def open_clinic(tx: Tx, now: datetime) -> Clinic:
    """Set up the clinic and its staff."""
    clinic = tx.exec(select(Clinic).order_by(col(Clinic.id))).one()
    for name, value in CLINIC.items():
        setattr(clinic, name, value)
    tx.add(clinic)
    tx.flush()
    for one in STAFF:
        tx.add(
            Staff(
                clinic_id=clinic.id or 0,
                role=one.role,
                name=one.name,
                email=one.email,
                mobile=one.mobile,
                created_at=now,
            )
        )
    tx.flush()
    lead = tx.exec(select(Staff).where(Staff.role == "lead")).one()
    for therapist in tx.exec(select(Staff).where(Staff.role == "therapist")):
        therapist.cover_id = lead.id
    return clinic


def file_of(people: Sequence[Person]) -> bytes:
    """Return the people as an enrolment file; who starts by herself comes without consent."""
    out = io.StringIO()
    writer = csv.DictWriter(out, COLUMNS, restval="")
    writer.writeheader()
    for person in people:
        signed = {"consent_on": FIRST_DAY.isoformat(), "consent_how": "signed form"}
        starts_herself = any(words == "START" for _, _, words in person.habit.dated)
        writer.writerow({**person.row, **({} if starts_herself else signed)})
    return out.getvalue().encode()
