"""What a rating leads to below an alert: easy days, a flare, the question where."""

from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta

import pytest

from reminders.flows import care, hold
from reminders.store.db import Tx
from reminders.store.tables import Client, Question
from tests.clinic import ANA, World
from tests.flows.hearing import reminded
from tests.flows.rounds import sent, started, until
from tests.flows.test_judge import holds, rules


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


def test_a_correction_takes_back_the_easy_day_that_only_its_rating_had_asked_for(world: World) -> None:
    ana = reminded(world)
    world.hear("Y5")
    world.pass_time(minutes=5)

    world.hear("sorry, pain 2 not 5")
    assert not world.client(ana).next_session_easy
    until(world, world.now + timedelta(days=2, hours=1), hours=4)

    assert not world.sessions(ana)[1].is_easy


OTHER_CAUSES = ("her therapist before", "her therapist after", "the end of a hold")


@pytest.mark.parametrize("cause", OTHER_CAUSES)
def test_a_correction_leaves_an_easy_day_that_has_another_cause(world: World, cause: str) -> None:
    ana = reminded(world)
    if cause == "her therapist before":
        by_ben(world, ana, care.ease)
    world.hear("Y5")
    if cause == "her therapist after":
        by_ben(world, ana, care.ease)
    if cause == "the end of a hold":
        by_ben(world, ana, lambda tx, client, by, now: hold.open_hold(tx, client, "therapist", by, now))
        by_ben(world, ana, care.clear_hold)
    world.pass_time(minutes=5)

    world.hear("sorry, pain 2 not 5")

    assert world.sessions(ana)[0].pain == 2
    assert world.client(ana).next_session_easy


def test_a_correction_leaves_the_alert_and_the_hold_of_its_rating(world: World) -> None:
    reminded(world)
    world.hear("Y7")
    world.pass_time(minutes=5)

    world.hear("sorry, pain 2 not 7")

    assert rules(world) == [("pain_up", "today")]
    assert holds(world) == ["pain_up"]


def test_a_rating_at_up_again_asks_for_the_easy_day_again(world: World) -> None:
    ana = reminded(world)
    for text in ("Y5", "sorry, pain 2 not 5", "no, pain 5 not 2"):
        world.hear(text)
        world.pass_time(minutes=2)

    assert world.client(ana).next_session_easy


def by_ben(world: World, client_id: int, act: Callable[[Tx, Client, str, datetime], object]) -> None:
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        act(tx, client, "ben@example.org", world.now)


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


def test_a_full_report_on_a_later_day_is_that_days_though_where_it_hurt_is_still_open(world: World) -> None:
    ana = started(world, days="wed+thu+fri")
    world.now = datetime(2027, 3, 3, 23, 0, tzinfo=UTC)
    world.hear("Y3")
    until(world, world.now + timedelta(hours=1))
    assert [row.template for row in sent(world, ANA, "question")] == ["ask_where"]
    world.now = datetime(2027, 3, 4, 12, 0, tzinfo=UTC)  # 07:00, before Thursday's reminder closes the question

    world.hear("Y4")

    assert [(one.on_date.day, one.pain) for one in world.sessions(ana)[:2]] == [(3, 3), (4, 4)]
    assert [one.closed_how for one in world.rows(Question, kind="where")] == ["unanswered"]


def test_the_pain_that_was_asked_for_stays_with_its_session_on_a_day_without_one(world: World) -> None:
    ana = started(world)
    world.now = datetime(2027, 3, 3, 23, 0, tzinfo=UTC)
    world.hear("done")
    world.now = datetime(2027, 3, 4, 12, 0, tzinfo=UTC)

    world.hear("Y4")

    assert [(one.on_date.day, one.pain) for one in world.sessions(ana)[:1]] == [(3, 4)]
    assert all(one.kind == "planned" for one in world.sessions(ana))
