"""What the providers say afterwards: status callbacks of texts, bounces of mails. The furthest status stands.

What a failure then means for the address and the clinic is flows/outcomes.
"""

from datetime import datetime

from sqlmodel import col, select

from reminders.core.channel import StatusReport
from reminders.core.provider_codes import treatment
from reminders.flows import outcomes
from reminders.store import outbox
from reminders.store.db import Tx
from reminders.store.tables import DeliveryEvent, InboundRow, Outbound

NOT_SETTLED = frozenset({"claimed", "unknown"})
LET_GO = frozenset({"waiting", "failed", "expired"})  # to go again, or given up, with an attempt that may have arrived


def record(tx: Tx, report: StatusReport, now: datetime) -> None:
    """Keep a callback and let it take effect; one whose text we do not know yet waits, a repeat changes nothing."""
    repeat = select(DeliveryEvent.id).where(
        DeliveryEvent.receipt == report.provider_id,
        DeliveryEvent.status == report.status,
        DeliveryEvent.code == report.code,
    )
    if tx.exec(repeat.limit(1)).first() is not None:
        return
    row = row_of(tx, report, now)
    event = DeliveryEvent(
        receipt=report.provider_id,
        outbound_id=row.id if row else None,
        attempt=report.attempt or None,
        status=report.status,
        code=report.code,
        at=now,
        is_matched=row is not None and row.receipt == report.provider_id,
    )
    tx.add(event)
    tx.flush()
    if row is not None and row.receipt == report.provider_id:
        outcomes.apply_status(tx, row, report.status, report.code, now)
        tx.flush()


def row_of(tx: Tx, report: StatusReport, now: datetime) -> Outbound | None:
    """Return the text that a callback speaks of: by the provider's name, else by our own row and attempt.

    An attempt whose answer was lost, or is still to come, is settled as accepted by that: the provider has it.
    """
    known = tx.exec(select(Outbound.id).where(Outbound.receipt == report.provider_id)).first()
    wanted = known or report.row
    row = outbox.locked(tx, [wanted]).get(wanted) if wanted else None
    if known is not None:
        return row
    if row is None or row.channel != "sms" or row.to != report.to or row.receipt:
        return None
    this_try = row.state in NOT_SETTLED and row.attempts == report.attempt
    earlier_try = row.state in LET_GO and 0 < report.attempt <= row.attempts
    if this_try or earlier_try:
        outcomes.accepted(tx, [(row, report.provider_id)], now)
        tx.flush()
        outcomes.match_events(tx, [row], now)
    return row


def bounced(tx: Tx, row: InboundRow, now: datetime) -> str:
    """Let a bounce mark the mail that could not be delivered as failed; return what became of the bounce in a word."""
    sent = tx.exec(select(Outbound).where(Outbound.receipt == row.bounce_of, col(Outbound.channel) == "email")).first()
    if sent is None:
        return "bounce of nothing ours"
    row.client_id = sent.client_id
    if treatment(row.bounce_code) == "retry" and row.bounce_code:
        return "delayed"
    outcomes.apply_status(tx, sent, "failed", row.bounce_code, now)
    return "bounce"
