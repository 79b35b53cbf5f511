"""Questions: one open, answered by the next reply, lapsing; and whose a reply from a shared phone is."""

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from reminders.flows import questions
from reminders.store.tables import Client, ClinicNote, DailyAnswer, Hold, Outbound, Pause, Question
from tests.clinic import ANA, World
from tests.flows.hearing import answers, heard, inbound, keep, reminded, templates


def ask(world: World, client_id: int, kind: str, session_id: int | None = None, **details: Any) -> None:
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        questions.ask(tx, kind, ANA, client, world.now, session_id=session_id, details=details)


def test_a_second_question_replaces_the_first(world: World) -> None:
    ana = reminded(world)
    ask(world, ana, "reason")
    ask(world, ana, "effort")

    assert [(one.kind, one.closed_how) for one in world.rows(Question)] == [("reason", "replaced"), ("effort", "")]


def test_a_question_lapses_after_a_day(world: World) -> None:
    ana = reminded(world)
    ask(world, ana, "pain", world.sessions(ana)[0].id)
    world.pass_time(hours=25)

    world.hear("4")

    assert world.rows(Question)[0].closed_how == "lapsed"
    assert world.sessions(ana)[0].pain is None
    assert templates(world) == ["ask_meaning"]


def test_a_question_lapses_with_the_next_reminder(world: World) -> None:
    ana = reminded(world)
    world.now = datetime(2027, 3, 4, 22, 0, tzinfo=UTC)
    ask(world, ana, "pain", world.sessions(ana)[0].id)
    world.now = datetime(2027, 3, 5, 13, 30, tzinfo=UTC)
    world.plan()
    world.send()

    world.pass_time(minutes=1)
    world.hear("4")

    assert world.rows(Question)[0].closed_how == "lapsed"
    assert world.sessions(ana)[0].pain is None


def test_a_bare_number_answers_the_morning_question_outside_the_sessions_pain(world: World) -> None:
    ana = reminded(world)
    world.hear("done pain 3")
    earlier = world.sessions(ana)[0]
    world.now = datetime(2027, 3, 5, 13, 30, tzinfo=UTC)
    world.plan()
    world.send()
    ask(world, ana, "settling", earlier.id)

    world.pass_time(minutes=3)
    world.hear("2")

    report = world.reports(ana)[-1]
    assert (report.is_settling, report.session_id) == (True, earlier.id)
    assert world.sessions(ana)[0].pain == 3
    assert world.sessions(ana)[1].pain is None
    assert templates(world)[-1] == "thanks_settling"


def test_y3_is_a_report_and_leaves_the_morning_question_unanswered(world: World) -> None:
    ana = reminded(world)
    world.hear("done pain 3")
    earlier = world.sessions(ana)[0]
    world.now = datetime(2027, 3, 5, 13, 30, tzinfo=UTC)
    world.plan()
    world.send()
    ask(world, ana, "settling", earlier.id)

    world.pass_time(minutes=3)
    world.hear("Y2")

    assert world.sessions(ana)[1].pain == 2
    assert not any(report.is_settling for report in world.reports(ana))
    assert "unanswered" in [one.closed_how for one in world.rows(Question) if one.kind == "settling"]


def test_her_answer_on_another_contact_answers_it(world: World) -> None:
    ana = reminded(world, email="ana@example.org", channel="sms+email")
    world.hear("done")
    world.pass_time(minutes=3)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        assert client is not None
        found = questions.current(tx, "ana@example.org", [ana], world.now)
        assert found is not None
        assert found.kind == "pain"


def couple(world: World) -> tuple[int, int]:
    """Enrol Ana and Hugo on one phone: Ana's day is today, Hugo's tomorrow."""
    hugo = world.enrol("Hugo Ruiz", holder="shared", days="tue+thu")
    ana = reminded(world, holder="shared")
    return ana, hugo


def both_today(world: World) -> tuple[int, int]:
    hugo = world.enrol("Hugo Ruiz", holder="shared")
    ana = reminded(world, holder="shared")
    return ana, hugo


def test_a_reply_that_only_one_could_have_sent_is_hers(world: World) -> None:
    ana, hugo = couple(world)

    world.hear("done pain 2")

    done = [one.client_id for one in world.sessions(ana) + world.sessions(hugo) if one.state == "done"]
    assert done == [ana]


def test_a_reply_that_names_one_is_hers(world: World) -> None:
    ana, hugo = both_today(world)

    world.hear("Hugo did all of his, pain 2")

    assert world.sessions(hugo)[0].state == "done"
    assert world.sessions(ana)[0].state == "reminded"


def test_otherwise_it_is_asked_whose_and_the_name_files_it(world: World) -> None:
    ana, hugo = both_today(world)

    row_id = world.hear("done pain 2")
    assert templates(world) == ["ask_who"]
    assert answers(world)[0].details["names"] == ["Hugo", "Ana"]
    assert world.reports(ana) == [] == world.reports(hugo)

    world.pass_time(minutes=2)
    world.hear("Ana")

    assert world.sessions(ana)[0].state == "done"
    assert world.reports(hugo) == []
    assert heard(world, row_id).client_id == ana
    assert templates(world)[-1] == "thanks"


def test_what_is_still_not_named_goes_to_the_clinic(world: World) -> None:
    ana, hugo = both_today(world)

    world.hear("done pain 2")
    world.pass_time(minutes=2)
    world.hear("it was me")

    assert world.reports(ana) == [] == world.reports(hugo)
    assert [note.words for note in world.rows(ClinicNote, kind="unclear")] == ["done pain 2", "it was me"]
    world.send()
    assert world.sms.sent[-1].body.startswith("We still do not understand")


