"""Whether somebody can be called for every alert: staff with clients, their cover, the clinic's lead."""

from collections.abc import Iterator

from sqlmodel import col, func, select

from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, Staff

LIVE = ("invited", "active", "opted_out")


def gaps(tx: Tx, clinic: Clinic) -> Iterator[str]:
    """Yield what is missing in a clinic so that its clients and alerts always find somebody, a sentence each."""
    if not (clinic.name and clinic.phone):
        yield "it has no name or no phone, so nobody can be enrolled: reminders clinic set --name … --phone …"
    lead = clients.lead_of(tx, clinic)
    if lead is None:
        yield "it has no lead, who is called when a therapist does not answer: reminders clinic set --lead EMAIL"
    if not clients.admins_of(tx, clinic.id or 0):
        yield "it has no admin: reminders staff add --role admin …"
    for staff, count in with_clients(tx, clinic):
        if not staff.is_active:
            yield f"{staff.email} is switched off and still has {count} clients: move them in the console"
        if staff.cover_id is None and (lead is None or lead.id == staff.id):
            yield f"{staff.email} has neither cover nor a lead behind her: reminders staff cover {staff.email} --by …"
        if not staff.mobile or staff.mobile_stopped_at is not None:
            yield f"{staff.email} gets her alerts by mail alone: her mobile is missing or she sent STOP from it"


def with_clients(tx: Tx, clinic: Clinic) -> list[tuple[Staff, int]]:
    """Return the staff who have clients, with how many."""
    statement = (
        select(Staff, func.count(col(Client.id)))
        .join(Client, col(Client.therapist_id) == col(Staff.id))
        .where(Staff.clinic_id == clinic.id, col(Client.state).in_(LIVE))
        .group_by(col(Staff.id))
        .order_by(col(Staff.id))
    )
    return list(tx.exec(statement))
