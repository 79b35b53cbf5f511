"""Enrolling clients from a file's rows, all or none. What a consent then brings is in joining.py."""

import csv
import io
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from sqlmodel import col, select

from reminders.core.enrolment import COLUMNS, Defaults, Enrolment, read_row
from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.program_json import from_json
from reminders.core.programs import Program, program_days, with_days
from reminders.core.schedule import local_date
from reminders.errors import BadInput, Refused
from reminders.flows import audit, joining, plan
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, Contact, Precaution, Schedule
from reminders.store.tables import Program as ProgramRow

MOST_ROWS = 5_000


@dataclass(frozen=True)
class Problem:
    """What is wrong with one row of a file: its line (the header is line 1), column and reason."""

    line: int
    column: str
    reason: str

    def __str__(self) -> str:
        """Say it in one sentence."""
        return f"line {self.line}, {self.column}: {self.reason}."


@dataclass(frozen=True)
class Enrolled:
    """A row that became a client."""

    line: int
    client: Client
    first_session: date | None
    warnings: tuple[str, ...]

    def as_dict(self) -> dict[str, Any]:
        """Return the row as the enrol command prints it."""
        return {
            "line": self.line,
            "id": self.client.id,
            "name": self.client.name,
            "state": self.client.state,
            "first_session": self.first_session.isoformat() if self.first_session else None,
            "warnings": list(self.warnings),
        }


def read_file(data: bytes) -> list[tuple[int, dict[str, str]]]:
    """Return a file's rows with their lines: UTF-8 with or without mark, comma or semicolon; raises BadInput."""
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError:
        raise BadInput("The file is not UTF-8 text; save it as CSV UTF-8.") from None
    header = text.split("\n", 1)[0]
    mark = ";" if header.count(";") > header.count(",") else ","
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=mark, strict=True)
    rows: list[tuple[int, dict[str, str]]] = []
    names: list[str] = []
    try:
        for cells in reader:
            if not names:
                names = header_names(cells)
            elif any(cell.strip() for cell in cells):
                rows.append((reader.line_num, row_of(names, cells, reader.line_num)))
    except csv.Error as error:
        raise BadInput(f"line {reader.line_num}: the row cannot be read as CSV ({error}).") from None
    if not names:
        raise BadInput(
            "The file is empty; its first line must name the columns, such as name,mobile,therapist,program."
        )
    if len(rows) > MOST_ROWS:
        raise BadInput(f"The file has {len(rows)} rows; enrol at most {MOST_ROWS} at once.")
    return rows


def header_names(cells: Sequence[str]) -> list[str]:
    """Return a header's column names; raises BadInput for an unknown or doubled one."""
    names = [cell.strip().lower() for cell in cells]
    unknown = [name for name in names if name not in COLUMNS]
    if unknown:
        raise BadInput(f"line 1: there is no column {unknown[0]!r}; the columns are {', '.join(COLUMNS)}.")
    if len(set(names)) != len(names):
        raise BadInput("line 1: a column is named twice.")
    return names


def row_of(names: Sequence[str], cells: Sequence[str], line: int) -> dict[str, str]:
    """Return a row by column name; raises BadInput when it has more cells than the header."""
    if len(cells) > len(names):
        raise BadInput(f"line {line}: the row has {len(cells)} cells but the first line names {len(names)} columns.")
    return dict(zip(names, cells, strict=False))


def programs_of(tx: Tx, clinic: Clinic) -> dict[str, Program]:
    """Return the programs that a clinic may prescribe: the starter ones and its own."""
    programs = dict(STARTER_PROGRAMS)
    own = select(ProgramRow).where(ProgramRow.clinic_id == clinic.id, col(ProgramRow.is_active).is_(True))
    for row in tx.exec(own):
        programs[row.code] = from_json(row.body)
    return programs


def check_clinic(clinic: Clinic) -> None:
    """Raise Refused while the clinic has no name or phone: nobody can be enrolled."""
    if not clinic.name or not clinic.phone:
        raise Refused('The clinic has no name or phone yet; set them with: reminders clinic set --name "…" --phone +1…')


