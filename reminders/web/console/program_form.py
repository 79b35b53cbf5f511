"""The program editor's form: its fields from a program, a program from its fields, and what to say about both.

Only values; what a program may be is decided in core, what is saved in flows.
"""

from collections.abc import Sequence
from typing import Any

from reminders.core.dose import written
from reminders.core.fitting import unfit
from reminders.core.library import EXERCISES, ladder_for
from reminders.core.library_limits import PRECAUTIONS
from reminders.core.program_json import from_json
from reminders.core.programs import Program, ProgramItem, adjacent_days, missing_patterns
from reminders.errors import BadInput
from reminders.flows import steps
from reminders.texts_exercises import exercise_words
from reminders.web.forms import Form

NAMES = "ABCDEFG"
EMPTY_LINES = 2  # lines to add to in each list
RULE, OUT = "", "leave out"
DAYS_MARK = " for "


def fields_of(program: Program) -> dict[str, Any]:
    """Return a program as the form's values; every list has lines to add to, and one more list stands empty."""
    lists = [
        {"name": one.name, "days": list(one.days), "items": [item_fields(item) for item in one.items]}
        for one in program.lists
    ]
    daily = [{"exercise": item.exercise, "dose": written(item.dose)} for item in program.daily]
    return with_empty_lines(
        {
            "code": program.code,
            "lists": lists,
            "daily": daily,
            "recheck_weeks": program.recheck_weeks,
            "end_weeks": program.end_weeks,
            "asks_falls": program.asks_falls,
        }
    )


def with_empty_lines(fields: dict[str, Any]) -> dict[str, Any]:
    """Return the form's values with empty lines to write on."""
    empty = {"exercise": "", "ladder": "", "easy": RULE, "easy_dose": ""}
    lists = [{**one, "items": [*one["items"], *([empty] * EMPTY_LINES)]} for one in fields["lists"]]
    if len(lists) < len(NAMES):
        lists.append({"name": NAMES[len(lists)], "days": [], "items": [empty] * 4})
    daily = [*fields["daily"], *([{"exercise": "", "dose": ""}] * EMPTY_LINES)]
    return {**fields, "lists": lists, "daily": daily}


def item_fields(item: ProgramItem) -> dict[str, Any]:
    """Return one line of a list as the form's values."""
    rungs = [
        written(rung.dose) + (f"{DAYS_MARK}{rung.days} days" if rung.days != 14 else "") for rung in item.ladder.rungs
    ]
    easy = OUT if item.easy_out else (item.easy.exercise if item.easy else RULE)
    dose = written(item.easy.dose) if item.easy else ""
    return {"exercise": item.exercise, "ladder": "; ".join(rungs), "easy": easy, "easy_dose": dose}


def fields_in(form: Form) -> dict[str, Any]:
    """Return the form's values as they were sent, to be shown again or made into a program."""
    lists = []
    for place, name in enumerate(NAMES):
        if f"ex{place}_0" not in form.values:
            break
        items = []
        line = 0
        while f"ex{place}_{line}" in form.values and line < 20:
            mark = f"{place}_{line}"
            given = {
                "exercise": form.text(f"ex{mark}", most=60),
                "ladder": form.text(f"ladder{mark}", most=300),
                "easy": form.text(f"easy{mark}", most=60),
                "easy_dose": form.text(f"easydose{mark}", most=60),
            }
            if given["exercise"]:
                items.append(given)
            line += 1
        lists.append({"name": name, "days": form.many(f"days{place}"), "items": items})
    daily = [
        {"exercise": form.text(f"dex{line}", most=60), "dose": form.text(f"ddose{line}", most=60)}
        for line in range(20)
        if form.text(f"dex{line}", most=60)
    ]
    return {
        "code": form.text("code", "The program's name", needed=True, most=40),
        "lists": [one for one in lists if one["items"]],
        "daily": daily,
        "recheck_weeks": form.whole("recheck_weeks", "Re-check after", least=1, most=26, default=6),
        "end_weeks": form.whole("end_weeks", "End after", least=1, most=52, default=12),
        "asks_falls": form.checked("asks_falls"),
    }


