"""When sessions are planned, and what a session becomes at its hour."""

from datetime import UTC, date, datetime, timedelta

from reminders.flows import plan
from reminders.flows.hold import open_hold
from reminders.store.tables import Client, Clinic, ClinicNote, ExerciseSession, Pause
from tests.clinic import World

MONDAY = datetime(2027, 3, 1, 15, 0, tzinfo=UTC)
WEDNESDAY_HOUR = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)


def test_the_first_session_is_the_first_exercise_day_after_she_became_active(world: World) -> None:
    ana = world.enrol()

    assert [(one.on_date, one.state) for one in world.sessions(ana)] == [(date(2027, 3, 3), "planned")]


def test_at_its_hour_a_session_gets_one_reminder_and_the_next_is_planned(world: World) -> None:
    ana = world.enrol()
    world.now = WEDNESDAY_HOUR

    assert world.plan() == 1
    assert world.plan() == 0

    assert [one.key for one in world.queued("reminder")] == [f"reminder:{ana}:2027-03-03:1"]
    assert [one.on_date for one in world.sessions(ana)] == [date(2027, 3, 3), date(2027, 3, 5)]


def test_a_minute_before_its_hour_nothing_is_planned(world: World) -> None:
    world.enrol()
    world.now = WEDNESDAY_HOUR - timedelta(minutes=1)

    assert world.plan() == 0
    assert not world.queued("reminder")


def test_a_reminder_more_than_four_hours_late_is_unsent_and_the_operator_is_told_once(world: World) -> None:
    ana, bea = world.enrol(), world.enrol("Bea Lind", "+12025550102")
    world.now = WEDNESDAY_HOUR + timedelta(hours=4, seconds=1)

    world.plan()

    assert [world.sessions(one)[0].state for one in (ana, bea)] == ["unsent", "unsent"]
    assert len(world.queued("operator")) == 1
    assert not world.alerts()


def test_a_reminder_after_her_window_is_unsent(world: World) -> None:
    ana = world.enrol(time="19:30")
    world.now = datetime(2027, 3, 4, 1, 0, tzinfo=UTC)  # 20:00 in New York

    world.plan()

    assert world.sessions(ana)[0].state == "unsent"


def test_after_ten_days_away_each_date_gets_its_state_and_only_one_is_ahead(world: World) -> None:
    ana = world.enrol()
    world.now = MONDAY + timedelta(days=10)

    world.plan()

    states = [(one.on_date.isoformat(), one.state) for one in world.sessions(ana)]
    assert states == [
        ("2027-03-03", "unsent"),
        ("2027-03-05", "unsent"),
        ("2027-03-08", "unsent"),
        ("2027-03-10", "unsent"),
        ("2027-03-12", "planned"),
    ]


def test_a_held_day_is_held_and_the_next_is_planned(world: World) -> None:
    ana = world.enrol()
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        open_hold(tx, client, "therapist", "ben@example.org", world.now)
    world.now = WEDNESDAY_HOUR

    world.plan()

    assert [one.state for one in world.sessions(ana)] == ["held", "planned"]
    assert not world.queued("reminder")


def test_a_paused_day_is_paused(world: World) -> None:
    ana = world.enrol()
    with world.db.begin() as tx:
        tx.add(Pause(client_id=ana, from_on=date(2027, 3, 2), until_on=date(2027, 3, 4), opened_at=world.now))
    world.now = WEDNESDAY_HOUR + timedelta(days=2)

    world.plan()

    assert world.sessions(ana)[0].state == "paused"
    assert [one.session_id for one in world.queued("reminder")] == [world.sessions(ana)[1].id]


def test_on_the_clinics_closed_dates_no_session_is_planned(world: World) -> None:
    with world.db.begin() as tx:
        clinic = tx.get(Clinic, 1)
        assert clinic is not None
        clinic.closed_days = ["2027-03-03"]
        tx.add(clinic)
    ana = world.enrol()

    assert [one.on_date for one in world.sessions(ana)] == [date(2027, 3, 5)]


def test_a_date_closed_after_it_was_planned_has_no_session(world: World) -> None:
    ana = world.enrol()
    with world.db.begin() as tx:
        clinic = tx.get(Clinic, 1)
        assert clinic is not None
        clinic.closed_days = ["2027-03-03"]
        tx.add(clinic)
    world.now = WEDNESDAY_HOUR

    world.plan()

    assert [one.on_date for one in world.sessions(ana)] == [date(2027, 3, 5)]


