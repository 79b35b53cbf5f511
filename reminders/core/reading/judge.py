"""The trained judge: a linear model that weighs what the rules found, where several readings are possible.

It knows no language and no words of its own: the weights stand in weights.json, made by `python -m tests.corpus.train`
from the labelled replies in tests/corpus. Reading is plain sums, so the same text always gives the same answer.
"""

import json
import math
import sys
from array import array
from dataclasses import dataclass
from functools import lru_cache
from importlib import resources
from typing import Any

from reminders.core.reading.features import facts_of, names_of_word, pairs_of, words_of
from reminders.core.reading.intent import Evidence
from reminders.core.reading.lexicon import Lexicon

SCALE = 100  # weights are kept as whole hundredths
_CACHE = 60_000
_FAR = 3 * SCALE  # a twentieth of the belief
# Lanes of four bytes; the bias keeps each lane above zero, so that none borrows from its neighbour.
_LANE, _BIAS = 4, 1 << 14


@dataclass(frozen=True)
class Verdict:
    """The likeliest class of one question, how sure the judge is (0 to 1), and the next likeliest."""

    name: str
    sureness: float
    runner_up: str = ""


class Verdicts:
    """The sums of all questions for one text; what is not asked for is not worked out."""

    def __init__(self, parts: "dict[str, tuple[list[str], int, int]]", totals: list[int]) -> None:
        """Take question → (classes, first column, end), and the columns."""
        self._parts, self._totals = parts, totals

    def likeliest(self, question: str) -> str:
        """Return the likeliest class alone."""
        classes, start, end = self._parts[question]
        totals = self._totals[start:end]
        return classes[totals.index(max(totals))]

    def leads(self, question: str, name: str) -> bool:
        """Tell whether a class is so far ahead that no belief in another is worth working out."""
        classes, start, end = self._parts[question]
        totals = self._totals[start:end]
        own = totals[classes.index(name)]
        return own == max(totals) and sum(total > own - _FAR for total in totals) == 1

    def share(self, question: str, name: str) -> float:
        """Return how far a class is believed in, 0 to 1."""
        classes, start, end = self._parts[question]
        totals = self._totals[start:end]
        top = max(totals)
        powers = [math.exp((total - top) / SCALE) for total in totals]
        return powers[classes.index(name)] / sum(powers)

    def __getitem__(self, question: str) -> Verdict:
        """Return the likeliest class with how sure it is."""
        classes, start, end = self._parts[question]
        return _verdict(classes, self._totals[start:end])


class Judge:
    """The weights of all questions, one row a feature: intent, completion, correction, danger side by side."""

    def __init__(self, questions: dict[str, Any]) -> None:
        """Take question → {"classes": [...], "weights": {feature: [a number a class]}}."""
        self._parts: dict[str, tuple[list[str], int, int]] = {}
        width = 0
        for name, model in questions.items():
            self._parts[name] = (model["classes"], width, width + len(model["classes"]))
            width += len(model["classes"])
        self._width = width
        rows: dict[str, list[int]] = {}
        for name, model in questions.items():
            _, start, end = self._parts[name]
            for feature, weights in model["weights"].items():
                rows.setdefault(feature, [0] * width)[start:end] = weights
        self._rows = {feature: _packed(row) for feature, row in rows.items()}
        self._words: dict[tuple[str, str, str], tuple[int, int]] = {}

    def judge(self, facts: list[str], words: set[tuple[str, str]], lexicon: Lexicon) -> Verdicts:
        """Return what speaks for each class of each question."""
        known, seen, language = self._rows, self._words, lexicon.languages[0].language
        rows = [known[fact] for fact in facts if fact in known]
        total, count = sum(rows), len(rows)
        for word, char in words:
            pair = seen.get((word, char, language))
            if pair is None:
                pair = self._word(word, char, lexicon)
            total += pair[0]
            count += pair[1]
        lanes = array("i")
        lanes.frombytes(total.to_bytes(self._width * _LANE, "little"))
        if sys.byteorder == "big":
            lanes.byteswap()
        lift = count * _BIAS
        return Verdicts(self._parts, [lane - lift for lane in lanes])

    def _word(self, word: str, char: str, lexicon: Lexicon) -> tuple[int, int]:
        """Return the weights of one word with its concepts, and how many rows they are."""
        rows = [self._rows[name] for name in names_of_word(word, char, lexicon) if name in self._rows]
        pair = (sum(rows), len(rows))
        if len(self._words) > _CACHE:
            self._words.clear()
        self._words[word, char, lexicon.languages[0].language] = pair
        return pair


def _packed(row: list[int], bias: int = _BIAS) -> int:
    """Return a row of weights as one whole number, a lane a class: adding those adds all lanes at once."""
    return sum((weight + bias) << (8 * _LANE * lane) for lane, weight in enumerate(row))


def _verdict(classes: list[str], totals: list[int]) -> Verdict:
    """Return the likeliest class of one question."""
    top = max(totals)
    powers = [math.exp((total - top) / SCALE) for total in totals]
    best = totals.index(top)
    powers[best] = 0.0
    return Verdict(classes[best], 1 / (1 + sum(powers)), classes[powers.index(max(powers))])


@lru_cache(maxsize=1)
def the_judge() -> Judge:
    """Return the judge with the trained weights."""
    text = (resources.files("reminders.core.reading") / "weights.json").read_text(encoding="utf-8")
    return Judge(json.loads(text))


def verdicts(evidence: Evidence, rule: str, amount: str | None, lexicon: Lexicon) -> Verdicts:
    """Return intent, completion, correction and danger as the judge sees them."""
    facts = facts_of(evidence, rule, amount) + pairs_of(evidence)
    return the_judge().judge(facts, words_of(evidence), lexicon)
