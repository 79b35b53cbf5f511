"""English wishes to hear no more in everyday wording, and sentences that only share their words."""

import json
from pathlib import Path

_FILE = Path(__file__).parent.parent / "corpus" / "wishes-en.jsonl"
_ROWS = [json.loads(line) for line in _FILE.read_text(encoding="utf-8").splitlines()]
OPT_OUTS = tuple(row["text"] for row in _ROWS if row["ends"])
NO_OPT_OUTS = tuple(row["text"] for row in _ROWS if not row["ends"])
