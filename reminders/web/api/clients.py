"""Clients for other programs: listed, enrolled, changed, paused, closed; their consents and programs."""

from datetime import timedelta
from typing import Any

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.program_json import from_json
from reminders.core.programs import program_days
from reminders.core.schedule import local_date, parse_time
from reminders.errors import BadInput, Refused
from reminders.flows import audit, closing, details, enrol, pause, programs
from reminders.store import clients as people
from reminders.store import desk_view, record
from reminders.store.client_view import consents_of
from reminders.store.db import Tx
from reminders.store.shapes import day, stamp
from reminders.store.tables import Client, ClientProgram, Clinic
from reminders.web import sight
from reminders.web.api import shapes
from reminders.web.api.once import OnceDep
from reminders.web.api.problems import ALL
from reminders.web.api.shapes import After, Id
from reminders.web.api.tokens import Caller, TokenDep
from reminders.web.deps import AppDep
from reminders.web.forms import as_csv

router = APIRouter(prefix="/api/v1", tags=["clients"], responses=ALL)


def seen(tx: Tx, caller: Caller, client_id: int) -> tuple[Client, Clinic]:
    """Return a client of the caller's clinic; raises NotFound."""
    return sight.client_seen(tx, caller.sight, client_id)


def shown(tx: Tx, caller: Caller, client_id: int) -> dict[str, Any]:
    """Return one client in the record's shape."""
    return record.clients_json(tx, caller.clinic_id, caller.now, client_id)[0]


@router.get("/clients", response_model=shapes.Page)
def list_clients(
    app: AppDep, caller: TokenDep, after: After = 0, state: shapes.Short = "", q: shapes.Short = ""
) -> Any:
    """List the clinic's clients by id, a page of 50 at a time; `q` finds by name, address or chart number."""
    with app.db.begin() as tx:
        found = desk_view.clients_found(tx, caller.clinic_id, None, q, state, after)
        page = found[: desk_view.PAGE]
        rows = record.clients_by_id_json(tx, caller.clinic_id, caller.now, [client.id or 0 for client in page])
        ids = [client.id for client in page]
        audit.record(tx, caller.clinic_id, caller.by, "client list viewed", None, {"clients": ids}, caller.now)
    return {"items": rows, "next": page[-1].id if len(found) > desk_view.PAGE else None}


@router.post("/clients", status_code=201, response_model=shapes.Row)
def enrol_client(body: shapes.EnrolIn, caller: TokenDep, once: OnceDep) -> Response:
    """Enrol one client; with her consent she is welcomed at once."""

    def act(tx: Tx) -> Any:
        clinic = people.the_clinic(tx, caller.clinic_id)
        row = {name: "" if value is None else str(value) for name, value in body.model_dump().items()}
        made, problems = enrol.enrol_file(tx, clinic, as_csv(row), caller.by, caller.now)
        if problems:
            raise BadInput(" ".join(f"{one.column}: {one.reason}." for one in problems))
        if not made:
            raise BadInput("name: is empty.")
        return {**shown(tx, caller, made[0].client.id or 0), "warnings": list(made[0].warnings)}

    return once(body, act, 201)


@router.get("/clients/{client_id}", response_model=shapes.Row)
def one_client(app: AppDep, caller: TokenDep, client_id: Id) -> Any:
    """Show one client with contacts, holds and pauses."""
    with app.db.begin() as tx:
        seen(tx, caller, client_id)
        found = shown(tx, caller, client_id)
        audit.record(tx, caller.clinic_id, caller.by, "client viewed", client_id, {}, caller.now)
    return found


