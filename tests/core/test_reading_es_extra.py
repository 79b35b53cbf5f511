"""Spanish replies in plain people's words, text by text: ratings, wishes, danger signs, and what only sounds like one.

Each table has near neighbours that mean the opposite, so that a rule too wide fails as one too narrow does.
"""

import pytest

from reminders.core.reading import parse_session, read_reply
from reminders.core.reading.reader import evidence_of

SESSION = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)

PAINS = {
    "what the sheet says is no rating": ("la hoja dice que si hay dolor de 9 pare, yo ando en 3", None, 3),
    "the rating on arrival is past": ("ya no duele como cuando empecé que era un 8, ahora es 2", None, 2),
    "a rating said and taken back": ("siete... no, cuatro", "pain", 4),
    "a rating typed wrong": ("donde puse 9 es 2 de dolor", None, 2),
    "hours are no rating": ("de 8 a 9 estuve haciéndolos, dolor 3", None, 3),
    "how many were done is no rating": ("no fueron todos, fueron 3 nomás", None, None),
    "not to bear it is not no pain": ("no lo aguanto, es horrible", "pain", None),
    "pain no": ("hice todo, dolor no", None, 0),
    "not one pain": ("ya los hice en la sala, ni un dolor", None, 0),
    "pain no, but soreness": ("dolor no, molestia sí", "pain", None),
    "a boat is no one": ("hice la mitad y todo se movía como en un barco", None, None),
}
INTENTS = {
    "to be signed off": ("desinscribirme", "opt_out"),
    "no longer taking part": ("ya no participo, gracias", "opt_out"),
    "this far": ("hasta aquí llegué, no me escriban más", "opt_out"),
    "not to be contacted again": ("prefiero que no me vuelvan a escribir", "opt_out"),
    "not wanting them to go on sending": ("no quiero que sigan mandando", "opt_out"),
    "a formal cancellation": ("Solicito la cancelación de estos mensajes", "opt_out"),
    "no need to send": ("no hace falta que sigan enviando", "opt_out"),
    "held for some dates": ("no me manden mensajes del 3 al 17", "pause"),
    "not for now": ("por ahora no me manden, yo aviso cuando vuelva", "pause"),
    "resume": ("reanudar", "resume"),
    "resume, shouted": ("REANUDAR", "resume"),
    "the pause lifted": ("quítele la pausa", "resume"),
    "sent again": ("pásamelos de nuevo", "resend"),
    "moved to a day": ("se puede mover pal viernes", "reschedule"),
    "later": ("más tardecito", "later"),
    "negative": ("negativo", "skip"),
    "missing the day out": ("me brinqué el día", "skip"),
    "nothing hurts today": ("hoy no me duele nada", "pain"),
    "off for a whole month": ("nos vamos al rancho todo julio, ya retomaré en agosto", "pause"),
    "after the nap": ("después de la siesta", "later"),
    "signed up anew": ("cancelé los mensajes y me arrepentí, ¿me inscriben de nuevo?", "opt_in"),
    "a number taken down wrong": ("tienen mal el teléfono, ni sé de qué me hablan", "wrong_number"),
}
NOT_OPT_OUTS = (
    "paré a la mitad porque me faltó el aire",
    "paré porque me dolía",
    "siempre sí mándenme los avisos, ya no me den de baja",
)
SIGNS = {
    "a fist on the chest": ("siento un puño apretándome el pecho", "chest_or_breathing"),
    "no breath to get": ("no alcanzo resuello", "chest_or_breathing"),
    "no air on the way up": ("no agarro aire al subir", "chest_or_breathing"),
    "breathing badly": ("no puedo respirar, no respiro bien", "chest_or_breathing"),
    "urine winning": ("me anda ganando la pipí", "nerve_or_bladder"),
    "a leg of water": ("se me hizo agua la pierna", "nerve_or_bladder"),
    "numb between the legs": ("entre las piernas lo tengo anestesiado", "nerve_or_bladder"),
    "drooling to one side": ("se me cae la baba de un lado", "nerve_or_bladder"),
    "had fallen": ("mi hijo me levantó, me había caído", "fall_or_injury"),
    "a fall kept quiet": ("que siempre sí me caí ayer, no le quería decir", "fall_or_injury"),
    "a shoulder that sounded": ("sonó el hombro y me quedó doliendo", "possible_fracture"),
    "a stone at the heel": ("sentí en el talón como si me hubieran dado una pedrada", "possible_fracture"),
    "dazed": ("ando tarantada", "faint_or_dizzy"),
    "dizzy beside something denied": ("no me entraba aire y me mareé", "faint_or_dizzy"),
    "a fall beside something denied": ("no dormí y me caí en la mañana", "fall_or_injury"),
    "sight gone black": ("terminé con la vista negra", "faint_or_dizzy"),
    "a fall of one's own beside another's": ("mi amiga que se cayó y yo también me caí", "fall_or_injury"),
    "a fall today beside one of years ago": ("hace dos años me caí y hoy me volví a caer", "fall_or_injury"),
    "a head hit at the table": ("me rompí la cabeza con la mesa buscando los lentes", "fall_or_injury"),
    "her own cast": ("me enyesaron la muñeca", "fall_or_injury"),
    "a husband's fall, a wife's own dizziness": ("mi esposo se cayó y yo me desmayé", "faint_or_dizzy"),
    "pain that makes her cry out": ("el dolor me tiene gritando", "severe_pain"),
    "an attack of one's own before the telly": ("viendo la novela me dio un infarto", "chest_or_breathing"),
    "beside one that is over": ("antes se me dormía la pierna, ya no, ahora me duele el pecho", "chest_or_breathing"),
}
HARMLESS = (
    "antes se me dormía la pierna pero ya no",
    "El año pasado me fracturé la cadera y miren ahora",
    "se me cayó el mundo encima con el papeleo",
    "el pecho bien, la respiración bien, dolor 2",
    "me quitaron un peso del pecho",
    "ya me quitaron el yeso",
    "me quedé sin aire en la llanta",
    "el mareo de abril no volvió",
    "se me caía la baba con mi nieto",
    "mi abuelo murió de un derrame",
    "no es que se me haya dormido el pie",
    "dije que me caí pero no, me senté de golpe",
    "estuve con mi amiga que se desmayó en la tienda, no los hice",
    "en la telenovela le dio un infarto a la villana y yo con mis ejercicios",
    "le enyesaron el brazo a mi nieto",
    "me enyesaron el pie de la niña y ando corriendo",
    "hace ocho años me quebré la muñeca y hoy hice todo",
    "me rompí la cabeza buscando las llaves jaja",
    "mi marido se cayó ayer y yo hice mis ejercicios",
    "apagué la televisión y los hice",
    "no me caí ni me mareé",
    "pensé que me caía pero no",
)
NAMES = {
    "el sube y baja de la silla 2x10": "sentarse y pararse",
    "empinarme 2x12": "elevación de talones",
    "pies en hilera hecho": "equilibrio en tándem",
    "empujando la pared 2x8": "flexión en la pared",
}


