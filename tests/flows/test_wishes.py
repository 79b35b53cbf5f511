"""Wishes said back: today's exercises again, later, and the same under a hold."""

from datetime import UTC, datetime

import pytest

from reminders.flows import hold
from reminders.store.tables import Client
from tests.clinic import World
from tests.flows.hearing import answers, reminded, templates


def held(world: World, client_id: int) -> None:
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        hold.open_hold(tx, client, "therapist", "ben@example.org", world.now)


def test_todays_exercises_come_again_as_they_were_shown(world: World) -> None:
    reminded(world)

    world.hear("resend")
    world.send()

    assert world.sms.sent[-1].body == world.sms.sent[-2].body


def test_on_a_day_off_the_next_day_is_named(world: World) -> None:
    reminded(world)
    world.now = datetime(2027, 3, 4, 15, 0, tzinfo=UTC)

    world.hear("resend")

    assert templates(world) == ["said_back_resend_none"]
    assert answers(world)[0].details["next"] == "Fri Mar 5"


UNDER_A_HOLD = {"resend": ["said_back_held"], "I'm back": ["said_back_held"], "I'll do it later": [], "thank you": []}


@pytest.mark.parametrize(("text", "said"), UNDER_A_HOLD.items(), ids=UNDER_A_HOLD)
def test_a_held_client_gets_no_exercises(world: World, text: str, said: list[str]) -> None:
    ana = reminded(world)
    held(world, ana)

    world.hear(text)

    assert templates(world) == said


def test_a_pause_asked_for_under_a_hold_is_kept_and_not_asked_about(world: World) -> None:
    from reminders.store.tables import Pause, Question

    ana = reminded(world)
    held(world, ana)

    world.hear("please pause")

    assert len(world.rows(Pause, client_id=ana)) == 1
    assert world.rows(Question) == []
    assert templates(world) == ["said_back_held"]
