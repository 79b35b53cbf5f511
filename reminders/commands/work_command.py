"""`reminders work`: scheduler and senders alone, until stopped."""

import argparse
import os
import signal
import threading

from reminders import jobs
from reminders.commands.opening import opened
from reminders.logs import set_up
from reminders.memory import collect_rarely

LATER = 5  # steps of niceness, of 19


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument(
        "--until-input-ends", action="store_true", help="stop when standard input ends, as it does when its parent dies"
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
    collect_rarely()
    stop = threading.Event()
    for number in (signal.SIGTERM, signal.SIGINT):
        signal.signal(number, lambda *_: stop.set())
    if args.until_input_ends:
        os.nice(LATER)  # beside the web process: hearing goes before sending
        threading.Thread(target=stop_at_end_of_input, args=(stop,), daemon=True).start()
    jobs.work(app, stop)
    return 0
