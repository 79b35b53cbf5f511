"""No page asks client by client: the number of questions is the same for 5 and for 500 clients, and each is quick."""

import gc
import time
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import timedelta

import pytest
from sqlalchemy import event
from sqlmodel import col, delete, select

from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.program_json import to_json
from reminders.flows import digest
from reminders.memory import collect_rarely
from reminders.store.tables import (
    Alert,
    Client,
    ClientProgram,
    ClinicNote,
    Contact,
    Digest,
    ExerciseSession,
    Hold,
    Outbound,
    Proposal,
    Report,
    Schedule,
    Staff,
)
from reminders.texts import Texts
from tests.clinic import World
from tests.web.desk import Desk

FEW, MANY = 5, 500
READ = {"intent": "report", "completed": "all", "pain": 3}
QUICK_MS = 100  # at 500 clients a therapist
BUSY_MS = 250  # beside other tests, which share the caches; --long wants the goal itself and a machine to itself
PAGES = {
    "ben@example.org": ["/today", "/clients", "/digest", "/digest?now_too=1", "/levels", "/settings", "/enrol"],
    "fay@example.org": ["/work", "/clients", "/staff", "/delivery", "/audit", "/clinic", "/wording"],
    "dee@example.org": ["/today", "/clients"],
}
ONE_CLIENT = ["", "/program", "/details", "/sheet", "/levels", "/consent-sheet"]


def fill(world: World, count: int) -> int:
    """Write clients with six weeks of sessions, every tenth in some trouble; return the first one's number."""
    with world.db.begin() as tx:
        ben = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        body = to_json(STARTER_PROGRAMS["spine-strength"])
        today, ids = world.now.date(), []
        people = [
            Client(
                clinic_id=ben.clinic_id,
                name=f"Client {number}",
                state="active",
                therapist_id=ben.id or 0,
                program_code="spine-strength",
                time_zone="America/New_York",
                precautions_stated=number % 20 != 0,
                created_at=world.now,
                active_on=today - timedelta(weeks=6),
            )
            for number in range(count)
        ]
        tx.add_all(people)
        tx.flush()
        for client in people:
            client_id = client.id or 0
            ids.append(client_id)
            first = today - timedelta(weeks=6)
            address = f"client{client_id}@example.org"
            tx.add(Contact(client_id=client_id, kind="email", address=address, consent="open"))
            days = {"days": "mon+wed+fri", "time": "08:30", "time_zone": "America/New_York"}
            tx.add(Schedule(client_id=client_id, from_on=first, **days))
            tx.add(ClientProgram(client_id=client_id, number=1, from_on=first, body=body, rung_since_on=first))
        tx.flush()
        for number, client_id in enumerate(ids):
            dates = [today - timedelta(days=2 * back + 1) for back in range(18)]
            rows = [
                ExerciseSession(
                    client_id=client_id,
                    on_date=day,
                    due_at=world.now - timedelta(days=(today - day).days),
                    state=("done", "part", "missed")[place % 3],
                    pain=(number + place) % 6,
                )
                for place, day in enumerate(dates)
            ]
            tx.add_all(rows)
            tx.flush()
            reports = [
                Report(
                    client_id=client_id,
                    session_id=row.id,
                    at=row.due_at,
                    channel="sms",
                    text="done",
                    reading={"pain": 3},
                )
                for row in rows
            ]
            tx.add_all(reports)
            tx.flush()
            if number % 10 == 0:
                trouble(tx, world, ben.clinic_id, client_id, reports[0].id or 0)
    return ids[0]


