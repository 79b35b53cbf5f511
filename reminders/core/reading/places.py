"""Which exercises a reply names by their place in the list: "the first one", "the last two", "#3", "1 yes 2 no".

Names and letters are found in `mentions.py`.
"""

from itertools import pairwise

from reminders.core.reading.company import is_first_thing
from reminders.core.reading.counted import counts_rounds
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.mentions import is_unit
from reminders.core.reading.session import Mention
from reminders.core.reading.signatures import COMMA, STOP
from reminders.core.reading.tokens import Text

_SHORT_FORM = 4  # letters of "ex.", "ejer."
_TIMES = ("TIMEUNIT", "WEEKDAY", "DAYPART", "PASTSPAN", "TIMES")


def place_mentions(text: Text, count: int, lexicon: Lexicon) -> list[Mention]:
    """Return exercises named by their place: "the first one", "the last two", "#3", "1, 2 and 4"."""
    found: list[Mention] = []
    if lexicon.ordinals.keys().isdisjoint(text.words) and not _may_list(text, lexicon):
        return found
    if counts_rounds(text.words, text.signature, text.values, lexicon):
        return found
    if items := _numbered_items(text, count, lexicon) or _told_numbers(text, count, lexicon):
        return items
    ordinals, signs = lexicon.ordinals, lexicon.chars("ITEMSIGN")
    end = 0
    for at, word in enumerate(text.words):
        if at < end or (text.values[at] is None and word not in ordinals and text.chars[at] not in signs):
            continue
        places, end = _places_at(text, at, count, lexicon)
        if not places and _is_left_ordinal(text, at, count, lexicon):
            end = at + 2 + lexicon.is_in("ONE_OR_PART", text.signature[at + 2 : at + 3])
            places = [int(text.raw[at]) - 1]
        if found and not places and _is_left_number(text, at, count, lexicon):
            places, end = [int(text.raw[at]) - 1], at + 1  # "did 1, 2 and 4, the 3 no"
        found += [Mention(at, end, place, False) for place in places]
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


def _numbered_items(text: Text, count: int, lexicon: Lexicon) -> list[Mention]:
    """Return all exercises told in their order by number: "1 yes 2 yes 3 half 4 no"."""
    chars = text.signature
    places = [at for at, raw in enumerate(text.raw) if raw.isdigit() and 1 <= int(raw) <= count][:count]
    if count < 3 or [int(text.raw[at]) for at in places] != list(range(1, count + 1)):
        return []
    told = [at for at in places if any(lexicon.is_in("STATUS", char) for char in chars[at + 1 : at + 3].lstrip(COMMA))]
    apart = all(high - low > 1 for low, high in pairwise(places))
    if not apart or len(told) < count - 1:
        return []
    return [Mention(at, at + 1 + (chars[at + 1] == COMMA), k, False) for k, at in enumerate(places)]  # "1) yes 2) no"


def _told_numbers(text: Text, count: int, lexicon: Lexicon) -> list[Mention]:
    """Return exercises told by number in rising order: "1 and 3 yes 4 no", "no to 1 and 2", "1 2x10, 2 skipped"."""
    chars, numbers = text.signature, text.values
    found: list[int] = []
    told = groups = at = 0
    while at < len(chars):
        if numbers[at] is None:
            at += 1
            continue
        if _is_dose(text, at, lexicon) or (at > 1 and lexicon.is_in("PAINISH", chars[at - 1]) and found):
            at += 3 if _is_dose(text, at, lexicon) else 1
            continue
        if not text.raw[at].isdigit() or not 1 <= (numbers[at] or 0) <= count or not _may_name(chars, at, lexicon):
            return []
        is_led = _is_yes_or_no_to(chars, at, lexicon)
        group, at = _joined_numbers(text, at, count, lexicon)
        found += group
        groups += 1
        told += is_led or _is_told_of(text, at, lexicon)
    rises = all(text.values[low] < text.values[high] for low, high in pairwise(found))  # type: ignore[operator]
    if len(found) < 2 or told < groups or not rises or (groups > 1 and _may_count(text, found, count, groups)):
        return []
    return [Mention(one, one + 1, int(text.values[one] or 0) - 1, False) for one in found]


def _is_dose(text: Text, at: int, lexicon: Lexicon) -> bool:
    """Tell whether an amount begins here: "2x10"."""
    return lexicon.is_in("X", text.signature[at + 1 : at + 2]) and text.values[at + 2 : at + 3] not in ([], [None])


