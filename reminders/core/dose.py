"""How much of an exercise: doses, the counting of sides, ladders of rungs, easy days.

The arithmetic of a dose and the line a therapist writes belong here ("2x10", "2x20 sec", "3x8 2 kg").
Which exercise it is for, how a client is told it, and when to move a rung do not.
"""

import re
from dataclasses import dataclass, replace

BOTH, EACH, ALTERNATING = "both", "each", "alternating"
SIDES = (BOTH, EACH, ALTERNATING)
REPS, SECONDS = "reps", "seconds"

# From most to least help; "" says nothing about hands, and is taken as neither more nor less.
HAND_SUPPORT = ("both hands", "one hand", "fingertips", "no hands")
BANDS = ("light", "medium", "heavy", "yellow", "red", "green", "blue", "black")

MOST_SETS, MOST_REPS, MOST_SECONDS = 10, 50, 3600
# Fourteen days on a rung at the least: common practice, no source.
DAYS_ON_A_RUNG = 14
# Most rungs a ladder may have: common practice, no source.
MOST_RUNGS = 12
# 8-12 repetitions: Garber et al. (ACSM), "Quantity and quality of exercise", MSSE 2011;43(7):1334-1359.
LOW_END_REPS = 8
# 10-15 repetitions for older or frail people: ACSM position stand, 1998.
LOW_END_REPS_FRAIL = 10
# Raise the load by 2-10 %: Ratamess et al. (ACSM), "Progression models in resistance training for healthy
# adults", MSSE 2009.
LARGEST_LOAD_STEP_PERCENT = 10
KILOGRAMS_IN_A_POUND = 0.45359237

_AMOUNT = re.compile(
    r"(?P<sets>\d{1,3})\s*[x×]\s*(?P<count>\d{1,4})(?:\s*(?P<unit>sec(?:ond)?s?|s|min(?:ute)?s?|reps?)(?=\s|,|$))?",
    re.IGNORECASE,
)
_WEIGHT = re.compile(r"(?P<number>\d{1,3}(?:\.\d{1,2})?)\s*(?P<unit>kg|lb)s?", re.IGNORECASE)
_WRITE_LIKE = 'Write it like "2x10", "2x20 sec", "3x8 2 kg", "2x10 red band" or "2x10 no hands"'


@dataclass(frozen=True)
class Dose:
    """Sets of reps or of seconds, the load, and how the hands help.

    Exactly one of `reps` (1-50) and `seconds` (1-3600) is given; `sets` is 1-10. `load` is "", a weight
    such as "2 kg" or "5 lb", or a band such as "red band". Anything else raises ValueError with one sentence.
    """

    sets: int
    reps: int | None = None
    seconds: int | None = None
    load: str = ""
    hand_support: str = ""

    def __post_init__(self) -> None:
        if (self.reps is None) == (self.seconds is None):
            raise ValueError("A dose counts either reps or seconds: give one of them.")
        count, most = self.count, MOST_REPS if self.seconds is None else MOST_SECONDS
        if not 1 <= self.sets <= MOST_SETS:
            raise ValueError(f"Sets must be 1 to {MOST_SETS}, not {self.sets}.")
        if not 1 <= count <= most:
            raise ValueError(f"{self.unit.capitalize()} must be 1 to {most}, not {count}.")
        if self.load and not is_load(self.load):
            raise ValueError(
                f'The load "{self.load}" is neither a weight such as "2 kg" nor a band such as "red band".'
            )
        if self.hand_support and self.hand_support not in HAND_SUPPORT:
            raise ValueError(f'Hand support must be one of {", ".join(HAND_SUPPORT)}, not "{self.hand_support}".')

    @property
    def count(self) -> int:
        """Reps or seconds of one set."""
        return self.reps or self.seconds or 0

    @property
    def unit(self) -> str:
        """`reps` or `seconds`."""
        return REPS if self.seconds is None else SECONDS


