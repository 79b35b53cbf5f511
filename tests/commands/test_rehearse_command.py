"""`reminders rehearse`: from a rules file to what it prints, and its exit codes."""

import json
from pathlib import Path

import pytest

from reminders.__main__ import main

ROW = "name,mobile,therapist,program,days,time,precautions,consent_on,consent_how\n" + (
    "Ana Ruiz,+12025550101,ben@example.org,spine-strength,mon+wed+fri,08:30,none known,2027-03-01,signed form\n"
)


@pytest.fixture
def clinic(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Set up a clinic with Ana, whose first session was at the stop level."""
    monkeypatch.chdir(tmp_path)
    Path("clients.csv").write_text(ROW, encoding="utf-8")
    Path("rules.toml").write_text("stop_floor = 7\n", encoding="utf-8")
    start = "2027-03-01T12:00:00Z"
    for words in (
        ["db", "upgrade"],
        ["clinic", "set", "--name", "Alder Hill Physio", "--phone", "+1 202 555 0100"],
        ["staff", "add", "--role", "therapist", "--name", "Ben", "--email", "ben@example.org", "--at", start],
        ["enroll", "clients.csv", "--at", start],
        ["tick", "--at", "2027-03-03T13:30:00Z"],
        ["receive", "--from", "+12025550101", "--at", "2027-03-03T13:35:00Z", "Y6"],
    ):
        assert main(words) == 0
    monkeypatch.setenv("REMINDERS_CLOCK", "2027-03-04T13:00:00Z")


def test_it_prints_both_counts(clinic: None, capsys: pytest.CaptureFixture[str]) -> None:
    capsys.readouterr()
    assert main(["rehearse", "--rules", "rules.toml", "--weeks", "2", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert (found["weeks"], found["as_is"]["alerts"], found["changed"]["alerts"]) == (2, 1, 0)


def test_it_speaks_to_people_too(clinic: None, capsys: pytest.CaptureFixture[str]) -> None:
    capsys.readouterr()
    assert main(["rehearse", "--rules", "rules.toml"]) == 0
    shown = capsys.readouterr().out
    assert "nothing was sent" in shown
    assert "pain_up" in shown


WRONG = {
    "an unknown key": ("stop_flor = 7", '"stop_flor" is no level'),
    "not TOML": ("stop_floor 7", "is not TOML"),
}


@pytest.mark.parametrize(("text", "words"), WRONG.values(), ids=WRONG.keys())
def test_a_wrong_file_is_exit_2(clinic: None, capsys: pytest.CaptureFixture[str], text: str, words: str) -> None:
    Path("rules.toml").write_text(text, encoding="utf-8")
    assert main(["rehearse", "--rules", "rules.toml"]) == 2
    assert words in capsys.readouterr().err


def test_a_missing_file_is_exit_2(clinic: None, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["rehearse", "--rules", "none.toml"]) == 2
    assert "none.toml cannot be read" in capsys.readouterr().err
