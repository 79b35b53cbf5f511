"""The weights of trained questions as they stand in their file and in memory: one row a feature, packed closely.

A row has a whole number of hundredths for each class of each question. What the questions are is decided elsewhere.
"""

import sys
import zlib
from array import array
from binascii import a2b_base64, b2a_base64
from collections.abc import Iterable, Mapping, Sequence

from reminders.core.reading.kept import Kept

BETWEEN = "\t"  # stands between names, since no name of a feature holds one
_BYTE, _MOST = 128, 32_768  # what lifts the least number of one byte, and of two, to nought
# Sums stand side by side in one whole number, four bytes a class, and may borrow from their neighbours. Half of what
# four bytes hold, added to all, makes each whole again: all are lifted alike, and only their distances count.
_LANE, LIFT = 4, 1 << 31


class Weights:
    """The rows of one file."""

    def __init__(self, width: int, names: str, in_bytes: int, rows: str) -> None:
        """Take the numbers a row, the names, how many of the first have rows of single bytes, and the packed rows."""
        self._width, self._in_bytes, self._rows = width, in_bytes, zlib.decompress(a2b_base64(rows))
        found = names.split(BETWEEN) if names else []
        self._place = dict(zip(found, range(len(found)), strict=True))
        # What a text needs is put together at its first need: all of it would hold up every start.
        self._packed: Kept[str, int] = Kept(self._pack, len(found) + 1)
        self._size, self.lift = width * _LANE, _in_all_lanes(LIFT, width)
        self._off_byte, self._off_two = _in_all_lanes(_BYTE, width), _in_all_lanes(_MOST, width)

    def __contains__(self, name: str) -> bool:
        """Tell whether a feature has weights."""
        return name in self._place

    def total(self, names: Iterable[str], so_far: int = 0) -> int:
        """Return the weights of features as one whole number that adds up lane by lane, added to another."""
        return sum(map(self._packed.__getitem__, filter(self._place.__contains__, names)), so_far)

    def numbers(self, name: str) -> list[int]:
        """Return the weights of a feature one by one."""
        lifted = self.lanes(self._packed[name] + self.lift) if name in self._place else [LIFT] * self._width
        return [one - LIFT for one in lifted]

    def rows(self) -> dict[str, list[int]]:
        """Return all features with their weights."""
        return {name: self.numbers(name) for name in self._place}

    def lanes(self, total: int) -> list[int]:
        """Return the sums that stand side by side in one number, each lifted alike."""
        lanes = array("I")
        lanes.frombytes(total.to_bytes(self._size, "little"))
        if sys.byteorder == "big":
            lanes.byteswap()
        return lanes.tolist()

    def _pack(self, name: str) -> int:
        """Return a row as one whole number, a lane a class: adding those adds all lanes at once."""
        place, width, lanes = self._place[name], self._width, bytearray(self._size)
        if place < self._in_bytes:
            lanes[::_LANE] = self._rows[place * width : (place + 1) * width]
            return int.from_bytes(lanes, "little") - self._off_byte
        start = (2 * place - self._in_bytes) * width
        lanes[::_LANE] = self._rows[start : start + width]
        lanes[1::_LANE] = self._rows[start + width : start + 2 * width]
        return int.from_bytes(lanes, "little") - self._off_two


def _in_all_lanes(number: int, width: int) -> int:
    """Return a number in each of so many lanes."""
    return int.from_bytes(number.to_bytes(_LANE, "little") * width, "little")


def packed(rows: Mapping[str, Sequence[int]]) -> dict[str, str | int]:
    """Return weights as they stand in a file: names, and all rows pressed, those whose numbers fit in a byte first.

    Numbers are lifted to be none below nought; a row of two bytes has all low bytes before all high ones.
    """
    near = [name for name, row in rows.items() if all(-_BYTE <= one < _BYTE for one in row)]
    far = sorted(rows.keys() - set(near))
    bare = bytearray(one + _BYTE for name in near for one in rows[name])
    for name in far:
        bare += bytes((one + _MOST) & 0xFF for one in rows[name]) + bytes((one + _MOST) >> 8 for one in rows[name])
    return {
        "names": BETWEEN.join([*near, *far]),
        "in_bytes": len(near),
        "rows": b2a_base64(zlib.compress(bare, 9), newline=False).decode(),
    }