def is_load(text: str) -> bool:
    """Say whether a text is a weight or a band as a dose keeps them ("2 kg", "red band")."""
    if re.fullmatch(r"\d{1,3}(\.\d{1,2})? (kg|lb)", text):
        return True
    return text in {f"{band} band" for band in BANDS}


def read_dose(line: str) -> Dose:
    """Return the dose that a therapist's line states; raises ValueError with one sentence that shows the way out.

    "each side" may stand in the line and changes nothing: the side belongs to the exercise.
    """
    text = " ".join(line.replace(",", " ").split()).lower()
    amount = _AMOUNT.match(text)
    if amount is None:
        raise ValueError(f'The dose "{line.strip()}" cannot be read. {_WRITE_LIKE}.')
    rest = text[amount.end() :].replace("each side", " ")
    hands, rest = _taken_hands(rest)
    load, rest = _taken_load(rest)
    if rest.strip():
        raise ValueError(
            f'The dose "{line.strip()}" has "{rest.strip()}", which is no load and no hand support. {_WRITE_LIKE}.'
        )
    sets, count, unit = int(amount["sets"]), int(amount["count"]), amount["unit"] or ""
    if not unit or unit.startswith("rep"):
        return Dose(sets, reps=count, load=load, hand_support=hands)
    seconds = count * 60 if unit.startswith("min") else count
    return Dose(sets, seconds=seconds, load=load, hand_support=hands)


def _taken_hands(text: str) -> tuple[str, str]:
    for hands in HAND_SUPPORT:
        if hands in text:
            return hands, text.replace(hands, " ", 1)
    return "", text


def _taken_load(text: str) -> tuple[str, str]:
    if weight := _WEIGHT.search(text):
        load = f"{float(weight['number']):g} {weight['unit'].lower()}"
        return load, text[: weight.start()] + text[weight.end() :]
    if band := re.search(rf"\b({'|'.join(BANDS)}) band\b", text):
        return band[0], text[: band.start()] + text[band.end() :]
    return "", text


def written(dose: Dose) -> str:
    """Return the line that reads back as this dose: "2x10", "2x20 sec", "1x10 min", "3x8 2 kg no hands"."""
    amount = f"{dose.sets}x{dose.count}"
    if dose.seconds is not None:
        whole_minutes = dose.seconds >= 120 and dose.seconds % 60 == 0
        amount = f"{dose.sets}x{dose.seconds // 60} min" if whole_minutes else f"{amount} sec"
    return " ".join(part for part in (amount, dose.load, dose.hand_support) if part)


def a_side(dose: Dose, side: str) -> float:
    """Return the reps or seconds that one side does in one set: an alternating ten is five a side."""
    return dose.count / 2 if side == ALTERNATING else dose.count


def volume(dose: Dose, side: str) -> int:
    """Return all reps or seconds of the dose: a one-sided exercise is done on both sides, so it counts twice."""
    return dose.sets * dose.count * (2 if side == EACH else 1)


