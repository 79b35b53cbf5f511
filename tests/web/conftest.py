"""The web application for tests: on SQLite, since what differs between databases is tested below it."""

import shutil
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import sync_playwright

from reminders.store.db import Database
from tests.clinic import World, a_world
from tests.conftest import NOW
from tests.web.busy import a_busy_clinic
from tests.web.desk import Desk, a_desk
from tests.web.live import a_port, served
from tests.web.scene import ARGUMENTS, CHROMIUM, Scene


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


@pytest.fixture(scope="module")
def scene(sqlite_template: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Scene]:
    """Serve a busy clinic and open a browser."""
    path = tmp_path_factory.mktemp("browser") / "reminders.db"
    shutil.copy(sqlite_template, path)
    db = Database(f"sqlite:///{path}")
    world = a_world(db, NOW)
    busy = a_busy_clinic(world)
    desk = a_desk(world)
    with served(desk.web, a_port()) as base, sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=str(CHROMIUM), args=ARGUMENTS)
        yield Scene(base, desk, busy, browser)
        browser.close()
    db.close()
