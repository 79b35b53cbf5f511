"""Edges of days and clocks: a reply after midnight, a night of a clock change, a kind that carries exercises."""

from datetime import UTC, date, datetime

import pytest

from reminders.core.kinds import KINDS, kind_of
from reminders.flows import inquire, pause, plan
from reminders.flows.hold import HELD_KINDS
from reminders.store import histories
from reminders.store.tables import Client, Clinic, Question, Report
from tests.clinic import World
from tests.flows.rounds import go, sent, started, until
from tests.flows.test_alert import raised, the

pytestmark = pytest.mark.weeks


def settling(world: World, ana: int, at: datetime, pain: int) -> None:
    with world.db.begin() as tx:
        session = world.sessions(ana)[0]
        tx.add(
            Report(
                client_id=ana,
                session_id=session.id,
                at=at,
                channel="sms",
                text=str(pain),
                reading={"pain": pain},
                is_settling=True,
            )
        )


def mornings(world: World, ana: int) -> list[tuple[date, int]]:
    with world.db.read() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        history = histories.history_of(tx, client)
    return [(one.on, one.pain) for one in history.sessions[0].mornings]


# when she answers, in UTC (New York is 5 hours behind) -> the morning that it counts as
NIGHT = {
    "two minutes before three": (datetime(2027, 3, 4, 7, 58, tzinfo=UTC), date(2027, 3, 3)),
    "at three": (datetime(2027, 3, 4, 8, 0, tzinfo=UTC), date(2027, 3, 4)),
    "late that evening": (datetime(2027, 3, 5, 4, 30, tzinfo=UTC), date(2027, 3, 4)),
}


@pytest.mark.parametrize(("at", "day"), NIGHT.values(), ids=NIGHT.keys())
def test_a_clients_day_ends_at_three(world: World, at: datetime, day: date) -> None:
    ana = started(world)
    world.hear("Y4")
    settling(world, ana, at, 5)
    assert mornings(world, ana) == [(day, 5)]


def test_a_morning_that_a_later_answer_corrects_is_left_out(world: World) -> None:
    ana = started(world)
    world.hear("Y4")
    settling(world, ana, datetime(2027, 3, 4, 14, 0, tzinfo=UTC), 9)
    wrong = world.reports(ana)[-1].id
    settling(world, ana, datetime(2027, 3, 4, 14, 5, tzinfo=UTC), 3)
    with world.db.begin() as tx:
        tx.get(Report, (wrong or 0) + 1).replaces = wrong  # type: ignore[union-attr]
    assert mornings(world, ana) == [(date(2027, 3, 4), 3)]


def test_the_morning_question_keeps_her_hour_over_a_clock_change(world: World) -> None:
    started(world, days="mon+wed+sat")
    for day in (6, 8, 10, 13):  # each answered, so that no prompt fills the week; then clocks go forward
        until(world, datetime(2027, 3, day, 14, 0, tzinfo=UTC), hours=4)
        world.hear("Y4" if day == 13 else "Y1")

    until(world, datetime(2027, 3, 14, 12, 29, tzinfo=UTC), hours=6)
    assert sent(world, "+12025550101", "morning") == []
    world.now = datetime(2027, 3, 14, 12, 30, tzinfo=UTC)  # 08:30, now four hours behind
    go(world)

    assert len(sent(world, "+12025550101", "morning")) == 1


def test_note_hours_keep_their_local_time_over_a_clock_change(world: World) -> None:
    ana = started(world)
    world.now = datetime(2027, 3, 13, 18, 0, tzinfo=UTC)
    assert the(world, raised(world, "fever", "today", ana)).next_step_at == datetime(2027, 3, 15, 15, 30, tzinfo=UTC)


def test_every_kind_that_carries_exercises_or_asks_something_ends_with_a_hold() -> None:
    carrying = {"reminder", "resend", "evening", "morning", "reason", "question", "praise"}
    assert carrying | {"hold_cleared"} <= set(HELD_KINDS)
    # What still reaches a held client: answers, and what a person wrote or decided.
    begun = {name for name in KINDS if kind_of(name).order_full and name not in HELD_KINDS}
    assert begun == {"welcome", "therapist_note"}


MAY_NOT_BE_ASKED = {
    "opted out": {"state": "opted_out"},
    "dead": {"died_on": date(2027, 3, 2)},
    "in talk with her therapist": {"staff_wrote_at": datetime(2027, 3, 3, 12, 0, tzinfo=UTC)},
}


@pytest.mark.parametrize("values", MAY_NOT_BE_ASKED.values(), ids=MAY_NOT_BE_ASKED.keys())
def test_nothing_is_asked_of_who_may_not_be_asked(world: World, values: dict[str, object]) -> None:
    ana = started(world)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        for name, value in values.items():
            setattr(client, name, value)
        assert not inquire.may_ask(tx, client, world.now)


def test_nothing_is_asked_while_paused_or_while_a_question_is_open(world: World) -> None:
    ana = started(world)
    world.hear("done")  # asks for the pain
    with world.db.begin() as tx:
        client, clinic = tx.get(Client, ana), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        assert not inquire.begin(tx, clinic, client, "question", "effort", world.now)
        pause.begin(tx, client, date(2027, 3, 9), "client", world.now)
        assert not inquire.may_ask(tx, client, world.now)


def test_a_question_on_two_addresses_is_opened_once(world: World) -> None:
    started(world, email="ana@example.org", channel="sms+email")
    world.hear("Y3")
    until(world, world.now.replace(hour=15))
    asked = [row for row in world.queued("question") if row.template == "ask_where"]
    assert {row.channel for row in asked if row.state == "accepted"} == {"sms", "email"}
    assert [row.closed_at for row in world.rows(Question) if row.kind == "where"] == [None]


def test_a_morning_that_has_passed_is_not_asked_about(world: World) -> None:
    ana = started(world)
    world.hear("Y4")
    world.now = datetime(2027, 3, 6, 15, 0, tzinfo=UTC)
    go(world)
    assert world.queued("morning") == []
    assert world.client(ana).morning_on is None


def test_after_four_weeks_a_reminder_carries_the_emergency_number_once(world: World) -> None:
    started(world)
    until(world, datetime(2027, 4, 2, 15, 0, tzinfo=UTC), hours=3)
    carrying = [row.body for row in sent(world, "+12025550101", "reminder") if "in an emergency call 911" in row.body]
    assert len(carrying) == 1


def test_fewer_exercise_days_do_not_silence_the_days_that_are_left(world: World) -> None:
    ana = started(world, days="mon+tue+wed+thu+fri+sat+sun")
    until(world, datetime(2027, 3, 9, 15, 0, tzinfo=UTC), hours=0.5)  # the reminders of six days more
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        plan.change_schedule(tx, client, "mon+wed+fri", "08:30", "America/New_York", world.now)

    until(world, datetime(2027, 3, 15, 15, 0, tzinfo=UTC), hours=0.5)

    states = {one.on_date.day: one.state for one in world.sessions(ana) if one.on_date >= date(2027, 3, 10)}
    assert {day: states[day] for day in (10, 12, 15)} == {10: "missed", 12: "missed", 15: "reminded"}
