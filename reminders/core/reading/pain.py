"""The pain that a reply states: which figures count, and what "no pain" means.

A figure counts only when the words make it pain; the worst of those that hold for now or this session is the pain. A
number that could be anything stays out, and the caller asks.
"""

from dataclasses import dataclass, field

from reminders.core.reading.danger import SIGN_LABELS, Hits, Span
from reminders.core.reading.lexicon import UNKNOWN
from reminders.core.reading.model import SCALE_TOP
from reminders.core.reading.pain_beside import is_over, without_others
from reminders.core.reading.quantities import Figure, Numbers
from reminders.core.reading.scope import Scope
from reminders.core.reading.signatures import QUESTION
from reminders.core.reading.tokens import worst_whole

_SHORT = 10  # words
_TOLD_OTHERWISE = ("num.past", "num.retracted", "num.said", "num.never", "num.other", "num.theirs")
_NO_PAIN_LABELS = frozenset({"pain_none", "pain_answer_none"})


@dataclass(slots=True)
class Pain:
    """What was stated: `value` None when nothing, or nothing on the scale, was."""

    value: int | None = None
    before: int | None = None
    after: int | None = None
    off_scale: bool = False
    spans: list[Span] = field(default_factory=list)
    none_said: bool = False
    is_stated: bool = False  # the words make the figure pain; else only its place in the reply does


def find_pain(numbers: Numbers, hits: Hits, scope: Scope, asked: str | None, is_report: bool) -> Pain:
    """Return the pain that a reply states."""
    if not (numbers.pains or numbers.loose or numbers.off_scale) and _NO_PAIN_LABELS.isdisjoint(hits):
        return Pain()
    figures = list(numbers.pains)
    taken = {figure.at for figure in figures}
    figures += [
        Figure(at, worst_whole(scope.text.values[at] or 0), False)
        for at in _loose_pains(numbers, hits, scope, asked, is_report, bool(figures))
        if at not in taken
    ]
    taken |= {figure.at for figure in figures}
    figures = [figure for figure in figures if not _counts_things(figure, scope)]
    off_scale = numbers.off_scale or any(figure.value > SCALE_TOP for figure in figures)
    figures = [figure for figure in figures if figure.value <= SCALE_TOP]
    has_amounts = bool(numbers.amounts or numbers.counts)
    figures = _still_standing(figures, hits, scope, asked in ("pain", "settling"), has_amounts)
    none_spans = _no_pain(hits, scope, asked)
    figures = without_others(figures, [] if _corrects(hits) else none_spans, hits, scope)
    rivals = [] if asked in ("pain", "settling") else _rivals(figures, taken, numbers, hits, scope)
    if rivals:
        figures = []  # a figure that only stands like a rating, beside another that may be it: she is asked
    result = Pain(off_scale=off_scale or bool(rivals))
    result.none_said = bool(none_spans)
    tells = {"pain_said", "num.invited"} & set(hits)
    if asked is None and not tells and not any(figure.value for figure in figures):
        limbs = {at for s, e in hits.get("num.rating_body", ()) for at in range(s, e)}
        figures = [figure for figure in figures if figure.at not in limbs]  # "left leg zero" is as likely an amount
    if figures:
        result.value = max(figure.value for figure in figures)
        result.is_stated = any(figure.stated and figure.value == result.value for figure in figures)
        result.spans = [(figure.at, figure.at + 1) for figure in figures]
        _before_and_after(result, figures, hits)
    elif none_spans and (not off_scale or ("pain_none" in hits and not (numbers.off_scale or rivals))):
        result.value = 0
        result.spans = none_spans
    return result


def _counts_things(figure: Figure, scope: Scope) -> bool:
    """Tell whether a number word has a form that never rates: "fue una" is one set, "fue un rayo" no number."""
    lexicon = scope.lexicon
    return figure.value == 1 and lexicon.look_up(scope.text.words[figure.at])[1] in lexicon.either("COUNTS", "INDEF")


