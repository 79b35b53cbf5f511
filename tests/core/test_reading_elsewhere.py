"""Replies as people of other countries and other habits write them: wishes in any language, labels for amounts,
signs told as a likeness or beside another matter, and what shares their words and means none.
"""

import pytest

from reminders.core.reading import parse_session, read_reply
from reminders.core.reading.reader import evidence_of

CHAIR = parse_session("sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side")
BAND = parse_session("band row 3x10; hip hinge 2x10; suitcase carry 4x30 sec; side-lying hip abduction 2x10 each side")
SILLA = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)
SESSIONS = {"en": CHAIR, "es": SILLA}

ABROAD = (
    "bitte keine SMS mehr", "hören Sie damit auf", "arrêtez les messages svp", "ne m'envoyez plus rien",
    "basta sms, grazie", "non voglio più ricevere messaggi", "parem de mandar mensagens", "não me mandem mais nada",
    "huwag na po kayong mag-text", "geen berichten meer graag", "proszę nie pisać więcej", "ngừng nhắn tin cho tôi",
    "bu yao zai fa le", "prekratite", "pa voye mesaj ankò", "message mat bhejo", "sluta skicka sms",
    "退订", "отпишите меня пожалуйста", "стоп", "توقف",
)  # fmt: skip


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("text", ABROAD)
def test_a_wish_to_hear_no_more_holds_in_any_language(text: str, language: str) -> None:
    assert read_reply(text, language, SESSIONS[language], None).intent == "opt_out"


@pytest.mark.parametrize(
    "text", ["今天停止锻炼", "сегодня стоп после одного подхода", "plus de tandem", "basta talloni"]
)
def test_an_end_of_something_else_ends_nothing_in_any_language(text: str) -> None:
    assert read_reply(text, "en", CHAIR, None).intent != "opt_out"


SIGNS = {
    ("en", "chest_or_breathing"): ("3 but across my chest", "feels like a man sitting on my chest"),
    ("en", "nerve_or_bladder"): (
        "no warning at all when I have to pee now",
        "my leg just wasn't there when I stood",
        "right foot slaps the floor since Sunday",
    ),
    ("en", "fall_or_injury"): (
        "down onto my bum by the wall, nothing hurt",
        "a van backed into me at the shop",
        "a tin came down off the shelf right on my shoulder",
    ),
    ("en", "possible_fracture"): ("hip went snap on the step, hurts to put weight on it",),
    ("en", "faint_or_dizzy"): ("the whole kitchen was tilting on me", "keep greying out when I rise"),
    ("en", "severe_pain"): ("unbareable", "it hurts past what I can stand", "8-9 in the hip since noon"),
    ("en", "crisis"): (
        "if it weren't for the cat I would have killed myself",
        "some nights I hold the gun to my head",
        "I've decided to end it",
    ),
    ("es", "chest_or_breathing"): (
        "es como si tuviera un saco parado encima del pecho",
        "no me vuelve el aire",
        "3 pero en el pecho",
    ),
    ("es", "nerve_or_bladder"): ("desde ayer no siento nada entre las piernas",),
    ("es", "fall_or_injury"): ("culetazo en la escalera", "me somaté con la puerta"),
    ("es", "possible_fracture"): (
        "algo me tronó en la columna, duele 6",
        "sin avisar un latigazo fuerte en la espalda",
    ),
    ("es", "severe_pain"): ("el dolor ya pasó de lo que puedo aguantar", "nueve de diez la cadera"),
    ("es", "crisis"): (
        "si no fuera por mi perro ya me habría matado",
        "le pido a Dios que me lleve",
        "dejé una carta de despedida para mi hija",
    ),
}


@pytest.mark.parametrize(
    ("language", "flag", "text"), [(*kind, text) for kind, texts in SIGNS.items() for text in texts]
)
def test_a_sign_is_found_however_it_is_told(language: str, flag: str, text: str) -> None:
    session = SESSIONS[language]
    assert flag in read_reply(text, language, session, None).red_flags


