"""One client's record as her page shows it, read in a constant number of questions. Only reading belongs here."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlmodel import col, select

from reminders.core.rules.history import History
from reminders.core.schedule import local_date
from reminders.store import histories
from reminders.store.db import Tx
from reminders.store.tables import (
    Alert,
    Client,
    ClientProgram,
    Clinic,
    ClinicNote,
    ConsentEvent,
    Contact,
    ExerciseSession,
    Hold,
    InboundRow,
    Outbound,
    Pause,
    Precaution,
    Proposal,
    Report,
    Schedule,
    Staff,
)

MOST_MESSAGES, MOST_SESSIONS = 60, 80


@dataclass(frozen=True)
class ClientView:
    """Everything that stands on a client's page; lists are newest first."""

    client: Client
    clinic: Clinic
    therapist: Staff | None
    contacts: list[Contact]
    schedules: list[Schedule]
    programs: list[ClientProgram]
    precautions: list[Precaution]
    sessions: list[ExerciseSession]
    reports: dict[int | None, list[Report]]  # by session id; None: of no session; oldest first
    holds: list[Hold]
    pauses: list[Pause]
    alerts: list[Alert]
    notes: list[ClinicNote]
    consents: list[ConsentEvent]
    outbound: list[Outbound]
    inbound: list[InboundRow]
    proposal: Proposal | None
    history: History

    @property
    def hold(self) -> Hold | None:
        """The hold that stops her now."""
        return next((hold for hold in self.holds if hold.ended_at is None), None)

    def pause(self, now: datetime) -> Pause | None:
        """Return the pause that runs or is to come."""
        today = local_date(now, self.client.time_zone)
        return next((one for one in self.pauses if one.ended_at is None and one.until_on >= today), None)


def client_view(tx: Tx, client: Client, clinic: Clinic) -> ClientView:
    """Return a client's record."""
    client_id = client.id or 0

    def newest(table: Any, by: Any, limit: int | None = None) -> list[Any]:
        statement = select(table).where(table.client_id == client_id).order_by(col(by).desc(), col(table.id).desc())
        return list(tx.exec(statement.limit(limit) if limit else statement))

    sessions = newest(ExerciseSession, ExerciseSession.on_date, MOST_SESSIONS)
    proposals: list[Proposal] = newest(Proposal, Proposal.made_at, 1)
    contacts = newest(Contact, Contact.id)
    return ClientView(
        client=client,
        clinic=clinic,
        therapist=tx.get(Staff, client.therapist_id),
        contacts=contacts[::-1],
        schedules=newest(Schedule, Schedule.from_on),
        programs=newest(ClientProgram, ClientProgram.number),
        precautions=newest(Precaution, Precaution.noted_on),
        sessions=sessions,
        reports=reports_of(tx, client_id, sessions),
        holds=newest(Hold, Hold.opened_at),
        pauses=newest(Pause, Pause.opened_at),
        alerts=newest(Alert, Alert.opened_at),
        notes=newest(ClinicNote, ClinicNote.at, MOST_MESSAGES),
        consents=consents_of(tx, client_id, [contact.address for contact in contacts]),
        outbound=newest(Outbound, Outbound.id, MOST_MESSAGES),
        inbound=newest(InboundRow, InboundRow.id, MOST_MESSAGES),
        proposal=next((one for one in proposals if one.state == "open"), None),
        history=histories.history_of(tx, client),
    )


def reports_of(tx: Tx, client_id: int, sessions: list[ExerciseSession]) -> dict[int | None, list[Report]]:
    """Return a client's reports by session, those of the sessions shown and those of none."""
    statement = select(Report).where(Report.client_id == client_id)
    if len(sessions) == MOST_SESSIONS:
        statement = statement.where(col(Report.at) >= sessions[-1].due_at - timedelta(days=1))
    found: dict[int | None, list[Report]] = {}
    for report in tx.exec(statement.order_by(col(Report.at), col(Report.id))):
        found.setdefault(report.session_id, []).append(report)
    return found


def consents_of(tx: Tx, client_id: int, addresses: list[str]) -> list[ConsentEvent]:
    """Return what happened to the consent of her addresses, newest first; others' on a shared phone are left out."""
    statement = select(ConsentEvent).where(col(ConsentEvent.address).in_(addresses))
    rows = tx.exec(statement.order_by(col(ConsentEvent.id).desc()))
    return [row for row in rows if row.client_id in (None, client_id)]
