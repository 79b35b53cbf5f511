"""When the dose may go up or back: one changed fact a case."""

from dataclasses import replace
from datetime import date, timedelta

import pytest

from reminders.core.levels import DEFAULTS
from reminders.core.rules.history import History, SessionFact
from reminders.core.rules.progress import StepFacts, after_absence, step_back, step_up
from reminders.core.usual import UsualFacts

MONDAY = date(2027, 3, 1)
FACTS = StepFacts(today=MONDAY + timedelta(days=14), rung=0, rung_on=MONDAY)


def record(*pains: int | None, states: str = "dddddd", usual: float = 2, easy: frozenset[int] = frozenset()) -> History:
    names = {"d": "done", "p": "part", "s": "skipped", "m": "missed", "h": "held"}
    sessions = tuple(
        SessionFact(at, MONDAY + timedelta(days=2 * at), names[state], pain, is_easy=at in easy)
        for at, (state, pain) in enumerate(zip(states, pains, strict=True))
    )
    return History(sessions, UsualFacts(pinned=usual))


GOOD = record(2, 2, 3, 2, 2, 2)
STEP_UP = {
    "all in full": (GOOD, FACTS, True),
    "four of six in full": (record(2, 2, 2, 2, None, None, states="ddddms"), FACTS, True),
    "three of six in full": (record(2, 2, 2, 2, None, None, states="dddpms"), FACTS, False),
    "five sessions are too few": (record(2, 2, 2, 2, 2, states="ddddd"), FACTS, False),
    "one rating over three": (record(2, 2, 4, 2, 2, 2), FACTS, True),
    "two ratings over three": (record(2, 2, 4, 4, 2, 2), FACTS, False),
    "usual four: fives are allowed": (record(5, 5, 5, 5, 5, 5, usual=4), FACTS, True),
    "one rating over five": (record(2, 2, 6, 2, 2, 2, usual=6), FACTS, False),
    "the rating that brought a hold counts": (record(2, 2, 2, 7, 2, 2, 2, states="dddhddd"), FACTS, False),
    "a held day without pain does not stop it": (record(2, 2, 2, None, 2, 2, 2, states="dddhddd"), FACTS, True),
    "an easy day does not count": (record(2, 2, 2, 2, 2, 2, easy=frozenset({5})), FACTS, False),
    "thirteen days on the rung": (GOOD, replace(FACTS, today=MONDAY + timedelta(days=13)), False),
    "a rung that asks for longer": (GOOD, replace(FACTS, least_days=21), False),
    "the top rung": (GOOD, replace(FACTS, has_next=False), False),
    "something is open": (GOOD, replace(FACTS, anything_open=True), False),
    "hard": (GOOD, replace(FACTS, efforts=("easy", "hard")), False),
    "hard before, medium now": (GOOD, replace(FACTS, efforts=("hard", "medium")), True),
    "four weeks past the re-check": (GOOD, replace(FACTS, recheck_on=FACTS.today - timedelta(days=28)), True),
    "a day more": (GOOD, replace(FACTS, recheck_on=FACTS.today - timedelta(days=29)), False),
    "sessions before the rung do not count": (GOOD, replace(FACTS, rung_on=MONDAY + timedelta(days=1)), False),
}


@pytest.mark.parametrize(("history", "facts", "fires"), STEP_UP.values(), ids=STEP_UP.keys())
def test_step_up(history: History, facts: StepFacts, fires: bool) -> None:
    found = step_up(history, facts)
    assert (found is not None) is fires
    if found:
        assert (found.direction, found.to_rung) == ("up", facts.rung + 1)


def test_easy_twice_speaks_for_a_step() -> None:
    found = step_up(GOOD, replace(FACTS, efforts=("easy", "easy")))
    assert found is not None
    assert ("easy_twice", {}) in found.reasons


def with_reps(*reps: int | None) -> History:
    sessions = tuple(
        SessionFact(at, MONDAY + timedelta(days=2 * at), "done", 2, reps=count) for at, count in enumerate(reps)
    )
    return History(sessions)


BACK = replace(FACTS, rung=1, prescribed_reps=10)
STEP_BACK = {
    "under eight twice": (with_reps(7, 6), BACK, True),
    "under eight once": (with_reps(10, 6), BACK, False),
    "eight is enough": (with_reps(8, 8), BACK, False),
    "unsaid between does not break it": (with_reps(7, None, 6), BACK, True),
    "on the first rung there is nothing below": (with_reps(7, 6), replace(BACK, rung=0), False),
    "where six were asked": (with_reps(6, 6), replace(BACK, prescribed_reps=6), False),
    "something is open": (with_reps(7, 6), replace(BACK, anything_open=True), False),
}


@pytest.mark.parametrize(("history", "facts", "fires"), STEP_BACK.values(), ids=STEP_BACK.keys())
def test_step_back(history: History, facts: StepFacts, fires: bool) -> None:
    found = step_back(history, facts)
    assert (found is not None) is fires
    if found:
        assert (found.direction, found.to_rung) == ("back", 0)


# rung, days away, ill -> rung to come back to
ABSENCE = {
    "13 days": ((2, 13, False), 2),
    "two weeks": ((2, 14, False), 1),
    "27 days": ((2, 27, False), 1),
    "four weeks": ((2, 28, False), 0),
    "an illness": ((2, 3, True), 0),
    "on the first rung": ((0, 14, False), 0),
}


@pytest.mark.parametrize(("away", "expected"), ABSENCE.values(), ids=ABSENCE.keys())
def test_after_an_absence(away: tuple[int, int, bool], expected: int) -> None:
    assert after_absence(*away, DEFAULTS) == expected
