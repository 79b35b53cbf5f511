"""What a reply is for: one intent from the evidence of all rules, the more certain kinds first.

Danger signs never wait for the intent. Rules find statements anywhere in a text; here those that are denied, asked
about, still to come or another person's are left out before they count.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field

from reminders.core.reading.danger import Danger, Hits, Span
from reminders.core.reading.kept import Kept
from reminders.core.reading.lines import SessionTold
from reminders.core.reading.named import Named
from reminders.core.reading.pain import Pain
from reminders.core.reading.quantities import Numbers
from reminders.core.reading.scope import Scope
from reminders.core.reading.signatures import BUT, COMMA, QUESTION, STOP

_ENDS = STOP + QUESTION
_ENDINGS = frozenset({"opt_out", "opt_out_sure"})
_WISHES = ("resume", "opt_in", "pause", "reschedule", "resend", "help")
_REQUESTS = frozenset({"opt_in_key", "help_key", *_WISHES})
# Label → the label whose words it takes back, "" when it takes none back.
_TAKES_BACK: Kept[str, str] = Kept(lambda label: label[: -len("_not")] if label.endswith("_not") else "", 2_000)


def _held_of(hits: Hits) -> Hits:
    """Return the hits less those that the `_not` label of their own overlaps; labels with none left are not there."""
    held = hits
    for label in filter(None, map(_TAKES_BACK.__getitem__, hits)):
        if label in hits:
            if held is hits:
                held = dict(hits)
            blocked = hits[f"{label}_not"]
            held[label] = [
                one for one in hits[label] if not any(low < one[1] and one[0] < high for low, high in blocked)
            ]
            if not held[label]:
                del held[label]
    return held


@dataclass(slots=True)
class Evidence:
    """All that was found in one reply, for the decisions on intent and completion."""

    hits: Hits
    scope: Scope
    asked: str | None
    danger: Danger
    numbers: Numbers
    told: SessionTold
    pain: Pain = field(default_factory=Pain)
    signature: str = ""
    named: Named | None = None  # exercises by name, if any
    held: Hits = field(init=False)  # hits less those taken back
    _done: list[Span] | None = None

    def __post_init__(self) -> None:
        """Leave out what is taken back."""
        self.held = _held_of(self.hits)

    def spans(self, label: str) -> list[Span]:
        """Return the places of a label, less those that its `_not` label overlaps."""
        return self.held.get(label) or []

    def has(self, *labels: str) -> bool:
        """Tell whether any of the labels holds somewhere."""
        held = self.held
        for label in labels:  # noqa: SIM110 -- asked some twenty times a reply; a generator costs twice as much
            if label in held:
                return True
        return False

    def asks(self) -> bool:
        """Tell whether the text puts a question."""
        return QUESTION in self.signature

    def done(self) -> list[Span]:
        """Return the statements of something done: not denied, asked, planned, or another person's."""
        if self._done is None:
            self._done = [span for span in self.spans("done") if self._is_stated(span)]
        return self._done

    def _is_stated(self, span: Span) -> bool:
        """Tell whether a statement of something done holds."""
        scope, lexicon = self.scope, self.scope.lexicon
        start, end = span
        if _denied_here(self, start):
            return False
        before = self.signature[max(0, start - 4) : start]
        cut = max((at for at, char in enumerate(before) if char in _ENDS + COMMA), default=-1)
        near = before[cut + 1 :]
        if not lexicon.either("FUTURE", "QUESTIONER").isdisjoint(near):
            return False
        if scope.is_supposed(start, end):
            return False
        low, high = scope.sentence(start, end)
        if (
            high < len(self.signature)
            and self.signature[high] == QUESTION
            and any(lexicon.is_in("QUESTIONER", char) for char in self.signature[low : low + 4])
        ):
            return False
        return scope.whose(start, end) != "other" or not lexicon.chars("I").isdisjoint(self.signature[low:start])


