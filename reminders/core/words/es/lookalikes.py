"""Real Spanish words that are one letter from a word of ours and must not be mended into it."""

LOOKALIKES: frozenset[str] = frozenset()
