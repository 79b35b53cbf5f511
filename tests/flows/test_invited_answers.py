"""The short answers that every reminder invites."""

import pytest

from tests.clinic import World
from tests.flows.hearing import reminded, templates


@pytest.mark.parametrize("text", ["Y", "y", "yes", "Y."])
def test_the_yes_that_the_reminder_invites_is_recorded_and_only_the_pain_is_asked(world: World, text: str) -> None:
    ana = reminded(world)

    world.hear(text)

    assert world.sessions(ana)[0].completed == "all"
    assert templates(world) == ["ask_pain"]


def test_the_no_that_it_invites_leaves_her_alone(world: World) -> None:
    ana = reminded(world)

    world.hear("N")

    assert world.sessions(ana)[0].state == "skipped"
    assert templates(world) == ["thanks"]
