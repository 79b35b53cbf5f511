"""The session a reply answers: parsed from its short form, and found again in the client's own words.

Which words name an exercise is decided here; what the reply says of it is decided in `exercises.py`.
"""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from reminders.core.reading.kept import Kept
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.model import SessionExercise
from reminders.core.reading.normal import fold
from reminders.core.reading.signatures import COMMA, STOP
from reminders.core.reading.spelling import one_off
from reminders.core.reading.tokens import Text
from reminders.errors import BadInput

_DOSE = re.compile(
    r"^(?P<name>.+?)\s+(?P<sets>\d+)\s*[x×]\s*(?P<count>\d+)\s*(?P<unit>s|sec|secs|seconds?|seg|segs|segundos?|reps?)?\.?\s*"
    r"(?P<sides>(each|per|cada|por)\s+(side|leg|arm|hand|lado|pierna|brazo|mano))?$",
    re.IGNORECASE,
)
_SMALL = frozenset(
    ["a", "an", "the", "of", "to", "and", "on", "de", "la", "el", "los", "las", "en", "con", "y", "por", "un", "una"]
)
_FUZZY_FROM = 4
_SESSIONS = 512  # kept with their names


@lru_cache(maxsize=512)
def parse_session(text: str) -> tuple[SessionExercise, ...]:
    """Return the exercises of "sit to stand 2x10; tandem stance 2x20 sec each side"; BadInput names the bad piece."""
    exercises: list[SessionExercise] = []
    for piece in (part.strip() for part in text.split(";")):
        if not piece:
            continue
        match = _DOSE.match(piece)
        if match is None:
            raise BadInput(
                f'session: "{piece}" is not a name and a dose; write it like "sit to stand 2x10" or "plank 2x20 sec".'
            )
        is_seconds = (match["unit"] or "").lower().startswith("s")
        count = int(match["count"])
        exercises.append(
            SessionExercise(
                letter=chr(ord("A") + len(exercises) % 26),
                name=match["name"].strip(),
                sets=int(match["sets"]),
                reps=None if is_seconds else count,
                seconds=count if is_seconds else None,
                sides=match["sides"] is not None,
            )
        )
    return tuple(exercises)


@dataclass(slots=True)
class Mention:
    """An exercise named at tokens `start` to `end`; a weak name ("chair") counts only in company."""

    start: int
    end: int
    exercise: int
    weak: bool


@dataclass(frozen=True, slots=True)
class _Alias:
    words: tuple[str, ...]
    exercise: int
    weak: bool
    second: str  # its second word, "" when it has one


class SessionNames:
    """All ways to name the exercises of one session in the languages of one lexicon."""

    def __init__(self, session: Sequence[SessionExercise], lexicon: Lexicon) -> None:
        """Gather the aliases of each exercise; a longer name goes before a shorter one."""
        self._lexicon = lexicon
        self._by_first: dict[str, list[_Alias]] = {}
        found: dict[tuple[str, ...], _Alias] = {}
        names = [_stems(exercise.name, lexicon) for exercise in session]
        for at, exercise in enumerate(session):
            for words, weak in _aliases(exercise.name, names, at, lexicon):
                old, second = found.get(words), words[1] if len(words) > 1 else ""
                if old is None or (old.weak and not weak):
                    found[words] = _Alias(words, at, weak, second)
                elif old.exercise != at and old.weak == weak:
                    found[words] = _Alias(words, -1, weak, second)  # names two of them: names none
        for alias in sorted(found.values(), key=lambda one: -len(one.words)):
            if alias.exercise >= 0:
                self._by_first.setdefault(alias.words[0], []).append(alias)
        self._words = {word for words in found for word in words}
        self.letters = {exercise.letter.lower(): at for at, exercise in enumerate(session)}
        self._long_words = sorted(word for word in self._words if len(word) >= _FUZZY_FROM)
        self._stems: Kept[str, str] = Kept(self._stem, 20_000)

    def has(self, word: str) -> bool:
        """Tell whether a word stands in a name."""
        return self._stems[word] in self._words

    def find(self, text: Text) -> list[Mention]:
        """Return the exercises named, in order, none inside another."""
        stems = list(map(self._stems.__getitem__, text.words))
        mentions: list[Mention] = []
        if self._by_first.keys().isdisjoint(stems):
            return mentions
        end = 0
        for at, stem in enumerate(stems):
            if stem in self._by_first and at >= end:
                mention = self._at(stems, at)
                if mention is not None:
                    mentions.append(mention)
                    end = mention.end
        return mentions

    def _at(self, stems: list[str], at: int) -> Mention | None:
        """Return the longest name that begins at one token."""
        behind = stems[at + 1] if at + 1 < len(stems) else ""
        for alias in self._by_first[stems[at]]:
            if not alias.second:
                return Mention(at, at + 1, alias.exercise, alias.weak)
            if alias.second == behind and tuple(stems[at : at + len(alias.words)]) == alias.words:
                return Mention(at, at + len(alias.words), alias.exercise, alias.weak)
        return None

    def _stem(self, word: str) -> str:
        """Return a word as the aliases spell it: singular, and one letter off mended."""
        stem = singular(word)
        is_known = self._lexicon.knows(word) or self._lexicon.knows(stem)  # "rains" is no "raise"
        if stem not in self._words and len(stem) >= _FUZZY_FROM and not is_known:
            stem = next((known for known in self._long_words if one_off(stem, known)), stem)
        return stem


