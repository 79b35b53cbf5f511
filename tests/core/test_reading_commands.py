"""Commands of a word or two that end the texts, and what only sounds like them."""

import pytest

from reminders.core.reading import read_reply
from tests.corpus.measure import PARSED

ENDED = [
    "exit",
    "halt",
    "terminate",
    "please terminate",
    "de-register",
    "un subscribe please",
    "unlist me",
    "leave group",
    "knock it off",
    "enough already",
    "delete my information",
    "purge my info",
    "expunge my number",
    "I hereby rescind permission to message me",
    "I take back my permission",
    "bug somebody else",
    "call off the dogs",
    "no thanks to all future texts",
    "forget you ever had my number",
    "I won't be needing these any longer",
    "I resign from the exercise messages",
    "She wants the texts ended",
    "you can stop now dear",
    "not another text",
    "I want no part of this",
    "I want no part of these texts",
]
NOT_ENDED = [
    "I knocked it off early, pain 2",
    "had to halt after one set",
    "did enough already, pain 3",
    "can I stop now?",
    "nothing more to report, pain 2",
    "didn't need those any more, pain pills that is. All done",
    "the doc says I can quit now, did 2x10",
    "took the exit by the clinic, all done",
    "my records show 2 sets, done",
    "I dropped it and called off the dogs. did them all",
    "I want no part of this pain",
    "we want no part of this heat, did them inside",
    "told my son to go bug someone else, all done",
]


@pytest.mark.parametrize("text", ENDED)
def test_a_command_to_end_the_texts_is_carried_out(text: str) -> None:
    assert read_reply(text, "en", PARSED["S1"], None).intent == "opt_out"


@pytest.mark.parametrize("text", NOT_ENDED)
def test_words_that_only_sound_like_one_end_nothing(text: str) -> None:
    assert read_reply(text, "en", PARSED["S1"], None).intent != "opt_out"
