"""How the exercises named in a reply hang together: lists, and amounts told once for several names.

What each of them comes to is decided in `exercises.py` and `lines.py`.
"""

from collections.abc import Mapping, Sequence
from itertools import pairwise

from reminders.core.reading.danger import Hits
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.lines import Told
from reminders.core.reading.signatures import COMMA, NAMED, NAMED_ON, QUESTION, SECONDS, STOP, USED

_ENDS = STOP + QUESTION
# Labels of words of done and not done: what they say, and which way they face.
_STATUS_LABELS = (
    ("ex.done", "done", "either"),
    ("ex.done_before", "done", "before"),
    ("ex.done_after", "done", "after"),
    ("ex.not", "not", "either"),
    ("ex.but", "not", "before"),
    ("ex.not_after", "not", "after"),
    ("ex.part", "part", "either"),
    ("ex.part_after", "part", "after"),
)
_FAR = 12  # tokens between a name and the word of done or not done that closes it
_SEVERAL = 2
_LEADS_FAR = 9  # tokens between a word and the name it leads on to


def status_marks(
    hits: Hits, told: Sequence[Told], chars: str, lexicon: Lexicon
) -> tuple[list[tuple[int, str, str]], dict[int, int]]:
    """Return the words of done and not done with their places and the way they face, and where each run of them begins.

    A run of several words stands at its last one.
    """
    marks: dict[int, tuple[str, str]] = {}
    for label, status, way in _STATUS_LABELS:
        for start, end in hits.get(label, ()):
            if label == "ex.but" and start and chars[start - 1] in _ENDS:
                continue  # "All done. But standing from the chair that last time"
            for at in range(start, end):
                if chars[at] not in (NAMED, NAMED_ON, *_ENDS):
                    marks[at] = (status, faced(chars, at, way, lexicon))
    runs: list[tuple[int, str, str]] = []
    starts: dict[int, int] = {}
    leads = marks_lead(told, chars, lexicon)
    for at in sorted(marks):
        status, way = marks[at]
        way = "before" if leads else way
        if runs and runs[-1][1] == "not" and repeats(chars, runs[-1][0], at, lexicon):
            status = "not"  # "left out the carry, and the lifts too"
        goes_on = bool(runs) and runs[-1][0] == at - 1
        adds = lexicon.is_in("JOIN", chars[at])  # "heels no nor chair"
        if goes_on and runs[-1][1] == status and not adds:
            way = way if runs[-1][2] == way else "either"
        elif not (goes_on and status == "part"):
            goes_on = False
        starts[at] = starts[runs.pop()[0]] if goes_on else at
        runs.append((at, status, way))
    return runs, starts


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


