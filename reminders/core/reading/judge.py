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
    """The likeliest class of one question, and how sure the judge is (0 to 1)."""

    name: str
    sureness: float
    runner_up: str = ""


class Judge:
    """Weights of one question: which intent, how much was done."""

    def __init__(self, weights: dict[str, Any]) -> None:
        """Take {"classes": [...], "weights": {feature: [a number a class]}}."""
        self.classes: list[str] = weights["classes"]
        self._weights: dict[str, list[int]] = weights["weights"]
        self._zero = [0] * len(self.classes)
        self._words: dict[tuple[str, str, int], list[int]] = {}

    def judge(self, facts: list[str], words: set[tuple[str, str]], lexicon: Lexicon) -> Verdict:
        """Return the likeliest class."""
        known = self._weights
        rows = [known[fact] for fact in facts if fact in known]
        rows += [self._word(word, char, lexicon) for word, char in words]
        totals = [sum(column) for column in zip(*rows, strict=True)] if rows else self._zero
        top = max(totals)
        powers = [math.exp((total - top) / SCALE) for total in totals]
        best = totals.index(top)
        powers[best] = 0.0
        runner_up = self.classes[powers.index(max(powers))]
        return Verdict(self.classes[best], 1 / (1 + sum(powers)), runner_up)

    def _word(self, word: str, char: str, lexicon: Lexicon) -> list[int]:
        """Return the weights of one word with its concepts."""
        key = (word, char, id(lexicon))
        row = self._words.get(key)
        if row is None:
            rows = [self._weights[name] for name in names_of_word(word, char, lexicon) if name in self._weights]
            row = [sum(column) for column in zip(*rows, strict=True)] if rows else self._zero
            if len(self._words) > _CACHE:
                self._words.clear()
            self._words[key] = row
        return row


@lru_cache(maxsize=1)
def judges() -> dict[str, Judge]:
    """Return the judges of all questions, by name."""
    text = (resources.files("reminders.core.reading") / "weights.json").read_text(encoding="utf-8")
    return {name: Judge(weights) for name, weights in json.loads(text).items()}


def verdicts(evidence: Evidence, rule: str, amount: str | None, lexicon: Lexicon) -> dict[str, Verdict]:
    """Return intent and completion as the judge sees them."""
    facts, words = facts_of(evidence, rule, amount), words_of(evidence)
    return {name: judge.judge(facts, words, lexicon) for name, judge in judges().items()}
