"""What needs a person now, read in a constant number of questions: alerts, inbox, holds, proposals, unchecked programs.

In which order they stand and what may be done about them is decided where the page is put together.
"""

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import and_, or_
from sqlmodel import col, select

from reminders.core.rules import DANGER_RULES
from reminders.store.db import Tx
from reminders.store.tables import (
    Alert,
    Client,
    Clinic,
    ClinicNote,
    Contact,
    ExerciseSession,
    Hold,
    InboundRow,
    Outbound,
    Proposal,
    Report,
    Staff,
)

THERAPISTS_NOTES = ("question", "reschedule", "unclear", "written", "stranger", "danger")
TOLD_KINDS = ("danger", "stop_level", "read_by")
CHUNK = 500


@dataclass(frozen=True)
class Facts:
    """Everything the day's list is made from; what hangs on a client goes by her id."""

    clinic: Clinic
    alerts: Sequence[Alert] = ()
    notes: Sequence[ClinicNote] = ()
    holds: Sequence[Hold] = ()
    hold_alerts: dict[int, Alert] = field(default_factory=dict)  # what holds came from, by alert id
    proposals: Sequence[Proposal] = ()
    unchecked: Sequence[Client] = ()
    clients: dict[int, Client] = field(default_factory=dict)
    contacts: dict[int, list[Contact]] = field(default_factory=dict)
    words: dict[int, Report] = field(default_factory=dict)  # by report id
    heard: dict[int, tuple[str, datetime, str]] = field(default_factory=dict)  # by inbound id, without report
    told: dict[int, list[Outbound]] = field(default_factory=dict)  # by inbound id
    sharers: dict[int, list[Client]] = field(default_factory=dict)  # by inbound id, where nobody was named
    therapists: dict[int, Staff] = field(default_factory=dict)
    first_days: dict[int, Any] = field(default_factory=dict)


def seen(therapist_ids: frozenset[int] | None) -> Any:
    """Return the condition that a joined client is one of these therapists'; None is all of the clinic's."""
    return col(Client.id).is_not(None) if therapist_ids is None else col(Client.therapist_id).in_(therapist_ids)


def facts_of(tx: Tx, clinic_id: int, therapist_ids: frozenset[int] | None, now: datetime) -> Facts:
    """Return what needs a person, of one clinic and some or all of its therapists."""
    clinic = tx.get(Clinic, clinic_id)
    assert clinic is not None
    here = (Client.clinic_id == clinic_id, seen(therapist_ids))
    alert_pairs = list(tx.exec(alerts_query(clinic_id, here[1])))
    note_pairs = list(tx.exec(notes_query(clinic_id, here[1])))
    hold_pairs, proposal_pairs = holds_of(tx, here), proposals_of(tx, here)
    unchecked = unchecked_of(tx, here)
    pairs: list[Any] = [*alert_pairs, *note_pairs, *hold_pairs, *proposal_pairs]
    people = {client.id or 0: client for _, client in pairs if client is not None} | {
        one.id or 0: one for one in unchecked
    }
    alerts = [alert for alert, _ in alert_pairs]
    causes = causes_of(tx, hold_pairs)
    every = [*alerts, *(one for one in causes if one not in alerts)]
    return Facts(
        clinic=clinic,
        alerts=alerts,
        notes=[note for note, _ in note_pairs],
        holds=[hold for hold, _ in hold_pairs],
        proposals=[proposal for proposal, _ in proposal_pairs],
        unchecked=unchecked,
        clients=people,
        contacts=contacts_of(tx, people),
        hold_alerts={one.id or 0: one for one in causes},
        words=words_of(tx, every),
        heard=heard_in(tx, every),
        told=told_of(tx, every, now),
        sharers=sharers_of(tx, clinic_id, [note for note, _ in note_pairs]),
        therapists={one.id or 0: one for one in tx.exec(select(Staff).where(Staff.clinic_id == clinic_id))},
        first_days=first_days(tx, [one.id or 0 for one in unchecked]),
    )


def holds_of(tx: Tx, here: tuple[Any, ...]) -> list[Any]:
    """Return the open holds with their clients, the oldest first."""
    statement = select(Hold, Client).join(Client, col(Hold.client_id) == col(Client.id))
    return list(tx.exec(statement.where(*here, col(Hold.ended_at).is_(None)).order_by(col(Hold.opened_at))))


def causes_of(tx: Tx, hold_pairs: Sequence[Any]) -> list[Alert]:
    """Return the alerts that holds came from, closed ones too."""
    ids = {hold.alert_id for hold, _ in hold_pairs if hold.alert_id}
    return [one for part in chunks(ids) for one in tx.exec(select(Alert).where(col(Alert.id).in_(part)))]


def proposals_of(tx: Tx, here: tuple[Any, ...]) -> list[Any]:
    """Return the open proposals of clients who are still with us, the oldest first."""
    statement = select(Proposal, Client).join(Client, col(Proposal.client_id) == col(Client.id))
    statement = statement.where(*here, Proposal.state == "open", col(Client.state).in_(("active", "invited")))
    return list(tx.exec(statement.order_by(col(Proposal.made_at))))


def unchecked_of(tx: Tx, here: tuple[Any, ...]) -> list[Client]:
    """Return the clients whose precautions nobody has stated."""
    statement = select(Client).where(*here, col(Client.precautions_stated).is_(False))
    return list(tx.exec(statement.where(col(Client.state).in_(("active", "invited"))).order_by(col(Client.id))))


