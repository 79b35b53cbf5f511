"""What the client's own page shows: one session, its exercises, and what was sent from its link before."""

import json
from dataclasses import dataclass
from datetime import date
from typing import Any

from sqlmodel import col, select

from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import (
    Client,
    ClientProgram,
    Clinic,
    ExerciseSession,
    Hold,
    InboundRow,
    Outbound,
    Schedule,
    Staff,
)

URGENT = ("danger", "stop_level")


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


def page_view(tx: Tx, session_id: int) -> PageView | None:
    """Return what a session's page shows, None when the session is gone."""
    session = tx.get(ExerciseSession, session_id)
    client = tx.get(Client, session.client_id) if session else None
    if session is None or client is None:
        return None
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
    """What was sent from a page: `done` is all, some, no or empty; `pain` 0-10."""

    done: str
    pain: int | None
    words: str


def sent_before(tx: Tx, session_id: int) -> Sent | None:
    """Return what was sent last from a session's page, None when nothing was."""
    row = tx.exec(submissions(session_id).order_by(col(InboundRow.id).desc()).limit(1)).first()
    if row is None:
        return None
    fields = json.loads(row.raw)
    return Sent(fields["done"], fields["pain"], fields["words"])


def submissions(session_id: int) -> Any:
    """Return the question for what came from a session's page; by range, so that the unique index serves it."""
    return select(InboundRow).where(
        InboundRow.source == "page",
        col(InboundRow.provider_id) >= f"{session_id}:",
        col(InboundRow.provider_id) < f"{session_id};",
    )


def urgent_answer(tx: Tx, session_id: int, submission: str) -> Outbound | None:
    """Return the urgent answer that a submission caused, for a page that is sent twice."""
    row = tx.exec(submissions(session_id).where(InboundRow.provider_id == f"{session_id}:{submission}")).first()
    if row is None:
        return None
    answers = select(Outbound).where(Outbound.inbound_id == row.id, col(Outbound.kind).in_(URGENT))
    return tx.exec(answers.order_by(col(Outbound.id))).first()
