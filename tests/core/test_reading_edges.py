"""Replies that were once read wrong: the fields that matter of each, beside what was asked and who holds the phone.

Longer tables by subject stand in the other files of the reader.
"""

from datetime import date
from typing import Any

import pytest

from reminders.core.reading import parse_session, read_reply

TODAY = date(2027, 3, 3)
CHAIR = parse_session("sit to stand 2x10; wall push-up 2x8; heel raise 2x12; tandem stance 2x20 sec each side")
DONE_2 = {"intent": "report", "completed": "all", "pain": 2, "choice": None}
PART_3 = {"intent": "report", "completed": "part", "pain": 3, "ask": None}
NO_SESSION = {"intent": "skip", "completed": "none", "pain": None}
BACK = {"choice": "lower back", "where": "lower back", "concerns": ["new_back_pain"]}
OUT = {"intent": "opt_out", "ask": None}

# text, language, asked, holder, what the reading must hold
EDGES: dict[str, tuple[str, str, str | None, str, dict[str, Any]]] = {
    "the short form after the days": ("Y2", "en", "days", "self", DONE_2),
    "the short form after the falls": ("y 2", "en", "falls", "self", DONE_2),
    "a bare count after the days": ("2", "en", "days", "self", {"intent": "unclear", "choice": 2}),
    "yes and a count": ("yes, 2", "en", "falls", "self", {"intent": "unclear", "choice": 2}),
    "only some of them": ("Only did some of them, pain 3", "en", None, "self", PART_3),
    "half misspelled": ("did haf, pain 3", "en", None, "self", PART_3),
    "half": ("Did half, pain 3", "en", None, "self", PART_3),
    "half in Spanish": ("Hice la mitad, dolor 3", "es", None, "self", PART_3),
    "a bare rating corrects nothing": ("3", "en", "settling", "self", {"intent": "pain", "correction": False}),
    "her name before the short form": ("Odile: Y1", "en", None, "shared", {"intent": "report", "pain": 1}),
    "her name and no colon": ("Odile Y1", "en", None, "shared", {"intent": "report", "pain": 1}),
    "for her": ("For Odile: Y1", "en", None, "shared", {"intent": "report", "pain": 1}),
    "N in the morning": ("N", "en", "settling", "self", NO_SESSION),
    "no in the morning": ("No", "en", "settling", "self", NO_SESSION),
    "none in the morning": ("none", "en", "settling", "self", {"intent": "pain", "pain": 0}),
    "N with nothing asked": ("N", "en", None, "self", NO_SESSION),
    "N to the pain question": ("N", "en", "pain", "self", {"intent": "pain", "pain": 0}),
    "a fall once more": ("I fell once more and hit my head", "en", None, "self", {"red_flags": ["fall_or_injury"]}),
    "a place and that it is new": ("my lower back, and it is new", "en", "where", "self", BACK),
    "mails as well": ("stop everything, mails too", "en", None, "self", OUT),
    "a third person": ("Please remove Mrs. Ardizzone from your message service", "en", None, "self", OUT),
    "both of a couple": ("both", "en", "who", "shared", {"intent": "unclear", "choice": "both", "ask": None}),
    "both in Spanish": ("los dos", "es", "who", "shared", {"intent": "unclear", "choice": "both", "ask": None}),
    "a plain question": ("Should I use ice?", "en", None, "self", {"intent": "question", "ask": None}),
}


@pytest.mark.parametrize(("text", "language", "asked", "holder", "expected"), EDGES.values(), ids=EDGES)
def test_a_reply_once_read_wrong(
    text: str, language: str, asked: str | None, holder: str, expected: dict[str, Any]
) -> None:
    reading = read_reply(text, language, CHAIR, asked, holder, TODAY).as_dict()

    assert {name: reading[name] for name in expected} == expected
