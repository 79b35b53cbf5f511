"""A trained second opinion on the number that the rules took for the pain: whether it is the rating of this session.

"Pain 3. Bet it'll be a 6 tomorrow" and "my wife says hers is a 9" hold a second number, and no list of words knows all
that people rate, fear, plan or were told. Where the judge hardly believes in the number nothing is recorded and the
client is asked, and so where it believes in another number as well.
"""

from collections.abc import Iterator

from reminders.core.reading.danger import Span
from reminders.core.reading.intent import Evidence
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.model import SCALE_TOP, SEVERE_FROM
from reminders.core.reading.opinion import Opinion, is_of_use, question_of
from reminders.core.reading.signatures import NO_WORD
from reminders.core.reading.tokens import worst_whole

OPINION = Opinion("ratings")
# Belief below which a number is not recorded, and belief in another above which it is not either. In files left out of
# training 60 of 8,565 right ratings that stand alone are asked for at 0.5, and 90 of 161 that the rules took wrongly;
# beside other numbers 122 of 6,516, and 187 of 284.
LEAST, MOST_OF_OTHERS = 0.5, 0.25
MOST_OF_LESSER = 0.5  # of a number below it, since of several ratings the worst counts
# Belief in a number from which a lesser one that it went down to raises no doubt.
SURE = 0.9
# Belief in a number of 8 and more above which it is a danger sign though the rules passed it by or it is doubted: "5
# when I woke, 8 by lunch, 6 now". At 0.5 one sign more was lost in 1,200 new replies, at two false alarms fewer in
# 11,800.
LIKELY_SEVERE = 0.35
# Belief below which a number of 8 and more that the rules took is no sign where another number is the rating.
SURELY_NONE = 0.1
_NEAREST = 8
_SIZES = (0, 3, 7, 9)  # the highest value of each class of values


class Candidates:
    """The numbers of a text that could be ratings, each with the stretch of words that speaks of it."""

    def __init__(self, evidence: Evidence) -> None:
        """Take what the rules found."""
        self._evidence, text = evidence, evidence.scope.text
        self._lexicon: Lexicon = evidence.scope.lexicon
        values = ((at, worst_whole(value)) for at, value in enumerate(text.values) if value is not None)
        self.values = {at: value for at, value in values if value <= SCALE_TOP}
        self._row = [
            word if value is None else "/10" if "/10" in word else "#"
            for word, value in zip(text.words, text.values, strict=True)
        ]
        self._breaks = self._lexicon.chars("BUT") | frozenset(NO_WORD)
        self._stretches = {at: self._stretch(at) for at in self.values}
        self._concepts = list(map(self._lexicon.kinds_of, text.signature))

    def features_of(self, at: int) -> list[str]:
        """Return what there is to know of the number at a place: the words about it, and those about the others."""
        value, row = self.values[at], self._row
        size = sum(value > top for top in _SIZES)
        features = [question_of(self._evidence.asked), f"value {size}", f"is {row[at]}"]
        features += self._beside(at)
        features += self._around(at)
        for other in self.near(at):
            features += self._against(at, other)
        features += self._found(at)
        return list(dict.fromkeys(features))  # in their order, since the training goes by it

    def near(self, at: int) -> list[int]:
        """Return the places of the numbers nearest to one, which are enough: a text may be all numbers."""
        others = [other for other in self.values if other != at]
        if len(others) > _NEAREST:
            others = sorted(sorted(others, key=lambda other: abs(other - at))[:_NEAREST])
        return others

    def belief(self, at: int) -> float:
        """Return how far the number at a place is believed to be the rating, 0 to 1."""
        return OPINION.belief(self.features_of(at))

    def is_of_pain(self, at: int) -> bool:
        """Tell whether a word of pain speaks of the number at a place."""
        words = self._evidence.scope.text.signature[slice(*self._stretches[at])]
        return not self._lexicon.either("PAINISH", "HURT", "SORE").isdisjoint(words)

    def is_down_to(self, at: int, other: int) -> bool:
        """Tell whether a rating went down to a lesser one behind it: "was a 5, down to 3 now"."""
        between = self._evidence.scope.text.signature[at + 1 : other]
        return self.values[other] < self.values[at] and not self._lexicon.chars("DOWN_WORD").isdisjoint(between)

    def _stretch(self, at: int) -> tuple[int, int]:
        """Return from where to where words speak of a number: to the next pause, "but", or number."""
        signature = self._evidence.scope.text.signature
        low, high = at, at + 1
        while low > 0 and low - 1 not in self.values and signature[low - 1] not in self._breaks:
            low -= 1
        while high < len(signature) and high not in self.values and signature[high] not in self._breaks:
            high += 1
        return low, high

    def _word(self, at: int) -> str:
        """Return the word at a place, or a sign for the text's ends."""
        return "^" if at < 0 else self._row[at] if at < len(self._row) else "$"

    def _beside(self, at: int) -> list[str]:
        """Return the words right before and behind a number."""
        two_before, before, behind, two_behind = (self._word(at + step) for step in (-2, -1, 1, 2))
        return [
            f"- {before}",
            f"-- {two_before}",
            f"+ {behind}",
            f"++ {two_behind}",
            f"- {two_before} {before}",
            f"+ {behind} {two_behind}",
            f"-+ {before} {behind}",
        ]

    def _around(self, at: int) -> Iterator[str]:
        """Yield the words and concepts of a number's stretch, the other words of its sentence, and of the text."""
        low, high = self._stretches[at]
        start, end = self._evidence.scope.sentence(at, at + 1)
        for place, word in enumerate(self._row):
            if low <= place < high:
                if place != at:
                    side = "<" if place < at else ">"
                    yield f"{side} {word}"
                    for concept in self._concepts[place]:
                        yield f"{side} {concept}"
            elif start <= place < end:
                yield f"s {word}"
            else:
                yield f"o {word}"

    def _against(self, at: int, other: int) -> Iterator[str]:
        """Yield how another number stands to one, and the words that speak of it."""
        mine, value = self.values[at], self.values[other]
        kind = "as" if value == mine else "more" if value > mine else "less"
        start, end = self._evidence.scope.sentence(at, at + 1)
        place = "in" if start <= other < end else "out"
        yield f"other {'before' if other < at else 'behind'} {kind} {place}"
        yield f"{kind} - {self._word(other - 1)}"
        yield f"{kind} + {self._word(other + 1)}"
        low, high = self._stretches[other]
        for one in range(low, high):
            if one != other:
                yield f"{kind} {self._row[one]}"
                for concept in self._concepts[one]:
                    yield f"{kind} {concept}"
        for label, spans in self._evidence.hits.items():
            if label.startswith("num.") and any(low <= other < high for low, high in spans):
                yield f"{kind} has {label}"

    def _found(self, at: int) -> Iterator[str]:
        """Yield what the rules make of the number, and of the text."""
        for label, spans in self._evidence.hits.items():
            if not label.startswith("num."):
                if is_of_use(label):
                    yield f"has {label}"
            elif any(low <= at < high for low, high in spans):
                yield f"has {label}"
        numbers = self._evidence.numbers
        if any(one.start <= at < one.end for one in numbers.amounts):
            yield "is amount"
        if any(at == place for place, _, _ in numbers.counts):
            yield "is count"
        if at in numbers.loose:
            yield "is loose"
        if any(at == figure.at for figure in numbers.pains):
            yield "is pain"


