"""Danger signs and concerns: which alert, hold and wording each reading brings."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.core.rules.danger import (
    CONCERN_HOLDS,
    GRADE_OF,
    GRADES,
    concern_findings,
    danger_findings,
    falls_counted,
    is_higher,
    wording,
)
from reminders.core.rules.history import History


def reading(danger: dict[str, str] | None = None, pain: int | None = None, **more: object) -> dict[str, object]:
    grades = danger or {}
    return {"red_flags": list(grades), "danger": grades, "pain": pain, "about": "self", **more}


# reading -> ([(rule, level, holds)], wording)
CASES = {
    "nothing": (reading(), [], None),
    "chest pain": (
        reading({"chest_or_breathing": "call_now"}),
        [("chest_or_breathing", "urgent", True)],
        "danger_call_now",
    ),
    "legs gone numb": (
        reading({"nerve_or_bladder": "call_now"}),
        [("nerve_or_bladder", "urgent", True)],
        "danger_call_now",
    ),
    "fainted": (reading({"faint_or_dizzy": "call_now"}), [("faint_or_dizzy", "urgent", True)], "danger_call_now"),
    "dizzy now": (reading({"faint_or_dizzy": "urgent"}), [("faint_or_dizzy", "urgent", True)], "danger_today"),
    "dizzy on standing and over": (reading({"faint_or_dizzy": "today"}), [("faint_or_dizzy", "today", False)], None),
    "fell and hit her head": (
        reading({"fall_or_injury": "call_now"}),
        [("fall_or_injury", "urgent", True)],
        "danger_call_now",
    ),
    "fell today, unhurt": (reading({"fall_or_injury": "urgent"}), [("fall_or_injury", "urgent", True)], "danger_today"),
    "fell last week, unhurt": (reading({"fall_or_injury": "today"}), [("fall_or_injury", "today", False)], None),
    "sharp sudden back pain": (
        reading({"possible_fracture": "urgent"}),
        [("possible_fracture", "urgent", True)],
        "danger_today",
    ),
    "pain 9": (reading({"severe_pain": "urgent"}, 9), [("severe_pain", "urgent", True)], "danger_today"),
    "pain 9 without the flag": (reading(pain=9), [("severe_pain", "urgent", True)], "danger_today"),
    "unbearable, no number": (reading({"severe_pain": "urgent"}), [("severe_pain", "urgent", True)], "danger_today"),
    "wants to die": (reading({"crisis": "call_now"}), [("crisis", "urgent", True)], "crisis"),
    "two signs in one text are two rules, worst first": (
        reading({"fall_or_injury": "urgent", "chest_or_breathing": "call_now"}),
        [("chest_or_breathing", "urgent", True), ("fall_or_injury", "urgent", True)],
        "danger_call_now",
    ),
    "crisis beside a call-now sign": (
        reading({"faint_or_dizzy": "call_now", "crisis": "call_now"}),
        [("faint_or_dizzy", "urgent", True), ("crisis", "urgent", True)],
        "crisis",
    ),
}


@pytest.mark.parametrize(("words", "expected", "answer"), CASES.values(), ids=CASES.keys())
def test_danger_signs(words: dict[str, object], expected: list[tuple[str, str, bool]], answer: str | None) -> None:
    found = danger_findings(words)
    assert [(one.rule, one.level, one.holds) for one in found] == expected
    assert wording(words, found) == answer


def test_a_flag_without_a_grade_counts_as_the_graver_one() -> None:
    found = danger_findings({"red_flags": ["faint_or_dizzy"], "danger": {}})
    assert wording({}, found) == "danger_call_now"


def test_a_number_below_her_own_severe_level_is_no_danger_sign() -> None:
    assert danger_findings(reading({"severe_pain": "urgent"}, 8), severe=9) == []
    assert [one.rule for one in danger_findings(reading({"severe_pain": "urgent"}, 9), severe=9)] == ["severe_pain"]
    assert [one.rule for one in danger_findings(reading({"severe_pain": "urgent"}), severe=9)] == ["severe_pain"]


def test_words_for_severe_pain_count_beside_a_number_below_her_own_level() -> None:
    words = reading({"severe_pain": "urgent"}, 8, severe_in_words=True)
    assert [one.rule for one in danger_findings(words, severe=9)] == ["severe_pain"]


FRAGILE = History(precautions=frozenset({"low bone density"}))
SPINE = History(precautions=frozenset({"spinal fracture"}))
STURDY = History(precautions=frozenset({"walking aid"}))
UNSTATED = History(precautions_stated=False)
CONCERNS = {
    "a hot swollen calf": (["clot_or_wound"], STURDY, [("clot_or_wound", "today", False)]),
    "fever": (["fever"], STURDY, [("fever", "today", False)]),
    "surgery": (["surgery_or_hospital"], STURDY, [("surgery_or_hospital", "today", True)]),
    "her own death": (["death"], STURDY, [("death", "today", True)]),
    "bereaved opens nothing": (["bereaved"], STURDY, []),
    "a flare opens nothing": (["flare"], STURDY, []),
    "new back pain with low bone density": (["new_back_pain"], FRAGILE, [("new_back_pain", "today", True)]),
    "new back pain after a spinal fracture": (["new_back_pain"], SPINE, [("new_back_pain", "today", True)]),
    "new back pain in another client": (["new_back_pain"], STURDY, []),
    "new back pain where nobody has asked": (["new_back_pain"], UNSTATED, [("new_back_pain", "today", False)]),
    "two concerns": (
        ["fever", "clot_or_wound"],
        STURDY,
        [("fever", "today", False), ("clot_or_wound", "today", False)],
    ),
}


@pytest.mark.parametrize(("words", "record", "expected"), CONCERNS.values(), ids=CONCERNS.keys())
def test_concerns(words: list[str], record: History, expected: list[tuple[str, str, bool]]) -> None:
    found = concern_findings({"concerns": words, "pain": 1}, record)
    assert [(one.rule, one.level, one.holds) for one in found] == expected


def test_a_count_of_falls_is_for_today_and_none_is_nothing() -> None:
    assert falls_counted(0, "2027-02-01") is None
    found = falls_counted(2, "2027-02-01")
    assert found is not None
    assert (found.rule, found.level, found.holds, found.because["count"]) == ("falls_counted", "today", False, 2)


@given(
    st.dictionaries(st.sampled_from(sorted(GRADE_OF)), st.sampled_from(GRADES)),
    st.none() | st.integers(0, 10),
    st.integers(0, 10),
)
def test_a_higher_number_never_takes_a_danger_sign_away(danger: dict[str, str], lower: int | None, more: int) -> None:
    higher = more if lower is None else max(lower, more)
    fewer = {one.rule for one in danger_findings(reading(danger, lower))}
    assert fewer <= {one.rule for one in danger_findings(reading(danger, higher))}


@given(st.lists(st.sampled_from(sorted(CONCERN_HOLDS)), unique=True))
def test_every_concern_that_is_a_persons_to_hear_is_found_once(concerns: list[str]) -> None:
    assert [one.rule for one in concern_findings({"concerns": concerns + concerns}, STURDY)] == concerns


def test_levels_rise_from_routine_to_urgent() -> None:
    assert is_higher("urgent", "today")
    assert is_higher("today", "routine")
    assert not is_higher("today", "today")
