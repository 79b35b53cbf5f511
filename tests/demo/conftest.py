"""Two short stories for the tests of the demo: the same seed twice, lived once a run."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from reminders.demo import people, story
from reminders.demo.story import Story

WEEKS, CLIENTS, SEED = 1, 6, 11


def lived(folder: Path, seed: int = SEED, clients: int = CLIENTS, weeks: int = WEEKS) -> Story:
    """Return a story that has been lived."""
    made = story.begin(folder / "demo.db", people.people(clients), weeks, seed, 8000)
    made.live()
    return made


@pytest.fixture(scope="session")
def first(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Story]:
    """A short story."""
    made = lived(tmp_path_factory.mktemp("first"))
    yield made
    made.db.close()


@pytest.fixture(scope="session")
def again(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Story]:
    """The same story, lived anew."""
    made = lived(tmp_path_factory.mktemp("again"))
    yield made
    made.db.close()
