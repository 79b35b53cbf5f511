"""Measures the reader on labelled replies: prints aggregate figures per file and language, never a row.

Run it as `python -m tests.corpus.measure`; `--all` takes in the rows to measure, `--errors FILE` lists the wrong rows
of a file that is there to build on.
"""

import argparse
import json
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from reminders.core.reading import parse_session, read_reply

HERE = Path(__file__).parent
# The programs that the corpora's session codes stand for.
SESSIONS = {
    "S1": "sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side",
    "S2": "band row 3x10; hip hinge 2x10; suitcase carry 4x30 sec; side-lying hip abduction 2x10 each side",
    "S3": "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado",
}
PARSED = {code: parse_session(text) for code, text in SESSIONS.items()}
# Under a danger sign these intents are as good as each other.
ALIKE = {"pain", "report", "skip", "question"}


def rows_of(path: Path) -> Iterator[dict[str, Any]]:
    """Yield the labelled rows of a file."""
    with path.open(encoding="utf-8") as lines:
        for line in lines:
            if line.strip():
                yield json.loads(line)


def reading_of(row: dict[str, Any]) -> dict[str, Any]:
    """Return the reading of a row, the program's own way."""
    return read_reply(row["text"], row["lang"], PARSED[row["session"]], row["asked"]).as_dict()


def faults(row: dict[str, Any], reading: dict[str, Any]) -> list[str]:
    """Return the names of the fields read wrong."""
    expected = row["expect"]
    wrong = []
    alike = bool(expected["red_flags"]) and {expected["intent"], reading["intent"]} <= ALIKE
    if reading["intent"] != expected["intent"] and not alike:
        wrong.append("intent")
    for name in ("completed", "sets", "reps", "pain", "correction"):
        excused = name == "completed" and alike and {expected["completed"], reading["completed"]} <= {None, "none"}
        if reading[name] != expected[name] and not excused:
            wrong.append(name)
    if _lines(reading["by_exercise"]) != _lines(expected["by_exercise"]):
        wrong.append("by_exercise")
    if set(reading["red_flags"]) != set(expected["red_flags"]):
        wrong.append("red_flags")
    return wrong


def _lines(lines: list[dict[str, Any]]) -> set[tuple[Any, ...]]:
    """Return lines about exercises without their order."""
    return {(one["name"], one["sets"], one["reps"], one["completed"]) for one in lines}


def figures(rows: list[dict[str, Any]]) -> dict[str, float]:
    """Return the figures of a corpus: shares in percent, and counts of what must never happen."""
    count: Counter[str] = Counter()
    for row in rows:
        reading = reading_of(row)
        wrong = faults(row, reading)
        expected = row["expect"]
        count["whole"] += not wrong
        count["intent"] += "intent" not in wrong
        for name in wrong:
            count[f"wrong {name}"] += 1
        count["pain number wrong"] += reading["pain"] is not None and reading["pain"] != expected["pain"]
        count["danger lost"] += bool(set(expected["red_flags"]) - set(reading["red_flags"]))
        count["danger lost wholly"] += bool(expected["red_flags"]) and not reading["red_flags"]
        count["no danger"] += not expected["red_flags"]
        count["false alarms"] += not expected["red_flags"] and bool(reading["red_flags"])
        count["opt-out lost"] += expected["intent"] == "opt_out" != reading["intent"]
        silent = reading["ask"] is None
        count["silently wrong"] += silent and bool({"intent", "completed", "pain"} & set(wrong))
    total = len(rows)
    return {
        "rows": total,
        "whole %": round(100 * count["whole"] / total, 1),
        "intent %": round(100 * count["intent"] / total, 1),
        "pain number wrong": count["pain number wrong"],
        "danger lost": count["danger lost"],
        "danger lost wholly": count["danger lost wholly"],
        "false alarms %": round(100 * count["false alarms"] / max(1, count["no danger"]), 1),
        "opt-out lost": count["opt-out lost"],
        "silently wrong %": round(100 * count["silently wrong"] / total, 1),
        **{name: value for name, value in sorted(count.items()) if name.startswith("wrong ")},
    }


def main() -> None:
    """Print the figures of every corpus, or the errors of one that is there to build on."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--errors", type=Path, help="a file to build on, whose wrong rows are listed")
    parser.add_argument("--all", action="store_true", help="the rows to measure as well; look at them seldom")
    args = parser.parse_args()
    if args.errors:
        if "measure" in args.errors.name:
            parser.error("errors: a measure corpus is looked at only in figures.")
        for row in rows_of(args.errors):
            reading = reading_of(row)
            if wrong := faults(row, reading):
                print_error(row, reading, wrong)
        return
    for path in sorted(HERE.glob("replies-*.jsonl")):
        if "measure" in path.name and not args.all:
            continue
        rows = list(rows_of(path))
        for language in sorted({row["lang"] for row in rows}):
            of_language = [row for row in rows if row["lang"] == language]
            print(path.name, language, json.dumps(figures(of_language)))


def print_error(row: dict[str, Any], reading: dict[str, Any], wrong: list[str]) -> None:
    """Print one row read wrong: what was expected and what came."""
    expected = row["expect"]
    print(f"{row['id']} [{row['session']} {row['asked'] or ''}] {row['text']!r}")
    for name in wrong:
        print(f"      {name}: want {_short(expected[name])} got {_short(reading[name])}")


def _short(value: Any) -> str:
    """Return a value in few characters."""
    if isinstance(value, list):
        return str([tuple(one.values()) if isinstance(one, dict) else one for one in value])
    return str(value)


if __name__ == "__main__":
    main()
