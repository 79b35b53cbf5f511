"""Whether a database is whole: its file, its keys, its schema. The audit log's chain is for the flow that writes it."""

from sqlalchemy import Connection

from reminders.store import schema
from reminders.store.db import Database, sqlite_path


def place_of(db: Database) -> str:
    """Return where a database is, in words that hold no password."""
    path = sqlite_path(db.url)
    return str(path) if path else db.engine.url.render_as_string(hide_password=True)


def faults(db: Database) -> list[str]:
    """Return what is wrong with a database, a sentence each; empty when nothing is."""
    with db.engine.connect() as connection:
        found = [] if db.is_postgres else file_faults(connection)
        found += [f"The tables differ from the program's: {change}." for change in schema.differences(connection)]
    return found


def file_faults(connection: Connection) -> list[str]:
    """Return what SQLite itself finds: damaged pages, and rows whose parent is missing."""
    whole = connection.exec_driver_sql("PRAGMA integrity_check").scalars().all()
    orphans = connection.exec_driver_sql("PRAGMA foreign_key_check").all()
    return [f"The file is damaged: {line}." for line in whole if line != "ok"] + [
        f"A row of {table} (number {row}) names a row of {parent} that is not there."
        for table, row, parent, _ in orphans
    ]
