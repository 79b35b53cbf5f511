"""Tells which of many rules a text could hold at all, by the signatures it needs, before any rule is tried.

A rule needs one signature of each of some sets. One bit a rule and a need stands in one long whole number a signature:
the numbers of all signatures of a text put together by "or" say which needs are met, a few shifts which rules have all
of theirs. Which rules there are, and what they mean, is decided by the callers.
"""

from collections.abc import Sequence

_LEVELS = 2  # needs looked at, since with the two rarest met nearly all rules that are left do hold


class Sieve:
    """The needs of a list of rules."""

    def __init__(self, needs: Sequence[Sequence[frozenset[str]]]) -> None:
        """Take what each rule needs, the rarest first."""
        self._count = len(needs)
        self._places: dict[frozenset[str], list[int]] = {}
        self._met = 0  # needs that a rule does not have are met by any text
        for level in range(_LEVELS):
            for at, some in enumerate(needs):
                place = level * self._count + at
                if level < len(some):
                    self._places.setdefault(some[level], []).append(place)
                else:
                    self._met |= 1 << place
        self._all = (1 << self._count) - 1
        self._by_char: dict[str, int] = {}  # at most one entry for each signature that the lexicon gives out

    def passing(self, signature: str) -> list[int]:
        """Return the numbers of the rules that a text of these signatures could hold, rising."""
        by_char, met, count = self._by_char, self._met, self._count
        for char in set(signature):
            bits = by_char.get(char)
            met |= self._bits(char) if bits is None else bits
        left = met & self._all
        for _ in range(_LEVELS - 1):
            met >>= count
            left &= met
        passing = []
        while left:  # from the highest, since the number grows shorter on the way
            at = left.bit_length() - 1
            passing.append(at)
            left ^= 1 << at
        passing.reverse()
        return passing

    def _bits(self, char: str) -> int:
        """Return the needs that a signature meets, worked out once."""
        bits = bytearray(self._count * _LEVELS // 8 + 1)
        for some, places in self._places.items():
            if char in some:
                for place in places:
                    bits[place >> 3] |= 1 << (place & 7)
        found = self._by_char[char] = int.from_bytes(bits, "little")
        return found
