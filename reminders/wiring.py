"""The composition root: settings in, an App out. The only place where real things are chosen."""

from collections.abc import Mapping
from dataclasses import dataclass

from reminders.channels import build
from reminders.channels.sms import SmsChannel
from reminders.clock import Clock, clock_from
from reminders.core.channel import Channel
from reminders.core.tokens import REPLY_TO, read_token
from reminders.flows.deliver import Sender
from reminders.flows.fetch import Fetchers
from reminders.flows.render import Links
from reminders.inbound import mailbox
from reminders.settings import Settings, host_of, is_loopback
from reminders.settings.key_file import signing_keys
from reminders.store import clients
from reminders.store.db import Database
from reminders.store.journal import Journal
from reminders.texts import Texts


@dataclass
class App:
    """Everything that entry points hand on: the database, the ways out, the words, the time."""

    settings: Settings
    db: Database
    channels: Mapping[str, Channel]
    texts: Texts
    clock: Clock


def build_app(settings: Settings, clock: Clock | None = None) -> App:
    """Return an App for settings; nothing is connected or created yet."""
    db = Database(settings.database_url)
    db.journal = journal_of(settings)
    return App(settings, db, build(settings), Texts(), clock or clock_from(settings.clock))


def local_if_demo(app: App) -> bool:
    """Let nothing leave the machine when the database is a demo's, whatever the settings say; return whether it is."""
    with app.db.read() as tx:
        if not clients.has_demo(tx):
            return False
    is_near = is_loopback(host_of(app.settings.public_url))
    app.settings = app.settings.local(app.settings.public_url if is_near else Settings.public_url)
    app.channels = build(app.settings)
    return True


def journal_of(settings: Settings) -> Journal:
    """Return the journal: beside an SQLite file, and in the folder for backups where one is set."""
    path = settings.database_path
    name = f"{path.name if path else settings.database_url.rpartition('/')[2].partition('?')[0]}.journal"
    folders = [folder for folder in (path.absolute().parent if path else None, settings.backup_dir) if folder]
    return Journal(tuple(folder / name for folder in folders))


def fetchers_of(app: App, keys: tuple[str, ...]) -> Fetchers:
    """Return what can be fetched from: the provider's list of what came in, and the mailbox."""
    settings = app.settings
    texts = app.channels["sms"]
    return Fetchers(
        texts if isinstance(texts, SmsChannel) else None,
        mailbox.build(settings),
        is_reply_to=lambda token, mark: read_token(keys, REPLY_TO, token, mark) is not None,
    )


def sender_of(app: App, *, own_clock: bool = False) -> Sender:
    """Return a sender over an App's channels; `own_clock` when a given clock rules leases."""
    settings = app.settings
    return Sender(
        app.db,
        app.channels,
        app.texts,
        app.clock,
        Links(settings.public_url, signing_keys(settings)),
        settings.pace,
        settings.operator_email,
        own_clock or bool(settings.clock),
    )
