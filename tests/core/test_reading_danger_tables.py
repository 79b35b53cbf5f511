"""Tables of danger signs of all seven kinds in plain words, and of what only sounds like one; a lost sign fails.

The phrases stand in files of their own beside this one; the properties of signs among other sentences are here.
"""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.reading import read_reply
from reminders.core.reading.model import RED_FLAGS
from reminders.core.reading.reader import evidence_of
from tests.core import danger_phrases_en, danger_phrases_es, harmless_phrases_en, harmless_phrases_es

SIGNS = {
    f"{language}: {phrase}": (language, flag, phrase)
    for language, signs in (("en", danger_phrases_en.SIGNS), ("es", danger_phrases_es.SIGNS))
    for flag, phrases in signs.items()
    for phrase in phrases
}
HARMLESS = {
    f"{language}: {phrase}": (language, phrase)
    for language, phrases in (("en", harmless_phrases_en.HARMLESS), ("es", harmless_phrases_es.HARMLESS))
    for phrase in phrases
}


@pytest.mark.parametrize(("language", "flag", "phrase"), SIGNS.values(), ids=SIGNS)
def test_a_danger_sign_is_found(language: str, flag: str, phrase: str) -> None:
    """The sign is named and graded."""
    reading = read_reply(phrase, language, (), None)
    assert flag in reading.red_flags
    assert flag in reading.danger


@pytest.mark.parametrize(("language", "phrase"), HARMLESS.values(), ids=HARMLESS)
def test_what_only_sounds_like_a_danger_sign_is_none(language: str, phrase: str) -> None:
    """Denied, another's, long ago, feared, an idiom, an everyday number."""
    evidence, _, _ = evidence_of(phrase, language, (), None)
    assert evidence.danger.grades == {}


@pytest.mark.parametrize("language", ["en", "es"])
def test_few_harmless_replies_raise_an_alarm(language: str) -> None:
    """At most two in a hundred, weights included."""
    rows = [phrase for spoken, phrase in HARMLESS.values() if spoken == language]
    alarms = [phrase for phrase in rows if read_reply(phrase, language, (), None).red_flags]
    assert len(alarms) <= len(rows) * 0.02, alarms


BEFORE = {"en": ("", "Did all of them. ", "Hi Ben! ", "No pain at all. ", "I forgot yesterday, sorry. "),
          "es": ("", "Hice todo. ", "¡Hola! ", "Sin dolor. ", "Perdón, ayer se me olvidó. ")}  # fmt: skip
AFTER = {"en": ("", ". Thanks!", " 🙂", ". Will do the rest tomorrow.", ". What time are you open?"),
         "es": ("", ". ¡Gracias!", " 🙂", ". Mañana hago lo demás.", ". ¿A qué hora abren?")}  # fmt: skip


def _is_rating(flag: str, phrase: str) -> bool:
    """Tell whether only a number makes the sign; what a number counts may hang on what is asked beside it."""
    words = ("eight", "nine", "ocho", *"0123456789")
    return flag == "severe_pain" and any(word in phrase for word in words)


# A relative's trouble beside a session of the writer's own is the relative's, so these change with what stands around.
TOLD_BY_ANOTHER = ("Mom ", "mama ", "mi mamá ", "Mi mamá ", "mi esposo ", "he says ", "She ")
OWN_SIGNS = sorted(
    name
    for name, (_, flag, phrase) in SIGNS.items()
    if not phrase.startswith(TOLD_BY_ANOTHER) and not _is_rating(flag, phrase)
)


@given(st.sampled_from(OWN_SIGNS), st.integers(0, 4), st.integers(0, 4), st.booleans())
def test_a_danger_sign_stays_one_whatever_stands_around_it(name: str, before: int, after: int, loud: bool) -> None:
    """A sentence about something else hides nothing, nor do capitals."""
    language, flag, phrase = SIGNS[name]
    text = BEFORE[language][before] + phrase + AFTER[language][after]
    assert flag in read_reply(text.upper() if loud else text, language, (), None).red_flags


def test_every_kind_of_danger_has_its_table() -> None:
    """No kind is left to chance in either language."""
    assert set(danger_phrases_en.SIGNS) == set(danger_phrases_es.SIGNS) == set(RED_FLAGS)
