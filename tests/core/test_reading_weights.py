"""Weights come out of their file as they went in, and sums of them never run into one another."""

from hypothesis import given
from hypothesis import strategies as st

from reminders.core.reading.weights import LIFT, Weights, packed

WIDTH = 3
NUMBERS = st.integers(-32_768, 32_767) | st.sampled_from([-129, -128, 127, 128])
NAMES = st.text(st.characters(exclude_characters="\t", exclude_categories=["Cs"]), min_size=1, max_size=6)
ROWS = st.dictionaries(NAMES, st.lists(NUMBERS, min_size=WIDTH, max_size=WIDTH), min_size=1, max_size=6)


def weights_of(rows: dict[str, list[int]]) -> Weights:
    """Return rows as they come back from a file."""
    kept = packed(rows)
    return Weights(WIDTH, str(kept["names"]), int(kept["in_bytes"]), str(kept["rows"]))


@given(ROWS)
def test_each_row_comes_back_as_it_was_whether_its_numbers_take_one_byte_or_two(rows: dict[str, list[int]]) -> None:
    assert weights_of(rows).rows() == rows


@given(ROWS, st.integers(1, 2_000))
def test_the_sum_of_many_rows_is_the_sum_class_by_class(rows: dict[str, list[int]], times: int) -> None:
    weights = weights_of(rows)

    total = weights.total([*rows] * times, weights.lift)

    assert [one - LIFT for one in weights.lanes(total)] == [
        times * sum(column) for column in zip(*rows.values(), strict=True)
    ]


def test_a_feature_without_weights_weighs_nothing() -> None:
    weights = weights_of({"w done": [1, 2, 3]})

    assert "w never" not in weights
    assert weights.total(["w never"], weights.lift) == weights.lift
    assert weights.numbers("w never") == [0, 0, 0]
