"""What is added to an alert that is there: corrections, which downward end nothing, and severe pain."""

from reminders.flows import alert, judge
from reminders.store.tables import Alert, Client, Clinic, ExerciseSession, Report
from tests.clinic import World
from tests.flows.hearing import reminded
from tests.flows.test_judge import holds, rules


def test_a_correction_below_the_level_is_added_and_told_but_closes_nothing(world: World) -> None:
    ana = reminded(world)
    world.hear("Y9")
    world.send()
    world.pass_time(minutes=5)

    world.hear("sorry, pain 2 not 9")

    assert world.sessions(ana)[0].pain == 2
    alert = world.alerts()[0]
    assert (alert.state, alert.rule) == ("open", "severe_pain")
    assert alert.because[-1]["form"] == "corrected"
    assert holds(world) == ["severe_pain"]
    told = [row for row in world.queued("alert") if row.details.get("corrected")]
    assert {row.to for row in told} == {"+12025550150", "ben@example.org"}


def test_a_correction_upward_raises_as_a_new_rating_would(world: World) -> None:
    reminded(world)
    world.hear("Y2")
    assert rules(world) == []
    world.pass_time(minutes=5)

    world.hear("sorry, pain 7 not 2")

    assert rules(world) == [("pain_up", "today")]


def test_a_correction_by_staff_is_judged_like_any(world: World) -> None:
    ana = reminded(world)
    world.hear("Y2")
    session = world.sessions(ana)[0]

    with world.db.begin() as tx:
        clinic, client = tx.get(Clinic, 1), tx.get(Client, ana)
        row = tx.get(ExerciseSession, session.id)
        report = Report(
            client_id=ana,
            session_id=session.id,
            at=world.now,
            channel="staff",
            text="she meant 8",
            reading={"pain": 8},
            by="ben@example.org",
        )
        tx.add(report)
        tx.flush()
        row.pain = 8  # type: ignore[union-attr]
        made = judge.judge_report(tx, clinic, client, row, report, world.now)  # type: ignore[arg-type]
    assert made.held
    assert rules(world) == [("severe_pain", "urgent")]


def test_severe_pain_is_added_to_an_open_pain_is_up_and_opens_none(world: World) -> None:
    reminded(world)
    world.hear("Y6")
    world.pass_time(minutes=5)

    world.hear("pain is 9 now")

    assert sorted(rules(world)) == [("pain_up", "today"), ("severe_pain", "urgent")]
    pain_up = next(one for one in world.alerts() if one.rule == "pain_up")
    assert [one["form"] for one in pain_up.because] == ["stop", "severe_too"]
    assert alert.sentences(pain_up)[-1] == "Severe pain 9 on Wed Mar 3: see that alert."


def test_a_correction_of_pain_up_comes_with_the_next_note_and_an_acknowledged_one_stays_so(world: World) -> None:
    reminded(world)
    world.hear("Y7")
    world.pass_time(minutes=5)
    first = world.alerts()[0].next_step_at

    world.hear("sorry, pain 3 not 7")
    one = world.alerts()[0]
    assert (one.state, one.because[-1]["form"], one.next_step_at) == ("open", "corrected", first)

    with world.db.begin() as tx:
        row = tx.get(Alert, one.id)
        assert row is not None
        alert.acknowledge(tx, row, "ben@example.org", "link", world.now)
    world.pass_time(minutes=5)
    world.hear("sorry, pain 1 not 3")
    assert world.alerts()[0].state == "acknowledged"


def test_a_rating_of_a_session_over_a_week_ago_raises_nothing(world: World) -> None:
    ana = reminded(world)
    world.hear("Y2")
    session = world.sessions(ana)[0]
    world.pass_time(days=8)
    with world.db.begin() as tx:
        row = tx.get(ExerciseSession, session.id)
        assert row is not None
        row.pain = 7
        report = Report(
            client_id=ana, session_id=row.id, at=world.now, channel="staff", text="7", reading={"pain": 7}, by="b@x"
        )
        tx.add(report)
        tx.flush()
        judge.judge_report(tx, tx.get(Clinic, 1), tx.get(Client, ana), row, report, world.now)  # type: ignore[arg-type]
    assert world.alerts() == []
