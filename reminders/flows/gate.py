"""Whether a message may go at this instant: consent, hold, pause, session, window, caps and expiry, read at the claim.

`judge` answers for one row from facts that `Facts` has read for a whole batch; `still_allowed` reads consent, hold and
pause once more right before a call.
"""

from collections import defaultdict
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from typing import Literal

from sqlalchemy import Date, bindparam, text
from sqlmodel import col, select

from reminders.core.hours import Hours
from reminders.core.kinds import kind_of
from reminders.core.schedule import at_local, days_between, local_date, next_inside_window, parse_days
from reminders.flows.say import may_go_now
from reminders.store import clients, outbox
from reminders.store.db import Database, Tx
from reminders.store.tables import (
    Client,
    ClientProgram,
    Clinic,
    Contact,
    ExerciseSession,
    Hold,
    Outbound,
    Pause,
    Schedule,
    Staff,
)

A_DAY, A_WEEK = 2, 7  # texts that the service begins: at most 2 a local day; the seven-day count is below
LEAST_A_WEEK = 5


@dataclass(frozen=True)
class Verdict:
    """What becomes of a due row: send it, take it back, let it expire, or wait until an instant."""

    action: Literal["send", "withdraw", "expire", "wait"]
    why: str = ""
    until: datetime | None = None


SEND = Verdict("send")


@dataclass
class Facts:
    """What judging and rendering a batch needs, read in a constant number of questions."""

    clinics: dict[int, Clinic] = field(default_factory=dict)
    hours: dict[int, Hours] = field(default_factory=dict)
    clients: dict[int, Client] = field(default_factory=dict)
    contacts: dict[int, Contact] = field(default_factory=dict)
    sharers: dict[str, int] = field(default_factory=dict)
    staff: dict[int, Staff] = field(default_factory=dict)
    sessions: dict[int, ExerciseSession] = field(default_factory=dict)
    programs: dict[int, list[ClientProgram]] = field(default_factory=dict)
    days: dict[int, list[Schedule]] = field(default_factory=dict)
    held: set[int] = field(default_factory=set)
    pauses: dict[int, list[Pause]] = field(default_factory=dict)
    begun: dict[int, list[datetime]] = field(default_factory=dict)
    reminders_ahead: dict[int, list[datetime]] = field(default_factory=lambda: defaultdict(list))

    def program(self, client_id: int, day: date) -> ClientProgram | None:
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
    if session_ids:
        for session in tx.exec(select(ExerciseSession).where(col(ExerciseSession.id).in_(session_ids))):
            facts.sessions[session.id or 0] = session
    if staff_ids:
        facts.staff = {one.id or 0: one for one in tx.exec(select(Staff).where(col(Staff.id).in_(staff_ids)))}
    return facts


def asks_days(row: Outbound) -> bool:
    """Return whether judging or rendering a row looks at her days, holds and counts: answers as a rule do not."""
    rules = kind_of(row.kind)
    return not rules.is_answer or rules.ends_with_hold or rules.ends_with_pause


def read_people(tx: Tx, facts: Facts, ids: set[int]) -> None:
    """Read who these clients are and who shares their addresses."""
    facts.clients = {one.id or 0: one for one in tx.exec(select(Client).where(col(Client.id).in_(ids)))}
    mine = list(tx.exec(select(Contact).where(col(Contact.client_id).in_(ids))))
    facts.contacts = {one.id or 0: one for one in mine}
    shared = select(col(Contact.address), col(Contact.client_id)).where(
        col(Contact.address).in_({one.address for one in mine})
    )
    people: dict[str, set[int]] = {}
    for address, client_id in tx.exec(shared):
        people.setdefault(address, set()).add(client_id)
    facts.sharers = {address: len(those) for address, those in people.items()}


def read_days(tx: Tx, facts: Facts, ids: set[int], now: datetime) -> None:
    """Read the programs, days, holds, pauses and texts of the last days of these clients."""
    if not ids:
        return
    for version in tx.exec(select(ClientProgram).where(col(ClientProgram.client_id).in_(ids))):
        facts.programs.setdefault(version.client_id, []).append(version)
    for schedule in tx.exec(select(Schedule).where(col(Schedule.client_id).in_(ids))):
        facts.days.setdefault(schedule.client_id, []).append(schedule)
    facts.held = set(tx.exec(select(Hold.client_id).where(col(Hold.client_id).in_(ids), col(Hold.ended_at).is_(None))))
    for pause in tx.exec(select(Pause).where(col(Pause.client_id).in_(ids), col(Pause.ended_at).is_(None))):
        facts.pauses.setdefault(pause.client_id, []).append(pause)
    for client_id, at in outbox.begun_since(tx, sorted(ids), now - timedelta(days=A_WEEK + 1)):
        facts.begun.setdefault(client_id, []).append(at)
    ahead = select(col(Outbound.client_id), col(Outbound.due_at)).where(
        col(Outbound.client_id).in_(ids),
        Outbound.kind == "reminder",
        Outbound.channel == "sms",
        Outbound.state == "waiting",
    )
    for waiting_for, due_at in tx.exec(ahead):
        facts.reminders_ahead[waiting_for or 0].append(due_at)
    planned = select(col(ExerciseSession.client_id), col(ExerciseSession.due_at)).where(
        col(ExerciseSession.client_id).in_(ids),
        ExerciseSession.state == "planned",
        col(ExerciseSession.queued_at).is_(None),
    )
    for client_id, due_at in tx.exec(planned):
        facts.reminders_ahead[client_id].append(due_at)


