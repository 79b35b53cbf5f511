"""The chart: every rating and state can be read without colour, and no text breaks out of it."""

import re
from datetime import date, timedelta
from xml.etree import ElementTree

from hypothesis import given
from hypothesis import strategies as st

from reminders.web.chart import STATE_WORDS, Drawn, Mark, chart, summary

FIRST = date(2027, 3, 1)
MARKS = st.builds(
    Mark,
    on=st.integers(0, 300).map(lambda days: FIRST + timedelta(days=days)),
    state=st.sampled_from(sorted(STATE_WORDS)),
    pain=st.none() | st.integers(0, 10),
    is_easy=st.booleans(),
)
DAYS = st.integers(-30, 330).map(lambda days: FIRST + timedelta(days=days))


@given(
    st.lists(MARKS, max_size=80).map(lambda marks: sorted(marks, key=lambda mark: mark.on)),
    st.lists(st.tuples(DAYS, st.integers(1, 9)), max_size=4),
    st.lists(st.tuples(DAYS, st.integers(1, 999)), max_size=4),
    st.none() | st.floats(0, 10),
    st.text(max_size=20).filter(lambda text: text.isprintable()),
)
def test_any_record_gives_a_whole_picture(marks, steps, alerts, level, title) -> None:  # type: ignore[no-untyped-def]
    drawn = Drawn(marks, steps, alerts, level, level)

    made = chart(drawn, title)

    if not marks:
        assert made == ""
        return
    root = ElementTree.fromstring(made)
    assert root.attrib["aria-label"] == summary(drawn, title)
    for place in re.findall(r'[xy]="([-\d.]+)"', made):
        assert -1 <= float(place) <= 761


def test_ratings_carry_their_figures_and_states_their_own_signs() -> None:
    marks = [Mark(FIRST + timedelta(days=2 * place), state, place) for place, state in enumerate(STATE_WORDS)]

    made = chart(Drawn(marks, steps=[(FIRST, 2)], alerts=[(FIRST, 7)], usual=2.5, stop=6), "Ana")

    for words in (">H<", ">P<", ">u<", ">step 2<", ">7<", ">usual 2.5<", ">stop from 6<"):
        assert words in made
    assert made.count('class="ink thick"') == 1  # the cross of the one missed session


def test_the_summary_says_in_words_what_the_picture_shows() -> None:
    marks = [Mark(FIRST, "done", 3), Mark(FIRST, "missed"), Mark(FIRST, "part", 5), Mark(FIRST, "held")]

    said = summary(Drawn(marks), "Ana")

    assert said.startswith("Ana: 1 of 3 sessions done, pain from 3 to 5, last 5.")
    assert "no pain ratings" in summary(Drawn([Mark(FIRST, "missed")]), "Ana")


def test_a_title_is_never_markup() -> None:
    made = chart(Drawn([Mark(FIRST, "done", 3)]), '"><script>')

    assert "<script>" not in made
