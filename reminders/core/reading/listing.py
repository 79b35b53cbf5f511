"""How the exercises named in a reply hang together: lists, and amounts told once for several names.

What each of them comes to is decided in `exercises.py` and `lines.py`.
"""

from collections.abc import Mapping, Sequence
from itertools import pairwise

from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.lines import Told
from reminders.core.reading.model import SessionExercise
from reminders.core.reading.patterns import COMMA, NAMED, NAMED_ON, QUESTION, SECONDS, STOP, USED
from reminders.core.reading.quantities import Amount, Numbers
from reminders.core.reading.session import Mention

_ENDS = STOP + QUESTION
_FAR = 12  # tokens between a name and the word of done or not done that closes it
_LEADS_FAR = 9  # tokens between a word and the name it leads on to
_MOST_SETS = 6
_SEVERAL = 2


def reaches(chars: str, start: int, end: int, lexicon: Lexicon, over_but: bool = False) -> bool:
    """Tell whether a word of done or not done closes the names before it: not over "but", nor over ", the rest"."""
    between = chars[start:end]
    return (
        len(between) <= _FAR
        and not any(char in _ENDS or (lexicon.is_in("BUT", char) and not over_but) for char in between)
        and not is_rest_told(chars, start, end, lexicon)
    )


def is_rest_told(chars: str, start: int, end: int, lexicon: Lexicon) -> bool:
    """Tell whether the rest is spoken of between a name and a word: "the balance, the rest I did"."""
    comma = chars.find(COMMA, start, end)
    return comma >= 0 and any(lexicon.is_in("REST", char) for char in chars[comma:end])


