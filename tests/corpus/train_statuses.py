"""Trains the second opinion on what became of each exercise named: `python -m tests.corpus.train_statuses`.

A sample is an exercise that a labelled reply names; its label is what the reply's line says of it, or that there is no
such line. Lines that the rules make of a reply which is no report are no samples: nothing comes of them. `--folds`
trains on three quarters of the files and prints for the last one how many of the rules' mistakes would be put right,
and how many right ones would be made wrong, at several bounds; it writes nothing.
"""

import argparse
import json
from collections import Counter
from collections.abc import Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path
from typing import Any

from reminders.core.reading import statuses
from reminders.core.reading.judge import Judge
from reminders.core.reading.named import UNTOLD
from reminders.core.reading.reader import evidence_of
from reminders.core.reading.weights import BETWEEN
from tests.corpus.measure import HERE, PARSED, rows_of
from tests.corpus.train import BUILD, Sample, rounded, side_by_side, train

STRENGTH = 0.5  # how far the rows are trusted: on files left out 0.1 to 1 do alike
FEWEST = 3  # samples in which a feature stands, or it is left out
FOLDS = 4
BOUNDS = (0.5, 0.6, 0.7, 0.8, 0.9)


def samples_of(row: dict[str, Any]) -> Iterator[tuple[Sample, str]]:
    """Yield the samples of a row, each with what the rules make of the exercise."""
    evidence, _, session = evidence_of(row["text"], row["lang"], PARSED[row["session"]], row["asked"])
    if evidence.named is None:
        return
    told = {line["name"]: line["completed"] for line in row["expect"]["by_exercise"]}
    for exercise in evidence.named.exercises:
        by_rules = evidence.named.status_by_rules(exercise)
        if by_rules == UNTOLD or row["expect"]["intent"] == "report":
            features = dict.fromkeys(evidence.named.features_of(exercise, row["asked"]), 1.0)
            yield (features, told.get(session[exercise].name, UNTOLD)), by_rules


def samples_in(names: Sequence[str]) -> list[tuple[Sample, str]]:
    """Return the samples of files."""
    return [sample for name in names for row in rows_of(HERE / f"replies-{name}.jsonl") for sample in samples_of(row)]


def weights_for(samples: Sequence[tuple[Sample, str]]) -> dict[str, Any]:
    """Return the questions and weights as the judge keeps them."""
    seen = Counter(name for (features, _), _ in samples for name in features)
    often = [
        ({name: one for name, one in features.items() if seen[name] >= FEWEST}, label)
        for (features, label), _ in samples
    ]
    return side_by_side({statuses.STATUS: rounded(train(often, STRENGTH))})


def left_out(fold: int) -> list[tuple[str, str, str, float]]:
    """Return label, the rules' word, the judge's and how sure, of a fold's files, which the weights do not know."""
    judge = Judge(**weights_for(samples_in([name for at, name in enumerate(BUILD) if at % FOLDS != fold])))
    found = []
    for (features, label), by_rules in samples_in([name for at, name in enumerate(BUILD) if at % FOLDS == fold]):
        verdict = judge.weigh(features)[statuses.STATUS]
        found.append((label, by_rules, verdict.name, verdict.sureness))
    return found


def print_left_out(found: Sequence[tuple[str, str, str, float]]) -> None:
    """Print how many are put right and made wrong at several bounds."""
    right = sum(label == by_rules for label, by_rules, _, _ in found)
    print(f"{right} right by the rules, {len(found) - right} wrong")
    for bound in BOUNDS:
        changed = [one for one in found if one[3] >= bound and one[2] != one[1]]
        mended = sum(label == named for label, _, named, _ in changed)
        broken = sum(label == by_rules for label, by_rules, _, _ in changed)
        print(f"  from {bound}: {mended} put right, {broken} made wrong")


def main() -> None:
    """Train and write the weights, or measure on files left out."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--folds", action="store_true", help="measure on files left out, and write nothing")
    args = parser.parse_args()
    if args.folds:
        with ProcessPoolExecutor() as processes:
            print_left_out([one for fold in processes.map(left_out, range(FOLDS)) for one in fold])
        return
    weights = weights_for(samples_in(BUILD))
    target = Path(statuses.__file__).with_name(statuses.FILE)
    target.write_text(json.dumps(weights, ensure_ascii=False, separators=(",", ":")) + "\n", encoding="utf-8")
    print(len(weights["names"].split(BETWEEN)), "weights,", target.stat().st_size, "bytes")


if __name__ == "__main__":
    main()
