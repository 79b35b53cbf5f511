"""A sign in one clause, and in the next what would take a sign away: each is told of its own clause alone."""

import pytest

from reminders.core.reading import read_reply
from tests.core.harmless_clauses import STILL_HARMLESS
from tests.corpus.measure import PARSED
from tests.corpus.tables import HARMLESS

SESSIONS = {"en": PARSED["S1"], "es": PARSED["S3"]}
SIGNS = {
    "en": {
        "chest_or_breathing": ("my chest feels tight", "I can't catch my breath"),
        "nerve_or_bladder": ("my foot has gone numb", "I wet myself this morning"),
        "fall_or_injury": ("I fell in the kitchen", "I twisted my ankle"),
        "possible_fracture": ("I felt a crack in my back", "something popped in my spine"),
        "faint_or_dizzy": ("I fainted in the shower", "I am very dizzy"),
        "severe_pain": ("the pain is unbearable", "my back pain is 9 out of 10"),
        "crisis": ("I want to end my life", "I don't want to live anymore"),
    },
    "es": {
        "chest_or_breathing": ("me duele el pecho", "me falta el aire"),
        "nerve_or_bladder": ("se me durmió el pie", "me oriné encima"),
        "fall_or_injury": ("me caí en la cocina", "me torcí el tobillo"),
        "possible_fracture": ("sentí un crujido en la espalda con mucho dolor", "me tronó la columna y me duele"),
        "faint_or_dizzy": ("me desmayé en la ducha", "estoy muy mareada"),
        "severe_pain": ("el dolor es insoportable", "el dolor de espalda es 9 de 10"),
        "crisis": ("quiero quitarme la vida", "ya no quiero vivir"),
    },
}
JOINTS = {
    "en": ("{harmless}, but now {sign}", "{harmless}. {sign}"),
    "es": ("{harmless}, pero ahora {sign}", "{harmless}. {sign}"),
}
# A number that is put right, and a mishap that comes with laughing, may as well be meant of the whole.
OF_THE_WHOLE = {"my hand slipped, meant 3"}


@pytest.mark.parametrize("language", SIGNS)
def test_no_harmless_sentence_hides_the_sign_behind_it(language: str) -> None:
    lost = []
    for at, told in enumerate(HARMLESS[language]):
        harmless = told.strip().rstrip(".!")
        for flag, signs in SIGNS[language].items() if harmless not in OF_THE_WHOLE else ():
            for joint in JOINTS[language]:
                text = joint.format(harmless=harmless, sign=signs[at % 2])
                if flag not in read_reply(text, language, SESSIONS[language], None).red_flags:
                    lost.append((flag, text))
    assert lost == []


BESIDE = {
    "en": (
        ("nerve_or_bladder", "I wet myself this morning, I had a fall back in 2019"),
        ("nerve_or_bladder", "my foot has gone numb, had a stroke in 2015, doing fine now"),
        ("chest_or_breathing", "I fell two years ago, that's why I come to you and my chest feels tight"),
        ("faint_or_dizzy", "I am very dizzy, it was my neighbor had the fall, not me"),
        ("crisis", "watching a movie where everybody dies, but now I don't want to live anymore"),
        ("severe_pain", "heavy rain so stayed in and did all four and the pain is unbearable"),
        ("severe_pain", "my back pain is 9 out of 10, when I was young I fell off a horse"),
        ("possible_fracture", "thank god no falls this month and something popped in my spine"),
        ("severe_pain", "my back pain is 9, if it stays do I call?"),
    ),
    "es": (
        ("nerve_or_bladder", "se me durmió el pie, el año pasado me caí pero ya estoy bien"),
        ("chest_or_breathing", "me falta el aire y hace dos años me fracturé la muñeca"),
        ("chest_or_breathing", "me truenan las rodillas como siempre, sin dolor pero ahora me falta el aire"),
        ("severe_pain", "vino mi hermana a verme. el dolor es insoportable"),
        ("severe_pain", "mi nieta me pegó la gripe pero ahora el dolor es insoportable"),
        ("crisis", "hace 3 años tuve una fractura y ya no quiero vivir"),
        ("faint_or_dizzy", "mi nieta me regaña si no los hago, pero estoy muy mareada"),
    ),
}


@pytest.mark.parametrize(
    ("language", "flag", "text"), [(language, *row) for language, rows in BESIDE.items() for row in rows]
)
def test_a_sign_of_now_is_not_taken_for_what_the_next_clause_tells(language: str, flag: str, text: str) -> None:
    assert flag in read_reply(text, language, SESSIONS[language], None).red_flags


@pytest.mark.parametrize(
    ("language", "text"), [(language, text) for language, texts in STILL_HARMLESS.items() for text in texts]
)
def test_what_one_mark_of_long_ago_or_one_denial_covers_stays_harmless(language: str, text: str) -> None:
    assert read_reply(text, language, SESSIONS[language], None).red_flags == ()
