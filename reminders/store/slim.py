"""Clients, addresses, days and sessions as far as planning and claiming look at them: a crowd's rows are wide, and
making whole ones of thousands in one minute costs more than planning them.

They are read, never written; what must change is fetched whole.
"""

import json
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, fields
from datetime import date, datetime
from typing import Any

from sqlalchemy import ARRAY, Dialect, Integer, String, TypeDecorator, bindparam, select
from sqlalchemy.ext.compiler import compiles
from sqlalchemy.sql.functions import FunctionElement
from sqlalchemy.types import NullType, TypeEngine
from sqlmodel import col

from reminders.store.db import Tx, ask
from reminders.store.tables import Client, Contact, ExerciseSession, Schedule


class IdList(TypeDecorator[Sequence[int]]):
    """Ids given to a question as one value: a JSON list on SQLite, an array on PostgreSQL.

    Two hundred single values a question, in some ten questions a batch, cost a twentieth of planning.
    """

    impl = String
    cache_ok = True

    def load_dialect_impl(self, dialect: Dialect) -> TypeEngine[Any]:
        """Return the type that a database takes."""
        wanted: TypeEngine[Any] = ARRAY(Integer) if dialect.name == "postgresql" else String()
        return dialect.type_descriptor(wanted)

    def process_bind_param(self, value: Iterable[int] | None, dialect: Dialect) -> Any:
        """Return the ids as a database takes them."""
        ids = list(value or ())
        return ids if dialect.name == "postgresql" else json.dumps(ids)


class Among(FunctionElement[Any]):
    """Whether a column holds one of the ids that a question is given as `ids`."""

    inherit_cache = True
    type = NullType()  # as a Boolean it would be compared with 1, which no index serves


@compiles(Among, "sqlite")
def among_on_sqlite(element: Any, compiler: Any, **options: Any) -> str:
    """Return the condition in SQLite's words."""
    column, ids = (compiler.process(one, **options) for one in element.clauses)
    return f"{column} IN (SELECT value FROM json_each({ids}))"  # noqa: S608 - compiled parts, no values


@compiles(Among, "postgresql")
def among_on_postgres(element: Any, compiler: Any, **options: Any) -> str:
    """Return the condition in PostgreSQL's words."""
    column, ids = (compiler.process(one, **options) for one in element.clauses)
    return f"{column} = ANY({ids})"


def among(column: Any) -> Any:
    """Return the condition that a column holds one of the ids that a question is given as `ids`."""
    return Among(column, bindparam("ids", type_=IdList()))


@dataclass(frozen=True, slots=True)
class SlimSession:
    """A planned session."""

    id: int
    client_id: int
    on_date: date
    due_at: datetime


@dataclass(frozen=True, slots=True)
class SlimClient:
    """A client, as her row has it."""

    id: int
    clinic_id: int
    state: str
    channel: str
    language: str
    time_zone: str
    window: str
    weekly_only: bool


@dataclass(frozen=True, slots=True)
class SlimContact:
    """An address, as its row has it."""

    id: int
    client_id: int
    kind: str
    address: str
    consent: str
    unusable: str
    confirmed_at: datetime | None
    reminders_unconfirmed: int


@dataclass(frozen=True, slots=True)
class SlimSchedule:
    """Days and hour of a client from a date on."""

    client_id: int
    from_on: date
    days: str
    time: str
    time_zone: str


@dataclass(slots=True)
class ShownClient:
    """A client, as far as judging and rendering a message to her look at her."""

    id: int
    clinic_id: int
    name: str
    state: str
    therapist_id: int
    language: str
    time_zone: str
    channel: str
    window: str
    compact_doses: bool
    next_session_easy: bool
    easy_sessions_left: int
    easy_until_alert_closed: bool
    news: dict[str, Any]
    morning_on: date | None
    morning_session_id: int | None
    emergency_told_on: date | None
    active_on: date | None
    created_at: datetime | None
    died_on: date | None


