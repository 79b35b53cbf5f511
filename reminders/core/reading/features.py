"""What the trained judge looks at: facts that the rules found, and the words with their concepts.

The same facts serve training and reading; a change here needs new weights (`python -m tests.corpus.train`).
"""

from bisect import bisect
from collections.abc import Iterator
from functools import lru_cache
from itertools import pairwise

from reminders.core.reading.intent import Evidence
from reminders.core.reading.lexicon import Lexicon

# Labels that are of use only to the rules themselves.
_INNER = ("num.", "ex.", "day.")
# Labels whose meeting in one text says more than each alone.
_PAIRED = ("done", "skip", "part", "all", "later", "question", "pain_said", "chat", "correction")
_LENGTHS = (4, 7, 12)
PAIR = "b "  # what the name of two neighbouring words begins with


def facts_of(evidence: Evidence, rule: str, amount: str | None) -> list[str]:
    """Return what the rules found, as names: `rule` is their own intent, `amount` their own completion."""
    asked, told, hits = evidence.asked, evidence.told, evidence.hits
    facts = [f"rule={rule}", f"asked={asked}", f"asked={asked} rule={rule}", f"rule={rule} amount={amount}"]
    facts.append(f"amount={amount}")
    facts += [name for label in hits if (name := _name_of(label)) and evidence.spans(label)]
    told_flags = (
        ("is done", evidence.done()),
        ("is lines", told.by_exercise),
        ("is amounts", told.amounts),
        ("is sets", told.sets is not None),
        ("is pain", evidence.pain.value is not None),
        ("is danger", evidence.danger.grades),
        ("is asks", evidence.asks()),
        ("is smiles", evidence.scope.text.smiles),
        ("is minutes", evidence.numbers.has_minutes),
        ("is counts", evidence.numbers.counts),
        ("is loose", evidence.numbers.loose),
        ("is helper", evidence.scope.helper),
    )
    facts += [name for name, holds in told_flags if holds]
    facts += [f"flag {flag}" for flag in evidence.danger.grades]
    present = [label for label in _PAIRED if label in hits and evidence.spans(label)]
    facts += [f"{one}+{two}" for at, one in enumerate(present) for two in present[at + 1 :]]
    words = evidence.scope.text.words
    facts.append(f"length {_length(len(words))}")
    if words:
        facts.append(f"first {_shape(evidence, 0)}")
    return facts


@lru_cache(maxsize=1_000)
def _name_of(label: str) -> str:
    """Return the fact that a label is there, or nothing when it is not worth a weight."""
    return "" if label.startswith(_INNER) or label.endswith("_not") else f"has {label}"


def _length(size: int) -> int:
    """Return the size class of a text."""
    return size if size < _LENGTHS[0] else _LENGTHS[bisect(_LENGTHS, size) - 1]


def _shape(evidence: Evidence, at: int) -> str:
    """Return a word, or # for a number."""
    text = evidence.scope.text
    return "#" if text.values[at] is not None else text.words[at]


def row_of_words(evidence: Evidence) -> list[str]:
    """Return the words of a text in their order, numbers all one, between signs for the text's ends."""
    text = evidence.scope.text
    words = text.words
    if text.values.count(None) != len(words):
        words = ["#" if value is not None else word for word, value in zip(words, text.values, strict=True)]
    return ["^", *words, "$"]


def pairs_of(evidence: Evidence) -> list[str]:
    """Return the neighbouring words of a text as names; the text's ends count as words."""
    words = row_of_words(evidence)
    return [f"{PAIR}{one} {two}" for one, two in pairwise(words)]


def tells_rules(fact: str) -> bool:
    """Tell whether a fact is what the danger rules or the intent rules made of the text, and not what it says."""
    return fact.startswith(("flag ", "is ", "has danger.", "rule=")) or " rule=" in fact


def words_of(evidence: Evidence) -> set[tuple[str, str]]:
    """Return the different words of a text with their signatures; numbers are all one."""
    return set(zip(row_of_words(evidence)[1:-1], evidence.scope.text.signature, strict=True))


def names_of_word(word: str, char: str, lexicon: Lexicon) -> Iterator[str]:
    """Yield the features of one word: itself and its concepts."""
    yield f"w {word}"
    for concept in lexicon.concepts_of(char):
        if concept.isupper():
            yield f"c {concept}"