def is_place(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether the token before a name makes it a place: "during", "held on to"; not "I could with"."""
    before = chars[at - 1] if at > 0 else ""
    if lexicon.is_in("OF", chars[at] if at >= 0 else "") and lexicon.is_in("CAUGHT", before):
        return True
    if at < 0 or not lexicon.is_in("PLACEWORD", chars[at]):
        return False
    if lexicon.is_in("INTIME", chars[at]) and lexicon.is_in("FITTED", before):
        return False  # "squeezed in the rows"
    if lexicon.is_in("ATTEMPT", before):
        return False  # "took a stab at the rows"
    return not (lexicon.is_in("WITHWORD", chars[at]) and lexicon.is_in("DIDVERB", before))


def is_refused(chars: str, at: int, status: str, lexicon: Lexicon) -> bool:
    """Tell whether a place was not managed: "with the heels I could not"."""
    ends = chars[at + 1 : at + 2] in ("", COMMA, STOP)
    return status == "not" and ends and lexicon.is_in("DIDVERB", chars[at])


def leads_to(chars: str, start: int, end: int, lexicon: Lexicon) -> bool:
    """Tell whether only joining words stand between an amount and the name behind it: "3 sets on the band"."""
    return end - start <= 4 and all(lexicon.is_in("LEADS", char) for char in chars[start:end])


def governs(chars: str, start: int, end: int, lexicon: Lexicon) -> bool:
    """Tell whether a word of done or not done leads on to the names behind it."""
    between = chars[start:end]
    return len(between) <= _LEADS_FAR and all(
        char in (COMMA, NAMED, NAMED_ON, USED, SECONDS)
        or any(lexicon.is_in(concept, char) for concept in ("LEADS", "LISTING", "REP"))
        for char in between
    )


def faced(chars: str, at: int, way: str, lexicon: Lexicon) -> str:
    """Return which way a word faces: "no to the first two" leads on."""
    answers = lexicon.either("YES", "ANSWER_NO")
    return "before" if chars[at] in answers and lexicon.is_in("TO_SCALE", chars[at + 1 : at + 2]) else way


def closes_name(chars: str, words: Sequence[str], at: int, status: str, lexicon: Lexicon) -> bool:
    """Tell whether a word closes the name right before it: "carries no, side leg ok", "c) none d) none"."""
    if at > 1 and words[at - 1] in (")", ":") and chars[at - 2] in (NAMED, NAMED_ON):
        return True
    return chars[at - 1 : at] in (NAMED, NAMED_ON) and is_over(chars, at, status, lexicon)


def overrules(chars: str, told: Told, at: int, status: str, lexicon: Lexicon) -> bool:
    """Let a word right behind a name overrule what led to it: "did chair, heels no", "all but C, of that half"."""
    between = chars[told.mention.end : at]
    if status == "not" and told.status is None and is_rest_told(chars, told.mention.end, at, lexicon):
        if told.amount is None and not told.is_place:
            told.status = "done"  # "the wall, the rest I did not"
    elif status == "not" and told.status == "done" and _is_denial(between + chars[at], lexicon):
        told.status = status
    elif status == "part" and (told.status == "not" or (told.status == "done" and COMMA not in between)):
        if not reaches(chars, told.mention.end, at, lexicon):
            return False
        told.status = status
    else:
        return False
    return True


def _is_denial(chars: str, lexicon: Lexicon) -> bool:
    """Tell whether words are nothing but a denial, no "but" and no "except"."""
    first = chars[0]
    return (lexicon.is_in("NEGATOR", first) or lexicon.is_in("CLITIC", first)) and not any(
        char == COMMA or lexicon.is_in("BUT", char) or lexicon.is_in("EXCEPT", char) for char in chars
    )


def parts_lists(chars: str, earlier: Told, later: Told, lexicon: Lexicon) -> bool:
    """Tell whether a comma parts two lists, since "and" has closed the first: "B, C and D, the A I skipped"."""
    between = chars[earlier.mention.end : later.mention.start]
    if COMMA not in between or any(lexicon.is_in("JOINAND", char) for char in between):
        return False
    at = earlier.mention.start - 1
    while at >= 0 and not lexicon.is_in("JOINAND", chars[at]) and _is_small(chars[at], lexicon):
        at -= 1
    return at > 0 and lexicon.is_in("JOINAND", chars[at]) and chars[at - 1] in (NAMED, NAMED_ON, USED)


def is_over(chars: str, at: int, status: str, lexicon: Lexicon) -> bool:
    """Tell whether nothing, or no more than "and", follows a word right behind a name: "carries no, side leg ok"."""
    following = chars[at + 1 : at + 2]
    return following in ("", COMMA, *_ENDS) or (status == "not" and lexicon.is_in("JOINAND", following))


def is_refused_list(told: Sequence[Told], at: int, marks: Mapping[int, str], chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a name opens another list, which a denial closes: "did A and B, C and D I left"."""
    if not at or not parts_lists(chars, told[at - 1], told[at], lexicon):
        return False
    last = at
    while last + 1 < len(told) and _joined(chars, told[last], told[last + 1], lexicon):
        last += 1
    end = told[last].mention.end
    return any(marks.get(place) == "not" for place in range(end, end + 3))


def is_apart(chars: str, earlier: Told, later: Told, status: str, lexicon: Lexicon) -> bool:
    """Tell whether a word about the later name leaves the earlier one alone; a part is told of one name alone."""
    is_parted = COMMA in chars[earlier.mention.end : later.mention.start] or earlier.amount is not None
    is_parted = is_parted and status == "part"
    return is_parted or parts_lists(chars, earlier, later, lexicon)


def close_lists(told: Sequence[Told], chars: str, lexicon: Lexicon) -> None:
    """Names in a list closed before another one was told of are done: "B and C, the A no"."""
    for one, later in pairwise(told):
        if parts_lists(chars, one, later, lexicon) and one.status is None:
            for earlier in reversed([other for other in told if other.mention.end <= one.mention.end]):
                if earlier.status is not None or (earlier is not one and not _joined(chars, earlier, one, lexicon)):
                    break
                if earlier.amount is None and not earlier.is_place:
                    earlier.status = "done"


def close_before(told: Sequence[Told], chars: str, at: int, lexicon: Lexicon) -> None:
    """Names that "and" joins to a part of another one are done: "the rows and half the hinges"."""
    end = at
    for one in reversed([other for other in told if other.mention.end <= at]):
        between = chars[one.mention.end : end]
        is_told = one.status is not None or one.amount is not None or one.is_place
        if is_told or not all(char == COMMA or _is_small(char, lexicon) for char in between):
            break
        one.status, end = "done", one.mention.start


def closes(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a list of names ends here: at a stop, or at "but not" another one."""
    return (
        at == len(chars)
        or chars[at] in _ENDS
        or (lexicon.is_in("BUT", chars[at]) and chars[at + 1 : at + 2] in lexicon.either("NOT", "NO"))
    )


def _joined(chars: str, earlier: Told, later: Told, lexicon: Lexicon) -> bool:
    """Tell whether two names stand in one list, with nothing but names and small words between them."""
    between = chars[earlier.mention.end : later.mention.start]
    return all(char in (COMMA, NAMED, NAMED_ON) or _is_small(char, lexicon) for char in between)


def _is_small(char: str, lexicon: Lexicon) -> bool:
    """Tell whether a token only joins names."""
    return lexicon.is_in("LISTING", char) or lexicon.is_in("THE", char)


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
                if later.amount is not None or later.status or not _joined(chars, told[at], later, lexicon):
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
            if earlier.amount is not None or not _joined(chars, earlier, one, lexicon):
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
        while end + 1 < len(told) and _joined(chars, told[end], told[end + 1], lexicon):
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
        if not all(char == COMMA or _is_small(char, lexicon) for char in chars[start : amount.start]):
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
