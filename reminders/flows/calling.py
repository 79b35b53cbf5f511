"""Who is called about an alert, and the calls themselves: rows in the outbox, under a key a call, person and channel.

When the next call is due is decided in flows/escalate, what an alert is in flows/alert.
"""

from collections.abc import Sequence
from datetime import date, datetime
from functools import partial
from typing import Any

from sqlmodel import col, select

from reminders.core.schedule import local_date
from reminders.flows import explain, say
from reminders.store import clients, outbox
from reminders.store.db import Tx
from reminders.store.tables import Alert, AlertEvent, Client, Clinic, InboundRow, Report, Staff

FIRST, AGAIN, COVER, LEAD = 0, 1, 2, 3  # the calls of an urgent alert, in order; later ones are the lead's


def is_available(staff: Staff, day: date) -> bool:
    """Return whether a staff member is at work, not on leave, and has not stopped texts to her own number."""
    return staff.is_active and not clients.on_leave(staff, day) and staff.mobile_stopped_at is None


def cover_of(tx: Tx, staff: Staff | None, day: date) -> Staff | None:
    """Return the staff member who covers for another, herself available; a cover's own cover is followed."""
    seen: set[int] = set()
    while staff is not None and staff.cover_id is not None and staff.cover_id not in seen:
        seen.add(staff.cover_id)
        staff = tx.get(Staff, staff.cover_id)
        if staff is not None and is_available(staff, day):
            return staff
    return None


def lead_or_admins(tx: Tx, clinic: Clinic, day: date) -> list[Staff]:
    """Return the clinic's lead when available, else her cover, else the admins."""
    lead = clients.lead_of(tx, clinic)
    if lead is not None and not is_available(lead, day):
        lead = cover_of(tx, lead, day)
    return [lead] if lead is not None else clients.admins_of(tx, clinic.id or 0)


def in_charge(tx: Tx, clinic: Clinic, client: Client | None, now: datetime) -> list[Staff]:
    """Return who is called first about a client: her therapist, else cover, else lead, else the admins."""
    day = local_date(now, clinic.time_zone)
    therapist = clients.therapist_of(tx, client) if client else None
    if therapist is not None and is_available(therapist, day):
        return [therapist]
    cover = cover_of(tx, therapist, day)
    others = [cover] if cover is not None else lead_or_admins(tx, clinic, day)
    # Someone on leave who still works here is better than nobody.
    return others or ([therapist] if therapist is not None and therapist.is_active else [])


def on_call(tx: Tx, clinic: Clinic, now: datetime) -> Staff | None:
    """Return the on-call name that the clinic chose, while it is closed."""
    if not clinic.on_call_email or clients.hours_of(clinic).is_open(now):
        return None
    found = clients.staff_by_email(tx, clinic.on_call_email)
    return found if found is not None and found.is_active else None


def called_at(tx: Tx, clinic: Clinic, client: Client | None, step: int, now: datetime) -> list[Staff]:
    """Return who is called at a step: first and again the one in charge, then cover, then lead and so on."""
    day = local_date(now, clinic.time_zone)
    if step <= AGAIN:
        standing_by = on_call(tx, clinic, now)
        return [standing_by] if standing_by is not None else in_charge(tx, clinic, client, now)
    if step == COVER:
        cover = cover_of(tx, clients.therapist_of(tx, client) if client else None, day)
        if cover is not None:
            return [cover]
    return lead_or_admins(tx, clinic, day) or in_charge(tx, clinic, client, now)


def call(tx: Tx, clinic: Clinic, alert: Alert, step: int, now: datetime) -> list[int]:
    """Call about an urgent alert, singly, by text and mail; nobody to call is told to the operator.

    Return the rows queued; a call that was made before queues none.
    """
    client = tx.get(Client, alert.client_id) if alert.client_id else None
    people = called_at(tx, clinic, client, step, now)
    queued: list[int] = []
    for staff in people:
        queued += say.tell_staff(
            tx,
            clinic,
            staff,
            "alert",
            "alert",
            call_details(tx, clinic, client, alert, step),
            now,
            partial(outbox.alert_key, alert.id or 0, alert.round, step, staff.id or 0),
            alert_id=alert.id,
            channels=channels_of(staff),
        )
    if not people:
        say.tell_operator(tx, clinic, "nobody to call", {"alert": alert.number}, now)
    add_event(tx, alert, "called", now, details={"step": step, "staff": [staff.id for staff in people]})
    return queued


