"""Who may call what, tried on every route there is: each role, another clinic, no session, a stale session."""

import re
from collections.abc import Iterator
from typing import Any

import pytest
from fastapi import FastAPI
from sqlmodel import select

from reminders.core.scopes import SCOPES
from reminders.store.tables import (
    Client,
    ClientProgram,
    Clinic,
    ClinicNote,
    ExerciseSession,
    Proposal,
    Report,
    Staff,
    metadata,
)
from reminders.web.access_rules import API, CONSOLE, DEMO, OUTSIDE, ROLES, RULES
from tests.clinic import ANA
from tests.web.desk import Browser, Desk, a_token

# Routes that show a whole list: another clinic's staff see their own list, without our people.
ALLOWED = {200, 204, 303, 409, 422}


def routes_of(app: Any) -> Iterator[tuple[str, str]]:
    """Yield every (method, path) that a web application or router answers."""
    for route in app.routes:
        if hasattr(route, "original_router"):
            yield from routes_of(route.original_router)
        elif hasattr(route, "methods"):
            for method in sorted(route.methods - {"HEAD", "OPTIONS"}):
                yield method, route.path
        else:
            raise AssertionError(f"A route that the guard does not stand before: {route}")


def console_routes(web: FastAPI) -> list[tuple[str, str]]:
    return [(method, path) for method, path in routes_of(web) if f"{method} {path}" in CONSOLE]


@pytest.fixture
def ids(desk: Desk) -> dict[str, int]:
    """Ana with something of each kind hanging on her."""
    client_id = desk.world.enrol()
    desk.world.pass_time(days=2)
    desk.world.plan()
    desk.world.send()
    desk.world.hear("done pain 9", ANA)
    with desk.world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        note = ClinicNote(clinic_id=client.clinic_id, client_id=client_id, kind="question", at=desk.world.now)
        proposal = Proposal(client_id=client_id, made_at=desk.world.now, direction="up", to_rung=1)
        tx.add(note)
        tx.add(proposal)
        tx.flush()
        found = {"note_id": note.id or 0, "proposal_id": proposal.id or 0}
    return {
        **found,
        "client_id": client_id,
        "alert_id": desk.world.alerts(client_id)[0].id or 0,
        "session_id": desk.world.rows(ExerciseSession, client_id=client_id)[0].id,
        "report_id": desk.world.rows(Report, client_id=client_id)[0].id,
        "version_id": desk.world.rows(ClientProgram, client_id=client_id)[0].id,
        "staff_id": desk.world.rows(Staff, email="ben@example.org")[0].id,
    }


def filled(path: str, ids: dict[str, int]) -> str:
    return re.sub(r"\{(\w+)\}", lambda found: str(ids.get(found[1], "x")), path)


def person_of(desk: Desk, role: str, clinic_name: str) -> Browser:
    email = f"{role}-{clinic_name.split()[0].lower()}@example.org"
    with desk.world.db.begin() as tx:
        clinic = tx.exec(select(Clinic).where(Clinic.name == clinic_name)).one()
        staff = Staff(clinic_id=clinic.id or 0, role=role, name=f"Ina {role}", email=email)
        tx.add(staff)
        tx.flush()
        if role == "therapist":
            for client in tx.exec(select(Client).where(Client.clinic_id == clinic.id)):
                client.therapist_id = staff.id or 0
                tx.add(client)
    return desk.signed_in(email)


def turned_away(method: str, answer: Any) -> bool:
    """A page leads to the sign-in page; a form gets it at once, so that nothing typed is lost."""
    if method == "POST":
        return bool(answer.status_code == 401)
    return bool(answer.headers.get("location", "").startswith("/sign-in"))


def call(browser: Browser, method: str, path: str) -> int:
    return (browser.get(path) if method == "GET" else browser.post(path)).status_code


def test_every_route_has_a_rule_and_every_rule_a_route(desk: Desk) -> None:
    found = {f"{method} {path}" for method, path in routes_of(desk.web)}

    assert found - set(RULES) == set()
    assert set(RULES) - found == set(DEMO), "a demo's pages exist in a demo only"
    assert not set(OUTSIDE) & set(CONSOLE) & set(API)


@pytest.mark.parametrize("role", ROLES)
def test_a_role_reaches_its_routes_and_no_others(desk: Desk, ids: dict[str, int], role: str) -> None:
    browser = person_of(desk, role, "Alder Hill Physio")
    odd = {}
    for method, path in console_routes(desk.web):
        if path in ("/sign-out", "/confirm"):  # one ends the session, the other answers an empty password with 401
            continue
        status = call(browser, method, filled(path, ids))
        is_fine = status in ALLOWED if role in RULES[f"{method} {path}"].roles else status == 403
        if not is_fine:
            odd[f"{method} {path}"] = status
    assert odd == {}


