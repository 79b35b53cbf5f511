"""The log of who saw and did what, and a client's record leaving or being erased. Every file carries a reason."""

import csv
import io
from datetime import date, datetime, timedelta

from fastapi import APIRouter
from starlette.responses import Response

from reminders.core.schedule import at_local
from reminders.errors import BadInput
from reminders.exports import FORMATS
from reminders.flows import audit, erase, export
from reminders.store import audit_view
from reminders.store.shapes import stamp
from reminders.web import sight
from reminders.web.auth import Person
from reminders.web.deps import AppDep, FormDep, PersonDep
from reminders.web.pages import PagesDep, see

router = APIRouter(include_in_schema=False)

ENDINGS = {"csv": "csv", "json": "json", "fhir": "json", "copy": "txt", "calendar": "ics"}
SAID = {
    "csv": "a spreadsheet",
    "json": "everything, for another program",
    "fhir": "FHIR, for a record system",
    "copy": "her own copy, to read",
    "calendar": "a calendar",
}


@router.get("/audit")
def audit_page(
    app: AppDep,
    pages: PagesDep,
    person: PersonDep,
    by: str = "",
    action: str = "",
    client: str = "",
    since: str = "",
    until: str = "",
    before: int = 0,
) -> Response:
    """Show the log, newest first, filtered; looking at it is a line of it."""
    now = app.clock()
    wanted = filter_of(person, by, action, client, since, until)
    with app.db.begin() as tx:
        rows = audit_view.entries(tx, person.clinic_id, wanted, before)
        actions = audit_view.actions(tx, person.clinic_id)
        audit.record(tx, person.clinic_id, person.email, "log viewed", None, {}, now)
    given = {"by": by, "action": action, "client": client, "since": since, "until": until}
    more = rows[audit_view.PAGE - 1].id if len(rows) > audit_view.PAGE else None
    return pages.show("audit.html", rows=rows[: audit_view.PAGE], actions=actions, given=given, more=more)


def filter_of(person: Person, by: str, action: str, client: str, since: str, until: str) -> audit_view.Filter:
    """Return what is looked for; raises BadInput naming the field."""
    if client and not (client.isascii() and client.isdigit() and len(client) < 16):
        raise BadInput("Client number must be a whole number.")
    first, last = instant_of(person, since, "From", 0), instant_of(person, until, "Until", 1)
    return audit_view.Filter(by.strip()[:120], action[:80], int(client) if client else None, first, last)


def instant_of(person: Person, text: str, label: str, days: int) -> datetime | None:
    """Return the start of a local day, or of the day after it."""
    try:
        return at_local(date.fromisoformat(text) + timedelta(days=days), "00:00", person.time_zone) if text else None
    except (ValueError, OverflowError):
        raise BadInput(f"{label} must be a date such as 2027-03-01.") from None


@router.post("/audit/export")
def export_log(app: AppDep, person: PersonDep, form: FormDep) -> Response:
    """Give the filtered log as a spreadsheet file; its last hash shows later whether lines were cut off."""
    now = app.clock()
    given = [form.text(name, most=120) for name in ("by", "action", "client", "since", "until")]
    wanted = filter_of(person, *given)
    reason = form.text("reason", "The reason", needed=True, most=300)
    made = io.StringIO(newline="")
    writer = csv.writer(made)
    writer.writerow(("id", "at", "by", "action", "client", "details", "hash", "previous hash"))
    with app.db.begin() as tx:
        count = 0
        for row in audit_view.every(tx, person.clinic_id, wanted):
            cells = (row.id, stamp(row.at), row.by, row.action, row.client_id, row.details, row.hash, row.previous_hash)
            writer.writerow(safe_cell(cell) for cell in cells)
            count += 1
        audit.record(tx, person.clinic_id, person.email, "log exported", None, {"lines": count, "reason": reason}, now)
    return as_file(made.getvalue(), "log.csv")


def safe_cell(value: object) -> str:
    """Return a cell that no spreadsheet takes for a formula."""
    words = "" if value is None else str(value)
    return f"'{words}" if words[:1] in ("=", "+", "-", "@", "\t") else words


def as_file(text: str, name: str) -> Response:
    """Return a file to keep."""
    kinds = {"csv": "text/csv", "json": "application/json", "txt": "text/plain", "ics": "text/calendar"}
    kind = kinds[name.rpartition(".")[2]]
    headers = {"content-disposition": f'attachment; filename="{name}"'}
    return Response(text.encode(), media_type=f"{kind}; charset=utf-8", headers=headers)


@router.get("/clients/{client_id}/record")
def record_page(app: AppDep, pages: PagesDep, person: PersonDep, client_id: int) -> Response:
    """Show how a record leaves or goes."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        audit.record(tx, clinic.id, person.email, "record page viewed", client_id, {}, now)
    return pages.show("record.html", client=client, formats={name: SAID.get(name, name) for name in FORMATS})


@router.post("/clients/{client_id}/export")
def export_record(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Give a client's record as a file to hand over."""
    now = app.clock()
    how = form.choice("format", tuple(FORMATS), "The format")
    why = {name: form.text(name, name.capitalize(), needed=True, most=300) for name in ("reason", "recipient")}
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        text = export.export_client(tx, clinic.id or 0, client.id or 0, how, FORMATS[how], why, person.email, now)
    return as_file(text, f"client-{client_id}.{ENDINGS.get(how, 'txt')}")


@router.post("/clients/{client_id}/erase")
def erase_record(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Erase a client's record, once the number has been typed as a check."""
    now = app.clock()
    reason = form.text("reason", "The reason", needed=True, most=300)
    if form.whole("typed", "The client's number") != client_id:
        raise BadInput("The client's number does not fit; type it as a check.")
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        erase.erase(tx, app.texts, clinic.id or 0, client.id or 0, person.email, reason, now)
    return see("/clients" if person.role != "records" else "/audit", "erased")
