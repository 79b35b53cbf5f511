"""A reading in plain English words for staff, whatever language the reply was in. Values in, one line out."""

from collections.abc import Mapping
from typing import Any

from reminders.flows.explain import rule_name

DONE = {"all": "all done", "part": "part done", "none": "not done"}
INTENTS = {
    "skip": "not today",
    "opt_out": "wants no more messages",
    "opt_in": "wants messages again",
    "help": "asked for help",
    "pause": "wants a pause",
    "resume": "is back",
    "resend": "wants the exercises again",
    "reschedule": "wants other days",
    "later": "will do it later",
    "wrong_number": "wrong number",
    "question": "a question",
    "chat": "small talk",
    "unclear": "not clear",
}


def in_words(reading: Mapping[str, Any] | None) -> str:
    """Return what was read: "all done, 2x10, pain 3"; what was not stated is not said."""
    if not reading:
        return "nothing was read"
    choice = reading.get("choice")
    is_answer = reading.get("intent") == "unclear" and choice is not None  # one word may answer what was asked
    intent = "" if is_answer else INTENTS.get(str(reading.get("intent")), "")
    parts = [intent, DONE.get(str(reading.get("completed")), ""), amount(reading)]
    parts += [
        f"{one['name']} {amount(one) or DONE.get(str(one.get('completed')), '')}".strip()
        for one in by_exercise(reading)
    ]
    parts.append(pain(reading))
    parts += [f"danger: {rule_name(flag)}" for flag in reading.get("red_flags") or ()]
    parts += [f"concern: {rule_name(one)}" for one in reading.get("concerns") or ()]
    if reading.get("where"):
        parts.append(f"where: {reading['where']}")
    if reading.get("correction"):
        parts.append("a correction")
    if reading.get("when") not in (None, "today"):
        parts.append(f"about {reading['when']}")
    if choice is not None:
        parts.append(f"answered {choice}" if isinstance(choice, int) else f"chose {choice}")
    if reading.get("about") == "other":
        parts.append("about someone else")
    return ", ".join(part for part in parts if part) or "nothing stated"


def by_exercise(reading: Mapping[str, Any]) -> list[Mapping[str, Any]]:
    """Return the amounts given exercise by exercise."""
    return [one for one in reading.get("by_exercise") or () if isinstance(one, Mapping)]


def amount(reading: Mapping[str, Any]) -> str:
    """Return sets and reps in short."""
    sets, reps = reading.get("sets"), reading.get("reps")
    if sets is not None and reps is not None:
        return f"{sets}x{reps}"
    if sets is not None:
        return f"{sets} sets"
    return f"{reps} reps" if reps is not None else ""


def pain(reading: Mapping[str, Any]) -> str:
    """Return the pain that was stated."""
    before, after = reading.get("before"), reading.get("after")
    if before is not None and after is not None:
        return f"pain {before} before, {after} after"
    return f"pain {reading['pain']}" if reading.get("pain") is not None else ""


def why_words(why: Mapping[str, Any] | None) -> list[tuple[str, str]]:
    """Return which words led to which field, as pairs for a list."""
    pairs: list[tuple[str, str]] = []
    for name, words in (why or {}).items():
        if isinstance(words, Mapping):
            pairs += [(rule_name(str(key)), spoken(value)) for key, value in words.items() if value]
        elif words:
            pairs.append((name.replace("_", " "), spoken(words)))
    return pairs


def spoken(words: Any) -> str:
    """Return the words that led to a field as one text."""
    if isinstance(words, list | tuple):
        return ", ".join(str(word) for word in words)
    return str(words)
