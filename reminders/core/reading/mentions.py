"""Which exercises a reply names, by name or by letter; weak names only in company.

What the reply says of them is decided in `exercises.py`.
"""

from reminders.core.reading.company import has_company
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.session import Mention, is_felt_in, is_felt_while, is_movement, is_new_gear
from reminders.core.reading.signatures import COMMA, NAMED, NAMED_ON, QUESTION, STOP
from reminders.core.reading.tokens import Text


def mark_mentions(text: Text, mentions: list[Mention], lexicon: Lexicon) -> str:
    """Return the signature with the named exercises marked; in "rows? done" the question is no question."""
    if not mentions:
        return text.signature
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
    if not mentions:
        return []
    mentions = [_less_count(mention, text, lexicon) for mention in mentions]
    chars, body = text.signature, lexicon.chars("BODY")
    parts = [at for at, char in enumerate(chars) if char in body and _rated(at, chars, lexicon)]
    strong = {k for mention in mentions if not mention.weak for k in (mention.start, mention.end)}
    kept: list[Mention] = []
    for mention in mentions:
        if _is_rated_alone(mention, mentions, chars, lexicon) or _is_other_thing(mention, chars, lexicon):
            continue
        if is_felt_while(text.words, chars, mention.start, lexicon):
            continue
        if not mention.weak:
            kept.append(mention)
            continue
        if _is_one_side(mention, chars, lexicon) or (len(parts) > 1 and mention.start in parts):
            continue
        if _is_key_with_place(chars[: mention.start], lexicon):
            continue
        if lexicon.is_in("POSTURE", chars[mention.start]) and lexicon.is_in(
            "SMALL", chars[mention.start - 1 :][:1] or STOP
        ):
            continue  # "5 sitting, 3 standing"
        is_body = mention.end - mention.start == 1 and lexicon.is_in("BODY", chars[mention.start])
        after = chars[mention.end : mention.end + 1] or STOP
        is_led = lexicon.is_in("NO", chars[mention.start - 1 : mention.start]) and lexicon.is_in("TODAY", after)
        described = is_body and not is_led and lexicon.is_in("DESCRIBED", after)  # but "no hips today"
        if is_body and is_felt_in(chars, mention.start, lexicon):
            continue
        company = not described and has_company(mention, chars, lexicon)
        company = company or (len(mentions) > 2 and text.words[mention.end : mention.end + 1] == [":"])
        if not company and (strong or len(mentions) > 1):
            company = any(other is not mention and _is_beside(mention, other, chars, lexicon) for other in mentions)
        if company and not (lexicon.is_in("BODY", chars[mention.start]) and _is_about_body(mention, chars, lexicon)):
            kept.append(mention)
    return kept


def _less_count(mention: Mention, text: Text, lexicon: Lexicon) -> Mention:
    """Return a name without the number that counts what follows: "heels one set", not "the heel one"."""
    last = mention.end - 1
    counts = (
        last > mention.start and text.values[last] is not None and lexicon.is_in("SET", text.signature[last + 1 :][:1])
    )
    return Mention(mention.start, last, mention.exercise, mention.weak) if counts else mention


