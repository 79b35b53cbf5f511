"""Status callbacks: repeated, out of order, before we know the receipt, and for attempts whose answer was lost."""

import itertools

import pytest

from reminders.core.channel import StatusReport
from reminders.errors import SendError
from reminders.flows import delivery_status
from reminders.store.tables import Contact, DeliveryEvent, Outbound
from tests.clinic import ANA, World


def called_back(world: World, receipt: str, status: str, *, code: str = "", row: int = 0, attempt: int = 0) -> None:
    report = StatusReport(receipt, status, code, ANA, row, attempt, b"")
    with world.db.begin() as tx:
        delivery_status.record(tx, report, world.now)


def welcome(world: World) -> Outbound:
    return world.queued("welcome")[0]


def sent(world: World) -> str:
    """Return the receipt of a text that was accepted."""
    world.enrol()
    world.send()
    return welcome(world).receipt


@pytest.mark.parametrize("order", list(itertools.permutations(("queued", "sent", "delivered"))), ids="-".join)
def test_the_furthest_status_stands_in_any_order(world: World, order: tuple[str, ...]) -> None:
    receipt = sent(world)

    for status in order:
        called_back(world, receipt, status)

    assert welcome(world).state == "delivered"


@pytest.mark.parametrize("order", list(itertools.permutations(("sent", "failed", "delivered"))), ids="-".join)
def test_delivered_beats_failed(world: World, order: tuple[str, ...]) -> None:
    receipt = sent(world)

    for status in order:
        called_back(world, receipt, status, code="30008" if status == "failed" else "")

    assert welcome(world).state == "delivered"


def test_a_repeat_changes_nothing(world: World) -> None:
    receipt = sent(world)

    for _ in range(3):
        called_back(world, receipt, "delivered")

    assert len(world.rows(DeliveryEvent)) == 1


def test_a_failure_makes_the_number_unusable_and_is_kept_with_its_code(world: World) -> None:
    receipt = sent(world)

    called_back(world, receipt, "undelivered", code="30006")

    assert (welcome(world).state, welcome(world).code) == ("failed", "30006")
    assert world.rows(Contact)[0].unusable == "30006"


def test_one_that_comes_before_we_recorded_the_receipt_is_matched_later(world: World) -> None:
    world.enrol()
    called_back(world, "recorded-1", "delivered")
    assert [event.is_matched for event in world.rows(DeliveryEvent)] == [False]

    world.send()

    assert welcome(world).state == "delivered"
    assert [event.is_matched for event in world.rows(DeliveryEvent)] == [True]


def test_an_unknown_receipt_is_kept(world: World) -> None:
    called_back(world, "SM-nobody", "delivered")

    assert [(event.receipt, event.outbound_id) for event in world.rows(DeliveryEvent)] == [("SM-nobody", None)]


def test_a_callback_settles_an_attempt_whose_answer_was_lost(world: World) -> None:
    world.enrol()
    world.sms.errors = [SendError("cut off", unknown=True)]
    world.send()
    row = welcome(world)
    assert row.state == "unknown"

    called_back(world, "SM1", "sent", row=row.id or 0, attempt=1)

    assert (welcome(world).state, welcome(world).receipt) == ("accepted", "SM1")


def test_one_for_another_attempt_settles_nothing_under_way(world: World) -> None:
    world.enrol()
    world.sms.errors = [SendError("cut off", unknown=True)]
    world.send()

    called_back(world, "SM1", "sent", row=welcome(world).id or 0, attempt=2)

    assert welcome(world).state == "unknown"


def test_one_for_another_number_settles_nothing(world: World) -> None:
    world.enrol()
    world.sms.errors = [SendError("cut off", unknown=True)]
    world.send()
    report = StatusReport("SM1", "sent", "", "+12025550188", welcome(world).id or 0, 1, b"")

    with world.db.begin() as tx:
        delivery_status.record(tx, report, world.now)

    assert welcome(world).state == "unknown"


def test_an_earlier_attempt_that_arrived_after_all_is_not_sent_again(world: World) -> None:
    world.enrol()
    world.sms.errors = [SendError("cut off", unknown=True)]
    world.send()
    with world.db.begin() as tx:
        row = tx.get(Outbound, welcome(world).id)
        assert row is not None
        row.state = "waiting"  # three look-ups found nothing

    called_back(world, "SM1", "delivered", row=welcome(world).id or 0, attempt=1)
    world.send()

    assert welcome(world).state == "delivered"
    assert world.sms.sent == []