def _taken(evidence: Evidence, candidates: Candidates) -> list[int]:
    """Return the places of the number that the rules took for the pain; none where it is "no pain" in words."""
    places = (at for start, end in evidence.pain.spans for at in range(start, end))
    return [at for at in places if candidates.values.get(at) == evidence.pain.value][:_NEAREST]


def is_doubtful(evidence: Evidence) -> bool:
    """Tell whether the number that the rules took for the pain is hardly a rating of this session, or another is."""
    pain = evidence.pain
    if pain.value is None:
        return False
    candidates = Candidates(evidence)
    taken = _taken(evidence, candidates)
    if not taken:
        return False
    if len(candidates.values) == 1 and "num.invited" in evidence.held:
        return False  # the short answer that every reminder invites, and nothing that could be another
    amounts = {at for one in evidence.numbers.amounts for at in range(one.start, one.end)}
    others = [at for at in candidates.near(taken[0]) if candidates.values[at] != pain.value and at not in amounts]
    belief = max(candidates.belief(at) for at in taken)
    if belief >= SURE:
        others = [at for at in others if not candidates.is_down_to(taken[0], at)]
    return belief < LEAST or any(
        candidates.belief(at) > (MOST_OF_OTHERS if candidates.values[at] > pain.value else MOST_OF_LESSER)
        for at in others
    )


def is_surely_none(evidence: Evidence) -> bool:
    """Tell whether the number that the rules took is surely no rating of this session, since the one that was asked for
    stands beside it: "was a 9 at Easter, today 4". What words of pain rate stays a sign.
    """
    if evidence.asked != "pain":
        return False
    candidates = Candidates(evidence)
    taken = _taken(evidence, candidates)
    if not taken or any(candidates.belief(at) >= SURELY_NONE or candidates.is_of_pain(at) for at in taken):
        return False
    return any(candidates.belief(at) >= LEAST for at in candidates.near(taken[0]))


def severe(evidence: Evidence) -> list[Span]:
    """Return the places of ratings of 8 and more that the rules passed by, where they likely are some."""
    values, amounts = evidence.scope.text.values, evidence.numbers.amounts
    places = [
        at
        for at, value in enumerate(values)
        if value is not None
        and SEVERE_FROM <= value <= SCALE_TOP
        and (evidence.asked == "pain" or not any(one.start <= at < one.end for one in amounts))
    ]
    if not places:
        return []
    candidates = Candidates(evidence)
    return [(at, at + 1) for at in places[:_NEAREST] if candidates.belief(at) > LIKELY_SEVERE]
