"""What time alone brings about: missed sessions, silence, and pauses that end."""

from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest

from reminders.flows import care, hold, pause, sweep
from reminders.store.tables import Client, Clinic, ExerciseSession, Flag, Pause, Question
from tests.clinic import ANA, World
from tests.flows.rounds import sent, started, until

pytestmark = pytest.mark.weeks


def states(world: World, ana: int) -> list[str]:
    return [one.state for one in world.sessions(ana)]


def test_a_session_closes_as_missed_at_noon_of_the_second_day_or_when_the_next_is_due(world: World) -> None:
    ana = started(world)  # Wednesday 3 March; Friday is next
    until(world, datetime(2027, 3, 5, 13, 29, tzinfo=UTC), hours=6)
    assert states(world, ana)[0] == "reminded"
    until(world, datetime(2027, 3, 5, 13, 30, tzinfo=UTC), hours=6)
    assert states(world, ana)[0] == "missed"
    until(world, datetime(2027, 3, 7, 16, 59, tzinfo=UTC), hours=6)
    assert states(world, ana)[1] == "reminded"
    until(world, datetime(2027, 3, 7, 17, 0, tzinfo=UTC), hours=6)  # noon on Sunday in New York
    assert states(world, ana)[1] == "missed"


def test_a_late_report_still_turns_a_missed_session(world: World) -> None:
    ana = started(world)
    until(world, datetime(2027, 3, 5, 13, 31, tzinfo=UTC), hours=6)
    world.hear("Wednesday's done, pain 2")
    assert states(world, ana)[0] == "done"


def three_missed(world: World) -> int:
    ana = started(world)
    until(world, datetime(2027, 3, 10, 13, 35, tzinfo=UTC), hours=6)
    return ana


def test_three_running_without_a_word_raise_a_routine_alert_and_one_question(world: World) -> None:
    ana = three_missed(world)
    assert [(one.rule, one.level) for one in world.alerts()] == [("missed", "routine")]
    until(world, world.now + timedelta(hours=25), hours=2)
    assert [row.template for row in sent(world, ANA, "reason")] == ["reason"]
    assert [row.kind for row in world.rows(Question) if row.closed_at is None] == ["reason"]
    assert len(world.sessions(ana)) >= 4


def test_a_word_between_is_no_silence(world: World) -> None:
    started(world)
    until(world, datetime(2027, 3, 6, 15, 0, tzinfo=UTC), hours=6)
    world.hear("thank you dear")
    until(world, datetime(2027, 3, 11, 15, 0, tzinfo=UTC), hours=6)
    assert world.alerts() == []


HEAVY = {"hospital": "surgery_or_hospital", "crisis": "crisis", "death": "death"}


@pytest.mark.parametrize("kind", HEAVY.values(), ids=HEAVY.keys())
def test_no_reason_is_asked_within_fourteen_days_of_a_heavy_word(world: World, kind: str) -> None:
    ana = started(world)
    with world.db.begin() as tx:
        tx.add(Flag(client_id=ana, kind=kind, grade="today", at=world.now))
    until(world, datetime(2027, 3, 11, 15, 0, tzinfo=UTC), hours=6)
    assert [one.rule for one in world.alerts()] == ["missed"]
    assert sent(world, ANA, "reason") == []


def test_a_death_near_her_keeps_the_question_away(world: World) -> None:
    ana = started(world)
    with world.db.begin() as tx:
        tx.get(Client, ana).bereaved_until_on = date(2027, 3, 15)  # type: ignore[union-attr]
    until(world, datetime(2027, 3, 11, 15, 0, tzinfo=UTC), hours=6)
    assert sent(world, ANA, "reason") == []


def test_a_report_closes_a_missed_alert_by_itself(world: World) -> None:
    three_missed(world)
    world.hear("Y2")
    alert = world.alerts()[0]
    assert (alert.state, alert.outcome, alert.closed_by) == ("closed", "report", "report")


def test_one_missed_alert_in_four_weeks(world: World) -> None:
    three_missed(world)
    world.hear("Y2")
    until(world, datetime(2027, 3, 20, 15, 0, tzinfo=UTC), hours=12)
    assert [one.rule for one in world.alerts()] == ["missed"]


