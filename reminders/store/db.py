"""The one door to the database: `Database.begin` is the only way to write and the only commit; `Database.read` looks.

SQLite runs with WAL, foreign keys, synchronous=FULL and BEGIN IMMEDIATE: a deferred transaction that turns into a
writer loses updates silently. On PostgreSQL a writer locks the client's row first (`lock_client`).
"""

import sqlite3
import threading
import time
import weakref
from collections.abc import Iterable, Iterator, Mapping, Sequence
from contextlib import contextmanager, nullcontext
from pathlib import Path
from typing import Any, Protocol

from sqlalchemy import CursorResult, Engine, TextClause, create_engine, event, text
from sqlalchemy.engine import make_url
from sqlmodel import Session as Tx

from reminders.errors import BadInput
from reminders.store.arrivals import Arrivals

__all__ = ["Database", "Tx", "ask", "free_clients", "is_postgres", "lock_client", "lock_clients", "sqlite_path"]

LOOK_AGAIN_SECONDS = 0.002
LONGEST_WAIT_SECONDS = 30.0
BUSY_TIMEOUT = f"PRAGMA busy_timeout={LONGEST_WAIT_SECONDS * 1000:.0f}"
LOCK_CLIENT = text("SELECT id FROM client WHERE id = :id FOR NO KEY UPDATE")
LOCK_FREE_CLIENTS = text("SELECT id FROM client WHERE id = ANY(:ids) ORDER BY id FOR NO KEY UPDATE SKIP LOCKED")


def sqlite_path(url: str) -> Path | None:
    """Return the file of an SQLite address, None for any other database or one in memory."""
    parsed = make_url(url)
    if parsed.get_backend_name() != "sqlite" or not parsed.database or parsed.database == ":memory:":
        return None
    return Path(parsed.database).absolute()


def make_engine(url: str) -> Engine:
    """Return an engine that hides parameters from logs and errors."""
    backend = make_url(url).get_backend_name()
    if backend == "sqlite":
        engine = create_engine(url, hide_parameters=True, connect_args={"timeout": 30, "check_same_thread": False})
        event.listen(engine, "connect", prepare_sqlite)
        event.listen(engine, "begin", begin_sqlite)
        return engine
    if backend == "postgresql":
        return create_engine(url, hide_parameters=True, pool_pre_ping=True, pool_size=10, max_overflow=20)
    raise BadInput("REMINDERS_DATABASE_URL must start with sqlite:/// or postgresql+psycopg://.")


def prepare_sqlite(connection: sqlite3.Connection, _record: Any) -> None:
    """Set what every connection needs; transactions are begun by us, never by the driver."""
    connection.isolation_level = None
    for pragma in ("journal_mode=WAL", "foreign_keys=ON", "synchronous=FULL"):
        connection.execute(f"PRAGMA {pragma}")
    connection.execute(BUSY_TIMEOUT)


def begin_sqlite(connection: Any) -> None:
    """Take the write lock at once for writers, so that nothing read can have changed by the time of writing."""
    if not connection.get_execution_options().get("writing", False):
        connection.exec_driver_sql("BEGIN")
    elif not has_begun(connection.connection.driver_connection):
        connection.exec_driver_sql("BEGIN IMMEDIATE")


def has_begun(connection: sqlite3.Connection) -> bool:
    """Begin to write as soon as no other process does; False when that takes longer than anybody should wait.

    SQLite's own way sleeps up to a tenth of a second between looks: a process that writes often would keep out others.
    """
    ends_at = time.monotonic() + LONGEST_WAIT_SECONDS
    connection.execute("PRAGMA busy_timeout=0")
    try:
        while time.monotonic() < ends_at:
            try:
                connection.execute("BEGIN IMMEDIATE")
            except sqlite3.OperationalError as error:
                if error.sqlite_errorcode & 0xFF != sqlite3.SQLITE_BUSY:
                    return False
                time.sleep(LOOK_AGAIN_SECONDS)
            else:
                return True
    finally:
        connection.execute(BUSY_TIMEOUT)
    return False


class Watcher(Protocol):
    """Sees what each write transaction writes, and keeps of it what must outlive the database."""

    def watch(self, tx: Tx) -> Any:
        """Return what a transaction writes from here on, filled in as it goes."""

    def keep(self, tx: Tx, seen: Any) -> None:
        """Keep what was seen; called right before the commit."""