def _rated(at: int, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a number stands right behind a word: "hip: 4, back: 2" are ratings when both are body parts."""
    after = at + 2 if chars[at + 1 : at + 2] == COMMA else at + 1
    return after < len(chars) and lexicon.is_in("SMALL", chars[after]) and not is_unit(chars, after + 1, lexicon)


def _is_key_with_place(led: str, lexicon: Lexicon) -> bool:
    """Tell whether what leads to a name is a yes and its rating: "Y5 hip", "y 5 in the hip"."""
    if not 2 <= len(led) <= 4 or not (lexicon.is_in("YESKEY", led[0]) and lexicon.is_in("SMALL", led[1])):
        return False
    return all(lexicon.is_in("IN_BODY", char) or lexicon.is_in("THE", char) for char in led[2:])


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
    second = left[mention.end + 2 : mention.end + 3]
    if lexicon.is_in("DE", after) and lexicon.is_in("#", second) and not lexicon.is_in("TEN", second):
        return False  # "talones dos de doce"
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


def _is_other_thing(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a name is a thing, a movement or "sets": "left my band", "cannot bend", "2 sts of 10"."""
    at, after = mention.start, chars[mention.end : mention.end + 1] or STOP
    if mention.end - at > 1 or not at:
        return False
    before = chars[at - 1]
    if is_movement(chars, at, after, lexicon) or is_new_gear(chars, at, lexicon):
        return True
    if lexicon.is_in("MOVEVERB", chars[at]) and lexicon.is_in("CANT", before):
        return after in (COMMA, STOP) or lexicon.is_in("MY", after)
    if lexicon.is_in("POSTURE", chars[at]) and lexicon.is_in("PLACEWORD", after):
        return before == COMMA
    if lexicon.is_in("ORD", chars[at]) and lexicon.is_in("#", before):
        return True  # "1st set yes"
    if lexicon.is_in("SETLIKE", chars[at]) and lexicon.is_in("#", before):
        return lexicon.is_in("OF", after)
    if lexicon.is_in("GEAR", chars[at]) and lexicon.is_in("NO_GEAR", before) and lexicon.is_in("GEARLESS", after):
        return True  # "no weights so I carried jugs"
    return (
        lexicon.is_in("GEAR", chars[at])
        and lexicon.is_in("MY", before)
        and lexicon.is_in("MISLAID", chars[at - 2 : at - 1] or STOP)
    )


def _is_one_side(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a name that is also a body part has its side before it: "left side only"."""
    at = mention.start
    return at > 0 and lexicon.is_in("SIDEDET", chars[at - 1]) and lexicon.is_in("BODY", chars[at])


def _is_about_body(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a weak name that is also a body part is meant as the body: "my hip hurts", "heel 3"."""
    before = chars[max(0, mention.start - 2) : mention.start]
    after = chars[mention.end : mention.end + 2].split(STOP)[0]  # "no hips. Pain 5"
    if lexicon.is_in("#", chars[mention.end : mention.end + 3].lstrip(COMMA)[1:2]) and any(
        lexicon.is_in("JOIN", char) for char in before
    ):
        after = ""  # "the wall or the heels pain 3"
    around = before + after
    is_mine = any(lexicon.is_in("MY", char) for char in before)  # "not the heels as my foot is swollen" is none
    return is_mine or any(lexicon.is_in("PAINISH", char) for char in around)


def _is_beside(one: Mention, other: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether two names stand in one list."""
    low, high = (one.end, other.start) if one.start < other.start else (other.end, one.start)
    between = chars[low:high]
    return len(between) <= 4 and all(
        char == COMMA or lexicon.is_in("LISTING", char) or lexicon.is_in("STATUS", char) for char in between
    )


def letter_mentions(text: Text, letters: dict[str, int], lexicon: Lexicon) -> list[Mention]:
    """Return exercises named by letter ("A yes B yes C no"): letters in a row, or one beside a word of done or not."""
    if letters.keys().isdisjoint(text.raw):
        return []
    chars = text.signature
    places = [at for at, word in enumerate(text.raw) if word in letters]
    if len({text.raw[at] for at in places} - lexicon.letter_words) == 1:
        places = [at for at in places if not _is_of(chars, at, lexicon)]
    sure = {text.raw[at] for at in places if text.raw[at] not in lexicon.letter_words}
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
        certain = text.raw[at] not in lexicon.letter_words or _is_led(chars, at, lexicon)
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
        listed = bool(sure) and _is_among(chars, at, places, lexicon)
        if listed or (certain and len(sure) > 1) or (telling and (certain or sure)):
            kept.append(Mention(at, at + 1, letters[text.raw[at]], False))
    is_sure = any(
        one.end > one.start + 1 or text.raw[one.start] not in lexicon.letter_words or _is_led(chars, one.start, lexicon)
        for one in kept
    )
    return kept if is_sure else []


def _is_of(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a letter is short for "of": "2 d 10", "los d la silla"."""
    after = chars[at + 1 : at + 2]
    return lexicon.is_in("DE", chars[at]) and any(
        lexicon.is_in(concept, after) for concept in ("#", "THE", "ALL", "EACHWORD")
    )


def _is_led(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether an article, or a word for "except", makes a letter a name: "la A", "todo menos A, que"."""
    if at and lexicon.is_in("LETTERLED", chars[at - 1]):
        after = chars[at + 1 : at + 2]
        return after in ("", COMMA, STOP) or any(lexicon.is_in(one, after) for one in ("STATUS", "NOT", "THE"))
    return at > 0 and lexicon.is_in("EXCEPT", chars[at - 1]) and chars[at + 1 : at + 2] in ("", COMMA, STOP)


def _is_among(chars: str, at: int, places: list[int], lexicon: Lexicon) -> bool:
    """Tell whether a letter stands in a row of letters: "A, B and D"."""
    for other in places:
        low, high = (other + 1, at) if other < at else (at + 1, other)
        if other in (at, at - 1):  # "C a medias": no letter
            continue
        if high - low <= 2 and all(
            char == COMMA or lexicon.is_in("JOINAND", char) or lexicon.is_in("LETTERLED", char)
            for char in chars[low:high]
        ):
            return True
    return False


def is_unit(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a word for sets, repetitions or time stands at a place."""
    return at < len(chars) and any(
        lexicon.is_in(concept, chars[at]) for concept in ("SET", "REP", "X", "SEC", "TIMEUNIT", "MEASURE_AFTER")
    )
