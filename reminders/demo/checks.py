"""What must hold of any story, looked up in its record: each the name of a sentence, what was counted, what broke it.

The sentences stand in templates/demo. A story that breaks one is a defect of the service, and the account says so.
"""

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import timedelta

from sqlmodel import col, select

from reminders.core.kinds import kind_of
from reminders.core.schedule import local_date, zone_of
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Clinic, ConsentEvent, InboundRow, Outbound

SENT = ("accepted", "delivered")
SAME_MINUTE = timedelta(minutes=1)  # the confirmation of a STOP


@dataclass(frozen=True)
class Check:
    """One thing that was looked at: how many rows, and which of them broke it, by their keys."""

    name: str
    counted: int
    broken: tuple[str, ...]


def checks(tx: Tx, clinic: Clinic) -> list[Check]:
    """Return everything that was looked at."""
    sent = list(
        tx.exec(
            select(Outbound)
            .where(Outbound.clinic_id == clinic.id, col(Outbound.state).in_(SENT), col(Outbound.client_id).is_not(None))
            .order_by(col(Outbound.id))
        )
    )
    everyone = {one.id or 0: one for one in tx.exec(select(Client).where(Client.clinic_id == clinic.id))}
    return [
        inside_the_window(clinic, everyone, sent),
        one_reminder_a_date(everyone, sent),
        nothing_after_stop(tx, sent),
        danger_is_alerted(tx),
        danger_is_answered(tx, sent),
        everything_is_handled(tx),
    ]


def inside_the_window(clinic: Clinic, everyone: dict[int, Client], sent: Sequence[Outbound]) -> Check:
    """Nothing that the service began went out of a client's hours."""
    begun = [row for row in sent if not kind_of(row.kind).is_answer]
    broken = []
    for row in begun:
        client = everyone[row.client_id or 0]
        first, last = clients.window_of(clinic, client)
        at = row.accepted_at.astimezone(zone_of(client.time_zone)).strftime("%H:%M") if row.accepted_at else ""
        if not first <= at < last:
            broken.append(row.key)
    return Check("window", len(begun), tuple(broken))


def one_reminder_a_date(everyone: dict[int, Client], sent: Sequence[Outbound]) -> Check:
    """No address got two reminders on one local date."""
    dates = [
        (row.client_id, row.contact_id, local_date(row.accepted_at, everyone[row.client_id or 0].time_zone))
        for row in sent
        if row.kind == "reminder" and row.accepted_at is not None
    ]
    twice = [f"{client}:{contact}:{day}" for (client, contact, day), n in Counter(dates).items() if n > 1]
    return Check("one_a_date", len(dates), tuple(twice))


def nothing_after_stop(tx: Tx, sent: Sequence[Outbound]) -> Check:
    """Nothing that needs consent went to an address after its STOP and before its START."""
    events = list(tx.exec(select(ConsentEvent).order_by(col(ConsentEvent.id))))
    stops = [one for one in events if one.change in ("withdrawn", "closed")]
    broken = []
    for stop in stops:
        later = (
            e.at for e in events if e.address == stop.address and e.at > stop.at and e.change in ("given", "restored")
        )
        back = min(later, default=None)
        broken += [
            row.key
            for row in sent
            if row.to == stop.address
            and (stop.client_id is None or row.client_id == stop.client_id)
            and kind_of(row.kind).needs_consent
            and row.accepted_at is not None
            and row.accepted_at > stop.at
            and (back is None or row.accepted_at < back)
        ]
    return Check("stop", len(stops), tuple(broken))


def danger_is_alerted(tx: Tx) -> Check:
    """Every danger sign that was read stands in an alert."""
    told = {entry.get("inbound") for one in tx.exec(select(Alert)) for entry in one.because}
    signs = with_danger(tx)
    return Check("alerted", len(signs), tuple(str(row.id) for row in signs if row.id not in told))


def danger_is_answered(tx: Tx, sent: Sequence[Outbound]) -> Check:
    """Every danger sign that is no older story was answered within two minutes."""
    answered = {row.inbound_id: row.accepted_at for row in sent if row.kind in ("danger", "stop_level")}
    urgent = [row for row in with_danger(tx) if set(((row.reading or {}).get("danger") or {}).values()) - {"today"}]
    broken = []
    for row in urgent:
        at = answered.get(row.id)
        if at is None or at - row.kept_at > timedelta(minutes=2):
            broken.append(str(row.id))
    return Check("answered", len(urgent), tuple(broken))


def with_danger(tx: Tx) -> list[InboundRow]:
    """Return the messages in which a danger sign was read."""
    rows = tx.exec(select(InboundRow).order_by(col(InboundRow.id)))
    return [row for row in rows if (row.reading or {}).get("red_flags")]


def everything_is_handled(tx: Tx) -> Check:
    """Every message that came in was handled at its first try."""
    rows = list(tx.exec(select(InboundRow).order_by(col(InboundRow.id))))
    return Check("handled", len(rows), tuple(str(row.id) for row in rows if row.handled_at is None or row.failures))
