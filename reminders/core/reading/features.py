"""What the trained judge looks at: facts that the rules found, and the words with their concepts.

The same facts serve training and reading; a change here needs new weights (`python -m tests.corpus.train`).
"""

from bisect import bisect
from collections.abc import Iterable, Iterator, Sequence
from functools import lru_cache
from itertools import chain, combinations, pairwise

from reminders.core.reading.intent import Evidence
from reminders.core.reading.lexicon import Lexicon

# Labels that are of use only to the rules themselves.
_INNER = ("num.", "ex.", "day.")
# Labels whose meeting in one text says more than each alone.
_PAIRED = ("done", "skip", "part", "all", "later", "question", "pain_said", "chat", "correction")
_LENGTHS = (4, 7, 12)
PAIR = "b "  # what the name of two neighbouring words begins with
SENSE = "s "  # and that of a sense of a word
SKIP = "k "  # and that of two words with one between them
MEETING = "m "  # and that of two senses in one text, which tell what no word of them does: breath and tightness
ORDERED = ("p ", "q ", "r ")  # and those of two senses in their order, with no, one, or two words between them
PIECE = "g "  # and that of a piece of a word, which words that were never met share with those that were
_LONGEST = 24  # letters of a word that are looked at
_PIECES = (3, 4)  # letters of a piece; a word's ends count as letters


def facts_of(evidence: Evidence, rule: str, amount: str | None) -> list[str]:
    """Return what the rules found, as names: `rule` is their own intent, `amount` their own completion."""
    held = evidence.held
    facts = [*_answers(rule, evidence.asked, amount), *filter(None, map(_name_of, held))]
    facts += _told(evidence)
    if evidence.danger.grades:
        facts += [f"flag {flag}" for flag in evidence.danger.grades]
    present = tuple(filter(held.__contains__, _PAIRED))
    if len(present) > 1:
        facts += _meetings(present)
    words = evidence.scope.text.words
    facts.append(_LENGTH_NAMES[min(len(words), _LENGTHS[-1])])
    if words:
        facts.append(_first_name("#" if evidence.scope.text.values[0] is not None else words[0]))
    return facts


def facts_of_part(start: int, end: int, evidence: Evidence) -> list[str]:
    """Return what the rules found in a stretch of a text, less what they made of the whole."""
    inside = [
        label
        for label, spans in evidence.held.items()
        if not label.startswith("danger.") and any(start <= low and high <= end for low, high in spans)
    ]
    facts = ["asked=None", "amount=None", *filter(None, map(_name_of, inside))]
    present = tuple(filter(inside.__contains__, _PAIRED))
    if len(present) > 1:
        facts += _meetings(present)
    text = evidence.scope.text
    facts.append(_LENGTH_NAMES[min(end - start, _LENGTHS[-1])])
    facts.append(_first_name("#" if text.values[start] is not None else text.words[start]))
    return facts


@lru_cache(maxsize=1_000)
def _answers(rule: str, asked: str | None, amount: str | None) -> tuple[str, ...]:
    """Return the facts of what the rules answer to what was asked."""
    both = (f"asked={asked} rule={rule}", f"rule={rule} amount={amount}")
    return (f"rule={rule}", f"asked={asked}", *both, f"amount={amount}")


def _told(evidence: Evidence) -> list[str]:
    """Return the facts of what kinds of things the rules found."""
    told, numbers, facts = evidence.told, evidence.numbers, []
    if evidence.done():
        facts.append("is done")
    if told.by_exercise:
        facts.append("is lines")
    if told.amounts:
        facts.append("is amounts")
    if told.sets is not None:
        facts.append("is sets")
    if evidence.pain.value is not None:
        facts.append("is pain")
    if evidence.danger.grades:
        facts.append("is danger")
    if evidence.asks():
        facts.append("is asks")
    if evidence.scope.text.smiles:
        facts.append("is smiles")
    if numbers.has_minutes:
        facts.append("is minutes")
    if numbers.counts:
        facts.append("is counts")
    if numbers.loose:
        facts.append("is loose")
    if evidence.scope.helper:
        facts.append("is helper")
    return facts


