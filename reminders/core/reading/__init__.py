"""Reads replies: `read_reply` gives the reading of a text, `why` the words behind each field.

Callers need only what is named here. The words of a language live in `core/words`, not here.
"""

from collections.abc import Sequence
from datetime import date

from reminders.core.languages import LANGUAGES
from reminders.core.reading.grammar import grammar_for
from reminders.core.reading.model import ASKED, HOLDERS, ExerciseDone, Reading, SessionExercise
from reminders.core.reading.reader import read
from reminders.core.reading.session import parse_session

__all__ = [
    "ASKED",
    "HOLDERS",
    "ExerciseDone",
    "Reading",
    "SessionExercise",
    "make_ready",
    "parse_session",
    "read_reply",
    "why",
]


def make_ready() -> None:
    """Load the words, rules and weights of every language: else the first client who writes waits for it."""
    for language in LANGUAGES:
        read("ok", language, (), None)
        grammar_for(language).lexicon.make_ready_to_mend()


def read_reply(
    text: str,
    vocabulary_language: str,
    session: Sequence[SessionExercise],
    asked: str | None,
    holder: str = "self",
    today: date | None = None,
) -> Reading:
    """Return what a reply means.

    `vocabulary_language` is the client's ("en", "es"); a text in another known language is read all the same. `asked`
    is the kind of question open when it came; `holder` who holds the contact; `today` gives dates their year.
    """
    return read(text, vocabulary_language, session, asked, holder, today).reading


def why(
    text: str,
    vocabulary_language: str,
    session: Sequence[SessionExercise],
    asked: str | None,
    holder: str = "self",
    today: date | None = None,
) -> dict[str, str]:
    """Return field → the words that led to it, for the same reading as `read_reply`."""
    return read(text, vocabulary_language, session, asked, holder, today).why()