def alerts_query(clinic_id: int, mine: Any) -> Any:
    """Return the question for alerts that are not closed; those of unknown numbers are everybody's."""
    return (
        select(Alert, Client)
        .outerjoin(Client, col(Alert.client_id) == col(Client.id))
        .where(Alert.clinic_id == clinic_id, Alert.state != "closed", or_(col(Alert.client_id).is_(None), mine))
        .order_by(col(Alert.opened_at))
    )


def notes_query(clinic_id: int, mine: Any) -> Any:
    """Return the question for open inbox items that are a therapist's business."""
    return (
        select(ClinicNote, Client)
        .outerjoin(Client, col(ClinicNote.client_id) == col(Client.id))
        .where(
            ClinicNote.clinic_id == clinic_id,
            col(ClinicNote.closed_at).is_(None),
            or_(
                and_(col(ClinicNote.client_id).is_(None), col(ClinicNote.kind).in_(("stranger", "unclear"))),
                and_(mine, col(ClinicNote.kind).in_(THERAPISTS_NOTES)),
            ),
        )
        .order_by(col(ClinicNote.at))
    )


def contacts_of(tx: Tx, client_ids: Iterable[int]) -> dict[int, list[Contact]]:
    """Return clients' addresses by client, texts first."""
    found: defaultdict[int, list[Contact]] = defaultdict(list)
    for part in chunks(client_ids):
        for row in tx.exec(select(Contact).where(col(Contact.client_id).in_(part)).order_by(col(Contact.id))):
            found[row.client_id].append(row)
    for rows in found.values():
        rows.sort(key=lambda row: (row.kind != "sms", row.id or 0))
    return dict(found)


def sharers_of(tx: Tx, clinic_id: int, notes: Sequence[ClinicNote]) -> dict[int, list[Client]]:
    """Return which clients of a clinic may have written the words that nobody was named for, by inbound id."""
    ids = {note.inbound_id for note in notes if note.client_id is None and note.details.get("what") == "whose"}
    found: defaultdict[int, list[Client]] = defaultdict(list)
    for part in chunks(one for one in ids if one is not None):
        statement = (
            select(InboundRow.id, Client)
            .join(Contact, col(Contact.address) == col(InboundRow.address))
            .join(Client, col(Client.id) == col(Contact.client_id))
            .where(col(InboundRow.id).in_(part), Client.clinic_id == clinic_id, Client.state != "closed")
        )
        for row_id, client in tx.exec(statement.order_by(col(Client.id))):
            found[row_id or 0].append(client)
    return dict(found)


def words_of(tx: Tx, alerts: Sequence[Alert]) -> dict[int, Report]:
    """Return the reports that alerts came from, by id."""
    ids = {entry["report"] for alert in alerts for entry in alert.because if entry.get("report")}
    found: dict[int, Report] = {}
    for part in chunks(ids):
        found |= {row.id or 0: row for row in tx.exec(select(Report).where(col(Report.id).in_(part)))}
    return found


def heard_in(tx: Tx, alerts: Sequence[Alert]) -> dict[int, tuple[str, datetime, str]]:
    """Return words, instant and channel of what alerts came from while whose it was is open, by inbound id."""
    entries = (entry for alert in alerts for entry in alert.because)
    ids = {entry["inbound"] for entry in entries if entry.get("inbound") and not entry.get("report")}
    columns = select(col(InboundRow.id), col(InboundRow.text), col(InboundRow.received_at), col(InboundRow.source))
    return {
        row_id or 0: (text, at, source)
        for part in chunks(ids)
        for row_id, text, at, source in tx.exec(columns.where(col(InboundRow.id).in_(part)))
    }


def told_of(tx: Tx, alerts: Sequence[Alert], now: datetime) -> dict[int, list[Outbound]]:
    """Return what clients were told, by the inbound message it answers; by minus the alert's id for who-read-it."""
    inbound = {entry["inbound"] for alert in alerts for entry in alert.because if entry.get("inbound")}
    found: defaultdict[int, list[Outbound]] = defaultdict(list)
    newest = now - timedelta(days=90)
    for part in chunks(inbound):
        statement = select(Outbound).where(
            col(Outbound.inbound_id).in_(part), col(Outbound.kind).in_(TOLD_KINDS), col(Outbound.created_at) > newest
        )
        for row in tx.exec(statement.order_by(col(Outbound.id))):
            found[row.inbound_id or 0].append(row)
    return dict(found)


def first_days(tx: Tx, client_ids: Sequence[int]) -> dict[int, Any]:
    """Return the next planned day of some clients."""
    found: dict[int, Any] = {}
    for part in chunks(client_ids):
        statement = select(col(ExerciseSession.client_id), col(ExerciseSession.on_date)).where(
            col(ExerciseSession.client_id).in_(part), ExerciseSession.state == "planned"
        )
        for client_id, on_date in tx.exec(statement.order_by(col(ExerciseSession.on_date).desc())):
            found[client_id] = on_date
    return found


def chunks(ids: Iterable[int]) -> list[list[int]]:
    """Return ids in parts that one question takes; none for none."""
    ordered = sorted(ids)
    return [ordered[start : start + CHUNK] for start in range(0, len(ordered), CHUNK)]


def is_danger(alert: Alert) -> bool:
    """Return whether an alert is about a danger sign."""
    return alert.rule in DANGER_RULES
