"""The staff of a clinic as the desk sees it, with what hangs on each. Only reading."""

from dataclasses import dataclass

from sqlalchemy import func
from sqlmodel import col, select

from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Staff, WebSession


@dataclass(frozen=True)
class Member:
    """One staff member, how many clients and open alerts hang on her, and who covers for her."""

    staff: Staff
    clients: int
    alerts: int
    cover: str


def team(tx: Tx, clinic_id: int) -> list[Member]:
    """Return a clinic's staff, those at work first."""
    rows = list(tx.exec(select(Staff).where(Staff.clinic_id == clinic_id)))
    names = {one.id: one.name for one in rows}
    here = col(Client.state).in_(("invited", "active", "opted_out"))
    counted = select(Client.therapist_id, func.count()).where(Client.clinic_id == clinic_id, here)
    clients = dict(tx.exec(counted.group_by(col(Client.therapist_id))).all())
    about = (
        select(Client.therapist_id, func.count())
        .select_from(Alert)
        .join(Client, col(Alert.client_id) == col(Client.id))
        .where(Alert.clinic_id == clinic_id, Alert.state != "closed")
        .group_by(col(Client.therapist_id))
    )
    alerts = dict(tx.exec(about).all())
    members = [
        Member(one, clients.get(one.id or 0, 0), alerts.get(one.id or 0, 0), names.get(one.cover_id, ""))
        for one in rows
    ]
    return sorted(members, key=lambda member: (not member.staff.is_active, member.staff.name.casefold()))


def has_never_signed_in(tx: Tx, staff_id: int) -> bool:
    """Return whether somebody has had no session yet."""
    return tx.exec(select(WebSession.id).where(WebSession.staff_id == staff_id).limit(1)).first() is None
