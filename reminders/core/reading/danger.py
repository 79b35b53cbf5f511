"""Danger signs, their grades, and concerns: hits of a language's danger rules that hold for this client, now.

A sign is found by its words alone and taken back only for a reason in the same sentence, so that nothing said before
or after can hide it. What is done about a sign is decided elsewhere.
"""

from dataclasses import dataclass, field

from reminders.core.reading.model import CONCERNS, GRADES, RED_FLAGS
from reminders.core.reading.scope import Scope

_CRISIS_REACH = 2  # a denial reaches less far before a wish to die: "nobody needs me and I think of ending it"
# Always for the emergency number first; other kinds by what happened.
CALL_NOW = ("chest_or_breathing", "nerve_or_bladder")
# What is looked for, and the label of its rules.
_SIGNS = {flag: f"danger.{flag}" for flag in RED_FLAGS}
SIGN_LABELS = frozenset(_SIGNS.values())
_CONCERNS = {concern: f"concern.{concern}" for concern in CONCERNS}
_CONCERN_LABELS = frozenset(_CONCERNS.values())
# What takes the words back ("just kidding"), tells them of a film or of childhood, or says that it was always so.
_UNDOING = ("taken_back", "put_right", "told_of", "chronic")
# Why a sign that was found does not count: a turn of speech explains it, or it is denied, past, another's, supposed.
TURN, SCOPE, PAST, OTHER = "turn", "scope", "past", "other"
DENIED, SUPPOSED, CAUGHT = "denied", "supposed", "caught"
_NEXT = 3  # words between signs of one denial, "never tripped and fell"
# One thing leads to another, "I fell and I broke my hip in 2019": a mark of long ago behind one tells of both.
_CHAIN = frozenset({"fall_or_injury", "possible_fracture", "faint_or_dizzy", "severe_pain"})
Hits = dict[str, list[tuple[int, int]]]
Span = tuple[int, int]
Told = list[tuple[str, Span]]


@dataclass(slots=True)
class Danger:
    """What was found: flag → grade, flag → the words that led to it, concerns, and of whom it is told."""

    grades: dict[str, str] = field(default_factory=dict)
    spans: dict[str, list[Span]] = field(default_factory=dict)
    concerns: list[str] = field(default_factory=list)
    explained: dict[str, str] = field(default_factory=dict)  # sign found and taken away → why
    of_client: bool = False
    of_other: bool = False


def find_danger(hits: Hits, scope: Scope) -> Danger:
    """Return the danger signs and concerns of a text."""
    danger = Danger()
    signs = {} if SIGN_LABELS.isdisjoint(hits) else {flag: label for flag, label in _SIGNS.items() if label in hits}
    told = [(flag, span) for flag, label in signs.items() for span in hits[label]]
    for flag, label in signs.items():
        idioms = hits.get("idiom", []) + hits.get(f"idiom.{flag}", [])
        said = [s for s in hits[label] if not _inside(s, idioms) and not _taken_back(s, flag, hits, scope)]
        spans = [
            span
            for span in said
            if not _is_long_ago(span, flag, scope, told) and _holds(span, flag, scope, danger, "happening" in hits)
        ]
        spans = _without_denied(spans, hits[label], scope, flag)
        found = spans
        if flag == "fall_or_injury":
            spans = [span for span in spans if not _caught(span, hits, scope)]
        if spans:
            danger.spans[flag] = spans
            danger.grades[flag] = _grade(flag, spans, hits, scope)
        else:
            danger.explained[flag] = CAUGHT if found else _why(said, flag, scope, told)
    _leave_to_fracture(danger, hits)
    for concern, label in () if _CONCERN_LABELS.isdisjoint(hits) else _CONCERNS.items():
        if label not in hits:
            continue
        spans = [span for span in hits[label] if not scope.is_denied(span[0])]
        if spans and (concern == "bereaved" or any(_concerns_client(span, scope) for span in spans)):
            danger.concerns.append(concern)
            danger.spans[label] = spans
    return danger


