"""What the client's own page shows: one session, its exercises, and what was sent from its link before."""

from dataclasses import dataclass
from datetime import date

from sqlmodel import col, select

from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import (
    Client,
    ClientProgram,
    Clinic,
    ExerciseSession,
    Hold,
    Outbound,
    Report,
    Schedule,
    Staff,
)


@dataclass(frozen=True)
class PageView:
    """A session with the people and the program it belongs to."""

    session: ExerciseSession
    client: Client
    clinic: Clinic
    therapist: Staff | None
    program: ClientProgram | None
    schedule: Schedule | None
    hold: Hold | None
    sent: tuple[Report, ...]  # what came from this page before, oldest first


def page_view(tx: Tx, session_id: int) -> PageView | None:
    """Return what a session's page shows, None when the session is gone."""
    session = tx.get(ExerciseSession, session_id)
    client = tx.get(Client, session.client_id) if session else None
    if session is None or client is None:
        return None
    sent = select(Report).where(Report.session_id == session.id, Report.channel == "page").order_by(col(Report.id))
    plans = select(Schedule).where(Schedule.client_id == client.id, col(Schedule.from_on) <= session.on_date)
    program = tx.get(ClientProgram, session.program_id) if session.program_id else None
    return PageView(
        session=session,
        client=client,
        clinic=clients.the_clinic(tx, client.clinic_id),
        therapist=clients.therapist_of(tx, client),
        program=program or clients.program_on(tx, client.id or 0, session.on_date),
        schedule=tx.exec(plans.order_by(col(Schedule.from_on).desc(), col(Schedule.id).desc())).first(),
        hold=clients.open_hold(tx, client.id or 0),
        sent=tuple(tx.exec(sent)),
    )


def current_session_id(tx: Tx, client_id: int, today: date) -> int | None:
    """Return the newest session up to today that a reminder was sent for, None when there is none."""
    statement = (
        select(ExerciseSession.id)
        .where(
            ExerciseSession.client_id == client_id,
            col(ExerciseSession.on_date) <= today,
            col(ExerciseSession.reminded_at).is_not(None),
        )
        .order_by(col(ExerciseSession.on_date).desc())
        .limit(1)
    )
    return tx.exec(statement).first()


@dataclass(frozen=True)
class Sent:
    """What was sent from a page: `done` is all, some, no or nothing; `pain` 0-10."""

    done: str
    pain: int | None
    words: str


def answers_to(tx: Tx, inbound_id: int) -> list[Outbound]:
    """Return what was queued as an answer to one message, grave ones first."""
    rows = tx.exec(select(Outbound).where(Outbound.inbound_id == inbound_id, col(Outbound.state) != "withdrawn"))
    return sorted(rows, key=lambda row: (row.priority, row.id or 0))
