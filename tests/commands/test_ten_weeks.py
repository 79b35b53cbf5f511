"""Played from outside by commands alone: ten weeks of ticks and texts, and the record shows every session state."""

import json
from collections.abc import Callable
from datetime import UTC, date, datetime, time, timedelta
from pathlib import Path
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from reminders.__main__ import main

NEW_YORK = ZoneInfo("America/New_York")
START = date(2027, 3, 1)  # a Monday; the clocks change on 14 March
ROWS = """name,mobile,therapist,program,days,time,usual_pain,precautions,consent_on,consent_how
Ana Ruiz,+12025550101,ben@example.org,spine-strength,mon+wed+fri,08:30,2,none known,2027-02-26,signed form
Bo Lind,+12025550102,ben@example.org,falls-balance,mon+wed+fri,08:30,3,low bone density,2027-02-26,signed form
"""
Run = Callable[..., Any]


@pytest.fixture
def run(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Run:
    """Run a command in an empty folder; return its JSON, or its text without --json."""
    monkeypatch.chdir(tmp_path)

    def command(*words: str, code: int = 0) -> Any:
        capsys.readouterr()
        assert main(list(words)) == code
        shown = capsys.readouterr().out
        return json.loads(shown) if "--json" in words else shown

    return command


def at(day: date, hour: str) -> str:
    """Return a New York wall time as an instant."""
    wall = datetime.combine(day, time.fromisoformat(hour), NEW_YORK)
    return wall.astimezone(UTC).strftime("%Y-%m-%dT%H:%M:%SZ")


def set_up(run: Run, folder: Path) -> None:
    """Make a clinic with a therapist and two clients."""
    (folder / "clients.csv").write_text(ROWS, encoding="utf-8")
    run("db", "upgrade")
    run("clinic", "set", "--name", "Alder Hill Physio", "--phone", "+1 202 555 0100")
    run("staff", "add", "--role", "therapist", "--name", "Ben Ames", "--email", "ben@example.org",
        "--mobile", "+12025550150", "--at", at(START, "07:00"))  # fmt: skip
    run("enroll", "clients.csv", "--at", at(START, "07:00"))


# What Ana texts on an exercise day (its number from 0, at noon), and what she leaves unsaid.
REPLIES = {
    0: "done 2x10 pain 2",
    1: "Y3",
    2: "did half, pain 3",
    3: "not today",
    5: "I'm away until April 2, please hold the reminders",
    20: "Y1",
    24: "fell in the kitchen and hit my hip",
}
LATE_TICK = 22  # on this exercise day the service wakes five hours late


def live_ten_weeks(run: Run) -> None:
    """Tick at the hour, text at noon, tick in the evening; on one day the service wakes late."""
    number = 0
    for offset in range(70):
        day = START + timedelta(days=offset)
        is_exercise_day = day.weekday() in (0, 2, 4) and offset > 0
        hour = "13:45" if is_exercise_day and number == LATE_TICK else "08:30"
        run("tick", "--at", at(day, hour))
        if not is_exercise_day:
            continue
        if number in REPLIES:
            run("receive", "--from", "+12025550101", "--at", at(day, "14:00"), REPLIES[number])
        run("tick", "--at", at(day, "18:05"))
        number += 1


def test_ten_weeks_by_commands_show_every_session_state(run: Run, tmp_path: Path) -> None:
    set_up(run, tmp_path)
    live_ten_weeks(run)

    sessions = run("sessions", "--client", "1", "--json")

    states = {session["state"] for session in sessions}
    assert states == {"planned", "done", "part", "skipped", "missed", "unsent", "paused", "held"} | (
        states & {"reminded"}
    )
    by_date = {session["date"]: session for session in sessions}
    assert by_date["2027-03-03"]["pain"] == 2
    assert (by_date["2027-03-03"]["sets"], by_date["2027-03-03"]["reps"]) == (2, 10)
    assert by_date["2027-03-05"]["state"] == "done"
    assert by_date["2027-03-08"]["state"] == "part"
    assert by_date["2027-03-10"]["state"] == "skipped"


def test_a_reminded_session_is_seen_between_the_reminder_and_the_reply(run: Run, tmp_path: Path) -> None:
    set_up(run, tmp_path)
    run("tick", "--at", at(START + timedelta(days=2), "08:30"))

    sessions = run("sessions", "--client", "1", "--json")

    assert [session["state"] for session in sessions] == ["reminded", "planned"]


def test_every_command_has_help(run: Run) -> None:
    from reminders.__main__ import COMMANDS

    for name in COMMANDS:
        with pytest.raises(SystemExit) as ended:
            main([name, "--help"])
        assert ended.value.code == 0