def trouble(tx, world: World, clinic_id: int, client_id: int, report_id: int) -> None:  # type: ignore[no-untyped-def]
    """Something of each kind hangs on a client."""
    because = [{"at": world.now.isoformat(), "form": "told", "values": {}, "report": report_id, "inbound": None}]
    tx.add(
        Alert(
            clinic_id=clinic_id,
            number=client_id + 1000,
            client_id=client_id,
            rule="pain_up",
            level="today",
            opened_at=world.now,
            last_added_at=world.now,
            because=because,
        )
    )
    tx.add(ClinicNote(clinic_id=clinic_id, client_id=client_id, kind="question", words="may I?", at=world.now))
    tx.add(
        ClinicNote(clinic_id=clinic_id, client_id=client_id, kind="desk", details={"what": "opted out"}, at=world.now)
    )
    tx.add(Hold(client_id=client_id, rule="pain_up", opened_at=world.now))
    tx.add(Proposal(client_id=client_id, made_at=world.now, direction="up", to_rung=1))
    tx.add(
        Outbound(
            key=f"test:{client_id}",
            clinic_id=clinic_id,
            client_id=client_id,
            kind="reminder",
            channel="sms",
            to="+12025550101",
            state="failed",
            due_at=world.now,
            created_at=world.now,
        )
    )


@contextmanager
def counted(desk: Desk) -> Iterator[list[str]]:
    """Gather the questions that are asked of the database."""
    asked: list[str] = []

    def note(_connection, _cursor, statement, *_rest) -> None:  # type: ignore[no-untyped-def]
        if statement.lstrip().upper().startswith(("SELECT", "INSERT", "UPDATE", "DELETE")):
            asked.append(statement)

    event.listen(desk.world.db.engine, "before_cursor_execute", note)
    try:
        yield asked
    finally:
        event.remove(desk.world.db.engine, "before_cursor_execute", note)


def measured(desk: Desk, client_id: int) -> dict[str, tuple[int, float]]:
    """Return, for each page, how many questions it asks and how long it takes in milliseconds."""
    found: dict[str, tuple[int, float]] = {}
    for email, pages in PAGES.items():
        browser = desk.signed_in(email)
        shown = [*pages, *(f"/clients/{client_id}{end}" for end in ONE_CLIENT)] if email.startswith("ben") else pages
        for path in shown:
            assert browser.get(path).status_code == 200, path  # templates are compiled at their first use
            with counted(desk) as asked:
                browser.get(path)
            spans = []
            for _ in range(7):
                began = time.process_time()  # others share the machine
                browser.get(path)
                spans.append((time.process_time() - began) * 1000)
            found[f"{email} {path.replace(str(client_id), '1')}"] = (len(asked), min(spans))
    return found


def make_digest(world: World) -> None:
    """Make last week's digest as its Monday does."""
    with world.db.begin() as tx:
        tx.exec(delete(Digest))
        ben = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        week = digest.week_due("America/New_York", world.now)
        digest.make(tx, Texts(), ben.clinic_id, ben.id or 0, week, world.now)
        tx.exec(delete(Outbound).where(col(Outbound.kind) == "digest"))


@pytest.fixture
def as_served() -> Iterator[None]:
    """Look for garbage as rarely as a process that serves."""
    before = gc.get_threshold()
    collect_rarely()
    yield
    gc.unfreeze()
    gc.set_threshold(*before)


@pytest.fixture
def few_and_many(desk: Desk, as_served: None) -> tuple[dict[str, tuple[int, float]], dict[str, tuple[int, float]]]:
    first = fill(desk.world, FEW)
    make_digest(desk.world)
    few = measured(desk, first)
    fill(desk.world, MANY - FEW)
    make_digest(desk.world)
    return few, measured(desk, first)


def test_pages_ask_a_constant_number_of_questions_and_take_under_100_ms(
    few_and_many: tuple[dict[str, tuple[int, float]], dict[str, tuple[int, float]]], request: pytest.FixtureRequest
) -> None:
    few, many = few_and_many

    grown = {page: (few[page][0], asked) for page, (asked, _) in many.items() if asked > few[page][0]}
    most = QUICK_MS if request.config.getoption("--long") else BUSY_MS
    slow = {page: round(took) for page, (_, took) in many.items() if took > most}

    print("\n".join(f"{page}: {asked} questions, {took:.0f} ms" for page, (asked, took) in many.items()))
    assert grown == {}
    assert slow == {}