def silent_until(world: World, end: datetime) -> int:
    ana = started(world)
    world.hear("Y2")
    until(world, end, hours=8)
    return ana


def test_after_fourteen_silent_days_one_reminder_a_week_and_no_prompts(world: World) -> None:
    ana = silent_until(world, datetime(2027, 3, 17, 20, 0, tzinfo=UTC))
    assert world.client(ana).weekly_only
    before = len(sent(world, ANA, "reminder"))
    prompts = len(sent(world, ANA, "evening"))

    until(world, datetime(2027, 3, 28, 20, 0, tzinfo=UTC), hours=3)

    assert len(sent(world, ANA, "reminder")) == before + 1
    assert len(sent(world, ANA, "evening")) == prompts
    assert "ask_keep" in [row.template for row in sent(world, ANA, "question")]
    assert "paused" in states(world, ana)


def test_after_twenty_eight_silent_days_she_is_paused_and_the_clinic_phones(world: World) -> None:
    ana = silent_until(world, datetime(2027, 4, 1, 20, 0, tzinfo=UTC))
    assert [one.reason for one in world.rows(Pause)] == ["quiet"]
    assert "quiet" in [one.rule for one in world.alerts()]

    world.hear("Y3")

    assert not world.client(ana).weekly_only
    assert world.rows(Pause)[0].ended_by == "report"
    assert next(one.state for one in world.alerts() if one.rule == "quiet") == "closed"


def test_a_staff_correction_of_an_old_session_is_no_word_of_hers(world: World) -> None:
    ana = silent_until(world, datetime(2027, 4, 1, 20, 0, tzinfo=UTC))
    session = world.sessions(ana)[0]

    with world.db.begin() as tx:
        clinic, client = tx.get_one(Clinic, 1), tx.get_one(Client, ana)
        row = tx.get_one(ExerciseSession, session.id)
        care.correct(tx, clinic, client, row, {"completed": "all", "pain": 3}, "typo", "ben@example.org", world.now)

    assert [one.ended_at for one in world.rows(Pause)] == [None]
    assert "closed" not in [one.state for one in world.alerts() if one.rule == "quiet"]


def test_silence_is_not_counted_while_she_is_paused(world: World) -> None:
    ana = started(world)
    with world.db.begin() as tx:
        pause.begin(tx, tx.get(Client, ana), date(2027, 3, 25), "client", world.now)  # type: ignore[arg-type]
    until(world, datetime(2027, 4, 2, 15, 0, tzinfo=UTC), hours=12)
    assert not world.client(ana).weekly_only
    assert [one.ended_by for one in world.rows(Pause)] == ["date"]


def rows_in(world: World, **where: Any) -> list[ExerciseSession]:
    found: list[ExerciseSession] = world.rows(ExerciseSession, **where)
    return found


def test_closing_twice_changes_nothing(world: World) -> None:
    three_missed(world)
    with world.db.begin() as tx:
        assert sweep.close_sessions(tx, world.now) == 0
    assert len(rows_in(world, state="missed")) == 3
    assert len(world.alerts()) == 1


def test_a_session_whose_reminders_all_came_to_nothing_closes_as_unsent(world: World) -> None:
    ana = started(world)
    first = world.sessions(ana)[0]
    with world.db.begin() as tx:
        tx.get(ExerciseSession, first.id).state = "planned"  # type: ignore[union-attr]
    world.now = datetime(2027, 3, 5, 13, 31, tzinfo=UTC)
    with world.db.begin() as tx:
        assert sweep.close_sessions(tx, world.now) == 1
    assert states(world, ana)[0] == "unsent"
    assert world.alerts() == []


def test_silence_counts_anew_after_a_hold(world: World) -> None:
    ana = started(world)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        hold.open_hold(tx, client, "therapist", "ben@example.org", world.now)
    world.now = datetime(2027, 3, 24, 15, 0, tzinfo=UTC)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        hold.end_hold(tx, client, "ben@example.org", world.now)
        assert sweep.silence_of(tx, client, "quiet", world.now).silent_days == 0
