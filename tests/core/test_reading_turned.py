"""Turns that share the words of a wish or a sign and mean the other thing, each beside what it must not hide."""

import pytest

from reminders.core.reading import read_reply
from tests.corpus.measure import PARSED

INTENTS = [
    ("es", None, "Mi hijo me regaló unas pesas de 5 libras, sirven para esto?", "question"),
    ("es", None, "quiten esto", "opt_out"),
    ("es", None, "paso de recibir mensajes", "opt_out"),
    ("en", None, "This is my number now, use it", "unclear"),
    ("en", None, "this is my number now, remove me from your list", "opt_out"),
    ("en", None, "this is my number, lose it", "opt_out"),
    ("en", None, "nomore", "opt_out"),
    ("es", None, "menos el 4 todos", "report"),
]
SIGNS = [
    ("es", "me duele un 3, pero el pecho bien, eh", ()),
    ("es", "el pecho bien apretado", ("chest_or_breathing",)),
    ("en", "Chest feels fine so quit asking. Finished the lot", ()),
    ("en", "chest feels fine but my arm is numb", ("chest_or_breathing", "nerve_or_bladder")),
    ("en", "heart is fine but racing", ("chest_or_breathing",)),
    ("en", "knee gave out at 5, pain 7", ("nerve_or_bladder",)),
    ("en", "hurts 9 about 3 times a day", ("severe_pain",)),
    ("en", "8 out of 10 annoying pain in my hip", ("severe_pain",)),
    ("en", "can new pill make me dizzy? am now", ("faint_or_dizzy",)),
    ("en", "can the new pill make me dizzy?", ()),
]


@pytest.mark.parametrize(("language", "asked", "text", "intent"), INTENTS)
def test_words_of_a_wish_are_one_only_where_they_are_meant_so(
    language: str, asked: str | None, text: str, intent: str
) -> None:
    assert read_reply(text, language, PARSED["S1" if language == "en" else "S3"], asked).intent == intent


def test_a_relative_who_passes_the_texts_on_ends_nothing() -> None:
    text = "la señora no tiene saldo, yo le paso los mensajes desde mi cel"

    assert read_reply(text, "es", PARSED["S3"], None).intent != "opt_out"


@pytest.mark.parametrize(("language", "text", "signs"), SIGNS)
def test_a_sign_is_told_from_what_denies_or_supposes_it(language: str, text: str, signs: tuple[str, ...]) -> None:
    assert read_reply(text, language, PARSED["S1" if language == "en" else "S3"], None).red_flags == signs


def test_a_no_that_leads_to_another_rating_puts_the_rating_right_and_skips_nothing() -> None:
    reading = read_reply("no, pain 5 not 2", "en", PARSED["S1"], None)

    assert (reading.intent, reading.pain, reading.correction, reading.ask) == ("pain", 5, True, None)
    assert read_reply("not today, pain 6", "en", PARSED["S1"], None).intent == "skip"
