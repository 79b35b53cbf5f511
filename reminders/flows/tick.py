"""The recurring work, each job a function of a moment and a database, safe to run twice or late, under a lease.

`run` does all of it once, as at an instant; the scheduler calls the same jobs. A job is begun only when one look into
an index says that something is due, so a quiet round costs next to nothing however many are enrolled.
"""

import logging
from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime, timedelta

from reminders.clock import Clock
from reminders.flows import deliver, digest, escalate, fetch, keeping, morning, plan, progress, receive, say, sweep
from reminders.flows.deliver import Sender
from reminders.store import clients, due, marks, restored, slim
from reminders.store.db import Database, Tx
from reminders.store.tables import Client, ExerciseSession

LOG = logging.getLogger("reminders.tick")
LEASE_SECONDS = 120
AWAY = timedelta(minutes=10)  # after a longer stop nothing service-begun goes before the first fetch has ended
FAR_APART = timedelta(hours=2)  # while held back, a longer time without a round is another stop
HEARTBEAT = "heartbeat:"
STOPPED, OVER = "stopped", "caught up"  # the mark of the newest stop, and its value once what came meanwhile was read


@dataclass
class Round:
    """What one round of all jobs did."""

    planned: int = 0
    sent: int = 0
    failed: int = 0
    waiting: int = 0
    missed: int = 0
    alerts: int = 0
    digests: int = 0
    said: list[str] = field(default_factory=list)


@dataclass
class Worker:
    """What the jobs need besides the database: the sender, what fetches from outside, who holds the leases.

    `began_at` is when this process began.
    """

    db: Database
    sender: Sender
    clock: Clock
    fetchers: fetch.Fetchers
    holder: str
    began_at: datetime


@dataclass(frozen=True)
class Job:
    """One piece of recurring work: its name, whether it is due, and a batch of it in a transaction."""

    name: str
    is_due: Callable[[Tx, datetime], bool]
    work: Callable[[Tx, datetime], int]


SWEEP = Job("sweep", due.sessions_to_close, sweep.close_sessions)
PLAN = Job("plan", due.sessions_to_plan, plan.plan_due)
REVIEW = Job("review", due.clients_to_review, progress.run)
MORNING = Job("morning", due.mornings_to_ask, morning.run)
WATCH = Job("watch", due.things_to_watch, sweep.run)
ESCALATE = Job("escalate", due.alerts_to_call, escalate.run)


def run(worker: Worker, now: datetime) -> Round:
    """Do everything that is due once, as at an instant, and send until nothing more is due at it."""
    done = Round()
    if hear(worker, now):
        while receive.handle_waiting(worker.db, now):
            pass  # a long-running worker reads the rest of a flood between its sends; this is the only round there is
    work_through(worker, now, done)
    worker.sender.answers_only = not is_caught_up(worker, now)
    if is_held_back(worker.db):
        done.said.append("This database was brought back from a file: nothing is sent before `reminders db resume`.")
    sent = deliver.send_due(worker.sender)
    done.sent, done.failed, done.waiting = sent.sent, sent.failed, sent.waiting
    return done


def hear(worker: Worker, now: datetime) -> int:
    """Fetch what came while we were away, and read what waits; return how many messages were read."""
    notice_stop(worker, now)
    if can_fetch(worker):
        leased(worker, "hear", now, lambda: fetch.run(worker.db, worker.fetchers, now))
    keeping.bring_in(worker.db)
    with worker.db.read() as tx:
        waits = due.inbound_to_read(tx, now)
    return receive.handle_waiting(worker.db, now) if waits else 0


def work_through(worker: Worker, now: datetime, done: Round) -> None:
    """Close what is over, plan what is due, and raise what follows; an instant before the newest plans nothing.

    Alerts are called on and urgent answers watched all the same: a clock that ran ahead must not silence them. The
    round's heartbeat stands still, since recurring work does.
    """
    notice_stop(worker, now)
    with worker.db.read() as tx:
        newest = marks.worked_through(tx)
        before = due.newest_alert_id(tx)
        waiting = due.jobs_due(tx, now)
    if newest is not None and now < newest:
        done.said.append("This instant lies before the newest one already worked through: nothing is planned.")
        for job in (WATCH, ESCALATE):
            do(worker, job, now)
        return
    if waiting:
        do_jobs(worker, now, done)
    done.digests += digests(worker, now)
    with worker.db.begin() as tx:
        done.alerts = due.newest_alert_id(tx) - before
        marks.set_mark(tx, marks.WORKED, at=now)
        marks.set_mark(tx, f"{HEARTBEAT}round", at=now)


def do_jobs(worker: Worker, now: datetime, done: Round) -> None:
    """Do the jobs one after the other: what one brings about may be due for the next."""
    if is_caught_up(worker, now):
        done.missed += do(worker, SWEEP, now)
    done.planned += plan_sessions(worker, now)
    for job in (WATCH, REVIEW, MORNING, ESCALATE):
        do(worker, job, now)


def plan_sessions(worker: Worker, now: datetime) -> int:
    """Plan what is due; where that fails, session by session: what is wrong with one client stops nobody else's."""
    try:
        return do(worker, PLAN, now)
    except Exception:
        LOG.exception("planning failed; now each session by itself")
    return leased(worker, PLAN.name, now, lambda: plan_apart(worker, now))


