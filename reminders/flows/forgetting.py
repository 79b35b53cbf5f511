"""What an erasure does to messages: hers go, what others were sent about her goes blank, and none of it is sent later.

What becomes of the rest of her record is in erase.py.
"""

import re
from collections.abc import Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import and_, delete, not_, null, or_, update
from sqlmodel import col, select

from reminders.flows import digest
from reminders.store import clients, outbox
from reminders.store.db import Tx
from reminders.store.tables import (
    ApiToken,
    Attempt,
    Client,
    ClinicNote,
    ConsentEvent,
    DeliveryEvent,
    Digest,
    ExerciseSession,
    Flag,
    IdempotentAnswer,
    InboundRow,
    Outbound,
    Question,
    Report,
    Staff,
)
from reminders.texts import Texts

STILL_TO_SEND = ("waiting", *outbox.UNDER_WAY)
FETCHED = ("sms", "email")  # what the provider's list or a mailbox may hand over once more
# What stays of such a message: the provider's id, by which it is known when it comes again.
TOMBSTONE = {
    "address": "", "to": "", "text": "", "whole_text": "", "raw": b"", "answers": "", "bounce_of": "",
    "bounce_code": "", "client_id": None, "reading": null(), "pictures": 0, "opt_out_type": "", "outcome": "erased",
    "retry_at": None, "minute_from_at": None,
}  # fmt: skip


def removed(tx: Tx, table: Any, condition: Any) -> int:
    """Take rows away; return how many."""
    tx.flush()
    result = tx.execute(delete(table).where(condition).execution_options(synchronize_session="fetch"))
    return int(result.rowcount)  # type: ignore[attr-defined]


def parts(ids: Sequence[int], size: int = 200) -> list[Sequence[int]]:
    """Return ids in pieces that one statement takes."""
    return [ids[start : start + size] for start in range(0, len(ids), size)]


def silence(tx: Tx, chosen: Any, now: datetime) -> None:
    """Blank messages; those still to be sent are taken back first, since nothing is left to fill them with."""
    tx.flush()
    back = update(Outbound).where(chosen, col(Outbound.state).in_(STILL_TO_SEND))
    tx.execute(back.values(state="withdrawn", why="record erased", settled_at=now, claim_until=None))
    tx.execute(update(Outbound).where(chosen).values(details={}, subject="", body="", html="", session_id=None))


def take_messages(tx: Tx, client_id: int, alone: Sequence[str], now: datetime) -> int:
    """Take away what was sent to her and what she wrote; a message that is another client's report too stays his.

    From the addresses that are hers `alone` also what counted as nobody's: from before she was enrolled, sent by a
    machine, or not verified.
    """
    nobodys = col(InboundRow.client_id).is_(None) & col(InboundRow.address).in_(alone)
    heard = select(InboundRow.id).where((col(InboundRow.client_id) == client_id) | nobodys)
    told = select(Report.inbound_id).where(Report.client_id == client_id)
    others = select(Report.inbound_id).where(Report.client_id != client_id, col(Report.inbound_id).is_not(None))
    inbound = [
        number for number in {*tx.exec(heard), *tx.exec(told)} - set(tx.exec(others)) - {None} if number is not None
    ]
    shared = select(ExerciseSession.id).where(ExerciseSession.client_id == client_id)
    to_nobody = col(Outbound.client_id).is_(None) & col(Outbound.staff_id).is_(None) & col(Outbound.to).in_(alone)
    sent = select(Outbound.id).where((col(Outbound.client_id) == client_id) | to_nobody)
    outbound = [row for row in tx.exec(sent) if row is not None]
    tx.execute(
        update(Outbound)
        .where(col(Outbound.session_id).in_(shared), col(Outbound.client_id).is_(None))
        .values(session_id=None)
    )
    rows = 0
    for part in parts(outbound):
        for table in (Attempt, DeliveryEvent):
            rows += removed(tx, table, col(table.outbound_id).in_(part))
        rows += removed(tx, Outbound, col(Outbound.id).in_(part))
    for part in parts(inbound):
        rows += take_heard(tx, part, now)
    return rows


