"""How fast texts may leave."""

from reminders.core.pace import Pace


def test_without_a_limit_everything_goes_at_once() -> None:
    pace = Pace(0.0, 0.0, 100.0)

    assert [pace.take(3), pace.take(3)] == [0.0, 0.0]
    assert pace.has_room(2.0)


def test_each_text_waits_for_the_parts_before_it() -> None:
    pace = Pace(2.0, 0.0, 100.0)

    assert [pace.take(2), pace.take(1), pace.take(1)] == [0.0, 1.0, 1.5]
    assert pace.free_at == 102.0


def test_what_another_process_took_is_waited_for() -> None:
    pace = Pace(1.0, 101.5, 100.0)

    assert pace.take(1) == 1.5
    assert not pace.has_room(2.0)
    assert 0.5 <= pace.seconds_until_room(2.0) <= 0.52


def test_time_that_has_passed_is_not_saved_up() -> None:
    pace = Pace(1.0, 50.0, 100.0)

    assert [pace.take(1), pace.take(1)] == [0.0, 1.0]


def test_a_clock_that_ran_ahead_and_was_set_back_holds_nothing_up() -> None:
    pace = Pace(1.0, 3700.0, 100.0)

    assert pace.has_room(2.0)
    assert pace.take(1) == 0.0
