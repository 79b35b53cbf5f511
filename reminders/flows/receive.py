"""Hearing: raw first, understood later. Each message is kept as it came, then handled as one thing, whole or not.

A message that cannot be handled is counted and tried again with growing waits; it is never lost, and the effects of
one that can are written together with the mark that it is handled.
"""

import logging
import traceback
from collections.abc import Sequence
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import bindparam, func, or_
from sqlmodel import col, select

from reminders.core.schedule import client_day
from reminders.flows import answers, choices, delivery_status, lately, replies, say, staff_line, strangers, unverified
from reminders.flows.keeping import bring_in
from reminders.flows.understand import Heard, people_at, settle_whose
from reminders.store import around, clients, histories
from reminders.store.db import Database, Tx, lock_client
from reminders.store.tables import Client, Clinic, Contact, InboundRow, Staff

LOG = logging.getLogger("reminders.receive")
FIRST_WAIT, LONGEST_WAIT = timedelta(seconds=30), timedelta(hours=1)
BATCH = 500
MOMENT_SECONDS = 0.03  # what comes meanwhile is handled together; nobody notices so short a wait
MOST_TOGETHER = 16  # a text that comes in meanwhile waits for no more of them than that
FEW = 4  # phones: with so few, more than one text of each is taken in a round
UNHANDLED = (
    select(InboundRow)
    .where(col(InboundRow.id).in_(bindparam("rows", expanding=True)), col(InboundRow.handled_at).is_(None))
    .order_by(col(InboundRow.id))
    .with_for_update(skip_locked=True)
)
TELL_AFTER = 2  # failures after which the operator hears: an unread message may hold a danger sign


def handle_waiting(db: Database, now: datetime, limit: int = BATCH) -> int:
    """Handle kept messages, oldest first, until none is left or so many were; return how many were handled."""
    handled, tried = 0, set[int]()
    while handled + len(tried) < limit:
        done, failed = handled, len(tried)
        handled += handle_round(db, now, limit - handled, tried)
        if (handled, len(tried)) == (done, failed):
            break
    return handled


def handle_round(db: Database, now: datetime, limit: int, tried: set[int]) -> int:
    """Look once for kept messages and handle what is found; note those that were not handled, return how many were."""
    bring_in(db)
    with db.read() as tx:
        firsts = first_of_each_phone(tx, now, tried, limit)
        more = waiting_ids(tx, now, tried, min(limit, MOST_TOGETHER)) if len(firsts) <= FEW else []
    if len(firsts) <= FEW:
        return handle_each(db, list(dict.fromkeys([*firsts, *more])), now, tried)
    some = [firsts[begin : begin + MOST_TOGETHER] for begin in range(0, len(firsts), MOST_TOGETHER)]
    return sum(handle_some(db, ids, now, tried) for ids in some)


def handle_at_once(db: Database, row_id: int, now: datetime) -> None:
    """Handle a message before all others but those that its phone sent before it; a flood of those waits."""
    with db.read() as tx:
        address = tx.exec(select(InboundRow.address).where(InboundRow.id == row_id)).one()
        mine = (InboundRow.address == address, col(InboundRow.handled_at).is_(None), col(InboundRow.id) <= row_id)
        ids = tx.exec(select(col(InboundRow.id)).where(*mine).order_by(col(InboundRow.id)).limit(MOST_TOGETHER)).all()
    handle_each(db, [one for one in ids if one is not None] if row_id in ids else [row_id], now, set())


def handle_each(db: Database, ids: Sequence[int], now: datetime, tried: set[int]) -> int:
    """Handle messages, each in a transaction of its own; note those that were not, return how many were."""
    done = [row_id for row_id in ids if handle_one(db, row_id, now)]
    tried.update(set(ids) - set(done))
    return len(done)


def handle_some(db: Database, ids: Sequence[int], now: datetime, tried: set[int]) -> int:
    """Handle messages, no two of one phone, in one transaction that looks at once for what all of them need.

    Where that cannot be done, each is handled by itself, so that one bad message holds up no other.
    """
    try:
        with db.begin() as tx:
            return handle_rows(tx, ids, now)
    except Exception as error:  # noqa: BLE001 - whatever went wrong, each is tried by itself and counted then
        LOG.warning("inbound not handled together", extra={"error": type(error).__name__})
        return handle_each(db, ids, now, tried)


def handle_rows(tx: Tx, ids: Sequence[int], now: datetime) -> int:
    """Handle messages of which no two come from one phone; return how many were not handled already."""
    rows = list(tx.exec(UNHANDLED, params={"rows": list(ids)}))
    texts = [row for row in rows if row.source == "sms"]
    if texts:
        look_ahead(tx, texts)
    for row in rows:
        handle_row(tx, row, now)
    return len(rows)


def look_ahead(tx: Tx, texts: Sequence[InboundRow]) -> None:
    """Fetch at once what handling these texts will ask for, one by one where it is not there."""
    clients.lock_at(tx, [row.address for row in texts])
    people = clients.gather(tx, [row.address for row in texts])
    if not people:
        return
    around.look_at_all(tx, texts, min(row.kept_at for row in texts) - answers.MINUTE)
    received = {row.address: row.received_at for row in texts}
    days = {
        client.id or 0: client_day(received[address], client.time_zone)
        for address, found in clients.gathered(tx).items()
        for _, client in found
    }
    lately.gather(tx, days)
    histories.gather(tx, list(days), max(days.values()))


def due_rows(now: datetime, tried: set[int]) -> tuple[Any, ...]:
    """Return which messages wait and may be tried now."""
    waits = or_(col(InboundRow.retry_at).is_(None), col(InboundRow.retry_at) <= now)
    return (col(InboundRow.handled_at).is_(None), waits, col(InboundRow.id).not_in(tried))


