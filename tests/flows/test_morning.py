"""The morning question: on its own, inside a reminder, three mornings at most, and what its answers lead to."""

from datetime import UTC, date, datetime

import pytest

from reminders.errors import SendError
from reminders.flows import deliver, morning, page, pause
from reminders.store.tables import Client, ExerciseSession, Question
from tests.clinic import ANA, World
from tests.flows.rounds import go, sent, started, until

pytestmark = pytest.mark.weeks

THURSDAY = datetime(2027, 3, 4, 14, 0, tzinfo=UTC)


def mornings(world: World) -> list[str]:
    return [(row.accepted_at or row.created_at).strftime("%a") for row in sent(world, ANA, "morning")]


def test_it_is_asked_the_morning_after_a_session_at_up_at_her_hour(world: World) -> None:
    ana = started(world)
    world.hear("Y4")

    until(world, datetime(2027, 3, 4, 13, 29, tzinfo=UTC))
    assert mornings(world) == []
    until(world, datetime(2027, 3, 4, 13, 30, tzinfo=UTC))

    assert mornings(world) == ["Thu"]
    question = next(one for one in world.rows(Question) if one.kind == "settling")
    assert question.session_id == world.sessions(ana)[0].id


def test_it_is_not_asked_after_a_session_below_up(world: World) -> None:
    started(world)
    world.hear("Y3")
    until(world, THURSDAY)
    assert mornings(world) == []


def test_an_answer_is_a_settling_rating_of_the_earlier_session(world: World) -> None:
    ana = started(world)
    world.hear("Y4")
    until(world, THURSDAY)

    world.hear("3")

    report = world.reports(ana)[-1]
    assert (report.is_settling, report.session_id) == (True, world.sessions(ana)[0].id)
    assert world.sessions(ana)[0].pain == 4
    assert world.client(ana).morning_on is None


def test_while_it_is_high_it_is_asked_again_and_rides_in_the_reminder_of_an_exercise_day(world: World) -> None:
    ana = started(world)
    world.hear("Y4")
    until(world, THURSDAY)
    world.hear("5")

    until(world, datetime(2027, 3, 5, 14, 0, tzinfo=UTC))

    assert mornings(world) == ["Thu"]
    reminder = sent(world, ANA, "reminder")[-1]
    assert "How is your pain this morning" in reminder.body
    world.hear("2")
    assert [one.is_settling for one in world.reports(ana)] == [False, True, True]
    assert world.sessions(ana)[1].pain is None


def test_a_report_beside_it_closes_it_unanswered(world: World) -> None:
    ana = started(world)
    world.hear("Y4")
    until(world, THURSDAY)
    world.hear("5")
    until(world, datetime(2027, 3, 5, 14, 0, tzinfo=UTC))

    world.hear("Y3")

    assert world.sessions(ana)[1].pain == 3
    assert [one.closed_how for one in world.rows(Question) if one.kind == "settling"] == ["answered", "unanswered"]


def test_two_points_above_the_session_the_next_morning_is_pain_up(world: World) -> None:
    started(world)
    world.hear("Y4")
    until(world, THURSDAY)

    world.hear("6")

    assert [(one.rule, one.because[-1]["form"]) for one in world.alerts()] == [("pain_up", "morning_worse")]


def test_a_held_client_is_asked_nothing(world: World) -> None:
    started(world)
    world.hear("Y6")
    until(world, THURSDAY)
    assert mornings(world) == []


def fridays_reminder_is_cut_off(world: World) -> None:
    """Come to Friday's hour; the provider takes the reminder, and its answer is lost."""
    world.now = datetime(2027, 3, 5, 13, 30, tzinfo=UTC)
    world.sms.keeps_unknown = True
    world.sms.errors.append(SendError("cut off", unknown=True))
    go(world)
    world.pass_time(seconds=60)


def daily(world: World) -> int:
    """Let Ana exercise each weekday, and come to Friday morning; Thursday is not reported."""
    ana = started(world, days="mon+tue+wed+thu+fri")
    world.hear("Y1")
    until(world, datetime(2027, 3, 5, 13, 29, tzinfo=UTC))
    return ana


def friday(world: World, ana: int) -> ExerciseSession:
    return next(one for one in world.sessions(ana) if one.on_date == date(2027, 3, 5))


