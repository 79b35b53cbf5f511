"""Calls and answers that did not arrive, and the people who step in for those who are away."""

from datetime import UTC, date, datetime, timedelta

import pytest
from sqlmodel import select

from reminders.errors import SendError
from reminders.flows import alert, escalate, receive, say
from reminders.store import due
from reminders.store.clients import the_clinic
from reminders.store.tables import Alert, ClinicNote, Outbound
from tests.clinic import ANA, BEN, DEE, World
from tests.flows.failing import Failing, rounds
from tests.flows.hearing import inbound, keep
from tests.flows.rounds import go, sent, started
from tests.flows.test_alert import acknowledged, raised, the
from tests.flows.test_escalate import GUS, change_staff, gus, texts

SHARED, STRANGER = "+12025550120", "+12025550190"
AWAY = {"cover_from_on": date(2027, 3, 1), "cover_until_on": date(2027, 3, 9)}


def failed_answer(world: World) -> None:
    with world.db.begin() as tx:
        row = tx.get(Outbound, [one.id for one in world.queued() if one.to == ANA and one.inbound_id][-1])
        assert row is not None
        escalate.answer_failed(tx, row, world.now)


def test_a_failed_answer_opens_a_taken_alert_again_once(world: World) -> None:
    started(world)
    world.hear("I fell and hit my head")
    acknowledged(world, 1)

    failed_answer(world)
    failed_answer(world)

    assert (the(world, 1).state, the(world, 1).round) == ("open", 2)
    assert "Our answer was NOT delivered: phone her." in alert.sentences(the(world, 1))


def test_a_failed_stop_level_answer_waits_for_the_next_note(world: World) -> None:
    started(world)
    world.hear("Y6")
    before = the(world, 1).next_step_at
    failed_answer(world)
    assert (the(world, 1).round, the(world, 1).next_step_at) == (1, before)
    assert "not_delivered" in the(world, 1).because[0]["notes"]


def test_a_failed_call_about_a_taken_alert_changes_nothing(world: World) -> None:
    ana = started(world)
    one = raised(world, "fall_or_injury", "urgent", ana)
    row = world.queued("alert")[0]
    acknowledged(world, one)
    with world.db.begin() as tx:
        escalate.call_failed(tx, tx.get(Outbound, row.id), world.now)  # type: ignore[arg-type]
    assert texts(world) == [BEN]


def test_a_failed_call_of_an_earlier_step_changes_nothing(world: World) -> None:
    ana = started(world)
    world.now = world.now.replace(hour=15)
    raised(world, "fall_or_injury", "urgent", ana)
    row = world.queued("alert")[0]
    world.pass_time(minutes=15)
    go(world)
    before = len(texts(world))
    with world.db.begin() as tx:
        escalate.call_failed(tx, tx.get(Outbound, row.id), world.now)  # type: ignore[arg-type]
    assert len(texts(world)) == before


def test_a_failed_note_calls_nobody(world: World) -> None:
    ana = started(world)
    change_staff(world, "ben@example.org", alert_channels="sms")
    raised(world, "fever", "today", ana)
    world.now = datetime(2027, 3, 3, 16, 30, tzinfo=UTC)
    world.sms.errors.append(SendError("no such number", permanent=True, code="21211"))
    go(world)
    go(world)
    assert [row.state for row in world.queued("note")] == ["failed"]
    assert texts(world) == []


def test_a_cover_who_is_away_is_covered_in_turn(world: World) -> None:
    ana = started(world)
    cover = gus(world)
    change_staff(world, "ben@example.org", cover_id=cover, **AWAY)
    change_staff(world, "gus@example.org", cover_id=change_staff(world, "fay@example.org"), **AWAY)
    raised(world, "fall_or_injury", "urgent", ana)
    assert {row.to for row in world.queued("alert")} == {"fay@example.org"}


def test_two_who_cover_for_each_other_and_are_both_away_leave_it_to_the_lead(world: World) -> None:
    ana = started(world)
    cover = gus(world)
    ben = change_staff(world, "ben@example.org", cover_id=cover, **AWAY)
    change_staff(world, "gus@example.org", cover_id=ben, **AWAY)
    raised(world, "fall_or_injury", "urgent", ana)
    assert texts(world) == [DEE]


def test_a_lead_on_leave_is_covered(world: World) -> None:
    started(world)
    change_staff(world, "dee@example.org", cover_id=gus(world), **AWAY)
    world.hear("I fell and hit my head", "+12025550190")
    assert texts(world) == [GUS]


def test_someone_on_leave_is_called_when_there_is_nobody_else(world: World) -> None:
    ana = started(world)
    for email in ("dee@example.org", "fay@example.org"):
        change_staff(world, email, is_active=False)
    change_staff(world, "ben@example.org", cover_id=change_staff(world, "dee@example.org"), **AWAY)
    raised(world, "fall_or_injury", "urgent", ana)
    assert texts(world) == [BEN]


def test_a_note_with_nobody_to_read_it_is_told_to_the_operator(world: World) -> None:
    ana = started(world)
    one = raised(world, "fever", "today", ana)
    for email in ("ben@example.org", "dee@example.org", "fay@example.org"):
        change_staff(world, email, is_active=False)
    world.now = datetime(2027, 3, 3, 16, 30, tzinfo=UTC)
    go(world)
    assert sent(world, BEN, "note") == []
    assert [row.details["what"] for row in world.queued("operator")] == ["nobody to call"]
    assert world.rows(Alert, id=one)[0].next_step_at > world.now


