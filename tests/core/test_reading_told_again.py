"""Amounts told by saying a number again, ratings and reports put right, and "almost all": each beside its neighbour."""

import pytest

from reminders.core.reading import read_reply
from tests.corpus.measure import PARSED

LINES = [
    ("S2", "10-10-10 rows, 10-10 hinge, ran out of steam", {"band row": (3, 10), "hip hinge": (2, 10)}),
    ("S2", "10 10 10 on the rows and thats where i left it", {"band row": (3, 10)}),
    ("S1", "wall 8, wall 8 again. chair 10, chair 10", {"wall push-up": (2, 8), "sit to stand": (2, 10)}),
    ("S1", "chair 10, wall 8", {"sit to stand": (None, 10), "wall push-up": (None, 8)}),
    ("S1", "Heel raises 12, only once, then dinner rush", {"heel raise": (1, 12)}),
    ("S1", "heels x12 twice, wall x8 once", {"heel raise": (2, 12), "wall push-up": (1, 8)}),
    (
        "S2",
        "row 3/3, hinge 2/2, carry 2/4",
        {"band row": (3, None), "hip hinge": (2, None), "suitcase carry": (2, None)},
    ),
    ("S2", "carries done (4), rows done (3), the rest no", {"suitcase carry": (4, None), "band row": (3, None)}),
    ("S1", "everyone came, managed everything today bar the heel lifts", {"heel raise": (None, None)}),
]
AMOUNTS = [
    ("es", "10 veces cada uno x 2 y el dolor no pasó de 4", 2, 10, 4),
    ("es", "12 por serie, dos series. dolor nulo", 2, 12, 0),
    ("en", "12 per set, 2 sets", 2, 12, None),
    ("en", "went round two times", None, None, None),
    ("en", "a set of 8", 1, 8, None),
    ("en", "10 twice", 2, 10, None),
    ("en", "status: complete, pain=2, sets=3", 3, None, 2),
    ("en", "Sets 2, reps 10, pain 6", 2, 10, 6),
    ("en", "Scratch the 2x10. It was 1x10, my son counted", 1, 10, None),
    ("es", "Donde dice dos series ponga tres", 3, None, None),
    ("es", "wait no, fueron 2 sets, puse 1", 2, None, None),
    ("es", "ise la rutina d oi, dolor 2 d 10", None, None, 2),
]
RATINGS = [
    ("en", None, "done/3", 3),
    ("en", None, "finished up, back's a solid 5", 5),
    ("en", None, "pain was 5 down to 3 now, all done", 5),
    ("es", "pain", "fue un 6 pero ya bajo a 3", 6),
    ("en", "pain", "I'd go 2", 2),
    ("en", None, "scratch the 5, worst was 6. It all got done", 6),
    ("en", "pain", "ignore my 6, that was my husband's number. Mine is 2", 2),
    ("en", None, "chest hurt for about 5 min after, all done", None),
    ("en", None, "pain's a 5 some days but today it's a 2", None),
    ("en", None, "did em. 2 pain pills after", None),
    ("en", None, "pain? no, agony", None),
    ("en", None, "I do not have chest pain, it's only my ankle that's sore", None),
    ("en", None, "I do not have pain", 0),
    ("es", None, "Y3 saludos desde la cocina", 3),
    ("es", "pain", "dolor no, cansancio sí", 0),
    ("en", "pain", "four and three quarters ha ha", None),
    ("es", "amount", "tres sí, uno no", None),
    ("es", None, "hice todo y dolor ni pizca", 0),
    ("es", "pain", "hoy no hice nada", None),
    ("es", "pain", "dice que no hizo nada", None),
    ("es", "pain", "dice que ninguno", 0),
    ("en", None, "Not a 6, a 4, sorry", 4),
    ("en", None, "did em. Knees complained. Id give em a 4", 4),
    ("en", None, "it doesn't hurt today", 0),
    ("en", None, "did it. pain?? nah", 0),
    ("es", None, "Ya los hise seño, no me dolio na", 0),
    ("es", None, "Ya está, joven. Ni sentí dolor", 0),
    ("es", "pain", "hoy gracias a Dios nada", 0),
    ("es", None, "Realizado al completo; sin molestias reseñables.", None),
    ("es", None, "sin molestias, todo hecho", 0),
    ("en", None, "I done three sets of them rows and nary a thing else", None),
    ("en", None, "done, nary an ache", 0),
]
COMPLETED = [
    ("es", "Se hizo casi todo pues", "part"),
    ("es", "los hice todos", "all"),
    ("es", "hice hasta donde pude", "part"),
    ("en", "got thru most", "part"),
    ("en", "y no problems", "all"),
    ("en", "one and a half sets before the bell", "part"),
    ("es", "medio hechos, dolor 7", "part"),
    ("es", "Ninguno hecho.", "none"),
    ("en", "rained all day. None done.", "none"),
    ("en", "✅ 👍 1/10", "all"),
]
CORRECTIONS = [
    ("en", "Sorry duck, told you a fib, only did the rows", True),
    ("en", "I put down a 4 for the pain. It's really a 6", True),
    ("en", "I put down a 4 for the pain", False),
    ("es", "le contesté que sí por pena, la verdad no los hice", True),
    ("en", "I should say about a one", False),
    ("en", "not a 5, more a 4", False),
    ("es", "tache el 4, el dolor fue 6", True),
]
INTENTS = [
    ("en", None, "didnt bother", "skip"),
    ("en", None, "didnt bother with todays. stop texting", "opt_out"),
    ("en", None, "I didn't bother answering because I want these to stop", "opt_out"),
    ("es", "pain", "dejé de escribir porque me quedé dormida, un 3 fue", "pain"),
    ("es", None, "deje de escribir por favor", "opt_out"),
    ("es", None, "deje de escribirme porque no me interesa", "opt_out"),
    ("es", None, "Agradeceré suspender los recordatorios por viaje; retomo el 1 de marzo.", "pause"),
    ("es", None, "la hernia que me operaron en 2004 no estorba para esto?", "question"),
    ("en", None, "Whose number is this I keep getting?", "help"),
    ("en", None, "who sends these, my insurance?", "help"),
    ("en", None, "🤷‍♀️", "unclear"),
    ("es", None, "no los he hecho ni los haré hoy", "skip"),
    ("es", None, "para de mandar mensajes", "opt_out"),
    ("es", None, "necesito comprar una liga para esto?", "question"),
    ("es", None, "no quiero despertar mañana, ya estuvo bueno de vivir así", "pain"),
    ("es", None, "ya estuvo bueno de tanto aviso no?", "opt_out"),
    ("en", None, "if this is all thats left id sooner end it", "pain"),
    ("en", None, "felt swimmy headed so no more of those, everything else done", "report"),
    ("en", None, "no more of those texts, everything else is fine", "opt_out"),
    ("es", None, "hice los ejercicios, ahora mejor descanso", "report"),
]
NO_WISHES = {
    "en": (
        "didnt bother",
        "fell out with my sister on the phone so didn't bother",
        "couldn't bother today",
        "whose number is this I keep getting?",
        "stopped after the chair ones",
    ),
    "es": (
        "la hernia que me operaron no estorba para esto?",
        "dejé de contestar porque me dormí",
        "suspender los recordatorios por viaje, retomo el lunes",
        "paré después de la pared",
        "me caí para atrás de risa con su mensaje jajaja",
        "no me entero como va esto de los mensajes",
        "una vez cada cosa, no doy para más",
    ),
}
HARMLESS = {
    "en": (
        "I never fell, I only sat down on the floor on purpose lol",
        "Just landed back from Tenerife, crack on",
        "heard a pop but it was the radiator lol. done",
        "Dr. says my BP pill can make me woozy, should I hold the counter",
        "my father had chest pains at my age, should I get checked before I start?",
        "did 1 set then the super came to fix the sink",
        "My nose bled a little this morning, should I still do the wall ones today",
        "our old lab cant hold his bladder anymore so I was mopping",
        "I was out cold by 8 pm, so none",
        "my wife's legs go numb at night, can she do these too",
        "Heifer went down in the mud so I was late but I did both sets",
        "bike tipped over in the driveway, not me ha",
        "bored numb by that balance thing. did all",
        "fell into a good book and time got away, no exercise",
        "Could somebody remind me what the four are? The screen went dark.",
        "My back cracked getting up. Lovely, actually, loosened it right up",
    ),
    "es": (
        "no me dio mareo esta vez, terminé todo",
        "Se me rompió el coche, no la espalda",
        "hoy zafo",
        "me caí para atrás de risa con su mensaje",
        "caí en la trampa de mi mujer y me puso a hacerlos",
        "1x10 de todo y caí en la hamaca como piedra",
        "Niego caídas, niego disnea. Ejercicios realizados.",
        "un paciente se cayó encima de otro, qué noche. ya hice la rutina",
        "tengo noventa y uno y nadie me tumba",
        "Hoy cumplí. El hombro me tiró un cuatro",
        "oiga y si un día me desmayo haciendo esto quién me levanta",
        "perdí la voz, no el aliento. Rutina completa",
        "Me rompí el lomo en la chacra y aun así cumplí",
        "Una serie y gracias, que hoy estoy de bajón",
        "en el pecho no siento nada, lo que duele es el hombro, un 3",
    ),
}


