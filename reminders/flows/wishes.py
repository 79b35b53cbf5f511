"""What a client wishes besides reporting: a pause, coming back, today's exercises again, later. Each is said back."""

from collections.abc import Callable

from sqlmodel import select

from reminders.core.decide import Situation
from reminders.core.reading import read_reply
from reminders.core.rules.danger import rules_out_a_pause
from reminders.core.schedule import client_day
from reminders.flows import pause, questions
from reminders.flows.understand import Heard, next_said
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession
from reminders.texts_said import said_date


def pause_wanted(tx: Tx, heard: Heard, client: Client, situation: Situation) -> None:
    """Pause her; without a date 14 days, and one question until when. Surgery and a fracture hold her instead."""
    if rules_out_a_pause(heard.reading):
        return
    today = client_day(heard.row.received_at, client.time_zone)
    reading = heard.reading
    until = pause.end_named(reading.choice, today) or pause.end_named(reading.when, today)
    if until is None:
        # An unasked wish is read once more as the answer to "until when?", which is where a date is sought.
        asked = read_reply(heard.row.text, client.language, (), "until", client.holder, today)
        until = pause.end_named(asked.choice, today)
    made = pause.begin(tx, client, until, "client", heard.now, reason=heard.row.text[:80])
    if situation.is_held:
        heard.say("said_back", "said_back_held")
    elif until is None and situation.asked != "until" and heard.is_open and not situation.staff_wrote:
        questions.ask(tx, "until", heard.row.address, client, heard.now, inbound_id=heard.row.id)
        heard.say("ask", "ask_until", slot="ask")
    else:
        heard.say("said_back", "said_back_pause", until=said_date(made.until_on, client.language))


def resume_wanted(tx: Tx, heard: Heard, client: Client, situation: Situation) -> None:
    """End her pause; while a hold is open her therapist says when to start."""
    pause.end(tx, client, "client", heard.now)
    if situation.is_held:
        heard.say("said_back", "said_back_held")
    else:
        heard.say("said_back", "said_back_resume", next=next_said(tx, client))


def resend_wanted(tx: Tx, heard: Heard, client: Client, situation: Situation) -> None:
    """Send today's exercises again, as they were shown."""
    today = client_day(heard.row.received_at, client.time_zone)
    statement = select(ExerciseSession).where(
        ExerciseSession.client_id == client.id, ExerciseSession.on_date == today, ExerciseSession.kind == "planned"
    )
    session = tx.exec(statement).first()
    if situation.is_held:
        heard.say("said_back", "said_back_held")
    elif session is None or session.state in ("paused", "held"):
        heard.say("said_back", "said_back_resend_none", next=next_said(tx, client))
    else:
        heard.say("resend", "reminder", f"resend:{session.id}", session.id)


def later_said(tx: Tx, heard: Heard, client: Client, situation: Situation) -> None:
    """Answer "later" and "tomorrow" without bothering anyone."""
    if not situation.is_held:
        heard.say("said_back", "said_back_later")


def nothing(tx: Tx, heard: Heard, client: Client, situation: Situation) -> None:
    """Answer nothing, as to thanks and greetings."""


ACTIONS: dict[str, Callable[[Tx, Heard, Client, Situation], None]] = {
    "pause": pause_wanted,
    "resume": resume_wanted,
    "resend": resend_wanted,
    "later": later_said,
    "chat": nothing,
}