def plan_apart(worker: Worker, now: datetime) -> int:
    """Plan each due session in a transaction of its own; the operator hears of those that cannot be planned."""
    total, tried = 0, set[int]()
    while True:
        with worker.db.read() as tx:
            ids = [one for one in slim.ids_due(tx, now) if one not in tried]
        if not ids:
            return total
        for session_id in ids:
            tried.add(session_id)
            try:
                with worker.db.begin() as tx:
                    marks.take_lease(tx, PLAN.name, worker.holder, worker.sender.leases_at(tx), LEASE_SECONDS)
                    total += plan.plan_due(tx, now, only=session_id)
            except Exception:
                LOG.exception("session not planned", extra={"session": session_id})
                tell_unplanned(worker, session_id, now)


def tell_unplanned(worker: Worker, session_id: int, now: datetime) -> None:
    """Tell the operator that a session cannot be planned, so that its client gets no reminder."""
    with worker.db.begin() as tx:
        client = tx.get_one(Client, tx.get_one(ExerciseSession, session_id).client_id)
        clinic = clients.the_clinic(tx, client.clinic_id)
        say.tell_operator(tx, clinic, "reminders not planned", {"client": client.id}, now)


def digests(worker: Worker, now: datetime) -> int:
    """Make the weekly digests that are due; return how many."""
    with worker.db.read() as tx:
        if next(iter(digest.weeks_due(tx, now)), None) is None:
            return 0
    return leased(worker, "digest", now, lambda: digest.run(worker.db, worker.sender.texts, now))


def do(worker: Worker, job: Job, now: datetime) -> int:
    """Do a job batch by batch when it is due and its lease can be had; return how much was done."""
    with worker.db.read() as tx:
        if not job.is_due(tx, now):
            return 0
    return leased(worker, job.name, now, lambda: batches(worker, job, now))


def batches(worker: Worker, job: Job, now: datetime) -> int:
    """Run a job in transactions of its own size until it finds nothing more, keeping its lease."""
    total = 0
    while True:
        with worker.db.begin() as tx:
            marks.take_lease(tx, job.name, worker.holder, worker.sender.leases_at(tx), LEASE_SECONDS)
            done = job.work(tx, now)
        total += done
        if done == 0:
            return total


def leased(worker: Worker, name: str, now: datetime, work: Callable[[], int]) -> int:
    """Run work when its lease can be had; 0 when another process has it."""
    with worker.db.begin() as tx:
        if not marks.take_lease(tx, name, worker.holder, worker.sender.leases_at(tx), LEASE_SECONDS):
            return 0
    try:
        return work()
    finally:
        with worker.db.begin() as tx:
            marks.end_lease(tx, name, worker.holder, worker.sender.leases_at(tx))


def can_fetch(worker: Worker) -> bool:
    """Return whether there is a list or a mailbox to fetch from."""
    return worker.fetchers.inbound_list is not None or worker.fetchers.mailbox is not None


def notice_stop(worker: Worker, now: datetime) -> None:
    """Note from when on list and mailbox must be read, when nobody has worked for over ten minutes.

    A machine that slept and a database that was away are stops as well, so every round looks. The mark stands in the
    database, since a second start or another process has to wait too.
    """
    if not can_fetch(worker):
        return
    with worker.db.read() as tx:
        found, newest = marks.mark(tx, STOPPED), marks.worked_through(tx)
    stopped = found.at if found else None
    known = [at for at in (stopped, newest) if at is not None]
    is_open = found is not None and found.value != OVER and stopped is not None
    is_near = newest is None or now - newest <= FAR_APART
    if is_open and stopped is not None and stopped <= now and is_near:
        return  # held back already: rounds some minutes apart must not begin their half an hour of waiting anew
    if not is_open and known and now - max(known) <= AWAY:
        return
    with worker.db.begin() as tx:
        marks.set_mark(tx, STOPPED, at=now if known else worker.began_at)


def is_caught_up(worker: Worker, now: datetime) -> bool:
    """Return whether what came while nobody worked has been fetched, or could not be for half an hour."""
    if not can_fetch(worker):
        return True
    with worker.db.read() as tx:
        found = marks.mark(tx, STOPPED)
        if found is None or found.at is None or found.value == OVER:
            return True
        since = found.at
        if not fetch.has_caught_up(tx, worker.fetchers, since, now):
            return False
    with worker.db.begin() as tx:
        still = marks.mark(tx, STOPPED)
        if still is not None and still.at == since:
            marks.set_mark(tx, STOPPED, at=since, value=OVER)
    return True


def is_held_back(db: Database) -> bool:
    """Return whether a restored database has not been let send again."""
    with db.read() as tx:
        return restored.waits_since(tx) is not None


def sender_beat(worker: Worker, now: datetime) -> None:
    """Note that the sender is alive, at most once in ten seconds, and hold back what is begun until caught up."""
    notice_stop(worker, now)
    worker.sender.answers_only = not is_caught_up(worker, now)
    with worker.db.read() as tx:
        found = marks.mark(tx, f"{HEARTBEAT}sender")
    if found is None or found.at is None or abs(now - found.at) >= timedelta(seconds=10):
        with worker.db.begin() as tx:
            marks.set_mark(tx, f"{HEARTBEAT}sender", at=now)
