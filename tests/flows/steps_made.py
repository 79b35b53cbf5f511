"""A step that is proposed to a client's therapist, and what he does about it."""

from reminders.core.rules.progress import Step
from reminders.flows import steps
from reminders.store.tables import Client, ClientProgram, Proposal
from tests.clinic import World


def proposed(world: World, ana: int) -> Proposal:
    with world.db.begin() as tx:
        client, version = tx.get(Client, ana), tx.get(ClientProgram, 1)
        step = Step("up", 1, (("in_full", {"done": 5, "of": 6}),))
        return steps.propose(tx, client, version, step, world.now)  # type: ignore[arg-type]


def settled(world: World, how: str) -> None:
    with world.db.begin() as tx:
        row = tx.get(Proposal, 1)
        getattr(steps, how)(tx, row, "ben@example.org", world.now)
