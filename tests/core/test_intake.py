import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.intake import clean, number, whole


@given(st.text(alphabet=st.characters()))
def test_a_clean_text_can_be_stored_and_keeps_its_length(text: str) -> None:
    assert "\x00" not in clean(text)
    assert clean(text).encode("utf-8").decode("utf-8") == clean(text)
    assert len(clean(text)) == len(text)


def test_nul_and_lone_surrogates_are_replaced() -> None:
    assert clean("a\x00b\ud83dc😀") == "a\ufffdb\ufffdc😀"


NUMBERS = {
    "as the provider writes it": ("+12025550123", "+12025550123"),
    "a plus sign that became a blank": (" 12025550123", "+12025550123"),
    "with punctuation": ("+1 (202) 555-0123", "+12025550123"),
    "a short code stays": ("73244", "73244"),
    "a brand's name stays": ("ELMCLINIC", "ELMCLINIC"),
    "nothing stays nothing": ("", ""),
}


@pytest.mark.parametrize(("text", "expected"), NUMBERS.values(), ids=NUMBERS)
def test_a_phone_number_becomes_e164(text: str, expected: str) -> None:
    assert number(text) == expected


@pytest.mark.parametrize(("text", "expected"), [("2", 2), ("", 0), ("-1", 0), ("２", 0), ("9" * 19, 0), ("1.5", 0)])
def test_whole_numbers_are_plain_digits(text: str, expected: int) -> None:
    assert whole(text) == expected
