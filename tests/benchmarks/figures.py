"""One row of the table: what was measured, the goal, and whether it was reached."""

import time
from collections.abc import Callable
from dataclasses import dataclass
from statistics import median


@dataclass(frozen=True)
class Figure:
    """A measured value against its goal, which is None where the value is only reported.

    `floor`: the loose goal that small and busy machines must reach too.
    """

    work: str
    value: float
    goal: float | None
    floor: float
    unit: str = ""
    at_least: bool = True
    note: str = ""

    def reaches(self, wanted: float) -> bool:
        """Return whether the value is good enough."""
        return self.value >= wanted if self.at_least else self.value <= wanted

    def line(self) -> str:
        """Return the row as the table shows it."""
        if self.goal is None:
            return f"| {self.work} | {self.value:.2f}{self.unit} | | reported | {self.note} |"
        sign = ">=" if self.at_least else "<="
        said = "reached" if self.reaches(self.goal) else "NOT reached"
        return f"| {self.work} | {self.value:.2f}{self.unit} | {sign} {self.goal:g}{self.unit} | {said} | {self.note} |"


@dataclass(frozen=True)
class Taken:
    """How long something took: seconds on the wall, and of this process's work."""

    wall: float
    work: float


def timed(act: Callable[[], object]) -> Taken:
    """Do something once; return how long it took."""
    wall, work = time.perf_counter(), time.process_time()
    act()
    return Taken(time.perf_counter() - wall, time.process_time() - work)


def alternating(*sides: Callable[[], Taken], times: int) -> list[list[Taken]]:
    """Measure the sides in turn, so that what else the machine does falls on all."""
    rounds = [[side() for side in sides] for _ in range(times)]
    return [list(taken) for taken in zip(*rounds, strict=True)]


def middle(taken: list[Taken]) -> Taken:
    """Return the medians."""
    return Taken(median(one.wall for one in taken), median(one.work for one in taken))
