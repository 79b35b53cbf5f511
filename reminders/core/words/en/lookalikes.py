LOOKALIKES: frozenset[str] = frozenset()
