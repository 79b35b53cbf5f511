"""What a reading is: the values that the reader gives and the record keeps. No reading is done here."""

from dataclasses import dataclass, field
from typing import Any

INTENTS = (
    "report",
    "skip",
    "pain",
    "opt_out",
    "opt_in",
    "help",
    "pause",
    "resume",
    "resend",
    "reschedule",
    "later",
    "wrong_number",
    "question",
    "chat",
    "unclear",
)
RED_FLAGS = (
    "chest_or_breathing",
    "nerve_or_bladder",
    "fall_or_injury",
    "possible_fracture",
    "faint_or_dizzy",
    "severe_pain",
    "crisis",
)
CONCERNS = ("clot_or_wound", "fever", "new_back_pain", "surgery_or_hospital", "death", "bereaved", "flare")
GRADES = ("today", "urgent", "call_now")  # rising
ASKED = (
    "pain",
    "amount",
    "meaning",
    "settling",
    "reason",
    "who",
    "offer",
    "effort",
    "falls",
    "where",
    "keep",
    "days",
    "until",
)
HOLDERS = ("self", "helper", "shared")
# Words for unbearable pain, or a rating from here up, are a danger sign for everyone.
SEVERE_FROM = 8
SCALE_TOP = 10


@dataclass(frozen=True)
class SessionExercise:
    """One line of the session a reply answers; `reps` or `seconds` is None where the other counts."""

    letter: str
    name: str
    sets: int | None = None
    reps: int | None = None
    seconds: int | None = None
    sides: bool = False


@dataclass(frozen=True)
class ExerciseDone:
    """What a reply says of one exercise, by the session's own name."""

    name: str
    sets: int | None
    reps: int | None
    completed: str


@dataclass(frozen=True)
class Reading:
    """What one reply means; None is "it does not say", and `ask` names what must be asked before recording."""

    intent: str = "unclear"
    completed: str | None = None
    sets: int | None = None
    reps: int | None = None
    by_exercise: tuple[ExerciseDone, ...] = ()
    pain: int | None = None
    red_flags: tuple[str, ...] = ()
    danger: dict[str, str] = field(default_factory=dict)
    concerns: tuple[str, ...] = ()
    correction: bool = False
    when: str | None = None
    choice: str | int | None = None
    before: int | None = None
    after: int | None = None
    where: str | None = None
    about: str = "self"
    ask: str | None = None

    def as_dict(self) -> dict[str, Any]:
        """Return the reading in the contract's shape, ready for JSON."""
        shape = {**self.__dict__, "danger": dict(self.danger)}
        shape["by_exercise"] = [dict(one.__dict__) for one in self.by_exercise]
        shape["red_flags"], shape["concerns"] = list(self.red_flags), list(self.concerns)
        return shape
