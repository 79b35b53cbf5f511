"""From a text to the record: kept once, attributed, valued, said back."""

from datetime import UTC, date, datetime

import pytest

from reminders.flows import receive
from reminders.store.tables import ClinicNote, InboundRow, Question
from tests.clinic import World
from tests.flows.hearing import answers, heard, inbound, keep, reminded, templates


def test_a_report_is_recorded_and_said_back(world: World) -> None:
    ana = reminded(world)

    world.hear("done 2x10 pain 3")
    world.send()

    session = world.sessions(ana)[0]
    assert (session.state, session.completed, session.sets, session.reps, session.pain) == ("done", "all", 2, 10, 3)
    assert world.sms.sent[-1].body == "Recorded: all, 2x10, pain 3. Not right? Reply with the right answer."
    report = world.reports(ana)[0]
    assert report.text == "done 2x10 pain 3"
    assert report.reading["pain"] == 3
    assert "pain" in report.why


def test_a_repeat_of_the_same_provider_id_changes_nothing(world: World) -> None:
    ana = reminded(world)

    world.hear("Y3", provider_id="SM1")
    world.hear("Y9", provider_id="SM1")

    assert len(world.rows(InboundRow)) == 1
    assert len(world.reports(ana)) == 1
    assert world.sessions(ana)[0].pain == 3
    assert len(answers(world)) == 1


def test_what_was_kept_before_a_crash_is_handled_at_the_next_round_once(world: World) -> None:
    ana = reminded(world)
    keep(world, inbound("Y3", "SM1", world))
    assert world.reports(ana) == []

    assert receive.handle_waiting(world.db, world.now) == 1
    assert receive.handle_waiting(world.db, world.now) == 0

    assert len(world.reports(ana)) == 1


def test_a_message_that_cannot_be_handled_is_counted_waits_longer_each_time_and_stops_nobody_else(world: World) -> None:
    ana = reminded(world)
    keep(world, inbound("x", "P1", world, source="page", answers=("session:none",)), inbound("Y3", "SM1", world))

    assert receive.handle_waiting(world.db, world.now) == 1
    waits = []
    for _ in range(3):
        row = world.rows(InboundRow, provider_id="P1")[0]
        waits.append((row.retry_at - world.now).total_seconds())
        assert receive.handle_waiting(world.db, world.now) == 0
        world.now = row.retry_at
        receive.handle_waiting(world.db, world.now)

    assert waits == [30, 60, 120]
    assert world.rows(InboundRow, provider_id="P1")[0].failures == 4
    assert world.rows(InboundRow, provider_id="P1")[0].handled_at is None
    assert len(world.reports(ana)) == 1


def test_a_missing_pain_is_asked_for_once_and_the_bare_number_belongs_to_it(world: World) -> None:
    ana = reminded(world)

    world.hear("done")
    world.pass_time(minutes=2)
    world.hear("4")

    assert templates(world) == ["ask_pain", "thanks"]
    assert world.sessions(ana)[0].pain == 4
    question = world.rows(Question)[0]
    assert (question.kind, question.closed_how) == ("pain", "answered")


def test_a_correction_replaces_the_pain_and_overwrites_nothing(world: World) -> None:
    ana = reminded(world)

    world.hear("done pain 3")
    world.pass_time(minutes=2)
    world.hear("sorry, pain 2 not 3")

    first, second = world.reports(ana)
    assert (first.reading["pain"], second.reading["pain"], second.replaces) == (3, 2, first.id)
    assert world.sessions(ana)[0].pain == 2


def test_not_today_is_skipped_and_a_later_report_makes_it_done(world: World) -> None:
    ana = reminded(world)

    world.hear("N")
    assert world.sessions(ana)[0].state == "skipped"

    world.pass_time(hours=3)
    world.hear("did them after all, pain 1")
    assert world.sessions(ana)[0].state == "done"


def test_a_report_before_the_reminder_withdraws_it_and_the_next_day_is_planned(world: World) -> None:
    ana = world.enrol()
    world.now = datetime(2027, 3, 3, 12, 0, tzinfo=UTC)

    world.hear("done pain 2")
    world.pass_time(hours=2)
    world.plan()
    world.send()

    sessions = world.sessions(ana)
    assert [(one.on_date, one.state) for one in sessions] == [(date(2027, 3, 3), "done"), (date(2027, 3, 5), "planned")]
    assert [row for row in world.queued("reminder") if row.state == "accepted"] == []


def test_a_report_between_writing_and_sending_withdraws_the_waiting_reminder(world: World) -> None:
    world.enrol()
    world.now = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)
    world.plan()

    world.hear("done pain 2")
    world.send()

    assert [row.state for row in world.queued("reminder")] == ["withdrawn"]


def test_on_a_day_without_a_session_a_further_report_is_an_extra(world: World) -> None:
    ana = reminded(world)
    world.hear("Y2")
    world.now = datetime(2027, 3, 4, 15, 0, tzinfo=UTC)

    world.hear("did them again, pain 3")

    kinds = [(one.on_date, one.kind, one.state, one.pain) for one in world.sessions(ana) if one.state == "done"]
    assert kinds == [(date(2027, 3, 3), "planned", "done", 2), (date(2027, 3, 4), "extra", "done", 3)]


def test_a_reply_before_three_in_the_morning_belongs_to_the_day_before(world: World) -> None:
    ana = reminded(world)
    world.now = datetime(2027, 3, 4, 7, 30, tzinfo=UTC)  # 02:30 in New York

    world.hear("done pain 2")

    assert world.sessions(ana)[0].state == "done"


