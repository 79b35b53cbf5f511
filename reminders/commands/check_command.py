"""`reminders check`: every setting and connection, one line each, with what to do where something is wrong."""

import argparse
import os
import smtplib
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path

from sqlalchemy.exc import SQLAlchemyError
from sqlmodel import col, select

from reminders.channels.email import EmailChannel
from reminders.channels.sms import SmsChannel
from reminders.commands.opening import settings_here
from reminders.errors import CannotSay, ReminderError
from reminders.flows import audit
from reminders.inbound import mailbox
from reminders.settings import Settings, host_of, is_loopback
from reminders.settings.key_file import signing_keys
from reminders.store import integrity, restored, schema, staffing
from reminders.store.tables import Clinic, Mark
from reminders.wiring import App, build_app

STALE = timedelta(minutes=5)
OLD_BACKUP = timedelta(hours=36)


@dataclass(frozen=True)
class Line:
    """One line: `ok`, `look` (works, but should be seen to) or `bad`; about what; what to do or how it stands."""

    state: str
    what: str
    says: str


def configure(parser: argparse.ArgumentParser) -> None:
    """The command has no options."""


def run(_args: argparse.Namespace) -> int:
    """Print the lines; 0 when none is bad."""
    app = build_app(settings_here())
    bad = 0
    for check in CHECKS:
        for line in guarded(check, app):
            bad += line.state == "bad"
            print(f"{line.state:<5} {line.what:<18} {line.says}")
    return 1 if bad else 0


def guarded(check: Callable[[App], Iterator[Line]], app: App) -> Iterator[Line]:
    """Yield a check's lines; what it could not do is a line too."""
    try:
        yield from check(app)
    except ReminderError as error:
        yield Line("bad", check.__name__, str(error))
    except SQLAlchemyError as error:
        yield Line("bad", check.__name__, f"the database cannot be asked ({type(error).__name__})")


def database(app: App) -> Iterator[Line]:
    """Whether the database is there, at the newest schema, whole, and let send."""
    schema.require_ready(app.db)
    yield Line("ok", "database", f"{integrity.place_of(app.db)} is at the newest schema {schema.newest()}")
    for fault in integrity.faults(app.db):
        yield Line("bad", "database", fault)
    with app.db.read() as tx:
        if audit.broken_entries(tx):
            yield Line("bad", "audit log", "entries were changed after they were written: reminders db check")
        if restored.waits_since(tx) is not None:
            yield Line("bad", "database", "it was brought back from a file and sends nothing: reminders db resume")


def clinics(app: App) -> Iterator[Line]:
    """Whether each clinic has a name, a phone, a lead, and somebody for every client."""
    schema.require_ready(app.db)
    with app.db.read() as tx:
        for clinic in tx.exec(select(Clinic).order_by(col(Clinic.id))):
            found = list(staffing.gaps(tx, clinic))
            yield from (Line("look", f"clinic {clinic.id}", gap) for gap in found)
            if not found:
                yield Line("ok", f"clinic {clinic.id}", f"{clinic.name}, {clinic.phone}, {clinic.hours}")


def secret(app: App) -> Iterator[Line]:
    """Whether links can be signed."""
    keys = signing_keys(app.settings)
    where = "REMINDERS_SECRET_KEY" if app.settings.secret_keys else "the file beside the database; keep a copy"
    yield Line(
        "ok", "secret key", where + ("; two keys: take the old one away when the change is over" * (len(keys) > 1))
    )


def address(app: App) -> Iterator[Line]:
    """Whether clients can reach their pages."""
    settings = app.settings
    if is_loopback(host_of(settings.public_url)):
        state = "bad" if settings.is_live else "ok"
        yield Line(
            state, "public address", f"{settings.public_url} is this machine alone: set REMINDERS_PUBLIC_URL to go live"
        )
    elif not settings.public_url.startswith("https://"):
        yield Line("bad", "public address", f"{settings.public_url} is not encrypted: use https")
    else:
        yield Line("ok", "public address", settings.public_url)


