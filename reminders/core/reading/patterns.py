"""The notation in which words and rules are written, and its translation into regular expressions over signatures.

A text is one character a word (its signature, see `lexicon.py`), so a pattern is a regular expression over that string.
Items stand with spaces between: `word`, `CONCEPT`, `a|B|c`, each with `?`, `*` or `+`; `#` a number, `@` an exercise;
`~` up to three words, `~~` up to six across commas; `,` a comma, `.` a full stop, `^` and `$` the text's ends; `_` any
word; `!X` not X next; `>X` X next; `<X` X just before.
"""

import re
import sys
from collections.abc import Callable, Iterable, Iterator, Mapping

from reminders.core.reading import matching as step
from reminders.core.reading.kept import Kept
from reminders.core.reading.matching import Step, places
from reminders.core.reading.needs import Needs
from reminders.core.reading.sieve import Sieve
from reminders.core.reading.signatures import COMMA, NAMED, NAMED_ON, NO_WORD, PAUSE_SETS, QUESTION, STOP

Chars = Callable[[str], frozenset[str]]
Found = Mapping[str, list[tuple[int, int]]]
_SHORT, _KNOWN = 24, 3_000  # words of a text whose result is kept, and how many are
_GAP = rf"[^{re.escape(STOP + QUESTION + COMMA)}]{{0,3}}?"
_WIDE_GAP = rf"[^{re.escape(STOP + QUESTION)}]{{0,6}}?"
_FIXED = {
    "~": _GAP,
    "~~": _WIDE_GAP,
    "^": rf"\A[{re.escape(NO_WORD)}]*",
    "$": rf"[{re.escape(NO_WORD)}]*\Z",
    ",": f"[{COMMA}]",
    ".": rf"[{re.escape(STOP + QUESTION)}]",
    "?": rf"[{re.escape(QUESTION)}]",
    "_": rf"[^{re.escape(NO_WORD)}]",
    "@": rf"{NAMED}{NAMED_ON}*",
}
_PAUSES = frozenset(NO_WORD)
_FIXED_STEPS: dict[str, list[Step]] = {
    "~~": [(step.FEW, frozenset(STOP + QUESTION), 0, 6)],
    "^": [(step.FIRST, _PAUSES, 0, 0), (step.MANY, _PAUSES, 0, sys.maxsize)],  # as many as there are
    "$": [(step.LAST, _PAUSES, 0, 0)],
    "@": [(step.ONE, frozenset(NAMED), 1, 1), (step.MANY, frozenset(NAMED_ON), 0, sys.maxsize)],
    "?": [(step.ONE, frozenset(QUESTION), 1, 1)],
    "_": [(step.OTHER, _PAUSES, 1, 1)],
}
_LOOKS = {"!": step.NOT_AHEAD, ">": step.AHEAD, "<": step.BEHIND}
_LOOKS_OR_LAST = {"!": step.NOT_AHEAD_NOR_LAST, ">": step.AHEAD_OR_LAST}
_TIMES = {"": (1, 1), "?": (0, 1), "*": (0, 4), "+": (1, 4)}  # the fewest and the most words
_ITEMS = 60_000  # kept
_TRIES = 40  # of a rule before its expression is made, which costs as much as some eighty tries


class Items:
    """What the items of rules over one lexicon become, each worked out once, since many rules share it."""

    def __init__(self, chars: Chars) -> None:
        """Take concept → signatures."""
        negators = chars("NEGATOR")
        self.pauses_and_negators = _PAUSES | negators
        self.regex: Kept[str, str] = Kept(lambda item: _item(item, chars), _ITEMS)
        self.steps: Kept[str, list[Step] | None] = Kept(lambda item: _steps(item, chars), _ITEMS)
        self.denies: Kept[str, bool] = Kept(
            lambda item: any(negators & chars(name) for name in item.strip("!><?*+").split("|")), _ITEMS
        )


