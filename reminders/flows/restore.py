"""A restored database is let send again, once it knows what happened since the moment that its file holds.

In this order: the journal's lines are put in force, what came in meanwhile is fetched, recorded and judged, what was
due meanwhile is planned, and everything that waits or was claimed is looked up in the provider's list. What is found
there was sent; what is not found goes, if it may still go.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from sqlmodel import col, or_, select

from reminders.core.channel import Outgoing
from reminders.core.kinds import kind_of
from reminders.errors import CannotSay
from reminders.flows import audit, fetch, gate, outcomes, plan, receive, render
from reminders.flows.deliver import Sender, scene_of
from reminders.flows.reapply import Reapplied, reapply
from reminders.store import bulk, marks, outbox, restored
from reminders.store.db import Database, Tx
from reminders.store.tables import Clinic, InboundRow, Outbound

Line = dict[str, Any]
ANSWERED = "answered before the restore"


@dataclass
class Resumed:
    """What was found: what the journal put in force, how many were fetched, found sent, and still to go."""

    since: datetime | None = None
    journal: Reapplied = field(default_factory=Reapplied)
    fetched: int = 0
    found: int = 0
    to_go: int = 0
    unsure: int = 0
    not_answered: int = 0
    failed: list[str] = field(default_factory=list)


def resume(sender: Sender, fetchers: fetch.Fetchers, lines: Sequence[Line], now: datetime) -> Resumed:
    """Let a restored database send again and return what was found; `since` is None where nothing was held back.

    Can be run again after a crash at any line: each step sees what the one before it wrote.
    """
    db = sender.db
    with db.begin() as tx:
        since = restored.waits_since(tx)
        if since is None:
            return Resumed()
        done = Resumed(since, reapply(tx, sender.texts, lines, since, now))
    hear(db, fetchers, since, done, now)
    done.not_answered = withdraw_answers(db, since, now)
    while True:
        with db.begin() as tx:
            if plan.plan_due(tx, now) == 0:
                break
    look_up_all(sender, done, now)
    with db.begin() as tx:
        restored.let_send(tx)
        details = {name: value for name, value in vars(done).items() if isinstance(value, int)}
        for clinic_id in tx.exec(select(Clinic.id).order_by(col(Clinic.id))).all():
            audit.record(tx, clinic_id, "command", "restore resumed", None, details | vars(done.journal), now)
    return done


def hear(db: Database, fetchers: fetch.Fetchers, since: datetime, done: Resumed, now: datetime) -> None:
    """Fetch and read what came since the file's moment; a source that cannot be read is named.

    The mark stays at that moment until the list was read to its end: where it cannot be read now, the service's own
    rounds must not begin at the newest text that was pushed since.
    """
    with db.begin() as tx:
        read = marks.mark(tx, fetch.LIST_MARK)
        at = min(read.at, since) if read is not None and read.at is not None else since
        marks.set_mark(tx, fetch.LIST_MARK, at=at)
    done.fetched = fetch.run(db, fetchers, now, back_to=at)
    receive.handle_waiting(db, now)
    with db.read() as tx:
        for name in ("list", "mailbox"):
            failing = marks.mark(tx, f"{fetch.FAILING_MARK} {name}")
            if failing is not None and failing.at is not None:
                done.failed.append(name)


def withdraw_answers(db: Database, since: datetime, now: datetime) -> int:
    """Take back the answers to what was fetched after the file's moment, the danger answers excepted; return how many.

    By whom it was fetched is all one: here, by the service before, or in a resume that was cut off.
    """
    with db.begin() as tx:
        statement = (
            select(Outbound)
            .join(InboundRow, col(Outbound.inbound_id) == col(InboundRow.id))
            .where(col(Outbound.state) == "waiting", col(Outbound.staff_id).is_(None))
            .where(col(InboundRow.fetched).is_(True), col(InboundRow.kept_at) >= since)
        )
        rows = [row for row in tx.exec(statement) if kind_of(row.kind).priority > 0]
        for row in rows:
            row.state, row.why, row.settled_at = "withdrawn", ANSWERED, now
        return len(rows)


def look_up_all(sender: Sender, done: Resumed, now: datetime) -> None:
    """Ask the provider for each text that waits, was claimed or is unknown; a mail goes again under its one name."""
    with sender.db.read() as tx:
        open_states = or_(
            col(Outbound.state).in_(("claimed", "unknown")),
            (col(Outbound.state) == "waiting") & (col(Outbound.due_at) <= now),
        )
        ids = [
            number for number in tx.exec(select(Outbound.id).where(open_states).order_by(col(Outbound.id))) if number
        ]
    for number in ids:
        with sender.db.read() as tx:
            row = tx.get(Outbound, number)
            if row is None:
                continue
            asked, since = question(sender, tx, row, now)
            held = outbox.receipts_held(tx, row.to)
        receipt, can_say = None, row.channel == "email"
        if row.channel != "email":
            try:
                receipt = sender.channels[row.channel].find(asked, since, held, now)
                can_say = True
            except CannotSay:
                can_say = False
        with sender.db.begin() as tx:
            settle(sender, tx, number, receipt, can_say, done, now)


def question(sender: Sender, tx: Tx, row: Outbound, now: datetime) -> tuple[Outgoing, datetime]:
    """Return a row as it would have been sent, and from when on it may have been."""
    since = row.called_at or row.claimed_at or row.due_at
    word(sender, tx, row, now)
    if row.inbound_id is not None and row.state == "waiting":
        inbound = tx.get(InboundRow, row.inbound_id)
        since = min(since, inbound.received_at) if inbound is not None else since
    return Outgoing(key=row.key, to=row.to, body=row.body, row=row.id or 0, attempt=row.attempts), since


def word(sender: Sender, tx: Tx, row: Outbound, now: datetime) -> None:
    """Write a text's words as they were when it was due, where it has none yet."""
    if not row.body and row.channel == "sms":
        facts = gate.read_facts(tx, [row], now)
        scene = scene_of(row, facts)
        wants = row.kind in ("reminder", "resend")
        if wants and scene.session is not None and render.is_to_show(scene.session):
            render.show_session(scene, row.language)
            bulk.write_shown(tx, [scene.session])
        render.render(sender.texts, scene, row, sender.links, row.due_at)
        bulk.write_words(tx, [row])


