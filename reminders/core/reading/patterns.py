"""The notation in which words and rules are written, and its translation into regular expressions over signatures.

A text is one character a word (its signature, see `lexicon.py`), so a pattern is a regular expression over that string.
Items stand with spaces between: `word`, `CONCEPT`, `a|B|c`, each with `?`, `*` or `+`; `#` a number, `@` an exercise;
`~` up to three words, `~~` up to six across commas; `,` a comma, `.` a full stop, `^` and `$` the text's ends; `_` any
word; `!X` not X next; `>X` X next; `<X` X just before.
"""

import re
from collections.abc import Callable, Iterable, Iterator, Mapping

from reminders.core.reading.sieve import Sieve, closing, opening

# Signatures with a meaning of their own; every other signature is a CJK character handed out by the lexicon.
STOP, QUESTION, COMMA, BUT = ".", "?", ",", "b"
NAMED, NAMED_ON, USED, SECONDS = "@", "&", "u", "s"
NO_WORD = STOP + QUESTION + COMMA
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
_PAUSES = {",": frozenset(COMMA), ".": frozenset(STOP + QUESTION)}


class Rule:
    """One pattern of a label; its expression is made at first need, since most rules never meet their anchor word."""

    __slots__ = ("_chars", "is_anchored", "label", "made", "needed", "seek", "source")

    def __init__(self, label: str, source: str, needed: list[frozenset[str]], chars: Chars) -> None:
        """Take the pattern and what a text must hold: one sign of each set in `needed`, the rarest first."""
        self.label, self.source, self.needed, self._chars = label, source, needed, chars
        self.is_anchored = source.startswith("^")
        self.made: re.Pattern[str] | None = None
        self.seek: Callable[[str], re.Match[str] | None] | None = None  # finds the first place, once made

    def regex(self) -> "re.Pattern[str]":
        """Return the expression."""
        if self.made is None:
            items = self.source.split()
            parts = [_item(item, self._chars) for item in items]
            negators = self._chars("NEGATOR")
            if self.label.startswith("danger.") and not any(
                negators & self._chars(name) for item in items for name in item.strip("!><?*+").split("|")
            ):
                gap = rf"[^{re.escape(NO_WORD)}{''.join(sorted(negators))}]{{0,3}}?"
                parts = [gap if item == "~" else part for item, part in zip(items, parts, strict=True)]
            self.made = re.compile("".join(parts))
            self.seek = self.made.match if self.is_anchored else self.made.search
        return self.made

    def ready(self) -> "Callable[[str], re.Match[str] | None]":
        """Return what finds the first place of the rule in a text."""
        made = self.regex()
        return self.seek or made.search


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
        members |= _PAUSES.get(name) or chars(name)
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


def _needed(source: str, chars: Chars, frequent: frozenset[str] = frozenset()) -> list[frozenset[str]]:
    """Return the sets of signatures of each of which a text must hold one, the rarest first."""
    needed: list[frozenset[str]] = []
    for item in source.split():
        if item in _FIXED and item != "@":
            if item == "?":
                needed.append(frozenset(QUESTION))
            continue
        if (item[-1] in "?*" and len(item) > 1) or item[0] in "!<":
            continue
        names = item.rstrip("+").lstrip(">").split("|")
        if "$" in names:
            continue
        sets = [_PAUSES.get(name) or chars(name) for name in names]
        needed.append(sets[0] if len(sets) == 1 else frozenset().union(*sets))
    needed.sort(key=lambda some: (len(some & frequent), len(some)))
    return _edges(source.split(), chars) + needed


def _edges(items: list[str], chars: Chars) -> list[frozenset[str]]:
    """Return the signs of which a text must hold one because the rule speaks of its first or its last word."""
    edges: list[frozenset[str]] = []
    if len(items) > 1 and items[0] == "^":
        edges += [frozenset(map(opening, some)) for some in _word_needed(items[1], chars)]
    if len(items) > 1 and items[-1] == "$":
        edges += [frozenset(map(closing, some)) for some in _word_needed(items[-2], chars)]
    return edges


def _word_needed(item: str, chars: Chars) -> list[frozenset[str]]:
    """Return the signatures that an item takes, when it takes one word and cannot do without."""
    if item in _FIXED or item[-1] in "?*" or item[0] in "!<>":
        return []
    names = item.rstrip("+").split("|")
    if "$" in names or not _PAUSES.keys().isdisjoint(names):
        return []
    some = frozenset().union(*map(chars, names))
    return [] if not some.isdisjoint(NO_WORD) else [some]


def rule_for(source: str, chars: Chars, label: str = "", frequent: frozenset[str] = frozenset()) -> Rule:
    """Return one pattern, ready to be tried."""
    return Rule(label, source, _needed(source, chars, frequent), chars)


class RuleSet:
    """Rules behind a sieve, so that a text is tried only against those that could hold."""

    def __init__(self, rules: Mapping[str, str], chars: Chars, frequent: frozenset[str]) -> None:
        """Take label → patterns, one a line; `frequent` signatures stand in most texts and make poor anchors."""
        by_source = _labels_by_source(rules)
        self._rules = [rule_for(source, chars, labels[0], frequent) for source, labels in by_source.items()]
        self._labels = list(by_source.values())
        pool: dict[frozenset[str], frozenset[str]] = {}  # many rules need the same
        self._sieve = Sieve([[pool.setdefault(some, some) for some in rule.needed] for rule in self._rules])
        for rule in self._rules:
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
        rules = self._rules
        found: dict[str, list[tuple[int, int]]] = {}
        several: set[str] = set()
        size = len(signature)
        for at in self._sieve.passing(signs):
            rule = rules[at]
            match = (rule.seek or rule.ready())(signature)
            if match is None:
                continue
            start, end = span = match.span()
            spans = [span]
            if start == end or (end < size and not rule.is_anchored and rule.regex().search(signature, end)):
                spans = [one.span() for one in rule.regex().finditer(signature)]  # seldom: it holds at several places
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