_last: dict[tuple[int, int], tuple[tuple[SessionExercise, ...], Lexicon, SessionNames]] = {}


def names_of(session: tuple[SessionExercise, ...], lexicon: Lexicon) -> SessionNames:
    """Return the names of a session's exercises, kept for the next reply; the very same tuple is not compared anew."""
    key = (id(session), id(lexicon))
    kept = _last.get(key)
    if kept is not None and kept[0] is session and kept[1] is lexicon:
        return kept[2]
    if len(_last) > _SESSIONS:
        _last.clear()
    names = _names_of(session, lexicon)
    _last[key] = (session, lexicon, names)
    return names


@lru_cache(maxsize=512)
def _names_of(session: tuple[SessionExercise, ...], lexicon: Lexicon) -> SessionNames:
    return SessionNames(session, lexicon)


def is_movement(chars: str, at: int, after: str, lexicon: Lexicon) -> bool:
    """Tell whether a word is what somebody does: "every time I stand", "bending to pick it up", "went for my walk"."""
    before = chars[at - 1]
    if lexicon.is_in("POSTURE", chars[at]) and lexicon.is_in("TO_SCALE", after):
        return True
    if not lexicon.is_in("MOVEVERB", chars[at]):
        return False
    led = lexicon.is_in("IN_BODY", chars[at - 2 : at - 1]) and any(lexicon.is_in(one, before) for one in ("MY", "ART"))
    return led or (lexicon.is_in("SUBJECT_I", before) and not lexicon.is_in("#", after))


def is_new_gear(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a thing is told by its kind and not used: "fell in love with the new band", "my bag is packed"."""
    if not lexicon.is_in("GEAR", chars[at]):
        return False
    after = chars[at + 1 : at + 2]
    told = any(lexicon.is_in(one, after) for one in ("#", "X", "STATUS", "JOIN", "COMMA", "STOP", "ONE_OR_PART"))
    is_mine = lexicon.is_in("MY", chars[at - 1]) and after != "" and not told
    if not is_mine and not lexicon.is_in("GEARKIND", chars[at - 1]):
        return False
    at -= 1 if is_mine else 2
    while at >= 0 and any(lexicon.is_in(one, chars[at]) for one in ("THE", "ART", "WITHWORD", "GEARKIND")):
        at -= 1
    return at < 0 or not any(lexicon.is_in(one, chars[at]) for one in ("DID", "STATUS_BEFORE", "#", "SET"))


def is_felt_while(words: Sequence[str], chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a movement is when something was felt: "dizzy standing up", "pain 3 getting up from the chair"."""
    led = [char for char in chars[max(0, at - 2) : at] if not lexicon.is_in("JOIN", char)]
    felt = any(lexicon.is_in(one, char) for char in led for one in ("PAINISH", "SYMPTOM", "HURTVERB"))
    return words[at].endswith("ing") and felt and COMMA not in led and STOP not in led


def is_felt_in(chars: str, at: int, lexicon: Lexicon) -> bool:
    """Tell whether a number is told to be in a part of the body: "it was a 2 in the hip"."""
    led = at > 2 and lexicon.is_in("INTIME", chars[at - 2]) and lexicon.is_in("#", chars[at - 3])
    return led and lexicon.is_in("THE", chars[at - 1])


@lru_cache(maxsize=20_000)
def singular(word: str) -> str:
    """Return a word without its plural ending, the same way for a name and for what a client typed."""
    if len(word) > 4 and word.endswith("es") and word[-3] not in "aeiou":
        word = word[:-2]
        return word[:-1] if len(word) > 4 and word[-1] == "e" else word
    if (len(word) > 3 or word == "ups") and word.endswith("s") and not word.endswith("ss"):
        word = word[:-1]
    return word[:-1] if len(word) > 4 and word.endswith("e") else word


def _stems(name: str, lexicon: Lexicon) -> tuple[str, ...]:
    """Return the words of a name as `find` compares them."""
    folded = fold(name).replace("-", " ").replace(",", " ").replace("(", " ").replace(")", " ")
    return tuple(singular(word) for word in folded.split())


def _aliases(name: str, names: list[tuple[str, ...]], at: int, lexicon: Lexicon) -> list[tuple[tuple[str, ...], bool]]:
    """Return all names of one exercise: its own, the language's, its first letters, its words if no other has them."""
    own = names[at]
    result: list[tuple[tuple[str, ...], bool]] = [(own, False)]
    for vocabulary in lexicon.languages:
        for key, block in vocabulary.aliases.items():
            if set(_stems(key, lexicon)) <= set(own):
                for alias in block.split(";"):
                    words = _stems(alias.strip().rstrip("?"), lexicon)
                    if words:
                        result.append((words, alias.strip().endswith("?")))
    content = [word for word in own if word not in _SMALL]
    if len(content) > 1:
        result.append((tuple(word for word in own if word not in _SMALL), False))
        result.append((("".join(content),), False))  # "bandrow"
        for some in (own, content):
            result.append((("".join(word[0] for word in some),), True))  # "sts", "ss"
    others = {word for k, other in enumerate(names) if k != at for word in other}
    result += [((word,), True) for word in content if len(word) > 2 and word not in others]
    return result
