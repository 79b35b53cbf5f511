"""What a claimed number becomes: an amount, a pain figure, a count, or nothing. Each taker serves roles of the rules of
`number_rules.py`, and answers whether it takes what a rule claims.
"""

from collections.abc import Callable

from reminders.core.reading.model import SCALE_TOP
from reminders.core.reading.pain_takers import hour, pain, pain_alone, pain_last, pain_of, pain_one, rated, sure_hour
from reminders.core.reading.quantities import Amount, Numbers
from reminders.core.reading.signatures import USED

Taker = Callable[[Numbers, int, int, list[int], list[float], int], bool]

_MOST_SETS = 6  # "10 x 2" is two sets of ten: nobody is given more sets than this
_FEWEST_REPS = 5
_MOST_REPS = 30
_WIDEST_RANGE = 3  # "3-4", "4-7": a wider one is no range of pain
_BARE = 4  # words of an answer that says nothing else


def _other(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    return True


def _second(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    numbers.seconds += zip(places, values, strict=True)
    return True


def _minute(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    numbers.has_minutes = True
    return True


def _sets_reps(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """Two sets of ten, either way round."""
    if len(values) == 1:  # "a set of 8"; "set 2" counts the sets themselves
        return values[0] < _FEWEST_REPS or _amount(numbers, start, end, 1, values[0])
    sets, reps = values[0], values[1]
    if sets > _MOST_SETS and reps <= _MOST_SETS:
        sets, reps = reps, sets
    return _amount(numbers, start, end, sets, reps)


def _lots(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "16 push-ups in two lots of 8": the first number is only the sum."""
    if values[0] != values[1] * values[2]:
        return False
    return _amount(numbers, start, end, values[1], values[2])


def _did_amount(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "Hice 2 de 10" is an amount, "hice 3 de 4" a count."""
    return values[1] >= _FEWEST_REPS and _sets_reps(numbers, start, end, places, values, exercises)


def _one_set(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "One single set of 8": both words are the one."""
    return _amount(numbers, start, end, 1, values[-1])


def _reps_sets(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    if values[0] == exercises and values[0] < _FEWEST_REPS and places[1] - places[0] > 1:
        numbers.counts.append((start, exercises, exercises))  # "all four, both sets"
        return _amount(numbers, places[1], end, values[1], None)
    return _amount(numbers, start, end, values[1], values[0])


def _first_sets(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "1 of 2 sets"."""
    return _amount(numbers, start, end, values[0], None)


def _invited_sets(
    numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int
) -> bool:
    """ "Y3, 1 set": the answer that reminders invite, and how many sets there were."""
    pain(numbers, start, end, places[:1], values[:1], exercises)
    return _amount(numbers, places[-1], end, values[-1], None)


def _sets_held(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "2 x 10 seconds"."""
    numbers.seconds.append((places[1], values[1]))
    return _amount(numbers, start, end, values[0], None)


def _sets_only(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    if values and values[0] > _MOST_SETS:
        return _amount(numbers, start, end, None, values[0], "each")  # "all x 10"
    return bool(values) and _amount(numbers, start, end, values[0], None)


def _of_each(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "Five of each" is repetitions, "two of each" sets."""
    if values[0] < _FEWEST_REPS:
        return _amount(numbers, start, end, values[0], None)
    return _amount(numbers, start, end, None, values[0], "each")


def _sets_last(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "I said 2 sets but it was 1": the last one holds."""
    return _amount(numbers, start, end, values[-1], None)


def _reps(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    return _amount(numbers, start, end, None, values[0])


def _amount(
    numbers: Numbers, start: int, end: int, sets: float | None, reps: float | None, kind: str = "amount"
) -> bool:
    """Keep an amount; a broken number is none."""
    if reps is None and sets is not None and sets != int(sets):
        numbers.counts.append((start, int(sets), int(sets) + 1))  # "one and a half sets": part of the session
    if any(value is not None and (value != int(value) or value > 999) for value in (sets, reps)):
        return False
    numbers.amounts.append(
        Amount(start, end, None if sets is None else int(sets), None if reps is None else int(reps), kind)
    )
    return True


def _x_count(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "Rows x3" is three sets, "rows x12" twelve repetitions."""
    sets = values[0] if values[0] < _FEWEST_REPS else None
    return _amount(numbers, start, end, sets, None if sets else values[0])


def _pair(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "10 and 10" is two sets of ten, "10 and 6" two uneven sets; small numbers are left alone."""
    is_rating = numbers.asks_pain and values[0] != values[-1] and len(numbers.signature) <= _BARE
    if min(values) < _FEWEST_REPS or is_rating:
        return False
    return _amount(numbers, start, end, 2, values[0] if values[0] == values[-1] else None, "pair")


def _list(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "10, 10, 8" is three sets."""
    if min(values) < _FEWEST_REPS:
        return False
    return _amount(numbers, start, end, len(values), values[0] if len(set(values)) == 1 else None, "pair")


def _de_amount(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "Dos de diez" is two sets of ten; alone after the pain question it is two out of ten."""
    sets, reps = values[0], values[1]
    if numbers.asks_pain and reps == SCALE_TOP:
        return pain(numbers, start, end, places[:1], values[:1], exercises)
    if sets > _MOST_SETS or not _FEWEST_REPS <= reps <= _MOST_REPS:
        return False
    return _amount(numbers, start, end, sets, reps)


def _not_number(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "2 sets, not 3": a number denied beside another one counts for nothing."""
    others = sum(char == USED for char in numbers.signature)
    return bool(others) and not numbers.asks_pain


def _not_amount(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "2x10 (not 1x10)": an amount denied or taken back counts for nothing, when another number stands beside it."""
    before, after = numbers.signature[:start], numbers.signature[end:]
    return any(char in numbers.numeric for char in before + after)


def _dash_amount(
    numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int
) -> bool:
    """ "2-10" is two sets of ten, or a date: too wide for a range of pain."""
    if numbers.asks_pain or values[1] - values[0] <= _WIDEST_RANGE:
        return False
    is_dose = values[0] <= _MOST_SETS and values[1] >= _FEWEST_REPS
    return _amount(numbers, start, end, values[0], values[1]) if is_dose else True


def _side_count(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "Left side 10 and 10, right side 10": repetitions, when as many were told of the other side."""
    return any(amount.reps == values[0] for amount in numbers.amounts)


def _ex_two(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "Hinge 2 10" is two sets of ten, "chair: 10, 10" two sets."""
    if values[0] <= _MOST_SETS and values[1] >= _FEWEST_REPS:
        return _amount(numbers, start, end, values[0], values[1])
    return _pair(numbers, start, end, places, values, exercises)


def _frac_sets(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "1/2 heel" is one of two sets, "12/12" two sets of twelve."""
    second = [numbers.second[at] or 0.0 for at in places]
    if values[0] >= _FEWEST_REPS:
        return _pair(numbers, start, end, places, [values[0], second[0]], exercises)
    return second[0] <= _MOST_SETS and _amount(numbers, start, end, values[0], None)


def _frac_all(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "Chair 10/10" is two sets of ten, "chair 3/10" its pain."""
    return values[0] == SCALE_TOP and _pair(numbers, start, end, places, [SCALE_TOP, SCALE_TOP], exercises)


def _count_of(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "3 of the 4" counts exercises when the session has four."""
    if len(values) < 2 or values[1] != exercises or values[0] > values[1]:
        return False
    numbers.counts.append((start, int(values[0]), exercises))
    return True


def _all_count(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "All four", "the four exercises", "3 exercises"."""
    if not 1 <= values[0] <= exercises:
        return False
    numbers.counts.append((start, int(values[0]), exercises))
    return True


def _beside_exercise(
    numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int
) -> bool:
    """A number beside an exercise: sets or repetitions, told apart by the prescription in `lines.py`."""
    if numbers.asks_pain:
        return False
    return _amount(numbers, start, end, None, values[0], "beside")


def _of_exercise(
    numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int
) -> bool:
    """ "3 of the 4 carries" counts within one exercise; "two of ten" may be two sets of ten, by the prescription."""
    if len(values) < 2 or values[0] > values[1]:
        return False
    is_dose = places[1] - places[0] == 2 and values[0] <= _MOST_SETS and values[1] >= _FEWEST_REPS
    if is_dose and not numbers.asks_pain:
        return _amount(numbers, start, end, values[0], values[1], "of")
    return _beside_exercise(numbers, start, end, places, values, exercises)


def _same(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "Ten, a rest and another ten" is two sets of ten."""
    return len(values) == 2 and values[0] == values[1] and _pair(numbers, start, end, places, values, exercises)


def _times(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    if values[0] > _MOST_SETS:
        return _amount(numbers, start, end, None, values[0], "times")
    return _amount(numbers, start, end, values[0], None, "times")


TAKERS: dict[str, Taker] = {
    "other": _other,
    "second": _second,
    "minute": _minute,
    "frac_pain": pain,
    "pain_of": pain_of,
    "pain_one": pain_one,
    "pain_first": pain_of,
    "pain_level": pain,
    "pain_alone": pain_alone,
    "pain_last": pain_last,
    "sets_reps": _sets_reps,
    "did_amount": _did_amount,
    "reps_sets": _reps_sets,
    "lots": _lots,
    "first_sets": _first_sets,
    "invited_sets": _invited_sets,
    "sets_held": _sets_held,
    "sets_only": _sets_only,
    "of_each": _of_each,
    "sets_last": _sets_last,
    "one_set": _one_set,
    "de_amount": _de_amount,
    "ex_two": _ex_two,
    "frac_sets": _frac_sets,
    "not_number": _not_number,
    "not_amount": _not_amount,
    "half_set": _other,  # "a set and a half" is part of the session and no whole number of sets
    "frac_all": _frac_all,
    "x_count": _x_count,
    "dash_amount": _dash_amount,
    "rated": rated,
    "hour": hour,
    "side_count": _side_count,
    "sure_hour": sure_hour,
    "sets": _sets_only,
    "reps": _reps,
    "pair": _pair,
    "paired": _pair,
    "list": _list,
    "count_of": _count_of,
    "all_count": _all_count,
    "ex_number": _beside_exercise,
    "number_ex": _beside_exercise,
    "times": _times,
    "of_ex": _of_exercise,
    "same": _same,
}
