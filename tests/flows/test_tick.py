"""A round of the recurring work: when a part of it fails, the clock was wrong, or nobody worked for long."""

import threading
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta

from reminders import jobs
from reminders.core.channel import Inbound
from reminders.errors import CannotSay
from reminders.flows import fetch, tick
from reminders.store import marks
from reminders.store.tables import Client, ClinicNote
from tests.clinic import ANA, World
from tests.flows.hearing import inbound
from tests.flows.rounds import sent, started

WEDNESDAY_HOUR = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)
FRIDAY_NOON = datetime(2027, 3, 5, 17, 30, tzinfo=UTC)  # 12:30 in New York: Wednesday's session is over


@dataclass
class ListOfTexts:
    """A provider's list that can be out of reach."""

    is_down: bool = False
    found: list[Inbound] = field(default_factory=list)

    def inbound_since(self, moment: datetime) -> list[Inbound]:
        if self.is_down:
            raise CannotSay("down")
        return self.found


def worker_of(world: World, fetchers: fetch.Fetchers | None = None, name: str = "test") -> tick.Worker:
    """Return a worker as a process that begins now has it."""
    return tick.Worker(world.db, world.sender, world.clock, fetchers or fetch.Fetchers(), name, world.now)


def test_a_client_who_cannot_be_planned_stops_nobody_elses_reminder_and_the_operator_hears(world: World) -> None:
    bea = world.enrol("Bea Lind", "+12025550102")
    world.enrol()
    worker = worker_of(world)
    tick.run(worker, world.now)
    with world.db.begin() as tx:
        tx.get_one(Client, bea).time_zone = "Nowhere/At_All"
    world.now = WEDNESDAY_HOUR

    done = tick.run(worker, world.now)

    assert done.planned == 1
    assert len(sent(world, ANA, "reminder")) == 1
    assert [one.words for one in world.rows(ClinicNote, kind="operator")] == ["reminders not planned"]


def test_an_urgent_alert_is_called_on_after_a_clock_that_ran_ahead_was_set_right(world: World) -> None:
    started(world)
    worker, right = worker_of(world), world.now
    world.pass_time(days=1)
    tick.run(worker, world.now)
    world.now = right
    world.hear("I fell and hit my head")
    tick.run(worker, world.now)
    first = len(world.queued("alert"))

    world.pass_time(hours=1)
    done = tick.run(worker, world.now)

    assert len(world.queued("alert")) > first
    assert (done.planned, len(done.said)) == (0, 1)


def started_worker(world: World, source: ListOfTexts) -> tuple[int, tick.Worker]:
    """Let Ana be reminded on Wednesday and a worker do a round right after; return her id and the worker."""
    ana = started(world)
    worker = worker_of(world, fetch.Fetchers(inbound_list=source))
    tick.run(worker, world.now)
    return ana, worker


def test_a_second_start_soon_after_a_long_stop_waits_for_the_first_reading_too(world: World) -> None:
    source = ListOfTexts()
    ana, _ = started_worker(world, source)
    source.is_down = True
    world.now = FRIDAY_NOON
    tick.run(worker_of(world, fetch.Fetchers(inbound_list=source), "second"), world.now)

    world.pass_time(minutes=5)
    third = worker_of(world, fetch.Fetchers(inbound_list=source), "third")
    done = tick.run(third, world.now)

    assert (done.missed, third.sender.answers_only) == (0, True)
    assert world.sessions(ana)[0].state == "reminded"


def test_after_half_an_hour_of_failing_readings_sessions_close_and_reminders_go(world: World) -> None:
    source = ListOfTexts()
    ana, worker = started_worker(world, source)
    source.is_down = True
    world.now = FRIDAY_NOON
    for _ in range(7):
        tick.run(worker, world.now)
        world.pass_time(minutes=5)
    tick.run(worker, world.now)

    assert not worker.sender.answers_only
    assert world.sessions(ana)[0].state == "missed"


def test_rounds_far_apart_wait_for_a_list_that_cannot_be_read_no_longer_than_half_an_hour(world: World) -> None:
    source = ListOfTexts()
    ana, worker = started_worker(world, source)
    source.is_down = True
    world.now = FRIDAY_NOON
    for _ in range(4):
        tick.run(worker, world.now)
        world.pass_time(minutes=15)

    assert world.sessions(ana)[0].state == "missed"


def test_a_list_that_failed_before_the_stop_is_given_half_an_hour_after_it(world: World) -> None:
    ana, _ = started_worker(world, ListOfTexts(is_down=True))
    world.now = FRIDAY_NOON

    done = tick.run(worker_of(world, fetch.Fetchers(inbound_list=ListOfTexts(is_down=True)), "second"), world.now)

    assert done.missed == 0
    assert world.sessions(ana)[0].state == "reminded"


def test_a_machine_that_slept_reads_the_list_before_anything_closes(world: World) -> None:
    source = ListOfTexts()
    ana, worker = started_worker(world, source)
    source.found.append(inbound("Y3", "SM9", world, received_at=WEDNESDAY_HOUR + timedelta(hours=2)))
    world.now = FRIDAY_NOON

    done = tick.Round()
    tick.work_through(worker, world.now, done)
    assert (done.missed, world.sessions(ana)[0].state) == (0, "reminded")

    tick.hear(worker, world.now)
    world.pass_time(seconds=30)
    tick.work_through(worker, world.now, done)
    assert (done.missed, world.sessions(ana)[0].state) == (0, "done")
    assert tick.is_caught_up(worker, world.now)


def test_the_first_send_after_a_stop_waits_for_the_first_reading(world: World) -> None:
    world.enrol()
    world.now = WEDNESDAY_HOUR
    world.plan()
    with world.db.begin() as tx:
        marks.set_mark(tx, marks.WORKED, at=world.now - timedelta(hours=1))
    worker = worker_of(world, fetch.Fetchers(inbound_list=ListOfTexts(is_down=True)))
    stop = threading.Event()
    ends = threading.Timer(1, stop.set)
    ends.start()

    jobs.keep_working(worker, stop)

    ends.join()
    assert not sent(world, ANA, "reminder")
    assert worker.sender.answers_only
