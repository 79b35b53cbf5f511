"""Tokens of links that work without sign-in: a row's number and a proof that we wrote it for that very row.

Each use (a client's page, an alert's page, an unsubscribe link) has a key of its own, derived from the secret. How
long a token lives is decided by whoever reads it, from the row. A number may be given again, after an erasure or in a
restored database, so the proof covers a mark of the row that no later row of that number has. Sign-in links are random
and kept as hashes instead.
"""

import base64
import hashlib
import hmac
import re
from collections.abc import Sequence

CLIENT_PAGE, ALERT_PAGE, UNSUBSCRIBE, REPLY_TO = "client page", "alert page", "unsubscribe", "reply to"
CLIENT_SHEET = "client sheet"  # printed: names the client, and leads to whichever session is current
SIGN_IN_STEP, GUESSING = "sign-in step", "guessing"
LARGEST_NUMBER = 2**31 - 1  # of a row: PostgreSQL takes no larger one in a question
PROOF_BYTES = 15  # 120 bits, 20 letters: short enough for a text
TOKEN = re.compile(r"([0-9a-z]{1,13})-([A-Za-z0-9_-]{20})")
DIGITS = "0123456789abcdefghijklmnopqrstuvwxyz"


def key_for(secret: str, use: str) -> bytes:
    """Return the key of one use, from which neither the secret nor another use's key can be told."""
    return hmac.new(secret.encode(), f"reminders {use}".encode(), hashlib.sha256).digest()


def proof(secret: str, use: str, words: str) -> str:
    """Return the keyed proof of some words: HMAC with SHA-256 (RFC 2104), its first 120 bits in URL-safe letters."""
    made = hmac.new(key_for(secret, use), words.encode(), hashlib.sha256).digest()
    return base64.urlsafe_b64encode(made[:PROOF_BYTES]).decode()


def is_proof(secrets: Sequence[str], use: str, words: str, given: str) -> bool:
    """Return whether a proof was made with any of the secrets."""
    return any(hmac.compare_digest(proof(secret, use, words), given) for secret in secrets)


def make_token(secrets: Sequence[str], use: str, number: int, mark: str = "") -> str:
    """Return the token of a row with a mark for one use, made with the first secret."""
    written = in_36(number)
    return f"{written}-{proof(secrets[0], use, marked(written, mark))}"


def read_token(secrets: Sequence[str], use: str, token: str, mark: str = "") -> int | None:
    """Return the row that a token names, None unless we made it for this use and mark with one of the secrets."""
    found = TOKEN.fullmatch(token)
    if not found or not is_proof(secrets, use, marked(found[1], mark), found[2]):
        return None
    return int(found[1], 36)


def number_in(token: str) -> int | None:
    """Return the number that a token claims to name, None where no row can have it; nothing is proved by it."""
    found = TOKEN.fullmatch(token)
    number = int(found[1], 36) if found else None
    return number if number is not None and number <= LARGEST_NUMBER else None


def marked(written: str, mark: str) -> str:
    """Return what a proof covers: a row's number and its mark."""
    return f"{written} {mark}" if mark else written


def in_36(number: int) -> str:
    """Return a whole number from 0 on in digits and small letters."""
    if number < 0:
        raise ValueError("A token names a row, whose number is not negative.")
    letters = ""
    while True:
        number, rest = divmod(number, 36)
        letters = DIGITS[rest] + letters
        if number == 0:
            return letters
