import sqlite3
from pathlib import Path

import pytest

from reminders.__main__ import main


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """An empty folder to stand in, with no setting but the address of a database in it."""
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("REMINDERS_DATABASE_URL", f"sqlite:///{tmp_path / 'clinic.db'}")
    return tmp_path


def rows(path: Path, statement: str) -> list[tuple[object, ...]]:
    connection = sqlite3.connect(path)
    try:
        return list(connection.execute(statement))
    finally:
        connection.commit()
        connection.close()


def test_a_fresh_database_has_one_clinic_without_a_name(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["db", "upgrade"]) == 0

    assert rows(folder / "clinic.db", "SELECT name, phone FROM clinic") == [("", "")]
    assert str(folder / "clinic.db") in capsys.readouterr().out


def test_the_key_beside_the_database_is_for_its_owner_alone(folder: Path) -> None:
    main(["db", "upgrade"])

    assert (folder / "clinic.db.key").stat().st_mode & 0o777 == 0o600


def test_upgrading_again_changes_nothing(folder: Path) -> None:
    main(["db", "upgrade"])
    key = (folder / "clinic.db.key").read_text()

    assert main(["db", "upgrade"]) == 0
    assert rows(folder / "clinic.db", "SELECT count(*) FROM clinic") == [(1,)]
    assert (folder / "clinic.db.key").read_text() == key


def test_a_whole_database_checks_as_whole(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    main(["db", "upgrade"])

    assert main(["db", "check"]) == 0
    assert "is whole" in capsys.readouterr().out


FAULTS = {
    "a row without its parent": (
        "INSERT INTO schedule (client_id, from_on, days, time, time_zone) "
        "VALUES (9, '2027-03-01', 'mon', '08:30', 'UTC')",
        "schedule",
    ),
    "a table that was changed by hand": ("ALTER TABLE clinic ADD COLUMN colour TEXT", "colour"),
    "an audit entry put in by hand": (
        'INSERT INTO audit (clinic_id, at, "by", action, details, previous_hash, hash) '
        "VALUES (1, '2027-03-01 00:00:00', 'x', 'y', '{}', '', 'z')",
        "audit log",
    ),
}


@pytest.mark.parametrize(("statement", "named"), FAULTS.values(), ids=FAULTS.keys())
def test_a_fault_is_named_and_the_exit_code_says_so(
    folder: Path, capsys: pytest.CaptureFixture[str], statement: str, named: str
) -> None:
    main(["db", "upgrade"])
    rows(folder / "clinic.db", statement)

    assert main(["db", "check"]) == 1
    assert named in capsys.readouterr().out


def test_checking_a_database_that_is_not_there_names_its_full_path(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert main(["db", "check"]) == 1
    assert str(folder / "clinic.db") in capsys.readouterr().err
    assert list(folder.iterdir()) == []
