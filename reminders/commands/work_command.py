"""`reminders work`: scheduler and senders alone, until stopped."""

import argparse
import signal
import threading

from reminders import jobs
from reminders.commands.opening import opened
from reminders.logs import set_up


def configure(parser: argparse.ArgumentParser) -> None:
    """The command has no options: what it does is in the settings."""


def run(args: argparse.Namespace) -> int:
    """Work until a signal comes."""
    app = opened(args)
    set_up(app.settings.log)
    stop = threading.Event()
    for number in (signal.SIGTERM, signal.SIGINT):
        signal.signal(number, lambda *_: stop.set())
    jobs.work(app, stop)
    return 0
