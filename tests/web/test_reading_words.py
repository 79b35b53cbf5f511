"""A reading in plain words for staff."""

from typing import Any

import pytest

from reminders.web.console.reading_words import in_words


@pytest.mark.parametrize(
    ("reading", "words"),
    [
        ({"intent": "unclear", "choice": 0}, "answered 0"),
        ({"intent": "unclear", "choice": 2}, "answered 2"),
        ({"intent": "unclear", "choice": "easy"}, "chose easy"),
        ({"intent": "unclear", "choice": None}, "not clear"),
        ({"intent": "report", "completed": "all", "sets": 2, "reps": 10, "pain": 0}, "all done, 2x10, pain 0"),
        (None, "nothing was read"),
    ],
)
def test_a_reading_is_told_in_plain_words(reading: dict[str, Any] | None, words: str) -> None:
    assert in_words(reading) == words