def _denied_here(evidence: Evidence, start: int) -> bool:
    """Tell whether "not" stands right before a statement of something done."""
    signature, lexicon = evidence.signature, evidence.scope.lexicon
    if lexicon.chars("NOT").isdisjoint(signature[max(0, start - 3) : start]):
        return False
    for at in range(start - 1, max(-1, start - 4), -1):
        char = signature[at]
        if char in _ENDS or char == COMMA or lexicon.is_in("BUT", char) or lexicon.is_in("I", char):
            return False
        if lexicon.is_in("NOT", char):
            return True
    return False


def decide(evidence: Evidence) -> str:
    """Return the intent."""
    for judge in (_opt_out, _stranger, _answer, _requests, _session, _asking, _rest):
        intent = judge(evidence)
        if intent is not None:
            return intent
    return "unclear"


def _opt_out(evidence: Evidence) -> str | None:
    """The wish to hear no more; with a stretch of time it is a pause, told as a mistake of the past it is none."""
    if evidence.hits.keys().isdisjoint(_ENDINGS):
        return None
    crisis = evidence.danger.spans.get("crisis", [])  # "I don't want to be here anymore"
    spans = [
        span
        for span in evidence.spans("opt_out")
        if not evidence.scope.is_supposed(*span) and not any(low < span[1] and span[0] < high for low, high in crisis)
    ]
    spans += evidence.spans("opt_out_sure")  # "if you don't stop texting me" supposes and is a wish
    if not spans:
        return None
    if "opt_in" in evidence.held and "opt_out_past" in evidence.held and not _is_last_wish(evidence, spans):
        return "opt_in"
    if "opt_out_key" in evidence.held:
        return "opt_out"
    if evidence.has("pause_span", "pause_until") and "for_good" not in evidence.held:
        return "pause"
    return "opt_out"


def _is_last_wish(evidence: Evidence, spans: list[Span]) -> bool:
    """Tell whether a wish to hear no more stands in a clause of its own behind all else: "..., stop texting me"."""
    lexicon, chars = evidence.scope.lexicon, evidence.signature
    end = max(high for label in ("opt_in", "opt_out_past") for _, high in evidence.spans(label))
    anew = lexicon.either("AND_THEN", "POLITE", "BUT") | frozenset(_ENDS + COMMA + BUT)
    behind = [start for start, _ in spans if start >= end]
    return any(start == end or not anew.isdisjoint(chars[start - 1 : start + 1]) for start in behind)


def _stranger(evidence: Evidence) -> str | None:
    """Not the person meant."""
    if "wrong_number" in evidence.held and not evidence.danger.grades and not evidence.told.by_exercise:
        return "wrong_number"
    return None


def _answer(evidence: Evidence) -> str | None:
    """A bare answer to what was asked."""
    asked = evidence.asked
    rated = evidence.pain.value is not None or evidence.pain.off_scale
    tells = "skip" in evidence.held or evidence.told.by_exercise or _is_report(evidence)
    if asked in ("pain", "settling") and rated and (not tells or is_none_at_all(evidence)):
        return "pain"
    if asked == "amount":
        if "amount_unknown" in evidence.held:
            return "report"
        if "none_done" in evidence.held:
            return "skip"
        if evidence.numbers.counts or evidence.told.amounts or evidence.told.by_exercise:
            return "report"
        if evidence.has("all", "part") and "skip" not in evidence.held:
            return "report"
        if evidence.numbers.has_minutes:
            return "report"
    return None


def is_none_at_all(evidence: Evidence) -> bool:
    """Tell whether a reply is nothing but "none", "nope, none" or "none, thank God": a rating, no word of a session."""
    chars, lexicon = evidence.signature, evidence.scope.lexicon
    if lexicon.is_in("ANSWER_NO", chars[:1]) and chars[1:2] == COMMA:
        chars = chars[2:]
    if not lexicon.is_in("NONE", chars[:1]):
        return False
    return len(chars) == 1 or lexicon.is_in("THANKS", chars[1:].lstrip(COMMA)[:1])


