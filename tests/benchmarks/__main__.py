"""`python -m tests.benchmarks`: measures all, or the parts named, and prints one table; --long in the full sizes."""

import argparse
import os
import sys
from collections.abc import Callable
from pathlib import Path

from tests.benchmarks import planning, quiet, sending, webhook
from tests.benchmarks.crowd import folder
from tests.benchmarks.figures import Figure
from tests.benchmarks.server import named, postgres

# Sizes: short, long.
CROWD, TIMES = (300, 10_000), (1, 5)
ENROLLED = (2_000, 100_000)


def parts(place: Path, long: bool) -> dict[str, Callable[[], list[Figure]]]:
    """Return what can be measured, by name."""
    clients, times, enrolled = CROWD[long], TIMES[long], ENROLLED[long]
    return {
        "sending": lambda: sending.measure(place, clients, times),
        "planning": lambda: planning.measure(place, clients, min(times, 3)),
        "webhook": lambda: webhook.measure(place, clients, (100, 1_000)[long], (2, 15)[long], min(times, 3)),
        "quiet": lambda: quiet.measure(place, (200, 1_000)[long], enrolled),
        "memory": lambda: quiet.measure_memory(place, enrolled),
        "workers": lambda: with_postgres(place, clients, min(times, 3)),
    }


def with_postgres(place: Path, clients: int, times: int) -> list[Figure]:
    """Measure workers on a PostgreSQL server of this run's own; nothing where there is none."""
    with postgres() as server:
        return planning.measure_workers(server, named, place, clients, times) if server else []


def table(figures: list[Figure]) -> str:
    """Return the figures as a table."""
    head = ["| work | measured | goal | | |", "|---|---|---|---|---|"]
    return "\n".join([*head, *(figure.line() for figure in figures)])


def main() -> None:
    """Measure and print."""
    given = argparse.ArgumentParser(prog="python -m tests.benchmarks")
    given.add_argument("--long", action="store_true", help="the full sizes")
    given.add_argument("parts", nargs="*", help="sending, planning, webhook, quiet, memory, workers")
    args = given.parse_args()
    load = os.getloadavg()[0]
    figures: list[Figure] = []
    with folder() as place:
        for name, measure in parts(place, args.long).items():
            if name in args.parts or not args.parts:
                figures += measure()
                print(figures[-1].line() if figures else name, file=sys.stderr, flush=True)
    print(table(figures))
    print(f"\n{os.cpu_count()} cores; load average {load:.1f} at the start, {os.getloadavg()[0]:.1f} at the end.")


if __name__ == "__main__":
    main()
