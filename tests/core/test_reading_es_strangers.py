"""Spanish replies as many different people would write them: signs, wishes to hear no more, numbers.

The signs hold by the rules alone (8 and more by its figure), so that no weight can lose them.
"""

import pytest

from reminders.core.reading import parse_session, read_reply
from reminders.core.reading.reader import evidence_of
from tests.core.strangers_lines_es import PAINS
from tests.core.strangers_opt_outs_es import NO_OPT_OUTS, OPT_OUTS
from tests.core.strangers_signs_es import HARMLESS, SIGNS

SESSION = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)


@pytest.mark.parametrize(("flag", "text"), [(flag, text) for flag, texts in SIGNS.items() for text in texts])
def test_a_danger_sign_is_found(flag: str, text: str) -> None:
    """At the start, in the middle or at the end, in plain words and in roundabout ones."""
    rules = evidence_of(text, "es", SESSION, None)[0].danger.grades
    assert flag in rules or (flag == "severe_pain" and flag in read_reply(text, "es", SESSION, None).red_flags)


@pytest.mark.parametrize("text", HARMLESS)
def test_what_only_shares_the_words_is_no_sign(text: str) -> None:
    """Denied, another's, long ago, an idiom, a thing."""
    assert not evidence_of(text, "es", SESSION, None)[0].danger.grades


@pytest.mark.parametrize("text", OPT_OUTS)
def test_a_wish_to_hear_no_more_is_heard(text: str) -> None:
    """From one word to three lines, alone or beside a report."""
    assert read_reply(text, "es", SESSION, None).intent == "opt_out"


@pytest.mark.parametrize("text", NO_OPT_OUTS)
def test_an_end_of_something_else_closes_no_consent(text: str) -> None:
    """Of an exercise, of a pain, of an appointment, or of the messages for a while."""
    assert read_reply(text, "es", SESSION, None).intent != "opt_out"


@pytest.mark.parametrize(("text", "pain"), PAINS.items())
def test_only_a_rating_is_pain(text: str, pain: int | None) -> None:
    """No age, pulse, weight, price or time; of a range the upper end, of today and yesterday today's."""
    assert read_reply(text, "es", SESSION, None).pain == pain


@pytest.mark.parametrize(("text", "asked", "pain"), [("3 con 4", "pain", 4), ("2 con 3", "pain", 3)])
def test_a_range_alone_is_pain_where_it_was_asked_for(text: str, asked: str, pain: int) -> None:
    assert read_reply(text, "es", SESSION, asked).pain == pain


@pytest.mark.parametrize(("text", "sets", "reps"), [
    ("ya los hice 2x10", 2, 10), ("pues ya los hice 2x8 y dolor 1", 2, 8), ("una sola serie de 8", 1, 8),
    ("hice diez y diez en todos", 2, 10), ("dije que hice una serie pero fueron las dos", 2, None),
    ("no fueron dos series, fue una", 1, None),
    ("2*10 dolor 1", 2, 10), ("hice 8 de cada uno", None, 8), ("hice 8 y dsp otros 8 de cada ejercicio", 2, 8),
    ("hice tres de cuatro", None, None), ("ya los hice doctora, me costó pero 2x10", 2, 10),
])  # fmt: skip
def test_the_amount_of_the_session(text: str, sets: int | None, reps: int | None) -> None:
    """A "ya" before it, "one single", a count put right."""
    reading = read_reply(text, "es", SESSION, None)
    assert (reading.sets, reading.reps) == (sets, reps)
