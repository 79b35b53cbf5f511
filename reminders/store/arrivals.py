"""What came in while others were writing: files beside an SQLite database, kept without waiting for its one writer.

A file holds the rows that threads had to keep at the same moment. It has its name only once its bytes are on the disk,
and is forgotten only once its rows are in the database; read twice, they are kept once, by the provider's ids.
"""

import base64
import itertools
import json
import logging
import os
import threading
from collections import deque
from collections.abc import Iterable, Mapping
from datetime import datetime
from pathlib import Path
from typing import Any

LOG = logging.getLogger("reminders.arrivals")
Row = dict[str, Any]
BYTES, MOMENTS = "raw", ("received_at", "kept_at")
ENDING, UNFINISHED, DAMAGED = ".json", ".part", ".damaged"


class Job:
    """A row that waits to be on the disk, and what came of it."""

    def __init__(self, row: Mapping[str, Any]) -> None:
        """Keep the row."""
        self.row = row
        self.is_done = False
        self.error: OSError | None = None


class Arrivals:
    """The folder with these files; threads and processes may share it."""

    def __init__(self, folder: Path) -> None:
        """Name the folder; it is made when there is something to keep."""
        self.folder = folder
        self.lock = threading.Lock()
        self.jobs: deque[Job] = deque()
        self.numbers = itertools.count()

    def put(self, row: Mapping[str, Any]) -> None:
        """Keep a row, by the names of its columns; it is on the disk when this returns. Raises OSError.

        Threads that come meanwhile share one file: whoever has the turn writes what all have given.
        """
        mine = Job(row)
        self.jobs.append(mine)
        with self.lock:
            if not mine.is_done:
                self.write_waiting()
        if mine.error is not None:
            raise mine.error

    def write_waiting(self) -> None:
        """Write what threads wait to have kept."""
        taken = [self.jobs.popleft() for _ in range(len(self.jobs))]
        try:
            self.write([encoded(job.row) for job in taken])
        except OSError as error:
            for job in taken:
                job.error = error
        finally:
            for job in taken:
                job.is_done = True

    def write(self, rows: list[Row]) -> None:
        """Write one file: its bytes first, then its name, each through to the disk."""
        self.folder.mkdir(mode=0o700, exist_ok=True)
        moment = rows[0]["kept_at"].replace(":", "")
        path = self.folder / f"{moment}-{next(self.numbers):08d}-{os.getpid()}{ENDING}"
        part = path.with_suffix(UNFINISHED)
        handle = os.open(part, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
        try:
            with os.fdopen(handle, "wb") as file:
                file.write(json.dumps(rows).encode())
                file.flush()
                os.fsync(handle)
            part.rename(path)
        except OSError:
            part.unlink(missing_ok=True)
            raise
        self.write_names()

    def write_names(self) -> None:
        """Have the folder's names on the disk."""
        handle = os.open(self.folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)

    def files(self) -> list[Path]:
        """Return the files there are, oldest first; what was cut off is deleted."""
        try:
            names = sorted(entry.name for entry in os.scandir(self.folder))
        except FileNotFoundError:
            return []
        for name in names:
            if name.endswith(UNFINISHED):
                self.delete_if_cut_off(self.folder / name)
        return [self.folder / name for name in names if name.endswith(ENDING)]

    def delete_if_cut_off(self, path: Path) -> None:
        """Delete an unfinished file whose process is gone: its call was never answered."""
        try:
            os.kill(int(path.stem.rpartition("-")[2]), 0)
        except (ProcessLookupError, ValueError):
            path.unlink(missing_ok=True)
        except PermissionError:
            return  # somebody else's process has that number now

    def rows_in(self, path: Path) -> list[Row]:
        """Return the rows of a file, none where another has brought them in; a damaged one is put aside and logged."""
        try:
            return [decoded(row) for row in json.loads(path.read_bytes())]
        except FileNotFoundError:
            return []
        except (ValueError, KeyError, TypeError) as error:
            # The error's own words may hold hers: only its kind is logged.
            LOG.error(
                "a file beside the database cannot be read", extra={"file": path.name, "error": type(error).__name__}
            )
            path.replace(path.with_suffix(DAMAGED))
            return []

    def forget(self, paths: Iterable[Path]) -> None:
        """Delete files whose rows are in the database."""
        for path in paths:
            path.unlink(missing_ok=True)


def encoded(row: Mapping[str, Any]) -> Row:
    """Return a row as JSON takes it."""
    moments = {name: row[name].isoformat() for name in MOMENTS}
    return {**row, **moments, BYTES: base64.b64encode(row[BYTES]).decode()}


def decoded(row: Mapping[str, Any]) -> Row:
    """Return a row as it was kept."""
    moments = {name: datetime.fromisoformat(row[name]) for name in MOMENTS}
    return {**row, **moments, BYTES: base64.b64decode(row[BYTES])}
