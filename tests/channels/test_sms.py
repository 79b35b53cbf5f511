"""Texts through the provider's own client, against the stand-in: only the provider's HTTP is replaced."""

import logging
import socket
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime
from ssl import SSLCertVerificationError
from urllib.parse import parse_qs, urlsplit

import pytest
from twilio.rest import Client
from urllib3 import HTTPResponse
from urllib3.exceptions import SSLError

from reminders.channels import sms
from reminders.channels.sms_http import proxy_for
from reminders.core.channel import Outgoing
from reminders.core.provider_codes import treatment
from reminders.errors import CannotSay, SendError
from reminders.settings import Settings
from tests.standins.forms import ACCOUNT_SID, AUTH_TOKEN, SENDER
from tests.standins.sms_provider import Act, SmsProvider

ANA, OTHER = "+12025550101", "+12025550102"
TEXT = Outgoing(
    key="reminder:7:2027-03-01", to=ANA, body="A sit to stand 10 times. ¿Sí?", row=41, attempt=2, valid_seconds=900
)


@pytest.fixture
def provider() -> Iterator[SmsProvider]:
    with SmsProvider() as running:
        yield running


def settings_for(provider: SmsProvider, **more: object) -> Settings:
    given = Settings(
        sms="twilio",
        twilio_account_sid=ACCOUNT_SID,
        twilio_auth_tokens=(AUTH_TOKEN,),
        twilio_sender=SENDER,
        twilio_api_url=provider.url,
    )
    return replace(given, **more)  # type: ignore[arg-type]


@pytest.fixture
def channel(provider: SmsProvider) -> sms.SmsChannel:
    return sms.build(settings_for(provider))


def test_a_text_carries_its_words_its_sender_its_life_and_where_to_report(
    provider: SmsProvider, channel: sms.SmsChannel
) -> None:
    receipt = channel.send(TEXT)
    (taken,) = provider.accepted
    assert receipt == taken.sid
    assert (taken.to, taken.sender, taken.body) == (ANA, SENDER, TEXT.body)
    assert taken.asked["ValidityPeriod"] == "900"
    assert taken.asked["SmartEncoded"].lower() == "false"
    callback = urlsplit(taken.asked["StatusCallback"])
    assert f"{callback.scheme}://{callback.netloc}{callback.path}" == "http://127.0.0.1:8000/sms/status"
    assert parse_qs(callback.query) == {"row": ["41"], "attempt": ["2"]}


def test_a_messaging_service_stands_in_for_the_number(provider: SmsProvider) -> None:
    sms.build(settings_for(provider, twilio_sender="MG00000000000000000000000000000001")).send(TEXT)
    asked = provider.accepted[0].asked
    assert asked["MessagingServiceSid"] == "MG00000000000000000000000000000001"
    assert "From" not in asked


def test_no_callback_is_asked_for_where_it_could_not_arrive(provider: SmsProvider) -> None:
    far = sms.SmsChannel(settings_for(provider, twilio_api_url="https://api.twilio.com"))
    assert far.callback == ""
    public = sms.SmsChannel(
        settings_for(provider, twilio_api_url="https://api.twilio.com", public_url="https://reminders.example.org")
    )
    assert public.callback == "https://reminders.example.org/sms/status"


def test_the_stand_in_speaks_as_the_providers_own_client_expects(provider: SmsProvider) -> None:
    client = Client(ACCOUNT_SID, AUTH_TOKEN, environment={"TWILIO_EDGE": ""})
    client.api.base_url = provider.url
    made = client.messages.create(to=ANA, from_=SENDER, body="hello")
    fetched = client.messages(made.sid).fetch()
    assert (made.status, fetched.body, fetched.direction) == ("queued", "hello", "outbound-api")
    assert [one.sid for one in client.messages.list(to=ANA)] == [made.sid]
    client.http_client.session.close()


