"""Trains the reader's judge on the labelled replies that are there to build on: `python -m tests.corpus.train`.

Multinomial logistic regression by scikit-learn, which `pip install -e .[train]` brings: the same rows and the same
version give the same weights. `--folds` prints how well it does on rows left out, and what asking costs, and writes
nothing; `--only ends` trains one question anew and leaves the others as they are.
"""

import argparse
import json
import math
import warnings
from collections import Counter
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path
from typing import Any

import numpy as np
from sklearn.exceptions import ConvergenceWarning
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

from reminders.core.reading import judge as judging
from reminders.core.reading.completion import completed_of
from reminders.core.reading.features import (
    MEETING,
    ORDERED,
    PAIR,
    PIECE,
    SENSE,
    SKIP,
    facts_of,
    meetings_of,
    names_of_word,
    near_words,
    orders_of,
    row_of_words,
    tells_rules,
    words_of,
)
from reminders.core.reading.intent import decide
from reminders.core.reading.reader import evidence_of
from reminders.core.reading.weights import Weights, packed
from tests.corpus.composed import composed
from tests.corpus.measure import ALIKE, HERE, PARSED, rows_of
from tests.corpus.tables import HARMLESS, NO_WISHES, SIGNS, WISHES


def build_files(language: str, newest: int) -> list[str]:
    """Return the names of a language's files to build on, in their order."""
    names = [f"{language}-build", *(f"{language}-build-{number}" for number in range(2, newest + 1))]
    return [name for name in names if (HERE / f"replies-{name}.jsonl").exists()]  # a number may have been given up


# The weights know the build files up to these; newer ones were met by rules alone and come in with the next training.
NEWEST = {"en": 130, "es": 121}
BUILD = ("practice", "plain-build", *(name for lang, newest in NEWEST.items() for name in build_files(lang, newest)))
HIDDEN = sorted(HERE.glob("signs-*.jsonl"))  # signs beside words that seem to explain them
TARGET = Path(judging.__file__).with_name("weights.json")
# How far the rows are trusted. Intent, danger and wishes to hear no more were tried on rows left out, where more than a
# half found more; completion did no better for it, and corrections lost rows that they were trained on. "Signs" was not
# tried.
STRENGTH = {"intent": 2.0, "completed": 0.5, "correction": 4.0, "danger": 4.0, "ends": 5.0, "signs": 3.0}
ROUNDS, CLOSE = 300, 1e-5
SEVERAL = "signs"  # of its classes several may hold, or none
# Rows in which a feature of a kind stands, or it is left out.
FEWEST = {PAIR: 2, SKIP: 2} | dict.fromkeys((PIECE, MEETING, *ORDERED), 3)
SMALLEST = 8  # hundredths: a feature whose weights are all below this is left out
KEPT = {"signs": 16}  # the same of a question with more features than it is worth
TIMES = 3  # that a sentence of the tests' tables counts: each stands for a line between two meanings
OF_WORDS = 3  # the same of a whole word, which the judge is to know
Sample = tuple[dict[str, float], str]


def features_of(row: dict[str, Any]) -> dict[str, float]:
    """Return the features of a row as the reader sees it."""
    evidence, lexicon, session = evidence_of(row["text"], row["lang"], PARSED[row["session"]], row["asked"])
    features: dict[str, float] = dict.fromkeys(
        facts_of(evidence, decide(evidence), completed_of(evidence, "report", session)), 1.0
    )
    features |= dict.fromkeys((*near_words(row_of_words(evidence)), *meetings_of(evidence, lexicon)), 1.0)
    for name in orders_of(evidence, lexicon):
        features[name] = features.get(name, 0.0) + 1.0
    for word, char in words_of(evidence):
        for name in names_of_word(word, char, lexicon):
            features[name] = features.get(name, 0.0) + 1.0
    return features


def train(samples: list[Sample], strength: float) -> dict[str, Any]:
    """Return classes and weights: for each feature a number a class; `strength` is how far the rows are trusted."""
    classes = sorted({label for _, label in samples})
    vectorizer = DictVectorizer()
    table = vectorizer.fit_transform([features for features, _ in samples])
    fitted = _fit(table, [label for _, label in samples], strength)
    rows = fitted if len(classes) > 2 else np.vstack([-fitted, fitted]) / 2
    return {"classes": classes, "weights": dict(zip(vectorizer.get_feature_names_out(), rows.T.tolist(), strict=True))}


def _fit(table: Any, labels: list[Any], strength: float) -> Any:
    """Return a row of weights a class, one alone where there are two classes; it need not come quite to rest."""
    model = LogisticRegression(C=strength, fit_intercept=False, max_iter=ROUNDS, tol=CLOSE)
    with warnings.catch_warnings():
        warnings.simplefilter("ignore", ConvergenceWarning)
        return model.fit(table, labels).coef_


