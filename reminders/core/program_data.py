"""The starter programs, as data: where a therapist begins before she makes a program her client's own.

Each brings its easy day: half the sets, no added load, no standing on one leg. Names for clients and staff stand
in templates/exercises. Ladders are the exercises' own.
"""

from reminders.core.dose import read_dose
from reminders.core.library import ladder_for
from reminders.core.programs import DailyItem, DayList, EasyItem, Program, ProgramItem


def _item(code: str, easy: tuple[str, str] | None = None) -> ProgramItem:
    return ProgramItem(code, ladder_for(code), EasyItem(easy[0], read_dose(easy[1])) if easy else None)


def _daily(code: str, line: str) -> DailyItem:
    return DailyItem(code, read_dose(line))


# Strength and balance together, posture work every day, strength on two or more days: Giangregorio et al., "Too
# Fit To Fracture: exercise recommendations", Osteoporos Int 2014. Balance on two or more days: Osteoporosis Canada
# guideline 2023. Which exercises, and in what order: common practice, no source.
SPINE_STRENGTH = Program(
    "spine-strength",
    lists=(
        DayList(
            "A",
            ("mon", "wed", "fri"),
            (
                _item("sit-to-stand"),
                _item("hip-hinge"),
                _item("wall-push-up"),
                _item("band-row", easy=("elbow-pull", "1x10")),
                _item("heel-raise"),
                _item("tandem-stance"),
            ),
        ),
    ),
    daily=(
        _daily("shoulder-blade-squeeze", "1x10"),
        _daily("lying-rest", "1x5 min"),
        _daily("steady-walk", "1x10 min"),
    ),
)

# Balance with strength on three or more days a week: Bull et al., "World Health Organization 2020 guidelines on
# physical activity and sedentary behaviour", BJSM 2020;54(24):1451. Three hours a week with balance work does most
# against falls: Sherrington et al., update for WHO, 2020.
FALLS_BALANCE = Program(
    "falls-balance",
    lists=(
        DayList(
            "A",
            ("mon", "wed", "fri"),
            (
                _item("sit-to-stand"),
                _item("heel-raise"),
                _item("side-steps"),
                _item("tandem-stance"),
                _item("one-leg-stand", easy=("feet-together-stance", "1x10 sec")),
            ),
        ),
    ),
    daily=(_daily("weight-shift", "1x10"), _daily("steady-walk", "1x10 min")),
    asks_falls=True,
)

# Every large muscle group on two days a week with a day between: Garber et al. (ACSM), "Quantity and quality of
# exercise", MSSE 2011;43(7):1334-1359. Two lists in turn, so that each day stays short enough for one text.
WHOLE_BODY = Program(
    "whole-body",
    lists=(
        DayList(
            "A",
            ("mon", "thu"),
            (
                _item("sit-to-stand"),
                _item("wall-push-up"),
                _item("seated-overhead-reach"),
                _item("shoulder-blade-squeeze"),
                _item("heel-raise"),
            ),
        ),
        DayList(
            "B",
            ("tue", "fri"),
            (
                _item("hip-hinge"),
                _item("band-row", easy=("elbow-pull", "1x10")),
                _item("hug-carry", easy=("tall-walk", "1x20 sec")),
                _item("heel-slide"),
                _item("tandem-stance"),
            ),
        ),
    ),
    daily=(_daily("weight-shift", "1x10"), _daily("steady-walk", "1x10 min")),
)

STARTER_PROGRAMS = {program.code: program for program in (SPINE_STRENGTH, FALLS_BALANCE, WHOLE_BODY)}
