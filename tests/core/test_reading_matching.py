"""A rule finds the same places whether its steps are walked or its expression is searched for."""

import random

import pytest

from reminders.core.languages import LANGUAGES
from reminders.core.reading import make_ready, patterns
from reminders.core.reading.grammar import grammar_for
from reminders.core.reading.lexicon import UNKNOWN
from reminders.core.reading.matching import (
    AHEAD,
    AHEAD_OR_LAST,
    FEW,
    MANY,
    MANY_OTHERS,
    NOT_AHEAD,
    NOT_AHEAD_NOR_LAST,
    ONE,
    Step,
    places,
)
from reminders.core.reading.patterns import Items, Rule, RuleSet
from reminders.core.reading.signatures import NO_WORD

EACH = 5  # of so many rules one is tried: making all their expressions takes long
TEXTS = 6


def rules_of(language: str) -> list[Rule]:
    """Return rules of all kinds, in an order of their own."""
    grammar = grammar_for(language)
    every = [rule for one in (grammar.plain, grammar.marked, grammar.number_rules) for rule in one.rules]
    return every[::EACH]


def likely_text(steps: list[Step], chance: random.Random) -> str:
    """Return a text near to what the steps ask, hit or miss."""
    text = chance.choice(["", "", ",", UNKNOWN, UNKNOWN + "."])
    for kind, members, low, high in steps:
        some = sorted(members) or [UNKNOWN]
        if kind in (ONE, MANY, AHEAD, NOT_AHEAD, AHEAD_OR_LAST, NOT_AHEAD_NOR_LAST):
            count = chance.randint(low, min(high, low + 2)) if kind == MANY else 1
            text += "".join(chance.choice(some) for _ in range(count))
        elif kind in (FEW, MANY_OTHERS):
            text += UNKNOWN * chance.randint(0, high + 1)
        text += chance.choice(["", "", "", "", ",", UNKNOWN])
    return text + chance.choice(["", ".", "?,", UNKNOWN])


@pytest.mark.parametrize("language", ["en", "es"])
def test_walking_a_rule_finds_what_its_expression_finds(language: str) -> None:
    walked = found = 0
    for rule in rules_of(language):
        steps = rule.steps()
        if steps is None:
            continue
        walked += 1
        made, chance = rule.regex(), random.Random(rule.source)
        for _ in range(TEXTS):
            text = likely_text(steps, chance) * chance.choice([1, 1, 2])
            wanted = [match.span() for match in made.finditer(text)]
            found += bool(wanted)
            assert places(steps, text, rule.is_anchored) == wanted, (rule.source, text)

    assert walked > 1_000
    assert found > walked, "texts near to a rule mostly hit it"


def test_a_rule_that_is_met_often_gets_its_expression_and_finds_the_same() -> None:
    grammar = grammar_for("en")
    rule = Rule("x", "no|not pain", [], Items(grammar.lexicon.chars))
    no, pain = (grammar.lexicon.look_up(word)[1] for word in ("no", "pain"))

    assert [rule.find(f"{no}{pain}{UNKNOWN}{no}{pain}.") for _ in range(100)] == [[(0, 2), (3, 5)]] * 100
    assert rule.find(UNKNOWN + NO_WORD) == []


class Meanwhile:
    """Stands for the number of tries, and lets another thread make the rule's expression just as it is looked at."""

    def __init__(self, rule: Rule, text: str) -> None:
        self.rule, self.text, self.is_other = rule, text, False

    def __lt__(self, tries: int) -> bool:
        if not self.is_other:
            self.is_other = True
            self.rule.find(self.text)
            return False
        return True


def test_a_rule_that_another_thread_is_making_finds_the_same(monkeypatch: pytest.MonkeyPatch) -> None:
    lexicon = grammar_for("en").lexicon
    rule = Rule("x", "no|not pain", [], Items(lexicon.chars))
    text = "".join(lexicon.look_up(word)[1] for word in ("no", "pain"))
    monkeypatch.setattr(patterns, "_TRIES", Meanwhile(rule, text))

    assert rule.find(text) == [(0, 2)]
    assert rule.find(text) == [(0, 2)]


def test_nothing_is_found_where_a_needed_word_is_missing() -> None:
    chars = grammar_for("en").lexicon.chars
    rules = RuleSet({"never": "pain no"}, chars, frozenset())

    assert rules.find(UNKNOWN, {UNKNOWN}) == {}


def test_a_process_that_made_itself_ready_has_what_the_first_misspelled_word_needs() -> None:
    tables = {"_neighbours", "_sounds"}
    lexicons = [grammar_for(language).lexicon for language in LANGUAGES]
    for lexicon in lexicons:
        for table in tables:
            vars(lexicon).pop(table, None)

    make_ready()

    assert all(tables <= vars(lexicon).keys() for lexicon in lexicons)
