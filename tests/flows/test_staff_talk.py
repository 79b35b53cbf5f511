"""Within 48 hours of a therapist's own message: what is clear is read as ever, the rest goes to her inbox unasked."""

import pytest

from reminders.flows import page
from reminders.store.tables import Client, ClinicNote, ExerciseSession, Hold, Question
from tests.clinic import World
from tests.flows.hearing import answers, couple, reminded


def let_therapist_write(world: World, client_id: int) -> None:
    """Note that a therapist wrote to her just now; an hour passes."""
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        client.staff_wrote_at = world.now
    world.pass_time(hours=1)


def submit(world: World, client_id: int, done: str, words: str = "") -> None:
    with world.db.begin() as tx:
        session = tx.get(ExerciseSession, world.sessions(client_id)[0].id)
        assert session is not None
        page.submit(tx, session, done, None, words, "1", world.now)


@pytest.mark.parametrize("text", ["I fell", "Chest hurts", "No. Fainted", "stopped, chest pain", "quiero morir"])
def test_danger_in_few_words_alerts_holds_and_is_answered(world: World, text: str) -> None:
    ana = reminded(world)
    let_therapist_write(world, ana)

    world.hear(text)

    assert len(world.alerts(ana)) == 1
    assert len(world.rows(Hold, client_id=ana)) == 1
    assert [row.kind for row in answers(world)] == ["danger"]
    assert [note.kind for note in world.rows(ClinicNote)] == ["written"]
    assert world.rows(Question) == []


def test_a_page_with_danger_words_is_judged(world: World) -> None:
    ana = reminded(world)
    let_therapist_write(world, ana)

    submit(world, ana, "some", "I fell")

    assert [one.rule for one in world.alerts(ana)] == ["fall_or_injury"]


def test_a_page_is_a_report_however_little_it_says(world: World) -> None:
    ana = reminded(world)
    let_therapist_write(world, ana)

    submit(world, ana, "all")

    assert world.sessions(ana)[0].state == "done"


def test_on_a_shared_phone_it_goes_to_the_inbox_and_nobody_is_asked_whose_it_is(world: World) -> None:
    ana, _ = couple(world)
    let_therapist_write(world, ana)

    world.hear("yes that would be good")

    assert [(note.kind, note.client_id) for note in world.rows(ClinicNote)] == [("written", ana)]
    assert answers(world) == []
    assert world.rows(Question) == []


def test_whose_a_clear_report_is_may_still_be_asked_on_a_shared_phone(world: World) -> None:
    ana, _ = couple(world)
    let_therapist_write(world, ana)

    world.hear("done 2x10 pain 2")

    assert [(note.kind, note.client_id) for note in world.rows(ClinicNote)] == [("written", ana)]
    assert [one.kind for one in world.rows(Question)] == ["who"]
