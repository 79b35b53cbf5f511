"""Trains the second opinions on the labelled replies to build on: `python -m tests.corpus.train_opinions`.

"No pain": a sample is a reply with words that could say so; it does where its label is a pain of nought. Ratings: a
sample is a number from 0 to 10; it is a rating where the label is that number. `--folds` trains on three quarters of
the files and prints for the last one how many right and wrong numbers would be doubted, and writes nothing.
"""

import argparse
import json
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from concurrent.futures import ProcessPoolExecutor
from functools import partial
from pathlib import Path
from typing import Any

from reminders.core.reading import no_pain, opinion, ratings
from reminders.core.reading.reader import evidence_of
from tests.corpus.composed import composed, numbers_beside
from tests.corpus.measure import HERE, PARSED, rows_of
from tests.corpus.tables import RATED
from tests.corpus.train import BUILD, SMALLEST, TIMES, Sample, row_of, train

MEANT, NOT_MEANT = "meant", "not meant"
STRENGTH = 4.0  # how far the rows are trusted; on files left out 1 does as well, on the tables of ratings worse
FOLDS = 4
BOUNDS = (0.05, 0.1, 0.2, 0.3, 0.5, 0.7)
Row = dict[str, Any]
Samples = Callable[[Row], Iterator[tuple[Sample, bool, bool]]]  # each with: the rules took it, others stand beside it


def samples_of_no_pain(row: Row) -> Iterator[tuple[Sample, bool, bool]]:
    """Yield the sample of a row, if it is one."""
    evidence, _, _ = evidence_of(row["text"], row["lang"], PARSED[row["session"]], row["asked"])
    if no_pain.spans_of(evidence):
        meant = MEANT if row["expect"]["pain"] == 0 else NOT_MEANT
        yield (dict.fromkeys(no_pain.features_of(evidence), 1.0), meant), evidence.pain.value == 0, False


def samples_of_ratings(row: Row) -> Iterator[tuple[Sample, bool, bool]]:
    """Yield the samples of a row; of the same number at several places the one that the rules took is the rating."""
    evidence, _, _ = evidence_of(row["text"], row["lang"], PARSED[row["session"]], row["asked"])
    candidates, pain = ratings.Candidates(evidence), row["expect"]["pain"]
    taken = {at for start, end in evidence.pain.spans for at in range(start, end)}
    same = [at for at, value in candidates.values.items() if value == pain]
    for at, value in candidates.values.items():
        is_taken = at in taken and value == evidence.pain.value
        if len(same) > 1 and at in same and evidence.pain.value == pain and not is_taken:
            continue
        meant = MEANT if at in same else NOT_MEANT
        is_beside = len(set(candidates.values.values())) > 1
        yield (dict.fromkeys(candidates.features_of(at), 1.0), meant), is_taken, is_beside


QUESTIONS: dict[str, tuple[opinion.Opinion, Samples]] = {
    "no pain": (no_pain.OPINION, samples_of_no_pain),
    "ratings": (ratings.OPINION, samples_of_ratings),
}


def rows_to_train_on(names: Sequence[str]) -> list[Row]:
    """Return the rows of files, with replies put together of them, and the tables of ratings."""
    rows = [row for name in names for row in rows_of(HERE / f"replies-{name}.jsonl")]
    rated = [row_of(text, lang) | {"asked": asked, "expect": {"pain": pain}} for lang, asked, text, pain in RATED]
    return [*rows, *composed(rows), *numbers_beside(rows), *rated * TIMES]


def weights_for(samples: list[Sample]) -> dict[str, int]:
    """Return the trained weights: what a feature says for "meant", in hundredths, without what hardly matters."""
    seen = Counter(name for features, _ in samples for name in features)
    often = [({name: one for name, one in features.items() if seen[name] > 1}, label) for features, label in samples]
    model = train(often, STRENGTH)
    yes, no = model["classes"].index(MEANT), model["classes"].index(NOT_MEANT)
    weights = {name: round((row[yes] - row[no]) * opinion.SCALE) for name, row in sorted(model["weights"].items())}
    return {name: weight for name, weight in weights.items() if abs(weight) >= SMALLEST}


def write(question: str) -> str:
    """Train one opinion and write its weights; return what was done."""
    one, samples_of = QUESTIONS[question]
    samples = [sample for row in rows_to_train_on(BUILD) for sample, _, _ in samples_of(row)]
    target, weights = Path(opinion.__file__).with_name(one.file), weights_for(samples)
    target.write_text(json.dumps(weights, ensure_ascii=False, separators=(",", ":")) + "\n", encoding="utf-8")
    return f"{question}: {len(samples)} samples, {len(weights)} weights, {target.stat().st_size} bytes"


def left_out(question: str, fold: int) -> list[tuple[float, bool, bool]]:
    """Return what the rules took in a fold's files: belief by weights that do not know them, right, beside others."""
    samples_of = QUESTIONS[question][1]
    learned = [name for at, name in enumerate(BUILD) if at % FOLDS != fold]
    weights = weights_for([sample for row in rows_to_train_on(learned) for sample, _, _ in samples_of(row)])
    asked = [name for at, name in enumerate(BUILD) if at % FOLDS == fold]
    found = [one for name in asked for row in rows_of(HERE / f"replies-{name}.jsonl") for one in samples_of(row)]
    return [
        (opinion.belief_by(weights, features), label == MEANT, is_beside)
        for (features, label), is_taken, is_beside in found
        if is_taken
    ]


def print_left_out(question: str, found: list[tuple[float, bool, bool]]) -> None:
    """Print how many right and wrong ones would be doubted, alone and beside others."""
    for is_beside in sorted({one[2] for one in found}):
        right, wrong = (
            sorted(belief for belief, is_right, beside in found if beside == is_beside and is_right == wanted)
            for wanted in (True, False)
        )
        doubted = [(bound, sum(one < bound for one in right), sum(one < bound for one in wrong)) for bound in BOUNDS]
        where = "beside others" if is_beside else "alone"
        print(
            f"{question} {where}: {len(right)} right, {len(wrong)} wrong; (bound, right doubted, wrong doubted)",
            doubted,
        )


def main() -> None:
    """Train and write the weights, or measure on files left out."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--folds", action="store_true", help="measure on files left out, and write nothing")
    args = parser.parse_args()
    with ProcessPoolExecutor(2) as processes:
        if not args.folds:
            print(*processes.map(write, QUESTIONS), sep="\n")
            return
        for question in QUESTIONS:
            folds = processes.map(partial(left_out, question), range(FOLDS))
            print_left_out(question, [one for fold in folds for one in fold])


if __name__ == "__main__":
    main()
