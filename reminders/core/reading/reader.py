"""Reads one reply: the steps in their order, from text to reading, and which words led to which field.

Each step lives in its own module; here they meet. Nothing of one language stands here.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date
from operator import attrgetter

from reminders.core.reading import answers, completion, dates, no_pain, ratings, statuses
from reminders.core.reading.danger import CALL_NOW, Danger, Hits, Span, find_danger
from reminders.core.reading.decision import Decision, decision_of, lines_told
from reminders.core.reading.exercises import Teller
from reminders.core.reading.grammar import Grammar, grammar_for, language_of
from reminders.core.reading.intent import Evidence
from reminders.core.reading.judge import words_behind
from reminders.core.reading.lexicon import Lexicon
from reminders.core.reading.lines import SessionTold
from reminders.core.reading.mentions import letter_mentions, mark_mentions, settle_mentions
from reminders.core.reading.model import SEVERE_FROM, Reading, SessionExercise
from reminders.core.reading.named import Named
from reminders.core.reading.pain import Pain, body_part, find_pain
from reminders.core.reading.places import place_mentions
from reminders.core.reading.quantities import Figure
from reminders.core.reading.scope import Scope
from reminders.core.reading.session import Mention, SessionNames, names_of
from reminders.core.reading.sieve import signs_of
from reminders.core.reading.signatures import NO_WORD, QUESTION, STOP
from reminders.core.reading.tokens import Text, cut

_START = attrgetter("start")
_ENDS = STOP + QUESTION
_OF_A_SESSION = ("report", "skip", "pain")
_NOT_YET = Pain()  # what evidence holds until the pain is found


@dataclass(slots=True)
class Read:
    """A reading with the evidence it came from."""

    reading: Reading
    evidence: Evidence

    def why(self) -> dict[str, str]:
        """Return field → the words that led to it."""
        said = self.evidence.scope.text.said
        spans = _spans(self.evidence, self.reading)
        return {
            name: "; ".join(dict.fromkeys(said(*span) for span in sorted(places)))
            for name, places in spans.items()
            if places
        }


def read(
    text: str,
    vocabulary_language: str,
    session: Sequence[SessionExercise],
    asked: str | None,
    holder: str = "self",
    today: date | None = None,
) -> Read:
    """Return the reading of a text with the words behind it."""
    evidence, lexicon, exercises = evidence_of(text, vocabulary_language, session, asked, holder)
    return _reading(evidence, decision_of(evidence, exercises, lexicon), today)


def evidence_of(
    text: str, language: str, session: Sequence[SessionExercise], asked: str | None, holder: str = "self"
) -> tuple[Evidence, Lexicon, tuple[SessionExercise, ...]]:
    """Return all that the rules find in a text, in the language it is written in."""
    grammar, exercises = grammar_for(language), tuple(session)
    names = names_of(exercises, grammar.lexicon)
    tokens = cut(text, grammar.lexicon, names.has)
    spoken = language_of(tokens.raw, language)
    if spoken != language:
        grammar = grammar_for(spoken)
        names = names_of(exercises, grammar.lexicon)
        tokens = cut(text, grammar.lexicon, names.has)
    mentions = _mentions(tokens, names, len(exercises), grammar.lexicon) if exercises else []
    return _evidence(tokens, mentions, grammar, exercises, asked, holder), grammar.lexicon, exercises


def _evidence(
    text: Text,
    mentions: list[Mention],
    grammar: Grammar,
    session: tuple[SessionExercise, ...],
    asked: str | None,
    holder: str,
) -> Evidence:
    """Return all that the rules find."""
    lexicon = grammar.lexicon
    marked = mark_mentions(text, mentions, lexicon)
    signs = signs_of(text.signature, text.present, NO_WORD)
    marked_signs = signs_of(marked, marked, NO_WORD) if mentions else signs
    hits = {**grammar.marked.find(marked, marked_signs), **grammar.plain.find(text.signature, signs)}
    numbers = grammar.numbers.read(text, marked, marked_signs, len(session), asked in ("pain", "settling"))
    if numbers.loose or numbers.pains or numbers.amounts:
        figures = _pains_back(numbers.signature, numbers.pains, lexicon)
        hits.update(grammar.number_rules.find(figures, signs_of(figures, figures, NO_WORD)))
    scope = _scope_of(text, lexicon, hits, holder)
    danger = find_danger(hits, scope)
    if mentions and danger.spans:
        told_of = [span for spans in danger.spans.values() for span in spans]
        mentions = [one for one in mentions if not any(one.start < high and low < one.end for low, high in told_of)]
    told = SessionTold()
    if mentions or numbers.amounts or numbers.seconds:
        mentions = sorted(mentions, key=_START)
        told = Teller(text, mentions, numbers, hits, session, lexicon).tell()
    named = Named(told, mentions, text, hits, session, lexicon) if mentions else None
    if named is not None:
        statuses.put_right(told, named, asked, session)
    evidence = Evidence(hits, scope, asked, danger, numbers, told, _NOT_YET, marked, named)
    completion.add_groups(evidence, session)
    is_report = bool(
        evidence.done() or evidence.told.by_exercise or "yes_report" in evidence.held or evidence.told.amounts
    )
    evidence.pain = find_pain(numbers, hits, scope, asked, is_report)
    return evidence


def _scope_of(text: Text, lexicon: Lexicon, hits: Hits, holder: str) -> Scope:
    """Return what is needed to tell of whom, and of when, the words of a text are."""
    tells_of_self = not lexicon.chars("SUBJECT_I").isdisjoint(text.present)
    tells = "skip" in hits or "done" in hits  # of "him" or "her" a session may be told as well
    return Scope(
        text=text,
        lexicon=lexicon,
        ends=_ends_of(text),
        helper=holder != "self" or "helper" in hits,
        own_story=tells_of_self or (tells and lexicon.chars("THIRD_DID").isdisjoint(text.present)),
        tells_of_self=tells_of_self,
    )


def _mentions(text: Text, names: SessionNames, count: int, lexicon: Lexicon) -> list[Mention]:
    """Return the exercises of a session that a text names, by name, by letter, or by place."""
    mentions = settle_mentions(names.find(text), text, lexicon)
    letters = letter_mentions(text, names.letters, lexicon)
    if letters and (not mentions or len({one.exercise for one in letters}) > 1):
        named = {at for one in letters for at in range(one.start, one.end)}
        mentions = letters + [one for one in mentions if one.start not in named]
    places = place_mentions(text, count, lexicon)
    if places:
        taken = {at for mention in mentions for at in range(mention.start, mention.end)}
        mentions += [one for one in places if taken.isdisjoint(range(one.start, one.end))]
    return mentions


def _pains_back(signature: str, pains: Sequence[Figure], lexicon: Lexicon) -> str:
    """Return the signature with pain figures as numbers again, so that rules about figures see them."""
    if not pains:
        return signature
    chars = list(signature)
    for figure in pains:
        chars[figure.at] = lexicon.shape_chars["small"]
    return "".join(chars)


def _ends_of(text: Text) -> tuple[int, ...]:
    """Return the places of full stops and question marks."""
    if STOP not in text.present and QUESTION not in text.present:
        return ()
    return tuple([at for at, char in enumerate(text.chars) if char in _ENDS])


def _reading(evidence: Evidence, decision: Decision, today: date | None) -> Read:
    """Put the reading together."""
    told, where = evidence.told, _where(evidence, evidence.pain.value)
    choice = answers.choice_of(evidence, decision, where, today)
    if decision.intent != "opt_out" and not decision.is_wish and answers.is_mere_answer(evidence, choice):
        decision = replace(decision, intent="unclear", completed=None, correction=False, dangers=())
    intent = decision.intent
    pain = _pain(evidence, decision)
    tells = _tells_session(decision)
    amounts = intent in ("report", "opt_out") and tells and (not told.by_exercise or told.sets is not None)
    reading = Reading(
        intent=intent,
        completed=decision.completed,
        sets=told.sets if amounts else None,
        reps=told.reps if amounts else None,
        by_exercise=lines_told(told, decision, len(evidence.scope.text.words)) if tells else (),
        pain=pain,
        red_flags=tuple(evidence.danger.grades),
        danger=dict(evidence.danger.grades),
        concerns=tuple(evidence.danger.concerns),
        correction=decision.correction,
        when=_when(evidence, intent, today),
        choice=choice,
        before=evidence.pain.before,
        after=evidence.pain.after,
        where=where,
        about=_about(evidence.scope, evidence.danger),
        ask=answers.ask_of(evidence, decision, pain, choice),
    )
    return Read(reading, evidence)


def _tells_session(decision: Decision) -> bool:
    """Tell whether a reply speaks of a session, be it beside a wish to hear no more."""
    return decision.intent in _OF_A_SESSION or (decision.intent == "opt_out" and decision.completed is not None)


def _pain(evidence: Evidence, decision: Decision) -> int | None:
    """Return the pain to record, and raise the danger sign that a rating of 8 or the judge's suspicion is.

    A stated rating counts whatever else the reply asks; a number that only stands like one counts beside a session.
    """
    danger, intent = evidence.danger, decision.intent
    if intent == "report" and evidence.pain.value is None and evidence.numbers.loose:
        evidence.pain = find_pain(evidence.numbers, evidence.hits, evidence.scope, evidence.asked, True)
    pain = evidence.pain
    is_guess = decision.is_wish or evidence.asked == "settling" or not (pain.is_stated or pain.none_said)
    if intent == "skip" and not pain.value and is_guess:
        evidence.pain = pain = Pain()  # "not today" says nothing of the pain that was asked for
    tells_session = _tells_session(decision)
    is_severe = pain.value is not None and pain.value >= SEVERE_FROM
    counts = (
        tells_session
        or (intent in ("later", "opt_out") and pain.is_stated)
        or (bool(danger.grades) and (pain.is_stated or is_severe))
    )
    if is_severe and (counts or pain.is_stated) and not ratings.is_surely_none(evidence):
        danger.grades.setdefault("severe_pain", "urgent")
        danger.spans.setdefault("severe_pain", pain.spans)
        counts = True
    value = pain.value if counts else None
    if intent == "question" and pain.none_said and not _in_question(evidence, pain.spans):
        value = pain.value
    if intent == "question" and pain.is_stated and _is_before_question(evidence, pain.spans):
        value = pain.value
    if value is not None and (no_pain.is_doubtful(evidence) or ratings.is_doubtful(evidence)):
        value = pain.before = pain.after = None  # it is asked for
    if "severe_pain" not in danger.grades and (places := ratings.severe(evidence)):
        danger.grades["severe_pain"], danger.spans["severe_pain"] = "urgent", places
    for sign in decision.dangers:
        if sign != "severe_pain" or pain.value is None:
            danger.grades[sign] = "call_now" if sign in CALL_NOW else "urgent"
    return value


def _when(evidence: Evidence, intent: str, today: date | None) -> str | None:
    """Return the day a report or a skip speaks of; for a pause its end."""
    if intent == "pause":
        until = dates.until_told(evidence.scope.text, evidence.scope.lexicon, today)
        return until.isoformat() if until is not None else None
    return dates.day_told(evidence.scope, evidence.hits, today) if intent in ("report", "skip", "pain") else None


def _where(evidence: Evidence, value: int | None) -> str | None:
    """Return the body part, where pain or a danger sign is told or the place was asked for."""
    if value or evidence.danger.grades or evidence.asked == "where" or "pain_said" in evidence.held:
        return body_part(evidence.scope, evidence.pain.spans, evidence.told.spans)
    return None


def _in_question(evidence: Evidence, spans: list[Span]) -> bool:
    """Tell whether words stand in the sentence that asks."""
    signature = evidence.signature
    ends = [evidence.scope.sentence(*span)[1] for span in spans]
    return any(signature[end : end + 1] == QUESTION for end in ends) or any(
        QUESTION in signature[start:end] for start, end in spans
    )


def _is_before_question(evidence: Evidence, spans: list[Span]) -> bool:
    """Tell whether pain is told before what is asked: "pain's a 5 today, can I take something for it?"."""
    asked = [start for start, _ in evidence.spans("question") if evidence.signature[start] != QUESTION]
    return "pain_said" in evidence.held and bool(asked) and max(end for _, end in spans) <= min(asked)


def _about(scope: Scope, danger: Danger) -> str:
    """Return of whom the reply speaks."""
    if danger.of_client or (scope.helper and not danger.of_other):
        return "client" if scope.helper or danger.of_client else "self"
    return "other" if danger.of_other and not danger.grades else "self"


def _spans(evidence: Evidence, reading: Reading) -> dict[str, list[Span]]:
    """Return field → places of the words behind it."""
    label = {"report": "done"}.get(reading.intent, reading.intent)
    spans: dict[str, list[Span]] = {"intent": evidence.spans(label)}
    if reading.completed in ("all", "part"):
        spans["completed"] = evidence.spans(reading.completed) or evidence.done()
    if reading.sets is not None or reading.reps is not None:
        spans["sets"] = spans["reps"] = [(one.start, one.end) for one in evidence.told.amounts]
    if reading.by_exercise:
        spans["by_exercise"] = evidence.told.spans
    if reading.pain is not None:
        spans["pain"] = evidence.pain.spans
    for flag in reading.red_flags:
        found = evidence.danger.spans.get(flag) or evidence.hits.get(f"danger.{flag}")
        spans[flag] = found or words_behind(flag, evidence)
    for concern in reading.concerns:
        spans[concern] = evidence.danger.spans.get(f"concern.{concern}", [])
    if reading.correction:
        spans["correction"] = evidence.spans("correction")
    return spans
