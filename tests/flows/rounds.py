"""One round of all recurring work over a test's world, and the clock moved on round by round."""

from datetime import UTC, datetime

from reminders.flows import tick
from reminders.store import due
from reminders.store.tables import Outbound
from tests.clinic import World

JOBS = (tick.SWEEP, tick.PLAN, tick.WATCH, tick.REVIEW, tick.MORNING, tick.ESCALATE)


def go(world: World) -> None:
    """Do everything that is due now, and send it."""
    do_jobs(world)
    world.send()


def do_jobs(world: World) -> None:
    """Do what is due now, as a round of the service does it."""
    with world.db.read() as tx:
        if not due.jobs_due(tx, world.now):
            return
    for job in JOBS:
        with world.db.read() as tx:
            is_due = job.is_due(tx, world.now)
        while is_due:
            with world.db.begin() as tx:
                is_due = job.work(tx, world.now) > 0


def until(world: World, end: datetime, hours: float = 1) -> None:
    """Let time pass to an instant, a round each hour."""
    while world.now < end:
        world.pass_time(hours=hours)
        world.now = min(world.now, end)
        go(world)


def calls(world: World, kind: str = "alert") -> list[tuple[str, str]]:
    """Return the calls about alerts, as (to, channel), oldest first."""
    return [(row.to, row.channel) for row in world.queued(kind)]


def sent(world: World, to: str, kind: str | None = None) -> list[Outbound]:
    """Return what was accepted for an address, oldest first."""
    rows = [row for row in world.queued(kind) if row.to == to and row.state in ("accepted", "delivered")]
    return sorted(rows, key=lambda row: (row.accepted_at or row.created_at, row.id or 0))


def started(world: World, **columns: str) -> int:
    """Enrol Ana on Monday, welcome her, and let her first reminder go out on Wednesday; return her id."""
    client_id = world.enrol(**columns)
    go(world)
    world.now = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)
    go(world)
    world.pass_time(minutes=5)
    return client_id
