"""What a reply says of each exercise it names, and of the session as a whole.

Amounts and words of done or not done are given to the exercise beside them. An exercise that is only the place where
something happened ("felt a pop on the hinge") gets nothing and is not listed.
"""

from collections.abc import Sequence

from reminders.core.reading import listing, sharing
from reminders.core.reading.danger import Hits
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.lines import SessionTold, Told, is_uneven, joined, line_of, line_told, merged
from reminders.core.reading.model import ExerciseDone, SessionExercise
from reminders.core.reading.owners import Owners
from reminders.core.reading.quantities import Amount, Numbers
from reminders.core.reading.session import Mention
from reminders.core.reading.signatures import COMMA, NAMED, NAMED_ON, QUESTION, SECONDS, STOP, USED
from reminders.core.reading.tokens import Text

_ENDS = STOP + QUESTION
_TOO_MANY = 60  # no repetitions, but a pulse or a weight
_TWICE = 2  # sets, where the same number is told twice: "chair 10, chair 10"


class Teller:
    """Gives amounts and words of done or not done to the exercises of one reply."""

    def __init__(
        self,
        text: Text,
        mentions: list[Mention],
        numbers: Numbers,
        hits: Hits,
        session: Sequence[SessionExercise],
        lexicon: Lexicon,
    ) -> None:
        """Take everything that was found."""
        self._text, self._numbers, self._hits, self._session = text, numbers, hits, session
        self._lexicon = lexicon
        self._sides = lexicon.chars("BODYSIDE")
        self._chars = numbers.signature
        asked, told_of = (
            hits.get("ex.asked", ()),
            {at for low, high in hits.get("ex.place", ()) if "all" in hits for at in range(low, high)},
        )
        mentions = [one for one in mentions if not any(low <= one.start < high for low, high in asked)]
        doses = sharing.in_order(numbers, mentions, session)
        self._told = doses + [
            Told(one, is_place=one.start in told_of or listing.stands_at(text.words, self._chars, one.start, lexicon))
            for one in mentions
        ]
        sharing.close_doses(self._told, len(doses), self._chars, lexicon)
        self._by_word: set[int] = set()  # exercises of which a word of done or not done was said
        self._starts: dict[int, int] = {}  # last word of a run of marks → its first
        self._owners = Owners(self._told, text, self._chars, lexicon)

    def tell(self) -> SessionTold:
        """Return what the reply says of the session and its parts."""
        result = SessionTold()
        free = self._give_amounts()
        sharing.share_amounts(self._told, self._chars, self._lexicon)
        self._owners.give_sides(self._numbers.amounts, self._session)
        self._owners.share_none()
        self._give_statuses()
        self._give_holds()
        free = sharing.spread_sets(self._told, self._give_lone(sharing.in_turn(self._told, free)), self._chars)
        result.amounts = [amount for amount in free if amount.kind not in ("beside", "times")]
        listed = self._listed()
        result.by_exercise = tuple(listed)
        result.by_word = frozenset(self._session[exercise].name for exercise in self._by_word)
        result.spans = [(told.mention.start, told.mention.end) for told in self._told if told.is_listed]
        whole = [amount for amount in free if amount.kind != "beside"]
        self._give_whole(result, whole)
        return result

    def _give_whole(self, result: SessionTold, free: list[Amount]) -> None:
        """Keep the one amount of the session; several doses in a row are the prescription quoted."""
        times = [amount for amount in free if amount.kind == "times"]
        real = [amount for amount in free if amount.kind != "times"]
        if not real and times and "num.times_through" in self._hits:
            real = times
        elif len(real) == len(times) == 1 and real[0].sets is None and not result.by_exercise:
            real = [joined(real[0], times[0])]  # "8 reps, twice"
        distinct = {(amount.sets, amount.reps) for amount in real}
        if len(distinct) == 2 and len(real) == 2 and not result.by_exercise:
            one, two = real
            if one.reps is None and two.sets is None:
                distinct = {(one.sets, two.reps)}
            elif one.sets is None and two.reps is None:
                distinct = {(two.sets, one.reps)}
            elif self._owners.puts_right(one, two):
                distinct = {(two.sets, two.reps)}
            elif "self_fix" in self._hits or "correction" in self._hits:
                distinct = {(one.sets, one.reps)}
        spans = result.spans  # "two sets, but I left off the tandem"
        if len(distinct) == 1 and (not spans or (len(spans) == 1 and real[0].start < spans[0][0])):
            result.sets, result.reps = next(iter(distinct))
        result.amounts = real

    def _give_amounts(self) -> list[Amount]:
        """Give each amount to the exercise it stands with; return those that stand with none."""
        free = []
        sharing.respectively(self._told, self._numbers.amounts, self._chars, self._lexicon)
        given = [told.amount for told in self._told]
        for amount in sorted(self._numbers.amounts, key=lambda one: one.start):
            if amount in given:
                continue
            amount = self._owners.whole(amount)
            owner = (
                None if sharing.is_for_all(amount, self._told, self._chars, self._lexicon) else self._owners.of(amount)
            )
            if owner is None:
                owner = self._owners.put_right_by(amount)
            if owner is None:
                free.append(amount)
            elif owner.amount is None or self._owners.puts_right(owner.amount, amount):
                owner.amount = amount
            else:
                if is_uneven(owner.amount, amount) and not self._sides.isdisjoint(self._chars):
                    owner.status = "part"  # "2x10 on the left and 1x10 on the right"
                owner.amount = joined(owner.amount, amount, owner.status == "part")
        return free

    def _give_holds(self) -> None:
        """A hold shorter than prescribed is part of its exercise: "tandem, 10 seconds was all I could do"."""
        before: Told | None = None
        for at, length in sorted(self._numbers.seconds):
            owner = before = self._owners.of_hold(at, before, self._session)
            if owner is not None and length < (self._session[owner.mention.exercise].seconds or 0):
                owner.status = "part"

    def _give_lone(self, free: list[Amount]) -> list[Amount]:
        """Give a lone amount to the one exercise that was done: "only the wall ones. 2 times 8"."""
        has_rest = not {"rest_done", "rest_not"}.isdisjoint(self._hits)  # "the chair, 2x6, the others as told"
        done = [
            one
            for one in self._told
            if one.status == "done" or (one.status is None and (one.amount or (has_rest and not one.is_place)))
        ]
        old = done[0].amount if done else None
        if not (len({one.mention.exercise for one in done}) == len(free) == 1 and len(self._told) == len(done)):
            return free
        if old is None or (old.sets is None) != (free[0].sets is None):
            done[0].amount = free[0] if old is None else joined(old, free[0])
            return []
        return free

    def _give_statuses(self) -> None:
        """Give each word of done or not done to the names it stands with.

        Some lead on to names ("did", "all but"), some close them ("rows yes"), most do what the first does."""
        if not self._told:
            return
        marks, self._starts = listing.status_marks(self._hits, self._told, self._chars, self._lexicon)
        self._marks = {at: status for end, status, _ in marks for at in range(self._starts[end], end + 1)}
        comes_first = any(at < self._told[0].mention.start for at, _, way in marks if way != "after")
        waiting = []
        for at, status, way in marks:
            if not self._give_status(at, status, way, comes_first or self._opens(at)) and way == "after":
                waiting.append((at, status))
        for at, status in waiting:
            self._lead(at, status)
        for at, status, _ in marks:
            if status == "part" and self._opens(at):
                listing.close_before(self._told, self._chars, at, self._lexicon)
        self._by_word = {told.mention.exercise for told in self._told if told.status is not None}
        self._give_by_listing()
        listing.close_lists(self._told, self._chars, self._lexicon)

    def _give_status(self, at: int, status: str, way: str, comes_first: bool) -> bool:
        """Give one word to the names behind it, or to those before it when it closes them; False when it finds none."""
        after = [told for told in self._told if told.mention.start > at]
        open_before: list[Told] = []
        before = [one for one in self._told if one.mention.end <= at]
        for told in reversed(before):
            over_but = (status, way) == ("part", "after")  # "the wall, but I did not finish it"
            start = self._starts.get(at, at) if status == "part" else at
            is_told = told.status is not None and not self._is_one_side(told, start, at)
            if is_told or not listing.reaches(self._chars, told.mention.end, start, self._lexicon, over_but):
                break
            if open_before and listing.is_apart(self._chars, told, open_before[-1], status, self._lexicon):
                break
            open_before.append(told)
        comes_first |= bool(open_before) and all(told.amount is not None for told in open_before)
        leads = (
            bool(after)
            and way != "after"
            and listing.governs(self._chars, at + 1, after[0].mention.start, self._lexicon)
        )
        if open_before and status == "not" and self._lexicon.is_in("JOINAND", self._chars[at + 1 : at + 2]):
            leads = False  # "heels I could not and the balance neither"
        if leads and open_before and self._chars[at + 1] == COMMA:  # "rows 3x10 done, side lying skipped"
            leads = self._marks.get(after[0].mention.end, status) == status
        if listing.closes_name(self._chars, self._text.words, at, status, self._lexicon):
            leads = False  # "did rows, carries no, side leg ok"
        last = before[-1] if before and not open_before and not leads else None
        if last is not None and (status, way, self._starts[at]) == ("not", "after", last.mention.end):
            last.status = status  # "only the carry got left out"
            return True
        if last is not None and listing.overrules(self._chars, last, at, status, self._lexicon):
            return True
        if way != "before" and open_before and (not leads or not comes_first):
            for told in open_before:
                if not (told.is_place and told.amount is None) or listing.is_refused(
                    self._chars, at, status, way, self._lexicon
                ):
                    told.status = status
            return True
        return leads and self._lead(at, status)

    def _is_one_side(self, told: Told, start: int, at: int) -> bool:
        """Tell whether a word of part right behind a name that was done is about a side: "did the lifts, left only"."""
        is_behind = told.status == "done" and start - told.mention.end == 1 and self._chars[start - 1] == COMMA
        return is_behind and not self._lexicon.either("BODYSIDE", "SIDEWORD").isdisjoint(self._chars[start : at + 1])

    def _opens(self, at: int) -> bool:
        """Tell whether a word of done or not done stands right behind "and" or a comma and right before a name."""
        chars, lexicon = self._chars, self._lexicon
        before = chars[at - 1] if at else ""
        if not before or not (before == COMMA or lexicon.is_in("JOIN", before)):
            return False
        at += 1
        while at < len(chars) and (lexicon.is_in("THE", chars[at]) or lexicon.is_in("OF", chars[at])):
            at += 1
        return at < len(chars) and chars[at] == NAMED

    def _lead(self, at: int, status: str) -> bool:
        """Give a word to the names behind it, as far as they are one list."""
        end, found = at + 1, False
        for place, told in enumerate(self._told):
            if told.mention.start <= at:
                continue
            other = self._is_other(status, end, told.mention.start)
            if found and status == "done":
                other |= listing.is_refused_list(self._told, place, self._marks, self._chars, self._lexicon)
            if other or not listing.governs(self._chars, end, told.mention.start, self._lexicon):
                break
            apart = told.mention.start >= end and status != "done"
            if found and apart and self._marks.get(told.mention.end, status) != status:
                break  # "none of the heels, balance ok"
            if told.status is None:
                told.status = status
                told.is_place = told.is_place and status != "part"  # "the left side only on my lifts"
            end, found = told.mention.end, found or told.status == status
        return found

    def _is_other(self, status: str, start: int, end: int) -> bool:
        """Tell whether a word that says something else stands between: "none of A, all of B"."""
        while start in self._marks:  # "no do the wall"
            start += 1
        return any(self._marks.get(at, status) != status for at in range(start, end))

    def _give_by_listing(self) -> None:
        """Names in a sentence that holds nothing but names are done: "A, B and D."."""
        for told in self._told:
            if told.status is not None or told.amount is not None or told.is_place:
                continue
            low, high = told.mention.start, told.mention.end
            while low and self._is_listing(low - 1):
                low -= 1
            while high < len(self._chars) and self._is_listing(high):
                high += 1
            if not listing.closes(self._chars, high, self._lexicon):
                continue
            if low == 0 or self._chars[low - 1] in _ENDS:
                told.status = "done"
            else:
                told.status = listing.told_before(self._told, self._marks, self._chars, low, high, self._text.words)

    def _is_listing(self, at: int) -> bool:
        """Tell whether a token is part of a list of names."""
        char, is_amount = self._chars[at], any(one.start <= at < one.end for one in self._numbers.amounts)
        return is_amount or char in (COMMA, NAMED, NAMED_ON, USED, SECONDS) or self._lexicon.is_in("LISTING", char)

    def _listed(self) -> list[ExerciseDone]:
        """Return what was told of the exercises, in the order of the reply."""
        result: dict[int, ExerciseDone] = {}
        for told in self._told:
            if told.amount is None and (told.status is None or (told.is_place and told.status != "not")):
                continue
            if told.amount is not None and (told.amount.reps or 0) > _TOO_MANY:
                continue
            told.is_listed = True
            done = line_told(told, self._session[told.mention.exercise])
            old = result.get(told.mention.exercise)
            if old is not None and done.completed == "none" and "correction" in self._hits:
                result[told.mention.exercise] = done  # "I said I did it, but not the carry"
            elif old is None or (old.sets is None and old.reps is None):
                result[told.mention.exercise] = done if old is None else merged(old, done)
            elif told.amount is not None and old.sets is None is done.sets and old.reps == done.reps:
                twice = Amount(told.amount.start, told.amount.end, _TWICE, done.reps)
                result[told.mention.exercise] = line_of(self._session[told.mention.exercise], twice)
        return list(result.values())
