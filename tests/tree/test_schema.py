from pathlib import Path

from sqlmodel import SQLModel

from reminders.store import schema, tables
from reminders.store.db import Database


def test_the_tables_of_the_code_equal_those_that_the_migrations_make(tmp_path: Path) -> None:
    db = Database(f"sqlite:///{tmp_path / 'made.db'}")
    schema.upgrade(db)

    with db.engine.connect() as connection:
        assert schema.differences(connection) == []
        assert schema.current(connection) == schema.newest()
    db.close()


def test_a_second_upgrade_changes_nothing(tmp_path: Path) -> None:
    db = Database(f"sqlite:///{tmp_path / 'made.db'}")
    schema.upgrade(db)
    db.close()
    before = (tmp_path / "made.db").read_bytes()

    schema.upgrade(db)
    db.close()

    assert (tmp_path / "made.db").read_bytes() == before


def test_a_difference_would_be_seen(tmp_path: Path) -> None:
    db = Database(f"sqlite:///{tmp_path / 'made.db'}")
    schema.upgrade(db)
    with db.begin() as tx:
        tx.connection().exec_driver_sql("ALTER TABLE client ADD COLUMN shoe_size INTEGER")

    with db.engine.connect() as connection:
        assert len(schema.differences(connection)) == 1
    db.close()


def test_every_table_of_the_code_is_named_in_one_place() -> None:
    assert {table.name for table in SQLModel.metadata.sorted_tables} == {
        getattr(tables, name).__tablename__ for name in tables.__all__ if name != "metadata"
    }
