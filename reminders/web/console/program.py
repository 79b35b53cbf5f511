"""The program editor and the sheet to print: what a client is prescribed, checked while it is written."""

from typing import Any

import segno
from fastapi import APIRouter
from sqlmodel import col, select
from starlette.responses import Response

from reminders.core.drawings import drawing
from reminders.core.library_limits import PRECAUTIONS
from reminders.core.program_json import from_json
from reminders.core.programs import Program, easy_items, program_days, session_items
from reminders.core.schedule import WEEKDAYS, parse_time
from reminders.core.tokens import CLIENT_SHEET, make_token
from reminders.errors import BadInput
from reminders.flows import audit, enrol, programs
from reminders.flows.link_marks import client_mark
from reminders.flows.render import first_name
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, ClientProgram, Clinic, Precaution, Schedule
from reminders.texts_exercises import exercise_words
from reminders.texts_said import said_days, said_hours
from reminders.web import sight
from reminders.web.console import program_form
from reminders.web.deps import AppDep, FormDep, PersonDep, SecretsDep
from reminders.web.forms import Form
from reminders.web.pages import Pages, PagesDep, safe, see

router = APIRouter(include_in_schema=False)

MORE_WEEKS = 6


@router.get("/clients/{client_id}/program")
def program_page(app: AppDep, pages: PagesDep, person: PersonDep, client_id: int, start: str = "") -> Response:
    """Show the editor, with the client's program or the one to start from."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        version, given, schedule = present(tx, client)
        known = enrol.programs_of(tx, clinic)
        audit.record(tx, clinic.id, person.email, "program viewed", client_id, {}, now)
    program = known[start] if start in known else from_json(version.body) if version else next(iter(known.values()))
    rung = 0 if start in known or version is None else version.rung
    fields = program_form.fields_of(program)
    values = editor_values(client, program, fields, given, schedule, rung)
    return pages.show("program.html", known=sorted(known), warnings=program_form.warnings(program, given), **values)


def present(tx: Tx, client: Client) -> tuple[ClientProgram | None, list[str], Schedule | None]:
    """Return the newest version, the precautions that hold, and the newest schedule of a client."""
    rows = tx.exec(select(Precaution).where(Precaution.client_id == client.id, col(Precaution.ended_on).is_(None)))
    schedules = select(Schedule).where(Schedule.client_id == client.id)
    newest = tx.exec(schedules.order_by(col(Schedule.from_on).desc(), col(Schedule.id).desc())).first()
    return clients.newest_program(tx, client.id or 0), [row.kind for row in rows], newest


def editor_values(
    client: Client,
    program: Program | None,
    fields: dict[str, Any],
    given: list[str],
    schedule: Schedule | None,
    rung: int,
) -> dict[str, Any]:
    """Return what the editor shows."""
    return {
        "client": client,
        "fields": fields,
        "choices": program_form.choices(),
        "weekdays": WEEKDAYS,
        "precautions": PRECAUTIONS,
        "given": given,
        "is_stated": client.precautions_stated,
        "time": schedule.time if schedule else "08:30",
        "rung": rung,
        "steps": program_form.steps_count(program) if program else rung + 1,
        "by_itself": client.progress_by_itself,
        "wrong": "",
    }


@router.post("/clients/{client_id}/program")
def save_program(app: AppDep, pages: PagesDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Check the program or keep it as the next version."""
    now = app.clock()
    with app.db.read() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        known = sorted(enrol.programs_of(tx, clinic))
    try:
        wanted = change_in(form)
    except BadInput as error:
        return shown_again(pages, form, client, known, None, str(error))
    if form.text("action") == "check":
        return shown_again(pages, form, client, known, wanted, "")
    with app.db.begin() as tx:
        client, _ = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        programs.change(tx, client, wanted, person.email, now)
    return see(f"/clients/{client_id}/program", "saved")


