"""Her usual pain: the median of the last ten ratings, and what stands until there are enough."""

from datetime import date, timedelta

import pytest

from reminders.core.levels import DEFAULTS, Levels
from reminders.core.usual import UsualFacts, usual

DAY = date(2027, 3, 1)
LATER = DAY + timedelta(days=3)


def ratings(*pains: int) -> list[tuple[date, int]]:
    return [(DAY + timedelta(days=place), pain) for place, pain in enumerate(pains)]


CASES = {
    "no ratings and nothing told is two": ([], UsualFacts(), 2),
    "no ratings yet: the figure told at enrolment": ([], UsualFacts(enrolled=5), 5),
    "told at enrolment as none": ([], UsualFacts(enrolled=0), 0),
    "two ratings are too few": ([7, 7], UsualFacts(enrolled=3), 3),
    "three ratings make a median": ([1, 9, 4], UsualFacts(enrolled=3), 4),
    "halves are kept": ([2, 2, 3, 3], UsualFacts(), 2.5),
    "only the last ten count": ([9] * 10 + [3] * 10, UsualFacts(), 3),
    "the eleventh from the end is out": ([9, *[1] * 5, *[3] * 5], UsualFacts(), 2),
    "a therapist's pin stands above all": ([9, 9, 9, 9], UsualFacts(pinned=1.5), 1.5),
    "the kept usual stands after a new program": ([8, 8, 8, 8], UsualFacts(kept=3.5, kept_on=LATER), 3.5),
    "two later ratings do not replace it": ([8, 8, 8, 8, 1, 1], UsualFacts(kept=3.5, kept_on=LATER), 3.5),
    "three later ones do, and only they count": ([8, 8, 8, 8, 1, 1, 2], UsualFacts(kept=3.5, kept_on=LATER), 1),
}


@pytest.mark.parametrize(("pains", "facts", "expected"), CASES.values(), ids=CASES.keys())
def test_usual(pains: list[int], facts: UsualFacts, expected: float) -> None:
    assert usual(ratings(*pains), facts, DEFAULTS) == expected


def test_how_many_ratings_count_can_be_changed() -> None:
    assert usual(ratings(1, 1, 1, 5, 5, 5), UsualFacts(), Levels(usual_of=3)) == 5
