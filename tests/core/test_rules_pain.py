"""The pain rules, a table of cases a rule, and what must hold for any record."""

from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.levels import Levels
from reminders.core.rules import findings_for
from reminders.core.rules.history import Finding, History, Morning, SessionFact
from reminders.core.rules.pain import asks_for_an_easy_day, asks_this_morning, asks_where, severe_pain
from reminders.core.usual import UsualFacts

MONDAY = date(2027, 3, 1)


def on(place: int) -> date:
    """Return the day of the session at a place: Monday, Wednesday, Friday of each week."""
    return MONDAY + timedelta(days=7 * (place // 3) + 2 * (place % 3))


def history(*pains: int | None, usual: float = 2, levels: Levels | None = None, rung_on: date = date.min) -> History:
    """Return sessions with these ratings and a pinned usual."""
    sessions = tuple(SessionFact(place, on(place), pain=pain, rung_on=rung_on) for place, pain in enumerate(pains))
    return History(sessions, UsualFacts(pinned=usual), levels=levels or Levels())


def told(record: History) -> list[tuple[str, str, str]]:
    """Return what is found about the last session: rule, level, form."""
    return [(one.rule, one.level, one.form) for one in findings_for(record, len(record.sessions) - 1)]


STOP = [("pain_up", "today", "stop")]
TWICE = [("pain_up", "today", "twice")]
SEVERE = [("severe_pain", "urgent", "severe_rating")]
NOTHING: list[tuple[str, str, str]] = []
RATINGS = {
    "below up": (history(3), NOTHING),
    "one session at up is no alert": (history(4), NOTHING),
    "two at up running": (history(4, 5), TWICE),
    "two at up with unrated ones between": (history(4, None, None, 4), TWICE),
    "two at up with a lower one between": (history(4, 3, 4), NOTHING),
    "one at stop": (history(6), STOP),
    "at stop after one at up is the stop form": (history(4, 6), STOP),
    "usual nought keeps the floors": (history(5, usual=0), NOTHING),
    "usual nought at stop": (history(6, usual=0), STOP),
    "usual two and a half: four is below up": (history(4, 4, usual=2.5), NOTHING),
    "usual two and a half: five is up": (history(5, 5, usual=2.5), TWICE),
    "usual four: five is neither": (history(5, 5, usual=4), NOTHING),
    "usual four: six is at stop at once": (history(6, usual=4), STOP),
    "usual five: six is nothing": (history(6, 6, usual=5), NOTHING),
    "usual five: seven is at stop": (history(7, usual=5), STOP),
    "eight is severe alone, whatever her usual": (history(8, usual=7), SEVERE),
    "eight after one at up opens no pain is up": (history(4, 8), SEVERE),
    "ten": (history(10), SEVERE),
    "a session after a severe one at up": (history(8, 4), TWICE),
    "unrated": (history(None), NOTHING),
}


@pytest.mark.parametrize(("record", "expected"), RATINGS.values(), ids=RATINGS.keys())
def test_ratings(record: History, expected: list[tuple[str, str, str]]) -> None:
    assert told(record) == expected


def test_no_ratings_yet_are_judged_by_the_usual_told_at_enrolment() -> None:
    session = (SessionFact(0, MONDAY, pain=6),)
    assert told(History(session, UsualFacts(enrolled=5))) == NOTHING
    assert told(History(session, UsualFacts())) == STOP


def test_her_own_ratings_become_her_usual() -> None:
    record = replace(history(*[5] * 10, 6), usual_facts=UsualFacts(enrolled=2))
    assert told(record) == NOTHING


def test_a_therapist_may_set_severe_for_one_client() -> None:
    assert told(history(8, usual=7, levels=Levels(severe=9))) == NOTHING
    assert told(history(9, usual=7, levels=Levels(severe=9))) == SEVERE


def test_a_finding_says_with_which_numbers_it_fired() -> None:
    (finding,) = findings_for(history(4, 5), 1)
    assert finding == Finding(
        "pain_up",
        "today",
        "twice",
        {"on": "2027-03-03", "pain": 5, "usual": 2, "up": 4, "pain_before": 4, "before_on": "2027-03-01"},
        (0, 1),
    )


def test_a_late_report_is_judged_with_the_session_after_it() -> None:
    record = history(4, 4)
    assert [one.form for one in findings_for(record, 0)] == ["twice"]


def test_only_stop_and_severe_hold_her() -> None:
    assert [one.holds for one in findings_for(history(6), 0)] == [True]
    assert [one.holds for one in findings_for(history(8), 0)] == [True]
    assert [one.holds for one in findings_for(history(4, 4), 1)] == [False]


# (worst, before, after) -> the rating that "pain is up" looks at
APART = {
    "easier at the end": ((6, 6, 3), 3),
    "worse at the end": ((6, 3, 6), 6),
    "the same": ((5, 5, 5), 5),
    "eight before": ((8, 8, 2), 8),
    "eight in between": ((8, 5, 2), 8),
    "only one told": ((5, 5, None), 5),
    "not told apart": ((5, None, None), 5),
}


@pytest.mark.parametrize(("told_apart", "expected"), APART.values(), ids=APART.keys())
def test_pain_before_and_after_told_apart(told_apart: tuple[int, int | None, int | None], expected: int) -> None:
    assert SessionFact(0, MONDAY, "done", *told_apart).judged == expected


def test_the_session_keeps_the_higher_for_her_usual() -> None:
    record = History((SessionFact(0, MONDAY, "done", 6, 6, 2), SessionFact(1, on(1))), UsualFacts())
    assert replace(record, levels=Levels(usual_needs=1)).usual_now == 6
    assert told(record.up_to(MONDAY)) == NOTHING


def mornings(pain: int, *ratings: int, new: bool = False, days_on_rung: int = 30, usual: float = 2) -> History:
    record = history(pain, usual=usual, rung_on=MONDAY - timedelta(days=days_on_rung))
    answers = tuple(Morning(MONDAY + timedelta(days=1 + at), rating, new) for at, rating in enumerate(ratings))
    return record.with_session(replace(record.sessions[0], mornings=answers))


WORSE = [("pain_up", "today", "morning_worse")]
RUNNING = [("pain_up", "today", "mornings_up")]
MORNINGS = {
    "settled": (mornings(4, 3), NOTHING),
    "one above is no alert": (mornings(4, 5), NOTHING),
    "two above is": (mornings(4, 6), WORSE),
    "two mornings running at five": (mornings(4, 5, 5), RUNNING),
    "five then four": (mornings(4, 5, 4), NOTHING),
    "five, four, five are not running": (mornings(4, 5, 4, 5), NOTHING),
    "after a session below up nothing is asked or judged": (mornings(3, 6, 6), NOTHING),
    "usual three and a half wants five and a half": (mornings(5, 5, 5, usual=3), RUNNING),
    "new dose: two mornings of five wait": (mornings(4, 5, 5, days_on_rung=5), NOTHING),
    "new dose: the third speaks": (mornings(4, 5, 5, 5, days_on_rung=5), RUNNING),
    "new dose: six does not wait": (mornings(4, 6, days_on_rung=5), WORSE),
    "new dose: new pain does not wait": (mornings(4, 5, 5, new=True, days_on_rung=5), RUNNING),
    "the thirteenth day is still the first two weeks": (mornings(4, 5, 5, days_on_rung=13), NOTHING),
    "the fourteenth is not": (mornings(4, 5, 5, days_on_rung=14), RUNNING),
}


@pytest.mark.parametrize(("record", "expected"), MORNINGS.values(), ids=MORNINGS.keys())
def test_mornings(record: History, expected: list[tuple[str, str, str]]) -> None:
    assert told(record) == expected


# record, days after the session -> asked
ASKED = {
    "the morning after a session at up": (mornings(4), 1, True),
    "not the same day": (mornings(4), 0, False),
    "not after a session below up": (mornings(3), 1, False),
    "not again when answered": (mornings(4, 5), 1, False),
    "again the next morning while at five": (mornings(4, 5), 2, True),
    "not again when lower": (mornings(4, 4), 2, False),
    "not again when not answered": (mornings(4), 2, False),
    "a third time": (mornings(4, 5, 5), 3, True),
    "never a fourth": (mornings(4, 5, 5, 5), 4, False),
}


@pytest.mark.parametrize(("record", "days", "expected"), ASKED.values(), ids=ASKED.keys())
def test_the_morning_question(record: History, days: int, expected: bool) -> None:
    assert asks_this_morning(record, 0, MONDAY + timedelta(days=days)) is expected


def test_the_easy_day_follows_a_session_at_up() -> None:
    assert [asks_for_an_easy_day(history(pain), 0) for pain in (3, 4, 6)] == [False, True, True]


def test_where_is_asked_above_her_usual_once_in_four_weeks() -> None:
    record = history(3)
    assert asks_where(record, 0, None, MONDAY)
    assert not asks_where(record, 0, MONDAY - timedelta(days=27), MONDAY)
    assert asks_where(record, 0, MONDAY - timedelta(days=28), MONDAY)
    assert not asks_where(history(2), 0, None, MONDAY)


GRAVITY = {None: 0, "easy": 1, "today": 2, "urgent": 3}
PAINS = st.lists(st.none() | st.integers(0, 10), min_size=1, max_size=14)


def gravity(record: History, place: int) -> int:
    levels = [finding.level for finding in findings_for(record, place)]
    easy = ["easy"] if asks_for_an_easy_day(record, place) else []
    return max((GRAVITY[level] for level in levels + easy), default=0)


@given(PAINS, st.integers(0, 9), st.data(), st.none() | st.integers(0, 10))
def test_raising_a_rating_never_lowers_the_level(
    pains: list[int | None], lower: int, data: st.DataObject, usual: int | None
) -> None:
    higher = data.draw(st.integers(lower, 10))
    place = data.draw(st.integers(0, len(pains) - 1))
    found = []
    for pain in (lower, higher):
        sessions = [
            SessionFact(at, on(at), pain=one) for at, one in enumerate([*pains[:place], pain, *pains[place + 1 :]])
        ]
        found.append(gravity(History(tuple(sessions), UsualFacts(enrolled=usual)), place))
    assert found[0] <= found[1]


@given(st.integers(4, 7), st.lists(st.integers(0, 10), min_size=1, max_size=3), st.data(), st.integers(0, 30))
def test_raising_a_morning_never_lowers_the_level(
    pain: int, ratings: list[int], data: st.DataObject, days: int
) -> None:
    place = data.draw(st.integers(0, len(ratings) - 1))
    raised = [*ratings[:place], data.draw(st.integers(ratings[place], 10)), *ratings[place + 1 :]]
    assert gravity(mornings(pain, *ratings, days_on_rung=days), 0) <= gravity(
        mornings(pain, *raised, days_on_rung=days), 0
    )


@given(PAINS, st.integers(0, 10))
def test_the_same_record_gives_the_same_findings(pains: list[int | None], usual: int) -> None:
    record = history(*pains, usual=usual)
    again = history(*pains, usual=usual)
    assert [findings_for(record, at) for at in range(len(pains))] == [
        findings_for(again, at) for at in range(len(pains))
    ]


@given(st.integers(8, 10), PAINS, st.integers(0, 10))
def test_eight_and_more_is_severe_for_everyone(pain: int, before: list[int | None], usual: int) -> None:
    record = history(*before, pain, usual=usual)
    assert severe_pain(record, len(before)) is not None
    assert [one.rule for one in findings_for(record, len(before))] == ["severe_pain"]
