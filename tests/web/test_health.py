"""Alive, ready, measured; headers on every answer; nothing too big, nothing of a client's in an error."""

from datetime import timedelta
from typing import Any

import pytest
from starlette.exceptions import HTTPException

from reminders.settings import Settings
from reminders.store.tables import Mark
from reminders.texts import Texts
from reminders.web.app import create_app
from reminders.wiring import App
from tests.clinic import World
from tests.web.desk import BASE, SECRET, Desk, TestClient, a_token


def beat(world: World, age: timedelta = timedelta(0)) -> None:
    with world.db.begin() as tx:
        for job in ("plan", "deliver"):
            tx.merge(Mark(name=f"heartbeat:{job}", at=world.now - age))


def test_alive_says_so(desk: Desk) -> None:
    assert desk.visitor().get("/healthz").text == "alive\n"


def test_ready_needs_fresh_heartbeats(desk: Desk) -> None:
    assert desk.visitor().get("/readyz").json() == {
        "ready": False,
        "database": "ok",
        "schema": "ok",
        "jobs": "late: no job has run yet",
    }

    beat(desk.world)
    assert desk.visitor().get("/readyz").status_code == 200

    desk.world.pass_time(seconds=121)
    answer = desk.visitor().get("/readyz")
    assert (answer.status_code, answer.json()["jobs"]) == (503, "late: deliver, plan")


def test_a_heartbeat_ahead_of_the_clock_is_late_too(desk: Desk) -> None:
    beat(desk.world, -timedelta(hours=1))

    answer = desk.visitor().get("/readyz")
    assert (answer.status_code, answer.json()["jobs"]) == (503, "late: deliver, plan")


def test_ready_says_when_the_schema_is_not_current(desk: Desk) -> None:
    beat(desk.world)
    with desk.world.db.engine.begin() as connection:
        connection.exec_driver_sql("UPDATE alembic_version SET version_num = '0000'")

    answer = desk.visitor().get("/readyz")
    assert (answer.status_code, answer.json()["schema"]) == (503, "not current")


def test_ready_says_when_the_database_is_gone(desk: Desk) -> None:
    with desk.world.db.engine.begin() as connection:
        connection.exec_driver_sql("DROP TABLE mark")

    answer = desk.visitor().get("/readyz")
    assert (answer.status_code, answer.json()["database"]) == (503, "OperationalError")


def test_metrics_are_for_this_machine_or_a_token(desk: Desk) -> None:
    desk.world.enrol()
    desk.world.hear("my chest feels tight")
    beat(desk.world)
    near = TestClient(desk.web, base_url=BASE, client=("127.0.0.1", 5000))

    text = near.get("/metrics").text

    assert 'reminders_clients{state="active"} 1.0' in text
    assert 'reminders_alerts{level="urgent",state="open"} 1.0' in text
    assert 'reminders_job_age_seconds{job="plan"} 0.0' in text
    assert "Ana" not in text
    assert desk.visitor().get("/metrics").status_code == 401
    assert desk.visitor().get("/metrics", headers={"authorization": "Bearer x"}).status_code == 401
    assert desk.visitor().get("/metrics", headers=a_token(desk.world, "clinic:read")).status_code == 200


HEADERS = {
    "x-content-type-options": "nosniff",
    "referrer-policy": "no-referrer",
    "x-frame-options": "DENY",
    "cache-control": "no-store",
}


@pytest.mark.parametrize("path", ["/sign-in", "/nothing", "/healthz", "/c/x", "/api/v1/clients", "/today"])
def test_every_answer_carries_the_safe_headers(desk: Desk, path: str) -> None:
    headers = desk.visitor().get(path).headers

    assert {name: headers[name] for name in HEADERS} == HEADERS
    policy = headers["content-security-policy"]
    assert "default-src 'none'" in policy
    assert "frame-ancestors 'none'" in policy
    assert "unsafe" not in policy
    assert "strict-transport-security" not in headers


def test_with_https_the_cookie_is_bound_to_this_host_and_browsers_stay_with_it(world: World) -> None:
    settings = Settings(database_url=world.db.url, secret_keys=(SECRET,), public_url="https://reminders.example.org")
    web = create_app(App(settings, world.db, {"sms": world.sms, "email": world.email}, Texts(), world.clock))
    desk = Desk(world, web)
    from reminders.flows.sign_in import make_link
    from reminders.store.tables import Staff

    with world.db.begin() as tx:
        staff = tx.get(Staff, world.rows(Staff, email="ben@example.org")[0].id)
        assert staff is not None
        token = make_link(tx, staff, world.now)
    answer = TestClient(desk.web, base_url="https://reminders.example.org", follow_redirects=False).post(
        f"/sign-in/{token}"
    )

    assert answer.headers["set-cookie"].startswith("__Host-console=")
    assert "Secure" in answer.headers["set-cookie"]
    assert answer.headers["strict-transport-security"].startswith("max-age=")


def test_our_static_files_are_kept_by_browsers_and_nothing_else_is_served(desk: Desk) -> None:
    browser = desk.visitor()

    assert "immutable" in browser.get("/static/look.css").headers["cache-control"]
    assert browser.get("/favicon.ico").headers["content-type"] == "image/svg+xml"
    assert browser.get("/static/..%2f..%2fpyproject.toml").status_code == 404
    assert browser.get("/static/nothing.css").status_code == 404


def test_a_body_over_the_limit_is_refused_before_it_is_read(desk: Desk) -> None:
    browser = desk.visitor()

    assert browser.post("/sign-in", content=b"x" * (4 * 1024 * 1024 + 1)).status_code == 413
    assert browser.post("/sign-in", headers={"content-length": "many"}).status_code == 400


@pytest.mark.parametrize(
    ("method", "path", "status"), [("POST", "/healthz", 405), ("GET", "/clients/x", 404), ("GET", "/nothing", 404)]
)
def test_what_is_not_there_gets_a_short_page(desk: Desk, method: str, path: str, status: int) -> None:
    answer = desk.signed_in("ben@example.org").client.request(method, path)

    assert answer.status_code == status
    assert "To the start page" in answer.text


def test_a_surprise_tells_nothing_but_that_it_happened(desk: Desk) -> None:
    from reminders.web.access_rules import OPEN, RULES

    def broken() -> Any:
        raise RuntimeError("Ana Ruiz +12025550101")

    RULES["GET /broken"] = OPEN
    try:
        desk.web.add_api_route("/broken", broken, methods=["GET"])
        answer = TestClient(desk.web, base_url=BASE, raise_server_exceptions=False).get("/broken")
    finally:
        del RULES["GET /broken"]
    assert answer.status_code == 500
    assert "Ana" not in answer.text
    assert "Something went wrong here" in answer.text


def test_a_route_without_a_rule_is_for_nobody(desk: Desk) -> None:
    desk.web.add_api_route("/forgotten", lambda: {"names": ["Ana"]}, methods=["GET"])

    assert desk.signed_in("dee@example.org").get("/forgotten").status_code == 403


def test_an_http_error_of_the_framework_keeps_its_status(desk: Desk) -> None:
    from reminders.web.access_rules import OPEN, RULES

    def teapot() -> Any:
        raise HTTPException(418, "short and stout")

    RULES["GET /teapot"] = OPEN
    try:
        desk.web.add_api_route("/teapot", teapot, methods=["GET"])
        answer = desk.visitor().get("/teapot")
    finally:
        del RULES["GET /teapot"]
    assert (answer.status_code, "short and stout" in answer.text) == (418, True)
