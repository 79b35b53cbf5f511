"""Clients, addresses and sessions as far as planning looks at them: a crowd's rows are wide, and making whole ones of
thousands in one minute costs more than planning them.

They are read, never written; what must change is fetched whole.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime

from sqlalchemy import select
from sqlmodel import col

from reminders.store.db import Tx
from reminders.store.tables import Client, Contact, ExerciseSession


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


AnyClient = Client | SlimClient
AnyContact = Contact | SlimContact

OF_SESSION = [getattr(ExerciseSession, name) for name in SlimSession.__slots__]
OF_CLIENT = [getattr(Client, name) for name in SlimClient.__slots__]
OF_CONTACT = [getattr(Contact, name) for name in SlimContact.__slots__]


def due_sessions(tx: Tx, now: datetime, limit: int) -> list[tuple[SlimSession, SlimClient]]:
    """Return planned sessions whose hour has come, with their clients, locked against other workers on PostgreSQL."""
    statement = (
        select(*OF_SESSION, *OF_CLIENT)
        .join(Client, col(ExerciseSession.client_id) == col(Client.id))
        .where(
            col(ExerciseSession.state) == "planned",
            col(ExerciseSession.queued_at).is_(None),
            col(ExerciseSession.due_at) <= now,
        )
        .order_by(col(ExerciseSession.due_at), col(ExerciseSession.id))
        .limit(limit)
        .with_for_update(of=[ExerciseSession, Client], skip_locked=True, key_share=True)
    )
    cut = len(OF_SESSION)
    return [(SlimSession(*row[:cut]), SlimClient(*row[cut:])) for row in tx.execute(statement)]


def contacts_of(tx: Tx, client_ids: Sequence[int]) -> Iterator[SlimContact]:
    """Yield the addresses of clients, in the order they were written."""
    statement = select(*OF_CONTACT).where(col(Contact.client_id).in_(client_ids)).order_by(col(Contact.id))
    for row in tx.execute(statement):
        yield SlimContact(*row)
