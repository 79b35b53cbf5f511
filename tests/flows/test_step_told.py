"""When a new dose is told: with the first reminder that has it, and never on an easy day that hides it."""

from datetime import UTC, date, datetime

import pytest

from reminders.flows import care
from reminders.store.tables import Client, ClientProgram
from tests.clinic import ANA, World
from tests.flows.rounds import sent, started, until
from tests.flows.steps_made import proposed, settled

pytestmark = pytest.mark.weeks


def test_a_step_approved_before_todays_reminder_is_told_with_the_first_that_has_it(world: World) -> None:
    ana = started(world)
    until(world, datetime(2027, 3, 5, 12, 0, tzinfo=UTC), hours=1)
    proposed(world, ana)

    settled(world, "approve")
    until(world, datetime(2027, 3, 8, 14, 0, tzinfo=UTC), hours=1)

    _, friday, monday = sent(world, ANA, "reminder")
    assert "A sit to stand 10 times;" in friday.body
    assert "in full" not in friday.body
    assert "A sit to stand 10 times, twice" in monday.body
    assert "You did 5 of 6 in full" in monday.body


def test_that_there_is_more_is_not_told_on_an_easy_day(world: World) -> None:
    ana = started(world)
    proposed(world, ana)
    settled(world, "approve")
    with world.db.begin() as tx:
        care.ease(tx, tx.get_one(Client, ana), "ben@example.org", world.now)
    until(world, datetime(2027, 3, 8, 14, 0, tzinfo=UTC), hours=1)

    _, friday, monday = sent(world, ANA, "reminder")
    assert "in full" not in friday.body
    assert "You did 5 of 6 in full" in monday.body


def test_an_approved_step_counts_from_the_next_session_and_its_reminder_says_what_changed(world: World) -> None:
    ana = started(world)
    proposed(world, ana)

    settled(world, "approve")
    until(world, datetime(2027, 3, 5, 14, 0, tzinfo=UTC), hours=6)

    first, second = sent(world, ANA, "reminder")
    assert "A sit to stand 10 times;" in first.body
    assert "A sit to stand 10 times, twice" in second.body
    assert "You did 5 of 6 in full" in second.body
    assert world.client(ana).news == {}
    version = world.rows(ClientProgram)[-1]
    assert (version.rung, version.rung_since_on, version.by) == (1, date(2027, 3, 4), "ben@example.org")
