"""Who wrote, what was asked before, and what the words mean. What follows from it stands in the sibling flows.

`Heard` is one message on its way through: the row, the people on its address, the open question, the reading, whose it
is, and what is to be answered in the end.
"""

import json
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from typing import Any

from sqlmodel import col, select

from reminders.core.attribution import Holder, whose
from reminders.core.decide import how_it_closes
from reminders.core.mail_text import less_ours, under_head
from reminders.core.reading.model import Reading
from reminders.core.reading.reader import read as read_words
from reminders.core.schedule import client_day
from reminders.core.told_beside import as_on_page, with_danger_of, with_death_of
from reminders.flows import questions
from reminders.flows.lately import exercises_for, recent_sessions
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, Contact, ExerciseSession, InboundRow, Outbound, Question, Report
from reminders.texts_said import said_date

RECENT_REPORT = timedelta(hours=48)  # a correction belongs to who reported within this
QUOTED_MAILS = 20
# A danger sign that a question itself asks about: its answer belongs to who was asked, any other sign may be anybody's.
SIGN_ASKED = {
    "pain": frozenset({"severe_pain"}),
    "settling": frozenset({"severe_pain"}),
    "falls": frozenset({"fall_or_injury"}),
}


@dataclass(frozen=True)
class Part:
    """One thing to say in an answer; a later part with the same slot takes its place."""

    kind: str
    text: str
    details: dict[str, Any]
    slot: str
    session_id: int | None = None


@dataclass
class Heard:
    """One message on its way through."""

    row: InboundRow
    clinic: Clinic
    now: datetime
    people: list[tuple[Contact, Client]]
    client: Client | None = None
    question: Question | None = None
    reading: Reading = field(default_factory=Reading)
    why: dict[str, Any] = field(default_factory=dict)
    parts: list[Part] = field(default_factory=list)
    outcome: str = ""
    is_hers: bool = False  # it is known whose it is
    corrects: Report | None = None  # the report that it puts right
    is_sure: bool = False  # and it says that the address is still hers

    def note_heard(self) -> None:
        """Note that she was heard, and from where: written last, with everything else that changes on these rows."""
        if self.client is None or not self.is_hers:
            return
        self.row.client_id = self.client.id
        clients.last_heard(self.client, self.row.received_at)
        if self.is_sure and self.contact is not None:
            self.contact.last_sure_at = self.row.received_at

    @property
    def contact(self) -> Contact | None:
        """Return the address as the client's own contact; of one that may be written to while whose it is is open."""
        if self.client is None:
            return self.first[0] if self.people else None
        return next((contact for contact, client in self.people if client.id == self.client.id), None)

    @property
    def first(self) -> tuple[Contact, Client]:
        """Return who stands for the address while whose a reply is is not known: one who has not stopped its texts."""
        for contact, client in self.people:
            if contact.consent == "open" and not contact.unusable and client.state != "closed":
                return contact, client
        return self.people[0]

    @property
    def is_open(self) -> bool:
        """Return whether the address may be written to: for her, or for anyone while whose it is is not known."""
        return any(
            contact.consent == "open" and not contact.unusable
            for contact, client in self.people
            if self.client is None or client.id == self.client.id
        )

    @property
    def speaks_to(self) -> Client:
        """Return whose language and zone count, and whom an answer names: her, or who stands for the address."""
        return self.client or self.first[1]

    def contact_id_of(self, client: Client) -> int | None:
        """Return which of a client's contacts this came from, as far as it is known already."""
        own = (contact for contact, owner in self.people if owner.id == client.id)
        return next((contact.id for contact in own if contact.address == self.row.address), None)

    def say(self, kind: str, text: str, slot: str = "", session_id: int | None = None, **details: Any) -> None:
        """Add a part to the answer."""
        self.parts.append(Part(kind, text, details, slot or text, session_id))


def channel_of(row: InboundRow) -> str:
    """Return the channel that a message came by, as a report names it."""
    return {"email": "email", "page": "page"}.get(row.source, "sms")


def people_at(tx: Tx, row: InboundRow) -> tuple[list[tuple[Contact, Client]], bool]:
    """Return the clients that a message may come from, and whether it is sure to come from one of their addresses.

    A mail counts as the client's when it answers one of our own; a mere From match is not sure.
    """
    if row.source == "page":
        return person_of_page(tx, row), True
    if row.source == "email":
        answered = person_of_mail(tx, row)
        if answered:
            return answered, True
        return clients.clients_at(tx, row.address), False
    return clients.clients_at(tx, row.address), True


def person_of_page(tx: Tx, row: InboundRow) -> list[tuple[Contact, Client]]:
    """Return the client of the page that a submission came from, with her first address."""
    session = tx.get(ExerciseSession, int(row.answers.removeprefix("session:")))
    client = tx.get(Client, session.client_id) if session else None
    if client is None:
        return []
    own = clients.contacts_of(tx, client.id or 0)
    chosen = [one for one in own if one.address == row.address] or own
    return [(chosen[0], client)] if chosen else []


def person_of_mail(tx: Tx, row: InboundRow) -> list[tuple[Contact, Client]]:
    """Return the client to whom we had sent the mail that this one answers, nearest parent first."""
    for sent in answered_by(tx, row):
        client = tx.get(Client, sent.client_id) if sent.client_id else None
        contact = tx.get(Contact, sent.contact_id) if sent.contact_id else None
        if client is not None and contact is not None:
            return [(contact, client)]
    return []


