"""What a reading gains from what stands beside the words: the rest of a mail, the boxes of a page, her name."""

from dataclasses import replace
from typing import Any

from reminders.core.attribution import tells_of_death
from reminders.core.reading.model import SEVERE_FROM, Reading


def with_death_of(reading: Reading, text: str, name: str) -> Reading:
    """Return a reading with the client's own death, where the words name her as who has died."""
    names = [name, *name.split()[:1]]
    if "death" in reading.concerns or not tells_of_death(text, names):
        return reading
    return replace(reading, concerns=(*reading.concerns, "death"))


def with_danger_of(reading: Reading, whole: Reading) -> Reading:
    """Return a reading with the danger signs and concerns of the whole mail added."""
    danger = {**whole.danger, **reading.danger}
    flags = tuple(dict.fromkeys((*reading.red_flags, *whole.red_flags)))
    concerns = tuple(dict.fromkeys((*reading.concerns, *whole.concerns)))
    return replace(reading, red_flags=flags, danger=danger, concerns=concerns)


def as_on_page(reading: Reading, fields: dict[str, Any]) -> Reading:
    """Return the reading of a page: its boxes say what was done and how it hurt, its words add danger and concerns."""
    completed = {"all": "all", "some": "part", "no": "none"}.get(fields["done"])
    pain = fields["pain"] if fields["pain"] is not None else reading.pain
    severe = ("severe_pain",) if pain is not None and pain >= SEVERE_FROM else ()
    flags = tuple(dict.fromkeys((*reading.red_flags, *severe)))
    danger = {**dict.fromkeys(severe, "urgent"), **reading.danger}
    intent = "skip" if completed == "none" else "report" if completed else "pain"
    return replace(
        reading,
        intent=intent,
        completed=completed or reading.completed,
        pain=pain,
        red_flags=flags,
        danger=danger,
        correction=False,
        when=None,
        ask=None,
    )