def _may_name(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a number may name an exercise by what stands before it: no rating, no range, no amount."""
    before = chars[at - 1 : at]
    if not before or before in STOP + COMMA:
        return True
    return any(lexicon.is_in(one, before) for one in ("STATUS", "STATUS_BEFORE", "JOINAND", "TO_SCALE", "THE"))


def _is_yes_or_no_to(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether "yes to" or "no to" leads to a number."""
    answers = lexicon.either("YES", "ANSWER_NO")
    return at > 1 and lexicon.is_in("TO_SCALE", chars[at - 1]) and chars[at - 2] in answers


def _joined_numbers(text: Text, at: int, count: int, lexicon: Lexicon) -> tuple[list[int], int]:
    """Return the places of numbers joined into one group, and where it ends: "1, 2 and 4"."""
    group, end = [at], at + 1
    while end < len(text.signature):
        after = end
        while after < len(text.signature) and (
            text.signature[after] == COMMA or lexicon.is_in("JOINAND", text.signature[after])
        ):
            after += 1
        is_next = after < len(text.raw) and text.raw[after].isdigit() and not _is_dose(text, after, lexicon)
        if not is_next or not 1 <= (text.values[after] or 0) <= count:
            break
        group.append(after)
        end = after + 1
    return group, end


def _is_told_of(text: Text, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a word of done or not done, or an amount, stands right behind a group of numbers."""
    chars = text.signature
    at += chars[at : at + 1] == COMMA and text.words[at] in (":", "-", "--", ")")
    while lexicon.is_in("WASWORD", chars[at : at + 1]) or lexicon.is_in("ALL", chars[at : at + 1]):
        at += 1
    return lexicon.is_in("STATUS", chars[at : at + 1]) or (at < len(chars) and _is_dose(text, at, lexicon))


def _may_count(text: Text, found: list[int], count: int, groups: int) -> bool:
    """Tell whether numbers may say how many instead: "1 done 3 skipped" of four."""
    return groups == len(found) == 2 and sum(text.values[at] or 0 for at in found) == count


def _is_left_number(text: Text, at: int, count: int, lexicon: Lexicon) -> bool:
    """Tell whether a number behind an article is followed by a word of done or not done."""
    raw, chars = text.raw[at], text.signature
    is_number = raw.isdigit() and 1 <= int(raw) <= count
    return (
        is_number and at > 0 and lexicon.is_in("THE", chars[at - 1]) and lexicon.is_in("STATUS", chars[at + 1 : at + 2])
    )


def _is_left_ordinal(text: Text, at: int, count: int, lexicon: Lexicon) -> bool:
    """Tell whether an ordinal in figures is led by a word of done or not done: "did the first 3, not the 4th"."""
    chars = text.signature
    is_ordinal = (
        text.raw[at].isdigit() and 1 <= int(text.raw[at]) <= count and lexicon.is_in("ORD", chars[at + 1 : at + 2])
    )
    led = lexicon.either("STATUS_BEFORE", "EXCEPT", "JOINAND")
    if is_ordinal and lexicon.is_in("ONE_OR_PART", chars[at + 2 : at + 3]):
        return True  # "the 2nd one"
    return is_ordinal and at > 1 and lexicon.is_in("THE", chars[at - 1]) and chars[at - 2] in led


def _is_in_row(text: Text, at: int, lexicon: Lexicon) -> bool:
    """Tell whether another ordinal stands in one list with this one: "the first and the third"."""
    chars = text.signature
    for step in (1, -1):
        other = at + step
        while 0 <= other < len(chars) and (
            chars[other] == COMMA or any(lexicon.is_in(one, chars[other]) for one in ("JOINAND", "JOIN", "THE"))
        ):
            other += step
        if abs(other - at) > 1 and 0 <= other < len(chars) and text.words[other] in lexicon.ordinals:
            return True
    return False


def _may_list(text: Text, lexicon: Lexicon) -> bool:
    """Tell whether a text could name places by number."""
    if not lexicon.chars("ITEMSIGN").isdisjoint(text.present) or sum(map(str.isdigit, text.raw)) > 1:
        return True
    return not lexicon.chars("EXCEPT").isdisjoint(text.present) and any(map(str.isdigit, text.raw))


def _places_at(text: Text, at: int, count: int, lexicon: Lexicon) -> tuple[list[int], int]:
    """Return the places that one token begins to name, and where their words end."""
    chars, word = text.signature, text.words[at]
    place = lexicon.ordinals.get(word)
    following = chars[at + 1] if at + 1 < len(chars) else STOP
    if place is not None and lexicon.is_in("HALFWORD", following):
        return [], at  # "the first half"
    if place == 1 and is_first_thing(text, at, following, lexicon):
        return [], at
    ordinal = lexicon.ordinals.get(text.words[at + 1]) if at + 1 < len(chars) else None
    first = text.values[at]
    size = int(first) if ordinal in (1, -1) and first is not None and 1 < first < count else 0
    if ordinal and size and (chars[at + 2 : at + 3] or STOP) not in lexicon.either(*_TIMES):  # "los dos últimos"
        return (list(range(count - size, count)) if ordinal < 0 else list(range(size))), at + 2
    if place is not None and not _is_no_place(chars, at, lexicon):
        number = text.values[at + 1] if at + 1 < len(chars) else None
        if number is not None and 1 < number < count and not is_unit(chars, at + 2, lexicon):
            size = int(number)
            return (list(range(count - size, count)) if place < 0 else list(range(size))), at + 2
        if lexicon.is_in("PART", following):
            return [], at + 1  # "la tercera parte"
        if -1 <= place <= count and _names_by_ordinal(text, at, lexicon):
            end = at + 2 if lexicon.is_in("ONE_OR_PART", following) else at + 1
            return [count - 1 if place < 0 else place - 1], end
    about_pain = at and lexicon.is_in("PAINISH", chars[at - 1])
    if lexicon.is_in("ITEMSIGN", chars[at]) and at + 1 < len(chars) and not about_pain:
        is_short = len(text.raw[at]) <= _SHORT_FORM and chars[at + 1] == STOP and at + 2 < len(chars)
        number_at = at + 1 + is_short  # "ex. 2", not "did my exercises. One set"
        number = text.values[number_at]
        if number is not None and 1 <= number <= count and not is_unit(chars, number_at + 1, lexicon):
            places, end = _listed_places(text, number_at, count, lexicon, is_told=True)
            return (places, end) if places else ([int(number) - 1], number_at + 1)
    is_digit = first is not None and text.raw[at].isdigit() and 1 <= first <= count
    if is_digit and first and _is_left_out(chars, at, lexicon) and not is_unit(chars, at + 1, lexicon):
        return [int(first) - 1], at + 1  # "all but the 3"
    return _listed_places(text, at, count, lexicon)


def _names_by_ordinal(text: Text, at: int, lexicon: Lexicon) -> bool:
    """Tell whether what stands around an ordinal lets it name an exercise: "the second one", "all but the last"."""
    chars = text.signature
    following, after = chars[at + 1] if at + 1 < len(chars) else STOP, chars[at + 2 : at + 3]
    if following in STOP + COMMA or any(lexicon.is_in(one, following) for one in ("ONE_OR_PART", "CLITIC", "STATUS")):
        return True
    if _is_left_out(chars, at, lexicon) or _is_in_row(text, at, lexicon):
        return True
    if lexicon.is_in("DIDVERB", following) and lexicon.is_in("#", after):
        return True
    if lexicon.is_in("HALFLED", following) and lexicon.is_in("PART", after):
        return True
    has_number = at + 1 < len(chars) and text.values[at + 1] is not None and not lexicon.is_in("TIMES", after)
    return has_number and is_unit(chars, at + 2, lexicon)  # "the first 2x10", not "the last four times"


def _is_no_place(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether an ordinal stands in "every last one", or speaks of a message: "fix my last one"."""
    is_mine = at > 1 and lexicon.is_in("MY", chars[at - 1])
    is_sent = is_mine and not lexicon.either("FIXVERB", "MISTAKE").isdisjoint(chars[max(0, at - 3) : at - 1])
    is_round = (
        at > 2 and lexicon.is_in("#", chars[at - 3]) and lexicon.is_in("IN_BODY", chars[at - 2])
    )  # "6 in the last"
    is_length = bool(at) and lexicon.is_in("SEC", chars[at]) and lexicon.is_in("#", chars[at - 1])  # "30 second"
    return bool(at) and (lexicon.is_in("EVERYWORD", chars[at - 1]) or is_sent or is_round or is_length)


def _is_left_out(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether an article and a word for "except" stand before: "todos menos el último"."""
    return at > 1 and lexicon.is_in("THE", chars[at - 1]) and lexicon.is_in("EXCEPT", chars[at - 2])


def _listed_places(text: Text, at: int, count: int, lexicon: Lexicon, is_told: bool = False) -> tuple[list[int], int]:
    """Return "1, 2 and 4" as places: three or more different numbers in rising order."""
    before = at - 1
    while before > 0 and lexicon.is_in("THE", text.signature[before]):
        before -= 1
    told = is_told or (at > 0 and lexicon.is_in("STATUS_BEFORE", text.signature[before]))
    led = before < at - 1 or (at == 1 and before == 0)  # an article stands before
    numbers: list[int] = []
    here = at
    while here < len(text.words):
        value = text.values[here]
        if (
            value is None
            or not (text.raw[here].isdigit() or is_told)
            or not 1 <= value <= count
            or (numbers and value <= numbers[-1])
        ):
            break
        numbers.append(int(value))
        here += 1
        while here < len(text.words) and (
            text.signature[here] == COMMA
            or lexicon.is_in("JOINAND", text.signature[here])
            or (led and lexicon.is_in("THE", text.signature[here]))  # "did the 1 and the 2"
        ):
            here += 1
    if len(numbers) == 1 and _is_range(text, here, numbers[0], count, lexicon, is_told):
        return list(range(numbers[0] - 1, int(text.values[here + 1] or 0))), here + 2
    told |= (led or at == 0) and lexicon.is_in("STATUS", text.signature[here : here + 1])  # "the 1 and the 2 yes"
    if len(numbers) < (2 if told else 3) or is_unit(text.signature, here, lexicon):
        return [], at
    return [number - 1 for number in numbers], here


def _is_range(text: Text, at: int, low: int, count: int, lexicon: Lexicon, is_told: bool) -> bool:
    """Tell whether a number goes on to another one: "did 2 thru 4"."""
    if at + 1 >= len(text.words):
        return False
    if not lexicon.is_in("THRU", text.signature[at]) and not (is_told and lexicon.is_in("DASH", text.signature[at])):
        return False
    high = text.values[at + 1]
    return high is not None and low < high <= count and not is_unit(text.signature, at + 2, lexicon)
