"""Spanish replies as many different people would write them: signs, wishes to hear no more, exercises, numbers.

The signs hold by the rules alone (8 and more by its figure), so that no weight can lose them.
"""

import pytest

from reminders.core.reading import parse_session, read_reply
from reminders.core.reading.reader import evidence_of
from tests.core.strangers_opt_outs_es import NO_OPT_OUTS, OPT_OUTS
from tests.core.strangers_signs_es import HARMLESS, SIGNS

SESSION = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)
LETTERS = dict(zip([one.name for one in SESSION], "ABCD", strict=True))
LINES = {
    "silla si pared si talones no tandem no": "A all, B all, C none, D none",
    "sillas 2 de 10, pared 1 de 8 y ya": "A 2x10 all, B 1x8 part",
    "todo menos los talones": "C none",
    "todo menos el equilibrio": "D none",
    "todos excepto la pared y el tándem": "B none, D none",
    "hice los dos primeros": "A all, B all",
    "hice los primeros tres, el último no": "A all, B all, C all, D none",
    "el primero y el tercero": "A all, C all",
    "solo el primero": "A all",
    "me faltó el último": "D none",
    "me faltaron los talones": "C none",
    "el de la silla completo, el de la pared a medias": "A all, B part",
    "pararse y sentarse 2x10, flexiones 2x6, talones 2x12, equilibrio no":
        "A 2x10 all, B 2x6 part, C 2x12 all, D none",
    "1) sí 2) sí 3) no 4) sí": "A all, B all, C none, D all",
    "1 si 2 no 3 si 4 no": "A all, B none, C all, D none",
    "sentadillas 10 y 10, pared 8 y 8": "A 2x10 all, B 2x8 all",
    "sillas ok, lagartijas en la pared ok, talones ok, equilibrio a medias": "A all, B all, C all, D part",
    "la silla la hice, la pared no pude": "A all, B none",
    "los talones no los hice, lo demás sí": "C none",
    "el tándem lo dejé, los otros tres bien": "D none",
    "silla 10, pared 8, talones 12": "A -x10 part, B -x8 part, C -x12 part",
    "de silla hice una serie de diez y de talones dos de doce": "A 1x10 part, C 2x12 all",
    "pared 2x8 lo demas nada": "B 2x8 all",
    "puro talones hoy 2x12": "C 2x12 all",
    "nomás hice la silla": "A all",
    "solo hice lo de la silla y lo de la pared": "A all, B all",
    "hola buenas hice sentarse y pararse dos series de diez, la flexion en la pared dos de ocho,"
    " los talones solo una de doce y el equilibrio lo dejé para mañana":
        "A 2x10 all, B 2x8 all, C 1x12 part, D none",
    "levantarme de la silla 2 veces 10, empujar la pared 2 veces 8": "A 2x10 all, B 2x8 all",
    "pararme de puntas 2x12, la pared no": "B none, C 2x12 all",
    "puntitas 2x12, silla 2x10": "A 2x10 all, C 2x12 all",
    "las puntas de pie 1x12": "C 1x12 part",
    "un pie delante del otro sí, lo de talones no": "C none, D all",
    "hice silla y pared, dolor 3": "A all, B all",
    "silla y talones hechos; pared y equilibrio no": "A all, B none, C all, D none",
    "ni la pared ni los talones": "B none, C none",
    "todo bien salvo el tándem que me da miedo": "D none",
    "todo excepto el último": "D none",
    "los 3 primeros sí, el de equilibrio no": "A all, B all, C all, D none",
    "completé la silla, los talones a la mitad": "A all, C part",
    "talones 2x12 ✅ silla 2x10 ✅ pared ❌ tándem ❌": "A 2x10 all, B none, C 2x12 all, D none",
    "silla: 2x10. pared: 2x8. talones: 2x10. tándem: 1 vez": "A 2x10 all, B 2x8 all, C 2x10 part, D 1x- part",
    "sentarce y pararce 2x10, flexion pared 2x8": "A 2x10 all, B 2x8 all",
    "silla completa, pared completa, talones una sola serie, equilibrio nada": "A all, B all, C 1x- part, D none",
    "de la pared solo hice 5": "B -x5 part",
    "en talones llegué a 8 y paré": "C -x8 part",
    "talones nada mas una serie": "C 1x- part",
    "hice todo pero del tándem nada más un lado": "D part",
    "tándem solo 10 segundos": "D part",
    "me salté la pared": "B none",
    "me salté los talones y el tándem": "C none, D none",
    "no hice la silla porque me duele la rodilla, el resto sí": "A none",
    "hoy solo equilibrio": "D all",
    "el 1 y el 2 sí, el 3 y el 4 no": "A all, B all, C none, D none",
    "los números 1 y 3": "A all, C all",
    "tercer ejercicio no, los demás sí": "C none",
    "la segunda no pude": "B none",
    "quitando la pared todo": "B none",
    "quitando los talones hice todo, dolor 2": "C none",
    "silla dos tandas de diez, pared dos tandas de ocho, talones dos tandas de doce, equilibrio también":
        "A 2x10 all, B 2x8 all, C 2x12 all, D all",
    "los talones fueron 2x12 y la silla 2x8": "A 2x8 part, C 2x12 all",
    "2x10 de silla, 2x8 de pared, 2x12 de talones": "A 2x10 all, B 2x8 all, C 2x12 all",
    "2x10 silla 2x8 pared": "A 2x10 all, B 2x8 all",
    "10 sillas y 12 talones": "A -x10 part, C -x12 part",
    "una de silla, dos de pared": "A 1x- part, B 2x- all",
    "dos series en la silla, una en la pared y ninguna de talones": "A 2x- all, B 1x- part, C none",
    "la pared bien, la silla bien, el equilibrio fatal no lo terminé": "A all, B all, D part",
    "pude con silla y pared, no con talones": "A all, B all, C none",
    "empecé la pared pero no la acabé, la silla sí entera": "A all, B part",
    "silla hecho. pared hecho. talones pendiente": "A all, B all, C none",
    "sillas 2x10 dolor 2, pared 2x8 dolor 3, talones 2x12 dolor 1": "A 2x10 all, B 2x8 all, C 2x12 all",
    "sentadilla en silla 2x9, pared 2x8, lo demas completo": "A 2x9 part, B 2x8 all",
    "todo a excepción de los talones porque me dio un calambre": "C none",
    "fuera de la pared, todo": "B none",
    "aparte del equilibrio hice todo": "D none",
    "hice tres: silla, pared y talones": "A all, B all, C all",
    "hice 2: talones y equilibrio": "C all, D all",
    "la pared ocho y ocho, los talones doce y doce": "B 2x8 all, C 2x12 all",
    "pues mire las sillas las hice todas pero de los talones nomás la mitad": "A all, C part",
    "talones y silla 2x10 cada uno": "A 2x10 all, C 2x10 part",
    "no alcancé a hacer los talones": "C none",
    "no terminé el tándem": "D part",
    "solo pude 6 en la pared": "B -x6 part",
    "6 de pared y 10 de silla nada mas": "A -x10 part, B -x6 part",
    "la pared la hice doble, 4x8": "B 4x8 all",
    "silla 3x10, me animé": "A 3x10 all",
    "ejercicio 1: 2x10, ejercicio 2: 2x8, ejercicio 3: no": "A 2x10 all, B 2x8 all, C none",
    "ej 1 2x10 ej 2 2x8 ej 3 2x12 ej 4 ok": "A 2x10 all, B 2x8 all, C 2x12 all, D all",
    "ultimo no lo ise, lo demas si": "D none",
    "hice la mitad de los talones y nada de pared": "B none, C part",
    "listo sillas y talones, 2 de dolor": "A all, C all",
    "los dos últimos no": "C none, D none",
    "menos el segundo, todo": "B none",
    "silla dos de diez, lo demás no lo hice": "A 2x10 all",
    "ya hice la silla y la pared 2 series": "A 2x- all, B 2x- all",
    "no pude terminar los talones": "C part",
    "talones bien, silla bien, pared regular, tándem nada": "A all, B all, C all, D none",
    "hice los tres primeros, me faltó el equilibrio": "A all, B all, C all, D none",
    "solo los dos últimos": "C all, D all",
    "el segundo y el cuarto no": "B none, D none",
    "silla 2x10 talones 2x12 y ya": "A 2x10 all, C 2x12 all",
    "la pared 2x8 y los talones 2x12, el resto mañana": "B 2x8 all, C 2x12 all",
    "de los talones hice 1 serie nomás": "C 1x- part",
    "los talones no pude, la rodilla": "C none",
    "tándem si, silla si, pared no, talones no": "A all, B none, C none, D all",
    "1 si 2 si 3 si 4 no": "A all, B all, C all, D none",
    "el 1 sí, el 2 sí, el 3 no, el 4 no": "A all, B all, C none, D none",
    "todo completo menos el de la pared": "B none",
    "hice todo pero los talones solo una serie": "C 1x- part",
    "todos menos los dos últimos": "C none, D none",
    "pared dos por ocho silla dos por diez talones dos por doce y tandem": "A 2x10 all, B 2x8 all, C 2x12 all, D all",
    "me salté el tercero": "C none",
    "sentadillas 2x10 ✔ pared 2x8 ✔ talones ✘": "A 2x10 all, B 2x8 all, C none",
    "silla hecha pared hecha talones hechos tandem no": "A all, B all, C all, D none",
    "2x10 sillas, 2x8 lagartijas, 2x12 puntitas": "A 2x10 all, B 2x8 all, C 2x12 all",
    "8 en la pared y 10 en la silla": "A -x10 part, B -x8 part",
    "la silla la terminé, la pared la dejé a medias": "A all, B part",
    "no hice pared ni tándem": "B none, D none",
    "hice equilibrio y silla nada más": "A all, D all",
    "ni silla ni pared, talones sí": "A none, B none, C all",
    "silla y pared sí, talones y tándem no": "A all, B all, C none, D none",
    "solo alcancé a hacer la silla": "A all",
    "empecé con la silla 2x10, luego talones 2x10 y me cansé": "A 2x10 all, C 2x10 part",
    "los de talones sí los hice, los de la pared no": "B none, C all",
    "pared una serie, silla dos": "A 2x- all, B 1x- part",
    "el equilibrio no me sale, los otros sí": "D none",
    "la silla 1x10 porque me dolió la rodilla 4": "A 1x10 part",
    "lo de pararse y sentarse sí, lo de empujar la pared no": "A all, B none",
    "hice silla, pared y los talones. El tándem lo dejo para la tarde": "A all, B all, C all, D none",
    "flexiones en la pared completo, elevación de talones completo, lo otro no": "B all, C all",
    "una serie de silla y dos de pared": "A 1x- part, B 2x- all",
    "con los talones llegué a diez y paré": "C -x10 part",
}  # fmt: skip
PAINS = {
    "hice todo, pulso 78": None,
    "tengo 82 años y los hice todos": None,
    "bajé 3 kilos, todo hecho": None,
    "tardé 15 minutos": None,
    "caminé 6 cuadras y luego los ejercicios": None,
    "me tomó la presión y salió 13 con 8": None,
    "hice todo, 10 de 10 el programa": None,
    "10/10 los repetiría": None,
    "azúcar en 110, hice todo": None,
    "mi nieto cumplió 7 años, no los hice": None,
    "son las 9 y ya terminé": None,
    "4 mil pasos hoy": None,
    "hice los 4 ejercicios": None,
    "3 de 4 ejercicios": None,
    "día 5 cumplido": None,
    "me costó 8 dólares la silla nueva, hice todo": None,
    "oxígeno 96, pulso 70, todo hecho": None,
    "hoy cita a las 3": None,
    "presión 120/80 y dolor 2": 2,
    "peso 64 kilos, dolor 1": 1,
    "dolor 3 con 4": 4,
    "dolor d 2 a 3": 3,
    "dolor entre 3 y 5": 5,
    "del 0 al 10 un 4": 4,
    "de 10 le doy un 6": 6,
    "empecé con 5 y terminé en 2": 5,
    "2x10, 3 de dolor en la rodilla": 3,
    "hice 2x12 y el dolor no pasa de 2": 2,
    "mi dolor anda por el 5": 5,
    "dolor cero": 0,
    "nada de dolor": 0,
    "sacamos un 9 al programa, muy bueno": None,
    "30 segundos aguanté en el tándem": None,
    "me tomé 2 pastillas y luego los hice": None,
    "dos vasos de agua y 2x10, sin dolor": 0,
    "dolor de 3-4 al final": 4,
    "temperatura 37 y medio, no hice": None,
    "llegué a 12 talones sin parar": None,
    "ya los hice 2x10": None,
    "ya los hice 2x10 dolor 3": 3,
    "ya hice 2 series de 10, un 3 de dolor": 3,
    "pues hice 2 y me cansé": None,
    "hice 2 series, 2 de dolor": 2,
    "hice 2 de dolor 3": 3,
    "presion 12 con 8, dolor 4": 4,
    "dolor d 3": 3,
    "el dolor llegó hasta 9": 9,
    "llegué hasta 9 en los talones": None,
    "dolor hasta las 9 de la noche": None,
    "el dolor ha sido 2": 2,
    "hoy nada de dolor, ayer 6": 0,
    "ayer me dolió 6 pero hoy nada": 0,
    "no me duele nada": 0,
    "nada más me duele la espalda 3": 3,
    "hice 3 con 4 de dolor": 4,
    "tres series de diez, dolor dos": 2,
    "dolor como 4 con 5": 5,
    "el dolor subió a 6": 6,
    "anda por 3 mi dolor": 3,
    "ya los hice 2x10 y dolor 2": 2,
    "ya hice 2x8, 3 de dolor": 3,
    "hice 10 y 10, dolor 4": 4,
    "un 2 de dolor y un 10 de ganas": 2,
    "sin dolor, 15 minutos": 0,
    "nada de dolor 2x10": 0,
    "tomé 1 pastilla y dolor 3": 3,
    "dolor anduvo entre 2 y 4": 4,
    "del 1 al 10, 3": 3,
    "dolor 7 ayer, hoy 4": 4,
    "hice 2 de 4": None,
    "presión 13/8, dolor 1": 1,
    "a las 7 los hice": None,
    "78 años y cumpliendo": None,
    "bajó de 6 a 3 el dolor": 6,
    "me dolió como un 5 la rodilla": 5,
}


