"""A flood of texts: all of it is kept and read, however long it is."""

from reminders.flows import deliver, fetch, receive, tick
from reminders.store.tables import InboundRow
from tests.clinic import World
from tests.flows.hearing import inbound, keep


def test_one_round_reads_a_whole_flood(world: World) -> None:
    keep(world, *(inbound("thanks", f"SM{n}", world, address="+12025550177") for n in range(receive.BATCH + 1)))
    worker = tick.Worker(world.db, world.sender, world.clock, fetch.Fetchers(), "test", world.now)

    tick.run(worker, world.now)
    deliver.close(worker.sender)

    assert len(world.rows(InboundRow)) == receive.BATCH + 1
    assert not [row.id for row in world.rows(InboundRow) if row.handled_at is None]
