"""Bringing a database to the newest schema, and saying how it stands. Alembic is set up here, without an .ini file."""

from pathlib import Path

from alembic import command
from alembic.autogenerate import compare_metadata
from alembic.config import Config
from alembic.migration import MigrationContext
from alembic.script import ScriptDirectory
from sqlalchemy import Connection

from reminders.errors import DatabaseNotReady
from reminders.store import tables
from reminders.store.db import Database, sqlite_path

MIGRATIONS = Path(__file__).parent / "migrations"


def config() -> Config:
    """Return the migration tool's settings."""
    made = Config()
    made.set_main_option("script_location", str(MIGRATIONS))
    made.set_main_option("path_separator", "os")
    return made


def newest() -> str:
    """Return the name of the newest revision."""
    head = ScriptDirectory.from_config(config()).get_current_head()
    assert head is not None
    return head


def upgrade(db: Database) -> None:
    """Create the schema or bring it to the newest; running it again changes nothing."""
    with db.engine.connect().execution_options(writing=True) as connection, connection.begin():
        made = config()
        made.attributes["connection"] = connection
        command.upgrade(made, "head")


def current(connection: Connection) -> str | None:
    """Return the revision that a database is at, None for an empty one."""
    return MigrationContext.configure(connection).get_current_revision()


def differences(connection: Connection) -> list[object]:
    """Return where the tables of the code and of the database differ."""
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
    known = {script.revision for script in ScriptDirectory.from_config(config()).walk_revisions()}
    if at in known:
        raise DatabaseNotReady(f"The database {place} is older than this program. Run: reminders db upgrade")
    raise DatabaseNotReady(f"The database {place} is newer than this program. Install the newer program.")
