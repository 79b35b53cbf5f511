"""How many replies a second the reader reads on one core, beside a general parsing library doing plain amounts only."""

import time
from collections.abc import Callable
from typing import Any

import pyparsing as pp
import pytest

from reminders.core.reading import make_ready, patterns, read_reply
from reminders.memory import collect_rarely
from tests.corpus.measure import HERE, PARSED, rows_of

ROWS = [row for row in rows_of(HERE / "replies-practice.jsonl") if row["lang"] == "en"]
NEW = [row for name in ("en-build-65", "en-build-66", "en-build-67") for row in rows_of(HERE / f"replies-{name}.jsonl")]
# The goal is 5,000 on a free core; a machine that runs other tests beside this one gives less.
FLOOR = 1_500
WARM = 20  # times that all is read before: a rule that is met often is made faster


def a_second(work: Callable[[], object], replies: int, times: int = 3) -> float:
    """Return how many replies a second of this process's own time a piece of work reads, at best of so many times."""
    best = 0.0
    for _ in range(times):
        started = time.process_time()
        work()
        best = max(best, replies / max(1e-9, time.process_time() - started))
    return best


def read_all(rows: list[dict[str, Any]] = ROWS) -> None:
    for row in rows:
        read_reply(row["text"], "en", PARSED[row["session"]], row["asked"])


def amounts_alone() -> None:
    """Find "2x10", "2 sets of 10" and "pain 3" with a general grammar, and nothing else."""
    number = pp.Word(pp.nums)
    amount = number + (pp.Literal("x") | pp.CaselessKeyword("sets of")) + number
    grammar = amount | (pp.CaselessKeyword("pain") + number)
    for row in ROWS:
        list(grammar.scan_string(row["text"]))


@pytest.mark.benchmark
def test_the_reader_reads_thousands_of_replies_a_second(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    make_ready()
    collect_rarely()  # as every process of ours does; it helps the grammar beside it too
    first = a_second(read_all, len(ROWS), 1)
    with monkeypatch.context() as nothing_kept:
        nothing_kept.setattr(patterns, "_SHORT", 0)
        for _ in range(WARM):
            read_all()
        fresh = a_second(read_all, len(ROWS))
    ours = a_second(read_all, len(ROWS))
    new = a_second(lambda: read_all(NEW), len(NEW), 1)
    general = a_second(amounts_alone, len(ROWS))
    with capsys.disabled():
        print(f"\nwhole readings {ours:,.0f} a second, of forms not met before {fresh:,.0f}", end=", ")
        print(f"of a process that has just started {first:,.0f}, of texts it has not met {new:,.0f}", end="; ")
        print(f"plain amounts by pyparsing {general:,.0f}")

    assert ours > FLOOR
