"""What a person wrote in an answering mail: quoted text and signature cut off, answers between quoted lines kept.

The library mail-parser-reply knows how mail programs mark what they quote; what it would throw away too freely is
kept here, since a lost "pain 7" is worse than a signature read as words.
"""

import re

from mailparser_reply.parser import EmailMessage

from reminders.core.languages import LANGUAGES

# The library's patterns grow with the square of what they read; no reply by a person is longer than this.
LONGEST = 8_000
LONG_LINE = re.compile(r"([^\n]{900,1000}) (?=[^\n])")
QUOTED = re.compile(r"^\s*>")
# The library's own Spanish line never matches (its look-ahead forbids what it looks for), so it is said in English.
SPANISH_HEAD = re.compile(r"^[ \t]*El\b[^\n]{4,300}(?:\n[^\n]{1,200})?\bescribió:[ \t]*$", re.MULTILINE)
SPANISH_SENT = re.compile(r"^([* ]*)Enviado el:", re.MULTILINE)
SENT_FROM = re.compile(
    r"(Sent from my|Sent from|Get Outlook for|Enviado desde|Obtener Outlook)\b.{0,80}", re.IGNORECASE
)
MARKED = re.compile(r"(--|__)\s*")
RULE = re.compile(r"\s*[_-]{5,}\s*")
POSTSCRIPT = re.compile(r"p\.?\s?[sd]\b", re.IGNORECASE)


def own_words(text: str) -> str:
    """Return what the writer of a mail added, empty when all of it stands under a quote's head without marks.

    In that case only the text that we sent can tell hers from ours: see `core.mail_text.less_ours`.
    """
    lines = [
        line.rstrip() for line in LONG_LINE.sub(r"\1\n", text.replace("\r\n", "\n").replace("\r", "\n")).split("\n")
    ]
    has_quotes = any(QUOTED.match(line) for line in lines)
    unquoted = "\n".join(line for line in lines if not QUOTED.match(line) and not RULE.fullmatch(line))
    unquoted = re.sub(r"\n{3,}", "\n\n", unquoted).strip()[:LONGEST]
    unquoted = SPANISH_SENT.sub(r"\1Enviado:", SPANISH_HEAD.sub("On that day we wrote:", unquoted))
    replies = EmailMessage(text=unquoted, languages=list(LANGUAGES), keep_hyphen_lists=True).read().replies
    wanted = replies if has_quotes else replies[:1]
    bodies = [without_signature(headless(reply.content, reply.headers), reply.signatures) for reply in wanted]
    if not has_quotes and replies[0].headers:
        return ""
    return "\n".join(body for body in bodies if body)


def headless(content: str, head: str) -> str:
    """Return a piece of a mail without the line that says who wrote it when."""
    return content.removeprefix(head).strip() if head else content.strip()


def without_signature(body: str, signature: str) -> str:
    """Return the text without the signature that the library found in it, where it is one beyond doubt."""
    place = body.rfind(signature) if signature else -1
    if place >= 0 and is_signature(signature):
        body = body[:place]
    return "\n".join(line for line in body.splitlines() if not SENT_FROM.fullmatch(line.strip())).strip()


def is_signature(text: str) -> bool:
    """Whether a tail is nothing but a signature: marked as one, or a farewell, a name and perhaps a phone number."""
    first, *rest = [line.strip() for line in text.splitlines() if line.strip()]
    if MARKED.fullmatch(first):
        return not any(POSTSCRIPT.match(line) for line in rest)
    return is_name_like(first) and len(rest) <= 4 and all(is_name_like(line) for line in rest)


def is_name_like(line: str) -> bool:
    """Whether a line says no more than a farewell, a name or a phone number."""
    digits = sum(sign.isdigit() for sign in line)
    return (digits == 0 and len(line.split()) <= 4 and not POSTSCRIPT.match(line)) or digits >= 7
