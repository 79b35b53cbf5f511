"""The exercise library and its precautions."""

import pytest

from reminders.core.dose import ALTERNATING, BOTH, EACH, REPS, SECONDS, SIDES, written
from reminders.core.library import (
    EXERCISES,
    LIBRARY,
    Exercise,
    easy_version,
    exercise,
    is_barred,
    ladder_for,
    read_precautions,
    stand_in,
)
from reminders.core.library_data import (
    EQUIPMENT,
    FLOOR_CORE,
    LYING,
    ON_ALL_FOURS,
    PATTERNS,
    POSITIONS,
    SITTING,
    WALKING,
)
from reminders.core.library_limits import HELD, LIMITS, NONE_KNOWN, NOTED, PRECAUTIONS, REFUSED, SWAPPED

FLOOR_EXERCISES = [one for one in EXERCISES if one.on_floor]


def each(exercises: list[Exercise] | tuple[Exercise, ...]) -> pytest.MarkDecorator:
    return pytest.mark.parametrize("one", exercises, ids=[one.code for one in exercises])


def test_there_are_at_least_thirty_two_exercises_and_no_code_twice() -> None:
    assert len(EXERCISES) >= 32
    assert len(LIBRARY) == len(EXERCISES)


def test_codes_are_kept_since_records_name_them() -> None:
    kept = (
        "sit-to-stand hip-hinge wall-push-up band-row suitcase-carry heel-raise tandem-stance side-lying-hip-abduction"
    )

    assert set(kept.split()) <= set(LIBRARY)
    assert all(code == code.lower() and code.replace("-", "").isalpha() for code in LIBRARY)


def test_every_pattern_has_at_least_two_exercises_and_one_without_load_or_floor() -> None:
    for pattern in PATTERNS:
        of_it = [one for one in EXERCISES if one.pattern == pattern]
        assert len(of_it) >= 2, pattern
        assert any(not one.loaded and not one.on_floor for one in of_it), pattern


@each(EXERCISES)
def test_a_row_says_only_what_is_known(one: Exercise) -> None:
    assert one.pattern in (*PATTERNS, WALKING)
    assert one.position in POSITIONS
    assert set(one.equipment) <= set(EQUIPMENT)
    assert one.side in SIDES
    assert one.counted in (REPS, SECONDS)
    assert one.dose.sets <= 2, "a start is easy"
    assert one.dose.load == ""


@each(EXERCISES)
def test_an_alternating_exercise_counts_an_even_number_of_reps(one: Exercise) -> None:
    if one.side == ALTERNATING:
        assert one.counted == REPS
        assert all(rung.dose.count % 2 == 0 for rung in ladder_for(one.code).rungs)


@each(EXERCISES)
def test_its_own_ladder_starts_with_its_easy_dose_and_only_goes_up(one: Exercise) -> None:
    ladder = ladder_for(one.code)
    amounts = [rung.dose.sets * rung.dose.count for rung in ladder.rungs]

    assert ladder.at(0).dose == one.dose
    assert amounts == sorted(set(amounts))
    assert len(ladder.rungs) >= 2


@each(FLOOR_EXERCISES)
def test_every_floor_exercise_has_a_chair_version(one: Exercise) -> None:
    assert one.chair_version is not None
    assert exercise(one.chair_version).position == SITTING
    assert exercise(one.chair_version).pattern == one.pattern


@each(FLOOR_EXERCISES)
def test_who_cannot_get_to_the_floor_or_lie_flat_gets_the_chair_version(one: Exercise) -> None:
    assert stand_in(one.code, ("cannot get to the floor",)) == one.chair_version
    if one.position in LYING:
        assert stand_in(one.code, ("cannot lie flat",)) == one.chair_version
    else:
        assert one.position == ON_ALL_FOURS


@each(EXERCISES)
def test_an_easy_day_brings_neither_load_nor_one_leg(one: Exercise) -> None:
    easy = exercise(easy_version(one.code))

    assert not easy.loaded
    assert not easy.one_leg
    if one.loaded or one.one_leg:
        assert easy.code != one.code
    else:
        assert one.easy_version is None


# Bending and twisting that is loaded, repeated or at the end of the range: "Too Fit To Fracture" 2014 / Osteoporosis
# Canada handout; high spinal flexion: Brooke-Wavell et al., "Strong, steady and straight", BJSM 2022;56(15):837-846.
def test_no_exercise_is_one_that_bends_or_twists_the_spine() -> None:
    forbidden = ("twist", "crunch", "sit-up", "toe-touch", "curl-up", "rotation", "side-bend", "roll-down", "deadlift")

    assert [code for code in LIBRARY for word in forbidden if word in code] == []
    assert not [one.code for one in EXERCISES if one.loaded and one.pattern in ("hinge", FLOOR_CORE)]


