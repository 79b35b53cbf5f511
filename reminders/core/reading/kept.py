"""A table of results that are worked out once: looking one up again costs no call."""

from collections.abc import Callable, Hashable
from typing import Generic, TypeVar

Key = TypeVar("Key", bound=Hashable)
Result = TypeVar("Result")


class Kept(dict[Key, Result], Generic[Key, Result]):
    """What a function returned, by what it was asked; a flood of new keys starts the table afresh."""

    def __init__(self, work: Callable[[Key], Result], most: int) -> None:
        """Take the function, and how many results are kept at most."""
        super().__init__()
        self._work, self._most = work, most

    def __missing__(self, key: Key) -> Result:
        """Work out a result at its first asking."""
        if len(self) >= self._most:
            self.clear()
        result = self[key] = self._work(key)
        return result
