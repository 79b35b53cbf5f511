"""What a reply from a client's address leads to, intent by intent, once it has been read.

Danger signs come first and wait for nothing. What the answer says is gathered on the `Heard`; flows/answers sends it.
"""

from dataclasses import replace
from datetime import timedelta

from sqlmodel import select

from reminders.core.decide import ABOUT_A_SESSION, CHOICES, Decision, Situation, decide, is_clear
from reminders.core.schedule import client_day
from reminders.flows import (
    choices,
    consent,
    judge,
    meant,
    pause,
    questions,
    recording,
    reports,
    say,
    waiting_words,
    wishes,
)
from reminders.flows.understand import Heard
from reminders.store import around, clients
from reminders.store.db import Tx
from reminders.store.tables import Client, Outbound, Report

STAFF_TALK = timedelta(hours=48)  # after a therapist's own message her replies also go to the therapist's inbox


def handle(tx: Tx, heard: Heard) -> None:
    """Do what a reply asks for."""
    reading = heard.reading
    client = heard.client
    if client is None:
        handle_undecided(tx, heard)
        return
    heard.is_hers = True
    consent.confirm(heard)
    is_torn = meant.settle(tx, heard, client)
    warned = judge_danger(tx, heard, client, is_torn)
    if "death" in reading.concerns and reading.intent != "opt_out":
        say_sympathy(tx, heard, client)
        return
    if reading.intent in CONSENT and not only_resumes(tx, heard, client):
        if reading.intent == "opt_out" and not warned:
            recording.keep_unanswered(tx, heard, client)
        CONSENT[reading.intent](tx, heard)
        return
    if heard.row.pictures and not heard.row.text.strip():
        heard.say("said_back", "said_back_picture")
        heard.outcome = "picture"
        return
    situation = situation_of(tx, heard, client, warned)
    decision = decide(heard.reading, heard.row.text, situation)
    if heard.corrects is not None:
        decision = as_corrected(decision, heard.corrects)
    apply(tx, heard, client, decision, situation, warned)


def as_corrected(decision: Decision, corrects: Report) -> Decision:
    """Return what becomes of a correction: it keeps the kind of the report it puts right, and answers no morning."""
    is_other = decision.settles and not corrects.is_settling
    closes = "unanswered" if is_other and decision.closes == "answered" else decision.closes
    return replace(decision, settles=decision.record and corrects.is_settling, closes=closes)


def help_asked(tx: Tx, heard: Heard) -> None:
    """Say who this is, how to reach the clinic, and how to end the texts."""
    heard.say("help", "help")
    heard.outcome = "help"


CONSENT = {
    "opt_out": consent.opt_out,
    "opt_in": consent.opt_in,
    "wrong_number": consent.wrong_number,
    "help": help_asked,
}


def only_resumes(tx: Tx, heard: Heard, client: Client) -> bool:
    """Return whether an opt-in ends a pause: nothing of hers is closed, and a pause is open."""
    is_open = heard.contact is not None and heard.contact.consent == "open"
    today = client_day(heard.row.received_at, client.time_zone)
    if heard.reading.intent != "opt_in" or not is_open or pause.open_pause(tx, client.id or 0, today) is None:
        return False
    heard.reading = replace(heard.reading, intent="resume")
    return True


def handle_undecided(tx: Tx, heard: Heard) -> None:
    """Act on a reply from a shared phone when it is not known whose it is; danger never waits for that."""
    reading = heard.reading
    consent.confirm(heard)
    everyone = [client for _, client in heard.people]
    is_danger = bool(reading.red_flags or set(reading.concerns) - {"flare", "bereaved"})
    if is_danger:
        made = judge.judge_unattributed(tx, heard.clinic, everyone, heard.row, reading, heard.now)
        if made.template:
            heard.say(made.kind or "danger", made.template, **made.details, name="")  # it may be either's
    if reading.intent in CONSENT:
        CONSENT[reading.intent](tx, heard)
        return
    talk = [client for client in everyone if staff_wrote(heard, client)]
    for client in talk:
        note(tx, heard, client, "written")
    if reading.intent == "chat":
        heard.outcome = "chat"
    elif is_danger:
        heard.outcome = reading.intent  # staff says whose it was; whose an earlier reply was may still be answered
    elif talk and not is_clear(reading, heard.row.text):
        heard.outcome = "written"
    elif all(clients.open_hold(tx, client.id or 0) is not None for client in everyone):
        waiting_words.note(tx, heard.row, everyone)
        heard.say("said_back", "said_back_unclear", name="")
        heard.outcome = "desk"
    elif heard.question is not None and heard.question.kind == "who":
        waiting_words.give_up(tx, heard.question, heard.now)
        waiting_words.note(tx, heard.row, everyone)
        heard.say("said_back", "said_back_unclear", name="")
        heard.outcome = "desk"
    elif heard.is_open:
        waiting_words.ask(tx, heard)


