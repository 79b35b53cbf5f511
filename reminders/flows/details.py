"""A client's details as the desk keeps them: name, language, therapist, days and hour, addresses, consent."""

from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from sqlmodel import select

from reminders.core.enrolment import CHANNELS, CONSENT_WAYS, HOLDERS, mail_address, phone_number
from reminders.core.languages import LANGUAGES
from reminders.core.schedule import days_text, parse_days, parse_time, parse_window, zone_of
from reminders.errors import BadInput, Refused
from reminders.flows import audit, consent, joining, plan
from reminders.store import clients
from reminders.store.db import Tx, lock_client
from reminders.store.tables import Client, Clinic, Contact, Staff

PLAIN = ("name", "emergency_note", "chart_id")
TAKEN_AWAY = "taken away at the desk"
CHOICES = {"language": LANGUAGES, "channel": CHANNELS, "holder": HOLDERS}


@dataclass(frozen=True)
class Wanted:
    """What a form states: plain fields by name, and the schedule; None leaves a thing as it is."""

    fields: dict[str, Any]
    days: str | None = None
    time: str | None = None
    time_zone: str | None = None
    therapist_id: int | None = None


def change(tx: Tx, clinic: Clinic, client: Client, wanted: Wanted, by: str, now: datetime) -> list[str]:
    """Keep changed details and plan anew where it matters; return the names of what changed. Raises BadInput."""
    lock_client(tx, client.id or 0)
    changed = []
    for name, value in checked(wanted.fields).items():
        if getattr(client, name) != value:
            setattr(client, name, value)
            changed.append(name)
    if not client.name:
        raise BadInput("The name is empty; fill it in.")
    changed += change_therapist(tx, clinic, client, wanted.therapist_id)
    changed += change_schedule(tx, client, wanted, now)
    if "window" in changed and (plans := clients.plans_of(tx, client.id or 0)):
        plan.refuse_outside(clinic, client, plans[-1].time)
    tx.add(client)
    tx.flush()
    if {"channel", "window"} & set(changed):
        plan.replan(tx, client, now)
    if changed:
        audit.record(tx, clinic.id, by, "details changed", client.id, {"fields": sorted(changed)}, now)
    return changed


def checked(fields: dict[str, Any]) -> dict[str, Any]:
    """Return plain fields that may be kept; raises BadInput naming the field."""
    for name, choices in CHOICES.items():
        if name in fields and fields[name] not in choices:
            raise BadInput(f"{name} must be one of: {', '.join(choices)}.")
    if fields.get("window"):
        try:
            fields = {**fields, "window": "-".join(parse_window(fields["window"]))}
        except ValueError as error:
            raise BadInput(f"The window: {error}.") from None
    year = fields.get("birth_year")
    if year is not None and not 1900 <= year <= 2100:
        raise BadInput("The birth year must be from 1900 on.")
    return {name: " ".join(value.split()) if name in PLAIN else value for name, value in fields.items()}


def change_therapist(tx: Tx, clinic: Clinic, client: Client, therapist_id: int | None) -> list[str]:
    """Give a client another therapist of the clinic."""
    if therapist_id is None or therapist_id == client.therapist_id:
        return []
    staff = tx.get(Staff, therapist_id)
    if staff is None or staff.clinic_id != clinic.id or not staff.is_active or staff.role not in ("therapist", "lead"):
        raise BadInput("The therapist must be one of the clinic's who is at work.")
    client.therapist_id = therapist_id
    return ["therapist"]


def change_schedule(tx: Tx, client: Client, wanted: Wanted, now: datetime) -> list[str]:
    """Give her other days, hour or zone from tomorrow on, when they differ."""
    plans = clients.plans_of(tx, client.id or 0)
    newest = plans[-1] if plans else None
    try:
        days = days_text(parse_days(wanted.days)) if wanted.days else (days_text(newest.days) if newest else "")
        hour = parse_time(wanted.time).strftime("%H:%M") if wanted.time else (newest.time if newest else "08:30")
        zone = wanted.time_zone or client.time_zone
        zone_of(zone)
    except ValueError as error:
        raise BadInput(f"Days and hour: {error}.") from None
    before = (days_text(newest.days), newest.time, client.time_zone) if newest else None
    if not days or before == (days, hour, zone):
        return []
    plan.change_schedule(tx, client, days, hour, zone, now)
    return ["days and hour"]


def change_address(tx: Tx, clinic: Clinic, client: Client, kind: str, text: str, by: str, now: datetime) -> None:
    """Give a client another mobile or e-mail, or take it away (empty). A new address needs a consent of its own.

    So does one that was taken away and is put back. An address that she leaves is no opt-out; the history has it all
    the same, for whoever brings back a database that still writes there.
    """
    lock_client(tx, client.id or 0)
    address = read_address(kind, text)
    there = tx.exec(select(Contact).where(Contact.client_id == client.id, Contact.kind == kind)).first()
    if (there.address if there and there.unusable != TAKEN_AWAY else "") == address:
        return
    if there is not None:
        consent.take_back(tx, there, now)
    if there is not None and there.consent == "open":
        tx.add(consent.history(clinic, there, client, consent.Closing("taken away", "at the desk", by), now))
    if not address and there is not None:
        there.consent, there.unusable = "closed", TAKEN_AWAY
    elif there is not None:
        there.address, there.consent, there.ever_closed, there.unusable = address, "none", False, ""
        there.confirmed_at, there.reminders_unconfirmed, there.last_sure_at = None, 0, None
        there.consent_changed_at = now
    else:
        tx.add(Contact(client_id=client.id or 0, kind=kind, address=address))
    tx.flush()
    consent.after_closing(tx, client, now)
    audit.record(tx, clinic.id, by, "address changed", client.id, {"kind": kind}, now)


def read_address(kind: str, text: str) -> str:
    """Return a normalised address, empty for none; raises BadInput."""
    try:
        if not text.strip():
            return ""
        return phone_number(text) if kind == "sms" else mail_address(text)
    except ValueError as error:
        raise BadInput(f"The {'mobile' if kind == 'sms' else 'e-mail'}: {error}.") from None


def consent_given(tx: Tx, clinic: Clinic, client: Client, how: str, on: date | None, by: str, now: datetime) -> int:
    """Record the consent that the desk took; return for how many addresses. Refused where only she can say yes."""
    if how not in CONSENT_WAYS[:2]:
        raise BadInput(f"How she agreed must be one of: {', '.join(CONSENT_WAYS[:2])}.")
    if on is None:
        raise BadInput("The day of the consent is empty; fill it in.")
    if client.state == "closed":
        raise Refused("This client is closed; open her record again first.")
    lock_client(tx, client.id or 0)
    events = joining.consent_at_desk(tx, clinic, client, how, on, by, now)
    if not events:
        raise Refused("No address was opened: each is open already, or opted out and comes back only by START from it.")
    audit.record(tx, clinic.id, by, "consent recorded", client.id, {"addresses": len(events), "how": how}, now)
    return len(events)


def consent_withdrawn(tx: Tx, clinic: Clinic, client: Client, by: str, now: datetime) -> None:
    """Close every address of a client, as she asked at the desk or on the phone."""
    lock_client(tx, client.id or 0)
    contacts = [one for one in clients.contacts_of(tx, client.id or 0) if one.consent != "closed"]
    closing = consent.Closing("withdrawn", "told the desk", by)
    consent.close_contacts(tx, clinic, contacts, {client.id or 0: client}, closing, now, for_all=False)
    audit.record(tx, clinic.id, by, "consent withdrawn", client.id, {"addresses": len(contacts)}, now)
