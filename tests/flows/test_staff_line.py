"""Commands from a staff member's own phone."""

import pytest

from reminders.flows.staff_line import is_command
from reminders.store.tables import Outbound, Staff
from tests.clinic import BEN, World
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
    from reminders.flows import receive

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
