from random import Random

import pytest

from reminders.demo.answering import Life, Reached
from reminders.demo.habits import Habit
from reminders.demo.people import Person

REMINDER = Reached("reminder", items=[{"name": "heel raise", "sets": 2, "reps": 12}])


def a_life(**habit: object) -> Life:
    made = Habit("of the tests", **{"answers": 1.0, "full": 1.0, "part": 0.0, "no_number": 0.0, **habit})  # type: ignore[arg-type]
    return Life(Person(made, {"name": "Ana Ruiz"}), Random(1))


def test_the_same_seed_writes_the_same() -> None:
    texts = [[a_life().reached(REMINDER) for _ in range(1)] for _ in range(2)]

    assert texts[0] == texts[1]


def test_a_moment_takes_the_place_of_an_answer() -> None:
    life = a_life(moments={2: ((5, "I fell"),)})

    assert life.reached(REMINDER)[0][1] != "I fell"
    assert life.reached(REMINDER) == [(5, "I fell")]
    assert life.is_in_a_moment


def test_in_her_silent_weeks_nothing_comes() -> None:
    life = a_life(silent=(1, 2), evening=1.0)

    assert life.reached(REMINDER) == life.reached(Reached("evening")) == life.reached(REMINDER) == []
    assert life.reached(REMINDER) != []


def test_the_evening_prompt_is_answered_only_when_the_reminder_was_not() -> None:
    answered, silent = a_life(evening=1.0), a_life(answers=0.0, evening=1.0)
    answered.reached(REMINDER)
    silent.reached(REMINDER)

    assert answered.reached(Reached("evening")) == []
    assert len(silent.reached(Reached("evening"))) == 1


def test_pain_follows_her_spells() -> None:
    life = a_life(pain=((1, 0, 0), (3, 9, 9)))
    ratings = []
    for _ in range(4):
        life.reached(REMINDER)
        ratings.append(life.pain)

    assert ratings == [0, 0, 9, 9]


def test_amounts_are_those_of_the_session() -> None:
    life = a_life(style="numbers")

    assert life.reached(REMINDER)[0][1].find("2x12") >= 0


@pytest.mark.parametrize(("question", "words"), [("pain", "7"), ("effort", "hard")])
def test_a_question_gets_her_own_answer(question: str, words: str) -> None:
    life = a_life(says={question: words})
    said = [life.answer(question, REMINDER.on) for _ in range(20)]

    assert {one[0][1] for one in said if one} == {words}