def answered_by(tx: Tx, row: InboundRow) -> Sequence[Outbound]:
    """Return the mails of ours that a mail answers, by their Message-IDs or its reply address."""
    names = row.answers.split()
    if not names:
        return []
    tokens = [int(name.removeprefix("row:")) for name in names if name.startswith("row:")]
    receipts = [name for name in names if not name.startswith(("row:", "token:"))]
    named = col(Outbound.receipt).in_(receipts) | col(Outbound.id).in_(tokens)
    return tx.exec(select(Outbound).where(named)).all()


def read(tx: Tx, heard: Heard, client: Client) -> None:
    """Read a message as a client's: her language, the session it may answer, what was asked, who holds the phone."""
    row = heard.row
    today = client_day(row.received_at, client.time_zone)
    asked = heard.question.kind if heard.question else None
    holder = "shared" if len(heard.people) > 1 else client.holder
    exercises = exercises_for(tx, client, today)
    made = read_words(row.text, client.language, exercises, asked, holder, today)
    heard.reading, heard.why = made.reading, dict(made.why())
    if row.opt_out_type == "STOP" and heard.reading.intent != "wrong_number":
        heard.reading = replace(heard.reading, intent="opt_out", ask=None)  # the provider blocks the number by itself
    if row.source == "page":
        heard.reading = as_on_page(heard.reading, json.loads(row.raw))
    if row.whole_text and row.whole_text != row.text:
        hers = less_ours(row.whole_text, sent_to(tx, row))
        whole = read_words(hers, client.language, exercises, None, holder, today)
        heard.reading = with_danger_of(heard.reading, whole.reading)
        heard.why = {**whole.why(), **heard.why}
    heard.reading = with_death_of(heard.reading, row.whole_text or row.text, client.name)


def sent_to(tx: Tx, row: InboundRow) -> str:
    """Return the text of ours that a mail may quote: the mails it answers, and those sent lately to its address."""
    statement = select(Outbound.body).where(Outbound.to == row.address, Outbound.channel == "email")
    lately = tx.exec(statement.order_by(col(Outbound.id).desc()).limit(QUOTED_MAILS)).all()
    return "\n".join([*(sent.body for sent in answered_by(tx, row)), *lately])


def settle_whose(tx: Tx, heard: Heard) -> None:
    """Read the message and decide whose it is; `client` stays None when that must be asked."""
    first = heard.people[0][1]
    ids = [client.id or 0 for _, client in heard.people]
    heard.question = questions.current(tx, heard.row.address, ids, heard.now, heard.row.received_at)
    row = heard.row
    if row.source == "email" and not row.text.strip() and row.whole_text:
        row.text = under_head(row.whole_text, sent_to(tx, row))  # only what we sent tells hers from ours there
    read(tx, heard, first)
    if len(heard.people) == 1:
        heard.client = first
        return
    is_answer = heard.question is not None and is_plain_answer(heard.reading, heard.question.kind)
    known = heard.row.client_id  # asked and answered: it is read again as hers
    is_danger = bool(heard.reading.red_flags)
    chosen = known or whose(heard.row.text, holders(tx, heard), is_answer=is_answer, is_danger=is_danger)
    heard.client = next((client for _, client in heard.people if client.id == chosen), None)
    if heard.client is not None and heard.client.id != first.id:
        heard.clinic = clients.the_clinic(tx, heard.client.clinic_id)
        read(tx, heard, heard.client)


def is_plain_answer(reading: Reading, asked: str) -> bool:
    """Return whether a reply answers a question and bears no danger sign but the one that was asked about."""
    signs = set(reading.red_flags) - SIGN_ASKED.get(asked, frozenset())
    return how_it_closes(reading, asked) == "answered" and not signs


def holders(tx: Tx, heard: Heard) -> list[Holder]:
    """Return the people on a phone, with their names and whether a reply from each is awaited."""
    everyone = [client for _, client in heard.people]
    firsts = [client.name.split()[0] if client.name.split() else "" for client in everyone]
    asked = heard.question.client_id if heard.question else None
    awaited = (
        reported_lately(tx, everyone, heard.now) if heard.reading.correction else awaited_from(tx, everyone, heard)
    )
    return [
        Holder(
            client.id or 0,
            (client.name, first) if firsts.count(first) == 1 else (client.name,),
            awaits=client.id in awaited,
            was_asked=asked is not None and client.id == asked,
        )
        for client, first in zip(everyone, firsts, strict=True)
    ]


def awaited_from(tx: Tx, everyone: Sequence[Client], heard: Heard) -> set[int]:
    """Return the clients who could have sent a report: with a session today or one still unanswered."""
    awaited: set[int] = set()
    for client in everyone:
        today = client_day(heard.row.received_at, client.time_zone)
        known = recent_sessions(tx, client, today)
        if client.state == "active" and any(one.on_date == today or one.state == "reminded" for one in known):
            awaited.add(client.id or 0)
    return awaited


def reported_lately(tx: Tx, everyone: Sequence[Client], now: datetime) -> set[int]:
    """Return the clients who reported within the last two days."""
    ids = [client.id for client in everyone]
    statement = select(Report.client_id).where(col(Report.client_id).in_(ids), col(Report.at) >= now - RECENT_REPORT)
    return set(tx.exec(statement))


def next_said(tx: Tx, client: Client) -> str:
    """Return the date of a client's next planned session as she says it, empty when none is planned."""
    statement = select(col(ExerciseSession.on_date)).where(
        ExerciseSession.client_id == client.id,
        ExerciseSession.kind == "planned",
        ExerciseSession.state == "planned",
        col(ExerciseSession.queued_at).is_(None),
    )
    day = min(tx.exec(statement), default=None)
    return said_date(day, client.language) if day is not None else ""
