"""The program editor and the sheet: what is kept, what is said, and what does not fit."""

import re

import pytest

from reminders.store.tables import (
    ClientProgram,
)
from tests.web.desk import Desk

BEN = "ben@example.org"


def program_fields(page: str) -> dict[str, str]:
    """Return the editor's fields as a browser would send them, one value a name."""
    fields = dict(re.findall(r'<input id="[^"]*" name="([^"]+)"[^>]*value="([^"]*)"', page))
    for name, body in re.findall(r'<select id="[^"]*" name="([^"]+)">(.*?)</select>', page, re.DOTALL):
        chosen = re.search(r'value="([^"]*)" selected', body)
        fields[name] = chosen[1] if chosen else ""
    return fields


def test_a_program_goes_through_the_editor_unchanged(desk: Desk) -> None:
    client_id = desk.world.enrol()
    ben = desk.signed_in(BEN)
    before = desk.world.rows(ClientProgram)[0].body
    fields = program_fields(ben.get(f"/clients/{client_id}/program").text)
    fields.pop("start", None)

    answer = ben.post(f"/clients/{client_id}/program", **fields, days0=["mon", "wed", "fri"], action="save")

    assert answer.status_code == 303
    assert [row.body for row in desk.world.rows(ClientProgram)] == [before]


def test_a_changed_program_is_the_next_version_with_its_days(desk: Desk) -> None:
    client_id = desk.world.enrol()
    ben = desk.signed_in(BEN)
    fields = program_fields(ben.get(f"/clients/{client_id}/program").text)
    fields |= {
        "ladder0_0": "1x6; 2x8 for 21 days",
        "easy0_0": "leave out",
        "easy0_1": "seat-squeeze",
        "easydose0_1": "",
    }

    ben.post(f"/clients/{client_id}/program", **fields, days0=["tue", "sat"], precaution="vertigo")

    version = desk.world.rows(ClientProgram)[-1]
    first, second = version.body["lists"][0]["items"][:2]
    assert version.number == 2
    assert version.body["lists"][0]["days"] == ["tue", "sat"]
    assert first["ladder"] == [{"dose": "1x6", "days": 14}, {"dose": "2x8", "days": 21}]
    assert (first["easy"], second["easy"]["exercise"]) == ("leave out", "seat-squeeze")
    page = ben.get(f"/clients/{client_id}/program").text
    assert 'value="1x6; 2x8 for 21 days"' in page


def test_checking_a_program_says_what_lacks_and_keeps_nothing(desk: Desk) -> None:
    client_id = desk.world.enrol()
    ben = desk.signed_in(BEN)
    fields = program_fields(ben.get(f"/clients/{client_id}/program").text)
    fields |= {"ladder0_3": "1x10 2 kg; 1x10 3 kg", "ex0_3": "arm-curl"}

    page = ben.post(
        f"/clients/{client_id}/program",
        **fields,
        days0=["mon", "tue"],
        precaution=["spinal fracture", "wrist fracture"],
        action="check",
    ).text

    assert "No exercise for:" in page
    assert "List A falls on days in a row: mon-tue." in page
    assert "step 2 raises the load by more than 10 %" in page
    assert "spinal fracture" in page
    assert len(desk.world.rows(ClientProgram)) == 1


@pytest.mark.parametrize(
    ("changed", "sentence"),
    [
        ({"ladder0_0": "2x10 for ever"}, "cannot be read; write it like"),
        ({"ladder0_0": "plenty"}, "cannot be read"),
        ({"ex0_0": "no-such"}, "There is no exercise"),
        ({"time": "25:00"}, "The hour:"),
        ({"time": ""}, "The hour is empty"),
        ({"code": ""}, "name is empty"),
        ({"none_known": "yes", "precaution": "vertigo"}, "not both"),
        ({"recheck_weeks": "99"}, "Re-check after must be a whole number from 1 to 26"),
    ],
)
def test_a_program_that_does_not_fit_is_shown_again(desk: Desk, changed: dict[str, str], sentence: str) -> None:
    client_id = desk.world.enrol()
    ben = desk.signed_in(BEN)
    fields = program_fields(ben.get(f"/clients/{client_id}/program").text) | changed

    answer = ben.post(f"/clients/{client_id}/program", **fields, days0=["mon"])

    assert answer.status_code == 422
    assert sentence in answer.text.replace("&#34;", '"')
    assert len(desk.world.rows(ClientProgram)) == 1


def test_a_program_without_exercises_is_refused(desk: Desk) -> None:
    client_id = desk.world.enrol()
    answer = desk.signed_in(BEN).post(f"/clients/{client_id}/program", code="mine", time="08:30")

    assert answer.status_code == 422
    assert "choose at least one for list A" in answer.text


def test_another_starting_program_is_put_in_the_form(desk: Desk) -> None:
    client_id = desk.world.enrol()

    page = desk.signed_in(BEN).get(f"/clients/{client_id}/program?start=whole-body").text

    assert 'id="code" name="code" value="whole-body"' in page


@pytest.mark.parametrize(("what", "path"), [("extend", "end_on"), ("rechecked", "rechecked_on")])
def test_one_tap_extends_a_program_or_notes_a_recheck(desk: Desk, what: str, path: str) -> None:
    client_id = desk.world.enrol()
    before = getattr(desk.world.rows(ClientProgram)[0], path)

    desk.signed_in(BEN).post(f"/clients/{client_id}/program/end", do=what)

    assert getattr(desk.world.rows(ClientProgram)[0], path) != before


def test_the_sheet_has_no_doses_and_a_code_that_leads_to_her_page(desk: Desk) -> None:
    client_id = desk.world.enrol(language="es")

    page = desk.signed_in(BEN).get(f"/clients/{client_id}/sheet").text

    assert "Mis ejercicios: Ana" in page
    assert 'lang="es"' in page
    assert "<svg" in page
    assert not re.search(r"\b\dx\d|veces", page)
    assert "Su página" in page
