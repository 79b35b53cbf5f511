"""Trains the second opinion on "no pain" on the labelled replies to build on: `python -m tests.corpus.train_no_pain`.

A sample is a reply with words that could say so; it does where its label is a pain of nought.
"""

import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from reminders.core.reading import no_pain
from reminders.core.reading.reader import evidence_of
from tests.corpus.composed import composed
from tests.corpus.measure import HERE, PARSED, rows_of
from tests.corpus.train import BUILD, SMALLEST, Sample, train

TARGET = Path(no_pain.__file__).with_name("no_pain.json")
SAYS_SO, DOES_NOT = "says so", "does not"


def samples_of(row: dict[str, Any]) -> Iterator[Sample]:
    """Yield the sample of a row, if it is one."""
    evidence, _, _ = evidence_of(row["text"], row["lang"], PARSED[row["session"]], row["asked"])
    if no_pain.spans_of(evidence):
        features = dict.fromkeys(no_pain.features_of(evidence), 1.0)
        yield features, SAYS_SO if row["expect"]["pain"] == 0 else DOES_NOT


def main() -> None:
    """Train and write the weights."""
    rows = [row for name in BUILD for row in rows_of(HERE / f"replies-{name}.jsonl")]
    samples = [sample for row in (*rows, *composed(rows)) for sample in samples_of(row)]
    model = train(samples)
    yes, no = model["classes"].index(SAYS_SO), model["classes"].index(DOES_NOT)
    weights = {name: round((row[yes] - row[no]) * no_pain.SCALE) for name, row in sorted(model["weights"].items())}
    kept = {name: weight for name, weight in weights.items() if abs(weight) >= SMALLEST}
    TARGET.write_text(json.dumps(kept, ensure_ascii=False, separators=(",", ":")) + "\n", encoding="utf-8")
    print(len(samples), "samples", len(kept), "weights", TARGET.stat().st_size, "bytes")


if __name__ == "__main__":
    main()
