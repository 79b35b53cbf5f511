"""The journal beside the database: what must hold even in one that is restored from an older file.

Every closed address, hold, death, discharge and its end, erasure and alert number is written on, a JSON line each,
before its transaction is committed: a line too many closes or holds somebody, a line too few writes to her. Ids and
keyed hashes only. What a restored database makes of it is in `flows.restore`.
"""

import json
import logging
import os
from collections import Counter
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from datetime import datetime
from pathlib import Path
from typing import Any

from sqlalchemy import event, inspect

from reminders.store import addresses
from reminders.store.db import Tx
from reminders.store.shapes import stamp
from reminders.store.tables import Alert, Client, ConsentEvent, Hold

LOG = logging.getLogger("reminders.journal")
Line = dict[str, Any]
Key = tuple[str, int]  # a line's text and how often its file has had it: STOP, START, STOP may come in one second
BY = "journal"  # who wrote what a restored database was told by the journal
CLOSING = ("withdrawn", "closed", "taken away")


@dataclass
class Changes:
    """What a transaction has written that the journal must hold."""

    consents: list[ConsentEvent] = field(default_factory=list)
    holds: list[Hold] = field(default_factory=list)
    ended: list[Hold] = field(default_factory=list)
    clients: list[Client] = field(default_factory=list)
    reopened: list[Client] = field(default_factory=list)
    alerts: list[Alert] = field(default_factory=list)
    erased: list[Line] = field(default_factory=list)


def watch(tx: Tx) -> Changes:
    """Return what a transaction writes from here on, filled in at each of its flushes."""
    seen: Changes = tx.info.setdefault("journal", Changes())
    return seen


@event.listens_for(Tx, "after_flush")
def note_flush(tx: Any, _context: Any) -> None:
    """Note what a watched transaction writes, at each of its flushes."""
    seen: Changes | None = tx.info.get("journal")
    if seen is None:
        return
    for row in tx.new:
        for kind, rows in ((ConsentEvent, seen.consents), (Hold, seen.holds), (Alert, seen.alerts)):
            if isinstance(row, kind):
                rows.append(row)  # type: ignore[arg-type]
    for row in tx.dirty:
        if isinstance(row, Hold) and changed(row, "ended_at"):
            seen.ended.append(row)
        elif isinstance(row, Client) and (changed(row, "died_on") or changed(row, "closed_at")):
            is_reopened = row.closed_at is None and changed(row, "closed_at")
            (seen.reopened if is_reopened else seen.clients).append(row)


def changed(row: Any, name: str) -> bool:
    """Return whether a flush is writing a new value of a column."""
    return bool(inspect(row).attrs[name].history.has_changes())


def note_erasure(tx: Tx, client: Client) -> None:
    """Let the journal hold that a client's record was erased; does nothing where none is kept."""
    seen = tx.info.get("journal")
    if seen is not None:
        seen.erased.append(client_line(tx, "erasure", client.id, None))


def lines(tx: Tx, seen: Changes) -> Iterator[Line]:
    """Yield the journal's lines for what a transaction wrote; a consent given anew follows what made it needed."""
    for client in seen.reopened:
        yield client_line(tx, "reopened", client.id, client.invited_at)
    for one in seen.consents:
        if one.by == BY:
            continue  # it stands in the journal already
        what = "closed" if one.change in CLOSING else "opened"
        address = one.address if one.address.startswith(addresses.HASHED) else addresses.address_hash(tx, one.address)
        taken = {"taken_away": True} if one.change == "taken away" else {}
        line = {"what": what, "address": address, "kind": one.kind, "at": stamp(one.at), **taken}
        yield line | named(tx, one.client_id)
    for hold in seen.holds:
        yield client_line(tx, "hold", hold.client_id, hold.opened_at) | {"rule": hold.rule}
    for hold in seen.ended:
        yield client_line(tx, "hold ended", hold.client_id, hold.ended_at) | {"rule": hold.rule}
    for client in seen.clients:
        if client.died_on is not None:
            yield client_line(tx, "death", client.id, None) | {"on": client.died_on.isoformat()}
        if client.closed_at is not None and client.closed_reason != "erased":
            yield client_line(tx, "discharge", client.id, client.closed_at) | {"reason": client.closed_reason}
    yield from seen.erased
    for alert in seen.alerts:
        yield {"what": "alert", "clinic": alert.clinic_id, "number": alert.number, "at": stamp(alert.opened_at)}


def client_line(tx: Tx, what: str, client_id: int | None, at: datetime | None) -> Line:
    """Return the frame of a line about a client."""
    return {"what": what, "at": stamp(at)} | named(tx, client_id)


def named(tx: Tx, client_id: int | None) -> Line:
    """Return how a line names a client: her number, and a hash that tells her from another with that number."""
    if client_id is None:
        return {"client": None}
    client = tx.get(Client, client_id)
    return {"client": client_id, "who": addresses.client_hash(tx, client) if client is not None else ""}


@dataclass(frozen=True)
class Journal:
    """The files that hold the journal, the same lines in each."""

    paths: tuple[Path, ...]

    def watch(self, tx: Tx) -> Changes:
        """Return what a transaction writes from here on."""
        return watch(tx)

    def keep(self, tx: Tx, seen: Changes) -> None:
        """Write a transaction's lines on, to the disk itself; where a file cannot be written the others still are."""
        text = "".join(json.dumps(line, separators=(",", ":")) + "\n" for line in lines(tx, seen))
        if text:
            for path in self.paths:
                try:
                    append(path, text)
                except OSError:
                    LOG.exception("journal not written")

    def lines(self) -> list[Line]:
        """Return every line that any of the files holds, each once, as they were written; what is cut is left out."""
        found: dict[Key, Line] = {}
        for path in self.paths:
            if path.is_file():
                texts = path.read_text(encoding="utf-8", errors="replace").splitlines()
                found = merged(found, readable(texts))
        return list(found.values())


def merged(first: dict[Key, Line], second: dict[Key, Line]) -> dict[Key, Line]:
    """Return the lines of two files, each of which may lack some; both keep their order, whatever the clock did.

    Between two lines that both have, those that only one has stand by their instants.
    """
    whole: dict[Key, Line] = {}
    waiting = list(first)
    place = 0
    for key, line in second.items():
        while (
            key not in whole
            and place < len(waiting)
            and (key in first or (waiting[place] not in second and moment(first[waiting[place]]) <= moment(line)))
        ):
            whole[waiting[place]] = first[waiting[place]]
            place += 1
        whole[key] = line
    return whole | {key: first[key] for key in waiting[place:]}


def moment(line: Line) -> str:
    """Return a line's instant; a death or erasure, which bears none, stands as early as it may."""
    return str(line.get("at") or "")


def append(path: Path, text: str) -> None:
    """Add text to a file that only its owner may read, and wait until it is on the disk."""
    handle = os.open(path, os.O_RDWR | os.O_APPEND | os.O_CREAT, 0o600)
    try:
        size = os.fstat(handle).st_size
        was_cut = size > 0 and os.pread(handle, 1, size - 1) != b"\n"
        os.write(handle, (b"\n" if was_cut else b"") + text.encode())
        os.fsync(handle)
    finally:
        os.close(handle)


def readable(texts: Iterable[str]) -> dict[Key, Line]:
    """Return the lines that are whole; the last one may have been cut by a crash."""
    found: dict[Key, Line] = {}
    times: Counter[str] = Counter()
    for text in texts:
        try:
            value = json.loads(text)
        except ValueError:
            continue
        if isinstance(value, dict) and "what" in value:
            times[text] += 1
            found[text, times[text]] = value
    return found
