"""How text and addresses from outside are made fit to keep. Forms and mails are taken apart in `inbound`."""

import re

MAX_ADDRESS = 320


def clean(text: str) -> str:
    """Return the text with NUL and lone surrogates replaced: a database refuses them, and the raw bytes keep them."""
    return "".join("\ufffd" if sign == "\x00" or "\ud800" <= sign <= "\udfff" else sign for sign in text)


def number(text: str) -> str:
    """Return a phone number as E.164; what is no number, such as a brand's name, stays as it is.

    A plus sign that someone forgot to encode arrives as a blank.
    """
    bare = clean(text).strip()
    digits = re.sub(r"[\s().-]", "", bare.removeprefix("+"))
    if re.fullmatch(r"[1-9][0-9]{8,14}", digits, re.ASCII):
        return f"+{digits}"
    return bare[:MAX_ADDRESS]


def whole(text: str) -> int:
    """Return a whole number of at most 18 digits, 0 for anything else."""
    return int(text) if re.fullmatch(r"[0-9]{1,18}", text, re.ASCII) else 0
