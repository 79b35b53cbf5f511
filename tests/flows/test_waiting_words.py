"""Words from a shared phone that wait for whose they are: never lost, however the question ends."""

import pytest

from reminders.flows import questions, watch
from reminders.store import due
from reminders.store.tables import Client, ClinicNote, Question
from tests.clinic import ANA, World
from tests.flows.hearing import heard, reminded, templates


def both_today(world: World) -> tuple[int, int]:
    """Enrol Hugo and Ana on one phone and remind both; return their ids, Ana's first."""
    hugo = world.enrol("Hugo Ruiz", holder="shared")
    return reminded(world, holder="shared"), hugo


def on_desk(world: World) -> list[tuple[str, str]]:
    return [(note.kind, note.words) for note in world.rows(ClinicNote) if note.kind == "unclear"]


def watched(world: World) -> None:
    """Let the watch do what is due, as often as it finds something."""
    while True:
        with world.db.begin() as tx:
            is_due = due.things_to_watch(tx, world.now)
            if not (watch.run(tx, world.now) if is_due else 0):
                return


def test_words_whose_question_nobody_answers_go_to_the_desk_after_a_day(world: World) -> None:
    both_today(world)
    row_id, written_at = world.hear("done pain 6"), world.now
    world.pass_time(hours=23, minutes=59)
    watched(world)
    assert on_desk(world) == []

    world.pass_time(minutes=1)
    watched(world)
    watched(world)

    assert on_desk(world) == [("unclear", "done pain 6")]
    assert [note.at for note in world.rows(ClinicNote, kind="unclear")] == [written_at]
    assert heard(world, row_id).outcome == "desk"
    assert [one.closed_how for one in world.rows(Question, kind="who")] == ["unanswered"]


def test_words_whose_question_another_replaced_go_to_the_desk(world: World) -> None:
    ana, _ = both_today(world)
    world.hear("done pain 6")
    with world.db.begin() as tx:
        questions.ask(tx, "reason", ANA, tx.get_one(Client, ana), world.now)

    watched(world)

    assert on_desk(world) == [("unclear", "done pain 6")]


def test_words_that_wait_when_the_phone_says_stop_go_to_the_desk(world: World) -> None:
    both_today(world)
    world.hear("done pain 6")
    world.hear("STOP")
    world.pass_time(hours=25)

    watched(world)

    assert on_desk(world) == [("unclear", "done pain 6")]


def test_both_of_two_replies_without_a_name_go_to_the_desk(world: World) -> None:
    both_today(world)
    world.hear("done pain 6")
    world.pass_time(minutes=2)

    world.hear("the legs were hard today")
    watched(world)

    assert on_desk(world) == [("unclear", "done pain 6"), ("unclear", "the legs were hard today")]


def test_a_start_of_which_nobody_says_whose_goes_to_the_desk(world: World) -> None:
    both_today(world)
    world.hear("STOP")
    world.pass_time(minutes=5)
    world.hear("START")
    assert templates(world)[-1] == "ask_who_start"
    world.pass_time(hours=25)

    watched(world)

    assert on_desk(world) == [("unclear", "START")]


@pytest.mark.parametrize(
    ("more", "completed", "pain"),
    [
        ("Ana, she only did half", "part", 2),
        ("that was Ana, she did 1x10", "all", 2),
        ("Ana, pain was 4", "all", 4),
        ("Ana", "all", 2),
        ("Ana did it", "all", 2),
    ],
)
def test_a_name_given_with_more_files_the_first_words_and_the_rest(
    world: World, more: str, completed: str, pain: int
) -> None:
    ana, hugo = both_today(world)
    world.hear("done, pain 2")
    world.pass_time(minutes=2)

    world.hear(more)

    session = world.sessions(ana)[0]
    assert (session.completed, session.pain) == (completed, pain)
    assert world.reports(hugo) == []
    assert on_desk(world) == []
