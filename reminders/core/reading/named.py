"""The exercises that a reply names, with the words about each, as features for a trained second opinion.

What the opinion makes of them is decided in `statuses.py`.
"""

from collections.abc import Collection, Iterator, Sequence

from reminders.core.reading.danger import Hits
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.lines import SessionTold
from reminders.core.reading.model import SessionExercise
from reminders.core.reading.opinion import is_of_use
from reminders.core.reading.session import Mention
from reminders.core.reading.signatures import QUESTION, STOP
from reminders.core.reading.tokens import Text

UNTOLD = "untold"
_MOST_NAMES = 3  # of one exercise that are looked at
_FAR = 30  # words to either side
_NEAR = 5
_SENSED = 3  # words to either side whose senses are told apart by their distance
_OTHER = "@"


class Named:
    """The exercises that a reply names, with the words about each."""

    def __init__(
        self,
        told: SessionTold,
        mentions: Sequence[Mention],
        text: Text,
        hits: Hits,
        session: Sequence[SessionExercise],
        lexicon: Lexicon,
    ) -> None:
        """Take what the rules made of the names, which are in the text's order."""
        self._mentions, self._session = mentions, session
        self._status = {line.name: line.completed for line in told.by_exercise}
        self._with_amount = {line.name for line in told.by_exercise if line.sets or line.reps}
        self._by_word = told.by_word
        named = {at for one in mentions for at in range(one.start, one.end)}
        words = zip(text.words, text.values, strict=True)
        self._words = text.words
        self._row = [
            _OTHER if at in named else "#" if value is not None else word for at, (word, value) in enumerate(words)
        ]
        self._marks = [
            ()
            if at in named
            else (*map("S".__add__, lexicon.senses_of(word)), *map("C".__add__, lexicon.kinds_of(char)))
            for at, (word, char) in enumerate(zip(text.words, text.signature, strict=True))
        ]
        self._ends = {at for at, char in enumerate(text.signature) if char in STOP or char in QUESTION}
        self._named = named
        self._held = [f"has {label}" for label in hits if is_of_use(label)]
        self.exercises = sorted({one.exercise for one in mentions})

    def status_by_rules(self, exercise: int) -> str:
        """Return what the rules make of an exercise."""
        return self._status.get(self._session[exercise].name, UNTOLD)

    def is_by_word(self, exercise: int) -> bool:
        """Tell whether the rules gave an exercise a word of done or not done."""
        return self._session[exercise].name in self._by_word

    def spans_of(self, names: Collection[str]) -> list[tuple[int, int]]:
        """Return the places at which some exercises are named."""
        return [(one.start, one.end) for one in self._mentions if self._session[one.exercise].name in names]

    def features_of(self, exercise: int, asked: str | None) -> list[str]:
        """Return what there is to know of one exercise: what the rules make of it, and the words about its names."""
        name, status = self._session[exercise].name, self.status_by_rules(exercise)
        own = [one for one in self._mentions if one.exercise == exercise]
        features = [
            f"rule {status}",
            f"rule {status} {name in self._with_amount} {name in self._by_word}",
            f"word {name in self._by_word}",
            f"asked {asked} {status}",
            f"exercises {len(self.exercises)} {status}",
            f"names {min(len(own), _MOST_NAMES)}",
            f"lines {len(self._status)} of {len(self._session)}",
            *self._held,
        ]
        features += [f"other {done}" for other, done in self._status.items() if other != name]
        for mention in own[:_MOST_NAMES]:
            features += self._beside(mention)
            features += self._around(mention)
            features += self._neighbours(mention)
        return list(dict.fromkeys(features))  # in their order, since the training goes by it

    def _word(self, at: int) -> str:
        """Return the word at a place, or a sign for the text's ends."""
        return "^" if at < 0 else self._row[at] if at < len(self._row) else "$"

    def _beside(self, mention: Mention) -> Iterator[str]:
        """Yield the words right before and behind a name, and their senses."""
        before = [self._word(mention.start - step) for step in range(1, _NEAR + 1)]
        behind = [self._word(mention.end - 1 + step) for step in range(1, _NEAR + 1)]
        for step in range(_NEAR):
            yield f"-{step} {before[step]}"
            yield f"+{step} {behind[step]}"
        yield f"- {before[1]} {before[0]}"
        yield f"- {before[2]} {before[1]} {before[0]}"
        yield f"+ {behind[0]} {behind[1]}"
        yield f"+ {behind[0]} {behind[1]} {behind[2]}"
        yield f"-+ {before[0]} {behind[0]}"
        yield f"as {' '.join(self._words[mention.start : mention.end])}"
        if mention.weak:
            yield "weak"
        for step in range(1, _SENSED + 1):
            for side, at in (("-", mention.start - step), ("+", mention.end - 1 + step)):
                if 0 <= at < len(self._row):
                    yield from (f"{side}{step} {mark}" for mark in self._marks[at])

    def _around(self, mention: Mention) -> Iterator[str]:
        """Yield the words and senses before and behind a name: up to the next name, to the sentence's end, beyond."""
        first, last = max(-1, mention.start - 1 - _FAR), min(len(self._row), mention.end + _FAR)
        for side, places in (("<", range(mention.start - 1, first, -1)), (">", range(mention.end, last))):
            zone = 0
            for at in places:
                if at in self._ends:
                    zone = 2
                elif at in self._named and zone == 0:
                    zone = 1
                    continue
                yield f"{side}{zone} {self._row[at]}"
                yield from (f"{side}{zone} {mark}" for mark in self._marks[at])

    def _neighbours(self, mention: Mention) -> Iterator[str]:
        """Yield what the rules make of the exercises named before and behind."""
        at = self._mentions.index(mention)
        for side, place in (("before", at - 1), ("behind", at + 1)):
            there = 0 <= place < len(self._mentions)
            yield f"{side} {self.status_by_rules(self._mentions[place].exercise) if there else None}"
