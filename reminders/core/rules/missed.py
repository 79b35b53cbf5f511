"""The rules about silence: sessions missed running, and a client who has not been heard for weeks."""

from dataclasses import dataclass
from datetime import date

from reminders.core.levels import Levels
from reminders.core.rules.history import CLOSED_STATES, Finding, History


@dataclass(frozen=True)
class Silence:
    """What the rules of silence need beside the sessions; days are her local dates.

    `heard_on`: her last word on any contact. `since_on`: from when silence counts (she became active, or a pause or
    hold ended). `alerted_on`: the last alert of the rule, whatever became of it.
    """

    today: date
    since_on: date
    heard_on: date | None = None
    alerted_on: date | None = None

    @property
    def silent_days(self) -> int:
        """Whole days without a word."""
        last = self.since_on if self.heard_on is None else max(self.heard_on, self.since_on)
        return max(0, (self.today - last).days)


def missed_running(history: History, silence: Silence) -> Finding | None:
    """Three sessions running missed without a word, once in four weeks: routine.

    Three running: common practice, no source. Half of clinic patients do not follow a program: review PMC3923391.
    """
    levels = history.levels
    closed = [one for one in history.sessions if one.state in CLOSED_STATES and not one.is_extra]
    last = closed[-levels.missed_running :]
    if len(last) < levels.missed_running or any(one.state != "missed" for one in last):
        return None
    if last[0].on < silence.since_on or (silence.heard_on is not None and silence.heard_on >= last[0].on):
        return None
    if silence.alerted_on is not None and (silence.today - silence.alerted_on).days < levels.missed_again_days:
        return None
    because = {"count": len(last), "first_on": last[0].on.isoformat(), "last_on": last[-1].on.isoformat()}
    return Finding("missed", "routine", "running", because, tuple(one.id for one in last))


def silence_step(silence: Silence, levels: Levels) -> str | None:
    """Return what a silence asks for: `weekly` (one reminder a week), `pause` (paused, the clinic phones), or None.

    14 and 28 days: common practice, no source.
    """
    if silence.silent_days >= levels.quiet_pause_days:
        return "pause"
    if silence.silent_days >= levels.quiet_days:
        return "weekly"
    return None


def quiet(silence: Silence, levels: Levels) -> Finding | None:
    """Silent for 28 days: she is paused and the clinic is asked to phone; routine."""
    if silence_step(silence, levels) != "pause":
        return None
    last = silence.heard_on.isoformat() if silence.heard_on else None
    return Finding("quiet", "routine", "silent", {"days": silence.silent_days, "heard_on": last})
