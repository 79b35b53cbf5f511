"""The clinical rules: pure functions of a client's history, and the order in which a therapist should read them.

A rule here is added to RULES, with a name and a sentence in templates/rules and a row in its table of cases. What an
alert, a hold or an answer does stands in flows.
"""

from collections.abc import Callable

from reminders.core.rules.danger import RED_FLAGS
from reminders.core.rules.history import Finding, History
from reminders.core.rules.pain import pain_up_at_stop, pain_up_in_the_morning, pain_up_twice, severe_pain

SessionRule = Callable[[History, int], Finding | None]

# The rules about one session's rating, worst first; only the first "pain is up" that fires counts.
RULES: tuple[SessionRule, ...] = (severe_pain, pain_up_at_stop, pain_up_in_the_morning, pain_up_twice)

# Every rule that can open an alert, in the order in which a therapist should read them.
RULE_NAMES = (
    "crisis",
    "chest_or_breathing",
    "nerve_or_bladder",
    "faint_or_dizzy",
    "fall_or_injury",
    "possible_fracture",
    "severe_pain",
    "clot_or_wound",
    "fever",
    "new_back_pain",
    "surgery_or_hospital",
    "death",
    "pain_up",
    "opt_out_after_pain",
    "falls_counted",
    "unreachable",
    "missed",
    "quiet",
)
DANGER_RULES = RED_FLAGS
# Only staff close these; the others may close by themselves.
STAFF_CLOSES = frozenset(RULE_NAMES) - {"missed", "quiet"}


def findings_for(history: History, place: int) -> list[Finding]:
    """Return what the ratings of the session at a place (and its mornings) mean: one finding a rule, worst first."""
    found: dict[str, Finding] = {}
    for rule in RULES:
        finding = rule(history, place)
        if finding is not None:
            found.setdefault(finding.rule, finding)
    return list(found.values())
