"""Use cases: each takes a transaction and a moment, and never commits."""
