"""Ways to reach a person, each behind the Channel protocol of the core.

A new one is a module with `build` and a row here; which one serves texts and which mail is a setting.
"""

from collections.abc import Callable, Mapping

from reminders.channels import email, local, sms
from reminders.core.channel import Channel
from reminders.settings import Settings

BUILDERS: Mapping[str, Callable[[Settings], Channel]] = {
    "local": local.build,
    "twilio": sms.build,
    "smtp": email.build,
}


def build(settings: Settings) -> dict[str, Channel]:
    """Return the channels for `sms` and `email` that the settings choose; raises BadInput when one lacks a setting."""
    return {"sms": BUILDERS[settings.sms](settings), "email": BUILDERS[settings.email](settings)}