def _requests(evidence: Evidence) -> str | None:
    """Wishes about the service: strong ones hold beside a report, the others only without one."""
    if _REQUESTS.isdisjoint(evidence.held):
        return None
    if "opt_in_key" in evidence.held:
        return "opt_in"
    if "help_key" in evidence.held:
        return "help"
    telling = bool(evidence.done()) or bool(evidence.told.by_exercise) or bool(evidence.told.amounts)
    telling = telling or "num.invited" in evidence.held
    if telling or evidence.danger.grades:
        return None
    for label in _WISHES:
        if evidence.has(label) and not _outweighed(evidence, label):
            return label
    return None


def _outweighed(evidence: Evidence, label: str) -> bool:
    """Tell whether another reading of the same words is nearer."""
    if label == "opt_in":
        return "pause" in evidence.held
    if label == "resume":
        return "pause_until" in evidence.held or (evidence.has("skip", "later") and "resume_sure" not in evidence.held)
    if label == "pause":
        return "pause_sure" not in evidence.held and evidence.has("skip", "later") and "pause_span" not in evidence.held
    if label == "reschedule":
        return evidence.has("later", "skip") and "reschedule_sure" not in evidence.held
    return False


def _is_report(evidence: Evidence) -> bool:
    """Tell whether something of a session is said to be done."""
    return bool(evidence.done() or evidence.told.by_exercise or "yes_report" in evidence.held)


def _session(evidence: Evidence) -> str | None:
    """Done, in part, not done, or still to come."""
    told = evidence.told
    statements = [one for one in told.by_exercise if one.completed != "none"]
    done = evidence.done()
    skip = [span for span in evidence.spans("skip") if not evidence.scope.is_supposed(*span)]
    ahead = "later" in evidence.held and "tomorrow" not in evidence.held
    if (
        ahead
        and (not evidence.asks() or "later_sure" in evidence.held)
        and not _clearly_done(evidence, done, statements)
    ):
        return "later"
    if statements:
        return "report"
    question = evidence.asks() and "question" in evidence.held
    if skip and _skip_prevails(evidence, skip, done):
        return None if question and "skip_sure" not in evidence.held else "skip"
    if done or (told.amounts and not question) or "yes_report" in evidence.held:
        return "report"
    if told.by_exercise:
        return "report"
    if "part" in evidence.held and not question:
        return "report"
    if evidence.numbers.counts and "all" in evidence.held and not question:
        return "report"
    return None


def _clearly_done(evidence: Evidence, done: list[Span], statements: Sequence[object]) -> bool:
    """Tell whether something is done already, whatever is still to come."""
    return (
        bool(statements)
        or bool(evidence.told.amounts)
        or bool([span for span in done if not any(s <= span[0] < e for s, e in evidence.spans("later"))])
        or "part" in evidence.held
    )


def _skip_prevails(evidence: Evidence, skip: list[Span], done: list[Span]) -> bool:
    """Tell whether "not done" outweighs what is said of things done."""
    if not done:
        return not evidence.told.amounts
    outside = [span for span in done if not any(s <= span[0] < e or s < span[1] <= e for s, e in skip)]
    if not outside:
        return True
    return "skip_sure" in evidence.held and "all" not in evidence.held


def _asking(evidence: Evidence) -> str | None:
    """A question to the clinician."""
    if "question" in evidence.held and not evidence.danger.grades:
        return "question"
    return None


def _rest(evidence: Evidence) -> str | None:
    """Pain, then chat."""
    if evidence.danger.grades or evidence.pain.value is not None or evidence.pain.off_scale:
        return "pain"
    if "pain_said" in evidence.held or (evidence.asked == "pain" and "pain_answer_words" in evidence.held):
        return "pain"
    if "chat" in evidence.held or evidence.scope.text.smiles:
        return "chat"
    return None
