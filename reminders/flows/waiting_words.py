"""Words from a shared phone that wait for whose they are: asked once, read again as hers, else left to the desk.

However the question ends without a name (nobody answers, another takes its place, the phone said STOP meanwhile), the
words go to the inbox of each clinic with a client on that phone: a rating in them is lost to nobody.
"""

from collections.abc import Iterable
from datetime import datetime

from sqlmodel import col, or_, select

from reminders.errors import Refused
from reminders.flows import audit, questions, say, strangers
from reminders.flows.understand import Heard
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, ClinicNote, InboundRow, Question
from reminders.store.tables.record import WAITS_FOR_A_NAME

ASKED = "asked who"  # what became, so far, of a message that waits
BATCH = 100


def ask(tx: Tx, heard: Heard) -> None:
    """Ask whose a reply is; the answer has it read again as hers."""
    names = [client.name.split()[0] for _, client in heard.people if client.state != "closed"]
    waiting = {"names": names, "inbounds": [heard.row.id]}
    questions.ask(tx, "who", heard.row.address, None, heard.now, inbound_id=heard.row.id, details=waiting)
    heard.say("ask", "ask_who", slot="ask", names=names)
    heard.outcome = ASKED


def waiting(tx: Tx, question: Question) -> list[InboundRow]:
    """Return the messages that still wait for the answer to a question."""
    ids = question.details.get("inbounds") or [question.inbound_id]
    rows = [tx.get(InboundRow, one) for one in ids if one is not None]
    return [row for row in rows if row is not None and row.outcome == ASKED and row.client_id is None]


def is_theirs(tx: Tx, question: Question, client_id: int) -> None:
    """Have the messages that waited read again as this client's."""
    for row in waiting(tx, question):
        row.client_id, row.handled_at, row.outcome = client_id, None, ""
    tx.flush()


def say_whose(tx: Tx, note: ClinicNote, client_id: int, by: str, now: datetime) -> None:
    """File words that lie on the desk as this client's, in a staff member's name: they are read again as hers.

    Raises Refused where it is known already, or where she is not on that phone.
    """
    row = tx.get(InboundRow, note.inbound_id or 0)
    if row is None or row.client_id is not None or note.client_id is not None or note.closed_at is not None:
        raise Refused("Whose it was is settled already.")
    if all(client.id != client_id for client in sharers(tx, note)):
        raise Refused("That client is not on this phone; choose one who is.")
    row.client_id, row.handled_at, row.outcome = client_id, None, ""
    every = select(ClinicNote).where(ClinicNote.inbound_id == row.id, col(ClinicNote.client_id).is_(None))
    for one in tx.exec(every):  # the other clinic's too, where the phone has clients of two
        one.closed_at, one.closed_by = one.closed_at or now, one.closed_by or by
    audit.record(tx, note.clinic_id, by, "whose it was settled", client_id, {"note": note.id}, now)


def sharers(tx: Tx, note: ClinicNote) -> list[Client]:
    """Return the clinic's clients on the phone that an item of the inbox came from."""
    row = tx.get(InboundRow, note.inbound_id or 0)
    found = clients.clients_at(tx, row.address) if row is not None and row.address else []
    return [one for _, one in found if one.clinic_id == note.clinic_id and one.state != "closed"]


def give_up(tx: Tx, question: Question, now: datetime) -> None:
    """Leave the messages that waited to the desk: nobody said whose they are."""
    for row in waiting(tx, question):
        note(tx, row, [client for _, client in clients.clients_at(tx, row.address)])
        row.outcome = "desk"
    questions.close(question, "unanswered", now)


def note(tx: Tx, row: InboundRow, people: Iterable[Client]) -> None:
    """Put words of which nobody knows whose they are into the inbox of each clinic with a client on that phone.

    They lie there as from when they were written: they may have waited a day for a name.
    """
    ids = dict.fromkeys(client.clinic_id for client in people)
    last = strangers.clinic_of(tx, row) if not ids else None  # everybody left that phone meanwhile
    for clinic in [clients.the_clinic(tx, one) for one in ids] + ([last] if last is not None else []):
        say.tell_desk(tx, clinic, None, "unclear", row.text, {"what": "whose"}, row.received_at, inbound_id=row.id)


def let_go(tx: Tx, now: datetime, limit: int = BATCH) -> int:
    """Give up the questions that ended without a name, or that nobody answered in time; return how many."""
    is_over = or_(col(Question.closed_at).is_not(None), col(Question.lapses_at) <= now)
    statement = select(Question).where(WAITS_FOR_A_NAME, is_over).order_by(col(Question.id)).limit(limit)
    over = list(tx.exec(statement.with_for_update(skip_locked=True)))
    for question in over:
        give_up(tx, question, now)
    return len(over)
