"""A client's days and hours: against RFC 5545 recurrence by a general library, over zones and both clock changes."""

from datetime import UTC, date, datetime, timedelta

import pytest
from dateutil import tz
from dateutil.rrule import WEEKLY, rrule
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.schedule import (
    Plan,
    at_local,
    client_day,
    evening_at,
    has_adjacent_days,
    inside_window,
    next_day,
    next_inside_window,
    occurrences,
    parse_days,
    parse_time,
    parse_window,
    week_days,
    week_of,
)

NEW_YORK = "America/New_York"
ZONES = (NEW_YORK, "America/Phoenix", "Europe/Madrid", "Australia/Lord_Howe", "Asia/Kolkata", "America/St_Johns")


@pytest.mark.parametrize("zone", ZONES)
@pytest.mark.parametrize("hour", ["08:30", "13:05", "19:45"])
def test_a_year_of_days_agrees_with_a_recurrence_rule(zone: str, hour: str) -> None:
    """RFC 5545, section 3.3.10 (RECUR) and 3.8.5.3 (RRULE): FREQ=WEEKLY;BYDAY=MO,WE,FR in a zone, by dateutil."""
    first = date(2027, 1, 1)
    rule = rrule(WEEKLY, byweekday=(0, 2, 4), dtstart=datetime.combine(first, parse_time(hour)), count=156)
    expected = [wall.replace(tzinfo=tz.gettz(zone)).astimezone(UTC) for wall in rule]
    start = datetime(2026, 12, 31, tzinfo=UTC)

    ours = occurrences(Plan((0, 2, 4), hour, zone, first), start, expected[-1])

    assert ours == expected


CHANGES = {
    "a skipped time moves later by the gap": (date(2027, 3, 14), "02:30", NEW_YORK, "2027-03-14T07:30:00+00:00"),
    "a time that comes twice is taken the first time": (
        date(2027, 11, 7),
        "01:30",
        NEW_YORK,
        "2027-11-07T05:30:00+00:00",
    ),
    "a half-hour change moves by half an hour": (
        date(2026, 10, 4),
        "02:15",
        "Australia/Lord_Howe",
        "2026-10-03T15:45:00+00:00",
    ),
    "the day's end is the next day's start": (date(2027, 3, 13), "24:00", NEW_YORK, "2027-03-14T05:00:00+00:00"),
}


@pytest.mark.parametrize(("day", "hour", "zone", "utc"), CHANGES.values(), ids=CHANGES.keys())
def test_a_local_time_at_a_clock_change(day: date, hour: str, zone: str, utc: str) -> None:
    assert at_local(day, hour, zone).isoformat() == utc


@given(
    st.datetimes(datetime(2026, 1, 1), datetime(2029, 1, 1)),
    st.integers(0, 60),
    st.integers(0, 60),
    st.sampled_from(ZONES),
)
def test_windows_that_meet_give_each_occurrence_once(at: datetime, first: int, second: int, zone: str) -> None:
    plan = Plan((1, 3, 5), "09:00", zone)
    start = at.replace(tzinfo=UTC)
    middle, end = start + timedelta(days=first), start + timedelta(days=first + second)

    assert occurrences(plan, start, middle) + occurrences(plan, middle, end) == occurrences(plan, start, end)


def test_a_reply_before_three_in_the_morning_belongs_to_the_day_before() -> None:
    assert client_day(datetime(2027, 3, 2, 7, 59, tzinfo=UTC), NEW_YORK) == date(2027, 3, 1)
    assert client_day(datetime(2027, 3, 2, 8, 0, tzinfo=UTC), NEW_YORK) == date(2027, 3, 2)


def test_closed_days_are_passed_over() -> None:
    plans = [Plan((0, 2, 4), "08:30", NEW_YORK)]

    found = next_day(plans, date(2027, 3, 1), frozenset({date(2027, 3, 3)}))

    assert found is not None
    assert found[0] == date(2027, 3, 5)


def test_the_newest_schedule_that_has_begun_counts() -> None:
    plans = [
        Plan((0, 2, 4), "08:30", NEW_YORK, date(2027, 1, 1)),
        Plan((1,), "10:00", NEW_YORK, date(2027, 3, 4)),
    ]

    assert [next_day(plans, date(2027, 3, day), frozenset())[0] for day in (1, 3)] == [  # type: ignore[index]
        date(2027, 3, 3),
        date(2027, 3, 9),
    ]


BAD_DAYS = {"an unknown day": "mon+wod", "a day twice": "mon+mon", "no day": " + "}


@pytest.mark.parametrize("text", BAD_DAYS.values(), ids=BAD_DAYS.keys())
def test_days_that_cannot_be_read_are_refused(text: str) -> None:
    with pytest.raises(ValueError, match="day"):
        parse_days(text)


@pytest.mark.parametrize("text", ["8", "25:00", "08:60", "8:5", "noon", "-1:00", ""])
def test_times_that_cannot_be_read_are_refused(text: str) -> None:
    with pytest.raises(ValueError, match="not a time"):
        parse_time(text)


def test_sunday_and_monday_follow_each_other() -> None:
    assert has_adjacent_days((0, 6))
    assert not has_adjacent_days((0, 2, 4))


def test_the_window_begins_at_its_start_and_ends_before_its_end() -> None:
    window = parse_window("08:00-20:00")

    assert inside_window(datetime(2027, 3, 1, 13, 0, tzinfo=UTC), window, NEW_YORK)
    assert not inside_window(datetime(2027, 3, 1, 12, 59, tzinfo=UTC), window, NEW_YORK)
    assert not inside_window(datetime(2027, 3, 2, 1, 0, tzinfo=UTC), window, NEW_YORK)


@given(st.datetimes(datetime(2026, 1, 1), datetime(2029, 1, 1)), st.sampled_from(ZONES))
def test_the_next_moment_inside_the_window_is_inside_and_soon(at: datetime, zone: str) -> None:
    now, window = at.replace(tzinfo=UTC), parse_window("08:00-20:00")

    found = next_inside_window(now, window, zone)

    assert inside_window(found, window, zone)
    assert timedelta(0) <= found - now <= timedelta(hours=13, minutes=1)


def test_the_evening_prompt_goes_at_six_or_half_an_hour_before_the_window_ends() -> None:
    day = date(2027, 3, 1)

    assert evening_at(day, ("08:00", "20:00"), NEW_YORK) == datetime(2027, 3, 1, 23, 0, tzinfo=UTC)
    assert evening_at(day, ("08:00", "17:00"), NEW_YORK) == datetime(2027, 3, 1, 21, 30, tzinfo=UTC)


def test_an_iso_week_runs_from_monday_to_sunday() -> None:
    """ISO 8601: 1 January 2027 is a Friday and lies in week 53 of 2026."""
    assert week_of(date(2027, 1, 1)) == "2026-W53"
    assert week_days("2027-W10") == (date(2027, 3, 8), date(2027, 3, 14))
