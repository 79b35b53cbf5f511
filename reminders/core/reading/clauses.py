"""The parts of a text: its sentences, and the clauses in them, cut at "but", at commas and at "and"."""

from dataclasses import dataclass

from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.signatures import COMMA
from reminders.core.reading.tokens import Text

_LED = 3  # so near behind its joint a mark of long ago leads what follows it


@dataclass(slots=True, kw_only=True)
class Clauses:
    """A text whose parts are asked for."""

    text: Text
    lexicon: Lexicon
    ends: tuple[int, ...] = ()  # places of full stops and question marks

    def sentence(self, start: int, end: int) -> tuple[int, int]:
        """Return the bounds of the sentence around a stretch."""
        low = 0
        for at in self.ends:
            if at < start:
                low = at + 1
            elif at >= end:
                return low, at
        return low, len(self.text.signature)

    def _has(self, concept: str, start: int, end: int) -> bool:
        """Tell whether a concept stands between two tokens."""
        return not self.lexicon.chars(concept).isdisjoint(self.text.chars[max(0, start) : end])

    def _last(self, concept: str, start: int, end: int) -> int | None:
        """Return the last place of a concept between two tokens."""
        chars, signature = self.lexicon.chars(concept), self.text.chars
        if chars.isdisjoint(signature[start:end]):
            return None
        return next((at for at in range(end - 1, start - 1, -1) if signature[at] in chars), None)

    def turns(self, start: int, end: int) -> bool:
        """Tell whether a "but" stands between two tokens."""
        return self._has("BUT", start, end)

    def segment(self, start: int, end: int) -> tuple[int, int]:
        """Return the bounds of the sentence, cut at "but"."""
        low, high = self.sentence(start, end)
        but, chars = self.lexicon.chars("BUT"), self.text.signature
        if but.isdisjoint(self.text.present):
            return low, high
        low = next((at for at in range(start - 1, low - 1, -1) if chars[at] in but), low)
        return low, next((at for at in range(end, high) if chars[at] in but), high)

    def joints(self, low: int, high: int) -> list[int]:
        """Return the places of commas and of "and" between two tokens, where another clause may begin."""
        chars = self.text.chars[low:high]
        return [low + at for at, char in enumerate(chars) if char == COMMA or self.lexicon.is_in("AND_THEN", char)]

    def clause(self, start: int, end: int) -> tuple[int, int]:
        """Return the bounds of the clause around a stretch: its sentence, cut at "but", commas and "and"."""
        low, high = self.segment(start, end)
        before, after = self.joints(low, start), self.joints(end, high)
        return (before[-1] + 1 if before else low), (after[0] if after else high)

    def is_current(self, start: int, end: int) -> bool:
        """Tell whether the clause of a stretch speaks of now: "my chest is tight", "I wet myself this morning"."""
        low, high = self.clause(start, end)
        return self._has("PRESENT", low, high) or self._has("RECENT", low, high)

    def begins_anew(self, start: int, mark: int) -> bool:
        """Tell whether a new subject begins between a stretch and a mark behind it: "my foot is numb and I ..."."""
        return any(at + 1 < mark and self._has("NEW_CLAUSE", at + 1, at + 2) for at in self.cuts(start, mark))

    def says_anew(self, low: int, start: int) -> bool:
        """Tell whether another statement begins between two tokens: "sin dolor y me ...", "me caí me desmayé"."""
        chars = self.text.signature
        repeats = start > low + 1 and chars[low] in (chars[start - 1], chars[start])
        return repeats or self.begins_anew(low, start + 1)

    def is_apart(self, low: int, high: int, start: int, end: int) -> bool:
        """Tell whether a stretch told of now stands in another clause than what is at the other end of two places."""
        return bool(self.cuts(low, high)) and self.is_current(start, end)

    def cuts(self, low: int, high: int) -> list[int]:
        """Return the places of commas, "and" and "but" between two tokens."""
        turns = [] if not self.turns(low, high) else [at for at in range(low, high) if self._has("BUT", at, at + 1)]
        return self.joints(low, high) + turns

    def leads_clause(self, joint: int, mark: int) -> bool:
        """Tell whether a mark of long ago leads a clause of its own behind a joint: "and years ago I used to faint"."""
        high = self.clause(mark, mark + 1)[1]
        return mark - joint <= _LED and self._has("NEW_CLAUSE", mark + 1, high)

    def is_month(self, mark: int) -> bool:
        """Tell whether a mark of long ago speaks of months: too near for a wish to die."""
        return self._has("MONTHSPAN", mark, mark + 2)
