"""A session's value from its reports in order, as tables and as properties."""

from dataclasses import replace
from datetime import UTC, datetime, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.session_value import SessionValue, Stated, corrected, session_value, so_far

NOON = datetime(2027, 3, 10, 12, tzinfo=UTC)


def said(
    number: int,
    *,
    at: int | None = None,
    replaces: int | None = None,
    staff: bool = False,
    settling: bool = False,
    **reading: Any,
) -> Stated:
    moment = NOON + timedelta(minutes=number if at is None else at)
    return Stated(number, moment, reading, replaces, staff, settling)


CASES = {
    "nothing said": ([], SessionValue()),
    "one report": ([said(1, completed="all", pain=3)], SessionValue("all", pain=3)),
    "pain comes later": ([said(1, completed="all"), said(2, pain=3)], SessionValue("all", pain=3)),
    "two ratings: the higher": ([said(1, completed="all", pain=5), said(2, pain=3)], SessionValue("all", pain=5)),
    "a correction down": (
        [said(1, completed="all", pain=5), said(2, pain=3, replaces=1)],
        SessionValue("all", pain=3),
    ),
    "a correction of a correction": (
        [said(1, completed="all", pain=5), said(2, pain=7, replaces=1), said(3, pain=2, replaces=2)],
        SessionValue("all", pain=2),
    ),
    "a correction of completion leaves the pain": (
        [said(1, completed="all", pain=5), said(2, completed="part", replaces=1)],
        SessionValue("part", pain=5),
    ),
    "completion and amounts from the newest that states them": (
        [said(1, completed="part", sets=1, reps=10), said(2, completed="all", sets=2, reps=10)],
        SessionValue("all", 2, 10),
    ),
    "amounts stay when the newer says none": (
        [said(1, completed="all", sets=2, reps=10), said(2, pain=4)],
        SessionValue("all", 2, 10, 4),
    ),
    "told as not done after all": (
        [said(1, completed="all", sets=2, reps=10), said(2, completed="none", replaces=1)],
        SessionValue("none"),
    ),
    "not today, then done": (
        [said(1, completed="none"), said(2, completed="all", pain=2)],
        SessionValue("all", pain=2),
    ),
    "staff corrections count last, whenever they were made": (
        [
            said(1, completed="all", pain=6),
            said(2, completed="part", pain=4, staff=True, replaces=1),
            said(3, completed="all"),
        ],
        SessionValue("part", pain=4),
    ),
    "a staff correction may take a pain away": (
        [said(1, completed="all", pain=10), said(2, pain=None, staff=True, replaces=1)],
        SessionValue("all"),
    ),
    "a staff correction of the whole session": (
        [said(1, completed="all", pain=6), said(2, pain=5), said(3, pain=2, staff=True)],
        SessionValue("all", pain=2),
    ),
    "a settling rating is not the session's": (
        [said(1, completed="all", pain=4), said(2, pain=7, settling=True)],
        SessionValue("all", pain=4),
    ),
    "pain told apart keeps both": (
        [said(1, completed="all", pain=5, before=5, after=2)],
        SessionValue("all", pain=5, before=5, after=2),
    ),
    "a correction of pain told apart takes both away": (
        [said(1, completed="all", pain=5, before=5, after=2), said(2, pain=3, replaces=1)],
        SessionValue("all", pain=3),
    ),
    "a correction handled before what it corrects": (
        [said(3, at=1, completed="all", pain=6, before=6, after=2), said(2, pain=3, correction=True)],
        SessionValue("all", pain=3),
    ),
    "a correction that came first leaves what is newer": (
        [said(2, pain=3, correction=True), said(3, completed="all", pain=6)],
        SessionValue("all", pain=6),
    ),
    "a correction that had something to correct leaves what came late": (
        [said(1, completed="all", pain=4), said(4, at=2, pain=6), said(3, pain=2, replaces=1, correction=True)],
        SessionValue("all", pain=6),
    ),
    "zero is a rating": ([said(1, completed="all", pain=0)], SessionValue("all", pain=0)),
}


@pytest.mark.parametrize(("reports", "expected"), CASES.values(), ids=CASES)
def test_a_session_is_worth(reports: list[Stated], expected: SessionValue) -> None:
    assert session_value(reports) == expected


def test_the_order_in_which_rows_are_read_changes_nothing() -> None:
    for reports, expected in CASES.values():
        assert session_value(list(reversed(reports))) == expected


STATES = {"all": "done", "part": "part", "none": "skipped", None: None}


@pytest.mark.parametrize(("completed", "state"), STATES.items(), ids=str)
def test_the_state_that_a_completion_brings(completed: str | None, state: str | None) -> None:
    assert SessionValue(completed).state == state


TARGETS = {
    "nothing to correct": ([], True, None),
    "the newest that states a pain": ([said(1, pain=3), said(2, completed="all")], True, 1),
    "not one already replaced": ([said(1, pain=3), said(2, pain=5, replaces=1)], True, 2),
    "the newest at all when no pain is corrected": ([said(1, pain=3), said(2, completed="all")], False, 2),
    "the newest at all when no pain was stated": ([said(1, completed="all")], True, 1),
    "never a staff correction": ([said(1, pain=3), said(2, pain=4, staff=True, replaces=1)], False, 1),
}


@pytest.mark.parametrize(("reports", "states_pain", "expected"), TARGETS.values(), ids=TARGETS)
def test_a_correction_replaces(reports: list[Stated], states_pain: bool, expected: int | None) -> None:
    assert corrected(reports, states_pain=states_pain) == expected


readings = st.fixed_dictionaries(
    {
        "completed": st.sampled_from([None, "all", "part", "none"]),
        "pain": st.none() | st.integers(0, 10),
        "sets": st.none() | st.integers(1, 5),
        "reps": st.none() | st.integers(1, 30),
    }
)


@given(st.lists(readings, max_size=8))
def test_no_pain_is_recorded_that_no_report_gave(found: list[dict[str, Any]]) -> None:
    reports = [Stated(n, NOON, reading) for n, reading in enumerate(found)]

    assert session_value(reports).pain in {None, *(reading["pain"] for reading in found)}


@given(st.lists(readings, min_size=1, max_size=8), st.integers(0, 10))
def test_a_further_rating_never_lowers_the_pain(found: list[dict[str, Any]], pain: int) -> None:
    reports = [Stated(n, NOON, reading) for n, reading in enumerate(found)]
    before = session_value(reports).pain

    after = session_value([*reports, Stated(99, NOON, {"pain": pain})]).pain

    assert after == max(pain, before if before is not None else pain)


@given(st.lists(readings, min_size=1, max_size=8))
def test_a_report_that_states_nothing_changes_nothing(found: list[dict[str, Any]]) -> None:
    reports = [Stated(n, NOON, reading) for n, reading in enumerate(found)]
    silent = replace(reports[0], id=99, reading={"completed": None, "pain": None})

    assert session_value([*reports, silent]) == session_value(reports)


@given(st.lists(readings, max_size=8), readings)
def test_the_value_so_far_with_a_newer_plain_report_is_the_value_of_all(
    found: list[dict[str, Any]], newest: dict[str, Any]
) -> None:
    reports = [Stated(n, NOON + timedelta(minutes=n), reading) for n, reading in enumerate(found)]
    last = Stated(99, NOON + timedelta(minutes=99), newest)

    assert session_value([so_far(session_value(reports), NOON), last]) == session_value([*reports, last])
