"""Notes: today and routine alerts, gathered at their hours on open days."""

from datetime import UTC, datetime

from reminders.store.tables import Clinic
from tests.clinic import BEN, World
from tests.flows.rounds import go, sent, started, until
from tests.flows.test_alert import raised, the
from tests.flows.test_escalate import change_staff


def test_today_alerts_are_gathered_in_one_note_at_the_next_note_hour(world: World) -> None:
    ana = started(world)
    raised(world, "fever", "today", ana)
    raised(world, "pain_up", "today", ana)
    go(world)
    assert sent(world, BEN) == []

    until(world, datetime(2027, 3, 3, 16, 30, tzinfo=UTC))  # 11:30 in New York

    notes = sent(world, BEN, "note")
    assert len(notes) == 1
    assert "fever" in notes[0].body
    assert "pain up" in notes[0].body
    assert "Ana" not in notes[0].body


def test_routine_alerts_wait_for_the_last_note_hour(world: World) -> None:
    ana = started(world)
    raised(world, "missed", "routine", ana)
    until(world, datetime(2027, 3, 3, 20, 59, tzinfo=UTC))
    assert sent(world, BEN, "note") == []
    until(world, datetime(2027, 3, 3, 21, 0, tzinfo=UTC))  # 16:00 in New York
    assert len(sent(world, BEN, "note")) == 1


def test_notes_rest_on_closed_days(world: World) -> None:
    ana = started(world)
    with world.db.begin() as tx:
        tx.get(Clinic, 1).closed_days = ["2027-03-04", "2027-03-05"]  # type: ignore[union-attr]
    world.now = datetime(2027, 3, 3, 23, 0, tzinfo=UTC)
    one = raised(world, "fever", "today", ana)
    assert the(world, one).next_step_at == datetime(2027, 3, 8, 16, 30, tzinfo=UTC)  # Monday


def test_her_own_note_hours_count_before_the_clinics(world: World) -> None:
    ana = started(world)
    change_staff(world, "ben@example.org", note_hours="09:15")
    one = raised(world, "fever", "today", ana)
    assert the(world, one).next_step_at == datetime(2027, 3, 3, 14, 15, tzinfo=UTC)


def test_a_note_that_nobody_takes_comes_again_the_next_open_day(world: World) -> None:
    ana = started(world)
    raised(world, "fever", "today", ana)
    until(world, datetime(2027, 3, 4, 16, 0, tzinfo=UTC))
    assert len(sent(world, BEN, "note")) == 1
    until(world, datetime(2027, 3, 4, 17, 0, tzinfo=UTC))
    assert len(sent(world, BEN, "note")) == 2
