"""Alerts that nobody takes: the steps and their minutes, hours and on call, notes, and people who are away."""

from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest

from reminders.core.levels import DEFAULTS
from reminders.errors import SendError
from reminders.flows import escalate
from reminders.store.tables import Clinic, ClinicNote, Staff
from tests.clinic import ANA, BEN, DEE, World
from tests.flows.rounds import calls, go, sent, started, until
from tests.flows.test_alert import acknowledged, raised, the

GUS = "+12025550180"

# minutes since the beginning -> the furthest call whose time has come
FURTHEST = {
    "at once": (0, 0),
    "just before a quarter of an hour": (14.9, 0),
    "a quarter of an hour": (15, 1),
    "half an hour": (30, 2),
    "an hour": (60, 3),
    "before the next": (89, 3),
    "every half hour after": (90, 4),
    "two hours": (120, 5),
}


@pytest.mark.parametrize(("minutes", "step"), FURTHEST.values(), ids=FURTHEST.keys())
def test_the_furthest_step_due(minutes: float, step: int) -> None:
    assert escalate.furthest_step(minutes, DEFAULTS) == step


def change_staff(world: World, email: str, **values: Any) -> int:
    with world.db.begin() as tx:
        from reminders.store import clients

        staff = clients.staff_by_email(tx, email)
        assert staff is not None
        for name, value in values.items():
            setattr(staff, name, value)
        return staff.id or 0


def gus(world: World) -> int:
    with world.db.begin() as tx:
        row = Staff(clinic_id=1, role="therapist", name="Gus Hale", email="gus@example.org", mobile=GUS)
        tx.add(row)
        tx.flush()
        return row.id or 0


def texts(world: World) -> list[str]:
    return [to for to, channel in calls(world) if channel == "sms"]


def step(world: World, minutes: float) -> list[str]:
    before = len(texts(world))
    world.pass_time(minutes=minutes)
    go(world)
    return texts(world)[before:]


def test_therapist_again_cover_lead_and_then_every_half_hour(world: World) -> None:
    ana = started(world)
    change_staff(world, "ben@example.org", cover_id=gus(world))
    world.now = world.now.replace(hour=15)
    raised(world, "fall_or_injury", "urgent", ana)
    assert texts(world) == [BEN]

    assert step(world, 14) == []
    assert step(world, 1) == [BEN]
    assert step(world, 15) == [GUS]
    assert step(world, 29) == []
    assert step(world, 1) == [DEE]
    assert step(world, 30) == [DEE]


def test_running_again_at_the_same_instant_calls_nobody_twice(world: World) -> None:
    ana = started(world)
    world.now = world.now.replace(hour=15)
    raised(world, "fall_or_injury", "urgent", ana)
    assert len(step(world, 15)) == 1
    assert step(world, 0) == []


def test_after_a_gap_only_the_furthest_step_due_goes(world: World) -> None:
    ana = started(world)
    world.now = world.now.replace(hour=15)
    raised(world, "fall_or_injury", "urgent", ana)
    assert step(world, 100) == [DEE]


def test_taken_alerts_are_not_called_on(world: World) -> None:
    ana = started(world)
    world.now = world.now.replace(hour=15)
    acknowledged(world, raised(world, "fall_or_injury", "urgent", ana))
    assert step(world, 120) == []


def test_outside_hours_the_first_call_goes_at_once_and_the_steps_begin_at_opening(world: World) -> None:
    ana = started(world)
    world.now = datetime(2027, 3, 3, 23, 30, tzinfo=UTC)  # 18:30 in New York
    raised(world, "fall_or_injury", "urgent", ana)
    assert texts(world) == [BEN]

    until(world, datetime(2027, 3, 4, 13, 14, tzinfo=UTC))
    assert texts(world) == [BEN]
    assert step(world, 1) == [BEN]


def test_with_an_on_call_name_the_steps_run_at_night(world: World) -> None:
    ana = started(world)
    gus(world)
    with world.db.begin() as tx:
        tx.get(Clinic, 1).on_call_email = "gus@example.org"  # type: ignore[union-attr]
    world.now = datetime(2027, 3, 3, 23, 30, tzinfo=UTC)
    raised(world, "fall_or_injury", "urgent", ana)
    assert texts(world) == [GUS]
    assert step(world, 15) == [GUS]


def test_the_half_hourly_calls_rest_at_night(world: World) -> None:
    ana = started(world)
    world.now = datetime(2027, 3, 3, 20, 30, tzinfo=UTC)  # 15:30 in New York
    raised(world, "fall_or_injury", "urgent", ana)
    until(world, datetime(2027, 3, 3, 22, 0, tzinfo=UTC), hours=0.25)
    before = len(texts(world))

    until(world, datetime(2027, 3, 4, 12, 59, tzinfo=UTC))

    assert len(texts(world)) == before


def test_a_failed_alert_text_steps_on_at_once(world: World) -> None:
    ana = started(world)
    change_staff(world, "ben@example.org", alert_channels="sms")
    world.now = world.now.replace(hour=15)
    world.sms.errors.append(SendError("no such number", permanent=True, code="21211"))
    raised(world, "fall_or_injury", "urgent", ana)
    go(world)
    go(world)
    assert [row.state for row in world.queued("alert")][:1] == ["failed"]
    assert len(texts(world)) == 2