def easy_day(dose: Dose) -> Dose:
    """Return half the sets, rounded down but at least one, with no added load."""
    return replace(dose, sets=max(1, dose.sets // 2), load="")


def kilograms(load: str) -> float | None:
    """Return a weight in kilograms, None for a band or for no load."""
    found = _WEIGHT.fullmatch(load)
    if found is None:
        return None
    return float(found["number"]) * (KILOGRAMS_IN_A_POUND if found["unit"].lower() == "lb" else 1.0)


def load_step_percent(old: str, new: str) -> float | None:
    """Return by how many percent a weight is raised, None where the two cannot be compared."""
    before, after = kilograms(old), kilograms(new)
    if before is None or after is None or before == 0:
        return None
    return (after - before) / before * 100


def with_more_load(dose: Dose, load: str, frail: bool = False) -> tuple[Dose, bool]:
    """Return the dose with a raised load and its reps at the low end, and whether the step is over 10 %.

    The low end is 8 reps, 10 for frail people; fewer reps than that stay as they are, and seconds are kept.
    """
    low = LOW_END_REPS_FRAIL if frail else LOW_END_REPS
    reps = None if dose.reps is None else min(dose.reps, low)
    step = load_step_percent(dose.load, load)
    # A rounding error of the pound must not warn about a step of exactly ten percent.
    too_large = step is not None and step > LARGEST_LOAD_STEP_PERCENT + 1e-6
    return replace(dose, reps=reps, load=load), too_large


def raises(old: Dose, new: Dose) -> frozenset[str]:
    """Return what a change asks more of: any of `volume`, `load`, `less hand support`.

    A load that cannot be compared (a band, a first weight) counts as raised when it changes and is not taken away.
    """
    more = set()
    if old.unit != new.unit or new.sets * new.count > old.sets * old.count:
        more.add("volume")
    step = load_step_percent(old.load, new.load)
    if step > 0 if step is not None else bool(new.load and new.load != old.load):
        more.add("load")
    if new.hand_support and _help_of(new) > _help_of(old):
        more.add("less hand support")
    return frozenset(more)


def _help_of(dose: Dose) -> int:
    # Unsaid means that she holds on as the safety line tells her: with both hands.
    return HAND_SUPPORT.index(dose.hand_support) if dose.hand_support else 0


@dataclass(frozen=True)
class Rung:
    """One step of a ladder: a dose and the least number of days on it (1-84)."""

    dose: Dose
    days: int = DAYS_ON_A_RUNG

    def __post_init__(self) -> None:
        if not 1 <= self.days <= 84:
            raise ValueError(f"Days on a rung must be 1 to 84, not {self.days}.")


@dataclass(frozen=True)
class Ladder:
    """The rungs of one exercise, easiest first; all count reps or all count seconds."""

    rungs: tuple[Rung, ...]

    def __post_init__(self) -> None:
        if not 1 <= len(self.rungs) <= MOST_RUNGS:
            raise ValueError(f"A ladder has 1 to {MOST_RUNGS} rungs, not {len(self.rungs)}.")
        if len({rung.dose.unit for rung in self.rungs}) > 1:
            raise ValueError(
                "The rungs of one ladder count all in reps or all in seconds: write two exercises instead."
            )

    def at(self, rung: int) -> Rung:
        """Return a rung by its number from 0; past the top it is the top one."""
        return self.rungs[max(0, min(rung, len(self.rungs) - 1))]

    @property
    def unit(self) -> str:
        """`reps` or `seconds`."""
        return self.rungs[0].dose.unit


def ladder_of(*lines: str, days: int = DAYS_ON_A_RUNG) -> Ladder:
    """Return the ladder whose rungs are these lines."""
    return Ladder(tuple(Rung(read_dose(line), days) for line in lines))


def read_ladder(text: str, days: int = DAYS_ON_A_RUNG) -> Ladder:
    """Return the ladder that a text states, a rung a line or parted by ">" or "→"; raises ValueError."""
    lines = [line for line in re.split(r"[\n;>→]", text) if line.strip()]
    return ladder_of(*lines, days=days)


def default_ladder(unit: str) -> Ladder:
    """Return 1x10 → 2x10 → 3x10, or for seconds 10 → 20 → 30 in two sets: common practice, no source."""
    if unit == SECONDS:
        return ladder_of("2x10 sec", "2x20 sec", "2x30 sec")
    return ladder_of("1x10", "2x10", "3x10")


def step_up(ladder: Ladder, rung: int) -> int | None:
    """Return the next rung's number, None at the top."""
    return rung + 1 if rung + 1 < len(ladder.rungs) else None


def step_back(ladder: Ladder, rung: int) -> int | None:
    """Return the rung's number below, None on the first; a number past the top counts as the top."""
    at = min(rung, len(ladder.rungs) - 1)
    return at - 1 if at > 0 else None
