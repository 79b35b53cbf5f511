"""Planning and rendering the crowd beside one APScheduler job a client in its SQL job store; and with more workers."""

import shutil
import threading
import time
from datetime import UTC, datetime
from multiprocessing.context import ForkServerProcess
from pathlib import Path
from typing import Any

from apscheduler.jobstores.sqlalchemy import SQLAlchemyJobStore
from apscheduler.schedulers.background import BackgroundScheduler
from sqlalchemy import create_engine, text
from sqlmodel import select

from reminders.channels.local import LocalChannel
from reminders.flows import fetch, render, say, tick
from reminders.flows.claiming import claim
from reminders.flows.render import Links
from reminders.flows.sender import Sender
from reminders.store import bulk, clients, outbox
from reminders.store.db import Database
from reminders.store.tables import Client, Contact, ExerciseSession, Outbound
from reminders.texts import Texts
from tests.benchmarks.crowd import DUE, enrol_many, fresh, sqlite_crowd
from tests.benchmarks.figures import Figure, Taken, alternating, middle, timed
from tests.benchmarks.sending import TEXTS, plan_all
from tests.chaos.processes import start

MOST_JOBS = 1_000  # a job store's cost grows with each job alone, so that fewer do
DONE: list[int] = []
STORE: list[Database] = []
FINISHED = threading.Event()


def quiet_sender(db: Database, name: str = "one") -> Sender:
    """Return a sender that claims and renders; nothing is handed over."""
    links = Links("http://127.0.0.1:8000", ("benchmark-secret-benchmark",))
    sender = Sender(db, {"sms": LocalChannel(), "email": LocalChannel()}, TEXTS, lambda: DUE, links, own_clock=True)
    sender.name, sender.seconds_each = name, 1e-3
    return sender


def claim_all(sender: Sender) -> int:
    """Claim, and so render, until nothing is left; return how many."""
    total = 0
    while found := len(claim(sender)[0]):
        total += found
    return total


def ours(place: Path, crowd: Path, clients: int) -> Taken:
    """Plan and render a fresh crowd."""
    path = place / "planned.db"
    shutil.copy(crowd, path)
    db = Database(f"sqlite:///{path}")
    sender = quiet_sender(db)

    def work() -> None:
        assert plan_all(db) == clients
        assert claim_all(sender) == clients

    taken = timed(work)
    db.close()
    return taken


def one_client(number: int, jobs: int) -> None:
    """Do what one client's job must: read her record, render her text, and write it down to be sent."""
    with STORE[0].begin() as tx:
        client, contact = tx.get_one(Client, number), tx.get_one(Contact, number)
        session = tx.exec(select(ExerciseSession).where(ExerciseSession.client_id == number)).one()
        clinic, therapist = clients.the_clinic(tx, client.clinic_id), clients.therapist_of(tx, client)
        program = clients.program_on(tx, number, session.on_date)
        row = Outbound(
            key=f"job:{number}", kind="reminder", template="reminder", session_id=session.id, due_at=DUE,
            **say.frame(clinic, client, contact, DUE),
        )  # fmt: skip
        hours, days = clients.hours_of(clinic), "mon+wed+fri"
        scene = render.Scene(clinic, hours, client, therapist, None, session, program, days)
        assert session is not None
        render.show_session(scene, "en")
        bulk.write_shown(tx, [session])
        render.render(TEXTS, scene, row, Links("http://127.0.0.1:8000", ("benchmark-secret-benchmark",)), DUE)
        outbox.queue(tx, row)
    DONE.append(number)
    if len(DONE) >= jobs:
        FINISHED.set()


def job_store(place: Path, crowd: Path, jobs: int) -> Taken:
    """Let one job a client come due at once; the store writes each back with its next time."""
    path, record = place / "jobs.db", place / "jobs-record.db"
    path.unlink(missing_ok=True)
    shutil.copy(crowd, record)
    STORE[:] = [Database(f"sqlite:///{record}")]
    DONE.clear()
    FINISHED.clear()
    scheduler = BackgroundScheduler(
        jobstores={"default": SQLAlchemyJobStore(url=f"sqlite:///{path}")},
        job_defaults={"misfire_grace_time": None, "coalesce": True},
        timezone="UTC",
    )
    scheduler.start(paused=True)
    due = datetime.now(UTC)
    for number in range(jobs):
        scheduler.add_job(
            "tests.benchmarks.planning:one_client", "cron", args=(number + 1, jobs), next_run_time=due,
            day_of_week="mon,wed,fri", hour=8, minute=30, timezone="America/New_York",
        )  # fmt: skip

    def work() -> None:
        scheduler.resume()
        assert FINISHED.wait(600)

    taken = timed(work)
    scheduler.shutdown()
    STORE[0].close()
    return taken


