"""What to do with a reading: record it, ask one thing, send it to the clinic. Pure, and the same for every channel.

Danger signs, consent and whose a reply is are settled before; this says what becomes of the rest.
"""

import re
from dataclasses import dataclass

from reminders.core.attribution import words_of
from reminders.core.reading.model import Reading
from reminders.core.words import VOCABULARIES

ABOUT_A_SESSION = frozenset({"report", "skip", "pain"})
# Replies that say nothing of what was asked: the question stays open for the next one.
LEAVE_OPEN = frozenset({"question", "chat", "help", "unclear", "resend", "reschedule", "opt_out", "opt_in"})
CHOICES = frozenset({"reason", "offer", "effort", "falls", "where", "keep", "days", "until"})
# A word of `during`, at most two others, a word of `exercising`; and what says that they were not done yet.
EXERCISING = tuple(
    (
        re.compile(rf" ({words.during.replace(' ', '|')}) (\w+ ){{0,2}}({words.exercising.replace(' ', '|')}) "),
        frozenset(words.not_yet.split()),
    )
    for words in VOCABULARIES.values()
)


@dataclass(frozen=True)
class Situation:
    """What stands around a reply.

    `asked`: the open question's kind. `asked_before`: what was asked about the session already. `awaits`: nobody has
    said yet whether the session was done. `unclear_before`: the reply before this one was not understood either.
    `is_closed`: her address may not be written to. `staff_wrote`: her therapist wrote to her within 48 hours.
    `is_page`: it came from her page, whose boxes leave no doubt that they report a session.
    """

    asked: str | None = None
    asked_before: frozenset[str] = frozenset()
    awaits: bool = False
    unclear_before: bool = False
    is_held: bool = False
    is_closed: bool = False
    staff_wrote: bool = False
    is_page: bool = False


@dataclass(frozen=True)
class Decision:
    """What follows: keep a report (`record`), as a settling rating of an earlier session (`settles`), ask one question
    (`ask`), put an item into the clinic's inbox (`note`), and how the open question closes (`closes`).
    """

    record: bool = False
    settles: bool = False
    ask: str | None = None
    note: str | None = None
    closes: str | None = None


def is_clear(reading: Reading, text: str) -> bool:
    """Return whether a reply is plainly a report: not a bare yes or no that may answer a therapist's own message."""
    if reading.intent not in ABOUT_A_SESSION or reading.ask in ("amount", "meaning", "who"):
        return False
    says_numbers = reading.pain is not None or reading.sets is not None or bool(reading.by_exercise)
    return says_numbers or len(words_of(text)) > 2


def tells_danger(reading: Reading) -> bool:
    """Return whether a reply about a session bears a danger sign or concern, which is judged once it is recorded."""
    is_report = reading.intent in ABOUT_A_SESSION and reading.ask not in ("meaning", "who")
    return is_report and bool(reading.red_flags or reading.concerns)


def decide(reading: Reading, text: str, situation: Situation) -> Decision:
    """Return what to do with a reading; nothing is asked of a held client or beside a therapist's own talk."""
    closes = how_it_closes(reading, situation.asked)
    if situation.staff_wrote and situation.asked is None and not (situation.is_page or is_clear(reading, text)):
        if tells_danger(reading):
            return Decision(record=True)
        if reading.intent in ABOUT_A_SESSION | {"unclear", "question", "reschedule"}:
            return Decision(note="written")
        return Decision()
    if reading.intent in ABOUT_A_SESSION and reading.ask not in ("meaning", "who"):
        if settles(reading, text, situation):
            return Decision(record=True, settles=True, closes=closes)
        closes = "unanswered" if situation.asked == "settling" and closes else closes
        ask = None if situation.is_held or situation.is_closed else what_to_ask(reading, situation)
        return Decision(record=True, ask=ask, closes=closes)
    if closes == "answered" and situation.asked in CHOICES:
        return Decision(closes=closes)
    if reading.intent == "unclear" or reading.ask in ("meaning", "who"):
        if situation.is_held or situation.is_closed or situation.unclear_before:
            return Decision(note="unclear", closes=closes)
        return Decision(ask=reading.ask or "meaning", closes=closes)
    note = reading.intent if reading.intent in ("question", "reschedule") else None
    return Decision(note=note, closes=closes)


def settles(reading: Reading, text: str, situation: Situation) -> bool:
    """Return whether a reply is a rating that answers the morning question and tells nothing of a session.

    "Y3", "7 during the squats" and what stands on a session's own page are reports instead.
    """
    is_report = reading.completed is not None or reading.sets is not None or bool(reading.by_exercise)
    is_rating = situation.asked == "settling" and reading.pain is not None and not is_report
    return is_rating and not situation.is_page and not tells_of_exercising(text)


def tells_of_exercising(text: str) -> bool:
    """Return whether a reply speaks of exercises being done, in any language: "7 during the squats"."""
    said = [word.replace("'", "") for word in words_of(text)]
    line = f" {' '.join(said)} "
    return any(pattern.search(line) and not_yet.isdisjoint(said) for pattern, not_yet in EXERCISING)


def how_it_closes(reading: Reading, asked: str | None) -> str | None:
    """Return how the open question closes by this reply: `answered`, `unanswered`, or None when it stays open."""
    if asked is None:
        return None
    if asked in CHOICES and reading.choice is not None:
        return "answered"
    if asked in ("pain", "settling") and reading.pain is not None and reading.ask != "meaning":
        return "answered" if asked == "pain" or reading.completed is None else "unanswered"
    if asked == "amount" and (reading.completed is not None or reading.sets is not None):
        return "answered"
    if reading.intent in LEAVE_OPEN or reading.ask is not None:
        return None
    return "answered" if asked == "meaning" else "unanswered"


def what_to_ask(reading: Reading, situation: Situation) -> str | None:
    """Return the one thing that a report leaves open: pain of a session done, or how much of it was done."""
    wanted = reading.ask
    if wanted is None and reading.completed in ("all", "part") and reading.pain is None:
        wanted = "pain"
    if wanted is None and reading.intent == "pain" and situation.awaits and situation.asked not in ("pain", "where"):
        wanted = "amount"
    if wanted is None and reading.intent == "report" and reading.completed is None and situation.awaits:
        wanted = "amount"
    return None if wanted in situation.asked_before else wanted
