"""Enrolling at the desk: five fields, or a file that is shown row by row before anything is kept."""

import re

import pytest
from sqlmodel import select

from reminders.store.tables import (
    Client,
    Clinic,
    Contact,
)
from tests.web.desk import Browser, Desk

FAY, BEN = "fay@example.org", "ben@example.org"
NEW = {
    "name": "Cora Bell",
    "mobile": "202 555 0103",
    "therapist": BEN,
    "program": "falls-balance",
    "none_known": "yes",
    "agreed": "yes",
    "consent_how": "signed form",
}


def test_five_fields_enrol_a_client_and_welcome_her(desk: Desk) -> None:
    answer = desk.signed_in(FAY).post("/enrol", **NEW)

    client = desk.world.rows(Client)[0]
    assert answer.headers["location"] == f"/enrol/{client.id}"
    assert (client.name, client.state, client.program_code) == ("Cora Bell", "active", "falls-balance")
    assert [row.to for row in desk.world.queued("welcome")] == ["+12025550103"]
    page = desk.signed_in(FAY).get(f"/enrol/{client.id}").text
    assert "+12025550103 by text: <strong>queued</strong>" in page
    assert "No answer yet" in page


def test_a_landline_is_said_while_she_stands_there(desk: Desk) -> None:
    desk.signed_in(FAY).post("/enrol", **NEW)
    with desk.world.db.begin() as tx:
        contact = tx.exec(select(Contact)).one()
        contact.unusable = "landline"
        for row in desk.world.queued("welcome"):
            row.state = "failed"
            tx.merge(row)

    client_id = desk.world.rows(Client)[0].id
    assert "failed: landline" in desk.signed_in(FAY).get(f"/enrol/{client_id}/status").text


def test_without_her_agreement_nothing_is_sent(desk: Desk) -> None:
    desk.signed_in(FAY).post("/enrol", **{**NEW, "agreed": ""})

    client = desk.world.rows(Client)[0]
    assert client.state == "invited"
    assert desk.world.queued() == []
    assert "waits for START from her" in desk.signed_in(FAY).get(f"/enrol/{client.id}").text


@pytest.mark.parametrize(
    ("changed", "sentence"),
    [
        ({"name": ""}, "The name is empty"),
        ({"mobile": "12"}, "is not a phone number"),
        ({"precaution": "vertigo"}, "not both"),
        ({"consent_how": "by fax"}, "How she agreed must be one of"),
    ],
)
def test_an_enrolment_with_something_wrong_keeps_nothing(desk: Desk, changed: dict[str, str], sentence: str) -> None:
    answer = desk.signed_in(FAY).post("/enrol", **{**NEW, **changed})

    assert answer.status_code == 422
    assert sentence in answer.text.replace("&#34;", '"')
    assert desk.world.rows(Client) == []


def a_file(*rows: str) -> dict[str, tuple[str, bytes, str]]:
    text = "\n".join(("name,mobile,therapist,program", *rows))
    return {"file": ("people.csv", text.encode(), "text/csv")}


def send_file(browser: Browser, *rows: str):  # type: ignore[no-untyped-def]
    return browser.client.post("/enrol-file", data={"csrf": browser.csrf}, files=a_file(*rows))


def test_a_file_is_previewed_and_only_then_enrolled(desk: Desk) -> None:
    fay = desk.signed_in(FAY)

    seen = send_file(fay, f"Cora Bell,+12025550103,{BEN},spine-strength")
    assert "Nothing was kept yet" in seen.text
    assert desk.world.rows(Client) == []

    text = re.search(r'name="data"[^>]*>(.*?)</textarea>', seen.text, re.DOTALL)
    assert text is not None
    assert fay.post("/enrol-file", data=text[1], do="enrol").status_code == 303
    assert [row.name for row in desk.world.rows(Client)] == ["Cora Bell"]


def test_a_file_with_one_wrong_row_is_shown_whole_and_keeps_nobody(desk: Desk) -> None:
    answer = send_file(
        desk.signed_in(FAY),
        f"Cora Bell,+12025550103,{BEN},spine-strength",
        f"Dora Bell,12,{BEN},no-such",
    )

    assert "2 rows, 1 with errors" in answer.text
    assert "Dora Bell" in answer.text
    assert desk.world.rows(Client) == []


@pytest.mark.parametrize("data", [b"\xff\xfe", b"", b"colour\nred"])
def test_a_file_that_is_none_is_one_sentence(desk: Desk, data: bytes) -> None:
    fay = desk.signed_in(FAY)
    answer = fay.client.post("/enrol-file", data={"csrf": fay.csrf}, files={"file": ("x.csv", data, "text/csv")})

    assert answer.status_code == 422
    assert 'role="alert"' in answer.text


def test_nobody_is_enrolled_in_a_clinic_without_a_phone(desk: Desk) -> None:
    with desk.world.db.begin() as tx:
        tx.exec(select(Clinic).where(Clinic.name == "Alder Hill Physio")).one().phone = ""
    fay = desk.signed_in(FAY)

    assert "no name or phone yet" in fay.get("/enrol").text
    assert fay.post("/enrol", **NEW).status_code == 409
