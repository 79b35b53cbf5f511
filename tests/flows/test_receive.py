"""From a text to the record: kept once, attributed, valued, said back."""

from datetime import UTC, date, datetime

import pytest

from reminders.flows import receive
from reminders.store.tables import ClinicNote, InboundRow, Outbound, Question, Report
from tests.clinic import ANA, BEN, World
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
    world.hear("can I use a chair?")
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
    "a question goes to the inbox": ("can I use a chair?", ["said_back_question"], ["question"]),
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


def test_an_unknown_number_is_answered_for_help_only(world: World) -> None:
    stranger = "+12025550177"

    world.hear("HELP", stranger)
    world.hear("done pain 3", stranger)
    world.hear("hello there", stranger)

    assert [row.template for row in world.rows(Outbound, to=stranger)] == ["help_stranger"]
    assert [(note.kind, note.client_id) for note in world.rows(ClinicNote)] == [("stranger", None)]
    assert world.rows(Report) == []


def test_danger_words_from_an_unknown_number_are_answered_and_shown_to_the_lead(world: World) -> None:
    stranger = "+12025550177"

    world.hear("I fell and cannot get up", stranger)

    assert [row.kind for row in world.rows(Outbound, to=stranger)] == ["stranger"]
    assert [(one.client_id, one.address, one.level) for one in world.alerts()] == [(None, stranger, "urgent")]


def test_a_staff_number_may_only_command(world: World) -> None:
    ana = reminded(world)
    world.hear("I fell and hit my head")
    number = world.alerts(ana)[0].number

    world.hear("what is this", BEN)
    world.hear(f"ok {number}", BEN)
    world.hear("ok", BEN)

    told = [row.template for row in world.rows(Outbound, kind="staff_answer")]
    assert told == ["staff_help", "staff_ok", "staff_ok_none"]
    assert world.alerts(ana)[0].state == "acknowledged"
    assert world.alerts(ana)[0].acknowledged_by == "ben@example.org"


def test_ok_alone_needs_exactly_one_open_alert(world: World) -> None:
    ana = reminded(world)
    world.hear("I fell and hit my head and I have chest pain")

    world.hear("ok", BEN)

    assert len(world.alerts(ana)) > 1
    assert [row.template for row in world.rows(Outbound, kind="staff_answer")] == ["staff_ok_which"]
    assert {one.state for one in world.alerts(ana)} == {"open"}


def test_another_clinics_therapist_cannot_acknowledge(world: World) -> None:
    from tests.clinic import CLEO

    ana = reminded(world)
    world.hear("I fell and hit my head")

    world.hear(f"ok {world.alerts(ana)[0].number}", CLEO)

    assert world.alerts(ana)[0].state == "open"


def test_her_replies_after_a_therapists_own_message_go_to_the_inbox_too(world: World) -> None:
    from reminders.store.tables import Client

    ana = reminded(world)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        client.staff_wrote_at = world.now

    world.hear("yes")
    world.pass_time(minutes=2)
    world.hear("hmm perhaps on the green thing")
    world.pass_time(minutes=2)
    assert world.reports(ana) == []
    assert answers(world) == []

    world.hear("done 2x10 pain 2")
    assert world.sessions(ana)[0].state == "done"
    assert [note.kind for note in world.rows(ClinicNote)] == ["written"] * 3


def test_a_mail_that_only_bears_her_address_is_read_for_danger_and_opt_out_alone(world: World) -> None:
    ana = world.enrol(email="ana@example.org", channel="sms+email")

    world.hear("done pain 3", "ana@example.org")
    assert world.reports(ana) == []
    assert [(note.kind, note.details["verified"]) for note in world.rows(ClinicNote)] == [("written", False)]

    world.hear("I fell and hit my head", "ana@example.org")
    assert len(world.alerts(ana)) == 1


def test_a_mail_that_answers_one_of_ours_is_hers(world: World) -> None:
    ana = reminded(world, email="ana@example.org", channel="email", mobile="")
    receipt = next(row.receipt for row in world.queued("reminder"))
    keep(
        world,
        inbound("done pain 3", "m1", world, source="email", address="a.other@example.org", answers=(receipt,)),
    )

    receive.handle_waiting(world.db, world.now)

    assert world.sessions(ana)[0].pain == 3


def test_an_automatic_mail_is_kept_and_never_answered(world: World) -> None:
    ana = reminded(world, email="ana@example.org", channel="email", mobile="")
    receipt = next(row.receipt for row in world.queued("reminder"))
    away = inbound(
        "I am away", "m1", world, source="email", address="ana@example.org", automatic=True, answers=(receipt,)
    )
    keep(world, away)

    receive.handle_waiting(world.db, world.now)

    assert answers(world, "ana@example.org") == []
    assert world.reports(ana) == []
    assert world.rows(InboundRow)[0].outcome == "automatic"


def test_danger_words_stand_anywhere_in_a_mail_but_not_in_our_own_text(world: World) -> None:
    ana = reminded(world, email="ana@example.org", channel="email", mobile="")
    sent = next(row for row in world.queued("reminder"))
    quoted = "\n".join(f"> {line}" for line in sent.body.splitlines())
    for number, (text, whole) in enumerate(
        (("done pain 1", f"done pain 1\n{quoted}"), ("done pain 1", f"done pain 1\n{quoted}\nI fell and hit my head")),
        1,
    ):
        keep(
            world,
            inbound(
                text, f"m{number}", world, source="email", address="ana@example.org", answers=(sent.receipt,),
                whole_text=whole,
            ),
        )  # fmt: skip
        receive.handle_waiting(world.db, world.now)
        assert len(world.alerts(ana)) == number - 1


