"""The record as one JSON document."""

import json
from collections.abc import Mapping
from typing import Any


def as_json(course: Mapping[str, Any]) -> str:
    """Return the values as indented JSON, signs of every language as they are."""
    return json.dumps(course, ensure_ascii=False, indent=2) + "\n"
