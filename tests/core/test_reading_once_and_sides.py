"""One set without a number, one side of two, chests that do not hurt, and days left out: each beside its neighbour."""

import pytest

from reminders.core.reading import read_reply
from tests.corpus.measure import PARSED

LINES = [
    ("S2", "only the bands, once", {"band row": (1, None, "part")}),
    ("S2", "rows once, then quit", {"band row": (1, None, "part")}),
    ("S2", "bands once I get home", {}),
    ("S1", "Didn't fall over on the tandem once! Did the whole thing", {}),
    (
        "S1",
        "2 sets of sit to stands, the heel raises once, wall push ups twice, no balance",
        {
            "sit to stand": (2, None, "all"),
            "heel raise": (1, None, "part"),
            "wall push-up": (2, None, "all"),
            "tandem stance": (None, None, "none"),
        },
    ),
    ("S2", "did just the hip lifts, right side only", {"side-lying hip abduction": (None, None, "part")}),
    ("S2", "did just the hip lifts, both sides", {"side-lying hip abduction": (None, None, "all")}),
    ("S2", "did the rows, left the hinge", {"band row": (None, None, "all"), "hip hinge": (None, None, "none")}),
    ("S3", "hice el tandem, solo el lado derecho", {"equilibrio en tándem": (None, None, "part")}),
    ("S3", "Puro lado derecho del equilibrio", {"equilibrio en tándem": (None, None, "part")}),
    (
        "S3",
        "talones sí, tándem más o menos",
        {"elevación de talones": (None, None, "all"), "equilibrio en tándem": (None, None, "part")},
    ),
    (
        "S2",
        "Hinge yes. Carry: sort of. Row: no",
        {
            "hip hinge": (None, None, "all"),
            "suitcase carry": (None, None, "part"),
            "band row": (None, None, "none"),
        },
    ),
    ("S2", "Did 15 of each row set instead of 10", {"band row": (None, 15, "all")}),
]
AMOUNTS = [
    ("en", "amount", "All. Twice.", 2, None),
    ("en", "amount", "every last one, twice", 2, None),
    ("en", "amount", "five of each then tea", None, 5),
    ("en", "amount", "two of each", 2, None),
    ("en", None, "ran out of steam after round one", 1, None),
    ("en", None, "stopped after set one, the wall one hurt", 1, None),
    ("en", None, "stopped after the wall one", None, None),
    ("en", "amount", "had 2 sets to do, did 1", 1, None),
    ("en", None, "I said 2 sets but truth is I only did the 1", 1, None),
    ("es", "amount", "hice cinco de cada uno", None, 5),
    ("es", None, "dolor tres, series dos, repeticiones diez, listo", 2, 10),
    ("es", None, "donde dice 2x12 debe decir 2x8", 2, 8),
    ("es", None, "Dejé la segunda serie a medias por la telenovela", None, None),
    ("es", None, "di dos vueltas a la rutina", 2, None),
]
RATINGS = [
    ("en", None, "1×10 today, working up to 2", None),
    ("en", None, "working up to 2, pain 3", 3),
    ("en", None, "im done 2 times 10 paine 3", 3),
    ("en", None, "Actually scratch the pain 2, make it a 5", 5),
    ("en", "pain", "six, no, call it four", 4),
    ("en", "pain", "what's 10 mean", None),
    ("es", None, "hicimos todo mi señora y yo; ella con dolor 6, yo con 1", None),
    ("es", None, "hizo todo, ella con dolor 6", 6),
    ("es", None, "no es 5 de dolor es 5 de la tarde, a esa hora los hice", None),
    ("es", None, "no es 5 de dolor, es 3", 3),
    ("es", "pain", "del 4 no baja", 4),
]
INTENTS = [
    ("en", None, "lay on the couch and did sod all", "skip"),
    ("en", None, "did it all", "report"),
    ("en", None, "vertigo, everything spinning. none done", "skip"),
    ("en", None, "will I need these forever?", "question"),
    ("en", None, "will these texts ever end?", "opt_out"),
    ("en", None, "can these be turned off?", "opt_out"),
    ("en", None, "who r u", "help"),
    ("en", None, "Is this the right number for the physio place?", "help"),
    ("en", None, "be at it round 6", "later"),
    ("en", None, "tight band round my chest tonight", "pain"),
    ("en", None, "another round tonight", "later"),
    ("es", None, "faltaré hoy, tengo dentista a las 4", "skip"),
    ("es", None, "me duelen los riñones al agacharme, hoy lo dejo", "skip"),
    ("es", None, "hoy lo dejo para la noche", "later"),
    ("es", None, "está inflamado y calientito el tobillo, ni lo intenté", "skip"),
    ("es", None, "el tándem ni lo intenté, lo demás sí", "report"),
    ("es", None, "perdone la molestia, dolor 8", "pain"),
]
COMPLETED = [
    ("all bar the last set", "part"),
    ("2 exercises out of the 4", "part"),
    ("all of the 4", "all"),
]
NO_WISHES = {
    "en": ("will I need these forever?", "keep them coming", "who r u"),
    "es": ("faltaré hoy, tengo dentista a las 4", "hoy lo dejo, dolor 7"),
}
HARMLESS = {
    "en": (
        "no chest pain",
        "I do not have chest pain, it's only my ankle that's sore",
        "not dizzy, did it before yesterday",
        "thought I was dying on those wall ones haha. Done tho. Pain 2",
        "Finished. My chest cold is about gone too",
    ),
    "es": (
        "la profesora me va a matar, solo hice la mitad",
        "Estoy que me lleva el diablo con el tráfico, hoy no hice",
        "me asfixian las deudas pero cumplí los ejercicios",
        "me recuperé de la caída de marzo, sigamos con los avisos",
    ),
}


