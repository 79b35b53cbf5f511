"""Answers to what was asked (`choice`), and what must be asked before a reply is recorded (`ask`).

What follows from an answer is decided in the flows.
"""

import re
from datetime import date

from reminders.core.reading.dates import until_told
from reminders.core.reading.decision import SURE, Decision
from reminders.core.reading.intent import Evidence
from reminders.core.reading.tokens import Text

_SHORT = 2  # words of an answer that hardly says more than itself
_MOST = 31  # a count of falls or days above this is none
# Below this a greeting that answers nothing would be a guess: of 12,906 replies not trained on 10 of 382 are asked what
# they mean in vain, and 6 that were a wish or a word of the session are not passed over.
SURE_CHAT = 0.7
_NAME = re.compile(r"[^\W\d_](?:[^\W\d_]|['’-])*")
# Answers in words: kind of question → (answer, concept) in the order in which they count.
_IN_WORDS: dict[str, tuple[tuple[str, str], ...]] = {
    "reason": (
        ("forgot", "FORGOT"),
        ("sick", "SICK"),
        ("pain", "PAINISH"),
        ("away", "AWAY"),
        ("busy", "BUSY"),
    ),
    "effort": (("hard", "HARD"), ("easy", "EASY"), ("medium", "MEDIUM")),
    "keep": (("end", "ENDIT"), ("change", "CHANGE"), ("keep", "KEEP")),
    "meaning": (("pain", "PAINISH"),),
}
_YES_NO = frozenset({"offer", "meaning", "keep"})
# Questions whose bare answer says nothing of a session.
_APART = frozenset({"reason", "offer", "effort", "falls", "where", "keep", "days", "until", "who"})
_COUNTS = frozenset({"falls", "days"})


def choice_of(evidence: Evidence, decision: Decision, where: str | None, today: date | None) -> str | int | None:
    """Return the answer to the question that was asked, None when the reply gives none."""
    asked, text, intent = evidence.asked, evidence.scope.text, decision.intent
    if decision.is_wish and intent != "pause" and asked not in _IN_WORDS:
        return None
    if (intent == "pause" and asked != "reason") or (asked == "until" and intent not in ("opt_out", "opt_in", "help")):
        until = until_told(text, evidence.scope.lexicon, today)
        return until.isoformat() if until is not None else None
    consent = intent in ("opt_out", "opt_in") or (intent == "help" and "help_key" in evidence.held)
    if asked is None or (consent and asked != "keep"):
        return None
    if asked == "where":
        return where
    if asked in _COUNTS:
        if is_invited_letter(evidence):
            return None
        count = _count(evidence, text)
        return 1 if not count and asked == "falls" and "fall_or_injury" in evidence.danger.grades else count
    if asked == "who":
        return "both" if "both_of_us" in evidence.held else _name(text, evidence)
    answer = _in_words(evidence, asked)
    if decision.is_wish:
        return answer
    if answer is None and asked in _YES_NO:
        answer = _yes_or_no(evidence, asked)
    tells = evidence.done() or evidence.told.by_exercise or evidence.told.amounts or "yes_report" in evidence.held
    says_something = intent not in ("report", "chat", "later") or (intent == "chat" and len(text.words) > _SHORT)
    says_something = says_something or (intent == "report" and not tells)  # "my band snapped"
    if answer is None and asked == "reason" and says_something:
        return "other"
    return answer


def is_invited_letter(evidence: Evidence) -> bool:
    """Tell whether a reply is the short form that every reminder invites: a letter with a rating, "Y2"."""
    raw = evidence.scope.text.raw
    return "num.invited" in evidence.held and any(len(piece) == 1 and piece.isalpha() for piece in raw[:2])


def is_mere_answer(evidence: Evidence, choice: str | int | None) -> bool:
    """Tell whether a reply answers a question that is not about a session, and reports none: "yes" to an offer."""
    if choice is None or evidence.asked not in _APART or evidence.danger.grades:
        return False
    numbers, told = evidence.numbers, evidence.told
    reported = evidence.has("done_plain", "skip_sure") and len(evidence.scope.text.words) > _SHORT
    return not (reported or told.by_exercise or told.amounts or numbers.pains)


def _in_words(evidence: Evidence, asked: str) -> str | None:
    """Return the answer whose words stand in the reply and are not denied."""
    scope = evidence.scope
    for answer, concept in _IN_WORDS.get(asked, ()):
        chars = scope.lexicon.chars(concept)
        if any(char in chars and not scope.is_denied(at) for at, char in enumerate(scope.text.signature)):
            return answer
    return None


def _yes_or_no(evidence: Evidence, asked: str) -> str | None:
    """Return a plain yes or no; after the keep question a yes keeps."""
    lexicon, signature = evidence.scope.lexicon, evidence.scope.text.signature
    for char in signature[:3]:
        if lexicon.is_in("ANSWER_NO", char) or lexicon.is_in("NOT", char):
            return "end" if asked == "keep" else "no"
        if lexicon.is_in("YES", char):
            return "keep" if asked == "keep" else "yes"
    return None


def _count(evidence: Evidence, text: Text) -> int | None:
    """Return a count of falls or days; none at all is 0, a bare yes to falls no number."""
    numbers = [int(value) for value in text.values if value is not None and value == int(value) and value <= _MOST]
    if numbers:
        return max(numbers)
    for word in text.words:
        if word in evidence.scope.lexicon.counts:
            return evidence.scope.lexicon.counts[word]
    if any(
        evidence.scope.lexicon.is_in(concept, char)
        for concept in ("ANSWER_NO", "NONE", "NEGATOR")
        for char in text.signature
    ):
        return 0
    return None


def _name(text: Text, evidence: Evidence) -> str | None:
    """Return the name in an answer to "whose is it?", as it was typed: the words that no rule knows."""
    lexicon = evidence.scope.lexicon
    known = {raw for raw, char in zip(text.raw, text.signature, strict=True) if lexicon.concepts_of(char)}
    names = [word for word in _NAME.findall(text.original) if lexicon.plain(word) not in known]
    names = [word for word in names if not lexicon.is_small(lexicon.plain(word))]
    return " ".join(names[:4]) or None


def ask_of(evidence: Evidence, decision: Decision, pain: int | None, choice: str | int | None) -> str | None:
    """Return what must be asked: a reading that would be a guess asks. `pain` and `choice` are what is recorded."""
    intent = decision.intent
    if intent == "opt_out" or choice is not None:
        return None
    if (
        evidence.danger.grades
    ):  # what was said of the session is asked once she is safe; her danger sign waits for nothing
        return "amount" if min(decision.intent_sureness, decision.completed_sureness) < SURE else None
    if evidence.pain.off_scale and pain is None:
        return "pain"
    if intent == "unclear":
        return evidence.asked if evidence.asked in ("pain", "amount") else "meaning"
    if evidence.asked in ("pain", "settling") and pain is not None:
        return None  # the rating that was asked for is there
    least = SURE if intent != "chat" else SURE_CHAT if evidence.asked is None else 0.0
    if decision.intent_sureness < least:
        return "meaning"
    if intent == "report" and (decision.completed_sureness < SURE or decision.completed is None):
        return "amount"
    if intent in ("report", "pain") and pain is None:
        return "pain"
    return None
