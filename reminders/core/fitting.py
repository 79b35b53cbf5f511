"""What a client's precautions do to a program: which exercises are refused, swapped, held or noted, and why.

The tables stand in library_limits.py and the program's own values in programs.py; this is the one place where the
two meet. Nothing here is clinical judgement beyond those tables.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace

from reminders.core.dose import EACH, HAND_SUPPORT, Ladder, Rung, easy_day
from reminders.core.library import easy_version, exercise, is_barred, ladder_for, stand_in
from reminders.core.library_limits import HELD, REFUSED, SWAPPED
from reminders.core.programs import DailyItem, EasyItem, Program, ProgramItem, exercises_of


@dataclass(frozen=True)
class Unfit:
    """An exercise of the program that one of her precautions forbids or changes, and what happens to it.

    `effect` is `refused`, `swapped`, `held` or `noted`; `reason` is a code with words in templates/exercises;
    `swap` is what stands in for it, None where nothing does or it stays.
    """

    code: str
    reason: str
    swap: str | None
    precaution: str
    effect: str


def unfit(program: Program, precautions: Iterable[str]) -> tuple[Unfit, ...]:
    """Return every exercise of the program that a precaution forbids or changes, in the program's order.

    An exercise of the easy-day rule counts too. One row an exercise and precaution.
    """
    given = tuple(precautions)
    codes = exercises_of(program)
    rule = [easy_version(item.exercise) for day_list in program.lists for item in day_list.items if not item.easy]
    found = []
    for code in dict.fromkeys((*codes, *rule)):
        for limit in exercise(code).limits_for(given):
            swap = stand_in(code, given) if limit.effect in (REFUSED, SWAPPED) else None
            effect = REFUSED if limit.effect == SWAPPED and swap is None else limit.effect
            found.append(Unfit(code, limit.reason, swap, limit.precaution, effect))
    return tuple(found)


def fitted(program: Program, precautions: Iterable[str]) -> Program:
    """Return the program with every unfit exercise swapped, held by the counter, or left out.

    What stands in keeps the doses where both are counted alike, without load where it takes none, else it begins
    on its own ladder. A list may end with no items: then the therapist must choose others before it can be sent.
    """
    given = tuple(precautions)
    lists = tuple(replace(day_list, items=_fitted_items(day_list.items, given)) for day_list in program.lists)
    daily: list[DailyItem] = []
    for item in program.daily:
        code = stand_in(item.exercise, given)
        if code is not None and code not in [done.exercise for done in daily]:
            ladder = _fitted_ladder(item.exercise, code, Ladder((Rung(item.dose),)), given)
            daily.append(DailyItem(code, ladder.rungs[0].dose))
    return replace(program, lists=lists, daily=tuple(daily))


def _fitted_items(items: Sequence[ProgramItem], given: tuple[str, ...]) -> tuple[ProgramItem, ...]:
    kept: list[ProgramItem] = []
    # An exercise that stays keeps its place and ladder before one that would be swapped for it.
    staying = {item.exercise for item in items if not is_barred(item.exercise, given)}
    for item in items:
        code = stand_in(item.exercise, given)
        if code is None or code in [done.exercise for done in kept] or (code != item.exercise and code in staying):
            continue
        ladder = _fitted_ladder(item.exercise, code, item.ladder, given)
        kept.append(_with_fitted_easy(replace(item, exercise=code, ladder=ladder), given))
    return tuple(kept)


def _with_fitted_easy(item: ProgramItem, given: tuple[str, ...]) -> ProgramItem:
    """Return the item with an easy day that fits too: the written one, the rule's, or out."""
    written = item.easy.exercise if item.easy else easy_version(item.exercise)
    code = stand_in(written, given)
    if item.easy_out or (code == written and item.easy is None):
        return item
    if code is None:
        return replace(item, easy=None, easy_out=True)
    dose = item.easy.dose if item.easy else easy_day(exercise(written).dose)
    ladder = _fitted_ladder(written, code, Ladder((Rung(dose),)), given)
    return replace(item, easy=EasyItem(code, ladder.rungs[0].dose))


def _fitted_ladder(old: str, new: str, ladder: Ladder, given: tuple[str, ...]) -> Ladder:
    if new != old:
        ladder = _moved_ladder(old, new, ladder)
    if any(limit.effect == HELD for limit in exercise(new).limits_for(given)):
        held = (replace(rung, dose=replace(rung.dose, hand_support=HAND_SUPPORT[0])) for rung in ladder.rungs)
        ladder = Ladder(tuple(held))
    return ladder


def _moved_ladder(old: str, new: str, ladder: Ladder) -> Ladder:
    """Return the old doses for what stands in; no swap takes a load, so the load goes."""
    one_sided = exercise(old).side == EACH, exercise(new).side == EACH
    # Minutes of rest or of walking are no measure for a hold of seconds.
    minutes = ladder.rungs[0].dose.count >= 60, exercise(new).dose.count >= 60
    if exercise(new).counted != ladder.unit or one_sided[0] != one_sided[1] or minutes[0] != minutes[1]:
        return ladder_for(new)
    return Ladder(tuple(replace(rung, dose=replace(rung.dose, load="", hand_support="")) for rung in ladder.rungs))
