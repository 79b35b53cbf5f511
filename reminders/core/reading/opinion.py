"""Where the rules and the trained classifier meet: which intent stands, and whether it must be asked.

Danger signs, carrier words and answers to a question are the rules' alone. Where both agree, that is it. Where the
rules found nothing, a sure classifier fills in; where they differ, the surer one stands, and the service asks unless
the difference changes nothing in the record.
"""

from dataclasses import dataclass

from reminders.core.reading.guess import Guess

RULES_ALONE = frozenset({"opt_out", "opt_in", "help"})
FILLS_IN_FROM = 0.5  # a guess this sure stands where the rules found nothing
OVERRULES_FROM = 0.8  # and this sure it stands against them
NEED_NOT_ASK_FROM = 0.9
# Intents that leave no trace in the record: to take one for another costs an odd answer, not a wrong figure.
WITHOUT_RECORD = frozenset({"question", "chat", "resend", "later", "help", "unclear"})


@dataclass(frozen=True)
class Opinion:
    """The intent that stands, whether it came from the classifier, and whether it is too unsure to record."""

    intent: str
    guessed: bool = False
    unsure: bool = False


def settle(ruled: str, guess: Guess | None, *, fixed: bool) -> Opinion:
    """Return the intent that stands; `fixed` when the rules' intent must not be touched."""
    if guess is None or fixed or ruled in RULES_ALONE or guess.intent == ruled:
        return Opinion(ruled)
    if guess.intent == "opt_out":
        return Opinion(ruled)  # only rules may end somebody's reminders
    if ruled == "unclear":
        if guess.share < FILLS_IN_FROM:
            return Opinion(ruled)
        return Opinion(guess.intent, True, guess.share < NEED_NOT_ASK_FROM and guess.intent not in WITHOUT_RECORD)
    if guess.share >= OVERRULES_FROM:
        return Opinion(guess.intent, True, guess.share < NEED_NOT_ASK_FROM)
    return Opinion(ruled, False, guess.share >= FILLS_IN_FROM and not {ruled, guess.intent} <= WITHOUT_RECORD)
