"""What a client is prescribed: lists of exercises with their weekdays, daily items, the easy day.

Values and questions about one dated version of a program belong here. Its JSON stands in program_json.py, the
starter programs in program_data.py, what her precautions do to it in fitting.py; which rung a client is on and
when it changes is decided elsewhere.
"""

import string
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from reminders.core.dose import Dose, Ladder, easy_day
from reminders.core.library import easy_version, exercise
from reminders.core.library_data import PATTERNS

WEEKDAYS = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")
MOST_ITEMS, MOST_LISTS = 12, 7
# Re-check after 6 weeks, end after 12: common practice, no source.
RECHECK_WEEKS, END_WEEKS = 6, 12


@dataclass(frozen=True)
class EasyItem:
    """What an easy day does in place of one item, as the therapist wrote it."""

    exercise: str
    dose: Dose


@dataclass(frozen=True)
class ProgramItem:
    """One exercise of a list with its ladder.

    `easy` is what the easy day does instead; None is the rule (half the sets, no added load, no standing on one
    leg). `easy_out` leaves the item out on an easy day.
    """

    exercise: str
    ladder: Ladder
    easy: EasyItem | None = None
    easy_out: bool = False

    def __post_init__(self) -> None:
        _must_count_alike(self.exercise, self.ladder.rungs[0].dose)
        if self.easy is not None:
            _must_count_alike(self.easy.exercise, self.easy.dose)
            if self.easy_out:
                raise ValueError(f"{self.exercise} is both left out and replaced on the easy day: choose one.")


@dataclass(frozen=True)
class DailyItem:
    """An exercise or a walk for every day: on the sheet, asked once a week, never part of session adherence."""

    exercise: str
    dose: Dose

    def __post_init__(self) -> None:
        _must_count_alike(self.exercise, self.dose)


@dataclass(frozen=True)
class DayList:
    """One list (named A, B, …) with the weekdays on which it is done, Monday first, and its items in order."""

    name: str
    days: tuple[str, ...]
    items: tuple[ProgramItem, ...]

    def __post_init__(self) -> None:
        if len(self.name) != 1 or self.name not in string.ascii_uppercase:
            raise ValueError(f'A list is named by one capital letter, not "{self.name}".')
        wrong = [day for day in self.days if day not in WEEKDAYS]
        if wrong:
            raise ValueError(f'List {self.name} names the day "{wrong[0]}": use {", ".join(WEEKDAYS)}.')
        if not self.days or len(set(self.days)) != len(self.days):
            raise ValueError(f"List {self.name} needs at least one weekday, and each only once.")
        if len(self.items) > MOST_ITEMS:
            raise ValueError(f"List {self.name} has {len(self.items)} exercises: {MOST_ITEMS} at most.")
        codes = [item.exercise for item in self.items]
        twice = [code for code in codes if codes.count(code) > 1]
        if twice:
            raise ValueError(f"List {self.name} has {twice[0]} twice: raise its sets instead.")


@dataclass(frozen=True)
class Program:
    """One version of a program. Weeks count from its start: `recheck_weeks` 1-26, `end_weeks` 1-52.

    `asks_falls`: the monthly question about falls is on by default.
    """

    code: str
    lists: tuple[DayList, ...]
    daily: tuple[DailyItem, ...] = ()
    recheck_weeks: int = RECHECK_WEEKS
    end_weeks: int = END_WEEKS
    asks_falls: bool = False

    def __post_init__(self) -> None:
        if not 1 <= self.recheck_weeks <= 26:
            raise ValueError(f"The re-check must come after 1 to 26 weeks, not {self.recheck_weeks}.")
        if not 1 <= self.end_weeks <= 52:
            raise ValueError(f"The program must end after 1 to 52 weeks, not {self.end_weeks}.")
        names = [day_list.name for day_list in self.lists]
        if len(set(names)) != len(names) or len(names) > MOST_LISTS:
            raise ValueError(f"A program has at most {MOST_LISTS} lists, each with a letter of its own.")
        days = [day for day_list in self.lists for day in day_list.days]
        twice = [day for day in days if days.count(day) > 1]
        if twice:
            raise ValueError(f"Two lists share {twice[0]}: give each day to one list.")


