import sqlite3
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest
from sqlalchemy import text

from reminders.__main__ import main
from reminders.store.db import Database


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


def name_of(path: Path) -> object:
    return rows(path, "SELECT name FROM clinic")[0][0]


def named(name: str) -> None:
    assert main(["clinic", "set", "--name", name, "--phone", "+12025550100"]) == 0


@pytest.mark.parametrize("key", ["", "a-key-of-many-random-signs-42"], ids=["plain", "sealed"])
def test_a_backup_brings_back_what_it_held_and_keeps_aside_what_was_there(
    folder: Path, monkeypatch: pytest.MonkeyPatch, key: str
) -> None:
    if key:
        monkeypatch.setenv("REMINDERS_BACKUP_KEY", key)
    main(["db", "upgrade"])
    named("Alder Hill Physio")
    assert main(["db", "backup", "night.backup"]) == 0
    named("Birch Lane Physio")
    assert main(["db", "restore", "night.backup"]) == 0

    assert name_of(folder / "clinic.db") == "Alder Hill Physio"
    (aside,) = folder.glob("clinic.db.before-restore-*")
    assert name_of(aside) == "Birch Lane Physio"
    assert {path.stat().st_mode & 0o777 for path in (folder / "night.backup", aside, folder / "clinic.db")} <= {
        0o600,
        0o644,
    }
    assert (b"SQLite format" in (folder / "night.backup").read_bytes()) is not bool(key)


def test_a_restored_database_is_resumed_once(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    main(["db", "upgrade"])
    named("Alder Hill Physio")
    main(["db", "backup", "night.backup"])
    main(["db", "restore", "night.backup"])

    assert main(["check"]) == 1
    assert "db resume" in capsys.readouterr().out
    assert main(["db", "resume"]) == 0
    assert "Sending goes on." in capsys.readouterr().out
    assert main(["db", "resume"]) == 0
    assert "sends as usual" in capsys.readouterr().out


def test_a_backup_is_restored_where_no_database_is(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    main(["db", "upgrade"])
    named("Alder Hill Physio")
    main(["db", "backup", "night.backup"])
    monkeypatch.setenv("REMINDERS_DATABASE_URL", f"sqlite:///{folder / 'elsewhere.db'}")

    assert main(["db", "restore", "night.backup"]) == 0
    assert name_of(folder / "elsewhere.db") == "Alder Hill Physio"


def test_a_backup_without_a_name_goes_into_the_folder_for_backups(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    (folder / "backups").mkdir()
    monkeypatch.setenv("REMINDERS_BACKUP_DIR", str(folder / "backups"))
    main(["db", "upgrade"])

    assert main(["db", "backup"]) == 0
    assert [path.suffix for path in (folder / "backups").iterdir()] == [".backup"]
    main(["check"])
    assert "hours old" in capsys.readouterr().out


def test_a_restore_while_the_service_runs_is_refused(folder: Path, capsys: pytest.CaptureFixture[str]) -> None:
    main(["db", "upgrade"])
    main(["db", "backup", "night.backup"])
    rows(folder / "clinic.db", "INSERT INTO mark (name, at, value) VALUES ('heartbeat:sender', datetime('now'), '')")

    assert main(["db", "restore", "night.backup"]) == 2
    assert "running" in capsys.readouterr().err
    assert list(folder.glob("*before-restore*")) == []


HAS_IT_OPEN = """
import sqlite3, sys
connection = sqlite3.connect(sys.argv[1])
connection.execute("SELECT count(*) FROM mark").fetchone()
print("open", flush=True)
sys.stdin.read()
"""


def test_a_restore_while_a_web_process_alone_has_the_file_open_is_refused(
    folder: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    main(["db", "upgrade"])
    main(["db", "backup", "night.backup"])
    command = [sys.executable, "-c", HAS_IT_OPEN, str(folder / "clinic.db")]
    with subprocess.Popen(command, stdin=subprocess.PIPE, stdout=subprocess.PIPE) as other:
        assert other.stdout is not None
        assert other.stdout.readline() == b"open\n"
        assert main(["db", "restore", "night.backup"]) == 2
        other.communicate()
    assert "running" in capsys.readouterr().err

    assert main(["db", "restore", "night.backup"]) == 0


DAMAGED = {
    "no backup at all": lambda data: b"name,mobile\n",
    "cut short": lambda data: data[: len(data) // 2],
    "one byte turned": lambda data: data[:-100] + bytes([data[-100] ^ 1]) + data[-99:],
}


@pytest.mark.parametrize("damage", DAMAGED.values(), ids=DAMAGED.keys())
def test_a_damaged_sealed_backup_changes_nothing(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str], damage: Callable[[bytes], bytes]
) -> None:
    monkeypatch.setenv("REMINDERS_BACKUP_KEY", "a-key-of-many-random-signs-42")
    main(["db", "upgrade"])
    named("Alder Hill Physio")
    main(["db", "backup", "night.backup"])
    (folder / "night.backup").write_bytes(damage((folder / "night.backup").read_bytes()))
    named("Birch Lane Physio")
    capsys.readouterr()

    assert main(["db", "restore", "night.backup"]) == 2
    assert "night.backup" in capsys.readouterr().err
    assert name_of(folder / "clinic.db") == "Birch Lane Physio"


def test_a_sealed_backup_needs_its_key(
    folder: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.setenv("REMINDERS_BACKUP_KEY", "a-key-of-many-random-signs-42")
    main(["db", "upgrade"])
    main(["db", "backup", "night.backup"])
    for key in ("", "another-key-of-many-random-signs"):
        monkeypatch.setenv("REMINDERS_BACKUP_KEY", key)
        assert main(["db", "restore", "night.backup"]) == 2
        assert "REMINDERS_BACKUP_KEY" in capsys.readouterr().err


@pytest.mark.postgres
def test_a_backup_of_one_kind_of_database_comes_back_in_the_other(
    folder: Path, monkeypatch: pytest.MonkeyPatch, postgres_url: str
) -> None:
    main(["db", "upgrade"])
    named("Alder Hill Physio")
    main(["db", "backup", "one.backup"])
    monkeypatch.setenv("REMINDERS_DATABASE_URL", postgres_url)
    monkeypatch.setenv("REMINDERS_SECRET_KEY", "many-random-signs-to-sign-with-1")
    assert main(["db", "restore", "one.backup"]) == 0
    assert main(["db", "resume"]) == 0
    db = Database(postgres_url)
    with db.begin() as tx:
        tx.execute(text("UPDATE clinic SET name = 'Birch Lane Physio'"))
    db.close()
    assert main(["db", "backup", "two.backup"]) == 0
    monkeypatch.setenv("REMINDERS_DATABASE_URL", f"sqlite:///{folder / 'back.db'}")
    assert main(["db", "restore", "two.backup"]) == 0

    assert name_of(folder / "back.db") == "Birch Lane Physio"
