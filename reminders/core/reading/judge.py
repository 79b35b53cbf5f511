"""The trained judge: a linear model that weighs what the rules found, where several readings are possible.

It knows no language and no words of its own: the weights stand in weights.json, made by `python -m tests.corpus.train`
from the labelled replies in tests/corpus. Reading is plain sums, so the same text always gives the same answer.
"""

import json
import math
import sys
from array import array
from binascii import a2b_base64, b2a_base64
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from importlib import resources
from itertools import combinations, pairwise

from reminders.core.reading.features import (
    MEETING,
    PAIR,
    SKIP,
    facts_of,
    facts_of_part,
    names_of_word,
    ordered_senses,
    row_of_words,
    senses_in,
    words_in,
)
from reminders.core.reading.intent import Evidence
from reminders.core.reading.kept import Kept
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.opinion import belief_of

SCALE = 100  # weights are kept as whole hundredths
_CACHE = 30_000
_SHOWN = 3  # words that are shown for a sign that no rule sees
_FAR = 3 * SCALE  # a twentieth of the belief
# Sums stand side by side in one whole number, four bytes a class, and may borrow from their neighbours. Half of what
# four bytes hold, added to all, makes each whole again: all are lifted alike, and only their distances count.
_LANE, _LIFT = 4, 1 << 31


@dataclass(slots=True)
class Verdict:
    """The likeliest class of one question, how sure the judge is (0 to 1), and the next likeliest."""

    name: str
    sureness: float
    runner_up: str = ""


class Verdicts:
    """The sums of all questions for one text; what is not asked for is not worked out."""

    def __init__(self, parts: "dict[str, tuple[list[str], int, int]]", totals: list[int]) -> None:
        """Take question → (classes, first column, end), and the columns, all lifted by the same number."""
        self._parts, self._totals = parts, totals

    def likeliest(self, question: str) -> str:
        """Return the likeliest class alone."""
        classes, start, end = self._parts[question]
        totals = self._totals[start:end]
        return classes[totals.index(max(totals))]

    def leads(self, question: str, name: str, by: int = _FAR) -> bool:
        """Tell whether a class is so far ahead, in hundredths, that no belief in another is worth working out."""
        classes, start, end = self._parts[question]
        totals = self._totals[start:end]
        own = totals[classes.index(name)]
        totals.sort()
        return own == totals[-1] and totals[-2] <= own - by

    def share(self, question: str, name: str) -> float:
        """Return how far a class is believed in, 0 to 1."""
        classes, start, end = self._parts[question]
        totals = self._totals[start:end]
        top = max(totals)
        powers = list(map(_POWERS.__getitem__, map(top.__sub__, totals)))
        return powers[classes.index(name)] / sum(powers)

    def belief(self, question: str, name: str) -> float:
        """Return how far a class is believed in by itself, 0 to 1, where several may hold together."""
        classes, start, _ = self._parts[question]
        return belief_of((self._totals[start + classes.index(name)] - _LIFT) / SCALE)

    def __getitem__(self, question: str) -> Verdict:
        """Return the likeliest class with how sure it is."""
        classes, start, end = self._parts[question]
        return _verdict(classes, self._totals[start:end])


class _Spoken:
    """What the words of one language weigh, each put together at its first need."""

    def __init__(self, weigh: Callable[[str], int], lexicon: Lexicon) -> None:
        """Take feature → weights."""

        def near(two: tuple[str, str], apart: int, kind: str = "") -> int:
            own = weigh(f"{kind}{two[0]} {two[1]}") if kind else 0
            return sum(map(weigh, ordered_senses(*two, apart, lexicon)), own)

        # A word with its signature; word and the word behind it, the next but one, and the third.
        self.words = Kept[tuple[str, str], int](lambda word: sum(map(weigh, names_of_word(*word, lexicon))), _CACHE)
        self.pairs = Kept[tuple[str, str], int](lambda two: near(two, 0, PAIR), _CACHE)
        self.skips = Kept[tuple[str, str], int](lambda two: near(two, 1, SKIP), _CACHE)
        self.thirds = Kept[tuple[str, str], int](lambda two: near(two, 2), _CACHE)


