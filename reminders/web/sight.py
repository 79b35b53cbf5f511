"""What a signed-in person may see of the record: her clinic's rows, and of its clients those that her role covers.

Therapists see their own clients and, while they cover for a colleague, hers; leads and assistants see all of the
clinic's; the desk and records see all, without words and pain. Whatever is outside is as if it were not there.
"""

from dataclasses import dataclass
from datetime import datetime
from typing import TypeVar

from sqlalchemy import or_
from sqlmodel import col, select

from reminders.core.schedule import local_date
from reminders.errors import NotFound
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Clinic, ClinicNote, ExerciseSession, Proposal, Report, Staff
from reminders.web.access_rules import THERAPIST
from reminders.web.auth import Person

Open = TypeVar("Open", Alert, ClinicNote)
Hers = TypeVar("Hers", Proposal, Report, ExerciseSession)


@dataclass(frozen=True)
class Sight:
    """One clinic, and the therapists whose clients are seen; None: all of the clinic's."""

    clinic_id: int
    therapist_ids: frozenset[int] | None = None

    def covers(self, client: Client) -> bool:
        """Return whether a client is seen."""
        is_ours = client.clinic_id == self.clinic_id
        return is_ours and (self.therapist_ids is None or client.therapist_id in self.therapist_ids)


def sight_of(tx: Tx, person: Person, now: datetime) -> Sight:
    """Return what a person sees now."""
    if person.role != THERAPIST:
        return Sight(person.clinic_id)
    today = local_date(now, person.time_zone)
    covered = select(Staff.id).where(
        Staff.clinic_id == person.clinic_id,
        Staff.cover_id == person.staff_id,
        col(Staff.cover_from_on) <= today,
        or_(col(Staff.cover_until_on).is_(None), col(Staff.cover_until_on) >= today),
    )
    return Sight(person.clinic_id, frozenset({person.staff_id, *(found or 0 for found in tx.exec(covered))}))


def client_seen(tx: Tx, sight: Sight, client_id: int) -> tuple[Client, Clinic]:
    """Return a client and her clinic; raises NotFound for one that is not seen."""
    client = tx.get(Client, client_id) if is_id(client_id) else None
    if client is None or not sight.covers(client):
        raise NotFound("There is no such client.")
    clinic = tx.get(Clinic, client.clinic_id)
    assert clinic is not None
    return client, clinic


def alert_seen(tx: Tx, sight: Sight, alert_id: int) -> Alert:
    """Return an alert; raises NotFound for one that is not seen. Strangers' alerts are the whole clinic's."""
    return of_the_clinic(tx, sight, Alert, alert_id, "There is no such alert.")


def note_seen(tx: Tx, sight: Sight, note_id: int) -> ClinicNote:
    """Return an item of the inbox; raises NotFound for one that is not seen."""
    return of_the_clinic(tx, sight, ClinicNote, note_id, "There is no such item.")


def of_the_clinic(tx: Tx, sight: Sight, table: type[Open], row_id: int, refusal: str) -> Open:
    """Return a clinic's row, which may be about nobody known; raises NotFound with the refusal."""
    row = tx.get(table, row_id) if is_id(row_id) else None
    if row is None or row.clinic_id != sight.clinic_id:
        raise NotFound(refusal)
    client = tx.get(Client, row.client_id) if row.client_id is not None else None
    if client is not None and not sight.covers(client):
        raise NotFound(refusal)
    return row


def proposal_seen(tx: Tx, sight: Sight, proposal_id: int) -> tuple[Proposal, Client]:
    """Return a proposal with its client; raises NotFound for one that is not seen."""
    return of_a_client(tx, sight, Proposal, proposal_id, "There is no such proposal.")


def report_seen(tx: Tx, sight: Sight, report_id: int) -> tuple[Report, Client]:
    """Return a report with its client; raises NotFound for one that is not seen."""
    return of_a_client(tx, sight, Report, report_id, "There is no such report.")


def session_seen(tx: Tx, sight: Sight, session_id: int) -> tuple[ExerciseSession, Client]:
    """Return a session with its client; raises NotFound for one that is not seen."""
    return of_a_client(tx, sight, ExerciseSession, session_id, "There is no such session.")


def of_a_client(tx: Tx, sight: Sight, table: type[Hers], row_id: int, refusal: str) -> tuple[Hers, Client]:
    """Return a row that hangs on one client, and her; raises NotFound with the refusal."""
    row = tx.get(table, row_id) if is_id(row_id) else None
    client = tx.get(Client, row.client_id) if row is not None else None
    if row is None or client is None or not sight.covers(client):
        raise NotFound(refusal)
    return row, client


def is_id(number: int) -> bool:
    """Return whether a number can be a row's: databases take no larger ones."""
    return 0 < number < 2**63


def staff_seen(tx: Tx, clinic_id: int, staff_id: int) -> Staff:
    """Return a colleague; raises NotFound for anybody else."""
    staff = tx.get(Staff, staff_id) if is_id(staff_id) else None
    if staff is None or staff.clinic_id != clinic_id:
        raise NotFound("There is nobody like that on the staff.")
    return staff
