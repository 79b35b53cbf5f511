"""The rules of silence, at their edges."""

from datetime import date, timedelta

import pytest

from reminders.core.levels import DEFAULTS
from reminders.core.rules.history import History, SessionFact
from reminders.core.rules.missed import Silence, missed_running, quiet, silence_step

MONDAY = date(2027, 3, 1)
TODAY = MONDAY + timedelta(days=14)


def record(*states: str) -> History:
    return History(tuple(SessionFact(at, MONDAY + timedelta(days=2 * at), state) for at, state in enumerate(states)))


def silence(heard: date | None = None, since: date = date.min, alerted: date | None = None) -> Silence:
    return Silence(TODAY, since, heard, alerted)


MISSED = {
    "three running": (record("missed", "missed", "missed"), silence(), True),
    "two running": (record("done", "missed", "missed"), silence(), False),
    "a done one between": (record("missed", "missed", "done", "missed"), silence(), False),
    "a skipped one is a word": (record("missed", "missed", "skipped", "missed"), silence(), False),
    "paused and held days lie between and do not break it": (
        record("missed", "paused", "missed", "held", "missed"),
        silence(),
        True,
    ),
    "a word during them": (record("missed", "missed", "missed"), silence(heard=MONDAY + timedelta(days=2)), False),
    "a word on the first day": (record("missed", "missed", "missed"), silence(heard=MONDAY), False),
    "a word before them": (record("missed", "missed", "missed"), silence(heard=MONDAY - timedelta(days=1)), True),
    "alerted 27 days ago": (
        record("missed", "missed", "missed"),
        silence(alerted=TODAY - timedelta(days=27)),
        False,
    ),
    "alerted 28 days ago": (record("missed", "missed", "missed"), silence(alerted=TODAY - timedelta(days=28)), True),
    "before she was back": (record("missed", "missed", "missed"), silence(since=MONDAY + timedelta(days=1)), False),
}


@pytest.mark.parametrize(("history", "facts", "fires"), MISSED.values(), ids=MISSED.keys())
def test_missed_running(history: History, facts: Silence, fires: bool) -> None:
    found = missed_running(history, facts)
    assert (found is not None) is fires
    if found:
        assert (found.rule, found.level, found.holds) == ("missed", "routine", False)


STEPS = {
    "13 days": (13, None),
    "14 days": (14, "weekly"),
    "27 days": (27, "weekly"),
    "28 days": (28, "pause"),
}


@pytest.mark.parametrize(("days", "expected"), STEPS.values(), ids=STEPS.keys())
def test_silence_steps(days: int, expected: str | None) -> None:
    facts = silence(heard=TODAY - timedelta(days=days))
    assert silence_step(facts, DEFAULTS) == expected
    assert (quiet(facts, DEFAULTS) is not None) is (expected == "pause")


def test_a_pause_starts_the_silence_anew() -> None:
    facts = silence(heard=TODAY - timedelta(days=60), since=TODAY - timedelta(days=3))
    assert facts.silent_days == 3
