"""Intent and completion of a reply: the rules' word where they are certain, else the trained judge's.

What must never be lost (opt-outs, the carrier words) does not depend on weights.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from reminders.core.reading.completion import completed_of
from reminders.core.reading.intent import Evidence, decide
from reminders.core.reading.judge import verdicts
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.model import SessionExercise


@dataclass(frozen=True)
class Decision:
    """Intent and completion, and how sure they are (0 to 1)."""

    intent: str
    completed: str | None
    intent_sureness: float = 1.0
    completed_sureness: float = 1.0


def decision_of(evidence: Evidence, session: Sequence[SessionExercise], lexicon: Lexicon) -> Decision:
    """Return what the reply is for and how much was done."""
    rule = decide(evidence)
    amount = completed_of(evidence, "report", session)
    judged = verdicts(evidence, rule, amount, lexicon)
    intent, sureness = judged["intent"].name, judged["intent"].sureness
    if _is_certain(evidence, rule):
        intent, sureness = rule, 1.0
    if intent == "skip":
        return Decision(intent, "none", sureness)
    if intent != "report":
        return Decision(intent, None, sureness)
    if evidence.told.by_exercise:
        return Decision(intent, amount, sureness)
    verdict = judged["completed"]
    return Decision(intent, None if verdict.name == "None" else verdict.name, sureness, verdict.sureness)


def _is_certain(evidence: Evidence, rule: str) -> bool:
    """Tell whether the rules decide alone."""
    if rule == "opt_out":
        return True
    if rule in ("opt_in", "help"):
        return evidence.has(f"{rule}_key")
    return False