class Rule:
    """One pattern of a label; most never meet their anchor word, and many only now and then.

    Its expression is made when it has been tried often; until then its steps are walked.
    """

    __slots__ = ("_items", "_steps", "_tries", "find", "is_anchored", "label", "needed", "source")

    def __init__(self, label: str, source: str, needed: list[frozenset[str]], items: "Items") -> None:
        """Take the pattern and what a text must hold: one sign of each set in `needed`, the rarest first."""
        self.label, self.source, self.needed, self._items = label, source, needed, items
        self.is_anchored = source.startswith("^")
        self._tries = 0
        self._steps: list[Step] | None = None
        # Returns all spans (from, to) at which the rule holds, none overlapping, rising.
        self.find: Callable[[str], list[tuple[int, int]]] = self._walk

    def regex(self) -> "re.Pattern[str]":
        """Return the expression."""
        items = self.source.split()
        kept_out = self._kept_out(items)
        gap = rf"[^{''.join(map(re.escape, sorted(kept_out)))}]{{0,3}}?"
        return re.compile("".join(gap if item == "~" else self._items.regex[item] for item in items))

    def steps(self) -> "list[Step] | None":
        """Return the same as steps to walk, or None where only the expression can say it."""
        items = self.source.split()
        kept_out = self._kept_out(items)
        steps: list[Step] = []
        for item in items:
            more = [(step.FEW, kept_out, 0, 3)] if item == "~" else self._items.steps[item]
            if more is None:
                return None
            steps += more
        return steps if any(kind in (step.ONE, step.OTHER) for kind, *_ in steps) else None

    def _kept_out(self, items: list[str]) -> frozenset[str]:
        """Return what a gap does not reach over: in a rule of danger that denies nothing, words that deny too."""
        if not self.label.startswith("danger.") or any(map(self._items.denies.__getitem__, items)):
            return _PAUSES
        return self._items.pauses_and_negators

    def _walk(self, signature: str) -> list[tuple[int, int]]:
        """Find the places by walking the steps, and make the expression once that has been done often."""
        steps = self._steps  # held, since another thread may make the expression meanwhile and let them go
        if self._tries == 0:
            steps = self._steps = self.steps()
        self._tries += 1
        if steps is None or self._tries > _TRIES:
            made = self.regex()
            self.find = find = _searching(made, self.is_anchored)
            self._steps = None
            return find(signature)
        return places(steps, signature, self.is_anchored)


def _searching(made: "re.Pattern[str]", is_anchored: bool) -> Callable[[str], list[tuple[int, int]]]:
    """Return what finds the places of an expression."""
    seek = made.match if is_anchored else made.search

    def find(signature: str) -> list[tuple[int, int]]:
        match = seek(signature)
        if match is None:
            return []
        start, end = span = match.span()
        if start == end or (end < len(signature) and not is_anchored and made.search(signature, end)):
            return [one.span() for one in made.finditer(signature)]  # seldom: it holds at several places
        return [span]

    return find


def literals(source: str) -> Iterator[str]:
    """Yield the plain words of a pattern, which the lexicon must know one by one."""
    for item in source.split():
        for name in item.strip("?*+").lstrip("!><").split("|"):
            if name and name[0].islower():
                yield name


def less(block: str, words: frozenset[str]) -> str:
    """Return patterns less these plain words; one that cannot do without them goes."""
    kept = []
    for line in block.splitlines():
        items = []
        for item in line.split():
            start = len(item) - len(item.lstrip("!><"))
            end = len(item.rstrip("?*+")) if len(item) > 1 else 1
            names = [name for name in item[start:end].split("|") if name not in words]
            if names or item[start:end] == "":
                items.append(item[:start] + "|".join(names) + item[end:] if start < end else item)
            elif not start and item[end:] not in ("?", "*"):
                break  # a needed word
        else:
            kept.append(" ".join(items))
    return "\n".join(kept)


def _class(body: str, chars: Chars) -> str:
    """Return the character class of an item's alternatives."""
    names = body.split("|")
    members: set[str] = set()
    for name in names:
        members |= PAUSE_SETS.get(name) or chars(name)
    group = "[" + "".join(re.escape(one) for one in sorted(members)) + "]" if members else r"(?!)"
    return f"(?:{group}|{_FIXED['$']})" if "$" in names else group


