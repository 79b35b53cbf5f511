"""Which of a session's reports correct what was told before."""

from collections.abc import Mapping, Sequence
from typing import Any


def corrections(reports: Sequence[Mapping[str, Any]]) -> list[Mapping[str, Any]]:
    """Return the reports that replace an earlier one, and those that staff wrote after her own."""
    return [one for place, one in enumerate(reports) if one["replaces"] or (place > 0 and "@" in one["by"])]
