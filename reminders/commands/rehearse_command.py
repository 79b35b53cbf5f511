"""`reminders rehearse`: changed levels over the clinic's own record. Nothing is written or sent."""

import argparse
import tomllib
from pathlib import Path
from typing import Any

from reminders.commands.opening import add_clinic, opened, print_json, print_table, the_clinic
from reminders.errors import BadInput
from reminders.flows import rehearse


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument(
        "--rules",
        metavar="FILE.toml",
        required=True,
        help='levels such as "stop_floor = 7"; [therapists."EMAIL"] and [clients.NUMBER] hold those of one person',
    )
    parser.add_argument("--weeks", type=int, default=8, help="how many weeks back (8)")
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    add_clinic(parser)


def run(args: argparse.Namespace) -> int:
    """Print what the changed levels would have brought."""
    changes = rehearse.changes_of(rules_of(args.rules))
    app = opened(args)
    with app.db.read() as tx:
        found = rehearse.rehearse(tx, the_clinic(tx, args.clinic), changes, args.weeks, app.clock())
    if args.json:
        print_json(found)
    else:
        show(found)
    return 0


def rules_of(name: str) -> dict[str, Any]:
    """Return what a rules file holds; raises BadInput when it cannot be read."""
    try:
        return tomllib.loads(Path(name).read_text(encoding="utf-8"))
    except (OSError, UnicodeDecodeError):
        raise BadInput(f"--rules: {name} cannot be read.") from None
    except tomllib.TOMLDecodeError as error:
        raise BadInput(f"--rules: {name} is not TOML: {error}.") from None


def show(found: dict[str, Any]) -> None:
    """Print the rehearsal for people."""
    as_is, changed = found["as_is"], found["changed"]
    print(f"{found['from']} to {found['until']}, {found['weeks']} weeks; nothing was sent.")
    rules = sorted({*as_is["by_rule"], *changed["by_rule"]})
    rows = [[rule, as_is["by_rule"].get(rule, 0), changed["by_rule"].get(rule, 0)] for rule in rules]
    print_table(
        [*rows, ["all", as_is["alerts"], changed["alerts"]], ["a week", as_is["per_week"], changed["per_week"]]],
        ("rule", "as it is", "changed"),
    )
    print()
    print_table(
        [[row["client"], row["name"], row["as_is"], row["changed"]] for row in found["clients"]],
        ("client", "name", "as it is", "changed"),
    )
    print()
    print(f"Alerts that led to something and would be there again: {found['led_to_something']}")
    print(f"Alerts that led to something and would have been missed: {len(found['would_have_missed'])}")
    for row in found["would_have_missed"]:
        print(f"  alert {row['alert']}, client {row['client']}, {row['rule']} on {row['on']}: {row['outcome']}")