def _item(item: str, chars: Chars) -> str:
    """Return one item as a regular expression."""
    if item in _FIXED:
        return _FIXED[item]
    times = item[-1] if item[-1] in "?*+" and len(item) > 1 else ""
    body = item[: len(item) - len(times)]
    if body[0] == "!":
        return f"(?!{_FIXED.get(body[1:]) or _class(body[1:], chars)})"
    if body[0] == ">":
        return f"(?={_FIXED.get(body[1:]) or _class(body[1:], chars)})"
    if body[0] == "<":
        return f"(?<={_class(body[1:], chars)})"
    times = {"*": "{0,4}", "+": "{1,4}"}.get(times, times)
    if body in _FIXED:
        return f"(?:{_FIXED[body]}){times}"
    return _class(body, chars) + times


def _steps(item: str, chars: Chars) -> list[Step] | None:
    """Return one item as steps to walk; None where it says what only an expression can."""
    if item in _FIXED_STEPS:
        return _FIXED_STEPS[item]
    times = item[-1] if item[-1] in "?*+" else ""
    look = item[0] if item[0] in "!><" else ""
    names = item[len(look) : len(item) - len(times)].split("|")
    members: frozenset[str] = frozenset().union(*(PAUSE_SETS.get(name) or chars(name) for name in names))
    if names == ["_"] and not look:
        return [(step.MANY_OTHERS, _PAUSES, *_TIMES[times])]
    if names == ["@"]:
        return [(_LOOKS[look], frozenset(NAMED), 1, 1)] if look in ("!", ">") else None
    if set(names) & (_FIXED.keys() - PAUSE_SETS.keys() - {"$", "@"}):
        return None
    if "$" in names:
        kind = None if times else _LOOKS_OR_LAST.get(look, None if look else step.ONE_OR_LAST)
        return None if kind is None else [(kind, members, 1, 1)]
    if look:
        return [(_LOOKS[look], members, 1, 1)]
    return [(step.MANY if times else step.ONE, members, *_TIMES[times])]


class RuleSet:
    """Rules behind a sieve, so that a text is tried only against those that could hold."""

    def __init__(self, rules: Mapping[str, str], chars: Chars, frequent: frozenset[str]) -> None:
        """Take label → patterns, one a line; `frequent` signatures stand in most texts and make poor anchors."""
        by_source, needs, items = _labels_by_source(rules), Needs(chars, frequent), Items(chars)
        self.rules = [Rule(labels[0], source, needs.of(source), items) for source, labels in by_source.items()]
        self._labels = list(by_source.values())
        self._sieve = Sieve([rule.needed for rule in self.rules])
        for rule in self.rules:
            rule.needed = []  # the sieve has it
        self._known: dict[str, Found] = {}

    def find(self, signature: str, signs: Iterable[str]) -> Found:
        """Return label → spans (from, to) of all rules that hold, each once, rising; `signs` are the text's.

        The result is not to be changed: a short text's is kept, since most answers are one of a few forms.
        """
        found = self._known.get(signature)
        if found is None:
            found = self._search(signature, signs)
            if len(signature) <= _SHORT:
                if len(self._known) >= _KNOWN:
                    self._known.clear()
                self._known[signature] = found
        return found

    def _search(self, signature: str, signs: Iterable[str]) -> Found:
        """Return the same, by trying the rules that could hold."""
        rules = self.rules
        found: dict[str, list[tuple[int, int]]] = {}
        several: set[str] = set()
        for at in self._sieve.passing(signs):
            spans = rules[at].find(signature)
            if not spans:
                continue
            for label in self._labels[at]:
                if label in found:
                    found[label] = found[label] + spans
                    several.add(label)
                else:
                    found[label] = spans
        for label in several:
            found[label] = sorted(set(found[label]))
        return found


def _labels_by_source(rules: Mapping[str, str]) -> dict[str, list[str]]:
    """Return pattern → its labels: one that several labels share is tried once."""
    result: dict[str, list[str]] = {}
    for label, block in rules.items():
        for line in block.splitlines():
            source = " ".join(line.split())
            if source and label not in result.setdefault(source, []):
                result[source].append(label)
    return result
