"""The morning question: on its own, inside a reminder, three mornings at most, and what its answers lead to."""

from datetime import UTC, datetime

from reminders.store.tables import Question
from tests.clinic import ANA, World
from tests.flows.rounds import sent, started, until

THURSDAY = datetime(2027, 3, 4, 14, 0, tzinfo=UTC)


def mornings(world: World) -> list[str]:
    return [(row.accepted_at or row.created_at).strftime("%a") for row in sent(world, ANA, "morning")]


def test_it_is_asked_the_morning_after_a_session_at_up_at_her_hour(world: World) -> None:
    ana = started(world)
    world.hear("Y4")

    until(world, datetime(2027, 3, 4, 13, 29, tzinfo=UTC))
    assert mornings(world) == []
    until(world, datetime(2027, 3, 4, 13, 30, tzinfo=UTC))

    assert mornings(world) == ["Thu"]
    question = next(one for one in world.rows(Question) if one.kind == "settling")
    assert question.session_id == world.sessions(ana)[0].id


def test_it_is_not_asked_after_a_session_below_up(world: World) -> None:
    started(world)
    world.hear("Y3")
    until(world, THURSDAY)
    assert mornings(world) == []


def test_an_answer_is_a_settling_rating_of_the_earlier_session(world: World) -> None:
    ana = started(world)
    world.hear("Y4")
    until(world, THURSDAY)

    world.hear("3")

    report = world.reports(ana)[-1]
    assert (report.is_settling, report.session_id) == (True, world.sessions(ana)[0].id)
    assert world.sessions(ana)[0].pain == 4
    assert world.client(ana).morning_on is None


def test_while_it_is_high_it_is_asked_again_and_rides_in_the_reminder_of_an_exercise_day(world: World) -> None:
    ana = started(world)
    world.hear("Y4")
    until(world, THURSDAY)
    world.hear("5")

    until(world, datetime(2027, 3, 5, 14, 0, tzinfo=UTC))

    assert mornings(world) == ["Thu"]
    reminder = sent(world, ANA, "reminder")[-1]
    assert "How is your pain this morning" in reminder.body
    world.hear("2")
    assert [one.is_settling for one in world.reports(ana)] == [False, True, True]
    assert world.sessions(ana)[1].pain is None


def test_a_report_beside_it_closes_it_unanswered(world: World) -> None:
    ana = started(world)
    world.hear("Y4")
    until(world, THURSDAY)
    world.hear("5")
    until(world, datetime(2027, 3, 5, 14, 0, tzinfo=UTC))

    world.hear("Y3")

    assert world.sessions(ana)[1].pain == 3
    assert [one.closed_how for one in world.rows(Question) if one.kind == "settling"] == ["answered", "unanswered"]


def test_two_points_above_the_session_the_next_morning_is_pain_up(world: World) -> None:
    started(world)
    world.hear("Y4")
    until(world, THURSDAY)

    world.hear("6")

    assert [(one.rule, one.because[-1]["form"]) for one in world.alerts()] == [("pain_up", "morning_worse")]


def test_a_held_client_is_asked_nothing(world: World) -> None:
    started(world)
    world.hear("Y6")
    until(world, THURSDAY)
    assert mornings(world) == []