def _rivals(figures: list[Figure], taken: set[int], numbers: Numbers, hits: Hits, scope: Scope) -> list[int]:
    """Return the numbers beside a figure, in its sentence, that could as well be the rating; beside a stated one only
    worse ones that go on from it."""
    if not figures:
        return []
    invited = _places(hits, "num.invited") if len(scope.text.raw[0]) == 1 else set()  # "Y6 and it is day 3 of rain"
    stated = max((one.value for one in figures if one.stated or one.at in invited), default=None)
    told = {at for label in _TOLD_OTHERWISE for s, e in hits.get(label, ()) for at in range(s, e)} | taken
    worst, values = max(figure.value for figure in figures), scope.text.values
    bounds = [scope.sentence(figure.at, figure.at + 1) for figure in figures]
    return [
        at
        for at in numbers.loose
        if at not in told
        and (values[at] or 0) <= SCALE_TOP
        and worst_whole(values[at] or 0) != worst  # "9 when I got up and 9 still"
        and any(low <= at < high for low, high in bounds)
        and (stated is None or ((values[at] or 0) > stated and _goes_on(at, scope)))
    ]


def _goes_on(at: int, scope: Scope) -> bool:
    """Tell whether a number goes on with what was told before: "pain 2 at first and then a 6"."""
    signature, lexicon = scope.text.signature, scope.lexicon
    if signature[at + 1 : at + 2] == UNKNOWN:
        return False  # "then 9 marbles"
    joins, small = lexicon.either("JOINAND", "BUT", "THEN"), lexicon.either("FILL", "ARTICLE", "THEN", "ALMOST")
    at -= 1
    while at > 0 and signature[at] in small and signature[at] not in joins:
        at -= 1
    return at > 0 and signature[at] in joins


def _loose_pains(
    numbers: Numbers, hits: Hits, scope: Scope, asked: str | None, is_report: bool, has_figures: bool
) -> list[int]:
    """Return the places of loose numbers that are pain by where they stand."""
    if not numbers.loose or (asked == "amount" and not has_figures and "pain_said" not in hits):
        return []
    if asked in ("pain", "settling"):
        return numbers.loose
    sets = scope.lexicon.either("SET", "SETS_WORD")
    tells_amount = numbers.amounts or numbers.counts or not sets.isdisjoint(scope.text.present)
    if tells_amount and _corrects(hits) and "pain_said" not in hits:
        return []  # what is put right is how much was done: "I put 1 set, was 2"
    said_until = max((end for _, end in hits.get("num.said", ())), default=None)
    marked = {at for label in ("num.rating", "num.rating_body") for s, e in hits.get(label, ()) for at in range(s, e)}
    if "correction" in hits and len(scope.text.words) <= _SHORT:
        marked |= set(numbers.loose)
    if _corrects(hits):
        marked |= {at for s, e in hits.get("num.meant", ()) for at in range(s, e)}
    if said_until is not None:  # what was said, then what it is
        marked |= {at for at in numbers.loose if at >= said_until}
    if "pain_said" in hits or not SIGN_LABELS.isdisjoint(hits):
        marked |= {at for s, e in hits.get("num.alone", ()) for at in range(s, e)}
    if is_report:
        marked |= {at for s, e in hits.get("num.after_done", ()) for at in range(s, e)}
    if has_figures:
        marked |= {at for s, e in hits.get("num.rating_also", ()) for at in range(s, e)}
    return [at for at in numbers.loose if at in marked and (scope.text.values[at] or 0) <= SCALE_TOP]


