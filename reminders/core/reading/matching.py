"""Finds where a rule holds without a regular expression: slower a try, but nothing needs to be made of the rule first.

Most rules of a language are met by few texts in the life of a process, and making an expression costs more than a
hundred tries of this. `patterns.py` makes one for a rule that is met often; both find the same places.
"""

from collections.abc import Sequence

from reminders.core.reading.signatures import NO_WORD

# What one step asks of a text.
ONE = 0  # one word of the set
MANY = 1  # from the fewest to the most words of the set, as many as there are
FEW = 2  # words that are not of the set, as few as will do
AHEAD = 3  # the next word is of the set
NOT_AHEAD = 4  # the next word is not of the set, or there is none
BEHIND = 5  # the word before is of the set
FIRST = 6  # the text begins here
LAST = 7  # nothing is left but pauses
OTHER = 8  # one word that is not of the set
ONE_OR_LAST = 9  # one word of the set, or nothing is left but pauses
AHEAD_OR_LAST = 10  # the next word is of the set, or nothing is left but pauses
NOT_AHEAD_NOR_LAST = 11  # neither
MANY_OTHERS = 12  # words that are not of the set, as many as there are
_SEVERAL, _LASTS = (MANY, FEW, MANY_OTHERS), (LAST, ONE_OR_LAST)
Step = tuple[int, frozenset[str], int, int]  # what is asked, the words' signatures, the fewest, the most


def places(steps: Sequence[Step], text: str, first_only: bool) -> list[tuple[int, int]]:
    """Return the spans (from, to) at which all steps hold one after another, none overlapping, rising."""
    found: list[tuple[int, int]] = []
    kind, members = steps[0][:2]
    last = 0 if kind == FIRST else len(text)
    at = 0
    while at <= last:
        if kind != ONE or text[at : at + 1] in members:
            end = _end(steps, text, 0, at)
            if end >= 0:
                found.append((at, end))
                if first_only:
                    break
                if end > at:
                    at = end
                    continue
        at += 1
    return found


def _end(steps: Sequence[Step], text: str, first: int, at: int) -> int:
    """Return where the steps from one on end when they hold from a place, -1 when they do not."""
    for number in range(first, len(steps)):
        kind, members = steps[number][:2]
        char = text[at : at + 1]
        if kind == ONE:
            if char not in members:
                return -1
            at += 1
        elif kind in _SEVERAL:
            return _of_several(steps, text, number, at)
        elif kind == OTHER:
            if not char or char in members:
                return -1
            at += 1
        elif kind in _LASTS:
            if kind == ONE_OR_LAST and char in members:
                end = _end(steps, text, number + 1, at + 1)
                if end >= 0:
                    return end
            if text[at:].strip(NO_WORD):
                return -1
            at = len(text)
        elif not _is_seen(kind, members, text, at):
            return -1
    return at


def _is_seen(kind: int, members: frozenset[str], text: str, at: int) -> bool:
    """Tell whether a step that takes no word holds at a place."""
    if kind == AHEAD:
        return text[at : at + 1] in members
    if kind == NOT_AHEAD:
        return text[at : at + 1] not in members
    if kind == BEHIND:
        return at > 0 and text[at - 1] in members
    if kind == FIRST:
        return at == 0
    is_there = text[at : at + 1] in members or not text[at:].strip(NO_WORD)
    return is_there is (kind == AHEAD_OR_LAST)


def _of_several(steps: Sequence[Step], text: str, number: int, at: int) -> int:
    """Return the same from a step that may take more words or fewer, the number it prefers first."""
    kind, members, low, high = steps[number]
    is_wanted = kind == MANY
    most = at
    while most - at < high and most < len(text) and (text[most] in members) is is_wanted:
        most += 1
    numbers = range(at + low, most + 1) if kind == FEW else range(most, at + low - 1, -1)
    for place in numbers:
        end = _end(steps, text, number + 1, place)
        if end >= 0:
            return end
    return -1
