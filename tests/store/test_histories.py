"""A client's record as the rules see it."""

from datetime import date, timedelta

import pytest

from reminders.store import histories
from reminders.store.tables import Client, ExerciseSession
from tests.clinic import World

FIRST = date(2026, 11, 1)


def lived(world: World, ana: int, states: list[tuple[str, int | None]]) -> None:
    """Give a client sessions with these states and ratings, a day after the other."""
    with world.db.begin() as tx:
        for place, (state, pain) in enumerate(states):
            day = FIRST + timedelta(days=place)
            due_at = world.now - timedelta(days=len(states) - place)
            tx.add(ExerciseSession(client_id=ana, on_date=day, due_at=due_at, queued_at=due_at, state=state, pain=pain))


@pytest.mark.parametrize("fetched_together", [False, True])
def test_her_usual_outlives_a_pause_of_many_sessions(world: World, fetched_together: bool) -> None:
    ana = world.enrol(usual_pain="7")
    lived(world, ana, [("done", 2)] * 12 + [("paused", None)] * 77)

    with world.db.begin() as tx:
        if fetched_together:
            histories.gather(tx, [ana], world.now.date())
        found = histories.history_of(tx, tx.get_one(Client, ana))

    assert found.usual_now == 2
    assert [one.state for one in found.sessions[:13]] == ["done"] * 12 + ["paused"]


def test_of_ratings_before_a_long_silence_only_the_newest_are_looked_at(world: World) -> None:
    ana = world.enrol()
    lived(world, ana, [("done", 9)] * 30 + [("done", 4)] * 5 + [("missed", None)] * 70)

    with world.db.read() as tx:
        found = histories.history_of(tx, tx.get_one(Client, ana))

    assert len(found.sessions) == 80
    assert found.usual_now == 6.5
