"""The provider's list, by its own client: what became of an attempt whose answer was lost, and what came in."""

from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from reminders.channels import sms
from reminders.core.channel import Outgoing
from reminders.errors import CannotSay
from reminders.settings import Settings
from tests.standins.forms import ACCOUNT_SID, AUTH_TOKEN, SENDER
from tests.standins.sms_provider import SmsProvider

ANA, OTHER = "+12025550101", "+12025550102"
TEXT = Outgoing(key="reminder:7:2027-03-01", to=ANA, body="A sit to stand 10 times. ¿Sí?", row=41)


@pytest.fixture
def provider() -> Iterator[SmsProvider]:
    with SmsProvider() as running:
        yield running


def settings_for(provider: SmsProvider, sender: str = SENDER) -> Settings:
    return Settings(
        sms="twilio",
        twilio_account_sid=ACCOUNT_SID,
        twilio_auth_tokens=(AUTH_TOKEN,),
        twilio_sender=sender,
        twilio_api_url=provider.url,
    )


@pytest.fixture
def channel(provider: SmsProvider) -> sms.SmsChannel:
    return sms.build(settings_for(provider))


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
    channel = sms.build(settings_for(timed, sender="MG00000000000000000000000000000001"))
    assert [one.to for one in channel.inbound_since(CLAIM)] == ["+12025550198"]


def test_a_page_that_breaks_is_asked_for_again_so_that_one_of_many_does_not_lose_them_all(timed: SmsProvider) -> None:
    channel = sms.build(settings_for(timed))
    for number in range(5):
        timed.hear(ANA, f"done {number}")
    timed.play.max_page = 2
    timed.play.list_breaks = sms.TRIES - 1
    assert [one.text for one in channel.inbound_since(CLAIM)] == [f"done {number}" for number in range(5)]
    assert len(timed.lists_asked) == 3 + sms.TRIES - 1


def test_a_list_that_breaks_cannot_say_what_came_in(provider: SmsProvider, channel: sms.SmsChannel) -> None:
    provider.play.list_breaks = sms.TRIES
    with pytest.raises(CannotSay):
        channel.inbound_since(datetime.now(UTC))


def test_two_texts_of_one_second_keep_the_order_of_the_list_whatever_their_names() -> None:
    newest_first = [
        sms.Listed(sid, ANA, SENDER, words, True, CLAIM, 0)
        for sid, words in (("SM1", "Sorry, I meant pain 3"), ("SM9", "done pain 6"))
    ]
    assert [row.body for row in sms.oldest_first(newest_first)] == ["done pain 6", "Sorry, I meant pain 3"]
