"""`reminders token add`: makes an API token of one clinic and prints it once; only its hash is kept."""

import argparse
import secrets

from reminders.commands.opening import add_clinic, opened, the_clinic
from reminders.core.scopes import SCOPES, read_scopes
from reminders.errors import BadInput
from reminders.flows import audit
from reminders.store.tables import ApiToken
from reminders.web.auth import token_hash


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    actions = parser.add_subparsers(dest="action", metavar="add", required=True)
    sub = actions.add_parser("add", help="make a token and print it once")
    sub.add_argument("--scope", required=True, metavar="SCOPE,…", help=f"what it may do: {', '.join(SCOPES)}")
    sub.add_argument("--name", default="", help="which program it is for")
    add_clinic(sub)


def run(args: argparse.Namespace) -> int:
    """Make the token."""
    try:
        scopes = read_scopes(args.scope)
    except ValueError as error:
        raise BadInput(f"--scope: {error}.") from None
    app = opened(args)
    token = secrets.token_urlsafe(32)
    now = app.clock()
    with app.db.begin() as tx:
        clinic = the_clinic(tx, args.clinic)
        row = ApiToken(clinic_id=clinic.id or 0, token_hash=token_hash(token), made_at=now)
        row.name, row.scopes, row.made_by = args.name, " ".join(scopes), "command"
        tx.add(row)
        tx.flush()
        audit.record(tx, clinic.id, "command", "token made", None, {"token": row.id, "scopes": list(scopes)}, now)
    print(token)
    return 0
