"""Which question a text answers that is handled long after it was sent: what was open at its own moment."""

from datetime import UTC, datetime, timedelta

from reminders.flows import receive
from reminders.store.tables import Question
from tests.clinic import World
from tests.flows.hearing import inbound, keep, reminded
from tests.flows.test_questions import ask


def test_a_question_lapses_by_the_moment_of_the_reply_not_of_its_handling(world: World) -> None:
    ana = reminded(world)
    world.hear("done")
    sent_at = world.now + timedelta(hours=3)
    world.now = datetime(2027, 3, 5, 13, 30, tzinfo=UTC)
    world.plan()
    world.send()
    world.pass_time(minutes=30)

    keep(world, inbound("4", "SM-late", world, received_at=sent_at), fetched=True)
    receive.handle_waiting(world.db, world.now)

    assert [one.pain for one in world.sessions(ana)][:2] == [4, None]


def test_a_reply_sent_before_a_question_was_asked_does_not_answer_it(world: World) -> None:
    ana = reminded(world)
    world.hear("done")
    sent_at = world.now - timedelta(hours=1)

    keep(world, inbound("4", "SM-late", world, received_at=sent_at), fetched=True)
    receive.handle_waiting(world.db, world.now)

    assert world.sessions(ana)[0].pain is None


def test_texts_fetched_together_answer_the_question_that_the_first_of_them_led_to(world: World) -> None:
    ana = reminded(world)
    sent_at = world.now
    world.pass_time(hours=2)

    keep(
        world,
        inbound("done", "SM1", world, received_at=sent_at),
        inbound("4", "SM2", world, received_at=sent_at + timedelta(minutes=1)),
        fetched=True,
    )
    receive.handle_waiting(world.db, world.now)

    assert world.sessions(ana)[0].pain == 4


def test_a_text_of_the_day_before_is_no_answer_to_this_mornings_question(world: World) -> None:
    ana = reminded(world)
    world.hear("done pain 5")
    sent_at = world.now + timedelta(hours=3)
    world.now = datetime(2027, 3, 4, 14, 0, tzinfo=UTC)
    ask(world, ana, "settling", world.sessions(ana)[0].id)

    keep(world, inbound("4", "SM-late", world, received_at=sent_at), fetched=True)
    receive.handle_waiting(world.db, world.now)

    assert not any(report.is_settling for report in world.reports(ana))
    assert world.rows(Question)[-1].closed_how != "answered"