@pytest.mark.parametrize("retry_after", [None, 3600.0], ids=["refused", "asked to wait an hour"])
def test_a_danger_answer_that_is_refused_for_two_minutes_goes_by_mail_and_calls_again(
    world: World, retry_after: float | None
) -> None:
    ana = started(world, email="ana@example.org", channel="sms")
    world.hear("I fell and hit my head")
    busy = Failing(world, SendError("busy", code="20429", retry_after=retry_after), to=ANA)

    rounds(world, {"sms": busy}, minutes=3)

    assert [row.state for row in world.queued("danger") if row.channel == "email"] == ["accepted"]
    assert world.alerts(ana)[0].round == 2


def test_an_urgent_text_waits_no_longer_than_two_minutes_for_its_next_try(world: World) -> None:
    started(world)
    world.hear("I fell and hit my head")
    busy = Failing(world, SendError("busy", code="20429", retry_after=3600.0), to=ANA)

    rounds(world, {"sms": busy}, minutes=10)

    assert len(busy.tried) >= 5


def test_a_danger_answer_that_is_refused_for_two_minutes_is_found_by_the_quiet_rounds(world: World) -> None:
    started(world)
    world.hear("I fell and hit my head")
    rounds(world, {"sms": Failing(world, SendError("busy", code="20429", retry_after=3600.0), to=ANA)}, minutes=0)
    world.pass_time(minutes=2)
    with world.db.begin() as tx:
        for row in tx.exec(select(Outbound).where(Outbound.state == "waiting", Outbound.priority == 0)):
            row.due_at = world.now + timedelta(minutes=1)

    with world.db.read() as tx:
        assert due.things_to_watch(tx, world.now)


def by_mail(world: World, text: str) -> None:
    """Let Ana answer her reminder by mail."""
    reminder = next(row for row in world.queued("reminder") if row.channel == "email")
    keep(
        world,
        inbound(text, "uid1", world, source="email", address="ana@example.org", answers=(reminder.receipt,)),
    )
    receive.handle_waiting(world.db, world.now)


def test_a_danger_answer_by_mail_that_nobody_takes_goes_by_text_and_calls_again(world: World) -> None:
    ana = started(world, email="ana@example.org", channel="sms+email")
    by_mail(world, "I fell and hit my head")
    down = Failing(world, SendError("down"), to="ana@example.org", inner=world.email)

    rounds(world, {"email": down}, minutes=3)

    assert [(row.channel, row.state) for row in world.queued("danger")] == [("email", "waiting"), ("sms", "accepted")]
    assert world.alerts(ana)[0].round == 2


def test_a_danger_answer_that_fails_on_both_addresses_goes_no_further_and_calls_again_once(world: World) -> None:
    ana = started(world, email="ana@example.org", channel="sms+email")
    by_mail(world, "I fell and hit my head")
    refused = SendError("no such user", permanent=True, code="smtp:550 5.1.1")
    off = SendError("landline", permanent=True, code="30006")

    rounds(
        world,
        {"email": Failing(world, refused, to="ana@example.org", inner=world.email), "sms": Failing(world, off, to=ANA)},
        minutes=3,
    )

    assert [(row.channel, row.state) for row in world.queued("danger")] == [("email", "failed"), ("sms", "failed")]
    assert world.alerts(ana)[0].round == 2


@pytest.mark.parametrize("is_final", [True, False])
def test_a_strangers_danger_answer_that_nobody_takes_calls_again(world: World, is_final: bool) -> None:
    started(world)
    world.hear("I fell and hit my head", STRANGER)
    error = SendError("no", permanent=is_final, code="30006" if is_final else "20429")

    rounds(world, {"sms": Failing(world, error, to=STRANGER)}, minutes=3)

    assert [one.round for one in world.alerts()] == [2]


def test_a_danger_answer_to_a_shared_phone_goes_to_each_ones_mail_and_calls_about_each(world: World) -> None:
    for name in ("Bo Ruiz", "Cy Ruiz"):
        world.enrol(name, SHARED, holder="shared", email=f"{name[:2].lower()}@example.org", channel="sms")
    rounds(world, {}, minutes=0)
    world.now = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)
    world.hear("I fell and hit my head", SHARED)

    rounds(world, {"sms": Failing(world, SendError("cut off", unknown=True), to=SHARED)}, minutes=3)

    mails = [row.to for row in world.queued("danger") if row.channel == "email"]
    assert mails == ["bo@example.org", "cy@example.org"]
    assert [one.round for one in world.alerts()] == [2, 2]


def test_nobody_to_call_is_told_for_each_alert_once_a_day(world: World) -> None:
    ana = started(world)
    for email in ("ben@example.org", "dee@example.org", "fay@example.org"):
        change_staff(world, email, is_active=False)
    raised(world, "fall_or_injury", "urgent", ana)
    raised(world, "chest_or_breath", "urgent", ana)
    go(world)
    world.pass_time(minutes=35)
    go(world)

    told = [row.details["alert"] for row in world.queued("operator")]
    assert told == [1, 2]
    assert [note.words for note in world.rows(ClinicNote, kind="operator")] == ["nobody to call"] * 2


def test_the_operator_hears_the_same_of_each_clinic(world: World) -> None:
    with world.db.begin() as tx:
        for clinic_id in (1, 2, 1):
            say.tell_operator(tx, the_clinic(tx, clinic_id), "late reminders", {}, world.now)

    assert [row.clinic_id for row in world.queued("operator")] == [1, 2]
