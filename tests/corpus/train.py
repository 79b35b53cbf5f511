"""Trains the reader's second opinion from the corpora to build on: `python -m tests.corpus.train`.

Needs scikit-learn (`pip install scikit-learn`), which nothing else here does. Deterministic: the same rows give the same
weights. The measuring corpora are never read here.
"""

import json
import random
from pathlib import Path
from typing import Any

from reminders.core.reading.guess import SCALE, pieces_of

HERE = Path(__file__).parent
WEIGHTS = HERE.parent.parent / "reminders" / "core" / "reading" / "weights"
LEAST = 0.06  # weights smaller than this are left out
STRENGTH = 5.0


def rows_for(language: str) -> list[dict[str, Any]]:
    """Return the labelled rows of a language to build on."""
    files = [HERE / "replies-practice.jsonl", *sorted(HERE.glob(f"replies-{language}-build*.jsonl"))]
    rows = [json.loads(line) for file in files for line in file.read_text(encoding="utf-8").splitlines() if line]
    return [row for row in rows if row["lang"] == language]


def train(language: str) -> dict[str, Any]:
    """Return the weights that fit the rows of a language."""
    from sklearn.feature_extraction import DictVectorizer
    from sklearn.linear_model import LogisticRegression

    rows = rows_for(language)
    random.Random(1).shuffle(rows)
    table = DictVectorizer()
    given = table.fit_transform([dict(pieces_of(row["text"], row["asked"])) for row in rows])
    model = LogisticRegression(C=STRENGTH, max_iter=500, random_state=1)
    model.fit(given, [row["expect"]["intent"] for row in rows])
    pieces: dict[str, list[int]] = {}
    for column, piece in enumerate(table.get_feature_names_out()):
        kept = [(place, weight) for place, weight in enumerate(model.coef_[:, column]) if abs(weight) >= LEAST]
        if kept:
            pieces[str(piece)] = [value for place, weight in kept for value in (place, round(weight * SCALE))]
    return {
        "intents": [str(name) for name in model.classes_],
        "start": [round(float(one) * SCALE) for one in model.intercept_],
        "pieces": pieces,
    }


def main() -> None:
    """Write the weights of both languages."""
    WEIGHTS.mkdir(exist_ok=True)
    for language in ("en", "es"):
        made = train(language)
        text = json.dumps(made, ensure_ascii=False, separators=(",", ":"), sort_keys=True)
        (WEIGHTS / f"{language}.json").write_text(text + "\n", encoding="utf-8")
        print(language, len(rows_for(language)), "rows,", len(made["pieces"]), "pieces,", len(text), "bytes")


if __name__ == "__main__":
    main()
