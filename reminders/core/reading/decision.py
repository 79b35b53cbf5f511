"""Intent and completion of a reply: the rules' word where they are certain, else the trained judge's.

What must never be lost (opt-outs, the carrier words) does not depend on weights.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from reminders.core.reading.completion import completed_of
from reminders.core.reading.intent import Evidence, decide
from reminders.core.reading.judge import Verdict, verdicts
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.model import SessionExercise

NO_DANGER = "none"
CALM_FROM = 0.45  # below this belief in "no danger" the likeliest sign is raised


@dataclass(frozen=True)
class Decision:
    """Intent and completion, and how sure they are (0 to 1)."""

    intent: str
    completed: str | None
    intent_sureness: float = 1.0
    completed_sureness: float = 1.0
    correction: bool = False
    danger: str | None = None  # a sign that no rule found and the judge suspects


def decision_of(evidence: Evidence, session: Sequence[SessionExercise], lexicon: Lexicon) -> Decision:
    """Return what the reply is for and how much was done."""
    rule = decide(evidence)
    amount = completed_of(evidence, "report", session)
    judged = verdicts(evidence, rule, amount, lexicon)
    if _is_certain(evidence, rule):
        intent, sureness = rule, 1.0
    else:
        likeliest = judged["intent"]
        intent, sureness = likeliest.name, likeliest.sureness
    completed, amount_sureness = None, 1.0
    if intent == "skip":
        completed = "none"
    elif intent == "report" and evidence.told.by_exercise:
        completed = amount
    elif intent == "report":
        verdict = judged["completed"]
        completed, amount_sureness = None if verdict.name == "None" else verdict.name, verdict.sureness
    return Decision(
        intent,
        completed,
        sureness,
        amount_sureness,
        judged.likeliest("correction") == "True",
        None if evidence.danger.grades else _suspected(judged["danger"]),
    )


def _suspected(verdict: Verdict) -> str | None:
    """Return the danger sign that the judge sees where the rules see none; a needless call costs less than a lost
    sign."""
    if verdict.name != NO_DANGER:
        return verdict.name
    return verdict.runner_up if verdict.sureness < CALM_FROM else None


def _is_certain(evidence: Evidence, rule: str) -> bool:
    """Tell whether the rules decide alone."""
    if rule == "opt_out":
        return True
    if rule in ("opt_in", "help"):
        return evidence.has(f"{rule}_key")
    return rule == "report" and evidence.has("num.invited")  # the short answer that every reminder invites
