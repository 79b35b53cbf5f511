"""Spanish: the words of the files beside this one, put together."""

from reminders.core.words.es import (
    body_words,
    calendar_words,
    danger_more,
    danger_rules,
    danger_wide,
    done_rules,
    exercise_names,
    lookalikes,
    request_rules,
    session_words,
    small_words,
)
from reminders.core.words.vocabulary import Vocabulary, joined

VOCABULARY = Vocabulary(
    language="es",
    concepts=joined(small_words.CONCEPTS, body_words.CONCEPTS, session_words.CONCEPTS),
    rules=joined(done_rules.RULES, request_rules.RULES, danger_rules.RULES, danger_more.RULES, danger_wide.RULES),
    numbers=small_words.NUMBERS,
    near_numbers=small_words.NEAR_NUMBERS,
    aliases=exercise_names.ALIASES,
    common=small_words.COMMON,
    lookalikes=lookalikes.LOOKALIKES,
    sounds=small_words.SOUNDS,
    months=calendar_words.MONTHS,
    weekdays=calendar_words.WEEKDAYS,
    stretches=calendar_words.STRETCHES,
    counts=calendar_words.COUNTS,
    marks_possessive=False,
    ordinals=exercise_names.ORDINALS,
    spelled_out=small_words.SPELLED_OUT,
)