@dataclass(frozen=True)
class SessionItem:
    """One line of a session: its letter (A is the first line), the exercise and the dose of that day."""

    letter: str
    exercise: str
    dose: Dose

    @property
    def side(self) -> str:
        """How the exercise takes its sides: `both`, `each` or `alternating`."""
        return exercise(self.exercise).side


def _must_count_alike(code: str, dose: Dose) -> None:
    counted = exercise(code).counted
    if dose.unit != counted:
        like = "2x20 sec" if counted == "seconds" else "2x10"
        raise ValueError(f'{code} is counted in {counted}: write its dose like "{like}".')


def _lettered(pairs: Iterable[tuple[str, Dose]]) -> tuple[SessionItem, ...]:
    return tuple(
        SessionItem(letter, code, dose) for letter, (code, dose) in zip(string.ascii_uppercase, pairs, strict=False)
    )


def session_items(day_list: DayList, rung: int = 0) -> tuple[SessionItem, ...]:
    """Return the lines of a session on this list at a rung from 0; an item with fewer rungs stays on its last."""
    return _lettered((item.exercise, item.ladder.at(rung).dose) for item in day_list.items)


def easy_items(day_list: DayList, rung: int = 0) -> tuple[SessionItem, ...]:
    """Return the lines of an easy day: half the sets, no added load, no standing on one leg, or as written."""
    pairs: list[tuple[str, Dose]] = []
    for item in day_list.items:
        code, dose = _easy(item, rung)
        if not item.easy_out and code not in [done for done, _ in pairs]:
            pairs.append((code, dose))
    return _lettered(pairs)


def _easy(item: ProgramItem, rung: int) -> tuple[str, Dose]:
    if item.easy is not None:
        return item.easy.exercise, item.easy.dose
    code = easy_version(item.exercise)
    if code == item.exercise:
        return code, easy_day(item.ladder.at(rung).dose)
    return code, easy_day(exercise(code).dose)


def list_for(program: Program, weekday: str) -> DayList | None:
    """Return the list that is done on a weekday (`mon` … `sun`), None on a day without one."""
    return next((day_list for day_list in program.lists if weekday in day_list.days), None)


def program_days(program: Program) -> tuple[str, ...]:
    """Return all exercise days of the program, Monday first."""
    return tuple(day for day in WEEKDAYS if list_for(program, day))


def with_days(program: Program, days: Sequence[str]) -> Program:
    """Return the program on other weekdays: the lists take turns over the days, Monday first.

    Raises ValueError when there are fewer days than lists.
    """
    if len(set(days)) < len(program.lists):
        raise ValueError(f"{program.code} has {len(program.lists)} lists and needs at least as many days.")
    ordered = [day for day in WEEKDAYS if day in days]
    ordered += [day for day in days if day not in WEEKDAYS]
    turns = len(program.lists)
    return replace(
        program,
        lists=tuple(
            replace(day_list, days=tuple(ordered[place::turns])) for place, day_list in enumerate(program.lists)
        ),
    )


def adjacent_days(day_list: DayList) -> tuple[tuple[str, str], ...]:
    """Return the pairs of days of one list that follow each other, Sunday to Monday too; a warning, no error.

    Two to three days a week for a muscle group (Garber et al. (ACSM), MSSE 2011;43(7):1334-1359), with a day
    between them: from memory, and per list, since two lists may train different groups.
    """
    following = zip(WEEKDAYS, (*WEEKDAYS[1:], WEEKDAYS[0]), strict=True)
    return tuple(pair for pair in following if set(pair) <= set(day_list.days))


def exercises_of(program: Program) -> tuple[str, ...]:
    """Return each exercise code of the program once, lists first, then easy days, then daily items."""
    codes = [item.exercise for day_list in program.lists for item in day_list.items]
    codes += [item.easy.exercise for day_list in program.lists for item in day_list.items if item.easy]
    codes += [item.exercise for item in program.daily]
    return tuple(dict.fromkeys(codes))


def missing_patterns(program: Program) -> tuple[str, ...]:
    """Return the movement patterns that neither a list nor a daily item trains, in the order of PATTERNS."""
    trained = {exercise(item.exercise).pattern for day_list in program.lists for item in day_list.items}
    trained |= {exercise(item.exercise).pattern for item in program.daily}
    return tuple(pattern for pattern in PATTERNS if pattern not in trained)