def program_from(fields: dict[str, Any]) -> Program:
    """Return the program that the fields state; raises BadInput with one sentence naming what does not fit."""
    if not fields["lists"]:
        raise BadInput("The program has no exercises; choose at least one for list A.")
    try:
        return from_json(
            {
                **{name: fields[name] for name in ("code", "recheck_weeks", "end_weeks", "asks_falls", "daily")},
                "lists": [
                    {
                        "name": NAMES[place],
                        "days": one["days"],
                        "items": [item_json(item) for item in one["items"]],
                    }
                    for place, one in enumerate(fields["lists"])
                ],
            }
        )
    except ValueError as error:
        raise BadInput(str(error)) from None


def item_json(item: dict[str, str]) -> dict[str, Any]:
    """Return one line as the stored shape takes it; an empty ladder is the exercise's own."""
    easy: Any = None
    if item["easy"] == OUT:
        easy = OUT
    elif item["easy"]:
        own = item["easy_dose"] or written(ladder_for(item["easy"]).rungs[0].dose)
        easy = {"exercise": item["easy"], "dose": own}
    ladder = [rung_json(part) for part in item["ladder"].split(";") if part.strip()]
    if not ladder:
        ladder = [{"dose": written(rung.dose), "days": rung.days} for rung in ladder_for(item["exercise"]).rungs]
    return {"exercise": item["exercise"], "ladder": ladder, "easy": easy}


def rung_json(part: str) -> dict[str, Any]:
    """Return one step of a ladder: "2x10", or "2x10 for 21 days"."""
    dose, mark, days = part.strip().partition(DAYS_MARK)
    if not mark:
        return {"dose": dose}
    number = days.removesuffix("days").strip()
    if not number.isdigit() or not 1 <= int(number) <= 365:
        raise BadInput(f'The step "{part.strip()}" cannot be read; write it like "2x10" or "2x10 for 21 days".')
    return {"dose": dose, "days": int(number)}


def precautions_in(form: Form) -> tuple[str, ...] | None:
    """Return the ticked precautions; "none known" alone is the empty tuple, nothing ticked None: nobody was asked."""
    ticked = [kind for kind in PRECAUTIONS if kind in form.many("precaution")]
    if form.checked("none_known"):
        if ticked:
            raise BadInput("Either tick precautions or “none known”, not both.")
        return ()
    return tuple(ticked) if ticked else None


def warnings(program: Program, precautions: Sequence[str]) -> list[str]:
    """Return what the therapist should know before she saves: patterns that lack, exercises that do not fit, loads."""
    words = exercise_words("en")
    said = [f"No exercise for: {', '.join(missing_patterns(program))}."] if missing_patterns(program) else []
    for row in unfit(program, precautions):
        reason = words.reasons.get(row.reason, row.reason)
        instead = f" Instead: {words.name(row.swap)}." if row.swap else ""
        effect = words.effects.get(row.effect, row.effect)
        said.append(f"{words.name(row.code)}, {row.precaution}: {effect}. {reason}.{instead}".replace("..", "."))
    for day_list in program.lists:
        pairs = adjacent_days(day_list)
        if pairs:
            said.append(f"List {day_list.name} falls on days in a row: {', '.join('-'.join(pair) for pair in pairs)}.")
    most = max(len(item.ladder.rungs) for item in steps.items_of(program))
    for rung in range(most - 1):
        for code in steps.large_loads(program, rung, rung + 1):
            said.append(f"{words.name(code)}: step {rung + 2} raises the load by more than 10 %.")
    return said


def choices() -> list[tuple[str, list[tuple[str, str]]]]:
    """Return the library as (pattern, [(code, name)]) for a list to choose from."""
    words = exercise_words("en")
    found: dict[str, list[tuple[str, str]]] = {}
    for one in EXERCISES:
        found.setdefault(one.pattern, []).append((one.code, words.name(one.code)))
    return list(found.items())


def steps_count(program: Program) -> int:
    """Return how many steps the longest ladder has."""
    return max((len(item.ladder.rungs) for item in steps.items_of(program)), default=1)
