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
    needed: list[frozenset[str]]  # a text must hold one signature of each
    _chars: Chars
    _regex: "re.Pattern[str] | None" = None

    def __post_init__(self) -> None:
        """Keep apart what is still to be checked once the rarest word is there."""
        self.others = tuple(self.needed[1:])
        self.is_anchored = self.source.startswith("^")

    def regex(self) -> "re.Pattern[str]":
        """Return the expression."""
        if self._regex is None:
            items = self.source.split()
            parts = [_item(item, self._chars) for item in items]
            negators = self._chars("NEGATOR")
            if self.label.startswith("danger.") and not any(
                negators & self._chars(name) for item in items for name in item.strip("!><?*+").split("|")
            ):
                gap = rf"[^{re.escape(NO_WORD)}{''.join(sorted(negators))}]{{0,3}}?"
                parts = [gap if item == "~" else part for item, part in zip(items, parts, strict=True)]
            self._regex = re.compile("".join(parts))
        return self._regex

    def may_hold(self, present: set[str]) -> bool:
        """Tell whether a text of these signatures, the rarest needed one among them, could hold the rule."""
        return all(not some.isdisjoint(present) for some in self.others)


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
        needed.append(frozenset().union(*(_PAUSES.get(name) or chars(name) for name in names)))
    return sorted(needed, key=lambda some: (len(some & frequent), len(some)))


def rule_for(source: str, chars: Chars, label: str = "", frequent: frozenset[str] = frozenset()) -> Rule:
    """Return one pattern, ready to be tried."""
    return Rule(label, source, _needed(source, chars, frequent), chars)


class RuleSet:
    """Rules indexed by their rarest word, so that a text is tried only against those that could hold.

    What a rule needs besides is one bit a set of signatures: a text has the bits of all its signatures.
    """

    def __init__(self, rules: Mapping[str, str], chars: Chars, frequent: frozenset[str]) -> None:
        """Take label → patterns, one a line; `frequent` signatures stand in most texts and make poor anchors."""
        self._rules: list[tuple[Rule, list[str]]] = []
        self._needs: list[int] = []
        bits: dict[frozenset[str], int] = {}
        always: list[int] = []
        by_char: dict[str, list[int]] = {}
        for source, labels in _labels_by_source(rules).items():
            rule = rule_for(source, chars, labels[0], frequent)
            at = len(self._rules)
            needs = 0
            for some in rule.others:
                needs |= 1 << bits.setdefault(some, len(bits))
            self._rules.append((rule, labels))
            self._needs.append(needs)
            if not rule.needed:
                always.append(at)
            for char in rule.needed[0] if rule.needed else ():
                by_char.setdefault(char, []).append(at)
        self._always = tuple(always)
        self._by_char = {char: tuple(rules) for char, rules in by_char.items()}
        self._bits: dict[str, int] = {}
        for some, bit in bits.items():
            for char in some:
                self._bits[char] = self._bits.get(char, 0) | 1 << bit

    def find(self, signature: str) -> "dict[str, list[tuple[int, int]]]":
        """Return label → spans (from, to) of all rules that hold, each once, in no order."""
        by_char, rules, bits, needs = self._by_char, self._rules, self._bits, self._needs
        has = 0
        candidates = set(self._always)
        for char in set(signature):
            has |= bits.get(char, 0)
            if char in by_char:
                candidates.update(by_char[char])
        found: dict[str, list[tuple[int, int]]] = {}
        lacks = ~has
        for at in candidates:
            if needs[at] & lacks:
                continue
            rule, labels = rules[at]
            regex = rule._regex or rule.regex()
            match = regex.match(signature) if rule.is_anchored else regex.search(signature)
            if match is None:
                continue
            spans = [match.span()] if rule.is_anchored else [one.span() for one in regex.finditer(signature)]
            for label in labels:
                if label in found:
                    found[label] += spans
                else:
                    found[label] = spans.copy()
        return {label: spans if len(spans) == 1 else sorted(set(spans)) for label, spans in found.items()}


def _labels_by_source(rules: Mapping[str, str]) -> dict[str, list[str]]:
    """Return pattern → its labels: one that several labels share is tried once."""
    result: dict[str, list[str]] = {}
    for label, block in rules.items():
        for line in block.splitlines():
            source = " ".join(line.split())
            if source and label not in result.setdefault(source, []):
                result[source].append(label)
    return result
