"""Consent: what closes an address, what opens it, and what may still be answered there."""

import pytest

from reminders.flows import receive
from reminders.store.tables import ClinicNote, ConsentEvent
from tests.clinic import ANA, World
from tests.flows.hearing import answers, contact, inbound, keep, reminded, templates

STOPS = [
    "STOP",
    "stop please",
    "Please stop texting me",
    "unsubscribe",
    "no quiero más mensajes",
    "take me off your list",
]


@pytest.mark.parametrize("text", STOPS)
def test_an_opt_out_in_any_words_closes_the_address(world: World, text: str) -> None:
    ana = reminded(world)

    world.hear(text)

    assert contact(world).consent == "closed"
    assert world.client(ana).state == "opted_out"
    assert templates(world) == ["stopped"]
    assert [one.state for one in world.sessions(ana)] == ["reminded"]
    event = world.rows(ConsentEvent)[-1]
    assert (event.change, event.address, event.by) == ("withdrawn", ANA, "client")


def test_what_waits_is_taken_back_with_the_stop(world: World) -> None:
    reminded(world)
    assert [row.kind for row in world.queued() if row.state == "waiting"] == ["evening"]

    world.hear("STOP")

    assert [row.kind for row in world.queued() if row.state == "waiting"] == ["stopped"]


def test_the_providers_own_confirmation_is_not_doubled(world: World) -> None:
    reminded(world)
    keep(world, inbound("STOP", "SM1", world, opt_out_type="STOP"))

    receive.handle_waiting(world.db, world.now)

    assert answers(world) == []
    assert contact(world).provider_blocked


@pytest.mark.parametrize("text", ["C2", "Reply", "FIN"])
def test_a_stop_that_only_the_provider_understood_closes_the_address(world: World, text: str) -> None:
    ana = reminded(world)
    keep(world, inbound(text, "SM1", world, opt_out_type="STOP"))

    receive.handle_waiting(world.db, world.now)

    assert (contact(world).consent, contact(world).provider_blocked) == ("closed", True)
    assert world.client(ana).state == "opted_out"
    assert world.rows(ConsentEvent)[-1].how == "STOP"
    assert answers(world) == []


def test_a_strangers_stop_that_only_the_provider_understood_is_kept(world: World) -> None:
    keep(world, inbound("C2", "SM1", world, address="+12025550177", opt_out_type="STOP"))

    receive.handle_waiting(world.db, world.now)

    assert [(one.address, one.change) for one in world.rows(ConsentEvent)] == [("+12025550177", "withdrawn")]


def test_there_is_one_confirmation_at_most(world: World) -> None:
    reminded(world)

    for _ in range(3):
        world.hear("STOP")
        world.pass_time(minutes=5)

    assert templates(world) == ["stopped"]


def test_from_a_closed_address_only_help_and_one_danger_answer_a_day_are_given(world: World) -> None:
    ana = reminded(world)
    world.hear("STOP")
    world.pass_time(days=3)
    before = len(answers(world))

    for text in ("done pain 2", "can I use a chair?", "HELP", "I fell and hit my head"):
        world.hear(text)
        world.pass_time(minutes=5)
    world.hear("I have chest pain")

    assert [row.kind for row in answers(world)[before:]] == ["help", "danger"]
    assert len({one.rule for one in world.alerts(ana)}) == 2
    assert len(world.reports(ana)) >= 3


def test_another_day_brings_another_danger_answer(world: World) -> None:
    reminded(world)
    world.hear("STOP")
    world.hear("I fell and hit my head")
    world.pass_time(days=1)

    world.hear("I have chest pain")

    assert [row.kind for row in answers(world)] == ["stopped", "danger", "danger"]


def test_stop_i_fell_gets_one_answer_that_does_both(world: World) -> None:
    ana = reminded(world)

    world.hear("Stop texting me, I fell and hit my head")

    assert [row.kind for row in answers(world)] == ["danger"]
    said = [part["text"] for part in answers(world)[0].details["parts"]]
    assert said[-1] == "stopped_too"
    assert contact(world).consent == "closed"
    assert any(one.level == "urgent" for one in world.alerts(ana))


def test_what_she_reports_beside_her_stop_is_kept_and_judged(world: World) -> None:
    ana = reminded(world)

    world.hear("All done 2x10, pain 7. And please stop texting me")

    session = world.sessions(ana)[0]
    assert (session.completed, session.pain) == ("all", 7)
    assert contact(world).consent == "closed"
    assert templates(world) == ["stopped"]
    assert "pain_up" in {one.rule for one in world.alerts(ana)}


def test_a_stop_soon_after_a_pain_text_may_have_meant_the_exercises(world: World) -> None:
    ana = reminded(world)
    world.hear("done pain 7")
    world.pass_time(hours=40)

    world.hear("stop")

    assert contact(world).consent == "closed"
    assert "opt_out_after_pain" in {one.rule for one in world.alerts(ana)}


def test_a_stop_long_after_is_only_a_stop(world: World) -> None:
    ana = reminded(world)
    world.hear("done pain 7")
    world.pass_time(hours=49)

    world.hear("stop")

    assert "opt_out_after_pain" not in {one.rule for one in world.alerts(ana)}


@pytest.mark.parametrize(("text", "mail"), {"STOP": "open", "Stop texting me and no more emails": "closed"}.items())
def test_a_stop_by_text_leaves_mail_alone_unless_she_says_all(world: World, text: str, mail: str) -> None:
    ana = reminded(world, email="ana@example.org", channel="sms+email")

    world.hear(text)

    assert contact(world).consent == "closed"
    assert contact(world, "email").consent == mail
    assert world.client(ana).state == ("active" if mail == "open" else "opted_out")


def test_only_an_opt_in_from_the_address_opens_it_again(world: World) -> None:
    ana = reminded(world)
    world.hear("STOP")
    world.pass_time(minutes=5)

    world.hear("yes")
    assert contact(world).consent == "closed"

    world.hear("START")
    assert contact(world).consent == "open"
    assert world.client(ana).state == "active"
    assert templates(world)[-1] == "started"
    assert [one.state for one in world.sessions(ana)][-1] == "planned"
    assert [one.change for one in world.rows(ConsentEvent)] == ["given", "withdrawn", "restored"]


def test_where_the_provider_still_blocks_the_desk_is_told_to_have_her_text_start(world: World) -> None:
    reminded(world)
    world.hear("STOP")
    world.pass_time(minutes=5)

    world.hear("please sign me up again")

    assert contact(world).consent == "open"
    assert "must text START" in [note.details.get("what") for note in world.rows(ClinicNote)]


def test_a_first_start_makes_an_invited_client_active_and_welcomes_her(world: World) -> None:
    ana = world.enrol(consent_on="", consent_how="")
    assert world.client(ana).state == "invited"

    world.hear("START")

    assert world.client(ana).state == "active"
    assert [row.kind for row in world.queued()] == ["welcome"]
    assert [one.state for one in world.sessions(ana)] == ["planned"]


def test_nothing_at_all_goes_to_an_invited_client_but_danger_is_judged(world: World) -> None:
    ana = world.enrol(consent_on="", consent_how="")

    world.hear("done pain 3")
    assert [row for row in world.queued() if row.to == ANA] == []

    world.hear("I fell and hit my head")
    assert len(world.alerts(ana)) == 1
