"""The web application for tests: on SQLite, since what differs between databases is tested below it."""

from collections.abc import Iterator

import pytest

from reminders.store.db import Database
from tests.clinic import World, a_world
from tests.conftest import NOW
from tests.web.desk import Desk, a_desk


@pytest.fixture
def db(sqlite_url: str) -> Iterator[Database]:
    """Open a fresh SQLite database."""
    opened = Database(sqlite_url)
    yield opened
    opened.close()


@pytest.fixture
def world(db: Database) -> World:
    """Return the clinic of the tests."""
    return a_world(db, NOW)


@pytest.fixture
def desk(world: World) -> Desk:
    """Return the web application over that clinic."""
    return a_desk(world)
