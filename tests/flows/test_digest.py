from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from sqlmodel import col, select

from reminders.core.languages import LANGUAGES
from reminders.flows import digest
from reminders.store.tables import (
    Client,
    ClientProgram,
    Clinic,
    Digest,
    ExerciseSession,
    Flag,
    Hold,
    InboundRow,
    Outbound,
    Question,
    Staff,
)
from reminders.texts import Texts
from tests.clinic import ANA, World

MONDAY_7 = datetime(2027, 3, 15, 11, 0, tzinfo=UTC)  # 07:00 in New York, the day after the clocks went forward
WEEK = "2027-W10"


def make(world: World, now: datetime = MONDAY_7) -> int:
    world.now = now
    return digest.run(world.db, Texts(), now)


def with_record(world: World, name: str = "Ana Ruiz") -> int:
    """Enrol a client and give her a week: done with pain 3, then a fall."""
    client_id = world.enrol(name)
    with world.db.begin() as tx:
        for on, state, pain in ((date(2027, 3, 8), "done", 3), (date(2027, 3, 10), "missed", None)):
            due_at = datetime(on.year, on.month, on.day, 13, 30, tzinfo=UTC)
            tx.add(ExerciseSession(client_id=client_id, on_date=on, due_at=due_at, state=state, pain=pain))
        at = datetime(2027, 3, 10, 15, 0, tzinfo=UTC)
        tx.add(Flag(client_id=client_id, kind="fall_or_injury", grade="urgent", at=at))
        tx.add(Hold(client_id=client_id, rule="fall_or_injury", opened_at=at))
    return client_id


def test_it_is_made_at_seven_on_monday_clinic_time_and_not_a_minute_before(world: World) -> None:
    with_record(world)
    make(world, MONDAY_7 - timedelta(minutes=1))
    before = [row.week for row in world.rows(Digest)]

    assert make(world) == 1
    assert before == ["2027-W09"]
    assert [row.week for row in world.rows(Digest)] == ["2027-W09", WEEK]


def test_running_again_or_late_makes_it_once(world: World) -> None:
    with_record(world)

    assert make(world, MONDAY_7 + timedelta(days=3)) == 1
    assert make(world, MONDAY_7 + timedelta(days=4)) == 0
    assert len(world.rows(Digest, week=WEEK)) == 1
    assert len(world.rows(Outbound, kind="digest")) == 1


def test_after_a_stop_over_two_mondays_both_weeks_are_made(world: World) -> None:
    with_record(world)
    make(world)

    assert make(world, MONDAY_7 + timedelta(days=14)) == 2
    assert [row.week for row in world.rows(Digest)] == [WEEK, "2027-W11", "2027-W12"]


def test_a_recheck_that_is_due_is_named_whenever_the_last_one_was(world: World) -> None:
    client_id = with_record(world)
    with world.db.begin() as tx:
        version = tx.exec(select(ClientProgram).where(ClientProgram.client_id == client_id)).one()
        version.rechecked_on, version.recheck_on = date(2027, 3, 2), date(2027, 3, 12)

    make(world)

    assert world.rows(Digest)[0].values["clients"][0]["recheck_on"] == "2027-03-12"


def test_a_crash_before_the_mark_was_set_makes_nothing_twice(world: World) -> None:
    with_record(world)
    make(world)
    with world.db.begin() as tx:
        mark = tx.get(digest.marks.Mark, "digests 1")
        assert mark is not None
        mark.value = "2027-W09"

    assert make(world) == 0
    assert len(world.rows(Digest, week=WEEK)) == 1


def test_it_is_kept_as_it_was_made(world: World) -> None:
    client_id = with_record(world)
    make(world)
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        client.name = "Ana Vega"

    (kept,) = world.rows(Digest, week=WEEK)
    assert "Ana Ruiz" in kept.text
    assert kept.values["clients"][0]["week"]["done"] == 1


def test_the_mail_has_initials_and_no_rating_unless_the_clinic_switched_them_on(world: World) -> None:
    client_id = with_record(world)
    make(world)
    world.send()

    (mail,) = [one for one in world.email.sent if one.key.startswith("digest:")]
    assert f"A.R. (client {client_id})" in mail.body
    assert "Ruiz" not in mail.body + mail.html + mail.subject
    assert "last 3" not in mail.body + mail.html
    assert mail.to == "ben@example.org"


def test_the_mail_carries_ratings_where_the_clinic_switched_them_on(world: World) -> None:
    with_record(world)
    with world.db.begin() as tx:
        clinic = tx.get(Clinic, 1)
        assert clinic is not None
        clinic.words_in_mail = True
    make(world)
    world.send()

    (mail,) = [one for one in world.email.sent if one.key.startswith("digest:")]
    assert "last 3" in mail.body
    assert "last 3" in mail.html


