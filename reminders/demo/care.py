"""What the fictional staff do: take alerts, phone, note what came of it, clear holds, approve steps, read the inbox.

They act through the same flows as the console. Whoever is slow is called again by the service; nothing is arranged.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from random import Random

from sqlalchemy import func
from sqlalchemy import select as sql_select
from sqlmodel import col, select

from reminders.core.schedule import at_local, local_date
from reminders.demo.people import STAFF
from reminders.flows import alert as alerts
from reminders.flows import hold, plan, steps
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Alert, AlertEvent, Client, Clinic, ClinicNote, Hold, Proposal, Staff

Act = Callable[[Tx, datetime], None]
# What comes of an alert, by rule: the outcome and the therapist's note. Others: "called".
OUTCOMES: Mapping[str, tuple[str, str]] = {
    "fall_or_injury": ("saw her", "Seen the same week: bruised, walks well. Starts again gently."),
    "chest_or_breathing": ("called", "Phoned: the emergency number had been called. The doctor says when to start."),
    "faint_or_dizzy": ("called", "Phoned: sat down and it passed; the doctor looks at the tablets. Starts seated."),
    "severe_pain": ("saw her", "Seen; dose taken back, sit to stand from a higher chair."),
    "pain_up": ("changed dose", "Phoned. Fewer repetitions and more rest until it settles."),
    "surgery_or_hospital": ("called", "Phoned. All good wishes; on hold until the surgeon says so."),
    "missed": ("called", "Phoned. Busy weeks; goes on."),
    "quiet": ("called", "Phoned."),
    "falls_counted": ("saw her", "Talked the falls through at the visit."),
}
# Days until a hold is cleared, by rule; rules that are not here are not cleared in the story.
CLEARED_AFTER: Mapping[str, int] = {
    "fall_or_injury": 9,
    "chest_or_breathing": 14,
    "faint_or_dizzy": 7,
    "severe_pain": 6,
    "pain_up": 4,
    "new_back_pain": 7,
    "possible_fracture": 10,
    "nerve_or_bladder": 10,
}
# The newest of all that staff may act on, in one question.
NEWEST = sql_select(
    *(sql_select(func.max(table.id)).scalar_subquery() for table in (AlertEvent, Hold, Proposal, ClinicNote))
)
CLEARS, READS, APPROVES = "09:40", "16:20", "12:10"
OTHER_DAYS = "tue+thu+sat"


@dataclass
class Care:
    """The staff of the story: what they have seen already, and chance for how quick they are."""

    draw: Random
    alerts_seen: dict[int, int] = field(default_factory=dict)
    holds_seen: set[int] = field(default_factory=set)
    proposals_seen: set[int] = field(default_factory=set)
    notes_seen: set[int] = field(default_factory=set)
    newest: tuple[int | None, ...] = ()

    def look(self, tx: Tx, now: datetime) -> list[tuple[datetime, Act]]:
        """Return what the staff will do about everything new, and when."""
        found: list[tuple[datetime, Act]] = []
        if not self.is_anything_new(tx):
            return found
        clinic = tx.exec(select(Clinic).order_by(col(Clinic.id)).limit(1)).one()
        for one in tx.exec(select(Alert).where(Alert.state == "open").order_by(col(Alert.id))):
            if self.alerts_seen.get(one.id or 0) != one.round:
                self.alerts_seen[one.id or 0] = one.round
                found += self.about_alert(tx, clinic, one, now)
        for held in tx.exec(select(Hold).where(col(Hold.ended_at).is_(None)).order_by(col(Hold.id))):
            if held.id not in self.holds_seen and held.rule in CLEARED_AFTER:
                self.holds_seen.add(held.id or 0)
                at = on_working_day(clinic, now + timedelta(days=CLEARED_AFTER[held.rule]), CLEARS)
                found.append((at, clear(held.client_id)))
        for proposal in tx.exec(select(Proposal).where(Proposal.state == "open").order_by(col(Proposal.id))):
            if proposal.id not in self.proposals_seen:
                self.proposals_seen.add(proposal.id or 0)
                at = on_working_day(clinic, now + timedelta(days=self.draw.randint(0, 2)), APPROVES)
                found.append((max(at, now + timedelta(minutes=5)), approve(proposal.id or 0)))
        for note in tx.exec(select(ClinicNote).where(col(ClinicNote.closed_at).is_(None)).order_by(col(ClinicNote.id))):
            if note.id not in self.notes_seen:
                self.notes_seen.add(note.id or 0)
                at = on_working_day(clinic, now, READS)
                found.append((at if at > now else on_working_day(clinic, now + timedelta(days=1), READS), read(note)))
        return found

    def is_anything_new(self, tx: Tx) -> bool:
        """Return whether anything was written since the last look that the staff may act on."""
        newest = tuple(tx.connection().execute(NEWEST).one())
        was, self.newest = self.newest, newest
        return newest != was

    def about_alert(self, tx: Tx, clinic: Clinic, one: Alert, now: datetime) -> list[tuple[datetime, Act]]:
        """Return taking an alert and, later, closing it."""
        hours = clients.hours_of(clinic)
        from_at = now if hours.is_open(now) else hours.next_opening(now) or now
        client = tx.get(Client, one.client_id) if one.client_id else None
        therapist = clients.therapist_of(tx, client) if client else clients.lead_of(tx, clinic)
        if therapist is None:
            return []
        if one.level != "urgent":
            at = on_working_day(clinic, from_at, READS)
            at = at if at > now else on_working_day(clinic, from_at + timedelta(days=1), READS)
            return [(at, close(one.id or 0, therapist.email))]
        takes = next((member.takes for member in STAFF if member.email == therapist.email), (5, 15))
        taken_at = from_at + timedelta(minutes=self.draw.randint(*takes))
        closed_at = taken_at + timedelta(minutes=self.draw.randint(40, 150))
        if not hours.is_open(closed_at):
            closed_at = (hours.next_opening(closed_at) or closed_at) + timedelta(minutes=30)
        return [(taken_at, take(one.id or 0, therapist.email)), (closed_at, close(one.id or 0, therapist.email))]


def on_working_day(clinic: Clinic, after: datetime, hour: str) -> datetime:
    """Return an hour of the local day of an instant, or of the next working day after it."""
    hours = clients.hours_of(clinic)
    day = local_date(after, clinic.time_zone)
    while not hours.is_working_day(day):
        day += timedelta(days=1)
    return at_local(day, hour, clinic.time_zone)


def take(alert_id: int, by: str) -> Act:
    """Return the act of taking an alert by the link of its text."""

    def act(tx: Tx, now: datetime) -> None:
        one = tx.get(Alert, alert_id)
        if one is not None and one.state == "open":
            alerts.acknowledge(tx, one, by, "link", now)

    return act


def close(alert_id: int, by: str) -> Act:
    """Return the act of closing an alert with what came of it."""

    def act(tx: Tx, now: datetime) -> None:
        one = tx.get(Alert, alert_id)
        if one is None or one.state == "closed":
            return
        if one.state == "open":
            alerts.acknowledge(tx, one, by, "console", now)
        outcome, note = OUTCOMES.get(one.rule, ("called", "Phoned."))
        alerts.close(tx, one, by, outcome, note, now)

    return act


def clear(client_id: int) -> Act:
    """Return the act of ending a client's holds."""

    def act(tx: Tx, now: datetime) -> None:
        client = tx.get(Client, client_id)
        therapist = clients.therapist_of(tx, client) if client else None
        if client is not None and therapist is not None:
            hold.end_hold(tx, client, therapist.email, now)

    return act


