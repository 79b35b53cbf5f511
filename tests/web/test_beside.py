"""The process beside the web process: it handles what was left to it, and another takes its place when it dies."""

import os
import signal
import time
from collections.abc import Callable, Iterator

import pytest

from reminders.flows import keeping
from reminders.store.tables import InboundRow
from reminders.web.backlog import Backlog
from reminders.web.beside import Beside
from tests.clinic import World
from tests.flows.hearing import inbound

LONGEST_SECONDS = 60.0


def wait_until(holds: Callable[[], bool]) -> None:
    """Wait until something holds."""
    ends_at = time.monotonic() + LONGEST_SECONDS
    while not holds() and time.monotonic() < ends_at:
        time.sleep(0.02)
    assert holds()


@pytest.fixture
def beside(world: World, monkeypatch: pytest.MonkeyPatch) -> Iterator[Beside]:
    """Run the process over the database of the tests."""
    monkeypatch.setenv("REMINDERS_DATABASE_URL", world.db.url)
    monkeypatch.setenv("REMINDERS_SECRET_KEY", "a-secret-of-these-tests")
    made = Beside()
    made.start()
    wait_until(lambda: made.child is not None)
    yield made
    made.end()


def put(world: World, *numbers: int) -> None:
    """Keep strangers' texts beside the database."""
    assert world.db.arrivals is not None
    for number in numbers:
        one = inbound("thanks", f"SM{number}", world, address=f"+1202555{number:04d}")
        keeping.keep_beside(world.db.arrivals, one, world.now)


def handled(world: World) -> list[str]:
    """Return the texts that were handled."""
    return [row.provider_id for row in world.rows(InboundRow) if row.handled_at is not None]


def test_it_handles_what_was_there_and_what_is_left_to_it(world: World, beside: Beside) -> None:
    put(world, 101)
    assert beside.leave()
    assert beside.is_behind()
    wait_until(lambda: not beside.is_behind())
    assert handled(world) == ["SM101"]

    put(world, *range(102, 130))
    for _ in range(28):
        assert beside.leave()
    wait_until(lambda: not beside.is_behind())

    assert handled(world) == [f"SM{number}" for number in range(101, 130)]


def test_another_takes_its_place_and_does_what_it_left(world: World, beside: Beside) -> None:
    put(world, 101)
    beside.leave()
    wait_until(lambda: not beside.is_behind())
    first = beside.child
    assert first is not None
    os.kill(first.pid, signal.SIGSTOP)
    put(world, 102)
    assert beside.leave()
    os.kill(first.pid, signal.SIGKILL)

    wait_until(lambda: beside.child is not None and beside.child is not first)
    wait_until(lambda: len(handled(world)) == 2)


def test_while_it_is_away_a_thread_handles_what_is_left(world: World) -> None:
    backlog = Backlog(world.db, lambda: world.now, Beside())
    backlog.is_handling = True
    backlog.hear(inbound("thanks", "SM101", world, address="+12025550101"), world.now)

    wait_until(lambda: backlog.thread is None)
    assert handled(world) == ["SM101"]
