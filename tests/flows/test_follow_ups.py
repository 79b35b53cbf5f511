"""What a rating leads to below an alert: easy days, a flare, the question where."""

from datetime import date, timedelta

from tests.clinic import ANA, World
from tests.flows.hearing import reminded
from tests.flows.rounds import sent, started, until
from tests.flows.test_judge import rules


def test_a_flare_makes_the_next_three_sessions_easy_days_and_no_alert(world: World) -> None:
    ana = reminded(world)

    world.hear("I'm having a flare")

    assert rules(world) == []
    assert world.client(ana).easy_sessions_left == 3


def test_a_session_at_up_makes_the_next_one_an_easy_day(world: World) -> None:
    ana = reminded(world)
    world.hear("Y4")
    assert world.client(ana).next_session_easy

    until(world, world.now + timedelta(days=2, hours=1), hours=4)

    session = world.sessions(ana)[1]
    assert (session.on_date, session.is_easy) == (date(2027, 3, 5), True)
    assert not world.client(ana).next_session_easy


def test_where_it_hurts_is_asked_once_in_four_weeks_and_never_while_held(world: World) -> None:
    started(world)
    world.hear("Y3")
    until(world, world.now + timedelta(hours=1))
    assert [row.template for row in sent(world, ANA, "question")] == ["ask_where"]
    world.hear("left knee, not new")

    until(world, world.now + timedelta(days=2), hours=4)
    world.hear("Y3")
    until(world, world.now + timedelta(hours=1))

    assert [row.template for row in sent(world, ANA, "question")] == ["ask_where"]


def test_the_question_where_waits_while_a_morning_question_is_due(world: World) -> None:
    started(world)
    world.hear("Y4")
    until(world, world.now + timedelta(hours=3))
    assert sent(world, ANA, "question") == []

    until(world, world.now + timedelta(hours=22))
    world.hear("2")
    until(world, world.now + timedelta(hours=2))

    assert [row.template for row in sent(world, ANA, "question")] == ["ask_where"]