HARMLESS = {
    "en": (
        "for the umpteenth time quit buzzing me",
        "folded the ironing board and did them all",
        "passed out leaflets all day, did none",
        "nothing fell over, all done",
        "had a dizzy spell back in May, none since. Y1",
        "wife's sister fell, did mine after, pain 1",
        "knee is giving me grief tonight",
        "the plans fell through so I did them all",
        "my shares took a tumble, did them anyway",
        "heard pops but my back didn't pop or crack, pain 1",
        "nothing unbearable, pain 3",
        "lost control of my whole day, did none",
    ),
    "es": (
        "hace un calor insoportable, hoy no",
        "torcí las sábanas a mano, luego hice todo",
        "caí dormida en el sofá, no los hice",
        "me rompí los sesos con las cuentas, hice todo",
        "tanto papeleo me tiene mareada, hoy no",
        "qué vista, me dejó sin aliento. Hice todo",
    ),
}


@pytest.mark.parametrize(
    ("language", "text"), [(language, text) for language, texts in HARMLESS.items() for text in texts]
)
def test_what_shares_the_words_of_a_sign_is_none_by_rule(language: str, text: str) -> None:
    evidence, _, _ = evidence_of(text, language, SESSIONS[language], None)
    assert evidence.danger.grades == {}


AMOUNTS = {
    "Sets: 2. Reps: 10. Pain: 3.": (2, 10, 3),
    "sets 2, reps 12, pain 1": (2, 12, 1),
    "reps 10 sets 2": (2, 10, None),
    "did 2 sets 10 times each, pain 4": (2, 10, 4),
    "pain hit 7 on the wall then settled to 3, all done": (None, None, 7),
    "pain was 6 yesterday, 2 today": (None, None, 2),
    "pain 9 last month, only 3 today": (None, None, 3),
    "Resting since ten": (None, None, None),
    "one sharp pain in the back": (None, None, None),
    "I can't take this pain any more": (None, None, None),
    "8 was a fat finger, pain is 2": (None, None, 2),
}


@pytest.mark.parametrize(("text", "told"), AMOUNTS.items())
def test_amounts_and_ratings_are_told_apart(text: str, told: tuple[int | None, ...]) -> None:
    reading = read_reply(text, "en", CHAIR, None)
    assert (reading.sets, reading.reps, reading.pain) == told


def test_a_rating_beside_a_question_is_kept_with_its_sign() -> None:
    reading = read_reply("tengo dolor 9 en la espalda, ¿puedo tomar otra pastilla?", "es", SILLA, None)
    assert (reading.pain, reading.danger) == (9, {"severe_pain": "urgent"})


LINES = {
    "rows 3x10 done, side lying skipped": {"band row": "all", "side-lying hip abduction": "none"},
    "did the rows and the hinges, forget the other two": {"band row": "all", "hip hinge": "all"},
    "no more carries for me, the rest done": {"suitcase carry": "none"},
}


@pytest.mark.parametrize(("text", "lines"), LINES.items())
def test_what_is_left_out_of_a_list_is_left_out(text: str, lines: dict[str, str]) -> None:
    told = {one.name: one.completed for one in read_reply(text, "en", BAND, None).by_exercise}
    assert told == lines


def test_a_report_beside_an_opt_out_is_read_too() -> None:
    reading = read_reply("all done 2x10, pain 2, and don't text me again", "en", CHAIR, None)
    assert (reading.intent, reading.completed, reading.sets, reading.reps, reading.pain) == ("opt_out", "all", 2, 10, 2)


def test_a_bare_opt_out_reports_nothing() -> None:
    reading = read_reply("I'm done with this program, don't text me again", "en", CHAIR, None)
    assert (reading.intent, reading.completed, reading.by_exercise) == ("opt_out", None, ())


