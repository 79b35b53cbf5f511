"""What stands beside a number word: a unit, and whether a word for one is a number: "one set", not "the wall one".

Numbers get their values in `tokens.py`.
"""

from collections.abc import Sequence

from reminders.core.reading.lexicon import UNKNOWN, Lexicon
from reminders.core.reading.signatures import COMMA, QUESTION, STOP


def is_count(chars: list[str], at: int, before_unit: bool, lexicon: Lexicon) -> bool:
    """Tell whether "one" counts something here; "the wall one" and "one foot" do not."""
    if before_unit or (
        at + 2 < len(chars) and lexicon.is_in("SET", chars[at + 2]) and _is_open(chars[at + 1], lexicon)
    ):
        return True
    if at > 1 and lexicon.is_in("SET", chars[at - 1]) and lexicon.is_in("AFTERWORD", chars[at - 2]):
        return True  # "quit after round one"
    of = at + 2 if at + 2 < len(chars) and lexicon.either("ONLY", "TIMES") & {chars[at + 1]} else at + 1
    if of + 1 < len(chars) and lexicon.is_in("DE", chars[of]) and chars[of + 1] in lexicon.number_chars:
        return True  # "talones una sola de 12"
    named = at - 3 if at > 2 and lexicon.is_in("FILL", chars[at - 2]) else at - 2
    if at > 1 and chars[at - 1] == COMMA and lexicon.is_in("PAINISH", chars[named]):
        return True  # "pain: one", "pain level: one"
    if at and (_is_time_a_side(chars, at, lexicon) or _is_dose(chars, at, lexicon)):
        return True
    if at and (lexicon.is_in("ONE_NOT_AFTER", chars[at - 1]) or _is_pronoun(chars, at, lexicon)):
        return False
    if at > 1 and lexicon.is_in("THE", chars[at - 2]) and not lexicon.is_in("FILL", chars[at - 1]):
        return lexicon.is_in("PAINISH", chars[at - 1])  # "the sitting one", "my pain one"
    if at + 1 < len(chars) and lexicon.is_in("ONE_NOT_BEFORE", chars[at + 1]):
        return False
    led = ("JOIN", "ONLY", "DIDVERB")
    is_led = at == 0 or chars[at - 1] in (COMMA, STOP) or any(lexicon.is_in(one, chars[at - 1]) for one in led)
    if is_led and at + 1 < len(chars) and lexicon.is_in("EXWORD", chars[at + 1]):
        return True  # "rows fine, one carry"
    if at and _is_next_set(chars, at, lexicon):
        return True
    if at == 0:
        return len(chars) == 1 or chars[1] in (STOP, COMMA, QUESTION) or lexicon.is_in("ONE_BEFORE", chars[1])
    return lexicon.is_in("ONE_AFTER", chars[at - 1]) or (
        at + 1 < len(chars) and lexicon.is_in("ONE_BEFORE", chars[at + 1])
    )


def _is_pronoun(chars: list[str], at: int, lexicon: Lexicon) -> bool:
    """Tell whether "one" stands for what was spoken of: "that's the only one", "some days I wish ..., today is one"."""
    led, before = chars[at - 1], chars[at - 2] if at > 1 else STOP
    if lexicon.is_in("ONLY", led) and lexicon.is_in("THE", before):
        return True
    is_day = lexicon.is_in("IS", led) and lexicon.is_in("NOWISH", before)
    return is_day and not any(lexicon.is_in("PAINISH", char) for char in chars)


def _is_dose(chars: list[str], at: int, lexicon: Lexicon) -> bool:
    """Tell whether "de" and a number follow: "la silla una de diez"; most number words have no sign of their own."""
    if at + 2 >= len(chars) or not lexicon.is_in("DE", chars[at + 1]):
        return False
    char = chars[at + 2]
    return char == UNKNOWN or lexicon.is_in("#", char) or any(lexicon.is_in(word, char) for word in lexicon.numbers)


def _is_time_a_side(chars: list[str], at: int, lexicon: Lexicon) -> bool:
    """Tell whether "one" counts times for a side: "just the one time each side"."""
    if at + 3 >= len(chars) or not lexicon.is_in("TIMES", chars[at + 1]):
        return False
    each = any(lexicon.is_in(one, chars[at + 2]) for one in ("EACHWORD", "ARTICLE"))
    return each and lexicon.is_in("SIDEWORD", chars[at + 3])


def _is_next_set(chars: list[str], at: int, lexicon: Lexicon) -> bool:
    """Tell whether "one" is one of the sets told before: "2 sets on the chair, one on the wall"."""
    if lexicon.chars("SET").isdisjoint(chars[:at]) or at + 1 >= len(chars):
        return False
    follows = chars[at - 1] == COMMA or lexicon.is_in("JOINAND", chars[at - 1])
    return (follows and lexicon.is_in("IN_BODY", chars[at + 1])) or lexicon.is_in("MORESETS", chars[at + 1])


def counts_rounds(words: Sequence[str], chars: str, values: Sequence[float | None], lexicon: Lexicon) -> bool:
    """Tell whether an ordinal counts rounds: "the first round yes, the second no"."""
    if lexicon.chars("SET").isdisjoint(chars):
        return False
    if not lexicon.chars("ROUNDORD").isdisjoint(chars) or _is_next_round(words, chars, values, lexicon):
        return True  # "una ronda, la segunda ya no"
    return any(words[at] in lexicon.ordinals and lexicon.is_in("SET", chars[at + 1]) for at in range(len(words) - 1))


def _is_next_round(words: Sequence[str], chars: str, values: Sequence[float | None], lexicon: Lexicon) -> bool:
    """Tell whether the one ordinal of a text follows sets that were counted: "one set, never got to the second"."""
    told = [at for at, word in enumerate(words) if word in lexicon.ordinals]
    if len(told) != 1 or lexicon.ordinals[words[told[0]]] not in (2, 3):
        return False
    at = told[0]
    sets = any(lexicon.is_in("SET", chars[k]) and values[k - 1] is not None for k in range(1, at))
    names = any(lexicon.is_in(one, chars[at + 1 : at + 2]) for one in ("ONE_OR_PART", "CLITIC"))
    return sets and not names and lexicon.is_in("THE", chars[at - 1])


def is_before_unit(chars: list[str], at: int, lexicon: Lexicon) -> bool:
    """Tell whether a word for sets, repetitions or time stands behind a token, two joining words apart at most."""
    links = lexicon.chars("LINK")
    for char in chars[at + 1 : at + 4]:
        if char not in links:
            return lexicon.is_in("UNIT", char)
    return False


def _is_open(char: str, lexicon: Lexicon) -> bool:
    """Tell whether a word may stand between "one" and "set": "one full set", "one row set"."""
    return char == UNKNOWN or lexicon.is_in("MORESETS", char) or lexicon.is_in("EXWORD", char)


def is_rated(values: Sequence[float | None], chars: Sequence[str], at: int, lexicon: Lexicon) -> bool:
    """Tell whether "out of ten" follows a word: "pain to out of 10"."""
    if at + 3 >= len(chars) or not lexicon.is_in("OUTOF", chars[at + 1]):
        return False
    return lexicon.is_in("OF", chars[at + 2]) and values[at + 3] == 10
