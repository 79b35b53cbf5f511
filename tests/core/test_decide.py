"""What a reading leads to, as tables: recorded, asked, noted, and how the open question closes."""

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.decide import ABOUT_A_SESSION, Decision, Situation, decide, is_clear
from reminders.core.reading.model import ASKED, INTENTS, ExerciseDone, Reading

ALL = Reading("report", "all")
ALL_3 = Reading("report", "all", pain=3)
PAIN_4 = Reading("pain", pain=4)
UNCLEAR = Reading("unclear", ask="meaning")

CASES = {
    "a whole report": (ALL_3, Situation(), Decision(record=True)),
    "a report without pain asks for it": (ALL, Situation(), Decision(record=True, ask="pain")),
    "once a session only": (ALL, Situation(asked_before=frozenset({"pain"})), Decision(record=True)),
    "not of a held client": (ALL, Situation(is_held=True), Decision(record=True)),
    "not today needs no pain": (Reading("skip", "none"), Situation(), Decision(record=True)),
    "pain off the scale asks again": (
        Reading("report", "all", ask="pain"),
        Situation(),
        Decision(record=True, ask="pain"),
    ),
    "pain alone while the session is awaited asks how much": (
        PAIN_4,
        Situation(awaits=True),
        Decision(record=True, ask="amount"),
    ),
    "pain alone otherwise asks nothing": (PAIN_4, Situation(), Decision(record=True)),
    "the answer to the pain question": (
        PAIN_4,
        Situation(asked="pain", awaits=True),
        Decision(record=True, closes="answered"),
    ),
    "a bare rating answers the morning question": (
        PAIN_4,
        Situation(asked="settling"),
        Decision(record=True, settles=True, closes="answered"),
    ),
    "Y3 is a report and leaves the morning question unanswered": (
        ALL_3,
        Situation(asked="settling"),
        Decision(record=True, closes="unanswered"),
    ),
    "amounts beside a rating are a report and leave it unanswered": (
        replace(PAIN_4, sets=2),
        Situation(asked="settling"),
        Decision(record=True, closes="unanswered"),
    ),
    "a rating on a session's own page is that session's": (
        PAIN_4,
        Situation(asked="settling", is_page=True),
        Decision(record=True, closes="unanswered"),
    ),
    "a choice answers its question": (
        Reading("unclear", choice="busy", ask=None),
        Situation(asked="reason"),
        Decision(closes="answered"),
    ),
    "a count of days answers": (Reading("unclear", choice=4), Situation(asked="days"), Decision(closes="answered")),
    "a report does not answer the reason question": (
        ALL_3,
        Situation(asked="reason"),
        Decision(record=True, closes="unanswered"),
    ),
    "a pause said plainly after we asked what she meant is a pause": (
        Reading("pause"),
        Situation(asked="meaning"),
        Decision(closes="answered"),
    ),
    "an exercise alone asks how much of the rest": (
        Reading("report", by_exercise=(ExerciseDone("heel raise", 1, 10, "all"),)),
        Situation(awaits=True),
        Decision(record=True, ask="amount"),
    ),
    "thanks leave a question open": (Reading("chat"), Situation(asked="pain"), Decision()),
    "a question of hers leaves ours open": (Reading("question"), Situation(asked="pain"), Decision(note="question")),
    "unclear asks what it means": (UNCLEAR, Situation(), Decision(ask="meaning")),
    "unclear after the pain question asks that again": (
        Reading("unclear", ask="pain"),
        Situation(asked="pain"),
        Decision(ask="pain"),
    ),
    "unclear twice goes to the clinic": (UNCLEAR, Situation(unclear_before=True), Decision(note="unclear")),
    "unclear from a held client goes to the clinic": (UNCLEAR, Situation(is_held=True), Decision(note="unclear")),
    "a wish for other days goes to the clinic": (Reading("reschedule"), Situation(), Decision(note="reschedule")),
    "a clear report beside a therapist's talk is read as ever": (
        ALL_3,
        Situation(staff_wrote=True),
        Decision(record=True),
    ),
    "a bare yes beside it is not recorded": (
        Reading("report", "all", ask="pain"),
        Situation(staff_wrote=True),
        Decision(note="written"),
    ),
    "a danger sign in two words is read as ever": (
        Reading("pain", red_flags=("fall_or_injury",), ask="amount"),
        Situation(staff_wrote=True),
        Decision(record=True),
    ),
    "so is a concern": (
        Reading("skip", "none", concerns=("fever",)),
        Situation(staff_wrote=True),
        Decision(record=True),
    ),
    "one that was judged already and is no report is only noted": (
        Reading("pain", red_flags=("fall_or_injury",), ask="meaning"),
        Situation(staff_wrote=True),
        Decision(note="written"),
    ),
    "a page is a report": (
        Reading("report", "all"),
        Situation(staff_wrote=True, is_page=True),
        Decision(record=True, ask="pain"),
    ),
    "unclear beside it asks nothing": (UNCLEAR, Situation(staff_wrote=True), Decision(note="written")),
}


