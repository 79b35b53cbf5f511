"""Texts through the provider's own client, against the stand-in: only the provider's HTTP is replaced."""

import logging
import socket
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from urllib.parse import parse_qs, urlsplit

import pytest
from requests import Response
from twilio.rest import Client

from reminders.channels import sms
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
    answer = Response()
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


def test_an_answer_later_than_the_time_out_is_unknown(provider: SmsProvider, channel: sms.SmsChannel) -> None:
    assert channel.clients[0].http_client.timeout.total == 45
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


class Moment:
    """A clock of the provider's that stands where it is put."""

    def __init__(self) -> None:
        self.now = datetime(2027, 3, 1, 13, 30, tzinfo=UTC)

    def __call__(self) -> datetime:
        return self.now


@pytest.fixture
def moment() -> Moment:
    return Moment()


@pytest.fixture
def timed(moment: Moment) -> Iterator[SmsProvider]:
    with SmsProvider(clock=moment) as running:
        yield running


CLAIM = datetime(2027, 3, 1, 13, 30, tzinfo=UTC)
# When the provider made the text, seen from the claim, and whether it can be ours.
WINDOW = {
    "at the claim": (timedelta(0), True),
    "a minute before by another clock": (timedelta(seconds=-60), True),
    "longer before": (timedelta(seconds=-62), False),
    "ten minutes after": (timedelta(minutes=10), True),
    "longer after": (timedelta(minutes=10, seconds=2), False),
}


@pytest.mark.parametrize(("shift", "is_found"), WINDOW.values(), ids=WINDOW)
def test_only_a_text_made_around_the_claim_is_ours(
    shift: timedelta, is_found: bool, moment: Moment, timed: SmsProvider
) -> None:
    moment.now = CLAIM + shift
    channel = sms.build(settings_for(timed))
    receipt = channel.send(TEXT)
    assert channel.find(TEXT, CLAIM, frozenset()) == (receipt if is_found else None)


def test_ours_has_our_number_our_exact_words_and_no_other_row(timed: SmsProvider) -> None:
    channel = sms.build(settings_for(timed))
    channel.send(replace(TEXT, to=OTHER))
    channel.send(replace(TEXT, body=TEXT.body + " "))
    timed.hear(ANA, TEXT.body, to=ANA)
    assert channel.find(TEXT, CLAIM, frozenset()) is None
    first, second = channel.send(TEXT), channel.send(TEXT)
    assert channel.find(TEXT, CLAIM, frozenset()) == first
    assert channel.find(TEXT, CLAIM, frozenset({first})) == second
    assert channel.find(TEXT, CLAIM, frozenset({first, second})) is None


@pytest.mark.parametrize("hides_unsent", [True, False])
def test_a_text_that_has_not_left_yet_is_found(hides_unsent: bool, timed: SmsProvider) -> None:
    timed.play.sends_at_once = False
    timed.play.hides_unsent = hides_unsent
    channel = sms.build(settings_for(timed))
    receipt = channel.send(TEXT)
    assert channel.find(TEXT, CLAIM, frozenset()) == receipt


def test_every_page_is_read_from_the_day_before(moment: Moment, timed: SmsProvider) -> None:
    channel = sms.build(settings_for(timed))
    receipt = channel.send(TEXT)
    moment.now += timedelta(seconds=5)
    for number in range(12):
        channel.send(replace(TEXT, body=f"another text {number}"))
    timed.play.max_page = 5
    assert channel.find(TEXT, CLAIM, frozenset()) == receipt
    assert len(timed.lists_asked) == 3
    assert {one["To"] for one in timed.lists_asked} == {ANA}
    assert {one["DateSent>"] for one in timed.lists_asked} == {"2027-02-28T00:00:00Z"}


def test_a_text_around_midnight_is_found(moment: Moment, timed: SmsProvider) -> None:
    claim = datetime(2027, 3, 2, 0, 0, 20, tzinfo=UTC)
    moment.now = claim - timedelta(seconds=30)
    channel = sms.build(settings_for(timed))
    receipt = channel.send(TEXT)
    assert channel.find(TEXT, claim, frozenset()) == receipt


@pytest.mark.parametrize("breaks", [1, 2])
def test_a_list_that_breaks_cannot_say(breaks: int, provider: SmsProvider, channel: sms.SmsChannel) -> None:
    provider.play.list_breaks = breaks
    with pytest.raises(CannotSay):
        channel.find(TEXT, datetime.now(UTC), frozenset())


def test_a_list_that_breaks_on_its_second_page_cannot_say(provider: SmsProvider, channel: sms.SmsChannel) -> None:
    for _ in range(3):
        channel.send(TEXT)
    provider.play.max_page = 2
    provider.play.list_breaks_from = 2
    with pytest.raises(CannotSay):
        channel.find(replace(TEXT, body="gone"), datetime.now(UTC), frozenset())


def test_a_text_that_shows_late_is_not_found_before(provider: SmsProvider, channel: sms.SmsChannel) -> None:
    provider.play.list_delay = 60
    receipt = channel.send(TEXT)
    assert channel.find(TEXT, datetime.now(UTC), frozenset()) is None
    provider.show_all()
    assert channel.find(TEXT, datetime.now(UTC), frozenset()) == receipt


def test_what_came_in_while_we_were_away_is_listed_oldest_first(moment: Moment, timed: SmsProvider) -> None:
    channel = sms.build(settings_for(timed))
    moment.now = CLAIM - timedelta(hours=1)
    timed.hear(ANA, "before")
    for minute, words in enumerate(("done 2x10 pain 3", "sí, me caí 😀", "")):
        moment.now = CLAIM + timedelta(minutes=minute)
        timed.hear(ANA, words)
    channel.send(TEXT)
    timed.play.max_page = 2
    heard = channel.inbound_since(CLAIM)
    assert [(one.text, one.received_at) for one in heard] == [
        ("done 2x10 pain 3", CLAIM),
        ("sí, me caí 😀", CLAIM + timedelta(minutes=1)),
        ("", CLAIM + timedelta(minutes=2)),
    ]
    assert {(one.source, one.address, one.to) for one in heard} == {("sms", ANA, SENDER)}
    assert all(one.provider_id.startswith("SM") and b"MessageSid=" in one.raw for one in heard)


def test_a_lone_surrogate_of_the_list_is_replaced_and_kept_in_the_raw(timed: SmsProvider) -> None:
    timed.hear(ANA, "I fell \ud83d\x00")
    (heard,) = sms.build(settings_for(timed)).inbound_since(CLAIM)
    assert heard.text == "I fell \ufffd\ufffd"
    assert b"%ED%A0%BD%00" in heard.raw


def test_through_a_messaging_service_any_of_its_numbers_is_heard(timed: SmsProvider) -> None:
    timed.hear(ANA, "done", to="+12025550198")
    channel = sms.build(settings_for(timed, twilio_sender="MG00000000000000000000000000000001"))
    assert [one.to for one in channel.inbound_since(CLAIM)] == ["+12025550198"]


def test_a_list_that_breaks_cannot_say_what_came_in(provider: SmsProvider, channel: sms.SmsChannel) -> None:
    provider.play.list_breaks = 1
    with pytest.raises(CannotSay):
        channel.inbound_since(datetime.now(UTC))
