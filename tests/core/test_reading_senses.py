"""What the judge knows of words that no reply to train on held: their pieces, and words of like sense."""

import pytest

from reminders.core.reading.features import (
    facts_of,
    meetings_of,
    names_of_word,
    near_words,
    orders_of,
    pieces_of,
    row_of_words,
    senses_in,
    words_of,
)
from reminders.core.reading.grammar import grammar_for
from reminders.core.reading.judge import the_judge
from reminders.core.reading.model import RED_FLAGS
from reminders.core.reading.reader import evidence_of
from reminders.core.words.en.senses import SENSES as ENGLISH
from reminders.core.words.es.senses import SENSES as SPANISH


@pytest.mark.parametrize(("one", "other"), [("piquetazo", "piquete"), ("wheezy", "wheezing"), ("unlisted", "unlist")])
def test_words_of_one_root_share_pieces(one: str, other: str) -> None:
    assert len(pieces_of(one) & pieces_of(other)) >= 4


def test_pieces_know_where_a_word_begins_and_ends() -> None:
    assert pieces_of("red") == {"g <re", "g red", "g ed>", "g <red", "g red>"}


def test_a_piece_of_a_very_long_word_is_not_looked_at_to_its_end() -> None:
    assert len(pieces_of("a" * 4000 + "z")) < 10


def test_both_languages_tell_the_same_senses_apart() -> None:
    assert list(ENGLISH) == list(SPANISH)


@pytest.mark.parametrize("senses", [ENGLISH, SPANISH], ids=["en", "es"])
def test_words_of_a_sense_are_spelled_as_the_reader_spells_them(senses: dict[str, str]) -> None:
    odd = [word for words in senses.values() for word in words.split() if not (word.isascii() and word.isalpha())]

    assert odd == []
    assert all(words == words.lower() for words in senses.values())


def test_a_word_has_the_senses_of_the_language_that_leads() -> None:
    english, spanish = grammar_for("en").lexicon, grammar_for("es").lexicon

    assert {"BREATH", "TIGHT"} <= set(senses_in(["lungs", "feel", "tight"], english))
    assert {"FALLING", "FLOOR"} <= set(senses_in(["cai", "al", "suelo"], spanish))


def test_senses_are_told_in_one_order_however_the_words_stand() -> None:
    lexicon = grammar_for("en").lexicon

    assert senses_in(["floor", "fell", "the", "fell"], lexicon) == senses_in(["fell", "the", "floor"], lexicon)


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "did 2x10, chest felt tight on the heel raises, no no no pain now"),
        ("es", "hice la pared y me caí, me caí al suelo de la cocina, dolor 4"),
    ],
)
def test_reading_weighs_the_very_features_that_training_counts(language: str, text: str) -> None:
    evidence, lexicon, _ = evidence_of(text, language, (), None)
    facts = facts_of(evidence, "report", "all")
    counted = [*facts, *near_words(row_of_words(evidence)), *meetings_of(evidence, lexicon)]
    counted += orders_of(evidence, lexicon)
    for word, char in words_of(evidence):
        counted += names_of_word(word, char, lexicon)

    read, trained = the_judge().judge(facts, evidence, lexicon), the_judge().weigh(counted)

    assert [read.share("danger", flag) for flag in RED_FLAGS] == [trained.share("danger", flag) for flag in RED_FLAGS]
    assert [read[one] for one in ("intent", "completed")] == [trained[one] for one in ("intent", "completed")]
