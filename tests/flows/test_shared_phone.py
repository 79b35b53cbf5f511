"""A phone that several clients share: danger is everyone's until it is known whose, each clinic hears of its own."""

from sqlmodel import col, select

from reminders.store.tables import Client, ClinicNote, ConsentEvent, Staff
from tests.clinic import BEN, CLEO, World
from tests.flows.hearing import couple


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

    assert [(note.clinic_id, note.kind) for note in world.rows(ClinicNote)] == [(1, "unclear"), (2, "unclear")]


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
