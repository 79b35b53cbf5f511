"""Sixty ordinary clients over half a year: how many alerts the rules raise, and how many flares they catch.

Run `python -m tests.simulations.half_year` to see the figures for the defaults and for fixed levels. The model is
ours and simple; its numbers are common practice, no source, except where one stands beside them.
"""

import random
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from datetime import date, timedelta

from reminders.core.levels import DEFAULTS, FIXED, Levels
from reminders.core.rules import findings_for
from reminders.core.rules.history import Finding, History, Morning, SessionFact
from reminders.core.rules.missed import Silence, missed_running
from reminders.core.rules.pain import asks_for_an_easy_day, asks_this_morning
from reminders.core.rules.progress import StepFacts, step_up
from reminders.core.usual import UsualFacts

CLIENTS, WEEKS, START = 60, 26, date(2027, 1, 4)
DONE, PART, SKIPPED = 0.65, 0.05, 0.10  # the rest is missed without a word
# How far one rating lies from another on ordinary days (standard deviation, points).
SPREAD = 1.0
FLARE_DAYS, FLARE_RISE, FLARE_LEAST_GAP = 10, 3, 35
ANSWERS_MORNING = 0.7
HOLD_DAYS, ALERT_DAYS, STEP_DAYS = 3, 2, 3
OTHER_WORDS = {"fall_or_injury": 0.0015, "faint_or_dizzy": 0.001, "fever": 0.001, "surgery_or_hospital": 0.001}


@dataclass
class Person:
    """One simulated client: her habits, her flares, and what has happened to her so far."""

    number: int
    usual: int
    flares: list[date]
    chance: random.Random
    history: History
    held_until: date = date.min
    easy_next: bool = False
    open_until: dict[str, date] = field(default_factory=dict)
    heard_on: date | None = None
    missed_on: date | None = None
    rung: int = 0
    rung_on: date = START
    step_on: date | None = None

    def in_flare(self, day: date) -> bool:
        return any(start <= day < start + timedelta(days=FLARE_DAYS) for start in self.flares)

    def rating(self, day: date, ease: float = 0.0) -> int:
        middle = self.usual + (FLARE_RISE if self.in_flare(day) else 0) - ease
        return max(0, min(10, round(self.chance.gauss(middle, SPREAD))))


@dataclass(frozen=True)
class Alarm:
    """An alert of the simulated half year."""

    on: date
    person: int
    rule: str
    in_flare: bool


@dataclass
class Outcome:
    """What came out: alerts, flares and the clients whose dose went up."""

    alarms: list[Alarm]
    flares: int
    caught: int
    progressed: int
    sessions: Counter[str]

    @property
    def per_week(self) -> float:
        return len(self.alarms) / WEEKS

    def by_rule(self) -> dict[str, float]:
        found = Counter(alarm.rule for alarm in self.alarms)
        return {rule: count / WEEKS for rule, count in found.most_common()}


def people(levels: Levels, seed: int) -> Iterator[Person]:
    for number in range(CLIENTS):
        chance = random.Random(f"{seed}-{number}")
        usual = 2 + number % 4
        starts = sorted(chance.sample(range(21, WEEKS * 7 - FLARE_DAYS), 3))
        apart = [at for place, at in enumerate(starts) if place == 0 or at - starts[place - 1] >= FLARE_LEAST_GAP]
        flares = [START + timedelta(days=at) for at in apart[:2]]
        history = History(usual_facts=UsualFacts(enrolled=usual), levels=levels)
        yield Person(number, usual, flares, chance, history)


def run(levels: Levels = DEFAULTS, seed: int = 7) -> Outcome:
    """Live through the half year under these levels; the same seed gives the same half year."""
    alarms: list[Alarm] = []
    crowd = list(people(levels, seed))
    states: Counter[str] = Counter()
    for person in crowd:
        for offset in range(WEEKS * 7):
            day = START + timedelta(days=offset)
            alarms += mornings(person, day)
            if day.weekday() in (0, 2, 4):
                alarms += exercise_day(person, day)
            step(person, day)
        states.update(one.state for one in person.history.sessions)
    flares = [(person, start) for person in crowd for start in person.flares]
    caught = sum(is_caught(alarms, person, start) for person, start in flares)
    progressed = sum(person.rung > 0 for person in crowd)
    return Outcome(alarms, len(flares), caught, progressed, states)