def settle(
    sender: Sender, tx: Tx, number: int, receipt: str | None, can_say: bool, done: Resumed, now: datetime
) -> None:
    """Write down what a look-up said of one row."""
    row = tx.get(Outbound, number)
    if row is None:
        return
    if receipt is not None:
        word(sender, tx, row, now)
        outcomes.accepted(tx, [(row, receipt)], now)
        done.found += 1
        return
    was_tried = row.state in ("claimed", "unknown")
    if can_say or row.priority == 0:
        row.state, row.claim_until = "waiting", None
        row.maybe_doubled = row.maybe_doubled or not can_say
        done.to_go += can_say
        done.unsure += not can_say
    elif row.expires_at is None or was_tried:
        row.state, row.why, row.settled_at = "withdrawn", "perhaps sent before the restore", now
        done.unsure += 1


def said(done: Resumed) -> list[str]:
    """Return what was found, a sentence each, for whoever runs the service."""
    if done.since is None:
        return ["This database was not brought back from a file; it sends as usual."]
    journal = done.journal
    counts: Mapping[str, int] = {
        "addresses closed again": journal.closed,
        "holds opened again": journal.holds,
        "deaths": journal.deaths,
        "discharges": journal.discharged,
        "records erased again": journal.erased,
        "lines on clients that this file does not hold": journal.strangers,
        "messages fetched": done.fetched,
        "of their answers taken back": done.not_answered,
        "messages found sent": done.found,
        "still to go": done.to_go,
        "that nobody could tell of": done.unsure,
    }
    lines = [f"The file holds the record up to {done.since:%Y-%m-%d %H:%M} UTC."]
    lines += [f"{count} {what}" for what, count in counts.items() if count]
    if done.failed:
        lines.append(f"Could not be read, look there by hand: {', '.join(done.failed)}")
    if journal.strangers:
        lines.append("Enrol those clients again by hand, or take a newer backup: the journal holds no names.")
    return [*lines, "Sending goes on."]
