"""Two signs in one reply: the second is not lost behind the first."""

import pytest

from reminders.core.reading import read_reply
from tests.corpus.measure import PARSED

SESSIONS = {"en": PARSED["S1"], "es": PARSED["S3"]}
BOTH = [
    ("en", "blacked out and hit the dresser", {"faint_or_dizzy", "fall_or_injury"}),
    ("en", "passed out and hit my head on the sink", {"faint_or_dizzy", "fall_or_injury"}),
    ("en", "I fell and now my leg is numb", {"fall_or_injury", "nerve_or_bladder"}),
    ("en", "my chest is tight and I'm dizzy", {"chest_or_breathing", "faint_or_dizzy"}),
    ("es", "me desmayé y me pegué en la cabeza", {"faint_or_dizzy", "fall_or_injury"}),
    ("es", "se me durmió la pierna y me caí", {"nerve_or_bladder", "fall_or_injury"}),
    ("es", "me mareé y me falta el aire", {"faint_or_dizzy", "chest_or_breathing"}),
    ("es", "me caí y ya no quiero vivir", {"fall_or_injury", "crisis"}),
]
ONE = [
    ("en", "did all, pain 9", {"severe_pain"}),
    ("en", "I fell in the kitchen, nothing hurts", {"fall_or_injury"}),
    ("en", "dizzy all morning, no exercises", {"faint_or_dizzy"}),
    ("es", "me caí en el patio, no hice nada", {"fall_or_injury"}),
    ("es", "me falta el aire desde ayer", {"chest_or_breathing"}),
]


@pytest.mark.parametrize(("language", "text", "signs"), [*BOTH, *ONE])
def test_each_sign_is_found_and_no_other(language: str, text: str, signs: set[str]) -> None:
    assert set(read_reply(text, language, SESSIONS[language], None).red_flags) == signs
