"""Texts handled in one transaction leave the same record as each handled by itself."""

import shutil
from datetime import datetime
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import event
from sqlmodel import SQLModel

from reminders.flows import receive
from reminders.store import tables
from reminders.store.db import Database
from reminders.store.tables import InboundRow, Report
from tests.clinic import BEN, World, a_world
from tests.flows.hearing import WEDNESDAY, inbound, keep

NOW = datetime.fromisoformat("2027-03-01T15:00:00+00:00")
FIRST = 2025550111
# What people answer, and what they write ten minutes later.
TOLD = {
    "an easy day": ("done 2x10 pain 1", "sorry, pain 2 not 1"),
    "a rating that asks where": ("done pain 4", "left hip"),
    "no number": ("did everything", "3"),
    "part of it": ("only the first two, pain 2", "thanks"),
    "stop level": ("done pain 6", "done pain 7"),
    "severe": ("awful, pain 9", "what should I do?"),
    "a fall": ("I fell in the kitchen this morning", "I am fine now"),
    "chest pain": ("my chest hurts and I can't breathe", "done pain 1"),
    "an end": ("STOP", "START"),
    "a pause": ("I'm away until friday", "back now, done 1x10 pain 0"),
    "not today": ("N", "Y2"),
    "a question": ("can I do these in the pool?", "done, no pain"),
    "nonsense": ("blue horse", "qwerty"),
    "help": ("HELP", "7"),
    "yesterday": ("did yesterday's, pain 2", "and today's, pain 3"),
    "wrong number": ("wrong number, I don't know you", "who is this"),
    "a flare": ("bit of a flare up today, did half, pain 5", "5"),
    "an operation": ("I was in hospital for my hip operation", "done"),
}


def phone(number: int) -> str:
    """Return a client's phone."""
    return f"+1{FIRST + number}"


@pytest.fixture
def morning(sqlite_template: Path, tmp_path: Path) -> Path:
    """A database on the morning of an exercise day: everybody has been reminded, a couple shares a phone."""
    path = tmp_path / "morning.db"
    shutil.copy(sqlite_template, path)
    world = a_world(Database(f"sqlite:///{path}"), NOW)
    for number in range(len(TOLD)):
        world.enrol(f"Client {number}", phone(number))
    for name in ("Ida Orr", "Max Orr"):
        world.enrol(name, phone(len(TOLD)), holder="shared")
    world.now = WEDNESDAY
    world.plan()
    world.send()
    with world.db.engine.connect() as connection:
        connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")
    world.db.close()
    return path


def heard(morning: Path, name: str, rounds: int, *, together: bool) -> World:
    """Return a copy of that morning in which everybody has written."""
    path = morning.with_name(name)
    shutil.copy(morning, path)
    world = World(Database(f"sqlite:///{path}"), WEDNESDAY)
    for place in range(rounds):
        world.pass_time(minutes=10)
        texts = [(phone(number), told[place]) for number, told in enumerate(TOLD.values())]
        texts += [(phone(len(TOLD)), ("done pain 2", "Ida")[place]), (BEN, "hello"), ("+12025550198", "I fell")]
        rows = [
            inbound(text, f"SM{place}-{number}", world, address=address) for number, (address, text) in enumerate(texts)
        ]
        keep(world, *rows)
        ids = [row.id for row in world.rows(InboundRow) if row.handled_at is None]
        if together:
            with world.db.begin() as tx:
                assert receive.handle_rows(tx, ids, world.now) == len(ids)
        else:
            assert all(receive.handle_one(world.db, row_id, world.now) for row_id in ids)
    return world


def record(world: World) -> dict[str, list[dict[str, Any]]]:
    """Return every row of every table."""
    found: dict[str, list[dict[str, Any]]] = {}
    for table in vars(tables).values():
        if isinstance(table, type) and issubclass(table, SQLModel) and hasattr(table, "id"):
            found[table.__name__] = [row.model_dump() for row in world.rows(table)]
    return found


