"""Enrolling at the desk: five fields and go, or a file whose every row is shown before anything is kept."""

from datetime import datetime
from typing import Any

from fastapi import APIRouter
from sqlmodel import col, select
from starlette.responses import Response

from reminders.core.enrolment import COLUMNS
from reminders.core.library_limits import PRECAUTIONS
from reminders.core.schedule import local_date
from reminders.errors import BadInput, Refused
from reminders.flows import audit, enrol
from reminders.flows.enrol import Enrolled, Problem
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Contact, InboundRow, Outbound, Staff
from reminders.web import sight
from reminders.web.auth import Person
from reminders.web.deps import AppDep, FormDep, PersonDep
from reminders.web.forms import Form, as_csv
from reminders.web.pages import Pages, PagesDep, see
from reminders.web.state_words import delivery_word
from reminders.wiring import App

router = APIRouter(include_in_schema=False)

# What the long form asks besides the five fields; empty ones take the clinic's or the program's default.
MORE = ("language", "days", "time", "channel", "holder", "usual_pain", "emergency_note", "chart_id", "birth_year")
LABELS = {"sms": "text", "email": "e-mail"}


class TakeBack(Exception):
    """Ends a write transaction without keeping anything."""


@router.get("/enrol")
def enrol_page(app: AppDep, pages: PagesDep, person: PersonDep) -> Response:
    """Show the enrolment form."""
    return form_page(app, pages, person, Form(), [])


def form_page(app: App, pages: Pages, person: Person, form: Form, problems: list[Problem]) -> Response:
    """Show the form with what was typed and what is wrong with it."""
    with app.db.read() as tx:
        clinic = clients.the_clinic(tx, person.clinic_id)
        team = therapists(tx, person.clinic_id)
        programs = sorted(enrol.programs_of(tx, clinic))
    wrong = {problem.column: problem.reason for problem in problems}
    values = {"team": team, "programs": programs, "precautions": PRECAUTIONS, "wrong": wrong, "clinic": clinic}
    given = {name: form.text(name) for name in COLUMNS}
    ticked = form.many("precaution")
    return pages.show(
        "enrol.html",
        status=422 if problems else 200,
        given=given,
        ticked=ticked,
        none_known=form.checked("none_known"),
        agreed=form.checked("agreed"),
        today=local_date(app.clock(), clinic.time_zone),
        **values,
    )


def therapists(tx: Tx, clinic_id: int) -> list[Staff]:
    """Return who may have clients."""
    statement = select(Staff).where(
        Staff.clinic_id == clinic_id, col(Staff.role).in_(("therapist", "lead")), col(Staff.is_active).is_(True)
    )
    return list(tx.exec(statement.order_by(col(Staff.name))))


def row_in(form: Form, today: str) -> dict[str, str]:
    """Return the form as a row of an enrolment file, so that both are checked alike."""
    ticked = [kind for kind in PRECAUTIONS if kind in form.many("precaution")]
    if form.checked("none_known"):
        if ticked:
            raise BadInput("Either tick precautions or “none known”, not both.")
        ticked = ["none known"]
    row = {name: form.text(name, most=200) for name in ("name", "mobile", "email", "therapist", "program", *MORE)}
    row["precautions"] = "+".join(ticked)
    if form.checked("agreed"):
        row["consent_on"] = today
        row["consent_how"] = form.choice("consent_how", ("signed form", "spoken at desk"), "How she agreed")
    return row


@router.post("/enrol")
def enrol_one(app: AppDep, pages: PagesDep, person: PersonDep, form: FormDep) -> Response:
    """Enrol one client; with her consent the welcome goes out at once."""
    now = app.clock()
    with app.db.read() as tx:
        clinic = clients.the_clinic(tx, person.clinic_id)
    form.text("name", "The name", needed=True)
    row = row_in(form, local_date(now, clinic.time_zone).isoformat())
    enrolled, problems = attempt(app, person, as_csv(row), now, keep=True)
    if problems:
        return form_page(app, pages, person, form, problems)
    return see(f"/enrol/{enrolled[0].client.id}")


