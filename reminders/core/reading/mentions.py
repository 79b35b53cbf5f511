"""Which exercises a reply names: by name, by letter, by place in the list; weak names only in company.

What the reply says of them is decided in `exercises.py`.
"""

from collections.abc import Sequence

from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.model import SessionExercise
from reminders.core.reading.patterns import COMMA, NAMED, NAMED_ON, QUESTION, STOP
from reminders.core.reading.session import Mention
from reminders.core.reading.tokens import Text

_TIMES = ("TIMEUNIT", "WEEKDAY", "DAYPART", "PASTSPAN", "TIMES")


def mark_mentions(text: Text, mentions: list[Mention], lexicon: Lexicon) -> str:
    """Return the signature with the named exercises marked; in "rows? done" the question is no question."""
    chars = list(text.signature)
    for mention in mentions:
        chars[mention.start] = NAMED
        for at in range(mention.start + 1, mention.end):
            chars[at] = NAMED_ON
        end = mention.end
        if end + 1 < len(chars) and chars[end] == QUESTION and lexicon.is_in("STATUS", chars[end + 1]):
            chars[end] = COMMA
    return "".join(chars)


def settle_mentions(mentions: list[Mention], text: Text, lexicon: Lexicon) -> list[Mention]:
    """Leave out weak names that stand alone: "is it ok to hold a chair" names no exercise."""
    chars = text.signature
    parts = [at for at, char in enumerate(chars) if lexicon.is_in("BODY", char) and _rated(at, chars, lexicon)]
    strong = {k for mention in mentions if not mention.weak for k in (mention.start, mention.end)}
    kept: list[Mention] = []
    for mention in mentions:
        if _is_rated_alone(mention, mentions, chars, lexicon):
            continue
        if not mention.weak:
            kept.append(mention)
            continue
        if _is_one_side(mention, chars, lexicon) or (len(parts) > 1 and mention.start in parts):
            continue
        before = chars[mention.start - 1] if mention.start else STOP
        if mention.start == 2 and lexicon.is_in("YESKEY", chars[0]) and lexicon.is_in("SMALL", before):
            continue  # "Y5 hip"
        if lexicon.is_in("POSTURE", chars[mention.start]) and lexicon.is_in(
            "SMALL", chars[mention.start - 1 :][:1] or STOP
        ):
            continue  # "5 sitting, 3 standing"
        is_body = mention.end - mention.start == 1 and lexicon.is_in("BODY", chars[mention.start])
        described = is_body and lexicon.is_in("DESCRIBED", chars[mention.end : mention.end + 1] or STOP)
        company = not described and _has_company(mention, chars, lexicon)
        if not company and (strong or len(mentions) > 1):
            neighbours = [other for other in mentions if other is not mention]
            company = any(_is_beside(mention, other, chars, lexicon) for other in neighbours)
        if company and not (lexicon.is_in("BODY", chars[mention.start]) and _is_about_body(mention, chars, lexicon)):
            kept.append(mention)
    return kept