def texts(app: App) -> Iterator[Line]:
    """Whether texts go out and come in."""
    channel = app.channels["sms"]
    if not isinstance(channel, SmsChannel):
        yield Line("ok", "texts", "local: kept in the database, nothing leaves this machine (REMINDERS_SMS)")
        return
    try:
        channel.inbound_since(app.clock())
        yield Line("ok", "texts", f"the provider answers; {app.settings.sms_per_second:g} parts a second (0: no limit)")
    except CannotSay as error:
        yield Line("bad", "texts", f"{error} Look at TWILIO_ACCOUNT_SID, TWILIO_AUTH_TOKEN and the network")
    if not app.settings.has_status_callback:
        yield Line(
            "look", "texts", "no status comes back while the public address is this machine: delivery stays unknown"
        )


def mail(app: App) -> Iterator[Line]:
    """Whether mail goes out and answers are read."""
    channel = app.channels["email"]
    if not isinstance(channel, EmailChannel):
        yield Line("ok", "mail", "local: kept in the database, nothing leaves this machine (REMINDERS_EMAIL)")
    else:
        try:
            channel.connected().quit()
            yield Line("ok", "mail", "the mail server takes our sign-in")
        except (OSError, smtplib.SMTPException, ReminderError) as error:
            yield Line("bad", "mail", f"the server of REMINDERS_SMTP_URL does not take us ({type(error).__name__})")
    box = mailbox.build(app.settings)
    if box is None:
        yield Line(
            "look" if app.settings.email == "smtp" else "ok",
            "mailbox",
            "answers by mail are not read: REMINDERS_IMAP_URL",
        )
        return
    try:
        with box.opened():
            yield Line("ok", "mailbox", "the mailbox opens")
    except CannotSay as error:
        yield Line("bad", "mailbox", f"{error} Look at REMINDERS_IMAP_URL")


def operator(app: App) -> Iterator[Line]:
    """Whether somebody hears when the service itself needs help, and whether it is backed up."""
    settings = app.settings
    told = settings.operator_email
    yield Line("ok" if told else "look", "operator", told or "nobody is told of trouble: REMINDERS_OPERATOR_EMAIL")
    yield backups(settings, app.clock())
    if settings.clock:
        yield Line("look", "clock", "REMINDERS_CLOCK stands in place of the machine's clock")


def backups(settings: Settings, now: datetime) -> Line:
    """Return how old the newest backup in the folder is."""
    folder = settings.backup_dir
    if folder is None:
        return Line("look", "backups", "no folder is set: REMINDERS_BACKUP_DIR, then reminders db backup every night")
    if not os.access(folder, os.W_OK):
        return Line("bad", "backups", f"{folder} cannot be written")
    files = [path.stat().st_mtime for path in Path(folder).glob("*.backup")]
    if not files or now.timestamp() - max(files) > OLD_BACKUP.total_seconds():
        return Line("look", "backups", f"there is none of the last day and a half in {folder}: reminders db backup")
    return Line("ok", "backups", f"the newest in {folder} is {(now.timestamp() - max(files)) / 3600:.0f} hours old")


def at_work(app: App) -> Iterator[Line]:
    """Whether scheduler and sender are running."""
    schema.require_ready(app.db)
    now = app.clock()
    with app.db.read() as tx:
        beats = list(tx.exec(select(Mark).where(col(Mark.name).startswith("heartbeat:")).order_by(col(Mark.name))))
    late = [beat.name.partition(":")[2] for beat in beats if beat.at is None or abs(now - beat.at) > STALE]
    if not beats or late:
        yield Line("look", "at work", "nobody sends just now: reminders serve, or reminders work")
    else:
        yield Line("ok", "at work", "scheduler and sender were heard within five minutes")


CHECKS = (database, secret, clinics, address, texts, mail, operator, at_work)