@pytest.mark.parametrize("role", ROLES)
def test_another_clinic_reaches_nothing_of_ours(desk: Desk, ids: dict[str, int], role: str) -> None:
    browser = person_of(desk, role, "Birch Lane Physio")
    odd = {}
    for method, path in console_routes(desk.web):
        if path == "/sign-out" or role not in RULES[f"{method} {path}"].roles:
            continue
        answer = browser.get(filled(path, ids)) if method == "GET" else browser.post(filled(path, ids), **FIELDS)
        names_ours = any(f"{{{name}}}" in path for name in ids)
        if names_ours and answer.status_code not in (404, 422):
            odd[f"{method} {path}"] = answer.status_code
        if "Ana" in answer.text or "Alder Hill" in answer.text:
            odd[f"{method} {path}"] = "shows ours"
    assert odd == {}


# Whole forms, so that another clinic's person is refused for whose it is and not for an empty field.
FIELDS = {
    "words": "x",
    "outcome": "called",
    "note": "x",
    "answer": "approve",
    "step": "back",
    "do": "extend",
    "completed": "all",
    "on": "2027-03-01",
    "name": "x",
    "language": "en",
    "channel": "sms",
    "holder": "self",
    "reason": "x",
    "recipient": "x",
    "format": "json",
    "typed": "1",
    "role": "therapist",
    "to": "1",
}


def test_nobody_without_a_session_reaches_the_console(desk: Desk, ids: dict[str, int]) -> None:
    visitor = desk.visitor()
    odd = {}
    for method, path in console_routes(desk.web):
        answer = visitor.request(method, filled(path, ids), data={} if method == "POST" else None)
        is_fine = (
            answer.status_code == 401 if method == "POST" else answer.headers.get("location", "").startswith("/sign-in")
        )
        if not is_fine:
            odd[f"{method} {path}"] = answer.status_code
    assert odd == {}


def test_a_stale_session_reaches_nothing(desk: Desk, ids: dict[str, int]) -> None:
    browser = person_of(desk, "lead", "Alder Hill Physio")
    desk.world.pass_time(minutes=16)
    odd = {}
    for method, path in console_routes(desk.web):
        answer = browser.get(filled(path, ids)) if method == "GET" else browser.post(filled(path, ids))
        is_fine = (
            answer.status_code == 401 if method == "POST" else answer.headers.get("location", "").startswith("/sign-in")
        )
        if not is_fine:
            odd[f"{method} {path}"] = answer.status_code
    assert odd == {}


def test_what_cannot_be_taken_back_asks_once_more_who_it_is(desk: Desk, ids: dict[str, int]) -> None:
    browser = person_of(desk, "admin", "Alder Hill Physio")
    for _ in range(2):
        desk.world.pass_time(minutes=6)
        browser.get("/work")
    asked = [f"{method} {path}" for method, path in console_routes(desk.web) if RULES[f"{method} {path}"].confirms]

    for rule in asked:
        if "admin" in RULES[rule].roles:
            answer = browser.post(filled(rule.split(" ")[1], ids))
            assert (answer.status_code, "is it you?" in answer.text) == (401, True), rule


def test_the_desk_never_sees_words_or_pain(desk: Desk, ids: dict[str, int]) -> None:
    browser = person_of(desk, "admin", "Alder Hill Physio")
    for method, path in console_routes(desk.web):
        if method == "GET" and "admin" in RULES[f"GET {path}"].roles:
            page = browser.get(filled(path, ids)).text
            assert "done pain 9" not in page, path
            assert not re.search(r"pain (is )?\d|severe", page, re.IGNORECASE), path


def everything(desk: Desk) -> dict[str, list[dict[str, Any]]]:
    """Return every row there is, but the log and how long sessions were idle."""
    with desk.world.db.read() as tx:
        return {
            table.name: [dict(row._mapping) for row in tx.execute(table.select().order_by(*table.primary_key.columns))]
            for table in metadata.sorted_tables
            if table.name not in ("audit", "web_session")
        }


def test_no_get_changes_anything_but_the_log_and_idle_times(desk: Desk, ids: dict[str, int]) -> None:
    browsers = [person_of(desk, role, "Alder Hill Physio") for role in ROLES]
    headers = a_token(desk.world, " ".join(SCOPES))
    call(browsers[0], "GET", "/")
    desk.visitor().get("/api/v1/clinic", headers=headers)  # a token's first use is noted
    before = everything(desk)

    for method, path in routes_of(desk.web):
        if method == "GET":
            for browser in browsers:
                browser.get(filled(path, ids))
            desk.visitor().get(filled(path, ids), headers=headers)

    assert everything(desk) == before