def _leave_to_fracture(danger: Danger, hits: Hits) -> None:
    """Leave "can't straighten up for the pain" to the fracture that it goes with: it rates no pain."""
    hindered, severe = hits.get("hindered", ()), danger.spans.get("severe_pain", ())
    if not severe or "possible_fracture" not in danger.spans:
        return
    if all(any(low < end and start < high for low, high in hindered) for start, end in severe):
        del danger.spans["severe_pain"], danger.grades["severe_pain"]
        danger.explained["severe_pain"] = SCOPE


def _why(said: list[Span], flag: str, scope: Scope, told: Told) -> str:
    """Return why none of the words of a sign count, of several reasons the least sure: `said` are those that no turn
    of speech explains, `told` the signs of the whole text.
    """
    if not said:
        return TURN
    reasons = set()
    last = None  # the sign right behind a "no"; those beside it are of its denial
    for start, end in sorted(said):
        if (scope.is_denied(start) and scope.is_right_behind_no(start)) or scope.is_denied_behind(end):
            last = start
            reasons.add(DENIED)
        elif last is not None and start - last <= _NEXT:
            reasons.add(DENIED)
        elif _is_long_ago((start, end), flag, scope, told):
            reasons.add(PAST)
        elif scope.whose(start, end) == "other":
            reasons.add(OTHER)
        elif scope.is_supposed(start, end):
            reasons.add(SUPPOSED)
        else:
            return SCOPE
    return next(reason for reason in (SUPPOSED, PAST, OTHER, DENIED) if reason in reasons)


def _concerns_client(span: Span, scope: Scope) -> bool:
    """Tell whether a concern is the client's own and not long past."""
    return scope.whose(*span) != "other" and not scope.is_past(*span)


def _inside(span: Span, idioms: list[Span]) -> bool:
    """Tell whether an idiom explains the words: they overlap and the idiom holds the sign's first or last word."""
    start, end = span
    return any(low < end and start < high and (low <= start or high >= end) for low, high in idioms)


def _without_denied(spans: list[Span], hits: list[Span], scope: Scope, flag: str) -> list[Span]:
    """Leave out words inside a longer stretch that is denied: "fallen" in "I have not fallen"; not those behind a
    "but": "no pain but tightness across the chest".
    """
    if not spans:
        return spans
    denied = [span for span in hits if scope.is_denied(span[0], over_and=flag != "crisis")]
    return [
        (start, end)
        for start, end in spans
        if not any(
            low <= start and end <= high and not (scope.turns(low, start) or scope.says_anew(low, start))
            for low, high in denied
        )
    ]


def _holds(span: Span, flag: str, scope: Scope, danger: Danger, is_now: bool) -> bool:
    """Tell whether the words hold for this client, now; a wish to die is one even when it is only supposed."""
    start, end = span
    is_crisis = flag == "crisis"
    if scope.is_denied(start, _CRISIS_REACH if is_crisis else None, over_and=not is_crisis) or (
        not is_crisis and (scope.is_denied_behind(end) or (not is_now and scope.is_supposed(start, end)))
    ):
        return False
    whose = "self" if flag == "crisis" and scope.names_writer(start, end) else scope.whose(start, end)
    if whose == "other":
        danger.of_other = True
        return False
    danger.of_client = danger.of_client or whose == "client"
    return True


def _is_long_ago(span: Span, flag: str, scope: Scope, told: Told) -> bool:
    """Tell whether the words are told of long ago; a mark in another clause tells of what is told there: "I wet myself
    this morning, I had a fall in 2019". `told` are the signs of the whole text.
    """
    mark = scope.past_mark(*span)
    if mark is None or scope.says_this(*span):
        return False
    if flag == "crisis" and scope.is_month(mark):
        return False
    start, end = span
    joints = scope.joints(end, mark) if mark >= end else scope.joints(mark + 1, start)
    if not joints:
        return True
    is_current = scope.is_current(start, end)
    if flag == "crisis" or mark < start:
        return flag != "crisis" and not is_current
    if scope.leads_clause(joints[-1], mark):
        return False
    low, high = scope.clause(mark, mark + 1)
    others = [(other, at) for other, (at, until) in told if low <= at and until <= high]
    if any(at > mark for _, at in others) or (others and is_current):
        return False
    is_chain = flag in _CHAIN and _CHAIN.issuperset(other for other, _ in others)
    return not others or is_chain or not scope.begins_anew(end, mark)


