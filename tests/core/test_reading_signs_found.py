"""Signs that a turn of speech, a denial, another person or a mark of long ago in the same breath had hidden."""

import json
from pathlib import Path
from typing import Any

import pytest

from reminders.core.reading import read_reply
from tests.corpus.measure import PARSED

CORPUS = Path(__file__).parent.parent / "corpus"
ROWS = [
    json.loads(line)
    for name in ("signs-en.jsonl", "signs-es.jsonl")
    for line in (CORPUS / name).read_text(encoding="utf-8").splitlines()
]
SESSIONS = {"en": PARSED["S1"], "es": PARSED["S3"]}


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["text"])
def test_a_sign_is_found_beside_the_words_that_seem_to_explain_it(row: dict[str, Any]) -> None:
    reading = read_reply(row["text"], row["lang"], SESSIONS[row["lang"]], None)
    assert set(row["signs"]) & set(reading.red_flags)
