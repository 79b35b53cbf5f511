"""Queueing and settling what is to be said. Every key is built here, from ids and ISO dates, never from shown text."""

from collections.abc import Iterable, Sequence
from datetime import date, datetime, timedelta
from functools import lru_cache
from typing import Any

from sqlalchemy import Table, bindparam, func, or_, update
from sqlalchemy import select as columns
from sqlmodel import col, select

from reminders.store import around, bulk
from reminders.store.db import Tx, ask, is_postgres, lock_clients
from reminders.store.tables import Attempt, Contact, ExerciseSession, Outbound

TABLE: Table = Outbound.__table__  # type: ignore[attr-defined]
ATTEMPTS: Table = Attempt.__table__  # type: ignore[attr-defined]
END_ATTEMPT = (
    update(ATTEMPTS)
    .where(ATTEMPTS.c.outbound_id == bindparam("row"), ATTEMPTS.c.number == bindparam("try"))
    .values(ended_at=bindparam("at"), outcome=bindparam("how"), code=bindparam("said"), receipt=bindparam("given"))
)
SENT_STATES = ("accepted", "delivered")
UNDER_WAY = ("claimed", "unknown")
ALIVE = ("waiting", *UNDER_WAY, *SENT_STATES)  # it went, or may still go

BEGUN = columns(col(Outbound.client_id), col(Outbound.claimed_at)).where(
    col(Outbound.client_id).in_(bindparam("ids", expanding=True)),
    col(Outbound.channel) == "sms",
    col(Outbound.order_full) > 0,
    col(Outbound.state).in_(SENT_STATES + UNDER_WAY),
    col(Outbound.claimed_at) > bindparam("since"),
)
# Asked in each round, however little there is to do: made once.
DUE = columns(TABLE.c.id).where(TABLE.c.state == "waiting", TABLE.c.due_at <= bindparam("now")).limit(1)
ANSWERS_DUE = DUE.where(TABLE.c.order_full == 0)
LAPSED = columns(TABLE.c.id).where(TABLE.c.state == "claimed", TABLE.c.claim_until <= bindparam("now")).limit(1)
OPEN = columns(func.count()).where(
    or_(TABLE.c.state.in_(UNDER_WAY), (TABLE.c.state == "waiting") & (TABLE.c.due_at <= bindparam("now")))
)


def reminder_key(client_id: int, on_date: date, contact_id: int) -> str:
    """Return the key of a session's reminder to one address."""
    return f"reminder:{client_id}:{on_date.isoformat()}:{contact_id}"


def evening_key(session_id: int) -> str:
    """Return the key of a session's one evening prompt."""
    return f"evening:{session_id}"


def welcome_key(contact_id: int, consent_event_id: int) -> str:
    """Return the key of the welcome that a consent brings."""
    return f"welcome:{contact_id}:{consent_event_id}"


def answer_key(inbound_id: int, kind: str, address: str = "") -> str:
    """Return the key of an answer of one kind to one inbound message; `address` when it goes elsewhere too."""
    return f"answer:{inbound_id}:{kind}" + (f":{address}" if address else "")


def question_key(client_id: int, kind: str, on_date: date, contact_id: int = 0) -> str:
    """Return the key of a question that the service begins on a local date."""
    return f"question:{client_id}:{kind}:{on_date.isoformat()}:{contact_id}"


def client_key(kind: str, client_id: int, cause_id: int, contact_id: int) -> str:
    """Return the key of a message to a client caused by a row of the record (a hold, a note, an alert)."""
    return f"{kind}:{client_id}:{cause_id}:{contact_id}"


def alert_key(alert_id: int, round_number: int, step: int, staff_id: int, channel: str) -> str:
    """Return the key of one call of an alert: its round (it may open again), step, person and channel."""
    return f"alert:{alert_id}:{round_number}:{step}:{staff_id}:{channel}"


def note_key(staff_id: int, slot: datetime, channel: str) -> str:
    """Return the key of a staff member's gathered notes at one of her hours."""
    return f"note:{staff_id}:{slot.isoformat()}:{channel}"


def digest_key(therapist_id: int, week: str) -> str:
    """Return the key of a weekly digest."""
    return f"digest:{therapist_id}:{week}"