@pytest.mark.parametrize(("flag", "text"), [(flag, text) for flag, texts in SIGNS.items() for text in texts])
def test_a_danger_sign_is_found(flag: str, text: str) -> None:
    """At the start, in the middle or at the end, in plain words and in roundabout ones."""
    rules = evidence_of(text, "es", SESSION, None)[0].danger.grades
    assert flag in rules or (flag == "severe_pain" and flag in read_reply(text, "es", SESSION, None).red_flags)


@pytest.mark.parametrize("text", HARMLESS)
def test_what_only_shares_the_words_is_no_sign(text: str) -> None:
    """Denied, another's, long ago, an idiom, a thing."""
    assert not evidence_of(text, "es", SESSION, None)[0].danger.grades


@pytest.mark.parametrize("text", OPT_OUTS)
def test_a_wish_to_hear_no_more_is_heard(text: str) -> None:
    """From one word to three lines, alone or beside a report."""
    assert read_reply(text, "es", SESSION, None).intent == "opt_out"


@pytest.mark.parametrize("text", NO_OPT_OUTS)
def test_an_end_of_something_else_closes_no_consent(text: str) -> None:
    """Of an exercise, of a pain, of an appointment, or of the messages for a while."""
    assert read_reply(text, "es", SESSION, None).intent != "opt_out"


