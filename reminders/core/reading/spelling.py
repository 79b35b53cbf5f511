"""Which spellings a word may stand for: drawn out, with a dropped letter, one letter off. Knows no language."""

from collections.abc import Iterable, Mapping
from functools import lru_cache

REPAIR_FROM = 5  # letters; shorter words have too many neighbours


@lru_cache(maxsize=1)
def index_neighbours(words: frozenset[str]) -> Mapping[str, tuple[str, ...]]:
    """Return spelling with one letter left out → known words, for `_mend`: the same ones whichever language leads."""
    index: dict[str, tuple[str, ...]] = {}
    for word in words:
        if len(word) >= REPAIR_FROM:
            for cut in cuts(word):
                index[cut] = (*index.get(cut, ()), word)
    return index


def spellings(word: str) -> Iterable[str]:
    """Yield a word as typed, then with drawn-out letters shortened, then with a dropped g ("hurtin")."""
    yield word
    if any(a == b == c for a, b, c in zip(word, word[1:], word[2:], strict=False)):
        yield pairs(word)  # "offf" is "off"
        yield undouble(word)
    if word.endswith("in") and len(word) > 4:
        yield word + "g"


def undouble(word: str) -> str:
    """Return a word with no letter twice running."""
    return "".join(letter for at, letter in enumerate(word) if at == 0 or word[at - 1] != letter)


def pairs(word: str) -> str:
    """Return a word with no letter more than twice running."""
    return "".join(letter for at, letter in enumerate(word) if at < 2 or word[at - 2 : at] != letter * 2)


def cuts(word: str) -> set[str]:
    """Return a word and all spellings with one letter left out."""
    return {word} | {word[:at] + word[at + 1 :] for at in range(len(word))}


def one_off(word: str, known: str) -> bool:
    """Tell whether one letter put in, left out, changed or swapped with its neighbour makes one word the other."""
    if abs(len(word) - len(known)) > 1:
        return False
    start = 0
    while start < min(len(word), len(known)) and word[start] == known[start]:
        start += 1
    rest, wanted = word[start:], known[start:]
    if len(rest) == len(wanted):
        return rest[1:] == wanted[1:] or (rest[:2] == wanted[:2][::-1] and rest[2:] == wanted[2:])
    return rest[1:] == wanted if len(rest) > len(wanted) else rest == wanted[1:]