def _still_standing(
    figures: list[Figure], hits: Hits, scope: Scope, is_lone_answer: bool, has_amounts: bool
) -> list[Figure]:
    """Leave out figures that are taken back, supposed, asked about or another day's; "2 sets, I put 1"."""
    if len(figures) > 1:
        meant = _places(hits, "num.meant") if _corrects(hits) else set()
        back = _places(hits, "num.retracted") | (_places(hits, "num.said") - meant - _places(hits, "num.own"))
        stated = [figure for figure in figures if figure.stated]
        standing = [figure for figure in figures if figure.at in meant - back]
        standing = standing or [figure for figure in figures if figure.at not in back]
        figures = standing or figures
        own = [one for one in stated if one.at not in back | meant]
        has_amounts |= not scope.lexicon.chars("SETS_WORD").isdisjoint(scope.text.signature)
        if has_amounts and own and not any(one.stated for one in figures):
            figures = own  # "I put 2 sets, I meant 1. pain 9"
        fixes = [s for s, _ in hits.get("self_fix", ())]
        if fixes and any(figure.at > max(fixes) for figure in figures):
            figures = [figure for figure in figures if figure.at > max(fixes)]
    elif figures and "pain_none" in hits:  # "I meant no pain, not 9"
        figures = [one for one in figures if one.at not in _places(hits, "num.retracted")]
    if len(figures) == 1 and has_amounts and _corrects(hits) and "pain_said" not in hits:
        figures = [one for one in figures if not any(s <= one.at < e for s, e in hits.get("num.said", ()))]
    never = _places(hits, "num.never") - _places(hits, "num.now")  # "never went over 4" is a 4
    figures = [figure for figure in figures if figure.at not in never]
    is_lone = is_lone_answer and len(figures) == 1 and _NO_PAIN_LABELS.isdisjoint(hits)
    figures = figures if is_lone and not is_over(figures[0], hits, scope) else _current(figures, hits, scope)
    figures = [figure for figure in figures if not (_is_asked(figure, scope) or _is_theirs(figure, hits, scope))]
    if not (is_lone_answer or _corrects(hits) or "num.said" in hits):  # "he only two"
        figures = [one for one in figures if one.stated or scope.whose(one.at, one.at + 1) != "other"]
        figures = [one for one in figures if one.stated or not _is_of_unknown(one, scope)]
    if len(figures) > 1:
        outside = [figure for figure in figures if not _in_question(figure, hits, scope)]
        figures = outside or figures
        if not scope.lexicon.either("PERSON", "ANIMAL", "CLIENTLIKE", "THIRD").isdisjoint(scope.text.present):
            own = [figure for figure in figures if scope.whose(figure.at, figure.at + 1) != "other"]
            figures = own or figures
    return figures


def _current(figures: list[Figure], hits: Hits, scope: Scope) -> list[Figure]:
    """Return the figures of now, or of the session that is told: "did all yesterday, pain 2"."""
    current = [figure for figure in figures if not _is_other_time(figure, hits, scope)]
    if current or "done" not in hits or "day.yesterday" not in hits or "day.today" in hits:
        return current
    past = _places(hits, "num.past")
    return [one for one in figures if one.stated and one.at in past and not scope.is_past(one.at, one.at + 1)]


def _places(hits: Hits, label: str) -> set[int]:
    """Return the places under a label; "num.own": what is given now, "I'd put it at 4"."""
    return {at for s, e in hits.get(label, ()) for at in range(s, e)}


def _corrects(hits: Hits) -> bool:
    """Tell whether a reply corrects an earlier one, or itself."""
    return "correction" in hits or "correction_plain" in hits


def _is_asked(figure: Figure, scope: Scope) -> bool:
    """Tell whether a figure is asked about: "if it is 5, should I stop?", "is 10 the bad end"."""
    first = scope.sentence(figure.at, figure.at + 1)[0]
    lexicon, opener = scope.lexicon, scope.text.signature[first]
    opens = first == figure.at - 1 and lexicon.is_in("QUESTIONER", opener)
    opens = opens and not any(lexicon.is_in(kind, opener) for kind in ("YES", "SAYS_RATE", "I"))  # "tengo 8"
    return scope.is_asked(figure.at, figure.at + 1) or (opens and not figure.stated)


def _is_theirs(figure: Figure, hits: Hits, scope: Scope) -> bool:
    """Tell whether a figure is another person's pain: "my friend's pain is a 9"."""
    told = any(s <= figure.at < e for s, e in hits.get("num.theirs", ()))
    return told and not scope.helper and scope.whose(figure.at, figure.at + 1) == "other"


