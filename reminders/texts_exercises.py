"""The words of the exercises, read from templates/exercises/<language>.toml once a process.

Names, cues, reasons and the phrases of a dose in each language are handed out here; which exercise or dose it is, is
the core's to say. A language is one file more.
"""

import tomllib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from reminders.core.dose_words import in_short, in_words, session_line
from reminders.core.library import LIBRARY
from reminders.core.programs import SessionItem
from reminders.texts_folder import templates_folder

# The tables of a file that are no exercise.
_TABLES = ("phrases", "patterns", "precautions", "effects", "reasons", "programs")


@dataclass(frozen=True)
class Words:
    """One exercise in one language; `synonyms` are names that a client may use, for the reader of replies."""

    code: str
    name: str
    short: str
    cues: tuple[str, ...]
    safety: str
    synonyms: tuple[str, ...]


@dataclass(frozen=True)
class ExerciseWords:
    """Everything said about exercises in one language.

    `phrases` say doses; `patterns`, `precautions` and `effects` go by their English names, `reasons` and `programs`
    by their codes.
    """

    language: str
    exercises: Mapping[str, Words]
    phrases: Mapping[str, str]
    patterns: Mapping[str, str]
    precautions: Mapping[str, str]
    effects: Mapping[str, str]
    reasons: Mapping[str, str]
    programs: Mapping[str, str]

    def name(self, code: str) -> str:
        """Return an exercise's name."""
        return self.exercises[code].name

    def dose(self, item: SessionItem) -> str:
        """Return a line's dose in words: "20 seconds each side, twice"."""
        return in_words(item.dose, item.side, self.phrases)

    def dose_short(self, item: SessionItem) -> str:
        """Return a line's dose in short: "2x20 sec each side"."""
        return in_short(item.dose, item.side, self.phrases)

    def line(self, item: SessionItem) -> str:
        """Return a line as a reminder says it: "A sit to stand 10 times, twice"."""
        return f"{item.letter} {self.name(item.exercise)} {self.dose(item)}"

    def session(self, items: Iterable[SessionItem]) -> str:
        """Return a session as the reader of replies takes it: "sit to stand 2x10; tandem stance 2x20 sec each side"."""
        names = {code: words.name for code, words in self.exercises.items()}
        return session_line(items, names, self.phrases)


@lru_cache(maxsize=8)
def exercise_words(language: str) -> ExerciseWords:
    """Return the words of a language; raises LookupError naming the file that is missing or lacks an exercise."""
    path = templates_folder() / "exercises" / f"{language}.toml"
    if not path.is_file():
        raise LookupError(f"There is no file of exercise words {path.name}.")
    tables = tomllib.loads(path.read_text(encoding="utf-8"))
    lacking = [name for name in (*_TABLES, *LIBRARY) if name not in tables]
    if lacking:
        raise LookupError(f"{path.name} lacks [{lacking[0]}].")
    exercises = {code: _words(code, tables[code]) for code in LIBRARY}
    return ExerciseWords(language, exercises, *(tables[name] for name in _TABLES))


def _words(code: str, table: Mapping[str, Any]) -> Words:
    return Words(code, table["name"], table["short"], tuple(table["cues"]), table["safety"], tuple(table["synonyms"]))
