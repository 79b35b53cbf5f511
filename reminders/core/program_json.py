"""A program as plain JSON values and back, with one clear sentence for everything that does not fit.

The shape that a dated version is stored in belongs here and nothing else; a change of it must still read
what older versions wrote.
"""

from collections.abc import Mapping
from typing import Any

from reminders.core.dose import DAYS_ON_A_RUNG, Ladder, Rung, read_dose, written
from reminders.core.programs import (
    END_WEEKS,
    RECHECK_WEEKS,
    DailyItem,
    DayList,
    EasyItem,
    Program,
    ProgramItem,
)

Json = dict[str, Any]


def to_json(program: Program) -> Json:
    """Return the program as plain JSON values; `from_json` gives the same program back."""
    return {
        "code": program.code,
        "recheck_weeks": program.recheck_weeks,
        "end_weeks": program.end_weeks,
        "asks_falls": program.asks_falls,
        "lists": [
            {"name": one.name, "days": list(one.days), "items": [_item_json(item) for item in one.items]}
            for one in program.lists
        ],
        "daily": [{"exercise": item.exercise, "dose": written(item.dose)} for item in program.daily],
    }


def _item_json(item: ProgramItem) -> Json:
    rungs = [{"dose": written(rung.dose), "days": rung.days} for rung in item.ladder.rungs]
    easy: Json | str | None = "leave out" if item.easy_out else None
    if item.easy is not None:
        easy = {"exercise": item.easy.exercise, "dose": written(item.easy.dose)}
    return {"exercise": item.exercise, "ladder": rungs, "easy": easy}


def from_json(value: object) -> Program:
    """Return the program that JSON values state; raises ValueError with one sentence naming the place.

    Weeks, days, the easy day and the daily items may be left out; a list without exercises is refused here, since
    nothing could be sent from it.
    """
    table = _table(value, "The program")
    lists = tuple(_day_list(one, number) for number, one in enumerate(_list(table, "lists", "The program"), start=1))
    if not lists:
        raise ValueError("The program needs at least one list of exercises.")
    asks = table.get("asks_falls", False)
    if not isinstance(asks, bool):
        raise ValueError('"asks_falls" in the program must be true or false.')
    return Program(
        code=_text(table, "code", "The program"),
        lists=lists,
        daily=tuple(_daily(one) for one in _list(table, "daily", "The program", needed=False)),
        recheck_weeks=_whole(table, "recheck_weeks", "The program", RECHECK_WEEKS),
        end_weeks=_whole(table, "end_weeks", "The program", END_WEEKS),
        asks_falls=asks,
    )


def _day_list(value: object, number: int) -> DayList:
    where = f"List {number} of the program"
    table = _table(value, where)
    items = tuple(_item(one, where) for one in _list(table, "items", where))
    if not items:
        raise ValueError(f"{where} has no exercises: add one or take the list out.")
    days = tuple(str(day) for day in _list(table, "days", where))
    return DayList(_text(table, "name", where), days, items)


def _item(value: object, where: str) -> ProgramItem:
    table = _table(value, f"An exercise of {where.lower()}")
    code = _text(table, "exercise", f"An exercise of {where.lower()}")
    rungs = tuple(_rung(one, code) for one in _list(table, "ladder", code))
    easy = table.get("easy")
    if easy is None or easy == "leave out":
        return ProgramItem(code, Ladder(rungs), easy_out=easy is not None)
    easy_table = _table(easy, f"The easy day of {code}")
    easy_item = EasyItem(
        _text(easy_table, "exercise", f"The easy day of {code}"),
        read_dose(_text(easy_table, "dose", f"The easy day of {code}")),
    )
    return ProgramItem(code, Ladder(rungs), easy_item)


def _rung(value: object, code: str) -> Rung:
    if isinstance(value, str):
        return Rung(read_dose(value))
    table = _table(value, f"A rung of {code}")
    return Rung(
        read_dose(_text(table, "dose", f"A rung of {code}")),
        _whole(table, "days", f"A rung of {code}", DAYS_ON_A_RUNG),
    )


def _daily(value: object) -> DailyItem:
    table = _table(value, "A daily item")
    return DailyItem(_text(table, "exercise", "A daily item"), read_dose(_text(table, "dose", "A daily item")))


def _table(value: object, where: str) -> Mapping[str, Any]:
    if not isinstance(value, Mapping):
        raise ValueError(f"{where} must be an object with named fields.")
    return value


def _list(table: Mapping[str, Any], key: str, where: str, *, needed: bool = True) -> list[Any]:
    value = table.get(key, None if needed else [])
    if not isinstance(value, list):
        raise ValueError(f'{where} needs "{key}" as a list.')
    return value


def _text(table: Mapping[str, Any], key: str, where: str) -> str:
    value = table.get(key)
    if not isinstance(value, str) or not value.strip():
        raise ValueError(f'{where} needs "{key}" as a text.')
    return value


def _whole(table: Mapping[str, Any], key: str, where: str, default: int) -> int:
    value = table.get(key, default)
    if not isinstance(value, int) or isinstance(value, bool):
        raise ValueError(f'"{key}" of {where[0].lower()}{where[1:]} must be a whole number.')
    return value
