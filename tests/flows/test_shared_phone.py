"""A phone that several clients share: danger is everyone's until it is known whose, each clinic hears of its own."""

import pytest
from sqlmodel import col, select

from reminders.flows import questions, receive
from reminders.store.tables import Client, ClinicNote, ConsentEvent, Hold, Question, Staff
from tests.clinic import ANA, BEN, CLEO, World
from tests.flows.hearing import couple, templates


def two_clinics(world: World) -> tuple[int, int]:
    """Enrol Ana with Ben and Hugo with Cleo of another clinic, on one phone."""
    ana, hugo = couple(world)
    with world.db.begin() as tx:
        cleo = tx.exec(select(Staff).where(col(Staff.mobile) == CLEO)).one()
        client = tx.get(Client, hugo)
        assert client is not None
        client.clinic_id, client.therapist_id = cleo.clinic_id, cleo.id or 0
    return ana, hugo


def clinics(world: World, *client_ids: int) -> list[int]:
    return [one.clinic_id for client_id in client_ids for one in world.alerts(client_id)]


def test_a_sign_that_names_one_is_her_own_clinics_alert_which_her_therapist_acknowledges(world: World) -> None:
    ana, hugo = two_clinics(world)

    world.hear("Hugo here: I fell and hit my head")
    world.hear(f"ok {world.alerts(hugo)[0].number}", CLEO)

    assert clinics(world, ana, hugo) == [2]
    assert world.alerts(hugo)[0].acknowledged_by == "cleo@example.org"


def test_a_sign_without_a_name_alerts_each_in_her_own_clinic(world: World) -> None:
    ana, hugo = two_clinics(world)

    world.hear("I fell and hit my head")

    assert clinics(world, ana, hugo) == [1, 2]
    assert {row.to for row in world.queued("alert") if row.channel == "sms"} == {BEN, CLEO}


def test_words_that_name_one_reach_the_inbox_of_her_own_clinic_alone(world: World) -> None:
    _, hugo = two_clinics(world)

    world.hear("Hugo asks: can I use a chair for the squats?")

    assert [(note.clinic_id, note.client_id) for note in world.rows(ClinicNote)] == [(2, hugo)]


def test_words_of_nobody_known_reach_each_clinics_inbox(world: World) -> None:
    two_clinics(world)
    world.hear("done pain 2")
    world.pass_time(minutes=2)

    world.hear("flobber the green thing")

    notes = [(note.clinic_id, note.words) for note in world.rows(ClinicNote, kind="unclear")]
    assert notes == [(clinic, words) for words in ("done pain 2", "flobber the green thing") for clinic in (1, 2)]


def test_a_stop_soon_after_danger_alerts_each_in_her_own_clinic(world: World) -> None:
    ana, hugo = two_clinics(world)
    world.hear("I fell and hit my head")
    world.pass_time(minutes=5)

    world.hear("STOP")

    assert [(one.rule, one.clinic_id) for one in world.alerts(hugo)] == [
        ("fall_or_injury", 2),
        ("opt_out_after_pain", 2),
    ]
    assert clinics(world, ana) == [1, 1]


def test_a_start_that_names_one_is_kept_by_her_own_clinic(world: World) -> None:
    _, hugo = two_clinics(world)
    world.hear("STOP")
    world.pass_time(minutes=5)
    world.hear("START")
    world.pass_time(minutes=1)

    world.hear("Hugo")

    event = world.rows(ConsentEvent)[-1]
    assert (event.change, event.client_id, event.clinic_id) == ("restored", hugo, 2)


def ask(world: World, kind: str, client_id: int) -> None:
    """Let a question to one of them be open on their phone."""
    with world.db.begin() as tx:
        session_id = world.sessions(client_id)[0].id
        questions.ask(tx, kind, ANA, tx.get(Client, client_id), world.now, session_id=session_id)


def signs(world: World, *client_ids: int) -> list[list[str]]:
    """Return the rules of each one's alerts."""
    return [[one.rule for one in world.alerts(client_id)] for client_id in client_ids]


def test_a_sign_beside_the_answer_to_a_question_may_be_anybodys(world: World) -> None:
    ana, hugo = couple(world)
    ask(world, "pain", ana)

    world.hear("I fell on the stairs, pain 9")

    assert signs(world, ana, hugo) == [["fall_or_injury", "severe_pain"]] * 2
    assert all(one.one_of_two for one in world.alerts())
    assert {hold.client_id for hold in world.rows(Hold)} == {ana, hugo}


@pytest.mark.parametrize(
    ("asked", "text", "rule"), [("pain", "9", "severe_pain"), ("falls", "fell 2 times", "fall_or_injury")]
)
def test_a_sign_that_is_itself_what_was_asked_is_hers(world: World, asked: str, text: str, rule: str) -> None:
    ana, hugo = couple(world)
    ask(world, asked, ana)

    world.hear(text)

    assert rule in signs(world, ana)[0]
    assert signs(world, hugo) == [[]]


def test_beside_a_danger_answer_nobody_is_asked_whose_it_was(world: World) -> None:
    ana, hugo = couple(world)

    world.hear("I fell and hit my head")
    assert world.rows(Question) == []
    world.pass_time(minutes=3)
    world.hear("Hugo here, done 2x10 pain 1")
    world.pass_time(minutes=1)
    receive.handle_waiting(world.db, world.now)

    assert signs(world, ana, hugo) == [["fall_or_injury"]] * 2
    assert all(one.one_of_two for one in world.alerts())
    assert world.sessions(hugo)[0].pain == 1
    assert "ask_who" not in templates(world)


def test_a_danger_sign_leaves_open_whose_an_earlier_report_was(world: World) -> None:
    ana, hugo = couple(world)
    world.hear("done pain 2")
    world.pass_time(minutes=2)
    world.hear("I fell and hit my head")
    world.pass_time(minutes=2)

    world.hear("Hugo")
    receive.handle_waiting(world.db, world.now)

    assert world.sessions(hugo)[0].pain == 2
    assert signs(world, ana, hugo) == [["fall_or_injury"]] * 2


def test_when_all_on_the_phone_are_held_nobody_is_asked_and_each_clinic_reads_the_words(world: World) -> None:
    couple(world)
    world.hear("I fell and hit my head")
    world.pass_time(minutes=5)

    world.hear("feeling a bit better now")
    world.pass_time(minutes=5)
    world.hear("pain is 3 now")

    assert world.rows(Question) == []
    assert [note.words for note in world.rows(ClinicNote)] == ["feeling a bit better now", "pain is 3 now"]
