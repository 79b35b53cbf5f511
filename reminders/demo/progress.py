"""Says how far a story has come: a bar that grows on a terminal, a line a week otherwise."""

from dataclasses import dataclass
from datetime import datetime
from typing import TextIO

WIDTH = 32


@dataclass
class Progress:
    """How far the weeks have come, told to a stream."""

    stream: TextIO
    begins_at: datetime
    ends_at: datetime
    weeks: int
    told: int = 0

    def __call__(self, now: datetime) -> None:
        """Tell where the story is, when that shows."""
        share = min(1.0, (now - self.begins_at) / (self.ends_at - self.begins_at))
        if self.stream.isatty():
            self.bar(int(share * WIDTH), now)
        elif (week := int(share * self.weeks)) > self.told:
            self.told = week
            self.stream.write(f"Week {week} of {self.weeks} lived through.\n")
            self.stream.flush()

    def bar(self, filled: int, now: datetime) -> None:
        """Draw the bar again."""
        self.told = filled
        day = f"{now:%a %b} {now.day}"
        self.stream.write(f"\r[{'=' * filled}{' ' * (WIDTH - filled)}] {day:<10}")
        self.stream.flush()

    def end(self) -> None:
        """Leave the bar's line."""
        if self.stream.isatty():
            self.stream.write("\n")
        self.stream.flush()
