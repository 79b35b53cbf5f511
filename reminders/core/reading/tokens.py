"""Plain text → words, numbers and stops with one signature character each.

Numbers get their value and shape here (an hour, x/10, a blood pressure, a phone number); what a number stands for is
decided in `roles.py`.
"""

import math
import re
from collections.abc import Callable
from dataclasses import dataclass, field
from functools import lru_cache
from itertools import chain

from reminders.core.reading.counted import is_before_unit, is_count, is_rated
from reminders.core.reading.kept import Kept
from reminders.core.reading.lexicon import SMILE, UNKNOWN, Lexicon, Token
from reminders.core.reading.normal import fold
from reminders.core.reading.signatures import COMMA, NO_WORD, QUESTION, STOP

_TOKEN = re.compile(
    r"(?P<odd>\b(?:a1c|b12|1s)\b|\bb4(?=\s+[a-z])(?!\s+[a-z]\d?\b))"
    r"|(?P<words>[a-z]+(?: [a-z]+(?![a-z0-9]))*)"
    r"|(?P<phone>\+?\d?[ -]?\(?\d{3}\)?[ .-]\d{3}[ .-]\d{4}|\+?\d{7,})"
    r"|(?P<date>\d{4}-\d{2}-\d{2}|\d{1,2}/\d{1,2}/\d{2,4})"
    r"|(?P<clock>\d{1,2}:\d{2}|\d{1,2}\.\d{2}(?=\s?[ap]m))"
    r"|(?P<frac>\d{1,3}\s?/\s?\d{1,3})"
    r"|(?P<num>\d{1,3}(?:,\d{3})+(?!\d)|\d+(?:\.\d+)?)"
    r"|(?P<dash>(?<=\d)\s?-\s?(?=\d))"
    r"|(?P<stop>\n\s*\n|\n|[.!?;]+)"
    r"|(?P<comma>,|:|\(|\)|--?(?=\s)|\"|=)"
    r"|(?P<sign>[+&%$#@/])"
)
_ACROSS = re.compile(r"[/\n-]|\d{3}\)?[ .]\(?\d{3}|\.\d\d [ap]m|\bb4\b")  # else no token looks over a space
_SIGN_WORDS = {"+": "plus", "&": "and", "%": "percent", "$": "dollars", "#": "number", "@": "at", "/": "/"}
_PIECES, _CENTURIES = 30_000, (18, 19, 20)  # pieces kept; "nineteen ninety"
_SMALL_NUMBER = 4  # digits that a number worth keeping has less than


@dataclass(slots=True)
class Text:
    """A reply, cut up: lists of equal length, one place a token."""

    words: list[str] = field(default_factory=list)
    raw: list[str] = field(default_factory=list)
    values: list[float | None] = field(default_factory=list)
    second: list[float | None] = field(default_factory=list)  # the number behind the stroke
    chars: list[str] = field(default_factory=list)  # one signature character each
    signature: str = ""  # these characters as one string
    present: frozenset[str] = frozenset()  # the different ones
    smiles: bool = False
    original: str = ""

    def said(self, start: int, end: int) -> str:
        """Return the words of a span as they stood, less accents and capitals."""
        return " ".join(self.raw[start:end])


def cut(text: str, lexicon: Lexicon, is_own: Callable[[str], bool] = lambda _: False) -> Text:
    """Return the tokens of a text; `is_own` tells the words of the session's own names."""
    folded = fold(text)
    if _ACROSS.search(folded) is None:  # then nothing reaches over a space, and each piece is known from before
        tokens = list(chain.from_iterable(map(_pieces_of(lexicon).__getitem__, folded.split(" "))))
    else:
        tokens = _all_tokens(folded, lexicon)
    smiles = SMILE in folded and any(SMILE in match[0].split(" ") for match in _TOKEN.finditer(folded))
    if not tokens:
        return Text(smiles=smiles, original=text)
    plain, raw, values, second, chars = map(list, zip(*tokens, strict=True))
    result = Text(plain, raw, values, second, chars, "", frozenset(chars), smiles, text)
    _join_numbers(result, chars, lexicon)
    _trim(result, lexicon, is_own)
    result.signature = "".join(chars)
    result.present = frozenset(chars)
    return result


@lru_cache(maxsize=8)
def _pieces_of(lexicon: Lexicon) -> Kept[str, tuple[Token, ...]]:
    """Return the table of pieces that stood between spaces, with their tokens: "done," is a word and a comma."""
    return Kept(lambda piece: tuple(_all_tokens(piece, lexicon)), _PIECES)


def _all_tokens(folded: str, lexicon: Lexicon) -> list[Token]:
    """Return the tokens of a text in plain letters."""
    tokens: list[Token] = []
    words, others = lexicon.words, lexicon.others
    for match in _TOKEN.finditer(folded):
        if match.lastgroup == "words":
            tokens += chain.from_iterable(map(words.__getitem__, match[0].split(" ")))
        elif match.lastgroup == "odd":
            tokens += words[match[0]]
        else:
            tokens += others.get(match[0]) or _tokens_of(match.lastgroup or "", match[0], lexicon)
    return tokens