RATINGS = {
    ("en", None, "pain never went over 3, all done"): 3,
    ("en", None, "started at 2, ended 5"): 5,
    ("en", None, "started at 4 but it was 7 by noon, did one set"): 7,
    ("en", None, "energy 8/10, pain 2/10"): 2,
    ("en", None, "sleep was a 3 out of 10, did them all"): None,
    ("en", None, "those exercises get a 10 out of 10 from me"): None,
    ("en", None, "pain: min 1, max 4"): 4,
    ("en", None, "pain has been 5 to 6 ever since"): 6,
    ("en", None, "all done. pain? none"): 0,
    ("en", None, "no pain in the knee, but my hip is sore"): None,
    ("en", None, "no pain relief from the two tablets"): None,
    ("en", None, "pain 2½ to 3"): 3,
    ("en", "pain", "nope, none"): 0,
    ("en", "pain", "not zero, I can tell you"): None,
    ("en", "pain", "between 4 and 5 I'd say"): 5,
    ("en", "pain", "down from a 7 last week to 4"): 4,
    ("en", "pain", "2/10. and my tea is 10/10"): 2,
    ("es", None, "10/10 me quedó la rutina, hecha completa"): None,
    ("es", None, "le doy un 10 a los ejercicios, los hice todos"): None,
    ("es", None, "vivo en un 5º piso, hice todos, dolor 3"): 3,
    ("es", None, "mi esposo trae 8 de dolor, yo 2. Hice todo"): 2,
    ("es", None, "silla 2x10 dolor 3, pared 2x8 dolor 1, talones 2x12 dolor 2"): 3,
    ("es", None, "sin dolor en el hombro, la espalda sí me duele"): None,
    ("es", "pain", "lunes 6, martes 5 y hoy 3"): 3,
    ("es", "pain", "me duele en 3 lugares"): None,
    ("es", "pain", "entre 6 y 7, tengo miedo"): 7,
}


@pytest.mark.parametrize(("said", "pain"), RATINGS.items())
def test_a_rating_is_told_from_what_only_looks_like_one(said: tuple[str, str | None, str], pain: int | None) -> None:
    language, asked, text = said
    assert read_reply(text, language, SESSIONS[language], asked).pain == pain


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("text", ["Y", "y", "Y.", "yes", "sí", "done", "hecho"])
def test_the_yes_that_every_reminder_invites_asks_for_the_pain_alone(text: str, language: str) -> None:
    reading = read_reply(text, language, SESSIONS[language], None)
    assert (reading.intent, reading.completed, reading.ask) == ("report", "all", "pain")


@pytest.mark.parametrize(("text", "completed"), [("half", "part"), ("tomorrow", "none"), ("N", "none")])
def test_a_plain_word_is_no_guess(text: str, completed: str) -> None:
    reading = read_reply(text, "en", CHAIR, None)
    assert (reading.completed, reading.ask) == (completed, "pain" if completed == "part" else None)


@pytest.mark.parametrize("text", ["10,10,8", "12 12", "8"])
def test_numbers_alone_tell_of_no_sign(text: str) -> None:
    assert read_reply(text, "en", CHAIR, None).red_flags == ()


HIDDEN = {
    "en": (
        "weak in the knees when I stand up", "I fell ok send someone", "crashed onto the chair and hurt my ribs",
        "the chair slipped out from under me and I hit the floor", "I fell through on the porch and cut my leg",
        "passed out lunch time today", "knocked myself out on the counter", "for the last time, take care of my dog",
        "was watching a movie in bed, fell out and hit my head", "they say I'm fine but I'm not, my chest hurts",
        "I thought I was over it but I wasn't, passed out again", "I fell yesterday so no to all of them",
        "I got dizzy, it hasn't happened so bad before", "zero strength in my left arm",
        "the news gave me chest pains and I'm sweating",
    ),
    "es": (
        "no puedo decir nada, se me traba la lengua", "creo que le dio un infarto a mi mamá",
        "mi mamá dice que tiene dolor en el pecho", "tengo calor y un dolor insoportable",
        "me quiero matar de una vez", "vi la novela y me quiero matar", "ya me voy para que descansen de mí",
        "caí rendida en el piso de la cocina",
    ),
}  # fmt: skip


@pytest.mark.parametrize(
    ("language", "text"), [(language, text) for language, texts in HIDDEN.items() for text in texts]
)
def test_no_idiom_hides_a_sign_that_shares_its_words(language: str, text: str) -> None:
    assert read_reply(text, language, SESSIONS[language], None).red_flags


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "why don't you stop texting me"),
        ("en", "cancel this"),
        ("en", "cancel it please"),
        ("en", "for the last time leave me alone"),
        ("es", "pare por el amor de dios"),
        ("es", "alto, perdone, no quiero mensajes"),
    ],
)
def test_nothing_that_sounds_like_one_hides_a_wish_to_hear_no_more(language: str, text: str) -> None:
    assert read_reply(text, language, SESSIONS[language], None).intent == "opt_out"
