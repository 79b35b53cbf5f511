"""When the dose may go up, and when it should go back. What a step is stands in core/dose.py and core/programs.py."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date

from reminders.core.levels import Levels, progress_level
from reminders.core.rules.history import CLOSED_STATES, History, SessionFact


@dataclass(frozen=True)
class StepFacts:
    """What a step needs beside the sessions; days are her local dates.

    `least_days`: the longest stay that an exercise of hers asks on this rung. `efforts`: her answers to the effort
    question since the rung began, newest last. `anything_open`: an alert, hold, pause or proposal of hers.
    """

    today: date
    rung: int
    rung_on: date
    has_next: bool = True
    least_days: int = 14
    recheck_on: date | None = None
    anything_open: bool = False
    efforts: tuple[str, ...] = ()
    prescribed_reps: int | None = None


@dataclass(frozen=True)
class Step:
    """A step that the record speaks for. `direction`: up or back. `reasons` are names of sentences with values."""

    direction: str
    to_rung: int
    reasons: tuple[tuple[str, dict[str, int | float]], ...] = field(default=())


def step_up(history: History, facts: StepFacts) -> Step | None:
    """Return a step up when the record speaks for it; the effort question is asked before it is proposed.

    At least 4 of the last 6 in full, at most one rating over the higher of 3 and usual + 1, none over 5, at least 14
    days on the rung, nothing open, not "hard": common practice, no source; ratings to 5 are acceptable: NHS AHP
    Suffolk, Returning to Activity; effort 5-8 of 10: Bone Fit course page. No step four weeks past the re-check.
    """
    levels = history.levels
    if not facts.has_next or facts.anything_open or (facts.today - facts.rung_on).days < facts.least_days:
        return None
    if facts.recheck_on and (facts.today - facts.recheck_on).days > levels.recheck_grace_days:
        return None
    if facts.efforts and facts.efforts[-1] == "hard":
        return None
    recent = on_this_rung(history, facts)[-levels.progress_of :]
    done = sum(one.state == "done" for one in recent)
    if len(recent) < levels.progress_of or done < levels.progress_full:
        return None
    rated = rated_since(history, recent[0].on)
    if not pain_allows(history, rated):
        return None
    reasons: list[tuple[str, dict[str, int | float]]] = [("in_full", {"done": done, "of": len(recent)})]
    reasons.append(("pain_allows", {"worst": max((one.pain or 0 for one in rated), default=0)}))
    if list(facts.efforts[-2:]) == ["easy", "easy"]:
        reasons.append(("easy_twice", {}))
    return Step("up", facts.rung + 1, tuple(reasons))


def on_this_rung(history: History, facts: StepFacts) -> list[SessionFact]:
    """Return the closed sessions since the rung began, without easy days and extra ones."""
    return [
        one
        for one in history.sessions
        if one.state in CLOSED_STATES and not one.is_extra and not one.is_easy and one.on >= facts.rung_on
    ]


def rated_since(history: History, since: date) -> list[SessionFact]:
    """Return the rated sessions since a day, whatever became of them: the rating that brought a hold counts most."""
    return [one for one in history.sessions if one.on >= since and one.pain is not None and not one.is_extra]


def pain_allows(history: History, sessions: Sequence[SessionFact]) -> bool:
    """Return whether the ratings of some sessions leave room for more."""
    levels = history.levels
    rated = [(one.pain, history.usual_before(history.place(one.id))) for one in sessions if one.pain is not None]
    over = sum(pain > progress_level(usual, levels) for pain, usual in rated)
    return over <= levels.progress_pain_over and all(pain <= levels.progress_pain_most for pain, _ in rated)


def step_back(history: History, facts: StepFacts) -> Step | None:
    """Return a step back when she did fewer than 8 reps twice running where 8 or more were asked.

    Fewer than 8 possible is too hard: Osteoporosis Canada, Exercises for healthy bones.
    """
    few = history.levels.few_reps
    if facts.rung < 1 or facts.anything_open or (facts.prescribed_reps or 0) < few:
        return None
    told = [one for one in on_this_rung(history, facts) if one.reps is not None][-2:]
    if len(told) < 2 or any(one.reps is None or one.reps >= few for one in told):
        return None
    fewest = min(one.reps or 0 for one in told)
    return Step("back", facts.rung - 1, (("few_reps", {"reps": fewest, "least": few}),))


def after_absence(rung: int, days: int, was_ill: bool, levels: Levels) -> int:
    """Return the rung to come back to: two weeks away one lower, four or an illness the first. Common practice."""
    if days >= levels.absence_long_days or was_ill:
        return 0
    return max(0, rung - 1) if days >= levels.absence_days else rung
