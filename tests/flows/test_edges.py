"""Edges of days and clocks: a reply after midnight, a night of a clock change, a kind that carries exercises."""

from datetime import UTC, date, datetime

import pytest

from reminders.core.kinds import KINDS, kind_of
from reminders.flows.hold import HELD_KINDS
from reminders.store import histories
from reminders.store.tables import Client, Report
from tests.clinic import World
from tests.flows.rounds import go, sent, started, until
from tests.flows.test_alert import raised, the


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
    assert {"reminder", "resend", "evening", "morning", "reason", "question", "praise"} <= set(HELD_KINDS)
    # What still reaches a held client: answers, and what a person wrote or decided.
    begun = {name for name in KINDS if kind_of(name).order_full and name not in HELD_KINDS}
    assert begun == {"welcome", "hold_cleared", "therapist_note"}
