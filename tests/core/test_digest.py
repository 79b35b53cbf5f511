from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.digest import (
    AlertFact,
    ClientFacts,
    SessionFact,
    StepFact,
    digest,
    trend,
    week_days,
    week_of,
)

WEEK = "2027-W10"
MONDAY = date(2027, 3, 8)


def sessions(*rows: tuple[int, str] | tuple[int, str, int]) -> tuple[SessionFact, ...]:
    """Sessions by days from the week's Monday, state and rating."""
    return tuple(SessionFact(MONDAY + timedelta(days=row[0]), row[1], row[2] if len(row) > 2 else None) for row in rows)


def row_of(**facts: Any) -> dict[str, Any]:
    (row,) = digest(WEEK, [ClientFacts(1, "Ana Ruiz", **facts)])["clients"]
    return dict(row)


def whats(**facts: Any) -> list[str]:
    return [reason["what"] for reason in row_of(**facts)["reasons"]]


def test_a_week_runs_from_monday_to_sunday() -> None:
    assert week_days(WEEK) == (MONDAY, date(2027, 3, 14))


@given(st.dates(date(1990, 1, 1), date(2100, 1, 1)))
def test_every_day_lies_in_its_own_week(day: date) -> None:
    first, last = week_days(week_of(day))
    assert first <= day <= last


@pytest.mark.parametrize("text", ["2027-10", "2027-W60", "W10", "next week", "2027-W1x"])
def test_what_is_no_week_is_refused(text: str) -> None:
    with pytest.raises(ValueError):
        week_days(text)


def test_part_stands_beside_and_is_not_counted_as_done() -> None:
    week = row_of(sessions=sessions((0, "done"), (2, "part"), (4, "missed")))["week"]

    assert (week["done"], week["part"], week["prescribed"]) == (1, 1, 3)


def test_days_on_hold_paused_unsent_and_still_open_are_in_neither_number() -> None:
    week = row_of(sessions=sessions((0, "done"), (1, "held"), (2, "paused"), (3, "unsent"), (4, "reminded")))["week"]

    assert (week["done"], week["prescribed"], week["not_asked"], week["open"]) == (1, 1, 3, 1)


def test_an_extra_session_is_outside_adherence_and_pain() -> None:
    facts = (*sessions((0, "done", 3)), SessionFact(MONDAY + timedelta(days=1), "done", 9, is_extra=True))
    row = row_of(sessions=facts)

    assert row["week"]["prescribed"] == 1
    assert row["week"]["extra"] == 1
    assert row["pain"]["last"] == 3


FOUR_WEEKS = {
    "three sessions give no percentage": ([(-7, "done"), (0, "done"), (2, "missed")], 3, None),
    "four give one": ([(-7, "done"), (-5, "done"), (0, "done"), (2, "missed")], 4, 75),
    "the 28th day back still counts": ([(-21, "done"), (-7, "done"), (0, "done"), (2, "done")], 4, 100),
    "the 29th does not": ([(-22, "done"), (-7, "done"), (0, "done"), (2, "done")], 3, None),
    "the week after does not": ([(-7, "done"), (0, "done"), (2, "done"), (7, "done")], 3, None),
}


@pytest.mark.parametrize(("rows", "prescribed", "percent"), FOUR_WEEKS.values(), ids=FOUR_WEEKS.keys())
def test_four_weeks(rows: list[tuple[int, str]], prescribed: int, percent: int | None) -> None:
    four = row_of(sessions=sessions(*rows))["four_weeks"]

    assert (four["prescribed"], four["percent"]) == (prescribed, percent)


TRENDS = {
    "five ratings are too few": ([2, 2, 2, 6, 6], None),
    "two points up matter": ([2, 2, 3, 4, 4, 6], "up"),
    "one point does not": ([2, 2, 3, 3, 3, 6], "level"),
    "two points down": ([5, 5, 5, 3, 3, 2], "down"),
    "one high rating among calm ones is no trend": ([2, 2, 2, 2, 9, 2], "level"),
    "only the last six count": ([9, 9, 9, 2, 2, 2, 2, 2, 2], "level"),
}


@pytest.mark.parametrize(("ratings", "expected"), TRENDS.values(), ids=TRENDS.keys())
def test_the_trend_of_pain(ratings: list[int], expected: str | None) -> None:
    assert trend(ratings) == expected


