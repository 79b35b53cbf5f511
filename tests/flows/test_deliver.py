"""Claiming, handing over and settling: once each, in order, and only while it may go."""

from datetime import UTC, datetime, timedelta

import pytest

from reminders.core.schedule import local_date
from reminders.errors import SendError
from reminders.flows import deliver
from reminders.flows.hold import open_hold
from reminders.flows.say import tell_client
from reminders.store.clients import the_clinic
from reminders.store.tables import Attempt, Client, ClinicNote, Contact, Outbound
from tests.clinic import ANA, BEN, World

WEDNESDAY_HOUR = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)


def remind(world: World, **columns: str) -> int:
    """Enrol Ana, send the welcome, and plan Wednesday's reminder."""
    ana = world.enrol(**columns)
    world.send()
    world.sms.sent.clear()
    world.email.sent.clear()
    world.now = WEDNESDAY_HOUR
    world.plan()
    return ana


def test_a_reminder_goes_once_and_its_session_is_reminded(world: World) -> None:
    ana = remind(world)

    assert world.send().sent == 1
    assert world.send().sent == 0

    assert [one.to for one in world.sms.sent] == [ANA]
    assert world.sms.sent[0].body.startswith("Ana, your exercises today: A sit to stand 10 times;")
    assert world.sessions(ana)[0].state == "reminded"
    assert [(one.number, one.outcome) for one in world.rows(Attempt)][-1] == (1, "accepted")


def test_a_session_keeps_the_lines_that_its_reminder_showed(world: World) -> None:
    ana = remind(world)
    world.send()

    session = world.sessions(ana)[0]

    assert [(one["letter"], one["code"]) for one in session.items][:2] == [("A", "sit-to-stand"), ("B", "hip-hinge")]
    assert session.program_id is not None


def test_a_hold_that_opens_after_planning_stops_the_reminder(world: World) -> None:
    ana = remind(world)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        open_hold(tx, client, "therapist", "ben@example.org", world.now)

    world.send()

    assert not [one for one in world.sms.sent if "exercises today" in one.body]
    assert world.sessions(ana)[0].state == "held"


def test_consent_that_ends_after_the_claim_is_read_again_before_the_call(world: World) -> None:
    remind(world)
    claims, _, _ = deliver.claim(world.sender)
    with world.db.begin() as tx:
        contact = tx.get(Contact, 1)
        assert contact is not None
        contact.consent = "closed"
        tx.add(contact)

    deliver.hand_over(world.sender, claims)

    assert not world.sms.sent
    assert world.queued("reminder")[0].state == "withdrawn"


def test_a_failure_that_may_pass_is_tried_again_later(world: World) -> None:
    remind(world)
    world.sms.errors.append(SendError("busy", code="20429", retry_after=120.0))

    world.send()
    world.pass_time(seconds=119)
    world.send()
    assert not world.sms.sent

    world.pass_time(seconds=2)
    world.send()
    assert len(world.sms.sent) == 1
    assert [one.outcome for one in world.rows(Attempt)][-2:] == ["retry", "accepted"]


def test_a_number_that_cannot_be_texted_is_marked_and_the_desk_is_told(world: World) -> None:
    ana = remind(world)
    world.sms.errors.append(SendError("landline", permanent=True, code="30006"))

    assert world.send().failed == 1

    assert world.rows(Contact, client_id=ana)[0].unusable == "30006"
    assert "address unusable" in [one.words for one in world.rows(ClinicNote, client_id=ana)]
    assert world.sessions(ana)[0].state == "unsent"
    assert [(one.rule, one.level) for one in world.alerts(ana)] == [("unreachable", "routine")]


def test_a_failed_text_goes_by_mail_when_she_agreed_to_mail(world: World) -> None:
    ana = remind(world, email="ana@example.org", channel="sms")
    world.sms.errors.append(SendError("landline", permanent=True, code="30006"))

    world.send()

    assert [one.to for one in world.email.sent] == ["ana@example.org"]
    assert world.sessions(ana)[0].state == "reminded"
    assert not world.alerts(ana)


def test_a_refused_sender_is_told_to_the_operator_once(world: World) -> None:
    remind(world)
    world.enrol("Bea Lind", "+12025550102")
    world.sms.errors += [SendError("unregistered", permanent=True, code="30034")] * 2

    world.send()

    assert len(world.queued("operator")) == 1


def test_an_attempt_that_was_cut_off_is_looked_up_and_never_simply_sent_again(world: World) -> None:
    ana = remind(world)
    world.sms.keeps_unknown = True
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()
    assert world.queued("reminder")[0].state == "unknown"

    world.pass_time(seconds=119)
    world.send()
    assert world.queued("reminder")[0].state == "unknown"
    world.pass_time(seconds=2)
    world.send()

    assert world.queued("reminder")[0].state == "accepted"
    assert len(world.sms.sent) == 1
    assert world.sessions(ana)[0].state == "reminded"


def test_only_the_third_not_found_allows_another_send(world: World) -> None:
    remind(world)
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()

    for minutes, sent in ((2, 0), (3, 0), (5, 1)):
        world.pass_time(minutes=minutes, seconds=1)
        world.send()
        assert len(world.sms.sent) == sent


