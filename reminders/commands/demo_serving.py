"""Serves a demo: on this machine alone, its worker in a child process, its clock going on from the story's end."""

import multiprocessing
import os
import signal
import socket
import threading
from datetime import timedelta
from pathlib import Path

import uvicorn
from sqlmodel import col, select

from reminders import jobs
from reminders.clock import Clock, system_clock
from reminders.demo import building
from reminders.errors import BadInput
from reminders.logs import set_up
from reminders.store import marks
from reminders.store.tables import Staff
from reminders.web.app import create_app
from reminders.wiring import App, build_app

HOST = "127.0.0.1"
LOOK_SECONDS = 2.0


def refuse_taken_port(port: int) -> None:
    """Raise BadInput when something listens on the port already, before weeks are lived for nothing."""
    with socket.socket() as probe:
        probe.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        try:
            probe.bind((HOST, port))
        except OSError:
            raise BadInput(f"--port: {port} on {HOST} is taken or not allowed; choose another.") from None


def app_of(path: Path, port: int, ahead: timedelta) -> App:
    """Return a demo's App whose clock is the machine's, moved."""
    clock: Clock = lambda: system_clock() + ahead  # noqa: E731 - named for its type
    return build_app(building.demo_settings(path, port), clock)


def serve(path: Path, port: int) -> None:
    """Serve the demo until stopped: its clock begins at the newest instant that was worked through."""
    first = app_of(path, port, timedelta(0))
    with first.db.read() as tx:
        reached = marks.worked_through(tx) or building.begins_at()
    first.db.close()
    ahead = reached - system_clock()
    app = app_of(path, port, ahead)
    set_up("warning")
    say_where(app, port)
    child = multiprocessing.get_context("spawn").Process(
        target=work, args=(path, port, ahead, os.getpid()), daemon=True
    )
    child.start()
    try:
        uvicorn.run(
            create_app(app),
            host=HOST,
            port=port,
            access_log=False,
            log_config=None,
            proxy_headers=False,
            server_header=False,
        )
    finally:
        child.terminate()
        child.join(timeout=30)


def work(path: Path, port: int, ahead: timedelta, parent: int) -> None:
    """Run scheduler and sender of a demo, until told to stop or left alone."""
    set_up("warning")
    stop = threading.Event()
    signal.signal(signal.SIGTERM, lambda *_: stop.set())
    signal.signal(signal.SIGINT, signal.SIG_IGN)  # Ctrl-C reaches both; the parent ends this one
    threading.Thread(target=stop_when_alone, args=(parent, stop), daemon=True).start()
    jobs.work(app_of(path, port, ahead), stop)


def stop_when_alone(parent: int, stop: threading.Event) -> None:
    """Stop when the parent process is gone."""
    while not stop.wait(LOOK_SECONDS):
        if os.getppid() != parent:
            stop.set()


def say_where(app: App, port: int) -> None:
    """Print the address and the sign-ins."""
    base = f"http://{HOST}:{port}"
    with app.db.read() as tx:
        staff = list(tx.exec(select(Staff).where(col(Staff.is_active).is_(True)).order_by(col(Staff.id))))
    print(f"\nThe clinic goes on at {base}/demo (Ctrl-C ends it; reminders demo --keep serves it again).")
    print("Sign in with one click:")
    for one in staff:
        print(f"  {one.name}, {one.role}: {base}/demo/sign-in/{one.id}")
    print(f"Play a client: {base}/demo", flush=True)
