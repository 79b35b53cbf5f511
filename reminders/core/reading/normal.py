"""Text as typed → plain lower-case text without accents, with emoji and odd signs as words.

Everything that makes two spellings of the same characters equal belongs here; words and numbers do not.
"""

import re
import unicodedata

from reminders.core.words.abroad import SCRIPTS

YES_SIGNS = "👍✅✔☑👌🆗💯🙆☒"
TICKS = frozenset("✅✔☑")  # of these; the others may as well greet
NO_SIGNS = "👎❌✖✗✘🚫🙅⛔❎"
SAD_SIGNS = "😢😭😞😖😣😩😫🤕🤒🤢🤮😰😨😱🆘🚑😔😟🙁☹😿"
_SIGN_WORDS = (
    dict.fromkeys(YES_SIGNS, " emojiyes ")
    | dict.fromkeys(NO_SIGNS, " emojino ")
    | dict.fromkeys(SAD_SIGNS, " emojisad ")
)
_LETTER_SIGNS = {
    "×": "x",
    "✕": "x",
    "·": " ",
    "•": ". ",
    "‘": "'",
    "’": "'",
    "´": "'",
    "ʼ": "'",
    "“": '"',
    "”": '"',
    "–": "-",
    "—": " - ",
    "−": "-",
    "‐": "-",
    "…": "...",
    "¿": " ",
    "¡": " ",
    "🔟": " 10 ",
    "½": " 1/2 ",
    "⅓": " 1/3 ",
    "¼": " 1/4 ",
    "¾": " 3/4 ",
    "⅔": " 2/3 ",
    "º": " ",
    "°": " degrees ",
    "ª": " ",
    "\u00a0": " ",
    "ß": "ss",
    "ø": "o",
    "ł": "l",
    "ı": "i",
    "đ": "d",
    "🤷": " ",  # says nothing, and greets nobody
    "♀": " ",
    "♂": " ",
}
_ODD = re.compile(r"[^\x00-\x7f]")
_MARKS = re.compile("[\u0300-\u036f\u200b-\u200f\u2060\ufe0e\ufe0f\u20e3\U0001f3fb-\U0001f3ff]")
_ACCENTED = "".join(map(chr, range(0xC0, 0x180)))  # Latin letters of Western and Central Europe
_LETTERS = {sign: _MARKS.sub("", unicodedata.normalize("NFKD", sign)).lower() for sign in _ACCENTED}
_PLAIN = {sign: letter for sign, letter in _LETTERS.items() if letter.isascii()} | _LETTER_SIGNS | _SIGN_WORDS
_SMILEY = re.compile(r"(?<!\w)(?:[:;=]['o^-]?[)dp\]*3](?!\w)|<3(?!\d)|\^_\^|xd+\b)")
_FROWN = re.compile(r"(?<!\w)[:;=]['-]?[(\[/|](?!\w)")
_ITEM_RANGE = re.compile(r"(?<![a-z-])([a-h]) ?- ?([a-h])(?![a-z-])")  # "A-C": items of the list
_NUMBERS = re.compile(r"\bno\. ?(?=\d)")  # "no. 1 yes, no. 2 no"; one alone is an answer
_HALF = re.compile(r"(?<=\d)(?: ?½| 1/2\b)")  # "2½", "2 1/2"
_TIMES = re.compile(r"(?<=\d) ?\* ?(?=\d)")  # "2*10"
_TITLE = re.compile(r"\b(mrs?|ms|sra?|srta)\.(?=\s*[a-z])")  # their full stop ends no sentence
_JOINS = (
    ("'ll ", " will "),
    ("'re ", " are "),
    ("'ve ", "ve "),
    ("w/o ", " without "),
    ("w/ ", " with "),
    ("b/c", " because "),
    ("n/a", " none "),
    ("c/u", " cada uno "),
)
# A message line carries at most ten text parts; a mail can be long, and what matters stands near its start.
LONGEST = 4000


def fold(text: str) -> str:
    """Return the text in plain ASCII: lower case, no accents, emoji as the words emojiyes, emojino, emojisad,
    emojismile."""
    text = text[:LONGEST].lower()
    if "½" in text or "1/2" in text:
        text = _HALF.sub(".5", text)
    if not text.isascii():
        text = SCRIPTS.sub(" unsubscribe ", _ODD.sub(_plain, text.replace("`", "'")))
        if not text.isascii():
            text = _MARKS.sub("", unicodedata.normalize("NFKD", text)).lower()
            text = _ODD.sub(_sign, text)
    if ":" in text or ";" in text or "=" in text or "<" in text or "^" in text or "xd" in text:
        text = _FROWN.sub(" emojisad ", _SMILEY.sub(" emojismile ", text))
    if "." in text:
        text = _TITLE.sub(_without_stop, text)
        if text.count("no. ") > 1:
            text = _NUMBERS.sub("number ", text)
    if "*" in text:
        text = _TIMES.sub("x", text)
    if "-" in text:
        text = _ITEM_RANGE.sub(_range_in_words, text)
    text += " "
    if "'" in text or "/" in text:
        for spelling, plain in _JOINS:
            text = text.replace(spelling, plain)
        text = text.replace("'", "")
    return text


def _plain(match: "re.Match[str]") -> str:
    """Return what stands for a character that is common in messages; any other one stays."""
    return _PLAIN.get(match[0], match[0])


def _without_stop(match: "re.Match[str]") -> str:
    """Return a title without its full stop."""
    return f"{match[1]} "


def _range_in_words(match: "re.Match[str]") -> str:
    """Return a range of items with its dash as a word."""
    return f"{match[1]} thru {match[2]}"


def _sign(match: "re.Match[str]") -> str:
    """Return a word for a character that is no letter of ours; other scripts stay one unknown word."""
    return " emojismile " if unicodedata.category(match[0]).startswith("S") else " "
