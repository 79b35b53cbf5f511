"""What the trained judge looks at: facts that the rules found, and the words with their concepts.

The same facts serve training and reading; a change here needs new weights (`python -m tests.corpus.train`).
"""

from collections.abc import Iterator
from functools import lru_cache

from reminders.core.reading.intent import Evidence
from reminders.core.reading.lexicon import Lexicon

# Labels that are of use only to the rules themselves.
_INNER = ("num.", "ex.", "day.")
# Labels whose meeting in one text says more than each alone.
_PAIRED = ("done", "skip", "part", "all", "later", "question", "pain_said", "chat", "correction")
_LENGTHS = (4, 7, 12)


def facts_of(evidence: Evidence, rule: str, amount: str | None) -> list[str]:
    """Return what the rules found, as names: `rule` is their own intent, `amount` their own completion."""
    asked, told = evidence.asked, evidence.told
    facts = [f"rule={rule}", f"asked={asked}", f"asked={asked} rule={rule}", f"rule={rule} amount={amount}"]
    facts.append(f"amount={amount}")
    facts += [f"has {label}" for label in evidence.hits if _is_outer(label) and evidence.spans(label)]
    told_flags = {
        "done": bool(evidence.done()),
        "lines": bool(told.by_exercise),
        "amounts": bool(told.amounts),
        "sets": told.sets is not None,
        "pain": evidence.pain.value is not None,
        "danger": bool(evidence.danger.grades),
        "asks": evidence.asks(),
        "smiles": evidence.scope.text.smiles,
        "minutes": evidence.numbers.has_minutes,
        "counts": bool(evidence.numbers.counts),
        "loose": bool(evidence.numbers.loose),
        "helper": evidence.scope.helper,
    }
    facts += [f"is {name}" for name, holds in told_flags.items() if holds]
    facts += [f"flag {flag}" for flag in evidence.danger.grades]
    present = [label for label in _PAIRED if evidence.spans(label)]
    facts += [f"{one}+{two}" for at, one in enumerate(present) for two in present[at + 1 :]]
    facts.append(f"length {_length(len(evidence.scope.text.words))}")
    words = evidence.scope.text.words
    if words:
        facts.append(f"first {_shape(evidence, 0)}")
    return facts


@lru_cache(maxsize=1_000)
def _is_outer(label: str) -> bool:
    """Tell whether a label is worth a weight."""
    return not label.startswith(_INNER) and not label.endswith("_not")


def _length(size: int) -> int:
    """Return the size class of a text."""
    return size if size < _LENGTHS[0] else max(bound for bound in _LENGTHS if bound <= size)


def _shape(evidence: Evidence, at: int) -> str:
    """Return a word, or # for a number."""
    text = evidence.scope.text
    return "#" if text.values[at] is not None else text.words[at]


def pairs_of(evidence: Evidence) -> list[str]:
    """Return the neighbouring words of a text as names; the text's ends count as words."""
    text = evidence.scope.text
    words = ["#" if value is not None else word for word, value in zip(text.words, text.values, strict=True)]
    return [f"b {one} {two}" for one, two in zip(["^", *words], [*words, "$"], strict=True)]


def tells_rules(fact: str) -> bool:
    """Tell whether a fact is what the danger rules or the intent rules made of the text, and not what it says."""
    return fact.startswith(("flag ", "is ", "has danger.", "rule=")) or " rule=" in fact


def words_of(evidence: Evidence) -> set[tuple[str, str]]:
    """Return the different words of a text with their signatures; numbers are all one."""
    text = evidence.scope.text
    return {
        (word if value is None else "#", char)
        for word, value, char in zip(text.words, text.values, text.signature, strict=True)
    }


def names_of_word(word: str, char: str, lexicon: Lexicon) -> Iterator[str]:
    """Yield the features of one word: itself and its concepts."""
    yield f"w {word}"
    for concept in lexicon.concepts_of(char):
        if concept.isupper():
            yield f"c {concept}"