def test_a_danger_sign_never_waits_for_whose_it_is(world: World) -> None:
    ana, hugo = both_today(world)

    world.hear("fell in the bathroom and hit my head")

    for client_id in (ana, hugo):
        assert [(one.level, one.one_of_two) for one in world.alerts(client_id)] == [("urgent", True)]
        assert len(world.rows(Hold, client_id=client_id)) == 1
    assert [row.kind for row in answers(world)] == ["danger"]
    world.send()
    said = world.sms.sent[-1].body
    assert said.startswith("Call 911 now.")
    assert "Ana" not in said, "nobody is named while it may be either's"
    assert "Hugo" not in said


CHOICES = {
    "an effort is kept": ("effort", "easy", "said_back_noted"),
    "a count of days is kept": ("days", 4, "said_back_noted"),
    "no falls": ("falls", 0, "said_back_noted"),
    "falls are told today": ("falls", 2, "said_back_noted"),
    "busy offers other days": ("reason", "busy", "ask_offer"),
    "away pauses and asks until when": ("reason", "away", "ask_until"),
    "pain goes to the clinic": ("reason", "pain", "said_back_question"),
    "no to other days": ("offer", "no", "said_back_no_change"),
    "yes to other days": ("offer", "yes", "said_back_reschedule"),
    "keep": ("keep", "keep", "said_back_keep"),
    "change": ("keep", "change", "said_back_reschedule"),
    "end": ("keep", "end", "stopped"),
    "an end of a pause": ("until", "2027-03-20", "said_back_pause"),
    "where it hurts": ("where", "left knee", "said_back_noted"),
}


@pytest.mark.parametrize(("kind", "choice", "said"), CHOICES.values(), ids=CHOICES)
def test_an_answer_leads_to(world: World, kind: str, choice: str | int, said: str) -> None:
    ana = reminded(world)
    ask(world, ana, kind, world.sessions(ana)[0].id, week="2027-W09")

    answer(world, ana, kind, choice)

    assert templates(world) == [said]
    closed = next(one for one in world.rows(Question) if one.kind == kind)
    assert (closed.closed_how, closed.details["choice"]) == ("answered", choice)
    checks = {
        "days": lambda: [one.days for one in world.rows(DailyAnswer)] == [4],
        "falls": lambda: [one.rule for one in world.alerts(ana)] == (["falls_counted"] if choice else []),
        "until": lambda: world.rows(Pause)[0].until_on.isoformat() == "2027-03-20",
    }
    assert checks.get(kind, lambda: True)()


def answer(world: World, client_id: int, kind: str, choice: str | int) -> None:
    """Act on an answer as it was read: the reading itself is the reader's to prove."""
    from reminders.core.reading.model import Reading
    from reminders.flows import answers as sending
    from reminders.flows import choices
    from reminders.flows.understand import Heard
    from reminders.store import clients
    from reminders.store.tables import InboundRow

    keep(world, inbound("in her own words", "SM-answer", world))
    with world.db.begin() as tx:
        row = tx.get(InboundRow, world.rows(InboundRow)[-1].id)
        assert row is not None
        people = clients.clients_at(tx, ANA)
        question = questions.current(tx, ANA, [client_id], world.now)
        assert question is not None
        assert question.kind == kind
        clinic = clients.the_clinic(tx, people[0][1].clinic_id)
        made = Heard(row, clinic, world.now, people, people[0][1], question, Reading("unclear", choice=choice))
        choices.answered(tx, made, people[0][1], question)
        sending.flush(tx, made)


def test_no_second_question_stands_beside_an_open_one(world: World) -> None:
    ana = reminded(world)
    for text in ("done", "hm", "what do you mean", "asdf", "did some"):
        world.pass_time(minutes=3)
        world.hear(text)
        still_open = [one for one in world.rows(Question, client_id=ana) if one.closed_at is None]
        assert len(still_open) <= 1


def test_answers_carry_no_more_than_one_question(world: World) -> None:
    reminded(world)
    for text in ("done", "asdf", "did some of it", "please pause"):
        world.hear(text)
        world.pass_time(seconds=10)

    for row in answers(world):
        said = [part["text"] for part in row.details.get("parts", [])] or [row.template]
        assert sum(one.startswith("ask_") for one in said) <= 1
    assert world.rows(Outbound)


def test_a_reply_to_an_old_question_does_not_reach_back_past_a_week(world: World) -> None:
    ana = reminded(world)
    world.now += timedelta(days=9)

    world.hear("done pain 2")

    assert world.sessions(ana)[0].completed is None


def test_a_wish_said_plainly_after_an_unclear_reply_is_carried_out(world: World) -> None:
    ana = reminded(world)
    world.hear("asdf qwer")
    world.pass_time(minutes=2)

    world.hear("please pause")

    assert len(world.rows(Pause, client_id=ana)) == 1
    assert templates(world) == ["ask_meaning", "ask_until"]


def test_a_third_unclear_reply_running_goes_to_the_clinic_too(world: World) -> None:
    reminded(world)
    for text in ("blargh floop zzz", "gloop floop wibble", "snark floop wibble"):
        world.hear(text)
        world.pass_time(minutes=3)

    assert templates(world) == ["ask_meaning", "said_back_unclear", "said_back_unclear"]