@pytest.mark.parametrize(("text", "asked", "pain"), PAINS.values(), ids=PAINS)
def test_the_pain_is_the_one_that_is_meant(text: str, asked: str | None, pain: int | None) -> None:
    """Or none, when no number is a rating."""
    assert read_reply(text, "es", SESSION, asked).pain == pain


@pytest.mark.parametrize(("text", "intent"), INTENTS.values(), ids=INTENTS)
def test_a_wish_is_read(text: str, intent: str) -> None:
    """In whichever words it comes."""
    assert read_reply(text, "es", SESSION, None).intent == intent


@pytest.mark.parametrize("text", NOT_OPT_OUTS)
def test_having_stopped_is_no_wish_to_hear_no_more(text: str) -> None:
    """Nor is a wish to be kept."""
    assert read_reply(text, "es", SESSION, None).intent != "opt_out"


@pytest.mark.parametrize(("text", "flag"), SIGNS.values(), ids=SIGNS)
def test_a_danger_sign_is_found_by_rule(text: str, flag: str) -> None:
    """Without leaning on trained weights."""
    evidence, _, _ = evidence_of(text, "es", SESSION, None)
    assert flag in evidence.danger.grades


@pytest.mark.parametrize("text", HARMLESS)
def test_idioms_the_past_and_others_are_no_sign(text: str) -> None:
    """As far as the rules go."""
    evidence, _, _ = evidence_of(text, "es", SESSION, None)
    assert evidence.danger.grades == {}


@pytest.mark.parametrize(("text", "name"), NAMES.items())
def test_a_nickname_names_its_exercise(text: str, name: str) -> None:
    """The name is the program's own."""
    assert [one.name for one in read_reply(text, "es", SESSION, None).by_exercise] == [name]
