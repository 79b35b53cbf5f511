import json
import sqlite3
from pathlib import Path
from typing import Any

import pytest

from reminders.__main__ import main

CSV = (
    "name,mobile,therapist,program,precautions,consent_on,consent_how\n"
    "Ana Ruiz,+12025550101,ben@example.org,spine-strength,none known,2027-02-26,signed form\n"
)
AT = "2027-03-01T10:00:00-05:00"


@pytest.fixture(autouse=True)
def clinic(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Path:
    """A clinic with one enrolled client, made by commands alone."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("REMINDERS_DATABASE_URL", f"sqlite:///{tmp_path / 'clinic.db'}")
    (tmp_path / "clients.csv").write_text(CSV)
    assert main(["db", "upgrade"]) == 0
    assert main(["clinic", "set", "--name", "Alder Hill Physio", "--phone", "+12025550100"]) == 0
    staff = ["staff", "add", "--role", "therapist", "--name", "Ben Ames", "--email", "ben@example.org"]
    assert main([*staff, "--mobile", "+12025550150", "--at", AT]) == 0
    assert main(["enroll", "clients.csv", "--at", AT]) == 0
    capsys.readouterr()
    return tmp_path


def audit(folder: Path) -> list[tuple[str, Any]]:
    connection = sqlite3.connect(folder / "clinic.db")
    found = [
        (action, json.loads(details)) for action, details in connection.execute("SELECT action, details FROM audit")
    ]
    connection.close()
    return found


def out(capsys: pytest.CaptureFixture[str]) -> str:
    return str(capsys.readouterr().out)


@pytest.mark.parametrize(
    ("how", "holds"),
    [
        ("csv", "date,kind,state"),
        ("json", '"name": "Ana Ruiz"'),
        ("fhir", '"resourceType": "Bundle"'),
        ("copy", "<h1>The exercise record of Ana Ruiz</h1>"),
        ("calendar", "BEGIN:VCALENDAR"),
    ],
)
def test_an_export_is_printed_and_written_into_the_audit_log(
    clinic: Path, capsys: pytest.CaptureFixture[str], how: str, holds: str
) -> None:
    why = ["--reason", "she moves", "--recipient", "her new clinic"]
    assert main(["export", "--client", "1", "--format", how, *why]) == 0

    assert holds in out(capsys)
    action, details = audit(clinic)[-1]
    assert action == "record exported"
    assert (details["format"], details["reason"], details["recipient"]) == (how, "she moves", "her new clinic")


BAD = {
    "no reason": (["export", "--client", "1", "--recipient", "x"], "--reason"),
    "no recipient": (["export", "--client", "1", "--reason", "x"], "--recipient"),
    "nobody": (["export", "--client", "9", "--reason", "x", "--recipient", "y"], "--client"),
    "a place that cannot be written": (
        ["export", "--client", "1", "--reason", "x", "--recipient", "y", "--out", "no/such/folder"],
        "--out",
    ),
    "all without a file": (["export", "--all"], "--out"),
    "erase without a reason": (["erase", "--client", "1"], "--reason"),
    "erase nobody": (["erase", "--client", "9", "--reason", "x"], "--client"),
    "import what is not there": (["import", "none.jsonl"], "none.jsonl"),
    "a token that may do nothing known": (["token", "add", "--scope", "everything"], "--scope"),
    "a digest of nobody": (["digest", "--therapist", "no@example.org"], "--therapist"),
    "a digest of no week": (["digest", "--therapist", "ben@example.org", "--week", "soon"], "--week"),
}


@pytest.mark.parametrize(("words", "named"), BAD.values(), ids=BAD.keys())
def test_bad_input_is_one_sentence_that_names_the_field_and_changes_nothing(
    clinic: Path, capsys: pytest.CaptureFixture[str], words: list[str], named: str
) -> None:
    before = audit(clinic)

    assert main(words) == 2
    said = capsys.readouterr().err
    assert named in said
    assert len(said.strip().splitlines()) == 1
    assert audit(clinic) == before


def test_the_whole_record_moves_to_a_fresh_database(
    clinic: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["export", "--all", "--out", "whole.jsonl"]) == 0
    monkeypatch.setenv("REMINDERS_DATABASE_URL", f"sqlite:///{clinic / 'new.db'}")
    assert main(["db", "upgrade"]) == 0
    assert main(["import", "whole.jsonl"]) == 0
    assert main(["db", "resume"]) == 0
    capsys.readouterr()
    assert main(["clients", "--json"]) == 0

    assert [row["name"] for row in json.loads(out(capsys))] == ["Ana Ruiz"]
    assert main(["import", "whole.jsonl"]) == 2


def test_an_erasure_says_what_is_kept(clinic: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["erase", "--client", "1", "--reason", "she asked"]) == 0

    said = out(capsys)
    assert "audit log" in said
    assert "closed addresses" in said
    assert main(["clients", "--json"]) == 0
    assert "Ana" not in out(capsys)


def test_a_token_is_printed_once_and_only_its_hash_is_kept(clinic: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["token", "add", "--scope", "record:read,alerts:read", "--name", "chart"]) == 0

    token = out(capsys).strip()
    connection = sqlite3.connect(clinic / "clinic.db")
    kept = connection.execute("SELECT token_hash, scopes FROM api_token").fetchone()
    connection.close()
    assert kept[1] == "record:read alerts:read"
    assert token not in kept[0]
    assert len(token) >= 40


def test_the_digest_of_a_week_is_printed_written_and_given_as_values(
    clinic: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    for day in range(1, 9):
        assert main(["tick", "--at", f"2027-03-{day:02d}T12:00:00Z"]) == 0
    capsys.readouterr()
    words = ["digest", "--therapist", "ben@example.org", "--week", "2027-W09"]
    assert main([*words, "--json", "--html", "week.html"]) == 0
    values = json.loads(out(capsys))
    assert main(words) == 0

    assert values["week"] == "2027-W09"
    assert values["made"] == "2027-03-08T12:00:00Z"
    assert [row["name"] for row in values["clients"]] == ["Ana Ruiz"]
    assert "Ana Ruiz (client 1)" in out(capsys)
    assert "Ana Ruiz (client 1)" in (clinic / "week.html").read_text()


def test_check_names_what_is_missing_and_passes_what_is_not(clinic: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["check"]) == 0

    said = out(capsys)
    assert "ok    database" in said
    assert "ben@example.org has neither cover nor a lead" in said
    assert "REMINDERS_OPERATOR_EMAIL" in said


def test_check_finds_a_mail_server_that_does_not_answer(
    clinic: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("REMINDERS_EMAIL", "smtp")
    monkeypatch.setenv("REMINDERS_SMTP_URL", "smtp://127.0.0.1:9?tls=none")
    monkeypatch.setenv("REMINDERS_EMAIL_FROM", "clinic@example.org")

    assert main(["check"]) == 1
    assert "bad   mail" in out(capsys)
