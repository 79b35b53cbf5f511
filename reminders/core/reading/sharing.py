"""Amounts told once for several exercises, or in a row behind several names: which name gets which.

Which exercises were named, and how they hang together, is told in `listing.py`.
"""

from collections.abc import Sequence

from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.lines import Told
from reminders.core.reading.listing import is_small, joined, leads_to
from reminders.core.reading.model import SessionExercise
from reminders.core.reading.quantities import Amount, Numbers
from reminders.core.reading.session import Mention
from reminders.core.reading.signatures import COMMA, QUESTION, SECONDS, STOP

_ENDS = STOP + QUESTION
_MOST_SETS = 6
_SEVERAL = 2


def in_order(numbers: Numbers, mentions: Sequence[Mention], session: Sequence[SessionExercise]) -> list[Told]:
    """Return the prescription told dose by dose, with another exercise named after it: "2x10 2x8 2x12 and balance"."""
    doses = sorted((one for one in numbers.amounts if one.reps is not None), key=lambda one: one.start)
    wanted = [(one.sets, one.reps) for one in session[: len(doses)]]
    told = [(one.sets, one.reps) for one in doses]
    if not 1 < len(doses) < len(session) or told != wanted or len(set(told)) < len(told):
        return []
    if not mentions or any(mention.start < doses[-1].end or mention.exercise < len(doses) for mention in mentions):
        return []
    return [Told(Mention(one.start, one.end, at, False), one) for at, one in enumerate(doses)]


def close_doses(told: Sequence[Told], doses: int, chars: str, lexicon: Lexicon) -> None:
    """A name right behind the doses told in order is done as well: "2x10 2x8 2x12 and balance"."""
    if doses and leads_to(chars, told[doses - 1].mention.end, told[doses].mention.start, lexicon):
        told[doses].status = "done"


def share_amounts(told: Sequence[Told], chars: str, lexicon: Lexicon) -> None:
    """Give an amount told for each of a list, or behind the whole list, to all of it: "chair and wall 2x8 each"."""
    for at, one in enumerate(told):
        amount = one.amount
        if amount is not None and amount.end <= one.mention.start and _is_each(chars, amount, lexicon):
            for later in told[at + 1 :]:  # "1 set each of chair, wall, heels"
                if later.amount is not None or later.status or not joined(chars, told[at], later, lexicon):
                    break
                later.amount = amount
        if not at or amount is None or amount.start < one.mention.end:
            continue
        between = chars[told[at - 1].mention.end : one.mention.start]
        is_list = any(lexicon.is_in("JOINAND", char) for char in between)
        aside = is_list and (chars[one.mention.end : amount.start] == COMMA or amount.reps is None)
        if not aside and not _is_each(chars, amount, lexicon):
            continue
        for earlier in reversed(told[:at]):
            if earlier.amount is not None or not joined(chars, earlier, one, lexicon):
                break
            earlier.amount = amount


def _is_each(chars: str, amount: Amount, lexicon: Lexicon) -> bool:
    """Tell whether an amount is one for each exercise, not for each side."""
    for at in range(amount.start, min(amount.end + 2, len(chars))):
        if lexicon.is_in("EACHWORD", chars[at]):
            return not any(lexicon.is_in(side, chars[at + 1 : at + 2]) for side in ("SIDEWORD", "LIMB"))
    return False


def respectively(told: Sequence[Told], amounts: Sequence[Amount], chars: str, lexicon: Lexicon) -> None:
    """Give amounts listed right behind as many names to the names in turn: "chair and wall 2x10 and 2x8"."""
    doses = [one for one in amounts if one.kind == "amount" and one.reps is not None]
    at = 0
    while at < len(told):
        end = at
        while end + 1 < len(told) and joined(chars, told[end], told[end + 1], lexicon):
            end += 1
        names = told[at : end + 1]
        behind = [one for one in doses if one.start >= names[-1].mention.end][: len(names)]
        if len(names) > 1 and len(behind) == len(names) and _in_a_row(names[-1].mention.end, behind, chars, lexicon):
            follows = told[end + 1].mention.start if end + 1 < len(told) else len(chars)
            if behind[-1].end <= follows:
                for one, amount in zip(names, behind, strict=True):
                    one.amount = amount
        at = end + 1


def _in_a_row(start: int, amounts: Sequence[Amount], chars: str, lexicon: Lexicon) -> bool:
    """Tell whether nothing but joining words stands before and between amounts."""
    for amount in amounts:
        if not all(char == COMMA or is_small(char, lexicon) for char in chars[start : amount.start]):
            return False
        start = amount.end
    return True


def in_turn(told: Sequence[Told], free: list[Amount]) -> list[Amount]:
    """Give as many amounts as names were listed to the names in turn: "chair and heels. 2x10 and 2x12"."""
    real = [one for one in free if one.kind == "amount" and one.reps is not None]
    done = [one for one in told if one.status == "done"]
    fits = 1 < len(real) == len(free) == len(done) == len(told)
    if not fits or any(one.amount is not None or one.mention.start > real[0].start for one in done):
        return free
    for one, amount in zip(done, real, strict=True):
        one.amount = amount
    return []


def is_for_all(amount: Amount, told: Sequence[Told], chars: str, lexicon: Lexicon) -> bool:
    """Tell whether sets at the very end count for all names before: "10 of the chair and 8 of the wall, one set"."""
    end = amount.end + lexicon.is_in("ONLY", chars[amount.end : amount.end + 1])
    is_last = chars[amount.start - 1 : amount.start] == COMMA and (chars[end : end + 1] or STOP) in _ENDS + COMMA
    is_last = is_last and amount.start > max(one.mention.end for one in told) if told else False
    if not is_last or amount.sets is None or amount.reps is not None or len(told) < _SEVERAL:
        return False
    counted = [one.amount for one in told if one.amount is not None]
    shared = bool(counted) and counted[0].end <= told[0].mention.start
    return all(one.sets is None for one in counted) and (len(counted) == len(told) or (len(counted) == 1 and shared))


def _is_for_list(told: Sequence[Told], free: list[Amount], chars: str) -> bool:
    """Tell whether sets told first count for the list behind them: "two sets of each: row, hinge, carry"."""
    if len(free) != 1 or len(told) < _SEVERAL or free[0].reps is not None or free[0].sets is None:
        return False
    is_plain = all(one.amount is None and one.status in (None, "done") and not one.is_place for one in told)
    first = min(one.mention.start for one in told)
    return is_plain and free[0].end < first and chars[first - 1] == COMMA and not set(_ENDS) & set(chars[:first])


def spread_sets(told: Sequence[Told], free: list[Amount], chars: str) -> list[Amount]:
    """Give sets told once to all repetitions: "chair 10, wall 8, heels 12, all of it twice"; return what is left."""
    counted = [one for one in told if one.amount is not None]
    if _is_for_list(told, free, chars):
        for one in told:
            one.amount = free[0]
        return []
    if len(free) != 1 or free[0].sets is None or free[0].reps is not None or len(counted) < 2:
        return free
    sets = free[0].sets
    if sets > _MOST_SETS or any(one.amount is None or one.amount.sets is not None for one in counted):
        return free
    for one in told:
        if one.amount is not None:
            one.amount = Amount(one.amount.start, one.amount.end, sets, one.amount.reps)
        elif one.status is None and SECONDS in chars[one.mention.end : one.mention.end + 3]:
            one.amount = Amount(free[0].start, free[0].end, sets, None)
    return []
