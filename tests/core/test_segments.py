import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core import segments

# Texts and the septets they pack into, least significant bit first: 3GPP TS 23.038, section 6.1.2.1.1. The first is the
# example that GSM tutorials give (gsmworld.it, "SMS PDU, 7 bits coding"); the others are packed from the same tables.
PACKED = {
    "hellohello": "E8329BFD4697D9EC37",
    "hello": "E8329BFD06",
    "A": "41",
    "12345678": "31D98C56B3DD70",
    "1234567": "31D98C56B3DD00",
    "done 2x10 pain 3": "E4B7BB0C92E16330103C9C768366",
    "€": "9B32",
    "[ok]": "1BDE7BBDF101",
    "ñ": "7D",
}

# TS 23.038 and TS 23.040, section 9.2.3.24.1: 160 septets or 70 units alone, 153 or 67 a part; no pair is cut.
PARTS = {
    "an empty text is one part": ("", 1),
    "160 septets fit one part": ("a" * 160, 1),
    "161 septets take two": ("a" * 161, 2),
    "306 septets fit two": ("a" * 306, 2),
    "307 septets take three": ("a" * 307, 3),
    "a euro sign counts two septets and still fits": ("a" * 158 + "€", 1),
    "a euro sign counts two septets and no longer fits": ("a" * 159 + "€", 2),
    "80 euro signs fill one part": ("€" * 80, 1),
    "81 euro signs take two": ("€" * 81, 2),
    "152 euro signs fit two, 76 a part": ("€" * 152, 2),
    "153 euro signs take three": ("€" * 153, 3),
    "305 septets with a pair at the cut": ("a" * 152 + "€" + "a" * 151, 2),
    "306 septets would fit by division, but the pair moves": ("a" * 152 + "€" + "a" * 152, 3),
    "70 16-bit units fit one part": ("á" * 70, 1),
    "71 take two": ("á" * 71, 2),
    "134 fit two": ("á" * 134, 2),
    "135 take three": ("á" * 135, 3),
    "an emoji takes two units": ("😀" * 35, 1),
    "36 emoji take two parts": ("😀" * 36, 2),
    "an emoji is not cut: 33 a part": ("😀" * 67, 3),
    "one accent turns the whole text to 16-bit": ("a" * 100 + "í", 2),
}

PLAIN = {
    "Spanish vowels lose their mark": ("flexión, elevación, número, sí, ÁÍÓÚ", "flexion, elevacion, numero, si, AIOU"),
    "é ñ ü and the opening marks stay": ("¿Qué? ¡Señal de mañana, vergüenza!", "¿Qué? ¡Señal de mañana, vergüenza!"),
    "a decomposed é is composed": ("Que\u0301", "Qué"),
    "curly quotes": ("“it’s”", '"it\'s"'),
    "dashes and ellipsis": ("2–3 — wait…", "2-3 - wait..."),
    "times and no-break space": ("2×10\u00a0reps", "2x10 reps"),
    "invisible signs go": ("a\u200bb\ufeff\u00ad", "ab"),
    "control characters go": ("a\x00b\x07", "ab"),
    "line breaks stay": ("a\nb", "a\nb"),
    "capital cedilla stays, small one loses its tail": ("Çç", "Çc"),
    "other Latin letters lose their marks": ("Zoë Łukasz", "Zoe Łukasz"),
    "an emoji has no stand-in": ("ok 😀", "ok 😀"),
}


def packed(text: str) -> bytes:
    """Return the octets of a text, seven bits a septet from the lowest bit up."""
    bits = sum(code << (7 * place) for place, code in enumerate(segments.septets(text)))
    return bits.to_bytes((7 * len(segments.septets(text)) + 7) // 8, "little")


@pytest.mark.parametrize("text", PACKED, ids=str)
def test_the_codes_pack_as_published(text: str) -> None:
    assert packed(text).hex().upper() == PACKED[text]


def test_the_alphabet_has_128_codes_and_the_extension_ten() -> None:
    assert len(segments.ALPHABET) == len(set(segments.ALPHABET)) == 128
    assert len(segments.EXTENSION) == 10


@pytest.mark.parametrize(("text", "count"), PARTS.values(), ids=PARTS)
def test_a_text_costs_the_parts_of_the_standard(text: str, count: int) -> None:
    assert segments.parts(text) == count


# Counted by the tables of TS 23.038: septets for a 7-bit text, units for a 16-bit one.
@pytest.mark.parametrize(
    ("text", "is_seven_bit", "length"),
    [
        ("señal de mañana ¿dolor 0-10?", True, 28),
        ("¡Listo!", True, 7),
        ("flexión en la pared", False, 19),
        ("elevación de talones", False, 20),
    ],
)
def test_which_texts_are_seven_bit(text: str, is_seven_bit: bool, length: int) -> None:
    assert segments.is_seven_bit(text) is is_seven_bit
    assert len(segments.septets(text) if is_seven_bit else text.encode("utf-16-be")[::2]) == length


@pytest.mark.parametrize(("text", "expected"), PLAIN.values(), ids=PLAIN)
def test_signs_that_force_16_bit_are_swapped(text: str, expected: str) -> None:
    assert segments.plain(text) == expected


@given(st.text())
def test_a_plain_text_stays_as_it_is(text: str) -> None:
    once = segments.plain(text)
    assert segments.plain(once) == once


@given(st.text(alphabet=st.characters(max_codepoint=0x17F, exclude_categories=["Cs"])))
def test_marks_alone_never_cost_a_16_bit_part(text: str) -> None:
    unswapped = set("ĦħŁłĿŀŊŋŒœŦŧĐđıĸÐðÞþ¬±¢¦©®¯´¨¸¶µ¹²³ŉ")
    if not set(text) & unswapped:
        assert segments.is_seven_bit(segments.plain(text))


@given(st.text(max_size=700))
def test_parts_hold_the_whole_text_and_no_part_is_empty(text: str) -> None:
    seven = segments.is_seven_bit(text)
    units = len(segments.septets(text)) if seven else len(text.encode("utf-16-be", "surrogatepass")) // 2
    alone, together = (160, 153) if seven else (70, 67)
    count = segments.parts(text)
    if units <= alone:
        assert count == 1
    else:
        assert -(-units // together) <= count <= -(-units // (together - 1))