def stands_at(words: Sequence[str], chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a name stands behind "during", "on", "after" and the like."""
    at -= 1
    while at >= 0 and (any(lexicon.is_in(one, chars[at]) for one in ("THE", "THOSE")) or words[at] in lexicon.ordinals):
        at -= 1
    told = at
    while at >= 0 and any(lexicon.is_in(one, chars[at]) for one in ("DID", "I", "RELATIVE")):
        at -= 1
    if told != at and not (at >= 0 and lexicon.is_in("SINCE", chars[at])):
        at = told
    return is_place(chars, at, lexicon)


def is_refused(chars: str, at: int, status: str, way: str, lexicon: Lexicon) -> bool:
    """Tell whether a place was not managed: "with the heels I could not", "might fall on the carry so I left it"."""
    if status == "not" and way == "after":
        return True
    ends = chars[at + 1 : at + 2] in ("", COMMA, STOP)
    return status == "not" and ends and lexicon.is_in("DIDVERB", chars[at])


def leads_to(chars: str, start: int, end: int, lexicon: Lexicon) -> bool:
    """Tell whether only joining words stand between an amount and the name behind it: "3 sets on the band"."""
    return end - start <= 4 and all(lexicon.is_in("LEADS", char) for char in chars[start:end])


def governs(chars: str, start: int, end: int, lexicon: Lexicon) -> bool:
    """Tell whether a word of done or not done leads on to the names behind it."""
    between = _less_asides(chars[start:end], lexicon)
    return len(between) <= _LEADS_FAR and all(
        char in (COMMA, NAMED, NAMED_ON, USED, SECONDS)
        or any(lexicon.is_in(concept, char) for concept in ("LEADS", "LISTING", "REP", "SWEAR"))
        for char in between
    )


def _less_asides(chars: str, lexicon: Lexicon) -> str:
    """Return words less where something was done: "the wall ones on the trailer and calf raises"."""
    at = 0
    while at + 2 < len(chars):
        end = at + 1
        while end < len(chars) and (lexicon.is_in("THE", chars[end]) or lexicon.is_in("ART", chars[end])):
            end += 1
        is_joined = lexicon.is_in("PLACEWORD", chars[at]) and lexicon.is_in("JOINAND", chars[end + 1 : end + 2])
        if is_joined and chars[end] not in (COMMA, NAMED, NAMED_ON, USED, *_ENDS):
            chars = chars[:at] + chars[end + 1 :]
        at += 1
    return chars


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
    while at >= 0 and not lexicon.is_in("JOINAND", chars[at]) and is_small(chars[at], lexicon):
        at -= 1
    return at > 0 and lexicon.is_in("JOINAND", chars[at]) and chars[at - 1] in (NAMED, NAMED_ON, USED)


def is_over(chars: str, at: int, status: str, lexicon: Lexicon) -> bool:
    """Tell whether nothing, or no more than "and", follows a word right behind a name: "carries no, side leg ok"."""
    following = chars[at + 1 : at + 2]
    return following in ("", COMMA, *_ENDS) or (status == "not" and lexicon.is_in("JOINAND", following))


def is_refused_list(told: Sequence[Told], at: int, marks: Mapping[int, str], chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a name opens another list, which a denial closes: "did A and B, C and D I left"."""
    is_parted = bool(at) and parts_lists(chars, told[at - 1], told[at], lexicon)
    is_counted = (
        bool(at) and told[at - 1].amount is not None and told[at].amount is None
    )  # "A 2x10, and C and D I left"
    if not is_parted and not is_counted:
        return False
    last = at
    while last + 1 < len(told) and joined(chars, told[last], told[last + 1], lexicon):
        if not is_parted and COMMA in chars[told[last].mention.end : told[last + 1].mention.start]:
            break
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
                if earlier.status is not None or (earlier is not one and not joined(chars, earlier, one, lexicon)):
                    break
                if earlier.amount is None and not earlier.is_place:
                    earlier.status = "done"


def close_before(told: Sequence[Told], chars: str, at: int, lexicon: Lexicon) -> None:
    """Names that "and" joins to a part of another one are done: "the rows and half the hinges"."""
    end = at
    for one in reversed([other for other in told if other.mention.end <= at]):
        between = chars[one.mention.end : end]
        is_told = one.status is not None or one.amount is not None or one.is_place
        if is_told or not all(char == COMMA or is_small(char, lexicon) for char in between):
            break
        one.status, end = "done", one.mention.start


def closes(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a list of names ends here: at a stop, or at "but not" another one."""
    return (
        at == len(chars)
        or chars[at] in _ENDS
        or (lexicon.is_in("BUT", chars[at]) and chars[at + 1 : at + 2] in lexicon.either("NOT", "NO"))
    )


def marks_lead(told: Sequence[Told], chars: str, lexicon: Lexicon) -> bool:
    """Tell whether each name has its yes or no right before it, and none behind: "✅ rows ❌ carry"."""
    answers = lexicon.either("YES", "ANSWER_NO", "emojiyes", "emojino")
    if len(told) < _SEVERAL or chars[told[-1].mention.end : told[-1].mention.end + 1] in answers:
        return False
    return all(chars[one.mention.start - 1 : one.mention.start] in answers for one in told)


def repeats(chars: str, before: int, at: int, lexicon: Lexicon) -> bool:
    """Tell whether "too" says of a name what was said before in the sentence: "left out the carry, the lifts too"."""
    return (
        lexicon.is_in("ALSO", chars[at])
        and chars[at - 1] in (NAMED, NAMED_ON)
        and not set(_ENDS) & set(chars[before:at])
    )


def told_before(
    told: Sequence[Told], marks: Mapping[int, str], chars: str, low: int, high: int, words: Sequence[str]
) -> str | None:
    """Return what a sentence says of the list that ends it: "did three of the four: the rows, the hinges and the
    carries".
    """
    start = max(chars.rfind(end, 0, low) for end in _ENDS) + 1
    names = [one for one in told if low <= one.mention.start < high]
    said = {status for at, status in marks.items() if start <= at < low}
    others = any(start <= one.mention.start < low for one in told)
    if others or chars[low] != COMMA or len(said) != 1:
        return None
    status = said.pop()
    is_open = words[low] == ":" or (status == "done" and len(names) >= _SEVERAL)
    return status if is_open else None


def joined(chars: str, earlier: Told, later: Told, lexicon: Lexicon) -> bool:
    """Tell whether two names stand in one list, with nothing but names and small words between them."""
    between = chars[earlier.mention.end : later.mention.start]
    return all(char in (COMMA, NAMED, NAMED_ON) or is_small(char, lexicon) for char in between)


def is_small(char: str, lexicon: Lexicon) -> bool:
    """Tell whether a token only joins names."""
    return lexicon.is_in("LISTING", char) or lexicon.is_in("THE", char)
