"""Whether a message may go at this instant: consent, hold, pause, session, window, caps and expiry, read at the claim.

`judge` answers for one row from facts that `Facts` has read for a whole batch; `still_allowed` reads consent, hold and
pause once more right before a call, and for staff whether their number said STOP.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Literal

from sqlalchemy import Date, bindparam, text

from reminders.core.kinds import kind_of
from reminders.core.schedule import at_local, inside_window, local_date, next_inside_window, parse_window, window_end
from reminders.flows.facts import A_WEEK, Facts, read_facts
from reminders.flows.say import LATE_ANSWER, answer_due_at, is_danger_answer
from reminders.store.db import Database
from reminders.store.slim import ShownClient
from reminders.store.tables import Outbound

__all__ = ["SEND", "Facts", "Verdict", "judge", "read_facts", "still_allowed"]

STAFF_STOPPED = "staff stopped"
A_DAY = 2  # texts that the service begins: at most 2 a local day; the seven-day count is below
LEAST_A_WEEK = 5


@dataclass(frozen=True)
class Verdict:
    """What becomes of a due row: send it, take it back, let it expire, or wait until an instant."""

    action: Literal["send", "withdraw", "expire", "wait"]
    why: str = ""
    until: datetime | None = None


SEND = Verdict("send")


def in_line(rows: Sequence[Outbound]) -> list[Outbound]:
    """Return due rows, the texts begun to one client among them in the order that counts when her caps are full."""
    places: dict[int, list[int]] = {}
    for place, row in enumerate(rows):
        if row.client_id is not None and row.channel == "sms" and kind_of(row.kind).order_full:
            places.setdefault(row.client_id, []).append(place)
    ordered = list(rows)
    for mine in places.values():
        if len(mine) > 1:
            line = sorted((rows[place] for place in mine), key=lambda row: kind_of(row.kind).order_full)
            for place, row in zip(mine, line, strict=True):
                ordered[place] = row
    return ordered


def judge(row: Outbound, facts: Facts, now: datetime) -> Verdict:
    """Return whether a due row may go now."""
    if row.expires_at is not None and now > row.expires_at:
        return Verdict("expire", "too late")
    if kind_of(row.kind).to_staff:
        state = facts.alert_states.get(row.alert_id or 0, "open")
        is_over = row.kind == "alert" and state != "open" and not row.details.get("corrected")
        staff = facts.staff.get(row.staff_id or 0)
        if not is_over and staff is not None and ends_with_staff_stop(row) and staff.mobile_stopped_at is not None:
            return Verdict("withdraw", STAFF_STOPPED)
        return Verdict("withdraw", state) if is_over else SEND
    if row.client_id is None:
        return judge_age(row, facts, None, now)
    return judge_client(row, facts, now)


def judge_client(row: Outbound, facts: Facts, now: datetime) -> Verdict:
    """Return whether a row to a client may go now."""
    rules, client_id = kind_of(row.kind), row.client_id or 0
    client, contact = facts.clients[client_id], facts.contacts.get(row.contact_id or 0)
    if rules.needs_consent:
        if contact is None or contact.consent != "open" or contact.address != row.to:
            return Verdict("withdraw", "no consent")  # consent belongs to the address: hers may be another now
        if contact.unusable:
            return Verdict("withdraw", "address unusable")
        if client.state == "closed":
            return Verdict("withdraw", "client closed")
    day = local_date(now, client.time_zone)
    if rules.ends_with_hold and client_id in facts.held:
        return Verdict("withdraw", "held")
    if client.died_on is not None and not rules.is_answer:
        return Verdict("withdraw", "death")
    if rules.ends_with_pause and any(p.from_on <= day <= p.until_on for p in facts.pauses.get(client_id, [])):
        return Verdict("withdraw", "paused")
    if row.kind in ("reminder", "evening") and row.session_id is not None:
        session = facts.sessions.get(row.session_id)
        if session is None or session.state not in ("planned", "reminded") or session.completed is not None:
            return Verdict("withdraw", "session settled")
    if row.window_from and not inside_window(now, facts.window_of(client), client.time_zone):
        return later(row, facts.window_of(client), client.time_zone, now)
    if rules.is_answer:
        return judge_age(row, facts, client, now)
    return judge_caps(row, facts, client, now) if rules.order_full and row.channel == "sms" else SEND


def judge_age(row: Outbound, facts: Facts, client: ShownClient | None, now: datetime) -> Verdict:
    """Return whether an answer may go now: it may have waited so long that it would come at night."""
    heard_at = facts.heard_at.get(row.inbound_id or 0)
    if heard_at is None:
        return SEND
    until = answer_due_at(facts.clinics[row.clinic_id], client, heard_at, row.kind, now, row.template)
    return SEND if until <= now else Verdict("wait", "outside her window", until)


def ends_at(row: Outbound, facts: Facts, now: datetime) -> datetime | None:
    """Return until when a row that goes now may still arrive: it expires, her window ends, or an answer grows old.

    None where nothing ends it, as for danger answers and what goes to staff.
    """
    rules, client, clinic = kind_of(row.kind), facts.clients.get(row.client_id or 0), facts.clinics[row.clinic_id]
    if rules.to_staff or is_danger_answer(row.kind, row.template) or not (rules.is_answer or row.window_from):
        return row.expires_at
    window = facts.window_of(client) if client is not None else parse_window(clinic.window)
    zone = client.time_zone if client is not None else clinic.time_zone
    end = window_end(now, window, zone) if inside_window(now, window, zone) else now + LATE_ANSWER
    return end if row.expires_at is None else min(end, row.expires_at)


def later(row: Outbound, window: tuple[str, str], zone: str, now: datetime) -> Verdict:
    """Return when a row outside her window may go: at the next window, unless it expires before.

    It is the window that she has now: what it and her zone were when the row was written may have changed since.
    """
    until = next_inside_window(now, window, zone)
    if row.expires_at is not None and until >= row.expires_at:
        return Verdict("expire", "outside her window")
    if not kind_of(row.kind).waits:
        return Verdict("withdraw", "outside her window")
    return Verdict("wait", "outside her window", until)


def judge_caps(row: Outbound, facts: Facts, client: ShownClient, now: datetime) -> Verdict:
    """Return whether a service-begun text fits under the caps; a kind below the reminder leaves room for reminders.

    Days are her local ones, so that a reminder some seconds earlier than last week's, or a clock change, is no eighth.
    """
    day = local_date(now, client.time_zone)
    if has_room(row, facts, client, day, now):
        facts.begun.setdefault(client.id or 0, []).append(now)  # the next row of this batch counts this one
        return SEND
    if not kind_of(row.kind).waits:
        return Verdict("withdraw", "cap")
    tomorrow = at_local(day + timedelta(days=1), facts.window_of(client)[0], client.time_zone)
    if row.expires_at is not None and tomorrow > row.expires_at:
        return Verdict("expire", "cap")
    return Verdict("wait", "cap", tomorrow)


def has_room(row: Outbound, facts: Facts, client: ShownClient, day: date, now: datetime) -> bool:
    """Return whether one more text fits today without going over a cap or taking a coming reminder's place."""
    client_id = client.id or 0
    begun = [local_date(at, client.time_zone) for at in facts.begun.get(client_id, [])]
    coming = facts.coming(client_id, day, now) if below_reminders(row) else []
    if begun.count(day) + coming.count(day) >= A_DAY:
        return False
    for place, ahead in enumerate([day, *coming]):
        since = ahead - timedelta(days=A_WEEK)
        texts = sum(one > since for one in begun) + place
        if texts >= LEAST_A_WEEK and texts >= most_in_week(facts, client_id, ahead):
            return False
    return True


