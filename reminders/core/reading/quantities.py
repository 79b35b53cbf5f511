"""The values that numbers of a reply become: amounts, pain figures, counts. Which is which stands in `roles.py`."""

from dataclasses import dataclass, field


@dataclass(slots=True)
class Amount:
    """An amount at tokens `start` to `end`."""

    start: int
    end: int
    sets: int | None
    reps: int | None
    kind: str = "amount"


@dataclass(slots=True)
class Figure:
    """A pain figure at a token."""

    at: int
    value: int
    stated: bool = True  # False: pain only because of what was asked or where it stands


@dataclass(slots=True)
class Numbers:
    """All numbers of a text by role."""

    amounts: list[Amount] = field(default_factory=list)
    pains: list[Figure] = field(default_factory=list)
    retracted: list[int] = field(default_factory=list)  # places of figures taken back within the text
    off_scale: bool = False
    has_minutes: bool = False
    seconds: list[tuple[int, float]] = field(default_factory=list)  # place and length of holds
    counts: list[tuple[int, int, int]] = field(default_factory=list)  # place, done, of (0: all of them named)
    items: list[tuple[int, int, int]] = field(default_factory=list)  # start, end, number in the list
    loose: list[int] = field(default_factory=list)  # places of numbers that nothing claimed
    signature: str = ""
    asks_pain: bool = False
    numeric: frozenset[str] = frozenset()
    second: list[float | None] = field(default_factory=list)  # of fractions: the number behind the stroke
