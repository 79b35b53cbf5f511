"""To which of the exercises named an amount belongs: the one inside it, right behind it, or last before it."""

from collections.abc import Sequence
from itertools import pairwise

from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.lines import Told
from reminders.core.reading.listing import joined
from reminders.core.reading.model import SessionExercise
from reminders.core.reading.quantities import Amount
from reminders.core.reading.signatures import COMMA, QUESTION, STOP
from reminders.core.reading.tokens import Text

_ENDS = STOP + QUESTION
_SETS = (1, 2, 3, 4, 5, 6)
_FEWEST_REPS, _MOST_REPS = 5, 30


class Owners:
    """The exercises that one reply names."""

    def __init__(self, told: list[Told], text: Text, chars: str, lexicon: Lexicon) -> None:
        """Take the mentions and the text with its numbers in their roles."""
        self._told, self._text, self._chars, self._lexicon = told, text, chars, lexicon

    def of(self, amount: Amount) -> Told | None:
        """Return the exercise an amount belongs to: the one inside it, right behind it, or last before it."""
        for told in self._told:
            if amount.start <= told.mention.start < amount.end and not self._goes_on(told, amount):
                return told
        following = next((told for told in self._told if told.mention.start >= amount.end), None)
        if following is not None and self._leads_to(amount.end, following.mention.start):
            before = next((told for told in reversed(self._told) if told.mention.end <= amount.start), None)
            if before is None or before.amount is not None or not self._is_close(before.mention.end, amount.start):
                return following
            if "," in self._text.words[before.mention.end : amount.start]:  # "all of A, one set of B"
                return following
            if self._lexicon.is_in("JOINAND", self._chars[amount.start - 1]):  # "all of A and one set of B"
                return following
        before = next((told for told in reversed(self._told) if told.mention.end <= amount.start), None)
        if before is not None and self._is_close(before.mention.end, amount.start, amount.kind == "times"):
            return before
        return None

    def _goes_on(self, told: Told, amount: Amount) -> bool:
        """Tell whether a number behind a name that has one leads to the next: "10 chair stands 8 push-ups"."""
        if told.amount is None or told.mention.start != amount.start or told.amount.end > amount.end:
            return False
        following = next((one for one in self._told if one.mention.start >= amount.end), None)
        return following is not None and self._leads_to(amount.end, following.mention.start)

    def of_hold(self, at: int, before: Told | None, session: Sequence[SessionExercise]) -> Told | None:
        """Return the exercise that seconds belong to: "tandem 20 s on the left, 12 s on the right", "4 carries but only
        15 seconds each".
        """
        owner = self.of(Amount(at, at + 1, None, None))
        if owner is None:
            held = [one for one in self._told if one.mention.end <= at and session[one.mention.exercise].seconds]
            owner = before or next(reversed(held), None)
            if owner is not None and set(self._chars[owner.mention.end : at]) & set(_ENDS):
                owner = None
        return owner

    def whole(self, amount: Amount) -> Amount:
        """Return a lone number with the repetitions told behind it: "the sit to stands, two of ten"."""
        at = amount.end
        reps = self._text.values[at + 1] if amount.kind == "beside" and at + 1 < len(self._chars) else None
        is_of = any(self._lexicon.is_in(one, self._chars[at : at + 1]) for one in ("of", "DE"))
        if reps is None or not is_of or amount.reps not in _SETS or not _FEWEST_REPS <= reps <= _MOST_REPS:
            return amount
        return Amount(amount.start, at + 2, amount.reps, int(reps), "of")

    def puts_right(self, old: Amount, new: Amount) -> bool:
        """Tell whether an amount takes back another that was told before: "I told you 2x12, it was 1x12"."""
        said = any(
            self._lexicon.is_in(one, char)
            for char in self._chars[max(0, old.start - 3) : old.start]
            for one in ("SAIDWORD", "SELFSAID")
        )
        return said and new.start > old.end and self._lexicon.is_in("WASWORD", self._chars[new.start - 1])

    def put_right_by(self, amount: Amount) -> Told | None:
        """Return the one exercise named, when an amount further on takes its own back: "but it was 1x10"."""
        told = [one for one in self._told if one.amount is not None]
        is_lone = len(told) == len(self._told) == 1 and told[0].amount is not None
        return told[0] if is_lone and self.puts_right(told[0].amount or amount, amount) else None

    def give_sides(self, amounts: Sequence[Amount], session: Sequence[SessionExercise]) -> None:
        """Give a number told for each side to the hold named before it: "tandem 20 seconds, two each side"."""
        chars, lexicon = self._chars, self._lexicon
        for at, value in enumerate(self._text.values):
            each = any(lexicon.is_in(one, chars[at + 1 : at + 2]) for one in ("EACHWORD", "PERWORD", "ARTICLE"))
            if value is None or not each or not lexicon.is_in("SIDEWORD", chars[at + 2 : at + 3]):
                continue
            if value not in _SETS or any(one.start <= at < one.end for one in amounts):
                continue
            owner = next((one for one in reversed(self._told) if one.mention.end <= at), None)
            if owner is None or owner.amount is not None or not session[owner.mention.exercise].seconds:
                continue
            if not set(chars[owner.mention.end : at]) & set(_ENDS):
                owner.amount = Amount(at, at + 3, None, int(value), "beside")

    def share_none(self) -> None:
        """A nought behind a list is none of all its names: "heels and tandem zero"."""
        for one, later in reversed(list(pairwise(self._told))):
            is_none = later.status == "not" or (
                later.amount is not None and 0 in (later.amount.sets, later.amount.reps)
            )
            between = self._chars[one.mention.end : later.mention.start]
            is_list = any(self._lexicon.is_in("JOINAND", char) for char in between)
            is_list = is_list and joined(self._chars, one, later, self._lexicon)
            if is_none and is_list and one.amount is None and one.status is None:
                one.status = "not"

    def _leads_to(self, start: int, end: int) -> bool:
        """Tell whether only joining words stand between an amount and the name behind it: "3 sets on the band"."""
        start += self._lexicon.is_in("SIDEWORD", self._chars[start : start + 1])  # "one set of 10 each side for the"
        return end - start <= 4 and all(self._lexicon.is_in("LEADS", char) for char in self._chars[start:end])

    def _is_close(self, start: int, end: int, is_times: bool = False) -> bool:
        """Tell whether an amount still belongs to the name before it."""
        between = self._chars[start:end]
        if len(between) > 9 or any(char in _ENDS for char in between):
            return False
        commas = between.count(COMMA)
        if commas > 1 or (commas and len(between) > 3 and between[-1] != COMMA):
            return False
        if (
            between
            and not is_times
            and self._lexicon.is_in("ALL", between[-1])
            and not self._lexicon.is_in("REST", between[-1])
        ):
            between = between[:-1]  # "carries all four"
        return not any(self._lexicon.is_in(concept, char) for char in between for concept in ("BUT", "REST_ALL"))
