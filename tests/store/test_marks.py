"""Leases and marks that several processes share: one wins, the others go on."""

from concurrent.futures import ThreadPoolExecutor
from datetime import UTC, datetime, timedelta

from reminders.store import marks
from reminders.store.db import Database

NOW = datetime(2027, 3, 1, 15, 0, tzinfo=UTC)


def take(db: Database, holder: str, now: datetime = NOW) -> bool:
    with db.begin() as tx:
        return marks.take_lease(tx, "plan", holder, now, 120)


def test_of_many_who_ask_for_a_lease_at_once_one_gets_it_and_nobody_fails(db: Database) -> None:
    with ThreadPoolExecutor(4) as pool:
        taken = list(pool.map(lambda holder: take(db, holder), ["one", "two", "three", "four"]))

    assert sorted(taken) == [False, False, False, True]


def test_a_lease_is_kept_by_its_holder_and_taken_over_when_it_has_run_out(db: Database) -> None:
    assert take(db, "one")
    assert take(db, "one")
    assert not take(db, "two", NOW + timedelta(seconds=119))
    assert take(db, "two", NOW + timedelta(seconds=120))
    assert not take(db, "one", NOW + timedelta(seconds=121))


def test_a_lease_of_a_clock_that_ran_ahead_is_taken_over_once_it_is_set_right(db: Database) -> None:
    assert take(db, "one", NOW + timedelta(days=1))

    assert take(db, "two")


def test_a_mark_set_by_many_at_once_stands_and_nobody_fails(db: Database) -> None:
    def set_it(_: int) -> None:
        with db.begin() as tx:
            marks.set_mark(tx, "worked through", at=NOW)

    with ThreadPoolExecutor(4) as pool:
        list(pool.map(set_it, range(4)))

    with db.read() as tx:
        assert marks.worked_through(tx) == NOW
