"""The levels of the clinical rules: every number that a rule compares with, its default, its range and its source.

A clinic, a therapist and one client may each have changed some of them; `merged` lays them over one another. What a
rule does with a level stands in core/rules, how it is worded in templates/rules.
"""

from collections.abc import Mapping
from dataclasses import asdict, dataclass, fields
from typing import Any


@dataclass(frozen=True)
class Levels:
    """The levels that hold for one client. Ratings are 0-10, `_minutes`, `_days` and `_sessions` whole numbers."""

    usual_of: int = 10
    usual_needs: int = 3
    usual_default: int = 2
    usual_counts: int = 1
    up_floor: int = 4
    up_above: int = 2
    stop_floor: int = 6
    stop_above: int = 2
    severe: int = 8
    settle_floor: int = 5
    settle_above: int = 2
    settle_rise: int = 2
    morning_most: int = 3
    soreness_days: int = 14
    soreness_from: int = 6
    where_days: int = 28
    flare_sessions: int = 3
    missed_running: int = 3
    missed_again_days: int = 28
    reason_quiet_days: int = 14
    quiet_days: int = 14
    quiet_pause_days: int = 28
    falls_days: int = 28
    progress_of: int = 6
    progress_full: int = 4
    progress_pain_floor: int = 3
    progress_pain_above: int = 1
    progress_pain_over: int = 1
    progress_pain_most: int = 5
    few_reps: int = 8
    absence_days: int = 14
    absence_long_days: int = 28
    recheck_grace_days: int = 28
    call_again_minutes: int = 15
    call_cover_minutes: int = 30
    call_lead_minutes: int = 60
    call_every_minutes: int = 30
    hold_top_days: int = 3
    hold_lead_days: int = 7


@dataclass(frozen=True)
class Fact:
    """What stands beside a level: the least and most it may be set to, and where its default comes from.

    `client_only`: a therapist sets it for one client; a clinic or a therapist cannot change it for everyone.
    """

    least: int
    most: int
    source: str
    client_only: bool = False


PRACTICE = "common practice, no source"
NHS_BANDS = "NHS AHP Suffolk, Returning to Activity (0-3 safe, 4-5 change something, 6-10 stop; look again at 24 h)"
NHS_MORNING = "NHS inform plantar-heel advice, as an NHS service carries it (aim for 0-5 and no worse the next morning)"
CHANGE = (
    "Farrar et al. 2001, Pain 94(2):149-158, Clinical importance of changes in chronic pain intensity measured on an "
    "11-point numerical pain rating scale (about 2 points matter, more from a higher start)"
)
KNEE_GUIDE = (
    "Patient guide for patellofemoral pain, How much pain is ok (not above 5 in exercise, not up the next morning)"
)
BANDS = (
    "McCaffery & Beebe 1993 bands (7-10 severe), as NIH Clinical Center, Pain Intensity Instruments, 2003 carries them"
)
SORENESS = "ACSM leaflet on muscle soreness, as a newspaper quotes it (begins after 12-24 h, peaks at 24-72 h)"
SORENESS_CALL = "Safety page for older exercisers, First Step to Active Health (get in touch beyond 2-3 days)"
ADHERENCE = "common practice, no source; sessions done of prescribed: Bailey et al. 2020, BJSM 54(6):326"
FALLS = "CDC figures on falls, as a state page carries them (fewer than half tell a doctor); monthly: common practice"
EFFORT = "Osteoporosis Canada, Exercises for healthy bones (2 sets of 8-12; fewer than 8 is too hard)"

