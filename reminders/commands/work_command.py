"""`reminders work`: scheduler and senders alone, until stopped."""

import argparse
import os
import signal
import sys
import threading

from reminders import jobs
from reminders.commands.opening import opened
from reminders.core.reading import make_ready
from reminders.logs import set_up
from reminders.memory import collect_rarely
from reminders.web.beside import KEPT_TEXTS

LATER = 5  # steps of niceness, of 19
A_LITTLE_LATER = 2


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument(
        "--until-input-ends", action="store_true", help="stop when standard input ends, as it does when its parent dies"
    )
    parser.add_argument(
        KEPT_TEXTS, action="store_true", help="only handle what a web process has kept, at each byte of standard input"
    )


def stop_at_end_of_input(stop: threading.Event) -> None:
    """Wait for the end of standard input, then stop: whoever began this process is gone."""
    while os.read(0, 1024):
        pass
    stop.set()


def run(args: argparse.Namespace) -> int:
    """Work until a signal comes."""
    app = opened(args)
    set_up(app.settings.log)
    if args.kept_texts:
        make_ready()
        collect_rarely()
        os.nice(A_LITTLE_LATER)  # a call is answered first
        jobs.handle_kept(app, sys.stdin.fileno(), sys.stdout.fileno())
        return 0
    collect_rarely()
    stop = threading.Event()
    for number in (signal.SIGTERM, signal.SIGINT):
        signal.signal(number, lambda *_: stop.set())
    if args.until_input_ends:
        os.nice(LATER)  # beside the web process: hearing goes before sending
        threading.Thread(target=stop_at_end_of_input, args=(stop,), daemon=True).start()
    jobs.work(app, stop)
    return 0