def judge_danger(tx: Tx, heard: Heard, client: Client, is_torn: bool = False) -> bool:
    """Judge danger signs and concerns in a reply that is no report of a session; True when it was warned.

    A correction that may mean one of two (`is_torn`) replaces nothing and is judged as a rating without a session.
    """
    reading = heard.reading
    reported = reading.intent in ABOUT_A_SESSION and reading.ask not in ("meaning", "who")
    if (reported and "death" not in reading.concerns) or not (reading.red_flags or reading.concerns or is_torn):
        return False
    report = reports.keep_report(tx, heard, client, None)
    return recording.judged(tx, heard, client, None, report)


def staff_wrote(heard: Heard, client: Client) -> bool:
    """Return whether a client's therapist wrote to her lately, so that a reply may be meant for the therapist."""
    wrote = client.staff_wrote_at
    return wrote is not None and heard.row.received_at - wrote <= STAFF_TALK


def situation_of(tx: Tx, heard: Heard, client: Client, warned: bool) -> Situation:
    """Return what stands around a reply."""
    last = around.heard_before(tx, heard.row)
    return Situation(
        asked=heard.question.kind if heard.question else None,
        unclear_before=last in ("unclear", "desk"),  # asked about, or the one after it that went to the clinic
        is_held=warned or clients.open_hold(tx, client.id or 0) is not None,
        is_closed=not heard.is_open or client.state == "closed",
        staff_wrote=staff_wrote(heard, client),
        is_page=heard.row.source == "page",
    )


def apply(tx: Tx, heard: Heard, client: Client, decision: Decision, situation: Situation, warned: bool) -> None:
    """Carry out what was decided: keep, close the question, ask, note, say back."""
    if situation.staff_wrote and decision.note != "written":
        note(tx, heard, client, "written")
    reading = heard.reading
    if decision.record:
        recording.keep(tx, heard, client, decision, situation)
    elif decision.closes == "answered" and heard.question is not None and heard.question.kind in CHOICES:
        choices.answered(tx, heard, client, heard.question)
    elif decision.ask == "who":
        waiting_words.ask(tx, heard)
    elif decision.ask is not None:
        recording.ask_again(tx, heard, client, decision.ask)
    elif decision.note:
        note(tx, heard, client, decision.note)
        say_noted(heard, decision.note, situation)
    else:
        wishes.ACTIONS.get(reading.intent, wishes.nothing)(tx, heard, client, situation)
    if decision.closes and heard.question is not None and heard.question.closed_at is None:
        questions.close(heard.question, decision.closes, heard.now)
    heard.outcome = heard.outcome or reading.intent


def note(tx: Tx, heard: Heard, client: Client, kind: str) -> None:
    """Put her words into the clinic's inbox."""
    details = {"verified": heard.row.is_verified}
    clinic = clients.the_clinic(tx, client.clinic_id)
    say.tell_desk(tx, clinic, client, kind, heard.row.text, details, heard.now, inbound_id=heard.row.id)


def say_noted(heard: Heard, kind: str, situation: Situation) -> None:
    """Say honestly when the clinic may read what she wrote; her therapist's own talk needs no such word."""
    heard.outcome = {"unclear": "desk", "written": "written"}.get(kind, kind)
    if kind == "written":
        return
    heard.say("said_back", f"said_back_{kind}")


def say_sympathy(tx: Tx, heard: Heard, client: Client) -> None:
    """Answer the family with one line, once; what waited was withdrawn when the words were judged."""
    statement = select(Outbound.id).where(Outbound.client_id == client.id, Outbound.kind == "sympathy")
    heard.parts.clear()
    if tx.exec(statement.limit(1)).first() is None:
        heard.say("sympathy", "sympathy")
    heard.outcome = "death"
