"""Mails that only bear a client's address as their sender: read for danger and opt-out, and shown as unverified.

A first START counts on the From address: it opens what nobody ever closed, and the welcome goes to that address.
"""

from reminders.flows import consent, judge, say
from reminders.flows.understand import Heard
from reminders.store.db import Tx


def handle(tx: Tx, heard: Heard) -> None:
    """Act on danger signs, an opt-out or a first START; the rest goes to the clinic's inbox, marked."""
    reading = heard.reading
    everyone = [client for _, client in heard.people]
    chosen = heard.client or everyone[0]
    if reading.red_flags:
        made = judge.judge_unattributed(tx, heard.clinic, everyone, heard.row, reading, heard.now)
        if made.template:
            heard.say(made.kind or "danger", made.template, **made.details)
    if reading.intent == "opt_out":
        consent.opt_out(tx, heard)
        return
    if reading.intent == "opt_in" and all(not contact.ever_closed for contact, _ in heard.people):
        consent.opt_in(tx, heard)
        return
    details = {"verified": False, "what": "unverified mail"}
    say.tell_desk(tx, heard.clinic, chosen, "written", heard.row.text, details, heard.now, inbound_id=heard.row.id)
    heard.outcome = "unverified"