@pytest.mark.parametrize(("reading", "situation", "expected"), CASES.values(), ids=CASES)
def test_a_reading_leads_to(reading: Reading, situation: Situation, expected: Decision) -> None:
    assert decide(reading, "yes", situation) == expected


CLEAR = {
    "a bare yes": (Reading("report", "all", ask="pain"), "yes", False),
    "yes with pain": (ALL_3, "Y3", True),
    "an amount": (Reading("report", "all", sets=2, reps=10), "2x10", True),
    "an exercise": (Reading("report", "part", by_exercise=(ExerciseDone("heel raise", 1, 10, "all"),)), "heel", True),
    "a sentence": (Reading("report", "all", ask="pain"), "did all of them", True),
    "nothing about a session": (Reading("question"), "can I use a chair please", False),
    "one that must be asked": (Reading("report", ask="amount"), "I did some of it", False),
}


@pytest.mark.parametrize(("reading", "text", "expected"), CLEAR.values(), ids=CLEAR)
def test_a_clear_report_is_more_than_a_bare_yes(reading: Reading, text: str, expected: bool) -> None:
    assert is_clear(reading, text) is expected


EXERCISING = {
    "7 during the squats": True,
    "pain 7 with all my exercises": True,
    "7 doing the exercises today": True,
    "dolor 7 con los ejercicios": True,
    "7 durante la sesión": True,
    "6 this morning": False,
    "6 before doing my exercises": False,
    "6, I haven't started with the exercises": False,
    "6 after the exercises": False,
    "6 antes de empezar con los ejercicios": False,
    "7 with my knee, walking": False,
}


@pytest.mark.parametrize(("text", "expected"), EXERCISING.items(), ids=EXERCISING)
def test_the_morning_question_is_not_answered_by_a_rating_of_exercises_being_done(text: str, expected: bool) -> None:
    made = decide(PAIN_4, text, Situation(asked="settling"))

    assert (not made.settles, made.closes == "unanswered") == (expected, expected)


readings = st.builds(
    Reading,
    intent=st.sampled_from(INTENTS),
    completed=st.sampled_from([None, "all", "part", "none"]),
    pain=st.none() | st.integers(0, 10),
    choice=st.none() | st.sampled_from(["busy", "yes", 3]),
    ask=st.sampled_from([None, "pain", "amount", "meaning", "who"]),
)
situations = st.builds(
    Situation,
    asked=st.none() | st.sampled_from(ASKED),
    awaits=st.booleans(),
    unclear_before=st.booleans(),
    is_held=st.booleans(),
    is_closed=st.booleans(),
    staff_wrote=st.booleans(),
    is_page=st.booleans(),
)


@given(readings, situations)
def test_a_held_client_is_asked_nothing_about_herself(reading: Reading, situation: Situation) -> None:
    made = decide(reading, "some words", replace(situation, is_held=True))

    assert made.ask is None


@given(readings, situations)
def test_two_unclear_replies_running_never_bring_a_third_question(reading: Reading, situation: Situation) -> None:
    made = decide(reading, "some words", replace(situation, unclear_before=True))

    assert made.record or made.ask is None


@given(readings, situations)
def test_no_question_closes_that_was_not_open(reading: Reading, situation: Situation) -> None:
    assert decide(reading, "some words", replace(situation, asked=None)).closes is None


@given(readings, situations)
def test_only_what_is_about_a_session_is_recorded(reading: Reading, situation: Situation) -> None:
    assert not decide(reading, "some words", situation).record or reading.intent in ABOUT_A_SESSION
