"""Tells what a text must hold for a rule to be worth trying, in the notation of `patterns.py`."""

from collections.abc import Callable

from reminders.core.reading.kept import Kept
from reminders.core.reading.sieve import closing, opening
from reminders.core.reading.signatures import NO_WORD, PAUSE_SETS, QUESTION

_NOTHING_NEEDED = frozenset({"~", "~~", "^", "$", ",", ".", "_"})
_ITEMS = 60_000  # kept
Need = tuple[int, int, frozenset[str]]  # how many frequent signatures, how many at all, which


class Needs:
    """The needs of rules over one lexicon; what an item needs is worked out once, since many rules share it."""

    def __init__(self, chars: Callable[[str], frozenset[str]], frequent: frozenset[str] = frozenset()) -> None:
        """Take concept → signatures; `frequent` ones stand in most texts and say little."""
        self._chars, self._frequent = chars, frequent
        self._items: Kept[str, Need | None] = Kept(self._item, _ITEMS)

    def of(self, source: str) -> list[frozenset[str]]:
        """Return the sets of signs of each of which a text must hold one, what is at its edges and the rarest first."""
        items = source.split()
        needs = [need for need in map(self._items.__getitem__, items) if need is not None]
        if len(needs) > 1:
            needs.sort(key=_rank)
        return self._edges(items) + [signs for _, _, signs in needs]

    def _item(self, item: str) -> Need | None:
        """Return what one item needs, or None where it can do without."""
        if item in _NOTHING_NEEDED or (item[-1] in "?*" and len(item) > 1) or item[0] in "!<":
            return None
        names = [item] if item == "?" else item.rstrip("+").lstrip(">").split("|")
        if "$" in names:
            return None
        sets = [PAUSE_SETS.get(name) or self._chars(name) for name in names]
        signs = frozenset(QUESTION) if item == "?" else sets[0] if len(sets) == 1 else frozenset().union(*sets)
        return len(signs & self._frequent), len(signs), signs

    def _edges(self, items: list[str]) -> list[frozenset[str]]:
        """Return the signs of which a text must hold one because the rule speaks of its first or its last word."""
        edges: list[frozenset[str]] = []
        if len(items) > 1 and items[0] == "^":
            edges += [frozenset(map(opening, some)) for some in self._word(items[1])]
        if len(items) > 1 and items[-1] == "$":
            edges += [frozenset(map(closing, some)) for some in self._word(items[-2])]
        return edges

    def _word(self, item: str) -> list[frozenset[str]]:
        """Return the signatures that an item takes, when it takes one word and cannot do without."""
        if item in _NOTHING_NEEDED or item[-1] in "?*" or item[0] in "!<>":
            return []
        names = item.rstrip("+").split("|")
        if "$" in names or not PAUSE_SETS.keys().isdisjoint(names):
            return []
        some = frozenset().union(*map(self._chars, names))
        return [] if not some.isdisjoint(NO_WORD) else [some]


def _rank(need: Need) -> tuple[int, int]:
    """Return how little a need says."""
    return need[0], need[1]
