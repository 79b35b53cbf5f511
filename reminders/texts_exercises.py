"""The words of the exercises, read from templates/exercises/<language>.toml once a process.

Names, cues, reasons and the phrases of a dose in each language are handed out here; which exercise or dose it is, is
the core's to say. A language is one file more.
"""

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from reminders.core.dose_words import in_short, in_words, session_line
from reminders.core.library import LIBRARY
from reminders.core.programs import SessionItem
from reminders.texts import templates_folder

# The tables of a file that are no exercise.
_TABLES = ("phrases", "patterns", "precautions", "effects", "reasons", "programs")


@dataclass(frozen=True)
class ExerciseWords:
    """One exercise in one language; `synonyms` are names that a client may use, for the reader of replies."""

    code: str
    name: str
    short: str
    cues: tuple[str, ...]
    safety: str
    synonyms: tuple[str, ...]


@dataclass(frozen=True)
class Wording:
    """Everything said about exercises in one language.

    `phrases` say doses; `patterns`, `precautions` and `effects` go by their English names, `reasons` and `programs`
    by their codes.
    """

    language: str
    exercises: Mapping[str, ExerciseWords]
    phrases: Mapping[str, str]
    patterns: Mapping[str, str]
    precautions: Mapping[str, str]
    effects: Mapping[str, str]
    reasons: Mapping[str, str]
    programs: Mapping[str, str]

    @property
    def names(self) -> dict[str, str]:
        """Each exercise's name by its code."""
        return {code: words.name for code, words in self.exercises.items()}


@lru_cache(maxsize=8)
def wording(language: str) -> Wording:
    """Return the words of a language; raises LookupError naming the file that is missing or lacks an exercise."""
    path = templates_folder() / "exercises" / f"{language}.toml"
    if not path.is_file():
        raise LookupError(f"There is no file of exercise words {path.name}.")
    tables = tomllib.loads(path.read_text(encoding="utf-8"))
    lacking = [name for name in (*_TABLES, *LIBRARY) if name not in tables]
    if lacking:
        raise LookupError(f"{path.name} lacks [{lacking[0]}].")
    exercises = {code: _exercise(code, tables[code]) for code in LIBRARY}
    return Wording(language, exercises, *(tables[name] for name in _TABLES))


def _exercise(code: str, table: Mapping[str, Any]) -> ExerciseWords:
    return ExerciseWords(
        code, table["name"], table["short"], tuple(table["cues"]), table["safety"], tuple(table["synonyms"])
    )


def item_in_words(item: SessionItem, language: str) -> str:
    """Return a line of a session as a reminder says it: "A sit to stand 10 times, twice"."""
    words = wording(language)
    return f"{item.letter} {words.exercises[item.exercise].name} {in_words(item.dose, item.side, words.phrases)}"


def item_in_short(item: SessionItem, language: str) -> str:
    """Return a line of a session for who asks for short ones: "A sit to stand 2x10"."""
    words = wording(language)
    return f"{item.letter} {words.exercises[item.exercise].name} {in_short(item.dose, item.side, words.phrases)}"


def session_for_reader(items: tuple[SessionItem, ...], language: str) -> str:
    """Return a session as the reader of replies takes it: "sit to stand 2x10; tandem stance 2x20 sec each side"."""
    words = wording(language)
    return session_line(items, words.names, words.phrases)
