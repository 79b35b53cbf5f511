"""Spanish lists of exercises: which word or amount speaks of which of them, and what became of the rest."""

import pytest

from reminders.core.reading import parse_session, read_reply
from tests.core import strangers_lines_es

SESSION = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)
LETTERS = dict(zip([one.name for one in SESSION], "ABCD", strict=True))
LINES = {
    "A, B y D sí, C no": "A all, B all, C none, D all",
    "B C y D, la A me la brinqué": "A none, B all, C all, D all",
    "Todo menos A, que no me da la rodilla": "A none",
    "menos la D": "D none",
    "hice la silla y la pared pero los talones ya no pude y el tándem tampoco": "A all, B all, C none, D none",
    "hice sillas y talones, la pared no": "A all, B none, C all",
    "todo menos el equilibrio, ese lo hice solo de un lado": "D part",
    "silla, pared y talones 2x8 cada uno": "A 2x8 part, B 2x8 all, C 2x8 part",
    "silla y pared, dos series": "A 2x- all, B 2x- all",
    "silla 10, pared 8, talones 12, de a una vez cada uno": "A 1x10 part, B 1x8 part, C 1x12 part",
    "2x10 2x8 2x12 y el tándem": "A 2x10 all, B 2x8 all, C 2x12 all, D all",
    "el primero y el tercero nomás": "A all, C all",
    "1 sí 2 sí 3 no 4 sí": "A all, B all, C none, D all",
    "ejercicios 1, 2 y 3 hechos. El 4 no": "A all, B all, C all, D none",
    "hice el 1 y el 2": "A all, B all",
    "solo pude con los talones": "C all",
    "en la pared llegué a 5": "B -x5 part",
    "la silla dice 2x10 pero yo hice 2x6, los otros tal cual": "A 2x6 part",
    "Me salté la silla, los otros tres completos": "A none",
    "hice la silla, los otros tres los dejé": "A all",
    "2 d 10 todo": "",
    "me agarré de la pared y lo hice todo": "",
}


@pytest.mark.parametrize(("text", "wanted"), (LINES | strangers_lines_es.LINES).items())
def test_each_exercise_gets_what_is_said_of_it(text: str, wanted: str) -> None:
    lines = []
    for one in read_reply(text, "es", SESSION, None).by_exercise:
        amount = "" if one.sets is None and one.reps is None else f"{one.sets or '-'}x{one.reps or '-'} "
        lines.append(f"{LETTERS[one.name]} {amount}{one.completed}")

    assert ", ".join(sorted(lines)) == wanted


@pytest.mark.parametrize(
    ("text", "pain"),
    [
        ("terminé, 1. mi marido se desmayó del susto jajaja", 1),
        ("todo hecho, 3 de dolor y 10 de flojera", 3),
        ("no es 1 el dolor, es 7", 7),
        ("el dolor no es 1, es 7", 7),
        ("Me dolió menos que la semana pasada, que fue 6; hoy 3", 3),
        ("el dolor 7 era de mi marido, el mío es 2", 2),
        ("el dolor pasó de 2 a 4", 4),
        ("empecé con 6 y terminé con 3", 6),
        ("no hay quien aguante este dolor", None),
        ("se me fue un pie pero no me caí", None),
    ],
)
def test_a_pain_is_hers_and_of_now(text: str, pain: int | None) -> None:
    assert read_reply(text, "es", SESSION, None).pain == pain
