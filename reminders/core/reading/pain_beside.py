"""Which figures beside another are no rating of their own: an hour in a plan, a number in a sentence about the service.

A figure is only left out here while another one stays: what to make of a lone one is decided in `pain.py`, to which
`is_over` tells whether it is told as past.
"""

from reminders.core.reading.danger import Hits, Span
from reminders.core.reading.quantities import Figure
from reminders.core.reading.scope import Scope

_PLANS = ("reschedule", "reschedule_sure", "resend", "later")
_RATES = ("num.now", "num.own", "num.after")
_LONE = ("later", "resend")  # one word of them may stand anywhere: "after", "again"


def without_others(figures: list[Figure], none_said: list[Span], hits: Hits, scope: Scope) -> list[Figure]:
    """Return the figures less those that speak of something else than what the others rate, or than "no pain"."""
    if len(figures) + bool(none_said) < 2:
        return figures
    rated = [one for one in figures if not _is_planned(one, hits, scope)]
    figures = rated if rated or none_said else figures
    anchors = [(one.at, one.at + 1) for one in figures if one.stated] + none_said
    stated = {scope.sentence(*span) for span in anchors}
    if not stated:
        return figures
    return [
        one
        for one in figures
        if one.stated or scope.sentence(one.at, one.at + 1) in stated or not _is_of_service(one, hits, scope)
    ]


def _is_planned(figure: Figure, hits: Hits, scope: Scope) -> bool:
    """Tell whether a figure is the hour or the day of a plan told before it: "send them after dinner, say 7"."""
    low = scope.sentence(figure.at, figure.at + 1)[0]
    rated = scope.lexicon.either("PAINISH", "BODY", "ITIS", "WASWORD", "CALLS")
    return any(
        low <= start <= figure.at and rated.isdisjoint(scope.text.signature[start : figure.at])
        for start, _ in _plans(hits)
    )


def _is_of_service(figure: Figure, hits: Hits, scope: Scope) -> bool:
    """Tell whether the sentence of a figure asks for something or speaks of texts, and says nothing of how it is now:
    "can you call me, it's a 9 now" rates.
    """
    low, high = scope.sentence(figure.at, figure.at + 1)
    signature, lexicon = scope.text.signature, scope.lexicon
    if any(start <= figure.at < end for label in _RATES for start, end in hits.get(label, ())):
        return False
    if not lexicon.either("PAINISH", "BODY", "CALLS").isdisjoint(signature[low:high]):
        return False
    if any(lexicon.is_in("DAYPART", char) for char in signature[figure.at + 2 : min(high, figure.at + 4)]):
        return True  # "try 8 at night", "only 7 in the morning"
    if not lexicon.either("NOWISH", "ITIS", "IS", "WASWORD").isdisjoint(signature[low:high]):
        return False
    asks = [*_plans(hits), *hits.get("question", ())]
    speaks_of_texts = not lexicon.chars("TEXTNOUN").isdisjoint(signature[low:high])
    return any(low <= start < high for start, _ in asks) or speaks_of_texts


def _plans(hits: Hits) -> list[Span]:
    """Return where other hours, another day or another text are spoken of."""
    return [
        (start, end) for label in _PLANS for start, end in hits.get(label, ()) if label not in _LONE or end > start + 1
    ]


def is_over(figure: Figure, hits: Hits, scope: Scope) -> bool:
    """Tell whether a figure is told as past and now follows it: "a year ago it was a 9, now it barely bothers me"."""
    until = max((e for s, e in hits.get("num.past", ()) if s <= figure.at < e), default=None)
    now = scope.lexicon.chars("NOW") - scope.lexicon.chars("YESTERDAYISH")
    return until is not None and not now.isdisjoint(scope.text.signature[until:])
