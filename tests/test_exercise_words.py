"""The words of the exercises: there in both languages, plain, and saying the dose that was prescribed."""

import re
import tomllib
from collections import Counter

import pytest
import textstat

from reminders.core.dose import BANDS, HAND_SUPPORT, read_dose
from reminders.core.dose_words import in_short, in_words
from reminders.core.languages import LANGUAGES
from reminders.core.library import LIBRARY, exercise
from reminders.core.library_data import PATTERNS, WALKING
from reminders.core.library_limits import HELD, LIMITS, NONE_KNOWN, NOTED, PRECAUTIONS, REFUSED, SWAPPED
from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.programs import SessionItem, session_items
from reminders.texts import templates_folder
from reminders.texts_exercises import Words, exercise_words

EVERY = [(language, words) for language in LANGUAGES for words in exercise_words(language).exercises.values()]
every = pytest.mark.parametrize(
    ("language", "words"), EVERY, ids=[f"{language} {words.code}" for language, words in EVERY]
)
languages = pytest.mark.parametrize("language", LANGUAGES)


@languages
def test_every_exercise_has_words_and_every_word_an_exercise(language: str) -> None:
    tables = tomllib.loads((templates_folder() / "exercises" / f"{language}.toml").read_text(encoding="utf-8"))
    others = {"phrases", "patterns", "precautions", "effects", "reasons", "programs"}

    assert set(tables) - others == set(LIBRARY)


@every
def test_an_exercise_has_a_name_two_to_four_cues_and_a_safety_line(language: str, words: Words) -> None:
    assert 0 < len(words.short) <= len(words.name) <= 34
    assert len(words.short) <= 17
    assert 2 <= len(words.cues) <= 4
    assert all(line.endswith(".") for line in (*words.cues, words.safety))
    assert words.synonyms


@languages
def test_no_name_means_two_exercises(language: str) -> None:
    exercises = exercise_words(language).exercises.values()
    names = Counter(name.lower() for words in exercises for name in {words.name, words.short, *words.synonyms})

    assert [name for name, times in names.items() if times > 1] == []


@every
def test_standing_balance_says_what_to_hold(language: str, words: Words) -> None:
    one = exercise(words.code)
    if "counter" in one.equipment and one.pattern == "balance":
        assert re.search(r"hold the counter|agárrese", words.safety, re.IGNORECASE)


# Loaded, repeated or end-of-range bending and twisting is left out ("Too Fit To Fracture" 2014 / Osteoporosis Canada
# handout), so no cue may ask for it; "not with a twist" is allowed.
FORBIDDEN = re.compile(
    r"(?<!not with a )\btwist|\brotate|touch your toes|curl up|sit-?up\b|as far as you can|bend over|bend forward"
    r"|(?<!sin )\btuerza|\bgire el (cuerpo|tronco)|toque los pies|doble la espalda|todo lo que pueda",
    re.IGNORECASE,
)


@every
def test_no_cue_bends_or_twists_the_spine(language: str, words: Words) -> None:
    assert not FORBIDDEN.search(" ".join((*words.cues, words.safety)))


def test_the_forbidden_words_would_be_found() -> None:
    assert FORBIDDEN.search("Bend forward and touch your toes.")
    assert FORBIDDEN.search("Twist to the left.")
    assert FORBIDDEN.search("Toque los pies.")


# Grade by letters and sentences: automated readability index (Smith & Senter 1967) and Coleman-Liau (1975), as
# textstat counts them without a word list from the network.
@pytest.mark.parametrize("words", exercise_words("en").exercises.values(), ids=LIBRARY)
def test_english_cues_read_at_grade_six_or_lower(words: Words) -> None:
    text = " ".join((*words.cues, words.safety))

    assert textstat.automated_readability_index(text) <= 6
    assert textstat.coleman_liau_index(text) <= 6


# 70 and more is fairly easy, sixth grade: Fernández Huerta, "Medidas sencillas de lecturabilidad", 1959.
@pytest.mark.parametrize("words", exercise_words("es").exercises.values(), ids=LIBRARY)
def test_spanish_cues_are_easy_to_read(words: Words) -> None:
    textstat.set_lang("es")
    try:
        assert textstat.fernandez_huerta(" ".join((*words.cues, words.safety))) >= 70
    finally:
        textstat.set_lang("en_US")


def test_spanish_words_suit_women_and_men() -> None:
    gendered = re.compile(r"\b(sentad[ao]|acostad[ao]|parad[ao]|segur[ao]|sola|cansad[ao])\b", re.IGNORECASE)
    words = exercise_words("es")
    said = [line for one in words.exercises.values() for line in (one.name, one.short, *one.cues, one.safety)]
    said += [*words.precautions.values(), *words.reasons.values()]

    assert [line for line in said if gendered.search(line)] == []


