"""A second opinion on the intent: a small trained text classifier, for wording that no rule foresaw.

It is linear: each piece of a text (words, pairs of words, runs of three to five letters) adds its weight to each
intent. Weights stand in weights/<language>.json, written by `python -m tests.corpus.train` from the corpora to build
on; they are read with the standard library. It never decides on danger signs, numbers or opt-outs by itself.
"""

import json
import math
import re
import unicodedata
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from importlib import resources
from itertools import pairwise

WORD = re.compile(r"[a-z#']+|[^\sa-z#']")
DIGITS = re.compile(r"\d+")
LETTER_RUNS = (3, 4, 5)
RUN_WEIGHT = 0.5  # a run of letters says less than a word
MOST_LETTERS = 400  # of a longer text the beginning is enough
SCALE = 100.0  # weights are kept as whole hundredths


@dataclass(frozen=True)
class Guess:
    """The likeliest intent and its share of belief, 0 to 1, and the pieces of text that spoke for it most."""

    intent: str
    share: float
    because: tuple[str, ...] = ()


@dataclass(frozen=True)
class Weights:
    """The intents, the weight each begins with, and for each piece (intent, weight) pairs."""

    intents: tuple[str, ...]
    start: tuple[float, ...]
    pieces: dict[str, tuple[tuple[int, float], ...]]


def plain(text: str) -> str:
    """Return a text in small letters without accents, each number as one sign."""
    letters = unicodedata.normalize("NFKD", text[:MOST_LETTERS].lower())
    return DIGITS.sub("#", "".join(one for one in letters if not unicodedata.combining(one)))


def pieces_of(text: str, asked: str | None) -> Iterator[tuple[str, float]]:
    """Return the pieces of a text, each once, with how much each counts."""
    words = WORD.findall(plain(text))
    framed = ["^", *words, "$"]
    line = f" {' '.join(words)} "
    found = set(framed)
    found.update(f"{first}_{second}" for first, second in pairwise(framed))
    for piece in found:
        yield piece, 1.0
    runs = {f"c:{line[at : at + size]}" for size in LETTER_RUNS for at in range(len(line) - size + 1)}
    for piece in runs:
        yield piece, RUN_WEIGHT
    yield f"asked:{asked}", 1.0
    yield f"length:{min(len(words) // 4, 8)}", 1.0


@lru_cache(maxsize=8)
def weights_for(language: str) -> Weights | None:
    """Return a language's weights, None where none have been trained."""
    file = resources.files("reminders.core.reading") / "weights" / f"{language}.json"
    if not file.is_file():
        return None
    kept = json.loads(file.read_text(encoding="utf-8"))
    pieces = {
        piece: tuple((pair[at], pair[at + 1] / SCALE) for at in range(0, len(pair), 2))
        for piece, pair in kept["pieces"].items()
    }
    return Weights(tuple(kept["intents"]), tuple(one / SCALE for one in kept["start"]), pieces)


def guess(text: str, language: str, asked: str | None) -> Guess | None:
    """Return the classifier's opinion, None for a language without weights."""
    weights = weights_for(language)
    if weights is None:
        return None
    sums = list(weights.start)
    known = weights.pieces
    for piece, much in pieces_of(text, asked):
        for place, weight in known.get(piece, ()):
            sums[place] += weight * much
    best = max(range(len(sums)), key=sums.__getitem__)
    top = sums[best]
    share = 1.0 / sum(math.exp(one - top) for one in sums)
    return Guess(weights.intents[best], share)


def because(text: str, language: str, asked: str | None, intent: str, most: int = 3) -> tuple[str, ...]:
    """Return the words of a text that spoke most for an intent, for the explanation."""
    weights = weights_for(language)
    if weights is None or intent not in weights.intents:
        return ()
    place = weights.intents.index(intent)
    spoken = []
    for piece, much in pieces_of(text, asked):
        if piece.startswith(("c:", "asked:", "length:")) or "^" in piece or "$" in piece:
            continue
        weight = dict(weights.pieces.get(piece, ())).get(place, 0.0) * much
        if weight > 0:
            spoken.append((weight, piece.replace("_", " ")))
    return tuple(words for _, words in sorted(spoken, reverse=True)[:most])
