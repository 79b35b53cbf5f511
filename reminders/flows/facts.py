"""What judging and rendering a batch of messages needs to know, read in a constant number of questions.

What follows from it is in gate.py (may a message go?) and render.py (what does it say?).
"""

from collections import defaultdict
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta

from sqlalchemy import Text
from sqlalchemy import cast as as_type
from sqlalchemy import select as select_columns
from sqlmodel import col, select

from reminders.core.hours import Hours
from reminders.core.kinds import kind_of
from reminders.core.schedule import days_between, inside_window, local_date, parse_days, parse_window
from reminders.flows.render import Version
from reminders.flows.say import LATE_ANSWER
from reminders.store import clients, outbox, slim
from reminders.store.db import Tx, ask
from reminders.store.slim import ShownClient, ShownSession, SlimSchedule, among
from reminders.store.tables import (
    Alert,
    ClientProgram,
    Clinic,
    Contact,
    ExerciseSession,
    Hold,
    InboundRow,
    Outbound,
    Pause,
    Staff,
)

A_WEEK = 7

# What every batch asks, made once.
THEIRS = select_columns(col(Contact.address)).where(among(col(Contact.client_id)))
ADDRESSES = select_columns(
    *(col(one) for one in (Contact.id, Contact.client_id, Contact.address, Contact.consent, Contact.unusable))
).where(col(Contact.address).in_(THEIRS))
HELD = select_columns(col(Hold.client_id)).where(among(col(Hold.client_id)), col(Hold.ended_at).is_(None))
RAISED = select_columns(col(Alert.id), col(Alert.opened_at)).where(among(col(Alert.id)))
PAUSES = select(Pause).where(among(col(Pause.client_id)), col(Pause.ended_at).is_(None))
AHEAD = select_columns(col(Outbound.client_id), col(Outbound.due_at)).where(
    among(col(Outbound.client_id)),
    col(Outbound.kind) == "reminder",
    col(Outbound.channel) == "sms",
    col(Outbound.state) == "waiting",
)
PLANNED = select_columns(col(ExerciseSession.client_id), col(ExerciseSession.due_at)).where(
    among(col(ExerciseSession.client_id)),
    col(ExerciseSession.state) == "planned",
    col(ExerciseSession.queued_at).is_(None),
)
PROGRAMS = select_columns(
    col(ClientProgram.id),
    col(ClientProgram.client_id),
    col(ClientProgram.number),
    col(ClientProgram.from_on),
    col(ClientProgram.rung),
    as_type(col(ClientProgram.body), Text),
).where(among(col(ClientProgram.client_id)))


@dataclass(frozen=True, slots=True)
class Address:
    """A contact, as far as it says whether a message may go there."""

    id: int
    client_id: int
    address: str
    consent: str
    unusable: str


@dataclass
class Facts:
    """What judging and rendering a batch needs, read in a constant number of questions."""

    clinics: dict[int, Clinic] = field(default_factory=dict)
    hours: dict[int, Hours] = field(default_factory=dict)
    clients: dict[int, ShownClient] = field(default_factory=dict)
    contacts: dict[int, Address] = field(default_factory=dict)
    sharers: dict[str, int] = field(default_factory=dict)
    staff: dict[int, Staff] = field(default_factory=dict)
    sessions: dict[int, ShownSession] = field(default_factory=dict)
    programs: dict[int, list[Version]] = field(default_factory=dict)
    days: dict[int, list[SlimSchedule]] = field(default_factory=dict)
    alerts: dict[int, datetime] = field(default_factory=dict)  # when each was raised
    held: set[int] = field(default_factory=set)
    pauses: dict[int, list[Pause]] = field(default_factory=dict)
    heard_at: dict[int, datetime] = field(default_factory=dict)  # by message; not read while all may be answered
    alert_states: dict[int, str] = field(default_factory=dict)  # the states of those that staff are called about
    begun: dict[int, list[datetime]] = field(default_factory=dict)
    reminders_ahead: dict[int, list[datetime]] = field(default_factory=lambda: defaultdict(list))

    def window_of(self, client: ShownClient) -> tuple[str, str]:
        """Return the local hours between which the service may begin a message to a client, as they are now."""
        return clients.window_of(self.clinics[client.clinic_id], client)

    def is_day(self, row: Outbound, now: datetime) -> bool:
        """Return whether an answer may go however old its text is, now and for the next minutes."""
        client, clinic = self.clients.get(row.client_id or 0), self.clinics[row.clinic_id]
        window = self.window_of(client) if client else parse_window(clinic.window)
        zone = client.time_zone if client else clinic.time_zone
        return inside_window(now, window, zone) and inside_window(now + LATE_ANSWER, window, zone)

    def program(self, client_id: int, day: date) -> Version | None:
        """Return the program version that counts on a local date."""
        begun = [one for one in self.programs.get(client_id, []) if one.from_on <= day]
        return max(begun, key=lambda one: one.number) if begun else None

    def coming(self, client_id: int, day: date, now: datetime) -> list[date]:
        """Return the local dates of the reminders that are still to come within a week, today's too."""
        schedule = [one for one in self.days.get(client_id, []) if one.from_on <= day + timedelta(days=A_WEEK)]
        if not schedule or client_id in self.held:
            return []
        newest = max(schedule, key=lambda one: one.from_on)
        today = [day] if any(local_date(at, newest.time_zone) == day for at in self.reminders_ahead[client_id]) else []
        ahead = days_between(parse_days(newest.days), day + timedelta(days=1), day + timedelta(days=A_WEEK - 1))
        return [*today, *ahead]

    def days_on(self, client_id: int, day: date) -> str:
        """Return the weekdays of the schedule that counts on a local date."""
        begun = [one for one in self.days.get(client_id, []) if one.from_on <= day]
        return max(begun, key=lambda one: one.from_on).days if begun else ""