def test_a_question_that_the_reminder_did_not_carry_is_not_opened_by_it(world: World) -> None:
    ana = daily(world)
    fridays_reminder_is_cut_off(world)
    world.hear("yesterday all done, pain 4")  # from now on a morning question is due
    world.pass_time(seconds=61)
    world.send()  # the look-up finds the reminder
    world.pass_time(hours=1)

    world.hear("3")

    assert [row.state for row in world.queued("reminder")][-1] == "accepted"
    assert not [one for one in world.reports(ana) if one.is_settling]
    assert not [one for one in world.rows(Question) if one.kind == "settling"]


def test_a_question_that_the_reminder_carried_is_opened_though_its_cause_was_corrected(world: World) -> None:
    ana = daily(world)
    world.hear("yesterday all done, pain 4")
    world.send()
    fridays_reminder_is_cut_off(world)
    world.hear("no, pain 1 not 4")
    world.pass_time(seconds=61)
    world.send()
    world.pass_time(minutes=5)

    world.hear("2")

    assert (world.reports(ana)[-1].is_settling, friday(world, ana).pain) == (True, None)


def test_a_dose_that_changes_while_its_reminder_is_under_way_is_told_in_the_next(world: World) -> None:
    ana = started(world)
    world.hear("Y1")
    until(world, datetime(2027, 3, 5, 13, 29, tzinfo=UTC))
    world.now = datetime(2027, 3, 5, 13, 30, tzinfo=UTC)
    world.plan()
    claims, _, _ = deliver.claim(world.sender)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        client.news = {"name": "more", "values": {}}

    deliver.hand_over(world.sender, claims)
    assert world.client(ana).news
    until(world, datetime(2027, 3, 8, 14, 0, tzinfo=UTC))

    assert world.client(ana).news == {}


def test_a_pause_that_begins_after_the_claim_stops_it_before_the_call(world: World) -> None:
    ana = started(world)
    world.hear("Y4")
    until(world, datetime(2027, 3, 4, 13, 29, tzinfo=UTC))
    world.now = datetime(2027, 3, 4, 13, 30, tzinfo=UTC)
    with world.db.begin() as tx:
        morning.run(tx, world.now)
    claims, _, _ = deliver.claim(world.sender)
    assert [one.row.kind for one in claims] == ["morning"]
    with world.db.begin() as tx:
        pause.begin(tx, tx.get_one(Client, ana), None, "client", world.now)

    deliver.hand_over(world.sender, claims)

    assert mornings(world) == []
    assert [row.why for row in world.queued("morning")] == ["paused"]


def rides(world: World) -> int:
    """Let the morning question ride in Friday's reminder, about Wednesday's session, and return Ana."""
    ana = started(world)
    world.hear("Y4")
    until(world, THURSDAY)
    world.hear("5")
    until(world, datetime(2027, 3, 5, 14, 0, tzinfo=UTC))
    return ana


@pytest.mark.parametrize("text", ["it is a 7 this morning", "6 this morning", "about a 6 today"])
def test_an_answer_that_names_its_morning_still_goes_to_the_session_asked_about(world: World, text: str) -> None:
    ana = rides(world)

    world.hear(text)

    report = world.reports(ana)[-1]
    assert (report.is_settling, report.session_id) == (True, world.sessions(ana)[0].id)
    assert [one.pain for one in world.sessions(ana)][:2] == [4, None]
    assert [one.because[-1]["form"] for one in world.alerts()] == ["morning_worse"]


def test_on_a_day_without_a_session_it_goes_there_too_and_holds_nobody(world: World) -> None:
    ana = started(world)
    world.hear("Y5")
    until(world, THURSDAY)

    world.hear("6 this morning")

    report = world.reports(ana)[-1]
    assert (report.is_settling, report.session_id) == (True, world.sessions(ana)[0].id)
    assert world.alerts() == []


@pytest.mark.parametrize("text", ["pain 7 during the exercises today", "7 during the squats"])
def test_a_rating_of_the_exercises_is_the_sessions_and_stops_her(world: World, text: str) -> None:
    ana = rides(world)

    world.hear(text)

    assert not world.reports(ana)[-1].is_settling
    assert world.sessions(ana)[1].pain == 7
    assert [one.rule for one in world.alerts()] == ["pain_up"]


def test_a_rating_on_a_sessions_page_is_that_sessions(world: World) -> None:
    ana = rides(world)

    with world.db.begin() as tx:
        session = tx.get(ExerciseSession, world.sessions(ana)[1].id)
        assert session is not None
        made = page.submit(tx, session, "", 7, "", "x1", world.now)

    assert made.kind == "stop_level"
    assert world.sessions(ana)[1].pain == 7
    assert not world.reports(ana)[-1].is_settling
