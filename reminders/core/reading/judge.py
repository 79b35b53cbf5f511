"""The trained judge: a linear model that weighs what the rules found, where several readings are possible.

It knows no language and no words of its own: the weights stand in weights.json, made by `python -m tests.corpus.train`
from the labelled replies in tests/corpus. Reading is plain sums, so the same text always gives the same answer.
"""

import json
import math
from collections.abc import Iterable
from dataclasses import dataclass
from functools import lru_cache, partial
from importlib import resources
from itertools import chain, combinations

from reminders.core.reading.features import (
    MEETING,
    ORDERED,
    PAIR,
    facts_of,
    facts_of_part,
    names_of_word,
    near_words,
    ordered_senses,
    row_of_words,
    words_in,
)
from reminders.core.reading.intent import Evidence
from reminders.core.reading.kept import Kept
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.opinion import belief_of
from reminders.core.reading.weights import LIFT, Weights

SCALE = 100  # weights are kept as whole hundredths
_CACHE = 30_000
_SHOWN = 3  # words that are shown for a sign that no rule sees
_FAR = 3 * SCALE  # a twentieth of the belief


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
        return belief_of((self._totals[start + classes.index(name)] - LIFT) / SCALE)

    def __getitem__(self, question: str) -> Verdict:
        """Return the likeliest class with how sure it is."""
        classes, start, end = self._parts[question]
        return _verdict(classes, self._totals[start:end])


class _Spoken:
    """What the words of one language weigh, each put together at its first need."""

    def __init__(self, weights: Weights, lexicon: Lexicon) -> None:
        """Take the weights of all features."""
        self._weights, self._senses = weights, lexicon.sets_of_senses
        numbers = {senses: number for number, senses in enumerate(self._senses)}
        self.words = Kept[tuple[str, str], int](lambda word: weights.total(names_of_word(*word, lexicon)), _CACHE)
        # Words by the number of the senses that they have; and the senses of two words in their order, by number, with
        # no, one, or two words between.
        self.number_of = Kept[str, int](lambda word: numbers[lexicon.senses_of(word)], _CACHE)
        self.orders = [Kept[tuple[int, int], int](partial(self._order, apart), _CACHE) for apart in range(len(ORDERED))]

    def senses_in(self, numbers: Iterable[int]) -> list[str]:
        """Return the different senses of words, in one order."""
        return sorted(set(chain.from_iterable(map(self._senses.__getitem__, numbers))))

    def _order(self, apart: int, two: tuple[int, int]) -> int:
        """Return what the senses of two words weigh in their order."""
        return self._weights.total(ordered_senses(self._senses[two[0]], self._senses[two[1]], apart))


class Judge:
    """The weights of all questions, one row a feature: intent, completion, correction, danger side by side."""

    def __init__(self, questions: dict[str, list[str]], names: str, in_bytes: int, rows: str) -> None:
        """Take question → classes, and the weights as `weights.packed` made them."""
        self._parts: dict[str, tuple[list[str], int, int]] = {}
        width = 0
        for name, classes in questions.items():
            self._parts[name] = (classes, width, width + len(classes))
            width += len(classes)
        self._weights = weights = Weights(width, names, in_bytes, rows)
        self._meetings: Kept[tuple[str, str], int] = Kept(
            lambda two: weights.total((f"{MEETING}{two[0]} {two[1]}",)), _CACHE
        )
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
        language = lexicon.languages[0].language
        spoken = self._spoken.get(language) or self._spoken.setdefault(language, _Spoken(self._weights, lexicon))
        senses = list(map(spoken.number_of.__getitem__, row))
        total = self._weights.total(chain(facts, near_words(row)), self._weights.lift)
        found = [
            map(self._meetings.__getitem__, combinations(spoken.senses_in(senses), 2)),
            map(spoken.words.__getitem__, words),
        ]
        for apart, orders in enumerate(spoken.orders, 1):
            found.append(map(orders.__getitem__, zip(senses, senses[apart:], strict=False)))
        total = sum(filter(None, chain.from_iterable(found)), total)  # most weigh nothing
        return Verdicts(self._parts, self._weights.lanes(total))

    def weigh(self, features: Iterable[str]) -> Verdicts:
        """Return the sums over features alone."""
        return Verdicts(self._parts, self._weights.lanes(self._weights.total(features, self._weights.lift)))

    def knows(self, word: str) -> bool:
        """Tell whether a word stood in the replies that the judge was trained on."""
        return f"w {word}" in self._weights

    def words_for(self, name: str, against: str, evidence: Evidence, lexicon: Lexicon) -> list[tuple[int, int]]:
        """Return the places of the words that speak most for one kind of danger against another, at most three."""
        classes, start, _ = self._parts["danger"]
        own, other = start + classes.index(name), start + classes.index(against)

        def gain(feature: str) -> int:
            found = self._weights.numbers(feature)
            return found[own] - found[other]

        row, gains = row_of_words(evidence), []
        for at, (word, char) in enumerate(zip(row[1:-1], evidence.scope.text.chars, strict=True)):
            pairs = (f"{PAIR}{row[at]} {word}", f"{PAIR}{word} {row[at + 2]}")
            gains.append((sum(map(gain, (*names_of_word(word, char, lexicon), *pairs))), at))
        return sorted((at, at + 1) for speaks, at in sorted(gains, reverse=True)[:_SHOWN] if speaks > 0)


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
