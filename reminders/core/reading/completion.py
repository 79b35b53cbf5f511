"""How much of the session was done: all, part, none, or not said.

Groups of exercises ("everything but the wall", "the first three", "the rest no") are turned into lines here.
"""

from collections.abc import Sequence

from reminders.core.reading.intent import Evidence
from reminders.core.reading.lines import line_of
from reminders.core.reading.model import ExerciseDone, SessionExercise

_FEW = 2  # exercises that are not told in a row
_MOST_SETS = 6
_BARE = 2  # words
_WHOLE = 100  # percent


def add_groups(evidence: Evidence, session: Sequence[SessionExercise]) -> None:
    """Add lines for exercises told as a group: the rest not done, none of the others, item by place."""
    told = evidence.told
    if not session:
        return
    _put_right(evidence)
    if not told.by_exercise:
        _add_in_order(evidence, session)
        return
    if evidence.has("others_not", "rest_not"):  # "the other two I left": only what is named is listed
        told.rest = "not"
    elif evidence.has("rest_done", "others_done"):
        told.rest = "done"


def _put_right(evidence: Evidence) -> None:
    """Take the one number left over of a correction about sets for the sets: "I put 2 sets. It was 1"."""
    loose, told, text = evidence.numbers.loose, evidence.told, evidence.scope.text
    if len(loose) != 1 or told.amounts or told.by_exercise:
        return
    lexicon = evidence.scope.lexicon
    about_sets = not lexicon.either("SET", "SETS_WORD").isdisjoint(text.present)
    said = evidence.has("correction", "correction_plain") or not lexicon.chars("SAIDWORD").isdisjoint(text.present)
    if about_sets and said and "pain_said" not in evidence.held and evidence.asked is None:
        value = text.values[loose.pop()] or 0
        if 1 <= value <= _MOST_SETS and value == int(value):
            told.sets = int(value)


def _add_in_order(evidence: Evidence, session: Sequence[SessionExercise]) -> None:
    """Read as many doses, or as many yeses and noes, as there are exercises as theirs: "2x10 2x8 2x12 2x20", "y y y
    n"."""
    told, count = evidence.told, len(session)
    if count <= _FEW:
        return
    doses = [one for one in evidence.numbers.amounts if one.kind == "amount" and one.sets is not None]
    if len(doses) == count and len({(one.sets, one.reps) for one in doses}) > 1:
        told.by_exercise = tuple(
            line_of(exercise, dose)
            for exercise, dose in zip(session, sorted(doses, key=lambda one: one.start), strict=True)
        )
        told.sets = told.reps = None
        return
    lexicon = evidence.scope.lexicon
    answers = lexicon.either("YES", "ANSWER_NO")
    if answers.isdisjoint(evidence.scope.text.present):
        return
    marks = [char for char in evidence.signature if char in answers]
    if len(marks) != count:
        return
    words = [char for char in evidence.signature if char not in ".,?"]
    if len(words) <= count + 4 and len(set(marks)) > 1:
        told.by_exercise = tuple(
            ExerciseDone(exercise.name, None, None, "all" if lexicon.is_in("YES", char) else "none")
            for exercise, char in zip(session, marks, strict=True)
        )


def completed_of(evidence: Evidence, intent: str, session: Sequence[SessionExercise]) -> str | None:
    """Return all, part, none or None for the session."""
    if intent == "skip":
        return "none"
    if intent != "report":
        return None
    told = evidence.told
    if told.by_exercise:
        return _of_lines(evidence, session)
    if told.sets is not None and session:
        wanted = session[0].sets or 1
        if told.sets < wanted:
            return "part"
    if "num.invited" in evidence.held and "part_sure" not in evidence.held:
        return "all"
    if "amount_unknown" in evidence.held:
        return None
    if is_percentage(evidence):
        return "part"
    counts = evidence.numbers.counts
    if counts:
        return "all" if max(done for _, done, _ in counts) >= counts[0][2] and not _is_part(evidence) else "part"
    if "part" in evidence.held and not _all_beats_part(evidence):
        return "part"
    if "all" in evidence.held:
        return "all"
    if told.sets is not None or told.reps is not None:
        return _of_amount(evidence, session)
    if evidence.numbers.has_minutes and "done_plain" not in evidence.held:
        return None
    return "all" if evidence.done() or "yes_report" in evidence.held else None


