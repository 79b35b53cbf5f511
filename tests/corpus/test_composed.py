"""What is read in each of two replies is read in both put together: the session, the pain, the sign.

The halves are labelled replies that are there to build on and are read right alone, so what fails here fails by their
meeting. The figures are shares of some thousand meetings, the same ones every time.
"""

import random
from collections.abc import Callable, Iterator
from functools import lru_cache
from typing import Any

import pytest

from tests.corpus.composed import JOINTS, has_other_numbers, is_rated, stands_beside, tells_session
from tests.corpus.measure import HERE, reading_of, rows_of

FILES = ("practice", "en-build-31", "en-build-36", "en-build-40", "es-build-24", "es-build-28", "es-build-33")
MEETINGS = 1_500
MOST_WRONG, MOST_LOST = 10, 14  # of them
Row = dict[str, Any]


@lru_cache(maxsize=2)
def rows_in(language: str) -> tuple[Row, ...]:
    """Return the rows of a language that are read right."""
    rows = [row for name in FILES for row in rows_of(HERE / f"replies-{name}.jsonl") if row["lang"] == language]
    return tuple(row for row in rows if is_right(row))


def is_right(row: Row) -> bool:
    """Tell whether intent, completion, pain and signs of a row are read as labelled."""
    reading, expect = reading_of(row), row["expect"]
    return all(reading[name] == expect[name] for name in ("intent", "completed", "pain")) and (
        set(reading["red_flags"]) == set(expect["red_flags"])
    )


def meetings(language: str, is_first: Callable[[Row], bool], is_second: Callable[[Row], bool]) -> Iterator[tuple]:
    """Yield (text, one row, the other), the same ones every time."""
    chance = random.Random(23)
    rows = [row for row in rows_in(language) if row["asked"] is None and not row["expect"]["correction"]]
    ones, others = [row for row in rows if is_first(row)], [row for row in rows if is_second(row)]
    for _ in range(MEETINGS):
        one = chance.choice(ones)
        other = chance.choice([row for row in others if row["session"] == one["session"]])
        first, second = (one, other) if chance.random() < 0.5 else (other, one)
        yield first["text"].rstrip(" .,!") + chance.choice(JOINTS) + second["text"], one, other


@pytest.mark.parametrize("language", ["en", "es"])
def test_what_was_done_is_read_beside_what_hurts_and_beside_a_sign(language: str) -> None:
    wrong, lost = [], []
    for text, told, other in meetings(language, tells_session, stands_beside):
        reading, flags = reading_of({**told, "text": text}), set(other["expect"]["red_flags"])
        done = (told["expect"]["intent"], told["expect"]["completed"])
        if done[0] == "report" and not flags and (reading["intent"], reading["completed"]) != done:
            wrong.append(text)
        if not flags <= set(reading["red_flags"]):
            lost.append(text)

    assert len(wrong) <= MOST_WRONG, wrong
    assert len(lost) <= MOST_LOST, lost


@pytest.mark.parametrize(("language", "most_wrong"), [("en", 3), ("es", 3)])
def test_a_rating_stays_what_it_is_beside_a_sentence_with_other_numbers(language: str, most_wrong: int) -> None:
    wrong = []
    for text, one, other in meetings(language, has_other_numbers, is_rated):
        pain = reading_of({**one, "text": text})["pain"]
        if pain is not None and pain != other["expect"]["pain"]:
            wrong.append((text, pain))

    assert len(wrong) <= most_wrong, wrong
