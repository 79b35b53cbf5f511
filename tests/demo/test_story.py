from datetime import timedelta
from pathlib import Path

import pytest
from sqlmodel import col, select

from reminders.demo import account, building, story
from reminders.demo.checks import checks
from reminders.demo.people import PEOPLE
from reminders.demo.story import Story
from reminders.demo.timing import on_grid
from reminders.errors import BadInput
from reminders.store import marks, record, schema
from reminders.store.db import Database
from reminders.store.tables import Alert, Client, Clinic, ExerciseSession, InboundRow, Outbound
from tests.conftest import NOW
from tests.demo.conftest import CLIENTS


def told(story: Story) -> str:
    with story.db.read() as tx:
        return account.account(tx, story.app.texts, PEOPLE[:CLIENTS], building.begins_at(), story.now)


def as_json(story: Story) -> object:
    with story.db.read() as tx:
        clinic = tx.exec(select(Clinic)).one()
        everyone = record.clients_json(tx, clinic.id or 0, story.now)
        sessions = [record.sessions_json(tx, one["id"]) for one in everyone]
        return [everyone, sessions, record.messages_json(tx, 1), record.alerts_json(tx, 1)]


def test_the_same_seed_tells_the_same_story_in_the_same_words(first: Story, again: Story) -> None:
    assert told(first) == told(again)
    assert as_json(first) == as_json(again)


def test_nothing_in_the_record_breaks_what_must_hold(first: Story) -> None:
    with first.db.read() as tx:
        found = checks(tx, tx.exec(select(Clinic)).one())

    assert {one.name: one.broken for one in found if one.broken} == {}
    assert all(one.counted for one in found if one.name != "stop")


def test_the_one_who_falls_is_held_and_her_therapist_is_called(first: Story) -> None:
    with first.db.read() as tx:
        alert = tx.exec(select(Alert).where(Alert.rule == "fall_or_injury")).one()
        client = tx.get(Client, alert.client_id)
        states = tx.exec(select(ExerciseSession.state).where(ExerciseSession.client_id == alert.client_id)).all()

    assert client is not None
    assert client.name == "Winifred Sark"
    assert (alert.level, alert.state) == ("urgent", "closed")
    assert "held" in states


def test_the_account_names_each_client_with_her_habit(first: Story) -> None:
    words = told(first)

    for person in PEOPLE[:CLIENTS]:
        assert person.name in words
        assert person.habit.words[1:] in words


def test_the_account_tells_what_was_written_read_and_answered(first: Story) -> None:
    words = told(first)

    assert '"I fell in the kitchen last night and my hip is very sore"' in words
    assert "DANGER fall or injury" in words
    assert "answered (danger): Do no more" in words
    assert "BROKEN" not in words


def test_the_week_ends_with_a_digest_for_each_therapist(first: Story) -> None:
    with first.db.read() as tx:
        texts = account.last_digests(tx)

    assert len(texts) == 2
    assert all("Week 2027-W01" in text for text in texts)


def test_the_clock_can_go_on_from_the_end(first: Story) -> None:
    with first.db.read() as tx:
        assert marks.worked_through(tx) == first.ends_at


def test_every_text_came_from_a_client(first: Story) -> None:
    with first.db.read() as tx:
        rows = tx.exec(select(InboundRow)).all()

    assert len(rows) == first.arrived
    assert {row.address for row in rows} <= {one.row["mobile"] for one in PEOPLE[:CLIENTS]}


def test_a_database_that_is_no_demo_is_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "demo.db"
    db = Database(f"sqlite:///{path}")
    schema.upgrade(db)
    db.close()
    before = path.read_bytes()

    with pytest.raises(BadInput, match="not a demo"):
        building.clear_away(path)
    assert path.read_bytes() == before


def test_the_demo_of_before_is_cleared_away_with_what_lies_beside_it(tmp_path: Path) -> None:
    path = tmp_path / "demo.db"
    building.build(path, 8000, PEOPLE[:1], 3, building.begins_at).db.close()
    assert (tmp_path / "demo.db.key").stat().st_mode & 0o777 == 0o600

    building.clear_away(path)

    assert list(tmp_path.iterdir()) == []


def test_common_moments_come_six_times_a_day_and_never_before() -> None:
    hours = [NOW + timedelta(minutes=minutes) for minutes in range(0, 2 * 24 * 60, 7)]

    assert len({on_grid(at) for at in hours}) in range(12, 15)
    assert all(on_grid(at) >= at for at in hours)


def test_who_starts_by_herself_is_welcomed_and_reminded(tmp_path: Path) -> None:
    made = story.begin(tmp_path / "demo.db", PEOPLE[-1:], 1, 3, 8000)
    made.live()

    with made.db.read() as tx:
        sent = tx.exec(select(Outbound.kind).where(Outbound.state == "accepted").order_by(col(Outbound.id))).all()
        client = tx.exec(select(Client)).one()
    made.db.close()

    assert client.state == "active"
    assert [kind for kind in sent if kind in ("welcome", "reminder")][:2] == ["welcome", "reminder"]
