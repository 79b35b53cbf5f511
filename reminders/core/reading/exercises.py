"""What a reply says of each exercise it names, and of the session as a whole.

Amounts and words of done or not done are given to the exercise beside them. An exercise that is only the place where
something happened ("felt a pop on the hinge") gets nothing and is not listed.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field

from reminders.core.reading.danger import Hits
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.model import ExerciseDone, SessionExercise
from reminders.core.reading.patterns import COMMA, NAMED, NAMED_ON, QUESTION, STOP
from reminders.core.reading.roles import Amount, Numbers
from reminders.core.reading.session import Mention
from reminders.core.reading.tokens import Text

_ENDS = STOP + QUESTION


@dataclass
class Told:
    """What was told of one mention: an amount, a word of done or not done, or nothing."""

    mention: Mention
    amount: Amount | None = None
    status: str | None = None  # done, not, part
    is_listed: bool = False


@dataclass
class SessionTold:
    """What a reply says of the session."""

    by_exercise: tuple[ExerciseDone, ...] = ()
    sets: int | None = None
    reps: int | None = None
    amounts: list[Amount] = field(default_factory=list)  # those of no single exercise
    rest: str | None = None  # what became of the exercises not named
    spans: list[tuple[int, int]] = field(default_factory=list)


def mark_mentions(text: Text, mentions: list[Mention]) -> str:
    """Return the signature with the named exercises marked."""
    chars = list(text.signature)
    for mention in mentions:
        chars[mention.start] = NAMED
        for at in range(mention.start + 1, mention.end):
            chars[at] = NAMED_ON
    return "".join(chars)


def settle_mentions(mentions: list[Mention], text: Text, lexicon: Lexicon) -> list[Mention]:
    """Leave out weak names that stand alone: "is it ok to hold a chair" names no exercise."""
    chars = text.signature
    strong = {k for mention in mentions if not mention.weak for k in (mention.start, mention.end)}
    kept = []
    for mention in mentions:
        if not mention.weak:
            kept.append(mention)
            continue
        company = _has_company(mention, chars, lexicon)
        if not company and (strong or len(mentions) > 1):
            neighbours = [other for other in mentions if other is not mention]
            company = any(_is_beside(mention, other, chars, lexicon) for other in neighbours)
        if company and not (lexicon.is_in("BODY", chars[mention.start]) and _is_about_body(mention, chars, lexicon)):
            kept.append(mention)
    return kept


def _has_company(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether an amount or a word of done or not done stands beside a weak name."""
    at = mention.end
    if at < len(chars) and lexicon.is_in("ONE_OR_PART", chars[at]):
        return True
    while at < len(chars) and (chars[at] == COMMA or lexicon.is_in("LISTING", chars[at])):
        at += 1
    if at < len(chars) and (lexicon.is_in("#", chars[at]) or lexicon.is_in("STATUS", chars[at])):
        return True
    at = mention.start - 1
    while at >= max(0, mention.start - 4) and lexicon.is_in("LEADS", chars[at]):
        at -= 1
    if at < 0:
        return False
    return any(lexicon.is_in(concept, chars[at]) for concept in ("#", "STATUS_BEFORE", "SET", "REP"))


