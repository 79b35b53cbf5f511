"""What was filled in when the idle end came: kept through the sign-in, offered again, and shown to nobody else."""

import html
import re
from datetime import timedelta
from typing import Any

import pytest
from sqlmodel import select

from reminders.flows import sign_in
from reminders.store.tables import Client, ClientProgram, ClinicNote, Staff
from reminders.web import passwords
from reminders.web.forms import Form
from reminders.web.kept_work import packed, unpacked
from tests.clinic import ANA
from tests.web.desk import Desk

BEN, FAY = "ben@example.org", "fay@example.org"
PASSWORD = "three quiet herons wade"
ENROL = {
    "name": "Cora Bell",
    "mobile": "+12025550133",
    "therapist": BEN,
    "program": "falls-balance",
    "precautions": "none known",
}
FORMS: dict[str, tuple[str, str, dict[str, str]]] = {
    "a note": (BEN, "/clients/1/note", {"words": "walks with a stick now, Ana's <own> words"}),
    "a dose change": (BEN, "/clients/1/dose", {"step": "up"}),
    "a message": (BEN, "/clients/1/write", {"words": "Rest today. I call at 3.", "once": "77"}),
    "an enrolment": (FAY, "/enrol", ENROL),
}


@pytest.fixture
def clinic(desk: Desk) -> Desk:
    """Ana, and staff who sign in by password."""
    desk.world.enrol("Ana Ruiz", ANA)
    with desk.world.db.begin() as tx:
        for staff in tx.exec(select(Staff)):
            staff.password_hash = passwords.hashed(PASSWORD)
            tx.add(staff)
    return desk


def fields_of(page: str, name: str) -> list[str]:
    return [html.unescape(found) for found in re.findall(rf'name="{name}" value="([^"]*)"', page)]


def carried(page: str, place: int = 0) -> dict[str, str]:
    """Return what a page's form carries on: where she was going, and the work."""
    return {name: fields_of(page, name)[place] for name in ("next", "kept")}


def late(desk: Desk, email: str, path: str, fields: dict[str, str]) -> tuple[Any, str]:
    """Post a form a quarter of an hour and a minute too late; return the browser and the page that came."""
    browser = desk.signed_in(email)
    desk.world.pass_time(minutes=16)
    answer = browser.post(path, **fields)
    assert answer.status_code == 401
    assert "Sign in again and you can carry on" in answer.text
    return browser.client, answer.text


def saved(client: Any, page: str, path: str) -> Any:
    """Press the button of the page that offers the work again, with every field that stands in it."""
    form = page[page.index(f'<form method="post" action="{path}"') :]
    form = form[: form.index("</form>")]
    sent = {name: html.unescape(value) for name, value in re.findall(r'name="([^"]+)" value="([^"]*)"', form)}
    return client.post(path, data=sent)


@pytest.mark.parametrize(("email", "path", "fields"), FORMS.values(), ids=FORMS)
def test_a_form_sent_after_the_idle_end_is_offered_again_and_saved(
    clinic: Desk, email: str, path: str, fields: dict[str, str]
) -> None:
    client, page = late(clinic, email, path, fields)
    before = kept_rows(clinic)

    again = client.post(
        "/sign-in",
        data={**carried(page), "email": email, "password": PASSWORD},
    )
    assert "You were about to save this" in again.text
    assert kept_rows(clinic) == before, "signing in saves nothing by itself"
    assert saved(client, again.text, path).status_code == 303

    after = kept_rows(clinic)
    assert after != before


def kept_rows(desk: Desk) -> tuple[object, ...]:
    rungs = [row.rung for row in desk.world.rows(ClientProgram)]
    notes = [row.words for row in desk.world.rows(ClinicNote, kind="own")]
    names = [row.name for row in desk.world.rows(Client)]
    return rungs, notes, names, [row.details.get("words") for row in desk.world.queued("therapist_note")]


def test_a_mistyped_password_keeps_the_work(clinic: Desk) -> None:
    client, page = late(clinic, BEN, "/clients/1/note", {"words": "kept"})
    sent = {**carried(page), "email": BEN}

    wrong = client.post("/sign-in", data={**sent, "password": "another heron wades"})

    assert fields_of(wrong.text, "kept")[0] == sent["kept"]
    assert fields_of(wrong.text, "next")[0] == "/clients/1/note"


def test_a_sign_in_link_keeps_the_work_on_the_page_that_it_was_asked_on(clinic: Desk) -> None:
    client, page = late(clinic, BEN, "/clients/1/note", {"words": "kept"})
    sent = carried(page, 1)
    waiting = client.post("/sign-in/link", data={**sent, "email": BEN})
    early = client.post("/sign-in/carry-on", data=carried(waiting.text))
    assert (early.status_code, "You are not signed in yet" in early.text) == (401, True)
    assert fields_of(early.text, "kept")[0] == sent["kept"]
    with clinic.world.db.begin() as tx:
        token = sign_in.make_link(tx, tx.exec(select(Staff).where(Staff.email == BEN)).one(), clinic.world.now)
    client.post(f"/sign-in/{token}")

    again = client.post("/sign-in/carry-on", data=carried(early.text))

    assert saved(client, again.text, "/clients/1/note").status_code == 303
    assert [row.words for row in clinic.world.rows(ClinicNote, kind="own")] == ["kept"]


def test_a_link_asked_for_without_work_says_only_to_look_in_the_mail(clinic: Desk) -> None:
    page = clinic.visitor().post("/sign-in/link", data={"email": BEN}).text
    assert "Look in your mail" in page
    assert "carry-on" not in page


def test_another_person_at_the_same_screen_is_not_shown_the_work(clinic: Desk) -> None:
    client, page = late(clinic, BEN, "/clients/1/note", {"words": "Ana is afraid of the stairs"})
    sent = carried(page)

    answer = client.post("/sign-in", data={**sent, "email": FAY, "password": PASSWORD})

    assert answer.status_code == 303
    assert "stairs" not in client.get("/work").text
    assert client.post("/sign-in/carry-on", data=sent).headers["location"] == "/"


def test_work_comes_back_as_it_was_and_only_for_its_person() -> None:
    form = Form({"words": ["a", "b"], "csrf": ["x"]})
    assert unpacked(packed(form, 3), 3) == [("words", "a"), ("words", "b")]
    assert unpacked(packed(form, 3), 4) == []
    for junk in ("", "x", "bm90aGluZw==", "WzMsIDNd", "eyJhIjogMX0="):
        assert unpacked(junk, 3) == []
    assert packed(Form({"words": ["x" * 60_000]}), 3) == ""
    assert packed(Form({}, {"file": b"1"}), 3) == ""


def test_a_session_of_yesterday_keeps_nothing_of_what_was_forged(clinic: Desk) -> None:
    browser = clinic.signed_in(BEN)
    clinic.world.now += timedelta(hours=13)
    answer = browser.client.post("/clients/1/note", data={"words": "forged", "csrf": "wrong"})
    assert answer.status_code == 401
    assert fields_of(answer.text, "kept")[0] == ""
