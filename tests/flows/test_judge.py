"""From a reply to alerts, holds and the answer: every rule once through the whole way, and the edges between them."""

from datetime import timedelta
from typing import Any

import pytest

from reminders.flows import hold
from reminders.store.tables import Client, Clinic, Contact, Flag, Hold
from tests.clinic import ANA, World
from tests.flows.hearing import answers, reminded, templates
from tests.flows.rounds import go, sent, until

STRANGER = "+12025550190"


def change(world: World, table: Any, row_id: int, **values: Any) -> None:
    with world.db.begin() as tx:
        row = tx.get(table, row_id)
        for name, value in values.items():
            setattr(row, name, value)


def rules(world: World) -> list[tuple[str, str]]:
    return [(one.rule, one.level) for one in world.alerts()]


def holds(world: World) -> list[str]:
    return [one.rule for one in world.rows(Hold) if one.ended_at is None]


# reply -> ([(rule, level)], [holds], answer)
REPLIES = {
    "an ordinary report": ("Y3", [], [], "thanks"),
    "up but below stop": ("Y5", [], [], "thanks"),
    "at stop": ("Y6", [("pain_up", "today")], ["pain_up"], "together"),
    "severe": ("Y8", [("severe_pain", "urgent")], ["severe_pain"], "danger_today"),
    "chest pain": (
        "I have chest pain",
        [("chest_or_breathing", "urgent")],
        ["chest_or_breathing"],
        "danger_call_now",
    ),
    "a fall today": (
        "done, but I fell in the kitchen",
        [("fall_or_injury", "urgent")],
        ["fall_or_injury"],
        "danger_today",
    ),
    "fainted": ("I fainted after the exercises", [("faint_or_dizzy", "urgent")], ["faint_or_dizzy"], "danger_call_now"),
    "wants to die": ("I want to end my life", [("crisis", "urgent")], ["crisis"], "crisis"),
    "surgery": (
        "I am in the hospital for surgery",
        [("surgery_or_hospital", "today")],
        ["surgery_or_hospital"],
        "concern",
    ),
}


@pytest.mark.parametrize("case", REPLIES.values(), ids=REPLIES.keys())
def test_what_a_reply_leads_to(world: World, case: tuple[str, list[tuple[str, str]], list[str], str]) -> None:
    text, expected, held, template = case
    reminded(world)

    world.hear(text)

    assert rules(world) == expected
    assert holds(world) == held
    assert templates(world)[:1] == [template]


def test_two_signs_in_one_text_are_two_alerts_and_one_answer(world: World) -> None:
    reminded(world)

    world.hear("I fell and now I have chest pain")

    assert sorted(rules(world)) == [("chest_or_breathing", "urgent"), ("fall_or_injury", "urgent")]
    assert templates(world) == ["danger_call_now"]


def test_the_emergency_number_stands_alone_in_the_first_line_when_minutes_count(world: World) -> None:
    reminded(world)

    world.hear("I have chest pain")
    world.send()

    body = sent(world, ANA, "danger")[0].body
    assert body.splitlines()[0] == "Call 911 now."
    assert "more exercises" in body.splitlines()[1]
    assert "Nobody may read it soon" in body


def test_crisis_wording_says_nothing_of_exercise(world: World) -> None:
    reminded(world)

    world.hear("I want to kill myself")
    world.send()

    body = sent(world, ANA, "danger")[0].body
    assert "988" in body
    assert "911" in body
    assert "exercise" not in body.lower()


def test_danger_at_night_says_when_it_may_be_read_and_follows_an_on_call_name(world: World) -> None:
    reminded(world)
    world.now = world.now.replace(hour=23)  # 18:00 in New York, closed

    world.hear("I fell and broke my wrist")
    world.send()
    assert "before Thursday 8:00 am" in sent(world, ANA, "danger")[0].body

    change(world, Clinic, 1, on_call_email="dee@example.org")
    world.pass_time(minutes=5)
    world.hear("I have chest pain")
    world.send()
    assert "Nobody may read it soon" in sent(world, ANA, "danger")[-1].body


STATES = ("active", "invited", "opted_out", "closed", "held", "paused")


@pytest.mark.parametrize("state", STATES)
def test_danger_words_alert_from_any_known_contact_in_any_state(world: World, state: str) -> None:
    ana = reminded(world)
    put(world, ana, state)
    before = len(world.alerts())

    world.hear("I fell and hit my head")

    raised = [one for one in world.alerts()[before:] if one.rule == "fall_or_injury"]
    assert [(one.level, one.client_id) for one in raised] == [("urgent", ana)]
    assert any(row.alert_id == raised[0].id for row in world.queued("alert"))
    assert templates(world)[-1] == "danger_call_now"


def put(world: World, ana: int, state: str) -> None:
    if state == "held":
        with world.db.begin() as tx:
            hold.open_hold(tx, tx.get(Client, ana), "therapist", "ben@example.org", world.now)  # type: ignore[arg-type]
    elif state == "paused":
        world.hear("away until Sunday, please pause")
        world.pass_time(minutes=5)
    elif state == "opted_out":
        world.hear("STOP")
        world.pass_time(minutes=5)
    elif state != "active":
        change(world, Client, ana, state=state)
        contact = next(one.id for one in world.rows(Contact) if one.client_id == ana)
        change(world, Contact, contact, consent="none" if state == "invited" else "closed")


