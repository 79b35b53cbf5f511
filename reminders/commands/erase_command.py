"""`reminders erase`: a client's record goes; what the law keeps is kept, and said."""

import argparse

from reminders.commands.opening import add_clinic, opened, the_clinic
from reminders.errors import BadInput
from reminders.flows import erase


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--client", type=int, metavar="ID", required=True, help="whose record")
    parser.add_argument("--reason", default="", help="why; written into the audit log, so without names")
    parser.add_argument("--recipient", default="", help="who asked for it; written into the audit log")
    add_clinic(parser)


def run(args: argparse.Namespace) -> int:
    """Erase the record and say what stays."""
    if not args.reason.strip():
        raise BadInput("--reason is needed: it is written into the audit log.")
    app = opened(args)
    why = ", ".join(part.strip() for part in (args.reason, args.recipient) if part.strip())
    with app.db.begin() as tx:
        clinic_id = the_clinic(tx, args.clinic).id or 0
        done = erase.erase(tx, app.texts, clinic_id, args.client, "command", why, app.clock())
    print(f"The record of client {args.client} is erased: {done.rows} rows, her name, addresses and words.")
    print("Kept, since the law or her own safety asks for it:")
    print("  the audit log, which names no one but staff, by number (US: 45 CFR 164.316(b)(2)(i), six years);")
    print(f"  the numbers of {done.alerts} alerts, so that none is used twice;")
    print(f"  {done.closed_addresses} closed addresses as keyed hashes, so that they are never written to again.")
    print("Backups made before now still hold her; a restored one erases her again when it is resumed.")
    print("Your own chart may have to be kept for longer: state law says how long.")
    return 0
