"""Wishes to hear no more, in carrier words and in anyone's own, and sentences that merely contain such a word.

Rules alone decide these, since an opt-out that is lost breaks the law; the texts that answer them are tested elsewhere.
"""

import pytest

from reminders.core.reading import read_reply

OPT_OUTS = {
    "en": (
        "stop", "STOP", "Stop please", "please stop", "stop texting me",
        "Please remove Mrs. Hale from your message service", "take me off this list", "quit sending me these",
        "no more texts", "unsubscribe", "dont text me anymore", "Stop, I fell", "stop i fell",
        "STOP. I fell yesterday", "i do not want these messages", "lose this number", "stpo", "sotp", "unsuscribe",
        "opt me out", "opt-out", "cancel", "end", "quit", "I'd like to be taken off", "Kindly cease all messages",
        "remove my number", "do not contact me again", "stop all messages to this number",
        "enough with the texts already", "I no longer wish to receive reminders", "delete me from your system",
        "don't send me any more of these", "turn these off", "make these stop", "I want out of the program",
        "discontinue messages please", "get me off your list", "please discontinue", "cease and desist",
        "stop messaging", "no mas mensajes", "kill the texts", "I'm done with these messages, remove me",
        "can you stop sending these", "not interested anymore, take me off", "leave me alone", "STOP STOP STOP",
        "Stop!!!!", "stop it", "pls stop", "stop sending", "stoppp", "unsubcribe me", "I revoke my consent",
        "block me from this", "end messages", "put a stop to these texts", "I didn't ask to get these texts",
        "knock it off with the texts", "cut it out with the messages", "I want these texts to stop", "stp texting me",
        "I'd like to cancel", "I want out", "stpp these mesages", "plese stpo texting",
    ),
    "es": (
        "alto", "baja", "stop", "parar", "ya no me manden mensajes", "no quiero más mensajes", "quíteme de la lista",
        "dame de baja", "darme de baja", "cancelar", "por favor dejen de escribirme", "bórrenme",
        "no me escriban más", "ya no quiero recibir esto", "sáquenme de esto", "dejen de molestar", "alto, me caí",
        "cancelen los mensajes", "favor de quitar a la señora Ruiz de su servicio de mensajes", "desuscribir",
        "basta de mensajes", "no deseo recibir más recordatorios", "quiero salirme del programa",
        "eliminen mi número", "ya no me textee", "paren con los mensajes", "no más", "deténganse con los textos",
        "me quiero dar de baja", "pare", "no mas por favor", "ya no mas", "paren los mensajes por favor",
        "suspendan los mensajes para siempre", "que me quitéis de la lista", "no me mandéis más mensajes",
        "borrame de la lista che", "dejad de mandarme mensajes",
    ),
}  # fmt: skip
MERELY_CONTAIN = {
    "en": (
        "I had to stop after set one", "stop by and see me sometime", "couldnt stop laughing, done",
        "bus stop was far, did them", "stopped after 1 set", "the rain didn't stop, did all",
        "at the end I was tired, done", "cancel my appointment tuesday", "quit smoking yesterday! done",
        "did them nonstop", "my husband told me to stop at 8", "end of set two hurt, 4", "I quit after 5",
        "cancelled my trip so I did all four", "should I stop the heel raises?",
        "will do at my next stop", "it took ten minutes to stop", "I never got my text this morning",
        "I want out of this life", "I dont want any more of this life",
    ),
    "es": (
        "alto en azúcar hoy, no hice", "me tuve que parar después de una serie", "baja la presión, hice todo",
        "hice el de pararse", "una serie no mas", "la pared no más",
        "al final me cansé", "subí y bajé escaleras", "no pude parar de reír, hecho",
    ),
}  # fmt: skip

OTHER_WISHES = {
    "dont text me at 6 in the morning, make it 9": "reschedule",
    "Do NOT text me at 6 in the morning. After 9.": "reschedule",
    "dont text me at 7, text me at 9 please": "reschedule",
    "don't text me at 5:30am. 8 is better": "reschedule",
    "Off to see my son in Denver the 3rd to the 12th, no reminders please": "pause",
    "Gonna be on vacation Aug 2-16 please dont send any": "pause",
    "dont text me tomorrow": "pause",
    "don't text me this week": "pause",
    "stop texting for now": "pause",
    "stop the texts for one month": "pause",
    "cant fibd the excersises send agian": "resend",
    "Could you send the exercises one more time in bigger... never mind just send again": "resend",
    "cant open it send again please": "resend",
    "Dear Clinic, must I take my shoes off for the balancing? Phyllis": "question",
    "dying to know, can I add weight?": "question",
    "can you add me back": "opt_in",
    "I said stop by mistake, put me back on": "opt_in",
    "sign me back up, by mistake I hit stop": "opt_in",
}


def _rows(table: dict[str, tuple[str, ...]]) -> list[tuple[str, str]]:
    """Return (language, text) of a table."""
    return [(language, text) for language, texts in table.items() for text in texts]


@pytest.mark.parametrize(("language", "text"), _rows(OPT_OUTS))
def test_a_wish_to_hear_no_more_is_an_opt_out(language: str, text: str) -> None:
    """Misspelled, polite, angry, or for somebody else."""
    assert read_reply(text, language, (), None).intent == "opt_out"


@pytest.mark.parametrize(("language", "text"), _rows(MERELY_CONTAIN))
def test_a_sentence_that_merely_contains_such_a_word_is_no_opt_out(language: str, text: str) -> None:
    """Stopping an exercise is not stopping the texts."""
    assert read_reply(text, language, (), None).intent != "opt_out"


@pytest.mark.parametrize(("text", "intent"), OTHER_WISHES.items())
def test_what_is_asked_for_in_nearly_the_same_words_is_done(text: str, intent: str) -> None:
    """Another hour, a time away, the list again, a question, a return."""
    assert read_reply(text, "en", (), None).intent == intent


@pytest.mark.parametrize(
    ("language", "text"),
    [("en", "Stop, I fell"), ("en", "stop i fell"), ("en", "STOP. I fell yesterday"), ("es", "alto, me caí")],
)
def test_an_opt_out_never_hides_a_danger_sign(language: str, text: str) -> None:
    """Both are carried out."""
    reading = read_reply(text, language, (), None)
    assert reading.intent == "opt_out"
    assert "fall_or_injury" in reading.red_flags