def _tokens_of(kind: str, piece: str, lexicon: Lexicon) -> tuple[Token, ...]:
    """Return the tokens of a piece that is no word; small whole numbers and signs are kept like words."""
    value = second = None
    if kind == "stop":
        word, char = piece.strip() or "\n", QUESTION if "?" in piece else STOP
    elif piece == "=":
        return ()
    elif kind == "comma":
        word, char = piece, COMMA
    elif kind == "sign":
        word, char = lexicon.look_up(_SIGN_WORDS[piece])
    elif kind == "dash":
        word, char = "-", lexicon.shape_char_of_dash
    else:
        word = piece
        value, second, char = _number(kind, piece, lexicon)
    tokens = ((word, piece, value, second, char),)
    if kind == "sign" or (kind == "num" and len(piece) < _SMALL_NUMBER and piece.isdigit()):
        lexicon.others[piece] = tokens
    return tokens


def _number(kind: str, piece: str, lexicon: Lexicon) -> tuple[float | None, float | None, str]:
    """Return value, second value and signature of a piece that begins with a digit."""
    shapes = lexicon.shape_chars
    if kind == "num":
        value = float(piece.replace(",", ""))
        return value, None, shapes[shape_of(value)]
    if kind == "frac" and piece.replace(" ", "") == "1/2":
        return None, None, lexicon.half_char
    if kind == "frac":
        over, under = (float(part) for part in piece.split("/"))
        if under == 10:
            return over, under, shapes["frac10"]
        return over, under, shapes["pressure" if over >= 60 and under >= 30 else "frac"]
    return None, None, shapes[kind]


def shape_of(value: float) -> str:
    """Return the shape under which a plain number's signature is filed."""
    if value == 0:
        return "zero"
    if value == 1:
        return "one"
    if value <= 5:
        return "few"
    if value < 10:
        return "small"
    if value == 10:
        return "ten"
    if value == 100:
        return "hundred"
    return "year" if 1900 <= value <= 2099 else "big"


def _join_numbers(text: Text, chars: list[str], lexicon: Lexicon) -> None:
    """Turn number words into numbers where they are one: "twenty one", "too sets", "two and a half", not "that one"."""
    near = {} if lexicon.either("UNIT", "OUTOF").isdisjoint(text.present) else lexicon.near_numbers
    if text.values.count(None) == len(chars) and (not near or near.keys().isdisjoint(text.words)):
        return
    words, raw, values = text.words, text.raw, text.values
    at = -1
    while at + 1 < len(chars):
        at += 1
        value = values[at]
        if value is None and words[at] not in near:
            continue
        is_word = not raw[at][0].isdigit()
        before_unit = is_before_unit(chars, at, lexicon) or is_rated(values, chars, at, lexicon)
        if value is None:
            value = near.get(words[at]) if before_unit else None
        elif is_word and lexicon.is_in("ONEWORD", chars[at]):
            before_number = at + 1 < len(chars) and values[at + 1] is not None  # "en un seis"
            value = value if is_count(chars, at, before_unit, lexicon) and not before_number else None
        if value is None:
            if is_word:
                values[at] = None
            continue
        if is_word:
            value = _with_next_word(text, chars, at, value, lexicon)
            value = _with_tenths(text, chars, at, value, lexicon)
        value = values[at] = _with_half(text, chars, at, value, lexicon)
        if text.second[at] is None:
            chars[at] = lexicon.shape_chars[shape_of(value)]


def _with_next_word(text: Text, chars: list[str], at: int, value: float, lexicon: Lexicon) -> float:
    """Take in the units of "twenty one", "treinta y dos"."""
    following = text.values[at + 1] if at + 1 < len(chars) else None
    if value in _CENTURIES and following is not None and 10 <= following < 100 and not text.raw[at + 1].isdigit():
        _drop(text, chars, at + 1, at + 2)  # "nineteen ninety nine"
        return value * 100 + _with_next_word(text, chars, at, following, lexicon)
    if value < 20 or value % 10 or value >= 100:
        return value
    step = 2 if at + 2 < len(chars) and text.words[at + 1] in ("y", "-") else 1
    units = text.values[at + step] if at + step < len(chars) else None
    if units is None or not 1 <= units <= 9 or text.raw[at + step].isdigit():
        return value
    _drop(text, chars, at + 1, at + 1 + step)
    return value + units


def _with_tenths(text: Text, chars: list[str], at: int, value: float, lexicon: Lexicon) -> float:
    """Take in the tenths of "three point five"."""
    tenths = text.values[at + 2] if at + 2 < len(chars) and lexicon.is_in("HALF_LINK", chars[at + 1]) else None
    if tenths is None or not 0 <= tenths <= 9:
        return value
    _drop(text, chars, at + 1, at + 3)
    return value + tenths / 10


