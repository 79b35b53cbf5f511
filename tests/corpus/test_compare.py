"""What the comparison of two states of the reader calls harm."""

from typing import Any

import pytest

from tests.corpus.compare import harm

RIGHT: dict[str, Any] = {"intent": "report", "pain": 3, "red_flags": ["fall_or_injury"]}


@pytest.mark.parametrize(
    ("expected", "read", "told"),
    [
        (RIGHT, RIGHT, []),
        (RIGHT, RIGHT | {"red_flags": []}, ["lost fall_or_injury"]),
        (RIGHT, RIGHT | {"pain": 8}, ["wrong pain"]),
        (RIGHT, RIGHT | {"pain": None}, []),  # a rating that is not read is asked for
        (RIGHT | {"intent": "opt_out"}, RIGHT, ["lost opt_out"]),
        (RIGHT, RIGHT | {"red_flags": ["fall_or_injury", "crisis"]}, []),  # a needless call is no harm
    ],
)
def test_harm_is_a_sign_a_wish_or_a_number_gone_wrong(
    expected: dict[str, Any], read: dict[str, Any], told: list[str]
) -> None:
    assert harm({"expect": expected}, read) == told
