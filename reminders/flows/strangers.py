"""Messages from numbers that no client has: HELP and danger words are answered and shown to the lead, no others."""

from datetime import datetime

from sqlmodel import col, select

from reminders.core.reading.reader import read
from reminders.flows import alert, judge, say
from reminders.flows.understand import Heard
from reminders.store.db import Tx
from reminders.store.tables import Clinic, ConsentEvent, InboundRow, Outbound


def clinic_of(tx: Tx, row: InboundRow) -> Clinic | None:
    """Return the clinic that a number knows: the one that wrote to it last, else the first."""
    sent = select(Outbound.clinic_id).where(Outbound.to == row.address).order_by(col(Outbound.id).desc()).limit(1)
    known = tx.exec(sent).first()
    if known is not None:
        return tx.get(Clinic, known)
    return tx.exec(select(Clinic).order_by(col(Clinic.id)).limit(1)).first()


def handle(tx: Tx, heard: Heard) -> None:
    """Answer HELP with the clinic's phone and danger wording with the emergency number; keep the rest."""
    row, clinic = heard.row, heard.clinic
    heard.outcome = "stranger"
    made = read(row.whole_text or row.text, "en", (), None)
    heard.reading, heard.why = made.reading, dict(made.why())
    if row.is_automatic or row.source not in ("sms", "command"):
        if heard.reading.red_flags:
            show(tx, heard, "danger words")
            warn(tx, heard, heard.now)
        return
    if heard.reading.red_flags:
        show(tx, heard, "danger words")
        warn(tx, heard, heard.now)
        template, details = judge.danger_answer(clinic, heard.reading)
        heard.say("stranger", template, **details)
    elif row.opt_out_type == "STOP":
        refuse_address(tx, clinic, row, "sms", heard.now)
    elif heard.reading.intent == "help":
        show(tx, heard, "HELP")
        heard.say("stranger", "help_stranger")
    elif heard.reading.intent == "opt_out":
        refuse_address(tx, clinic, row, "sms", heard.now)


def warn(tx: Tx, heard: Heard, now: datetime) -> None:
    """Raise an alert for the lead about an address that no client has."""
    flags = list(heard.reading.red_flags)
    because = {"words": heard.row.text, "flags": flags, "inbound": heard.row.id}
    alert.raise_alert(tx, heard.clinic, None, flags[0], "urgent", because, now, address=heard.row.address)


def show(tx: Tx, heard: Heard, what: str) -> None:
    """Put a stranger's words into the clinic's inbox, for the lead."""
    details = {"what": what, "address": heard.row.address}
    say.tell_desk(tx, heard.clinic, None, "stranger", heard.row.text, details, heard.now, inbound_id=heard.row.id)


def refuse_address(tx: Tx, clinic: Clinic, row: InboundRow, kind: str, now: datetime) -> None:
    """Keep that an address which no client has does not want texts, so that nobody is enrolled there by mistake."""
    tx.add(
        ConsentEvent(
            clinic_id=clinic.id or 0,
            address=row.address,
            kind=kind,
            change="withdrawn",
            how="STOP",
            by="stranger",
            at=now,
            inbound_id=row.id,
        )
    )