@pytest.mark.parametrize(("text", "wanted"), LINES.items())
def test_each_exercise_gets_what_is_said_of_it(text: str, wanted: str) -> None:
    lines = []
    for one in read_reply(text, "es", SESSION, None).by_exercise:
        amount = "" if one.sets is None and one.reps is None else f"{one.sets or '-'}x{one.reps or '-'} "
        lines.append(f"{LETTERS[one.name]} {amount}{one.completed}")

    assert ", ".join(sorted(lines)) == wanted


@pytest.mark.parametrize(("text", "pain"), PAINS.items())
def test_only_a_rating_is_pain(text: str, pain: int | None) -> None:
    """No age, pulse, weight, price or time; of a range the upper end, of today and yesterday today's."""
    assert read_reply(text, "es", SESSION, None).pain == pain


@pytest.mark.parametrize(("text", "asked", "pain"), [("3 con 4", "pain", 4), ("2 con 3", "pain", 3)])
def test_a_range_alone_is_pain_where_it_was_asked_for(text: str, asked: str, pain: int) -> None:
    assert read_reply(text, "es", SESSION, asked).pain == pain


@pytest.mark.parametrize(("text", "sets", "reps"), [
    ("ya los hice 2x10", 2, 10), ("pues ya los hice 2x8 y dolor 1", 2, 8), ("una sola serie de 8", 1, 8),
    ("hice diez y diez en todos", 2, 10), ("dije que hice una serie pero fueron las dos", 2, None),
    ("no fueron dos series, fue una", 1, None),
])  # fmt: skip
def test_the_amount_of_the_session(text: str, sets: int, reps: int | None) -> None:
    """A "ya" before it, "one single", a count put right."""
    reading = read_reply(text, "es", SESSION, None)
    assert (reading.sets, reading.reps) == (sets, reps)
