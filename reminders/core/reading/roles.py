"""Which number is what: each number of a reply gets exactly one role, by the rules of `number_rules.py`.

Amounts, pain figures and counts come out here with their places; what they add up to is decided by the callers.
"""

from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.needs import Needs
from reminders.core.reading.number_rules import NUMBER_RULES
from reminders.core.reading.patterns import Items, Rule
from reminders.core.reading.quantities import Amount, Numbers
from reminders.core.reading.sieve import Sieve, signs_of
from reminders.core.reading.signatures import NO_WORD, SECONDS, USED
from reminders.core.reading.takers import TAKERS
from reminders.core.reading.tokens import Text

_ONCE = "@ ,? ONLY? the? ONCE >$|,|.|AND|THEN"  # one set that no number tells: "only the bands, once"
# What numbers become on the way may be what a later rule wants, as its first or last word too.
_BECOMING = signs_of(SECONDS, SECONDS, NO_WORD) | signs_of(USED, USED, NO_WORD)


class NumberGrammar:
    """The number rules, made ready for one lexicon."""

    def __init__(self, lexicon: Lexicon) -> None:
        """Make the rules."""
        needs, items = Needs(lexicon.chars, lexicon.number_chars), Items(lexicon.chars)
        self._rules: list[tuple[str, Rule]] = [
            (role, Rule(role, pattern, needs.of(pattern), items)) for role, pattern in NUMBER_RULES
        ]
        self._sieve = Sieve([rule.needed for _, rule in self._rules])
        self._once = Rule("once", _ONCE, [], items)
        self._once_words, self._negators = lexicon.chars("ONCE"), lexicon.chars("NEGATOR")
        self._numeric = lexicon.figures
        self._plain = lexicon.number_chars

    def read(self, text: Text, signature: str, signs: set[str], exercises: int, asks_pain: bool = False) -> Numbers:
        """Return the numbers of a text by role.

        `signature` has exercises marked and `signs` are its own, `exercises` counts the session's, `asks_pain`: a
        rating was asked for.
        """
        plain = self._plain
        numbers = Numbers(signature=signature, asks_pain=asks_pain, second=text.second, numeric=self._numeric)
        if not self._once_words.isdisjoint(signs):
            spans = self._once.find(signature)  # not "didn't wobble on the tandem once"
            numbers.amounts += [
                Amount(*one, 1, None) for one in spans if self._negators.isdisjoint(signature[: one[0]])
            ]
        if self._numeric.isdisjoint(signs):
            return numbers
        for at in self._sieve.passing(signs | _BECOMING):
            role, rule = self._rules[at]
            for start, end in rule.find(numbers.signature):
                self._claim(role, start, end, text, numbers, exercises)
            if self._numeric.isdisjoint(numbers.signature):
                return numbers  # every number has its role
        numbers.loose = [at for at, char in enumerate(numbers.signature) if char in plain]
        return numbers

    def _claim(self, role: str, start: int, end: int, text: Text, numbers: Numbers, exercises: int) -> None:
        """Give the numbers of a span their role and take them out of reach."""
        chars = numbers.signature
        places = [at for at in range(start, end) if chars[at] in self._numeric]
        if not places and role != "sets_only":
            return
        values = [text.values[at] or 0.0 for at in places]
        taken = TAKERS[role](numbers, start, end, places, values, exercises)
        if taken:
            mark = SECONDS if role == "second" else USED
            signs = list(chars)
            for at in places:
                signs[at] = mark
            numbers.signature = "".join(signs)
