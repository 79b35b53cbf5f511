"""Mails that only bear a client's address: danger, opt-out and a first START, the rest shown as unverified."""

from reminders.flows import questions
from reminders.store.tables import ClinicNote, Contact
from tests.clinic import World
from tests.flows.hearing import answers, reminded

MAIL = "ana@example.org"


def test_an_opt_out_is_honoured(world: World) -> None:
    reminded(world, email=MAIL, channel="email", mobile="")

    world.hear("please unsubscribe me", MAIL)

    assert world.rows(Contact)[0].consent == "closed"
    assert [row.channel for row in answers(world, MAIL)] == ["email"]


def test_a_first_start_counts_on_the_from_address(world: World) -> None:
    ana = world.enrol(email=MAIL, channel="email", mobile="", consent_on="", consent_how="")

    world.hear("START", MAIL)

    assert world.client(ana).state == "active"
    assert [(row.kind, row.channel) for row in world.queued()] == [("welcome", "email")]


def test_a_later_start_by_an_unverified_mail_opens_nothing(world: World) -> None:
    reminded(world, email=MAIL, channel="email", mobile="")
    world.hear("unsubscribe", MAIL)

    world.hear("START", MAIL)

    assert world.rows(Contact)[0].consent == "closed"
    assert world.rows(ClinicNote)[-1].kind == "written"


def test_danger_is_alerted_and_answered(world: World) -> None:
    ana = reminded(world, email=MAIL, channel="email", mobile="")

    world.hear("I fell and hit my head", MAIL)

    assert [one.level for one in world.alerts(ana)] == ["urgent"]
    assert [row.kind for row in answers(world, MAIL)] == ["danger"]
    assert world.rows(ClinicNote)[-1].details["verified"] is False


def test_it_does_not_answer_whose_a_reply_is_or_whose_reminders_start(world: World) -> None:
    world.enrol(email=MAIL, channel="email", mobile="", holder="shared")
    reminded(world, name="Hugo Ruiz", email=MAIL, channel="email", mobile="", holder="shared")
    world.hear("STOP", MAIL)
    world.pass_time(minutes=5)
    with world.db.begin() as tx:
        questions.ask(tx, "who", MAIL, None, world.now, details={"start": True, "names": ["Ana", "Hugo"]})

    world.hear("Ana here, is the clinic open on Monday?", MAIL)

    assert [one.consent for one in world.rows(Contact)] == ["closed", "closed"]
    assert world.rows(ClinicNote)[-1].kind == "written"
