"""What a client sends from her page: kept once, judged at once, a second one a correction."""

import pytest

from reminders.flows import page
from reminders.flows.page import PageAnswer
from reminders.store.tables import ClinicNote, Contact, ExerciseSession, InboundRow
from tests.clinic import ANA, World
from tests.flows.hearing import answers, reminded


def submit(world: World, client_id: int, done: str, pain: int | None, words: str = "", name: str = "1") -> PageAnswer:
    session_id = world.sessions(client_id)[0].id
    with world.db.begin() as tx:
        session = tx.get(ExerciseSession, session_id)
        assert session is not None
        return page.submit(tx, session, done, pain, words, name, world.now)


DONE = {"all": ("all", "done"), "some": ("part", "part"), "no": ("none", "skipped")}


@pytest.mark.parametrize(("done", "expected"), DONE.items(), ids=DONE)
def test_the_boxes_are_recorded_and_no_text_repeats_them(world: World, done: str, expected: tuple[str, str]) -> None:
    ana = reminded(world)

    made = submit(world, ana, done, 2)

    session = world.sessions(ana)[0]
    assert (session.completed, session.state) == expected
    assert made.recorded["completed"] == expected[0]
    assert made.template == ""
    assert answers(world) == []
    assert (world.reports(ana)[0].channel, world.rows(InboundRow)[0].source) == ("page", "page")


def test_the_same_submission_twice_counts_once(world: World) -> None:
    ana = reminded(world)

    submit(world, ana, "all", 2)
    submit(world, ana, "all", 2)

    assert len(world.reports(ana)) == 1


def test_a_second_submission_is_a_correction(world: World) -> None:
    ana = reminded(world)
    submit(world, ana, "all", 7)
    world.pass_time(minutes=2)

    submit(world, ana, "all", 1, name="2")

    first, second = world.reports(ana)
    assert second.replaces == first.id
    assert world.sessions(ana)[0].pain == 1


def test_severe_pain_is_answered_on_the_page_and_by_message(world: World) -> None:
    ana = reminded(world)

    made = submit(world, ana, "all", 9)

    assert made.kind == "danger"
    assert made.template
    assert [row.kind for row in answers(world)] == ["danger"]
    assert [one.rule for one in world.alerts(ana)][:1] == ["severe_pain"]


def test_a_rating_at_the_stop_level_is_answered_on_the_page(world: World) -> None:
    ana = reminded(world)

    assert submit(world, ana, "all", 6).kind == "stop_level"


def test_words_go_through_the_reader_for_danger(world: World) -> None:
    ana = reminded(world)

    made = submit(world, ana, "some", 2, "I fell and hit my head")

    assert made.kind == "danger"
    assert len(world.alerts(ana)) == 1
    assert world.sessions(ana)[0].state == "part"


def test_pain_in_words_counts_when_the_column_is_empty(world: World) -> None:
    ana = reminded(world)

    submit(world, ana, "all", None, "pain was about 3")

    assert world.sessions(ana)[0].pain == 3


def test_a_question_in_the_words_goes_to_the_inbox(world: World) -> None:
    ana = reminded(world)

    submit(world, ana, "all", 1, "can I use a chair?")

    assert [(note.kind, note.client_id) for note in world.rows(ClinicNote)] == [("question", ana)]


def test_an_opt_out_in_the_words_is_honoured(world: World) -> None:
    ana = reminded(world)

    submit(world, ana, "", None, "please stop texting me")

    assert world.rows(Contact)[0].consent == "closed"


def test_from_a_closed_address_danger_is_still_shown_on_the_page(world: World) -> None:
    ana = reminded(world)
    world.hear("STOP")
    world.hear("I have chest pain")

    made = submit(world, ana, "some", 9)

    assert made.kind == "danger"
    assert [row.kind for row in answers(world, ANA)] == ["stopped", "danger"]