def test_every_precaution_forbids_or_changes_something() -> None:
    assert {limit.precaution for _, limit in LIMITS} == set(PRECAUTIONS)
    assert len(PRECAUTIONS) == 13


@pytest.mark.parametrize(("code", "limit"), LIMITS, ids=[f"{code}: {limit.precaution}" for code, limit in LIMITS])
def test_a_limit_names_known_things_and_swaps_only_when_it_swaps(code: str, limit: object) -> None:
    assert code in LIBRARY
    assert limit.effect in (REFUSED, SWAPPED, HELD, NOTED)
    assert (limit.swap is not None) == (limit.effect == SWAPPED)
    if limit.swap is not None:
        assert not is_barred(limit.swap, (limit.precaution,)), "a swap must itself be fit"
        assert not exercise(limit.swap).loaded


def test_an_exercise_has_one_limit_a_precaution() -> None:
    pairs = [(code, limit.precaution) for code, limit in LIMITS]

    assert len(set(pairs)) == len(pairs)


@each(EXERCISES)
def test_what_stands_in_is_never_barred_itself(one: Exercise) -> None:
    for first in PRECAUTIONS:
        for second in PRECAUTIONS:
            instead = stand_in(one.code, (first, second))
            assert instead is None or not is_barred(instead, (first, second))


def test_a_weight_bearing_limit_leaves_nothing_on_the_feet() -> None:
    for one in EXERCISES:
        instead = stand_in(one.code, ("weight-bearing limit",))
        assert instead is None or exercise(instead).position not in ("standing", "walking"), one.code


def test_a_spinal_fracture_leaves_no_carry_with_load() -> None:
    carries = [one for one in EXERCISES if one.pattern == "carry"]

    assert {stand_in(one.code, ("spinal fracture",)) for one in carries} == {"tall-walk"}


def test_two_precautions_together_follow_the_swaps_to_something_fit() -> None:
    assert stand_in("counter-push-up", ("spinal fracture", "weight-bearing limit")) == "palm-press"
    assert stand_in("one-leg-stand", ("walking aid", "weight-bearing limit")) is None


def test_no_precaution_changes_nothing() -> None:
    assert all(stand_in(code, ()) == code for code in LIBRARY)


PRECAUTION_TEXTS = {
    "nobody was asked": ("", None),
    "blanks are nothing": ("  ", None),
    "none known is an answer": ("none known", ()),
    "one": ("vertigo", ("vertigo",)),
    "several, in the library's order": ("poor sight + Low Bone  Density", ("low bone density", "poor sight")),
    "twice is once": ("vertigo+vertigo", ("vertigo",)),
}


@pytest.mark.parametrize(("text", "read"), PRECAUTION_TEXTS.values(), ids=PRECAUTION_TEXTS)
def test_precautions_are_read_by_their_names(text: str, read: tuple[str, ...] | None) -> None:
    assert read_precautions(text) == read


@pytest.mark.parametrize("text", ["bad back", "vertigo+", "none known+vertigo"])
def test_unknown_precautions_get_one_sentence(text: str) -> None:
    with pytest.raises(ValueError) as error:
        read_precautions(text)

    assert str(error.value).endswith(".")


def test_an_unknown_exercise_gets_one_sentence() -> None:
    with pytest.raises(ValueError, match='no exercise "sit-up"'):
        exercise("sit-up")


# Sides: common practice, no source.
KNOWN_SIDES = {
    "sit-to-stand": BOTH,
    "tandem-stance": EACH,
    "seated-march": ALTERNATING,
    "side-lying-hip-abduction": EACH,
}


@pytest.mark.parametrize(("code", "side"), KNOWN_SIDES.items(), ids=KNOWN_SIDES)
def test_sides_are_those_of_the_trade(code: str, side: str) -> None:
    assert exercise(code).side == side


def test_a_walk_goes_up_by_minutes() -> None:
    assert [written(rung.dose) for rung in ladder_for("steady-walk").rungs] == ["1x10 min", "1x15 min", "1x20 min"]


def test_none_known_is_no_precaution_of_its_own() -> None:
    assert NONE_KNOWN not in PRECAUTIONS
