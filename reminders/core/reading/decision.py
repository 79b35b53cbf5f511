"""Intent and completion of a reply: the rules' word where they are certain, else the trained judge's.

What must never be lost (opt-outs, the carrier words) does not depend on weights.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace

from reminders.core.reading import ends
from reminders.core.reading.completion import completed_of, is_bare_amount, is_percentage, is_uneven_pair
from reminders.core.reading.intent import Evidence, decide, is_none_at_all
from reminders.core.reading.judge import Verdicts, verdicts
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.lines import SessionTold
from reminders.core.reading.model import ExerciseDone, SessionExercise
from reminders.core.reading.normal import TICKS
from reminders.core.reading.suspicion import other_signs, suspected_sign, take_back

_BARE = 2  # words
_PUTS_NOTHING_RIGHT = frozenset({"wrong_number", "opt_out", "resend", "help", "reschedule"})
_TOLD = frozenset({"report", "pain", "skip", "later", "unclear"})  # what may put an earlier reply right
_GUESS = 0.42  # below this belief a rule knows better, unless it is vague itself
_GUESS_OF = {"wrong_number": 0.6}  # the same of a rule that is seldom wrong
_VAGUE = ("unclear", "chat")
_SHORT = 6  # words
_LEADS = 3  # words
_OF_LINES_ALONE = 7  # words; a longer reply that skips names an exercise, or a chair, in passing
_NO_WORD_FOR_IT = 0.6  # belief in a correction that no rule sees
_NO_RATING = frozenset({"later", "question", "chat", "unclear", "reschedule", "resend"})
_PLAIN_SKIP = 3  # words; a shorter one may be the answer to what was asked
SURE = 0.95  # below this a reading would be a guess
# What may be said at any time; said plainly it means the same whatever was asked before.
WISHES = frozenset({"pause", "resume", "resend", "reschedule", "later", "help", "question", "skip"})
_PLAIN_WISHES = {f"{wish}_plain": wish for wish in WISHES}  # label of a rule's plainest form → the wish


@dataclass(slots=True)
class Decision:
    """Intent and completion, and how sure they are (0 to 1)."""

    intent: str
    completed: str | None
    intent_sureness: float = 1.0
    completed_sureness: float = 1.0
    correction: bool = False
    is_wish: bool = False  # said plainly, so that it is no answer to what was asked
    dangers: tuple[str, ...] = ()  # signs that no rule found and the judge suspects


def decision_of(evidence: Evidence, session: Sequence[SessionExercise], lexicon: Lexicon) -> Decision:
    """Return what the reply is for and how much was done."""
    rule = "pain" if evidence.asked != "amount" and _is_free_alone(evidence) else decide(evidence)
    if rule == "wrong_number" and "num.invited" in evidence.held:
        rule = "report"  # "Y9, and no I'm not joking"
    if rule == "skip" and _puts_rating_right(evidence):
        rule = "pain"
    amount = completed_of(evidence, "report", session)
    judged = verdicts(evidence, rule, amount, lexicon)
    if take_back(evidence, judged, lexicon):
        return decision_of(evidence, session, lexicon)  # anew, without the sign
    wish = None if rule in ("opt_out", "opt_in") else _plain_wish(evidence, amount, lexicon, judged)
    suspected = suspected_sign(evidence, judged, lexicon)
    dangers = [] if suspected is None else [suspected]
    dangers += other_signs(evidence, judged, {*evidence.danger.grades, *dangers})
    intent, sureness = _intent_of(evidence, rule, wish, judged, suspected)
    completed, amount_sureness = _completion_of(evidence, intent, amount, session, judged)
    return Decision(
        intent,
        completed,
        sureness,
        amount_sureness,
        _corrects(evidence, judged, intent),
        wish is not None and intent == wish,
        tuple(dangers),
    )


def _intent_of(
    evidence: Evidence, rule: str, wish: str | None, judged: Verdicts, suspected: str | None
) -> tuple[str, float]:
    """Return what the reply is for, and how sure that is."""
    is_hour = rule == "opt_out" and ends.is_other_hour(evidence, judged)
    if not is_hour and (wish is not None or _is_certain(evidence, rule, judged)):
        intent, sureness = wish or rule, 1.0
    else:
        intent, sureness = _judged_intent(evidence, rule, judged)
    if wish is None and not is_hour and ends.is_wanted(evidence, rule, judged):
        intent = "opt_out"
    if intent == "opt_out" != rule and "crisis" in (*evidence.danger.grades, suspected):
        intent = "pain"  # "I don't want any more of this life" ends no reminders
    if (suspected is not None and intent in _VAGUE) or (intent in _NO_RATING and _leads_with_rating(evidence)):
        intent = "pain"
    return _by_what_is_told(evidence, intent), sureness


def _completion_of(
    evidence: Evidence, intent: str, amount: str | None, session: Sequence[SessionExercise], judged: Verdicts
) -> tuple[str | None, float]:
    """Return how much was done, and how sure that is; `amount` is what the rules make of it."""
    if intent == "skip":
        return "none", 1.0
    if intent == "opt_out":
        return ends.told_beside(evidence, session), 1.0
    if intent != "report":
        return None, 1.0
    if evidence.told.by_exercise or _is_plain_part(evidence) or _is_short(evidence, session) or _is_plain_yes(evidence):
        return amount, 1.0
    if amount == "all" and "all_sure" in evidence.held:
        return amount, 1.0
    verdict = judged["completed"]
    completed = None if verdict.name == "None" else verdict.name
    if completed == "all" and amount is None and evidence.danger.grades and not evidence.done():
        completed = None  # nothing was told of the session beside her danger sign
    return completed, verdict.sureness


def _judged_intent(evidence: Evidence, rule: str, judged: Verdicts) -> tuple[str, float]:
    """Return the likeliest intent, and how sure the judge is of it."""
    likeliest = judged["intent"]
    guess = _GUESS_OF.get(rule, _GUESS)
    intent = rule if likeliest.sureness < guess and rule not in _VAGUE else likeliest.name
    is_own = intent == "opt_out" != rule  # no rule says so
    if (is_own and not ends.is_possible(judged, evidence.asked)) or (
        intent == "opt_out" and ends.is_doubtful(evidence)
    ):
        intent = likeliest.runner_up
    return intent, likeliest.sureness


def _by_what_is_told(evidence: Evidence, intent: str) -> str:
    """Return the intent once the lines and numbers have their say: "chair fine, balance no way" is no skip."""
    lines = evidence.told.by_exercise
    if intent == "skip" and any(line.completed != "none" for line in lines):
        return "report"
    if (
        intent == "pain"
        and evidence.asked == "pain"
        and {"done_plain", "all"} <= evidence.held.keys()
        and evidence.done()
    ):
        return "report"  # "1, and I did everything"
    if intent == "unclear" and (len(lines) > 1 or (lines and "ex.but" in evidence.held)):
        return "report"  # "1 and 2 yes, 3 and 4 no", "all less the 4"
    if intent == "wrong_number" and evidence.has("own_number") and not evidence.has("wrong_number"):
        return "unclear"  # "this is my new number, use it"
    return "unclear" if intent == "report" and is_uneven_pair(evidence) else intent


def _leads_with_rating(evidence: Evidence) -> bool:
    """Tell whether a reply to the pain question begins with the rating, whatever else it goes on to say."""
    pain = evidence.pain
    if evidence.asked not in ("pain", "settling") or pain.value is None or pain.none_said:
        return False
    first = min(start for start, _ in pain.spans)
    lexicon, before = evidence.scope.lexicon, evidence.scope.text.signature[:first]
    leading = lexicon.chars("FILL") | lexicon.chars("SAYS_RATE") | lexicon.chars("ARTICLE")
    return pain.is_stated or (first < _LEADS and leading.issuperset(before))


def _says_alone(evidence: Evidence, label: str, more: int = 1) -> bool:
    """Tell whether a reply says what a label stands for and hardly `more` words: "no pain", "no los hice"."""
    size = len(evidence.signature)
    return any(end - start >= size - more for start, end in evidence.spans(label))


def _corrects(evidence: Evidence, judged: Verdicts, intent: str) -> bool:
    """Tell whether a reply puts an earlier one right: a wish or a stranger's word hardly does."""
    if intent in _PUTS_NOTHING_RIGHT:
        return False
    if "correction_plain" in evidence.held:
        return True
    if intent not in _TOLD or judged.likeliest("correction") != "True" or _is_bare(evidence):
        return False
    # In words for one the judge is believed; without any it must be nearly sure.
    return "correction" in evidence.held or judged["correction"].sureness >= _NO_WORD_FOR_IT