def test_a_claim_whose_worker_died_is_taken_over_after_its_lease(world: World) -> None:
    remind(world)
    claims, _, _ = deliver.claim(world.sender)
    assert len(claims) == 1

    world.pass_time(seconds=89)
    world.send()
    assert world.queued("reminder")[0].state == "claimed"
    world.pass_time(seconds=2)
    world.send()
    assert world.queued("reminder")[0].state == "unknown"


def test_a_reminder_that_waited_past_its_hour_expires(world: World) -> None:
    ana = remind(world)
    world.now = WEDNESDAY_HOUR + timedelta(hours=4, seconds=1)

    world.send()

    assert world.queued("reminder")[0].state == "expired"
    assert world.sessions(ana)[0].state == "unsent"


def test_the_provider_may_try_until_the_reminder_expires(world: World) -> None:
    remind(world)
    world.pass_time(minutes=30)

    world.send()

    assert world.sms.sent[0].valid_seconds == int(timedelta(hours=3, minutes=30).total_seconds())


@pytest.mark.parametrize("hour", [11, 25])
def test_nothing_that_the_service_begins_goes_outside_the_window(world: World, hour: int) -> None:
    world.now = datetime(2027, 3, 1, tzinfo=UTC) + timedelta(hours=hour)  # 6:00 and 20:00 in New York
    world.enrol()

    world.send()

    assert not world.sms.sent
    assert world.queued("welcome")[0].state == "waiting"


def test_a_third_text_a_day_that_the_service_begins_waits_for_tomorrow(world: World) -> None:
    ana = world.enrol()
    with world.db.begin() as tx:
        for number in range(3):
            tx.add(
                Outbound(
                    key=f"therapist_note:{ana}:{number}:1",
                    clinic_id=1,
                    client_id=ana,
                    contact_id=1,
                    kind="therapist_note",
                    channel="sms",
                    to=ANA,
                    template="operator",
                    details={"what": "a word"},
                    order_full=2,
                    due_at=world.now,
                    created_at=world.now,
                    time_zone="America/New_York",
                    window_from="08:00",
                    window_until="20:00",
                )
            )

    world.send()
    assert len(world.sms.sent) == 2
    world.pass_time(days=1)
    world.send()

    assert len(world.sms.sent) == 4


def test_urgent_goes_before_answers_and_answers_before_reminders(world: World) -> None:
    ana = remind(world)
    with world.db.begin() as tx:
        for kind, priority in (("thanks", 1), ("danger", 0)):
            tx.add(
                Outbound(
                    key=f"answer:9:{kind}",
                    clinic_id=1,
                    client_id=ana,
                    contact_id=1,
                    kind=kind,
                    channel="sms",
                    to=ANA,
                    template="operator",
                    details={"what": kind},
                    priority=priority,
                    due_at=world.now,
                    created_at=world.now,
                )
            )

    world.send()

    assert [one.key for one in world.sms.sent] == ["answer:9:danger", "answer:9:thanks", f"reminder:{ana}:2027-03-03:1"]


def test_questions_and_prompts_never_take_a_coming_reminders_place(world: World) -> None:
    """Three reminders a week and a cap of five leave two places in any seven local days."""
    ana = remind(world)
    for day in range(21):
        world.now = WEDNESDAY_HOUR + timedelta(days=day, minutes=5)
        world.plan()
        with world.db.begin() as tx:
            client = tx.get(Client, ana)
            assert client is not None
            clinic = the_clinic(tx, client.clinic_id)
            details = {"what": "a question"}
            tell_client(tx, clinic, client, "question", "operator", details, world.now, lambda _, d=day: f"q:{d}")
        world.send()
        world.pass_time(hours=11)
        world.send()

    states = [one.state for one in world.sessions(ana) if one.on_date <= local_date(world.now, "America/New_York")]
    assert len(states) == 9
    assert set(states) == {"reminded"}
    begun = [one for one in world.queued() if one.order_full > 0 and one.state == "accepted"]
    dates = [local_date(one.claimed_at, "America/New_York") for one in begun if one.claimed_at]
    assert max(sum(day - timedelta(days=7) < one <= day for one in dates) for day in dates) == 5
    assert max(dates.count(day) for day in dates) == 2


def test_a_message_whose_words_cannot_be_written_fails_and_holds_up_no_other(world: World) -> None:
    ana = remind(world)
    with world.db.begin() as tx:
        tx.add(
            Outbound(
                key="bare", clinic_id=1, staff_id=1, kind="alert", channel="sms", to=BEN, template="alert",
                priority=0, due_at=world.now, created_at=world.now,
            )
        )  # fmt: skip

    world.send()

    (bare,) = world.rows(Outbound, key="bare")
    assert (bare.state, bare.code) == ("failed", "no words")
    assert [one.to for one in world.sms.sent] == [ANA]
    assert world.sessions(ana)[0].state == "reminded"
    assert [one.details["code"] for one in world.rows(ClinicNote, kind="operator")] == ["no words"]
