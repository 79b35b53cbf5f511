"""A session's value from its reports in order. Pure: reports are never changed, the value is worked out anew each time.

To which session a report belongs is `core.attribution`; what the value means for the client is for the rules.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

STATE_OF = {"all": "done", "part": "part", "none": "skipped"}


@dataclass(frozen=True)
class Stated:
    """What one report states. `replaces`: the report that it corrects. A settling rating is none of the session's."""

    id: int
    at: datetime
    reading: Mapping[str, Any]
    replaces: int | None = None
    by_staff: bool = False
    is_settling: bool = False

    @property
    def states_pain(self) -> bool:
        """Return whether it says something of the pain; a staff correction may say that none was stated."""
        return "pain" in self.reading if self.by_staff else self.reading.get("pain") is not None

    @property
    def pain(self) -> int | None:
        """Return the pain it states, 0-10."""
        value = self.reading.get("pain")
        return int(value) if value is not None else None

    @property
    def states_amount(self) -> bool:
        """Return whether it gives sets or reps for the whole session; a staff correction may take them away."""
        if self.by_staff:
            return "sets" in self.reading or "reps" in self.reading
        return self.reading.get("sets") is not None or self.reading.get("reps") is not None


@dataclass(frozen=True)
class SessionValue:
    """What a session is worth: completion (`all`, `part`, `none`), amounts, pain 0-10, pain before and after."""

    completed: str | None = None
    sets: int | None = None
    reps: int | None = None
    pain: int | None = None
    before: int | None = None
    after: int | None = None

    @property
    def state(self) -> str | None:
        """Return the state that the completion brings, None while nobody stated it."""
        return STATE_OF.get(self.completed or "")


def in_order(reports: Sequence[Stated]) -> list[Stated]:
    """Return the reports as they count: by time, staff corrections last, settling ratings left out."""
    own = [report for report in reports if not report.is_settling]
    return sorted(own, key=lambda report: (report.by_staff, report.at, report.id))


def replaced_pains(ordered: Sequence[Stated]) -> set[int]:
    """Return the reports whose pain no longer counts: a correction that states a pain replaces theirs.

    A staff correction that names no report replaces all before it. A client's that had nothing to correct when it was
    handled replaces the rating before it that came in only then: the order of the reports counts, not of their coming.
    """
    gone: set[int] = set()
    for place, report in enumerate(ordered):
        if not report.states_pain:
            continue
        if report.replaces is not None:
            gone.add(report.replaces)
        elif report.by_staff:
            gone.update(earlier.id for earlier in ordered[:place])
        elif report.reading.get("correction"):
            late = [one.id for one in ordered[:place] if one.id > report.id and one.pain is not None]
            gone.update(late[-1:])
    return gone


def session_value(reports: Sequence[Stated]) -> SessionValue:
    """Return a session's value: completion and amounts from the newest report that states them, pain the highest that
    no correction replaced, staff corrections last. A session told as not done keeps no amounts.
    """
    ordered = in_order(reports)
    gone = replaced_pains(ordered)
    pains = [report.pain for report in ordered if report.id not in gone and report.pain is not None]
    completed: str | None = None
    amount: tuple[int | None, int | None] = (None, None)
    apart: tuple[int | None, int | None] = (None, None)
    for report in ordered:
        reading = report.reading
        completed = reading.get("completed") or completed
        if report.states_amount:
            amount = (reading.get("sets"), reading.get("reps"))
        if completed == "none":
            amount = (None, None)
        if reading.get("before") is not None or reading.get("after") is not None:
            apart = (reading.get("before"), reading.get("after"))
        elif report.states_pain and (report.replaces is not None or report.reading.get("correction")):
            apart = (None, None)
    return SessionValue(completed, *amount, max(pains, default=None), *apart)


def so_far(value: SessionValue, at: datetime) -> Stated:
    """Return a value as one report that states all of it: what a newer plain report is added to gives the same value
    as all reports before it, as long as no correction is among what comes.
    """
    reading = {
        "completed": value.completed,
        "sets": value.sets,
        "reps": value.reps,
        "pain": value.pain,
        "before": value.before,
        "after": value.after,
    }
    return Stated(0, at, reading)


def corrected(reports: Sequence[Stated], *, states_pain: bool) -> int | None:
    """Return the report that a client's correction replaces: the newest that still counts and states a pain, when the
    correction states one; else the newest. None when there is nothing to correct.
    """
    everyone = in_order(reports)
    gone = replaced_pains(everyone)
    ordered = [report for report in everyone if not report.by_staff]
    if states_pain:
        with_pain = [report.id for report in ordered if report.pain is not None and report.id not in gone]
        if with_pain:
            return with_pain[-1]
    return ordered[-1].id if ordered else None
