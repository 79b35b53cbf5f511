"""Answers to what was asked (`choice`), and what must be asked before a reply is recorded (`ask`)."""

from collections.abc import Sequence
from datetime import date

from reminders.core.reading.decision import Decision
from reminders.core.reading.intent import Evidence
from reminders.core.reading.model import Reading, SessionExercise
from reminders.core.reading.roles import Numbers
from reminders.core.reading.session import Mention


SURE = 0.8  # below this a reading would be a guess


def items_as_mentions(numbers: Numbers, session: Sequence[SessionExercise]) -> list[Mention]:
    """Return exercises named by their place in the list ("item 3")."""
    return [Mention(start, end, number - 1, False) for start, end, number in numbers.items if number <= len(session)]


def choice_of(evidence: Evidence, reading: Reading, today: date | None) -> str | int | None:
    """Return the answer to the question that was asked."""
    return None


def ask_of(evidence: Evidence, reading: Reading, decision: Decision) -> str | None:
    """Return what must be asked: a reading that would be a guess asks."""
    if reading.danger:
        return None
    if evidence.pain.off_scale and reading.pain is None:
        return "pain"
    if decision.intent_sureness < SURE and reading.intent not in ("opt_out", "chat"):
        return "meaning"
    if reading.intent == "report" and decision.completed_sureness < SURE:
        return "amount"
    if reading.intent == "unclear":
        return evidence.asked if evidence.asked in ("pain", "amount") else "meaning"
    if reading.intent == "report" and reading.completed is None:
        return "amount"
    if reading.intent in ("report", "pain") and reading.pain is None:
        return "pain"
    return None