def _is_of_unknown(figure: Figure, scope: Scope) -> bool:
    """Tell whether a noun that no rule knows was so much: "the soup was a 10"."""
    signature, lexicon, at = scope.text.signature, scope.lexicon, figure.at - 1
    verbs, small = lexicon.chars("WASWORD"), lexicon.either("FILL", "ARTICLE", "WASWORD")
    is_told = False
    while at > 1 and signature[at] in small:
        is_told |= signature[at] in verbs
        at -= 1
    is_thing = lexicon.is_in("THE", signature[at - 1]) and not lexicon.is_in("MY", signature[at - 1])
    return is_told and signature[at] == UNKNOWN and is_thing  # "my gout was a 7" is a rating


def _in_question(figure: Figure, hits: Hits, scope: Scope) -> bool:
    """Tell whether a figure stands in a sentence that asks, be it without the mark: "what does a 10 mean"."""
    start, end = scope.sentence(figure.at, figure.at + 1)
    opens = any(low == start and high > low + 1 for low, high in hits.get("question", ()))
    return opens or scope.text.signature[end : end + 1] == QUESTION


def _is_other_time(figure: Figure, hits: Hits, scope: Scope) -> bool:
    """Tell whether a figure belongs to another day while the reply also speaks of now."""
    at = figure.at
    if any(s <= at < e for s, e in hits.get("num.other", ())):
        return True
    if any(s <= at < e for s, e in hits.get("num.now", ())):
        return False  # "since yesterday, I give it a 6"
    if "num.after" in hits and any(s <= at < e for s, e in hits.get("num.before", ())):
        return scope.is_past(at, at + 1) or not scope.lexicon.chars("SURGERY").isdisjoint(scope.text.signature)
    if any(s <= at < e for s, e in hits.get("num.past", ())):
        return True
    return scope.is_past(at, at + 1)


def _no_pain(hits: Hits, scope: Scope, asked: str | None) -> list[Span]:
    """Return the words that say there was no pain."""
    blocked = hits.get("pain_none_not", [])
    rated = scope.lexicon.either("PAINISH", "PAIN", "HURT", "SORE")  # "no sentí nada" may tell of what is numb
    spans = [
        span
        for span in hits.get("pain_none", ())
        if not any(low < span[1] and span[0] < high for low, high in blocked)
        and (QUESTION in scope.text.signature[slice(*span)] or not scope.is_supposed(*span))  # "pain? none"
        and not scope.is_past(*span)
        and (SIGN_LABELS.isdisjoint(hits) or not rated.isdisjoint(scope.text.signature[slice(*span)]))
    ]
    if not spans and asked in ("pain", "settling") and "pain_answer_words" not in hits:
        spans = list(hits.get("pain_answer_none", ()))
    return spans


def _before_and_after(result: Pain, figures: list[Figure], hits: Hits) -> None:
    """Keep the pain before the first exercise and after the last one, when the reply tells them apart."""
    places = {figure.at: figure.value for figure in figures}
    first = [places[at] for s, e in hits.get("num.before", ()) for at in range(s, e) if at in places]
    last = [places[at] for s, e in hits.get("num.after", ()) for at in range(s, e) if at in places]
    if first and last:
        result.before, result.after = first[0], last[-1]


def body_part(scope: Scope, spans: list[Span], named: list[Span]) -> str | None:
    """Return the body part told, with its side, nearest to the pain; in the client's own word.

    Names of exercises that something was told of are no body parts: "all but the heel raises, pain 3".
    """
    text, lexicon = scope.text, scope.lexicon
    body = lexicon.chars("BODY")
    if body.isdisjoint(text.present):
        return None
    parts = [at for at, char in enumerate(text.signature) if char in body and not _is_within(at, named)]
    if not parts:
        return None
    near = spans[0][0] if spans else parts[0]
    at = min(parts, key=lambda place: abs(place - near))
    belongs = lexicon.chars("BODYSIDE") | lexicon.chars("BODY")
    start, end = at, at + 1
    while start and text.signature[start - 1] in belongs:
        start -= 1
    while end < len(text.words) and text.signature[end] in belongs:
        end += 1
    return " ".join(text.words[start:end])


def _is_within(at: int, spans: list[Span]) -> bool:
    """Tell whether a place lies in one of some stretches."""
    return any(start <= at < end for start, end in spans)
