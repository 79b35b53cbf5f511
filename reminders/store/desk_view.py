"""What the desk sees: clients with contacts, consent and delivery, the work list, counts. Never words and never pain.

Every question is for a whole clinic at once; nothing here asks client by client.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import func, or_
from sqlmodel import col, select

from reminders.core.schedule import local_date
from reminders.store.db import Tx
from reminders.store.tables import (
    Client,
    ClientProgram,
    Clinic,
    ClinicNote,
    Contact,
    ExerciseSession,
    Hold,
    Outbound,
    Pause,
    Staff,
)
from reminders.store.today import chunks, contacts_of, seen

INVITED_DAYS = 3
DESK_NOTES = ("desk", "operator", "reschedule", "stranger")
PAGE = 50


@dataclass(frozen=True)
class Line:
    """One client as lists show her."""

    client: Client
    therapist: str
    contacts: Sequence[Contact]
    is_held: bool
    paused_until: date | None
    last: str = ""  # what became of the newest message to her


@dataclass(frozen=True)
class WorkList:
    """What the desk should look at, by kind."""

    invited: list[Client] = field(default_factory=list)
    unconfirmed: list[tuple[Client, Contact]] = field(default_factory=list)
    failing: list[tuple[Client, Contact]] = field(default_factory=list)
    held: list[tuple[Client, Hold]] = field(default_factory=list)
    no_therapist: list[Client] = field(default_factory=list)
    past_recheck: list[tuple[Client, date]] = field(default_factory=list)
    notes: list[tuple[ClinicNote, Client | None]] = field(default_factory=list)

    @property
    def count(self) -> int:
        """How many things stand on it."""
        lists: tuple[list[Any], ...] = (self.invited, self.unconfirmed, self.failing, self.held)
        return sum(map(len, (*lists, self.no_therapist, self.past_recheck, self.notes)))


def clients_found(
    tx: Tx, clinic_id: int, therapist_ids: frozenset[int] | None, words: str, state: str, after: int = 0
) -> list[Client]:
    """Return a page of clients by id, whose name, address or chart number holds the words."""
    statement = select(Client).where(Client.clinic_id == clinic_id, seen(therapist_ids), col(Client.id) > after)
    if state:
        statement = statement.where(Client.state == state)
    if words:
        like = f"%{words.replace('%', '').replace('_', '')}%"
        at = select(Contact.client_id).where(col(Contact.address).ilike(like))
        statement = statement.where(
            or_(col(Client.name).ilike(like), col(Client.chart_id).ilike(like), col(Client.id).in_(at))
        )
    return list(tx.exec(statement.order_by(col(Client.id)).limit(PAGE + 1)))


def lines(tx: Tx, found: Sequence[Client], now: datetime) -> list[Line]:
    """Return clients as lists show them, in a constant number of questions."""
    ids = [client.id or 0 for client in found]
    contacts = contacts_of(tx, ids)
    team = {
        one.id: one.name for one in tx.exec(select(Staff).where(col(Staff.id).in_({c.therapist_id for c in found})))
    }
    held: set[int] = set()
    pauses: dict[int, date] = {}
    last: dict[int, str] = {}
    for part in chunks(ids):
        held |= set(tx.exec(select(Hold.client_id).where(col(Hold.client_id).in_(part), col(Hold.ended_at).is_(None))))
        open_pauses = select(Pause).where(col(Pause.client_id).in_(part), col(Pause.ended_at).is_(None))
        pauses |= {one.client_id: one.until_on for one in tx.exec(open_pauses)}
        newest = (
            select(func.max(Outbound.id)).where(col(Outbound.client_id).in_(part)).group_by(col(Outbound.client_id))
        )
        states = select(Outbound.client_id, Outbound.state).where(col(Outbound.id).in_(newest))
        last |= {client_id or 0: state for client_id, state in tx.exec(states)}
    return [
        Line(
            client,
            team.get(client.therapist_id, ""),
            contacts.get(client.id or 0, ()),
            client.id in held,
            until if (until := pauses.get(client.id or 0)) and until >= local_date(now, client.time_zone) else None,
            last.get(client.id or 0, ""),
        )
        for client in found
    ]


def work_list(tx: Tx, clinic: Clinic, now: datetime) -> WorkList:
    """Return what the desk should look at."""
    ours, here = Client.clinic_id == clinic.id, col(Client.state).in_(("invited", "active"))
    today = local_date(now, clinic.time_zone)
    invited = select(Client).where(
        ours, Client.state == "invited", col(Client.invited_at) <= now - timedelta(days=INVITED_DAYS)
    )
    pairs = select(Client, Contact).join(Contact, col(Contact.client_id) == col(Client.id)).where(ours, here)
    unconfirmed = pairs.where(
        Contact.consent == "open", col(Contact.confirmed_at).is_(None), col(Contact.reminders_unconfirmed) >= 2
    )
    failing = pairs.where(or_(col(Contact.unusable) != "", col(Contact.provider_blocked).is_(True)))
    held = (
        select(Client, Hold)
        .join(Hold, col(Hold.client_id) == col(Client.id))
        .where(ours, col(Hold.ended_at).is_(None))
        .order_by(col(Hold.opened_at))
    )
    gone = select(Staff.id).where(Staff.clinic_id == clinic.id, col(Staff.is_active).is_(False))
    orphans = select(Client).where(ours, here, col(Client.therapist_id).in_(gone))
    notes = (
        select(ClinicNote, Client)
        .outerjoin(Client, col(ClinicNote.client_id) == col(Client.id))
        .where(
            ClinicNote.clinic_id == clinic.id,
            col(ClinicNote.closed_at).is_(None),
            col(ClinicNote.kind).in_(DESK_NOTES),
        )
        .order_by(col(ClinicNote.at))
    )
    return WorkList(
        invited=list(tx.exec(invited.order_by(col(Client.invited_at)))),
        unconfirmed=list(tx.exec(unconfirmed.order_by(col(Client.id)))),
        failing=list(tx.exec(failing.order_by(col(Client.id)))),
        held=list(tx.exec(held)),
        no_therapist=list(tx.exec(orphans.order_by(col(Client.id)))),
        past_recheck=past_recheck(tx, clinic, today),
        notes=list(tx.exec(notes)),
    )


def past_recheck(tx: Tx, clinic: Clinic, today: date) -> list[tuple[Client, date]]:
    """Return the clients whose newest version is past its re-check date, the longest first."""
    newest = select(func.max(ClientProgram.id)).group_by(col(ClientProgram.client_id))
    statement = (
        select(Client, ClientProgram)
        .join(ClientProgram, col(ClientProgram.client_id) == col(Client.id))
        .where(
            Client.clinic_id == clinic.id,
            Client.state == "active",
            col(ClientProgram.id).in_(newest),
            col(ClientProgram.recheck_on) < today,
        )
        .order_by(col(ClientProgram.recheck_on))
    )
    return [
        (client, version.recheck_on)
        for client, version in tx.exec(statement)
        if version.recheck_on and (version.rechecked_on is None or version.rechecked_on < version.recheck_on)
    ]


def delivery(tx: Tx, clinic_id: int, since: datetime) -> list[tuple[str, str, str, int]]:
    """Return how many messages of each kind and channel are in which state, since an instant."""
    statement = (
        select(Outbound.kind, Outbound.channel, Outbound.state, func.count())
        .where(Outbound.clinic_id == clinic_id, col(Outbound.created_at) >= since)
        .group_by(col(Outbound.kind), col(Outbound.channel), col(Outbound.state))
    )
    return sorted(tx.exec(statement))


def failures(tx: Tx, clinic_id: int, since: datetime, limit: int = 100) -> list[tuple[Outbound, Client | None]]:
    """Return the newest messages that did not arrive, with whose they are."""
    statement = (
        select(Outbound, Client)
        .outerjoin(Client, col(Outbound.client_id) == col(Client.id))
        .where(
            Outbound.clinic_id == clinic_id,
            col(Outbound.created_at) >= since,
            col(Outbound.state).in_(("failed", "expired", "unknown")),
        )
        .order_by(col(Outbound.id).desc())
        .limit(limit)
    )
    return list(tx.exec(statement))


def counts(tx: Tx, clinic_id: int, today: date) -> dict[str, int]:
    """Return how many clients are in each state and how many sessions fall on today."""
    by_state = select(Client.state, func.count()).where(Client.clinic_id == clinic_id).group_by(col(Client.state))
    found = dict(tx.exec(by_state).all())
    due = (
        select(func.count())
        .select_from(ExerciseSession)
        .join(Client, col(ExerciseSession.client_id) == col(Client.id))
        .where(Client.clinic_id == clinic_id, ExerciseSession.on_date == today, ExerciseSession.kind == "planned")
    )
    return {**found, "due today": tx.exec(due).one()}
