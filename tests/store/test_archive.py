import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from sqlmodel import select

from reminders.errors import BadInput, Refused
from reminders.flows import audit, export, import_
from reminders.store import archive, restored
from reminders.store.db import Database
from reminders.store.tables import Clinic, Staff
from tests.clinic import World, a_world
from tests.conftest import NOW

WHY = {"reason": "moving", "recipient": "the new machine"}


def live(world: World) -> World:
    """Let a client be reminded and answer; a therapist's cover comes later in the table than she does."""
    world.enrol()
    world.plan()
    world.pass_time(days=2)
    world.send()
    world.hear("done pain 3")
    with world.db.begin() as tx:
        ben = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        dee = tx.exec(select(Staff).where(Staff.email == "dee@example.org")).one()
        ben.cover_id, ben.password_hash = dee.id, "argon2-hash"
        audit.record(tx, 1, "ben@example.org", "client viewed", 1, {"page": "client"}, world.now)
    return world


@pytest.fixture
def lived_in(world: World) -> World:
    return live(world)


@pytest.fixture
def fresh(tmp_path: Path, sqlite_template: Path) -> Iterator[Database]:
    """Another fresh database."""
    (tmp_path / "fresh.db").write_bytes(sqlite_template.read_bytes())
    opened = Database(f"sqlite:///{tmp_path / 'fresh.db'}")
    yield opened
    opened.close()


def written(world: World, path: Path) -> list[Any]:
    export.export_all(world.db, path, archive.PORTABLE, WHY, "command", world.now)
    return rows_of(path)


def rows_of(path: Path) -> list[Any]:
    """The rows of a file, without what writing and bringing in add themselves."""
    lines = [json.loads(line) for line in path.read_text().splitlines()]
    return [line for line in lines if isinstance(line, list) and line[0] not in ("audit", "mark")]


def test_the_whole_record_comes_back_as_it_left(lived_in: World, fresh: Database, tmp_path: Path) -> None:
    left = written(lived_in, tmp_path / "a.jsonl")
    import_.bring_in(fresh, tmp_path / "a.jsonl", "command", lived_in.now)
    archive.write(fresh, tmp_path / "b.jsonl", archive.PORTABLE, "2027-03-03T15:00:00Z")

    assert {"outbound", "inbound", "report", "exercise_session", "client_program"} <= {line[0] for line in left}
    assert rows_of(tmp_path / "b.jsonl") == left


@pytest.mark.postgres
def test_a_record_moves_to_postgresql_and_new_rows_get_new_numbers(
    sqlite_url: str, postgres_url: str, tmp_path: Path
) -> None:
    world, target = live(a_world(Database(sqlite_url), NOW)), Database(postgres_url)
    left = written(world, tmp_path / "a.jsonl")
    import_.bring_in(target, tmp_path / "a.jsonl", "command", world.now)
    archive.write(target, tmp_path / "b.jsonl", archive.PORTABLE, "2027-03-03T15:00:00Z")
    with target.begin() as tx:
        added = Staff(clinic_id=1, role="admin", name="Gus Hay", email="gus@example.org")
        tx.add(added)
        tx.flush()
        number = added.id
    target.close()
    world.db.close()

    assert rows_of(tmp_path / "b.jsonl") == left
    assert number == 5


def test_the_audit_log_still_holds_after_a_move(lived_in: World, fresh: Database, tmp_path: Path) -> None:
    written(lived_in, tmp_path / "a.jsonl")
    import_.bring_in(fresh, tmp_path / "a.jsonl", "command", lived_in.now)

    with fresh.read() as tx:
        assert audit.broken_entries(tx) == []
        assert [one.action for one in audit.entries(tx) if one.clinic_id == 1][-2:] == [
            "whole record exported",
            "whole record imported",
        ]


def test_no_password_and_no_second_factor_leaves(lived_in: World, tmp_path: Path) -> None:
    written(lived_in, tmp_path / "a.jsonl")

    assert "argon2-hash" not in (tmp_path / "a.jsonl").read_text()


def test_the_file_is_for_its_owner_alone(lived_in: World, tmp_path: Path) -> None:
    written(lived_in, tmp_path / "a.jsonl")

    assert (tmp_path / "a.jsonl").stat().st_mode & 0o777 == 0o600


def test_an_imported_record_is_held_back_until_it_is_resumed(lived_in: World, fresh: Database, tmp_path: Path) -> None:
    written(lived_in, tmp_path / "a.jsonl")
    import_.bring_in(fresh, tmp_path / "a.jsonl", "command", lived_in.now)

    with fresh.read() as tx:
        assert restored.waits_since(tx) == lived_in.now


def test_a_record_is_not_brought_into_one_that_is_in_use(lived_in: World, tmp_path: Path) -> None:
    before = written(lived_in, tmp_path / "a.jsonl")

    with pytest.raises(Refused, match="fresh database"):
        import_.bring_in(lived_in.db, tmp_path / "a.jsonl", "command", lived_in.now)
    assert written(lived_in, tmp_path / "b.jsonl") == before


DAMAGES = {
    "cut short": lambda lines: lines[:-2],
    "a line taken out": lambda lines: lines[:3] + lines[4:],
    "a number changed": lambda lines: [line.replace('"pain":3', '"pain":1') for line in lines],
    "no file of ours": lambda lines: ['{"format": "something else"}'],
    "not even JSON": lambda lines: ["name,mobile"],
    "empty": lambda lines: [],
}


@pytest.mark.parametrize("damage", DAMAGES.values(), ids=DAMAGES.keys())
def test_a_damaged_file_is_refused_and_changes_nothing(
    lived_in: World, fresh: Database, tmp_path: Path, damage: Any
) -> None:
    path = tmp_path / "a.jsonl"
    written(lived_in, path)
    lines = path.read_text().splitlines()
    assert any('"pain":3' in line for line in lines)
    path.write_text("\n".join(damage(lines)) + "\n" if damage(lines) else "")

    with pytest.raises(BadInput, match=str(path)):
        import_.bring_in(fresh, path, "command", lived_in.now)
    with fresh.read() as tx:
        assert tx.exec(select(Clinic.name)).all() == [""]