def _is_free_alone(evidence: Evidence) -> bool:
    """Tell whether a reply says "no pain" and nothing of a session."""
    return "pain_none" in evidence.held and _says_alone(evidence, "pain_none") and not evidence.done()


def _is_plain_yes(evidence: Evidence) -> bool:
    """Tell whether a reply to nothing is the invited yes, a tick or "half" alone; a thumb may be a greeting."""
    text = evidence.scope.text
    if evidence.asked is not None or evidence.asks() or ("emojiyes" in text.words and TICKS.isdisjoint(text.original)):
        return False
    return _says_alone(evidence, "yes_report", 0) or _says_alone(evidence, "part_plain", 0)


def _is_plain_rating(evidence: Evidence, judged: Verdicts) -> bool:
    """Tell whether a short reply rates and tells of no session, as the judge sees it too where nothing was asked."""
    is_short = len(evidence.scope.text.words) <= _SHORT and not evidence.danger.grades
    is_short = is_short and evidence.scope.lexicon.chars("YES").isdisjoint(evidence.signature)
    return (
        is_short
        and (evidence.asked is not None or judged.likeliest("intent") not in ("report", "skip"))
        and evidence.pain.is_stated
        and not evidence.has("skip", "later", "done", "part", "all", "yes_report", "question")
    )


