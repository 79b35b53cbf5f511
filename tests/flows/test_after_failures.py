"""What a session becomes when its reminder fails, or arrives, after all seemed settled."""

from datetime import UTC, datetime, timedelta
from typing import Any

from reminders.core.channel import StatusReport
from reminders.errors import CannotSay, SendError
from reminders.flows import care, delivery_status, unknown
from reminders.flows.say import tell_client
from reminders.store.clients import the_clinic
from reminders.store.tables import Client, Contact, Outbound
from tests.clinic import ANA, World
from tests.flows.failing import Failing
from tests.flows.rounds import go

HOUR = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)


def due(world: World, **columns: Any) -> int:
    """Enrol Ana, welcome her, and come to her hour on Wednesday with the reminder planned."""
    ana = world.enrol(**{"email": "ana@example.org", "channel": "sms", **columns})
    world.send()
    world.sms.sent.clear()
    world.email.sent.clear()
    world.now = HOUR
    world.plan()
    return ana


def text(world: World) -> Outbound:
    return next(row for row in world.queued("reminder") if row.channel == "sms")


def called_back(world: World, status: str, code: str = "", receipt: str = "") -> None:
    row = text(world)
    report = StatusReport(receipt or row.receipt, status, code, ANA, row.id or 0, 1, b"")
    with world.db.begin() as tx:
        delivery_status.record(tx, report, world.now)


def test_a_text_that_fails_when_it_is_too_late_for_the_mail_leaves_the_session_unsent(world: World) -> None:
    ana = due(world)
    world.send()
    world.now = HOUR + timedelta(hours=4, seconds=5)

    called_back(world, "undelivered", "30003")

    assert [row.channel for row in world.queued("reminder")] == ["sms"]
    assert world.sessions(ana)[0].state == "unsent"


def test_a_mail_that_was_withdrawn_carries_no_reminder(world: World) -> None:
    ana = due(world, channel="sms+email")
    mail = next(row for row in world.queued("reminder") if row.channel == "email")
    with world.db.begin() as tx:
        tx.get_one(Contact, mail.contact_id).consent = "closed"
    world.send()

    called_back(world, "undelivered", "30005")

    assert world.sessions(ana)[0].state == "unsent"


def test_a_failed_text_whose_mail_is_refused_leaves_the_session_unsent(world: World) -> None:
    ana = due(world)
    world.send()
    called_back(world, "undelivered", "30003")
    assert world.sessions(ana)[0].state == "reminded"
    world.email.errors = [SendError("no such user", permanent=True, code="smtp:550 5.1.1")]

    world.send()

    assert world.sessions(ana)[0].state == "unsent"


def test_a_text_that_arrives_after_it_had_failed_makes_the_session_reminded(world: World) -> None:
    ana = due(world, email="")
    world.send()
    called_back(world, "undelivered", "30008")
    assert world.sessions(ana)[0].state == "unsent"

    called_back(world, "delivered")

    assert (text(world).state, world.sessions(ana)[0].state) == ("delivered", "reminded")


def test_a_text_that_arrives_after_it_was_given_up_makes_the_session_reminded(world: World) -> None:
    ana = due(world, email="")
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()
    world.now = HOUR + timedelta(hours=4, minutes=1)
    unknown.settle(world.db, {"sms": Failing(world, CannotSay("down"))}, world.clock)
    assert (text(world).state, world.sessions(ana)[0].state) == ("expired", "unsent")

    called_back(world, "delivered", receipt="SM1")

    assert (text(world).state, world.sessions(ana)[0].state) == ("delivered", "reminded")


def test_a_failed_text_does_not_double_the_mail_that_goes_anyway(world: World) -> None:
    ana = due(world, channel="sms+email")
    go(world)
    world.email.sent.clear()
    with world.db.begin() as tx:
        client = tx.get_one(Client, ana)
        clinic, said = the_clinic(tx, client.clinic_id), {"words": "hi", "writer": "Ben"}
        tell_client(tx, clinic, client, "therapist_note", "therapist_note", said, world.now, lambda to: f"n:{to}")
    world.sms.errors.append(SendError("filtered", permanent=True, code="30007"))

    world.send()

    assert [one.to for one in world.email.sent if one.to != "operator"] == ["ana@example.org"]


def eased(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        care.ease(tx, tx.get_one(Client, ana), "ben@example.org", world.now)
        tx.get_one(Client, ana).news = {"name": "back", "values": {}}


def test_an_easy_day_stays_easy_when_its_mail_goes_after_the_text(world: World) -> None:
    ana = due(world, channel="sms+email")
    eased(world, ana)
    world.email.errors = [SendError("later", code="smtp:421")]
    world.send()
    world.pass_time(minutes=1)

    world.send()

    assert [row.state for row in world.queued("reminder")] == ["accepted", "accepted"]
    assert world.sessions(ana)[0].is_easy


def test_the_mail_that_stands_in_for_a_failed_text_tells_the_new_dose_too(world: World) -> None:
    ana = due(world)
    eased(world, ana)
    world.send()
    assert world.client(ana).news == {}
    called_back(world, "undelivered", "30003")

    world.send()

    mail = next(row for row in world.queued("reminder") if row.channel == "email")
    assert mail.details["rides"] == text(world).details["rides"]
    assert world.sessions(ana)[0].is_easy


def test_what_the_first_of_two_addresses_was_told_is_given_back_when_both_fail(world: World) -> None:
    ana = due(world, channel="sms+email")
    eased(world, ana)
    world.email.errors = [SendError("later", code="smtp:421")]
    world.send()
    called_back(world, "undelivered", "30003")
    world.email.errors = [SendError("no such user", permanent=True, code="smtp:550 5.1.1")]
    world.pass_time(minutes=1)

    world.send()

    client = world.client(ana)
    assert world.sessions(ana)[0].state == "unsent"
    assert (client.next_session_easy, client.news["name"]) == (True, "back")


def test_an_easy_day_and_a_new_dose_whose_reminder_never_came_ride_in_the_next(world: World) -> None:
    ana = due(world, email="")
    eased(world, ana)
    world.send()
    assert not world.client(ana).next_session_easy

    called_back(world, "undelivered", "30008")

    client = world.client(ana)
    assert (client.next_session_easy, client.easy_sessions_left, client.news["name"]) == (True, 0, "back")


def test_exercises_sent_again_before_the_hour_show_the_easy_day(world: World) -> None:
    ana = world.enrol()
    world.send()
    with world.db.begin() as tx:
        care.ease(tx, tx.get_one(Client, ana), "ben@example.org", world.now)
    world.now = HOUR - timedelta(hours=1)
    world.hear("send me the exercises again")
    world.send()
    early = world.sessions(ana)[0].items

    world.now = HOUR
    go(world)

    assert world.sessions(ana)[0].is_easy
    assert early == world.sessions(ana)[0].items