def test_other_days_count_from_tomorrow_and_a_claimed_date_keeps_its_reminder(world: World) -> None:
    ana = world.enrol()
    world.now = WEDNESDAY_HOUR
    world.plan()
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        from_on = plan.change_schedule(tx, client, "tue+thu", "10:00", "America/New_York", world.now)

    assert from_on == date(2027, 3, 4)
    assert [(one.on_date, one.due_at.hour) for one in world.sessions(ana)] == [
        (date(2027, 3, 3), 13),
        (date(2027, 3, 4), 15),
    ]


def test_a_change_on_an_exercise_day_before_its_hour_leaves_that_day_as_it_is(world: World) -> None:
    ana = world.enrol()
    world.now = WEDNESDAY_HOUR - timedelta(hours=1)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        plan.change_schedule(tx, client, "tue+thu", "10:00", "America/New_York", world.now)
    world.now = WEDNESDAY_HOUR

    world.plan()

    assert [one.on_date for one in world.sessions(ana)] == [date(2027, 3, 3), date(2027, 3, 4)]
    assert len(world.queued("reminder")) == 1


def test_a_day_that_waits_for_a_report_closes_by_the_days_and_hour_that_hold_now(world: World) -> None:
    ana = world.enrol()
    world.now = WEDNESDAY_HOUR
    world.plan()
    world.send()
    closes = [world.sessions(ana)[0].closes_at]
    for days, hour in (("thu", "10:00"), ("mon", "09:00")):
        with world.db.begin() as tx:
            plan.change_schedule(tx, tx.get_one(Client, ana), days, hour, "America/New_York", world.now)
        closes.append(world.sessions(ana)[0].closes_at)

    friday, thursday = WEDNESDAY_HOUR + timedelta(days=2), datetime(2027, 3, 4, 15, 0, tzinfo=UTC)
    assert closes == [friday, thursday, datetime(2027, 3, 5, 17, 0, tzinfo=UTC)]  # the last is noon in New York


def test_a_move_counts_from_the_day_after_today_where_she_is_now(world: World) -> None:
    ana = world.enrol()
    world.now = datetime(2027, 3, 4, 4, 0, tzinfo=UTC)  # Wednesday 23:00 in New York, Thursday 13:00 in Tokyo

    with world.db.begin() as tx:
        from_on = plan.change_schedule(tx, tx.get_one(Client, ana), "thu+fri", "10:00", "Asia/Tokyo", world.now)

    assert from_on == date(2027, 3, 5)


def test_a_program_that_has_ended_plans_nothing(world: World) -> None:
    ana = world.enrol()
    world.now = MONDAY + timedelta(weeks=12, days=3)

    world.plan()

    last = max(one.on_date for one in world.sessions(ana))
    assert last <= date(2027, 5, 24)
    assert not world.rows(ExerciseSession, client_id=ana, state="planned")


def test_texts_and_mail_are_two_reminders_of_one_session(world: World) -> None:
    ana = world.enrol(email="ana@example.org", channel="sms+email")
    world.now = WEDNESDAY_HOUR

    world.plan()

    reminders = world.queued("reminder")
    assert [one.channel for one in reminders] == ["sms", "email"]
    assert {one.session_id for one in reminders} == {world.sessions(ana)[0].id}


def test_an_address_that_never_answered_is_stopped_after_three_reminders_and_the_desk_alone_is_told(
    world: World,
) -> None:
    ana = world.enrol(confirmed=False)
    for day in range(14):
        world.now = WEDNESDAY_HOUR + timedelta(days=day)
        world.plan()
        world.send()

    states = [one.state for one in world.sessions(ana)]
    assert states[:4] == ["reminded", "reminded", "reminded", "paused"]
    assert set(states[4:]) == {"paused", "planned"}
    assert [one.words for one in world.rows(ClinicNote, client_id=ana)] == ["never answered"]
    assert not world.alerts()


def test_an_answer_brings_the_reminders_back(world: World) -> None:
    ana = world.enrol(confirmed=False)
    for day in range(9):
        world.now = WEDNESDAY_HOUR + timedelta(days=day)
        world.plan()
        world.send()
    world.hear("Y2")
    world.now = WEDNESDAY_HOUR + timedelta(days=9)
    world.plan()
    world.send()

    assert [one.state for one in world.sessions(ana) if one.on_date == date(2027, 3, 12)] == ["reminded"]
