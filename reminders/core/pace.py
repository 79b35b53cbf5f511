"""How fast texts may leave: parts a second, shared by all processes through one number that the database keeps.
Pure."""

from dataclasses import dataclass


@dataclass
class Pace:
    """The moment from which the sender is free, and the moment it is; both in the machine's seconds.

    `parts_per_second` 0: no limit.
    """

    parts_per_second: float
    free_at: float
    now: float

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
