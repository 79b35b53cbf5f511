"""A round of the recurring work: when a part of it fails, the clock was wrong, or nobody worked for long."""

from datetime import UTC, datetime, timedelta

from reminders.flows import fetch, tick
from reminders.store.tables import Client, ClinicNote
from tests.clinic import ANA, World
from tests.flows.rounds import sent, started

WEDNESDAY_HOUR = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)


def worker_of(world: World, fetchers: fetch.Fetchers | None = None, name: str = "test") -> tick.Worker:
    """Return a worker as a process that begins now has it."""
    away = tick.has_been_away(world.db, world.now)
    return tick.Worker(
        world.db, world.sender, world.clock, fetchers or fetch.Fetchers(), name, world.now, was_away=away
    )


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
