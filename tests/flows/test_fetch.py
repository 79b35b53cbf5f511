"""Fetching what was not pushed: from the provider's list and the mailbox, each message once."""

from dataclasses import dataclass, field
from datetime import datetime, timedelta

import pytest

from reminders.core.channel import Inbound, MailBatch, MailProgress
from reminders.core.tokens import REPLY_TO, read_token
from reminders.errors import CannotSay
from reminders.flows import fetch, receive
from reminders.flows.fetch import Fetchers
from reminders.flows.render import Links
from reminders.store.tables import ClinicNote, InboundMail, InboundRow
from tests.clinic import World
from tests.flows.hearing import inbound, keep, reminded


@dataclass
class ListOfTexts:
    """A provider's list; remembers from when it was asked, and fails when told to."""

    found: list[Inbound] = field(default_factory=list)
    asked: list[datetime] = field(default_factory=list)
    is_down: bool = False

    def inbound_since(self, moment: datetime) -> list[Inbound]:
        self.asked.append(moment)
        if self.is_down:
            raise CannotSay("down")
        return [one for one in self.found if one.received_at >= moment]


@dataclass
class Mails:
    """A mailbox that gives one mail a batch."""

    mails: list[Inbound]
    validity: int = 7
    asked: list[MailProgress | None] = field(default_factory=list)

    def fetch(self, progress: MailProgress | None) -> MailBatch:
        self.asked.append(progress)
        begin = progress.uid if progress and progress.validity == self.validity else 0
        batch = tuple(self.mails[begin : begin + 1])
        done = begin + len(batch)
        return MailBatch(batch, MailProgress(self.validity, done), done < len(self.mails))


def test_what_came_while_we_were_down_is_kept_with_the_providers_time(world: World) -> None:
    ana = reminded(world)
    came_at = world.now - timedelta(minutes=12)
    source = ListOfTexts([inbound("done pain 2", "SM1", world, received_at=came_at)])

    assert fetch.run(world.db, Fetchers(inbound_list=source), world.now) == 1
    receive.handle_waiting(world.db, world.now)

    row = world.rows(InboundRow)[0]
    assert (row.received_at, row.fetched) == (came_at, True)
    assert world.reports(ana)[0].at == came_at


def test_what_was_pushed_before_is_not_kept_twice(world: World) -> None:
    ana = reminded(world)
    world.hear("Y2", provider_id="SM1")
    source = ListOfTexts([inbound("Y2", "SM1", world)])

    assert fetch.run(world.db, Fetchers(inbound_list=source), world.now) == 0
    receive.handle_waiting(world.db, world.now)

    assert len(world.reports(ana)) == 1


def test_the_list_is_read_at_the_start_and_every_five_minutes_from_an_hour_before_the_newest_seen(world: World) -> None:
    keep(world, inbound("hi", "SM0", world, received_at=world.now - timedelta(hours=5)))
    source = ListOfTexts()

    for _ in range(4):
        fetch.run(world.db, Fetchers(inbound_list=source), world.now)
        world.pass_time(minutes=2)

    assert len(source.asked) == 2
    assert source.asked[0] == world.rows(InboundRow)[0].received_at - timedelta(hours=1)


def test_a_text_pushed_after_a_long_stop_does_not_hide_what_came_during_it(world: World) -> None:
    ana = reminded(world)
    source = ListOfTexts()
    fetch.run(world.db, Fetchers(inbound_list=source), world.now)
    source.found = [inbound("I fell", "SM1", world, received_at=world.now + timedelta(minutes=10))]
    world.pass_time(hours=3)
    world.hear("hello?", provider_id="SM2")

    assert fetch.run(world.db, Fetchers(inbound_list=source), world.now) == 1
    receive.handle_waiting(world.db, world.now)

    assert [row.provider_id for row in world.rows(InboundRow) if row.fetched] == ["SM1"]
    assert world.alerts(ana)


