"""What a client's precautions do to her program."""

from collections.abc import Sequence

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.dose import ladder_of, read_dose, written
from reminders.core.fitting import Unfit, fitted, unfit
from reminders.core.library import LIBRARY, exercise, is_barred, ladder_for
from reminders.core.library_limits import HELD, PRECAUTIONS
from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.programs import DailyItem, DayList, EasyItem, Program, ProgramItem, easy_items, session_items

PROGRAMS = st.sampled_from(list(STARTER_PROGRAMS.values()))
SOME_PRECAUTIONS = st.lists(st.sampled_from(PRECAUTIONS), max_size=4, unique=True)


def program_of(*items: str | ProgramItem, daily: Sequence[DailyItem] = ()) -> Program:
    made = [ProgramItem(item, ladder_for(item)) if isinstance(item, str) else item for item in items]
    return Program("own", (DayList("A", ("mon", "wed"), tuple(made)),), tuple(daily))


def codes(program: Program) -> list[str]:
    return [item.exercise for day_list in program.lists for item in day_list.items]


def test_unfit_exercises_are_named_with_reason_and_swap() -> None:
    program = program_of("sit-to-stand", "bridge", "heel-slide")

    assert unfit(program, ("cannot get to the floor",)) == (
        Unfit("bridge", "down-to-floor", "seat-squeeze", "cannot get to the floor", "swapped"),
        Unfit("heel-slide", "down-to-floor", "seated-march", "cannot get to the floor", "swapped"),
    )


def test_a_swap_that_is_barred_too_is_a_refusal() -> None:
    found = unfit(program_of("counter-push-up"), ("spinal fracture", "wrist fracture"))

    assert {(row.precaution, row.effect, row.swap) for row in found} == {
        ("spinal fracture", "refused", None),
        ("wrist fracture", "refused", None),
    }


def test_an_easy_day_s_exercise_is_looked_at_too() -> None:
    found = unfit(program_of("one-leg-stand"), ("weight-bearing limit",))

    assert [row.code for row in found] == ["one-leg-stand", "feet-together-stance"]


def test_no_precautions_leave_the_program_as_it_is() -> None:
    for program in STARTER_PROGRAMS.values():
        assert unfit(program, ()) == ()
        assert fitted(program, ()) == program


def test_a_swap_keeps_the_doses_where_both_count_alike() -> None:
    own = ProgramItem("bridge", ladder_of("1x6", "2x6", days=21))

    item = fitted(program_of(own), ("cannot lie flat",)).lists[0].items[0]

    assert item == ProgramItem("seat-squeeze", ladder_of("1x6", "2x6", days=21))


def test_a_swap_that_counts_otherwise_begins_on_its_own_ladder() -> None:
    lifted = fitted(program_of("face-down-lift"), ("spinal fracture",)).lists[0].items[0]
    one_sided = fitted(program_of("side-lying-hip-abduction"), ("cannot lie flat",)).lists[0].items[0]

    assert lifted == ProgramItem("chair-back-press", ladder_for("chair-back-press"))
    assert one_sided == ProgramItem("seated-knee-press", ladder_for("seated-knee-press"))


def test_a_swap_without_load_takes_the_load_away() -> None:
    own = ProgramItem("band-row", ladder_of("2x10 red band"))

    item = fitted(program_of(own), ("wrist fracture",)).lists[0].items[0]

    assert (item.exercise, [written(rung.dose) for rung in item.ladder.rungs]) == ("elbow-pull", ["2x10"])


def test_an_exercise_to_hold_on_for_is_held_on_every_rung_and_the_easy_day() -> None:
    own = ProgramItem("heel-to-toe-walk", ladder_of("1x10", "2x10 no hands"))

    program = fitted(program_of(own), ("poor sight",))

    assert [written(rung.dose) for rung in program.lists[0].items[0].ladder.rungs] == [
        "1x10 both hands",
        "2x10 both hands",
    ]
    assert written(easy_items(program.lists[0], 1)[0].dose) == "1x10 both hands"


def test_an_exercise_that_is_there_already_is_not_given_twice() -> None:
    own = ProgramItem("seat-squeeze", ladder_of("3x10"))

    program = fitted(program_of("bridge", own, "standing-hip-extension"), ("weight-bearing limit",))

    assert program.lists[0].items == (own,)


def test_an_easy_day_that_is_unfit_is_swapped_or_left_out() -> None:
    swapped = fitted(
        program_of(ProgramItem("sit-to-stand", ladder_for("sit-to-stand"), EasyItem("bridge", read_dose("1x5")))),
        ("cannot lie flat",),
    )
    left_out = fitted(
        program_of(ProgramItem("seated-march", ladder_for("seated-march"), EasyItem("weight-shift", read_dose("1x6")))),
        ("weight-bearing limit",),
    )

    assert swapped.lists[0].items[0].easy == EasyItem("seat-squeeze", read_dose("1x5"))
    assert left_out.lists[0].items[0].easy_out
    assert easy_items(left_out.lists[0]) == ()


def test_daily_items_are_fitted_too() -> None:
    daily = (DailyItem("lying-rest", read_dose("1x5 min")), DailyItem("steady-walk", read_dose("1x10 min")))

    program = fitted(program_of("seated-march", daily=daily), ("cannot lie flat", "weight-bearing limit"))

    assert [item.exercise for item in program.daily] == ["chair-back-press"]


def test_a_list_may_end_empty_when_nothing_fits() -> None:
    program = fitted(program_of("tandem-stance", "side-steps"), ("weight-bearing limit",))

    assert program.lists[0].items == ()
    assert session_items(program.lists[0]) == ()


def test_a_daily_swap_begins_as_that_exercise_begins() -> None:
    program = fitted(program_of("seated-march", daily=[DailyItem("lying-rest", read_dose("1x5 min"))]), ("vertigo",))

    # Five minutes of lying at rest are no measure for pressing back against a chair.
    assert [written(item.dose) for item in program.daily] == ["2x10 sec"]


@given(PROGRAMS, SOME_PRECAUTIONS)
def test_a_fitted_program_has_nothing_barred_and_fits_again_unchanged(program: Program, precautions: list[str]) -> None:
    once = fitted(program, precautions)

    for day_list in once.lists:
        for items in (session_items(day_list, 1), easy_items(day_list, 1)):
            for item in items:
                assert not is_barred(item.exercise, precautions)
    assert not [item.exercise for item in once.daily if is_barred(item.exercise, precautions)]
    assert fitted(once, precautions) == once


@pytest.mark.parametrize("precaution", PRECAUTIONS)
def test_whatever_is_held_says_both_hands(precaution: str) -> None:
    for code in LIBRARY:
        program = fitted(program_of(code), (precaution,))
        for item in session_items(program.lists[0]):
            held = any(limit.effect == HELD for limit in exercise(item.exercise).limits_for((precaution,)))
            assert (item.dose.hand_support == "both hands") is held, item
