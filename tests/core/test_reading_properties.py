"""What holds for any text at all: a valid reading, quickly; politeness, case and accents change nothing."""

import re
import unicodedata

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from reminders.core.reading import ASKED, make_ready, parse_session, patterns, read_reply
from reminders.core.reading.model import CONCERNS, GRADES, INTENTS, RED_FLAGS
from tests.corpus.measure import HERE, PARSED, rows_of

SESSION = parse_session("sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side")
ROWS = [row for row in rows_of(HERE / "replies-practice.jsonl") if row["asked"] is None]
SIGNS = (
    ("en", "my chest feels tight", "chest_or_breathing"),
    ("en", "I fell in the kitchen", "fall_or_injury"),
    ("en", "I can't feel my foot", "nerve_or_bladder"),
    ("en", "I felt a crack in my back and it hurts", "possible_fracture"),
    ("en", "I passed out", "faint_or_dizzy"),
    ("en", "I want to die", "crisis"),
    ("es", "me caí en el baño", "fall_or_injury"),
    ("es", "me duele el pecho", "chest_or_breathing"),
    ("es", "me desmayé", "faint_or_dizzy"),
)
OTHER = (
    "My sister is visiting.", "I did two sets.", "No exercises today.", "The weather is fine.", "Is Ben in on Monday?",
    "My dog is funny.", "Thanks for all you do.", "I never miss a day.", "Last year I was in Spain.",
    "If it rains I stay in.",
)  # fmt: skip
ANY_TEXT = st.one_of(
    st.text(max_size=200),
    st.lists(
        st.sampled_from(
            [
                "done",
                "pain",
                "3",
                "no",
                "not",
                "fell",
                "chest",
                "2x10",
                "stop",
                "?",
                ",",
                ".",
                "yes",
                "my",
                "mom",
                "dizzy",
                "10",
                "of",
                "rows",
                "if",
            ]
        )
    ).map(" ".join),
)
rows = st.sampled_from(ROWS)
make_ready()  # what is timed below is the reading, not the loading of words


@given(text=ANY_TEXT, language=st.sampled_from(["en", "es"]), asked=st.sampled_from([None, *ASKED]))
@settings(max_examples=250, deadline=500)
def test_any_text_gives_a_valid_reading(text: str, language: str, asked: str | None) -> None:
    reading = read_reply(text, language, SESSION, asked)

    assert reading.intent in INTENTS
    assert reading.completed in ("all", "part", "none", None)
    assert reading.pain is None or 0 <= reading.pain <= 10
    assert set(reading.danger) == set(reading.red_flags) <= set(RED_FLAGS)
    assert set(reading.danger.values()) <= set(GRADES)
    assert set(reading.concerns) <= set(CONCERNS)
    assert {one.name for one in reading.by_exercise} <= {one.name for one in SESSION}


def core_of(text: str, row: dict[str, object]) -> dict[str, object]:
    """Return the recorded fields of a row's reading with another text."""
    shape = read_reply(text, str(row["lang"]), PARSED[str(row["session"])], None).as_dict()
    return {name: shape[name] for name in ("intent", "completed", "sets", "reps", "by_exercise", "pain", "red_flags")}


@given(first=rows, between=rows)
def test_a_reply_is_read_the_same_whatever_was_read_before(first: dict[str, str], between: dict[str, str]) -> None:
    with pytest.MonkeyPatch.context() as nothing_kept:
        nothing_kept.setattr(patterns, "_SHORT", 0)
        fresh = core_of(first["text"], first)

    for row in (first, between, first):
        read_reply(row["text"], row["lang"], PARSED[row["session"]], None)

    assert core_of(first["text"], first) == fresh


@given(row=rows, ending=st.sampled_from([" thanks", " Thank you!", " 😊", " :)", " gracias"]))
def test_thanks_or_a_smiley_change_nothing(row: dict[str, str], ending: str) -> None:
    plain = core_of(row["text"], row)
    if plain["intent"] not in ("unclear", "chat"):
        assert core_of(row["text"] + ending, row) == plain


@given(row=rows)
def test_case_changes_nothing(row: dict[str, str]) -> None:
    assert core_of(row["text"].upper(), row) == core_of(row["text"].lower(), row)


@given(row=rows)
def test_accents_change_nothing(row: dict[str, str]) -> None:
    letters = unicodedata.normalize("NFD", row["text"])
    bare = "".join(one for one in letters if not unicodedata.combining(one))
    assert core_of(bare, row) == core_of(row["text"], row)


@given(row=rows)
def test_wide_spacing_changes_nothing(row: dict[str, str]) -> None:
    assert core_of("  " + re.sub(" ", "   ", row["text"]) + " ", row) == core_of(row["text"], row)


@given(text=st.from_regex(r"[a-zA-ZñáÉ' ,.?!]{0,80}", fullmatch=True), language=st.sampled_from(["en", "es"]))
def test_no_pain_without_a_number_or_a_plain_none(text: str, language: str) -> None:
    reading = read_reply(text, language, SESSION, None)

    number_words = (
        "zero one two three four five six seven eight nine ten uno dos tres cuatro cinco seis siete ocho nueve diez"
    )
    has_number = any(
        word in text.lower() for word in [*number_words.split(), "un", "tree", "pain", "hurt", "dolor", "duel"]
    )
    assert reading.pain is None or has_number


@given(sign=st.sampled_from(SIGNS), before=st.sampled_from(["", *OTHER]), after=st.sampled_from(["", *OTHER]))
@settings(max_examples=200)
def test_a_danger_sign_stays_one_beside_another_sentence(sign: tuple[str, str, str], before: str, after: str) -> None:
    language, words, flag = sign

    assert flag in read_reply(f"{before} {words}. {after}".strip(), language, SESSION, None).red_flags


@given(sign=st.sampled_from(SIGNS), other=st.sampled_from(["en", "es"]))
def test_a_danger_sign_is_found_in_any_language_setting(sign: tuple[str, str, str], other: str) -> None:
    _, words, flag = sign

    assert flag in read_reply(words, other, SESSION, None).red_flags
