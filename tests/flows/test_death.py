"""A client's death told by those around her: nothing more is sent, and the clinic hears of it."""

import pytest

from tests.clinic import World
from tests.flows.hearing import reminded


@pytest.mark.parametrize(("told", "died"), [("Ana died last night", True), ("Rex died last night", False)])
def test_her_name_tells_her_death_from_a_pets(world: World, told: str, died: bool) -> None:
    ana = reminded(world)

    world.hear(told)

    assert (world.client(ana).died_on is not None) is died
    assert [row.rule for row in world.alerts(ana)] == (["death"] if died else [])
