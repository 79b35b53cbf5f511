"""`reminders digest`: a therapist's week, as it was made on its Monday or as it would be now."""

import argparse
from datetime import datetime
from pathlib import Path
from typing import Any

from reminders.commands.opening import add_at, add_clinic, opened, print_json, the_clinic
from reminders.core.digest import week_days, week_of
from reminders.errors import BadInput, NotFound
from reminders.flows import audit, digest
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.shapes import stamp
from reminders.store.tables import Clinic, Staff
from reminders.texts import Mail, Texts


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--therapist", metavar="EMAIL", required=True, help="whose clients")
    parser.add_argument("--week", help="an ISO week such as 2027-W10; without it the newest that has ended")
    parser.add_argument("--recompute", action="store_true", help="as it would be now, even where it was sent")
    parser.add_argument("--html", metavar="FILE", help="write the HTML form to a file")
    parser.add_argument("--text", action="store_true", help="print the plain form (the default)")
    parser.add_argument("--json", action="store_true", help="print its values as one JSON document")
    add_at(parser)
    add_clinic(parser)


def run(args: argparse.Namespace) -> int:
    """Print or write the digest."""
    app = opened(args)
    now = app.clock()
    with app.db.begin() as tx:
        therapist = staff_member(tx, args)
        clinic = clients.the_clinic(tx, therapist.clinic_id)
        week = week_given(args.week) if args.week else digest.week_due(clinic.time_zone, now)
        values, mail, made_at = found(tx, app.texts, clinic, therapist, week, args.recompute, now)
        audit.record(tx, clinic.id, "command", "digest viewed", None, {"therapist": therapist.id, "week": week}, now)
    if args.html:
        write(args.html, mail.html)
    if args.json:
        print_json({**values, "made": stamp(made_at)})
    if args.text or not (args.json or args.html):
        print(mail.text.rstrip())
    return 0


def staff_member(tx: Tx, args: argparse.Namespace) -> Staff:
    """Return the therapist meant; raises NotFound."""
    therapist = clients.staff_by_email(tx, args.therapist)
    if therapist is None or (args.clinic and therapist.clinic_id != the_clinic(tx, args.clinic).id):
        raise NotFound(f"--therapist: nobody on the staff has the e-mail {args.therapist!r}.")
    return therapist


def week_given(text: str) -> str:
    """Return the week in its usual form; raises BadInput."""
    try:
        return week_of(week_days(text)[0])
    except ValueError:
        raise BadInput(f"--week must be an ISO week such as 2027-W10: {text!r}.") from None


def found(
    tx: Tx, texts: Texts, clinic: Clinic, therapist: Staff, week: str, recompute: bool, now: datetime
) -> tuple[dict[str, Any], Mail, datetime | None]:
    """Return a digest's values and words, and when it was made, None when it is computed now."""
    kept = None if recompute else digest.kept(tx, therapist, week)
    if kept is not None:
        return kept.values, Mail("", kept.text, kept.html), kept.made_at
    values = digest.computed(tx, clinic, therapist, week, now)
    return values, digest.rendered(texts, clinic, therapist, values), None


def write(name: str, text: str) -> None:
    """Write a file; raises BadInput when it cannot be written."""
    try:
        Path(name).write_text(text, encoding="utf-8")
    except OSError as error:
        raise BadInput(f"--html: {name} cannot be written: {error.strerror}.") from None