def operator_key(clinic_id: int, what: str, on_date: date, alert_number: int = 0) -> str:
    """Return the key of a word to the operator: each thing once a day a clinic, and about each alert of it."""
    return f"operator:{clinic_id}:{what}:{on_date.isoformat()}" + (f":{alert_number}" if alert_number else "")


def staff_key(kind: str, staff_id: int, cause: str) -> str:
    """Return the key of any other message to staff."""
    return f"{kind}:{staff_id}:{cause}"


def queue(tx: Tx, row: Outbound) -> int | None:
    """Write one message to be sent; return its id, or None when its key was there already."""
    values = bulk.message(**row.model_dump(include=set(bulk.BORN)))
    row.priority, row.order_full, row.is_answer = values["priority"], values["order_full"], values["is_answer"]
    row.expires_at = values["expires_at"]
    row.id = bulk.queue_one(tx, values)
    return row.id


def withdraw(
    tx: Tx, now: datetime, why: str, *, client_id: int, kinds: Iterable[str] = (), session_id: int | None = None
) -> int:
    """Take back a client's waiting messages, all or of some kinds or one session; return how many."""
    if any(isinstance(row, Outbound) for row in (*tx.new, *tx.dirty)):
        tx.flush()
    if around.lacks(tx, "waiting", client_id):
        return 0
    for row in [one for one in tx.identity_map.values() if isinstance(one, Outbound)]:
        tx.expire(row)  # what this transaction has read of the outbox is read again
    asked = {"whose": client_id, "session": session_id, "reason": why, "at": now}
    result = tx.connection().execute(withdrawal(tuple(kinds), session_id is not None), asked)
    return int(result.rowcount)


@lru_cache(maxsize=256)
def withdrawal(kinds: tuple[str, ...], of_session: bool) -> Any:
    """Return the UPDATE that takes back a client's waiting messages of some kinds (all: none named); made once each."""
    statement = update(TABLE).where(TABLE.c.client_id == bindparam("whose"), TABLE.c.state == "waiting")
    if kinds:
        statement = statement.where(TABLE.c.kind.in_(kinds))
    if of_session:
        statement = statement.where(TABLE.c.session_id == bindparam("session"))
    return statement.values(state="withdrawn", why=bindparam("reason"), settled_at=bindparam("at"))


def due(tx: Tx, now: datetime, limit: int, channels: Sequence[str], *, answers_only: bool = False) -> list[Outbound]:
    """Return waiting messages that are due, most pressing first, locked against other workers on PostgreSQL."""
    statement = (
        select(Outbound)
        .where(col(Outbound.state) == "waiting", col(Outbound.due_at) <= now, col(Outbound.channel).in_(channels))
        .order_by(col(Outbound.priority), col(Outbound.due_at), col(Outbound.id))
        .limit(limit)
        .with_for_update(skip_locked=True)
    )
    if answers_only:
        statement = statement.where(col(Outbound.order_full) == 0)
    return list(tx.exec(statement))


def is_due(tx: Tx, now: datetime, *, answers_only: bool = False) -> bool:
    """Return whether anything waiting is due, by one look into an index."""
    return ask(tx, ANSWERS_DUE if answers_only else DUE, {"now": now}).first() is not None


def lapsed_claims(tx: Tx, now: datetime, limit: int = 200) -> list[Outbound]:
    """Return claimed messages whose lease has run out: their attempts are unknown."""
    statement = (
        select(Outbound)
        .where(col(Outbound.state) == "claimed", col(Outbound.claim_until) <= now)
        .order_by(col(Outbound.id))
        .limit(limit)
        .with_for_update(skip_locked=True)
    )
    return list(tx.exec(statement))


def has_lapsed(tx: Tx, now: datetime) -> bool:
    """Return whether any claim's lease has run out."""
    return ask(tx, LAPSED, {"now": now}).first() is not None


def unknown(tx: Tx, now: datetime, waits: Sequence[timedelta], limit: int = 200) -> list[Outbound]:
    """Return messages whose last attempt was cut off and that are to be looked up now, most pressing first.

    `waits`: how long after the claim each look-up is made; the last one stands for all that follow. A lease says
    until when a row is left alone whose provider could not say.
    """
    since = func.coalesce(col(Outbound.claimed_at), col(Outbound.created_at))
    last = len(waits) - 1
    is_time = or_(
        *((col(Outbound.lookups) == made) & (since <= now - wait) for made, wait in enumerate(waits[:last])),
        (col(Outbound.lookups) >= last) & (since <= now - waits[last]),
    )
    is_free = or_(col(Outbound.claim_until).is_(None), col(Outbound.claim_until) <= now)
    statement = select(Outbound).where(col(Outbound.state) == "unknown", is_time, is_free)
    return list(tx.exec(statement.order_by(col(Outbound.priority), col(Outbound.id)).limit(limit)))


