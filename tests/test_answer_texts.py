"""The answers to replies: two languages, two parts at most, plain words, and what must and must not stand there."""

from typing import Any

import pytest
import textstat

from reminders.core.segments import parts, plain
from reminders.texts import Texts

NAMES = [
    "ask_amount",
    "ask_meaning",
    "ask_offer",
    "ask_pain",
    "ask_until",
    "ask_who",
    "ask_who_start",
    "help",
    "help_stranger",
    "said_back_held",
    "said_back_keep",
    "said_back_later",
    "said_back_no_change",
    "said_back_noted",
    "said_back_pause",
    "said_back_picture",
    "said_back_question",
    "said_back_reschedule",
    "said_back_resend_none",
    "said_back_resume",
    "said_back_unclear",
    "staff_has_stopped",
    "staff_help",
    "staff_ok",
    "staff_ok_none",
    "staff_ok_which",
    "staff_started",
    "staff_stopped",
    "started",
    "stopped",
    "stopped_too",
    "sympathy",
    "thanks",
    "thanks_settling",
    "wrong_number",
]
NOTHING = {
    "completed": None,
    "sets": None,
    "reps": None,
    "pain": None,
    "before": None,
    "after": None,
    "by_exercise": [],
}
ALL_3 = {**NOTHING, "completed": "all", "pain": 3}
TWO = [
    {"name": "side-lying hip abduction", "sets": 2, "reps": 10, "completed": "all"},
    {"name": "wall push-up", "sets": None, "reps": None, "completed": "none"},
]
LONG: dict[str, Any] = {
    "name": "Maximiliana",
    "clinic": "Willow Creek Physio",
    "phone": "+1 202 555 0100",
    "hours": "Mon-Thu 8:00 am-5:00 pm, Fri 8:00 am-12:00 pm",
    "emergency": "911",
    "is_open": False,
    "opening": "Wednesday 8:00 am",
    "day": "Wed Mar 10",
    "r": {**ALL_3, "completed": "part", "sets": 2, "reps": 10, "by_exercise": TWO},
    "easy": True,
    "pain": 4,
    "names": ["Maximiliana", "Bartholomew"],
    "next": "Wed Mar 10",
    "until": "Wed Mar 10",
    "number": 123,
    "numbers": [121, 122, 123],
    "who": "Bartholomew Long",
}
# Names, numbers and hours are the clinic's own words: they are kept out of how hard a text is to read.
SHORT = {
    **LONG,
    "name": "",
    "clinic": "Us",
    "phone": "Z",
    "hours": "Mon",
    "day": "",
    "names": ["Ana", "Ben"],
    "r": ALL_3,
}
TEXTS = Texts()


def test_both_languages_have_every_answer() -> None:
    for language in ("en", "es"):
        assert set(NAMES) <= set(TEXTS.names(language))


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("name", NAMES)
def test_an_answer_is_two_parts_at_most_and_never_begins_with_the_bare_word_stop(name: str, language: str) -> None:
    body = plain(TEXTS.text(name, language, LONG))

    assert parts(body) <= 2
    assert not body.lower().startswith("stop")


@pytest.mark.parametrize("name", NAMES)
def test_english_answers_read_at_grade_six(name: str) -> None:
    body = plain(TEXTS.text(name, "en", SHORT))

    assert textstat.automated_readability_index(body) <= 6
    assert textstat.coleman_liau_index(body) <= 6


@pytest.mark.parametrize("name", NAMES)
def test_spanish_answers_are_easy(name: str) -> None:
    """Fernández Huerta, Medidas sencillas de lecturabilidad, 1959: from 70 on a text is rather easy."""
    textstat.set_lang("es")
    try:
        assert textstat.fernandez_huerta(plain(TEXTS.text(name, "es", SHORT))) >= 70
    finally:
        textstat.set_lang("en_US")


RECORDED = {
    "all and pain": (ALL_3, "all, pain 3", "todo, dolor 3"),
    "an amount": ({**ALL_3, "sets": 2, "reps": 10}, "all, 2x10, pain 3", "todo, 2x10, dolor 3"),
    "sets alone": ({**NOTHING, "completed": "part", "sets": 1}, "part, 1 set", "una parte, 1 serie"),
    "no pain": ({**ALL_3, "pain": 0}, "all, pain 0", "todo, dolor 0"),
    "not done": ({**NOTHING, "completed": "none"}, "not done", "sin hacer"),
    "told apart": (
        {**ALL_3, "pain": 5, "before": 5, "after": 2},
        "all, pain 5 before, 2 after",
        "todo, dolor 5 antes, 2",
    ),
    "one by one": (
        {**NOTHING, "completed": "part", "by_exercise": TWO},
        "part, side-lying hip abduction 2x10, wall push-up not done",
        "una parte, side-lying hip abduction 2x10, wall push-up sin hacer",
    ),
}


@pytest.mark.parametrize(("recorded", "english", "spanish"), RECORDED.values(), ids=RECORDED)
def test_the_thanks_repeats_what_was_recorded(recorded: dict[str, Any], english: str, spanish: str) -> None:
    values = {**SHORT, "r": recorded, "easy": False}

    assert TEXTS.text("thanks", "en", values).startswith(f"Recorded: {english}")
    assert TEXTS.text("thanks", "es", values).startswith(f"Anotado: {spanish}")


@pytest.mark.parametrize("name", ["said_back_question", "said_back_reschedule", "said_back_unclear"])
@pytest.mark.parametrize(("is_open", "word"), [(True, "soon"), (False, "before Wednesday 8:00 am")])
def test_nobody_is_said_to_read_what_nobody_has_read(name: str, is_open: bool, word: str) -> None:
    body = TEXTS.text(name, "en", {**SHORT, "is_open": is_open})

    assert f"Nobody may read {'them' if name.endswith('unclear') else 'it'} {word}" in body


def test_help_says_who_this_is_how_to_reach_us_the_cost_and_how_to_end_it() -> None:
    """CTIA, Messaging Principles and Best Practices, 2023: an answer to HELP names sender, support and opt-out."""
    body = TEXTS.text("help", "en", LONG)

    for words in ("Willow Creek Physio", "+1 202 555 0100", "911", "rates may apply", "STOP", "computer"):
        assert words in body


def test_several_texts_come_as_one() -> None:
    both = [{"text": "stopped_too", "details": {}}, {"text": "thanks", "details": {"r": ALL_3, "easy": False}}]

    first, second = TEXTS.text("together", "en", {**SHORT, "parts": both}).split("\n")

    assert first.startswith("Your reminders have ended.")
    assert second.startswith("Recorded: all, pain 3.")
