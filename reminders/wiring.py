"""The composition root: settings in, an App out. The only place where real things are chosen."""

from collections.abc import Mapping
from dataclasses import dataclass

from reminders.channels import BUILDERS
from reminders.clock import Clock, clock_from
from reminders.core.channel import Channel
from reminders.settings import Settings
from reminders.store.db import Database
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
    channels = {
        "sms": BUILDERS[f"sms:{settings.sms}"](settings),
        "email": BUILDERS[f"email:{settings.email}"](settings),
    }
    return App(settings, Database(settings.database_url), channels, Texts(), clock or clock_from(settings.clock))
