"""One exercise's line: an amount against its prescription, sets or repetitions told apart, two lines made one.

Which amount belongs to which exercise is decided in `exercises.py`.
"""

from dataclasses import dataclass, field

from reminders.core.reading.model import ExerciseDone, SessionExercise
from reminders.core.reading.quantities import Amount
from reminders.core.reading.session import Mention


@dataclass(slots=True)
class Told:
    """What was told of one mention: an amount, a word of done or not done, or nothing."""

    mention: Mention
    amount: Amount | None = None
    status: str | None = None  # done, not, part
    is_listed: bool = False
    is_place: bool = False  # named as where something happened: "dizzy during the hinge"


@dataclass(slots=True)
class SessionTold:
    """What a reply says of the session."""

    by_exercise: tuple[ExerciseDone, ...] = ()
    sets: int | None = None
    reps: int | None = None
    amounts: list[Amount] = field(default_factory=list)  # those of no single exercise
    rest: str | None = None  # what became of the exercises not named
    spans: list[tuple[int, int]] = field(default_factory=list)
    by_word: frozenset[str] = frozenset()  # names of which a word of done or not done was said


def line_of(exercise: SessionExercise, amount: Amount) -> ExerciseDone:
    """Return the line of one exercise for an amount."""
    sets, reps = amount_of(amount, exercise)
    return ExerciseDone(exercise.name, sets, reps, completed_by(sets, reps, exercise, amount))


def line_told(told: Told, exercise: SessionExercise) -> ExerciseDone:
    """Return one exercise's line: its amount against the prescription, or the word said of it."""
    if told.status == "not" and told.amount is None:
        return ExerciseDone(exercise.name, None, None, "none")
    sets, reps = amount_of(told.amount, exercise)
    if told.status == "part":
        return ExerciseDone(exercise.name, sets, reps, "part")
    return ExerciseDone(exercise.name, sets, reps, completed_by(sets, reps, exercise, told.amount))


def merged(old: ExerciseDone, new: ExerciseDone) -> ExerciseDone:
    """Return two lines about one exercise as one; an amount says more than a word."""
    if new.sets is None and new.reps is None:
        return new if "part" in (new.completed,) else old
    return new


def is_uneven(one: Amount, two: Amount) -> bool:
    """Tell whether two whole amounts of one exercise differ."""
    return None not in (one.sets, one.reps, two.sets, two.reps) and (one.sets, one.reps) != (two.sets, two.reps)


def joined(one: Amount, two: Amount, sided: bool = False) -> Amount:
    """Return "2 sets" and "10 reps" as one amount; of two uneven sides what both have."""
    if sided and is_uneven(one, two):
        sets = one.sets if one.sets == two.sets else None
        return Amount(one.start, two.end, sets, one.reps if one.reps == two.reps and sets else None)
    if one.sets is not None and one.reps is None and two.sets is None:
        return Amount(one.start, two.end, one.sets, two.reps)
    if one.reps is not None and one.sets is None and two.reps is None and two.sets is not None:
        return Amount(one.start, two.end, two.sets, one.reps)
    return one


def amount_of(amount: Amount | None, exercise: SessionExercise) -> tuple[int | None, int | None]:
    """Return sets and repetitions; a lone number is sets up to the prescribed number of sets, else repetitions."""
    if amount is None or 0 in (amount.sets, amount.reps):
        return None, None
    if amount.kind == "of":  # "two of ten" is a dose, "8 of 10" and "4 of 10" how far somebody came
        is_dose = amount.sets is not None and amount.sets <= (exercise.sets or 0)
        return (amount.sets, None if exercise.seconds else amount.reps) if is_dose else (None, amount.sets)
    if amount.kind in ("beside", "times"):
        number = amount.reps if amount.reps is not None else amount.sets
        if number is None:
            return None, None
        if number <= (exercise.sets or 0) or exercise.seconds:
            return number, None
        return None, number
    if exercise.seconds:
        return amount.sets if amount.sets is not None else None, None
    return amount.sets, amount.reps


def completed_by(sets: int | None, reps: int | None, exercise: SessionExercise, amount: Amount | None) -> str:
    """Return all, part or none of an exercise by its amount; uneven sets fell short somewhere."""
    wanted_sets, wanted_reps = exercise.sets or 1, exercise.reps
    if amount is not None and 0 in (amount.sets, amount.reps):
        return "none"
    is_uneven = amount is not None and amount.kind == "pair" and amount.reps is None
    if amount is not None and amount.kind == "pair" and exercise.seconds and (amount.reps or 0) < exercise.seconds:
        is_uneven = True  # "10 sec and 10 sec" of 20
    if sets is None:
        wanted = (wanted_reps or 0) * (1 if amount is not None and amount.kind == "each" else wanted_sets)
        return "part" if reps is not None and reps < wanted else "all"
    if sets < wanted_sets:
        return "part"
    if reps is None:
        return "part" if is_uneven else "all"
    return "part" if wanted_reps and reps < wanted_reps else "all"
