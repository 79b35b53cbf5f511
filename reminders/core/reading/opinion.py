"""A trained second opinion on one question: how far what the rules found is meant so.

Its weights stand in a file of their own, in hundredths, made by `python -m tests.corpus.train_opinions`.
"""

import json
import math
from collections.abc import Iterable, Mapping
from importlib import resources

SCALE = 100  # weights are kept as whole hundredths
# The replies to train on answer these questions or none; any other is as if none were open, save one for a rating.
_LEARNED = {"pain": "pain", "settling": "pain", "amount": "amount"}
_FARTHEST = 30.0  # beyond it the belief is nought or one
_INNER = ("ex.", "day.")  # labels that are of use only to the rules themselves


class Opinion:
    """The weights of one question, read at first need."""

    def __init__(self, name: str) -> None:
        """Take the name of the weights' file, without its ending."""
        self.file = f"{name}.json"
        self._weights: Mapping[str, int] | None = None

    def belief(self, features: Iterable[str]) -> float:
        """Return how far what the features describe is believed in, 0 to 1."""
        if self._weights is None:
            text = (resources.files("reminders.core.reading") / self.file).read_text(encoding="utf-8")
            self._weights = json.loads(text)
        return belief_by(self._weights, features)


def belief_by(weights: Mapping[str, int], features: Iterable[str]) -> float:
    """Return how far what the features describe is believed in by these weights, 0 to 1."""
    return belief_of(sum(map(weights.__getitem__, weights.keys() & features)) / SCALE)


def belief_of(said: float) -> float:
    """Return the belief, 0 to 1, that a sum of weights stands for: none of them leaves it at a half."""
    return 1 / (1 + math.exp(-max(-_FARTHEST, min(_FARTHEST, said))))


def question_of(asked: str | None) -> str:
    """Return the feature of the question that was open."""
    return f"asked {_LEARNED.get(asked or '')}"


def is_of_use(label: str) -> bool:
    """Tell whether that a label holds says something to an opinion."""
    return not label.startswith(_INNER)
