"""Draws pain and sessions over time as plain SVG, readable without colour: shapes and figures carry the meaning.

Values in, markup out; which sessions are shown is decided by the page. Every text is escaped here.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from html import escape

WIDTH, HEIGHT = 760.0, 330.0
LEFT, RIGHT, TOP, BOTTOM = 34.0, 88.0, 40.0, 84.0
PAIN_TOP, PAIN_BOTTOM = TOP, HEIGHT - BOTTOM
ROW = PAIN_BOTTOM + 26  # where the sessions' signs stand
MOST_FIGURES = 45  # beyond this many ratings their figures would run into each other

LETTERS = {"held": "H", "paused": "P", "unsent": "u", "reminded": "·", "planned": "·"}
STATE_WORDS = {
    "done": "done",
    "part": "part",
    "skipped": "not done",
    "missed": "missed",
    "held": "held",
    "paused": "paused",
    "unsent": "not sent",
    "reminded": "waiting",
    "planned": "waiting",
}


@dataclass(frozen=True)
class Mark:
    """One session: its date, state, pain 0-10 or None, and whether it was an easy day."""

    on: date
    state: str
    pain: int | None = None
    is_easy: bool = False


@dataclass(frozen=True)
class Drawn:
    """What the chart shows besides sessions: dates of dose steps with their number, of alerts, and two levels."""

    sessions: Sequence[Mark]
    steps: Sequence[tuple[date, int]] = ()
    alerts: Sequence[tuple[date, int]] = ()
    usual: float | None = None
    stop: float | None = None


@dataclass(frozen=True)
class Scale:
    """Where a date and a rating lie."""

    first: date
    days: int

    def x(self, on: date) -> float:
        """Return a date's place from the left."""
        return LEFT + 8 + (WIDTH - LEFT - RIGHT - 16) * (on - self.first).days / self.days

    def y(self, pain: float) -> float:
        """Return a rating's place from the top; 10 is the highest."""
        return PAIN_BOTTOM - (PAIN_BOTTOM - PAIN_TOP) * pain / 10


def chart(drawn: Drawn, title: str) -> str:
    """Return the chart, empty when there is no session to show."""
    if not drawn.sessions:
        return ""
    dates = [mark.on for mark in drawn.sessions]
    scale = Scale(min(dates), max((max(dates) - min(dates)).days, 6))
    parts = [axis(scale), levels(drawn, scale), weeks(scale), steps(drawn, scale)]
    parts += [line(drawn, scale), points(drawn, scale), states(drawn, scale), alerts(drawn, scale)]
    label = escape(summary(drawn, title))
    head = f'<svg class="chart" viewBox="0 0 {WIDTH:g} {HEIGHT:g}" role="img" aria-label="{label}">'
    return f"{head}{''.join(parts)}</svg>"


def summary(drawn: Drawn, title: str) -> str:
    """Return what the chart shows, in words for those who do not see it; the table below has every figure."""
    counted = [mark for mark in drawn.sessions if mark.state in ("done", "part", "skipped", "missed")]
    done = sum(mark.state == "done" for mark in counted)
    rated = [mark.pain for mark in drawn.sessions if mark.pain is not None]
    pain = f", pain from {min(rated)} to {max(rated)}, last {rated[-1]}" if rated else ", no pain ratings"
    return f"{title}: {done} of {len(counted)} sessions done{pain}. Every figure stands in the table below."


def text(x: float, y: float, words: str, anchor: str = "middle") -> str:
    """Return words at a place."""
    return f'<text x="{x:.1f}" y="{y:.1f}" text-anchor="{anchor}" aria-hidden="true">{escape(words)}</text>'


def axis(scale: Scale) -> str:
    """Return the pain scale at the left."""
    made = [f'<path class="ink" d="M{LEFT} {PAIN_TOP}V{PAIN_BOTTOM}H{WIDTH - RIGHT}"/>']
    for pain in range(0, 11, 2):
        y = scale.y(pain)
        made.append(text(LEFT - 8, y + 4, str(pain), "end"))
        if pain:
            made.append(f'<path class="faint" d="M{LEFT} {y:.1f}H{WIDTH - RIGHT}"/>')
    made.append(text(4, 16, "Pain 0-10", "start"))
    return "".join(made)


