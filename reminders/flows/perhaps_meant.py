"""Opt-outs that may have meant the exercises: said soon after a pain, hold or danger text. Honoured all the same."""

from collections.abc import Sequence
from datetime import datetime, timedelta

from sqlmodel import col, select

from reminders.flows import alert
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, Hold, Outbound

MEANT_EXERCISES = timedelta(hours=48)  # an opt-out so soon after a pain, hold or danger text may have meant those


def may_mean_exercises(tx: Tx, client: Client, now: datetime) -> bool:
    """Return whether a pain, hold or danger text went to her within 48 hours, so that her STOP may be about those."""
    since = now - MEANT_EXERCISES
    texts = select(Outbound.id).where(
        Outbound.client_id == client.id,
        col(Outbound.kind).in_(("danger", "stop_level")),
        col(Outbound.created_at) >= since,
        col(Outbound.state) != "withdrawn",
    )
    holds = select(Hold.id).where(Hold.client_id == client.id, col(Hold.opened_at) >= since)
    return tx.exec(texts.limit(1)).first() is not None or tx.exec(holds.limit(1)).first() is not None


def say_meant(tx: Tx, meant: Sequence[Client], words: str, now: datetime) -> None:
    """Alert the therapists of those whose opt-out may be about the exercises: she is to be phoned."""
    for client in meant:
        clinic = clients.the_clinic(tx, client.clinic_id)
        because = {"words": words, "what": "may have meant the exercises"}
        alert.raise_alert(tx, clinic, client, "opt_out_after_pain", "today", because, now)
