"""How answers leave: at once for the first text of a phone, shared by those in the minute after it, urgent ones alone.

What is said has been gathered as parts of a `Heard`; here they become one row in the outbox.
"""

from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import col, select

from reminders.core.schedule import local_date
from reminders.flows import say
from reminders.flows.understand import Heard, Part
from reminders.store import around, outbox
from reminders.store.db import Tx
from reminders.store.tables import InboundRow, Outbound

MINUTE = timedelta(seconds=60)
URGENT = frozenset({"danger", "stop_level", "stranger"})
NEVER_DELAYED = URGENT | {"stopped", "help", "sympathy"}
MOST_PARTS = 6  # a shared answer repeats the newest of what was recorded


def flush(tx: Tx, heard: Heard) -> None:
    """Queue what is to be answered; from a closed address only what may be answered there."""
    urgent = [part for part in heard.parts if part.kind in URGENT]
    direct = [part for part in heard.parts if part.kind in NEVER_DELAYED and part.kind not in URGENT]
    ordinary = [part for part in heard.parts if part.kind not in NEVER_DELAYED]
    if urgent:
        if may_warn(tx, heard, urgent[0]):
            send_at_once(tx, heard, urgent[0].kind, joined_to(urgent, direct, ordinary))
        elif direct:
            send_at_once(tx, heard, direct[0].kind, direct)
        return
    if direct:
        send_at_once(tx, heard, direct[0].kind, direct)
    elif ordinary and heard.is_open:
        if heard.row.source == "page":
            return
        share(tx, heard, ordinary)


def joined_to(urgent: list[Part], direct: list[Part], ordinary: list[Part]) -> list[Part]:
    """Return an urgent answer with what may ride in it: that the texts have ended, what was recorded at stop level."""
    ends = [Part(urgent[0].kind, "stopped_too", {}, "stopped") for part in direct if part.text == "stopped"][:1]
    thanks = [part for part in ordinary if part.text == "thanks"] if urgent[0].kind == "stop_level" else []
    return urgent + ends + thanks


def may_warn(tx: Tx, heard: Heard, part: Part) -> bool:
    """Return whether a danger answer goes: to a closed address one a day, to any the same words once a minute."""
    statement = select(Outbound).where(
        Outbound.to == heard.row.address,
        col(Outbound.kind).in_(URGENT),
        col(Outbound.created_at) > heard.now - timedelta(days=2),
        col(Outbound.state) != "withdrawn",
    )
    before = list(tx.exec(statement))
    if any(row.details.get("first") == part.text and heard.now - row.created_at < MINUTE for row in before):
        return False
    if not heard.people or heard.is_open or part.kind == "stranger":
        return True
    if part.kind == "stop_level":
        return False
    zone = heard.speaks_to.time_zone
    return all(local_date(row.created_at, zone) != local_date(heard.now, zone) for row in before)


def send_at_once(tx: Tx, heard: Heard, kind: str, parts: list[Part]) -> int | None:
    """Queue an answer that is never delayed."""
    template, details = written(parts)
    client = heard.speaks_to if heard.people else heard.client
    return say.answer(
        tx,
        heard.clinic,
        heard.row,
        client,
        kind,
        template,
        details,
        heard.now,
        session_id=parts[0].session_id,
    )


def written(parts: list[Part]) -> tuple[str, dict[str, Any]]:
    """Return the template and values of an answer: one text, or several together."""
    if len(parts) == 1:
        return parts[0].text, {**parts[0].details, "first": parts[0].text, "slot": parts[0].slot}
    said = [{"text": part.text, "details": part.details, "slot": part.slot} for part in parts]
    return "together", {"parts": said, "first": parts[0].text}


def share(tx: Tx, heard: Heard, parts: list[Part]) -> None:
    """Answer at once, or in the one answer that all texts of this phone share at the end of the running minute."""
    row = heard.row
    began = minute_of(tx, row)
    if began is None:
        row.minute_from_at = row.kept_at
        queue_shared(tx, heard, parts, row.id or 0, "first", None)
        return
    first_id, since = began
    name = "first" if row.fetched and since == row.kept_at else "minute"
    key = outbox.answer_key(first_id, name)
    waiting = tx.exec(select(Outbound).where(Outbound.key == key, Outbound.state == "waiting")).first()
    if waiting is not None:
        merge(waiting, parts)
        return
    queue_shared(tx, heard, parts, first_id, "minute", since + MINUTE)