def is_caught(alarms: list[Alarm], person: Person, start: date) -> bool:
    end = start + timedelta(days=FLARE_DAYS)
    return any(
        alarm.person == person.number and alarm.rule in ("pain_up", "severe_pain") and start <= alarm.on < end
        for alarm in alarms
    )


def exercise_day(person: Person, day: date) -> list[Alarm]:
    if day < person.held_until:
        return keep(person, SessionFact(len(person.history.sessions), day, "held"))
    throw = person.chance.random()
    state = "done" if throw < DONE else "part" if throw < DONE + PART else "missed"
    if DONE + PART <= throw < DONE + PART + SKIPPED:
        state = "skipped"
    pain = person.rating(day) if state in ("done", "part") else None
    fact = SessionFact(len(person.history.sessions), day, state, pain, rung_on=person.rung_on, is_easy=person.easy_next)
    keep(person, fact)
    if state != "missed":
        person.heard_on, person.easy_next = day, False
    place = len(person.history.sessions) - 1
    findings = findings_for(person.history, place) if pain is not None else []
    person.easy_next |= asks_for_an_easy_day(person.history, place)
    findings += [Finding(rule, "today", "told") for rule, odds in OTHER_WORDS.items() if person.chance.random() < odds]
    silence = Silence(day, START, person.heard_on, person.missed_on)
    if missed := missed_running(person.history, silence):
        person.missed_on = day
        findings.append(missed)
    return raised(person, day, findings)


def keep(person: Person, fact: SessionFact) -> list[Alarm]:
    person.history = replace(person.history, sessions=(*person.history.sessions, fact))
    return []


def mornings(person: Person, day: date) -> list[Alarm]:
    sessions = person.history.sessions
    if not sessions or day < person.held_until or not asks_this_morning(person.history, len(sessions) - 1, day):
        return []
    if person.chance.random() >= ANSWERS_MORNING:
        return []
    last = sessions[-1]
    ease = 0.5 + 0.5 * (day - last.on).days
    answer = Morning(day, person.rating(day, ease))
    person.history = person.history.with_session(replace(last, mornings=(*last.mornings, answer)))
    return raised(person, day, findings_for(person.history, len(sessions) - 1))


def raised(person: Person, day: date, findings: list[Finding]) -> list[Alarm]:
    found = []
    for finding in findings:
        if finding.holds:
            person.held_until = max(person.held_until, day + timedelta(days=HOLD_DAYS))
            person.easy_next = True
        if day > person.open_until.get(finding.rule, date.min):
            found.append(Alarm(day, person.number, finding.rule, person.in_flare(day)))
            person.open_until[finding.rule] = day + timedelta(days=ALERT_DAYS)
    return found


def step(person: Person, day: date) -> None:
    """Approve a step some days after the record first spoke for it."""
    is_open = any(until >= day for until in person.open_until.values()) or day < person.held_until
    facts = StepFacts(day, person.rung, person.rung_on, has_next=person.rung < 2, anything_open=is_open)
    if person.step_on is None and (day - person.rung_on).days >= 14 and step_up(person.history, facts):
        person.step_on = day + timedelta(days=STEP_DAYS)
    if person.step_on == day:
        person.rung, person.rung_on, person.step_on = person.rung + 1, day, None


def told(name: str, outcome: Outcome) -> str:
    states = outcome.sessions
    counted = sum(states[state] for state in ("done", "part", "skipped", "missed"))
    outside = sum(not alarm.in_flare for alarm in outcome.alarms if alarm.rule in ("pain_up", "severe_pain"))
    pains = sum(alarm.rule in ("pain_up", "severe_pain") for alarm in outcome.alarms)
    lines = [
        f"{name}: {outcome.per_week:.1f} alerts a week for {CLIENTS} clients over {WEEKS} weeks",
        "  by rule: " + ", ".join(f"{rule} {rate:.1f}" for rule, rate in outcome.by_rule().items()),
        f"  flares caught: {outcome.caught} of {outcome.flares} ({outcome.caught / outcome.flares:.0%})",
        f"  pain alerts outside any flare: {outside} of {pains} ({outside / max(1, pains):.0%})",
        f"  clients whose dose went up: {outcome.progressed} of {CLIENTS} ({outcome.progressed / CLIENTS:.0%})",
        f"  adherence: {states['done'] / counted:.0%}",
    ]
    return "\n".join(lines)


if __name__ == "__main__":
    print(told("Defaults (her usual counts)", run(DEFAULTS)))
    print(told("Fixed levels (4 and 6 for everyone)", run(FIXED)))
