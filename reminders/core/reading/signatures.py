"""The signatures that have a meaning of their own; every other one is a CJK character handed out by the lexicon."""

STOP, QUESTION, COMMA, BUT = ".", "?", ",", "b"
NAMED, NAMED_ON, USED, SECONDS = "@", "&", "u", "s"
NO_WORD = STOP + QUESTION + COMMA
PAUSE_SETS = {",": frozenset(COMMA), ".": frozenset(STOP + QUESTION)}  # as they are written in a pattern
