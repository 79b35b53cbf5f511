"""Whether a stretch of a text is denied: how far a "no" or "never" reaches, and what it is about."""

from dataclasses import dataclass

from reminders.core.reading.clauses import Clauses
from reminders.core.reading.lexicon import UNKNOWN
from reminders.core.reading.signatures import BUT, COMMA, QUESTION, STOP

_FIRST = 6  # words behind a stretch in which "until today" stands
_NEAR = 5  # a denial reaches this many words onward
_ENDS = STOP + QUESTION


@dataclass(slots=True, kw_only=True)
class Denial(Clauses):
    """A text whose denials are asked for."""

    def is_denied(self, start: int, reach: int | None = None, over_and: bool = True) -> bool:
        """Tell whether a denial before the stretch reaches it: over a list ("no falls, no dizziness"), not over "I"."""
        chars, lexicon = self.text.signature, self.lexicon
        negators = lexicon.chars("NEGATOR")
        if negators.isdisjoint(chars[:start]) or self._is_told(start):
            return False
        steps = 0
        for at in range(start - 1, -1, -1):
            char = chars[at]
            if char in _ENDS or char == BUT or lexicon.is_in("BUT", char) or self._is_contrast(at):
                return False
            if reach is not None and lexicon.is_in("NOBODY", char):
                continue
            if not over_and and lexicon.is_in("AND_THEN", char):
                return False  # "no falls and I want to die"
            if char in negators and not self._has("EXCLAIM", at + 1, at + 2):
                return self._denies(at, start)
            if char == COMMA:
                if not self._is_list(at) or (at + 1 == start and self._has("THEN_PAST", start, start + 1)):
                    return False
                if at + 1 < start and self._has("AT_PRESENT", at + 1, at + 2):
                    return False  # "ya no me falta el aire, ahora me dan vahídos"
                continue
            if self._begins_another(at, start):
                return False
            if not lexicon.is_in("SYMPTOM", char):
                steps += 1
            if steps > (_NEAR if reach is None else reach):
                return False
        return False

    def is_denied_behind(self, end: int) -> bool:
        """Tell whether a bare "no" closes the stretch: "de mareo nada", "chest pain no, but ...", "mareo no hay"."""
        chars = self.text.signature
        # "Si me he caído: no", "dizzy? no".
        is_asked = chars[end : end + 1] == QUESTION or (chars[end : end + 1] == COMMA and self.text.words[end] == ":")
        at = end + is_asked
        if not self._has("NO_BEHIND", at, at + 1) or (not is_asked and self._has("ONESELF", end - 3, end)):
            return False  # "me caí nada, un golpecito" tells of a fall
        if self._has("THERE_IS", at + 1, at + 2):
            at += 1
        following = chars[at + 1 : at + 2]
        return following in ("", COMMA, BUT, *STOP) or self.lexicon.is_in("BUT", following)

    def _is_told(self, start: int) -> bool:
        """Tell whether a stretch is stated, whatever is denied before it: "no fever and no air", "without help can't
        get up", "not hurt in the fall".
        """
        denies_anew = self._has("NEGATOR", start, start + 1) and self._has("AND", start - 1, start)
        helpless = self._has("CANT", start, start + 1) and self._has("WITHOUT", start - 3, start)
        return denies_anew or helpless or self._is_there(start)

    def _denies(self, at: int, start: int) -> bool:
        """Tell whether a "no" is about the stretch behind it."""
        return not (
            self._is_plain_no(at, start)
            or self._is_twice_denied(at)
            or self._is_object(at)
            or self._says_more(at, start)
        )

    def _begins_another(self, at: int, start: int) -> bool:
        """Tell whether another statement begins at a token between a "no" and the stretch."""
        lexicon, char = self.lexicon, self.text.signature[at]
        if lexicon.is_in("JOIN", char):
            if self._is_new_clause(at + 1, start):
                return True
        elif lexicon.is_in("BLOCK", char):
            return True
        return lexicon.is_in("AND_THEN", char) and self._goes_on(at)

    def is_right_behind_no(self, start: int) -> bool:
        """Tell whether a denial stands right before a stretch: "not dizzy", "I have not been dizzy", "sin un solo
        mareo".
        """
        if self._has("NEGATOR", start - 1, start):
            return True
        if self._has("SINGLE", start - 1, start) and self._has("ART", start - 2, start - 1):
            return self._has("NEGATOR", start - 3, start - 2)
        return self._has("NEGATOR", start - 2, start - 1) and self.text.signature[start - 1 : start] != COMMA

    def _is_new_clause(self, at: int, start: int) -> bool:
        """Tell whether a subject behind "and" begins anew: "no mareos y el dolor es", "no falls and I am dizzy"."""
        is_told = at + 1 == start and self._has("THE", at, start) and self._has("IS", start, start + 4)
        return is_told or self._has("NEW_CLAUSE", at, at + 1)

    def _is_contrast(self, at: int) -> bool:
        """Tell whether "just" tells what is instead: "not dizzy just short of breath", not "not just numb"."""
        is_single = self._has("NEGATOR", at - 1, at) or self._has("ART", at - 1, at)  # "sin un solo mareo"
        return self._has("JUST_THAT", at, at + 1) and at > 1 and not is_single

    def _goes_on(self, at: int) -> bool:
        """Tell whether "and" goes on to what happened: "didn't look and fell", not "never slipped and fell"."""
        chars, listed = self.text.signature, self.lexicon.either("SYMPTOM", "SLIPWORD", "THEN_PAST")
        return self.lexicon.is_in("THEN_PAST", chars[at + 1 : at + 2]) and chars[at - 1 : at] not in listed

    def _is_plain_no(self, at: int, start: int) -> bool:
        """Tell whether this "no" is an answer by itself: "no I fell", "no, my chest hurts"."""
        chars = self.text.signature
        if not self.lexicon.is_in("ANSWER_NO", chars[at]):
            return False
        following = chars[at + 1] if at + 1 < len(chars) else ""
        return (
            following == COMMA
            or self.lexicon.is_in("ANSWER_SUBJECT", following)
            or self.lexicon.is_in("VERB_PAST", following)
        )

    def _is_twice_denied(self, at: int) -> bool:
        """Tell whether "can't ... without" or "not a day that ... not" makes the denial a statement."""
        if self._has("EACH_DAY", at - 4, at) and self._has("NEGATOR", at - 6, at - 1):
            return True
        return self._has("WITHOUT", at, at + 1) and self._has("CANT", max(0, at - 7), at)

    def _is_object(self, at: int) -> bool:
        """Tell whether this "nothing" belongs to what stands before: "no hice nada", "de la nada"."""
        is_undone = self._has("NOT", at - 2, at - 1) and not self._has("DE", at + 1, at + 2)
        return self._has("NOTHING", at, at + 1) and (is_undone or self._has("THE", at - 1, at))

    def _is_list(self, comma: int) -> bool:
        """Tell whether a comma stands in a list of symptoms."""
        return self._has("SYMPTOM", comma - 1, comma)

    def _is_there(self, start: int) -> bool:
        """Tell whether the words before a stretch say that it is there: "not hurt in the fall", "not with this"."""
        known = self._has("FALLNOUN", start, start + 1) and self._has("THE", start - 1, start)
        if (known and self._has("OUT_OF", start - 2, start - 1)) or self._has("THIS", start - 1, start):
            return True
        return self._has("DONE_THINGS", start - 1, start)  # "didn't get to them dizzy", "not up to it today chest pain"

    def _says_more(self, at: int, start: int) -> bool:
        """Tell whether what is denied is another thing: "no change in the pain", "not sure how I fell", "never so
        dizzy", "no es dolor es mareo".
        """
        chars = self.text.signature
        if self._has("UNCHANGED", at + 1, min(start, at + 4)) or self._has("NOT_ABOUT", at + 1, at + 2):
            return True
        if start > at + 2 and chars[at + 1] in (chars[start - 1], chars[start]) and chars[at + 1] != UNKNOWN:
            return True  # the verb anew: "no tengo dolor tengo mareo"
        if self._has("WITHOUT", at, at + 1) and self._has("NEW_CLAUSE", at + 2, start + 1):
            return True  # "sin comer me mareé"
        if self._has("WITH_IT", start - 2, start) and self._has("EXERCISING", at + 1, start):
            return True  # "not doing these with a numb leg"
        if not self._has("NEVER", at, at + 1):
            _, high = self.clause(start, start + 1)
            return self._is_since(start, high) and not self._has("AT_PRESENT", start, high)  # not "no falls until now"
        return self._has("SO_MUCH", at + 1, start) or self._is_first_time(start)

    def _is_first_time(self, start: int) -> bool:
        """Tell whether what "never" was is so now: "never fell like that", "never dizzy until today"."""
        for at in range(start, min(start + _FIRST, len(self.text.signature))):
            if self._has("LIKE_WORD", at, at + 1) and self._has("THAT", at + 1, at + 2):
                return True
        return self._is_since(start, len(self.text.signature)) or self._has("SO_AFTER", start, start + 4)

    def _is_since(self, start: int, end: int) -> bool:
        """Tell whether a day is named until which it was not so: "no chest pain until today"."""
        untils = (at for at in range(start, min(start + _FIRST, end)) if self._has("UNTIL_NOW", at, at + 1))
        return any(self._has("RECENT", at + 1, at + 4) for at in untils)