def most_in_week(facts: Facts, client_id: int, last: date) -> int:
    """Return how many texts may go in the seven days up to a local date: her exercise days plus 1, at least five.

    Where her days changed within them, the fuller week counts: what was sent under it must not silence the new one.
    """
    days = {facts.days_on(client_id, last - timedelta(days=back)) or "mon+wed+fri" for back in range(A_WEEK)}
    return max(LEAST_A_WEEK, *(len(one.split("+")) + 1 for one in days))


def below_reminders(row: Outbound) -> bool:
    """Return whether a kind stands behind the reminder when the caps are full."""
    return kind_of(row.kind).order_full > kind_of("reminder").order_full


STILL = text(
    "SELECT contact.consent, contact.unusable, contact.address, client.state, "
    "(SELECT count(*) FROM hold WHERE hold.client_id = client.id AND hold.ended_at IS NULL), "
    "(SELECT count(*) FROM pause WHERE pause.client_id = client.id AND pause.ended_at IS NULL "
    "AND pause.from_on <= :day AND pause.until_on >= :day) "
    "FROM client LEFT JOIN contact ON contact.id = :contact WHERE client.id = :client"
)
STAFF_STILL = text("SELECT mobile_stopped_at FROM staff WHERE id = :staff")
STILL_POSTGRES = STILL.bindparams(bindparam("day", type_=Date()))


def ends_with_staff_stop(row: Outbound) -> bool:
    """Return whether a row to staff is a text that STOP from that number ends: all but the answer to her own text."""
    return row.staff_id is not None and row.channel == "sms" and row.kind != "staff_answer"


def still_allowed(db: Database, row: Outbound, now: datetime) -> str:
    """Return why a claimed row may no longer go, empty when it may; read right before the call."""
    rules = kind_of(row.kind)
    if ends_with_staff_stop(row):
        staff = db.look(STAFF_STILL, {"staff": row.staff_id})
        return STAFF_STOPPED if staff is not None and staff[0] is not None else ""
    if row.client_id is None or not (rules.needs_consent or rules.ends_with_hold or rules.ends_with_pause):
        return ""
    day = local_date(now, row.time_zone or "UTC")
    values = {"client": row.client_id, "contact": row.contact_id}
    if db.is_postgres:
        found = db.look(STILL_POSTGRES, {**values, "day": day})
    else:
        found = db.look(STILL, {**values, "day": day.isoformat()})
    if found is None:
        return "client gone"
    consent, unusable, address, state, holds, pauses = found
    if rules.needs_consent and (consent != "open" or unusable or address != row.to or state == "closed"):
        return "no consent"
    if rules.ends_with_hold and holds:
        return "held"
    return "paused" if rules.ends_with_pause and pauses else ""