def test_a_bounce_makes_the_address_unusable(world: World) -> None:
    from reminders.store.tables import Contact

    reminded(world, email="ana@example.org", channel="email", mobile="")
    receipt = next(row.receipt for row in world.queued("reminder"))
    keep(
        world,
        inbound(
            "", "m1", world, source="email", address="", bounce_of=receipt, bounce_code="smtp:550 5.1.1", automatic=True
        ),
    )

    receive.handle_waiting(world.db, world.now)

    assert world.queued("reminder")[0].state == "failed"
    assert world.rows(Contact)[0].unusable
    assert world.rows(InboundRow)[0].outcome == "bounce"


def test_a_helper_reports_for_the_client(world: World) -> None:
    ana = reminded(world, holder="helper")

    world.hear("she did all of them, pain 2")

    assert world.sessions(ana)[0].state == "done"
    assert world.reports(ana)[0].by == "helper"


def test_words_of_her_death_take_back_all_that_waits_and_bring_one_line_once(world: World) -> None:
    ana = reminded(world, holder="helper")

    world.hear("My mother passed away on Sunday")
    waiting = [row.kind for row in world.queued() if row.client_id == ana and row.state == "waiting"]
    assert waiting == ["sympathy"]

    world.pass_time(minutes=5)
    world.hear("I told you my mother passed away")
    assert templates(world, ANA) == ["sympathy"]


def test_the_operator_hears_of_a_message_that_cannot_be_read(world: World) -> None:
    keep(world, inbound("x", "P1", world, source="page", answers=("session:none",)))

    receive.handle_waiting(world.db, world.now)
    assert world.queued("operator") == []
    world.pass_time(minutes=1)
    receive.handle_waiting(world.db, world.now)

    assert [row.details["what"] for row in world.queued("operator")] == ["unread messages"]


def test_a_message_that_another_worker_has_handled_is_left_alone(world: World) -> None:
    ana = reminded(world)
    row_id = world.hear("Y2")

    assert not receive.handle_one(world.db, row_id, world.now)
    receive.count_failure(world.db, row_id, world.now)

    assert len(world.reports(ana)) == 1
    assert heard(world, row_id).failures == 0


def test_a_bounce_of_nothing_ours_and_a_delay_change_nothing(world: World) -> None:
    reminded(world, email="ana@example.org", channel="email", mobile="")
    receipt = world.queued("reminder")[0].receipt
    for number, (name, code) in enumerate((("<x@example.org>", "5.1.1"), (receipt, "4.2.2"))):
        keep(
            world,
            inbound("", f"m{number}", world, source="email", address="", bounce_of=name, bounce_code=f"smtp:{code}"),
        )

    receive.handle_waiting(world.db, world.now)

    assert [row.outcome for row in world.rows(InboundRow)] == ["bounce of nothing ours", "delayed"]
    assert world.queued("reminder")[0].state == "accepted"


def test_a_second_extra_of_a_day_is_the_same_session(world: World) -> None:
    ana = reminded(world)
    world.hear("Y2")
    world.now = datetime(2027, 3, 4, 15, 0, tzinfo=UTC)

    world.hear("did them again, pain 3")
    world.pass_time(minutes=5)
    world.hear("and once more, all done, pain 2")

    assert [one.kind for one in world.sessions(ana)].count("extra") == 1


def test_a_client_who_is_staff_too_reports_from_her_own_phone(world: World) -> None:
    ben = reminded(world, name="Ben Ames", mobile=BEN)

    world.hear("done pain 2", BEN)
    world.hear("HELP", BEN)

    assert world.sessions(ben)[0].pain == 2
    assert [row.template for row in world.rows(Outbound, kind="staff_answer")] == ["staff_help"]


def test_a_mail_with_danger_words_from_nobody_we_know_is_shown_and_not_answered(world: World) -> None:
    keep(world, inbound("I fell and cannot get up", "m1", world, source="email", address="who@example.org"))

    receive.handle_waiting(world.db, world.now)

    assert [(one.client_id, one.level) for one in world.alerts()] == [(None, "urgent")]
    assert world.rows(Outbound, to="who@example.org") == []


def test_a_danger_answer_is_not_repeated_within_a_minute(world: World) -> None:
    ana = reminded(world)

    for _ in range(3):
        world.hear("I fell and hit my head")
        world.pass_time(seconds=10)

    assert [row.kind for row in answers(world)] == ["danger"]
    assert len(world.reports(ana)) == 3


def test_amounts_one_by_one_ask_how_much_of_the_rest(world: World) -> None:
    ana = reminded(world)

    world.hear("did 2x10 heel raises")

    assert world.sessions(ana)[0].state in ("part", "reminded")
    assert templates(world)[0] in ("ask_pain", "ask_amount")


def test_in_a_flood_a_higher_rating_or_a_danger_sign_is_judged_all_the_same(world: World) -> None:
    ana = reminded(world)
    keep(world, *(inbound("done pain 2", f"SM{n}", world) for n in range(40)))
    receive.handle_waiting(world.db, world.now)
    assert world.alerts(ana) == []

    world.hear("done pain 7")
    assert world.sessions(ana)[0].pain == 7
    assert [one.rule for one in world.alerts(ana)] == ["pain_up"]

    world.hear("I fell and hit my head")
    assert "fall_or_injury" in [one.rule for one in world.alerts(ana)]


def test_in_a_flood_a_correction_still_counts(world: World) -> None:
    ana = reminded(world)
    keep(world, *(inbound("done pain 2", f"SM{n}", world) for n in range(40)), inbound("done pain 4", "SM-last", world))
    receive.handle_waiting(world.db, world.now)
    world.pass_time(minutes=2)

    world.hear("sorry, pain 1 not 4")

    assert world.sessions(ana)[0].pain == 2
