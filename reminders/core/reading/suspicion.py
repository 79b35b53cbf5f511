"""The trained judge's word on danger: signs that only it sees, and rules' signs of which it is sure that they are none.

Both look at the whole text and at its sentences. In 11,106 replies not trained on none lost a true sign by being taken
back at the bounds here, and 27 false alarms fewer were raised. Lower bounds took 7 more back, and "knee gave out at 5".
"""

from collections.abc import Iterator
from itertools import pairwise

from reminders.core.reading.danger import CAUGHT, DENIED, OTHER, PAST, SCOPE, SUPPOSED, TURN, Danger
from reminders.core.reading.features import row_of_words
from reminders.core.reading.intent import Evidence
from reminders.core.reading.judge import Verdict, Verdicts, is_known, verdicts_on_part
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.model import RED_FLAGS
from reminders.core.reading.signatures import COMMA, NO_WORD, QUESTION

CALM_FROM = 0.5
CALM_ALONE = 0.1  # for one sentence of several
CALM_BESIDE = 0.06  # for what stands before or behind a comma
_FEWEST_ALONE = 3  # words
_MOST_COMMAS = 6
_SURELY_NONE = 0.997  # belief in no sign at all, of the text, that takes a rule's sign back
_NONE_ALONE = 0.95  # the same of the sentence alone, which has fewer words to be sure by
_NONE_IN_CLAUSE = 0.8  # and of its clause
_OF_CHEST = "chest_or_breathing"
_NEVER_TAKEN_BACK = frozenset({"crisis"})
_SURELY_CALM = 800  # hundredths by which a text's calm leads; then no part of it is asked for
# Belief in no sign at all below which a sign that the rules explained away is raised all the same: a turn of speech
# often shares its words with the real thing.
_CALM_ENOUGH = {TURN: 0.9, SCOPE: 0.9, PAST: 0.5, OTHER: 0.5, SUPPOSED: 0.35, CAUGHT: 0.5, DENIED: 0.2}
_AGAINST_OWNER = 0.9  # belief in one that they found another person's
_AGAINST_RULES = 0.8  # belief in a sign that the rules found denied or an idiom
_ELSEWHERE_CALM = 0.9  # belief in no sign of what is said to hurt instead of the chest
NO_DANGER = "none"
_LIKELY = 0.35  # belief in a sign beside another


def suspected_sign(evidence: Evidence, judged: Verdicts, lexicon: Lexicon) -> str | None:
    """Return the danger sign that the judge sees where the rules see none; a needless call costs less than a lost
    sign. Words that the rules know and found denied, another's or an idiom need a surer judge.
    """
    text = evidence.scope.text
    if evidence.danger.grades or text.values.count(None) == sum(map(text.chars.count, NO_WORD)):
        return None  # numbers alone, "10, 10, 8", tell of no sign
    if not evidence.danger.explained and judged.leads("danger", NO_DANGER):
        return None if judged.leads("danger", NO_DANGER, _SURELY_CALM) else _suspected_alone(evidence, lexicon)
    verdict = judged["danger"]
    if verdict.name == "severe_pain" and evidence.pain.off_scale:
        return None
    if evidence.danger.explained:
        doubted = _doubted(evidence.danger, verdict, judged)
        if doubted == _OF_CHEST and _is_chest_denied(evidence, lexicon):
            doubted = None
        return doubted or _suspected_alone(evidence, lexicon)
    if judged.share("danger", NO_DANGER) >= CALM_FROM:
        return _suspected_alone(evidence, lexicon)
    return verdict.name if verdict.name != NO_DANGER else verdict.runner_up


def other_signs(evidence: Evidence, judged: Verdicts, found: set[str]) -> list[str]:
    """Return the signs that the judge sees beside one that was found: "blacked out and hit the dresser"."""
    if not found:
        return []
    likely = (flag for flag in RED_FLAGS if flag not in found and judged.belief("signs", flag) >= _LIKELY)
    is_rated = evidence.pain.value is not None or evidence.pain.off_scale
    explained = evidence.danger.explained
    return [flag for flag in likely if flag not in explained and not (flag == "severe_pain" and is_rated)]


def take_back(evidence: Evidence, judged: Verdicts, lexicon: Lexicon) -> bool:
    """Take the rules' signs back of which the judge is sure that they are none: "passed out cupcakes at the school".

    Only where it knows all words of the sign: what it has never met it cannot be sure of. Tells whether any was.
    """
    danger = evidence.danger
    if not danger.grades or "happening" in evidence.hits or judged.share("danger", NO_DANGER) < _SURELY_NONE:
        return False
    row, taken = row_of_words(evidence), []
    for flag in danger.grades:
        spans = danger.spans.get(flag, ())
        if flag in _NEVER_TAKEN_BACK or not spans:
            continue
        if all(_is_surely_none(span, row, evidence, lexicon) for span in spans):
            taken.append(flag)
    for flag in taken:
        del danger.grades[flag], danger.spans[flag]
    return bool(taken)


