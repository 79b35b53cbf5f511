"""Texts kept beside the database come into it once, whoever brings them in and however often that is cut off."""

import pytest

from reminders.flows import keeping, receive, tick
from reminders.store import inbox
from reminders.store.arrivals import Arrivals
from reminders.store.db import Database, Tx
from reminders.store.tables import InboundRow, Report
from tests.clinic import World, a_world
from tests.conftest import NOW
from tests.flows.hearing import inbound, keep, reminded, templates


@pytest.fixture
def world(sqlite_url: str) -> World:
    """Return the clinic of the tests on SQLite: beside PostgreSQL nothing is kept."""
    return a_world(Database(sqlite_url), NOW)


def beside(world: World) -> Arrivals:
    """Return the folder beside the database."""
    assert world.db.arrivals is not None
    return world.db.arrivals


def put(world: World, text: str, provider_id: str) -> None:
    """Keep one of Ana's texts beside the database."""
    keeping.keep_beside(beside(world), inbound(text, provider_id, world), world.now)


def texts(world: World) -> list[str]:
    """Return what the record holds."""
    return [row.text for row in world.rows(InboundRow)]


def test_what_was_kept_beside_is_heard_at_the_next_tick(world: World) -> None:
    reminded(world)
    put(world, "done 2x10 pain 3", "SM1")

    receive.handle_waiting(world.db, world.now)

    assert [row.reading["pain"] for row in world.rows(Report)] == [3]
    assert "thanks" in templates(world)
    assert beside(world).files() == []


def test_a_round_of_the_worker_brings_in_what_nobody_else_has(world: World) -> None:
    reminded(world)
    put(world, "done 2x10 pain 3", "SM1")
    worker = tick.Worker(world.db, world.sender, lambda: world.now, tick.fetch.Fetchers(), "one", world.now)

    tick.hear(worker, world.now)

    assert len(world.rows(Report)) == 1


def test_a_row_is_as_it_would_be_had_it_been_kept_in_the_database(world: World) -> None:
    world.enrol()
    put(world, "all, pain 2 😀", "SM1")
    keep(world, inbound("all, pain 2 😀", "SM2", world))

    keeping.bring_in(world.db)
    kept, brought = ((row.model_dump(exclude={"id", "provider_id"})) for row in world.rows(InboundRow))

    assert brought == kept


def test_what_is_cut_off_before_the_file_is_forgotten_is_there_once(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    world.enrol()
    put(world, "I fell", "SM1")
    with monkeypatch.context() as patch:
        patch.setattr(Arrivals, "forget", lambda *_: None)
        keeping.bring_in(world.db)
    assert len(beside(world).files()) == 1

    keeping.bring_in(world.db)

    assert texts(world) == ["I fell"]
    assert beside(world).files() == []


def test_what_the_provider_hands_over_again_is_there_once(world: World) -> None:
    world.enrol()
    keep(world, inbound("I fell", "SM1", world))
    for number in (1, 1, 2):
        put(world, "I fell", f"SM{number}")

    keeping.bring_in(world.db)

    assert [row.provider_id for row in world.rows(InboundRow)] == ["SM1", "SM2"]


def test_a_file_that_cannot_be_brought_in_holds_up_no_other_and_stays(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    world.enrol()
    real = inbox.keep

    def picky(tx: Tx, rows: list[dict[str, object]]) -> object:
        if any(one["text"] == "bad" for one in rows):
            raise ValueError
        return real(tx, rows)

    for number, text in enumerate(("one", "bad", "two")):
        put(world, text, f"SM{number}")
    with monkeypatch.context() as patch:
        patch.setattr(inbox, "keep", picky)
        keeping.bring_in(world.db)
    assert texts(world) == ["one", "two"]
    assert len(beside(world).files()) == 1

    keeping.bring_in(world.db)

    assert texts(world) == ["one", "two", "bad"]


def test_a_flood_beside_the_database_comes_in_whole(world: World) -> None:
    world.enrol()
    wanted = 2 * keeping.MOST_FILES + 1
    for number in range(wanted):
        put(world, f"ok {number}", f"SM{number}")

    keeping.bring_in(world.db)

    assert texts(world) == [f"ok {number}" for number in range(wanted)]