def train_several(samples: list[tuple[dict[str, float], frozenset[str]]], strength: float) -> dict[str, Any]:
    """Return classes and weights where several labels, or none, may hold: what speaks for each by itself."""
    classes = sorted(frozenset().union(*(labels for _, labels in samples)))
    vectorizer = DictVectorizer()
    table = vectorizer.fit_transform([features for features, _ in samples])
    fitted = [_fit(table, [one in labels for _, labels in samples], strength)[0] for one in classes]
    weights = np.vstack(fitted).T.tolist()
    return {"classes": classes, "weights": dict(zip(vectorizer.get_feature_names_out(), weights, strict=True))}


def _shares(features: dict[str, float], size: int, weights: dict[str, list[float]]) -> list[float]:
    """Return the probability of each class."""
    totals = [0.0] * size
    for name, value in features.items():
        if row := weights.get(name):
            for at in range(size):
                totals[at] += row[at] * value
    top = max(totals)
    powers = [math.exp(total - top) for total in totals]
    whole = sum(powers)
    return [power / whole for power in powers]


def rounded(model: dict[str, Any], smallest: int = SMALLEST) -> dict[str, Any]:
    """Return a model in whole hundredths, without features that hardly matter."""
    kept = {}
    for name in sorted(model["weights"]):
        row = [round(weight * judging.SCALE) for weight in model["weights"][name]]
        if max(map(abs, row)) >= (OF_WORDS if name.startswith("w ") else smallest):
            kept[name] = row
    return {"classes": model["classes"], "weights": kept}


def side_by_side(models: dict[str, Any]) -> dict[str, Any]:
    """Return the models as the judge keeps them: one row of numbers a feature, for all classes of all questions."""
    rows: dict[str, list[int]] = {}
    for name in sorted({name for model in models.values() for name in model["weights"]}):
        rows[name] = [
            one for model in models.values() for one in model["weights"].get(name, [0] * len(model["classes"]))
        ]
    return {
        "questions": {name: model["classes"] for name, model in models.items()},
    } | packed(rows)


def _without_rare(
    rows: list[tuple[dict[str, Any], dict[str, float]]],
) -> list[tuple[dict[str, Any], dict[str, float]]]:
    """Return the rows without neighbouring words that stand in one row alone, and pieces in two: they teach nothing."""
    seen = Counter(name for _, features in rows for name in features)
    rare = {name for name, times in seen.items() if times < FEWEST.get(name[:2], 1)}
    return [(row, {name: one for name, one in features.items() if name not in rare}) for row, features in rows]


def _without(features: dict[str, float], *kinds: str) -> dict[str, float]:
    """Return the features less some kinds: on rows left out pieces did completion no good, nor meetings intent."""
    return {name: value for name, value in features.items() if not name.startswith(kinds)}


def _words_alone(features: dict[str, float]) -> dict[str, float]:
    """Return the features less what rules made of them: the judge is to see the signs that the rules miss."""
    return {name: value for name, value in features.items() if not tells_rules(name)}


def phrases() -> list[dict[str, Any]]:
    """Return the tables of danger signs, and of what only sounds like one, as rows that teach only danger."""
    signs = [(lang, flag, text) for lang, told in SIGNS.items() for flag, text in told]
    signs += [(row["lang"], row["signs"][0], row["text"]) for path in HIDDEN for row in rows_of(path)]
    calm = [(lang, "", text) for lang, texts in HARMLESS.items() for text in texts]
    return [row_of(text, lang) | {"flag": flag or "none"} for lang, flag, text in signs + calm]


def wishes() -> list[tuple[dict[str, Any], str]]:
    """Return the tables of wishes to hear no more, and of what only sounds like one, with the answer each."""
    tables = ((WISHES, "opt_out"), (NO_WISHES, "other"))
    return [(row_of(text, lang), wish) for table, wish in tables for lang, texts in table.items() for text in texts]


def row_of(text: str, lang: str) -> dict[str, Any]:
    """Return a row for a text of a table, sent on an ordinary day."""
    return {"text": text, "lang": lang, "session": "S1" if lang == "en" else "S3", "asked": None}


