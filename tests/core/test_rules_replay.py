"""Running rules over a record that is already lived."""

from datetime import date, timedelta

from reminders.core.levels import FIXED, Levels
from reminders.core.rules.history import History, Morning, SessionFact
from reminders.core.rules.replay import replay
from reminders.core.usual import UsualFacts

MONDAY = date(2027, 3, 1)


def record(*pains: int | None, levels: Levels | None = None) -> History:
    sessions = tuple(
        SessionFact(at, MONDAY + timedelta(days=2 * at), "done" if pain is not None else "missed", pain)
        for at, pain in enumerate(pains)
    )
    return History(sessions, UsualFacts(enrolled=4), levels=levels or Levels())


def raised(history: History, **more: object) -> list[tuple[int, str]]:
    last = MONDAY + timedelta(days=60)
    return [((one.on - MONDAY).days, one.finding.rule) for one in replay(history, MONDAY, last, **more)]  # type: ignore[arg-type]


def test_an_open_alert_takes_up_what_follows_within_its_days() -> None:
    assert raised(record(7, 7, 4, 4, 4, 4, 7)) == [(0, "pain_up"), (12, "pain_up")]


def test_other_levels_raise_other_alerts_over_the_same_record() -> None:
    assert raised(record(4, 5, 4, 5)) == []
    assert raised(record(4, 5, 4, 5, levels=FIXED)) == [(2, "pain_up")]


def test_nothing_is_judged_with_what_came_later() -> None:
    later = record(4, 4, 4, 9)
    assert raised(later) == [(6, "severe_pain")]


def test_a_morning_raises_on_its_own_day() -> None:
    history = record(6)
    session = SessionFact(0, MONDAY, "done", 4, mornings=(Morning(MONDAY + timedelta(days=1), 6),))
    quiet = History((session,), UsualFacts(enrolled=2), levels=history.levels)
    assert raised(quiet) == [(1, "pain_up")]


def test_missed_sessions_raise_once_in_four_weeks_and_not_after_a_word() -> None:
    silent = record(*[None] * 10)
    assert raised(silent) == [(4, "missed")]
    assert raised(silent, heard=[MONDAY + timedelta(days=1)]) == [(6, "missed")]
