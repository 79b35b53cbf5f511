"""Where it hurts: a body part that is told, and no part of an exercise's name."""

import pytest

from reminders.core.reading import parse_session, read_reply

SESSIONS = {
    "en": "sit to stand 2x10; heel raise 2x12; hip hinge 2x10",
    "es": "sentarse y pararse 2x10; elevación de talones 2x12; flexión de cadera 2x10",
}


def where(language: str, text: str) -> str | None:
    return read_reply(text, language, parse_session(SESSIONS[language]), None).where


@pytest.mark.parametrize(
    ("language", "text"),
    [
        ("en", "did them all but the heel raises, pain 3"),
        ("en", "heel raise 1x12, the rest all, pain 2"),
        ("es", "todo menos los talones, dolor 3"),
    ],
)
def test_an_exercise_that_was_left_out_or_counted_is_no_place_of_pain(language: str, text: str) -> None:
    assert where(language, text) is None


@pytest.mark.parametrize(
    ("language", "text", "place"),
    [
        ("en", "all but the heel raises, left knee pain 3", "left knee"),
        ("en", "did all, pain 3 in my heels", "heels"),
        ("en", "my hip is a 4", "hip"),
        ("es", "todo menos los talones, dolor 3 en la rodilla derecha", "rodilla derecha"),
        ("es", "me duelen los talones, dolor 4", "talones"),
    ],
)
def test_a_body_part_that_hurts_is_the_place(language: str, text: str, place: str) -> None:
    assert where(language, text) == place
