"""Texts that come faster than they can be handled: kept, answered at once, and handled all the same."""

import threading
import time

import pytest

from reminders.core.channel import Inbound
from reminders.flows import keeping, receive
from reminders.store.db import Database
from reminders.store.tables import InboundRow
from reminders.web import backlog as backlogs
from reminders.web.backlog import Backlog
from tests.clinic import World
from tests.flows.hearing import inbound, keep

LONGEST_SECONDS = 30.0


def text(world: World, number: int, words: str = "thanks") -> Inbound:
    """Return a text of a stranger's phone."""
    return inbound(words, f"SM{number}", world, address=f"+1202555{number:04d}")


def hear(backlog: Backlog, world: World, *numbers: int) -> None:
    """Let strangers' texts come in, one after the other."""
    for number in numbers:
        backlog.hear(text(world, number), world.now)


def unhandled(world: World) -> list[str]:
    """Return the texts in the database that nobody has handled."""
    return [row.provider_id for row in world.rows(InboundRow) if row.handled_at is None]


def beside(world: World) -> int:
    """Return how many texts stand beside the database."""
    assert world.db.arrivals is not None
    return sum(len(world.db.arrivals.rows_in(path)) for path in world.db.arrivals.files())


def wait_until_done(backlog: Backlog) -> None:
    """Wait until the thread has ended."""
    ends_at = time.monotonic() + LONGEST_SECONDS
    while backlog.thread is not None and time.monotonic() < ends_at:
        time.sleep(0.01)
    assert backlog.thread is None


def test_a_text_that_comes_alone_is_handled_within_its_call(world: World) -> None:
    backlog = Backlog(world.db, world.clock)

    hear(backlog, world, 101)

    assert len(world.rows(InboundRow)) == 1
    assert unhandled(world) == []
    assert backlog.thread is None


def test_a_text_that_comes_while_another_is_handled_is_answered_at_once_and_handled_soon(
    world: World, monkeypatch: pytest.MonkeyPatch
) -> None:
    backlog, may_go_on, inside = Backlog(world.db, world.clock), threading.Event(), threading.Event()
    handle_one = receive.handle_one

    def slow(*args: object) -> bool:
        inside.set()
        may_go_on.wait(LONGEST_SECONDS)
        return handle_one(*args)  # type: ignore[arg-type]

    monkeypatch.setattr(backlogs.receive, "handle_one", slow)
    monkeypatch.setattr(receive, "MOMENT_SECONDS", 0.3)
    first = threading.Thread(target=hear, args=(backlog, world, 101))
    first.start()
    assert inside.wait(LONGEST_SECONDS)
    hear(backlog, world, 102, 103)  # comes back although nothing can be handled yet

    assert unhandled(world) == ["SM101"]
    assert beside(world) == 2
    may_go_on.set()
    first.join()
    wait_until_done(backlog)
    assert unhandled(world) == []
    assert len(world.rows(InboundRow)) == 3


def test_a_text_that_comes_while_somebody_else_writes_waits_for_nobody(world: World) -> None:
    backlog = Backlog(world.db, world.clock)
    other = Database(world.db.url)
    with other.begin() as tx:
        tx.connection().exec_driver_sql("UPDATE clinic SET name = name")
        hear(backlog, world, 101)
        assert beside(world) == 1
    other.close()
    wait_until_done(backlog)

    assert len(world.rows(InboundRow)) == 1
    assert unhandled(world) == []


def test_a_crowd_is_handled_whole_however_its_texts_meet_the_thread(world: World) -> None:
    backlog = Backlog(world.db, world.clock)
    threads = [threading.Thread(target=hear, args=(backlog, world, number)) for number in range(100, 160)]
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
    backlog.is_handling = True

    def broken(*_: object) -> int:
        raise OSError("no disk")

    monkeypatch.setattr(backlogs.receive, "handle_round", broken)
    hear(backlog, world, 101)
    wait_until_done(backlog)
    monkeypatch.undo()

    assert beside(world) == 1
    assert receive.handle_waiting(world.db, world.now) == 1


def test_stop_waits_for_no_other_phone_but_for_what_its_own_sent_before(world: World) -> None:
    backlog = Backlog(world.db, world.clock)
    keep(world, *(text(world, number) for number in range(100, 110)))
    keep(world, text(world, 150, "thanks"), text(world, 151))
    stop = inbound("STOP", "SM999", world, address="+12025550150")

    backlog.hear(stop, world.now, at_once=True)

    assert unhandled(world) == [*(f"SM{number}" for number in range(100, 110)), "SM151"]


def test_stop_waits_for_what_its_phone_sent_in_the_crowd_before_it(world: World) -> None:
    backlog, phone = Backlog(world.db, world.clock), "+12025550150"
    assert world.db.arrivals is not None
    keeping.keep_beside(world.db.arrivals, inbound("I fell", "SM1", world, address=phone), world.now)

    backlog.hear(inbound("STOP", "SM2", world, address=phone), world.now, at_once=True)

    assert [row.text for row in world.rows(InboundRow)] == ["I fell", "STOP"]
    assert unhandled(world) == []


def test_a_flood_before_stop_from_the_same_phone_waits_for_it(world: World) -> None:
    backlog = Backlog(world.db, world.clock)
    address = "+12025550150"
    keep(world, *(inbound("ok", f"SM{n}", world, address=address) for n in range(receive.MOST_TOGETHER + 1)))

    backlog.hear(inbound("STOP", "SM999", world, address=address), world.now, at_once=True)

    assert len(unhandled(world)) == receive.MOST_TOGETHER + 1
    assert "SM999" not in unhandled(world)
