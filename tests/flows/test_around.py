"""What stands around a text is asked once: whatever is there or comes meanwhile is still seen."""

from datetime import date, timedelta

import pytest

from reminders.flows import alert, hold, inquire, pause, questions, sweep
from reminders.store import around, clients, histories
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession, Hold, InboundRow, Precaution, Report
from tests.clinic import ANA, World
from tests.flows.hearing import inbound, keep, reminded


def looked(tx: Tx, world: World, client_id: int) -> Client:
    """Look around Ana's one kept text; return her."""
    row = tx.get_one(InboundRow, 1)
    around.look(tx, client_id, row, row.kept_at - timedelta(seconds=60))
    return tx.get_one(Client, client_id)


@pytest.fixture
def ana(world: World) -> int:
    """Ana, reminded, has just texted."""
    client_id = reminded(world)
    keep(world, inbound("done", "SM1", world))
    return client_id


def test_a_client_without_any_of_it_surely_lacks_it(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        looked(tx, world, ana)
        surely = ("hold", "pause", "question", "asked", "alert", "precaution", "morning")
        assert all(around.lacks(tx, what, ana) for what in surely)
        assert around.lacks_at(tx, "staff", ANA)
        assert around.lacks_at(tx, "minute", ANA)


def test_of_another_client_or_phone_nothing_is_known(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        assert not around.lacks(tx, "hold", ana)
        looked(tx, world, ana)
        assert not around.lacks(tx, "hold", ana + 1)
        assert not around.lacks_at(tx, "staff", "+12025550177")


def test_a_hold_that_is_there_is_seen(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        hold.open_hold(tx, tx.get_one(Client, ana), "pain_up", "rule", world.now)
    with world.db.begin() as tx:
        looked(tx, world, ana)
        assert clients.open_hold(tx, ana) is not None


def test_a_hold_opened_meanwhile_is_seen(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        client = looked(tx, world, ana)
        assert clients.open_hold(tx, ana) is None
        hold.open_hold(tx, client, "pain_up", "rule", world.now)
        assert isinstance(clients.open_hold(tx, ana), Hold)


def test_a_question_asked_meanwhile_is_seen(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        client = looked(tx, world, ana)
        assert questions.current(tx, ANA, [ana], world.now) is None
        made = questions.ask(tx, "pain", ANA, client, world.now)
        assert questions.current(tx, ANA, [ana], world.now) is made
        assert inquire.last_asked_on(tx, client, "pain") is not None


def test_a_pause_begun_meanwhile_is_seen(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        client = looked(tx, world, ana)
        today = date(2027, 3, 3)
        assert pause.open_pause(tx, ana, today) is None
        pause.begin(tx, client, None, "client", world.now)
        assert pause.open_pause(tx, ana, today) is not None
        assert clients.pause_on(tx, ana, today) is not None


def test_a_morning_rating_and_a_precaution_added_meanwhile_are_seen(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        client = looked(tx, world, ana)
        session_id = world.sessions(ana)[0].id
        assert histories.history_of(tx, client).precautions == frozenset()
        tx.add(Precaution(client_id=ana, kind="no floor", noted_on=date(2027, 3, 3)))
        report = Report(
            client_id=ana, session_id=session_id, at=world.now, channel="sms", text="5", reading={"pain": 5},
            by="client", is_settling=True,
        )  # fmt: skip
        tx.add(report)
        history = histories.history_of(tx, client)

    assert history.precautions == frozenset({"no floor"})
    assert [one.pain for session in history.sessions for one in session.mornings] == [5]


def test_quiet_alerts_that_are_there_are_closed_by_a_report(world: World, ana: int) -> None:
    with world.db.begin() as tx:
        client = tx.get_one(Client, ana)
        clinic = clients.the_clinic(tx, client.clinic_id)
        alert.raise_alert(tx, clinic, client, "missed", "today", {"form": "", "values": {}}, world.now)
    with world.db.begin() as tx:
        client = looked(tx, world, ana)
        sweep.report_arrived(tx, client, tx.get_one(ExerciseSession, world.sessions(ana)[0].id), world.now)

    assert world.alerts(ana)[0].state == "closed"