def _is_surely_none(span: tuple[int, int], row: list[str], evidence: Evidence, lexicon: Lexicon) -> bool:
    """Tell whether the judge is sure of a sign's sentence and of its clause alone, and knows the words of the sign."""
    if not all(lexicon.is_small(word) or is_known(word) for word in evidence.scope.text.words[slice(*span)]):
        return False
    scope = evidence.scope
    bounds = ((scope.sentence, _NONE_ALONE), (scope.segment, _NONE_IN_CLAUSE), (scope.clause, _NONE_IN_CLAUSE))
    return all(
        verdicts_on_part(*of(*span), row, evidence, lexicon).share("danger", NO_DANGER) >= least for of, least in bounds
    )


def _suspected_alone(evidence: Evidence, lexicon: Lexicon) -> str | None:
    """Return the sign that the judge sees in one stretch of a text, whatever the others are about."""
    told = [span for label, spans in evidence.hits.items() if label.startswith("danger.") for span in spans]
    turns = [span for label, spans in evidence.hits.items() if label.startswith("idiom.") for span in spans]
    row = row_of_words(evidence)
    calming, whole = lexicon.chars("SOUND"), len(evidence.scope.text.signature.strip(NO_WORD))
    for low, high, calm in _stretches(evidence):
        if high - low < _FEWEST_ALONE or high - low >= whole or any(low <= start < high for start, _ in told):
            continue  # what the rules found there is explained with what stands around it
        if any(low <= start < high < end for start, end in turns):
            continue  # "don't see the point of it, can I skip the heels" goes on beyond the comma
        if not calming.isdisjoint(evidence.scope.text.chars[low:high]):
            continue  # "chest is fine": the whole text was judged with it
        verdict = verdicts_on_part(low, high, row, evidence, lexicon)
        if verdict.share("danger", NO_DANGER) < calm:
            name = verdict.likeliest("danger")
            return name if name != NO_DANGER else verdict["danger"].runner_up
    return None


def _stretches(evidence: Evidence) -> Iterator[tuple[int, int, float]]:
    """Yield the bounds of sentences, and of what stands before and behind a comma, with the calm that is too little."""
    ends, signature = evidence.scope.ends, evidence.scope.text.signature
    for low, high in pairwise((-1, *ends, len(signature))):
        if ends:
            yield low + 1, high, CALM_ALONE
        commas = [at for at in range(low + 1, high) if signature[at] == COMMA]
        if len(commas) > _MOST_COMMAS:  # a list: each word of it looked at twice a comma would take too long
            for before, behind in pairwise((low, *commas, high)):
                yield before + 1, behind, CALM_BESIDE
            continue
        for at in commas:
            yield low + 1, at, CALM_BESIDE
            yield at + 1, high, CALM_BESIDE


def _is_chest_denied(evidence: Evidence, lexicon: Lexicon) -> bool:
    """Tell whether a text says that the chest does not hurt, and no more of it: "no chest pain", "no chest pain, it's
    my ankle"; not "no chest pain, more like pressure".
    """
    told = evidence.hits.get(f"danger.{_OF_CHEST}", ())
    return bool(told) and all(_is_denied_alone(*span, evidence, lexicon) for span in told)


def _is_denied_alone(start: int, end: int, evidence: Evidence, lexicon: Lexicon) -> bool:
    """Tell whether words of pain are denied, and what follows them in their sentence is a joint and no sign."""
    scope, text = evidence.scope, evidence.scope.text
    if lexicon.chars("PAINISH").isdisjoint(text.chars[start:end]) or not scope.is_right_behind_no(start):
        return False
    _, high = scope.sentence(start, end)
    if end == high:
        return text.signature[end : end + 1] != QUESTION
    if text.signature[end] != COMMA or lexicon.chars("JOINT").isdisjoint(text.chars[end:high]):
        return False
    verdict = verdicts_on_part(end + 1, high, row_of_words(evidence), evidence, lexicon)
    return verdict.share("danger", NO_DANGER) >= _ELSEWHERE_CALM


def _doubted(danger: Danger, verdict: Verdict, judged: Verdicts) -> str | None:
    """Return a sign that the rules found and explained away, where the judge is not as calm as they are."""
    surely = _AGAINST_OWNER if danger.of_other else _AGAINST_RULES
    if verdict.name != NO_DANGER and verdict.sureness >= surely:
        return verdict.name
    calm = judged.share("danger", NO_DANGER)
    doubted = [flag for flag, why in danger.explained.items() if calm < _CALM_ENOUGH[why]]
    if all(danger.explained[flag] == DENIED for flag in doubted) and verdict.name not in (NO_DANGER, *doubted):
        return verdict.name if doubted else None  # "no chest pain but my back is a 9"
    return verdict.name if verdict.name in doubted else next(iter(doubted), None)