def session_of(language: str) -> str:
    """Return the day's program that the texts answer."""
    return "S1" if language == "en" else "S3"


@pytest.mark.parametrize(("session", "text", "amounts"), LINES)
def test_a_number_said_again_is_another_set(
    session: str, text: str, amounts: dict[str, tuple[int | None, int | None]]
) -> None:
    lines = read_reply(text, "en", PARSED[session], None).by_exercise

    assert {line.name: (line.sets, line.reps) for line in lines} == amounts


@pytest.mark.parametrize(("language", "text", "sets", "reps", "pain"), AMOUNTS)
def test_an_amount_is_told_in_any_order_and_put_right(
    language: str, text: str, sets: int | None, reps: int | None, pain: int | None
) -> None:
    reading = read_reply(text, language, PARSED[session_of(language)], None)

    assert (reading.sets, reading.reps, reading.pain) == (sets, reps, pain)


@pytest.mark.parametrize(("language", "asked", "text", "pain"), RATINGS)
def test_a_rating_is_told_from_what_only_stands_like_one(
    language: str, asked: str | None, text: str, pain: int | None
) -> None:
    assert read_reply(text, language, PARSED[session_of(language)], asked).pain == pain


@pytest.mark.parametrize(("language", "text", "completed"), COMPLETED)
def test_nearly_all_is_part_and_no_problem_is_all(language: str, text: str, completed: str) -> None:
    assert read_reply(text, language, PARSED[session_of(language)], None).completed == completed