def channels_of(staff: Staff) -> tuple[str, ...]:
    """Return the channels on which a staff member wants alerts."""
    return tuple(channel for channel in staff.alert_channels.split("+") if channel in ("sms", "email")) or ("email",)


def call_details(tx: Tx, clinic: Clinic, client: Client | None, alert: Alert, step: int) -> dict[str, Any]:
    """Return what a call says: level, initials, client number, alert number, two words; more only where switched on."""
    details: dict[str, Any] = {
        "number": alert.number,
        "level": alert.level,
        "initials": explain.initials(client.name) if client else "?",
        "client_id": client.id if client else 0,
        "words": explain.rule_name(alert.rule),
        "state": alert.state,
        "round": alert.round,
        "step": step,
        "corrected": False,
        "sentences": [],
        "said": [],
    }
    if clinic.words_in_mail:
        details["sentences"] = because_sentences(alert, "en")
        details["said"] = words_of(tx, alert)
    return details


def because_sentences(alert: Alert, language: str) -> list[str]:
    """Return why an alert fired, a sentence for each thing that was added, oldest first."""
    said = [
        explain.sentence(one.get("of") or alert.rule, str(one.get("form", "told")), one.get("values", one), language)
        for one in alert.because
    ]
    notes = [note for one in alert.because for note in one.get("notes", ())]
    said += [explain.sentence("any", note, {}, language) for note in dict.fromkeys(notes)]
    if alert.one_of_two:
        said.append(explain.sentence("any", "one_of_two", {}, language))
    return said


def words_of(tx: Tx, alert: Alert) -> list[str]:
    """Return the client's own words that an alert came from, newest last."""
    ids = [one["report"] for one in alert.because if one.get("report")]
    reports = tx.exec(select(col(Report.at), col(Report.text)).where(col(Report.id).in_(ids)))
    # While it is open whose the words are, they stand in no report.
    loose = [one["inbound"] for one in alert.because if one.get("inbound") and not one.get("report")]
    heard = tx.exec(select(col(InboundRow.received_at), col(InboundRow.text)).where(col(InboundRow.id).in_(loose)))
    return [text for _, text in sorted([*reports, *heard])]


def add_event(
    tx: Tx, alert: Alert, kind: str, now: datetime, *, by: str = "", details: dict[str, Any] | None = None
) -> None:
    """Add a line to an alert's story."""
    tx.add(AlertEvent(alert_id=alert.id or 0, at=now, kind=kind, by=by, details=details or {}))
    tx.flush()


def last_called_at(tx: Tx, alert: Alert) -> datetime | None:
    """Return when somebody was last called about an alert."""
    statement = select(AlertEvent.at).where(AlertEvent.alert_id == alert.id, AlertEvent.kind == "called")
    return tx.exec(statement.order_by(col(AlertEvent.at).desc()).limit(1)).first()


def note_slots(clinic: Clinic, people: Sequence[Staff]) -> list[str]:
    """Return the local hours at which notes go to the people in charge, in order: hers, else the clinic's."""
    text = next((staff.note_hours for staff in people if staff.note_hours), clinic.note_hours)
    return sorted(hour.strip().zfill(5) for hour in text.split(",") if hour.strip()) or ["11:30"]


def tell_correction(tx: Tx, clinic: Clinic, alert: Alert, now: datetime) -> None:
    """Tell the one in charge that the rating behind an urgent alert was corrected; it stays as it is."""
    client = tx.get(Client, alert.client_id) if alert.client_id else None
    details = {**call_details(tx, clinic, client, alert, -1), "corrected": True}
    count = len(alert.because)
    for staff in in_charge(tx, clinic, client, now):
        say.tell_staff(
            tx,
            clinic,
            staff,
            "alert",
            "alert",
            details,
            now,
            partial(outbox.staff_key, f"corrected-{alert.id}-{count}", staff.id or 0),
            alert_id=alert.id,
            channels=channels_of(staff),
        )
