"""How a dose is said: in words ("10 times, twice") and in short ("2x10"), for any language.

Pure functions over one language's phrase table, which stands in templates/exercises under [phrases]. No word of any
language is written here.
"""

from collections.abc import Iterable, Mapping

from reminders.core.dose import ALTERNATING, EACH, Dose, written
from reminders.core.programs import SessionItem

Phrases = Mapping[str, str]


def in_words(dose: Dose, side: str, phrases: Phrases) -> str:
    """Return the dose as a client is told it: "20 seconds each side, twice, with the red band"."""
    unit, count = _unit_and_count(dose)
    amount = phrases[f"{unit}_one" if count == 1 else unit].format(n=count)
    if side in (EACH, ALTERNATING):
        amount = f"{amount}{phrases[side]}"
    parts = [amount]
    if dose.sets > 1:
        parts.append(phrases["sets_two" if dose.sets == 2 else "sets"].format(n=dose.sets))
    if dose.load:
        parts.append(phrases["with_load"].format(load=_load_word(dose.load, phrases, "_with")))
    if dose.hand_support:
        parts.append(phrases[_key(dose.hand_support)])
    return ", ".join(parts)


def in_short(dose: Dose, side: str, phrases: Phrases) -> str:
    """Return the dose in short as for a session line: "2x10", "2x20 sec each side", "3x8 2 kg no hands"."""
    unit, count = _unit_and_count(dose)
    parts = [f"{dose.sets}x{count}", phrases[f"short_{unit}"]]
    parts.append(phrases["short_each"] if side == EACH else "")
    parts.append(_load_word(dose.load, phrases, ""))
    parts.append(phrases[f"short_{_key(dose.hand_support)}"] if dose.hand_support else "")
    return " ".join(part for part in parts if part)


def session_line(items: Iterable[SessionItem], names: Mapping[str, str], phrases: Phrases) -> str:
    """Return a session as the reader of replies takes it: "sit to stand 2x10; tandem stance 2x20 sec each side"."""
    return "; ".join(f"{names[item.exercise]} {in_short(item.dose, item.side, phrases)}" for item in items)


def _unit_and_count(dose: Dose) -> tuple[str, int]:
    if written(dose).split()[1:2] == ["min"]:
        return "minutes", dose.count // 60
    return dose.unit, dose.count


def _load_word(load: str, phrases: Phrases, suffix: str) -> str:
    return phrases[f"{_key(load)}{suffix}"] if load.endswith(" band") else load


def _key(text: str) -> str:
    return text.replace(" ", "_")
