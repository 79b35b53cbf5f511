"""Her own settings: how and when she is told, who covers, her password and second factor."""

import segno
from fastapi import APIRouter
from sqlmodel import col, select
from starlette.responses import Response

from reminders.core.enrolment import phone_number
from reminders.core.schedule import parse_time
from reminders.errors import BadInput
from reminders.flows import audit, staffing
from reminders.store.db import Tx
from reminders.store.tables import Staff
from reminders.web import auth, passwords, sight
from reminders.web.deps import AppDep, FormDep, PersonDep
from reminders.web.forms import Form
from reminders.web.pages import PagesDep, safe, see

router = APIRouter(include_in_schema=False)

CHANNELS = ("sms+email", "sms", "email")


@router.get("/settings")
def settings_page(app: AppDep, pages: PagesDep, person: PersonDep) -> Response:
    """Show her settings; a fresh secret for the second factor is offered, and kept only with a right code."""
    with app.db.read() as tx:
        staff = sight.staff_seen(tx, person.clinic_id, person.staff_id)
        team = colleagues(tx, person)
    secret = passwords.new_code_secret()
    address = passwords.code_address(secret, person.email)
    code = safe(segno.make(address, error="m").svg_inline(scale=4, border=2))
    return pages.show("settings.html", staff=staff, team=team, channels=CHANNELS, secret=secret, code=code)


def colleagues(tx: Tx, person: auth.Person) -> list[Staff]:
    """Return who may cover for her."""
    statement = select(Staff).where(
        Staff.clinic_id == person.clinic_id,
        Staff.id != person.staff_id,
        col(Staff.is_active).is_(True),
        col(Staff.role).in_(("therapist", "lead")),
    )
    return list(tx.exec(statement.order_by(col(Staff.name))))


def hours_in(form: Form) -> str:
    """Return the hours at which notes go, in order; empty for the clinic's."""
    words = form.text("note_hours", "Hours for notes", most=60)
    try:
        return ",".join(sorted(parse_time(part).strftime("%H:%M") for part in words.split(",") if part.strip()))
    except ValueError as error:
        raise BadInput(f"Hours for notes: {error}.") from None


def mobile_in(form: Form) -> str:
    """Return her own mobile in E.164, empty for none."""
    words = form.text("mobile", "Mobile", most=40)
    try:
        return phone_number(words) if words else ""
    except ValueError as error:
        raise BadInput(f"Mobile: {error}.") from None


@router.post("/settings")
def save_settings(app: AppDep, person: PersonDep, form: FormDep) -> Response:
    """Keep how she is told and who covers for her."""
    now = app.clock()
    channels = form.choice("alert_channels", CHANNELS, "How alerts reach you")
    hours, mobile = hours_in(form), mobile_in(form)
    cover = form.whole("cover_id", "Cover")
    first, last = form.day("cover_from", "Away from"), form.day("cover_until", "Away until")
    with app.db.begin() as tx:
        staff = sight.staff_seen(tx, person.clinic_id, person.staff_id)
        if staff.mobile != mobile:
            staff.mobile_stopped_at = None
        staff.alert_channels, staff.note_hours, staff.mobile = channels, hours, mobile
        staffing.set_cover(tx, staff, cover or None, first, last)
        tx.add(staff)
        audit.record(tx, person.clinic_id, person.email, "own settings changed", None, {"staff": staff.id}, now)
    return see("/settings", "saved")


@router.post("/settings/password")
def save_password(app: AppDep, person: PersonDep, form: FormDep) -> Response:
    """Keep a new password; every other session of hers ends."""
    now = app.clock()
    given = form.exact("new_password")
    if given != form.exact("again"):
        raise BadInput("The two passwords differ; type the same one twice.")
    passwords.refuse_weak(given, (person.name, person.email, person.clinic_name))
    kept = passwords.hashed(given)
    with app.db.begin() as tx:
        staff = sight.staff_seen(tx, person.clinic_id, person.staff_id)
        staff.password_hash = kept
        tx.add(staff)
        auth.end_all_sessions(tx, person.staff_id, now, keep=person.session_id)
        audit.record(tx, person.clinic_id, person.email, "password changed", None, {}, now)
    return see("/settings", "password")


@router.post("/settings/code")
def save_code(app: AppDep, person: PersonDep, form: FormDep) -> Response:
    """Switch the second factor on with a right code, or off."""
    now = app.clock()
    is_off = form.text("do") == "off"
    secret = form.text("secret", most=64)
    with app.db.begin() as tx:
        staff = sight.staff_seen(tx, person.clinic_id, person.staff_id)
        if is_off:
            staff.totp_secret = ""
        else:
            step = passwords.code_step(secret, form.text("code"), now, 0) if secret.isalnum() else None
            if step is None:
                raise BadInput("That code does not fit; scan the picture, wait for the next code and type it.")
            staff.totp_secret, staff.totp_step = secret, step
        tx.add(staff)
        action = "second factor switched off" if is_off else "second factor switched on"
        audit.record(tx, person.clinic_id, person.email, action, None, {}, now)
    return see("/settings", "code-off" if is_off else "code-on")