def _with_half(text: Text, chars: list[str], at: int, value: float, lexicon: Lexicon) -> float:
    """Take in "and a half"."""
    end = at + 1
    while end < len(chars) and end < at + 3 and lexicon.is_in("LINK_HALF", chars[end]):
        end += 1
    begins = end + 1 < len(chars) and lexicon.is_in("THE", chars[end + 1])  # "the first two and half the third"
    if at + 1 < end < len(chars) and lexicon.is_in("HALFWORD", chars[end]) and not begins:
        _drop(text, chars, at + 1, end + 1)
        return value + 0.5
    return value


def _drop(text: Text, chars: list[str], start: int, end: int) -> None:
    """Take tokens out."""
    for column in (text.words, text.raw, text.values, text.second, chars):
        del column[start:end]


def _trim(text: Text, lexicon: Lexicon, is_own: Callable[[str], bool]) -> None:
    """Cut greetings, thanks and a signature off the ends, when anything stands between them."""
    chars = text.chars
    polite, title = lexicon.chars("POLITE"), lexicon.chars("TITLE")
    end = _before_signature(text, lexicon)
    whole, points = lexicon.chars("ALL"), lexicon.either("THATS", "DID")
    while end and (chars[end - 1] in polite or chars[end - 1] in NO_WORD or (chars[end - 1] in title and end > 1)):
        if chars[end - 1] in whole and end > 1 and (chars[end - 2] in points or is_own(text.words[end - 2])):
            break  # "thanks all" is polite, "that's all", "did all" and "carry all" are not
        if end > 1 and _says_more(chars[end - 2], chars[end - 1], lexicon):
            break
        if end > 1 and lexicon.is_in("OKAY", chars[end - 1]) and is_own(text.words[end - 2]):
            break  # "tándem ok"
        end -= 1
    # A closing question mark is meaning, a closing stop is not.
    end = end + 1 if end < len(chars) and chars[end] == QUESTION else end
    start = _past_name(text, lexicon, is_own)
    while start < end and (chars[start] in polite or chars[start] in STOP + COMMA or (start and chars[start] in title)):
        start += 1
    if start < end and end - start < len(chars):
        _keep(text, start, end)


def _says_more(before: str, char: str, lexicon: Lexicon) -> bool:
    """Tell whether a last word is no greeting: "menos la A", "gave it a miss", "en diez días", "stop it for good"."""
    is_lasting = lexicon.is_in("GREETS", char) and lexicon.is_in("FOR_GOOD", before)
    if is_lasting or (lexicon.is_in("GREETED", char) and not lexicon.is_in("GREETS", before)):
        return True
    if lexicon.is_in("LETTERWORD", before) and lexicon.is_in("MISSED", char):
        return True
    leads = lexicon.is_in("LETTERLED", before) or lexicon.is_in("EXCEPT", before)
    return leads and lexicon.is_in("LETTERWORD", char)


def _past_name(text: Text, lexicon: Lexicon, is_own: Callable[[str], bool]) -> int:
    """Return where a text begins behind the name of whoever it is from: "Odile: Y1", "for Odile: all done"."""
    chars, at = text.chars, 0
    fronts = lexicon.chars("NAMEFRONT")
    while at < len(chars) and chars[at] in fronts:
        at += 1
    name = at
    while at < len(chars) and at < name + 2 and chars[at] == UNKNOWN:
        if lexicon.knows(text.words[at]) or is_own(text.words[at]):
            return 0
        at += 1
    if at == name or at == len(chars):
        return 0
    if chars[at] == COMMA and text.words[at] in (":", "-", "--"):
        return at + 1
    at += chars[at] == COMMA
    is_letter = at < len(chars) and len(text.raw[at]) == 1 and lexicon.is_in("YESKEY", chars[at])
    return at if is_letter and len(chars) == at + 2 and lexicon.is_in("#", chars[at + 1]) else 0


def _before_signature(text: Text, lexicon: Lexicon) -> int:
    """Return where a mail's closing formula begins, or the end of the text."""
    size, openers = len(text.chars), lexicon.chars("SIGN_OFF")
    if openers.isdisjoint(text.present):
        return size
    for at in range(max(1, size - 9), size):
        if text.chars[at] in openers and text.chars[at - 1] in (STOP, COMMA):
            return at
    return size


def _keep(text: Text, start: int, end: int) -> None:
    """Keep one stretch of the tokens."""
    for column in (text.words, text.raw, text.values, text.second, text.chars):
        del column[end:]
        del column[:start]


def worst_whole(value: float) -> int:
    """Return the whole number a rating counts as: two and a half is three."""
    return math.ceil(value)
