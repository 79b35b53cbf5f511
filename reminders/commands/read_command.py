"""`reminders read`: prints the reading of a reply, or of many, one a line. Needs no database and no web stack.

Only the command's words and the shape of its output belong here; the reading itself is done in `core/reading`.
"""

import argparse
import json
import sys
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from datetime import date
from typing import IO, Any

from reminders.core.reading import ASKED, HOLDERS, parse_session, read_reply, why
from reminders.core.words import VOCABULARIES
from reminders.errors import BadInput
from reminders.memory import start_collecting_rarely


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's words."""
    parser.add_argument("text", nargs="?", metavar="TEXT", help="the reply")
    parser.add_argument("--jsonl", metavar="FILE", help="read rows of JSON from a file, or - for standard input")
    parser.add_argument("--lang", default="en", help=f"the client's language: {', '.join(VOCABULARIES)}")
    parser.add_argument(
        "--session", default="", help='the session answered, like "sit to stand 2x10; tandem stance 2x20 sec each side"'
    )
    parser.add_argument("--asked", metavar="KIND", help=f"what was asked before: {', '.join(ASKED)}")
    parser.add_argument("--holder", default="self", help=f"who holds the contact: {', '.join(HOLDERS)}")
    parser.add_argument("--today", metavar="DATE", help="today's date, like 2027-03-01: gives dates their year")
    parser.add_argument("--why", action="store_true", help="add which words led to which field")
    parser.add_argument("--json", action="store_true", help="print one JSON document (the reading always is one)")


def run(args: argparse.Namespace) -> int:
    """Print the reading of one text, or of each row of a file."""
    start_collecting_rarely()
    defaults = {name: getattr(args, name) for name in ("lang", "session", "asked", "holder", "today")}
    if args.jsonl is not None:
        if args.text is not None:
            raise BadInput("text: give a text or --jsonl, not both.")
        with _opened(args.jsonl) as lines:
            for row in _read_rows(lines, defaults, args.why):
                print(json.dumps(row, ensure_ascii=False))
        return 0
    if args.text is None:
        raise BadInput('text: give the reply in quotes, like reminders read "done, pain 3", or a file with --jsonl.')
    reading = _reading(defaults | {"text": args.text}, args.why)
    print(json.dumps(reading, ensure_ascii=False, indent=None if args.json else 2))
    return 0


@contextmanager
def _opened(name: str) -> Iterator[IO[str]]:
    """Open a file of rows, or standard input for "-"."""
    if name == "-":
        yield sys.stdin
        return
    try:
        stream = open(name, encoding="utf-8-sig")  # noqa: SIM115 -- closed below; only the opening may be refused
    except OSError as error:
        raise BadInput(f"jsonl: cannot read {name}: {(error.strerror or 'unknown reason').lower()}.") from error
    with stream:
        yield stream


def _read_rows(lines: Iterable[str], defaults: dict[str, Any], explain: bool) -> Iterator[dict[str, Any]]:
    """Yield each row with its reading, or with the error that kept it from being read."""
    for line in lines:
        if not line.strip():
            continue
        row: dict[str, Any] = {}
        try:
            loaded = json.loads(line)
            if not isinstance(loaded, dict):
                raise BadInput('row: a row is a JSON object like {"text": "done, pain 3"}.')
            row = loaded
            given = {name: row[name] for name in defaults if row.get(name) is not None}
            row["reading"] = _reading(defaults | given | {"text": row.get("text")}, explain)
        except json.JSONDecodeError as error:
            row = {"line": line.rstrip("\n"), "error": f"row: not JSON ({error.msg} at column {error.colno})."}
        except BadInput as error:
            row["error"] = str(error)
        yield row


def _reading(fields: dict[str, Any], explain: bool) -> dict[str, Any]:
    """Return one reading as the contract shapes it; BadInput names a field that cannot be used."""
    for name in ("text", "lang", "session", "asked", "holder", "today"):
        if not isinstance(fields[name], str) and not (fields[name] is None and name in ("asked", "today")):
            raise BadInput(f"{name}: give it as text in quotes.")
    _known("lang", fields["lang"], tuple(VOCABULARIES))
    _known("holder", fields["holder"], HOLDERS)
    if fields["asked"] is not None:
        _known("asked", fields["asked"], ASKED)
    session = parse_session(fields["session"])
    today = _date(fields["today"])
    given = (fields["text"], fields["lang"], session, fields["asked"], fields["holder"], today)
    reading = read_reply(*given).as_dict()
    if explain:
        reading["why"] = why(*given)
    return reading


def _known(name: str, value: str, known: tuple[str, ...]) -> None:
    """Refuse a value that is not one of a few."""
    if value not in known:
        raise BadInput(f'{name}: "{value}" is not known; use one of {", ".join(known)}.')


def _date(value: str | None) -> date | None:
    """Return a date given as 2027-03-01."""
    if value is None:
        return None
    try:
        return date.fromisoformat(value)
    except ValueError as error:
        raise BadInput(f'today: "{value}" is not a date; write it like 2027-03-01.') from error