def test_pain_alone_on_a_day_without_a_session_stands_by_itself(world: World) -> None:
    ana = reminded(world)
    world.hear("Y2")
    world.now = datetime(2027, 3, 4, 15, 0, tzinfo=UTC)

    world.hear("pain is 3 today")

    assert world.sessions(ana)[0].pain == 2
    assert world.reports(ana)[-1].session_id is None


def test_texts_within_a_minute_share_one_answer_that_repeats_all(world: World) -> None:
    reminded(world)

    world.hear("done")
    world.pass_time(seconds=20)
    world.hear("pain 3")
    world.pass_time(seconds=20)
    world.hear("is it ok to use a brace?")
    world.send()
    assert len(world.sms.sent) == 3  # welcome, reminder, the first answer

    world.pass_time(seconds=21)
    world.send()

    assert len(world.sms.sent) == 4
    first, second = world.sms.sent[-1].body.split("\n")
    assert first == "Recorded: all, pain 3. Not right? Reply with the right answer."
    assert second.startswith("Sent to the clinic.")


def test_the_next_minute_answers_at_once_again(world: World) -> None:
    reminded(world)
    for _ in range(3):
        world.hear("done pain 3")
        world.pass_time(seconds=25)

    world.hear("done pain 4")

    at_once = [row for row in answers(world) if row.due_at == row.created_at]
    assert len(answers(world)) == 3
    assert len(at_once) == 2


def test_a_flood_from_one_phone_is_all_kept_and_read_and_answered_once_a_minute(world: World) -> None:
    ana = reminded(world)
    keep(world, *(inbound(f"done pain {n % 4}", f"SM{n}", world) for n in range(120)))

    assert receive.handle_waiting(world.db, world.now) == 120

    assert len(world.reports(ana)) == 120
    assert len(answers(world)) == 2


@pytest.mark.parametrize(
    ("text", "kind"), {"STOP": "stopped", "HELP": "help", "I fell and hit my head": "danger"}.items()
)
def test_stop_help_and_danger_are_never_delayed(world: World, text: str, kind: str) -> None:
    reminded(world)
    world.hear("done pain 1")
    world.pass_time(seconds=5)

    world.hear(text)

    row = answers(world)[-1]
    assert row.kind == kind
    assert row.due_at == world.now


def test_texts_fetched_together_share_one_answer(world: World) -> None:
    ana = reminded(world)
    keep(world, inbound("done", "SM1", world), inbound("pain 2", "SM2", world), fetched=True)

    receive.handle_waiting(world.db, world.now)

    assert world.sessions(ana)[0].pain == 2
    assert len(answers(world)) == 1
    assert answers(world)[0].details["parts"][0]["details"]["r"]["pain"] == 2


def test_an_old_text_is_judged_at_once_and_answered_in_the_window(world: World) -> None:
    ana = reminded(world)
    world.now = datetime(2027, 3, 4, 4, 0, tzinfo=UTC)  # 23:00 in New York
    came_at = datetime(2027, 3, 4, 2, 0, tzinfo=UTC)
    keep(world, inbound("done pain 2", "SM1", world, received_at=came_at), fetched=True)

    receive.handle_waiting(world.db, world.now)

    assert world.sessions(ana)[0].state == "done"
    assert answers(world)[0].due_at == datetime(2027, 3, 4, 13, 0, tzinfo=UTC)  # 08:00 in New York


def test_unclear_is_asked_about_once_and_then_goes_to_the_clinic(world: World) -> None:
    reminded(world)

    world.hear("asdf qwer")
    world.pass_time(minutes=2)
    world.hear("zxcv bnm")
    world.pass_time(minutes=2)
    world.hear("thanks")

    assert templates(world) == ["ask_meaning", "said_back_unclear"]
    assert [note.kind for note in world.rows(ClinicNote)] == ["unclear"]


INTENTS = {
    "a question goes to the inbox": ("is it ok to use a brace?", ["said_back_question"], ["question"]),
    "other days go to the clinic": ("can we move to Tuesdays instead", ["said_back_reschedule"], ["reschedule"]),
    "later bothers nobody": ("I'll do it later", ["said_back_later"], []),
    "thanks get no answer": ("thank you!", [], []),
    "today's exercises again": ("resend it please", ["reminder"], []),
}


@pytest.mark.parametrize(("text", "said", "notes"), INTENTS.values(), ids=INTENTS)
def test_each_intent_leads_somewhere(world: World, text: str, said: list[str], notes: list[str]) -> None:
    reminded(world)

    world.hear(text)

    assert templates(world) == said
    assert [note.kind for note in world.rows(ClinicNote)] == notes


def test_pictures_are_counted_and_answered(world: World) -> None:
    reminded(world)
    keep(world, inbound("", "MM1", world, pictures=2))

    receive.handle_waiting(world.db, world.now)

    assert templates(world) == ["said_back_picture"]


@pytest.mark.parametrize("text", ["", "   ", "\u0007\u0000\ufffd", "🙂🙂🙂", "a" * 1600, "7" * 400, "\n\n"])
def test_any_text_is_kept_and_handled(world: World, text: str) -> None:
    reminded(world)

    row = heard(world, world.hear(text.replace("\x00", "\ufffd")))

    assert row.handled_at is not None
    assert row.failures == 0
