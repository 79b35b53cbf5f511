"""Tells which of many rules a text could hold at all, by the signatures it needs, before any rule is tried.

A rule needs one sign of each of some sets: a sign is a signature that stands somewhere in the text, or one that opens
or closes it. One bit a rule and a need stands in one long whole number a sign: the numbers of all signs of a text put
together by "or" say which needs are met, a few shifts which rules have all of theirs. Which rules there are, and what
they mean, is decided by the callers.
"""

from collections.abc import Iterable, Sequence
from functools import reduce
from operator import or_

from reminders.core.reading.kept import Kept

_LEVELS = 3  # needs looked at, since with the three rarest met nearly all rules that are left do hold
_SIGNS = 20_000


def opening(char: str) -> str:
    """Return the sign that a text begins with a signature, pauses before it apart."""
    return "^" + char


def closing(char: str) -> str:
    """Return the sign that a text ends with a signature, pauses behind it apart."""
    return char + "$"


def signs_of(signature: str, present: Iterable[str], pauses: str) -> set[str]:
    """Return the signs of a text: its different signatures, which open it and which close it."""
    signs = set(present)
    words = signature.strip(pauses)
    if words:
        signs.add(opening(words[0]))
        signs.add(closing(words[-1]))
    return signs


class Sieve:
    """The needs of a list of rules."""

    def __init__(self, needs: Sequence[Sequence[frozenset[str]]]) -> None:
        """Take what each rule needs, the rarest first."""
        self._count = len(needs)
        places: dict[frozenset[str], list[int]] = {}
        met = bytearray(self._count * _LEVELS // 8 + 1)  # needs that a rule does not have are met by any text
        for level in range(_LEVELS):
            for at, some in enumerate(needs):
                place = level * self._count + at
                if level < len(some):
                    places.setdefault(some[level], []).append(place)
                else:
                    met[place >> 3] |= 1 << (place & 7)
        self._met = int.from_bytes(met, "little")
        self._places: dict[str, list[list[int]]] = {}  # sign → the needs that it meets
        for signs, wanted in places.items():
            for sign in signs:
                self._places.setdefault(sign, []).append(wanted)
        self._all = (1 << self._count) - 1
        self._bit = [1 << at for at in range(self._count)]
        # Three entries at most for each signature that the lexicon gives out: never so many that it starts afresh.
        self._by_sign: Kept[str, int] = Kept(self._bits, _SIGNS)

    def passing(self, signs: Iterable[str]) -> list[int]:
        """Return the numbers of the rules that a text with these signs could hold, rising."""
        met, count, bit = reduce(or_, map(self._by_sign.__getitem__, signs), self._met), self._count, self._bit
        left = self._all & met & (met >> count) & (met >> 2 * count)  # all three levels
        passing = []
        while left:  # from the highest, since the number grows shorter on the way
            at = left.bit_length() - 1
            passing.append(at)
            left ^= bit[at]
        passing.reverse()
        return passing

    def _bits(self, sign: str) -> int:
        """Return the needs that a sign meets."""
        bits = bytearray(self._count * _LEVELS // 8 + 1)
        for places in self._places.get(sign, ()):
            for place in places:
                bits[place >> 3] |= 1 << (place & 7)
        return int.from_bytes(bits, "little")
