"""Everything that is made once for a language: its lexicon and its rules, with the other languages behind it.

Also tells in which language a text is written, since a client set to Spanish may write English.
"""

from collections.abc import Mapping
from functools import lru_cache

from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.number_labels import SHARED_RULES
from reminders.core.reading.patterns import RuleSet, less
from reminders.core.reading.roles import NumberGrammar
from reminders.core.words import VOCABULARIES

# Rules on the words as they stand; all others see the named exercises as one sign each.
_PLAIN = (
    "danger.",
    "concern.",
    "idiom",
    "denied_all",
    "taken_back",
    "told_of",
    "put_right",
    "chronic",
    "faint_",
    "dizzy_",
    "passed_over",
    "near_fall",
    "caught",
    "head_hit",
    "cannot_rise",
    "hurt_by_fall",
    "unhurt",
    "older_day",
    "slip",
    "opt_out",
    "where.",
    "happening",
    "hindered",
)
_SAME = frozenset({"no"})  # small words that mean the same in every language
_COMMON = {name: vocabulary.common for name, vocabulary in VOCABULARIES.items()}
_NOTHING: frozenset[str] = frozenset()
_SURE = 2  # so many more small words of another language make a text that language's


class Grammar:
    """The rules of one leading language with the others behind it."""

    def __init__(self, language: str) -> None:
        """Build lexicon and rules."""
        leading = VOCABULARIES[language]
        others = [vocabulary for name, vocabulary in VOCABULARIES.items() if name != language]
        self.language = language
        self.lexicon = Lexicon(leading, others)
        plain: dict[str, str] = {}
        marked: dict[str, str] = {}
        number: dict[str, str] = {}
        foreign = leading.common - _SAME
        sources: list[Mapping[str, str]] = [SHARED_RULES, leading.rules]
        sources += [
            {
                label: less(block, leading.common if label.startswith("ex.") else foreign)  # each has its own "no"
                for label, block in one.rules.items()
            }
            for one in others
        ]
        for rules in sources:
            for label, block in rules.items():
                target = number if label.startswith("num.") else plain if label.startswith(_PLAIN) else marked
                target[label] = target.get(label, "") + "\n" + block
        frequent = self.lexicon.number_chars | {self.lexicon.look_up(word)[1] for word in leading.common}
        self.plain = RuleSet(plain, self.lexicon.chars, frequent)
        self.marked = RuleSet(marked, self.lexicon.chars, frequent)
        self.number_rules = RuleSet(number, self.lexicon.chars, frequent)
        self.numbers = NumberGrammar(self.lexicon)


@lru_cache(maxsize=8)
def grammar_for(language: str) -> Grammar:
    """Return the grammar of a language."""
    return Grammar(language)


def language_of(words: list[str], given: str) -> str:
    """Return the language a text is written in: the given one unless another's small words clearly prevail."""
    common = _COMMON.get(given, _NOTHING)
    most = _SURE * sum(map(common.__contains__, words)) + 1
    best = given
    if len(words) > most:
        for name, common in _COMMON.items():
            count = sum(map(common.__contains__, words)) if name != given else 0
            if count > most:
                best, most = name, count
    return best