@lru_cache(maxsize=1_000)
def _meetings(present: tuple[str, ...]) -> tuple[str, ...]:
    """Return the facts that two labels stand in one text."""
    return tuple([f"{one}+{two}" for at, one in enumerate(present) for two in present[at + 1 :]])


@lru_cache(maxsize=20_000)
def _first_name(word: str) -> str:
    """Return the fact of a text's first word."""
    return f"first {word}"


@lru_cache(maxsize=1_000)
def _name_of(label: str) -> str:
    """Return the fact that a label is there, or nothing when it is not worth a weight."""
    return "" if label.startswith(_INNER) or label.endswith("_not") else f"has {label}"


def _length(size: int) -> int:
    """Return the size class of a text."""
    return size if size < _LENGTHS[0] else _LENGTHS[bisect(_LENGTHS, size) - 1]


_LENGTH_NAMES = [f"length {_length(size)}" for size in range(_LENGTHS[-1] + 1)]  # the last one for all longer texts


def row_of_words(evidence: Evidence) -> list[str]:
    """Return the words of a text in their order, numbers all one, between signs for the text's ends."""
    text = evidence.scope.text
    words = text.words
    if text.values.count(None) != len(words):
        words = ["#" if value is not None else word for word, value in zip(words, text.values, strict=True)]
    return ["^", *words, "$"]


def near_words(row: list[str]) -> list[str]:
    """Return the neighbouring words of a row, and those one apart, as names."""
    near = [f"{PAIR}{one} {two}" for one, two in pairwise(row)]
    return near + [f"{SKIP}{one} {two}" for one, two in zip(row, row[2:], strict=False)]


def senses_in(row: Iterable[str], lexicon: Lexicon) -> list[str]:
    """Return the different senses of some words, in one order."""
    return sorted(set(chain.from_iterable(map(lexicon.senses_of, row))))


def meetings_of(evidence: Evidence, lexicon: Lexicon) -> list[str]:
    """Return the pairs of senses that meet in a text, as names."""
    senses = senses_in(row_of_words(evidence), lexicon)
    return [f"{MEETING}{one} {two}" for one, two in combinations(senses, 2)]


def ordered_senses(one: Iterable[str], two: Sequence[str], apart: int) -> list[str]:
    """Return the names of the senses of two words in their order: "no" and falling; `apart` words stand between."""
    return [f"{ORDERED[apart]}{first} {second}" for first in one for second in two]


def orders_of(evidence: Evidence, lexicon: Lexicon) -> list[str]:
    """Return the names of all senses near one another in a text, one as often as it stands there."""
    senses = list(map(lexicon.senses_of, row_of_words(evidence)))
    return [
        name
        for apart in range(len(ORDERED))
        for one, two in zip(senses, senses[apart + 1 :], strict=False)
        for name in ordered_senses(one, two, apart)
    ]


def tells_rules(fact: str) -> bool:
    """Tell whether a fact is what the danger rules or the intent rules made of the text, and not what it says."""
    return fact.startswith(("flag ", "is ", "has danger.", "rule=")) or " rule=" in fact


def words_of(evidence: Evidence) -> set[tuple[str, str]]:
    """Return the different words of a text with their signatures; numbers are all one."""
    return words_in(row_of_words(evidence), evidence)


def words_in(row: list[str], evidence: Evidence) -> set[tuple[str, str]]:
    """Return the same of a row of words that is there already."""
    return set(zip(row[1:-1], evidence.scope.text.chars, strict=True))


def names_of_word(word: str, char: str, lexicon: Lexicon) -> Iterator[str]:
    """Yield the features of one word: itself, its concepts, its senses and its pieces."""
    yield f"w {word}"
    for concept in lexicon.kinds_of(char):
        yield f"c {concept}"
    for sense in lexicon.senses_of(word):
        yield f"{SENSE}{sense}"
    yield from pieces_of(word)


def pieces_of(word: str) -> set[str]:
    """Return the pieces of a word as names: "piquetazo" has some of "piquete"."""
    whole = f"<{word[:_LONGEST]}>"
    return {f"{PIECE}{whole[at : at + size]}" for size in _PIECES for at in range(len(whole) - size + 1)}