def _taken_back(span: Span, flag: str, hits: Hits, scope: Scope) -> bool:
    """Tell whether the sentence takes the words back, or says that it was always so, or "none of that" comes after."""
    low, high = scope.sentence(*span)
    for label in _UNDOING:
        if any(low <= mark[0] < high and _undoes(label, mark, span, flag, scope) for mark in hits.get(label, ())):
            return True
    if flag != "crisis" and scope.is_answered_no(high) and not scope.is_apart(span[1], high, *span):
        return True
    return any(at >= span[1] and (flag != "crisis" or at < high) for at, _ in hits.get("denied_all", ()))


def _undoes(label: str, mark: Span, span: Span, flag: str, scope: Scope) -> bool:
    """Tell whether what would undo a sign reaches it: not over a "but" behind it, nor from another clause to one that
    tells of now, "read a book about a man who fell, and my chest is tight".
    """
    start, end = span
    if mark[1] <= start:
        return label != "put_right" and not (
            scope.turns(mark[1], start) or (label != "taken_back" and scope.is_apart(mark[1], start, *span))
        )
    if mark[0] < end or label in ("taken_back", "put_right"):
        return flag != "crisis" or label != "chronic"  # "haven't cut myself since I was young but I want to again"
    if flag == "crisis":
        return False
    if label == "told_of":
        return not (scope.joints(end, mark[0]) or scope.turns(end, mark[0]))
    return not scope.begins_anew(end, mark[0])


def _caught(span: Span, hits: Hits, scope: Scope) -> bool:
    """Tell whether the fall was only a near one."""
    start, end = span
    if any(low <= start < high for low, high in hits.get("near_fall", ())):
        return True
    low, high = scope.sentence(start, end)
    is_slip = any(s < end and start < e for s, e in hits.get("slip", ()))
    return is_slip and any(low <= at < high and not scope.is_denied(at) for at, _ in hits.get("caught", ()))


def _grade(flag: str, spans: list[Span], hits: Hits, scope: Scope) -> str:
    """Return how pressing a sign is.

    Call-now kinds: chest or breathing, nerve or bladder with stroke words, fainted, head hit, cannot get up or
    stand. An
    older fall without injury, and dizziness on standing that is over, are for today. All else is urgent.
    """
    if flag in CALL_NOW:
        return "call_now"
    if flag == "faint_or_dizzy":
        return _faint_grade(hits)
    if flag == "fall_or_injury":
        return _fall_grade(hits, scope)
    return "urgent"


def _faint_grade(hits: Hits) -> str:
    """Return call_now for a faint, today for dizziness on standing that has passed, else urgent."""
    near = hits.get("faint_near", [])
    if any(not _inside(span, near) for span in hits.get("faint_full", ())):
        return "call_now"
    return "today" if "dizzy_standing" in hits and "passed_over" in hits else "urgent"


def _fall_grade(hits: Hits, scope: Scope) -> str:
    """Return call_now with a hit head or when she cannot rise, today for an older fall without injury, else urgent."""
    if _any_true("head_hit", hits, scope) or _any_true("cannot_rise", hits, scope):
        return "call_now"
    if "older_day" in hits and not _any_true("hurt_by_fall", hits, scope):
        return "today"
    return "urgent"


def _any_true(label: str, hits: Hits, scope: Scope) -> bool:
    """Tell whether a circumstance is told and not denied."""
    return any(not scope.is_denied(start) for start, _ in hits.get(label, ()))


def worst_grade(grades: dict[str, str]) -> str | None:
    """Return the most pressing grade of several."""
    return max(grades.values(), key=GRADES.index, default=None)