@dataclass
class ShownSession:
    """A session, as far as judging and rendering a message about it look at it, and what its reminder shows."""

    id: int
    client_id: int
    on_date: date
    state: str
    completed: str | None
    is_easy: bool
    items: list[dict[str, Any]]
    list_letter: str
    program_id: int | None
    rung: int


AnyClient = Client | SlimClient | ShownClient
AnyContact = Contact | SlimContact


def columns_of(table: type, shape: type) -> list[Any]:
    """Return the columns of a table that a shape names, in its order."""
    return [getattr(table, one.name) for one in fields(shape)]


OF_SESSION, OF_CLIENT = columns_of(ExerciseSession, SlimSession), columns_of(Client, SlimClient)
# What every batch asks, made once.
DUE = (
    select(*OF_SESSION, *OF_CLIENT)
    .join(Client, col(ExerciseSession.client_id) == col(Client.id))
    .where(
        col(ExerciseSession.state) == "planned",
        col(ExerciseSession.queued_at).is_(None),
        col(ExerciseSession.due_at) <= bindparam("now"),
    )
    .order_by(col(ExerciseSession.due_at), col(ExerciseSession.id))
    .limit(bindparam("most"))
    .with_for_update(of=[ExerciseSession, Client], skip_locked=True, key_share=True)
)
IDS_DUE = (
    select(col(ExerciseSession.id))
    .where(
        col(ExerciseSession.state) == "planned",
        col(ExerciseSession.queued_at).is_(None),
        col(ExerciseSession.due_at) <= bindparam("now"),
    )
    .order_by(col(ExerciseSession.due_at), col(ExerciseSession.id))
)
CONTACTS = select(*columns_of(Contact, SlimContact)).where(among(col(Contact.client_id))).order_by(col(Contact.id))
SCHEDULES = (
    select(*columns_of(Schedule, SlimSchedule)).where(among(col(Schedule.client_id))).order_by(col(Schedule.from_on))
)
CLIENTS = select(*columns_of(Client, ShownClient)).where(among(col(Client.id)))
SESSIONS = select(*columns_of(ExerciseSession, ShownSession)).where(among(col(ExerciseSession.id)))


def due_sessions(tx: Tx, now: datetime, limit: int, only: int | None = None) -> list[tuple[SlimSession, SlimClient]]:
    """Return planned sessions whose hour has come, with their clients, locked against other workers on PostgreSQL.

    `only` is the id of the one session to look at.
    """
    cut = len(OF_SESSION)
    wanted = DUE if only is None else DUE.where(col(ExerciseSession.id) == only)
    return [(SlimSession(*row[:cut]), SlimClient(*row[cut:])) for row in ask(tx, wanted, {"now": now, "most": limit})]


def ids_due(tx: Tx, now: datetime) -> list[int]:
    """Return the ids of all planned sessions whose hour has come, the oldest first."""
    return list(ask(tx, IDS_DUE, {"now": now}).scalars())


def contacts_of(tx: Tx, client_ids: Sequence[int]) -> Iterator[SlimContact]:
    """Yield the addresses of clients, in the order they were written."""
    for row in ask(tx, CONTACTS, {"ids": client_ids}):
        yield SlimContact(*row)


def schedules_of(tx: Tx, client_ids: Iterable[int]) -> Iterator[SlimSchedule]:
    """Yield the days and hours of clients, oldest first."""
    for row in ask(tx, SCHEDULES, {"ids": list(client_ids)}):
        yield SlimSchedule(*row)


def clients_shown(tx: Tx, ids: Iterable[int]) -> Iterator[ShownClient]:
    """Yield clients by their ids."""
    for row in ask(tx, CLIENTS, {"ids": list(ids)}):
        yield ShownClient(*row)


def sessions_shown(tx: Tx, ids: Iterable[int]) -> Iterator[ShownSession]:
    """Yield sessions by their ids."""
    for row in ask(tx, SESSIONS, {"ids": list(ids)}):
        yield ShownSession(*row)
