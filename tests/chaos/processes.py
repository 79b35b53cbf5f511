"""Processes of the service that tests kill. They are forked from one that has imported everything, so each is quick.

What runs in them is what `reminders work`, `reminders tick` and `reminders serve` run; only the provider's time-out
and how many rows a claim takes are made smaller, so that a kill finds something to cut off.
"""

import logging
import multiprocessing
import os
import signal
import subprocess
import sys
import threading
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from multiprocessing.context import ForkServerContext, ForkServerProcess
from pathlib import Path
from typing import Any

from reminders import __main__ as program
from reminders import jobs
from reminders.channels.sms import SmsChannel
from reminders.flows import deliver, tick
from reminders.logs import set_up
from reminders.settings import Settings
from reminders.store.db import Database, Tx
from reminders.wiring import App, build_app
from tests.standins.forms import ACCOUNT_SID, AUTH_TOKEN, SENDER

TIMEOUT_SECONDS = 0.45  # of 45, as the provider's slow answers are 0.4 of 40
CONTEXT: ForkServerContext = multiprocessing.get_context("forkserver")
CONTEXT.set_forkserver_preload(["tests.chaos.processes", "reminders.commands.serve_command"])


def environment(database_url: str, provider_url: str, clock: Path, **more: str) -> dict[str, str]:
    """Return the settings under which the service talks to the stand-in."""
    return {
        "REMINDERS_DATABASE_URL": database_url,
        "REMINDERS_SECRET_KEY": "a-secret-of-these-tests",
        "REMINDERS_SMS": "twilio",
        "TWILIO_ACCOUNT_SID": ACCOUNT_SID,
        "TWILIO_AUTH_TOKEN": AUTH_TOKEN,
        "REMINDERS_TWILIO_SENDER": SENDER,
        "REMINDERS_TWILIO_API_URL": provider_url,
        "REMINDERS_SMS_PER_SECOND": "0",
        "REMINDERS_CLOCK": f"@{clock}",
        "REMINDERS_LOG": "warning",
        **more,
    }


def app_of(env: Mapping[str, str]) -> App:
    """Return an App whose texts give up sooner."""
    app = build_app(Settings.from_env(env))
    app.channels = {**app.channels, "sms": SmsChannel(app.settings, TIMEOUT_SECONDS)}
    return app


def worker_of(env: Mapping[str, str], batch: int = deliver.BATCH) -> tick.Worker:
    """Return a worker over that App."""
    worker = jobs.worker_of(app_of(env))
    worker.sender.batch = batch
    return worker


@contextmanager
def working_here(env: Mapping[str, str]) -> Iterator[tick.Worker]:
    """Lend a worker in this process, whose rounds are those of `reminders tick`."""
    worker = worker_of(env)
    try:
        yield worker
    finally:
        deliver.close(worker.sender)
        worker.db.close()


def start(target: Any, *given: Any) -> ForkServerProcess:
    """Start a process that tests may kill."""
    process = CONTEXT.Process(target=target, args=given, daemon=True)
    process.start()
    return process


def complain_to(path: str) -> None:
    """Let a process write what it logs into a file, where the test looks for what must not be there."""
    handle = os.open(path, os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
    os.dup2(handle, 2)
    sys.stderr = os.fdopen(2, "w", buffering=1, closefd=False)
    set_up("warning")


def work(env: Mapping[str, str], log: str, batch: int) -> None:
    """Work until killed."""
    complain_to(log)
    jobs.keep_working(worker_of(env, batch), threading.Event())


def tick_until(env: Mapping[str, str], log: str, commits: int, before: bool) -> None:
    """Run one round and die by SIGKILL at a commit, right before or right after it."""
    complain_to(log)
    worker = worker_of(env)
    worker.db.__class__ = mortal(commits, before)
    tick.run(worker, worker.clock())
    logging.shutdown()
    os._exit(0)  # threads of the sender need not end


def mortal(commits: int, before: bool) -> type[Database]:
    """Return a database whose n-th commit is the last thing this process does, or is about to do."""
    done = [0]
    lock = threading.Lock()

    class Mortal(Database):
        @contextmanager
        def begin(self) -> Iterator[Tx]:
            with super().begin() as tx:
                yield tx
                with lock:
                    done[0] += 1
                if before and done[0] == commits:
                    os.kill(os.getpid(), signal.SIGKILL)
            if done[0] == commits:
                os.kill(os.getpid(), signal.SIGKILL)

    return Mortal


def serve(env: Mapping[str, str], log: str, port: int) -> None:
    """Serve until killed, as `reminders serve --no-scheduler` does."""
    complain_to(log)
    os.environ.update(env)
    program.main(["serve", "--no-scheduler", "--port", str(port)])


def command(words: list[str], env: Mapping[str, str]) -> subprocess.Popen[bytes]:
    """Start the program itself, as an operator does."""
    return subprocess.Popen([sys.executable, "-m", "reminders", *words], env={**os.environ, **env})