FACTS: Mapping[str, Fact] = {
    "usual_of": Fact(3, 60, PRACTICE),
    "usual_needs": Fact(1, 10, PRACTICE),
    "usual_default": Fact(0, 10, PRACTICE),
    "usual_counts": Fact(0, 1, CHANGE),
    "up_floor": Fact(1, 10, NHS_BANDS),
    "up_above": Fact(0, 10, CHANGE),
    "stop_floor": Fact(1, 10, NHS_BANDS),
    "stop_above": Fact(0, 10, CHANGE),
    "severe": Fact(5, 10, f"inside the severe band, 8: {PRACTICE}. {BANDS}", client_only=True),
    "settle_floor": Fact(1, 10, NHS_MORNING),
    "settle_above": Fact(0, 10, KNEE_GUIDE),
    "settle_rise": Fact(1, 10, CHANGE),
    "morning_most": Fact(1, 7, SORENESS_CALL),
    "soreness_days": Fact(0, 84, SORENESS),
    "soreness_from": Fact(1, 10, NHS_BANDS),
    "where_days": Fact(7, 366, PRACTICE),
    "flare_sessions": Fact(1, 12, PRACTICE),
    "missed_running": Fact(2, 12, ADHERENCE),
    "missed_again_days": Fact(7, 366, PRACTICE),
    "reason_quiet_days": Fact(1, 90, PRACTICE),
    "quiet_days": Fact(7, 90, PRACTICE),
    "quiet_pause_days": Fact(14, 180, PRACTICE),
    "falls_days": Fact(7, 366, FALLS),
    "progress_of": Fact(2, 20, PRACTICE),
    "progress_full": Fact(1, 20, PRACTICE),
    "progress_pain_floor": Fact(0, 10, NHS_BANDS),
    "progress_pain_above": Fact(0, 10, PRACTICE),
    "progress_pain_over": Fact(0, 20, PRACTICE),
    "progress_pain_most": Fact(0, 10, KNEE_GUIDE),
    "few_reps": Fact(1, 20, EFFORT),
    "absence_days": Fact(7, 90, PRACTICE),
    "absence_long_days": Fact(14, 180, PRACTICE),
    "recheck_grace_days": Fact(0, 180, PRACTICE),
    "call_again_minutes": Fact(5, 240, PRACTICE),
    "call_cover_minutes": Fact(10, 480, PRACTICE),
    "call_lead_minutes": Fact(15, 960, PRACTICE),
    "call_every_minutes": Fact(10, 480, PRACTICE),
    "hold_top_days": Fact(1, 30, PRACTICE),
    "hold_lead_days": Fact(2, 60, PRACTICE),
}

DEFAULTS = Levels()
# Fixed levels: what a service without her usual does. Only for comparison.
FIXED = Levels(usual_counts=0)


def checked(changes: Mapping[str, Any], *, client: bool = False) -> dict[str, int]:
    """Return changed levels by name; raises ValueError with one sentence for an unknown name or a value out of range.

    `client`: they are one client's, where the levels that only a client may have are allowed.
    """
    good: dict[str, int] = {}
    for name, value in changes.items():
        fact = FACTS.get(name)
        if fact is None:
            raise ValueError(f'"{name}" is no level: use one of {", ".join(FACTS)}.')
        if fact.client_only and not client:
            raise ValueError(f'The level "{name}" is set for one client by her therapist, not for everyone.')
        if isinstance(value, bool) or not isinstance(value, int) or not fact.least <= value <= fact.most:
            raise ValueError(
                f'The level "{name}" must be a whole number from {fact.least} to {fact.most}, not {value!r}.'
            )
        good[name] = value
    return good


def merged(
    clinic: Mapping[str, Any] | None = None,
    therapist: Mapping[str, Any] | None = None,
    client: Mapping[str, Any] | None = None,
) -> Levels:
    """Return the levels that hold: the defaults, over them the clinic's, the therapist's, and the client's own.

    Raises ValueError as `checked` does.
    """
    return Levels(
        **{
            **asdict(DEFAULTS),
            **checked(clinic or {}),
            **checked(therapist or {}),
            **checked(client or {}, client=True),
        }
    )


def changed(levels: Levels) -> dict[str, int]:
    """Return the levels that differ from the defaults, by name."""
    return {
        field.name: getattr(levels, field.name)
        for field in fields(Levels)
        if getattr(levels, field.name) != getattr(DEFAULTS, field.name)
    }


def up_level(usual: float, levels: Levels) -> float:
    """Return the rating from which pain is up: the higher of 4 and usual + 2 by default."""
    return _level(levels.up_floor, levels.up_above, usual, levels)


def stop_level(usual: float, levels: Levels) -> float:
    """Return the rating from which she stops: the higher of 6 and usual + 2 by default, never below the up level."""
    return max(_level(levels.stop_floor, levels.stop_above, usual, levels), up_level(usual, levels))


def settle_level(usual: float, levels: Levels) -> float:
    """Return the morning rating from which pain has not settled: the higher of 5 and usual + 2 by default."""
    return _level(levels.settle_floor, levels.settle_above, usual, levels)


def progress_level(usual: float, levels: Levels) -> float:
    """Return the rating over which a session speaks against a step: the higher of 3 and usual + 1 by default."""
    return _level(levels.progress_pain_floor, levels.progress_pain_above, usual, levels)


def _level(floor: int, above: int, usual: float, levels: Levels) -> float:
    # A level never lies past the top of the scale, or a client whose usual is 9 could never reach it.
    return min(10, max(floor, usual + above)) if levels.usual_counts else floor
