"""A client's usual pain: what her ratings are compared with. Which level follows from it stands in core/levels.py."""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from statistics import median

from reminders.core.levels import Levels


@dataclass(frozen=True)
class UsualFacts:
    """What else than ratings says what her usual is. All ratings are 0-10.

    `enrolled`: told at enrolment. `pinned`: set by a therapist, stands above all. `kept`: the usual of before a
    re-check, surgery or new program on `kept_on`, which stands until enough ratings later than that day exist.
    """

    enrolled: int | None = None
    pinned: float | None = None
    kept: float | None = None
    kept_on: date | None = None


def usual(ratings: Sequence[tuple[date, int]], facts: UsualFacts, levels: Levels) -> float:
    """Return her usual (0-10, halves kept) from the ratings of the sessions before the one judged, oldest first.

    The median of the last 10; until three exist the figure told at enrolment, else 2. Ten because single pairs of
    readings are noisy: Kovacs et al. 2008, BMC Musculoskelet Disord 9:43 (4.0 points for one pair).
    """
    if facts.pinned is not None:
        return facts.pinned
    if facts.kept is not None and facts.kept_on is not None:
        newer = [pain for on, pain in ratings if on > facts.kept_on]
        return _median(newer, levels) if len(newer) >= levels.usual_needs else facts.kept
    if len(ratings) >= levels.usual_needs:
        return _median([pain for _, pain in ratings], levels)
    return float(levels.usual_default if facts.enrolled is None else facts.enrolled)


def _median(ratings: Sequence[int], levels: Levels) -> float:
    return float(median(ratings[-levels.usual_of :]))
