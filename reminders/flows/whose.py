"""Staff says whose a danger sign from a shared phone was: hers stays, the others' alerts, holds and flags of it end.

What else the words tell, an amount or a rating, is then kept as hers.

Whose an ordinary reply is gets asked of the client and stands in flows/choices.
"""

from datetime import datetime

from sqlmodel import col, select

from reminders.errors import Refused
from reminders.flows import alert as alerts
from reminders.flows import audit, calling, easy_day, hold, recording, understand
from reminders.flows.understand import Heard
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Flag, Hold, InboundRow

NOTE = "It was another client on that phone."


def is_hers(tx: Tx, one: Alert, by: str, now: datetime) -> list[Alert]:
    """Settle that an alert marked "one of two" is its client's; return the others' alerts, which are closed by it.

    Only staff can say so. The holds that those alerts opened end; another hold of theirs stays.
    """
    if "@" not in by:
        raise Refused("Whose it was is said by a staff member.")
    if not one.one_of_two:
        return []
    causes = {entry["inbound"] for entry in one.because if entry.get("inbound")}
    others = [other for other in twins(tx, one) if causes & {entry.get("inbound") for entry in other.because}]
    one.one_of_two = False
    calling.add_event(tx, one, "whose", now, by=by, details={"client": one.client_id})
    for other in others:
        alerts.settle(tx, other, by, "expected", NOTE, now)
        forget_flags(tx, other, causes)
        end_hold_of(tx, other, by, now)
    client = tx.get(Client, one.client_id) if one.client_id else None
    if client is not None:
        for inbound_id in sorted(causes):
            keep_as_hers(tx, client, inbound_id, now)
    return others


def keep_as_hers(tx: Tx, client: Client, inbound_id: int, now: datetime) -> None:
    """Keep what a message told of a session as this client's report, once; its signs have been judged already."""
    row = tx.get(InboundRow, inbound_id)
    if row is None or row.client_id is not None:
        return
    row.client_id = client.id
    people = [pair for pair in clients.clients_at(tx, row.address) if pair[1].id == client.id]
    if people:
        heard = Heard(row, clients.the_clinic(tx, client.clinic_id), now, people)
        understand.settle_whose(tx, heard)
        recording.keep_judged(tx, heard, client)


def forget_flags(tx: Tx, other: Alert, causes: set[int]) -> None:
    """Take back the flags of a sign that was not this client's; that it was once hers too stays with the alert."""
    statement = select(Flag).where(
        Flag.client_id == other.client_id, Flag.kind == other.rule, col(Flag.inbound_id).in_(causes)
    )
    for flag in tx.exec(statement):
        tx.delete(flag)


def settle_whose(tx: Tx, one: Alert, by: str, now: datetime, through: str = "") -> list[Alert]:
    """Do so in a staff member's name and write it into each client's log; raises Refused where nothing is open."""
    if not one.one_of_two or one.state == "closed":
        raise Refused("Whose it was is settled already.")
    others = is_hers(tx, one, by, now)
    via = {"through": through} if through else {}
    for row in (one, *others):
        details = {"alert": row.number, "is_hers": row is one, **via}
        audit.record(tx, row.clinic_id, by, "whose it was settled", row.client_id, details, now)
    return others


def twins(tx: Tx, one: Alert) -> list[Alert]:
    """Return the other clients' alerts of the same rule that are not closed and may be one of two."""
    statement = select(Alert).where(
        Alert.clinic_id == one.clinic_id,
        Alert.rule == one.rule,
        Alert.id != one.id,
        Alert.state != "closed",
        col(Alert.one_of_two).is_(True),
    )
    return list(tx.exec(statement.order_by(col(Alert.id))))


def end_hold_of(tx: Tx, other: Alert, by: str, now: datetime) -> None:
    """End the hold that an alert opened, and tell her when no other hold remains."""
    client = tx.get(Client, other.client_id) if other.client_id else None
    statement = select(Hold).where(Hold.alert_id == other.id, col(Hold.ended_at).is_(None))
    ended = list(tx.exec(statement))
    for one in ended:
        one.ended_at, one.ended_by = now, by
    tx.flush()
    if client is not None and ended and not hold.is_held(tx, client.id or 0):
        easy_day.ease(client)
        if client.state == "active" and client.died_on is None:
            hold.tell_her(tx, client, ended[-1], now)