def test_an_environment_with_an_edge_does_not_move_the_address(
    provider: SmsProvider, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("TWILIO_EDGE", "sydney")
    monkeypatch.setenv("TWILIO_REGION", "au1")
    monkeypatch.setenv("HTTP_PROXY", "http://127.0.0.1:9")
    assert sms.build(settings_for(provider)).send(TEXT)


# How the provider refuses, and what the error must say: code, permanent, unknown, seconds to wait.
REFUSALS = {
    "the receiver opted out": (Act("refuse", code="21610"), ("21610", True, False, None)),
    "the number is none": (Act("refuse", code="21211"), ("21211", True, False, None)),
    "the text is too long": (Act("refuse", code="21617"), ("21617", True, False, None)),
    "the sender is not registered": (Act("refuse", code="30034"), ("30034", True, False, None)),
    "the queue is full": (Act("refuse", code="21611"), ("21611", False, False, None)),
    "the token is wrong, which can be mended": (Act("refuse", code="20003", status=401), ("20003", False, False, None)),
    "too many at once": (Act("throttle", retry_after="11"), ("20429", False, False, 11.0)),
    "too many at once, and a wait that is no number": (
        Act("throttle", retry_after="soon"),
        ("20429", False, False, None),
    ),
    "not ready": (Act("unready", retry_after="3"), ("20503", False, False, 3.0)),
    "broken, perhaps after it was taken": (Act("broken"), ("20500", False, True, None)),
    "broken after it was taken": (Act("broken after"), ("20500", False, True, None)),
    "cut off before it was taken": (Act("drop"), ("", False, True, None)),
    "cut off after it was taken": (Act("drop after"), ("", False, True, None)),
}


@pytest.mark.parametrize(("act", "expected"), REFUSALS.values(), ids=REFUSALS)
def test_a_refusal_says_how_to_treat_it(
    act: Act, expected: tuple[str, bool, bool, float | None], provider: SmsProvider, channel: sms.SmsChannel
) -> None:
    provider.will(act)
    with pytest.raises(SendError) as caught:
        channel.send(TEXT)
    error = caught.value
    assert (error.code, error.permanent, error.unknown, error.retry_after) == expected
    assert ANA not in str(error)
    assert len(provider.accepted) == act.takes
    assert channel.send(TEXT), "the next call starts afresh"


def test_a_wait_of_one_answer_is_not_kept_for_the_next(provider: SmsProvider, channel: sms.SmsChannel) -> None:
    provider.will(Act("throttle", retry_after="11"), Act("refuse", code="21610"))
    for waits in (11.0, None):
        with pytest.raises(SendError) as caught:
            channel.send(TEXT)
        assert caught.value.retry_after == waits


def test_a_date_to_wait_until_counts_from_the_answers_own_date() -> None:
    answer = HTTPResponse()
    answer.headers["Date"] = "Mon, 01 Mar 2027 13:30:00 GMT"
    answer.headers["Retry-After"] = "Mon, 01 Mar 2027 13:32:00 GMT"
    assert sms.retry_after(answer) == 120
    answer.headers["Retry-After"] = "Mon, 01 Mar 2027 13:00:00 GMT"
    assert sms.retry_after(answer) == 0
    del answer.headers["Date"]
    assert sms.retry_after(answer) is None


def test_nobody_listening_is_no_unknown_attempt(provider: SmsProvider) -> None:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        url = f"http://127.0.0.1:{probe.getsockname()[1]}"
        with pytest.raises(SendError) as caught:
            sms.build(settings_for(provider, twilio_api_url=url)).send(TEXT)
    assert (caught.value.unknown, caught.value.permanent, treatment(caught.value.code)) == (False, False, "retry")


def test_a_certificate_that_cannot_be_trusted_is_no_unknown_attempt() -> None:
    error = SSLError(SSLCertVerificationError("self-signed certificate"))
    assert sms.send_error(error, None).unknown is False
    assert sms.send_error(SSLError("bad record in the middle"), None).unknown is True


PROXIES = {
    "none": ({}, None),
    "one": ({"HTTPS_PROXY": "http://10.0.0.1:3128"}, "http://10.0.0.1:3128"),
    "one without a scheme": ({"HTTPS_PROXY": "10.0.0.1:3128"}, "http://10.0.0.1:3128"),
    "one for all": ({"ALL_PROXY": "http://10.0.0.1:3128"}, "http://10.0.0.1:3128"),
    "not for this host": ({"HTTPS_PROXY": "http://10.0.0.1:3128", "NO_PROXY": "twilio.com"}, None),
}


@pytest.mark.parametrize(("environment", "expected"), PROXIES.values(), ids=PROXIES)
def test_a_proxy_of_the_environment_is_used_for_the_world_outside(
    environment: dict[str, str], expected: str | None, monkeypatch: pytest.MonkeyPatch
) -> None:
    for name in ("HTTP_PROXY", "HTTPS_PROXY", "ALL_PROXY", "NO_PROXY"):
        monkeypatch.delenv(name, raising=False)
        monkeypatch.delenv(name.lower(), raising=False)
    for name, value in environment.items():
        monkeypatch.setenv(name, value)
    assert proxy_for("https://api.twilio.com") == expected


def test_an_answer_later_than_the_time_out_is_unknown(provider: SmsProvider, channel: sms.SmsChannel) -> None:
    assert channel.clients[0].http_client.limits.total == 45
    hasty = sms.SmsChannel(settings_for(provider), timeout_seconds=0.3)
    provider.will(Act(delay=1.0))
    with pytest.raises(SendError) as caught:
        hasty.send(TEXT)
    assert caught.value.unknown
    assert len(provider.accepted) == 1


def test_while_the_token_is_changed_both_are_tried(provider: SmsProvider) -> None:
    tokens = ("1111222233334444aaaabbbbccccdddd", AUTH_TOKEN)
    both = sms.build(settings_for(provider, twilio_auth_tokens=tokens))
    now = datetime.now(UTC)
    assert both.send(TEXT) == both.find(TEXT, now, frozenset())
    wrong = sms.build(settings_for(provider, twilio_auth_tokens=tokens[:1]))
    with pytest.raises(SendError) as caught:
        wrong.send(TEXT)
    assert (caught.value.code, treatment(caught.value.code)) == ("20003", "operator")
    with pytest.raises(CannotSay):
        wrong.find(TEXT, now, frozenset())


def test_an_idle_connection_asks_for_signs_of_life(channel: sms.SmsChannel, provider: SmsProvider) -> None:
    channel.send(TEXT)
    pools = channel.clients[0].http_client.pool.pools
    (key,) = pools.keys()
    pool = pools[key]
    connection = pool.pool.get_nowait()
    assert connection.sock.getsockopt(socket.SOL_SOCKET, socket.SO_KEEPALIVE) == 1
    assert connection.sock.getsockopt(socket.IPPROTO_TCP, socket.TCP_NODELAY) != 0
    pool.pool.put_nowait(connection)


def test_nothing_of_a_text_is_logged(
    channel: sms.SmsChannel, provider: SmsProvider, caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level(logging.DEBUG)
    channel.send(TEXT)
    provider.will_refuse("21211")
    with pytest.raises(SendError):
        channel.send(TEXT)
    assert ANA not in caplog.text
    assert "sit to stand" not in caplog.text
