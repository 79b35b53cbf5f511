"""How far an opt-out reaches: whether it is a carrier's bare word, and whether it means every way we write.

Whether a text is an opt-out at all is the reader's to say (core/reading).
"""

from reminders.core.attribution import words_of

# Twilio, "Advanced Opt-Out", default words for stopping and starting again; ALTO and PARE are from memory.
STOP_WORDS = frozenset({"stop", "stopall", "unsubscribe", "end", "quit", "revoke", "optout", "cancel", "alto", "pare"})
START_WORDS = frozenset({"start", "unstop", "yes"})
EVERYTHING = frozenset({"stopall", "everything", "anything", "todo", "todos", "todas", "nada", "ambos", "both"})
ALL_WAYS = ("all messages", "all of it", "all of them", "all contact", "stop all", "stop it all", "end all", "any way")
OTHER_WAY = {
    "sms": frozenset({"email", "emails", "mail", "mails", "mailing", "correo", "correos"}),
    "email": frozenset({"text", "texts", "texting", "sms", "phone", "mensajes", "textos", "celular", "telefono"}),
}
OWN_WAY = {
    "sms": ("all texts", "all these texts", "all the texts", "todos los mensajes", "todos estos mensajes"),
    "email": ("all emails", "all mails", "all these emails", "todos los correos"),
}


def is_keyword(text: str) -> bool:
    """Return whether a text is one of the carriers' bare words, which the provider acts on by itself."""
    words = words_of(text)
    return len(words) == 1 and words[0] in STOP_WORDS | START_WORDS


def means_every_way(text: str, channel: str) -> bool:
    """Return whether an opt-out by `sms` or `email` says that it means the other way too."""
    words = words_of(text)
    line = f" {' '.join(words)} "
    if set(words) & OTHER_WAY[channel]:
        return True
    if any(f" {phrase} " in line for phrase in OWN_WAY[channel]):
        return False
    return bool(set(words) & EVERYTHING) or any(f" {phrase} " in line for phrase in ALL_WAYS)
