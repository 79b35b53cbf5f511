"""Adherence: sessions done of prescribed (Bailey et al. 2020, BJSM 54(6):326), and what is in neither number."""

import pytest

from reminders.core.adherence import adherence

# states -> (done, prescribed, percent)
CASES = {
    "all done": (["done"] * 6, (6, 6, 100)),
    "four of six done, one more in part": (["done"] * 4 + ["part", "missed"], (4, 6, 67)),
    "skipped counts as prescribed": (["done", "done", "skipped", "skipped"], (2, 4, 50)),
    "paused, held, unsent, planned and reminded are in neither": (
        ["done", "done", "missed", "missed", "paused", "held", "unsent", "planned", "reminded"],
        (2, 4, 50),
    ),
    "no percentage under four": (["done", "done", "missed"], (2, 3, None)),
    "nothing prescribed": ([], (0, 0, None)),
    "halves of a percent go up": (["done"] * 5 + ["missed"] * 3, (5, 8, 63)),
}


@pytest.mark.parametrize(("states", "expected"), CASES.values(), ids=CASES.keys())
def test_adherence(states: list[str], expected: tuple[int, int, int | None]) -> None:
    found = adherence(states)
    assert (found.done, found.prescribed, found.percent) == expected


def test_part_is_shown_beside_and_not_counted_as_done() -> None:
    found = adherence(["part"] * 4)
    assert (found.done, found.part, found.rate) == (0, 4, 0.0)
