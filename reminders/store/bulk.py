"""Writing many rows of the outbox and of sessions at once, by plain SQL: a crowd is due in the same minute.

What a row means, and writing one alone, is in outbox.py and in the flows; nothing is decided here.
"""

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from typing import Any

from sqlalchemy import (
    ColumnElement,
    Row,
    Table,
    bindparam,
    false,
    insert,
    inspect,
    literal_column,
    null,
    select,
    true,
    update,
)
from sqlalchemy.dialects import postgresql, sqlite
from sqlmodel import SQLModel, col

from reminders.core.kinds import kind_of
from reminders.store.around import note_added
from reminders.store.db import Tx, is_postgres
from reminders.store.slim import ShownSession
from reminders.store.tables import Attempt, Client, Contact, ExerciseSession, Outbound

Values = dict[str, Any]
STANDS_IN_FOR = "stands_in_for"  # where a copy to another address keeps what rode in the reminder that failed
RIDES = "rides"  # where a reminder keeps what rides in it beside the exercises, among its details
SOME_DAY = datetime(2000, 1, 1, tzinfo=UTC)


@dataclass(frozen=True, slots=True)
class ToRemind:
    """A session that no address has accepted a reminder of yet."""

    id: int
    on_date: date
    is_easy: bool


def table_of(row: type[SQLModel]) -> Table:
    """Return the table of a row class."""
    found: Table = row.__table__  # type: ignore[attr-defined]
    return found


OUTBOUND, ATTEMPT, SESSION = table_of(Outbound), table_of(Attempt), table_of(ExerciseSession)
# What a message has when it is written; the rest comes with its claim and what becomes of it.
BORN = (
    "key", "clinic_id", "client_id", "staff_id", "contact_id", "session_id", "alert_id", "inbound_id", "kind",
    "channel", "to", "language", "template", "details", "priority", "order_full", "is_answer", "due_at", "expires_at",
    "window_from", "window_until", "time_zone", "created_at",
)  # fmt: skip
PLANNED = ("client_id", "on_date", "due_at")
BLANK_MESSAGE = Outbound(key="", clinic_id=0, kind="", channel="", to="", due_at=SOME_DAY, created_at=SOME_DAY)
BLANK_SESSION = ExerciseSession(client_id=0, on_date=SOME_DAY.date(), due_at=SOME_DAY)
EMPTY_MESSAGE = BLANK_MESSAGE.model_dump(include=set(BORN))


def setting(table: Table, **names: str) -> Any:
    """Return an UPDATE of a row by its id, for many rows: a column for each name of a value."""
    return update(table).where(table.c.id == bindparam("row")).values({c: bindparam(n) for c, n in names.items()})


TEXT_WORDS = setting(OUTBOUND, body="words", parts="count")
MAIL_WORDS = setting(OUTBOUND, to="address", subject="head", body="words", html="page", headers="heads")
LOADS = setting(OUTBOUND, details="load")
ACCEPT = setting(OUTBOUND, receipt="given", accepted_at="at", settled_at="at").values(
    state=literal_column("'accepted'"), claim_until=null()
)
QUEUED = setting(SESSION, queued_at="at", closes_at="closes")
SHOWN = setting(SESSION, list_letter="letter", program_id="program", rung="place", is_easy="easy", items="lines")
REMINDED = (
    update(SESSION)
    .where(SESSION.c.id.in_(bindparam("ids", expanding=True)))
    .values(state=literal_column("'reminded'"), reminded_at=bindparam("at"), settled_at=null())
)
BEGIN_ATTEMPT = insert(ATTEMPT).values(
    outbound_id=bindparam("outbound_id"), number=bindparam("number"), began_at=bindparam("began_at"),
    outcome=literal_column("''"), code=literal_column("''"), receipt=literal_column("''"),
)  # fmt: skip


def constant(value: Any) -> ColumnElement[Any]:
    """Return a value that every row of an INSERT shares as a part of its text: it is not bound a row at a time."""
    if value is None:
        return null()
    if isinstance(value, bool):
        return true() if value else false()
    return literal_column(str(value) if isinstance(value, int) else "'" + (value or "") + "'")


def born(blank: SQLModel, names: Sequence[str]) -> Values:
    """Return what an INSERT gives each column: the named ones a row's own value, the others their blank's."""
    rest = {
        name: constant(json.dumps(value) if isinstance(value, dict | list) else value)
        for name, value in blank.model_dump(exclude={"id", *names}).items()
    }
    return {**rest, **{name: bindparam(name) for name in names}}


def unless_there(table: Table, *names: str, values: Values | None = None) -> dict[bool, Any]:
    """Return, by whether the database is PostgreSQL, the INSERT that leaves a known row alone; made once."""
    made = {dialect is postgresql: dialect.insert(table) for dialect in (postgresql, sqlite)}
    return {
        is_theirs: (one.values(values) if values else one).on_conflict_do_nothing(index_elements=names)
        for is_theirs, one in made.items()
    }


QUEUE = unless_there(OUTBOUND, "key", values=born(BLANK_MESSAGE, BORN))
PLAN = insert(SESSION).values(born(BLANK_SESSION, PLANNED))
QUEUE_ONE = {is_theirs: statement.returning(OUTBOUND.c.id) for is_theirs, statement in QUEUE.items()}


def message(kind: str, **values: Any) -> Values:
    """Return what a message of a kind has when it is written, with what its kind asks for."""
    rules = kind_of(kind)
    expires_at = values.get("expires_at")
    if expires_at is None and rules.expires_minutes:
        expires_at = values["due_at"] + timedelta(minutes=rules.expires_minutes)
    return {
        **EMPTY_MESSAGE,
        **values,
        "kind": kind,
        "expires_at": expires_at,
        "priority": rules.priority,
        "order_full": rules.order_full,
        "is_answer": rules.is_answer,
    }