@pytest.mark.parametrize("rounds", [1, 2])
def test_the_record_is_the_same_whether_texts_are_handled_together_or_one_by_one(morning: Path, rounds: int) -> None:
    alone = record(heard(morning, "alone.db", rounds, together=False))
    together = record(heard(morning, "together.db", rounds, together=True))

    for name, rows in alone.items():
        assert together[name] == rows, name
    assert len(alone["Report"]) > len(TOLD) / 2
    assert all(alone[name] for name in ("Alert", "Hold", "Question", "Flag", "ClinicNote", "Pause", "ConsentEvent"))


def test_a_text_that_cannot_be_handled_holds_up_no_other(morning: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    world = World(Database(f"sqlite:///{morning}"), WEDNESDAY)
    whole = receive.handle_row

    def fails(tx: Any, row: InboundRow, now: datetime) -> Any:
        if row.text == "bad":
            raise ValueError("bad")
        return whole(tx, row, now)

    monkeypatch.setattr(receive, "handle_row", fails)
    texts = ["done pain 1"] * 3 + ["bad"] + ["done pain 2"] * 6
    keep(world, *(inbound(text, f"SM{n}", world, address=phone(n)) for n, text in enumerate(texts)))

    assert receive.handle_waiting(world.db, world.now) == len(texts) - 1
    assert [row.text for row in world.rows(InboundRow) if row.handled_at is None] == ["bad"]
    assert world.rows(InboundRow, text="bad")[0].failures == 1
    assert len(world.rows(Report)) == len(texts) - 1


def test_a_phone_that_floods_us_holds_up_no_danger_sign(morning: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    world = World(Database(f"sqlite:///{morning}"), WEDNESDAY)
    order: list[str] = []
    whole = receive.handle_row

    def noted(tx: Any, row: InboundRow, now: datetime) -> Any:
        order.append(row.text)
        return whole(tx, row, now)

    monkeypatch.setattr(receive, "handle_row", noted)
    flood = [inbound(f"done {n}", f"SM{n}", world, address=phone(0)) for n in range(40)]
    keep(world, *flood, inbound("I fell", "SM99", world, address=phone(1)))

    receive.handle_waiting(world.db, world.now)

    assert order.index("I fell") < receive.MOST_TOGETHER
    assert [text for text in order if text != "I fell"] == [one.text for one in flood]


def test_a_crowd_is_looked_at_once_and_not_a_text_at_a_time(morning: Path) -> None:
    world = World(Database(f"sqlite:///{morning}"), WEDNESDAY)
    texts = [inbound("done 2x10 pain 1", f"SM{n}", world, address=phone(n)) for n in range(receive.MOST_TOGETHER)]
    keep(world, *texts)
    asked: list[str] = []
    event.listen(world.db.engine, "before_cursor_execute", lambda *given: asked.append(given[2]))

    receive.handle_waiting(world.db, world.now)

    looks = [one for one in asked if one.startswith("SELECT")]
    assert len(world.rows(Report)) == len(texts)
    assert len(looks) < 2 * len(texts)


def test_a_crowd_is_handled_together_on_either_database(world: World, monkeypatch: pytest.MonkeyPatch) -> None:
    crowd = [phone(number) for number in range(receive.FEW + 2)]
    for number, mobile in enumerate(crowd):
        world.enrol(f"Client {number}", mobile)
    world.now = WEDNESDAY
    world.plan()
    world.send()
    world.pass_time(minutes=5)
    keep(world, *(inbound("done pain 2", f"SM{n}", world, address=mobile) for n, mobile in enumerate(crowd)))
    alone: list[int] = []
    monkeypatch.setattr(receive, "handle_each", lambda _db, ids, *_: alone.extend(ids) or 0)

    assert receive.handle_waiting(world.db, world.now) == len(crowd)
    assert {row.reading["pain"] for row in world.rows(Report)} == {2}
    assert len(world.rows(Report)) == len(crowd)
    assert alone == []
