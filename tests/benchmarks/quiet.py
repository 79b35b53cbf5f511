"""What a quiet service costs: a round with nothing due, and the memory of the web process, by how many are enrolled."""

import gc
import subprocess
import time
import urllib.request
from datetime import timedelta
from pathlib import Path
from statistics import median

from reminders.flows import fetch, tick
from reminders.store.db import Database
from tests.benchmarks.crowd import DUE, sqlite_crowd
from tests.benchmarks.figures import Figure, timed
from tests.benchmarks.planning import quiet_sender
from tests.chaos import processes
from tests.chaos.test_hearing import free_port

QUIET = DUE - timedelta(hours=6)
ROUNDS = 41


def quiet_round(path: Path) -> float:
    """Return the milliseconds of this process's work that a round with nothing due takes, the median of many."""
    db = Database(f"sqlite:///{path}")
    sender = quiet_sender(db)
    moment = [QUIET]
    sender.clock = lambda: moment[0]
    worker = tick.Worker(db, sender, sender.clock, fetch.Fetchers(), "one", QUIET)
    taken = []
    gc.collect()
    gc.freeze()  # what this process did before is no part of a round
    for _ in range(ROUNDS):
        moment[0] += timedelta(seconds=30)
        taken.append(timed(lambda: tick.run(worker, moment[0])).work)
    db.close()
    return median(taken) * 1000


def measure(place: Path, few: int, many: int) -> list[Figure]:
    """Return what a quiet round costs with few and with many enrolled."""
    small, large = (quiet_round(sqlite_crowd(place, clients)) for clients in (few, many))
    return [
        Figure(f"a round with nothing due, {many} enrolled", large, 10, 40, " ms", at_least=False),
        Figure(f"the same, beside {few} enrolled", large / small, 2, 4, at_least=False, note=f"{small:.2f} ms"),
    ]


def measure_memory(place: Path, clients: int) -> list[Figure]:
    """Return the resident memory of the web process after its pages and a webhook's refusal were asked for."""
    port = free_port()
    clock = place / "memory-clock"
    clock.write_text(DUE.isoformat(), encoding="utf-8")
    env = processes.environment(
        f"sqlite:///{sqlite_crowd(place, clients)}", "http://127.0.0.1:9", clock,
        REMINDERS_PUBLIC_URL=f"http://127.0.0.1:{port}",
    )  # fmt: skip
    server = processes.command(["serve", "--no-scheduler", "--port", str(port)], env)
    try:
        wait_for(port)
        for _ in range(50):
            for path in ("/healthz", "/readyz", "/metrics", "/sign-in"):
                ask(f"http://127.0.0.1:{port}{path}")
        rss = int(subprocess.run(["ps", "-o", "rss=", "-p", str(server.pid)], capture_output=True, check=True).stdout)
    finally:
        server.kill()
        server.wait()
    return [Figure(f"memory of the web process, {clients} enrolled", rss / 1024, 200, 300, " MB", at_least=False)]


def wait_for(port: int) -> None:
    """Wait until the web process answers."""
    for _ in range(600):
        if ask(f"http://127.0.0.1:{port}/healthz") == 200:
            return
        time.sleep(0.05)
    raise AssertionError("the web process does not answer")


def ask(url: str) -> int:
    """Return what a GET is answered with, 0 when nobody answers."""
    try:
        with urllib.request.build_opener(urllib.request.ProxyHandler({})).open(url, timeout=20) as answer:
            answer.read()
            return int(answer.status)
    except urllib.error.HTTPError as error:
        return error.code
    except OSError:
        return 0