def change_in(form: Form) -> programs.Change:
    """Return the change that the form states; raises BadInput with one sentence."""
    program = program_form.program_from(program_form.fields_in(form))
    try:
        hour = parse_time(form.text("time", "The hour", needed=True)).strftime("%H:%M")
    except ValueError as error:
        raise BadInput(f"The hour: {error}.") from None
    step = form.whole("rung", "The step", least=1, most=20, default=1) or 1
    return programs.Change(
        program=program,
        rung=min(step, program_form.steps_count(program)) - 1,
        precautions=program_form.precautions_in(form),
        days="+".join(program_days(program)),
        time=hour,
        by_itself=form.checked("by_itself"),
    )


def shown_again(
    pages: Pages, form: Form, client: Client, known: list[str], wanted: programs.Change | None, wrong: str
) -> Response:
    """Show the editor with what was written, and what to say about it."""
    fields = program_form.with_empty_lines(program_form.fields_in(form))
    given = [kind for kind in PRECAUTIONS if kind in form.many("precaution")]
    warnings = program_form.warnings(wanted.program, given) if wanted else []
    program = wanted.program if wanted else None
    rung = (form.whole("rung", default=1) or 1) - 1 if not wrong else 0
    values = editor_values(client, program, fields, given, None, rung)
    values |= {"time": form.text("time"), "by_itself": form.checked("by_itself"), "wrong": wrong}
    values["is_stated"] = form.checked("none_known") or bool(given)
    return pages.show("program.html", status=422 if wrong else 200, known=known, warnings=warnings, **values)


@router.post("/clients/{client_id}/program/end")
def end_or_extend(app: AppDep, person: PersonDep, form: FormDep, client_id: int) -> Response:
    """Extend a program, or note that she was looked at again."""
    now = app.clock()
    what = form.choice("do", ("extend", "rechecked"), "What to do")
    with app.db.begin() as tx:
        client, _ = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        if what == "extend":
            programs.extend(tx, client, MORE_WEEKS, person.email, now)
        else:
            programs.rechecked(tx, client, person.email, now)
    return see(f"/clients/{client_id}", "saved", "program")


@router.get("/clients/{client_id}/sheet")
def sheet(app: AppDep, pages: PagesDep, person: PersonDep, secrets: SecretsDep, client_id: int) -> Response:
    """Show the sheet for the client to take home: no doses, since they change; a code that leads to her page."""
    now = app.clock()
    with app.db.begin() as tx:
        client, clinic = sight.client_seen(tx, sight.sight_of(tx, person, now), client_id)
        version = programs.version_of(tx, client)
        audit.record(tx, clinic.id, person.email, "sheet made", client_id, {"version": version.number}, now)
    program = from_json(version.body)
    link = f"{app.settings.public_url}/c/{make_token(secrets, CLIENT_SHEET, client_id, client_mark(client.created_at))}"
    return pages.show("sheet.html", **sheet_values(client, clinic, program, version.rung, link))


def sheet_values(client: Client, clinic: Clinic, program: Program, rung: int, link: str) -> dict[str, Any]:
    """Return what the sheet shows, in the client's language."""
    words = exercise_words(client.language)

    def shown(code: str, letter: str = "") -> dict[str, Any]:
        one = words.exercises[code]
        return {
            "letter": letter,
            "name": one.name,
            "cues": one.cues,
            "safety": one.safety,
            "drawing": safe(drawing(code, one.name)),
        }

    lists = [
        {
            "name": one.name,
            "days": said_days("+".join(one.days), client.language),
            "items": [shown(item.exercise, item.letter) for item in session_items(one, rung)],
            "easy": [words.name(item.exercise) for item in easy_items(one, rung)],
        }
        for one in program.lists
    ]
    return {
        "language": client.language,
        "first_name": first_name(client.name),
        "lists": lists,
        "daily": [shown(item.exercise) for item in program.daily],
        "clinic": clinic,
        "hours": said_hours(clinic.hours, client.language),
        "link": link,
        "code": safe(segno.make(link, error="m").svg_inline(scale=4, border=2)),
    }
