"""Questions that the service begins: queued inside her window, and open from the moment that one address took them.

Questions that stand in an answer are opened where the answer is made; what an answer leads to stands in flows/choices.
"""

from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import col, select

from reminders.core.schedule import at_local, local_date, next_inside_window, plan_on
from reminders.flows import questions, say
from reminders.store import around, clients, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, Outbound, Question

STAFF_TALK = timedelta(hours=48)  # after a therapist's own message nothing is asked
TEMPLATES = {"settling": "morning", "reason": "reason"}
DEFAULT_HOUR = "09:00"
LAST_ASKED = (
    select(Question.asked_at)
    .where(col(Question.client_id) == bindparam("client"), col(Question.kind) == bindparam("kind"))
    .order_by(col(Question.asked_at).desc())
    .limit(1)
)


def begin(
    tx: Tx,
    clinic: Clinic,
    client: Client,
    kind: str,
    question: str,
    now: datetime,
    *,
    session_id: int | None = None,
    after: timedelta = timedelta(0),
    details: dict[str, Any] | None = None,
    replaces: bool = False,
) -> bool:
    """Queue a question; False when she may not be asked now, or one is open or under way that it does not replace."""
    if not may_ask(tx, client, now) or (not replaces and is_asked(tx, client.id or 0, now)):
        return False
    today = local_date(now, client.time_zone)
    due_at = next_inside_window(now + after, clients.window_of(clinic, client), client.time_zone)
    rows = say.tell_client(
        tx,
        clinic,
        client,
        kind,
        TEMPLATES.get(question, f"ask_{question}"),
        {**(details or {}), "asks": question, "about": session_id, "on": today.isoformat()},
        now,
        lambda contact: outbox.question_key(client.id or 0, question, today, contact),
        due_at=due_at,
    )
    return bool(rows)


def may_ask(tx: Tx, client: Client, now: datetime) -> bool:
    """Return whether a client may be asked anything: active, not held, not paused, not in talk with her therapist."""
    client_id = client.id or 0
    if client.state != "active" or client.died_on is not None or clients.open_hold(tx, client_id) is not None:
        return False
    if clients.pause_on(tx, client_id, local_date(now, client.time_zone)) is not None:
        return False
    return client.staff_wrote_at is None or now - client.staff_wrote_at > STAFF_TALK


def is_asked(tx: Tx, client_id: int, now: datetime) -> bool:
    """Return whether a question to a client is open or under way."""
    there = select(Question.id).where(
        Question.client_id == client_id, col(Question.closed_at).is_(None), col(Question.lapses_at) > now
    )
    if not around.lacks(tx, "question", client_id) and tx.exec(there.limit(1)).first() is not None:
        return True
    if around.lacks(tx, "asking", client_id):
        return False
    waiting = select(Outbound.id).where(
        Outbound.client_id == client_id,
        col(Outbound.kind).in_(around.BEGUN),
        col(Outbound.state).in_(around.UNDER_WAY),
    )
    return tx.exec(waiting.limit(1)).first() is not None


def accepted(tx: Tx, row: Outbound, now: datetime) -> None:
    """Open the question that an accepted message asks, once for all of her addresses."""
    asked = row.details.get("asks")
    client = tx.get(Client, row.client_id) if asked and row.client_id else None
    if client is None:
        return
    if asked_lately(tx, client, str(asked), now - questions.LAPSES_AFTER):
        return
    kept: dict[str, Any] = {name: row.details[name] for name in ("since", "week") if name in row.details}
    questions.ask(tx, str(asked), row.to, client, now, session_id=row.details.get("about"), details=kept)


def asked_lately(tx: Tx, client: Client, kind: str, since: datetime) -> bool:
    """Return whether a question of a kind is open to her that was asked after an instant."""
    statement = select(Question.id).where(
        Question.client_id == client.id,
        Question.kind == kind,
        col(Question.closed_at).is_(None),
        col(Question.asked_at) > since,
    )
    return tx.exec(statement.limit(1)).first() is not None


def last_asked_on(tx: Tx, client: Client, kind: str) -> date | None:
    """Return her local date on which a question of a kind was asked last; one that waits to be sent counts as asked."""
    if around.lacks(tx, "asked", client.id or 0):
        return None
    last = tx.exec(LAST_ASKED, params={"client": client.id, "kind": kind}).first()
    return local_date(last, client.time_zone) if last else None


def answers_to(tx: Tx, client: Client, kind: str, since: datetime) -> list[Any]:
    """Return her answers to questions of a kind since an instant, oldest first."""
    statement = select(Question).where(
        Question.client_id == client.id,
        Question.kind == kind,
        Question.closed_how == "answered",
        col(Question.asked_at) >= since,
    )
    rows = tx.exec(statement.order_by(col(Question.asked_at), col(Question.id)))
    return [row.details["choice"] for row in rows if row.details.get("choice") is not None]


def at_her_hour(tx: Tx, client: Client, day: date) -> datetime:
    """Return the instant of her reminder's hour on a date."""
    plan = plan_on(clients.plans_of(tx, client.id or 0), day)
    return at_local(day, plan.time if plan else DEFAULT_HOUR, client.time_zone)
