"""What staff do for one client from the console or another program: write to her, hold, clear, ease, note, correct.

Each writes its audit entry. What a rule does by itself stands in the flows of the rules.
"""

from datetime import date, datetime
from typing import Any

from sqlmodel import col, select

from reminders.core.reading.model import Reading
from reminders.core.schedule import at_local
from reminders.errors import BadInput, Refused
from reminders.flows import audit, easy_day, hold, judge, reports, say
from reminders.store import clients, outbox
from reminders.store.db import Tx, lock_client
from reminders.store.tables import Client, Clinic, ClinicNote, ExerciseSession, Report

MOST_LETTERS = 400  # with the first line it stays within three text parts
COMPLETED = ("all", "part", "none")


def write(
    tx: Tx, clinic: Clinic, client: Client, words: str, writer: str, by: str, once: int, now: datetime
) -> list[int]:
    """Send a client words of a staff member, inside her window; return the rows queued.

    `once` is the form's own number, so that one form sent twice goes once. For 48 hours her replies also go to the
    therapist's inbox. Raises Refused when no address of hers may be written to.
    """
    text = " ".join(words.split())
    if not text:
        raise BadInput("Your words are empty; write something or leave it.")
    if len(text) > MOST_LETTERS:
        raise BadInput(f"Your words have {len(text)} letters; at most {MOST_LETTERS} go into one message.")
    lock_client(tx, client.id or 0)
    if not clients.wanted_contacts(client, clients.contacts_of(tx, client.id or 0)) or client.died_on:
        raise Refused("No address of this client may be written to; phone instead.")
    queued = say.tell_client(
        tx,
        clinic,
        client,
        "therapist_note",
        "therapist_note",
        {"words": text, "writer": writer},
        now,
        lambda contact: outbox.client_key("therapist_note", client.id or 0, once, contact),
    )
    if queued:
        client.staff_wrote_at = now
        tx.add(client)
        audit.record(tx, clinic.id, by, "client written to", client.id, {"messages": queued}, now)
    return queued


def put_on_hold(tx: Tx, client: Client, note: str, by: str, now: datetime) -> None:
    """Stop a client's reminders until a therapist clears the hold."""
    opened = hold.open_hold(tx, client, "by_hand", by, now, note=note.strip())
    audit.record(tx, client.clinic_id, by, "hold opened", client.id, {"hold": opened.id}, now)


def clear_hold(tx: Tx, client: Client, by: str, now: datetime) -> None:
    """End every hold of a client; raises Refused when there is none."""
    ended = hold.end_hold(tx, client, by, now)
    if not ended:
        raise Refused("This client is not held.")
    audit.record(tx, client.clinic_id, by, "hold cleared", client.id, {"holds": [one.id for one in ended]}, now)


def ease(tx: Tx, client: Client, by: str, now: datetime) -> None:
    """Make a client's next session an easy day."""
    easy_day.ease(client)
    tx.add(client)
    audit.record(tx, client.clinic_id, by, "easy day set", client.id, {}, now)


def keep_note(tx: Tx, client: Client, words: str, by: str, now: datetime) -> ClinicNote:
    """Keep a staff member's own note in a client's record; it asks for nobody."""
    if not words.strip():
        raise BadInput("The note is empty; write something or leave it.")
    note = ClinicNote(
        clinic_id=client.clinic_id,
        client_id=client.id,
        kind="own",
        words=words.strip(),
        at=now,
        closed_at=now,
        closed_by=by,
    )
    tx.add(note)
    tx.flush()
    audit.record(tx, client.clinic_id, by, "note kept", client.id, {"note": note.id}, now)
    return note


def settle_note(tx: Tx, note: ClinicNote, by: str, now: datetime) -> None:
    """Take an item out of the inbox; doing it twice changes nothing."""
    if note.closed_at is not None:
        return
    note.closed_at, note.closed_by = now, by
    tx.add(note)
    audit.record(
        tx, note.clinic_id, by, "inbox item settled", note.client_id, {"note": note.id, "kind": note.kind}, now
    )


def correct(
    tx: Tx,
    clinic: Clinic,
    client: Client,
    session: ExerciseSession,
    values: dict[str, Any],
    why: str,
    by: str,
    now: datetime,
    *,
    replaces: int | None = None,
) -> Report:
    """Correct what stands recorded for a session; the client's own report stays beside it.

    `values`: `completed` (all, part, none or None), `sets`, `reps`, `pain` (0-10 or None). Judged like a new rating:
    upward it raises, downward it ends nothing.
    """
    if values.get("completed") not in (None, *COMPLETED):
        raise BadInput(f"What was done must be one of: {', '.join(COMPLETED)}.")
    lock_client(tx, client.id or 0)
    reading = Reading().as_dict() | {"intent": "report", "correction": True} | values
    report = Report(
        client_id=client.id or 0,
        session_id=session.id,
        at=now,
        channel="staff",
        text=why.strip(),
        reading=reading,
        by=by,
        replaces=replaces,
    )
    tx.add(report)
    tx.flush()
    reports.revalue(tx, client, session, now, by_staff=True)
    judge.judge_report(tx, clinic, client, session, report, now)
    audit.record(tx, clinic.id, by, "reading corrected", client.id, {"session": session.id, "report": report.id}, now)
    return report


def session_on(tx: Tx, client: Client, day: date, now: datetime) -> ExerciseSession:
    """Return a client's session of a date; an extra one is made for a date without any."""
    statement = select(ExerciseSession).where(ExerciseSession.client_id == client.id, ExerciseSession.on_date == day)
    found = tx.exec(statement.order_by(col(ExerciseSession.kind).desc())).first()
    if found is not None:
        return found
    made = ExerciseSession(
        client_id=client.id or 0,
        on_date=day,
        kind="extra",
        due_at=at_local(day, "12:00", client.time_zone),
        state="done",
        settled_at=now,
    )
    tx.add(made)
    tx.flush()
    return made
