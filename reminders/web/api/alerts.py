"""What asks for a person, for other programs: alerts, the clinic's inbox, proposals."""

from typing import Annotated, Any, Literal

from fastapi import APIRouter, Query
from sqlmodel import col, select
from starlette.responses import Response

from reminders.flows import alert as alerts
from reminders.flows import audit, care, programs, whose
from reminders.store import correspondence
from reminders.store.db import Tx
from reminders.store.shapes import stamp
from reminders.store.tables import Alert, Client, ClinicNote, Proposal
from reminders.web import sight
from reminders.web.api import shapes
from reminders.web.api.once import OnceDep
from reminders.web.api.problems import ALL
from reminders.web.api.shapes import After, Id, Limit
from reminders.web.api.tokens import TokenDep
from reminders.web.deps import AppDep

router = APIRouter(prefix="/api/v1", tags=["alerts"], responses=ALL)

ANYONE_CARING = ("therapist", "lead", "assistant")


@router.get("/alerts", response_model=shapes.Page)
def list_alerts(
    app: AppDep,
    caller: TokenDep,
    after: After = 0,
    limit: Limit = 50,
    state: Annotated[Literal["open", "acknowledged", "closed"] | None, Query()] = None,
) -> Any:
    """List alerts by id, with everyone who was told and how that went."""
    statement = select(Alert).where(Alert.clinic_id == caller.clinic_id, col(Alert.id) > after)
    if state is not None:
        statement = statement.where(Alert.state == state)
    with app.db.begin() as tx:
        found = list(tx.exec(statement.order_by(col(Alert.id)).limit(limit + 1)))
        page = found[:limit]
        rows = correspondence.alerts_by_row_json(tx, page)
        numbers = [one.number for one in page]
        audit.record(tx, caller.clinic_id, caller.by, "alerts viewed", None, {"alerts": numbers}, caller.now)
    return {"items": rows, "next": page[-1].id if len(found) > limit else None}


@router.post("/alerts/{alert_id}/acknowledge", response_model=shapes.Done)
def acknowledge(body: shapes.AcknowledgeIn, caller: TokenDep, once: OnceDep, alert_id: Id) -> Response:
    """Acknowledge an alert in a staff member's name.

    It counts as acknowledged by link: the client hears nothing of it, since a token proves nobody's reading. With
    `words_read` your program vouches that the member named has read the client's words behind a sign-in of yours and
    pressed the button there; then, for an urgent alert, the client is told who has read them.
    """

    def act(tx: Tx) -> Any:
        found = sight.alert_seen(tx, caller.sight, alert_id)
        by = caller.staff_named(tx, body.by, ANYONE_CARING)
        if body.words_read and found.state == "open":
            found.words_opened_by = by
        alerts.acknowledge(tx, found, by, "console" if body.words_read else "link", caller.now)
        details = {"alert": found.number, "words_read": body.words_read, "through": caller.by}
        audit.record(tx, caller.clinic_id, by, "alert acknowledged", found.client_id, details, caller.now)
        return {"done": "acknowledged", "id": alert_id}

    return once(body, act)


@router.post("/alerts/{alert_id}/close", response_model=shapes.Done)
def close(body: shapes.CloseIn, caller: TokenDep, once: OnceDep, alert_id: Id) -> Response:
    """Close an alert with what was done, in a therapist's name."""

    def act(tx: Tx) -> Any:
        found = sight.alert_seen(tx, caller.sight, alert_id)
        by = caller.staff_named(tx, body.by)
        alerts.close(tx, found, by, body.outcome, body.note, caller.now)
        details = {"alert": found.number, "outcome": found.outcome, "through": caller.by}
        audit.record(tx, caller.clinic_id, by, "alert closed", found.client_id, details, caller.now)
        return {"done": "closed", "id": alert_id}

    return once(body, act)


@router.post("/alerts/{alert_id}/hers", response_model=shapes.Done)
def hers(body: shapes.ByIn, caller: TokenDep, once: OnceDep, alert_id: Id) -> Response:
    """Say, in a therapist's name, that a danger sign from a shared phone (`one_of_two`) was this alert's client's.

    The alerts and holds of the others on that phone, opened by the same words, end.
    """

    def act(tx: Tx) -> Any:
        found = sight.alert_seen(tx, caller.sight, alert_id)
        whose.settle_whose(tx, found, caller.staff_named(tx, body.by), caller.now, caller.by)
        return {"done": "settled", "id": alert_id}

    return once(body, act)


@router.get("/inbox", response_model=shapes.Page)
def list_inbox(app: AppDep, caller: TokenDep, after: After = 0, limit: Limit = 50) -> Any:
    """List the open items of the clinic's inbox by id."""
    statement = select(ClinicNote).where(
        ClinicNote.clinic_id == caller.clinic_id, col(ClinicNote.closed_at).is_(None), col(ClinicNote.id) > after
    )
    with app.db.begin() as tx:
        found = list(tx.exec(statement.order_by(col(ClinicNote.id)).limit(limit + 1)))
        audit.record(tx, caller.clinic_id, caller.by, "inbox viewed", None, {}, caller.now)
    page = found[:limit]
    items = [
        {
            "id": row.id,
            "client": row.client_id,
            "kind": row.kind,
            "words": row.words,
            "details": row.details,
            "at": stamp(row.at),
        }
        for row in page
    ]
    return {"items": items, "next": page[-1].id if len(found) > limit else None}


@router.post("/inbox/{note_id}/settle", response_model=shapes.Done)
def settle(caller: TokenDep, once: OnceDep, note_id: Id) -> Response:
    """Take an item out of the inbox."""

    def act(tx: Tx) -> Any:
        care.settle_note(tx, sight.note_seen(tx, caller.sight, note_id), caller.by, caller.now)
        return {"done": "settled", "id": note_id}

    return once(None, act)


@router.get("/proposals", response_model=shapes.Page)
def list_proposals(app: AppDep, caller: TokenDep, after: After = 0, limit: Limit = 50) -> Any:
    """List the open proposals of dose steps by id."""
    statement = (
        select(Proposal)
        .join(Client, col(Proposal.client_id) == col(Client.id))
        .where(Client.clinic_id == caller.clinic_id, Proposal.state == "open", col(Proposal.id) > after)
    )
    with app.db.read() as tx:
        found = list(tx.exec(statement.order_by(col(Proposal.id)).limit(limit + 1)))
    page = found[:limit]
    items = [
        {
            "id": row.id,
            "client": row.client_id,
            "direction": row.direction,
            "step": row.to_rung + 1,
            "because": row.because,
            "made": stamp(row.made_at),
        }
        for row in page
    ]
    return {"items": items, "next": page[-1].id if len(found) > limit else None}


@router.post("/proposals/{proposal_id}", response_model=shapes.Done)
def answer_proposal(body: shapes.AnswerIn, caller: TokenDep, once: OnceDep, proposal_id: Id) -> Response:
    """Approve or decline a proposed step, in a therapist's name."""

    def act(tx: Tx) -> Any:
        proposal, client = sight.proposal_seen(tx, caller.sight, proposal_id)
        by = caller.staff_named(tx, body.by)
        programs.answer_proposal(tx, client, proposal, body.answer == "approve", by, caller.now)
        return {"done": f"{body.answer}d", "id": proposal_id}

    return once(body, act)
