"""What a restored database hears of the time since its file was made: all of it, and no old answer goes out."""

from dataclasses import dataclass
from pathlib import Path

import pytest

from reminders.core.channel import Inbound
from reminders.errors import CannotSay
from reminders.flows import fetch, receive, restore, tick
from reminders.store import marks
from reminders.store.journal import Journal
from reminders.store.tables import Alert, InboundRow, Outbound
from tests.clinic import World
from tests.flows.hearing import inbound
from tests.flows.test_restore import Lost, Provider


@dataclass
class TrueList(Provider):
    """The provider's list as it is: what came in from a moment on; it cannot be read while it is down."""

    is_down: bool = False

    def inbound_since(self, moment: object) -> list[Inbound]:
        if self.is_down:
            raise CannotSay("down")
        return [one for one in self.kept if one.received_at >= moment]  # type: ignore[operator]


@pytest.fixture
def lost(world: World, tmp_path: Path) -> Lost:
    world.db.journal = Journal((tmp_path / "clinic.journal",))
    return Lost(world, tmp_path, TrueList([]))


def scheduler(world: World, lost: Lost) -> tick.Worker:
    """The service's own rounds, begun before anybody said that sending goes on."""
    fetchers = fetch.Fetchers(lost.provider)  # type: ignore[arg-type]
    return tick.Worker(world.db, world.sender, world.clock, fetchers, "test", world.now)


def reminded(lost: Lost) -> int:
    client_id = lost.world.enrol()
    lost.world.pass_time(days=2)
    lost.world.plan()
    lost.world.send()
    return client_id


def test_a_file_without_any_text_still_hears_all_that_came_since_it_was_made(lost: Lost) -> None:
    lost.world.enrol()
    lost.back_up()
    lost.world.pass_time(hours=10)
    lost.heard("I fell and hit my head")
    lost.world.pass_time(hours=30)
    world = lost.bring_back()
    lost.resume(world)

    assert [one.rule for one in world.rows(Alert)] == ["fall_or_injury"]


def test_a_text_pushed_before_the_resume_hides_none_of_those_before_it(lost: Lost) -> None:
    lost.world.enrol()
    lost.world.hear("hello")
    with lost.world.db.begin() as tx:
        marks.set_mark(tx, fetch.LIST_MARK, at=lost.world.now)
    lost.back_up()
    lost.world.pass_time(hours=1)
    lost.heard("I fell and hit my head")
    lost.world.pass_time(hours=4)
    world = lost.bring_back()
    world.inbound = 100
    world.hear("thank you")
    lost.resume(world)

    assert [one.rule for one in world.rows(Alert)] == ["fall_or_injury"]


def test_the_list_is_read_at_once_however_lately_it_was_read(lost: Lost) -> None:
    lost.world.enrol()
    lost.back_up()
    lost.world.pass_time(minutes=1)
    lost.heard("I fell and hit my head")
    world = lost.bring_back()
    with world.db.begin() as tx:
        marks.set_mark(tx, fetch.LIST_MARK, at=world.now)
    lost.resume(world)

    assert [one.rule for one in world.rows(Alert)] == ["fall_or_injury"]


def test_a_list_that_cannot_be_read_at_the_resume_is_read_from_the_files_moment_later(lost: Lost) -> None:
    lost.world.enrol()
    lost.back_up()
    lost.world.pass_time(hours=10)
    lost.heard("I fell and hit my head")
    lost.world.pass_time(hours=30)
    world = lost.bring_back()
    assert isinstance(lost.provider, TrueList)
    lost.provider.is_down = True
    assert lost.resume(world).failed == ["list"]

    lost.provider.is_down = False
    world.pass_time(minutes=6)
    fetch.run(world.db, fetch.Fetchers(lost.provider), world.now)  # type: ignore[arg-type]

    assert [row.text for row in world.rows(InboundRow)] == ["I fell and hit my head"]


def test_an_old_answer_does_not_go_when_the_service_fetched_before_the_resume(lost: Lost) -> None:
    reminded(lost)
    lost.back_up()
    lost.world.pass_time(minutes=10)
    lost.heard("done 2x10 pain 3")
    lost.world.pass_time(hours=6)
    world = lost.bring_back()
    tick.run(scheduler(world, lost), world.now)
    before = len(lost.world.sms.sent)
    done = lost.resume(world)
    world.pass_time(hours=14)
    world.send()

    assert done.not_answered == 1
    assert [one.body for one in lost.world.sms.sent[before:] if one.key.startswith("answer")] == []


def test_an_old_answer_does_not_go_when_the_resume_was_cut_off_after_it_had_heard(
    lost: Lost, monkeypatch: pytest.MonkeyPatch
) -> None:
    reminded(lost)
    lost.back_up()
    lost.world.pass_time(minutes=10)
    lost.heard("done 2x10 pain 3")
    lost.world.pass_time(hours=3)
    world = lost.bring_back()
    with monkeypatch.context() as cut_off:
        cut_off.setattr(restore, "withdraw_answers", lambda *_: 1 / 0)
        with pytest.raises(ZeroDivisionError):
            lost.resume(world)
    before = len(lost.world.sms.sent)
    lost.resume(world)
    world.pass_time(hours=1)
    world.send()

    assert [one.body for one in lost.world.sms.sent[before:] if one.key.startswith("answer")] == []


def test_an_answer_that_waited_in_the_file_still_goes(lost: Lost) -> None:
    reminded(lost)
    lost.provider.kept.append(inbound("done 2x10 pain 3", "SM900", lost.world))
    fetch.run(lost.world.db, fetch.Fetchers(lost.provider), lost.world.now)  # type: ignore[arg-type]
    receive.handle_waiting(lost.world.db, lost.world.now)
    lost.world.pass_time(minutes=2)
    lost.back_up()
    lost.world.pass_time(minutes=2)
    world = lost.bring_back()
    lost.resume(world)

    assert [row.state for row in world.rows(Outbound) if row.inbound_id is not None] == ["waiting"]
