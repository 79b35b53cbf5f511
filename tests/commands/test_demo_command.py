import argparse
from pathlib import Path

import pytest

from reminders.__main__ import main
from reminders.channels.local import LocalChannel
from reminders.commands import opening
from reminders.demo import building
from reminders.demo.people import PEOPLE
from reminders.store import schema
from reminders.store.db import Database


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty folder to stand in, with an environment that would text real phones."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("REMINDERS_DATABASE_URL", f"sqlite:///{tmp_path / 'real.db'}")
    monkeypatch.setenv("REMINDERS_SMS", "twilio")
    return tmp_path


def test_once_lives_a_week_tells_of_it_and_ends(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["demo", "--once", "--weeks", "1", "--clients", "2", "--seed", "5"]) == 0

    told = capsys.readouterr()
    assert "Alma Whitcombe (client 1)" in told.out
    assert "Week 2027-W01" in told.out[told.out.index("LOOKED UP IN THE RECORD") :]
    assert told.err == "Week 1 of 1 lived through.\n"
    assert (folder / "demo.db").exists()
    assert not (folder / "real.db").exists()


WRONG = {
    "no week at all": (["--weeks", "0"], "--weeks"),
    "more clients than there are numbers": (["--clients", "5000"], "--clients"),
    "a port that is none": (["--port", "0"], "--port"),
    "keep and once together": (["--keep", "--once"], "--keep"),
}


@pytest.mark.parametrize(("words", "named"), WRONG.values(), ids=WRONG)
def test_bad_input_is_one_sentence_that_names_the_option(
    words: list[str], named: str, folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["demo", *words]) == 2

    said = capsys.readouterr().err
    assert said.startswith(named)
    assert said.count("\n") == 1
    assert list(folder.iterdir()) == []


def test_a_database_of_a_real_clinic_in_its_place_is_not_touched(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    db = Database(f"sqlite:///{folder / 'demo.db'}")
    schema.upgrade(db)
    db.close()

    assert main(["demo", "--once"]) == 2
    assert "is not a demo's database" in capsys.readouterr().err
    assert (folder / "demo.db").exists()


def test_a_demos_database_sends_nothing_out_whatever_the_environment_says(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    building.build(folder / "demo.db", 8000, PEOPLE[:1], 3, building.begins_at).db.close()
    monkeypatch.setenv("REMINDERS_DATABASE_URL", f"sqlite:///{folder / 'demo.db'}")
    monkeypatch.setenv("TWILIO_ACCOUNT_SID", "AC" + "0" * 32)
    monkeypatch.setenv("TWILIO_AUTH_TOKEN", "a-token-of-the-tests")
    monkeypatch.setenv("REMINDERS_TWILIO_SENDER", "+12025550199")
    monkeypatch.setenv("REMINDERS_PUBLIC_URL", "https://clinic.example.org")

    app = opening.opened(argparse.Namespace())

    assert isinstance(app.channels["sms"], LocalChannel)
    assert not app.settings.is_live
    assert not app.settings.has_webhooks
    assert app.settings.public_url == "http://127.0.0.1:8000"
    app.db.close()


def test_a_demo_is_served_on_this_machine_alone(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    building.build(folder / "demo.db", 8000, PEOPLE[:1], 3, building.begins_at).db.close()
    monkeypatch.setenv("REMINDERS_DATABASE_URL", f"sqlite:///{folder / 'demo.db'}")
    monkeypatch.setenv("REMINDERS_SMS", "local")

    assert main(["serve", "--host", "0.0.0.0"]) == 2
    assert capsys.readouterr().err.startswith("--host")


def test_keep_wants_a_demo_that_is_there(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["demo", "--keep", "--port", "8977"]) == 2
    assert "leave out --keep" in capsys.readouterr().err
