"""What a number that speaks of pain becomes: a figure, or the note that it is off the scale."""

from reminders.core.reading.model import SCALE_TOP
from reminders.core.reading.quantities import Figure, Numbers
from reminders.core.reading.tokens import worst_whole


def pain(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """Pain figures; one off the scale is remembered as such and never kept."""
    for at, value in zip(places, values, strict=True):
        if value > SCALE_TOP:
            numbers.off_scale = True
        else:
            numbers.pains.append(Figure(at, worst_whole(value)))
    return True


def pain_of(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "3 out of 10", "3 or 4 out of 10": the last number is the scale."""
    return pain(numbers, start, end, places[:-1], values[:-1], exercises)


def pain_one(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "6 on a scale of 1 to 10": the first number alone."""
    return pain(numbers, start, end, places[:1], values[:1], exercises)


def pain_last(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "From 1 to 10, 3": the last number alone."""
    return pain(numbers, start, end, places[-1:], values[-1:], exercises)


def pain_alone(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "3 con 4" is a rating where one was asked for."""
    return numbers.asks_pain and pain(numbers, start, end, places, values, exercises)


def rated(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "Knee at 4", "call it a 4": pain when it fits the scale."""
    return max(values) <= SCALE_TOP and pain(numbers, start, end, places, values, exercises)


def hour(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "From 4" is an hour, unless a rating was asked for."""
    return not numbers.asks_pain


def sure_hour(numbers: Numbers, start: int, end: int, places: list[int], values: list[float], exercises: int) -> bool:
    """ "At 4" is an hour, unless a rating was asked for and no other number could be it."""
    others = any(char in numbers.numeric for at, char in enumerate(numbers.signature) if at not in places)
    return not numbers.asks_pain or others or bool(numbers.pains)
