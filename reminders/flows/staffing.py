"""Who works at a clinic: added, changed, covered, switched off. Nobody with clients or open alerts just goes."""

from datetime import date, datetime

from sqlalchemy import func, update
from sqlmodel import col, select

from reminders.core.enrolment import mail_address, phone_number
from reminders.errors import BadInput, Refused
from reminders.flows import audit
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Clinic, Staff

ROLES = ("admin", "therapist", "assistant", "lead", "records")
TREATING = ("therapist", "lead")
HERE = ("invited", "active", "opted_out")  # clients who still belong to somebody


def add(tx: Tx, clinic: Clinic, role: str, name: str, email: str, mobile: str, by: str, now: datetime) -> Staff:
    """Add a staff member; raises BadInput naming the field."""
    if role not in ROLES:
        raise BadInput(f"The role must be one of: {', '.join(ROLES)}.")
    if not name.strip():
        raise BadInput("The name is empty; fill it in.")
    address, number = read_address(email), read_mobile(mobile)
    if clients.staff_by_email(tx, address):
        raise BadInput(f"The e-mail {address} is on the staff already.")
    staff = Staff(
        clinic_id=clinic.id or 0,
        role=role,
        name=" ".join(name.split()),
        email=address,
        mobile=number,
        created_at=now,
    )
    tx.add(staff)
    tx.flush()
    audit.record(tx, clinic.id, by, "staff added", None, {"staff": staff.id, "role": role}, now)
    return staff


def read_address(text: str) -> str:
    """Return a mail address in small letters; raises BadInput."""
    try:
        return mail_address(text)
    except ValueError as error:
        raise BadInput(f"The e-mail: {error}.") from None


def read_mobile(text: str) -> str:
    """Return a number in E.164, empty for none; raises BadInput."""
    try:
        return phone_number(text) if text.strip() else ""
    except ValueError as error:
        raise BadInput(f"The mobile: {error}.") from None


def change(tx: Tx, staff: Staff, role: str, is_active: bool, mobile: str, by: str, now: datetime) -> None:
    """Change a role, switch somebody on or off; Refused while clients, open alerts or the last admin hang on it."""
    if role not in ROLES:
        raise BadInput(f"The role must be one of: {', '.join(ROLES)}.")
    loses_clients = (not is_active and staff.is_active) or (staff.role in TREATING and role not in TREATING)
    if loses_clients:
        refuse_with_clients(tx, staff)
    is_admin = staff.role == "admin" and staff.is_active
    if is_admin and (role != "admin" or not is_active) and len(clients.admins_of(tx, staff.clinic_id)) == 1:
        raise Refused(f"{staff.name} is the clinic's last admin; make somebody else one first.")
    number = read_mobile(mobile)
    if number != staff.mobile:
        staff.mobile_stopped_at = None
    staff.role, staff.is_active, staff.mobile = role, is_active, number
    tx.add(staff)
    details = {"staff": staff.id, "role": role, "active": is_active}
    audit.record(tx, staff.clinic_id, by, "staff changed", None, details, now)


def refuse_with_clients(tx: Tx, staff: Staff) -> None:
    """Raise Refused while clients or open alerts hang on a staff member."""
    mine = select(func.count()).select_from(Client).where(Client.therapist_id == staff.id, col(Client.state).in_(HERE))
    open_alerts = (
        select(func.count())
        .select_from(Alert)
        .join(Client, col(Alert.client_id) == col(Client.id))
        .where(Client.therapist_id == staff.id, Alert.state != "closed")
    )
    clients_left, alerts_left = tx.exec(mine).one(), tx.exec(open_alerts).one()
    if clients_left or alerts_left:
        what = f"{clients_left} clients and {alerts_left} open alerts"
        raise Refused(f"{staff.name} still has {what}; move them to a colleague first.")


def move_clients(tx: Tx, staff: Staff, to: Staff, by: str, now: datetime) -> int:
    """Give all clients of one therapist to another, with what is open about them; return how many."""
    if to.id == staff.id or to.clinic_id != staff.clinic_id or not to.is_active or to.role not in TREATING:
        raise BadInput("Choose another therapist of the clinic who is at work.")
    moved = tx.execute(update(Client).where(col(Client.therapist_id) == staff.id).values(therapist_id=to.id)).rowcount  # type: ignore[attr-defined]
    audit.record(tx, staff.clinic_id, by, "clients moved", None, {"from": staff.id, "to": to.id, "count": moved}, now)
    return int(moved)


def set_cover(tx: Tx, staff: Staff, cover_id: int | None, first: date | None, last: date | None) -> None:
    """Set who covers for a staff member between two days, or nobody; raises BadInput."""
    if cover_id is None:
        staff.cover_id = staff.cover_from_on = staff.cover_until_on = None
        return
    cover = tx.get(Staff, cover_id)
    if cover is None or cover.clinic_id != staff.clinic_id or not cover.is_active:
        raise BadInput("Whoever covers must be a colleague who is at work.")
    if cover.id == staff.id:
        raise BadInput("Nobody covers for herself; choose a colleague.")
    if first is not None and last is not None and last < first:
        raise BadInput("Away until lies before away from; change one of them.")
    staff.cover_id, staff.cover_from_on, staff.cover_until_on = cover_id, first, last