def test_an_opted_out_client_gets_one_answer_a_day_and_staff_are_told_to_phone(world: World) -> None:
    reminded(world)
    world.hear("STOP")
    world.pass_time(hours=1)

    world.hear("I fell and hit my head")
    world.pass_time(hours=1)
    world.hear("I fell again and hit my head")

    assert templates(world).count("danger_call_now") == 1
    alert = next(one for one in world.alerts() if one.rule == "fall_or_injury")
    assert "one_answer" in alert.because[0]["notes"]


def test_an_unknown_number_with_danger_words_goes_to_the_lead(world: World) -> None:
    reminded(world)

    world.hear("I fell and hit my head", STRANGER)
    world.send()

    alert = world.alerts()[-1]
    assert (alert.client_id, alert.address, alert.level) == (None, STRANGER, "urgent")
    assert {row.to for row in world.queued("alert")} == {"+12025550170", "dee@example.org"}
    body = sent(world, STRANGER, "stranger")[0].body
    assert body.startswith("Call 911 now.")
    assert "+1 202 555 0100" in body


def test_a_shared_phone_alerts_and_holds_everyone_it_may_be_until_staff_says_who(world: World) -> None:
    world.enrol("Eva Ruiz", ANA)
    reminded(world)

    world.hear("fell down the stairs, cannot get up")

    assert [(one.rule, one.one_of_two) for one in world.alerts()] == [("fall_or_injury", True)] * 2
    assert holds(world) == ["fall_or_injury"] * 2


def test_new_back_pain_is_for_today_and_holds_a_client_with_low_bone_density(world: World) -> None:
    reminded(world, precautions="low bone density")

    world.hear("done, pain 2 but I have new back pain")

    assert rules(world) == [("new_back_pain", "today")]
    assert holds(world) == ["new_back_pain"]


def test_the_same_report_twice_adds_to_the_one_open_alert(world: World) -> None:
    reminded(world)

    world.hear("Y6")
    world.pass_time(minutes=5)
    world.hear("Y7")

    alerts = world.alerts()
    assert [one.rule for one in alerts] == ["pain_up"]
    assert [entry["values"]["pain"] for entry in alerts[0].because] == [6, 7]


def test_a_report_that_says_no_new_rating_judges_none_again(world: World) -> None:
    reminded(world)
    world.hear("Y6")
    world.pass_time(minutes=5)

    world.hear("I did 2x10")

    assert len(world.alerts()[0].because) == 1


def test_a_therapist_may_choose_easy_days_instead_of_a_hold(world: World) -> None:
    ana = reminded(world)
    change(world, Client, ana, stop_with_easy_days=True)

    world.hear("Y6")

    assert holds(world) == []
    assert world.client(ana).easy_until_alert_closed
    assert rules(world) == [("pain_up", "today")]


def test_levels_of_one_client_are_hers_alone(world: World) -> None:
    ana = reminded(world)
    change(world, Client, ana, levels={"stop_floor": 5, "severe": 9})

    world.hear("Y8")

    assert rules(world) == [("pain_up", "today")]


def test_a_rating_without_a_session_is_judged_like_one(world: World) -> None:
    ana = reminded(world)
    world.hear("Y1")
    world.pass_time(days=1)

    world.hear("my knee pain is 7 today")

    assert rules(world) == [("pain_up", "today")]
    assert world.client(ana).usual_pain is None


def test_flags_are_kept_with_their_grade(world: World) -> None:
    reminded(world)

    world.hear("I have a fever and I fell")

    kept = {(one.kind, one.grade) for one in world.rows(Flag)}
    assert ("fever", "today") in kept
    assert any(kind == "fall_or_injury" for kind, _ in kept)


def test_her_own_death_withdraws_everything_and_holds(world: World) -> None:
    ana = reminded(world)
    go(world)

    world.hear("This is her son. My mother passed away last night.")

    assert rules(world) == [("death", "today")]
    assert world.client(ana).died_on is not None
    waiting = [row.kind for row in world.queued() if row.client_id == ana and row.state == "waiting"]
    assert waiting == ["sympathy"]


def test_hold_during_a_pause_outlasts_it(world: World) -> None:
    ana = reminded(world)
    world.hear("I am away until Sunday")
    world.pass_time(minutes=5)
    world.hear("I fell and hit my head")

    until(world, world.now + timedelta(days=8), hours=12)

    assert holds(world) == ["fall_or_injury"]
    assert {one.state for one in world.sessions(ana)[1:] if one.queued_at} == {"held"}
    assert [row.kind for row in sent(world, ANA) if row.kind == "reminder"] == ["reminder"]


def test_nobody_held_gets_exercises_whatever_rule_held_her(world: World) -> None:
    ana = reminded(world)
    before = len(sent(world, ANA, "reminder"))
    world.hear("Y9")

    until(world, world.now + timedelta(days=7), hours=8)

    assert len(sent(world, ANA, "reminder")) == before
    assert {one.state for one in world.sessions(ana)[1:] if one.queued_at} == {"held"}
    assert answers(world)
