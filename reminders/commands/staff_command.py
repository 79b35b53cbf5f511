"""`reminders staff add|link|cover|list`: who works here, their sign-in links, who covers for whom."""

import argparse
from datetime import date, datetime

from sqlmodel import col, select

from reminders.commands.opening import add_at, add_clinic, opened, print_json, print_table, the_clinic
from reminders.errors import BadInput
from reminders.flows import audit, joining, staffing
from reminders.flows.sign_in import make_link
from reminders.store.db import Tx
from reminders.store.tables import Clinic, Staff
from reminders.wiring import App


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    actions = parser.add_subparsers(dest="action", metavar="add|link|cover|list", required=True)
    add = actions.add_parser("add", help="add a staff member and print her one-time sign-in link")
    add.add_argument("--role", required=True, choices=staffing.ROLES)
    add.add_argument("--name", required=True)
    add.add_argument("--email", required=True)
    add.add_argument("--mobile", default="", help="for alert texts, such as +12025550123")
    link = actions.add_parser("link", help="print a new one-time sign-in link")
    link.add_argument("email")
    cover = actions.add_parser("cover", help="say who covers for a staff member, and when")
    cover.add_argument("email")
    cover.add_argument("--by", required=True, metavar="EMAIL")
    cover.add_argument("--from", dest="first", required=True, metavar="DATE")
    cover.add_argument("--until", required=True, metavar="DATE")
    listing = actions.add_parser("list", help="show the staff")
    for sub in (add, link, cover, listing):
        sub.add_argument("--json", action="store_true")
        add_clinic(sub)
        add_at(sub)


def run(args: argparse.Namespace) -> int:
    """Do one of the staff actions."""
    app = opened(args)
    if args.action == "list":
        return show(app, args)
    with app.db.begin() as tx:
        clinic = the_clinic(tx, args.clinic)
        if args.action == "add":
            return add(tx, app, clinic, args)
        if args.action == "link":
            staff = joining.staff_named(tx, clinic, args.email)
            say_link(app, staff, make_link(tx, staff, app.clock()), args)
            return 0
        return cover(tx, clinic, args, app.clock())


def add(tx: Tx, app: App, clinic: Clinic, args: argparse.Namespace) -> int:
    """Add a staff member and say her first sign-in link."""
    now = app.clock()
    staff = staffing.add(tx, clinic, args.role, args.name, args.email, args.mobile, "command", now)
    say_link(app, staff, make_link(tx, staff, now, first=True), args)
    return 0


def say_link(app: App, staff: Staff, token: str, args: argparse.Namespace) -> None:
    """Print a sign-in link once; it is not kept in clear."""
    link = f"{app.settings.public_url}/sign-in/{token}"
    if args.json:
        print_json({"id": staff.id, "email": staff.email, "role": staff.role, "link": link})
    else:
        print(f"{staff.name} ({staff.role}) signs in once with:\n{link}")


def cover(tx: Tx, clinic: Clinic, args: argparse.Namespace, now: datetime) -> int:
    """Set who covers for a staff member between two dates."""
    staff = joining.staff_named(tx, clinic, args.email)
    by = joining.staff_named(tx, clinic, args.by)
    try:
        first, last = date.fromisoformat(args.first), date.fromisoformat(args.until)
    except ValueError:
        raise BadInput("--from and --until must be dates such as 2027-03-01.") from None
    staffing.set_cover(tx, staff, by.id, first, last)
    tx.add(staff)
    audit.record(tx, clinic.id, "command", "cover set", None, {"staff": staff.id, "by": by.id}, now)
    print(f"{by.name} covers for {staff.name} from {first} until {last}.")
    return 0


def show(app: App, args: argparse.Namespace) -> int:
    """Print the staff of a clinic."""
    with app.db.read() as tx:
        clinic = the_clinic(tx, args.clinic)
        rows = list(tx.exec(select(Staff).where(Staff.clinic_id == clinic.id).order_by(col(Staff.id))))
    if args.json:
        print_json([{"id": r.id, "name": r.name, "role": r.role, "email": r.email} for r in rows])
    else:
        print_table([(r.id, r.name, r.role, r.email) for r in rows], ("id", "name", "role", "e-mail"))
    return 0
