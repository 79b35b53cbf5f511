import io
from datetime import timedelta

from reminders.demo.progress import Progress
from tests.conftest import NOW


class Terminal(io.StringIO):
    def isatty(self) -> bool:
        return True


def test_a_terminal_shows_a_bar_that_grows() -> None:
    screen = Terminal()
    progress = Progress(screen, NOW, NOW + timedelta(weeks=2), 2)

    progress(NOW + timedelta(weeks=1))
    progress.end()

    assert "[" + "=" * 16 + " " * 16 + "]" in screen.getvalue()
    assert screen.getvalue().endswith("\n")


def test_elsewhere_each_week_is_one_line() -> None:
    lines = io.StringIO()
    progress = Progress(lines, NOW, NOW + timedelta(weeks=2), 2)

    for hours in range(0, 24 * 14 + 1, 6):
        progress(NOW + timedelta(hours=hours))
    progress.end()

    assert lines.getvalue() == "Week 1 of 2 lived through.\nWeek 2 of 2 lived through.\n"
