"""Which alerts a record would have raised under given levels: the rules run over it day by day, nothing is sent.

Holds and easy days that other levels would have brought are not played: the record is what it is. What an alert led
to stands in the record's own alerts and is compared in flows/rehearse.py.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from reminders.core.rules import findings_for
from reminders.core.rules.history import Finding, History
from reminders.core.rules.missed import Silence, missed_running

# An alert is taken as closed this many days after it was last added to: common practice, no source.
OPEN_DAYS = 3


@dataclass(frozen=True)
class Raised:
    """An alert that would have been raised on a day."""

    on: date
    finding: Finding


def replay(
    history: History, first: date, last: date, heard: Sequence[date] = (), open_days: int = OPEN_DAYS
) -> list[Raised]:
    """Return the alerts of the days from first to last, in order; at most one open for a rule at a time.

    `heard` are the days on which she was heard, oldest first.
    """
    raised: list[Raised] = []
    open_until: dict[str, date] = {}
    for day in active_days(history, first, last):
        for finding in on_day(history.up_to(day), day, heard, raised):
            is_open = finding.rule in open_until and day <= open_until[finding.rule]
            # Severe pain is added to an open "pain is up" and opens none; others open when none of the rule is.
            if not is_open:
                raised.append(Raised(day, finding))
            open_until[finding.rule] = day + timedelta(days=open_days)
    return raised


def active_days(history: History, first: date, last: date) -> list[date]:
    """Return the days on which something to judge happened: sessions, and mornings after them."""
    days = {one.on for one in history.sessions}
    days |= {morning.on for one in history.sessions for morning in one.mornings}
    return sorted(day for day in days if first <= day <= last)


def on_day(history: History, day: date, heard: Sequence[date], raised: Sequence[Raised]) -> list[Finding]:
    """Return what the rules find in a history that ends with this day."""
    found: dict[str, Finding] = {}
    for place, session in enumerate(history.sessions):
        if session.on == day or any(morning.on == day for morning in session.mornings):
            for finding in findings_for(history, place):
                found.setdefault(finding.rule, finding)
    before = [raise_.on for raise_ in raised if raise_.finding.rule == "missed"]
    silence = Silence(
        today=day,
        since_on=date.min,
        heard_on=max((one for one in heard if one <= day), default=None),
        alerted_on=before[-1] if before else None,
    )
    if missed := missed_running(history, silence):
        found.setdefault(missed.rule, missed)
    return list(found.values())
