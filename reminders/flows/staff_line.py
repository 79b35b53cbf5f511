"""Texts from a staff member's own number: `ok N`, `ok`, STOP, START and HELP are commands, other words get help."""

import re
from datetime import datetime
from functools import partial
from typing import Any

from sqlalchemy import bindparam
from sqlmodel import col, select

from reminders.core.attribution import words_of
from reminders.core.scope import STOP_WORDS
from reminders.flows import alert, say
from reminders.store import around, clients, outbox
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Clinic, InboundRow, Outbound, Staff

OK_NUMBER = re.compile(r"ok(?:ay)?[\s.:#-]*#?\s*(\d{1,9})[\s.!]*", re.IGNORECASE)
STARTS = (["start"], ["unstop"])
COMMANDS = frozenset({"help", "info", "ayuda", "start", "unstop"})
CARING = frozenset({"therapist", "assistant", "lead"})  # who may acknowledge; others only what they were told of

STAFF_AT = (
    select(Staff)
    .where(col(Staff.mobile) == bindparam("address"), col(Staff.is_active).is_(True))
    .order_by(col(Staff.id))
)


def staff_at(tx: Tx, row: InboundRow) -> Staff | None:
    """Return the staff member whose mobile number a text came from."""
    if row.source not in ("sms", "command") or around.lacks_at(tx, "staff", row.address):
        return None
    return tx.exec(STAFF_AT, params={"address": row.address}).first()


def is_command(text: str) -> bool:
    """Return whether a text is one of the staff's commands."""
    words = words_of(text)
    is_one = len(words) == 1 and (words[0] in STOP_WORDS | COMMANDS | {"ok", "okay"})
    return is_one or OK_NUMBER.fullmatch(text.strip()) is not None


def is_stop(row: InboundRow) -> bool:
    """Return whether a text ends the texts to its number: by one of the carriers' words, or the provider says so."""
    words = words_of(row.text)
    return row.opt_out_type == "STOP" or (len(words) == 1 and words[0] in STOP_WORDS)


def is_consent(row: InboundRow) -> bool:
    """Return whether a text ends or begins the texts to its number, whoever is written to there."""
    return is_stop(row) or words_of(row.text) in STARTS


def handle(tx: Tx, clinic: Clinic, staff: Staff, row: InboundRow, now: datetime, *, is_told: bool = False) -> str:
    """Carry out a staff member's command and answer it; return what became of it in one word.

    `is_told`: she was answered already as a client, so that STOP and START are not confirmed twice.
    """
    text = row.text.strip()
    words = words_of(text)
    numbered = OK_NUMBER.fullmatch(text)
    if numbered:
        return acknowledge(tx, clinic, staff, row, int(numbered[1]), now)
    if words in (["ok"], ["okay"]):
        return acknowledge(tx, clinic, staff, row, None, now)
    if is_stop(row):
        return stopped(tx, clinic, staff, row, now, is_told=is_told)
    if words in STARTS:
        staff.mobile_stopped_at = None
        if not is_told:
            answer(tx, clinic, staff, row, "staff_started", {}, now)
        return "staff start"
    answer(tx, clinic, staff, row, "staff_help", {}, now)
    return "staff help"


def acknowledge(tx: Tx, clinic: Clinic, staff: Staff, row: InboundRow, number: int | None, now: datetime) -> str:
    """Acknowledge an alert by its number, or the only open one that is hers."""
    found = alerts_of(tx, clinic, staff, number)
    if len(found) == 1:
        alert.acknowledge(tx, found[0], staff.email, "text", now)
        answer(tx, clinic, staff, row, "staff_ok", {"number": found[0].number}, now)
        return "staff ok"
    if found:
        answer(tx, clinic, staff, row, "staff_ok_which", {"numbers": [one.number for one in found][:9]}, now)
    else:
        answer(tx, clinic, staff, row, "staff_ok_none", {"number": number}, now)
    return "staff ok which"


def alerts_of(tx: Tx, clinic: Clinic, staff: Staff, number: int | None) -> list[Alert]:
    """Return the open alerts that a command may mean: that number, else those she was told of or has charge of.

    Who does not care for clients (admins, records) may mean only one that she was told of.
    """
    statement = select(Alert).where(Alert.clinic_id == clinic.id, Alert.state == "open")
    told = select(Outbound.alert_id).where(Outbound.staff_id == staff.id, col(Outbound.alert_id).is_not(None))
    if number is not None:
        statement = statement.where(Alert.number == number)
        return list(tx.exec(statement if staff.role in CARING else statement.where(col(Alert.id).in_(told))))
    hers = select(Client.id).where(Client.therapist_id == staff.id)
    mine = statement.where(col(Alert.id).in_(told) | col(Alert.client_id).in_(hers))
    return list(tx.exec(mine.order_by(col(Alert.number))))


def stopped(tx: Tx, clinic: Clinic, staff: Staff, row: InboundRow, now: datetime, *, is_told: bool) -> str:
    """Stop texts to a staff member; her alerts go to her cover, and admins and lead are told by mail."""
    if staff.mobile_stopped_at is None:
        staff.mobile_stopped_at = now
        tx.flush()
        told = {one.id: one for one in clients.admins_of(tx, clinic.id or 0)}
        lead = clients.lead_of(tx, clinic)
        if lead is not None:
            told[lead.id] = lead
        for one in told.values():
            key = partial(stop_key, one.id or 0, row.id or 0)
            details = {"who": staff.name}
            say.tell_staff(tx, clinic, one, "desk", "staff_has_stopped", details, now, key, channels=("email",))
        if row.opt_out_type != "STOP" and not is_told:
            answer(tx, clinic, staff, row, "staff_stopped", {}, now)
    return "staff stop"


def stop_key(told_id: int, inbound_id: int, channel: str) -> str:
    """Return the key of the word that a staff member's number was stopped."""
    return outbox.staff_key("stopped", told_id, f"{inbound_id}:{channel}")


def answer(
    tx: Tx, clinic: Clinic, staff: Staff, row: InboundRow, template: str, details: dict[str, Any], now: datetime
) -> None:
    """Queue the answer to a staff member's text."""
    outbox.queue(
        tx,
        Outbound(
            key=outbox.answer_key(row.id or 0, "staff"),
            clinic_id=clinic.id or 0,
            staff_id=staff.id,
            inbound_id=row.id,
            kind="staff_answer",
            channel="sms",
            to=row.address,
            template=template,
            details=details,
            due_at=now,
            created_at=now,
        ),
    )
