"""Consent: what closes an address, what opens it, and what may still be answered there."""

from datetime import timedelta

import pytest

from reminders.core.kinds import kind_of
from reminders.flows import consent, receive
from reminders.store.tables import Client, ClinicNote, ConsentEvent, Contact, Outbound, Question
from tests.clinic import ANA, World
from tests.flows.hearing import answers, inbound, keep, reminded, templates

STOPS = [
    "STOP",
    "stop please",
    "Please stop texting me",
    "unsubscribe",
    "no quiero más mensajes",
    "take me off your list",
]


def contact(world: World, kind: str = "sms") -> Contact:
    return world.rows(Contact, kind=kind)[0]


def couple(world: World) -> tuple[int, int]:
    """Enrol Ana and Hugo on one phone, with a session of each today."""
    ana = world.enrol("Ana Ruiz", holder="shared")
    hugo = reminded(world, name="Hugo Ruiz", holder="shared")
    return ana, hugo


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


def test_a_stop_from_a_shared_phone_closes_it_for_all_and_each_therapist_hears(world: World) -> None:
    ana, hugo = couple(world)

    world.hear("STOP")

    assert {one.consent for one in world.rows(Contact)} == {"closed"}
    assert {note.client_id for note in world.rows(ClinicNote)} == {ana, hugo}
    assert world.rows(ConsentEvent)[-1].client_id is None
    assert templates(world) == ["stopped"]


def test_a_stop_that_names_one_person_is_hers_alone(world: World) -> None:
    ana, hugo = couple(world)

    world.hear("stop texting Hugo")

    states = {one.client_id: one.consent for one in world.rows(Contact)}
    assert states == {ana: "open", hugo: "closed"}
    assert world.client(ana).state == "active"


def test_start_from_a_shared_phone_asks_whose_and_opens_those_named(world: World) -> None:
    ana, hugo = couple(world)
    world.hear("STOP")
    world.pass_time(minutes=5)

    world.hear("START")
    assert templates(world)[-1] == "ask_who_start"
    assert {one.consent for one in world.rows(Contact)} == {"closed"}

    world.pass_time(minutes=1)
    world.hear("Ana")
    states = {one.client_id: one.consent for one in world.rows(Contact)}
    assert states == {ana: "open", hugo: "closed"}


def test_a_wrong_number_is_closed_and_the_clinic_hears_what_had_gone_there(world: World) -> None:
    ana = reminded(world)
    world.hear("Y1")
    world.send()
    world.now += timedelta(days=2)
    world.plan()
    world.send()

    world.hear("You have the wrong number")

    assert contact(world).consent == "closed"
    assert templates(world)[-1] == "wrong_number"
    note = world.rows(ClinicNote)[-1]
    assert note.details["what"] == "wrong number"
    assert [sent["kind"] for sent in note.details["since_sure"]] == ["thanks", "reminder"]
    assert world.client(ana).state == "opted_out"


def test_a_discharged_client_is_not_started_again_by_text(world: World) -> None:
    ana = reminded(world)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        client.state, client.closed_reason = "closed", "goals met"

    world.hear("START")

    assert world.client(ana).state == "closed"
    assert world.rows(ClinicNote)[-1].details["what"] == "START after discharge"


def test_danger_words_of_a_discharged_client_are_heard(world: World) -> None:
    ana = reminded(world)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        client.state, client.closed_reason = "closed", "goals met"

    world.hear("I fell and hit my head")

    assert len(world.alerts(ana)) == 1
    assert [row.kind for row in answers(world)] == ["danger"]


def test_one_click_closes_a_mail_address_once(world: World) -> None:
    ana = reminded(world, email="ana@example.org", channel="sms+email")
    mail = contact(world, "email")

    for _ in range(2):
        with world.db.begin() as tx:
            found = tx.get(Contact, mail.id)
            assert found is not None
            consent.unsubscribe(tx, found, world.now)

    assert contact(world, "email").consent == "closed"
    assert contact(world).consent == "open"
    assert world.client(ana).state == "active"
    assert [one.how for one in world.rows(ConsentEvent) if one.change == "withdrawn"] == ["one-click"]