@router.patch("/clients/{client_id}", response_model=shapes.Row)
def change_client(body: shapes.DetailsIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Change details, days, therapist or addresses; a new address needs a consent of its own."""

    def act(tx: Tx) -> Any:
        client, clinic = seen(tx, caller, client_id)
        given = body.model_dump(exclude_unset=True)
        plain = ("name", "language", "channel", "holder", "window", "emergency_note", "chart_id", "birth_year")
        fields = {name: given[name] for name in (*plain, "compact_doses") if given.get(name) is not None}
        therapist_id = None
        if given.get("therapist"):
            therapist = people.staff_by_email(tx, given["therapist"])
            if therapist is None:
                raise BadInput("therapist: nobody on the staff has this e-mail.")
            therapist_id = therapist.id
        wanted = details.Wanted(fields, given.get("days"), given.get("time"), given.get("time_zone"), therapist_id)
        details.change(tx, clinic, client, wanted, caller.by, caller.now)
        for kind, name in (("sms", "mobile"), ("email", "email")):
            if given.get(name) is not None:
                details.change_address(tx, clinic, client, kind, given[name], caller.by, caller.now)
        return shown(tx, caller, client_id)

    return once(body, act)


@router.get("/clients/{client_id}/consents", response_model=shapes.Page)
def list_consents(app: AppDep, caller: TokenDep, client_id: Id) -> Any:
    """List what happened to the consent of her addresses, newest first."""
    with app.db.read() as tx:
        seen(tx, caller, client_id)
        addresses = [one.address for one in people.contacts_of(tx, client_id)]
        rows = consents_of(tx, client_id, addresses)
    items = [
        {
            "at": stamp(row.at),
            "address": row.address,
            "channel": row.kind,
            "change": row.change,
            "how": row.how,
            "by": row.by,
            "wording": row.wording_version,
            "language": row.language,
        }
        for row in rows
    ]
    return {"items": items, "next": None}


@router.post("/clients/{client_id}/consents", response_model=shapes.Row)
def record_consent(body: shapes.ConsentIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Record a consent taken at the desk, or her wish for no more messages."""

    def act(tx: Tx) -> Any:
        client, clinic = seen(tx, caller, client_id)
        if body.on is not None and body.on > local_date(caller.now, caller.time_zone):
            raise BadInput("on: the day of the consent lies ahead.")
        if body.change == "given":
            details.consent_given(tx, clinic, client, body.how, body.on, caller.by, caller.now)
        else:
            details.consent_withdrawn(tx, clinic, client, caller.by, caller.now)
        return shown(tx, caller, client_id)

    return once(body, act)


@router.post("/clients/{client_id}/pause", response_model=shapes.Row)
def begin_pause(body: shapes.PauseIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Pause a client, as she asked."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        today = local_date(caller.now, client.time_zone)
        if body.until is not None and not today <= body.until <= today + timedelta(days=366):
            raise BadInput("until: must be from today on, within a year.")
        pause.begin(tx, client, body.until, caller.by, caller.now, reason=body.reason[:80])
        audit.record(tx, caller.clinic_id, caller.by, "pause begun", client_id, {}, caller.now)
        return shown(tx, caller, client_id)

    return once(body, act)


@router.post("/clients/{client_id}/resume", response_model=shapes.Row)
def end_pause(caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """End a client's pause."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        if not pause.end(tx, client, caller.by, caller.now):
            raise Refused("This client is not paused.")
        audit.record(tx, caller.clinic_id, caller.by, "pause ended", client_id, {}, caller.now)
        return shown(tx, caller, client_id)

    return once(None, act)


@router.post("/clients/{client_id}/close", response_model=shapes.Row)
def close_client(body: shapes.ReasonIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Close a client's care; everything that waits is withdrawn and no message says so."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        closing.close(tx, client, body.reason, caller.by, caller.now)
        return shown(tx, caller, client_id)

    return once(body, act)


@router.post("/clients/{client_id}/reopen", response_model=shapes.Row)
def reopen_client(caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Invite a closed client again; consent is asked anew."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        closing.reopen(tx, client, caller.by, caller.now)
        return shown(tx, caller, client_id)

    return once(None, act)


@router.get("/clients/{client_id}/program", response_model=shapes.Row)
def show_program(app: AppDep, caller: TokenDep, client_id: Id) -> Any:
    """Show the newest version of a client's program."""
    with app.db.read() as tx:
        client, _ = seen(tx, caller, client_id)
        return version_json(programs.version_of(tx, client))


def version_json(version: ClientProgram) -> dict[str, Any]:
    """Return a program version in JSON."""
    return {
        "version": version.number,
        "from": version.from_on.isoformat(),
        "step": version.rung + 1,
        "program": version.body,
        "why": version.why,
        "by": version.by,
        "recheck_on": day(version.recheck_on),
        "end_on": day(version.end_on),
    }


@router.put("/clients/{client_id}/program", response_model=shapes.Row)
def change_program(body: shapes.ProgramIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Keep another version of a client's program, with her days, hour and precautions."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        by = caller.staff_named(tx, body.by)
        try:
            program = from_json(body.program)
            hour = parse_time(body.time).strftime("%H:%M")
        except ValueError as error:
            raise BadInput(str(error)) from None
        most = max(len(item.ladder.rungs) for one in program.lists for item in one.items)
        given = None if body.precautions is None else tuple(body.precautions)
        days = "+".join(program_days(program))
        wanted = programs.Change(program, min(body.step, most) - 1, given, days, hour, body.by_itself)
        programs.change(tx, client, wanted, by, caller.now)
        return version_json(programs.version_of(tx, client))

    return once(body, act)


@router.post("/clients/{client_id}/program/extend", response_model=shapes.Row)
def extend_program(body: shapes.ExtendIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Let a program end some weeks later."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        by = caller.staff_named(tx, body.by)
        return version_json(programs.extend(tx, client, body.weeks, by, caller.now))

    return once(body, act)


@router.post("/clients/{client_id}/program/rechecked", response_model=shapes.Row)
def note_recheck(body: shapes.ByIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Note that a client was looked at again today."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        by = caller.staff_named(tx, body.by)
        return version_json(programs.rechecked(tx, client, by, caller.now))

    return once(body, act)
