"""The notation in which words and rules are written, and its translation into regular expressions over signatures.

A text is one character a word (its signature, see `lexicon.py`), so a pattern is a regular expression over that string.
Items stand with spaces between: `word`, `CONCEPT`, `a|B|c`, each with `?`, `*` or `+`; `#` a number, `@` an exercise;
`~` up to three words, `~~` up to six across commas; `,` a comma, `.` a full stop, `^` and `$` the text's ends; `_` any
word; `!X` not X next; `>X` X next; `<X` X just before.
"""

import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass

# Signatures with a meaning of their own; every other signature is a CJK character handed out by the lexicon.
STOP, QUESTION, COMMA, BUT = ".", "?", ",", "b"
NAMED, NAMED_ON, USED, SECONDS = "@", "&", "u", "s"
NO_WORD = STOP + QUESTION + COMMA
Chars = Callable[[str], frozenset[str]]
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


@dataclass
class Rule:
    """One pattern of a label; its expression is made at first need, since most rules never meet their anchor word."""

    label: str
    source: str
    anchor: frozenset[str]
    _chars: Chars
    _regex: "re.Pattern[str] | None" = None

    def matches(self, signature: str) -> "Iterator[re.Match[str]]":
        """Yield the places where the rule holds."""
        if self._regex is None:
            self._regex = re.compile("".join(_item(item, self._chars) for item in self.source.split()))
        return self._regex.finditer(signature)


def literals(source: str) -> Iterator[str]:
    """Yield the plain words of a pattern, which the lexicon must know one by one."""
    for item in source.split():
        for name in item.strip("?*+").lstrip("!><").split("|"):
            if name and name[0].islower():
                yield name


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


def _anchor(source: str, chars: Chars) -> frozenset[str]:
    """Return the smallest set of signatures of which a text must hold one for the rule to be worth trying."""
    best: frozenset[str] | None = None
    for item in source.split():
        if item in _FIXED and item != "@":
            if item == "?":
                best = best or frozenset(QUESTION)
            continue
        if item[-1] in "?*" or item[0] in "!<":
            continue
        members: set[str] = set()
        names = item.rstrip("+").lstrip(">").split("|")
        if "$" in names:
            continue
        for name in names:
            members |= _PAUSES.get(name) or chars(name)
        if best is None or len(members) < len(best):
            best = frozenset(members)
    return best or frozenset()


def rule_for(source: str, chars: Chars, label: str = "") -> Rule:
    """Return one pattern, ready to be tried."""
    return Rule(label, source, _anchor(source, chars), chars)


class RuleSet:
    """Rules indexed by their anchor, so that a text is tried only against those that could hold."""

    def __init__(self, rules: Mapping[str, str], chars: Chars) -> None:
        """Take label → patterns, one a line."""
        self.always: list[Rule] = []
        self.by_char: dict[str, list[Rule]] = {}
        for label, block in rules.items():
            for line in block.splitlines():
                if source := line.strip():
                    self._add(Rule(label, source, _anchor(source, chars), chars))

    def _add(self, rule: Rule) -> None:
        """File one rule under each character of its anchor."""
        anchored = any(item not in _FIXED or item in "@?" for item in rule.source.split())
        if not rule.anchor and not anchored:
            self.always.append(rule)
        for char in rule.anchor:
            self.by_char.setdefault(char, []).append(rule)

    def find(self, signature: str) -> dict[str, list[tuple[int, int]]]:
        """Return label → spans (from, to) of all rules that hold, in no order."""
        found: dict[str, list[tuple[int, int]]] = {}
        tried: set[int] = set()
        for char in set(signature):
            for rule in self.by_char.get(char, ()):
                if id(rule) not in tried:
                    tried.add(id(rule))
                    for match in rule.matches(signature):
                        found.setdefault(rule.label, []).append(match.span())
        for rule in self.always:
            for match in rule.matches(signature):
                found.setdefault(rule.label, []).append(match.span())
        return found
