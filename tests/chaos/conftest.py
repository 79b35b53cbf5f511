"""Databases that already hold a crowd, copied for each test."""

import shutil
from collections.abc import Callable, Iterator
from functools import cache
from pathlib import Path

import pytest
from sqlalchemy import create_engine, text

from reminders.store.db import Database
from tests.chaos.crowd import enrol_crowd
from tests.postgres import named

SMALL, MEDIUM, LARGE = 3, 40, 300


@pytest.fixture(scope="session")
def sqlite_crowds(tmp_path_factory: pytest.TempPathFactory, sqlite_template: Path) -> Callable[[int], Path]:
    """Return what gives an SQLite file with so many clients, to be copied."""

    @cache
    def made(clients: int) -> Path:
        path = tmp_path_factory.mktemp("crowd") / "crowd.db"
        shutil.copy(sqlite_template, path)
        db = Database(f"sqlite:///{path}")
        enrol_crowd(db, clients)
        with db.engine.connect() as connection:
            connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")
        db.close()
        return path

    return made


@pytest.fixture(scope="session")
def postgres_crowds(postgres_server: str) -> Callable[[int], str]:
    """Return what gives the name of a PostgreSQL database with so many clients, to be copied."""

    @cache
    def made(clients: int) -> str:
        run_alone(postgres_server, f"CREATE DATABASE crowd{clients} TEMPLATE fresh")
        db = Database(named(postgres_server, f"crowd{clients}"))
        enrol_crowd(db, clients)
        db.close()
        return f"crowd{clients}"

    return made


def run_alone(server: str, statement: str) -> None:
    """Run a statement that allows no transaction around it."""
    engine = create_engine(server, isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.execute(text(statement))
    engine.dispose()


@pytest.fixture(params=["sqlite", pytest.param("postgres", marks=pytest.mark.postgres)])
def crowd(request: pytest.FixtureRequest, tmp_path: Path) -> Iterator[Callable[[int], str]]:
    """Return a function that gives the address of a fresh database with so many clients, once for each kind."""
    given: list[str] = []
    if request.param == "sqlite":
        files: Callable[[int], Path] = request.getfixturevalue("sqlite_crowds")

        def copied(clients: int) -> str:
            given.append(f"crowd-{len(given)}.db")
            shutil.copy(files(clients), tmp_path / given[-1])
            return f"sqlite:///{tmp_path / given[-1]}"

        yield copied
        return
    names: Callable[[int], str] = request.getfixturevalue("postgres_crowds")
    server: str = request.getfixturevalue("postgres_server")

    def made(clients: int) -> str:
        given.append(f"c{abs(hash(request.node.nodeid)):x}x{len(given)}")
        run_alone(server, f"CREATE DATABASE {given[-1]} TEMPLATE {names(clients)} STRATEGY file_copy")
        return named(server, given[-1])

    yield made
    for name in given:
        run_alone(server, f"DROP DATABASE IF EXISTS {name} WITH (FORCE)")