def _rated(at: int, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a number stands right behind a word: "hip: 4, back: 2" are ratings when both are body parts."""
    after = at + 2 if chars[at + 1 : at + 2] == COMMA else at + 1
    return after < len(chars) and lexicon.is_in("SMALL", chars[after]) and not _is_unit(chars, after + 1, lexicon)


def _is_rated_alone(mention: Mention, mentions: list[Mention], chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a name that is also a body part has a rating behind it and is named alone:
    "hip a 3", but not "rows 3, hip 2".
    """
    if mention.end - mention.start > 1 or not lexicon.is_in("BODY", chars[mention.start]):
        return False
    others = [
        other
        for other in mentions
        if other is not mention and (_counted(other, chars, lexicon) or _is_beside(mention, other, chars, lexicon))
    ]
    left = _unfilled(chars, mention.end, lexicon)
    after = left[mention.end + 1 : mention.end + 2]
    ends = after in ("", COMMA, STOP) or any(lexicon.is_in(one, after) for one in ("NOWISH", "ATMOVE", "IN_BODY"))
    return not others and ends and _rated(mention.end - 1, left, lexicon)


def _counted(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a number stands at a name: then the numbers of the reply are amounts."""
    around = chars[max(0, mention.start - 2) : mention.start] + chars[mention.end : mention.end + 2]
    return any(lexicon.is_in("#", char) for char in around)


def _unfilled(chars: str, start: int, lexicon: Lexicon) -> str:
    """Return a signature without the small words that stand at a place."""
    end = start
    while end < len(chars) and lexicon.is_in("FILL", chars[end]) and not lexicon.is_in("#", chars[end]):
        end += 1
    return chars[:start] + chars[end:]


def _is_one_side(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a name that is also a body part has its side before it: "left side only"."""
    at = mention.start
    return at > 0 and lexicon.is_in("SIDEDET", chars[at - 1]) and lexicon.is_in("BODY", chars[at])


def _has_company(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether an amount or a word of done or not done stands beside a weak name."""
    at = mention.end
    if at < len(chars) and lexicon.is_in("ONE_OR_PART", chars[at]):
        return True
    while at < len(chars) and (chars[at] == COMMA or lexicon.is_in("LISTING", chars[at])):
        at += 1
    if at < len(chars) and (lexicon.is_in("#", chars[at]) or lexicon.is_in("STATUS", chars[at])):
        return True
    at = mention.start - 1
    while at >= max(0, mention.start - 4) and lexicon.is_in("LEADS", chars[at]):
        at -= 1
    if at < 0:
        return False
    return any(lexicon.is_in(concept, chars[at]) for concept in ("#", "STATUS_BEFORE", "SET", "REP"))


def _is_about_body(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a weak name that is also a body part is meant as the body: "my hip hurts", "heel 3"."""
    around = chars[max(0, mention.start - 2) : mention.start] + chars[mention.end : mention.end + 2]
    return any(lexicon.is_in("PAINISH", char) or lexicon.is_in("MY", char) for char in around)


def _is_beside(one: Mention, other: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether two names stand in one list."""
    low, high = (one.end, other.start) if one.start < other.start else (other.end, one.start)
    between = chars[low:high]
    return len(between) <= 4 and all(
        char == COMMA or lexicon.is_in("LISTING", char) or lexicon.is_in("STATUS", char) for char in between
    )


def letter_mentions(text: Text, session: Sequence[SessionExercise], lexicon: Lexicon) -> list[Mention]:
    """Return exercises named by letter ("A yes B yes C no"): letters in a row, or one beside a word of done or not."""
    letters = {exercise.letter.lower(): at for at, exercise in enumerate(session)}
    places = [at for at, word in enumerate(text.raw) if word in letters]
    if not places:
        return []
    sure = {text.raw[at] for at in places if text.raw[at] not in lexicon.letter_words}
    chars = text.signature
    kept: list[Mention] = []
    for at in places:
        if at + 2 in places and any(lexicon.is_in(one, chars[at + 1]) for one in ("THRU", "TO_SCALE")):  # "A thru C"
            low, high = letters[text.raw[at]], letters[text.raw[at + 2]]
            kept += [Mention(at, at + 3, one, False) for one in range(low, high + 1)]
            continue
        if kept and kept[-1].end > at:
            continue
        after = chars[at + 1] if at + 1 < len(chars) else STOP
        before = chars[at - 1] if at else STOP
        certain = text.raw[at] not in lexicon.letter_words
        telling = after in STOP + COMMA or any(
            lexicon.is_in(one, after) for one in ("STATUS", "LISTING", "#", "WASWORD")
        )
        telling = telling or lexicon.is_in("STATUS_BEFORE", before) or at + 1 in places  # "A B C yes"
        opens = before in STOP + COMMA or lexicon.is_in("STATUS_BEFORE", before) or lexicon.is_in("JOIN", before)
        if not certain and not opens and lexicon.is_in("#", after):
            continue  # "about a 4"
        is_last = at == len(chars) - 1 or lexicon.is_in("TODAY", after)
        if at and is_last and lexicon.is_in("STATUS_BEFORE", before):
            return [*kept, Mention(at, at + 1, letters[text.raw[at]], False)]  # "all except A"
        if (certain and len(sure) > 1) or (telling and (certain or sure)):
            kept.append(Mention(at, at + 1, letters[text.raw[at]], False))
    is_sure = any(one.end > one.start + 1 or text.raw[one.start] not in lexicon.letter_words for one in kept)
    return kept if is_sure else []


def place_mentions(text: Text, count: int, lexicon: Lexicon) -> list[Mention]:
    """Return exercises named by their place: "the first one", "the last two", "#3", "1, 2 and 4"."""
    found: list[Mention] = []
    if lexicon.ordinals.keys().isdisjoint(text.words) and not _may_list(text, lexicon):
        return found
    if _counts_rounds(text, lexicon):
        return found
    ordinals, signs = lexicon.ordinals, lexicon.chars("ITEMSIGN")
    at = 0
    while at < len(text.words):
        if text.values[at] is None and text.words[at] not in ordinals and text.signature[at] not in signs:
            at += 1
            continue
        places, end = _places_at(text, at, count, lexicon)
        found += [Mention(at, end, place, False) for place in places]
        at = max(end, at + 1)
    return found + _left_over(text, found, count, lexicon)


def _left_over(text: Text, found: list[Mention], count: int, lexicon: Lexicon) -> list[Mention]:
    """Return the one number told beside several places: "did 1, 2 and 4. Not 3"."""
    named = {at for one in found for at in range(one.start, one.end)}
    places, chars = {one.exercise for one in found}, text.signature
    rest = [at for at in range(1, len(chars)) if text.raw[at].isdigit() and at not in named]
    if len(places) < 2 or len(rest) != 1:
        return []
    at, number = rest[0], text.values[rest[0]] or 0
    is_told = lexicon.is_in("STATUS_BEFORE", chars[at - 1]) and chars[at + 1 : at + 2] in ("", STOP, COMMA)
    return [Mention(at, at + 1, int(number) - 1, False)] if is_told and 1 <= number <= count else []


def _counts_rounds(text: Text, lexicon: Lexicon) -> bool:
    """Tell whether an ordinal counts rounds: "the first round yes, the second no"."""
    words, chars = text.words, text.signature
    return any(words[at] in lexicon.ordinals and lexicon.is_in("SET", chars[at + 1]) for at in range(len(words) - 1))


def _may_list(text: Text, lexicon: Lexicon) -> bool:
    """Tell whether a text could name places by number."""
    return not lexicon.chars("ITEMSIGN").isdisjoint(text.signature) or sum(map(str.isdigit, text.raw)) > 1


def _places_at(text: Text, at: int, count: int, lexicon: Lexicon) -> tuple[list[int], int]:
    """Return the places that one token begins to name, and where their words end."""
    chars, word = text.signature, text.words[at]
    place = lexicon.ordinals.get(word)
    following = chars[at + 1] if at + 1 < len(chars) else STOP
    if place is not None and lexicon.is_in("HALFWORD", following):
        return [], at  # "the first half"
    ordinal = lexicon.ordinals.get(text.words[at + 1]) if at + 1 < len(chars) else None
    first = text.values[at]
    timed = any(lexicon.is_in(one, chars[at + 2 : at + 3] or STOP) for one in _TIMES)  # "it was 2 last week"
    if ordinal in (1, -1) and first is not None and 1 < first < count and not timed:  # "los dos últimos"
        size = int(first)
        return (list(range(count - size, count)) if ordinal < 0 else list(range(size))), at + 2
    if place is not None and not (at and lexicon.is_in("EVERYWORD", chars[at - 1])):  # not "every last one"
        number = text.values[at + 1] if at + 1 < len(chars) else None
        if number is not None and 1 < number < count and not _is_unit(chars, at + 2, lexicon):
            size = int(number)
            return (list(range(count - size, count)) if place < 0 else list(range(size))), at + 2
        if (
            lexicon.is_in("ONE_OR_PART", following)
            or following in STOP + COMMA
            or lexicon.is_in("STATUS", following)
            or _is_left_out(chars, at, lexicon)
        ) and (-1 <= place <= count):
            end = at + 2 if lexicon.is_in("ONE_OR_PART", following) else at + 1
            return [count - 1 if place < 0 else place - 1], end
    about_pain = at and lexicon.is_in("PAINISH", chars[at - 1])
    if lexicon.is_in("ITEMSIGN", chars[at]) and at + 1 < len(chars) and not about_pain:
        number_at = at + 1 + (chars[at + 1] == STOP and at + 2 < len(chars))  # "ex. 2"
        number = text.values[number_at]
        if number is not None and 1 <= number <= count and not _is_unit(chars, number_at + 1, lexicon):
            return [int(number) - 1], number_at + 1
    return _listed_places(text, at, count, lexicon)


def _is_left_out(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether an article and a word for "except" stand before: "todos menos el último"."""
    return at > 1 and lexicon.is_in("THE", chars[at - 1]) and lexicon.is_in("EXCEPT", chars[at - 2])


def _is_unit(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a word for sets, repetitions or time stands at a place."""
    return at < len(chars) and any(
        lexicon.is_in(concept, chars[at]) for concept in ("SET", "REP", "X", "SEC", "TIMEUNIT", "MEASURE_AFTER")
    )


def _listed_places(text: Text, at: int, count: int, lexicon: Lexicon) -> tuple[list[int], int]:
    """Return "1, 2 and 4" as places: three or more different numbers in rising order."""
    numbers: list[int] = []
    here = at
    while here < len(text.words):
        value = text.values[here]
        if (
            value is None
            or not text.raw[here].isdigit()
            or not 1 <= value <= count
            or (numbers and value <= numbers[-1])
        ):
            break
        numbers.append(int(value))
        here += 1
        while here < len(text.words) and (
            text.signature[here] == COMMA or lexicon.is_in("JOINAND", text.signature[here])
        ):
            here += 1
    if len(numbers) == 1 and _is_range(text, here, numbers[0], count, lexicon):
        return list(range(numbers[0] - 1, int(text.values[here + 1] or 0))), here + 2
    told = at > 0 and lexicon.is_in("STATUS_BEFORE", text.signature[at - 1])
    if len(numbers) < (2 if told else 3) or _is_unit(text.signature, here, lexicon):
        return [], at
    return [number - 1 for number in numbers], here


def _is_range(text: Text, at: int, low: int, count: int, lexicon: Lexicon) -> bool:
    """Tell whether a number goes on to another one: "did 2 thru 4"."""
    if at + 1 >= len(text.words) or not lexicon.is_in("THRU", text.signature[at]):
        return False
    high = text.values[at + 1]
    return high is not None and low < high <= count and not _is_unit(text.signature, at + 2, lexicon)
