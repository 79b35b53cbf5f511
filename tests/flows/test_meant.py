"""Which report a correction puts right: her newest of any kind; where it may be one of two she is asked."""

from datetime import UTC, datetime, timedelta

from reminders.flows import receive
from reminders.store.tables import Hold, Question
from tests.clinic import World
from tests.flows.hearing import inbound, keep, reminded, templates
from tests.flows.rounds import go, until

THURSDAY = datetime(2027, 3, 4, 14, 0, tzinfo=UTC)


def asked_in_the_morning(world: World, said: str = "done pain 5") -> int:
    """Let Ana, who exercises daily, report Tuesday's session; Wednesday's reminder asks for the morning."""
    ana = world.enrol(days="mon+tue+wed+thu+fri+sat+sun")
    go(world)
    until(world, datetime(2027, 3, 2, 13, 30, tzinfo=UTC), hours=1)
    world.pass_time(minutes=30)
    world.hear(said)
    until(world, datetime(2027, 3, 3, 13, 35, tzinfo=UTC), hours=1)
    world.pass_time(minutes=10)
    return ana


def pains(world: World, ana: int) -> list[int | None]:
    return [one.pain for one in world.sessions(ana)]


def test_a_morning_rating_is_put_right_as_one(world: World) -> None:
    ana = asked_in_the_morning(world)
    world.hear("6")
    first = world.reports(ana)[-1]
    world.pass_time(minutes=5)

    world.hear("sorry I meant 2")

    assert pains(world, ana)[0] == 5
    made = world.reports(ana)[-1]
    assert (made.is_settling, made.session_id, made.replaces) == (True, first.session_id, first.id)
    assert templates(world)[-1] == "thanks_settling"


def test_the_alert_of_a_morning_rating_hears_of_its_correction_and_stays(world: World) -> None:
    asked_in_the_morning(world)
    world.hear("7")
    assert [one.because[-1]["form"] for one in world.alerts()] == ["morning_worse"]
    world.pass_time(minutes=5)

    world.hear("sorry I meant 2")

    alert = world.alerts()[0]
    assert (alert.state, alert.because[-1]["form"]) == ("open", "corrected")
    assert alert.because[-1]["values"] == {"pain": 2, "before": 7}


def test_a_rating_of_no_session_is_put_right_and_wednesdays_stays(world: World) -> None:
    ana = reminded(world)
    world.hear("done pain 3")
    world.now = THURSDAY
    world.hear("pain 9 today")
    world.pass_time(minutes=5)

    world.hear("Sorry, I meant 2")

    assert pains(world, ana)[0] == 3
    first, made = world.reports(ana)[-2:]
    assert (made.session_id, made.replaces) == (None, first.id)
    assert [one.because[-1]["form"] for one in world.alerts()] == ["corrected"]


def test_upward_a_rating_of_no_session_is_judged_and_wednesdays_stays(world: World) -> None:
    ana = reminded(world)
    world.hear("done pain 3")
    world.now = THURSDAY
    world.hear("pain 2 today")
    world.pass_time(minutes=5)

    world.hear("Sorry, I meant 7")

    assert pains(world, ana)[0] == 3
    assert [one.rule for one in world.alerts()] == ["pain_up"]


def test_a_session_told_again_with_the_rating_that_was_wrong_is_that_session(world: World) -> None:
    ana = asked_in_the_morning(world, "done 2x10 pain 3")

    world.hear("Sorry, I did 2 sets and pain 2, not 3")

    assert pains(world, ana)[:2] == [2, None]
    assert [one.state for one in world.sessions(ana)][:2] == ["done", "reminded"]


def test_a_correction_that_may_be_todays_report_is_asked_about_and_changes_nothing(world: World) -> None:
    ana = asked_in_the_morning(world, "done 2x10 pain 3")

    world.hear("Correction: done 2x10 pain 1")

    assert pains(world, ana)[:2] == [3, None]
    assert [one.state for one in world.sessions(ana)][:2] == ["done", "reminded"]
    assert templates(world)[-1] == "ask_meaning"
    world.pass_time(minutes=2)
    world.hear("Y1")
    assert pains(world, ana)[:2] == [3, 1]


def test_while_the_morning_question_is_open_it_may_be_its_answer_and_is_asked(world: World) -> None:
    ana = asked_in_the_morning(world)

    world.hear("Sorry, I meant 2")

    assert pains(world, ana)[0] == 5
    assert not any(one.is_settling for one in world.reports(ana))
    assert templates(world)[-1] == "ask_meaning"
    assert [one.kind for one in world.rows(Question) if one.closed_at is None] == ["meaning"]


def test_beside_the_open_morning_question_a_rating_taken_back_is_put_right(world: World) -> None:
    ana = asked_in_the_morning(world)

    world.hear("Sorry, pain 2 not 5")

    assert pains(world, ana)[0] == 2
    assert [one.closed_how for one in world.rows(Question) if one.kind == "settling"] == ["unanswered"]


def test_a_high_rating_that_may_be_either_is_judged_all_the_same(world: World) -> None:
    ana = asked_in_the_morning(world)

    world.hear("Sorry, I meant 9")

    assert pains(world, ana)[0] == 5
    assert [one.rule for one in world.alerts()] == ["severe_pain"]
    assert len(world.rows(Hold, client_id=ana)) == 1
    assert "ask_meaning" not in templates(world)


def test_a_correction_handled_before_what_it_corrects_counts_and_raises_nothing(world: World) -> None:
    ana = reminded(world)
    sent_at = world.now
    world.pass_time(minutes=5)
    world.hear("Sorry, I meant pain 3")

    keep(world, inbound("done pain 6", "SM-late", world, received_at=sent_at), fetched=True)
    receive.handle_waiting(world.db, world.now)

    assert pains(world, ana)[0] == 3
    assert world.alerts() == []


def test_a_correction_fetched_late_leaves_what_was_told_after_it(world: World) -> None:
    ana = reminded(world)
    world.hear("done pain 6")
    sent_at = world.now + timedelta(minutes=1)
    world.pass_time(minutes=10)
    world.hear("pain 5 now")

    keep(world, inbound("Sorry, I meant pain 3", "SM-late", world, received_at=sent_at), fetched=True)
    receive.handle_waiting(world.db, world.now)

    assert pains(world, ana)[0] == 5
    assert world.reports(ana)[-1].replaces == world.reports(ana)[0].id