def test_pain_shows_the_last_rating_its_day_and_the_weeks() -> None:
    pain = row_of(sessions=sessions((-3, "done", 2), (0, "done", 4), (2, "missed")), usual=2.5)["pain"]

    assert (pain["last"], pain["last_on"], pain["usual"], pain["week"]) == (4, "2027-03-08", 2.5, [4])


ALERT = AlertFact(4, "missed", "routine", "open", MONDAY)
REASONS: dict[str, tuple[dict[str, Any], list[str]]] = {
    "nothing": ({}, []),
    "an alert that is closed": ({"alerts": (AlertFact(4, "pain_up", "today", "closed", MONDAY, "called"),)}, []),
    "an alert that was only acknowledged": (
        {"alerts": (AlertFact(4, "pain_up", "today", "acknowledged", MONDAY),)},
        ["alert today"],
    ),
    "danger before hold before question": (
        {
            "questions": (("May I swim?", MONDAY),),
            "hold": ("severe_pain", MONDAY),
            "alerts": (ALERT, AlertFact(5, "severe_pain", "urgent", "open", MONDAY)),
        },
        ["alert urgent", "hold", "question", "alert routine"],
    ),
    "a proposed step": ({"proposal": "up"}, ["proposal"]),
    "precautions never asked": ({"program_unchecked": True}, ["program"]),
    "under half in two weeks": (
        {"sessions": sessions((-7, "done"), (-5, "missed"), (0, "missed"), (2, "skipped"))},
        ["half"],
    ),
    "half is not under half": ({"sessions": sessions((-7, "done"), (-5, "done"), (0, "missed"), (2, "missed"))}, []),
    "three missed sessions are too few to speak of half": (
        {"sessions": sessions((-7, "missed"), (0, "missed"), (2, "missed"))},
        [],
    ),
    "what lies three weeks back is not the last two": (
        {"sessions": sessions((-14, "missed"), (-12, "missed"), (0, "done"), (2, "done"))},
        [],
    ),
    "a re-check two weeks ahead": ({"recheck_on": MONDAY + timedelta(days=20)}, ["recheck"]),
    "a re-check a day further": ({"recheck_on": MONDAY + timedelta(days=21)}, []),
    "an end that has passed": ({"end_on": MONDAY - timedelta(days=2)}, ["end"]),
}


@pytest.mark.parametrize(("facts", "expected"), REASONS.values(), ids=REASONS.keys())
def test_why_a_client_asks_for_her_therapist(facts: dict[str, Any], expected: list[str]) -> None:
    assert whats(**facts) == expected


def test_who_needs_attention_comes_in_the_order_of_harm_then_the_oldest_first() -> None:
    made = digest(
        WEEK,
        [
            ClientFacts(1, "Zoe Ames", proposal="up"),
            ClientFacts(2, "Al Bode", hold=("pain_up", MONDAY + timedelta(days=1))),
            ClientFacts(3, "Kit Coe", hold=("pain_up", MONDAY)),
            ClientFacts(4, "Bea Dunn"),
            ClientFacts(5, "Wim Este", alerts=(AlertFact(9, "crisis", "urgent", "open", MONDAY),)),
        ],
    )

    assert [row["id"] for row in made["attention"]] == [5, 3, 2, 1]
    assert [row["name"] for row in made["clients"]] == ["Al Bode", "Bea Dunn", "Kit Coe", "Wim Este", "Zoe Ames"]


def test_the_totals_count_every_client_once() -> None:
    closed = AlertFact(3, "pain_up", "today", "closed", MONDAY - timedelta(days=9), "changed dose")
    expected = AlertFact(6, "missed", "routine", "closed", MONDAY, "expected")
    made = digest(
        WEEK,
        [
            ClientFacts(1, "Ana Ruiz", sessions=sessions((0, "done"), (2, "part")), alerts=(closed, ALERT)),
            ClientFacts(2, "Bo Lund", sessions=sessions((0, "done")), alerts=(expected,)),
        ],
    )["totals"]

    assert (made["clients"], made["done"], made["part"], made["prescribed"]) == (2, 2, 1, 3)
    assert (made["alerts_opened"], made["alerts_closed"], made["led"], made["alerts_open"]) == (2, 2, 1, 1)


def test_a_dose_step_says_its_direction() -> None:
    row = row_of(steps=(StepFact(MONDAY, 0, 1, "2x10"), StepFact(MONDAY + timedelta(days=3), 1, 0, "1x10")), rung=0)

    assert [step["up"] for step in row["steps"]] == [True, False]
    assert row["rung"] == 1
