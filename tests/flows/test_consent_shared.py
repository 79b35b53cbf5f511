"""Consent on shared phones, wrong numbers, discharged clients, one click, and strangers."""

from datetime import timedelta

import pytest

from reminders.core.kinds import kind_of
from reminders.flows import consent
from reminders.store.tables import Client, ClinicNote, ConsentEvent, Contact, Outbound, Question
from tests.clinic import ANA, World
from tests.flows.hearing import answers, contact, couple, reminded, templates


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


def test_both_open_it_for_both(world: World) -> None:
    ana, hugo = couple(world)
    world.hear("STOP")
    world.pass_time(minutes=5)
    world.hear("START")
    world.pass_time(minutes=1)

    world.hear("both")

    assert {one.client_id: one.consent for one in world.rows(Contact)} == {ana: "open", hugo: "open"}


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


@pytest.mark.parametrize("text", ["done, pain 3", "I have a fever of 103", "what is this?"])
def test_after_a_stop_by_name_what_the_others_text_is_still_answered(world: World, text: str) -> None:
    world.enrol("Ana Ruiz", holder="shared", email="ana@example.org", channel="sms+email")
    world.enrol("Bo Ruiz", holder="shared")
    reminded(world, name="Cy Ruiz", holder="shared")
    world.hear("Stop Ana")
    world.send()
    world.pass_time(hours=1)
    world.sms.sent.clear()

    world.hear(text)
    world.send()

    assert [one for one in world.sms.sent if one.to == ANA and one.key.startswith("answer")]
