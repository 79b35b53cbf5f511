"""Passwords and codes of the second factor: made, checked, and refused when they are easy to guess.

At least 12 characters and 64 allowed, no make-up rules, paste welcome (OWASP ASVS 5.0, 6.2.1, 6.2.5, 6.2.7, 6.2.9;
12 as in 4.0.3, 2.1.1). Common values are refused (6.2.4; NIST SP 800-63B section 5.1.1.2, 2017, updated 2020, from
memory: "commonly-used, expected, or compromised", dictionary words, repeats, the user's own name) by a general
library, which looks for 30,000 leaked passwords, names, rows of keys, dates and swapped letters. What a clinic's own
guesser would try, that library does not know: those words are taken away and what is left must be long enough.
"""

import hmac
import re
from datetime import datetime

import pyotp
from argon2 import PasswordHasher
from argon2.exceptions import InvalidHashError, VerificationError

from reminders.errors import BadInput

LEAST, MOST = 12, 128
# Tries that a guesser who knows the common ones needs, as a power of ten: what the library calls "safely unguessable".
GUESSES_AT_LEAST = 8
LEFT_AT_LEAST = 5  # letters that are no part of a common word, row or repeat
STEP_SECONDS = 30  # RFC 6238 section 5.2
HASHER = PasswordHasher()  # argon2id with the library's defaults (RFC 9106, second recommended option)
# Compared with when nobody has this e-mail, so that both take the same time (OWASP ASVS 5.0, 6.3.8).
NOBODY = HASHER.hash("nobody has this password")
COMMON_WORDS = """
password passwort contrasena passw0rd p@ssw0rd p@ssword welcome letmein login admin administrator changeme
default secret qwerty qwertz azerty asdfgh zxcvbn iloveyou sunshine princess football baseball basketball
superman batman monkey dragon master shadow michael jordan charlie liverpool chelsea arsenal trustno1 starwars
pokemon computer internet samsung google facebook whatever freedom hunter killer ashley jessica daniel summer
winter spring autumn january february march april june july august september october november december monday
tuesday wednesday thursday friday saturday sunday clinic physio physiotherapy therapist therapy reminder
reminders exercise hospital doctor patient client health hello flower cheese cookie orange banana purple
silver golden ginger pepper soccer hockey tigger mustang corvette mercedes ferrari abc test guest user root
temp
"""
COMMON = tuple(COMMON_WORDS.split())
ROWS = ("01234567890", "abcdefghijklmnopqrstuvwxyz", "qwertyuiop", "asdfghjkl", "zxcvbnm", "1qaz2wsx3edc4rfv5tgb6yhn")


def refuse_weak(password: str, about: tuple[str, ...] = ()) -> None:
    """Raise BadInput unless a new password is long enough and hard to guess; `about`: her name, mail and clinic."""
    if len(password) < LEAST:
        raise BadInput(f"The password must have at least {LEAST} characters; a few words of your own do well.")
    if len(password) > MOST:
        raise BadInput(f"The password must have at most {MOST} characters.")
    if guesses(password, about) < GUESSES_AT_LEAST or len(left_over(password.lower(), about)) < LEFT_AT_LEAST:
        raise BadInput("The password is too easy to guess; add words that only you would put together.")


def guesses(password: str, about: tuple[str, ...]) -> float:
    """Return how many tries a guesser needs, as a power of ten.

    The library's lists take a while to load, and few processes ever set a password, so they are loaded here.
    """
    from zxcvbn import zxcvbn

    found = zxcvbn(password, user_inputs=words_about(about), max_length=MOST)
    return float(found["guesses_log10"])


def words_about(about: tuple[str, ...]) -> list[str]:
    """Return the words of her name, mail and clinic that are long enough to mean anything."""
    return [part for text in about for part in re.split(r"[^a-z0-9]+", text.lower()) if len(part) > 2]


def left_over(password: str, about: tuple[str, ...]) -> str:
    """Return what stays of a password without common words, keyboard rows, years and repeats."""
    for word in sorted((*COMMON, *words_about(about)), key=len, reverse=True):
        password = password.replace(word, "")
    for row in ROWS:
        for line in (row, row[::-1]):
            for length in range(len(line), 2, -1):
                for start in range(len(line) - length + 1):
                    password = password.replace(line[start : start + length], "")
    password = re.sub(r"(19|20)\d\d", "", password)
    password = re.sub(r"(.+?)\1+", r"\1", password)
    return re.sub(r"[\W_]+", "", password)


def hashed(password: str) -> str:
    """Return what is kept of a password."""
    return HASHER.hash(password)


def is_right(kept: str, given: str) -> bool:
    """Return whether a password fits what is kept; takes as long when nothing is kept."""
    try:
        return HASHER.verify(kept or NOBODY, given) and bool(kept)
    except (VerificationError, InvalidHashError):
        return False


def code_step(secret: str, code: str, now: datetime, used_step: int) -> int | None:
    """Return the time step whose code was given, None for a wrong or used one (RFC 6238; one step of drift)."""
    given = re.sub(r"\s", "", code)
    maker = pyotp.TOTP(secret)
    current = int(now.timestamp()) // STEP_SECONDS
    for step in (current, current - 1, current + 1):
        if step > used_step and hmac.compare_digest(maker.generate_otp(step), given):
            return step
    return None


def new_code_secret() -> str:
    """Return a fresh secret for a second factor."""
    return pyotp.random_base32()


def code_address(secret: str, email: str) -> str:
    """Return the address that an authenticator app reads from the QR code."""
    return pyotp.TOTP(secret).provisioning_uri(name=email, issuer_name="Exercise reminders")
