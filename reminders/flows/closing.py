"""The end of a client's care: closed with a reason, everything withdrawn, nothing said. And its return."""

from datetime import datetime

from sqlmodel import col, select

from reminders.core.schedule import local_date
from reminders.errors import BadInput, Refused
from reminders.flows import audit, plan, questions, steps
from reminders.store import clients, outbox
from reminders.store.db import Tx, lock_client
from reminders.store.tables import Client, Pause

REASONS = ("goals met", "moved", "referred", "lost", "died")


def close(tx: Tx, client: Client, reason: str, by: str, now: datetime) -> None:
    """Close a client's care: nothing waits or is planned, no message says so. Alerts stay until staff close them."""
    if reason not in REASONS:
        raise BadInput(f"The reason must be one of: {', '.join(REASONS)}.")
    if client.state == "closed":
        raise Refused("This client is closed already.")
    client_id = client.id or 0
    lock_client(tx, client_id)
    client.state, client.closed_reason, client.closed_at = "closed", reason, now
    if reason == "died":
        client.died_on = client.died_on or local_date(now, client.time_zone)
    tx.add(client)
    outbox.withdraw(tx, now, "closed", client_id=client_id)
    questions.close_all(tx, client_id, "lapsed", now)
    steps.withdraw(tx, client_id, now)
    for pause in tx.exec(select(Pause).where(Pause.client_id == client_id, col(Pause.ended_at).is_(None))):
        pause.ended_at, pause.ended_by = now, by
    tx.flush()
    plan.replan(tx, client, now)
    audit.record(tx, client.clinic_id, by, "client closed", client_id, {"reason": reason}, now)


def reopen(tx: Tx, client: Client, by: str, now: datetime) -> None:
    """Invite a closed client again: nothing is sent until consent is given anew."""
    if client.state != "closed":
        raise Refused("This client is not closed.")
    if client.died_on is not None:
        raise Refused("This client has died; the record stays closed.")
    lock_client(tx, client.id or 0)
    client.state, client.closed_reason, client.closed_at = "invited", "", None
    client.invited_at, client.active_on = now, None
    for contact in clients.contacts_of(tx, client.id or 0):
        if contact.consent == "open":
            contact.consent, contact.consent_changed_at = "none", now
    tx.add(client)
    tx.flush()
    audit.record(tx, client.clinic_id, by, "client opened again", client.id, {}, now)
