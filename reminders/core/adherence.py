"""How much of what was prescribed was done: counts and the rate, from session states alone."""

from collections.abc import Iterable
from dataclasses import dataclass

COUNTED = ("done", "part", "skipped", "missed")
# Fewer sessions than this give no percentage: common practice, no source.
LEAST_FOR_A_RATE = 4


@dataclass(frozen=True)
class Adherence:
    """Sessions done, done in part, skipped and missed; the others are in neither number."""

    done: int = 0
    part: int = 0
    skipped: int = 0
    missed: int = 0

    @property
    def prescribed(self) -> int:
        """How many sessions count."""
        return self.done + self.part + self.skipped + self.missed

    @property
    def rate(self) -> float | None:
        """Done of prescribed, 0-1; None under four sessions. Part is shown beside and not counted as done.

        Sessions done of sessions prescribed is what most studies measure: Bailey et al. 2020, BJSM 54(6):326,
        Defining adherence to therapeutic exercise for musculoskeletal pain.
        """
        return self.done / self.prescribed if self.prescribed >= LEAST_FOR_A_RATE else None

    @property
    def percent(self) -> int | None:
        """The rate in whole percent, halves up; None under four sessions."""
        rate = self.rate
        return None if rate is None else int(rate * 100 + 0.5)


def adherence(states: Iterable[str]) -> Adherence:
    """Return the counts of session states; planned, reminded, unsent, paused, held and extra are in neither number."""
    found = list(states)
    return Adherence(*map(found.count, COUNTED))
