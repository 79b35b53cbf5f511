"""Who writes: strangers, staff, mails, helpers, floods, and what is never answered."""

from datetime import UTC, datetime

from reminders.flows import receive
from reminders.store.tables import ClinicNote, InboundRow, Outbound, Report
from tests.clinic import ANA, BEN, World
from tests.flows.hearing import answers, heard, inbound, keep, reminded, templates


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
