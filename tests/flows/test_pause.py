"""Pauses: begun, ended, bounded, and beside a hold."""

from datetime import UTC, date, datetime, timedelta

import pytest

from reminders.flows import hold, pause, questions
from reminders.flows.pause import end_named
from reminders.store.tables import Client, Hold, Pause, Question
from tests.clinic import ANA, World
from tests.flows.hearing import answers, reminded, templates

TODAY = date(2027, 3, 3)  # a Wednesday
NAMED = {
    "a date": ("2027-03-20", date(2027, 3, 20)),
    "a weekday is the next one": ("fri", date(2027, 3, 5)),
    "today's weekday is a week from now": ("wed", date(2027, 3, 10)),
    "today is no end": ("2027-03-03", None),
    "the past is no end": ("2027-02-01", None),
    "no date": ("soon", None),
    "a count": (3, None),
    "nothing": (None, None),
}


@pytest.mark.parametrize(("said", "expected"), NAMED.values(), ids=NAMED)
def test_the_last_paused_day_that_a_reply_names(said: str | int | None, expected: date | None) -> None:
    assert end_named(said, TODAY) == expected


def begin(world: World, client_id: int, until: date | None, from_on: date | None = None) -> Pause:
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        return pause.begin(tx, client, until, "client", world.now, from_on=from_on)


def test_a_pause_without_a_date_is_14_days_and_one_question(world: World) -> None:
    ana = reminded(world)

    world.hear("I am going away for a while, please pause")

    row = world.rows(Pause, client_id=ana)[0]
    assert (row.from_on, row.until_on) == (TODAY, TODAY + timedelta(days=13))
    assert templates(world) == ["ask_until"]
    assert [one.kind for one in world.rows(Question)] == ["until"]


def test_until_when_is_asked_once(world: World) -> None:
    reminded(world)

    world.hear("please pause")
    world.pass_time(minutes=2)
    world.hear("please pause my reminders")

    assert templates(world) == ["ask_until", "said_back_pause"]


def test_the_open_session_of_the_day_is_paused_unless_it_is_done(world: World) -> None:
    ana = reminded(world)
    begin(world, ana, None)
    assert world.sessions(ana)[0].state == "paused"


def test_a_done_session_stays_done(world: World) -> None:
    ana = reminded(world)
    world.hear("Y2")
    begin(world, ana, None)
    assert world.sessions(ana)[0].state == "done"


def test_days_in_a_pause_are_paused_and_nothing_is_sent(world: World) -> None:
    ana = reminded(world)
    begin(world, ana, date(2027, 3, 8))
    before = len(world.sms.sent)

    for day in (5, 8, 10):
        world.now = datetime(2027, 3, day, 13, 30, tzinfo=UTC)
        world.plan()
        world.send()

    states = [(one.on_date.day, one.state) for one in world.sessions(ana)]
    assert states == [(3, "paused"), (5, "paused"), (8, "paused"), (10, "reminded"), (12, "planned")]
    assert len(world.sms.sent) == before + 1


def test_a_pause_is_90_days_at_most(world: World) -> None:
    ana = reminded(world)

    assert begin(world, ana, date(2028, 1, 1)).until_on == TODAY + timedelta(days=89)


def test_a_second_pause_changes_the_running_one(world: World) -> None:
    ana = reminded(world)
    begin(world, ana, date(2027, 3, 10))

    begin(world, ana, date(2027, 3, 20))

    assert [one.until_on for one in world.rows(Pause, client_id=ana)] == [date(2027, 3, 20)]


def test_no_report_ends_a_pause_of_her_own_that_followed_the_services(world: World) -> None:
    ana = reminded(world)
    with world.db.begin() as tx:
        pause.begin(tx, tx.get_one(Client, ana), None, "service", world.now, reason="quiet")
    world.hear("I am travelling, please pause until 2027-03-25")
    world.pass_time(days=2)

    world.hear("Did my exercises at the hotel, all of it, pain 2")

    row = world.rows(Pause, client_id=ana)[0]
    assert (row.until_on, row.by, row.ended_at) == (date(2027, 3, 25), "client", None)


def test_coming_back_ends_the_pause_and_names_the_next_day(world: World) -> None:
    ana = reminded(world)
    begin(world, ana, None)
    world.pass_time(minutes=5)

    world.hear("I'm back")

    assert world.rows(Pause, client_id=ana)[0].ended_by == "client"
    assert answers(world)[-1].template == "said_back_resume"
    assert answers(world)[-1].details["next"] == "Fri Mar 5"
    assert world.sessions(ana)[0].state == "paused"  # its hour had passed


def test_a_pause_that_ends_before_the_days_hour_lets_the_reminder_go(world: World) -> None:
    ana = world.enrol()
    world.now = datetime(2027, 3, 3, 11, 0, tzinfo=UTC)
    begin(world, ana, None)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        assert pause.end(tx, client, "client", world.now)
        assert not pause.end(tx, client, "client", world.now)
    world.now = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)

    world.plan()
    world.send()

    assert world.sessions(ana)[0].state == "reminded"


def test_under_a_hold_coming_back_waits_for_the_therapist(world: World) -> None:
    ana = reminded(world)
    begin(world, ana, None)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        hold.open_hold(tx, client, "therapist", "ben@example.org", world.now)
    world.pass_time(minutes=5)

    world.hear("I'm back")

    assert world.rows(Pause, client_id=ana)[0].ended_at is not None
    assert templates(world) == ["said_back_held"]


HOLD_ONLY = {
    "surgery on a named day": "surgery on Thursday",
    "a pause until a day": "pause until Friday, I have surgery",
    "hospital": "please pause, I am going to the hospital tomorrow",
    "a fracture": "please pause my reminders, I broke my hip",
}


@pytest.mark.parametrize("text", HOLD_ONLY.values(), ids=HOLD_ONLY)
def test_surgery_hospital_and_fracture_hold_whatever_pause_she_asked_for(world: World, text: str) -> None:
    ana = reminded(world)

    world.hear(text)

    assert world.rows(Hold, client_id=ana)
    assert world.rows(Pause) == []
    assert world.rows(Question) == []


@pytest.mark.parametrize("kind", ["reason", "until"])
def test_surgery_told_in_answer_to_a_question_holds_and_pauses_nothing(world: World, kind: str) -> None:
    ana = reminded(world)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        questions.ask(tx, kind, ANA, client, world.now)

    world.hear("I am away until Friday for surgery")

    assert [one.rule for one in world.rows(Hold, client_id=ana)] == ["surgery_or_hospital"]
    assert world.rows(Pause) == []
