"""Doses, the counting of sides, ladders and easy days."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.dose import (
    ALTERNATING,
    BANDS,
    BOTH,
    EACH,
    HAND_SUPPORT,
    MOST_REPS,
    MOST_SECONDS,
    MOST_SETS,
    Dose,
    Ladder,
    Rung,
    a_side,
    default_ladder,
    easy_day,
    kilograms,
    ladder_of,
    load_step_percent,
    raises,
    read_dose,
    read_ladder,
    step_back,
    step_up,
    volume,
    with_more_load,
    written,
)

LOADS = st.sampled_from(("", "2 kg", "2.5 kg", "5 lb", *(f"{band} band" for band in BANDS)))
HANDS = st.sampled_from(("", *HAND_SUPPORT))
REP_DOSES = st.builds(
    lambda sets, reps, load, hands: Dose(sets, reps=reps, load=load, hand_support=hands),
    st.integers(1, MOST_SETS),
    st.integers(1, MOST_REPS),
    LOADS,
    HANDS,
)
SECOND_DOSES = st.builds(
    lambda sets, seconds, load, hands: Dose(sets, seconds=seconds, load=load, hand_support=hands),
    st.integers(1, MOST_SETS),
    st.integers(1, MOST_SECONDS),
    LOADS,
    HANDS,
)
DOSES = REP_DOSES | SECOND_DOSES

LINES = {
    "sets and reps": ("2x10", Dose(2, reps=10)),
    "with blanks and the times sign": ("2 × 10", Dose(2, reps=10)),
    "with the word reps": ("2x10 reps", Dose(2, reps=10)),
    "seconds": ("2x20 sec", Dose(2, seconds=20)),
    "seconds without a blank": ("2x20s", Dose(2, seconds=20)),
    "minutes": ("1x10 min", Dose(1, seconds=600)),
    "each side belongs to the exercise": ("2x20 sec each side", Dose(2, seconds=20)),
    "a weight": ("3x8 2 kg", Dose(3, reps=8, load="2 kg")),
    "a weight in pounds": ("3x8 5lbs", Dose(3, reps=8, load="5 lb")),
    "half a kilogram": ("3x8 0.50 kg", Dose(3, reps=8, load="0.5 kg")),
    "a band": ("2x10 Red Band", Dose(2, reps=10, load="red band")),
    "no hands": ("2x10 no hands", Dose(2, reps=10, hand_support="no hands")),
    "all of it": ("2x20 sec, 2 kg, one hand", Dose(2, seconds=20, load="2 kg", hand_support="one hand")),
}


@pytest.mark.parametrize(("line", "dose"), LINES.values(), ids=LINES)
def test_a_line_that_a_therapist_writes_is_read(line: str, dose: Dose) -> None:
    assert read_dose(line) == dose


BAD_LINES = {
    "no numbers": ("ten times", "cannot be read"),
    "a word that is no load": ("2x10 slowly", '"slowly"'),
    "two loads": ("2x10 2 kg 3 kg", '"3 kg"'),
    "an unknown band": ("2x10 pink band", '"pink band"'),
    "no sets": ("0x10", "Sets must be 1 to 10"),
    "eleven sets": ("11x10", "Sets must be 1 to 10"),
    "fifty-one reps": ("2x51", "Reps must be 1 to 50"),
    "no reps": ("2x0", "Reps must be 1 to 50"),
    "no seconds": ("2x0 sec", "Seconds must be 1 to 3600"),
    "too many seconds": ("1x3601 sec", "Seconds must be 1 to 3600"),
    "an empty line": ("", "cannot be read"),
}


@pytest.mark.parametrize(("line", "said"), BAD_LINES.values(), ids=BAD_LINES)
def test_a_line_that_cannot_be_used_gets_one_sentence(line: str, said: str) -> None:
    with pytest.raises(ValueError) as error:
        read_dose(line)

    assert said in str(error.value)
    assert str(error.value).endswith(".")
    assert "\n" not in str(error.value)


@given(DOSES)
def test_what_is_written_reads_back_the_same(dose: Dose) -> None:
    assert read_dose(written(dose)) == dose


def test_a_dose_counts_reps_or_seconds_and_never_both() -> None:
    with pytest.raises(ValueError, match="either reps or seconds"):
        Dose(2, reps=10, seconds=20)
    with pytest.raises(ValueError, match="either reps or seconds"):
        Dose(2)


def test_a_load_or_hand_support_in_other_words_is_refused() -> None:
    with pytest.raises(ValueError, match='load "a brick"'):
        Dose(2, reps=10, load="a brick")
    with pytest.raises(ValueError, match='not "two feet"'):
        Dose(2, reps=10, hand_support="two feet")


# Counting: common practice, no source.
SIDES = {
    "both sides at once": (BOTH, 10, 20),
    "one side, then the other, is done on both": (EACH, 10, 40),
    "alternating counts five a side as ten": (ALTERNATING, 5, 20),
}


@pytest.mark.parametrize(("side", "one_side", "in_all"), SIDES.values(), ids=SIDES)
def test_sides_are_counted(side: str, one_side: float, in_all: int) -> None:
    dose = read_dose("2x10")

    assert a_side(dose, side) == one_side
    assert volume(dose, side) == in_all


EASY_DAYS = {
    "three sets become one": ("3x10", "1x10"),
    "two sets become one": ("2x10", "1x10"),
    "four sets become two": ("4x30 sec", "2x30 sec"),
    "one set stays": ("1x10", "1x10"),
    "the load goes": ("2x10 2 kg", "1x10"),
    "the band goes": ("2x10 red band", "1x10"),
    "hands stay as they were": ("2x10 both hands", "1x10 both hands"),
}


@pytest.mark.parametrize(("usual", "easy"), EASY_DAYS.values(), ids=EASY_DAYS)
def test_an_easy_day_is_half_the_sets_and_no_load(usual: str, easy: str) -> None:
    assert written(easy_day(read_dose(usual))) == easy


@given(DOSES)
def test_an_easy_day_never_asks_for_more(dose: Dose) -> None:
    assert raises(dose, easy_day(dose)) == frozenset()


# The default ladders: common practice, no source.
def test_the_default_ladders_go_up_in_three_rungs_of_fourteen_days() -> None:
    assert [written(rung.dose) for rung in default_ladder("reps").rungs] == ["1x10", "2x10", "3x10"]
    assert [rung.dose.seconds for rung in default_ladder("seconds").rungs] == [10, 20, 30]
    assert {rung.days for rung in (*default_ladder("reps").rungs, *default_ladder("seconds").rungs)} == {14}


def test_steps_go_up_and_back_by_one_and_end() -> None:
    ladder = ladder_of("1x10", "2x10", "3x10")

    assert [step_up(ladder, rung) for rung in (0, 1, 2, 9)] == [1, 2, None, None]
    assert [step_back(ladder, rung) for rung in (0, 1, 2, 9)] == [None, 0, 1, 1]


def test_a_rung_past_either_end_is_the_nearest_one() -> None:
    ladder = ladder_of("1x10", "2x10")

    assert written(ladder.at(7).dose) == "2x10"
    assert written(ladder.at(-1).dose) == "1x10"


def test_a_ladder_is_read_from_lines_or_arrows() -> None:
    assert read_ladder("1x10 > 2x10 → 2x12") == ladder_of("1x10", "2x10", "2x12")
    assert read_ladder("1x10\n2x10\n", days=21) == ladder_of("1x10", "2x10", days=21)


def test_a_ladder_that_cannot_be_used_is_refused() -> None:
    with pytest.raises(ValueError, match="all in reps or all in seconds"):
        ladder_of("1x10", "1x10 sec")
    with pytest.raises(ValueError, match="1 to 12 rungs, not 0"):
        Ladder(())
    with pytest.raises(ValueError, match="Days on a rung"):
        Rung(read_dose("1x10"), days=0)


LOAD_STEPS = {
    # The low end is 8, from "8-12 repetitions" (Garber et al. (ACSM), MSSE 2011;43(7):1334-1359).
    "reps come down to eight": ("3x12 2 kg", "2.2 kg", False, "3x8 2.2 kg", False),
    # ... and 10 for frail people, from "10-15 repetitions" (ACSM position stand, 1998).
    "reps of a frail person come down to ten": ("3x12 2 kg", "2.2 kg", True, "3x10 2.2 kg", False),
    "fewer reps stay": ("3x6 2 kg", "2.1 kg", False, "3x6 2.1 kg", False),
    # Over 10 % warns (Ratamess et al. (ACSM), MSSE 2009: raise the load by 2-10 %).
    "half as much again warns": ("3x12 2 kg", "3 kg", False, "3x8 3 kg", True),
    "a tenth more in pounds is fine": ("3x12 10 lb", "11 lb", False, "3x8 11 lb", False),
    "a weight in another unit is compared": ("3x12 2 kg", "5 lb", False, "3x8 5 lb", True),
    "a band cannot be compared": ("3x12 red band", "green band", False, "3x8 green band", False),
    "seconds are kept": ("2x30 sec 2 kg", "2.2 kg", False, "2x30 sec 2.2 kg", False),
}


@pytest.mark.parametrize(("before", "load", "frail", "after", "warns"), LOAD_STEPS.values(), ids=LOAD_STEPS)
def test_more_load_brings_the_reps_down(before: str, load: str, frail: bool, after: str, warns: bool) -> None:
    dose, too_large = with_more_load(read_dose(before), load, frail)

    assert written(dose) == after
    assert too_large is warns


def test_weights_are_compared_in_kilograms() -> None:
    # One pound is 0.45359237 kg exactly: international yard and pound agreement, 1959.
    assert kilograms("10 lb") == pytest.approx(4.5359237)
    assert kilograms("red band") is None
    assert load_step_percent("2 kg", "3 kg") == pytest.approx(50)
    assert load_step_percent("", "3 kg") is None


RAISES = {
    "more sets": ("1x10", "2x10", {"volume"}),
    "the same": ("2x10", "2x10", set()),
    "less of it": ("3x10", "2x10", set()),
    "more load at fewer reps": ("3x12 2 kg", "3x8 2.2 kg", {"load"}),
    "a first load": ("2x10", "2x10 1 kg", {"load"}),
    "another band": ("2x10 red band", "2x10 green band", {"load"}),
    "the load goes": ("2x10 red band", "2x10", set()),
    "a lighter weight": ("2x10 2 kg", "2x10 1 kg", set()),
    "fewer hands": ("2x10 both hands", "2x10 fingertips", {"less hand support"}),
    "hands from nothing said": ("2x10", "2x10 no hands", {"less hand support"}),
    "more hands": ("2x10 no hands", "2x10 one hand", set()),
    "all three": ("2x10 1 kg one hand", "3x10 2 kg no hands", {"volume", "load", "less hand support"}),
    "reps become seconds": ("2x10", "1x5 sec", {"volume"}),
}


@pytest.mark.parametrize(("old", "new", "more"), RAISES.values(), ids=RAISES)
def test_what_a_change_asks_more_of_is_named(old: str, new: str, more: set[str]) -> None:
    assert raises(read_dose(old), read_dose(new)) == more


@given(REP_DOSES)
def test_one_set_more_is_more_volume_for_every_side(dose: Dose) -> None:
    less = replace(dose, sets=max(1, dose.sets - 1))

    for side in (BOTH, EACH, ALTERNATING):
        assert volume(dose, side) - volume(less, side) == (dose.sets - less.sets) * volume(replace(dose, sets=1), side)
