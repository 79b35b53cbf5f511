"""The clinic for other programs: details, staff, levels, wording, work list, delivery, digests, the log."""

from datetime import timedelta
from typing import Annotated, Any

from fastapi import APIRouter, Query
from starlette.responses import Response

from reminders.core.digest import week_days, week_of
from reminders.core.levels import DEFAULTS, FACTS, checked
from reminders.errors import BadInput
from reminders.flows import audit, clinic, digest, sign_in, staffing
from reminders.store import audit_view, clients, desk_view, staff_view
from reminders.store.db import Tx
from reminders.store.shapes import day, stamp
from reminders.store.tables import Clinic, Staff
from reminders.web import auth, sight
from reminders.web.api import clinic_shapes, shapes
from reminders.web.api.once import OnceDep
from reminders.web.api.problems import ALL
from reminders.web.api.shapes import Id
from reminders.web.api.tokens import Caller, TokenDep
from reminders.web.deps import AppDep

router = APIRouter(prefix="/api/v1", tags=["clinic"], responses=ALL)

DELIVERY_DAYS = 14


def clinic_json(row: Clinic) -> dict[str, Any]:
    """Return the clinic's details."""
    return {"id": row.id, **{name: getattr(row, name) for name in clinic.FIELDS}}


@router.get("/clinic", response_model=shapes.Row)
def show_clinic(app: AppDep, caller: TokenDep) -> Any:
    """Show the clinic's details."""
    with app.db.read() as tx:
        return clinic_json(clients.the_clinic(tx, caller.clinic_id))


@router.patch("/clinic", response_model=shapes.Row)
def change_clinic(body: clinic_shapes.ClinicIn, caller: TokenDep, once: OnceDep) -> Response:
    """Change the clinic's details; all or nothing."""

    def act(tx: Tx) -> Any:
        row = clients.the_clinic(tx, caller.clinic_id)
        given = {name: written(value) for name, value in body.model_dump(exclude_none=True).items()}
        clinic.change(tx, row, given, caller.by, caller.now)
        return clinic_json(row)

    return once(body, act)


def written(value: Any) -> str:
    """Return a value as a form's field would hold it."""
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, list):
        return " ".join(str(one) for one in value)
    return str(value)


def staff_json(member: staff_view.Member) -> dict[str, Any]:
    """Return a staff member with what hangs on her."""
    row = member.staff
    return {
        "id": row.id,
        "name": row.name,
        "role": row.role,
        "email": row.email,
        "mobile": row.mobile,
        "is_active": row.is_active,
        "clients": member.clients,
        "open_alerts": member.alerts,
        "cover": member.cover,
        "cover_from": day(row.cover_from_on),
        "cover_until": day(row.cover_until_on),
    }


def member_json(tx: Tx, caller: Caller, staff_id: int | None) -> dict[str, Any]:
    """Return one staff member."""
    return next(staff_json(one) for one in staff_view.team(tx, caller.clinic_id) if one.staff.id == staff_id)


@router.get("/staff", response_model=shapes.Page)
def list_staff(app: AppDep, caller: TokenDep) -> Any:
    """List the staff, those at work first."""
    with app.db.read() as tx:
        return {"items": [staff_json(one) for one in staff_view.team(tx, caller.clinic_id)], "next": None}


@router.post("/staff", status_code=201, response_model=shapes.Row)
def add_staff(app: AppDep, body: clinic_shapes.StaffIn, caller: TokenDep, once: OnceDep) -> Response:
    """Add a staff member; her first sign-in link is mailed."""

    def act(tx: Tx) -> Any:
        row = clients.the_clinic(tx, caller.clinic_id)
        made = staffing.add(tx, row, body.role, body.name, body.email, body.mobile, caller.by, caller.now)
        sign_in.mail_link(tx, row, made, app.settings.public_url, caller.now, first=True)
        return member_json(tx, caller, made.id)

    return once(body, act, 201)


