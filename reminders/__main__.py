"""The commands of the outer contract: parses the words, hands over to a module of `commands`, turns errors into exit
codes."""

import argparse
import importlib
import sys

from reminders.errors import BadInput, Refused, ReminderError

# A command's module is imported only when it is called, so that `reminders read` starts without the web stack.
COMMANDS = {
    "demo": "build a fictional clinic, live through some weeks, and serve it",
    "serve": "serve the console, webhooks and API, with scheduler and senders in a child process",
    "work": "run scheduler and senders alone",
    "tick": "run every due piece of work once, as at an instant",
    "clinic": "set a clinic's details",
    "staff": "add staff, sign-in links and cover",
    "enroll": "enrol clients from a CSV file, all rows or none",
    "read": "print the reading of a reply",
    "receive": "do what an inbound text does",
    "clients": "show clients",
    "sessions": "show a client's sessions",
    "messages": "show messages in and out",
    "alerts": "show alerts",
    "schedule": "print the instants of a weekly schedule",
    "digest": "print a therapist's weekly digest",
    "rehearse": "run changed levels over the clinic's own record",
    "export": "write the record out",
    "import": "bring an exported record in",
    "erase": "erase a client's record",
    "token": "make an API token",
    "check": "check every setting and connection",
    "db": "create, upgrade, check, back up or restore the database",
}


def parser_for(names: list[str]) -> argparse.ArgumentParser:
    """Return the parser, with the options of the named commands filled in."""
    parser = argparse.ArgumentParser(prog="reminders", description="Home exercise reminders for physiotherapy clients.")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND", required=True)
    for name, words in COMMANDS.items():
        sub = commands.add_parser(name, help=words, description=words[0].upper() + words[1:] + ".")
        if name in names:
            importlib.import_module(f"reminders.commands.{name}_command").configure(sub)
    return parser


def main(argv: list[str] | None = None) -> int:
    """Run one command and return its exit code: 0 done, 2 bad input, 1 any other failure."""
    if not (3, 11) <= sys.version_info[:2] <= (3, 13):
        print("Reminders needs Python 3.11, 3.12 or 3.13.", file=sys.stderr)
        return 1
    words = sys.argv[1:] if argv is None else argv
    named = [word for word in words[:1] if word in COMMANDS]
    args = parser_for(named).parse_args(words)
    try:
        code: int = importlib.import_module(f"reminders.commands.{args.command}_command").run(args)
    except (BadInput, Refused) as error:
        print(error, file=sys.stderr)
        return 2
    except ReminderError as error:
        print(error, file=sys.stderr)
        return 1
    except BrokenPipeError:
        return 1
    return code


if __name__ == "__main__":
    sys.exit(main())
