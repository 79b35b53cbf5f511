"""A therapist's week: facts about each client -> the values that the digest shows, plain and ready for JSON.

Who needs attention, in which order and why is decided here; where the facts come from is in `store.digest_facts`, how
they are worded in templates/emails. All ratings are 0-10.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from statistics import median
from typing import Any, NamedTuple

from reminders.core.adherence import Adherence, adherence

# A change of about 2 points of 11 matters: Farrar et al. 2001, Pain 94(2):149-158.
TREND_POINTS = 2
TREND_RATINGS = 3
LOOK_AHEAD = timedelta(days=14)  # a re-check or an end is named two weeks ahead
UNDER_HALF_WEEKS = 2
# What asks for a person, in the order of harm; a client stands where her worst reason puts her.
ORDER = (
    "alert urgent",
    "alert today",
    "hold",
    "question",
    "alert routine",
    "proposal",
    "program",
    "half",
    "recheck",
    "end",
)


class SessionFact(NamedTuple):
    """One exercise day and what came back. A tuple by name, since a therapist's week is made from thousands."""

    on: date
    state: str
    pain: int | None = None
    is_extra: bool = False

    @property
    def is_rated(self) -> bool:
        """Whether it has a rating that her usual and the trend look at."""
        return self.pain is not None and not self.is_extra


@dataclass(frozen=True)
class AlertFact:
    """An alert that is not closed, or was opened or closed in the week."""

    number: int
    rule: str
    level: str
    state: str
    opened_on: date
    outcome: str = ""


@dataclass(frozen=True)
class StepFact:
    """A change of the dose in the week: the rungs counted from 0, and why."""

    on: date
    from_rung: int
    to_rung: int
    dose: str = ""
    why: str = ""


@dataclass(frozen=True)
class ClientFacts:
    """What is known of one client at the week's end.

    `flags`: (kind, grade, day) of the week. `hold`: rule and first day of an open hold. `questions`: the words of the
    unanswered ones, oldest first. `falls`: how many she counted in the week, None when not asked.
    """

    id: int
    name: str
    state: str = "active"
    sessions: tuple[SessionFact, ...] = ()
    usual: float = 0.0
    flags: tuple[tuple[str, str, date], ...] = ()
    alerts: tuple[AlertFact, ...] = ()
    hold: tuple[str, date] | None = None
    paused_until: date | None = None
    questions: tuple[tuple[str, date], ...] = ()
    steps: tuple[StepFact, ...] = ()
    proposal: str = ""
    rung: int = 0
    dose: str = ""
    recheck_on: date | None = None
    end_on: date | None = None
    program_unchecked: bool = False
    falls: int | None = None


def week_of(day: date) -> str:
    """Return the ISO week of a date, as 2027-W10 (ISO 8601)."""
    year, week, _ = day.isocalendar()
    return f"{year}-W{week:02d}"


def week_days(week: str) -> tuple[date, date]:
    """Return the Monday and the Sunday of an ISO week; raises ValueError for anything else."""
    year, mark, number = week.upper().partition("-W")
    if not (mark and year.isdigit() and number.isdigit() and len(year) == 4 and 1 <= len(number) <= 2):
        raise ValueError(f"{week!r} is not a week such as 2027-W10")
    monday = date.fromisocalendar(int(year), int(number), 1)
    return monday, monday + timedelta(days=6)


def digest(week: str, clients: Sequence[ClientFacts]) -> dict[str, Any]:
    """Return the values of one therapist's digest of an ISO week: totals, who needs attention, then each client."""
    monday, sunday = week_days(week)
    rows = [client_row(client, monday, sunday) for client in clients]
    rows.sort(key=lambda row: (row["name"].casefold(), row["id"]))
    asking = [row for row in rows if row["reasons"]]
    asking.sort(key=lambda row: (rank(row["reasons"][0]), row["reasons"][0].get("on") or "", row["name"].casefold()))
    return {
        "week": week,
        "from": monday.isoformat(),
        "until": sunday.isoformat(),
        "totals": totals(clients, monday, sunday),
        "attention": [{"id": row["id"], "name": row["name"], "reasons": row["reasons"]} for row in asking],
        "clients": rows,
    }


def totals(clients: Sequence[ClientFacts], monday: date, sunday: date) -> dict[str, Any]:
    """Return the week's counts over all clients; `led` is how many of the alerts closed led to something done."""
    week = counts([one for client in clients for one in between(client.sessions, monday, sunday)])
    alerts = [alert for client in clients for alert in client.alerts]
    closed = [alert for alert in alerts if alert.state == "closed"]
    return {
        "clients": len(clients),
        **week,
        "alerts_opened": sum(monday <= alert.opened_on <= sunday for alert in alerts),
        "alerts_open": sum(alert.state != "closed" for alert in alerts),
        "alerts_closed": len(closed),
        "led": sum(alert.outcome not in ("", "nothing", "expected", "report") for alert in closed),
    }


def between(sessions: Sequence[SessionFact], first: date, last: date) -> list[SessionFact]:
    """Return the sessions of some days, both ends included."""
    return [one for one in sessions if first <= one.on <= last]


