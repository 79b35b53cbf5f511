"""The trained judge: a linear model that weighs what the rules found, where several readings are possible.

It knows no language and no words of its own: the weights stand in weights.json, made by `python -m tests.corpus.train`
from the labelled replies in tests/corpus. Reading is plain sums, so the same text always gives the same answer.
"""

import json
import math
from dataclasses import dataclass
from functools import lru_cache
from importlib import resources
from typing import Any

from reminders.core.reading.features import facts_of, names_of_word, words_of
from reminders.core.reading.intent import Evidence
from reminders.core.reading.lexicon import Lexicon

SCALE = 100  # weights are kept as whole hundredths
_CACHE = 60_000


@dataclass(frozen=True)
class Verdict:
    """The likeliest class of one question, how sure the judge is (0 to 1), and the next likeliest."""

    name: str
    sureness: float
    runner_up: str = ""


class Judge:
    """The weights of all questions, one row a feature: intent, completion, correction, danger side by side."""

    def __init__(self, questions: dict[str, Any]) -> None:
        """Take question → {"classes": [...], "weights": {feature: [a number a class]}}."""
        self._parts: list[tuple[str, list[str], int, int]] = []
        width = 0
        for name, model in questions.items():
            self._parts.append((name, model["classes"], width, width + len(model["classes"])))
            width += len(model["classes"])
        self._zero = (0,) * width
        rows: dict[str, list[int]] = {}
        for (_, _, start, end), model in zip(self._parts, questions.values(), strict=True):
            for feature, weights in model["weights"].items():
                rows.setdefault(feature, [0] * width)[start:end] = weights
        self._rows = {feature: tuple(row) for feature, row in rows.items()}
        self._words: dict[tuple[str, str, str], tuple[int, ...]] = {}

    def judge(self, facts: list[str], words: set[tuple[str, str]], lexicon: Lexicon) -> dict[str, Verdict]:
        """Return question → the likeliest class."""
        known = self._rows
        rows = [known[fact] for fact in facts if fact in known]
        rows += [self._word(word, char, lexicon) for word, char in words]
        totals = list(map(sum, zip(*rows, strict=True))) if rows else list(self._zero)
        return {name: _verdict(classes, totals[start:end]) for name, classes, start, end in self._parts}

    def _word(self, word: str, char: str, lexicon: Lexicon) -> tuple[int, ...]:
        """Return the weights of one word with its concepts."""
        key = (word, char, lexicon.languages[0].language)
        row = self._words.get(key)
        if row is None:
            rows = [self._rows[name] for name in names_of_word(word, char, lexicon) if name in self._rows]
            row = tuple(map(sum, zip(*rows, strict=True))) if rows else self._zero
            if len(self._words) > _CACHE:
                self._words.clear()
            self._words[key] = row
        return row


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


def verdicts(evidence: Evidence, rule: str, amount: str | None, lexicon: Lexicon) -> dict[str, Verdict]:
    """Return intent, completion, correction and danger as the judge sees them."""
    return the_judge().judge(facts_of(evidence, rule, amount), words_of(evidence), lexicon)