def _is_about_body(mention: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether a weak name that is also a body part is meant as the body: "my hip hurts", "heel 3"."""
    around = chars[max(0, mention.start - 2) : mention.start] + chars[mention.end : mention.end + 2]
    return any(lexicon.is_in("PAINISH", char) or lexicon.is_in("MY", char) for char in around)


def _is_beside(one: Mention, other: Mention, chars: str, lexicon: Lexicon) -> bool:
    """Tell whether two names stand in one list."""
    low, high = (one.end, other.start) if one.start < other.start else (other.end, one.start)
    between = chars[low:high]
    return len(between) <= 4 and all(
        char == COMMA or lexicon.is_in("LISTING", char) or lexicon.is_in("STATUS", char) for char in between
    )


def letter_mentions(text: Text, session: Sequence[SessionExercise], lexicon: Lexicon) -> list[Mention]:
    """Return exercises named by letter ("A yes B yes C no"): letters in a row, or one beside a word of done or not."""
    letters = {exercise.letter.lower(): at for at, exercise in enumerate(session)}
    places = [at for at, word in enumerate(text.raw) if word in letters]
    sure = {text.raw[at] for at in places if text.raw[at] not in lexicon.letter_words}
    chars = text.signature
    kept = []
    for at in places:
        after = chars[at + 1] if at + 1 < len(chars) else STOP
        before = chars[at - 1] if at else STOP
        certain = text.raw[at] not in lexicon.letter_words
        telling = after in STOP + COMMA or any(lexicon.is_in(one, after) for one in ("STATUS", "LISTING", "#", "WASWORD"))
        telling = telling or lexicon.is_in("STATUS_BEFORE", before)
        if (certain and len(sure) > 1) or (telling and (certain or sure)):
            kept.append(Mention(at, at + 1, letters[text.raw[at]], False))
    return kept if any(text.raw[mention.start] not in lexicon.letter_words for mention in kept) else []


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
        self._chars = numbers.signature
        self._told = [Told(mention) for mention in mentions]

    def tell(self) -> SessionTold:
        """Return what the reply says of the session and its parts."""
        result = SessionTold()
        free = self._give_amounts()
        self._give_statuses()
        result.amounts = [amount for amount in free if amount.kind not in ("beside", "times")]
        listed = self._listed()
        result.by_exercise = tuple(listed)
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
        distinct = {(amount.sets, amount.reps) for amount in real}
        if len(distinct) == 2 and len(real) == 2 and not result.by_exercise:
            one, two = real
            if one.reps is None and two.sets is None:
                distinct = {(one.sets, two.reps)}
            elif one.sets is None and two.reps is None:
                distinct = {(two.sets, one.reps)}
            elif "self_fix" in self._hits or "correction" in self._hits:
                distinct = {(one.sets, one.reps)}
        if len(distinct) == 1:
            result.sets, result.reps = next(iter(distinct))
        result.amounts = real

    def _give_amounts(self) -> list[Amount]:
        """Give each amount to the exercise it stands with; return those that stand with none."""
        free = []
        for amount in sorted(self._numbers.amounts, key=lambda one: one.start):
            owner = self._owner(amount)
            if owner is None:
                free.append(amount)
            elif owner.amount is None:
                owner.amount = amount
            else:
                owner.amount = _joined(owner.amount, amount)
        return free

    def _owner(self, amount: Amount) -> Told | None:
        """Return the exercise an amount belongs to: the one inside it, right behind it, or last before it."""
        for told in self._told:
            if amount.start <= told.mention.start < amount.end:
                return told
        following = next((told for told in self._told if told.mention.start >= amount.end), None)
        if following is not None and self._leads_to(amount.end, following.mention.start):
            before = next((told for told in reversed(self._told) if told.mention.end <= amount.start), None)
            if before is None or before.amount is not None or not self._is_close(before.mention.end, amount.start):
                return following
        before = next((told for told in reversed(self._told) if told.mention.end <= amount.start), None)
        if before is not None and self._is_close(before.mention.end, amount.start):
            return before
        return None

    def _leads_to(self, start: int, end: int) -> bool:
        """Tell whether only joining words stand between an amount and the name behind it: "3 sets on the band"."""
        return end - start <= 4 and all(self._lexicon.is_in("LEADS", char) for char in self._chars[start:end])

    def _is_close(self, start: int, end: int) -> bool:
        """Tell whether an amount still belongs to the name before it."""
        between = self._chars[start:end]
        if len(between) > 9 or any(char in _ENDS for char in between):
            return False
        commas = between.count(COMMA)
        if commas > 1 or (commas and len(between) > 3):
            return False
        return not any(self._lexicon.is_in(concept, char) for char in between for concept in ("BUT", "REST_ALL"))

    def _give_statuses(self) -> None:
        """Give each word of done or not done to the names it stands with."""
        marks = self._status_marks()
        if not self._told:
            return
        first_name = self._told[0].mention.start
        comes_first = bool(marks) and marks[0][0] < first_name
        for at, status in marks:
            self._give_status(at, status, comes_first)

    def _status_marks(self) -> list[tuple[int, str]]:
        """Return the words of done and not done with their places, a denied "do" as not done."""
        marks: dict[int, str] = {}
        for label, status in (("ex.done", "done"), ("ex.part", "part"), ("ex.not", "not")):
            for start, end in self._hits.get(label, ()):
                for at in range(start, end):
                    if self._chars[at] not in (NAMED, NAMED_ON):
                        marks[at] = status
        runs: list[tuple[int, str]] = []
        for at in sorted(marks):
            if runs and marks[at] == runs[-1][1] and marks.get(at - 1) == marks[at]:
                runs[-1] = (at, marks[at])
            else:
                runs.append((at, marks[at]))
        return runs

    def _give_status(self, at: int, status: str, comes_first: bool) -> None:
        """Give one word to the names behind it, or to those before it when it closes them."""
        before = [told for told in self._told if told.mention.end <= at]
        after = [told for told in self._told if told.mention.start > at]
        open_before = []
        for told in reversed(before):
            if told.status is not None or not self._reaches(told.mention.end, at):
                break
            open_before.append(told)
        follows = bool(after) and self._governs(at + 1, after[0].mention.start)
        if open_before and (not follows or not comes_first):
            for told in open_before:
                told.status = status
            return
        if follows:
            end = at + 1
            for told in after:
                if not self._governs(end, told.mention.start):
                    break
                if told.status is None:
                    told.status = status
                end = told.mention.end

    def _reaches(self, start: int, end: int) -> bool:
        """Tell whether a word of done or not done closes the names before it."""
        between = self._chars[start:end]
        return len(between) <= 12 and not any(char in _ENDS for char in between) and not any(
            self._lexicon.is_in("BUT", char) for char in between
        )

    def _governs(self, start: int, end: int) -> bool:
        """Tell whether a word of done or not done leads on to the names behind it."""
        between = self._chars[start:end]
        if len(between) > 9:
            return False
        return all(
            char == COMMA
            or char in (NAMED, NAMED_ON, "u", "s")
            or self._lexicon.is_in("LEADS", char)
            or self._lexicon.is_in("LISTING", char)
            or self._lexicon.is_in("REP", char)
            for char in between
        )

    def _listed(self) -> list[ExerciseDone]:
        """Return what was told of the exercises, in the order of the reply."""
        result: dict[int, ExerciseDone] = {}
        for told in self._told:
            if told.amount is None and told.status is None:
                continue
            told.is_listed = True
            done = self._judge(told)
            old = result.get(told.mention.exercise)
            if old is None or (old.sets is None and old.reps is None):
                result[told.mention.exercise] = done if old is None else _merge(old, done)
        return list(result.values())

    def _judge(self, told: Told) -> ExerciseDone:
        """Return one exercise's line: its amount against the prescription, or the word said of it."""
        exercise = self._session[told.mention.exercise]
        if told.status == "not" and told.amount is None:
            return ExerciseDone(exercise.name, None, None, "none")
        sets, reps = _amount_of(told.amount, exercise)
        if told.status == "part":
            return ExerciseDone(exercise.name, sets, reps, "part")
        return ExerciseDone(exercise.name, sets, reps, _completed(sets, reps, exercise, told.amount))


def _merge(old: ExerciseDone, new: ExerciseDone) -> ExerciseDone:
    """Return two lines about one exercise as one; an amount says more than a word."""
    if new.sets is None and new.reps is None:
        return new if "part" in (new.completed,) else old
    return new


def _joined(one: Amount, two: Amount) -> Amount:
    """Return "2 sets" and "10 reps" as one amount."""
    if one.sets is not None and one.reps is None and two.sets is None:
        return Amount(one.start, two.end, one.sets, two.reps)
    if one.reps is not None and one.sets is None and two.reps is None and two.sets is not None:
        return Amount(one.start, two.end, two.sets, one.reps)
    return one


def _amount_of(amount: Amount | None, exercise: SessionExercise) -> tuple[int | None, int | None]:
    """Return sets and repetitions; a lone number is sets up to the prescribed number of sets, else repetitions."""
    if amount is None:
        return None, None
    if amount.kind in ("beside", "times"):
        number = amount.reps if amount.reps is not None else amount.sets
        if number is None:
            return None, None
        if number <= (exercise.sets or 0) or exercise.seconds:
            return number, None
        return None, number
    if exercise.seconds:
        return amount.sets if amount.sets is not None else None, None
    return amount.sets, amount.reps


def _completed(sets: int | None, reps: int | None, exercise: SessionExercise, amount: Amount | None) -> str:
    """Return all, part or none of an exercise by its amount; uneven sets fell short somewhere."""
    wanted_sets, wanted_reps = exercise.sets or 1, exercise.reps
    if sets == 0 or reps == 0:
        return "none"
    if sets is None:
        return "part" if reps is not None and wanted_reps and reps < wanted_reps * wanted_sets else "all"
    if sets < wanted_sets:
        return "part"
    if reps is None:
        return "part" if amount is not None and amount.kind == "pair" else "all"
    return "part" if wanted_reps and reps < wanted_reps else "all"
