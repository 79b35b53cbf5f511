"""The proofs. A package, so that `tests.standins` is found before the `tests` that some library ships."""
