"""A provider that takes nothing for an hour and longer: what still goes afterwards, what is given up, who is told."""

from datetime import UTC, datetime, timedelta

import pytest

from reminders.errors import CannotSay, SendError
from reminders.flows import unknown
from tests.clinic import ANA, World
from tests.flows.failing import Failing, rounds
from tests.flows.rounds import started

HOUR = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)


def out(world: World, hours: float, code: str = "") -> dict[str, Failing]:
    """Return channels that take no text for some hours."""
    return {"sms": Failing(world, SendError("down", code=code), until=world.now + timedelta(hours=hours))}


def told(world: World) -> list[str]:
    """Return what the operator was told."""
    return [row.details["what"] for row in world.queued("operator")]


def enrolled(world: World, **columns: str) -> int:
    """Enrol Ana, welcome her, and come to her hour on Wednesday."""
    ana = world.enrol(**columns)
    world.send()
    world.now = HOUR
    return ana


@pytest.mark.parametrize("code", ["", "20003", "20429"])
def test_a_reminder_goes_after_an_outage_of_ninety_minutes(world: World, code: str) -> None:
    ana = enrolled(world)

    rounds(world, out(world, 1.5, code), minutes=110, step=2)

    assert world.sessions(ana)[0].state == "reminded"
    assert world.alerts(ana) == []


def test_an_outage_beyond_the_reminders_four_hours_is_told_to_the_operator_and_alerts_nobody(world: World) -> None:
    ana = enrolled(world)

    rounds(world, out(world, 6), minutes=250, step=5)

    assert world.sessions(ana)[0].state == "unsent"
    assert world.alerts(ana) == []
    assert told(world) == ["late reminders"]


def test_a_refused_account_is_told_to_the_operator_at_once(world: World) -> None:
    enrolled(world)

    rounds(world, out(world, 1, "20003"), minutes=0)

    assert told(world) == ["sender refused"]


def test_a_danger_answer_goes_after_an_outage_of_two_hours(world: World) -> None:
    started(world)
    world.hear("I fell and hit my head")

    rounds(world, out(world, 2), minutes=130, step=2)

    assert [row.state for row in world.queued("danger")] == ["accepted"]


def test_a_message_without_an_end_is_given_up_after_twelve_hours_of_refusals_and_told(world: World) -> None:
    world.enrol()

    rounds(world, out(world, 30), minutes=24 * 60, step=30)

    assert [row.state for row in world.queued("welcome")] == ["failed"]
    assert "messages given up" in told(world)


def test_a_message_that_waited_for_her_window_is_not_given_up_at_its_first_refusal(world: World) -> None:
    world.now = datetime(2027, 3, 1, 1, 30, tzinfo=UTC)  # 20:30 in New York
    world.enrol()
    world.now = datetime(2027, 3, 1, 14, 30, tzinfo=UTC)

    rounds(world, out(world, 1), minutes=0)

    assert [row.state for row in world.queued("welcome")] == ["waiting"]


def test_a_reminder_of_which_the_provider_cannot_say_until_its_end_is_told_to_the_operator(world: World) -> None:
    ana = enrolled(world)
    world.plan()
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()
    world.now += timedelta(hours=4, minutes=1)

    unknown.settle(world.db, {"sms": Failing(world, CannotSay("down"), to=ANA)}, world.clock)

    assert world.sessions(ana)[0].state == "unsent"
    assert told(world) == ["late reminders"]