def queue(tx: Tx, messages: Sequence[Values]) -> None:
    """Write messages to be sent; keys already there are left alone."""
    if messages:
        note_added(tx, None, "waiting", "asking")
        tx.connection().execute(QUEUE[is_postgres(tx)], list(messages))


def queue_one(tx: Tx, values: Values) -> int | None:
    """Write one message to be sent; return its id, None when its key is there already."""
    note_added(tx, values["client_id"], "waiting", "asking")
    found: int | None = tx.connection().execute(QUEUE_ONE[is_postgres(tx)], values).scalar_one_or_none()
    return found


def plan_sessions(tx: Tx, days: Iterable[tuple[int, date, datetime]]) -> None:
    """Write planned sessions: client, local date, due instant."""
    rows = [dict(zip(PLANNED, one, strict=True)) for one in days]
    if rows:
        tx.connection().execute(PLAN, rows)


def mark_queued(tx: Tx, sessions: Sequence[Values]) -> None:
    """Note that the reminders of sessions were written: row, at, closes."""
    if sessions:
        tx.connection().execute(QUEUED, list(sessions))


def put(row: object, **values: Any) -> None:
    """Set values on a row that this module writes; nothing else notices that they changed."""
    row.__dict__.update(values)


def write_claims(
    tx: Tx, rows: Sequence[Outbound], now: datetime, until: datetime, called_at: datetime, by: str
) -> None:
    """Write that messages are claimed, with their words, and that attempts began; they leave the transaction."""
    if not rows:
        return
    for row in rows:
        if inspect(row).modified:  # else the row would be written a second time
            tx.expunge(row)
    connection = tx.connection()
    claimed = update(OUTBOUND).where(OUTBOUND.c.id.in_([row.id for row in rows]))
    connection.execute(
        claimed.values(
            state="claimed", claimed_at=now, claim_until=until, claimed_by=by, called_at=called_at, lookups=0,
            attempts=OUTBOUND.c.attempts + 1,
        )
    )  # fmt: skip
    write_words(tx, rows)
    for row in rows:
        put(
            row, state="claimed", claimed_at=now, claim_until=until, claimed_by=by, called_at=called_at, lookups=0,
            attempts=row.attempts + 1,
        )  # fmt: skip
    began = [{"outbound_id": row.id, "number": row.attempts, "began_at": now} for row in rows]
    connection.execute(BEGIN_ATTEMPT, began)


def write_words(tx: Tx, rows: Sequence[Outbound]) -> None:
    """Write what messages say, as it was put on them."""
    connection = tx.connection()
    texts = [{"row": row.id, "words": row.body, "count": row.parts} for row in rows if row.channel == "sms"]
    mails = [
        {
            "row": row.id, "address": row.to, "head": row.subject, "words": row.body, "page": row.html,
            "heads": row.headers,
        }
        for row in rows
        if row.channel != "sms"
    ]  # fmt: skip
    loads = [{"row": row.id, "load": row.details} for row in rows if RIDES in row.details]
    for statement, words in ((TEXT_WORDS, texts), (MAIL_WORDS, mails), (LOADS, loads)):
        if words:
            connection.execute(statement, words)


def write_shown(tx: Tx, sessions: Iterable[ExerciseSession | ShownSession]) -> None:
    """Write what the reminders of sessions show."""
    rows = [
        {
            "row": one.id, "letter": one.list_letter, "program": one.program_id, "place": one.rung,
            "easy": one.is_easy, "lines": one.items,
        }
        for one in sessions
    ]  # fmt: skip
    if rows:
        tx.connection().execute(SHOWN, rows)


def accept(tx: Tx, receipts: Sequence[tuple[int, str]], now: datetime) -> None:
    """Write that messages were accepted, each with its receipt."""
    rows = [{"row": row, "given": receipt, "at": now} for row, receipt in receipts]
    if rows:
        tx.connection().execute(ACCEPT, rows)


def remind(tx: Tx, sessions: Sequence[int], now: datetime) -> None:
    """Write that sessions were reminded."""
    if sessions:
        tx.connection().execute(REMINDED, {"ids": list(sessions), "at": now})


def sessions_to_remind(tx: Tx, ids: Iterable[int | None]) -> dict[int, ToRemind]:
    """Return those of these sessions that are not reminded or reported yet."""
    columns = select(SESSION.c.id, SESSION.c.on_date, SESSION.c.is_easy)
    wanted = columns.where(SESSION.c.id.in_(known(ids)), SESSION.c.state.in_(("planned", "unsent")))
    return {number: ToRemind(number, day, easy) for number, day, easy in tx.execute(wanted)}


def reminded_clients(tx: Tx, ids: Iterable[int | None]) -> dict[int, Row[Any]]:
    """Return whether clients are written to weekly, by the names of their columns."""
    table = table_of(Client)
    rows = tx.execute(select(table.c.id, table.c.weekly_only).where(table.c.id.in_(known(ids))))
    return {row.id: row for row in rows}


def count_unconfirmed(tx: Tx, ids: Iterable[int | None]) -> None:
    """Count one more reminder to each of these contacts that never answered."""
    count = col(Contact.reminders_unconfirmed)
    never = update(Contact).where(col(Contact.id).in_(known(ids)), col(Contact.confirmed_at).is_(None))
    tx.execute(never.values(reminders_unconfirmed=count + 1))


def known(ids: Iterable[int | None]) -> list[int]:
    """Return ids without the ones that are not there, each once."""
    return sorted({one for one in ids if one is not None})