def enrol_file(tx: Tx, clinic: Clinic, data: bytes, by: str, now: datetime) -> tuple[list[Enrolled], list[Problem]]:
    """Enrol every row of a file, or none: with problems the caller must roll back."""
    check_clinic(clinic)
    rows = read_file(data)
    programs = programs_of(tx, clinic)
    defaults = Defaults(
        clinic.time_zone,
        clinic.window,
        {code: "+".join(program_days(program)) for code, program in programs.items()},
        local_date(now, clinic.time_zone),
    )
    enrolled: list[Enrolled] = []
    problems: list[Problem] = []
    for line, row in rows:
        made, wrong = read_row(row, defaults)
        problems += [Problem(line, column, reason) for column, reason in wrong]
        if made is None:
            continue
        against = refusals(tx, clinic, made, programs)
        problems += [Problem(line, column, reason) for column, reason in against]
        if not against:
            enrolled.append(enrol(tx, clinic, made, programs[made.program], by, now, line))
    return enrolled, problems


def refusals(tx: Tx, clinic: Clinic, made: Enrolment, programs: dict[str, Program]) -> list[tuple[str, str]]:
    """Return what the record has against a row, as (column, reason) pairs."""
    wrong: list[tuple[str, str]] = []
    therapist = clients.staff_by_email(tx, made.therapist)
    if therapist is None or therapist.clinic_id != clinic.id or not therapist.is_active:
        wrong.append(("therapist", f"nobody on the staff has the e-mail {made.therapist!r}; add her with staff add"))
    elif therapist.role not in ("therapist", "lead"):
        wrong.append(("therapist", f"{made.therapist!r} is {therapist.role}, not a therapist"))
    try:
        with_days(programs[made.program], made.days.split("+"))
    except ValueError as error:
        wrong.append(("days", str(error).rstrip(".")))
    for kind, address in made.addresses:
        for _, client in clients.clients_at(tx, address):
            if client.clinic_id == clinic.id and client.name.casefold() == made.name.casefold():
                column = "mobile" if kind == "sms" else "email"
                wrong.append((column, f"{made.name} with {address} is enrolled already as client {client.id}"))
    return wrong


def enrol(tx: Tx, clinic: Clinic, made: Enrolment, program: Program, by: str, now: datetime, line: int = 0) -> Enrolled:
    """Write a client with her addresses, precautions, schedule and program; with consent she is active at once."""
    therapist = clients.staff_by_email(tx, made.therapist)
    assert therapist is not None
    today = local_date(now, made.time_zone)
    client = Client(
        **{
            field: getattr(made, field)
            for field in ("name", "language", "time_zone", "channel", "holder", "usual_pain")
        },
        clinic_id=clinic.id or 0,
        therapist_id=therapist.id or 0,
        program_code=made.program,
        precautions_stated=made.precautions is not None,
        emergency_note=made.emergency_note,
        chart_id=made.chart_id,
        birth_year=made.birth_year,
        invited_at=now,
        created_at=now,
    )
    tx.add(client)
    tx.flush()
    client_id = client.id or 0
    warnings = made.warnings + shared_words(tx, client, made)
    for kind, address in made.addresses:
        tx.add(Contact(client_id=client_id, kind=kind, address=address))
    for kind in made.precautions or ():
        tx.add(Precaution(client_id=client_id, kind=kind, noted_on=today))
    tx.add(Schedule(client_id=client_id, from_on=today, days=made.days, time=made.time, time_zone=made.time_zone))
    joining.give_program(tx, client, program, made.precautions or (), today, by, now)
    tx.flush()
    if made.consent_on is not None:
        joining.consent_at_desk(tx, clinic, client, made.consent_how, made.consent_on, by, now)
    first = plan.plan_next_session(tx, client, today, now) if client.state == "active" else None
    audit.record(tx, clinic.id, by, "client enrolled", client_id, {"line": line}, now)
    return Enrolled(line, client, first.on_date if first else None, warnings)


def shared_words(tx: Tx, client: Client, made: Enrolment) -> tuple[str, ...]:
    """Return a warning for each address that another client has too."""
    said = []
    for _, address in made.addresses:
        others = [other for _, other in clients.clients_at(tx, address) if other.id != client.id]
        said += [f"{address} is also the contact of client {other.id}" for other in others]
    return tuple(said)
