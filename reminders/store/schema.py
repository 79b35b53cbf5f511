"""Bringing a database to the newest schema, and saying how it stands. Alembic is set up here, without an .ini file.

It is imported only where it is used: every command asks whether the database is ready, and few change it.
"""

from pathlib import Path
from typing import TYPE_CHECKING

from sqlalchemy import Connection, inspect, text

from reminders.errors import DatabaseNotReady
from reminders.store import tables
from reminders.store.db import Database, sqlite_path

if TYPE_CHECKING:
    from alembic.config import Config

MIGRATIONS = Path(__file__).parent / "migrations"


def config() -> "Config":
    """Return the migration tool's settings."""
    from alembic.config import Config

    made = Config()
    made.set_main_option("script_location", str(MIGRATIONS))
    made.set_main_option("path_separator", "os")
    return made


def revisions() -> list[str]:
    """Return the names of all revisions, oldest first; a file's name begins with its revision's."""
    return sorted(path.name.partition("_")[0] for path in (MIGRATIONS / "versions").glob("[0-9]*_*.py"))


def newest() -> str:
    """Return the name of the newest revision."""
    return revisions()[-1]


def upgrade(db: Database) -> None:
    """Create the schema or bring it to the newest; running it again changes nothing."""
    from alembic import command

    with db.engine.connect().execution_options(writing=True) as connection, connection.begin():
        made = config()
        made.attributes["connection"] = connection
        command.upgrade(made, "head")


def current(connection: Connection) -> str | None:
    """Return the revision that a database is at, None for an empty one."""
    if not inspect(connection).has_table("alembic_version"):
        return None
    found: str | None = connection.execute(text("SELECT version_num FROM alembic_version")).scalar()
    return found


def differences(connection: Connection) -> list[object]:
    """Return where the tables of the code and of the database differ."""
    from alembic.autogenerate import compare_metadata
    from alembic.migration import MigrationContext

    context = MigrationContext.configure(connection, opts={"compare_type": True})
    return list(compare_metadata(context, tables.metadata))


def require_ready(db: Database) -> None:
    """Raise DatabaseNotReady, naming the full path, unless the schema is the newest."""
    path = sqlite_path(db.url)
    place = str(path) if path else db.engine.url.render_as_string(hide_password=True)
    if path and not path.exists():
        raise DatabaseNotReady(f"There is no database at {place}. Create it with: reminders db upgrade")
    with db.engine.connect() as connection:
        at = current(connection)
    if at is None:
        raise DatabaseNotReady(f"The database {place} is empty. Create its tables with: reminders db upgrade")
    if at == newest():
        return
    if at in revisions():
        raise DatabaseNotReady(f"The database {place} is older than this program. Run: reminders db upgrade")
    raise DatabaseNotReady(f"The database {place} is newer than this program. Install the newer program.")