def measure(place: Path, clients: int, times: int) -> list[Figure]:
    """Return how fast planning is beside a job a client."""
    jobs = min(clients, MOST_JOBS)
    crowd = sqlite_crowd(place, clients)
    mine, theirs = alternating(lambda: ours(place, crowd, clients), lambda: job_store(place, crowd, jobs), times=times)
    ratios = sorted(other.wall / jobs / (one.wall / clients) for one, other in zip(mine, theirs, strict=True))
    one, other = middle(mine), middle(theirs)
    note = f"{one.wall / clients * 1000:.2f} ms a client beside {other.wall / jobs * 1000:.2f} ms a job"
    return [
        Figure(f"{clients} planned and rendered, beside a job a client", ratios[len(ratios) // 2], 10, 3, note=note)
    ]


def plan_and_render(url: str, name: str, gate: str) -> None:
    """Be one worker: plan under the lease, claim and render, until nothing is left."""
    db = Database(url)
    sender = quiet_sender(db, name)
    worker = tick.Worker(db, sender, lambda: DUE, fetch.Fetchers(), name, DUE)
    with db.read() as tx:
        tx.execute(text("SELECT 1"))
    Texts().text("reminder", "en", {"first_name": "A", "items": [], "is_easy": False, "more": 0, "link": ""})
    Path(gate, name).touch()
    while not Path(gate, "go").exists():
        time.sleep(0.001)
    while True:
        planned = tick.do(worker, tick.PLAN, DUE)
        if claim_all(sender) or planned:
            continue
        if is_over(db):
            break
        time.sleep(0.005)  # another worker is planning
    db.close()


def is_over(db: Database) -> bool:
    """Return whether no session waits to be planned and no message to be claimed."""
    with db.read() as tx:
        waits = tx.execute(text("SELECT count(*) FROM outbound WHERE state = 'waiting'")).scalar_one()
        return not waits and not tick.PLAN.is_due(tx, DUE)


def postgres_crowd(server: str, named: Any, clients: int) -> str:
    """Return the name of a PostgreSQL database with a crowd, to be copied."""
    alone(server, "DROP DATABASE IF EXISTS bench")
    alone(server, "CREATE DATABASE bench")
    db = fresh(named(server, "bench"))
    enrol_many(db, clients)
    with db.begin() as tx:
        tx.execute(text("SELECT setval('exercise_session_id_seq', (SELECT max(id) FROM exercise_session))"))
    db.close()
    return "bench"


def alone(server: str, statement: str) -> None:
    """Run a statement that allows no transaction around it."""
    engine = create_engine(server, isolation_level="AUTOCOMMIT")
    with engine.connect() as connection:
        connection.execute(text(statement))
    engine.dispose()


def with_workers(server: str, named: Any, place: Path, workers: int) -> Taken:
    """Plan and render a fresh copy of the crowd with so many processes."""
    alone(server, "DROP DATABASE IF EXISTS crowd_copy WITH (FORCE)")
    alone(server, "CREATE DATABASE crowd_copy TEMPLATE bench")
    gate = place / f"gate-{workers}-{time.monotonic_ns()}"
    gate.mkdir()
    url = named(server, "crowd_copy")
    processes: list[ForkServerProcess] = [
        start(plan_and_render, url, f"worker-{number}", str(gate)) for number in range(workers)
    ]
    while len(list(gate.iterdir())) < workers:
        time.sleep(0.01)

    def work() -> None:
        (gate / "go").touch()
        for process in processes:
            process.join()

    taken = timed(work)
    assert all(process.exitcode == 0 for process in processes)
    return taken


def measure_workers(server: str, named: Any, place: Path, clients: int, times: int) -> list[Figure]:
    """Return how much faster four workers are than one."""
    postgres_crowd(server, named, clients)
    one, four = alternating(
        lambda: with_workers(server, named, place, 1),
        lambda: with_workers(server, named, place, 4),
        times=times,
    )
    ratio = middle(one).wall / middle(four).wall
    note = f"{clients / middle(one).wall:.0f} a second with one, {clients / middle(four).wall:.0f} with four"
    return [Figure(f"PostgreSQL, {clients} planned and rendered, 1 to 4 workers", ratio, 1.5, 0.5, note=note)]
