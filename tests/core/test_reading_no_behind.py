"""A bare "no" behind a sign denies it, what is feared again has been, and a wish for good is no pause."""

import pytest

from reminders.core.reading import Reading, read_reply
from tests.corpus.measure import PARSED

SESSIONS = {"en": PARSED["S1"], "es": PARSED["S3"]}
DENIED_BEHIND = [
    ("es", "terminé la rutina, de mareo nada, solo que me duele el pecho", {"chest_or_breathing"}),
    ("es", "dolor de pecho no, pero mareado sí", {"faint_or_dizzy"}),
    ("es", "hormigueo no hay, nomás el tronido que sentí en la espalda baja", {"possible_fracture"}),
    ("es", "falta de aire no tengo, tengo un dolor que no resisto", {"severe_pain"}),
    ("en", "dizzy: no. fell: yes", {"fall_or_injury"}),
    ("en", "all done. chest pain no, dizziness none", set()),
]
STATED = [
    ("es", "tengo mareo no puedo pararme", {"faint_or_dizzy"}),
    ("es", "dolor de pecho nada bueno", {"chest_or_breathing"}),
    ("es", "me duele el pecho no se me quita", {"chest_or_breathing"}),
    ("es", "me caí nada, un golpecito", {"fall_or_injury"}),
    ("en", "chest pain no better", {"chest_or_breathing"}),
    ("en", "I am dizzy no exercises today", {"faint_or_dizzy"}),
    ("es", "ya no me falta el aire, ahora me dan vahídos cuando camino", {"faint_or_dizzy"}),
    ("en", "worried I'll faint again like I did this morning", {"faint_or_dizzy"}),
    ("es", "tengo miedo de desmayarme otra vez como ayer", {"faint_or_dizzy"}),
    ("es", "3 caídas este mes contando la de hoy, ninguna grave", {"fall_or_injury"}),
    ("es", "se me vino el tiempo encima y me caí", {"fall_or_injury"}),
    ("en", "fell off my chair doing my program", {"fall_or_injury"}),
    ("en", "no chest pain but my back is a 9", {"severe_pain"}),
    ("es", "habla el esposo de carmen se le fue la vista y se puso blanca, ya está acostada", {"faint_or_dizzy"}),
    ("es", "habla la hija de Rosa, se cayó en la cocina", {"fall_or_injury"}),
]
WISHES = [
    ("en", "going to Florida till April, just take me off this for good", "opt_out"),
    ("en", "please pause the texts... no on second thought just cancel them for good", "opt_out"),
    ("en", "8 weeks is plenty for me, stop the texts", "opt_out"),
    ("en", "away 8 weeks, stop the texts till then", "pause"),
    ("en", "stop the texts for 2 weeks, not for good", "pause"),
    ("es", "paren los mensajes dos semanas, no para siempre", "pause"),
    ("en", "can you not text me so early? 10 would be lovely", "reschedule"),
    ("en", "dont text me so early, in fact dont text me at all", "opt_out"),
    ("en", "how do I turn off the capitals. anyway I did the exercises", "report"),
]
AMOUNTS: list[tuple[str, str, dict[str, object]]] = [
    ("en", "Y3, 1 set only", {"completed": "part", "sets": 1, "pain": 3}),
    ("es", "S3, 1 serie", {"completed": "part", "sets": 1, "pain": 3}),
    ("en", "Y10, 2 sets", {"sets": 2, "reps": 10, "pain": None}),
    ("en", "did 100%", {"completed": "all"}),
    ("en", "did 90%", {"completed": "part"}),
    ("es", "hice el 100%, dolor 1", {"completed": "all", "pain": 1}),
    ("es", "sólo hice la silla y no todas, como 6", {"pain": None}),
    ("en", "did 8 out of 10 sit to stands and that's it", {"pain": None}),
    ("en", "10/10 for you girls! all done", {"pain": None}),
    ("es", "le pongo un 4 al dolor y un 10 a ustedes, hice todo", {"pain": 4}),
    ("es", "no me dolió nada la semana pasada, esta vez fue 4 y completé todo", {"pain": 4}),
    ("en", "did both sets. mild discomfort, nothing a 20 minute nap won't fix", {"pain": None}),
    ("es", "no era 2x10 era 1x10", {"completed": "part", "sets": 1, "reps": 10, "correction": True}),
    ("es", "dolor inicial de 3 y final de 6", {"pain": 6}),
    ("es", "talones una sola de 12, lo demás completo", {"completed": "part"}),
    ("en", "sorry pain 2", {"pain": 2, "correction": True}),
    ("es", "perdón, dolor 2", {"pain": 2, "correction": True}),
]


def reading_of(language: str, text: str) -> Reading:
    return read_reply(text, language, SESSIONS[language], None)


@pytest.mark.parametrize(("language", "text", "flags"), DENIED_BEHIND)
def test_a_bare_no_behind_a_sign_denies_it(language: str, text: str, flags: set[str]) -> None:
    assert set(reading_of(language, text).red_flags) == flags


@pytest.mark.parametrize(("language", "text", "flags"), STATED)
def test_what_only_resembles_a_denial_or_a_fear_states_the_sign(language: str, text: str, flags: set[str]) -> None:
    assert set(reading_of(language, text).red_flags) == flags


@pytest.mark.parametrize(("language", "text", "intent"), WISHES)
def test_a_wish_ends_pauses_or_moves_what_it_says(language: str, text: str, intent: str) -> None:
    assert reading_of(language, text).intent == intent


@pytest.mark.parametrize(("language", "text", "fields"), AMOUNTS)
def test_amounts_and_ratings_keep_apart(language: str, text: str, fields: dict[str, object]) -> None:
    shape = reading_of(language, text).as_dict()

    assert {name: shape[name] for name in fields} == fields
