"""Named values that processes share: the newest instant worked through, heartbeats, the pace, leases on jobs."""

from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import or_, text
from sqlalchemy.dialects import postgresql, sqlite
from sqlmodel import SQLModel, col, update

from reminders.store.db import Tx, is_postgres
from reminders.store.tables import Lease, Mark

WORKED = "worked through"
PACE = "pace"


def mark(tx: Tx, name: str) -> Mark | None:
    """Return a mark, None when it was never set."""
    return tx.get(Mark, name)


def set_mark(tx: Tx, name: str, at: datetime | None = None, value: str = "") -> None:
    """Set a mark; of two processes that set one for the first time neither fails."""
    found = tx.get(Mark, name)
    if found is None:
        fresh = insert_into(tx, Mark).values(name=name, at=at, value=value)
        tx.execute(fresh.on_conflict_do_update(index_elements=["name"], set_={"at": at, "value": value}))
        return
    found.at, found.value = at, value
    tx.flush()


def insert_into(tx: Tx, table: type[SQLModel]) -> Any:
    """Return the dialect's INSERT, which knows what to do with a row that is there already."""
    return (postgresql if is_postgres(tx) else sqlite).insert(table)


def worked_through(tx: Tx) -> datetime | None:
    """Return the newest instant that planning has worked through."""
    found = mark(tx, WORKED)
    return found.at if found else None


def pace_free_at(tx: Tx) -> float:
    """Return from when the text sender is free, in the machine's seconds; the row stays locked on PostgreSQL."""
    if tx.get_bind().dialect.name == "postgresql":
        tx.execute(text("SELECT pg_advisory_xact_lock(7031)"))
    found = mark(tx, PACE)
    return float(found.value) if found and found.value else 0.0


def set_pace(tx: Tx, free_at: float) -> None:
    """Keep from when the text sender is free."""
    found = mark(tx, PACE)
    if found is None or found.value != repr(free_at):
        set_mark(tx, PACE, value=repr(free_at))


def take_lease(tx: Tx, job: str, holder: str, now: datetime, seconds: int) -> bool:
    """Take or keep the lease on a job; False while another holder's lease runs. One statement, so that one wins.

    A lease that ends later than twice its length from now was taken by a clock that ran ahead: it holds nobody up.
    """
    until = now + timedelta(seconds=seconds)
    impossible = now + timedelta(seconds=2 * seconds)
    fresh = insert_into(tx, Lease).values(job=job, holder=holder, until_at=until)
    taken = fresh.on_conflict_do_update(
        index_elements=["job"],
        set_={"holder": holder, "until_at": until},
        where=or_(col(Lease.holder) == holder, col(Lease.until_at) <= now, col(Lease.until_at) > impossible),
    )
    return tx.execute(taken.returning(col(Lease.job))).first() is not None


def end_lease(tx: Tx, job: str, holder: str, now: datetime) -> None:
    """Give back the lease on a job."""
    tx.execute(update(Lease).where(col(Lease.job) == job, col(Lease.holder) == holder).values(until_at=now))
