"""A client's record for other programs: sessions, messages, corrections; and what staff do for her."""

import secrets
from typing import Any

from fastapi import APIRouter
from starlette.responses import Response

from reminders.errors import BadInput, Refused
from reminders.exports import FORMATS
from reminders.flows import audit, care, erase, export, programs
from reminders.store import clients as people
from reminders.store import record
from reminders.store.db import Tx
from reminders.web import sight
from reminders.web.api import shapes
from reminders.web.api.clients import seen, shown, version_json
from reminders.web.api.once import OnceDep
from reminders.web.api.problems import ALL
from reminders.web.api.shapes import Id
from reminders.web.api.tokens import TokenDep
from reminders.web.deps import AppDep

router = APIRouter(prefix="/api/v1", tags=["record"], responses=ALL)


@router.get("/clients/{client_id}/sessions", response_model=shapes.Page)
def list_sessions(app: AppDep, caller: TokenDep, client_id: Id) -> Any:
    """List a client's sessions by date, each with its reports."""
    with app.db.begin() as tx:
        seen(tx, caller, client_id)
        rows = record.sessions_json(tx, client_id)
        audit.record(tx, caller.clinic_id, caller.by, "sessions viewed", client_id, {}, caller.now)
    return {"items": rows, "next": None}


@router.get("/clients/{client_id}/reports", response_model=shapes.Page)
def list_loose_reports(app: AppDep, caller: TokenDep, client_id: Id) -> Any:
    """List the reports that belong to no session."""
    with app.db.begin() as tx:
        seen(tx, caller, client_id)
        rows = record.loose_reports_json(tx, client_id)
        audit.record(tx, caller.clinic_id, caller.by, "reports viewed", client_id, {}, caller.now)
    return {"items": rows, "next": None}


@router.get("/clients/{client_id}/messages", response_model=shapes.Page)
def list_messages(app: AppDep, caller: TokenDep, client_id: Id) -> Any:
    """List what went out to a client and came in, oldest first, with what became of it."""
    with app.db.begin() as tx:
        seen(tx, caller, client_id)
        rows = record.messages_json(tx, caller.clinic_id, client_id)
        audit.record(tx, caller.clinic_id, caller.by, "messages viewed", client_id, {}, caller.now)
    return {"items": rows, "next": None}


@router.post("/clients/{client_id}/messages", status_code=201, response_model=shapes.Done)
def write(body: shapes.WriteIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Write to a client, by her own channel and inside her hours."""

    def act(tx: Tx) -> Any:
        client, clinic = seen(tx, caller, client_id)
        by = caller.staff_named(tx, body.by, ("therapist", "lead", "assistant"))
        writer = people.staff_by_email(tx, by)
        assert writer is not None
        care.write(tx, clinic, client, body.words, writer.name, by, secrets.randbits(48), caller.now)
        return {"done": "written", "id": client_id}

    return once(body, act, 201)


@router.post("/clients/{client_id}/hold", response_model=shapes.Row)
def hold(body: shapes.HoldIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Stop a client's reminders until a therapist clears the hold."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        by = caller.staff_named(tx, body.by, ("therapist", "lead", "assistant"))
        care.put_on_hold(tx, client, body.note, by, caller.now)
        return shown(tx, caller, client_id)

    return once(body, act)


@router.post("/clients/{client_id}/clear", response_model=shapes.Row)
def clear(body: shapes.ByIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Clear a client's hold, in a therapist's name; she is told once."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        care.clear_hold(tx, client, caller.staff_named(tx, body.by), caller.now)
        return shown(tx, caller, client_id)

    return once(body, act)


@router.post("/clients/{client_id}/easy-day", response_model=shapes.Done)
def easy_day(body: shapes.ByIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Make a client's next session an easy day."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        care.ease(tx, client, caller.staff_named(tx, body.by), caller.now)
        return {"done": "easy day next", "id": client_id}

    return once(body, act)


@router.post("/clients/{client_id}/dose", response_model=shapes.Row)
def dose(body: shapes.DoseIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Move a client along her ladder."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        return version_json(programs.step(tx, client, body.step, caller.staff_named(tx, body.by), caller.now))

    return once(body, act)


@router.post("/clients/{client_id}/notes", status_code=201, response_model=shapes.Done)
def keep_note(body: shapes.WriteIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Keep a staff member's note in the record."""

    def act(tx: Tx) -> Any:
        client, _ = seen(tx, caller, client_id)
        by = caller.staff_named(tx, body.by, ("therapist", "lead", "assistant"))
        note = care.keep_note(tx, client, body.words, by, caller.now)
        return {"done": "noted", "id": note.id}

    return once(body, act, 201)


@router.post("/sessions/{session_id}/correction", status_code=201, response_model=shapes.Done)
def correct(body: shapes.CorrectionIn, caller: TokenDep, once: OnceDep, session_id: Id) -> Response:
    """Correct what stands for a session; her own report stays beside it, and so does what the body leaves out."""

    def act(tx: Tx) -> Any:
        session, client = sight.session_seen(tx, caller.sight, session_id)
        if session.state == "planned":
            raise Refused("This session has not been yet.")
        by = caller.staff_named(tx, body.by, ("therapist", "lead", "assistant"))
        clinic = people.the_clinic(tx, caller.clinic_id)
        stands = {name: getattr(session, name) for name in ("completed", "sets", "reps", "pain")}
        values = stands | body.model_dump(include=set(stands), exclude_unset=True)
        made = care.correct(tx, clinic, client, session, values, body.why, by, caller.now)
        return {"done": "corrected", "id": made.id}

    return once(body, act, 201)


@router.post("/clients/{client_id}/export", response_model=shapes.Row)
def export_record(body: shapes.ExportIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Take a client's record out; the log keeps why and for whom. `content` is the file's text."""

    def act(tx: Tx) -> Any:
        client, clinic = seen(tx, caller, client_id)
        if client.closed_reason == "erased":
            raise Refused("This record was erased.")
        if not body.reason.strip() or not body.recipient.strip():
            raise BadInput("reason and recipient are needed: they are written into the audit log.")
        why = {"reason": body.reason, "recipient": body.recipient}
        write = FORMATS[body.format]
        text = export.export_client(tx, clinic.id or 0, client_id, body.format, write, why, caller.by, caller.now)
        return {"format": body.format, "content": text}

    return once(body, act)


@router.post("/clients/{client_id}/erase", response_model=shapes.Row)
def erase_record(app: AppDep, body: shapes.EraseIn, caller: TokenDep, once: OnceDep, client_id: Id) -> Response:
    """Erase a client's record; what the law keeps stays and is counted."""

    def act(tx: Tx) -> Any:
        client, clinic = seen(tx, caller, client_id)
        if not body.reason.strip():
            raise BadInput("reason: is empty.")
        gone = erase.erase(tx, app.texts, clinic.id or 0, client.id or 0, caller.by, body.reason, caller.now)
        return {"rows": gone.rows, "kept_alert_numbers": gone.alerts, "kept_closed_addresses": gone.closed_addresses}

    return once(body, act)