def judge(row: Outbound, facts: Facts, now: datetime) -> Verdict:
    """Return whether a due row may go now."""
    if row.expires_at is not None and now > row.expires_at:
        return Verdict("expire", "too late")
    if kind_of(row.kind).to_staff:
        return SEND
    if row.client_id is None:
        return SEND
    return judge_client(row, facts, now)


def judge_client(row: Outbound, facts: Facts, now: datetime) -> Verdict:
    """Return whether a row to a client may go now."""
    rules, client_id = kind_of(row.kind), row.client_id or 0
    client, contact = facts.clients[client_id], facts.contacts.get(row.contact_id or 0)
    if rules.needs_consent:
        if contact is None or contact.consent != "open":
            return Verdict("withdraw", "no consent")
        if contact.unusable:
            return Verdict("withdraw", "address unusable")
        if client.state == "closed":
            return Verdict("withdraw", "client closed")
    day = local_date(now, client.time_zone)
    if rules.ends_with_hold and client_id in facts.held:
        return Verdict("withdraw", "held")
    if rules.ends_with_pause and any(p.from_on <= day <= p.until_on for p in facts.pauses.get(client_id, [])):
        return Verdict("withdraw", "paused")
    if row.kind in ("reminder", "evening") and row.session_id is not None:
        session = facts.sessions.get(row.session_id)
        if session is None or session.state not in ("planned", "reminded") or session.completed is not None:
            return Verdict("withdraw", "session settled")
    if not may_go_now(row, now):
        return later(row, now)
    return judge_caps(row, facts, client, now) if rules.order_full and row.channel == "sms" else SEND


def later(row: Outbound, now: datetime) -> Verdict:
    """Return when a row outside its window may go: at the next window, unless it expires before."""
    until = next_inside_window(now, (row.window_from, row.window_until), row.time_zone)
    if row.expires_at is not None and until >= row.expires_at:
        return Verdict("expire", "outside her window")
    if not kind_of(row.kind).waits:
        return Verdict("withdraw", "outside her window")
    return Verdict("wait", "outside her window", until)


def judge_caps(row: Outbound, facts: Facts, client: Client, now: datetime) -> Verdict:
    """Return whether a service-begun text fits under the caps; a kind below the reminder leaves room for reminders.

    Days are her local ones, so that a reminder some seconds earlier than last week's, or a clock change, is no eighth.
    """
    day = local_date(now, client.time_zone)
    if has_room(row, facts, client, day, now):
        facts.begun.setdefault(client.id or 0, []).append(now)  # the next row of this batch counts this one
        return SEND
    if not kind_of(row.kind).waits:
        return Verdict("withdraw", "cap")
    tomorrow = at_local(day + timedelta(days=1), row.window_from or "08:00", row.time_zone or client.time_zone)
    if row.expires_at is not None and tomorrow > row.expires_at:
        return Verdict("expire", "cap")
    return Verdict("wait", "cap", tomorrow)


def has_room(row: Outbound, facts: Facts, client: Client, day: date, now: datetime) -> bool:
    """Return whether one more text fits today without going over a cap or taking a coming reminder's place."""
    client_id = client.id or 0
    begun = [local_date(at, client.time_zone) for at in facts.begun.get(client_id, [])]
    weekly = max(LEAST_A_WEEK, len((facts.days_on(client_id, day) or "mon+wed+fri").split("+")) + 1)
    coming = facts.coming(client_id, day, now) if below_reminders(row) else []
    if begun.count(day) + coming.count(day) >= A_DAY:
        return False
    for place, ahead in enumerate([day, *coming]):
        since = ahead - timedelta(days=A_WEEK)
        if sum(one > since for one in begun) + place >= weekly:
            return False
    return True


def below_reminders(row: Outbound) -> bool:
    """Return whether a kind stands behind the reminder when the caps are full."""
    return kind_of(row.kind).order_full > kind_of("reminder").order_full


STILL = text(
    "SELECT contact.consent, contact.unusable, client.state, "
    "(SELECT count(*) FROM hold WHERE hold.client_id = client.id AND hold.ended_at IS NULL), "
    "(SELECT count(*) FROM pause WHERE pause.client_id = client.id AND pause.ended_at IS NULL "
    "AND pause.from_on <= :day AND pause.until_on >= :day) "
    "FROM client LEFT JOIN contact ON contact.id = :contact WHERE client.id = :client"
).bindparams(bindparam("day", type_=Date()))


def still_allowed(db: Database, row: Outbound, now: datetime) -> str:
    """Return why a claimed row may no longer go, empty when it may; read right before the call."""
    rules = kind_of(row.kind)
    if row.client_id is None or not (rules.needs_consent or rules.ends_with_hold or rules.ends_with_pause):
        return ""
    day = local_date(now, row.time_zone or "UTC")
    with db.engine.connect() as connection:
        found = connection.execute(STILL, {"client": row.client_id, "contact": row.contact_id, "day": day}).first()
    if found is None:
        return "client gone"
    consent, unusable, state, holds, pauses = found
    if rules.needs_consent and (consent != "open" or unusable or state == "closed"):
        return "no consent"
    if rules.ends_with_hold and holds:
        return "held"
    return "paused" if rules.ends_with_pause and pauses else ""