def is_uneven_pair(evidence: Evidence) -> bool:
    """Tell whether a reply to nothing is two different numbers alone: "8 and 5" could be anything."""
    amounts = evidence.told.amounts
    is_pair = len(amounts) == 1 and amounts[0].kind == "pair" and amounts[0].reps is None and amounts[0].sets == _BARE
    return is_pair and evidence.asked is None and len(evidence.signature) == _BARE + 1


def is_bare_amount(evidence: Evidence) -> bool:
    """Tell whether a reply to nothing is an amount and nothing else, sets told: "10 and 10", "2x10"."""
    amounts = evidence.told.amounts
    is_told = len(amounts) == 1 and amounts[0].sets is not None and amounts[0].reps is not None
    return is_told and evidence.asked is None and amounts[0].end - amounts[0].start == len(evidence.signature)


def is_percentage(evidence: Evidence) -> bool:
    """Tell whether a share is told: "50% complete", "got 80 percent of it done", "about 3/4 of it"."""
    lexicon, text = evidence.scope.lexicon, evidence.scope.text
    chars = text.signature
    if not lexicon.chars("FRAC").isdisjoint(text.present) and any(
        lexicon.is_in("FRAC", char)
        and (text.values[at] or 0) < (text.second[at] or 0)
        and any(lexicon.is_in(one, chars[at + 1 : at + 2]) for one in ("DONE", "OF", "THRU"))
        for at, char in enumerate(chars)
    ):
        return True
    if lexicon.chars("PERCENT").isdisjoint(text.present):
        return False
    return any(
        lexicon.is_in("PERCENT", char)
        and 0 < (text.values[at - 1] or 0 if at else 0) < _WHOLE
        and any(lexicon.is_in(one, chars[at + 1 : at + 2]) for one in ("DONE", "OF", "EXERNOUN"))
        for at, char in enumerate(chars)
    )


def _is_part(evidence: Evidence) -> bool:
    """Tell whether "all four" is taken back: by a sure word for part, or by any where nothing is told as done."""
    return "part" in evidence.held and ("part_sure" in evidence.held or not evidence.done())


def _all_beats_part(evidence: Evidence) -> bool:
    """Tell whether a plain "all of it" stands beside words for part that mean something else."""
    return "all" in evidence.held and "part_sure" not in evidence.held


def _of_amount(evidence: Evidence, session: Sequence[SessionExercise]) -> str | None:
    """Return the completion that a bare amount means; without a session it means none."""
    told = evidence.told
    if not session:
        return "all" if evidence.done() else None
    wanted = session[0].sets or 1
    if told.sets is None and told.reps:
        return "all" if told.reps > max(exercise.reps or 0 for exercise in session) else "part"
    if told.sets is None:
        return "all" if evidence.done() else None
    return "all" if told.sets >= wanted else "part"


def _of_lines(evidence: Evidence, session: Sequence[SessionExercise]) -> str | None:
    """Return the completion that lines for single exercises mean."""
    lines = evidence.told.by_exercise
    states = {one.completed for one in lines} | ({"none"} if evidence.told.rest == "not" else set())
    if states == {"none"}:
        return "none" if len(lines) == len(session) else "part"
    if states != {"all"}:
        return "part"
    if len(lines) >= len(session) or evidence.told.rest == "done":
        return "all"
    if "all" in evidence.held and "part_sure" not in evidence.held:
        return "all"
    if "correction" in evidence.held and len(lines) < len(session) and "part" not in evidence.held:
        return None
    return "part"
