"""The whole record as a file, a row a line, and back: the same for SQLite and PostgreSQL.

The first line says what the file is and how many rows of which table follow, the last line holds the SHA-256 of all
before it, so that a file cut short or changed is refused as a whole.
"""

import base64
import hashlib
import json
import os
from collections.abc import Iterator, Mapping, Sequence
from datetime import date, datetime
from pathlib import Path
from typing import Any, BinaryIO

from sqlalchemy import Connection, Date, DateTime, LargeBinary, Table, func, insert, select, text, update

from reminders.errors import BadInput
from reminders.store import schema
from reminders.store.db import Database, Tx
from reminders.store.tables import metadata

FORMAT, VERSION = "reminders whole record", 1
# What makes sense only where it was made: signed-in browsers, links, leases, answers kept for repeated requests.
PASSING = ("web_session", "sign_in_link", "idempotent_answer", "lease", "api_token")
SECRET_COLUMNS = {"staff": ("password_hash", "totp_secret")}
PORTABLE = tuple(table.name for table in metadata.sorted_tables if table.name not in PASSING)
EVERYTHING = tuple(table.name for table in metadata.sorted_tables)
BATCH = 500


def write(db: Database, path: Path, names: Sequence[str], made: str, *, secrets: bool = False) -> int:
    """Write every row of some tables to a file that only its owner may read; return how many.

    One consistent moment is written even while others work. The file appears whole or not at all.
    """
    draft = path.with_name(f".{path.name}.part")
    handle = os.open(draft, os.O_WRONLY | os.O_CREAT | os.O_TRUNC, 0o600)
    try:
        with os.fdopen(handle, "wb") as file, db.engine.connect() as connection:
            if db.is_postgres:
                connection = connection.execution_options(isolation_level="REPEATABLE READ")
            rows = write_lines(connection, file, names, made, secrets)
            file.flush()
            os.fsync(file.fileno())
        os.replace(draft, path)
    finally:
        draft.unlink(missing_ok=True)
    return rows


def write_lines(connection: Connection, file: BinaryIO, names: Sequence[str], made: str, secrets: bool) -> int:
    """Write header, rows and end; return how many rows."""
    digest = hashlib.sha256()

    def line(value: Any) -> None:
        data = json.dumps(value, ensure_ascii=False, separators=(",", ":")).encode() + b"\n"
        digest.update(data)
        file.write(data)

    tables = [table for table in metadata.sorted_tables if table.name in names]
    counts = {table.name: connection.execute(select(func.count()).select_from(table)).scalar_one() for table in tables}
    schema_at = schema.current(connection)
    line({"format": FORMAT, "version": VERSION, "schema": schema_at, "made": made, "tables": counts})
    for table in tables:
        hidden = () if secrets else SECRET_COLUMNS.get(table.name, ())
        order = list(table.primary_key.columns)
        for row in connection.execute(select(table).order_by(*order)).mappings():
            line([table.name, {name: "" if name in hidden else plain(value) for name, value in row.items()}])
    file.write(json.dumps({"sha256": digest.hexdigest()}).encode() + b"\n")
    return sum(counts.values())


def plain(value: Any) -> Any:
    """Return a column's value as JSON holds it."""
    if isinstance(value, bytes | memoryview):
        return base64.b64encode(bytes(value)).decode()
    return value.isoformat() if isinstance(value, date | datetime) else value


def lines_of(path: Path) -> Iterator[tuple[bytes, Any]]:
    """Yield each line with its value; raises BadInput for a file that is not ours."""
    try:
        with path.open("rb") as file:
            for number, data in enumerate(file, 1):
                try:
                    yield data, json.loads(data)
                except ValueError:
                    raise BadInput(f"{path} is not what `reminders export --all` wrote: line {number}.") from None
    except OSError as error:
        raise BadInput(f"{path} cannot be read: {error.strerror}.") from None


def checked_header(path: Path) -> Mapping[str, Any]:
    """Return a file's header once the whole file is known to be as it was written; raises BadInput."""
    digest, header, last = hashlib.sha256(), None, None
    for data, value in lines_of(path):
        if header is None:
            header = value
            if not isinstance(value, dict) or value.get("format") != FORMAT:
                raise BadInput(f"{path} is not what `reminders export --all` wrote.")
        if last is not None:
            digest.update(last[0])
        last = (data, value)
    if header is None or last is None or last[1] != {"sha256": digest.hexdigest()}:
        raise BadInput(f"{path} was cut short or changed; nothing was brought in.")
    if header["version"] != VERSION or header["schema"] != schema.newest():
        raise BadInput(f"{path} was written by another version of this program (schema {header['schema']}).")
    return dict(header)


def read_into(tx: Tx, path: Path) -> int:
    """Put every row of a checked file into empty tables; return how many. The ids stay as they were."""
    tables = {table.name: table for table in metadata.sorted_tables}
    waiting: list[dict[str, Any]] = []
    at, total = "", 0
    for _, value in lines_of(path):
        if not isinstance(value, list):
            continue
        name, row = value
        if waiting and (name != at or len(waiting) >= BATCH):
            put_in(tx, tables[at], waiting)
            waiting = []
        at = name
        waiting.append(typed(tables[name], row))
        total += 1
    if waiting:
        put_in(tx, tables[at], waiting)
    if tx.get_bind().dialect.name == "postgresql":
        set_sequences(tx)
    return total


def put_in(tx: Tx, table: Table, rows: list[dict[str, Any]]) -> None:
    """Insert rows; a column that names another row of the same table is filled in afterwards, when all are there."""
    inward = [column.name for column in table.columns if any(key.column.table is table for key in column.foreign_keys)]
    later = [{name: row[name] for name in ("id", *inward)} for row in rows if any(row[name] for name in inward)]
    tx.execute(insert(table), [{**row, **dict.fromkeys(inward)} for row in rows])
    for row in later:
        tx.execute(update(table).where(table.c.id == row["id"]).values({name: row[name] for name in inward}))


def typed(table: Table, row: Mapping[str, Any]) -> dict[str, Any]:
    """Return a line's values as the table's columns take them."""
    made = dict(row)
    for column in table.columns:
        value = made.get(column.name)
        if not isinstance(value, str):
            continue
        kind = getattr(column.type, "impl", column.type)
        if isinstance(column.type, LargeBinary):
            made[column.name] = base64.b64decode(value)
        elif isinstance(kind, DateTime) or isinstance(column.type, DateTime):
            made[column.name] = datetime.fromisoformat(value)
        elif isinstance(column.type, Date):
            made[column.name] = date.fromisoformat(value)
    return made


def set_sequences(tx: Tx) -> None:
    """Let PostgreSQL's number sequences go on after the highest id brought in."""
    for table in metadata.sorted_tables:
        if "id" in table.columns and table.columns["id"].autoincrement:
            name = f'"{table.name}"'
            tx.execute(
                text(
                    f"SELECT setval(pg_get_serial_sequence('{name}', 'id'), "  # noqa: S608 - names of our own tables
                    f"(SELECT coalesce(max(id), 0) + 1 FROM {name}), false)"
                )
            )


def empty_tables(tx: Tx) -> None:
    """Take every row away, children first."""
    for table in reversed(metadata.sorted_tables):
        tx.execute(table.delete())
