"""Floors under the reader's figures on labelled replies, so that no change makes it worse unseen.

Rows to build on were seen while the reader was built; rows to measure were looked at only in figures, and their floors
are what counts. A floor is raised when the reader gets better, and lowered only for a reason that stands here:
- training on 3,500 more rows lifted whole readings and cost two older Spanish rows their sign and one its opt-out;
- training on 3,000 more rows, 960 of them measured before, cost one older English row to measure its opt-out;
- idioms that hid real signs ("fell for no reason", "passed out on the sofa") were narrowed, at some false alarms;
- the rows of measure-7 (English) and measure-8 (Spanish) were looked at at last and are there to build on since;
- a sign that a rule explains away is raised where the judge is not calm: two Spanish files have one false alarm more;
- training on 1,795 more rows and four hundred more signs cost an older Spanish file one false alarm in 214.
"""

import pytest

from tests.corpus.measure import HERE, figures, rows_of

FLOORS = {
    ("practice", "en"): {"whole %": 99, "intent %": 99},
    ("practice", "es"): {"whole %": 98, "intent %": 98},
    ("en-build", "en"): {"whole %": 94.5, "intent %": 99},
    ("en-build-2", "en"): {"whole %": 85, "intent %": 98},
    ("en-build-3", "en"): {"whole %": 90, "intent %": 99},
    ("es-build", "es"): {"whole %": 94, "intent %": 99},
    ("en-build-4", "en"): {"whole %": 89.5, "intent %": 99},
    ("en-build-5", "en"): {"whole %": 85, "intent %": 99},
    ("en-measure-3", "en"): {"whole %": 95, "intent %": 98.5},
    ("en-build-10", "en"): {"whole %": 97, "intent %": 99},
    ("en-build-11", "en"): {"whole %": 97, "intent %": 99},
    ("en-build-12", "en"): {"whole %": 95.5, "intent %": 99},
    ("en-build-6", "en"): {"whole %": 92.5, "intent %": 99},
    ("en-build-7", "en"): {"whole %": 97.5, "intent %": 99},
    ("en-build-8", "en"): {"whole %": 95, "intent %": 97.5},
    ("es-build-2", "es"): {"whole %": 91, "intent %": 99},
    ("es-build-3", "es"): {"whole %": 91.5, "intent %": 99},
    ("es-build-4", "es"): {"whole %": 92, "intent %": 99},
    ("es-build-5", "es"): {"whole %": 94.5, "intent %": 99},
    ("es-measure-3", "es"): {"whole %": 92, "intent %": 97.5},
    ("es-build-10", "es"): {"whole %": 96.5, "intent %": 99},
    ("es-build-11", "es"): {"whole %": 94, "intent %": 99},
    ("es-build-12", "es"): {"whole %": 98, "intent %": 99},
    ("es-build-6", "es"): {"whole %": 95, "intent %": 98},
    ("es-build-7", "es"): {"whole %": 95, "intent %": 98},
    ("es-build-8", "es"): {"whole %": 94, "intent %": 97},
    ("es-build-9", "es"): {"whole %": 93, "intent %": 97},
    ("en-build-13", "en"): {"whole %": 97, "intent %": 99},
    ("en-build-14", "en"): {"whole %": 95, "intent %": 99},
    ("en-build-15", "en"): {"whole %": 96, "intent %": 99},
    ("en-build-16", "en"): {"whole %": 92, "intent %": 99},
    ("en-build-17", "en"): {"whole %": 92, "intent %": 98.5},
    ("en-build-18", "en"): {"whole %": 94, "intent %": 98.5},
    ("en-build-19", "en"): {"whole %": 95, "intent %": 99},
    ("en-build-20", "en"): {"whole %": 95, "intent %": 99},
    ("en-build-21", "en"): {"whole %": 94, "intent %": 98.5},
    ("en-build-22", "en"): {"whole %": 93, "intent %": 98},
    ("en-build-23", "en"): {"whole %": 92, "intent %": 98},
    ("en-build-24", "en"): {"whole %": 92, "intent %": 98},
    ("en-build-25", "en"): {"whole %": 78, "intent %": 97},
    ("es-build-14", "es"): {"whole %": 95, "intent %": 99},
    ("es-build-15", "es"): {"whole %": 95, "intent %": 99},
    ("es-build-16", "es"): {"whole %": 93.5, "intent %": 98.5},
    ("es-build-17", "es"): {"whole %": 95, "intent %": 98.5},
    ("es-build-18", "es"): {"whole %": 94, "intent %": 98.5},
    ("es-build-19", "es"): {"whole %": 95, "intent %": 98.5},
    ("es-build-21", "es"): {"whole %": 95, "intent %": 98.5},
    ("es-build-22", "es"): {"whole %": 92, "intent %": 98},
    ("es-build-23", "es"): {"whole %": 94, "intent %": 98.5},
    ("en-measure-11", "en"): {"whole %": 92, "intent %": 99},
    ("es-measure-9", "es"): {"whole %": 93, "intent %": 97.5},
    ("es-measure-10", "es"): {"whole %": 96.5, "intent %": 99},
    ("es-build-13", "es"): {"whole %": 95, "intent %": 98},
    ("en-build-26", "en"): {"whole %": 98, "intent %": 99},
    ("en-build-27", "en"): {"whole %": 96, "intent %": 99},
    ("en-build-28", "en"): {"whole %": 98.5, "intent %": 99.5},
    ("en-build-29", "en"): {"whole %": 96.5, "intent %": 99.5},
    ("en-build-30", "en"): {"whole %": 92.5, "intent %": 99},
    ("en-build-31", "en"): {"whole %": 98, "intent %": 99.5},
    ("en-build-32", "en"): {"whole %": 94, "intent %": 98.5},
    ("en-build-33", "en"): {"whole %": 97.5, "intent %": 99},
    ("en-build-34", "en"): {"whole %": 93, "intent %": 99.5},
    ("en-build-35", "en"): {"whole %": 94, "intent %": 99.5},
    ("en-build-36", "en"): {"whole %": 90.5, "intent %": 99.5},
    ("en-build-37", "en"): {"whole %": 98, "intent %": 99.5},
    ("en-build-38", "en"): {"whole %": 94.5, "intent %": 99},
    ("en-build-39", "en"): {"whole %": 91.5, "intent %": 98.5},
    ("es-build-24", "es"): {"whole %": 97, "intent %": 99},
    ("es-build-25", "es"): {"whole %": 98.5, "intent %": 99.5},
    ("es-build-26", "es"): {"whole %": 96, "intent %": 99.5},
    ("es-build-27", "es"): {"whole %": 95, "intent %": 99.5},
    ("es-build-28", "es"): {"whole %": 94.5, "intent %": 99},
    ("es-build-29", "es"): {"whole %": 96, "intent %": 99.5},
    ("es-build-30", "es"): {"whole %": 95.5, "intent %": 98.5},
    ("es-build-31", "es"): {"whole %": 95.5, "intent %": 99},
    ("es-build-32", "es"): {"whole %": 91.5, "intent %": 98.5},
    ("en-measure-12", "en"): {"whole %": 95.5, "intent %": 99.5},
    ("es-measure-11", "es"): {"whole %": 93, "intent %": 98},
    ("es-measure-12", "es"): {"whole %": 93.5, "intent %": 98.5},
    ("es-measure-13", "es"): {"whole %": 96, "intent %": 98.5},
}
PAIN, LOST, ALARMS, STOPS = "pain number wrong", "danger lost wholly", "false alarms %", "opt-out lost"
CEILINGS: dict[tuple[str, str], dict[str, float]] = {
    ("practice", "en"): {PAIN: 0, LOST: 0, ALARMS: 0, STOPS: 0},
    ("practice", "es"): {PAIN: 0, LOST: 0, ALARMS: 0, STOPS: 0},
    ("en-build", "en"): {PAIN: 0, LOST: 0, ALARMS: 1, STOPS: 0},
    ("en-build-2", "en"): {PAIN: 4, LOST: 0, ALARMS: 1.5, STOPS: 0},
    ("en-build-3", "en"): {PAIN: 3, LOST: 0, ALARMS: 1.6, STOPS: 0},
    ("es-build", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("en-build-4", "en"): {PAIN: 5, LOST: 0, ALARMS: 2, STOPS: 0},
    ("en-build-5", "en"): {PAIN: 6, LOST: 0, ALARMS: 2.2, STOPS: 0},
    ("es-build-2", "es"): {PAIN: 1, LOST: 0, ALARMS: 1, STOPS: 0},
    ("es-build-3", "es"): {PAIN: 0, LOST: 0, ALARMS: 1.2, STOPS: 0},
    ("es-build-4", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.4, STOPS: 0},
    ("es-build-5", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("en-build-10", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("en-build-11", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("es-build-11", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.6, STOPS: 0},
    ("en-measure-3", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("es-measure-3", "es"): {PAIN: 0, LOST: 0, ALARMS: 1.9, STOPS: 0},
    ("en-build-6", "en"): {PAIN: 3, LOST: 0, ALARMS: 1.5, STOPS: 0},
    ("en-build-7", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.2, STOPS: 0},
    ("en-build-8", "en"): {PAIN: 1, LOST: 0, ALARMS: 1, STOPS: 0},
    ("es-build-6", "es"): {PAIN: 1, LOST: 0, ALARMS: 1.5, STOPS: 0},
    ("es-build-7", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.6, STOPS: 0},
    ("es-build-8", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.7, STOPS: 0},
    ("es-build-9", "es"): {PAIN: 0, LOST: 0, ALARMS: 0, STOPS: 0},
    ("en-build-12", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("en-build-13", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("en-build-14", "en"): {PAIN: 0, LOST: 0, ALARMS: 1, STOPS: 0},
    ("en-build-15", "en"): {PAIN: 0, LOST: 0, ALARMS: 1, STOPS: 0},
    ("en-build-16", "en"): {PAIN: 0, LOST: 0, ALARMS: 1.5, STOPS: 0},
    ("en-build-17", "en"): {PAIN: 2, LOST: 0, ALARMS: 7, STOPS: 0},
    ("en-build-18", "en"): {PAIN: 0, LOST: 0, ALARMS: 3, STOPS: 0},
    ("en-build-19", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("en-build-20", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("en-build-21", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.8, STOPS: 0},
    ("en-build-22", "en"): {PAIN: 1, LOST: 1, ALARMS: 1.2, STOPS: 0},
    ("en-build-23", "en"): {PAIN: 0, LOST: 0, ALARMS: 1.2, STOPS: 0},
    ("en-build-24", "en"): {PAIN: 0, LOST: 0, ALARMS: 1.2, STOPS: 0},
    ("es-build-14", "es"): {PAIN: 1, LOST: 0, ALARMS: 0.9, STOPS: 0},
    ("es-build-15", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.8, STOPS: 0},
    ("es-build-16", "es"): {PAIN: 0, LOST: 0, ALARMS: 1.5, STOPS: 0},
    ("es-build-17", "es"): {PAIN: 0, LOST: 1, ALARMS: 2.2, STOPS: 0},
    ("es-build-18", "es"): {PAIN: 2, LOST: 0, ALARMS: 5.6, STOPS: 0},
    ("es-build-19", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.8, STOPS: 0},
    ("es-build-21", "es"): {PAIN: 0, LOST: 0, ALARMS: 1.6, STOPS: 0},
    ("es-build-22", "es"): {PAIN: 1, LOST: 1, ALARMS: 0.6, STOPS: 0},
    ("es-build-23", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.9, STOPS: 0},
    ("en-measure-11", "en"): {PAIN: 0, LOST: 0, ALARMS: 1.8, STOPS: 0},
    ("es-measure-9", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.9, STOPS: 0},
    ("es-measure-10", "es"): {PAIN: 0, LOST: 0, ALARMS: 0, STOPS: 0},
    ("es-build-10", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("es-build-12", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.8, STOPS: 0},
    ("es-build-13", "es"): {PAIN: 0, LOST: 0, ALARMS: 2, STOPS: 0},
    ("en-build-26", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.9, STOPS: 0},
    ("en-build-27", "en"): {PAIN: 0, LOST: 0, ALARMS: 1.7, STOPS: 0},
    ("en-build-28", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("en-build-29", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("en-build-30", "en"): {PAIN: 0, LOST: 0, ALARMS: 4.3, STOPS: 0},
    ("en-build-31", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.9, STOPS: 0},
    ("en-build-32", "en"): {PAIN: 1, LOST: 0, ALARMS: 2.3, STOPS: 0},
    ("en-build-33", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.1, STOPS: 0},
    ("en-build-34", "en"): {PAIN: 0, LOST: 0, ALARMS: 2.9, STOPS: 0},
    ("en-build-35", "en"): {PAIN: 1, LOST: 0, ALARMS: 2.5, STOPS: 0},
    ("en-build-36", "en"): {PAIN: 1, LOST: 2, ALARMS: 7.2, STOPS: 0},
    ("en-build-37", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.9, STOPS: 0},
    ("en-build-38", "en"): {PAIN: 1, LOST: 0, ALARMS: 2.9, STOPS: 0},
    ("en-build-39", "en"): {PAIN: 1, LOST: 0, ALARMS: 2.9, STOPS: 0},
    ("es-build-24", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.9, STOPS: 0},
    ("es-build-25", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.1, STOPS: 0},
    ("es-build-26", "es"): {PAIN: 0, LOST: 0, ALARMS: 1.2, STOPS: 0},
    ("es-build-27", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.5, STOPS: 0},
    ("es-build-28", "es"): {PAIN: 1, LOST: 0, ALARMS: 1.2, STOPS: 0},
    ("es-build-29", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.1, STOPS: 0},
    ("es-build-30", "es"): {PAIN: 0, LOST: 0, ALARMS: 0.9, STOPS: 0},
    ("es-build-31", "es"): {PAIN: 0, LOST: 0, ALARMS: 1.9, STOPS: 0},
    ("es-build-32", "es"): {PAIN: 0, LOST: 0, ALARMS: 7.3, STOPS: 0},
    ("en-measure-12", "en"): {PAIN: 0, LOST: 0, ALARMS: 0.9, STOPS: 0},
    ("es-measure-11", "es"): {PAIN: 0, LOST: 0, ALARMS: 2.1, STOPS: 0},
    ("es-measure-12", "es"): {PAIN: 0, LOST: 0, ALARMS: 1.3, STOPS: 0},
    ("es-measure-13", "es"): {PAIN: 0, LOST: 0, ALARMS: 1.3, STOPS: 0},
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
    measured = {row["text"] for path in HERE.glob("replies-*-measure*.jsonl") for row in rows_of(path)}

    longer = {text for text in built & measured if len(text.split()) > 3}
    assert not longer
