"""What became of each exercise that a reply names, where the trained opinion sees more than the rules."""

import pytest

from reminders.core.reading import statuses
from reminders.core.reading.model import ExerciseDone
from reminders.core.reading.reader import evidence_of, read
from tests.corpus.measure import PARSED

# (session, text, what became of the exercises named): told in ways that the rules alone read otherwise.
TOLD = [
    ("S1", "D first, then A, then B. Ran out of time for C", "A all, B all, C none, D all"),
    ("S1", "exercise B only did six then my shoulder pinched. A C D complete", "A all, B part, C all, D all"),
    ("S1", "missed out tandem as the cat kept barging me, rest completed", "D none"),
    ("S1", "i couldnt do the one against the wall, theres a new dresser there. did the rest", "B none"),
    ("S1", "did wall and chair not the other 2", "A all, B all"),
    ("S2", "hip lifts 2x10 on the left, not on the right, bursitis. Rest done", "D part"),
    ("S2", "side leg raises: left 10, right 6. Rest of list complete.", "D part"),
    ("S2", "the hinge killed my pride, not my back. pain 2, finished", ""),
    ("S3", "ya hice pared y silla, me falta talones y tandem", "A all, B all, C none, D none"),
    ("S3", "tándem solo del lado izquierdo, silla y pared y talones sin problema", "A all, B all, C all, D part"),
    ("S3", "equilibrio: un lado 20 seg, el otro 6. Talones ok", "C all, D part"),
    ("S3", "Hechos: a, b, d. Sin hacer: c.", "A all, B all, C none, D all"),
]
# Named only as where or when something happened: no line of its own.
ONLY_NAMED = [
    "felt a pop during the heel raises",
    "Is the tandem stance supposed to make me wobble?",
    "did everything, love the heel raises",
]


def lines_of(session: str, text: str) -> str:
    language = "es" if session == "S3" else "en"
    letters = {exercise.name: exercise.letter for exercise in PARSED[session]}
    lines = read(text, language, PARSED[session], None).reading.by_exercise
    return ", ".join(sorted(f"{letters[line.name]} {line.completed}" for line in lines))


@pytest.mark.parametrize(("session", "text", "wanted"), TOLD)
def test_what_became_of_an_exercise_is_read_from_the_words_about_it(session: str, text: str, wanted: str) -> None:
    assert lines_of(session, text) == wanted


@pytest.mark.parametrize("text", ONLY_NAMED)
def test_an_exercise_that_is_only_spoken_of_gets_no_line(text: str) -> None:
    assert lines_of("S1", text) == ""


def test_an_opinion_that_is_not_sure_leaves_the_rules_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(statuses, "SURE", 1.1)
    monkeypatch.setattr(statuses, "SURE_AGAINST_WORD", 1.1)

    evidence, _, session = evidence_of("did wall and chair not the other 2", "en", PARSED["S1"], None)

    assert evidence.named is not None
    assert lines_of("S1", "did wall and chair not the other 2") != "A all, B all"  # what it says when it is sure
    by_rules = {session[one].name: evidence.named.status_by_rules(one) for one in evidence.named.exercises}
    assert {line.name: line.completed for line in evidence.told.by_exercise} == by_rules


def test_what_was_not_done_has_no_amount_left() -> None:
    changed = statuses.changed(ExerciseDone("heel raise", 2, 10, "all"), "none")

    assert changed == ExerciseDone("heel raise", None, None, "none")
