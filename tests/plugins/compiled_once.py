"""Statements are compiled once a test process, not once a test: each test opens a database of its own, and to compile
anew what every engine asks took half of the suite's time.

An engine keeps what it compiled by its dialect. Two dialects of one kind are the same here, and all engines share one
such cache; what is compiled does not change by it.
"""

from typing import Any

from sqlalchemy import Engine, create_engine
from sqlalchemy.dialects.postgresql.psycopg import PGDialect_psycopg
from sqlalchemy.dialects.sqlite.pysqlite import SQLiteDialect_pysqlite
from sqlalchemy.util import LRUCache

from reminders.store import db

COMPILED: LRUCache[Any, Any] = LRUCache(5_000)


def pytest_configure() -> None:
    """Have every engine of the program use the one cache."""
    for kind in (PGDialect_psycopg, SQLiteDialect_pysqlite):
        kind.__eq__ = _is_same_kind  # type: ignore[method-assign]
        kind.__hash__ = _hash_of_kind  # type: ignore[method-assign]
    db.create_engine = _sharing  # type: ignore[assignment]


def _is_same_kind(one: object, other: object) -> bool:
    return type(one) is type(other)


def _hash_of_kind(one: object) -> int:
    return hash(type(one))


def _sharing(*args: Any, **options: Any) -> Engine:
    """Create an engine which keeps what it compiled for all."""
    engine = create_engine(*args, **options)
    engine._compiled_cache = COMPILED
    return engine