@router.patch("/staff/{staff_id}", response_model=shapes.Row)
def change_staff(body: clinic_shapes.StaffChange, caller: TokenDep, once: OnceDep, staff_id: Id) -> Response:
    """Change a role, a mobile, cover, or switch somebody off."""

    def act(tx: Tx) -> Any:
        row = sight.staff_seen(tx, caller.clinic_id, staff_id)
        before = (row.role, row.is_active)
        role = body.role or row.role
        is_active = row.is_active if body.is_active is None else body.is_active
        mobile = row.mobile if body.mobile is None else body.mobile
        staffing.change(tx, row, role, is_active, mobile, caller.by, caller.now)
        if body.cover is not None:
            cover = cover_named(tx, caller, body.cover)
            staffing.set_cover(tx, row, cover, body.cover_from, body.cover_until)
        tx.add(row)
        if before != (row.role, row.is_active):
            auth.end_all_sessions(tx, staff_id, caller.now)
        return member_json(tx, caller, staff_id)

    return once(body, act)


def cover_named(tx: Tx, caller: Caller, email: str) -> int | None:
    """Return who covers, None for an empty e-mail; raises BadInput."""
    if not email.strip():
        return None
    found = clients.staff_by_email(tx, email)
    if found is None or found.clinic_id != caller.clinic_id:
        raise BadInput("cover: nobody on the staff has this e-mail.")
    return found.id


@router.post("/staff/{staff_id}/link", response_model=shapes.Done)
def mail_link(app: AppDep, caller: TokenDep, once: OnceDep, staff_id: Id) -> Response:
    """Mail somebody a new sign-in link."""

    def act(tx: Tx) -> Any:
        row = sight.staff_seen(tx, caller.clinic_id, staff_id)
        first = staff_view.has_never_signed_in(tx, staff_id)
        sign_in.mail_link(
            tx, clients.the_clinic(tx, caller.clinic_id), row, app.settings.public_url, caller.now, first=first
        )
        audit.record(tx, caller.clinic_id, caller.by, "sign-in link mailed", None, {"staff": staff_id}, caller.now)
        return {"done": "link mailed", "id": staff_id}

    return once(None, act)


@router.post("/staff/{staff_id}/move", response_model=shapes.Row)
def move_clients(body: clinic_shapes.MoveIn, caller: TokenDep, once: OnceDep, staff_id: Id) -> Response:
    """Give all of a therapist's clients to a colleague."""

    def act(tx: Tx) -> Any:
        row = sight.staff_seen(tx, caller.clinic_id, staff_id)
        to = clients.staff_by_email(tx, body.to)
        if to is None:
            raise BadInput("to: nobody on the staff has this e-mail.")
        return {"moved": staffing.move_clients(tx, row, to, caller.by, caller.now)}

    return once(body, act)


@router.get("/levels", response_model=shapes.Row)
def show_levels(app: AppDep, caller: TokenDep) -> Any:
    """Show every level: default, bounds, source, and what the clinic changed."""
    with app.db.read() as tx:
        own = clients.the_clinic(tx, caller.clinic_id).levels
    facts = {
        name: {"default": getattr(DEFAULTS, name), "least": fact.least, "most": fact.most, "source": fact.source}
        for name, fact in FACTS.items()
    }
    return {"changed": own, "levels": facts}


@router.put("/levels", response_model=shapes.Row)
def change_levels(body: clinic_shapes.LevelsIn, caller: TokenDep, once: OnceDep) -> Response:
    """Change the clinic's levels; the ones given take the place of all changed before."""

    def act(tx: Tx) -> Any:
        row = clients.the_clinic(tx, caller.clinic_id)
        try:
            row.levels = checked(body.levels)
        except ValueError as error:
            raise BadInput(f"levels: {error}") from None
        tx.add(row)
        audit.record(tx, caller.clinic_id, caller.by, "levels changed", None, {"whose": "clinic"}, caller.now)
        return {"changed": row.levels}

    return once(body, act)


