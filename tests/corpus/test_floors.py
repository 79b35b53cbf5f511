"""Floors under the reader's figures on labelled replies, so that no change makes it worse unseen.

Rows to build on were seen while the reader was built; rows to measure were looked at only in figures, and their floors
are what counts. A floor is raised when the reader gets better, never lowered to let a change pass.
"""

import pytest

from tests.corpus.measure import HERE, figures, rows_of

FLOORS = {
    ("practice", "en"): {"whole %": 96, "intent %": 98},
    ("practice", "es"): {"whole %": 96, "intent %": 98},
    ("en-build", "en"): {"whole %": 90, "intent %": 98},
    ("en-build-2", "en"): {"whole %": 82, "intent %": 97},
    ("es-build", "es"): {"whole %": 92, "intent %": 98},
    ("es-build-2", "es"): {"whole %": 84, "intent %": 97},
    ("en-measure", "en"): {"whole %": 76, "intent %": 92},
    ("es-measure", "es"): {"whole %": 79, "intent %": 92},
}
CEILINGS = {
    ("practice", "en"): {"pain number wrong": 0, "danger lost wholly": 0, "opt-out lost": 0},
    ("practice", "es"): {"pain number wrong": 0, "danger lost wholly": 0, "opt-out lost": 0},
    ("en-build", "en"): {"pain number wrong": 5, "danger lost wholly": 1, "opt-out lost": 0, "false alarms %": 2},
    ("es-build", "es"): {"pain number wrong": 1, "danger lost wholly": 0, "opt-out lost": 0, "false alarms %": 2},
    ("en-measure", "en"): {"pain number wrong": 5, "danger lost wholly": 2, "opt-out lost": 2, "false alarms %": 4},
    ("es-measure", "es"): {"pain number wrong": 4, "danger lost wholly": 6, "opt-out lost": 1, "false alarms %": 3},
}


@pytest.mark.parametrize(("name", "language"), FLOORS)
def test_the_reader_stays_as_good_as_it_was(name: str, language: str) -> None:
    rows = [row for row in rows_of(HERE / f"replies-{name}.jsonl") if row["lang"] == language]
    reached = figures(rows)

    for figure, floor in FLOORS[name, language].items():
        assert reached[figure] >= floor, figure
    for figure, ceiling in CEILINGS.get((name, language), {}).items():
        assert reached[figure] <= ceiling, figure


def test_no_reply_is_both_built_on_and_measured() -> None:
    built = {row["text"] for path in HERE.glob("replies-*build*.jsonl") for row in rows_of(path)}
    measured = {row["text"] for path in HERE.glob("replies-*-measure.jsonl") for row in rows_of(path)}

    longer = {text for text in built & measured if len(text.split()) > 3}
    assert not longer
