"""Named values that processes share: the newest instant worked through, heartbeats, the pace, leases on jobs."""

from datetime import datetime, timedelta

from sqlalchemy import text
from sqlmodel import col, select, update

from reminders.store.db import Tx
from reminders.store.tables import Lease, Mark

WORKED = "worked through"
PACE = "pace"


def mark(tx: Tx, name: str) -> Mark | None:
    """Return a mark, None when it was never set."""
    return tx.get(Mark, name)


def set_mark(tx: Tx, name: str, at: datetime | None = None, value: str = "") -> None:
    """Set a mark."""
    found = tx.get(Mark, name)
    if found is None:
        tx.add(Mark(name=name, at=at, value=value))
    else:
        found.at, found.value = at, value
    tx.flush()


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
    """Take or keep the lease on a job; False while another holder's lease runs."""
    found = tx.exec(select(Lease).where(Lease.job == job).with_for_update()).first()
    until = now + timedelta(seconds=seconds)
    if found is None:
        tx.add(Lease(job=job, holder=holder, until_at=until))
        tx.flush()
        return True
    if found.holder != holder and found.until_at > now:
        return False
    found.holder, found.until_at = holder, until
    tx.flush()
    return True


def end_lease(tx: Tx, job: str, holder: str, now: datetime) -> None:
    """Give back the lease on a job."""
    tx.execute(update(Lease).where(col(Lease.job) == job, col(Lease.holder) == holder).values(until_at=now))
