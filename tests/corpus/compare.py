"""Compares two states of the reader row by row, on the rows to build on: `python -m tests.corpus.compare`.

`--keep FILE` writes what the reader makes of every row; `--against FILE` lists the rows that are read worse now than
when the file was kept, and every sign, wish or rating that is lost. A total that stays the same can hide one lost sign
behind a mended row, so a rule that takes a sign away is looked at this way before it stays.
"""

import argparse
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from tests.corpus.measure import HERE, faults, print_error, reading_of, rows_of

_KEPT = ("intent", "completed", "sets", "reps", "pain", "correction", "by_exercise", "red_flags", "ask")


def rows_to_build_on() -> Iterator[tuple[str, dict[str, Any]]]:
    """Yield every row that is not there to measure, under a name of its own."""
    for path in sorted(HERE.glob("replies-*.jsonl")):
        if "measure" not in path.name:
            for row in rows_of(path):
                yield f"{path.stem} {row['id']} {row['text']}", row


def harm(row: dict[str, Any], reading: dict[str, Any]) -> list[str]:
    """Return what must never happen and does: a sign lost, a wish to hear no more lost, a wrong number."""
    expected = row["expect"]
    lost = [f"lost {flag}" for flag in expected["red_flags"] if flag not in reading["red_flags"]]
    if expected["intent"] == "opt_out" != reading["intent"]:
        lost.append("lost opt_out")
    if reading["pain"] is not None and reading["pain"] != expected["pain"]:
        lost.append("wrong pain")
    return lost


def main() -> None:
    """Keep the readings of now, or list what became worse since they were kept."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--keep", type=Path, help="a file to write the readings of now to, outside the project")
    parser.add_argument("--against", type=Path, help="such a file, written before a change")
    args = parser.parse_args()
    readings = {name: (row, reading_of(row)) for name, row in rows_to_build_on()}
    if args.keep:
        kept = {name: {field: reading[field] for field in _KEPT} for name, (_, reading) in readings.items()}
        args.keep.write_text(json.dumps(kept), encoding="utf-8")
    if args.against:
        _compare(readings, json.loads(args.against.read_text(encoding="utf-8")))


def _compare(readings: dict[str, tuple[dict[str, Any], dict[str, Any]]], before: dict[str, dict[str, Any]]) -> None:
    """Print the rows read worse than before, then how many are better, and all harm that there is."""
    worse = better = 0
    for name, (row, reading) in readings.items():
        if name not in before:
            continue
        now, then = faults(row, reading), faults(row, before[name])
        fresh = set(harm(row, reading)) - set(harm(row, before[name]))
        if fresh or (now and not then):
            worse += 1
            print(*sorted(fresh), end=" " if fresh else "")
            print_error(row, reading, now)
        better += bool(then and not now)
    print(f"{worse} rows worse, {better} better")
    for name, (row, reading) in readings.items():
        if found := harm(row, reading):
            print(f"{name!r}: {', '.join(found)}")


if __name__ == "__main__":
    main()
