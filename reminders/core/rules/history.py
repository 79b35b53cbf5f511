"""What the rules look at: one client's sessions as plain values, and questions about them.

Everything a rule needs is here, so that a rule is a function of a history and nothing else. How rows become a
history stands in store/histories.py.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from datetime import date
from typing import Any

from reminders.core.levels import DEFAULTS, Levels, settle_level, stop_level, up_level
from reminders.core.usual import UsualFacts, usual

CLOSED_STATES = ("done", "part", "skipped", "missed")
# From here up a rating counts as it is, however much lower the pain was afterwards.
KEPT_FROM = 8


@dataclass(frozen=True)
class Morning:
    """A rating of the morning after a session (0-10), and whether she said the pain is new."""

    on: date
    pain: int
    is_new: bool = False


@dataclass(frozen=True)
class SessionFact:
    """One session as the rules see it.

    `pain` is the session's rating, the worst of it; `before` and `after` stand where she told them apart. `rung_on`
    is the day from which the dose of that session counted. `is_extra`: reported on a day without a session, outside
    the usual and adherence.
    """

    id: int
    on: date
    state: str = "done"
    pain: int | None = None
    before: int | None = None
    after: int | None = None
    reps: int | None = None
    effort: str = ""
    rung: int = 0
    rung_on: date = date.min
    is_extra: bool = False
    is_easy: bool = False
    mornings: tuple[Morning, ...] = ()

    @property
    def judged(self) -> int | None:
        """The rating that "pain is up" looks at: the later one where it began higher, unless either is 8 or more."""
        if self.before is None or self.after is None or self.after >= self.before:
            return self.pain
        if max(self.before, self.after, self.pain or 0) >= KEPT_FROM:
            return self.pain
        return self.after


@dataclass(frozen=True)
class History:
    """One client's sessions, oldest first, and what her levels are."""

    sessions: tuple[SessionFact, ...] = ()
    usual_facts: UsualFacts = field(default_factory=UsualFacts)
    precautions: frozenset[str] = frozenset()
    precautions_stated: bool = True
    levels: Levels = DEFAULTS

    def place(self, session_id: int) -> int:
        """Return where a session stands; raises KeyError when it is not in the history."""
        for place, session in enumerate(self.sessions):
            if session.id == session_id:
                return place
        raise KeyError(session_id)

    def usual_before(self, place: int) -> float:
        """Return her usual (0-10) from the sessions before a place."""
        ratings = [(one.on, one.pain) for one in self.sessions[:place] if one.pain is not None and not one.is_extra]
        return usual([(on, pain) for on, pain in ratings if pain is not None], self.usual_facts, self.levels)

    @property
    def usual_now(self) -> float:
        """Her usual after everything in the history."""
        return self.usual_before(len(self.sessions))

    def rated_before(self, place: int) -> int | None:
        """Return the place of the last session with a rating before a place."""
        return next((at for at in range(place - 1, -1, -1) if self.sessions[at].judged is not None), None)

    def rated_after(self, place: int) -> int | None:
        """Return the place of the next session with a rating after a place."""
        later = range(place + 1, len(self.sessions))
        return next((at for at in later if self.sessions[at].judged is not None), None)

    def is_up(self, place: int, usual_from: int | None = None) -> bool:
        """Return whether the session at a place was at the up level, against her usual before it (or another place)."""
        rating = self.sessions[place].judged
        usual_then = self.usual_before(place if usual_from is None else usual_from)
        return rating is not None and rating >= up_level(usual_then, self.levels)

    def with_session(self, session: SessionFact) -> "History":
        """Return the history with one session replaced or put in its place in time."""
        others = [one for one in self.sessions if one.id != session.id]
        ordered = sorted([*others, session], key=lambda one: (one.on, one.id))
        return replace(self, sessions=tuple(ordered))

    def up_to(self, day: date) -> "History":
        """Return the history without what lies after a day, mornings included."""
        kept = (
            replace(one, mornings=tuple(morning for morning in one.mornings if morning.on <= day))
            if one.mornings
            else one
            for one in self.sessions
            if one.on <= day
        )
        return replace(self, sessions=tuple(kept))


@dataclass(frozen=True)
class Marks:
    """The levels in numbers for one session: her usual before it, up, stop, and the morning level."""

    usual: float
    up: float
    stop: float
    settle: float


def marks(history: History, place: int) -> Marks:
    """Return the levels that the session at a place is judged by."""
    usual_then = history.usual_before(place)
    levels = history.levels
    return Marks(
        usual_then, up_level(usual_then, levels), stop_level(usual_then, levels), settle_level(usual_then, levels)
    )


@dataclass(frozen=True)
class Finding:
    """A rule that fired.

    `level`: urgent, today or routine. `form` names the sentence that explains it, `because` holds its values, plain
    and ready for JSON. `holds`: reminders stop until a therapist says otherwise.
    """

    rule: str
    level: str
    form: str
    because: Mapping[str, Any] = field(default_factory=dict)
    session_ids: tuple[int, ...] = ()
    holds: bool = False


def number(value: float) -> float | int:
    """Return a level without a needless ".0", as it stands in a sentence."""
    return int(value) if value == int(value) else value