def take_heard(tx: Tx, part: Sequence[int], now: datetime) -> int:
    """Take away messages that came in, and what was said upon them; return how many. Another client's answers stay.

    Of one that may be handed over again its bare id stays: else it would be kept, read and answered anew.
    """
    answers = col(Outbound.inbound_id).in_(part)
    silence(tx, and_(answers, col(Outbound.client_id).is_(None)), now)
    tx.execute(update(Outbound).where(answers).values(inbound_id=None))
    removed(tx, ClinicNote, and_(col(ClinicNote.inbound_id).in_(part), col(ClinicNote.client_id).is_(None)))
    for linked in (Report, Flag, Question, ClinicNote, ConsentEvent):
        tx.execute(update(linked).where(col(linked.inbound_id).in_(part)).values(inbound_id=None))
    fetched = col(InboundRow.source).in_(FETCHED)
    bare = update(InboundRow).where(col(InboundRow.id).in_(part), fetched)
    kept = tx.execute(bare.values(**TOMBSTONE, handled_at=now))
    gone = removed(tx, InboundRow, and_(col(InboundRow.id).in_(part), not_(fetched)))
    return gone + int(kept.rowcount)  # type: ignore[attr-defined]


def blank_digests(tx: Tx, texts: Texts, client: Client, now: datetime) -> None:
    """Take her out of the digests that were kept, and of the mails that carried them; one to be sent goes without."""
    clinic = clients.the_clinic(tx, client.clinic_id)
    kept = select(Digest, Staff).join(Staff, col(Digest.therapist_id) == col(Staff.id))
    for made, therapist in tx.exec(kept.where(Staff.clinic_id == client.clinic_id)):
        values = digest.without(made.values, client.id or 0)
        if values == made.values:
            continue
        mail = digest.rendered(texts, clinic, therapist, values)
        made.values, made.text, made.html = values, mail.text, mail.html
        sent = select(Outbound).where(
            col(Outbound.kind) == "digest",
            col(Outbound.clinic_id) == client.clinic_id,
            col(Outbound.key).endswith(f":{therapist.id}:{made.week}"),  # to her, or to her cover
        )
        for row in tx.exec(sent).all():
            if row.state in STILL_TO_SEND and values["clients"]:
                row.details = {**row.details, "digest": digest.with_words(values)}
                row.subject, row.body, row.html = "", "", ""  # written anew when it is claimed
            else:
                silence(tx, col(Outbound.id) == row.id, now)


def blank_mentions(tx: Tx, client: Client, now: datetime) -> None:
    """Blank what staff of her clinic were sent with her whole name in it, once it was settled.

    What another client was sent is his record, and a name of one word stands in many a text; what is still to be sent
    is needed as it is, for the provider is asked for the exact body.
    """
    whole = re.compile(rf"(?<!\w){re.escape(client.name)}(?!\w)")
    sent = select(Outbound.id, Outbound.subject, Outbound.body).where(
        col(Outbound.clinic_id) == client.clinic_id,
        col(Outbound.client_id).is_(None),
        col(Outbound.staff_id).is_not(None),
        col(Outbound.state).not_in(STILL_TO_SEND),
        or_(*(one.contains(client.name, autoescape=True) for one in (col(Outbound.subject), col(Outbound.body)))),
    )
    named = [number or 0 for number, subject, body in tx.exec(sent) if whole.search(subject) or whole.search(body)]
    for part in parts(named):
        silence(tx, col(Outbound.id).in_(part), now)


def forget_answers(tx: Tx, client: Client) -> None:
    """Take away what other programs were answered about her: her record as it stood, and every file of a record.

    A file is only read, so asking again under the same key makes it anew; what was changed is kept from being done
    twice, since its answer stays unless it shows her.
    """
    kept = (
        select(IdempotentAnswer.id, IdempotentAnswer.body)
        .join(ApiToken, col(IdempotentAnswer.token_id) == col(ApiToken.id))
        .where(ApiToken.clinic_id == client.clinic_id)
    )
    hers = [number or 0 for number, body in tx.exec(kept) if shows(body.get("body"), client.id or 0)]
    for part in parts(hers):
        removed(tx, IdempotentAnswer, col(IdempotentAnswer.id).in_(part))


def shows(answer: Any, client_id: int) -> bool:
    """Return whether an answer is a client's record in the record's shape, or the text of a file."""
    if not isinstance(answer, dict):
        return False
    return "content" in answer or (answer.get("id") == client_id and "contacts" in answer)