def read_facts(tx: Tx, rows: Sequence[Outbound], now: datetime) -> Facts:
    """Read what judging and rendering these rows needs."""
    facts = Facts()
    client_ids = {row.client_id for row in rows if row.client_id is not None}
    staff_ids = {row.staff_id for row in rows if row.staff_id is not None}
    session_ids = {row.session_id for row in rows if row.session_id is not None}
    for clinic in tx.exec(select(Clinic).where(col(Clinic.id).in_({row.clinic_id for row in rows}))):
        facts.clinics[clinic.id or 0] = clinic
        facts.hours[clinic.id or 0] = clients.hours_of(clinic)
    if client_ids:
        read_people(tx, facts, client_ids)
        read_days(tx, facts, {row.client_id for row in rows if row.client_id is not None and asks_days(row)}, now)
        staff_ids |= {client.therapist_id for client in facts.clients.values()}
    read_heard(tx, facts, rows, now)
    called_about = {row.alert_id for row in rows if row.kind == "alert" and row.alert_id is not None}
    if called_about:
        states = select_columns(col(Alert.id), col(Alert.state)).where(col(Alert.id).in_(called_about))
        facts.alert_states = {number or 0: state for number, state in tx.execute(states)}
    if session_ids:
        facts.sessions = {one.id: one for one in slim.sessions_shown(tx, session_ids)}
    alert_ids = {row.alert_id for row in rows if row.alert_id is not None}
    if alert_ids:
        facts.alerts = dict(map(tuple, ask(tx, RAISED, {"ids": sorted(alert_ids)})))
    if staff_ids:
        facts.staff = {one.id or 0: one for one in tx.exec(select(Staff).where(col(Staff.id).in_(staff_ids)))}
    return facts


def read_heard(tx: Tx, facts: Facts, rows: Sequence[Outbound], now: datetime) -> None:
    """Read when the messages came that are answered outside, or shortly before the end of, their senders' windows."""
    answered = [row for row in rows if row.inbound_id is not None and kind_of(row.kind).is_answer]
    ids = {row.inbound_id for row in answered if not facts.is_day(row, now)}
    if ids:
        moments = select_columns(col(InboundRow.id), col(InboundRow.received_at)).where(col(InboundRow.id).in_(ids))
        facts.heard_at = {number or 0: at for number, at in tx.execute(moments)}


def asks_days(row: Outbound) -> bool:
    """Return whether judging or rendering a row looks at her days, holds and counts: answers as a rule do not."""
    rules = kind_of(row.kind)
    return not rules.is_answer or rules.ends_with_hold or rules.ends_with_pause


def read_people(tx: Tx, facts: Facts, ids: set[int]) -> None:
    """Read who these clients are and who shares their addresses."""
    facts.clients = {one.id: one for one in slim.clients_shown(tx, ids)}
    holders: dict[str, set[int]] = {}
    for row in ask(tx, ADDRESSES, {"ids": list(ids)}):
        contact = Address(*row)
        holders.setdefault(contact.address, set()).add(contact.client_id)
        if contact.client_id in ids:
            facts.contacts[contact.id] = contact
    facts.sharers = {address: len(those) for address, those in holders.items()}


def read_days(tx: Tx, facts: Facts, ids: set[int], now: datetime) -> None:
    """Read the programs, days, holds, pauses and texts of the last days of these clients."""
    if not ids:
        return
    whose = {"ids": sorted(ids)}
    for version in program_versions(tx, ids):
        facts.programs.setdefault(version.client_id, []).append(version)
    for schedule in slim.schedules_of(tx, ids):
        facts.days.setdefault(schedule.client_id, []).append(schedule)
    facts.held = set(ask(tx, HELD, whose).scalars())
    for pause in tx.exec(PAUSES, params=whose):
        facts.pauses.setdefault(pause.client_id, []).append(pause)
    for client_id, at in outbox.begun_since(tx, sorted(ids), now - timedelta(days=A_WEEK + 1)):
        facts.begun.setdefault(client_id, []).append(at)
    for question in (AHEAD, PLANNED):
        for client_id, due_at in ask(tx, question, whose):
            facts.reminders_ahead[client_id or 0].append(due_at)


def program_versions(tx: Tx, ids: set[int]) -> Iterator[Version]:
    """Yield the dated program versions of clients, their bodies unread: a crowd shares a few."""
    for row in ask(tx, PROGRAMS, {"ids": list(ids)}):
        yield Version(*row)