def _puts_rating_right(evidence: Evidence) -> bool:
    """Tell whether a short reply puts a rating right, be it with a no before it: "no, pain 5 not 2"."""
    is_short = len(evidence.scope.text.words) <= _SHORT and evidence.asked is None
    return is_short and evidence.pain.is_stated and {"correction", "skip_sure"} <= evidence.held.keys()


def _is_bare(evidence: Evidence) -> bool:
    """Tell whether a reply is too short to correct anything and has no word for it."""
    return len(evidence.scope.text.words) <= _BARE and "correction" not in evidence.held


def _is_plain_part(evidence: Evidence) -> bool:
    """Tell whether nothing but a plain "half", "some of them" tells how much was done."""
    return "part_plain" in evidence.held and not (
        "all" in evidence.held or evidence.told.amounts or evidence.numbers.counts
    )


def _is_short(evidence: Evidence, session: Sequence[SessionExercise]) -> bool:
    """Tell whether a count tells it all: "3 of the 4", fewer sets than any exercise has."""
    fewest = min((exercise.sets or 1 for exercise in session), default=0)
    counts = evidence.numbers.counts
    if is_percentage(evidence):
        return True
    some = bool(counts) and max(done for _, done, _ in counts) < counts[0][2] and "all" not in evidence.held
    return some or (evidence.told.sets is not None and evidence.told.sets < fewest)


def _plain_wish(evidence: Evidence, amount: str | None, lexicon: Lexicon, judged: Verdicts) -> str | None:
    """Return a wish that would be sure had nothing been asked, or a rule's plainest form; a bare no is an answer."""
    if not _PLAIN_WISHES.keys().isdisjoint(evidence.held):
        return next(_PLAIN_WISHES[label] for label in evidence.held if label in _PLAIN_WISHES)
    if evidence.asked is None:
        return None
    unasked = replace(evidence, asked=None)
    rule = decide(unasked)
    verdict = verdicts(unasked, rule, amount, lexicon)["intent"]
    if verdict.name not in WISHES or verdict.sureness < SURE:
        return None
    if verdict.name != "skip":
        return verdict.name
    no = lexicon.chars("ANSWER_NO") | lexicon.chars("NONE")
    is_answer = (
        "skip_sure" not in evidence.held
        or "pain_none" in evidence.hits
        or is_none_at_all(evidence)
        or (evidence.asked == "pain" and evidence.pain.none_said and judged.likeliest("intent") == "pain")
        or (len(evidence.signature) < _PLAIN_SKIP and not no.isdisjoint(evidence.signature))
    )
    return None if rule != "skip" or is_answer else "skip"


def _is_certain(evidence: Evidence, rule: str, judged: Verdicts) -> bool:
    """Tell whether the rules decide alone."""
    if rule == "opt_out":
        return True
    if rule in ("opt_in", "help"):
        return evidence.has(f"{rule}_key")
    if rule == "pain" and (_is_plain_rating(evidence, judged) or _puts_rating_right(evidence)):
        return True
    counted = evidence.asked == "amount" or bool(evidence.numbers.counts)
    if rule == "report" and counted and len(evidence.scope.text.words) <= _SHORT:
        return True
    if rule == "report" and (_is_plain_yes(evidence) or is_bare_amount(evidence)):
        return True
    is_skip = rule == "skip" and evidence.asked is None
    is_skip = is_skip and (_says_alone(evidence, "skip_sure", 0) or _says_alone(evidence, "tomorrow", 0))
    if is_skip or _is_free_alone(evidence):
        return True
    if rule == "pain" and evidence.asked in ("pain", "settling") and len(evidence.scope.text.words) <= _BARE:
        return True  # the bare rating that was asked for
    return rule == "report" and "num.invited" in evidence.held  # the short answer that every reminder invites


def lines_told(told: SessionTold, decision: Decision, words: int) -> tuple[ExerciseDone, ...]:
    """Return what is told exercise by exercise; what is only spoken of is none: "ese tándem me mata, hice todo", "me
    quedé dormida en el sillón, no los hice". `words` is how many the reply has.
    """
    lines = told.by_exercise
    if decision.intent == "skip" and words > _OF_LINES_ALONE:
        return ()
    is_remark = len(lines) == 1 and (lines[0].completed, lines[0].sets, lines[0].reps) == ("all", None, None)
    adds_nothing = decision.completed == "all" and not decision.correction and told.rest != "done"
    return () if is_remark and adds_nothing else lines
