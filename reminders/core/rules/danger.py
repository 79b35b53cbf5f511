"""Danger signs and concerns: what a reading's flags mean, which alert each opens, and which wording answers them.

Finding them in words is the reader's work (core/reading); here stands what follows. Nothing here says what a sign is.
"""

from collections.abc import Mapping
from typing import Any

from reminders.core.library_limits import LOW_BONE, SPINE
from reminders.core.reading.model import Reading
from reminders.core.rules.history import Finding, History

CALL_NOW, URGENT, TODAY = "call_now", "urgent", "today"
GRADES = (TODAY, URGENT, CALL_NOW)  # rising
LEVELS = ("routine", "today", "urgent")  # rising

# What a flag means when the reading gives it no grade: the graver of the two that it can have.
# Heart signs: American Heart Association, Don't die of doubt: know the signs (call 911).
# Bladder, saddle, legs: backes.org.uk, Cauda equina warning signs (emergency department at once).
# Back pain that came suddenly: clinic page on vertebral compression fractures; a single sign screens poorly
# (Cochrane 2023, CD014461), so it asks for a call today and not for a diagnosis.
# Faint: ACSM 2000 list of signs to stop a test, as a JSSM supplement carries it.
GRADE_OF: Mapping[str, str] = {
    "chest_or_breathing": CALL_NOW,
    "nerve_or_bladder": CALL_NOW,
    "fall_or_injury": URGENT,
    "possible_fracture": URGENT,
    "faint_or_dizzy": CALL_NOW,
    "severe_pain": URGENT,
    "crisis": CALL_NOW,
}
RED_FLAGS = tuple(GRADE_OF)
# Concerns that a person should hear of today, and whether reminders are held meanwhile. `bereaved` and `flare` open
# nothing; `new_back_pain` depends on the client. Common practice, no source.
CONCERN_HOLDS: Mapping[str, bool] = {
    "clot_or_wound": False,
    "fever": False,
    "surgery_or_hospital": True,
    "death": True,
}

# Reminders wait for the therapist here, whatever pause she asked for: her own date says nothing of when she may start.
# A broken bone that she names is read as an injury.
NO_PAUSE = frozenset({"surgery_or_hospital", "possible_fracture", "fall_or_injury"})


def rules_out_a_pause(reading: Reading) -> bool:
    """Return whether a reply opens a hold that stands instead of the pause which it asks for."""
    return not NO_PAUSE.isdisjoint((*reading.red_flags, *reading.concerns))


def danger_findings(reading: Mapping[str, Any], severe: int = 8, session_id: int | None = None) -> list[Finding]:
    """Return one finding a danger sign of a reading, each a rule of its own, in the order of harm.

    `severe` is the rating (0-10) from which pain alone is a danger sign for this client.
    """
    flags = dict.fromkeys(flag for flag in reading.get("red_flags") or () if flag in GRADE_OF)
    number = _worst(reading)
    if number is not None and number >= severe:
        flags["severe_pain"] = None
    elif number is not None and number >= 8 and not reading.get("severe_in_words"):
        # Her therapist set a higher level for her: a number below it is no danger sign.
        flags.pop("severe_pain", None)
    return [_finding(flag, reading, number, severe, session_id) for flag in RED_FLAGS if flag in flags]


def _finding(flag: str, reading: Mapping[str, Any], number: int | None, severe: int, session_id: int | None) -> Finding:
    grade = grade_of(flag, reading)
    level = TODAY if grade == TODAY else "urgent"
    because: dict[str, Any] = {"flag": flag, "grade": grade, "about": reading.get("about") or "self"}
    form = "told_older" if grade == TODAY else "told"
    if flag == "severe_pain" and number is not None and number >= severe:
        because |= {"pain": number, "severe": severe}
        form = "severe_rating"
    sessions = () if session_id is None else (session_id,)
    return Finding(flag, level, form, because, sessions, holds=grade != TODAY)


def grade_of(flag: str, reading: Mapping[str, Any]) -> str:
    """Return a flag's grade as the reading carries it, else the graver one it can have."""
    grade = (reading.get("danger") or {}).get(flag)
    return grade if grade in GRADES else GRADE_OF[flag]


def _worst(reading: Mapping[str, Any]) -> int | None:
    told = [reading.get(name) for name in ("pain", "before", "after")]
    numbers = [value for value in told if isinstance(value, int) and not isinstance(value, bool)]
    return max(numbers, default=None)


def concern_findings(reading: Mapping[str, Any], history: History, session_id: int | None = None) -> list[Finding]:
    """Return the findings of a reading's concerns, level `today`."""
    sessions = () if session_id is None else (session_id,)
    found = []
    for concern in dict.fromkeys(reading.get("concerns") or ()):
        if concern in CONCERN_HOLDS:
            because = {"concern": concern}
            found.append(Finding(concern, TODAY, "told", because, sessions, holds=CONCERN_HOLDS[concern]))
        elif concern == "new_back_pain" and (finding := new_back_pain(history, reading, sessions)):
            found.append(finding)
    return found


def new_back_pain(history: History, reading: Mapping[str, Any], sessions: tuple[int, ...]) -> Finding | None:
    """New back pain in a client with low bone density or a spinal fracture: today, at any number, and a hold.

    A fracture can come without a fall: Royal Osteoporosis Society article carried by BackCare. Everyday triggers such
    as bending and sneezing: bonehealth.ca. Where nobody has stated her precautions, she may be such a client: today,
    without a hold.
    """
    fragile = bool(history.precautions & {LOW_BONE, SPINE})
    if not fragile and history.precautions_stated:
        return None
    form = "fragile" if fragile else "not_stated"
    because = {"concern": "new_back_pain", "pain": _worst(reading)}
    return Finding("new_back_pain", TODAY, form, because, sessions, holds=fragile)


def falls_counted(count: int, since: str) -> Finding | None:
    """A count above 0 in answer to "Any falls since?": today, no hold.

    Fewer than half of those who fall tell a doctor: CDC figures on a state page.
    """
    if count < 1:
        return None
    return Finding("falls_counted", TODAY, "counted" if since else "told", {"count": count, "since_on": since or None})


def wording(reading: Mapping[str, Any], findings: list[Finding]) -> str | None:
    """Return which danger text answers a reading: `crisis`, `danger_call_now`, `danger_today`, or None.

    Crisis words are answered as such whatever else was said; its text puts the emergency number first when a
    call-now sign stands beside it.
    """
    grades = {finding.rule: finding.because.get("grade") for finding in findings if finding.holds}
    if "crisis" in grades:
        return "crisis"
    if CALL_NOW in grades.values():
        return "danger_call_now"
    if URGENT in grades.values():
        return "danger_today"
    return None


def is_higher(level: str, than: str) -> bool:
    """Return whether one alert level is above another."""
    return LEVELS.index(level) > LEVELS.index(than)
