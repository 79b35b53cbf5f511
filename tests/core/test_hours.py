"""A clinic's opening hours."""

from datetime import UTC, date, datetime

import pytest

from reminders.core.hours import parse_hours

NEW_YORK = "America/New_York"
HOURS = parse_hours("mon-fri/08:00-17:00,sat/09:00-12:00", NEW_YORK, ["2027-03-03"])


def test_the_clinic_is_open_between_its_hours() -> None:
    assert HOURS.is_open(datetime(2027, 3, 1, 13, 0, tzinfo=UTC))
    assert not HOURS.is_open(datetime(2027, 3, 1, 22, 0, tzinfo=UTC))


def test_a_closed_date_is_not_open() -> None:
    assert not HOURS.is_open(datetime(2027, 3, 3, 15, 0, tzinfo=UTC))
    assert not HOURS.is_working_day(date(2027, 3, 3))


def test_the_next_opening_passes_over_sunday_and_closed_dates() -> None:
    assert HOURS.next_opening(datetime(2027, 3, 6, 18, 0, tzinfo=UTC)) == datetime(2027, 3, 8, 13, 0, tzinfo=UTC)
    assert HOURS.next_opening(datetime(2027, 3, 2, 22, 30, tzinfo=UTC)) == datetime(2027, 3, 4, 13, 0, tzinfo=UTC)


def test_working_noon_is_on_the_next_working_day() -> None:
    assert HOURS.next_working_noon(datetime(2027, 3, 2, 15, 0, tzinfo=UTC)) == datetime(2027, 3, 4, 17, 0, tzinfo=UTC)


def test_working_days_are_counted_after_the_first_date() -> None:
    assert HOURS.working_days_between(date(2027, 3, 1), date(2027, 3, 8)) == 5


@pytest.mark.parametrize("text", ["", "mon", "mon/17:00-08:00", "day/08:00-17:00", "mon/8-17"])
def test_hours_that_cannot_be_read_are_refused(text: str) -> None:
    with pytest.raises(ValueError, match=r"hours|mon|day|time"):
        parse_hours(text, NEW_YORK)