MINUTE_OF = (
    select(col(InboundRow.id), col(InboundRow.minute_from_at))
    .where(
        col(InboundRow.address) == bindparam("address"),
        col(InboundRow.minute_from_at) > bindparam("since"),
    )
    .order_by(col(InboundRow.minute_from_at).desc())
    .limit(1)
)


def minute_of(tx: Tx, row: InboundRow) -> tuple[int, datetime] | None:
    """Return the first text of the running minute of this phone, and when it began; None when none is running."""
    if around.lacks_at(tx, "minute", row.address):
        return None
    found = tx.exec(MINUTE_OF, params={"address": row.address, "since": row.kept_at - MINUTE}).first()
    return (found[0] or 0, found[1]) if found and found[1] else None


def queue_shared(tx: Tx, heard: Heard, parts: list[Part], first_id: int, name: str, ends_at: datetime | None) -> None:
    """Queue the answer of a minute's first text, or of all that came after it."""
    template, details = written(parts)
    lead = max(parts, key=lambda part: part.kind == "ask")
    client = heard.speaks_to
    at = say.answer_due_at(heard.clinic, client, heard.row.received_at, lead.kind, heard.now)
    queued = None
    for key in (outbox.answer_key(first_id, name), ""):  # what the minute was to share may have gone already
        if queued is None:
            queued = say.answer(
                tx,
                heard.clinic,
                heard.row,
                client,
                lead.kind,
                template,
                details,
                heard.now,
                due_at=max(at, ends_at) if ends_at else at,
                session_id=parts[0].session_id,
                key=key,
                contact_id=heard.contact_id_of(client),
            )


def merge(waiting: Outbound, parts: list[Part]) -> None:
    """Let a waiting answer say the newer parts too, each slot once, the question last."""
    old = waiting.details.get("parts") or [
        {"text": waiting.template, "details": bare(waiting.details), "slot": waiting.details.get("slot", "")}
    ]
    new = [{"text": part.text, "details": part.details, "slot": part.slot} for part in parts]
    slots = {one["slot"] for one in new}
    asks = any(part.kind == "ask" for part in parts)
    kept = [one for one in old if one["slot"] not in slots and not (asks and one["text"].startswith("ask_"))]
    both = (kept + new)[-MOST_PARTS:]
    both.sort(key=lambda one: one["text"].startswith("ask_"))
    waiting.template, waiting.details = "together", {"parts": both, "first": both[0]["text"]}


def take_back_asked(tx: Tx, client_id: int, now: datetime) -> None:
    """Take out of the answers that wait what a held client is not to get: what asks her something, her exercises.

    What was recorded is still said back; an answer with nothing else in it is withdrawn. Whose a reply is stays asked:
    that question is the phone's.
    """
    if around.lacks(tx, "waiting", client_id):
        return
    waits = select(Outbound).where(
        Outbound.client_id == client_id, Outbound.state == "waiting", col(Outbound.is_answer).is_(True)
    )
    for row in tx.exec(waits):
        parts = row.details.get("parts") or [{"text": row.template}]
        kept = [one for one in parts if not asks_or_shows(one["text"])]
        if not kept:
            row.state, row.why, row.settled_at = "withdrawn", "held", now
        elif len(kept) < len(parts):
            row.details = {**row.details, "parts": kept, "first": kept[0]["text"]}


def asks_or_shows(name: str) -> bool:
    """Return whether a text asks a client something, or shows her exercises."""
    return name == "reminder" or (name.startswith("ask_") and name != "ask_who")


def bare(details: dict[str, Any]) -> dict[str, Any]:
    """Return an answer's own values without the marks kept beside them."""
    return {name: value for name, value in details.items() if name not in ("first", "slot")}