def test_what_came_while_the_list_could_not_be_read_is_not_passed_over_once_it_can(world: World) -> None:
    reminded(world)
    source = ListOfTexts([inbound("I fell", "SM1", world, received_at=world.now)], is_down=True)
    for number in range(3):
        fetch.run(world.db, Fetchers(inbound_list=source), world.now)
        world.pass_time(hours=1)
        world.hear("hello?", provider_id=f"SM{number + 2}")
    source.is_down = False

    assert fetch.run(world.db, Fetchers(inbound_list=source), world.now) == 1


def test_a_list_that_cannot_be_read_is_tried_again_and_given_up_for_catching_up_after_half_an_hour(
    world: World,
) -> None:
    source = ListOfTexts(is_down=True)
    fetchers = Fetchers(inbound_list=source)
    began = world.now
    for minutes, expected in ((0, False), (29, False), (31, True)):
        world.now = began + timedelta(minutes=minutes)
        assert fetch.run(world.db, fetchers, world.now) == 0
        with world.db.read() as tx:
            assert fetch.has_caught_up(tx, fetchers, began, world.now) is expected

    source.is_down = False
    fetch.run(world.db, fetchers, world.now)
    with world.db.read() as tx:
        assert fetch.has_caught_up(tx, fetchers, began, world.now)
        assert not fetch.has_caught_up(tx, fetchers, world.now + timedelta(hours=1), world.now + timedelta(hours=1))


@dataclass
class BrokenMailbox:
    """A mailbox that cannot be reached."""

    def fetch(self, progress: MailProgress | None) -> MailBatch:
        raise CannotSay("down")


def test_a_list_or_mailbox_that_fails_for_half_an_hour_is_told_to_the_operator_once_a_day(world: World) -> None:
    fetchers = Fetchers(inbound_list=ListOfTexts(is_down=True), mailbox=BrokenMailbox())
    told = []
    for _ in range(4):
        fetch.run(world.db, fetchers, world.now)
        told.append([row.details["what"] for row in world.queued("operator")])
        world.pass_time(minutes=20)

    both = ["list not read", "mailbox not read"]
    assert told == [[], [], both, both]
    assert [note.words for note in world.rows(ClinicNote, kind="operator")] == both

    world.pass_time(days=1)
    fetch.run(world.db, fetchers, world.now)
    assert len(world.queued("operator")) == 4


def test_mails_are_read_batch_by_batch_with_how_far_we_came(world: World) -> None:
    reminded(world)
    box = Mails([inbound(f"hello {n}", f"m{n}", world, source="email", address="x@example.org") for n in range(3)])
    fetchers = Fetchers(mailbox=box, mailbox_name="INBOX")

    assert fetch.run(world.db, fetchers, world.now) == 3
    assert fetch.run(world.db, fetchers, world.now) == 0

    row = world.rows(InboundMail)[0]
    assert (row.mailbox, row.uid_validity, row.uid) == ("INBOX", 7, 3)
    assert box.asked[-1] == MailProgress(7, 3)


def test_a_rebuilt_mailbox_brings_no_mail_twice(world: World) -> None:
    reminded(world)
    box = Mails([inbound("hello", "m1", world, source="email", address="x@example.org")])
    fetch.run(world.db, Fetchers(mailbox=box), world.now)
    box.validity = 8

    assert fetch.run(world.db, Fetchers(mailbox=box), world.now) == 0
    assert len(world.rows(InboundRow)) == 1


@pytest.mark.parametrize(
    ("key", "pain"), [(None, 2), ("reminder:1:2026-03-03:1", None)], ids=["that mail", "an earlier one of its number"]
)
def test_a_reply_token_tells_which_mail_is_answered(world: World, key: str | None, pain: int | None) -> None:
    ana = reminded(world, email="ana@example.org", channel="email", mobile="")
    sent, secrets = world.queued("reminder")[0], ("test-secret-test-secret",)
    token = Links("", secrets).reply_token(sent.id or 0, key or sent.key)
    mail = inbound("done pain 2", "m1", world, source="email", address="other@example.org", reply_token=token)
    fetchers = Fetchers(
        mailbox=Mails([mail]), is_reply_to=lambda given, mark: read_token(secrets, REPLY_TO, given, mark) is not None
    )

    fetch.run(world.db, fetchers, world.now)
    receive.handle_waiting(world.db, world.now)

    assert world.sessions(ana)[0].pain == pain
