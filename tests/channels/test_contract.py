"""What every channel keeps, whichever it is: one run over all builders."""

from collections.abc import Iterator
from datetime import UTC, datetime
from typing import NamedTuple

import pytest

from reminders.channels import BUILDERS, build
from reminders.core.channel import Channel, Outgoing
from reminders.errors import BadInput, CannotSay
from reminders.settings import Settings
from reminders.settings.servers import mail_server
from tests.standins.forms import ACCOUNT_SID, AUTH_TOKEN, SENDER
from tests.standins.mail import SmtpServer
from tests.standins.sms_provider import SmsProvider


class Ways(NamedTuple):
    """Stand-ins of both providers and the settings that lead to them."""

    settings: Settings
    provider: SmsProvider
    smtp: SmtpServer


@pytest.fixture(scope="module")
def ways() -> Iterator[Ways]:
    with SmsProvider() as provider, SmtpServer() as smtp:
        settings = Settings(
            secret_keys=("kq0Zr7wV2mXc9LbT4nPd8sHg",),
            sms="twilio",
            twilio_account_sid=ACCOUNT_SID,
            twilio_auth_tokens=(AUTH_TOKEN,),
            twilio_sender=SENDER,
            twilio_api_url=provider.url,
            email="smtp",
            smtp=mail_server("REMINDERS_SMTP_URL", smtp.url, "smtp"),
            email_from="Elm Clinic <clinic@example.org>",
        )
        yield Ways(settings, provider, smtp)


def outgoing(kind: str, key: str = "reminder:7:2027-03-01") -> Outgoing:
    to = "ana@example.org" if kind == "smtp" else "+12025550101"
    return Outgoing(key=key, to=to, body="A sit to stand 10 times, twice", subject="Exercises for Monday 1 March")


@pytest.mark.parametrize("kind", BUILDERS)
def test_a_message_handed_over_has_a_receipt_that_is_not_empty(kind: str, ways: Ways) -> None:
    receipt = BUILDERS[kind](ways.settings).send(outgoing(kind))
    assert isinstance(receipt, str)
    assert receipt


@pytest.mark.parametrize("kind", BUILDERS)
def test_two_causes_have_two_receipts(kind: str, ways: Ways) -> None:
    channel = BUILDERS[kind](ways.settings)
    assert channel.send(outgoing(kind, "welcome:7")) != channel.send(outgoing(kind, "welcome:8"))


@pytest.mark.parametrize("kind", BUILDERS)
def test_what_was_accepted_is_found_again_or_the_channel_cannot_say(kind: str, ways: Ways) -> None:
    channel: Channel = BUILDERS[kind](ways.settings)
    since = datetime.now(UTC)
    receipt = channel.send(outgoing(kind, f"lost:{kind}"))
    others = frozenset(text.sid for text in ways.provider.accepted if text.sid != receipt)
    try:
        assert channel.find(outgoing(kind, f"lost:{kind}"), since, others) == receipt
    except CannotSay:
        assert channel.send(outgoing(kind, f"lost:{kind}")) == receipt, "sent again it must be the same message"


def test_the_settings_choose_the_channels(ways: Ways) -> None:
    chosen = build(ways.settings)
    assert {name: type(one).__name__ for name, one in chosen.items()} == {"sms": "SmsChannel", "email": "EmailChannel"}
    assert {type(one).__name__ for one in build(Settings()).values()} == {"LocalChannel"}


@pytest.mark.parametrize("kind", ["twilio", "smtp"])
def test_a_channel_without_its_settings_is_not_half_on(kind: str) -> None:
    with pytest.raises(BadInput, match="must be given"):
        BUILDERS[kind](Settings())
