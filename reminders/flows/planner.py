"""What planning a batch of clients needs, read at once, and which session comes next for each."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime
from functools import lru_cache

from sqlalchemy import Date, bindparam
from sqlalchemy import select as columns
from sqlmodel import col, select

from reminders.core.schedule import Plan, at_local, next_day, parse_days
from reminders.flows.facts import HELD, PAUSES
from reminders.store import clients, slim
from reminders.store.db import Tx, ask
from reminders.store.slim import AnyClient, SlimContact, among
from reminders.store.tables import (
    ClientProgram,
    Clinic,
    ExerciseSession,
    Pause,
)

# What every batch asks, made once.
ENDS = (
    columns(col(ClientProgram.client_id), col(ClientProgram.end_on))
    .where(among(col(ClientProgram.client_id)))
    .order_by(col(ClientProgram.number))  # the newest counts
)
TAKEN = columns(col(ExerciseSession.client_id), col(ExerciseSession.on_date)).where(
    among(col(ExerciseSession.client_id)),
    col(ExerciseSession.kind) == "planned",
    col(ExerciseSession.on_date) >= bindparam("since", type_=Date()),
)


@dataclass
class Planner:
    """What planning a batch of clients needs, read at once."""

    clinics: Mapping[int, Clinic]
    plans: Mapping[int, list[Plan]]
    contacts: Mapping[int, list[SlimContact]]
    held: frozenset[int]
    pauses: Mapping[int, list[Pause]]
    ends: Mapping[int, date | None]
    taken: frozenset[tuple[int, date]]


def next_session(planner: Planner, client: AnyClient, after_on: date) -> ExerciseSession | None:
    """Return the session row that comes next for a client, not yet written."""
    found = upcoming(planner, client, after_on)
    return ExerciseSession(client_id=client.id or 0, on_date=found[0], due_at=found[1]) if found else None


def upcoming(planner: Planner, client: AnyClient, after_on: date) -> tuple[date, datetime] | None:
    """Return the local date and the instant of a client's next session after a date, None when she has none."""
    client_id = client.id or 0
    if client.state != "active" or not clients.open_contacts(planner.contacts.get(client_id, [])):
        return None
    closed = closed_days(tuple(planner.clinics[client.clinic_id].closed_days))
    after = after_on
    while True:
        found = next_day(planner.plans.get(client_id, []), after, closed)
        if found is None:
            return None
        day, plan = found
        end_on = planner.ends.get(client_id)
        if end_on is not None and day > end_on:
            return None
        if (client_id, day) not in planner.taken:
            return day, at_local(day, plan.time, plan.time_zone)
        after = day


@lru_cache(maxsize=64)
def closed_days(days: tuple[str, ...]) -> frozenset[date]:
    """Return a clinic's closed dates."""
    return frozenset(date.fromisoformat(day) for day in days)


def load(tx: Tx, batch: Sequence[AnyClient], since: date = date.min) -> Planner:
    """Read what planning these clients after a date needs, in a constant number of questions."""
    ids = [client.id or 0 for client in batch]
    clinic_ids = {client.clinic_id for client in batch}
    plans: dict[int, list[Plan]] = {}
    for row in slim.schedules_of(tx, ids):
        plan = Plan(parse_days(row.days), row.time, row.time_zone, row.from_on)
        plans.setdefault(row.client_id, []).append(plan)
    contacts: dict[int, list[SlimContact]] = {}
    for contact in slim.contacts_of(tx, ids):
        contacts.setdefault(contact.client_id, []).append(contact)
    pauses: dict[int, list[Pause]] = {}
    whose = {"ids": ids}
    for pause in tx.exec(PAUSES, params=whose):
        pauses.setdefault(pause.client_id, []).append(pause)
    held = ask(tx, HELD, whose).scalars()
    ends: dict[int, date | None] = {row.client_id: row.end_on for row in ask(tx, ENDS, whose)}
    taken = ask(tx, TAKEN, {**whose, "since": since})
    return Planner(
        {clinic.id or 0: clinic for clinic in tx.exec(select(Clinic).where(col(Clinic.id).in_(clinic_ids)))},
        plans,
        contacts,
        frozenset(held),
        pauses,
        ends,
        frozenset((client_id, day) for client_id, day in taken),
    )