AWAY = {
    "on leave with a cover": ({"cover_from_on": date(2027, 3, 1), "cover_until_on": date(2027, 3, 9)}, True, GUS),
    "the leave is over": ({"cover_from_on": date(2027, 2, 1), "cover_until_on": date(2027, 3, 2)}, True, BEN),
    "gone, with a cover": ({"is_active": False}, True, GUS),
    "gone, without": ({"is_active": False}, False, DEE),
    "STOP from her own number": ({"mobile_stopped_at": datetime(2027, 3, 1, tzinfo=UTC)}, True, GUS),
}


@pytest.mark.parametrize("case", AWAY.values(), ids=AWAY.keys())
def test_staff_who_are_away_are_covered(world: World, case: tuple[dict[str, Any], bool, str]) -> None:
    values, has_cover, called = case
    ana = started(world)
    cover = gus(world)
    change_staff(world, "ben@example.org", **values, cover_id=cover if has_cover else None)

    raised(world, "fall_or_injury", "urgent", ana)

    assert texts(world) == [called]


def test_without_cover_and_lead_the_admins_are_called_by_mail(world: World) -> None:
    ana = started(world)
    change_staff(world, "ben@example.org", is_active=False)
    change_staff(world, "dee@example.org", is_active=False)
    raised(world, "fall_or_injury", "urgent", ana)
    assert calls(world) == [("fay@example.org", "email")]


def test_where_nobody_can_be_called_the_operator_is_told(world: World) -> None:
    ana = started(world)
    for email in ("ben@example.org", "dee@example.org", "fay@example.org"):
        change_staff(world, email, is_active=False)
    raised(world, "fall_or_injury", "urgent", ana)
    assert [note.words for note in world.rows(ClinicNote, kind="operator")] == ["nobody to call"]


def test_alert_texts_carry_no_name_and_no_words(world: World) -> None:
    started(world)
    world.hear("I fell and hit my head on the stove")
    world.send()
    body = sent(world, BEN, "alert")[0].body
    assert body.startswith("URGENT alert 1: A.R., client 1, a fall.")
    assert "/a/" in body
    for word in ("Ana", "Ruiz", "stove", "head"):
        assert word not in body
    mail = sent(world, "ben@example.org", "alert")[0]
    assert "stove" not in mail.body


def test_mails_carry_her_words_only_where_the_clinic_switched_that_on(world: World) -> None:
    started(world)
    with world.db.begin() as tx:
        tx.get(Clinic, 1).words_in_mail = True  # type: ignore[union-attr]
    world.hear("I fell and hit my head on the stove")
    world.send()
    assert "stove" in sent(world, "ben@example.org", "alert")[0].body
    assert "stove" not in sent(world, BEN, "alert")[0].body


def test_a_danger_answer_that_nobody_takes_in_two_minutes_goes_by_mail_and_calls_again(world: World) -> None:
    started(world, email="ana@example.org", channel="sms")
    world.sms.errors += [SendError("busy", code="429")] * 3
    world.hear("I fell and hit my head")
    go(world)
    before = len(calls(world))

    world.sms.errors += [SendError("busy", code="429")] * 3
    world.pass_time(minutes=2, seconds=30)
    go(world)

    assert [row.to for row in sent(world, "ana@example.org", "danger")] == ["ana@example.org"]
    assert len(calls(world)) > before
    assert "not_delivered" in world.alerts()[0].because[0]["notes"]


def test_a_danger_answer_that_failed_calls_staff_again(world: World) -> None:
    started(world)
    change_staff(world, "ben@example.org", alert_channels="email")
    world.sms.errors.append(SendError("blocked", permanent=True, code="30004"))
    world.hear("I fell and hit my head")
    go(world)
    go(world)
    assert sent(world, ANA, "danger") == []
    assert the(world, 1).round == 2


def test_a_second_danger_text_while_the_steps_rest_calls_again(world: World) -> None:
    started(world)
    world.now = datetime(2027, 3, 3, 23, 30, tzinfo=UTC)
    world.hear("I fell and hit my head")
    assert texts(world) == [BEN]
    world.pass_time(minutes=5)
    world.hear("I fell again and hit my head")
    assert texts(world) == [BEN]
    world.pass_time(minutes=20)
    world.hear("I fell in the hall and hit my head")
    assert texts(world) == [BEN, BEN]


def test_a_text_ok_takes_the_alert_and_tells_the_client_nothing(world: World) -> None:
    started(world)
    world.hear("I fell and hit my head")
    world.hear("ok 1", BEN)
    assert the(world, 1).state == "acknowledged"
    assert world.queued("read_by") == []


def test_steps_wait_over_a_weekend(world: World) -> None:
    ana = started(world)
    world.now = datetime(2027, 3, 6, 15, 0, tzinfo=UTC)  # Saturday
    one = raised(world, "fall_or_injury", "urgent", ana)
    assert the(world, one).next_step_at == datetime(2027, 3, 8, 13, 15, tzinfo=UTC)
    until(world, world.now + timedelta(hours=12), hours=4)
    assert texts(world) == [BEN]
