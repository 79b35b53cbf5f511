"""Spanish danger signs and opt-outs found by their frames, and sentences that share their words and are none.

The signs hold by the rules alone (8 and more by its figure), so that no weight can lose them.
"""

import pytest

from reminders.core.reading import parse_session, read_reply
from reminders.core.reading.reader import evidence_of
from tests.core.danger_frames_es import SIGNS
from tests.core.harmless_frames_es import HARMLESS
from tests.core.opt_out_frames_es import NO_OPT_OUTS, OPT_OUTS

SESSION = parse_session(
    "sentarse y pararse 2x10; flexión en la pared 2x8; elevación de talones 2x12;"
    " equilibrio en tándem 2x20 seg cada lado"
)


@pytest.mark.parametrize(("flag", "text"), [(flag, text) for flag, texts in SIGNS.items() for text in texts])
def test_a_danger_sign_is_found_by_its_frame(flag: str, text: str) -> None:
    """At the start, in the middle or at the end, with exercises told beside it."""
    rules = evidence_of(text, "es", SESSION, None)[0].danger.grades
    assert flag in rules or (flag == "severe_pain" and flag in read_reply(text, "es", SESSION, None).red_flags)


@pytest.mark.parametrize("text", HARMLESS)
def test_a_sentence_with_the_words_of_a_sign_is_none(text: str) -> None:
    """Denied, another's, long ago, an idiom, a thing."""
    assert not evidence_of(text, "es", SESSION, None)[0].danger.grades


@pytest.mark.parametrize("text", OPT_OUTS)
def test_a_wish_to_hear_no_more_is_found_by_its_frame(text: str) -> None:
    """Any form of sending with a denial or an ending, any form of taking off."""
    assert read_reply(text, "es", SESSION, None).intent == "opt_out"


@pytest.mark.parametrize("text", NO_OPT_OUTS)
def test_a_sentence_near_such_a_wish_closes_no_consent(text: str) -> None:
    """A "no más" is "only" after an amount; an exercise, an appointment or a call may be refused."""
    assert read_reply(text, "es", SESSION, None).intent != "opt_out"
