"""`reminders receive`: what an inbound text does, kept, read and judged; sends and prints what it caused."""

import argparse
import uuid
from datetime import datetime
from typing import Any

from sqlmodel import col, select

from reminders import jobs
from reminders.commands.opening import add_at, opened, print_json
from reminders.core.channel import Inbound
from reminders.core.intake import clean, number
from reminders.errors import BadInput
from reminders.flows import deliver, keeping, receive
from reminders.store.correspondence import inbound_json, outbound_json
from reminders.store.db import Tx
from reminders.store.tables import Alert, InboundRow, Outbound
from reminders.wiring import App

MOST_LETTERS = 1_600


def configure(parser: argparse.ArgumentParser) -> None:
    """Add the command's options."""
    parser.add_argument("--from", dest="sender", required=True, metavar="NUMBER", help="the number that texts")
    add_at(parser)
    parser.add_argument("--json", action="store_true", help="print one JSON document")
    parser.add_argument("text", metavar="TEXT", help="the words of the text")


def run(args: argparse.Namespace) -> int:
    """Keep and handle one text, send what it caused, and print that."""
    sender = number(args.sender)
    if not sender.startswith("+"):
        raise BadInput(f"--from: {args.sender!r} is not a phone number with its country, such as +12025550123.")
    if len(args.text) > MOST_LETTERS:
        raise BadInput(f"TEXT is longer than {MOST_LETTERS} letters, the most that a text can carry.")
    app = opened(args)
    now = app.clock()
    inbound = Inbound(
        source="command",
        provider_id=uuid.uuid4().hex,
        address=sender,
        to="",
        text=clean(args.text),
        raw=args.text.encode("utf-8", "surrogatepass"),
        received_at=now,
    )
    with app.db.begin() as tx:
        before = newest_ids(tx)
        row_id = keeping.keep(tx, inbound, now)
    receive.handle_waiting(app.db, now)
    worker = jobs.worker_of(app, own_clock=bool(args.at))
    try:
        deliver.send_due(worker.sender)
    finally:
        deliver.close(worker.sender)
    return show(app, args, row_id or 0, before, now)


def newest_ids(tx: Tx) -> tuple[int, int]:
    """Return the newest outbound row and alert there are."""
    rows = select(col(Outbound.id)).order_by(col(Outbound.id).desc()).limit(1)
    alerts = select(col(Alert.id)).order_by(col(Alert.id).desc()).limit(1)
    return tx.exec(rows).first() or 0, tx.exec(alerts).first() or 0


def show(app: App, args: argparse.Namespace, row_id: int, before: tuple[int, int], now: datetime) -> int:
    """Print what became of the text and what it caused; 1 when it could not be handled yet."""
    with app.db.read() as tx:
        row = tx.get(InboundRow, row_id)
        assert row is not None
        sent = list(tx.exec(select(Outbound).where(col(Outbound.id) > before[0]).order_by(col(Outbound.id))))
        alerts = list(tx.exec(select(Alert).where(col(Alert.id) > before[1]).order_by(col(Alert.id))))
        shown: dict[str, Any] = {
            "received": inbound_json(row),
            "outcome": row.outcome,
            "alerts": [alert_shown(one) for one in alerts],
            "messages": [outbound_json(one) for one in sent],
        }
    if args.json:
        print_json(shown)
    else:
        print(f"{row.outcome or 'kept'}: client {row.client_id or 'unknown'}")
        for alert in shown["alerts"]:
            print(f"alert {alert['number']}: {alert['rule']} ({alert['level']})")
        for one in sent:
            words = one.body or f"({one.template})"
            print(f"{one.kind} by {one.channel} to {one.to}, {one.state}, due {one.due_at:%Y-%m-%dT%H:%M:%SZ}: {words}")
    return 0 if row.handled_at is not None else 1


def alert_shown(alert: Alert) -> dict[str, Any]:
    """Return what is printed of an alert."""
    return {"number": alert.number, "client": alert.client_id, "rule": alert.rule, "level": alert.level}