def test_any_sensible_reply_confirms_a_contact(world: World) -> None:
    reminded(world, confirmed=False)
    assert contact(world).confirmed_at is None

    world.hear("qwer asdf")
    assert contact(world).confirmed_at is None

    world.hear("Y2")
    assert contact(world).confirmed_at is not None
    assert contact(world).reminders_unconfirmed == 0


def test_a_stranger_who_opts_out_is_kept_as_closed(world: World) -> None:
    stranger = "+12025550177"

    world.hear("STOP", stranger)

    assert [(one.address, one.change) for one in world.rows(ConsentEvent)] == [(stranger, "withdrawn")]
    assert world.rows(Outbound, to=stranger) == []


def test_nothing_that_needs_consent_is_ever_queued_for_a_closed_address(world: World) -> None:
    reminded(world)
    world.hear("STOP")
    for text in ("Y3", "pause please", "hello", "I am back", "send it again", "what?", "5", "asdf", "qwer"):
        world.pass_time(minutes=3)
        world.hear(text)

    waiting = [row for row in world.queued() if row.to == ANA and row.state == "waiting"]
    assert [row.kind for row in waiting if kind_of(row.kind).needs_consent] == []
    assert world.rows(Question, closed_at=None) == []


def test_start_ends_a_pause_where_nothing_was_closed(world: World) -> None:
    from reminders.store.tables import Pause

    ana = reminded(world)
    world.hear("please pause")
    world.pass_time(minutes=3)

    world.hear("START")

    assert world.rows(Pause, client_id=ana)[0].ended_at is not None
    assert templates(world)[-1] == "said_back_resume"


def test_at_a_closed_address_a_rating_at_the_stop_level_alerts_and_answers_nothing(world: World) -> None:
    ana = reminded(world)
    world.hear("STOP")

    world.hear("done pain 7")

    assert [one.rule for one in world.alerts(ana)] == ["pain_up"]
    assert templates(world) == ["stopped"]


def test_a_second_stop_with_danger_on_one_day_still_confirms_nothing_twice(world: World) -> None:
    reminded(world)
    world.hear("I have chest pain")
    world.pass_time(minutes=5)

    world.hear("stop, I fell and hit my head")

    assert contact(world).consent == "closed"
    assert [row.kind for row in answers(world)] == ["danger", "stopped"]


def test_one_click_soon_after_a_pain_text_may_have_meant_the_exercises(world: World) -> None:
    ana = reminded(world, email="ana@example.org", channel="sms+email")
    world.hear("done pain 7")

    with world.db.begin() as tx:
        found = tx.get(Contact, contact(world, "email").id)
        assert found is not None
        consent.unsubscribe(tx, found, world.now)

    assert "opt_out_after_pain" in {one.rule for one in world.alerts(ana)}


def test_a_name_with_danger_words_after_whose_is_it_is_judged_too(world: World) -> None:
    ana, hugo = couple(world)
    world.hear("done pain 2")
    world.pass_time(minutes=2)

    world.hear("Hugo, he fell and hit his head")

    assert [one.level for one in world.alerts(hugo)] == ["urgent"]
    assert world.alerts(ana) == []
    assert world.sessions(hugo)[0].pain == 2


def test_any_reply_confirms_a_shared_phone_for_all_on_it(world: World) -> None:
    couple(world)

    world.hear("done pain 2")

    assert all(one.confirmed_at is not None for one in world.rows(Contact))


def test_thanks_from_a_shared_phone_ask_nothing_and_help_is_for_all(world: World) -> None:
    couple(world)

    world.hear("thank you")
    world.hear("HELP")

    assert templates(world) == ["help"]


def test_a_discharged_client_is_asked_nothing(world: World) -> None:
    ana = reminded(world)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        client.state = "closed"

    world.hear("done")

    assert world.rows(Question) == []