def attempt(
    app: App, person: Person, data: bytes, now: datetime, *, keep: bool
) -> tuple[list[Enrolled], list[Problem]]:
    """Enrol the rows of a file, all or none; with `keep` false nothing is kept whatever comes out."""
    enrolled: list[Enrolled] = []
    problems: list[Problem] = []
    try:
        with app.db.begin() as tx:
            clinic = clients.the_clinic(tx, person.clinic_id)
            enrolled, problems = enrol.enrol_file(tx, clinic, data, person.email, now)
            if problems or not keep:
                tx.expunge_all()
                raise TakeBack
    except TakeBack:
        pass
    return enrolled, problems


@router.get("/enrol/{client_id}")
def enrolled_page(app: AppDep, pages: PagesDep, person: PersonDep, client_id: int) -> Response:
    """Show how the first message fares while the client stands there."""
    return status_page(app, pages, person, client_id, "enrolled.html")


@router.get("/enrol/{client_id}/status")
def enrolled_status(app: AppDep, pages: PagesDep, person: PersonDep, client_id: int) -> Response:
    """Give the part of that page which changes."""
    return status_page(app, pages, person, client_id, "parts/enrolled.html")


def status_page(app: App, pages: Pages, person: Person, client_id: int, name: str) -> Response:
    """Show where the welcome stands: delivered, landline, failed, and whether she answered."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        contacts = clients.contacts_of(tx, client_id)
        sent = select(Outbound).where(Outbound.client_id == client_id, Outbound.kind == "welcome")
        welcomes = {row.to: row for row in tx.exec(sent.order_by(col(Outbound.id)))}
        heard = select(InboundRow.id).where(
            col(InboundRow.address).in_([one.address for one in contacts]),
            col(InboundRow.received_at) >= (client.created_at or now),
        )
        answered = tx.exec(heard.limit(1)).first() is not None
        audit.record(tx, clinic.id, person.email, "enrolment viewed", client_id, {}, now)
    rows = [status_row(contact, welcomes.get(contact.address)) for contact in contacts]
    return pages.show(name, client=client, rows=rows, answered=answered, state=client.state)


def status_row(contact: Contact, welcome: Outbound | None) -> dict[str, Any]:
    """Return one address with what became of its welcome."""
    if welcome is None:
        state = "waits for START from her" if contact.consent != "open" else "no welcome goes here"
    elif welcome.state == "failed":
        state = f"failed: {contact.unusable or welcome.why or welcome.code or 'not delivered'}"
    else:
        state = delivery_word(welcome.state)
    return {"address": contact.address, "by": LABELS[contact.kind], "state": state}


@router.get("/enrol-file")
def file_page(pages: PagesDep) -> Response:
    """Show where to choose a file."""
    return pages.show("enrol_file.html", columns=COLUMNS, preview=None, data="", wrong="")


@router.post("/enrol-file")
def file_sent(app: AppDep, pages: PagesDep, person: PersonDep, form: FormDep) -> Response:
    """Show every row of a file with its errors; or, once seen, enrol them all."""
    now = app.clock()
    data = form.files.get("file") or form.exact("data").encode()
    is_final = form.text("do") == "enrol" and not form.files.get("file")
    try:
        enrolled, problems = attempt(app, person, data, now, keep=is_final)
        rows = enrol.read_file(data)
    except (BadInput, Refused) as error:
        return pages.show("enrol_file.html", status=422, columns=COLUMNS, preview=None, data="", wrong=str(error))
    if is_final and not problems:
        return see("/clients", "enrolled")
    by_line: dict[int, list[Problem]] = {}
    for problem in problems:
        by_line.setdefault(problem.line, []).append(problem)
    warnings = {one.line: one.warnings for one in enrolled}
    preview = [
        {"line": line, "row": row, "wrong": by_line.get(line, []), "warnings": warnings.get(line, ())}
        for line, row in rows
    ]
    shown = data.decode("utf-8-sig", "replace")
    return pages.show("enrol_file.html", columns=COLUMNS, preview=preview, data=shown, wrong="")
