"""Programs: lists and days, the easy day, letters, missing patterns, JSON, the starters."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.dose import easy_day, ladder_of, raises, read_dose, written
from reminders.core.library import LIBRARY, exercise, ladder_for
from reminders.core.library_data import PATTERNS
from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.programs import (
    WEEKDAYS,
    DailyItem,
    DayList,
    EasyItem,
    Program,
    ProgramItem,
    SessionItem,
    adjacent_days,
    easy_items,
    exercises_of,
    list_for,
    missing_patterns,
    program_days,
    session_items,
    with_days,
)

CODES = st.sampled_from(sorted(LIBRARY))
STARTERS = pytest.mark.parametrize("program", STARTER_PROGRAMS.values(), ids=STARTER_PROGRAMS)


def program_of(*codes: str, days: tuple[str, ...] = ("mon", "wed", "fri")) -> Program:
    return Program("own", (DayList("A", days, tuple(ProgramItem(code, ladder_for(code)) for code in codes)),))


def said(items: tuple[SessionItem, ...]) -> list[str]:
    return [f"{item.letter} {item.exercise} {written(item.dose)}" for item in items]


@st.composite
def programs(draw: st.DrawFn) -> Program:
    days = list(draw(st.permutations(WEEKDAYS)))
    lists = []
    for name in "AB"[: draw(st.integers(1, 2))]:
        codes = draw(st.lists(CODES, min_size=1, max_size=6, unique=True))
        mine = tuple(sorted((days.pop(), days.pop()), key=WEEKDAYS.index))
        easy = draw(st.booleans())
        items = tuple(ProgramItem(code, ladder_for(code), easy_out=easy) for code in codes)
        lists.append(DayList(name, mine, items))
    daily = tuple(DailyItem(code, exercise(code).dose) for code in draw(st.lists(CODES, max_size=3, unique=True)))
    return Program("own", tuple(lists), daily, asks_falls=draw(st.booleans()))


def test_a_session_has_its_lines_in_order_with_a_letter_each() -> None:
    program = program_of("sit-to-stand", "heel-raise", "tandem-stance")

    assert said(session_items(program.lists[0], 1)) == [
        "A sit-to-stand 2x10",
        "B heel-raise 2x10",
        "C tandem-stance 2x20 sec",
    ]


def test_an_item_with_fewer_rungs_stays_on_its_last() -> None:
    day_list = DayList("A", ("mon",), (ProgramItem("heel-raise", ladder_of("1x10")),))

    assert said(session_items(day_list, 5)) == ["A heel-raise 1x10"]


def test_an_easy_day_is_half_without_load_or_one_leg() -> None:
    banded = ProgramItem("band-row", ladder_of("2x10 red band", "3x10 red band"))
    items = (
        ProgramItem("heel-raise", ladder_for("heel-raise")),
        banded,
        ProgramItem("one-leg-stand", ladder_for("one-leg-stand")),
    )

    assert said(easy_items(DayList("A", ("mon",), items), 2)) == [
        "A heel-raise 1x10",
        "B elbow-pull 1x10",
        "C feet-together-stance 1x10 sec",
    ]


def test_an_easy_day_is_as_the_therapist_wrote_it() -> None:
    items = (
        ProgramItem("sit-to-stand", ladder_for("sit-to-stand"), EasyItem("mini-squat", read_dose("1x5"))),
        ProgramItem("heel-raise", ladder_for("heel-raise"), easy_out=True),
        ProgramItem("toe-raise", ladder_for("toe-raise")),
    )

    assert said(easy_items(DayList("A", ("mon",), items), 1)) == ["A mini-squat 1x5", "B toe-raise 1x10"]


@given(programs(), st.integers(0, 4))
def test_no_easy_day_ever_has_load_or_one_leg_or_more_than_the_day(program: Program, rung: int) -> None:
    for day_list in program.lists:
        usual = {item.exercise: item.dose for item in session_items(day_list, rung)}
        for item in easy_items(day_list, rung):
            assert not exercise(item.exercise).loaded
            assert not exercise(item.exercise).one_leg
            assert not item.dose.load
            if item.exercise in usual:
                assert raises(usual[item.exercise], item.dose) == frozenset()


def test_each_weekday_has_its_list_or_none() -> None:
    program = STARTER_PROGRAMS["whole-body"]

    assert [list_for(program, day).name if list_for(program, day) else None for day in WEEKDAYS] == [
        *("A", "B", None, "A", "B", None, None),
    ]
    assert program_days(program) == ("mon", "tue", "thu", "fri")


OTHER_DAYS = {
    "one list takes them all": ("falls-balance", ("tue", "sat"), [("tue", "sat")]),
    "two lists take turns": ("whole-body", ("mon", "wed", "fri"), [("mon", "fri"), ("wed",)]),
    "in the order of the week": ("whole-body", ("fri", "mon"), [("mon",), ("fri",)]),
}


@pytest.mark.parametrize(("code", "days", "lists"), OTHER_DAYS.values(), ids=OTHER_DAYS)
def test_lists_take_turns_over_other_days(code: str, days: tuple[str, ...], lists: list[tuple[str, ...]]) -> None:
    assert [day_list.days for day_list in with_days(STARTER_PROGRAMS[code], days).lists] == lists


def test_fewer_days_than_lists_or_an_unknown_day_is_refused() -> None:
    with pytest.raises(ValueError, match="2 lists and needs at least as many days"):
        with_days(STARTER_PROGRAMS["whole-body"], ("mon",))
    with pytest.raises(ValueError, match='names the day "someday"'):
        with_days(STARTER_PROGRAMS["falls-balance"], ("mon", "someday"))


# Days between: inferred from "2-3 days a week" and Mon, Wed, Fri as its usual reading; from memory.
ADJACENT = {
    "three days apart": (("mon", "wed", "fri"), ()),
    "two that follow": (("mon", "tue", "fri"), (("mon", "tue"),)),
    "over the week's end": (("mon", "sun"), (("sun", "mon"),)),
    "every day": (WEEKDAYS, tuple(zip(WEEKDAYS, (*WEEKDAYS[1:], "mon"), strict=True))),
}


@pytest.mark.parametrize(("days", "pairs"), ADJACENT.values(), ids=ADJACENT)
def test_days_that_follow_each_other_are_named(days: tuple[str, ...], pairs: tuple[tuple[str, str], ...]) -> None:
    assert adjacent_days(DayList("A", days, ())) == pairs


def test_adjacency_is_a_list_s_own_matter() -> None:
    assert [adjacent_days(day_list) for day_list in STARTER_PROGRAMS["whole-body"].lists] == [(), ()]


def test_missing_patterns_are_named_in_order() -> None:
    assert missing_patterns(program_of("sit-to-stand", "hip-hinge")) == (
        *("push", "pull", "reach", "carry", "balance", "posture", "floor core"),
    )


def test_a_daily_item_trains_its_pattern_and_walking_is_none() -> None:
    program = replace(program_of("sit-to-stand"), daily=(DailyItem("weight-shift", read_dose("1x10")),))
    walking = replace(program_of("sit-to-stand"), daily=(DailyItem("steady-walk", read_dose("1x10 min")),))

    assert "balance" not in missing_patterns(program)
    assert set(missing_patterns(walking)) == set(PATTERNS) - {"squat"}


def test_exercises_are_named_once_with_those_of_easy_days_and_every_day() -> None:
    assert exercises_of(STARTER_PROGRAMS["falls-balance"]) == (
        *("sit-to-stand", "heel-raise", "side-steps", "tandem-stance", "one-leg-stand"),
        *("feet-together-stance", "weight-shift", "steady-walk"),
    )


def test_the_whole_body_program_lacks_no_pattern() -> None:
    assert missing_patterns(STARTER_PROGRAMS["whole-body"]) == ()


def test_the_starter_programs_are_the_three_of_a_fresh_database() -> None:
    assert list(STARTER_PROGRAMS) == ["spine-strength", "falls-balance", "whole-body"]
    assert [code for code, program in STARTER_PROGRAMS.items() if program.asks_falls] == ["falls-balance"]


@STARTERS
def test_a_starter_has_days_between_a_ladder_an_easy_day_and_daily_items(program: Program) -> None:
    daily = {exercise(item.exercise).pattern for item in program.daily}

    for day_list in program.lists:
        assert adjacent_days(day_list) == ()
        assert len(day_list.days) >= 2
        assert all(len(item.ladder.rungs) >= 2 for item in day_list.items)
        assert len(easy_items(day_list, 2)) == len(day_list.items), "letters stay on an easy day"
    assert "walking" in daily
    assert len(daily) >= 2


@STARTERS
@pytest.mark.parametrize("rung", [0, 1, 2, 3])
def test_a_starter_s_easy_day_is_half_the_sets(program: Program, rung: int) -> None:
    for day_list in program.lists:
        for usual, easy in zip(session_items(day_list, rung), easy_items(day_list, rung), strict=True):
            if usual.exercise == easy.exercise:
                assert easy.dose == easy_day(usual.dose)
            else:
                assert easy.dose.sets == 1


@STARTERS
def test_a_starter_is_prescribed_in_at_most_six_lines(program: Program) -> None:
    assert all(len(day_list.items) <= 6 for day_list in program.lists)


def test_two_lists_do_not_share_a_day_or_a_letter() -> None:
    item = (ProgramItem("heel-raise", ladder_for("heel-raise")),)

    with pytest.raises(ValueError, match="share mon"):
        Program("own", (DayList("A", ("mon",), item), DayList("B", ("mon",), item)))
    with pytest.raises(ValueError, match="letter of its own"):
        Program("own", (DayList("A", ("mon",), item), DayList("A", ("tue",), item)))


def test_an_item_is_not_both_replaced_and_left_out() -> None:
    with pytest.raises(ValueError, match="choose one"):
        ProgramItem("heel-raise", ladder_for("heel-raise"), EasyItem("toe-raise", read_dose("1x5")), easy_out=True)


def test_a_list_has_at_most_twelve_exercises() -> None:
    codes = [one.code for one in LIBRARY.values()][:13]

    with pytest.raises(ValueError, match="12 at most"):
        program_of(*codes)
