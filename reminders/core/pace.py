"""How fast texts may leave: parts a second, shared by all processes through one number that the database keeps.
Pure."""

from dataclasses import dataclass

MOST_PARTS = 24  # no text has more: 1,600 characters (Twilio, from memory) at 67 a part (3GPP TS 23.040, from memory)
MOST_AHEAD_SECONDS = 10.0  # how far ahead of it a claim may give out parts, with room for clocks that differ


@dataclass
class Pace:
    """The moment from which the sender is free, and the moment it is; both in the machine's seconds.

    `parts_per_second` 0: no limit. A moment further ahead than texts can take was written by a clock that ran ahead,
    and has been set right since: it holds nothing up.
    """

    parts_per_second: float
    free_at: float
    now: float

    def __post_init__(self) -> None:
        """Take a moment that cannot be for now."""
        if self.parts_per_second > 0 and self.free_at - self.now > self.longest():
            self.free_at = self.now

    def longest(self) -> float:
        """Return how many seconds ahead the sender can be taken at most."""
        return MOST_AHEAD_SECONDS + MOST_PARTS / self.parts_per_second

    def has_room(self, ahead: float) -> bool:
        """Return whether another part may be given out within so many seconds."""
        return self.parts_per_second <= 0 or self.free_at - self.now < ahead

    def seconds_until_room(self, ahead: float) -> float:
        """Return how long until another part may be given out."""
        return 0.0 if self.has_room(ahead) else self.free_at - self.now - ahead + 0.01

    def take(self, parts: int) -> float:
        """Give out a text of some parts; return in how many seconds it may go."""
        if self.parts_per_second <= 0:
            return 0.0
        start = max(self.free_at, self.now)
        self.free_at = start + parts / self.parts_per_second
        return start - self.now
