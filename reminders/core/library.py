"""The exercise library: every exercise with the precautions that forbid or change it, and what stands in for it.

Questions about one exercise are answered here. Its words stand in templates/exercises, its rows in
library_data.py and library_limits.py, and whole programs in programs.py.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from reminders.core.dose import REPS, SECONDS, Dose, Ladder, Rung, default_ladder, ladder_of, read_dose
from reminders.core.library_data import FLOOR, ROWS, Row
from reminders.core.library_limits import LIMITS, NONE_KNOWN, PRECAUTIONS, REFUSED, SWAPPED, Limit


@dataclass(frozen=True)
class Exercise(Row):
    """One exercise: its row (see Row) and its limits, in the order of PRECAUTIONS."""

    limits: tuple[Limit, ...] = ()

    @property
    def dose(self) -> Dose:
        """The easy dose that it starts with."""
        return read_dose(self.start)

    @property
    def counted(self) -> str:
        """`reps` or `seconds`."""
        return self.dose.unit

    @property
    def on_floor(self) -> bool:
        """Whether it is done on the floor (or on a firm bed)."""
        return self.position in FLOOR

    def limits_for(self, precautions: Iterable[str]) -> tuple[Limit, ...]:
        """Return what these precautions do to it."""
        given = set(precautions)
        return tuple(limit for limit in self.limits if limit.precaution in given)


def _with_limits(row: Row) -> Exercise:
    mine = tuple(limit for code, limit in LIMITS if code == row.code)
    return Exercise(**vars(row), limits=mine)


EXERCISES: tuple[Exercise, ...] = tuple(_with_limits(row) for row in ROWS)
LIBRARY: dict[str, Exercise] = {exercise.code: exercise for exercise in EXERCISES}


def exercise(code: str) -> Exercise:
    """Return the exercise with this code; raises ValueError with one sentence when there is none."""
    try:
        return LIBRARY[code]
    except KeyError:
        raise ValueError(
            f'There is no exercise "{code}" in the library: choose one of its codes, such as sit-to-stand.'
        ) from None


def read_precautions(text: str) -> tuple[str, ...] | None:
    """Return the precautions that a text states by their English names, joined by "+".

    An empty text is None: nobody was asked. `none known` alone is the empty tuple, an answer. Raises ValueError
    for an unknown name, and for `none known` beside others.
    """
    names = [" ".join(name.split()).lower() for name in text.split("+")]
    if names == [""]:
        return None
    unknown = [name for name in names if name not in (*PRECAUTIONS, NONE_KNOWN)]
    if unknown:
        raise ValueError(f'"{unknown[0]}" is no precaution: use {", ".join(PRECAUTIONS)}, or {NONE_KNOWN}.')
    if NONE_KNOWN in names and set(names) != {NONE_KNOWN}:
        raise ValueError(f'"{NONE_KNOWN}" stands alone: leave it out, or leave the other precautions out.')
    return tuple(name for name in PRECAUTIONS if name in names)


def is_barred(code: str, precautions: Iterable[str]) -> bool:
    """Say whether any of these precautions refuses or swaps the exercise."""
    return any(limit.effect in (REFUSED, SWAPPED) for limit in exercise(code).limits_for(precautions))


def stand_in(code: str, precautions: Iterable[str]) -> str | None:
    """Return what to do instead of an exercise: itself where nothing bars it, None where nothing fits.

    Every barring precaution's swap is tried in turn, then the chair version, and so on from there.
    """
    given = tuple(precautions)
    waiting, seen = [code], set()
    while waiting:
        candidate = waiting.pop(0)
        if candidate in seen:
            continue
        seen.add(candidate)
        if not is_barred(candidate, given):
            return candidate
        there = exercise(candidate)
        if any(limit.effect == REFUSED for limit in there.limits_for(given)):
            continue
        swaps = [limit.swap for limit in there.limits_for(given)] + [there.chair_version]
        waiting += [swap for swap in swaps if swap is not None]
    return None


def easy_version(code: str) -> str:
    """Return what an easy day does instead: another exercise for one that needs a load or one leg, else itself."""
    return exercise(code).easy_version or code


def ladder_for(code: str) -> Ladder:
    """Return the exercise's own ladder: from its easy dose up, the common rungs that are more."""
    first = exercise(code).dose
    if first.unit == SECONDS and first.count >= 60:
        return _walking_ladder(first)
    if first.unit == REPS and first.count < 10:
        return ladder_of(f"1x{first.count}", f"2x{first.count}", "2x10", "3x10")
    later = default_ladder(first.unit).rungs
    more = tuple(rung for rung in later if rung.dose.sets * rung.dose.count > first.sets * first.count)
    return Ladder((Rung(first), *more))


def _walking_ladder(first: Dose) -> Ladder:
    # Up to 20 minutes of brisk walking a day for those kept to low impact: Brooke-Wavell et al., "Strong, steady
    # and straight: UK consensus statement", BJSM 2022;56(15):837-846. The rungs between: common practice, no source.
    minutes = first.count // 60
    return ladder_of(*(f"1x{step} min" for step in (minutes, minutes + 5, minutes + 10)))
