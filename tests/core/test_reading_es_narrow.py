"""Spanish danger signs whose words an idiom shares; the idiom hides them no more. The signs hold by the rules alone."""

import pytest

from reminders.core.reading import parse_session
from reminders.core.reading.reader import evidence_of
from tests.core.danger_narrow_es import SIGNS

SESSION = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)


@pytest.mark.parametrize(("flag", "text"), [(flag, text) for flag, texts in SIGNS.items() for text in texts])
def test_a_sign_that_shares_the_words_of_an_idiom_is_found(flag: str, text: str) -> None:
    """A dream and a real fall, a word put right and the right word, a nap of the arm and of the grandson."""
    assert flag in evidence_of(text, "es", SESSION, None)[0].danger.grades
