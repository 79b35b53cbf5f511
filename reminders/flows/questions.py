"""The questions we ask: at most one open a client and a phone, answered by the next reply, lapsing by themselves.

Which question is asked is decided in core/decide; what an answer leads to, in flows/choices.
"""

from collections.abc import Sequence
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import col, select

from reminders.store import around
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession, InboundRow, Outbound, Question

LAPSES_AFTER = timedelta(hours=24)
SAME_REMINDER = timedelta(hours=1)  # a morning question stands inside a reminder that may be accepted a little later

# What every reply asks, made once.
OPEN = (
    select(Question)
    .where(
        (col(Question.address) == bindparam("address"))
        | col(Question.client_id).in_(bindparam("clients", expanding=True)),
        col(Question.closed_at).is_(None),
    )
    .order_by(col(Question.asked_at).desc(), col(Question.id).desc())
)
KINDS_ASKED = select(Question.kind).where(col(Question.session_id) == bindparam("session"))


def current(
    tx: Tx, address: str, client_ids: Sequence[int], now: datetime, sent_at: datetime | None = None
) -> Question | None:
    """Return the open question that a reply may answer, on that phone or to one of these clients on any contact.

    One that was older than a day when the reply was sent (`sent_at`, else now), or than a reminder accepted before
    that, is closed as lapsed; one asked later is left open: a text fetched after an outage answers what was asked then.
    """
    moment = sent_at or now
    found: Question | None = None
    if none_open(tx, address, client_ids):
        return None
    for question in tx.exec(OPEN, params={"address": address, "clients": list(client_ids)}):
        if found is not None or question.lapses_at <= moment or reminded_since(tx, question, moment):
            close(question, "lapsed", now)
        elif not is_later(tx, question, moment):
            found = question
    return found


def none_open(tx: Tx, address: str, client_ids: Sequence[int]) -> bool:
    """Return whether surely no question is open on a phone or to these clients."""
    return around.lacks_at(tx, "question", address) and all(around.lacks(tx, "question", one) for one in client_ids)


def is_later(tx: Tx, question: Question, moment: datetime) -> bool:
    """Return whether a question came after an instant; one that a message led to counts from that message's moment."""
    if question.asked_at <= moment:
        return False
    cause = tx.get(InboundRow, question.inbound_id) if question.inbound_id is not None else None
    return cause is None or cause.received_at > moment


def reminded_since(tx: Tx, question: Question, until: datetime) -> bool:
    """Return whether a reminder went out after a question was asked, up to an instant."""
    if question.client_id is None:
        return False
    statement = select(Outbound.id).where(
        Outbound.client_id == question.client_id,
        Outbound.kind == "reminder",
        col(Outbound.accepted_at) > question.asked_at + SAME_REMINDER,
        col(Outbound.accepted_at) <= until,
    )
    return tx.exec(statement.limit(1)).first() is not None


def ask(
    tx: Tx,
    kind: str,
    address: str,
    client: Client | None,
    now: datetime,
    *,
    session_id: int | None = None,
    inbound_id: int | None = None,
    details: dict[str, Any] | None = None,
    lapses_at: datetime | None = None,
) -> Question:
    """Open a question; whatever was open for that client or phone is replaced."""
    client_id = client.id if client else None
    mine = [] if client_id is None else [client_id]
    if not none_open(tx, address, mine):
        for other in tx.exec(OPEN, params={"address": address, "clients": mine}):
            close(other, "replaced", now)
    question = Question(
        client_id=client_id,
        address=address,
        kind=kind,
        session_id=session_id,
        inbound_id=inbound_id,
        asked_at=now,
        lapses_at=lapses_at or now + LAPSES_AFTER,
        details=details or {},
    )
    tx.add(question)
    tx.flush()
    return question


def close(question: Question, how: str, now: datetime, **details: Any) -> None:
    """Close a question: answered, unanswered, lapsed or replaced."""
    question.closed_at, question.closed_how = now, how
    if details:
        question.details = {**question.details, **details}


def close_all(tx: Tx, client_id: int, how: str, now: datetime) -> None:
    """Close every open question to a client."""
    if around.lacks(tx, "question", client_id):
        return
    for question in tx.exec(select(Question).where(Question.client_id == client_id, col(Question.closed_at).is_(None))):
        close(question, how, now)


def asked_about(tx: Tx, session: ExerciseSession | None) -> frozenset[str]:
    """Return the kinds of question already asked about a session."""
    if session is None or around.lacks(tx, "asked", session.client_id):
        return frozenset()
    return frozenset(tx.exec(KINDS_ASKED, params={"session": session.id}))