@pytest.mark.parametrize(("language", "text", "correction"), CORRECTIONS)
def test_a_fib_owned_up_to_is_a_correction(language: str, text: str, correction: bool) -> None:
    assert read_reply(text, language, PARSED[session_of(language)], None).correction is correction


@pytest.mark.parametrize(("language", "asked", "text", "intent"), INTENTS)
def test_giving_up_on_the_day_ends_no_texts(language: str, asked: str | None, text: str, intent: str) -> None:
    assert read_reply(text, language, PARSED[session_of(language)], asked).intent == intent


@pytest.mark.parametrize(
    ("language", "text", "signs"),
    [
        ("es", "oí un crac en la espalda y no me puedo enderezar del dolor", ("possible_fracture",)),
        ("en", "my back went crunch, cant stand up straight for the pain", ("possible_fracture",)),
        ("en", "back went crack, and I can't stand the pain", ("possible_fracture", "severe_pain")),
        ("es", "la espalda hizo crac, 9 de dolor y no me puedo enderezar", ("possible_fracture", "severe_pain")),
        ("es", "no me puedo mover del dolor", ("severe_pain",)),
    ],
)
def test_being_unable_to_straighten_up_belongs_to_the_fracture_it_stands_beside(
    language: str, text: str, signs: tuple[str, ...]
) -> None:
    assert set(read_reply(text, language, PARSED[session_of(language)], None).red_flags) == set(signs)


@pytest.mark.parametrize(
    ("text", "signs"),
    [
        ("was a 9 back at Easter, today 4", ()),
        ("was a 9 this morning, now 4", ("severe_pain",)),
        ("today 4. my back pain is 9 out of 10", ("severe_pain",)),
        ("9", ("severe_pain",)),
    ],
)
def test_a_rating_of_another_time_is_no_sign_beside_the_one_that_was_asked_for(
    text: str, signs: tuple[str, ...]
) -> None:
    assert read_reply(text, "en", PARSED["S1"], "pain").red_flags == signs


@pytest.mark.parametrize(("text", "intent"), [("Rutina realizada. EVA 3.", "report"), ("perdón, dolor 1 no 4", "pain")])
def test_a_rating_beside_a_word_of_the_session_reports_it(text: str, intent: str) -> None:
    assert read_reply(text, "es", PARSED["S3"], None).intent == intent
