"""What a text costs: the parts it is sent in, and how to keep it from costing more.

The tables are 3GPP TS 23.038 (GSM 7-bit), sections 6.2.1 and 6.2.1.1. What a text says is in templates/.
"""

import re
import unicodedata

# 3GPP TS 23.038 section 6.2.1, default alphabet; the index is the code. Code 0x1B (escape) stands for no character.
ALPHABET = (
    "@£$¥èéùìòÇ\nØø\rÅå"
    "Δ_ΦΓΛΩΠΨΣΘΞ\x1bÆæßÉ"
    " !\"#¤%&'()*+,-./"
    "0123456789:;<=>?"
    "¡ABCDEFGHIJKLMNO"
    "PQRSTUVWXYZÄÖÑÜ§"
    "¿abcdefghijklmno"
    "pqrstuvwxyzäöñüà"
)
# Section 6.2.1.1, the extension table: an escape and one code, so two septets.
EXTENSION = {
    "\f": 0x0A,
    "^": 0x14,
    "{": 0x28,
    "}": 0x29,
    "\\": 0x2F,
    "[": 0x3C,
    "~": 0x3D,
    "]": 0x3E,
    "|": 0x40,
    "€": 0x65,
}
ESCAPE = 0x1B
CODES: dict[str, tuple[int, ...]] = {sign: (code,) for code, sign in enumerate(ALPHABET) if code != ESCAPE} | {
    sign: (ESCAPE, code) for sign, code in EXTENSION.items()
}

# Nearly every text is of one-septet signs alone: looked at by one expression each, a crowd costs a tenth.
ONE_SEPTET = re.compile(f"[{re.escape(ALPHABET.replace(chr(ESCAPE), ''))}]*")
SEVEN_BIT = re.compile(f"[{re.escape(''.join(CODES))}]*")

# TS 23.040 section 9.2.3.24.1: a text of several parts gives 6 of its 140 octets to the header of each part.
ONE_PART_SEPTETS, MANY_PARTS_SEPTETS = 160, 153
ONE_PART_UNITS, MANY_PARTS_UNITS = 70, 67

# Signs that would force 16-bit parts, and what a phone's owner reads just as well. The first rows follow Twilio,
# "Smart Encoding", list of characters replaced; the rest is our own choice.
SWAPS = {
    **dict.fromkeys("“”„‟«»″˝", '"'),
    **dict.fromkeys("‘’‚‛‹›′`´ʹʻʼ", "'"),
    **dict.fromkeys("‐‑‒–—―−⁃", "-"),
    **dict.fromkeys("\u00a0\u1680\u202f\u205f\u3000\t\v\u2028\u2029", " "),
    **dict.fromkeys((chr(code) for code in range(0x2000, 0x200B)), " "),
    **dict.fromkeys("\u200b\u200c\u200d\u2060\ufeff\u00ad\ufe0e\ufe0f", ""),
    "…": "...",
    "×": "x",
    "÷": "/",
    "•": "-",
    "·": "-",
    "→": "->",
    "≤": "<=",
    "≥": ">=",
    "½": "1/2",
    "¼": "1/4",
    "¾": "3/4",
    "°": " degrees",
    "ª": "a",
    "º": "o",
}


def is_seven_bit(text: str) -> bool:
    """Whether the whole text fits the 7-bit alphabet; one sign outside it turns all of it to 16-bit."""
    return SEVEN_BIT.fullmatch(text) is not None


def septets(text: str) -> list[int]:
    """Return the 7-bit codes of a text; raises KeyError for a sign outside the alphabet."""
    return [code for sign in text for code in CODES[sign]]


def parts(text: str) -> int:
    """Return in how many parts the standard sends a text, at least 1.

    A sign of two septets or two 16-bit units is never cut: it moves to the next part whole.
    """
    if ONE_SEPTET.fullmatch(text):
        return 1 if len(text) <= ONE_PART_SEPTETS else -(-len(text) // MANY_PARTS_SEPTETS)
    if is_seven_bit(text):
        sizes = [len(CODES[sign]) for sign in text]
        return part_count(sizes, ONE_PART_SEPTETS, MANY_PARTS_SEPTETS)
    sizes = [2 if ord(sign) > 0xFFFF else 1 for sign in text]
    return part_count(sizes, ONE_PART_UNITS, MANY_PARTS_UNITS)


def part_count(sizes: list[int], alone: int, together: int) -> int:
    """Return how many parts signs of these sizes fill: one of `alone` units, else several of `together`."""
    if sum(sizes) <= alone:
        return 1
    count, used = 1, 0
    for size in sizes:
        if used + size > together:
            count, used = count + 1, 0
        used += size
    return count


def plain(text: str) -> str:
    """Return the text with each sign that would force 16-bit parts swapped for a 7-bit one where there is one.

    á í ó ú lose their mark; é ñ ü ¿ ¡ are in the alphabet and stay. What has no stand-in, an emoji, stays too.
    """
    if is_seven_bit(text):
        return text
    return "".join(plain_sign(sign) for sign in unicodedata.normalize("NFC", text))


def plain_sign(sign: str) -> str:
    """Return a sign of the 7-bit alphabet for this one, or the sign itself where there is none."""
    if sign in CODES:
        return sign
    if sign in SWAPS:
        return SWAPS[sign]
    if unicodedata.category(sign) == "Cc":
        return ""
    bare = "".join(mark for mark in unicodedata.normalize("NFKD", sign) if not unicodedata.combining(mark))
    return bare if bare and is_seven_bit(bare) else sign
