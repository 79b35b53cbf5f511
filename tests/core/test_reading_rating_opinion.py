"""A number is recorded as the pain where it is meant so; one that people rate, fear, plan or were told is not."""

import pytest

from reminders.core.reading import ratings, read_reply
from reminders.core.reading.reader import evidence_of
from tests.corpus.measure import PARSED

SESSIONS = {"en": PARSED["S1"], "es": PARSED["S3"]}
MEANT = (
    ("en", None, "all done, pain 3", 3),
    ("en", "pain", "6", 6),
    ("en", None, "did them all, pain went from 4 to 2", 4),
    ("es", None, "listo, dolor 2", 2),
    ("es", None, "hice todo, antes era un 9 y hoy es un 2", 2),
)
OF_SOMETHING_ELSE = (
    ("en", None, "finished the exercises, golf was a 6 on the last hole"),
    ("en", None, "In 2 months I want to be at a 1. Did every exercise today"),
    ("en", None, "Finished! My husband gave his back a 7 today, he won't do his though"),
    ("es", None, "Ya cumplí, sueño con que algún día sea 0 el dolor"),
    ("es", None, "los terminé, de dificultad le pongo un 8"),
)
BESIDE = (
    ("en", None, "pain's a 5. stiffness more like 8 in the mornings", 5),
    ("en", None, "2 for pain. Tiredness? 8", 2),
    ("en", "meaning", "Pain's a 5, stiffness more like 7 in the mornings. All done", 5),
    ("en", None, "finihsed all of it, pain 2 or so, then walked to the 9 bus", 2),
    ("es", None, "ya hice todo, dolor 3, estuve mirando la novela, muy floja, le doy un 5", 3),
    ("es", None, "pensé que me iba a doler un 7 y fue un 2, terminé todo", 2),
)


def belief_in(language: str, asked: str | None, text: str, value: int) -> float:
    """Return how far a number of a text is believed to be the rating."""
    evidence, _, _ = evidence_of(text, language, SESSIONS[language], asked)
    candidates = ratings.Candidates(evidence)
    return max(candidates.belief(at) for at, one in candidates.values.items() if one == value)


@pytest.mark.parametrize(("language", "asked", "text", "pain"), MEANT)
def test_a_rating_of_this_session_is_recorded(language: str, asked: str | None, text: str, pain: int) -> None:
    assert read_reply(text, language, SESSIONS[language], asked).pain == pain


@pytest.mark.parametrize(("language", "asked", "text"), OF_SOMETHING_ELSE)
def test_a_number_for_something_else_is_not_recorded(language: str, asked: str | None, text: str) -> None:
    assert read_reply(text, language, SESSIONS[language], asked).pain is None


@pytest.mark.parametrize(("language", "asked", "text", "pain"), BESIDE)
def test_beside_a_rating_another_number_is_never_recorded(
    language: str, asked: str | None, text: str, pain: int
) -> None:
    assert read_reply(text, language, SESSIONS[language], asked).pain in (pain, None)


@pytest.mark.parametrize(("language", "asked", "text", "pain"), MEANT)
def test_what_is_meant_is_believed_in(language: str, asked: str | None, text: str, pain: int) -> None:
    assert belief_in(language, asked, text, pain) > ratings.LEAST


def test_a_severe_rating_that_the_rules_pass_by_is_a_danger_sign() -> None:
    text = "is it ok that the pain's at an 8? it never went over 4 before"
    reading = read_reply(text, "en", SESSIONS["en"], None)

    assert "severe_pain" in reading.red_flags


def test_a_doubted_rating_says_nothing_of_before_and_after() -> None:
    text = "my neighbor Hal says his went from 6 before to 3 after, I did all of mine"
    reading = read_reply(text, "en", SESSIONS["en"], None)

    assert (reading.pain, reading.before, reading.after) == (None, None, None)
