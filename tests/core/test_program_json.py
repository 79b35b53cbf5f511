"""A program as JSON: it comes back the same, and what does not fit is said in one sentence."""

import json
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.library import LIBRARY, exercise, ladder_for
from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.program_json import from_json, to_json
from reminders.core.programs import WEEKDAYS, DailyItem, DayList, Program, ProgramItem

CODES = st.sampled_from(sorted(LIBRARY))
STARTERS = pytest.mark.parametrize("program", STARTER_PROGRAMS.values(), ids=STARTER_PROGRAMS)


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


@given(programs())
def test_json_gives_the_same_program_back(program: Program) -> None:
    assert from_json(json.loads(json.dumps(to_json(program)))) == program


@STARTERS
def test_a_starter_comes_back_from_json(program: Program) -> None:
    assert from_json(json.loads(json.dumps(to_json(program)))) == program


def test_what_may_be_left_out_takes_its_default() -> None:
    short = {
        "code": "own",
        "lists": [{"name": "A", "days": ["mon"], "items": [{"exercise": "heel-raise", "ladder": ["1x10"]}]}],
    }

    program = from_json(short)

    assert (program.recheck_weeks, program.end_weeks, program.daily, program.asks_falls) == (6, 12, (), False)
    assert program.lists[0].items[0].ladder.rungs[0].days == 14


def changed(*path: str | int, to: Any) -> Callable[[], Any]:
    def make() -> Any:
        value: Any = json.loads(json.dumps(to_json(STARTER_PROGRAMS["falls-balance"])))
        at = value
        for step in path[:-1]:
            at = at[step]
        at[path[-1]] = to
        return value

    return make


BAD_JSON = {
    "no object": (list, "The program must be an object"),
    "no code": (changed("code", to=""), 'needs "code" as a text'),
    "no lists": (changed("lists", to=[]), "at least one list"),
    "lists of the wrong kind": (changed("lists", to="A"), 'needs "lists" as a list'),
    "no items": (changed("lists", 0, "items", to=[]), "List 1 of the program has no exercises"),
    "no days": (changed("lists", 0, "days", to=[]), "at least one weekday"),
    "an unknown day": (changed("lists", 0, "days", to=["mo"]), 'names the day "mo"'),
    "a day twice": (changed("lists", 0, "days", to=["mon", "mon"]), "each only once"),
    "a list's name": (changed("lists", 0, "name", to="first"), "one capital letter"),
    "an unknown exercise": (changed("lists", 0, "items", 0, "exercise", to="sit-up"), 'no exercise "sit-up"'),
    "reps for seconds": (
        changed("lists", 0, "items", 3, "ladder", to=["2x10"]),
        'tandem-stance is counted in seconds: write its dose like "2x20 sec"',
    ),
    "a dose nobody can read": (changed("lists", 0, "items", 0, "ladder", to=["some"]), '"some" cannot be read'),
    "no rungs": (changed("lists", 0, "items", 0, "ladder", to=[]), "1 to 12 rungs"),
    "days of a rung in words": (
        changed("lists", 0, "items", 0, "ladder", to=[{"dose": "1x10", "days": "14"}]),
        '"days" of a rung of sit-to-stand must be a whole number',
    ),
    "an easy day in seconds": (
        changed("lists", 0, "items", 0, "easy", to={"exercise": "heel-raise", "dose": "1x10 sec"}),
        "heel-raise is counted in reps",
    ),
    "an easy day in one word": (changed("lists", 0, "items", 0, "easy", to="none"), "must be an object"),
    "an exercise twice": (changed("lists", 0, "items", 0, "exercise", to="heel-raise"), "has heel-raise twice"),
    "a daily item with no dose": (changed("daily", 0, to={"exercise": "weight-shift"}), 'needs "dose"'),
    "weeks in words": (changed("end_weeks", to="12"), '"end_weeks" of the program must be a whole number'),
    "no weeks at all": (changed("recheck_weeks", to=0), "1 to 26 weeks"),
    "too many weeks": (changed("end_weeks", to=53), "1 to 52 weeks"),
    "yes for true": (changed("asks_falls", to="yes"), "true or false"),
}


@pytest.mark.parametrize(("make", "sentence"), BAD_JSON.values(), ids=BAD_JSON)
def test_json_that_cannot_be_used_gets_one_sentence(make: Callable[[], Any], sentence: str) -> None:
    with pytest.raises(ValueError) as error:
        from_json(make())

    assert sentence in str(error.value)
    assert str(error.value).endswith((".", '".'))