def first_of_each_phone(tx: Tx, now: datetime, tried: set[int], limit: int) -> list[int]:
    """Return the oldest waiting message of each address, oldest first: no phone that floods us holds up another."""
    first: Any = func.min(col(InboundRow.id))
    statement = select(first).where(*due_rows(now, tried)).group_by(col(InboundRow.address))
    return [row_id for row_id in tx.exec(statement.order_by(first).limit(limit)) if row_id is not None]


def waiting_ids(tx: Tx, now: datetime, tried: set[int], limit: int) -> list[int]:
    """Return the messages whose turn it is, oldest first."""
    statement = select(col(InboundRow.id)).where(*due_rows(now, tried)).order_by(col(InboundRow.id))
    return [row_id for row_id in tx.exec(statement.limit(limit)) if row_id is not None]


def handle_one(db: Database, row_id: int, now: datetime) -> bool:
    """Handle one message; False when another worker has it or it failed, which is counted on the row."""
    try:
        with db.begin() as tx:
            return handle_waiting_row(tx, row_id, now)
    except Exception as error:  # noqa: BLE001 - whatever went wrong, the message stays and is tried again
        # The error's own words may hold hers: only its kind and place are logged.
        place = traceback.extract_tb(error.__traceback__)[-1]
        where = f"{place.filename.rpartition('/')[2]}:{place.lineno}"
        LOG.error("inbound not handled", extra={"inbound_id": row_id, "error": type(error).__name__, "where": where})
        count_failure(db, row_id, now)
        return False


def handle_waiting_row(tx: Tx, row_id: int, now: datetime) -> bool:
    """Handle one message; False when it was handled already or another worker has it."""
    row = tx.exec(UNHANDLED, params={"rows": [row_id]}).first()
    if row is None:
        return False
    handle_row(tx, row, now)
    return True


def count_failure(db: Database, row_id: int, now: datetime) -> None:
    """Count a failure on the row and let it wait: half a minute at first, twice as long each time, an hour at most."""
    with db.begin() as tx:
        row = tx.get(InboundRow, row_id)
        if row is None or row.handled_at is not None:
            return
        row.failures += 1
        row.retry_at = now + min(FIRST_WAIT * 2 ** min(row.failures - 1, 10), LONGEST_WAIT)
        clinic = strangers.clinic_of(tx, row)
        if row.failures >= TELL_AFTER and clinic is not None:
            say.tell_operator(tx, clinic, "unread messages", {"inbound": row.id, "failures": row.failures}, now)


def handle_row(tx: Tx, row: InboundRow, now: datetime) -> Heard | None:
    """Understand one message and do what it asks for; its effects and its mark are one transaction.

    Returns what was heard, None for a bounce, a staff member's command, or a message for no clinic.
    """
    heard = None
    people, is_sure = people_at(tx, row)
    for client_id in sorted(client.id or 0 for _, client in people):
        lock_client(tx, client_id)
    if len(people) == 1:
        around.look(tx, people[0][1].id or 0, row, row.kept_at - answers.MINUTE)
    if is_sure and people and not row.is_verified:
        row.is_verified = True
    if row.bounce_of:
        row.outcome = delivery_status.bounced(tx, row, now)
    elif (staff := staff_at(tx, row, people)) is not None:
        own = handle_person(tx, row, people, is_sure, now) if people and staff_line.is_consent(row) else None
        clinic = clients.the_clinic(tx, staff.clinic_id)
        row.outcome = staff_line.handle(tx, clinic, staff, row, now, is_told=own is not None and bool(own.parts))
    else:
        heard = handle_person(tx, row, people, is_sure, now)
    row.handled_at = now
    if row.retry_at is not None:
        row.retry_at = None
    return heard


def staff_at(tx: Tx, row: InboundRow, people: list[tuple[Contact, Client]]) -> Staff | None:
    """Return the staff member who texts; one who is a client too is staff for a command alone.

    Her STOP and START count for both: consent belongs to the address.
    """
    staff = staff_line.staff_at(tx, row)
    if staff is not None and people and not (staff_line.is_command(row.text) or staff_line.is_stop(row)):
        return None
    return staff


def handle_person(
    tx: Tx, row: InboundRow, people: list[tuple[Contact, Client]], is_sure: bool, now: datetime
) -> Heard | None:
    """Handle a message from a client's address, or from one that nobody has."""
    clinic: Clinic | None = clients.the_clinic(tx, people[0][1].clinic_id) if people else strangers.clinic_of(tx, row)
    if clinic is None:
        row.outcome = "no clinic"
        return None
    heard = Heard(row, clinic, now, people)
    if not people:
        strangers.handle(tx, heard)
    elif row.is_automatic:
        settle_whose(tx, heard)
        unverified.handle_automatic(tx, heard)
    else:
        handle_known(tx, heard, is_sure)
    answers.flush(tx, heard)
    heard.note_heard()
    row.outcome = heard.outcome
    is_read = heard.outcome != "automatic" or heard.reading.red_flags
    row.reading = heard.reading.as_dict() if is_read else None
    return heard


def handle_known(tx: Tx, heard: Heard, is_sure: bool) -> None:
    """Read a message from a known address, decide whose it is, and act on it."""
    settle_whose(tx, heard)
    question = heard.question
    is_name = is_sure and question is not None and question.kind == "who" and choices.who(tx, heard, question)
    if is_name and not choices.says_more(tx, heard):
        return
    if not is_sure:
        unverified.handle(tx, heard)
        return
    replies.handle(tx, heard)