class Database:
    """A database and its transactions; `journal`, where there is one, is told of each before its commit."""

    journal: Watcher | None = None

    def __init__(self, url: str) -> None:
        """Open the database that an address names; nothing is created."""
        self.url = url
        self.engine = make_engine(url)
        self.own = threading.local()
        self.lookers: list[sqlite3.Connection] = []
        self.is_postgres = self.engine.dialect.name == "postgresql"
        # SQLite has one writer, and who finds it busy looks again and again; threads of one process queue here.
        self.turn = threading.Lock()
        path = sqlite_path(url)
        self.arrivals = Arrivals(path.with_name(f"{path.name}.arriving")) if path else None
        # A command forgets its database when it ends; the connections must not wait for the process to end too.
        weakref.finalize(self, self.engine.dispose)

    @contextmanager
    def begin(self) -> Iterator[Tx]:
        """Run a block in one write transaction: committed at its end, rolled back on any error."""
        with nullcontext() if self.is_postgres else self.turn, self.writing() as tx:
            yield tx

    @contextmanager
    def writing(self) -> Iterator[Tx]:
        """Run a block in one write transaction; on SQLite it must be this thread's turn."""
        with self.engine.connect().execution_options(writing=True) as connection:
            tx = Tx(bind=connection, expire_on_commit=False)
            seen = self.journal.watch(tx) if self.journal else None
            try:
                yield tx
                if self.journal:
                    tx.flush()
                    self.journal.keep(tx, seen)
                tx.commit()
            except BaseException:
                tx.rollback()
                raise
            finally:
                tx.close()

    def is_free(self) -> bool:
        """Return whether a writer would not have to wait at this instant."""
        if self.is_postgres:
            return True
        if self.turn.locked():
            return False
        connection = self.looker()
        connection.execute("PRAGMA busy_timeout=0")
        try:
            connection.execute("BEGIN IMMEDIATE")
            connection.execute("ROLLBACK")
        except sqlite3.OperationalError:
            return False
        finally:
            connection.execute(BUSY_TIMEOUT)
        return True

    @contextmanager
    def read(self) -> Iterator[Tx]:
        """Run a block that only looks; whatever it changed is thrown away. Rows stay readable after it."""
        with self.engine.connect() as connection:
            tx = Tx(bind=connection, expire_on_commit=False, autoflush=False)
            try:
                yield tx
            finally:
                tx.expunge_all()  # else the rollback would make every row forget its values
                tx.rollback()
                tx.close()

    def look(self, question: TextClause, values: Mapping[str, Any]) -> Sequence[Any] | None:
        """Return one row that a question finds, read by itself at this instant: the quickest look, for one value each.

        On SQLite each thread keeps a connection of its own for it, so a date must be given as its ISO text.
        """
        if self.is_postgres:
            with self.engine.connect() as connection:
                return connection.execute(question, values).first()
        cursor = self.looker().execute(question.text, dict(values))
        try:
            found: Sequence[Any] | None = cursor.fetchone()
        finally:
            cursor.close()
        return found

    def looker(self) -> sqlite3.Connection:
        """Return this thread's own connection for looks."""
        found: sqlite3.Connection | None = getattr(self.own, "connection", None)
        if found is None:
            found = sqlite3.connect(str(self.engine.url.database), timeout=30, check_same_thread=False)
            prepare_sqlite(found, None)
            self.own.connection = found
            self.lookers.append(found)
        return found

    def close(self) -> None:
        """Give back every connection."""
        while self.lookers:
            self.lookers.pop().close()
        self.own = threading.local()
        self.engine.dispose()


def ask(tx: Tx, question: Any, values: Mapping[str, Any] | None = None) -> CursorResult[*tuple[Any, ...]]:
    """Return the rows of a question for plain columns, less dear than one for entities.

    What the transaction has changed is written first, as it is for entities.
    """
    if tx.autoflush:
        tx.flush()
    return tx.connection().execute(question, values or {})


def is_postgres(tx: Tx) -> bool:
    """Return whether a transaction is one of PostgreSQL's."""
    return tx.get_bind().dialect.name == "postgresql"


def lock_client(tx: Tx, client_id: int) -> None:
    """Let one writer at a time change what hangs on a client; SQLite has one writer anyway."""
    lock_clients(tx, [client_id])


def lock_clients(tx: Tx, client_ids: Iterable[int | None]) -> None:
    """Lock several clients, always in the order of their ids, so that no two writers wait for each other.

    NO KEY: a row that only refers to a client may still be written meanwhile, by planning for one.
    """
    if not is_postgres(tx):
        return
    for client_id in sorted({one for one in client_ids if one is not None}):
        tx.execute(LOCK_CLIENT, {"id": client_id})


def free_clients(tx: Tx, client_ids: Iterable[int | None]) -> set[int]:
    """Lock those of these clients that nobody else is writing to, waiting for none; return which."""
    wanted = sorted({one for one in client_ids if one is not None})
    if not is_postgres(tx) or not wanted:
        return set(wanted)
    return set(tx.execute(LOCK_FREE_CLIENTS, {"ids": wanted}).scalars())
