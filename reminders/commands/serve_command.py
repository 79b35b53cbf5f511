"""`reminders serve`: console, webhooks and API; scheduler and senders in a child process."""

import argparse
import signal
import subprocess
import sys
import threading

import uvicorn

from reminders.commands.opening import opened
from reminders.core.reading import make_ready
from reminders.errors import BadInput
from reminders.logs import set_up
from reminders.memory import collect_rarely
from reminders.web.app import create_app
from reminders.web.beside import Beside
from reminders.wiring import local_if_demo

AGAIN_AFTER_SECONDS = 1.0
HERE = "127.0.0.1"


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--host", default=HERE)
    parser.add_argument("--port", type=int, default=8000)
    parser.add_argument("--no-scheduler", action="store_true", help="hear, read, judge and queue only")


def run(args: argparse.Namespace) -> int:
    """Serve until stopped."""
    if not 1 <= args.port <= 65_535:
        raise BadInput("--port must be 1 to 65535.")
    app = opened(args)
    if local_if_demo(app) and args.host != HERE:
        raise BadInput(f"--host: this database is a demo's, which is served on {HERE} alone.")
    set_up(app.settings.log)
    stop = threading.Event()
    # The server raises the signal that ended it once more: as an exit, so that the child is ended too.
    signal.signal(signal.SIGTERM, lambda *_: sys.exit(0))
    keeper = threading.Thread(target=keep_child, args=(stop,), daemon=True)
    if not args.no_scheduler:
        keeper.start()
    beside = Beside()
    web = create_app(app, beside)
    make_ready()
    collect_rarely()
    beside.start()
    try:
        uvicorn.run(
            web,
            host=args.host,
            port=args.port,
            access_log=False,
            log_config=None,
            proxy_headers=False,
            server_header=False,
        )
    finally:
        stop.set()
        beside.end()
        if keeper.is_alive():
            keeper.join(timeout=60)
    return 0


def keep_child(stop: threading.Event) -> None:
    """Keep a worker process running until told to stop; one that died is started again."""
    while not stop.is_set():
        command = [sys.executable, "-m", "reminders", "work", "--until-input-ends"]
        child = subprocess.Popen(command, stdin=subprocess.PIPE)  # noqa: S603 - our own program
        while child.poll() is None and not stop.is_set():
            stop.wait(0.5)
        if stop.is_set():
            child.terminate()
            child.wait(timeout=50)
            return
        stop.wait(AGAIN_AFTER_SECONDS)