def samples_of(rows: list[dict[str, Any]]) -> dict[str, list[tuple[dict[str, Any], Any]]]:
    """Return question → rows with their samples: the completion of reports, all else of all rows."""
    all_features = _without_rare([(row, features_of(row)) for row in rows])
    seen = {name for _, features in all_features for name in features}
    all_features += [
        (row, {name: value for name, value in features_of(row).items() if name in seen}) for row in composed(rows)
    ]
    intents = [(row, (_without(features, MEETING), row["expect"]["intent"])) for row, features in all_features]
    amounts = [
        (row, (_without(features, PIECE, SENSE, SKIP, MEETING, *ORDERED), str(row["expect"]["completed"])))
        for row, features in all_features
        if row["expect"]["intent"] == "report"
    ]
    corrections = [
        (row, (_without(features, MEETING, *ORDERED), str(row["expect"]["correction"])))
        for row, features in all_features
    ]
    dangers = [
        (row, (_words_alone(features), (row["expect"]["red_flags"] or ["none"])[0])) for row, features in all_features
    ]
    signs = [(row, (_words_alone(features), frozenset(row["expect"]["red_flags"]))) for row, features in all_features]
    told = [(row, _words_alone(features_of(row))) for row in phrases()] * TIMES
    signs += [(row, (features, frozenset({row["flag"]} - {"none"}))) for row, features in told]
    dangers += [(row, (features, row["flag"])) for row, features in told]
    ends = [
        (row, (_words_alone(features), "opt_out" if row["expect"]["intent"] == "opt_out" else "other"))
        for row, features in all_features
    ]
    ends += [(row, (features, "other")) for row, features in told]
    ends += [(row, (_words_alone(features_of(row)), wish)) for row, wish in wishes()] * TIMES
    return {
        "intent": intents,
        "completed": amounts,
        "correction": corrections,
        "danger": dangers,
        "ends": ends,
        "signs": signs,
    }


def left_out(name: str, rows: list[tuple[dict[str, Any], Sample]]) -> None:
    """Print how well rows left out are judged, and how sure the judge is when it is wrong."""
    folds, results = 4, []
    for fold in range(folds):
        model = train([sample for at, (_, sample) in enumerate(rows) if at % folds != fold], STRENGTH[name])
        size = len(model["classes"])
        for at, (row, (features, label)) in enumerate(rows):
            if at % folds == fold:
                shares = _shares(features, size, model["weights"])
                got = model["classes"][shares.index(max(shares))]
                alike = name == "intent" and bool(row["expect"]["red_flags"]) and {got, label} <= ALIKE
                results.append((max(shares), got == label or alike))
    right = sum(ok for _, ok in results) / len(results)
    print(f"{name}: right {right:.3f} of {len(results)}")
    for bound in (0.5, 0.6, 0.7, 0.8, 0.9, 0.95):
        asked = sum(sure < bound for sure, _ in results) / len(results)
        silent = sum(sure >= bound and not ok for sure, ok in results) / len(results)
        print(f"  below {bound}: asks {asked:.3f}, wrong without asking {silent:.3f}")


def trained(question: str, samples: list[Any]) -> dict[str, Any]:
    """Return classes and weights of one question, in whole hundredths."""
    model = (train_several if question == SEVERAL else train)(samples, STRENGTH[question])
    return rounded(model, KEPT.get(question, SMALLEST))


def models_there() -> dict[str, Any]:
    """Return the models of the weights' file."""
    there = json.loads(TARGET.read_text(encoding="utf-8"))
    questions = there.pop("questions")
    every, models, start = Weights(sum(map(len, questions.values())), **there).rows(), {}, 0
    for question, classes in questions.items():
        end = start + len(classes)
        rows = {name: row[start:end] for name, row in every.items()}
        models[question] = {"classes": classes, "weights": {name: row for name, row in rows.items() if any(row)}}
        start = end
    return models


def main() -> None:
    """Train and write the weights, or print how well training does."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--only", nargs="+", choices=list(STRENGTH), help="train these questions alone")
    parser.add_argument("--folds", action="store_true", help="judge rows left out; write nothing")
    args = parser.parse_args()
    rows = [row for name in BUILD for row in rows_of(HERE / f"replies-{name}.jsonl")]
    questions = samples_of(rows)
    if args.folds:
        for name, judged in questions.items():
            if name != SEVERAL:
                left_out(name, judged)
        return
    wanted = args.only or list(questions)
    samples = [[sample for _, sample in questions[name]] for name in wanted]
    with ProcessPoolExecutor() as pool:  # a question is trained by itself, so the order of work changes nothing
        models = dict(zip(wanted, pool.map(trained, wanted, samples), strict=True))
    if args.only:
        models = models_there() | models
    text = json.dumps(side_by_side(models), ensure_ascii=False, separators=(",", ":"))
    TARGET.write_text(text + "\n", encoding="utf-8")
    print({name: len(model["weights"]) for name, model in models.items()}, TARGET.stat().st_size, "bytes")


if __name__ == "__main__":
    main()
