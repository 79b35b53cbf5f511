"""Answers to the questions we ask other than pain and amount: one choice each, and no session that nobody reported."""

from datetime import date

import pytest

from reminders.core.reading import ASKED, read_reply
from reminders.core.reading.answers import ask_of
from reminders.core.reading.decision import Decision
from reminders.core.reading.reader import evidence_of

TODAY = date(2027, 2, 10)  # a Wednesday
ANSWERS = {
    "too busy": ("reason", "too busy with the grandkids", "busy"),
    "forgot": ("reason", "I forgot", "forgot"),
    "hurting": ("reason", "my knee was hurting", "pain"),
    "ill": ("reason", "had the flu", "sick"),
    "away": ("reason", "out of town", "away"),
    "anything else": ("reason", "my band snapped", "other"),
    "yes to an offer": ("offer", "yes please", "yes"),
    "no to an offer": ("offer", "nah", "no"),
    "easy": ("effort", "pretty easy", "easy"),
    "hard": ("effort", "too hard", "hard"),
    "medium": ("effort", "medium", "medium"),
    "no falls": ("falls", "none", 0),
    "two falls": ("falls", "2", 2),
    "a fall in words": ("falls", "I fell once", 1),
    "days counted": ("days", "4", 4),
    "every day": ("days", "every day", 7),
    "a day of the month": ("until", "the 15th", "2027-02-15"),
    "a stretch": ("until", "two weeks", "2027-02-24"),
    "a date": ("until", "march 3", "2027-03-03"),
    "a weekday": ("until", "next monday", "2027-02-15"),
    "an ISO date": ("until", "2027-04-01", "2027-04-01"),
    "no date": ("until", "not sure", None),
    "keep": ("keep", "keep going", "keep"),
    "change": ("keep", "change my days", "change"),
    "a name": ("who", "it's José", "José"),
    "a full name": ("who", "this is Mary Ann", "Mary Ann"),
    "a place": ("where", "left knee", "left knee"),
    "what a number meant": ("meaning", "my pain", "pain"),
}


@pytest.mark.parametrize(("asked", "text", "choice"), ANSWERS.values(), ids=ANSWERS)
def test_an_answer_is_a_choice(asked: str, text: str, choice: str | int | None) -> None:
    assert read_reply(text, "en", (), asked, today=TODAY).choice == choice


SPANISH = {
    "busy": ("reason", "mucho trabajo", "busy"),
    "yes": ("offer", "sí", "yes"),
    "hard": ("effort", "muy difícil", "hard"),
    "none": ("falls", "ninguna", 0),
    "a date": ("until", "hasta el 3 de marzo", "2027-03-03"),
}


@pytest.mark.parametrize(("asked", "text", "choice"), SPANISH.values(), ids=SPANISH)
def test_a_spanish_answer_is_a_choice(asked: str, text: str, choice: str | int | None) -> None:
    assert read_reply(text, "es", (), asked, today=TODAY).choice == choice


@pytest.mark.parametrize(
    ("asked", "text"), [("offer", "yes"), ("reason", "forgot"), ("effort", "easy"), ("days", "all 7")]
)
def test_a_mere_answer_reports_no_session(asked: str, text: str) -> None:
    reading = read_reply(text, "en", (), asked)

    assert (reading.intent, reading.completed, reading.pain) == ("unclear", None, None)


def test_an_answer_with_a_report_is_both() -> None:
    reading = read_reply("I forgot, but I did them today, pain 2", "en", (), "reason")

    assert (reading.choice, reading.intent, reading.pain) == ("forgot", "report", 2)


@pytest.mark.parametrize("asked", ["pain", "amount", "offer", "falls", "keep", "until", None])
def test_a_carrier_word_holds_whatever_was_asked(asked: str | None) -> None:
    assert read_reply("STOP", "en", (), asked).intent == "opt_out"


def test_a_pause_names_its_end() -> None:
    assert read_reply("out of town till the 15th", "en", (), None, today=TODAY).choice == "2027-02-15"


def test_without_today_a_date_has_no_year() -> None:
    assert read_reply("march 3", "en", (), "until").choice is None


WISHES = {
    "a pause": ("please pause", "en", "pause"),
    "a pause with its object": ("please pause my reminders", "en", "pause"),
    "back again": ("I'm back, please start again", "en", "resume"),
    "the list again": ("Please send my list again", "en", "resend"),
    "another day": ("can I move to Tuesday", "en", "reschedule"),
    "later": ("I'll do it later tonight", "en", "later"),
    "the carrier's help": ("HELP", "en", "help"),
    "what this is": ("what is this number", "en", "help"),
    "no more": ("stop texting me", "en", "opt_out"),
    "a question": ("should I use ice or heat?", "en", "question"),
    "not done": ("I didn't do them today", "en", "skip"),
    "not today": ("not today, too tired", "en", "skip"),
    "a pause in Spanish": ("pausa por favor", "es", "pause"),
    "the list again in Spanish": ("mande la lista otra vez", "es", "resend"),
    "later in Spanish": ("luego", "es", "later"),
    "not done in Spanish": ("hoy no los hice", "es", "skip"),
}


@pytest.mark.parametrize("asked", [None, *ASKED])
@pytest.mark.parametrize(("text", "language", "intent"), WISHES.values(), ids=WISHES)
def test_a_wish_said_plainly_is_read_the_same_whatever_was_asked(
    text: str, language: str, intent: str, asked: str | None
) -> None:
    reading = read_reply(text, language, (), asked, today=TODAY)

    assert (reading.intent, reading.pain, reading.ask) == (intent, None, None)


@pytest.mark.parametrize(
    ("asked", "sureness", "ask"), [(None, 0.5, "meaning"), (None, 0.8, None), ("pain", 0.5, None)], ids=str
)
def test_a_greeting_that_may_be_a_wish_is_asked_about_unless_another_question_is_open(
    asked: str | None, sureness: float, ask: str | None
) -> None:
    evidence, _, _ = evidence_of("namaste, down from the mountain", "en", (), asked)

    assert ask_of(evidence, Decision("chat", None, sureness), None, None) == ask
