"""Work that threads have done together: one write to the disk, and each thing whole or not at all."""

import threading

import pytest
from sqlalchemy import text

from reminders.store.db import MOST_TOGETHER, Database, Tx
from reminders.store.journal import Journal
from tests.clinic import World


def adding(tx: Tx, given: list[str]) -> list[str]:
    """Set marks; fail where one is bad."""
    for name in given:
        tx.execute(text("INSERT INTO mark (name, value) VALUES (:name, '')"), {"name": name})
        if name.endswith("bad"):
            raise ValueError(name)
    return given


def names(db: Database) -> set[str]:
    """Return the marks that were set by these tests."""
    with db.read() as tx:
        return set(tx.execute(text("SELECT name FROM mark WHERE name LIKE 'work %'")).scalars())


def test_work_returns_what_it_found_once_it_is_written(world: World) -> None:
    assert world.db.together(adding, "work one") == "work one"
    assert names(world.db) == {"work one"}


def test_work_that_fails_is_undone_and_says_so(world: World) -> None:
    with pytest.raises(ValueError, match="work bad"):
        world.db.together(adding, "work bad")

    assert names(world.db) == set()
    assert world.db.together(adding, "work two") == "work two"


def test_what_waits_for_the_writer_is_done_together_and_a_failure_undoes_itself_alone(world: World) -> None:
    wanted = 3 * MOST_TOGETHER
    found: list[str] = []
    failed: list[str] = []

    def one(number: int) -> None:
        try:
            found.append(world.db.together(adding, f"work {number}{' bad' if number % 5 == 0 else ''}"))
        except ValueError as error:
            failed.append(str(error))

    threads = [threading.Thread(target=one, args=(number,)) for number in range(wanted)]
    with world.db.turn:  # so that all of them wait
        for thread in threads:
            thread.start()
    for thread in threads:
        thread.join()

    assert set(failed) == {f"work {number} bad" for number in range(0, wanted, 5)}
    assert names(world.db) == set(found) == {f"work {number}" for number in range(wanted) if number % 5}


def test_when_the_shared_write_fails_nobody_is_told_it_is_there(world: World, monkeypatch: pytest.MonkeyPatch) -> None:
    def full(*_: object) -> None:
        raise OSError("disk full")

    monkeypatch.setattr(Journal, "keep", full)
    world.db.journal = Journal(())
    with pytest.raises(OSError, match="disk full"):
        world.db.together(adding, "work one")

    world.db.journal = None
    assert names(world.db) == set()
