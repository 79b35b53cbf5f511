"""Holds: what they stop, who ends them, what she is told, and those that last too long."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from reminders.core.levels import DEFAULTS
from reminders.errors import Refused
from reminders.flows import hold, watch
from reminders.store import clients
from reminders.store.tables import Client, Clinic, Hold, Question
from tests.clinic import ANA, World
from tests.flows.rounds import go, sent, started, until


def held(world: World, ana: int, rule: str = "therapist") -> None:
    with world.db.begin() as tx:
        hold.open_hold(tx, tx.get(Client, ana), rule, "ben@example.org", world.now)  # type: ignore[arg-type]


def cleared(world: World, ana: int, by: str = "ben@example.org") -> int:
    with world.db.begin() as tx:
        return len(hold.end_hold(tx, tx.get(Client, ana), by, world.now))  # type: ignore[arg-type]


def test_one_hold_a_rule(world: World) -> None:
    ana = started(world)
    held(world, ana)
    held(world, ana)
    held(world, ana, "pain_up")
    assert [one.rule for one in world.rows(Hold)] == ["therapist", "pain_up"]


def test_a_hold_withdraws_what_waits_and_ends_an_open_question(world: World) -> None:
    ana = started(world)
    world.hear("done")
    assert world.rows(Question)[0].closed_at is None

    held(world, ana)

    assert world.rows(Question)[0].closed_how == "lapsed"
    waiting = {row.kind for row in world.queued() if row.state == "waiting" and row.client_id == ana}
    assert waiting <= {"ask"}


# what she said on the day -> the state of that day's session once she is held
TODAY = {"nothing": (None, "held"), "done": ("Y2", "done"), "some of it": ("did half, pain 2", "part")}


@pytest.mark.parametrize("case", TODAY.values(), ids=TODAY.keys())
def test_the_days_session_is_held_unless_it_is_done_or_part(world: World, case: tuple[str | None, str]) -> None:
    text, state = case
    ana = started(world)
    if text:
        world.hear(text)
    held(world, ana)
    assert world.sessions(ana)[0].state == state


def test_a_day_whose_hour_passed_while_held_stays_held_and_the_next_is_an_easy_day(world: World) -> None:
    ana = started(world)
    held(world, ana)
    until(world, datetime(2027, 3, 5, 14, 0, tzinfo=UTC), hours=8)
    assert world.sessions(ana)[1].state == "held"

    assert cleared(world, ana) == 1
    until(world, datetime(2027, 3, 8, 14, 0, tzinfo=UTC), hours=8)

    assert world.sessions(ana)[1].state == "held"
    monday = world.sessions(ana)[2]
    assert (monday.state, monday.is_easy) == ("reminded", True)


def test_a_question_that_waits_in_an_answer_is_taken_back(world: World) -> None:
    started(world)
    world.hear("what time do you open?")  # answered at once; what follows within the minute shares one answer
    world.pass_time(seconds=10)
    world.hear("done")
    world.hear("I fell and hit my head")
    world.pass_time(minutes=1)
    go(world)

    assert [row.why for row in world.queued("ask")] == ["held"]
    assert sent(world, ANA, "ask") == []


def test_an_answer_keeps_what_it_says_beside_the_question(world: World) -> None:
    ana = started(world)
    world.hear("Y2")
    world.pass_time(seconds=10)
    world.hear("what time do you open?")
    world.hear("please pause")  # asks until when
    held(world, ana)
    world.pass_time(minutes=1)
    go(world)

    shared = sent(world, ANA)[-1]
    assert [one["text"] for one in shared.details["parts"]] == ["said_back_question"]


def test_she_is_told_once_when_it_is_cleared_with_her_next_day(world: World) -> None:
    ana = started(world)
    held(world, ana)
    cleared(world, ana)
    assert cleared(world, ana) == 0
    go(world)
    told = sent(world, ANA, "hold_cleared")
    assert len(told) == 1
    assert "Fri Mar 5" in told[0].body
    assert "easy day" in told[0].body


def test_she_is_not_told_to_start_again_when_another_hold_has_begun_since(world: World) -> None:
    ana = started(world)
    held(world, ana)
    world.now = datetime(2027, 3, 4, 1, 30, tzinfo=UTC)  # Wednesday 20:30: the word waits for the morning
    cleared(world, ana)
    world.now = datetime(2027, 3, 4, 3, 0, tzinfo=UTC)
    world.hear("I fell and hit my head")

    until(world, datetime(2027, 3, 4, 15, 0, tzinfo=UTC), hours=1)
    assert sent(world, ANA, "hold_cleared") == []

    cleared(world, ana)
    go(world)
    assert len(sent(world, ANA, "hold_cleared")) == 1


def test_only_staff_end_a_hold(world: World) -> None:
    ana = started(world)
    held(world, ana)
    with pytest.raises(Refused):
        cleared(world, ana, "client")


def test_resume_ends_no_hold(world: World) -> None:
    ana = started(world)
    held(world, ana)
    world.hear("I'm back, please start again")
    with world.db.read() as tx:
        assert hold.is_held(tx, ana)


def test_a_hold_over_seven_working_days_goes_to_the_lead_once(world: World) -> None:
    ana = started(world)  # Wednesday
    held(world, ana)
    until(world, datetime(2027, 3, 12, 20, 0, tzinfo=UTC), hours=12)  # the seventh working day
    assert sent(world, "dee@example.org", "desk") == []

    until(world, datetime(2027, 3, 16, 20, 0, tzinfo=UTC), hours=12)

    told = sent(world, "dee@example.org", "desk")
    assert len(told) == 1
    assert told[0].body.startswith("A.R., client 1: on hold for 8 working days")


@pytest.mark.parametrize(("most", "expected"), [(3, [False, False, True]), (2, [False, True, True])])
def test_a_hold_over_its_working_days_tops_the_list_three_unless_her_levels_say_otherwise(
    world: World, most: int, expected: list[bool]
) -> None:
    ana = started(world)  # Wednesday
    held(world, ana)
    found = []
    for days in (2, 5, 6):
        with world.db.read() as tx:
            one, clinic = tx.get(Hold, 1), tx.get(Clinic, 1)
            assert one is not None
            assert clinic is not None
            lasted = watch.working_days(
                one, clients.hours_of(clinic), clinic.time_zone, world.now + timedelta(days=days)
            )
            found.append(watch.is_long(lasted, replace(DEFAULTS, hold_top_days=most)))
    assert found == expected
