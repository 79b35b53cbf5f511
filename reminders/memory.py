"""How often Python looks for forgotten objects. What is kept in memory, and for how long, is decided elsewhere."""

import gc

# Objects made before the next look; Python's own 700 to 2,000 cost a seventh of the time when a crowd is due.
YOUNG, MIDDLE, OLD = 20_000, 20, 50


def start_collecting_rarely() -> None:
    """Let a process that only begins, with its thousands of words and rules to make, look for garbage less often."""
    gc.set_threshold(YOUNG, MIDDLE, OLD)


def collect_rarely() -> None:
    """Let a process that makes thousands of short-lived rows look for garbage less often, and never at what it began
    with: modules and templates stay for good."""
    gc.collect()
    gc.freeze()
    start_collecting_rarely()
