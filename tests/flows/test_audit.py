from collections.abc import Iterator
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest
from sqlalchemy import text

from reminders.flows import audit
from reminders.store import schema
from reminders.store.db import Database
from reminders.store.tables import Audit

NOW = datetime(2027, 3, 1, 13, 30, tzinfo=UTC)


@pytest.fixture
def log(tmp_path: Path) -> Iterator[Database]:
    """A database whose first clinic has three entries and whose second has one between them."""
    db = Database(f"sqlite:///{tmp_path / 'audit.db'}")
    schema.upgrade(db)
    with db.begin() as tx:
        audit.record(tx, 1, "ben@example.org", "client viewed", 7, {"page": "client"}, NOW)
        audit.record(tx, 2, "cleo@example.org", "client viewed", 9, {}, NOW)
        audit.record(tx, 1, "ben@example.org", "reading corrected", 7, {"report": 3, "pain": [4, 6]}, NOW)
    with db.begin() as tx:
        audit.record(tx, 1, "command", "record exported", 7, {"format": "csv"}, NOW + timedelta(days=1))
    yield db
    db.close()


def broken(db: Database) -> list[int]:
    with db.read() as tx:
        return audit.broken_entries(tx)


def test_an_untouched_log_has_no_broken_entry(log: Database) -> None:
    assert broken(log) == []


def test_each_clinic_has_a_chain_of_its_own(log: Database) -> None:
    with log.read() as tx:
        rows = {row.id: row for row in audit.entries(tx)}

        assert rows[3].previous_hash == rows[1].hash
        assert rows[2].previous_hash == ""


CHANGES = {
    "who did it": "UPDATE audit SET \"by\" = 'cleo@example.org' WHERE id = 3",
    "what was done": "UPDATE audit SET action = 'client viewed' WHERE id = 3",
    "whose record": "UPDATE audit SET client_id = 8 WHERE id = 3",
    "when": "UPDATE audit SET at = '2027-03-02 13:30:00.000000' WHERE id = 3",
    "a detail": 'UPDATE audit SET details = \'{"report": 3, "pain": [4, 5]}\' WHERE id = 3',
    "the hash alone": "UPDATE audit SET hash = 'x' WHERE id = 3",
}


@pytest.mark.parametrize("change", CHANGES.values(), ids=CHANGES.keys())
def test_an_entry_changed_in_place_is_found(log: Database, change: str) -> None:
    with log.begin() as tx:
        tx.execute(text(change))

    assert 3 in broken(log)


def test_an_entry_taken_out_of_the_middle_breaks_the_next(log: Database) -> None:
    with log.begin() as tx:
        tx.execute(text("DELETE FROM audit WHERE id = 3"))

    assert broken(log) == [4]


def test_an_entry_put_in_without_the_chain_is_found(log: Database) -> None:
    with log.begin() as tx:
        tx.add(Audit(clinic_id=1, at=NOW, by="x@example.org", action="client viewed", client_id=7))

    assert broken(log) == [5]
