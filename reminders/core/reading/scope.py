"""Whether words hold for this client, now: denied, another person's, an animal's, long ago, supposed, a story.

One question is answered here, for one stretch of a text; which stretches are danger signs is decided in `danger.py`.
"""

from dataclasses import dataclass

from reminders.core.reading.denial import Denial
from reminders.core.reading.lexicon import UNKNOWN
from reminders.core.reading.signatures import COMMA, QUESTION, STOP

_ENDS = STOP + QUESTION
_RIGHT_BEFORE = 2
_PAST = ("USED", "YEAR", "AGESPAN", "LAST", "LONGAGO", "YOUNG", "MONTH")


@dataclass(slots=True, kw_only=True)
class Scope(Denial):
    """A text and what is needed to judge a stretch of it."""

    helper: bool  # another person writes, about the client
    own_story: bool  # a session of the writer's own is told, done or not
    tells_of_self: bool  # the writer says "I"

    def whose(self, start: int, end: int) -> str:
        """Return "self", "client" (a helper speaks of her) or "other" for what a stretch tells."""
        chars, lexicon = self.text.signature, self.lexicon
        low, _high = self.sentence(start, end)
        if self._has("SELFVERB", start, start + 1):
            return "self"  # "con él en el hospital y pienso en saltar"
        if self._has("CLIENTLIKE", start, start + 1) and self._has("MY", start - 1, start):
            return self._clientlike(start)  # "mi esposo se cayó" is a sign of three words
        if self._owned_by_other(start, end) or self._led_by_unknown(start, end) or self._told_after(end):
            return "other"
        if self._has("THING", start - 1, start) and self._has("REFLEXIVE", start, start + 1):
            return "other"
        persons = lexicon.either("I", "ANIMAL", "THING", "CLIENTLIKE", "PERSON", "THIRD")
        is_anew, is_now = self._is_led_anew(start), self._has("IS", start, end)
        for at in range(end - 1, low - 1, -1):
            char = chars[at]
            if char not in persons:
                continue
            if at >= start and not (lexicon.is_in("I", char) or lexicon.is_in("HERS", char)):
                continue
            if lexicon.is_in("I", char) and not self._is_possessive_of_other(at):
                return "self"
            if is_anew and (is_now or lexicon.is_in("THING", char) or lexicon.is_in("ANIMAL", char)):
                return "self"  # "my sister fell and the pain is unbearable"
            if lexicon.is_in("ANIMAL", char) or lexicon.is_in("THING", char):
                return "other" if self._governs(at, start) else "self"
            if lexicon.is_in("CLIENTLIKE", char):
                return self._clientlike(at) if self._governs(at, start) else "self"
            if lexicon.is_in("PERSON", char):
                if self._has("DOCTOR", at, at + 1) and self._has("SAYS", at + 1, at + 2):
                    continue  # "the doctor says it was a stroke"
                if self._governs(at, start):
                    return "other"
                continue
            if lexicon.is_in("THIRD", char) and not (at == start - 1 and self._is_noun(start)):
                return self._third(at)
        return "self"

    def _is_noun(self, start: int) -> bool:
        """Tell whether a stretch begins with a thing, whose "el" is no "él": "el dolor es fuerte"."""
        chars = self.lexicon.either("SYMPTOM", "BODY", "PAIN")
        is_led = self._has("THE", start - 1, start) and not self._has("HERS", start - 1, start)
        return is_led and self.text.signature[start] in chars

    def _led_by_unknown(self, start: int, end: int) -> bool:
        """Tell whether an unknown noun does it: "my tenant fell"; not when "I" or a part of her body is told."""
        chars = self.text.signature
        if start < 2 or chars[start - 1] != UNKNOWN or not self._has("OWNERMARK", start - 2, start - 1):
            return False
        return not (self._has("I", start, end + 1) or self._has("BODY", start, end))

    def _is_led_anew(self, start: int) -> bool:
        """Tell whether a noun of its own begins right behind "and" or "but": "rain so stayed in and the pain is"."""
        at = start - 2 - self._has("NOW", start - 2, start - 1)
        return (
            at >= 0 and self._has("THE", start - 1, start) and (bool(self.joints(at, at + 1)) or self.turns(at, at + 1))
        )

    def _governs(self, at: int, start: int) -> bool:
        """Tell whether the stretch can be told of a noun: not after "with", "at", "to" or a pause and a verb."""
        chars = self.text.signature
        is_object = self._has("OBJECT_MARK", at - 2, at)
        if self._has("THING", at, at + 1) and self._has("CAUSED_BY", at + 1, start):
            return False  # "only the chair because of the dizziness"
        if start - at <= _RIGHT_BEFORE and COMMA not in chars[at:start]:
            if self._has("THING", at, at + 1) and self._has("JOIN", at + 1, start):
                return False  # "did the chair and saw stars"
            if self._has("AND_THEN", at + 1, start):
                return not is_object  # "lifted my grandson and felt a crack"
            return not is_object or self._has("OBJECT_SOFT", at - 2, at)  # "dropped my cane fell"
        return not is_object and (COMMA not in chars[at + 1 : start] or self._has("RELATIVE", at + 1, start))

    def _is_possessive_of_other(self, at: int) -> bool:
        """Tell whether this "my" only leads to another person: "my sister fell"."""
        chars, lexicon = self.text.signature, self.lexicon
        if not lexicon.is_in("MY", chars[at]) or self._has("BODY", at + 1, at + 2):  # "my shin, my husband ..."
            return False
        return not lexicon.either("PERSON", "CLIENTLIKE", "ANIMAL", "THING").isdisjoint(chars[at + 1 : at + 4])

    def _owned_by_other(self, start: int, end: int) -> bool:
        """Tell whether the stretch names another's body: "broke my neighbor's arm"."""
        if not self.lexicon.either("PERSON", "ANIMAL").isdisjoint(self.text.chars[start:end]):
            return not self._has("LIKENESS", start, start + 1)  # "like a man sitting on my chest"
        return self._has("WASHIM", end, end + 1) and self._has("PERSON", end + 1, end + 4)

    def _told_after(self, end: int) -> bool:
        """Tell whether the one it is told of stands behind the words: "se desmayó mi vecina", "se cayó el vaso"."""
        chars = self.text.signature
        if not self._has("POSTPOSED", end, end + 1) or self._has("ONTO", end - 1, end):
            return False
        at = end + 1 + self._has("POSTPOSED", end + 1, end + 2)
        return any(self._has(kind, at, at + 1) for kind in ("PERSON", "ANIMAL", "THING")) and at < len(chars)

    def names_writer(self, start: int, end: int) -> bool:
        """Tell whether the words speak of the writer: "everyone would be better off without me"."""
        return self._has("I", start, end)

    def _clientlike(self, at: int) -> str:
        """Return whose a mother's trouble is: the client's when a helper writes or nothing is of the writer."""
        if self.helper:
            return "client"
        if (at and self._has("INDEF", at - 1, at)) or self._has("INLAW", at + 1, at + 3):
            return "other"
        spouse = self._has("SPOUSE", at, at + 1) and self._has("THE", at - 1, at)  # "the wife"
        mine = at and (spouse or self._has("MY", at - 2, at))
        return "other" if self.tells_of_self or (mine and self.own_story) else "client"

    def _third(self, at: int) -> str:
        """Return whose "he" or "she" is: the last person named before."""
        chars, lexicon = self.text.signature, self.lexicon
        for k in range(at - 1, -1, -1):
            if lexicon.is_in("CLIENTLIKE", chars[k]):
                return self._clientlike(k)
            if lexicon.is_in("PERSON", chars[k]) or lexicon.is_in("ANIMAL", chars[k]):
                return "client" if self.helper and lexicon.is_in("PERSON", chars[k]) else "other"
        return "client"

    def is_supposed(self, start: int, end: int) -> bool:
        """Tell whether the stretch is only supposed, feared or asked about: "if I fall, who should I call?"."""
        low = self.sentence(start, end)[0]
        happened = self._has("CANT", start, start + 1) and self._has("COULD", start - 1, start)  # "could not breathe"
        cuts = [COMMA, *self.lexicon.chars("BUT")]
        low = next((at for at in range(start - 1, low, -1) if self.text.signature[at] in cuts), low)
        would = self._last("WOULD", max(low, start - 4), start - happened)
        if would is not None and not self._is_meant(would, start):
            return True
        return self._has("HOPE", max(low, start - 3), start) or self.is_asked(start, end)

    def _is_meant(self, would: int, start: int) -> bool:
        """Tell whether "may" or "can" supposes nothing: "I may be having a stroke", "can you help I fell", "you can see
        my heart pounding".
        """
        having = self._has("HAVING", would + 1, start) or self._has("HAVING", start, start + 1)
        asks_you = self._has("YOU", would + 1, would + 2) and self._has("SUBJECT", would + 2, start)
        return having or asks_you or self._has("SEES", would + 1, would + 2)

    def is_asked(self, start: int, end: int) -> bool:
        """Tell whether the stretch is feared, stands behind "if" in a question, or is what is asked."""
        low, high = self.sentence(start, end)
        fear = self._last("FEAR", max(low, start - 4), start)
        if (
            fear is not None
            and not self._is_no_fear(fear)
            and not (self._is_known(start) or self._is_like_before(end))
            and (not self._has("HAPPENED", fear + 1, start) or self._has("FUTURE", fear + 1, start))
        ):
            return True
        chars = self.text.signature
        asks = high < len(chars) and chars[high] == QUESTION
        at = self._last("IF", low, start)
        if at is not None:
            if self.turns(at, start) or (not asks and self.is_apart(at, start, start, end)):
                return False  # "me mata si no los hago, pero estoy mareada"
            if self._has("RECENT", start, end + 2):
                return False  # "puedo hacerlos si me caí ayer?"
            told = self._has("ASKS", low, at) or self._has("ASKS", end, high)  # not "if I should do them I fell"
            return asks or told or self._has("ASKEDME", low, start)
        if asks and self._has("ASKS", low, start):
            cuts = self.cuts(end, high)
            asks_later = bool(cuts) and self._has("ASKS", cuts[0], high)  # "the pain is 9, do I call or wait?"
            at = self._last("NORMAL", low, start)  # "is it ok that the pain is at an 8?"
            given = at is not None and self._has("THAT_IS", at + 1, start)
            return not (asks_later or given or self._has("HAPPENED", low, end) or self._is_known(start))
        return False

    def _is_known(self, start: int) -> bool:
        """Tell whether the words before a stretch say that it is there: "worried about this pain", "my numb foot"."""
        return self._has("THIS", start - 1, start) or (self._has("MY", start - 1, start) and start > 1)

    def _is_like_before(self, end: int) -> bool:
        """Tell whether what is feared has been: "worried I'll faint again like I did this morning"."""
        at = self._last("LIKE_WORD", end, end + 3)
        if at is None:
            return False
        return self._has("RECENT", at + 1, at + 2) or (
            self._has("ONESELF", at + 1, at + 2) and self._has("RECENT", at + 2, at + 7)
        )

    def _is_no_fear(self, at: int) -> bool:
        """Tell whether a word of fear fears nothing: "fear, I fell", "don't worry but I fell"."""
        following = self.text.signature[at + 1]
        return following == COMMA or self.lexicon.is_in("BUT", following) or self._has("NEGATOR", at - 1, at)

    def is_answered_no(self, end: int) -> bool:
        """Tell whether a sentence that ends here is a question with a bare no behind it: "dizzy? no. falls? none."."""
        chars, lexicon = self.text.signature, self.lexicon
        answer = chars[end + 1 : end + 2]
        if chars[end : end + 1] != QUESTION or chars[end + 2 : end + 3] not in ("", COMMA, *_ENDS):
            return False
        return any(lexicon.is_in(concept, answer) for concept in ("ANSWER_NO", "NONE", "NEVER"))

    def says_this(self, start: int, end: int) -> bool:
        """Tell whether a stretch points at what is: "can't take this pain, took a bad fall two years ago"."""
        return self._has("THIS", start, end)

    def is_past(self, start: int, end: int) -> bool:
        """Tell whether the stretch is told of long ago: years, months, a season; days and weeks are recent."""
        mark = self.past_mark(start, end)
        if mark is None or self.says_this(start, end):
            return False
        joints = self.joints(end, mark) if mark >= end else self.joints(mark + 1, start)
        if not joints:
            return True
        if self.is_current(start, end) or (mark < start and self._has("NOW", mark, start)):
            return False
        return mark < start or not (self.begins_anew(end, mark) or self.leads_clause(joints[-1], mark))

    def past_mark(self, start: int, end: int) -> int | None:
        """Return the place of the word by which the stretch is told of long ago; None when it is not."""
        low, high = self.segment(start, end)
        lexicon = self.lexicon
        past = lexicon.either(*_PAST)
        if past.isdisjoint(self.text.chars[low:high]) and (
            lexicon.number_chars.isdisjoint(self.text.present)
            or not any(len(raw) == 2 and raw.isdigit() for raw in self.text.raw)
        ):
            return None
        marks = [at for at in range(low, high) if self._is_long_ago(at, start, low, high)]
        mark = next((at for at in marks if not self._is_ongoing(at, start, end)), None)
        # "today was hard, I broke my hip in 2019": only a "now" in its own clause tells of now
        return None if mark is None or self._has("NOW", *self.clause(start, end)) else mark

    def _is_ongoing(self, mark: int, start: int, end: int) -> bool:
        """Tell whether a mark of long ago only says since when, what it is like or where she was operated: "since last
        month my chest hurts", "dizzier than last year", "fell on the hip that was replaced two years ago".
        """
        if mark >= end and (self._is_compared(end, mark) or self._is_operated(end, mark)):
            return True
        since = self._has("MONTHSPAN", mark, mark + 2) and self._has("SINCE_MARK", mark - 4, mark)
        return since and self.is_current(start, end)

    def _is_compared(self, end: int, mark: int) -> bool:
        """Tell whether "than" or "like" leads to a mark of long ago; not "like five years ago"."""
        return any(
            self._has("COMPARED", at, at + 1)
            and not self._has("AGOMARK", at - 1, at)
            and not self._has("#", at + 1, at + 2)
            for at in range(max(end, mark - 3), mark)
        )

    def _is_operated(self, end: int, mark: int) -> bool:
        """Tell whether a mark of long ago tells of an operation on what hurts now; not "numb from the surgery"."""
        at = self._last("OPERATED", end, mark)
        return at is not None and not self._has("OUT_OF", at - 2, at)

    def _is_long_ago(self, at: int, start: int, low: int, high: int) -> bool:
        """Tell whether a token says that what is told between two places was long ago."""
        lexicon, char = self.lexicon, self.text.signature[at]
        if lexicon.is_in("USED", char) and at < start and self._is_habit(at):
            return True
        if lexicon.is_in("YEAR", char) or lexicon.is_in("LONGAGO", char) or self._is_short_year(at):
            return True
        if lexicon.is_in("AGESPAN", char) and self._has("AGOMARK", max(low, at - 3), min(high, at + 3)):
            return True
        if lexicon.is_in("LAST", char) and self._has("PASTSPAN", at + 1, min(high, at + 2)):
            return not (self._has("MY", at - 1, at) and self._has("FALLNOUN", at + 1, at + 2))  # "my last fall"
        # "de joven me caí", but not "me caí, joven"
        return lexicon.is_in("YOUNG", char) and at > 0 and self._has("YOUNG_LED", at - 1, at)

    def _is_habit(self, at: int) -> bool:
        """Tell whether a word for a habit of old is one: "used to fall", not "used the band", "not used to it"."""
        if not self._has("NEEDS_TO", at, at + 1):
            return True
        if self._has("NEGATOR", at - 1, at):
            return False  # "I never used to get dizzy"
        return self._has("TO_SCALE", at + 1, at + 2) and not (at and self._has("ACCUSTOMED", at - 1, at))

    def _is_short_year(self, at: int) -> bool:
        """Tell whether a token is a year of two digits, or a month looked back to: "in 09", "back in March"."""
        raw, is_led = self.text.raw[at], self._has("IN_YEAR", at - 1, at)
        is_month = self._has("MONTH", at, at + 1) and self._has("BACK_THEN", at - 2, at - 1)
        is_share = self._has("SHARE", at + 1, at + 3)  # "el 70%", "el 70 por ciento"
        is_year = is_led and not is_share and len(raw) == 2 and raw.isdigit() and (raw[0] == "0" or int(raw) >= 50)
        return is_month or is_year
