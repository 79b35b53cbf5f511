"""Passwords: long enough, hard to guess, checked exactly as typed."""

from datetime import UTC, datetime

import pyotp
import pytest

from reminders.errors import BadInput
from reminders.web import passwords

NOW = datetime(2027, 3, 1, 15, 0, tzinfo=UTC)
ABOUT = ("Ben Ames", "ben@example.org", "Alder Hill Physio")

GOOD = [
    "three quiet herons wade",
    "  spaces at both ends  ",
    "correcthorsebatterystaple",
    "x9#Kq!vT2pLw",
    "ñandú volará lejos",
]
WEAK = {
    "too short": "short one",
    "too long": "x" * 129,
    "one word and a year": "Password2027!",
    "a row of the keyboard": "qwertyuiop12345",
    "one sign": "aaaaaaaaaaaaaaaa",
    "one pair": "abababababababab",
    "the clinic's name": "AlderHillPhysio1",
    "her own name": "benames.benames",
    "common words only": "welcome-summer-dragon",
    "digits in order": "123456789012345",
    "swapped letters and digits": "p@ssw0rd12345",
    "a leaked one": "1q2w3e4r5t6y",
    "a leaked phrase": "iloveyouforever",
    "a word said twice": "thunderthunder",
    "a word and a number": "thunderstorm12",
    "a name and a number": "jesuschrist123",
    "a walk over the keys": "zaq12wsxcde3",
}


@pytest.mark.parametrize("password", GOOD)
def test_words_of_her_own_are_taken(password: str) -> None:
    passwords.refuse_weak(password, ABOUT)


@pytest.mark.parametrize("password", WEAK.values(), ids=WEAK.keys())
def test_what_is_easy_to_guess_is_refused(password: str) -> None:
    with pytest.raises(BadInput, match="The password"):
        passwords.refuse_weak(password, ABOUT)


def test_a_password_is_checked_exactly_as_typed() -> None:
    kept = passwords.hashed("Three quiet herons ")

    assert kept.startswith("$argon2id$")
    assert passwords.is_right(kept, "Three quiet herons ")
    for other in ("three quiet herons ", "Three quiet herons", ""):
        assert not passwords.is_right(kept, other)


@pytest.mark.parametrize("kept", ["", "not a hash"])
def test_nobody_gets_in_without_a_password_that_is_kept(kept: str) -> None:
    assert not passwords.is_right(kept, "nobody has this password")


def test_a_code_counts_for_its_step_and_the_neighbours_and_only_once() -> None:
    """RFC 6238, section 5.2: one step of delay may be accepted, and a code only once."""
    secret = passwords.new_code_secret()
    maker, step = pyotp.TOTP(secret), int(NOW.timestamp()) // 30

    assert passwords.code_step(secret, maker.at(NOW), NOW, 0) == step
    assert passwords.code_step(secret, maker.generate_otp(step - 1), NOW, 0) == step - 1
    assert passwords.code_step(secret, maker.generate_otp(step + 1), NOW, 0) == step + 1
    assert passwords.code_step(secret, maker.generate_otp(step - 2), NOW, 0) is None
    assert passwords.code_step(secret, maker.at(NOW), NOW, step) is None
    spaced = f"{maker.at(NOW)[:3]} {maker.at(NOW)[3:]}"
    assert passwords.code_step(secret, spaced, NOW, 0) == step


def test_the_codes_are_those_of_the_published_example() -> None:
    """RFC 6238, appendix B: SHA-1, T = 59 s, the last six of 94287082."""
    secret = "GEZDGNBVGY3TQOJQGEZDGNBVGY3TQOJQ"  # "12345678901234567890" in base 32

    assert passwords.code_step(secret, "287082", datetime.fromtimestamp(59, UTC), 0) == 1
