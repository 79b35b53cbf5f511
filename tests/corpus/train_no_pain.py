"""Trains the second opinion on "no pain" on the labelled replies to build on: `python -m tests.corpus.train_no_pain`.

A sample is a reply with words that could say so; it does where its label is a pain of nought.
"""

import json
import math
import random
from collections import Counter
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from reminders.core.reading import no_pain
from reminders.core.reading.reader import evidence_of
from tests.corpus.composed import composed
from tests.corpus.measure import HERE, PARSED, rows_of
from tests.corpus.train import BUILD

TARGET = Path(no_pain.__file__).with_name("no_pain.json")
EPOCHS, STEP, DECAY = 12, 0.25, 0.01
SMALLEST = 4  # hundredths: a feature whose weight is below this is left out
Sample = tuple[list[str], bool]


def samples_of(row: dict[str, Any]) -> Iterator[Sample]:
    """Yield the sample of a row, if it is one."""
    evidence, _, _ = evidence_of(row["text"], row["lang"], PARSED[row["session"]], row["asked"])
    if no_pain.spans_of(evidence):
        yield no_pain.features_of(evidence), row["expect"]["pain"] == 0


def train(samples: list[Sample]) -> dict[str, int]:
    """Return feature → weight in hundredths, by adaptive gradient steps in a fixed order."""
    seen = Counter(name for features, _ in samples for name in features)
    order = [([name for name in features if seen[name] > 1], is_it) for features, is_it in samples]
    weights: dict[str, float] = {}
    squares: dict[str, float] = {}
    chance = random.Random(7)
    for _ in range(EPOCHS):
        chance.shuffle(order)
        for features, is_it in order:
            total = sum(weights.get(name, 0.0) for name in features)
            error = 1 / (1 + math.exp(-max(-30.0, min(30.0, total)))) - is_it
            if abs(error) < 0.002:
                continue
            for name in features:
                square = squares[name] = squares.get(name, 1.0) + error * error
                weights[name] = weights.get(name, 0.0) - STEP * error / math.sqrt(square)
        for name in weights:
            weights[name] *= 1 - DECAY
    rounded = {name: round(weights[name] * no_pain.SCALE) for name in sorted(weights)}
    return {name: weight for name, weight in rounded.items() if abs(weight) >= SMALLEST}


def main() -> None:
    """Train and write the weights."""
    rows = [row for name in BUILD for row in rows_of(HERE / f"replies-{name}.jsonl")]
    samples = [sample for row in (*rows, *composed(rows)) for sample in samples_of(row)]
    weights = train(samples)
    TARGET.write_text(json.dumps(weights, ensure_ascii=False, separators=(",", ":")) + "\n", encoding="utf-8")
    print(len(samples), "samples", len(weights), "weights", TARGET.stat().st_size, "bytes")


if __name__ == "__main__":
    main()
