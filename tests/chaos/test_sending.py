"""The sender killed by SIGKILL at random moments and at every commit in turn: each message once, on either database."""

import random
import time
from collections.abc import Callable
from dataclasses import dataclass, field
from multiprocessing.context import ForkServerProcess
from pathlib import Path

import pytest

from reminders.store.db import Database
from tests.chaos import processes
from tests.chaos.conftest import LARGE, MEDIUM, SMALL
from tests.chaos.crowd import FRIDAY, MONDAY, WEDNESDAY, check_exactly_once, settle, still_open
from tests.chaos.provider import FileClock, LateProvider

Crowd = Callable[[int], str]
# In all four runs together 24 kills, in the long form 800.
FORMS = [
    pytest.param(6, MEDIUM, id="short"),
    pytest.param(200, LARGE, id="long", marks=pytest.mark.long),
]
SLOW_SECONDS = 0.4
BATCH = 6
PATIENCE_SECONDS = 0.6


@dataclass
class Killer:
    """Keeps workers running over a database and kills them in the middle of their calls."""

    env: dict[str, str]
    provider: LateProvider
    clock: FileClock
    log: str
    workers: int
    chance: random.Random
    alive: list[ForkServerProcess] = field(default_factory=list)
    killed: int = 0

    def kill(self, kills: int) -> None:
        """Kill so many, or fewer when all is sent before that."""
        db = Database(self.env["REMINDERS_DATABASE_URL"])
        goal, before = self.killed + kills, self.provider.asked
        while self.killed < goal:
            missing = self.workers - len(self.alive)
            self.alive += [processes.start(processes.work, self.env, self.log, BATCH) for _ in range(missing)]
            if not self.next_moment() and self.provider.asked > before and not still_open(db, self.clock.now):
                break
            self.end(self.chance.randrange(len(self.alive)))
            self.killed += 1
            # Longer than a lease where nobody is left to settle what was claimed.
            self.clock.pass_time(100.0 if self.workers == 1 else 25.0)
        while self.alive:
            self.end(0)
        db.close()

    def next_moment(self) -> bool:
        """Wait for some calls and a little more; False when nobody calls any more."""
        wanted, until = self.provider.asked + self.chance.randint(1, BATCH), time.monotonic() + PATIENCE_SECONDS
        while self.provider.asked < wanted:
            if time.monotonic() > until:
                return False
            time.sleep(0.002)
        time.sleep(self.chance.uniform(0.0, 0.03))
        return True

    def end(self, place: int) -> None:
        """Kill one worker."""
        victim = self.alive.pop(place)
        victim.kill()
        victim.join()


@pytest.mark.parametrize("workers", [1, 4])
@pytest.mark.parametrize(("kills", "clients"), FORMS)
def test_each_client_has_each_message_once_however_often_the_sender_is_killed(
    crowd: Crowd, tmp_path: Path, workers: int, kills: int, clients: int
) -> None:
    clock = FileClock(tmp_path / "clock", MONDAY)
    url, log = crowd(clients), tmp_path / "log"
    seen = 0
    with LateProvider(clock, seed=kills) as provider:
        env = processes.environment(url, provider.url, clock.path)
        killer = Killer(env, provider, clock, str(log), workers, random.Random(workers))
        for kind, start in (("welcome", MONDAY), ("reminder", WEDNESDAY), ("reminder", FRIDAY)):
            clock.set(start)
            provider.bad_day(SLOW_SECONDS)
            killer.kill((kills - killer.killed + 1) // (2 if kind == "welcome" else 1))
            provider.good_day()
            settle(env, clock)
            texts = provider.accepted[seen:]
            seen += len(texts)
            check_exactly_once(url, texts, kind, clients, start.date() if kind == "reminder" else None)
            if killer.killed >= kills:
                break
    assert killer.killed >= kills
    assert "error" not in (log.read_text() if log.exists() else "")


# What lies between two commits is cut off at its end, right before the next.
COMMITS = [
    pytest.param(False, id="right after it", marks=pytest.mark.long),
    pytest.param(True, id="right before it"),
]


@pytest.mark.parametrize("before", COMMITS)
def test_each_client_has_each_message_once_whichever_commit_is_the_last(
    crowd: Crowd, tmp_path: Path, before: bool
) -> None:
    deaths = 0
    for commits in range(1, 100):
        clock = FileClock(tmp_path / "clock", MONDAY)
        url = crowd(SMALL)
        with LateProvider(clock, seed=commits) as provider:
            env = processes.environment(url, provider.url, clock.path)
            process = processes.start(processes.tick_until, env, str(tmp_path / "log"), commits, before)
            process.join()
            clock.pass_time(91.0)
            settle(env, clock)
            check_exactly_once(url, provider.accepted, "welcome", SMALL)
        if process.exitcode == 0:
            break
        deaths += 1
    assert deaths >= 8
