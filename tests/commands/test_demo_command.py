from pathlib import Path

import pytest

from reminders.__main__ import main
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