def levels(drawn: Drawn, scale: Scale) -> str:
    """Return the usual as a dotted line and the stop level as a band, each with its name."""
    made = ""
    if drawn.stop is not None:
        y = scale.y(drawn.stop)
        made += f'<path class="band" d="M{LEFT} {PAIN_TOP}H{WIDTH - RIGHT}V{y:.1f}H{LEFT}Z"/>'
        made += text(WIDTH - RIGHT + 5, y + 4, f"stop from {drawn.stop:g}", "start")
    if drawn.usual is not None:
        y = scale.y(drawn.usual)
        made += f'<path class="usual" d="M{LEFT} {y:.1f}H{WIDTH - RIGHT}"/>'
        made += text(WIDTH - RIGHT + 5, y + 4, f"usual {drawn.usual:g}", "start")
    return made


def weeks(scale: Scale) -> str:
    """Return a date at each Monday, at every second or fourth one where there are many."""
    day = scale.first + timedelta(days=(7 - scale.first.weekday()) % 7)
    every = 7 * (1 if scale.days <= 70 else 2 if scale.days <= 140 else 4)
    made = ""
    while (day - scale.first).days <= scale.days:
        made += text(scale.x(day), HEIGHT - 8, f"{day:%b} {day.day}")
        made += f'<path class="faint" d="M{scale.x(day):.1f} {PAIN_BOTTOM}v6"/>'
        day += timedelta(days=every)
    return made


def steps(drawn: Drawn, scale: Scale) -> str:
    """Return a dashed line with its number at each dose step."""
    made = ""
    for on, number in drawn.steps:
        if 0 <= (on - scale.first).days <= scale.days:
            x = scale.x(on)
            made += f'<path class="step" d="M{x:.1f} {PAIN_TOP - 4}V{PAIN_BOTTOM + 40}"/>'
            made += text(x + 3, PAIN_BOTTOM + 52, f"step {number}", "start")
    return made


def line(drawn: Drawn, scale: Scale) -> str:
    """Return the line from rating to rating."""
    rated = [(scale.x(mark.on), scale.y(mark.pain)) for mark in drawn.sessions if mark.pain is not None]
    joined = "L".join(f"{x:.1f} {y:.1f}" for x, y in rated)
    return f'<path class="ink" d="M{joined}"/>' if len(rated) > 1 else ""


def points(drawn: Drawn, scale: Scale) -> str:
    """Return a dot with its figure for each rating; hollow on an easy day."""
    rated = [mark for mark in drawn.sessions if mark.pain is not None]
    made = ""
    for mark in rated:
        x, y = scale.x(mark.on), scale.y(mark.pain or 0)
        kind = "hollow" if mark.is_easy else "dot"
        made += f'<circle class="{kind}" cx="{x:.1f}" cy="{y:.1f}" r="4.5"/>'
        if len(rated) <= MOST_FIGURES:
            made += text(x, y - 9, str(mark.pain))
    return made


def states(drawn: Drawn, scale: Scale) -> str:
    """Return each session's sign: filled square done, half part, empty not done, cross missed, else a letter."""
    made = text(4, ROW + 4, "Did", "start")
    for mark in drawn.sessions:
        made += sign(mark.state, scale.x(mark.on), ROW)
    return made


def sign(state: str, x: float, y: float) -> str:
    """Return the sign of one state at a place."""
    box = f"M{x - 5:.1f} {y - 5:.1f}h10v10h-10Z"
    if state == "done":
        return f'<path class="dot" d="{box}"/>'
    if state == "part":
        return f'<path class="hollow" d="{box}"/><path class="dot" d="M{x - 5:.1f} {y:.1f}h10v5h-10Z"/>'
    if state == "skipped":
        return f'<path class="hollow" d="{box}"/>'
    if state == "missed":
        return f'<path class="ink thick" d="M{x - 5:.1f} {y - 5:.1f}l10 10m0 -10l-10 10"/>'
    return text(x, y + 4, LETTERS.get(state, "?"))


def alerts(drawn: Drawn, scale: Scale) -> str:
    """Return a triangle with the alert's number at the top of its day."""
    made = ""
    for on, number in drawn.alerts:
        if (on - scale.first).days > scale.days or on < scale.first:
            continue
        x = scale.x(on)
        made += f'<path class="sign" d="M{x:.1f} {PAIN_TOP - 18}l6 11h-12Z"/>' + text(x, PAIN_TOP - 22, str(number))
    return made