@languages
def test_nothing_begins_with_the_bare_word_stop(language: str) -> None:
    for words in exercise_words(language).exercises.values():
        assert not [
            line for line in (words.name, *words.cues, words.safety) if line.lower().startswith(("stop", "alto"))
        ]


@languages
def test_every_pattern_precaution_reason_effect_and_program_has_words(language: str) -> None:
    words = exercise_words(language)

    assert set(words.patterns) == {*PATTERNS, WALKING}
    assert set(words.precautions) == {*PRECAUTIONS, NONE_KNOWN}
    assert set(words.reasons) == {limit.reason for _, limit in LIMITS}
    assert set(words.effects) == {REFUSED, SWAPPED, HELD, NOTED}
    assert set(words.programs) == set(STARTER_PROGRAMS)


def test_the_console_s_english_names_of_precautions_are_the_core_s_own() -> None:
    assert all(said == name for name, said in exercise_words("en").precautions.items())


DOSES = {
    "one set": ("heel-raise", "1x10", "10 times", "1x10", "10 veces", "1x10"),
    "two sets": ("heel-raise", "2x10", "10 times, twice", "2x10", "10 veces, 2 series", "2x10"),
    "three sets": ("heel-raise", "3x8", "8 times, 3 sets", "3x8", "8 veces, 3 series", "3x8"),
    "once": ("heel-raise", "1x1", "once", "1x1", "1 vez", "1x1"),
    "seconds each side": (
        *("tandem-stance", "2x20 sec", "20 seconds each side, twice", "2x20 sec each side"),
        *("20 segundos cada lado, 2 series", "2x20 seg cada lado"),
    ),
    "reps each side": (
        *("step-up", "1x8", "8 times each side", "1x8 each side", "8 veces cada lado", "1x8 cada lado"),
    ),
    "alternating": (
        *("seated-march", "1x10", "10 times, switching sides", "1x10", "10 veces, cambiando de lado", "1x10"),
    ),
    "minutes": ("steady-walk", "1x10 min", "10 minutes", "1x10 min", "10 minutos", "1x10 min"),
    "a band": (
        *("band-row", "2x10 red band", "10 times, twice, with the red band", "2x10 red band"),
        *("10 veces, 2 series, con la banda roja", "2x10 banda roja"),
    ),
    "a weight and no hands": (
        *("heel-raise", "3x8 2 kg no hands", "8 times, 3 sets, with 2 kg, no hands", "3x8 2 kg no hands"),
        *("8 veces, 3 series, con 2 kg, sin manos", "3x8 2 kg sin manos"),
    ),
}


@pytest.mark.parametrize(("code", "line", "en", "en_short", "es", "es_short"), DOSES.values(), ids=DOSES)
def test_a_dose_is_said(code: str, line: str, en: str, en_short: str, es: str, es_short: str) -> None:
    item = SessionItem("A", code, read_dose(line))
    english, spanish = exercise_words("en"), exercise_words("es")

    assert (english.dose(item), english.dose_short(item)) == (en, en_short)
    assert (spanish.dose(item), spanish.dose_short(item)) == (es, es_short)


@languages
@pytest.mark.parametrize("load", ["", "2 kg", *(f"{band} band" for band in BANDS)])
@pytest.mark.parametrize("hands", ["", *HAND_SUPPORT])
@pytest.mark.parametrize("amount", ["1x1", "2x10", "3x1 sec", "2x20 sec", "1x2 min"])
def test_every_dose_can_be_said_with_its_numbers(language: str, load: str, hands: str, amount: str) -> None:
    dose = read_dose(f"{amount} {load} {hands}")
    phrases = exercise_words(language).phrases

    for side in ("both", "each", "alternating"):
        assert in_short(dose, side, phrases).startswith(amount.split()[0])
        assert "{" not in in_words(dose, side, phrases)


@pytest.mark.parametrize("side", ["both", "each", "alternating"])
@pytest.mark.parametrize("line", ["2x10", "2x20 sec", "1x10 min", "3x8 2 kg", "2x10 red band no hands"])
def test_the_short_english_dose_reads_back_the_same(line: str, side: str) -> None:
    dose = read_dose(line)

    assert read_dose(in_short(dose, side, exercise_words("en").phrases)) == dose


def test_a_session_is_said_as_the_reader_takes_it_and_as_a_reminder() -> None:
    items = session_items(STARTER_PROGRAMS["falls-balance"].lists[0], 1)
    english, spanish = exercise_words("en"), exercise_words("es")

    assert english.line(items[0]) == "A sit to stand 10 times, twice"
    assert english.session(items) == (
        "sit to stand 2x10; heel raise 2x10; side steps 2x10 each side; "
        "tandem stance 2x20 sec each side; one-leg stand 2x20 sec each side"
    )
    assert spanish.session(items[:2]) == "sentarse y pararse 2x10; elevación de talones 2x10"


def test_a_language_without_a_file_is_named() -> None:
    with pytest.raises(LookupError, match=r"xx\.toml"):
        exercise_words("xx")
