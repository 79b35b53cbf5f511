"""Mails that are not surely her own words: read for danger, and an opt-out where a person wrote; shown as unverified.

They only bear her address as their sender, or a program wrote them for her. A first START counts on the From address:
it opens what nobody ever closed, and the welcome goes to that address.
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


def handle_automatic(tx: Tx, heard: Heard) -> None:
    """Judge danger signs in a mail that a program wrote for her; nothing is answered, or two programs would go on."""
    heard.outcome = "automatic"
    if heard.reading.red_flags:
        mine = [heard.client] if heard.client is not None else [client for _, client in heard.people]
        judge.judge_unattributed(tx, heard.clinic, mine, heard.row, heard.reading, heard.now)
