"""Backups of the whole database while it runs, and bringing one back.

An SQLite database is copied by SQLite's own online backup, a PostgreSQL one is written as `archive` writes a record;
either can be brought back into either. A database that was brought back sends nothing until it is resumed.
"""

import os
import sqlite3
from contextlib import closing
from datetime import datetime
from pathlib import Path
from tempfile import TemporaryDirectory

from sqlalchemy.exc import DatabaseError

from reminders.errors import BadInput
from reminders.store import archive, integrity, marks, restored, schema, sealed
from reminders.store.db import Database, sqlite_path
from reminders.store.shapes import stamp

MADE = "backup made"
SQLITE_MAGIC = b"SQLite format 3\x00"


def write(db: Database, path: Path, key: str, now: datetime) -> None:
    """Write a backup that appears whole or not at all, for its owner alone, sealed where there is a key."""
    with TemporaryDirectory(dir=path.absolute().parent, prefix=f".{path.name}.") as folder:
        plain = Path(folder) / "plain"
        if db.is_postgres:
            archive.write(db, plain, archive.EVERYTHING, stamp(now) or "", secrets=True)
        else:
            copy_sqlite(db, plain, now)
        ready = plain
        if key:
            ready = Path(folder) / "sealed"
            sealed.seal(plain, ready, key)
        os.replace(ready, path)


def copy_sqlite(db: Database, target: Path, now: datetime) -> None:
    """Copy an SQLite database while it is in use, into one file that says when it was made."""
    source = sqlite_path(db.url)
    assert source is not None
    os.close(os.open(target, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600))
    with closing(sqlite3.connect(source)) as live, closing(sqlite3.connect(target)) as copy:
        live.backup(copy)
        copy.execute("PRAGMA journal_mode=DELETE")
    made = Database(f"sqlite:///{target}")
    with made.begin() as tx:
        marks.set_mark(tx, MADE, at=now)
    made.close()
    with closing(sqlite3.connect(target)) as copy:
        copy.execute("PRAGMA journal_mode=DELETE")
    with target.open("rb+") as file:
        os.fsync(file.fileno())


def bring_back(db: Database, path: Path, key: str, aside: Path) -> datetime:
    """Put a backup in the place of a database and return the moment that it holds. Raises BadInput.

    The file is read and checked whole before anything changes; what was there is first written to `aside`.
    """
    with TemporaryDirectory(dir=aside.absolute().parent, prefix=".restore.") as folder:
        plain = opened(path, Path(folder) / "plain", key)
        ready = Path(folder) / "ready.db"
        made_at = as_sqlite(plain, ready)
        if db.is_postgres:
            into_postgres(db, ready, Path(folder) / "rows", aside)
        else:
            in_place(db, ready, aside)
    return made_at


def opened(path: Path, target: Path, key: str) -> Path:
    """Return the plain form of a backup; raises BadInput for a sealed one without its key."""
    if not sealed.is_sealed(path):
        return path
    if not key:
        raise BadInput(f"{path} is sealed: REMINDERS_BACKUP_KEY must be the one it was made with.")
    sealed.unseal(path, target, key)
    return target


def as_sqlite(plain: Path, target: Path) -> datetime:
    """Make a checked SQLite database at the newest schema from a backup, held back; return the moment it holds."""
    with plain.open("rb") as file:
        is_copy = file.read(len(SQLITE_MAGIC)) == SQLITE_MAGIC
    db = Database(f"sqlite:///{target}")
    try:
        if is_copy:
            target.write_bytes(plain.read_bytes())
            made_at = check_copy(db, plain)
        else:
            header = archive.checked_header(plain)
            schema.upgrade(db)
            made_at = datetime.fromisoformat(header["made"])
            with db.begin() as tx:
                archive.empty_tables(tx)
                archive.read_into(tx, plain)
        with db.begin() as tx:
            restored.mark_restored(tx, made_at)
    finally:
        db.close()
    with closing(sqlite3.connect(target)) as one_file:
        one_file.execute("PRAGMA journal_mode=DELETE")
    return made_at


def check_copy(db: Database, named: Path) -> datetime:
    """Bring a copied database to the newest schema; return when it was made. Raises BadInput for a damaged one."""
    try:
        schema.upgrade(db)
        found = integrity.faults(db)
        with db.read() as tx:
            made = marks.mark(tx, MADE)
    except DatabaseError:
        raise BadInput(f"{named} is damaged or no database of this program.") from None
    if found:
        raise BadInput(f"{named} is damaged: {found[0]}")
    if made is None or made.at is None:
        raise BadInput(f"{named} was not written by `reminders db backup`.")
    return made.at


def in_place(db: Database, ready: Path, aside: Path) -> None:
    """Put a database file in place of the one there, which is kept aside whole."""
    path = sqlite_path(db.url)
    assert path is not None
    db.close()
    if path.exists():
        with closing(sqlite3.connect(path)) as live, closing(sqlite3.connect(aside)) as kept:
            live.backup(kept)
        os.chmod(aside, 0o600)
    for ending in ("-wal", "-shm"):
        path.with_name(path.name + ending).unlink(missing_ok=True)
    os.chmod(ready, 0o600)
    os.replace(ready, path)


def into_postgres(db: Database, ready: Path, rows: Path, aside: Path) -> None:
    """Put the rows of a database file in place of those there, in one transaction; the old ones are written aside."""
    source = Database(f"sqlite:///{ready}")
    archive.write(source, rows, archive.EVERYTHING, "", secrets=True)
    source.close()
    schema.upgrade(db)
    archive.write(db, aside, archive.EVERYTHING, "", secrets=True)
    with db.begin() as tx:
        archive.empty_tables(tx)
        archive.read_into(tx, rows)