def next_due_at(tx: Tx) -> datetime | None:
    """Return when the next waiting message is due."""
    return tx.exec(select(func.min(Outbound.due_at)).where(col(Outbound.state) == "waiting")).one()


def begun_since(tx: Tx, client_ids: Sequence[int], since: datetime) -> list[tuple[int, datetime]]:
    """Return (client, instant) of every service-begun text that was or may have been handed over since an instant."""
    found = ask(tx, BEGUN, {"ids": client_ids, "since": since})
    return [(client_id, at) for client_id, at in found if client_id is not None and at is not None]


def receipts_held(tx: Tx, to: str) -> frozenset[str]:
    """Return the provider receipts that our rows for an address hold."""
    found = tx.exec(select(Outbound.receipt).where(col(Outbound.to) == to, col(Outbound.receipt) != ""))
    return frozenset(found)


def lock_owners(tx: Tx, ids: Sequence[int]) -> None:
    """Lock the clients of rows, and for urgent ones all who share the address: what became of it concerns them too."""
    if not is_postgres(tx):
        return
    own = select(col(Outbound.client_id)).where(col(Outbound.id).in_(ids))
    sharing = (
        select(col(Contact.client_id))
        .join(Outbound, col(Outbound.to) == col(Contact.address))
        .where(col(Outbound.id).in_(ids), Outbound.priority == 0)
    )
    lock_clients(tx, [*tx.exec(own), *tx.exec(sharing)])


def standing(tx: Tx, ids: Sequence[int]) -> dict[int, tuple[str, int]]:
    """Return (state, attempts) of rows by their ids, locked: their clients first, as every writer does."""
    lock_owners(tx, ids)
    statement = select(col(Outbound.id), col(Outbound.state), col(Outbound.attempts)).where(col(Outbound.id).in_(ids))
    rows = tx.exec(statement.order_by(col(Outbound.id)).with_for_update())
    return {number or 0: (state, attempts) for number, state, attempts in rows}


def locked(tx: Tx, ids: Sequence[int]) -> dict[int, Outbound]:
    """Return rows by their ids, as they stand and locked: their clients first, as every writer does."""
    if not ids:
        return {}
    lock_owners(tx, ids)
    statement = select(Outbound).where(col(Outbound.id).in_(ids)).order_by(col(Outbound.id)).with_for_update()
    return {row.id or 0: row for row in tx.exec(statement)}


def sessions_of(tx: Tx, ids: Iterable[int | None]) -> dict[int, ExerciseSession]:
    """Return the sessions that rows speak of, by their ids."""
    wanted = {one for one in ids if one is not None}
    if not wanted:
        return {}
    return {one.id or 0: one for one in tx.exec(select(ExerciseSession).where(col(ExerciseSession.id).in_(wanted)))}


def end_attempts(tx: Tx, ended: Sequence[dict[str, Any]]) -> None:
    """Write how attempts ended: dicts of row, number, at, outcome, code, receipt."""
    if ended:
        tx.connection().execute(END_ATTEMPT, ended)


def first_tried_at(tx: Tx, row: Outbound) -> datetime:
    """Return when a message was handed over for the first time."""
    first = tx.exec(select(func.min(Attempt.began_at)).where(col(Attempt.outbound_id) == row.id)).one()
    return first or row.created_at


def still_open(tx: Tx, now: datetime) -> int:
    """Return how many messages are due and neither settled nor given up."""
    count: int = ask(tx, OPEN, {"now": now}).scalar_one()
    return count


def reminders_of(tx: Tx, session_id: int) -> list[Outbound]:
    """Return the reminders of a session, in the order written."""
    statement = select(Outbound).where(Outbound.session_id == session_id, Outbound.kind == "reminder")
    return list(tx.exec(statement.order_by(col(Outbound.id))))
