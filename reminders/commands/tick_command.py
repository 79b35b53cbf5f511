"""`reminders tick`: every due piece of work once, as at an instant, sending until nothing more is due."""

import argparse
import sys

from reminders import jobs
from reminders.commands.opening import add_at, opened, print_json
from reminders.flows import deliver, tick
from reminders.memory import collect_rarely


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    add_at(parser)
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def run(args: argparse.Namespace) -> int:
    """Run one round."""
    app = opened(args)
    collect_rarely()
    worker = jobs.worker_of(app, own_clock=bool(args.at))
    try:
        done = tick.run(worker, app.clock())
    finally:
        deliver.close(worker.sender)
    for sentence in done.said:
        print(sentence, file=sys.stderr)
    shown = {
        "at": app.clock().strftime("%Y-%m-%dT%H:%M:%SZ"),
        **{
            name: getattr(done, name)
            for name in ("planned", "sent", "failed", "waiting", "missed", "alerts", "digests")
        },
    }
    if args.json:
        print_json(shown)
    else:
        print(", ".join(f"{name} {value}" for name, value in shown.items()))
    return 0
