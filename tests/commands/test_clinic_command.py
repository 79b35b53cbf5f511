"""`reminders clinic` and `reminders staff`: the rules of the pages, options named, nothing set when one is wrong."""

import json
from pathlib import Path

import pytest

from reminders.__main__ import main

AT = "2027-03-01T10:00:00-05:00"
CSV = (
    "name,mobile,therapist,program,consent_on,consent_how\n"
    "Ana Ruiz,+12025550101,ben@example.org,spine-strength,2027-03-01,signed form\n"
)


@pytest.fixture
def clinic(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("REMINDERS_CLOCK", AT)
    assert main(["db", "upgrade"]) == 0
    assert (
        main(
            [
                "clinic",
                "set",
                "--name",
                "Alder Hill Physio",
                "--phone",
                "+1 202 555 0100",
                "--time-zone",
                "America/New_York",
            ]
        )
        == 0
    )
    return tmp_path


def said(capsys: pytest.CaptureFixture[str], *words: str) -> dict[str, object]:
    capsys.readouterr()
    assert main([*words, "--json"]) == 0
    found: dict[str, object] = json.loads(capsys.readouterr().out)
    return found


@pytest.mark.usefixtures("clinic")
def test_each_option_sets_its_field_and_only_what_changed_is_named(capsys: pytest.CaptureFixture[str]) -> None:
    words = ["clinic", "set", "--hours", "mon-fri/09:00-17:00", "--window", "09:00-19:00", "--retain", "4000"]
    words += ["--lead", "Lee@example.org", "--on-call", "-", "--words-in-mail", "yes", "--note-hours", "16:00,11:00"]

    assert said(capsys, *words)["changed"] == [
        "hours",
        "lead_email",
        "note_hours",
        "retain_days",
        "window",
        "words_in_mail",
    ]
    assert said(capsys, *words)["changed"] == []
    assert said(capsys, "clinic", "set", "--lead", "-")["changed"] == ["lead_email"]


WRONG = {
    "a phone": (["clinic", "set", "--window", "09:00-19:00", "--phone", "12"], "--phone: "),
    "hours": (["clinic", "set", "--hours", "always"], "--hours: "),
    "a date": (["clinic", "set", "--closed", "soon"], "--closed: "),
    "an empty name": (["clinic", "set", "--name", " "], "--name: is empty."),
    "a colleague's mail": (["staff", "add", "--role", "lead", "--name", "Lee Roy", "--email", "lee"], "The e-mail: "),
    "a colleague's mobile": (
        ["staff", "add", "--role", "lead", "--name", "Lee Roy", "--email", "l@example.org", "--mobile", "5"],
        "The mobile: ",
    ),
}


@pytest.mark.usefixtures("clinic")
@pytest.mark.parametrize(("words", "sentence"), WRONG.values(), ids=WRONG)
def test_what_is_wrong_is_named_and_nothing_is_set(
    words: list[str], sentence: str, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(words) == 2
    assert sentence in capsys.readouterr().err
    assert said(capsys, "clinic", "set")["window"] == "08:00-20:00"


def test_closed_dates_come_to_those_there_and_move_the_sessions_that_fall_on_them(
    clinic: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["staff", "add", "--role", "therapist", "--name", "Ben Ames", "--email", "ben@example.org"]) == 0
    (clinic / "new.csv").write_text(CSV, encoding="utf-8")
    assert main(["enroll", "new.csv", "--at", AT]) == 0
    assert planned(capsys) == ["2027-03-03"]

    assert main(["clinic", "set", "--closed", "2027-12-24"]) == 0
    assert main(["clinic", "set", "--closed", "2027-03-03"]) == 0
    assert planned(capsys) == ["2027-03-05"]
    assert main(["clinic", "set", "--closed", "-"]) == 0


def planned(capsys: pytest.CaptureFixture[str]) -> list[str]:
    capsys.readouterr()
    assert main(["sessions", "--client", "1", "--json"]) == 0
    return [row["date"] for row in json.loads(capsys.readouterr().out) if row["state"] == "planned"]


@pytest.mark.usefixtures("clinic")
def test_a_colleague_covers_between_two_dates_that_lie_in_order(capsys: pytest.CaptureFixture[str]) -> None:
    for name in ("Ben Ames", "Dee Cho"):
        address = f"{name.split()[0].lower()}@example.org"
        assert main(["staff", "add", "--role", "therapist", "--name", name, "--email", address]) == 0
    words = ["staff", "cover", "ben@example.org", "--by", "dee@example.org", "--from", "2027-03-05", "--until"]

    assert main([*words, "2027-03-01"]) == 2
    assert main([*words, "2027-03-09"]) == 0

    assert "Dee Cho covers for Ben Ames from 2027-03-05 until 2027-03-09." in capsys.readouterr().out