def approve(proposal_id: int) -> Act:
    """Return the act of approving a dose step."""

    def act(tx: Tx, now: datetime) -> None:
        one = tx.get(Proposal, proposal_id)
        client = tx.get(Client, one.client_id) if one else None
        therapist = clients.therapist_of(tx, client) if client else None
        if one is None or client is None or therapist is None or one.state != "open":
            return
        if not hold.is_held(tx, client.id or 0):
            steps.approve(tx, one, therapist.email, now)

    return act


def read(note: ClinicNote) -> Act:
    """Return the act of reading an item of the inbox; a wish for other days is granted."""
    note_id = note.id or 0

    def act(tx: Tx, now: datetime) -> None:
        one = tx.get(ClinicNote, note_id)
        if one is None or one.closed_at is not None:
            return
        client = tx.get(Client, one.client_id) if one.client_id else None
        if one.kind == "reschedule" and client is not None and client.state == "active":
            newest = clients.plans_of(tx, client.id or 0)[-1]
            plan.change_schedule(tx, client, OTHER_DAYS, newest.time, newest.time_zone, now)
        one.closed_at, one.closed_by = now, reader_of(tx, client)

    return act


def reader_of(tx: Tx, client: Client | None) -> str:
    """Return who reads the inbox about a client: her therapist, else the admin."""
    therapist = clients.therapist_of(tx, client) if client else None
    if therapist is not None:
        return therapist.email
    admin = tx.exec(select(Staff).where(Staff.role == "admin")).first()
    return admin.email if admin else ""
