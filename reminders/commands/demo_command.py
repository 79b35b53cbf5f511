"""`reminders demo`: a fictional clinic lives through some weeks; the account of them, the digest, then the console."""

import argparse
import sys
from pathlib import Path

from reminders.demo import account, building, people, story
from reminders.demo.progress import Progress
from reminders.errors import BadInput
from reminders.memory import collect_rarely
from reminders.store.db import Database

MOST_WEEKS = 52
FILE = "demo.db"


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--weeks", type=int, default=8, help="how many weeks the clinic lives through (8)")
    parser.add_argument("--clients", type=int, default=24, help="how many clients it has (24)")
    parser.add_argument("--seed", type=int, default=1, help="another number, another story; the same number, the same")
    parser.add_argument("--once", action="store_true", help="stop after the printed digest")
    parser.add_argument("--keep", action="store_true", help="serve the demo.db that is there")
    parser.add_argument("--port", type=int, default=8000, help="where it is served on this machine (8000)")


def run(args: argparse.Namespace) -> int:
    """Live the weeks, tell of them, and serve."""
    check(args)
    path = Path(FILE).absolute()
    if not args.once:
        from reminders.commands import demo_serving  # the web stack is not needed for the story

        demo_serving.refuse_taken_port(args.port)
    if args.keep:
        require_demo(path)
    else:
        live(args, path)
    if not args.once:
        demo_serving.serve(path, args.port)
    return 0


def check(args: argparse.Namespace) -> None:
    """Raise BadInput naming the option that is out of range."""
    if not 1 <= args.weeks <= MOST_WEEKS:
        raise BadInput(f"--weeks must be 1 to {MOST_WEEKS}.")
    if not 1 <= args.clients <= people.MOST_CLIENTS:
        raise BadInput(f"--clients must be 1 to {people.MOST_CLIENTS}.")
    if not 1 <= args.port <= 65_535:
        raise BadInput("--port must be 1 to 65535.")
    if args.keep and args.once:
        raise BadInput("--keep serves the demo that is there; leave out --once.")


def require_demo(path: Path) -> None:
    """Raise BadInput when the file is no demo's."""
    if not path.exists():
        raise BadInput(f"--keep: there is no {path}; leave out --keep to make one.")
    db = Database(f"sqlite:///{path}")
    try:
        if not building.is_demo(db):
            raise BadInput(f"--keep: {path} is not a demo's database.")
    finally:
        db.close()


def live(args: argparse.Namespace, path: Path) -> None:
    """Live the weeks and print what happened and the last digests."""
    collect_rarely()
    chosen = people.people(args.clients)
    under_way = story.begin(path, chosen, args.weeks, args.seed, args.port)
    began_at = under_way.now
    progress = Progress(sys.stderr, began_at, under_way.ends_at, args.weeks)
    under_way.tell = progress
    under_way.live()
    progress.end()
    with under_way.db.read() as tx:
        print(account.account(tx, under_way.app.texts, chosen, began_at, under_way.now))
        for text in account.last_digests(tx):
            print(text)
    under_way.db.close()
