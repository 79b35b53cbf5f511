"""Commands from a staff member's own phone."""

import pytest
from sqlmodel import col, select

from reminders.flows import claiming, deliver, receive
from reminders.flows.staff_line import is_command
from reminders.store.tables import Contact, Outbound, Staff
from tests.clinic import BEN, DEE, World
from tests.flows.hearing import inbound, keep, reminded

COMMANDS = {
    "ok 12": True,
    "OK12": True,
    "ok #12.": True,
    "ok": True,
    "Okay!": True,
    "STOP": True,
    "help": True,
    "start": True,
    "ok then": False,
    "12": False,
    "please stop": False,
    "": False,
}


@pytest.mark.parametrize(("text", "expected"), COMMANDS.items(), ids=repr)
def test_a_command_is_one_and_nothing_else(text: str, expected: bool) -> None:
    assert is_command(text) is expected


def ben(world: World) -> Staff:
    found: Staff = world.rows(Staff, mobile=BEN)[0]
    return found


def said(world: World) -> list[str]:
    return [row.template for row in world.rows(Outbound, kind="staff_answer")]


def test_stop_from_a_staff_number_is_told_to_admins_and_lead_by_mail(world: World) -> None:
    world.hear("STOP", BEN)
    world.hear("STOP", BEN)

    assert ben(world).mobile_stopped_at == world.now
    assert said(world) == ["staff_stopped"]
    told = [(row.to, row.channel, row.details["who"]) for row in world.queued("desk")]
    assert sorted(told) == [("dee@example.org", "email", "Ben Ames"), ("fay@example.org", "email", "Ben Ames")]


def test_where_the_provider_confirms_a_stop_we_do_not(world: World) -> None:
    keep(world, inbound("STOP", "SM1", world, address=BEN, opt_out_type="STOP"))
    receive.handle_waiting(world.db, world.now)

    assert ben(world).mobile_stopped_at is not None
    assert said(world) == []


def test_start_brings_the_texts_back(world: World) -> None:
    world.hear("STOP", BEN)
    world.hear("START", BEN)

    assert ben(world).mobile_stopped_at is None
    assert said(world) == ["staff_stopped", "staff_started"]


def test_ok_alone_acknowledges_the_only_open_alert_that_is_hers(world: World) -> None:
    ana = reminded(world)
    world.hear("I fell and hit my head")

    world.hear("ok", BEN)

    assert world.alerts(ana)[0].acknowledged_how == "text"
    assert said(world) == ["staff_ok"]


def test_an_unknown_alert_number_is_said(world: World) -> None:
    world.hear("ok 99", BEN)

    assert said(world) == ["staff_ok_none"]


def test_stop_of_one_who_is_a_client_too_ends_both_with_one_confirmation(world: World) -> None:
    reminded(world, name="Ben Ames", mobile=BEN)

    world.hear("STOP", BEN)

    assert [one.consent for one in world.rows(Contact)] == ["closed"]
    assert ben(world).mobile_stopped_at is not None
    assert [(row.kind, row.template) for row in world.queued() if row.to == BEN and row.state == "waiting"] == [
        ("stopped", "stopped")
    ]


def test_start_of_one_who_is_a_client_too_brings_both_back(world: World) -> None:
    reminded(world, name="Ben Ames", mobile=BEN)
    world.hear("STOP", BEN)
    world.pass_time(minutes=5)

    world.hear("START", BEN)

    assert [one.consent for one in world.rows(Contact)] == ["open"]
    assert ben(world).mobile_stopped_at is None


@pytest.mark.parametrize("is_client", [True, False])
def test_a_stop_that_only_the_provider_understood_stops_texts_to_staff_too(world: World, is_client: bool) -> None:
    if is_client:
        reminded(world, name="Ben Ames", mobile=BEN)
    keep(world, inbound("Reply", "SM1", world, address=BEN, opt_out_type="STOP"))

    receive.handle_waiting(world.db, world.now)

    assert ben(world).mobile_stopped_at is not None
    assert {one.consent for one in world.rows(Contact)} <= {"closed"}
    assert said(world) == []


CLERK = "+12025550188"


@pytest.mark.parametrize(("role", "state"), [("records", "open"), ("admin", "open"), ("assistant", "acknowledged")])
def test_ok_with_a_number_is_for_those_who_care_for_clients(world: World, role: str, state: str) -> None:
    with world.db.begin() as tx:
        one = Staff(clinic_id=1, role=role, name="Rex Poe", email="rex@example.org", mobile=CLERK, created_at=world.now)
        tx.add(one)
    ana = reminded(world)
    world.hear("I fell and hit my head")

    world.hear(f"ok {world.alerts(ana)[0].number}", CLERK)

    assert world.alerts(ana)[0].state == state


def test_an_admin_who_was_called_since_nobody_else_could_be_may_acknowledge(world: World) -> None:
    ana = reminded(world)
    with world.db.begin() as tx:
        for staff in tx.exec(select(Staff).where(col(Staff.clinic_id) == 1)):
            staff.is_active = staff.role == "admin"
            staff.mobile = CLERK if staff.role == "admin" else staff.mobile
    world.hear("I fell and hit my head")
    assert [row.to for row in world.queued("alert") if row.channel == "sms"] == [CLERK]

    world.hear(f"ok {world.alerts(ana)[0].number}", CLERK)

    assert world.alerts(ana)[0].acknowledged_by == "fay@example.org"


def fallen(world: World) -> None:
    """Let Ana fall, so that a text about an urgent alert waits for Ben."""
    reminded(world)
    world.hear("I fell in the bathroom")


def alert_texts(world: World, state: str) -> list[str]:
    return [row.to for row in world.queued("alert") if row.channel == "sms" and row.state == state]


def test_after_stop_no_text_that_waited_goes_to_staff_and_somebody_else_is_called(world: World) -> None:
    fallen(world)
    assert alert_texts(world, "waiting") == [BEN]
    world.hear("STOP", BEN)

    world.send()

    assert (alert_texts(world, "withdrawn"), alert_texts(world, "accepted")) == ([BEN], [DEE])


def test_stop_after_the_claim_still_ends_a_text_to_staff_and_somebody_else_is_called(world: World) -> None:
    fallen(world)
    sender = world.sender
    claims, _, _ = claiming.claim(sender)
    assert BEN in [one.row.to for one in claims]
    with world.db.begin() as tx:
        tx.get_one(Staff, ben(world).id).mobile_stopped_at = world.now

    deliver.hand_over(sender, claims)
    world.send()

    assert (alert_texts(world, "withdrawn"), alert_texts(world, "accepted")) == ([BEN], [DEE])
    assert BEN not in [one.to for one in world.sms.sent]
