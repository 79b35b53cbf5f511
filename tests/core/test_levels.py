"""Levels: defaults beside their sources, who may change what, and the rating each level becomes."""

from dataclasses import asdict

import pytest

from reminders.core.levels import (
    DEFAULTS,
    FACTS,
    FIXED,
    Levels,
    changed,
    checked,
    merged,
    progress_level,
    settle_level,
    stop_level,
    up_level,
)

# usual -> (up, stop, morning): the higher of 4, 6, 5 and usual + 2.
# 4-5 change something, 6-10 stop: NHS AHP Suffolk, Returning to Activity. Two points matter: Farrar et al. 2001,
# Pain 94(2):149-158.
LEVELS_BY_USUAL = {
    "no pain as a rule": (0, (4, 6, 5)),
    "usual one": (1, (4, 6, 5)),
    "usual two": (2, (4, 6, 5)),
    "usual two and a half keeps its half": (2.5, (4.5, 6, 5)),
    "usual three": (3, (5, 6, 5)),
    "from usual four on there is nothing between up and stop": (4, (6, 6, 6)),
    "usual five": (5, (7, 7, 7)),
    "usual seven": (7, (9, 9, 9)),
    "usual nine stays on the scale": (9, (10, 10, 10)),
}


@pytest.mark.parametrize(("usual", "expected"), LEVELS_BY_USUAL.values(), ids=LEVELS_BY_USUAL.keys())
def test_levels_follow_her_usual(usual: float, expected: tuple[float, float, float]) -> None:
    found = (up_level(usual, DEFAULTS), stop_level(usual, DEFAULTS), settle_level(usual, DEFAULTS))
    assert found == expected


def test_fixed_levels_leave_her_usual_out() -> None:
    assert [up_level(usual, FIXED) for usual in (0, 5, 9)] == [4, 4, 4]
    assert stop_level(5, FIXED) == 6


def test_the_stop_level_is_never_below_the_up_level() -> None:
    assert stop_level(2, Levels(stop_floor=3, up_floor=5)) == 5


def test_a_step_is_spoken_against_above_the_higher_of_three_and_usual_plus_one() -> None:
    assert [progress_level(usual, DEFAULTS) for usual in (0, 2, 4.5)] == [3, 3, 5.5]


def test_every_level_has_a_range_and_a_source_and_its_default_lies_inside() -> None:
    assert set(FACTS) == set(asdict(DEFAULTS))
    for name, fact in FACTS.items():
        assert fact.least <= getattr(DEFAULTS, name) <= fact.most, name
        assert fact.source, name


def test_the_client_wins_over_the_therapist_and_she_over_the_clinic() -> None:
    levels = merged(
        {"up_floor": 3, "stop_floor": 7, "where_days": 30}, {"up_floor": 4, "stop_floor": 5}, {"up_floor": 5}
    )
    assert (levels.up_floor, levels.stop_floor, levels.where_days, levels.up_above) == (5, 5, 30, 2)
    assert changed(levels) == {"up_floor": 5, "stop_floor": 5, "where_days": 30}


REFUSED = {
    "an unknown name": ({"stop": 6}, '"stop" is no level'),
    "below the range": ({"up_floor": 0}, "from 1 to 10"),
    "above the range": ({"up_floor": 11}, "from 1 to 10"),
    "half a point": ({"up_floor": 4.5}, "whole number"),
    "a yes": ({"usual_counts": True}, "whole number"),
    "a text": ({"up_floor": "4"}, "whole number"),
    "severe for everyone": ({"severe": 9}, "one client"),
}


@pytest.mark.parametrize(("changes", "words"), REFUSED.values(), ids=REFUSED.keys())
def test_a_wrong_level_is_named_in_one_sentence(changes: dict[str, object], words: str) -> None:
    with pytest.raises(ValueError, match=words):
        checked(changes)


def test_severe_can_be_set_for_one_client_alone() -> None:
    assert merged(client={"severe": 9}).severe == 9
    with pytest.raises(ValueError, match="one client"):
        merged(therapist={"severe": 9})
