"""Texts that come faster than they can be handled: kept, answered at once, and handled all the same."""

import threading
import time

import pytest

from reminders.flows import receive
from reminders.store.tables import InboundRow
from reminders.web import backlog as backlogs
from reminders.web.backlog import MOST_AT_ONCE, Backlog
from tests.clinic import World
from tests.flows.hearing import inbound

LONGEST_SECONDS = 30.0


def kept(world: World, number: int) -> int:
    """Keep one text of a stranger's phone; return its id."""
    message = inbound("thanks", f"SM{number}", world, address=f"+1202555{number:04d}")
    row_id = world.db.together(receive.keep_all, (message, world.now))
    assert row_id is not None
    return row_id


def unhandled(world: World) -> list[int]:
    """Return the texts that nobody has handled."""
    return [row.id for row in world.rows(InboundRow) if row.handled_at is None]


def wait_until_done(backlog: Backlog) -> None:
    """Wait until the thread has ended."""
    ends_at = time.monotonic() + LONGEST_SECONDS
    while backlog.thread is not None and time.monotonic() < ends_at:
        time.sleep(0.01)
    assert backlog.thread is None


def test_a_text_that_comes_alone_is_handled_within_its_call(world: World) -> None:
    backlog = Backlog(world.db, world.clock)

    backlog.handle(kept(world, 101), world.now)

    assert unhandled(world) == []
    assert backlog.thread is None


def test_one_text_too_many_is_answered_at_once_and_handled_soon(world: World, monkeypatch: pytest.MonkeyPatch) -> None:
    backlog, may_go_on, inside = Backlog(world.db, world.clock), threading.Event(), threading.Semaphore(0)
    handle_one, waiting = receive.handle_one, [kept(world, number) for number in range(100, 102 + MOST_AT_ONCE)]

    def slow(*args: object) -> bool:
        inside.release()
        may_go_on.wait(LONGEST_SECONDS)
        return handle_one(*args)  # type: ignore[arg-type]

    monkeypatch.setattr(backlogs.receive, "handle_one", slow)
    threads = [threading.Thread(target=backlog.handle, args=(row_id, world.now)) for row_id in waiting[:MOST_AT_ONCE]]
    for thread in threads:
        thread.start()
        assert inside.acquire(timeout=LONGEST_SECONDS)
    for row_id in waiting[MOST_AT_ONCE:]:
        backlog.handle(row_id, world.now)  # comes back although nothing can be handled yet

    assert set(unhandled(world)) == set(waiting)
    may_go_on.set()
    for thread in threads:
        thread.join()
    wait_until_done(backlog)
    assert unhandled(world) == []


def test_a_crowd_is_handled_whole_however_its_texts_meet_the_thread(world: World) -> None:
    backlog = Backlog(world.db, world.clock)
    threads = [
        threading.Thread(target=lambda number=number: backlog.handle(kept(world, number), world.now))
        for number in range(100, 160)
    ]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    wait_until_done(backlog)

    assert len(world.rows(InboundRow)) == len(threads)
    assert unhandled(world) == []


def test_a_thread_that_cannot_go_on_leaves_the_texts_to_the_worker(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    backlog = Backlog(world.db, world.clock)
    backlog.handling = MOST_AT_ONCE

    def broken(*_: object) -> int:
        raise OSError("no disk")

    monkeypatch.setattr(backlogs.receive, "handle_round", broken)
    backlog.handle(kept(world, 101), world.now)
    wait_until_done(backlog)
    monkeypatch.undo()

    assert len(unhandled(world)) == 1
    assert receive.handle_waiting(world.db, world.now) == 1


def test_stop_waits_for_no_other_phone_but_for_what_its_own_sent_before(world: World) -> None:
    backlog = Backlog(world.db, world.clock)
    backlog.handling = MOST_AT_ONCE
    before = [kept(world, number) for number in range(100, 110)]
    first, other = kept(world, 150), kept(world, 151)
    stop = inbound("STOP", "SM999", world, address="+12025550150")
    row_id = world.db.together(receive.keep_all, (stop, world.now))
    assert row_id is not None

    backlog.handle(row_id, world.now, at_once=True)

    assert unhandled(world) == [*before, other]
    assert first < row_id


def test_a_flood_before_stop_from_the_same_phone_waits_for_it(world: World) -> None:
    backlog = Backlog(world.db, world.clock)
    flood = [inbound("ok", f"SM{n}", world, address="+12025550150") for n in range(receive.MOST_TOGETHER + 1)]
    for one in flood:
        world.db.together(receive.keep_all, (one, world.now))
    row_id = world.db.together(receive.keep_all, (inbound("STOP", "SM999", world, address="+12025550150"), world.now))
    assert row_id is not None

    backlog.handle(row_id, world.now, at_once=True)

    assert len(unhandled(world)) == len(flood)
    assert row_id not in unhandled(world)
