"""A trained second opinion on "no pain": whether words that the rules take for it are meant so.

"Sharp pain so no more today" and "not too bad" share the words. Where the judge hardly believes it nothing is recorded
and the client is asked.
"""

from itertools import pairwise

from reminders.core.reading.danger import Span
from reminders.core.reading.features import row_of_words
from reminders.core.reading.intent import Evidence
from reminders.core.reading.opinion import Opinion, is_of_use, question_of

OPINION = Opinion("no_pain")
# Belief below which "no pain" is not recorded. In 12,300 replies not trained on 0.5 asks for one right one more than
# 0.4, and for the one that was read wrong.
LEAST = 0.5
_LABELS = ("pain_none", "pain_answer_none")  # the second only where pain was asked for


def spans_of(evidence: Evidence) -> list[Span]:
    """Return the words of a text that could say there was no pain."""
    labels = _LABELS if evidence.asked in ("pain", "settling") else _LABELS[:1]
    return [span for label in labels for span in evidence.hits.get(label, ())]


def features_of(evidence: Evidence) -> list[str]:
    """Return what there is to know of these words: what stands in their sentences and around them."""
    row, features = row_of_words(evidence), [question_of(evidence.asked)]
    for start, end in spans_of(evidence):
        low, high = evidence.scope.sentence(start, end)
        around = row[low : high + 2]
        features += [f"w {word}" for word in around] + [f"b {one} {two}" for one, two in pairwise(around)]
        features += [f"s {' '.join(row[start + 1 : end + 1])}", f"- {row[start]}", f"+ {row[end + 1]}"]
    features += [f"l {label}" for label in evidence.hits if is_of_use(label)]
    return list(dict.fromkeys(features))


def is_doubtful(evidence: Evidence) -> bool:
    """Tell whether the "no pain" that the rules found is hardly meant so."""
    pain, values = evidence.pain, evidence.scope.text.values
    if pain.value != 0 or not spans_of(evidence):
        return False
    if "correction" in evidence.hits or "correction_plain" in evidence.hits:
        return False  # "I meant no pain, not 9": too few to learn from
    if "severe_pain" in evidence.danger.grades:
        return True  # "pain? no, agony"
    is_figure = any(values[at] is not None for start, end in pain.spans for at in range(start, end))
    return not is_figure and OPINION.belief(features_of(evidence)) < LEAST
