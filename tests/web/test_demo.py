import warnings
from collections.abc import Iterator
from pathlib import Path

import pytest
from sqlmodel import select

from reminders.demo import building
from reminders.demo.people import PEOPLE
from reminders.flows import deliver
from reminders.store.tables import Alert, InboundRow, Staff, WebSession
from reminders.web.app import create_app
from reminders.wiring import App, sender_of
from tests.web.desk import BASE, Desk

with warnings.catch_warnings():
    warnings.simplefilter("ignore")
    from starlette.testclient import TestClient

PATHS = ("/demo", "/demo/sign-in/1", "/demo/phone/1")
ALMA = PEOPLE[0].row["mobile"]


@pytest.fixture
def demo(tmp_path: Path) -> Iterator[App]:
    """A demo clinic on its first morning."""
    app = building.build(tmp_path / "demo.db", 8000, PEOPLE[:14], 3, building.begins_at)
    yield app
    app.db.close()


@pytest.fixture
def browser(demo: App) -> TestClient:
    return TestClient(create_app(demo), base_url=BASE, follow_redirects=False)


@pytest.mark.parametrize("path", PATHS)
def test_a_real_clinic_has_none_of_these_pages(path: str, desk: Desk) -> None:
    desk.world.enrol()

    assert desk.visitor().get(path).status_code == 404
    assert desk.visitor().post(path).status_code in (404, 405)


@pytest.mark.parametrize("path", PATHS)
def test_a_demo_has_them_under_this_machines_own_name_alone(path: str, browser: TestClient) -> None:
    assert browser.get(path).status_code == 200
    assert browser.get(path, headers={"host": "clinic.example.org"}).status_code == 404


def test_one_click_signs_in_and_a_link_alone_does_not(demo: App, browser: TestClient) -> None:
    browser.get("/demo/sign-in/1")
    with demo.db.read() as tx:
        assert tx.exec(select(WebSession)).first() is None

    answer = browser.post("/demo/sign-in/1")

    assert answer.status_code == 303
    assert browser.get("/").headers["location"] == "/today"


def test_another_site_cannot_sign_a_visitor_in(browser: TestClient) -> None:
    assert browser.post("/demo/sign-in/1", headers={"origin": "http://elsewhere.example.org"}).status_code == 403


def test_a_visitor_plays_a_client_and_sees_the_service_answer(demo: App, browser: TestClient) -> None:
    sent = browser.post("/demo/phone/1", data={"from": ALMA, "words": "I fell and my hip hurts"})
    waiting = browser.get(sent.headers["location"])
    deliver.send_due(sender_of(demo, own_clock=True))
    shown = browser.get("/demo/phone/1")

    assert waiting.headers["refresh"] == "1; url=/demo/phone/1"
    assert "An answer is on its way" in waiting.text
    assert "refresh" not in shown.headers
    assert "Do no more" in shown.text
    assert "danger: a fall" in shown.text
    assert "On hold since" in shown.text
    with demo.db.read() as tx:
        assert tx.exec(select(Alert)).one().rule == "fall_or_injury"


def test_a_mail_only_client_answers_by_mail(demo: App, browser: TestClient) -> None:
    deliver.send_due(sender_of(demo, own_clock=True))
    browser.post("/demo/phone/14", data={"from": "evangeline@example.org", "words": "All done, pain 2"})

    with demo.db.read() as tx:
        row = tx.exec(select(InboundRow)).one()
    assert (row.source, row.client_id, row.is_verified) == ("email", 14, True)


def test_nobody_writes_from_an_address_that_is_not_hers(demo: App, browser: TestClient) -> None:
    assert browser.post("/demo/phone/1", data={"from": "+12025550102", "words": "STOP"}).status_code == 404
    with demo.db.read() as tx:
        assert tx.exec(select(InboundRow)).first() is None


def test_an_empty_text_is_not_sent(demo: App, browser: TestClient) -> None:
    browser.post("/demo/phone/1", data={"from": ALMA, "words": "  "})

    with demo.db.read() as tx:
        assert tx.exec(select(InboundRow)).first() is None
        assert len(tx.exec(select(Staff)).all()) == 4


@pytest.mark.parametrize("path", ["/demo/phone/99", "/demo/sign-in/99"])
def test_an_unknown_number_is_not_found(path: str, browser: TestClient) -> None:
    assert browser.get(path).status_code == 404
    assert browser.post(path, data={"from": ALMA, "words": "Y3"}).status_code == 404
