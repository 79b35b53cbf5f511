"""Files beside an SQLite database: on the disk when they are said to be, read whole or not at all."""

import os
import subprocess
import threading
import time
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest

from reminders.store.arrivals import Arrivals

MOMENT = datetime(2027, 3, 3, 13, 30, 0, 123_456, tzinfo=UTC)


def row(number: int, **more: Any) -> dict[str, Any]:
    """Return a row as it is kept."""
    values = {"provider_id": f"SM{number}", "text": "hecho 2×10 😀", "raw": b"\x00\xff&", "pictures": 1}
    return {**values, "received_at": MOMENT, "kept_at": MOMENT, **more}


@pytest.fixture
def arrivals(tmp_path: Path) -> Arrivals:
    """Return a folder that is not there yet."""
    return Arrivals(tmp_path / "reminders.db.arriving")


def everything(arrivals: Arrivals) -> list[dict[str, Any]]:
    """Return the rows of all files, oldest first."""
    return [one for path in arrivals.files() for one in arrivals.rows_in(path)]


def test_a_row_comes_back_as_it_was_put(arrivals: Arrivals) -> None:
    assert arrivals.files() == []
    arrivals.put(row(1))
    arrivals.put(row(2, text=""))

    assert everything(arrivals) == [row(1), row(2, text="")]


def test_what_is_forgotten_does_not_come_again(arrivals: Arrivals) -> None:
    arrivals.put(row(1))
    arrivals.forget(arrivals.files())
    arrivals.put(row(2))

    assert everything(arrivals) == [row(2)]


def test_nobody_else_on_the_machine_can_read_them(arrivals: Arrivals) -> None:
    arrivals.put(row(1))

    assert arrivals.folder.stat().st_mode & 0o777 == 0o700
    assert [path.stat().st_mode & 0o777 for path in arrivals.files()] == [0o600]


def test_rows_that_threads_put_at_the_same_moment_share_a_file_and_are_all_there(arrivals: Arrivals) -> None:
    threads = [threading.Thread(target=arrivals.put, args=(row(number),)) for number in range(30)]
    with arrivals.lock:  # so that all of them wait
        for thread in threads:
            thread.start()
        while len(arrivals.jobs) < len(threads):
            time.sleep(0.001)
    for thread in threads:
        thread.join()

    assert len(arrivals.files()) == 1
    assert {one["provider_id"] for one in everything(arrivals)} == {f"SM{number}" for number in range(30)}


def test_a_file_gets_its_name_only_once_its_bytes_are_on_the_disk(
    arrivals: Arrivals, monkeypatch: pytest.MonkeyPatch
) -> None:
    fsync, seen = os.fsync, list[list[Path]]()

    def watched(handle: int) -> None:
        seen.append(arrivals.files())
        fsync(handle)

    monkeypatch.setattr(os, "fsync", watched)
    arrivals.put(row(1))

    assert seen == [[], arrivals.files()]


def test_when_the_disk_is_full_every_thread_hears_it_and_nothing_half_done_stays(
    arrivals: Arrivals, monkeypatch: pytest.MonkeyPatch
) -> None:
    def full(_handle: int) -> None:
        raise OSError("disk full")

    monkeypatch.setattr(os, "fsync", full)
    heard: list[OSError] = []

    def one(number: int) -> None:
        try:
            arrivals.put(row(number))
        except OSError as error:
            heard.append(error)

    threads = [threading.Thread(target=one, args=(number,)) for number in range(5)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()

    assert len(heard) == len(threads)
    assert list(arrivals.folder.iterdir()) == []


def test_a_file_that_was_cut_off_is_never_read_and_goes_once_its_process_is_gone(arrivals: Arrivals) -> None:
    arrivals.put(row(1))
    with subprocess.Popen(["true"]) as gone:
        gone.wait()
    mine, cut_off = (arrivals.folder / f"1-1-{pid}.part" for pid in (os.getpid(), gone.pid))
    for path in (mine, cut_off):
        path.write_text('[{"provi')

    assert everything(arrivals) == [row(1)]
    assert mine.exists()
    assert not cut_off.exists()


@pytest.mark.parametrize("content", ['[{"provi', "[{}]", "7", '[{"raw": "?"}]'])
def test_a_damaged_file_is_put_aside_and_holds_up_no_other(arrivals: Arrivals, content: str) -> None:
    arrivals.put(row(1))
    damaged = arrivals.folder / "0-1-1.json"
    damaged.write_text(content)

    assert everything(arrivals) == [row(1)]
    assert everything(arrivals) == [row(1)]
    assert damaged.with_suffix(".damaged").read_text() == content


def test_a_file_that_another_has_taken_meanwhile_is_no_error(arrivals: Arrivals) -> None:
    arrivals.put(row(1))
    files = arrivals.files()
    arrivals.forget(files)

    assert arrivals.rows_in(files[0]) == []
    arrivals.forget(files)
