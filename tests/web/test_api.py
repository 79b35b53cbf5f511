"""The API for other programs: scopes, one clinic only, writes done once, errors as problem details."""

import re
from typing import Any

import pytest

from reminders.core.scopes import SCOPES
from reminders.store.tables import Audit, Client, IdempotentAnswer
from reminders.web.access_rules import API
from tests.clinic import ANA
from tests.web.desk import Desk, a_token
from tests.web.test_access import filled, ids

__all__ = ["ids"]

ALL = " ".join(SCOPES)
CORA = {
    "name": "Cora Bell",
    "mobile": "+12025550102",
    "therapist": "ben@example.org",
    "program": "spine-strength",
    "precautions": "none known",
    "consent_on": "2027-03-01",
    "consent_how": "signed form",
}
BODIES: dict[str, Any] = {
    "by": "ben@example.org",
    "words": "Rest today.",
    "step": "back",
    "outcome": "called",
    "note": "x",
    "answer": "approve",
    "reason": "moved",
}


def test_every_route_asks_for_its_scope_and_for_a_token(desk: Desk, ids: dict[str, int]) -> None:
    visitor = desk.visitor()
    odd = {}
    for rule, access in API.items():
        method, path = rule.split(" ", 1)
        others = " ".join(name for name in SCOPES if name != access.scope)
        bare = visitor.request(method, filled(path, ids))
        wrong = visitor.request(method, filled(path, ids), headers=a_token_once(desk, others))
        revoked = visitor.request(method, filled(path, ids), headers={"authorization": "Bearer nothing"})
        if (bare.status_code, wrong.status_code, revoked.status_code) != (401, 403, 401):
            odd[rule] = (bare.status_code, wrong.status_code, revoked.status_code)
    assert odd == {}


TOKENS: dict[tuple[int, str], dict[str, str]] = {}


def a_token_once(desk: Desk, scopes: str, clinic: str = "Alder Hill Physio") -> dict[str, str]:
    """The same token for the same scopes, since a token is unique."""
    key = (id(desk), scopes + clinic)
    if key not in TOKENS:
        TOKENS[key] = a_token(desk.world, scopes, clinic)
    return TOKENS[key]


def test_another_clinics_token_finds_nothing_of_ours(desk: Desk, ids: dict[str, int]) -> None:
    headers = a_token(desk.world, ALL, "Birch Lane Physio")
    visitor = desk.visitor()
    odd = {}
    for rule in API:
        method, path = rule.split(" ", 1)
        answer = visitor.request(method, filled(path, ids), headers=headers, json=BODIES if method != "GET" else None)
        if any(f"{{{name}}}" in path for name in ids) and answer.status_code not in (404, 422):
            odd[rule] = answer.status_code
        if "Ana" in answer.text or "Alder" in answer.text:
            odd[rule] = "shows ours"
    assert odd == {}


def test_a_client_is_enrolled_and_the_same_key_enrols_once(desk: Desk) -> None:
    headers = {**a_token(desk.world, ALL), "idempotency-key": "first"}
    visitor = desk.visitor()

    answers = [visitor.post("/api/v1/clients", json=CORA, headers=headers) for _ in range(2)]

    assert [answer.status_code for answer in answers] == [201, 201]
    assert answers[0].json() == answers[1].json()
    assert answers[0].json()["state"] == "active"
    assert answers[1].headers["idempotent-replayed"] == "true"
    assert len(desk.world.rows(Client)) == 1
    other = visitor.post("/api/v1/clients", json={**CORA, "name": "Dora Bell"}, headers=headers)
    assert other.status_code == 422
    assert "another request" in other.json()["detail"]


def test_what_failed_is_not_kept_under_its_key(desk: Desk) -> None:
    headers = {**a_token(desk.world, ALL), "idempotency-key": "k"}
    visitor = desk.visitor()

    assert (
        visitor.post("/api/v1/clients", json={**CORA, "therapist": "x@example.org"}, headers=headers).status_code == 422
    )
    assert desk.world.rows(IdempotentAnswer) == []
    assert visitor.post("/api/v1/clients", json=CORA, headers=headers).status_code == 201


@pytest.mark.parametrize(
    ("path", "status", "detail"),
    [
        ("/api/v1/clients/999", 404, "There is no such client."),
        ("/api/v1/clients/x", 422, "client_id"),
        ("/api/v1/nothing", 404, "There is nothing at this address."),
    ],
)
def test_errors_are_problem_details(desk: Desk, path: str, status: int, detail: str) -> None:
    answer = desk.visitor().get(path, headers=a_token(desk.world, ALL))

    assert answer.status_code == status
    assert answer.headers["content-type"] == "application/problem+json"
    assert answer.json()["status"] == status
    assert detail in answer.json()["detail"]


def test_lists_come_in_pages(desk: Desk) -> None:
    for number in range(3):
        desk.world.enrol(f"Client {number}", f"+1202555011{number}")
    desk.world.hear("chest pain now", "+12025550110")
    desk.world.hear("chest pain now", "+12025550111")
    headers = a_token(desk.world, ALL)

    first = desk.visitor().get("/api/v1/alerts?limit=1", headers=headers).json()
    second = desk.visitor().get(f"/api/v1/alerts?limit=1&after={first['next']}", headers=headers).json()

    assert len(first["items"]) == len(second["items"]) == 1
    assert first["items"][0]["id"] != second["items"][0]["id"]
    assert second["next"] is None


def test_a_hold_is_cleared_only_in_the_name_of_a_therapist_of_the_clinic(desk: Desk, ids: dict[str, int]) -> None:
    headers = a_token(desk.world, ALL)
    path = f"/api/v1/clients/{ids['client_id']}/clear"
    visitor = desk.visitor()

    for other in ("fay@example.org", "cleo@example.org", "nobody@example.org"):
        assert visitor.post(path, json={"by": other}, headers=headers).status_code == 422

    answer = visitor.post(path, json={"by": "ben@example.org"}, headers=headers)
    assert answer.status_code == 200
    assert answer.json()["holds"] == []


def test_the_record_is_given_in_its_json_shape_and_looking_is_logged(desk: Desk, ids: dict[str, int]) -> None:
    headers = a_token(desk.world, ALL)

    answer = desk.visitor().get(f"/api/v1/clients/{ids['client_id']}/sessions", headers=headers).json()

    report = answer["items"][0]["reports"][0]
    assert (report["text"], report["reading"]["pain"]) == ("done pain 9", 9)
    lines = [(row.by, row.action) for row in desk.world.rows(Audit)]
    assert any(re.fullmatch(r"token \d+", by) and action == "sessions viewed" for by, action in lines)


def test_writing_to_a_client_goes_out_in_a_staff_members_name(desk: Desk, ids: dict[str, int]) -> None:
    headers = {**a_token(desk.world, ALL), "idempotency-key": "note-1"}
    body = {"by": "ben@example.org", "words": "Rest today."}

    for _ in range(2):
        path = f"/api/v1/clients/{ids['client_id']}/messages"
        assert desk.visitor().post(path, json=body, headers=headers).status_code == 201

    assert [(row.to, row.details["writer"]) for row in desk.world.queued("therapist_note")] == [(ANA, "Ben Ames")]


def test_the_description_is_open_and_holds_every_route(desk: Desk) -> None:
    described = desk.visitor().get("/api/v1/openapi.json").json()

    routes = {f"{method.upper()} {path}" for path, one in described["paths"].items() for method in one}
    assert routes == set(API)
    assert desk.visitor().get("/docs").status_code == 404
    assert desk.visitor().get("/openapi.json").status_code == 404
