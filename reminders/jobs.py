"""APScheduler: a few ticks that call flows, nothing else. What is due stands in our tables, never in a job store."""

import logging
import os
import threading
import time
import uuid
from collections.abc import Callable

from apscheduler.schedulers.background import BackgroundScheduler

from reminders.flows import deliver, receive, tick
from reminders.flows.tick import Round, Worker
from reminders.wiring import App, fetchers_of, sender_of

ROUND_SECONDS = 30
HEAR_SECONDS = 5
LOOK_SECONDS = 0.5  # an answer is handed over within 2 s by an idle sender

log = logging.getLogger("reminders.jobs")


def worker_of(app: App, *, own_clock: bool = False) -> Worker:
    """Return what the jobs need, under a holder's name of its own."""
    sender = sender_of(app, own_clock=own_clock)
    return Worker(app.db, sender, app.clock, fetchers_of(app, sender.links.keys), uuid.uuid4().hex, app.clock())


def scheduler_of(worker: Worker) -> BackgroundScheduler:
    """Return a scheduler whose jobs are never too late, never doubled, and keep nothing of their own."""
    scheduler = BackgroundScheduler(
        timezone="UTC", job_defaults={"misfire_grace_time": None, "coalesce": True, "max_instances": 1}
    )
    scheduler.add_job(
        lambda: guarded("hear", lambda: tick.hear(worker, worker.clock())), "interval", seconds=HEAR_SECONDS
    )
    scheduler.add_job(lambda: guarded("round", lambda: one_round(worker)), "interval", seconds=ROUND_SECONDS)
    return scheduler


def one_round(worker: Worker) -> None:
    """Plan and judge once, as at now."""
    tick.work_through(worker, worker.clock(), Round())


def guarded(name: str, job: Callable[[], object]) -> None:
    """Run a job; a failure is logged and the next round tries again."""
    try:
        job()
    except Exception:
        log.exception("job failed", extra={"job": name})


def work(app: App, stop: threading.Event) -> None:
    """Run scheduler and sender of an App until told to stop."""
    keep_working(worker_of(app), stop)


def keep_working(worker: Worker, stop: threading.Event) -> None:
    """Run a worker's jobs and send until told to stop."""
    scheduler = scheduler_of(worker)
    guarded("hear", lambda: tick.hear(worker, worker.clock()))
    guarded("round", lambda: one_round(worker))
    scheduler.start()
    try:
        while not stop.is_set():
            sent = 0
            try:
                tick.sender_beat(worker, worker.clock())  # first: after a stop nothing begun may go
                sent = deliver.send_due(worker.sender, patient=False).sent
            except Exception:
                log.exception("sender failed")
            if not sent:
                stop.wait(LOOK_SECONDS)
    finally:
        scheduler.shutdown(wait=True)
        deliver.close(worker.sender)


def handle_kept(app: App, told_by: int, tell: int) -> None:
    """Handle what a web process has kept: at first, and each time that it writes a byte, until it ends.

    As many bytes are answered once what was kept before them has been looked after.
    """
    parent = os.getppid()
    guarded("kept texts", lambda: catch_up(app, parent))
    while asked := os.read(told_by, 1024):
        time.sleep(receive.MOMENT_SECONDS)
        guarded("kept texts", lambda: catch_up(app, parent))
        if os.getppid() != parent:
            return
        os.write(tell, asked)


def catch_up(app: App, parent: int) -> None:
    """Handle kept texts until none is waiting, or the web process is gone: its successor starts another."""
    while os.getppid() == parent and receive.handle_round(app.db, app.clock(), receive.BATCH, set()):
        pass
