"""Which report a correction means, as a table: her newest, what it names as wrong, and where it is torn."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from reminders.core.correcting import TORN, Correcting, Earlier, Meant, meant, taken_back

TODAY = date(2027, 3, 5)
YESTERDAY = TODAY - timedelta(days=1)
RATING = Correcting(TODAY, states_pain=True, tells_session=False)
WHOLE = replace(RATING, tells_session=True)
DONE = replace(WHOLE, states_pain=False)
ASKED = replace(RATING, asked_session=8)

OLD = Earlier(1, YESTERDAY, YESTERDAY, session_id=7, pain=5)
MORNING = Earlier(2, TODAY, TODAY, session_id=7, pain=6, is_settling=True)
LOOSE = Earlier(3, TODAY, TODAY, pain=9)
NEW = Earlier(4, TODAY, TODAY, session_id=8, pain=3)
UNRATED = replace(NEW, id=5, pain=None)
DIZZY = Earlier(6, TODAY, TODAY)
FIXED = Earlier(7, TODAY, TODAY, session_id=8, pain=2, replaces=4)
STAFF = Earlier(9, YESTERDAY, TODAY, session_id=7, pain=1, by_staff=True)

CASES = {
    "nothing to correct": ([], RATING, Meant()),
    "the newest rating of a session": ([OLD, NEW], RATING, Meant(NEW)),
    "a morning rating, when that came last": ([OLD, MORNING], RATING, Meant(MORNING)),
    "one without a session, when that came last": ([OLD, LOOSE], RATING, Meant(LOOSE)),
    "never a staff correction": ([OLD, STAFF], RATING, Meant(OLD)),
    "not one already replaced": ([OLD, NEW, FIXED], RATING, Meant(FIXED)),
    "words without a rating in between change nothing": ([OLD, DIZZY], RATING, Meant(OLD)),
    "a rating for a report that had none": ([UNRATED], RATING, Meant(UNRATED)),
    "a rating or the session told since: torn": ([OLD, MORNING, UNRATED], RATING, TORN),
    "what it takes back tells which": (
        [OLD, MORNING, UNRATED], replace(RATING, taken_back=frozenset({6})), Meant(MORNING),
    ),
    "what it takes back stands in two places: torn": (
        [OLD, replace(MORNING, pain=5), NEW], replace(RATING, taken_back=frozenset({5})), TORN,
    ),
    "what it takes back stands in two places, once last": (
        [OLD, replace(NEW, pain=5)], replace(RATING, taken_back=frozenset({5})), Meant(replace(NEW, pain=5)),
    ),
    "the day that it names": ([OLD, NEW], replace(RATING, on=YESTERDAY), Meant(OLD)),
    "a day with two ratings: torn": ([OLD, MORNING, NEW], replace(RATING, on=TODAY), TORN),
    "how much was done is no morning's": ([OLD, MORNING], DONE, Meant(OLD)),
    "a session told again beside its rating": ([OLD, MORNING], WHOLE, Meant(OLD)),
    "a session told while a newer one is open: torn": ([OLD], replace(WHOLE, open_on=TODAY), TORN),
    "done after all, while a newer one is open: torn": ([OLD], replace(DONE, open_on=TODAY), TORN),
    "a bare rating means what was told, not what is open": ([OLD], replace(RATING, open_on=TODAY), Meant(OLD)),
    "a session that is named by its rating": (
        [OLD], replace(WHOLE, open_on=TODAY, taken_back=frozenset({5})), Meant(OLD),
    ),
    "while the morning question is open: torn": ([OLD], replace(RATING, asks_morning=True), TORN),
    "an answer to it, when nothing was rated": ([], replace(RATING, asks_morning=True), Meant()),
    "an answer to our question about a session": ([OLD, UNRATED], ASKED, Meant()),
    "its rating, given before": ([OLD, MORNING, NEW], ASKED, Meant(NEW)),
    "its answer, or the rating of this morning: torn": ([OLD, MORNING, UNRATED], ASKED, TORN),
}  # fmt: skip


@pytest.mark.parametrize(("earlier", "said", "expected"), CASES.values(), ids=CASES)
def test_a_correction_means(earlier: list[Earlier], said: Correcting, expected: Meant) -> None:
    assert meant(earlier, said) == expected


TAKEN_BACK = {
    "sorry, pain 2 not 9": {9},
    "it was 3, not a 6": {6},
    "perdón, dolor 2 no 9": {9},
    "I did 2 sets, not 3 sets": set(),
    "Sorry, I meant 2": set(),
}


@pytest.mark.parametrize(("text", "numbers"), TAKEN_BACK.items(), ids=TAKEN_BACK)
def test_the_numbers_that_a_correction_takes_back(text: str, numbers: set[int]) -> None:
    assert taken_back(text) == numbers
