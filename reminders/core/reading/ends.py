"""The wish to hear no more, where no rule is sure: the judge's second opinion, and what is reported beside the wish.

One too many is answered by how to come back, one too few breaks the law.
"""

from collections.abc import Sequence

from reminders.core.reading.completion import completed_of
from reminders.core.reading.intent import Evidence
from reminders.core.reading.judge import Verdicts
from reminders.core.reading.model import SessionExercise

_ENDS_FROM = 0.1
_BESIDE_REPORT = 0.3  # beside a session done or a rating, where no rule sees a wish: "ya no más, dolor 4"
_ENDS_WHEN_ASKED = 0.4  # few rows teach what else an answer to a question could be
_AGAINST_RULES = 0.15  # where the rules found a wish and took it back: "don't stop the texts"
_AGAINST_PLAN = 0.5  # where they found a pause or a return beside the words, or the other judge is sure of one
_SURE_PLAN = 0.85
_SURE_ASKED = 0.95
_SURE_WISH = 0.85
_SURE_ENDS = frozenset({"opt_out_key", "opt_out_sure"})
_PLANS = frozenset({"opt_in", "pause", "reschedule", "resend", "help", "wrong_number"})


def is_doubtful(evidence: Evidence) -> bool:
    """Tell whether a reply only sounds like a wish to hear no more: "stop by and see me", "don't stop the texts"."""
    only_sounds = "opt_out" not in evidence.hits and any(s == 0 for s, _ in evidence.hits.get("opt_out_not", ()))
    return only_sounds or "opt_out_denied" in evidence.hits


def is_possible(judged: Verdicts, asked: str | None) -> bool:
    """Tell whether the judge who knows only wishes to hear no more thinks one possible."""
    return judged.share("ends", "opt_out") >= (_ENDS_FROM if asked is None else _ENDS_WHEN_ASKED)


def is_other_hour(evidence: Evidence, judged: Verdicts) -> bool:
    """Tell whether words of a wish to hear no more only lead to another hour: "no more texts at 6, send them at 9"."""
    likeliest = judged["intent"]
    if likeliest.name != "reschedule" or likeliest.sureness < _SURE_PLAN or not _SURE_ENDS.isdisjoint(evidence.hits):
        return False
    if judged.share("ends", "opt_out") >= _SURE_WISH:
        return False  # "don't text me on Sunday or any other day"
    ends = [start for start, _ in evidence.spans("opt_out")]
    return any(start > max(ends, default=0) for start, _ in evidence.spans("reschedule"))


def is_wanted(evidence: Evidence, rule: str, judged: Verdicts) -> bool:
    """Tell whether that judge sees one; the rules may have taken it back, or found a pause."""
    share = judged.share("ends", "opt_out")
    if "opt_out_denied" in evidence.hits:
        return False
    if "own_number" in evidence.hits and "opt_out" not in evidence.hits:
        return share >= _SURE_WISH  # "this is my number now, use it" beside "this is my number, lose it"
    if rule == "opt_in" or (rule == "pause" and "pause_sure" in evidence.held):
        return "opt_out" in evidence.hits and "opt_out_past" not in evidence.hits and share >= _AGAINST_PLAN
    likeliest = judged["intent"]
    if likeliest.name in _PLANS and likeliest.sureness >= _SURE_PLAN:
        return share >= _AGAINST_PLAN
    if likeliest.name == rule == "question" and likeliest.sureness >= _SURE_ASKED and "opt_out" not in evidence.hits:
        return share >= _AGAINST_PLAN  # "will I need these forever?"
    is_taken_back = "opt_out_not" in evidence.held and "opt_out" not in evidence.held
    usual = _AGAINST_RULES if is_taken_back else _ENDS_FROM
    reports = evidence.done() or evidence.numbers.pains or "part" in evidence.hits  # "partway, kid had to be picked up"
    if "opt_out" not in evidence.hits and reports:
        usual = _BESIDE_REPORT
    return share >= (usual if evidence.asked is None else _ENDS_WHEN_ASKED)


def told_beside(evidence: Evidence, session: Sequence[SessionExercise]) -> str | None:
    """Return how much was done, when a wish to hear no more is told beside a session: "did all, now stop texting"."""
    ends = evidence.hits.get("opt_out", ())
    if evidence.told.sets is not None:
        evidence.told.by_exercise = ()  # "2x10, and that's my last one, no more texts" leaves out no exercise
    amount = completed_of(evidence, "report", session)
    beside = [
        (start, end)
        for start, end in (*evidence.done(), *evidence.spans("skip_sure"))
        if not any(low < end and start < high for low, high in ends)
    ]
    how_much = [*evidence.spans("all"), *evidence.spans("part")]
    if evidence.told.amounts and (evidence.told.sets is not None or evidence.told.by_exercise):
        return amount
    if beside and evidence.told.by_exercise:
        return amount
    if any(low <= end and start <= high for start, end in beside for low, high in how_much):
        return amount
    return "none" if beside and "day.today" in evidence.held and not evidence.done() else None
