"""Whether a name that is also an everyday word stands where an exercise is told: beside an amount, done, not done."""

from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.session import Mention
from reminders.core.reading.signatures import COMMA, STOP
from reminders.core.reading.tokens import Text


def has_company(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether an amount or a word of done or not done stands beside a weak name."""
    at = mention.end
    if at < len(chars) and lexicon.is_in("ONE_OR_PART", chars[at]):
        return True
    if any(lexicon.is_in(one, chars[at : at + 1]) for one in ("WASWORD", "GOT")):
        at += lexicon.is_in("STATUS", chars[at + 1 : at + 2])  # "wall was skipped"
    while at < len(chars) and (chars[at] == COMMA or lexicon.is_in("LISTING", chars[at])):
        at += 1
    if lexicon.is_in("X", chars[at : at + 1] or STOP) and lexicon.is_in("#", chars[at + 1 : at + 2]):
        return True
    if at < len(chars) and (lexicon.is_in("#", chars[at]) or lexicon.is_in("STATUS", chars[at])):
        return True
    if lexicon.is_in("WAITS", chars[at + 1 : at + 2]):
        return True  # "heels can wait"
    if lexicon.is_in("ALSO", chars[at : at + 1]):
        return chars[at + 1 : at + 2] in ("", COMMA, STOP) and not lexicon.is_in("BODY", chars[mention.start])
    if lexicon.is_in("SUBJECT_I", chars[at : at + 1]):
        told = _told_by_i(at + 1, chars, lexicon)
        if told is not None:
            return told
    at = mention.start - 1
    while at >= max(0, mention.start - 4) and lexicon.is_in("LEADS", chars[at]) and not is_did(chars, at, lexicon):
        if at and lexicon.is_in("do", chars[at]) and lexicon.is_in("TO_SCALE", chars[at - 1]):
            return True  # "not able to do the balance"
        at -= 1
    if at < 0:
        return False
    if lexicon.is_in("SKIP", chars[at]) and any(
        lexicon.is_in(one, chars[mention.end : mention.end + 1]) for one in ("out", "off")
    ):
        return True  # "left the heels out"
    if any(lexicon.is_in(concept, chars[at]) for concept in ("#", "STATUS_BEFORE", "SET", "REP")):
        return True
    rest = lexicon.chars("REST")  # "struck out on balance, the rest are done"
    return any(
        char in rest and (lexicon.is_in("THE", chars[k - 1 : k]) or lexicon.is_in("STATUS", chars[k + 1 : k + 2]))
        for k, char in enumerate(chars)
    )


def _told_by_i(at: int, chars: str, lexicon: Lexicon) -> bool | None:
    """Tell whether "I did", "I did not" or "I skipped" closes a name; None where another word stands."""
    verb, behind = chars[at : at + 1], chars[at + 1 : at + 2]
    is_end = behind in ("", COMMA, STOP)
    if lexicon.is_in("DIDVERB", verb):
        return is_end or lexicon.is_in("NOT", behind)  # "the chair I did not"
    if lexicon.is_in("SKIP", verb):
        return is_end or lexicon.is_in("JOIN", behind)  # "balance I left"
    if verb and verb in lexicon.either("NO", "NOT"):
        return is_end or chars[at + 2 : at + 3] in ("", COMMA, STOP)
    return None


def is_did(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a sentence begins with "did": "did the chair but not the heels", "I did the wall"."""
    if not lexicon.is_in("DIDVERB", chars[at]):
        return False
    if at == 0 or chars[at - 1] in (COMMA, STOP):
        return True
    return lexicon.is_in("SUBJECT_I", chars[at - 1]) and lexicon.is_in("THE", chars[at + 1 : at + 2])


def is_first_thing(text: Text, at: int, following: str, lexicon: Lexicon) -> bool:
    """Tell whether "first" only tells when: "first thing" in the morning, "chores first, then I did them"."""
    is_lone = not lexicon.is_in("THE", text.signature[at - 1 : at])
    is_lone = is_lone and not any(lexicon.ordinals.get(word) == 2 for word in text.words)
    return is_lone and (following == COMMA or lexicon.is_in("EM", following))