def counts(sessions: Sequence[SessionFact]) -> dict[str, Any]:
    """Return how many sessions were done, in part, skipped, missed, of how many, and the percentage from four on."""
    found: Adherence = adherence(one.state for one in sessions if not one.is_extra)
    states = [one.state for one in sessions]
    return {
        "done": found.done,
        "part": found.part,
        "skipped": found.skipped,
        "missed": found.missed,
        "prescribed": found.prescribed,
        "percent": found.percent,
        "open": sum(map(states.count, ("planned", "reminded"))),
        "not_asked": sum(map(states.count, ("unsent", "paused", "held"))),
        "extra": sum(one.is_extra for one in sessions),
    }


def client_row(client: ClientFacts, monday: date, sunday: date) -> dict[str, Any]:
    """Return one client's line of the digest."""
    sessions = [one for one in client.sessions if one.on <= sunday]
    reasons = sorted(reasons_of(client, sunday), key=lambda reason: (rank(reason), reason.get("on") or ""))
    return {
        "id": client.id,
        "name": client.name,
        "state": client.state,
        "reasons": reasons,
        "week": counts(between(sessions, monday, sunday)),
        "four_weeks": counts(between(sessions, sunday - timedelta(days=27), sunday)),
        "pain": pain_row(sessions, client.usual, monday),
        "flags": [{"kind": kind, "grade": grade, "on": on.isoformat()} for kind, grade, on in client.flags],
        "alerts": [alert_row(alert) for alert in client.alerts],
        "steps": [
            {"on": step.on.isoformat(), "up": step.to_rung > step.from_rung, "dose": step.dose, "why": step.why}
            for step in client.steps
        ],
        "dose": client.dose,
        "rung": client.rung + 1,
        "hold": {"rule": client.hold[0], "on": client.hold[1].isoformat()} if client.hold else None,
        "paused_until": client.paused_until.isoformat() if client.paused_until else None,
        "recheck_on": client.recheck_on.isoformat() if client.recheck_on else None,
        "end_on": client.end_on.isoformat() if client.end_on else None,
        "questions": [{"words": words, "on": on.isoformat()} for words, on in client.questions],
        "falls": client.falls,
    }


def pain_row(sessions: Sequence[SessionFact], usual: float, monday: date) -> dict[str, Any]:
    """Return her last rating and its day, her usual, the week's ratings and the trend."""
    rated = [(one.on, one.pain) for one in sessions if one.pain is not None and not one.is_extra]
    last = rated[-1] if rated else None
    values = [pain for _, pain in rated]
    return {
        "last": last[1] if last else None,
        "last_on": last[0].isoformat() if last else None,
        "usual": int(usual) if usual == int(usual) else usual,
        "week": [pain for on, pain in rated if on >= monday],
        "trend": trend(values),
        "was": plain_median(values[-2 * TREND_RATINGS : -TREND_RATINGS]),
        "is": plain_median(values[-TREND_RATINGS:]),
    }


def trend(ratings: Sequence[int]) -> str | None:
    """Return up, down or level: the median of the last three ratings against the three before; None under six."""
    if len(ratings) < 2 * TREND_RATINGS:
        return None
    change = median(ratings[-TREND_RATINGS:]) - median(ratings[-2 * TREND_RATINGS : -TREND_RATINGS])
    if abs(change) < TREND_POINTS:
        return "level"
    return "up" if change > 0 else "down"


def plain_median(ratings: Sequence[int]) -> int | float | None:
    """Return the median without a needless ".0", None of nothing."""
    if not ratings:
        return None
    value = median(ratings)
    return int(value) if value == int(value) else value


def alert_row(alert: AlertFact) -> dict[str, Any]:
    """Return one alert as the digest shows it."""
    return {
        "number": alert.number,
        "rule": alert.rule,
        "level": alert.level,
        "state": alert.state,
        "on": alert.opened_on.isoformat(),
        "outcome": alert.outcome,
    }


def reasons_of(client: ClientFacts, sunday: date) -> list[dict[str, Any]]:
    """Return why a client asks for her therapist, in no order; empty when nothing does."""
    found: list[dict[str, Any]] = [
        {"what": f"alert {alert.level}", **alert_row(alert)} for alert in client.alerts if alert.state != "closed"
    ]
    if client.hold:
        found.append({"what": "hold", "rule": client.hold[0], "on": client.hold[1].isoformat()})
    found += [{"what": "question", "words": words, "on": on.isoformat()} for words, on in client.questions]
    if client.proposal:
        found.append({"what": "proposal", "direction": client.proposal})
    if client.program_unchecked:
        found.append({"what": "program"})
    weeks = between(client.sessions, sunday - timedelta(days=7 * UNDER_HALF_WEEKS - 1), sunday)
    rate = adherence(one.state for one in weeks if not one.is_extra).rate
    if rate is not None and rate < 0.5:
        found.append({"what": "half"})
    for what, on in (("recheck", client.recheck_on), ("end", client.end_on)):
        if on is not None and on <= sunday + LOOK_AHEAD:
            found.append({"what": what, "on": on.isoformat(), "past": on <= sunday})
    return found


def rank(reason: dict[str, Any]) -> int:
    """Return where a reason stands in the order of harm, 0 first."""
    return ORDER.index(reason["what"])
