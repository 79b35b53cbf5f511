"""Spanish wishes to hear no more, their near neighbours, and danger signs that such a wish must not hide.

The wishes hold by the rules alone or by rules and judge together; the signs beside them hold by the rules alone.
"""

import pytest

from reminders.core.reading import parse_session, read_reply
from reminders.core.reading.reader import evidence_of
from tests.core.opt_out_phrases_es import NO_OPT_OUTS, OPT_OUTS

SESSION = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)
SIGNS = {
    "fall_or_injury": (
        "no jodas, me caí otra vez", "no mames me caí", "dejen de molestar, me caí ayer",
        "de joven me caí y ayer me volví a caer", "de joven me caí mucho y anoche me caí de la cama",
        "el año pasado me caí y ayer me volví a caer", "me quité el yeso y me pegué en la rodilla",
        "no me manden más, me rompí la muñeca",
    ),
    "faint_or_dizzy": ("quítenme de la lista, me desmayé",),
    "chest_or_breathing": (
        "no aguanto estos mensajes y me duele el pecho", "no soporto sus mensajes, me falta el aire",
        "ya basta, me aprieta el pecho", "no me textees más, no puedo respirar", "no puedo llenar los pulmones",
    ),
    "severe_pain": (
        "no soporto este dolor", "ya no aguanto el dolor", "no aguanto mas estos dolores",
        "para de una vez, el dolor no lo aguanto",
    ),
    "nerve_or_bladder": ("quiteme de la lista, se me duerme la pierna", "dejen de escribir, me oriné sin sentir"),
    "crisis": (
        "estoy harta de vivir", "no quiero seguir con esta vida", "ya no quiero seguir en este mundo",
        "no quiero recibir más mensajes, quiero morirme", "cancelen todo, ya no quiero vivir",
        "no quiero seguir en el programa, me quiero morir", "no quiero continuar con esta vida",
    ),
}  # fmt: skip
PAUSES = (
    "no me manden mensajes esta semana",
    "paren los avisos este mes",
    "suspendan los recordatorios 10 días",
    "le pido no escribirme por unos quince días",
)
STAYING = ("no me quiten de la lista", "por favor no me den de baja", "no dejen de mandarme los avisos")


@pytest.mark.parametrize("text", OPT_OUTS)
def test_a_wish_to_hear_no_more_is_an_opt_out(text: str) -> None:
    """Polite, angry, roundabout, misspelled, half English."""
    assert read_reply(text, "es", SESSION, None).intent == "opt_out"


@pytest.mark.parametrize("text", NO_OPT_OUTS)
def test_a_neighbour_of_such_a_wish_is_none(text: str) -> None:
    """An exercise, a stick, a cast, a pain, or a message that never came."""
    assert read_reply(text, "es", SESSION, None).intent != "opt_out"


@pytest.mark.parametrize(("flag", "text"), [(flag, text) for flag, texts in SIGNS.items() for text in texts])
def test_the_words_of_such_a_wish_hide_no_sign(flag: str, text: str) -> None:
    """By the rules alone."""
    evidence, _, _ = evidence_of(text, "es", SESSION, None)
    assert flag in evidence.danger.grades


@pytest.mark.parametrize("text", PAUSES)
def test_for_a_stretch_it_is_a_pause(text: str) -> None:
    """With or without "for" before the stretch."""
    assert read_reply(text, "es", SESSION, None).intent == "pause"


@pytest.mark.parametrize("text", STAYING)
def test_not_to_be_taken_off_is_to_stay(text: str) -> None:
    """The denied wish."""
    assert read_reply(text, "es", SESSION, None).intent == "opt_in"


def test_hasta_luego_makes_no_pause() -> None:
    """A farewell names no day of return."""
    assert read_reply("ya no me manden mensajes, hasta luego", "es", SESSION, None).intent == "opt_out"
