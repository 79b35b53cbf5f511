"""What she tells or asks before the day's reminder hangs on a session that is only planned; its end loses neither."""

from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta

import pytest

from reminders.flows import clinic, closing, consent, details
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, Report
from tests.clinic import ANA, World
from tests.flows.rounds import go, sent

EARLY = datetime(2027, 3, 3, 12, 0, tzinfo=UTC)  # a Wednesday, 07:00 in New York; her hour is 08:30
FAY = "fay@example.org"


def rated_early(world: World, words: str = "pain 3", **columns: str) -> int:
    """Enrol Ana and let her write an hour and a half before the day's reminder; return her id."""
    ana = world.enrol(**columns)
    go(world)
    world.now = EARLY
    world.hear(words)
    world.pass_time(minutes=3)
    return ana


def test_stop_i_fell_after_an_early_rating_alerts_and_closes_the_address(world: World) -> None:
    ana = rated_early(world)

    world.hear("Stop, I fell and hit my head")

    assert "urgent" in {one.level for one in world.alerts(ana)}
    assert [row.kind for row in world.queued() if row.is_answer][-1:] == ["danger"]
    assert world.client(ana).state == "opted_out"


@pytest.mark.parametrize("words", ["pain 3", "send it again"])
def test_no_reminder_goes_after_a_stop_that_follows_an_early_text(world: World, words: str) -> None:
    ana = rated_early(world, words)

    world.hear("STOP")
    world.now = EARLY + timedelta(hours=1, minutes=30)
    go(world)

    assert not sent(world, ANA, "reminder")
    assert [one.state for one in world.sessions(ana)] == ["unsent"]


def close_care(tx: Tx, ours: Clinic, client: Client, now: datetime) -> None:
    closing.close(tx, client, "goals met", FAY, now)


def take_addresses(tx: Tx, ours: Clinic, client: Client, now: datetime) -> None:
    for kind in ("sms", "email"):
        details.change_address(tx, ours, client, kind, "", FAY, now)


def withdraw(tx: Tx, ours: Clinic, client: Client, now: datetime) -> None:
    details.consent_withdrawn(tx, ours, client, FAY, now)


def unsubscribe(tx: Tx, ours: Clinic, client: Client, now: datetime) -> None:
    for contact in clients.contacts_of(tx, client.id or 0):
        consent.unsubscribe(tx, contact, now)


@pytest.mark.parametrize("ends", [close_care, take_addresses, withdraw, unsubscribe])
def test_whatever_ends_her_reminders_keeps_an_early_rating(
    world: World, ends: Callable[[Tx, Clinic, Client, datetime], None]
) -> None:
    ana = rated_early(world, email="ana@example.org")

    with world.db.begin() as tx:
        ends(tx, tx.get_one(Clinic, 1), tx.get_one(Client, ana), world.now)

    assert [(one.on_date, one.state, one.pain) for one in world.sessions(ana)] == [(date(2027, 3, 3), "unsent", 3)]
    assert [one.session_id for one in world.rows(Report)] == [world.sessions(ana)[0].id]


def test_a_day_closed_after_an_early_rating_is_unsent_and_the_next_is_planned(world: World) -> None:
    ana = rated_early(world)
    with world.db.begin() as tx:
        clinic.change(tx, tx.get_one(Clinic, 1), {"closed_days": "2027-03-03"}, FAY, world.now)
    world.now = EARLY + timedelta(hours=2)

    world.plan()

    assert [(one.on_date, one.state, one.pain) for one in world.sessions(ana)] == [
        (date(2027, 3, 3), "unsent", 3),
        (date(2027, 3, 5), "planned", None),
    ]