def session_of(language: str) -> str:
    """Return the day's program that the texts answer."""
    return "S1" if language == "en" else "S3"


@pytest.mark.parametrize(("session", "text", "told"), LINES)
def test_one_set_and_one_side_are_told_without_a_number(
    session: str, text: str, told: dict[str, tuple[int | None, int | None, str]]
) -> None:
    lines = read_reply(text, "es" if session == "S3" else "en", PARSED[session], None).by_exercise

    assert {line.name: (line.sets, line.reps, line.completed) for line in lines} == told


@pytest.mark.parametrize(("language", "asked", "text", "sets", "reps"), AMOUNTS)
def test_a_small_number_of_each_is_sets_and_a_larger_one_repetitions(
    language: str, asked: str | None, text: str, sets: int | None, reps: int | None
) -> None:
    reading = read_reply(text, language, PARSED[session_of(language)], asked)

    assert (reading.sets, reading.reps) == (sets, reps)


@pytest.mark.parametrize(("language", "asked", "text", "pain"), RATINGS)
def test_a_goal_an_hour_and_another_persons_number_are_no_rating(
    language: str, asked: str | None, text: str, pain: int | None
) -> None:
    assert read_reply(text, language, PARSED[session_of(language)], asked).pain == pain


@pytest.mark.parametrize(("language", "asked", "text", "intent"), INTENTS)
def test_a_day_left_out_is_told_from_one_put_off_and_from_a_wish(
    language: str, asked: str | None, text: str, intent: str
) -> None:
    assert read_reply(text, language, PARSED[session_of(language)], asked).intent == intent


@pytest.mark.parametrize(("text", "completed"), COMPLETED)
def test_some_of_so_many_is_part(text: str, completed: str) -> None:
    assert read_reply(text, "en", PARSED["S1"], "amount").completed == completed


@pytest.mark.parametrize(("language", "texts"), HARMLESS.items())
def test_what_is_denied_or_a_turn_of_speech_is_no_sign(language: str, texts: tuple[str, ...]) -> None:
    for text in texts:
        assert read_reply(text, language, PARSED[session_of(language)], None).red_flags == (), text


@pytest.mark.parametrize(
    ("language", "text", "sign"),
    [
        ("en", "no chest pain, more like pressure on it", "chest_or_breathing"),
        ("en", "no chest pain, but I can't breathe", "chest_or_breathing"),
        ("en", "no chest pain, my shoulder aches and I am sweating cold", "chest_or_breathing"),
        ("en", "no, chest pain", "chest_or_breathing"),
        ("en", "no chest pain until today", "chest_or_breathing"),
        ("en", "no dizziness until this morning", "faint_or_dizzy"),
        ("en", "thought I was dying on those wall ones, my chest was so tight", "chest_or_breathing"),
        ("en", "my chest cold is about gone but my chest hurts", "chest_or_breathing"),
        ("en", "did sod all, fell in the shower", "fall_or_injury"),
        ("es", "no me duele el pecho, es una presión", "chest_or_breathing"),
        ("es", "no me había caído hasta hoy", "fall_or_injury"),
        ("es", "me va a matar este dolor de pecho", "chest_or_breathing"),
        ("es", "me quiero matar, me va a matar la tristeza", "crisis"),
        ("es", "me ahogan las deudas y me falta el aire", "chest_or_breathing"),
        ("es", "me lleva la tristeza", "crisis"),
        ("es", "la tristeza me va a matar", "crisis"),
        ("es", "me recuperé de la caída de marzo pero ayer me caí otra vez", "fall_or_injury"),
        ("es", "perdone la molestia, me caí ayer", "fall_or_injury"),
    ],
)
def test_a_sign_beside_them_stays_one(language: str, text: str, sign: str) -> None:
    assert sign in read_reply(text, language, PARSED[session_of(language)], None).red_flags