@router.put("/wording", response_model=shapes.Row)
def change_wording(app: AppDep, body: clinic_shapes.WordingIn, caller: TokenDep, once: OnceDep) -> Response:
    """Keep the clinic's own wording of one text, or bring ours back."""

    def act(tx: Tx) -> Any:
        row = clients.the_clinic(tx, caller.clinic_id)
        clinic.reword(tx, row, app.texts, body.language, body.name, body.words, caller.by, caller.now)
        return {"wording": row.wording}

    return once(body, act)


@router.get("/work-list", response_model=shapes.Row)
def show_work_list(app: AppDep, caller: TokenDep) -> Any:
    """Show what the desk should look at, as client numbers by kind."""
    with app.db.read() as tx:
        todo = desk_view.work_list(tx, clients.the_clinic(tx, caller.clinic_id), caller.now)
    return {
        "invited": [one.id for one in todo.invited],
        "unconfirmed": [one.id for one, _ in todo.unconfirmed],
        "failing": [one.id for one, _ in todo.failing],
        "held": [one.id for one, _ in todo.held],
        "no_therapist": [one.id for one in todo.no_therapist],
        "past_recheck": [one.id for one, _ in todo.past_recheck],
        "inbox": [note.id for note, _ in todo.notes],
    }


@router.get("/delivery", response_model=shapes.Page)
def show_delivery(app: AppDep, caller: TokenDep) -> Any:
    """Show how messages fared in the last two weeks, by kind, channel and state."""
    with app.db.read() as tx:
        rows = desk_view.delivery(tx, caller.clinic_id, caller.now - timedelta(days=DELIVERY_DAYS))
    items = [{"kind": kind, "channel": channel, "state": state, "count": count} for kind, channel, state, count in rows]
    return {"items": items, "next": None}


@router.get("/digests/{week}", response_model=shapes.Row)
def show_digest(
    app: AppDep, caller: TokenDep, week: shapes.Short, therapist: Annotated[shapes.Short, Query()] = ""
) -> Any:
    """Show a therapist's digest of an ISO week: as it was mailed, else as it would be now."""
    with app.db.begin() as tx:
        staff = clients.staff_by_email(tx, therapist)
        if staff is None or staff.clinic_id != caller.clinic_id:
            raise BadInput("therapist: give the e-mail of a therapist of the clinic.")
        wanted = week_in(week)
        kept = digest.kept(tx, staff, wanted)
        values = kept.values if kept else digest_now(tx, caller, staff, wanted)
        details = {"therapist": staff.id, "week": wanted}
        audit.record(tx, caller.clinic_id, caller.by, "digest viewed", None, details, caller.now)
    return {**values, "made": stamp(kept.made_at) if kept else None}


def digest_now(tx: Tx, caller: Caller, staff: Staff, week: str) -> dict[str, Any]:
    """Return the digest as it would be now."""
    return digest.computed(tx, clients.the_clinic(tx, caller.clinic_id), staff, week, caller.now)


def week_in(text: str) -> str:
    """Return an ISO week as it is written; raises BadInput."""
    try:
        return week_of(week_days(text)[0])
    except (ValueError, OverflowError):
        raise BadInput("week: write an ISO week such as 2027-W10.") from None


@router.get("/audit", response_model=shapes.Page)
def list_audit(
    app: AppDep,
    caller: TokenDep,
    before: Annotated[int, Query(ge=0, le=2**63 - 1, description="The last id of the page before.")] = 0,
    by: shapes.Short = "",
    action: shapes.Short = "",
) -> Any:
    """List the audit log, newest first, 100 entries a page."""
    with app.db.begin() as tx:
        rows = audit_view.entries(tx, caller.clinic_id, audit_view.Filter(by=by, action=action), before)
        audit.record(tx, caller.clinic_id, caller.by, "log viewed", None, {}, caller.now)
    page = rows[: audit_view.PAGE]
    items = [
        {
            "id": row.id,
            "at": stamp(row.at),
            "by": row.by,
            "action": row.action,
            "client": row.client_id,
            "details": row.details,
            "hash": row.hash,
            "previous_hash": row.previous_hash,
        }
        for row in page
    ]
    return {"items": items, "next": page[-1].id if len(rows) > audit_view.PAGE else None}