def test_her_cover_gets_it_too_while_the_therapist_is_away(world: World) -> None:
    with_record(world)
    with world.db.begin() as tx:
        ben = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        cover = Staff(clinic_id=ben.clinic_id, role="therapist", name="Dee Orr", email="dee.cover@example.org")
        tx.add(cover)
        tx.flush()
        ben.cover_id, ben.cover_from_on, ben.cover_until_on = cover.id, date(2027, 3, 12), date(2027, 3, 20)
    make(world)

    assert {row.to for row in world.rows(Outbound, kind="digest")} == {"ben@example.org", "dee.cover@example.org"}


def test_a_therapist_of_another_clinic_is_told_nothing_of_ana(world: World) -> None:
    with_record(world)
    make(world)

    assert all("Ana" not in row.text for row in world.rows(Digest) if row.therapist_id != 1)
    assert "cleo@example.org" not in {row.to for row in world.rows(Outbound, kind="digest")}


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_name_with_signs_of_markup_stays_a_name(world: World, language: str) -> None:
    with_record(world, "Ana <b>Ruiz</b> & Co")
    with world.db.read() as tx:
        clinic = tx.get(Clinic, 1)
        ben = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        assert clinic is not None
        values = digest.computed(tx, clinic, ben, WEEK, MONDAY_7)
    shown = {
        "digest": digest.with_words(values, language),
        "shows_words": True,
        "discreet": False,
        "clinic": "Harbor Street Clinic",
        "phone": "+1 202 555 0100",
        "language": language,
    }
    mail = Texts().mail("digest", language, shown)

    assert "<b>" not in mail.html
    assert "Ana &lt;b&gt;Ruiz&lt;/b&gt; &amp; Co" in mail.html
    assert "Ana <b>Ruiz</b> & Co" in mail.text


def test_falls_that_she_counted_when_asked_are_told(world: World) -> None:
    client_id = with_record(world)
    asked_at, answered_at = datetime(2027, 3, 11, 15, 0, tzinfo=UTC), datetime(2027, 3, 11, 16, 0, tzinfo=UTC)
    with world.db.begin() as tx:
        question = Question(client_id=client_id, address=ANA, kind="falls", asked_at=asked_at, lapses_at=MONDAY_7)
        question.closed_at, question.closed_how = answered_at, "answered"
        reply = InboundRow(source="sms", provider_id="SM1", address=ANA, text="2", raw=b"", received_at=answered_at)
        reply.kept_at, reply.handled_at, reply.client_id, reply.reading = (
            answered_at,
            answered_at,
            client_id,
            {"choice": "2"},
        )
        tx.add_all([question, reply])
    make(world)

    (kept,) = world.rows(Digest, week=WEEK)
    assert kept.values["clients"][0]["falls"] == 2
    assert "Falls told: 2" in kept.text


def test_who_was_enrolled_after_the_week_is_left_out(world: World) -> None:
    world.now = MONDAY_7
    world.enrol()

    assert make(world) == 0


def test_who_was_closed_before_the_week_is_left_out(world: World) -> None:
    gone = with_record(world)
    with world.db.begin() as tx:
        client = tx.get(Client, gone)
        assert client is not None
        client.state, client.closed_at = "closed", datetime(2027, 3, 7, 20, 0, tzinfo=UTC)

    assert make(world) == 0


def test_a_sign_of_this_very_instant_is_in_the_digest_of_now_and_one_of_monday_morning_in_the_next(
    world: World,
) -> None:
    client_id = with_record(world)
    ends = datetime(2027, 3, 15, 4, 0, tzinfo=UTC)  # Monday 00:00 in New York
    now = datetime(2027, 3, 12, 15, 0, tzinfo=UTC)
    with world.db.begin() as tx:
        for kind, at in (("fever", now), ("crisis", ends)):
            tx.add(Flag(client_id=client_id, kind=kind, grade="today", at=at))
    said = {at: [flag["kind"] for flag in row_of(world, at)["flags"]] for at in (now, ends)}
    assert said == {now: ["fall_or_injury", "fever"], ends: ["fall_or_injury", "fever"]}


def test_her_usual_and_her_last_rating_reach_further_back_than_the_sessions_that_are_counted(world: World) -> None:
    client_id = world.enrol(usual_pain="1")
    with world.db.begin() as tx:
        for week in range(20, 8, -1):
            on = MONDAY_7.date() - timedelta(weeks=week)
            session = ExerciseSession(client_id=client_id, on_date=on, due_at=MONDAY_7, state="done", pain=week % 10)
            tx.add(session)
    pain = row_of(world, MONDAY_7)["pain"]
    assert (pain["usual"], pain["last"], pain["last_on"]) == (
        4.5,
        9,
        (MONDAY_7 - timedelta(weeks=9)).date().isoformat(),
    )


def row_of(world: World, now: datetime) -> dict[str, Any]:
    with world.db.read() as tx:
        clinic = tx.exec(select(Clinic).order_by(col(Clinic.id))).first()
        ben = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        assert clinic is not None
        (row,) = digest.computed(tx, clinic, ben, WEEK, now)["clients"]
    return dict(row)