class Judge:
    """The weights of all questions, one row a feature: intent, completion, correction, danger side by side."""

    def __init__(self, questions: dict[str, list[str]], weights: dict[str, str]) -> None:
        """Take question → classes, and feature → a whole number for each class of each question, as text."""
        self._parts: dict[str, tuple[list[str], int, int]] = {}
        width = 0
        for name, classes in questions.items():
            self._parts[name] = (classes, width, width + len(classes))
            width += len(classes)
        self._size, self._lift = width * _LANE, int.from_bytes(array("I", [_LIFT] * width), sys.byteorder)
        # What a text needs of the weights is put together at its first need: all of it would hold up every start.
        self._weights, self._nothing = weights, as_text([0] * width)
        self._rows: Kept[str, int] = Kept(self._row, _CACHE)
        self._meetings: Kept[tuple[str, str], int] = Kept(lambda two: self._row(f"{MEETING}{two[0]} {two[1]}"), _CACHE)
        self._spoken: dict[str, _Spoken] = {}  # language → weights of its words

    def judge(self, facts: list[str], evidence: Evidence, lexicon: Lexicon) -> Verdicts:
        """Return what speaks for each class of each question."""
        row = row_of_words(evidence)
        return self._verdicts(facts, row, words_in(row, evidence), lexicon)

    def judge_part(self, start: int, end: int, row: list[str], evidence: Evidence, lexicon: Lexicon) -> Verdicts:
        """Return the same for a stretch of a text, as if it had been sent alone; `row` has the words of all of it."""
        part = row[start + 1 : end + 1]
        words = set(zip(part, evidence.scope.text.chars[start:end], strict=True))
        return self._verdicts(facts_of_part(start, end, evidence), ["^", *part, "$"], words, lexicon)

    def _verdicts(self, facts: list[str], row: list[str], words: set[tuple[str, str]], lexicon: Lexicon) -> Verdicts:
        """Return the sums over facts, words near one another, senses that meet, and words with their concepts."""
        total = sum(map(self._rows.__getitem__, facts), self._lift)
        total = sum(map(self._meetings.__getitem__, combinations(senses_in(row, lexicon), 2)), total)
        language = lexicon.languages[0].language
        spoken = self._spoken.get(language) or self._spoken.setdefault(language, _Spoken(self._row, lexicon))
        total = sum(map(spoken.words.__getitem__, words), total)
        total = sum(map(spoken.pairs.__getitem__, pairwise(row)), total)
        total = sum(map(spoken.skips.__getitem__, zip(row, row[2:], strict=False)), total)
        total = sum(map(spoken.thirds.__getitem__, zip(row, row[3:], strict=False)), total)
        return self._lanes_of(total)

    def weigh(self, features: Iterable[str]) -> Verdicts:
        """Return the sums over features alone."""
        return self._lanes_of(sum(map(self._rows.__getitem__, features), self._lift))

    def _lanes_of(self, total: int) -> Verdicts:
        """Return the sums that stand side by side in one number."""
        lanes = array("I")
        lanes.frombytes(total.to_bytes(self._size, "little"))
        if sys.byteorder == "big":
            lanes.byteswap()
        return Verdicts(self._parts, lanes.tolist())

    def knows(self, word: str) -> bool:
        """Tell whether a word stood in the replies that the judge was trained on."""
        return f"w {word}" in self._weights

    def words_for(self, name: str, against: str, evidence: Evidence, lexicon: Lexicon) -> list[tuple[int, int]]:
        """Return the places of the words that speak most for one kind of danger against another, at most three."""
        classes, start, _ = self._parts["danger"]
        own, other = start + classes.index(name), start + classes.index(against)

        def gain(feature: str) -> int:
            found = numbers_of(self._weights.get(feature, self._nothing))
            return found[own] - found[other]

        row, gains = row_of_words(evidence), []
        for at, (word, char) in enumerate(zip(row[1:-1], evidence.scope.text.chars, strict=True)):
            pairs = (f"{PAIR}{row[at]} {word}", f"{PAIR}{word} {row[at + 2]}")
            gains.append((sum(map(gain, (*names_of_word(word, char, lexicon), *pairs))), at))
        return sorted((at, at + 1) for speaks, at in sorted(gains, reverse=True)[:_SHOWN] if speaks > 0)

    def _row(self, feature: str) -> int:
        """Return the weights of one feature for all questions, 0 where none has it."""
        row = self._weights.get(feature)
        return self._packed(numbers_of(row)) if row else 0

    def _packed(self, row: "array[int]") -> int:
        """Return a row of weights as one whole number, a lane a class: adding those adds all lanes at once.

        With the sign bit turned, a number of four bytes is larger by half of what they hold: that is the lift again.
        """
        lanes = array("i", row)
        if sys.byteorder == "big":
            lanes.reverse()
        return (int.from_bytes(lanes, sys.byteorder) ^ self._lift) - self._lift


def as_text(row: Sequence[int]) -> str:
    """Return a row of weights, in hundredths, as it stands in the file: two bytes a number, the low one first."""
    numbers = array("h", row)
    if sys.byteorder == "big":
        numbers.byteswap()
    return b2a_base64(numbers, newline=False).decode()


def numbers_of(row: str) -> "array[int]":
    """Return a row of weights from the file's text, in which it is kept: most are never asked for."""
    numbers = array("h", a2b_base64(row))
    if sys.byteorder == "big":
        numbers.byteswap()
    return numbers


_POWERS: Kept[int, float] = Kept(lambda behind: math.exp(-behind / SCALE), _CACHE)  # hundredths behind → power


def _verdict(classes: list[str], totals: list[int]) -> Verdict:
    """Return the likeliest class of one question."""
    top = max(totals)
    powers = list(map(_POWERS.__getitem__, map(top.__sub__, totals)))
    best = totals.index(top)
    powers[best] = 0.0
    return Verdict(classes[best], 1 / (1 + sum(powers)), classes[powers.index(max(powers))])


@lru_cache(maxsize=1)
def the_judge() -> Judge:
    """Return the judge with the trained weights."""
    return judge_of("weights.json")


def judge_of(file: str) -> Judge:
    """Return a judge with the weights of a file in this folder."""
    return Judge(**json.loads((resources.files("reminders.core.reading") / file).read_text(encoding="utf-8")))


def words_behind(flag: str, evidence: Evidence) -> list[tuple[int, int]]:
    """Return the places of the words for which the judge sees a sign where no rule does."""
    return the_judge().words_for(flag, "none", evidence, evidence.scope.lexicon)


def verdicts(evidence: Evidence, rule: str, amount: str | None, lexicon: Lexicon) -> Verdicts:
    """Return intent, completion, correction and danger as the judge sees them."""
    return the_judge().judge(facts_of(evidence, rule, amount), evidence, lexicon)


def verdicts_on_part(start: int, end: int, row: list[str], evidence: Evidence, lexicon: Lexicon) -> Verdicts:
    """Return the same for a stretch of a text alone; only what it says of danger is of use."""
    return the_judge().judge_part(start, end, row, evidence, lexicon)


def is_known(word: str) -> bool:
    """Tell whether the judge has met a word."""
    return the_judge().knows(word)
