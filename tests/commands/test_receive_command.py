"""`reminders receive`: what an inbound text does, sent and printed."""

import json
from pathlib import Path
from typing import Any

import pytest

from reminders.__main__ import main

AT = "2027-03-03T13:35:00Z"
ROW = "name,mobile,therapist,program,days,time,precautions,consent_on,consent_how\n" + (
    "Ana Ruiz,+12025550101,ben@example.org,spine-strength,mon+wed+fri,08:30,none known,2027-03-01,signed form\n"
)


@pytest.fixture
def clinic(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Set up a clinic with Ana, who has been reminded."""
    monkeypatch.chdir(tmp_path)
    Path("clients.csv").write_text(ROW, encoding="utf-8")
    start = "2027-03-01T12:00:00Z"
    for words in (
        ["db", "upgrade"],
        ["clinic", "set", "--name", "Alder Hill Physio", "--phone", "+1 202 555 0100"],
        ["staff", "add", "--role", "therapist", "--name", "Ben", "--email", "ben@example.org", "--at", start],
        ["enroll", "clients.csv", "--at", start],
        ["tick", "--at", "2027-03-03T13:30:00Z"],
    ):
        assert main(words) == 0


def received(capsys: pytest.CaptureFixture[str], *words: str, code: int = 0) -> Any:
    capsys.readouterr()
    assert main(["receive", *words]) == code
    out = capsys.readouterr()
    return json.loads(out.out) if "--json" in words else out.out + out.err


def test_it_keeps_reads_sends_and_prints(clinic: None, capsys: pytest.CaptureFixture[str]) -> None:
    shown = received(capsys, "--from", "+1 202 555 0101", "--at", AT, "done 2x10 pain 3")

    assert "report: client 1" in shown
    assert "thanks by sms to +12025550101, accepted" in shown
    assert "Recorded: all, 2x10, pain 3." in shown


def test_its_json_has_the_reading_and_what_was_sent(clinic: None, capsys: pytest.CaptureFixture[str]) -> None:
    shown = received(capsys, "--from", "+12025550101", "--at", AT, "--json", "Y2")

    assert shown["received"]["reading"]["pain"] == 2
    assert [(one["kind"], one["state"]) for one in shown["messages"]] == [("thanks", "accepted")]


def test_the_same_words_twice_are_two_texts(clinic: None, capsys: pytest.CaptureFixture[str]) -> None:
    for _ in range(2):
        received(capsys, "--from", "+12025550101", "--at", AT, "Y3")
    capsys.readouterr()
    main(["sessions", "--client", "1", "--json"])

    assert len(json.loads(capsys.readouterr().out)[0]["reports"]) == 2


BAD = {
    "no number": (["--from", "Ana", "--at", AT, "Y3"], "--from"),
    "a naive instant": (["--from", "+12025550101", "--at", "2027-03-03T13:35:00", "Y3"], "--at"),
    "too long": (["--from", "+12025550101", "--at", AT, "a" * 1601], "TEXT"),
}


@pytest.mark.parametrize(("words", "field"), BAD.values(), ids=BAD)
def test_bad_input_names_the_field(
    clinic: None, capsys: pytest.CaptureFixture[str], words: list[str], field: str
) -> None:
    assert field in received(capsys, *words, code=2)
