"""Attempts that were cut off: several workers look for them, and none counts another's look or undoes a callback."""

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from typing import Any

from reminders.core.channel import Outgoing, StatusReport
from reminders.errors import CannotSay, SendError
from reminders.flows import deliver, delivery_status, unknown
from reminders.store import outbox
from reminders.store.db import Database
from tests.clinic import ANA, World

HOUR = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)


@dataclass
class Interrupted:
    """A channel that is overtaken while it looks."""

    meanwhile: Any

    def send(self, outgoing: Outgoing) -> str:
        self.meanwhile(outgoing)
        return "SM1"

    def find(self, outgoing: Outgoing, since: datetime, taken: frozenset[str]) -> str | None:
        self.meanwhile(outgoing)
        return None


def cut_off(world: World) -> None:
    """Let Ana's reminder be cut off, and the first look be due."""
    world.enrol()
    world.send()
    world.now = HOUR
    world.plan()
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()
    world.pass_time(minutes=2, seconds=1)


def test_two_workers_who_look_at_once_count_one_look(world: World) -> None:
    cut_off(world)

    def look(_: Outgoing) -> None:
        unknown.settle(world.db, {"sms": world.sms}, world.clock)

    unknown.settle(world.db, {"sms": Interrupted(look)}, world.clock)

    row = world.queued("reminder")[0]
    assert (row.state, row.lookups) == ("unknown", 1)


def test_a_callback_that_comes_during_the_look_stands(world: World) -> None:
    cut_off(world)

    def report(outgoing: Outgoing) -> None:
        told(world.db, outgoing, world.now)

    unknown.settle(world.db, {"sms": Interrupted(report)}, world.clock)

    assert (world.queued("reminder")[0].state, world.queued("reminder")[0].receipt) == ("delivered", "SM1")


def test_a_callback_that_comes_before_the_answer_to_our_call_stands(world: World) -> None:
    world.enrol()
    world.send()
    world.now = HOUR
    world.plan()
    sender = world.sender
    sender.channels = {"sms": Interrupted(lambda outgoing: told(world.db, outgoing, world.now))}

    deliver.send_due(sender)

    row = world.queued("reminder")[0]
    assert (row.state, row.receipt) == ("delivered", "SM1")
    assert world.sessions(row.client_id)[0].state == "reminded"


def told(db: Database, outgoing: Outgoing, now: datetime) -> None:
    """Take a callback that says a text was delivered."""
    report = StatusReport(
        provider_id="SM1", status="delivered", code="", to=ANA, row=outgoing.row, attempt=outgoing.attempt, raw=b""
    )
    with db.begin() as tx:
        delivery_status.record(tx, report, now)


def test_a_slow_provider_is_given_few_at_a_time_and_a_quick_one_many(world: World) -> None:
    sender = world.sender
    sender.threads, sender.batch = 8, 200
    for _ in range(20):
        sender.learn(1.0)
    assert sender.batch_now() == 8
    for _ in range(40):
        sender.learn(0.001)
    assert sender.batch_now() == 200


def test_the_lapsed_claim_of_a_mail_goes_again_and_of_a_text_is_looked_for(world: World) -> None:
    world.enrol(email="ana@example.org", channel="sms+email")
    world.now = HOUR
    world.plan()
    deliver.claim(world.sender)
    world.now += timedelta(seconds=91)

    unknown.release(world.db, world.clock)

    assert {row.channel: row.state for row in world.queued("reminder")} == {"sms": "unknown", "email": "waiting"}


@dataclass
class Mute:
    """A channel whose provider cannot say."""

    def find(self, outgoing: Outgoing, since: datetime, taken: frozenset[str]) -> str | None:
        raise CannotSay("down")


def test_only_a_not_found_counts_towards_another_send(world: World) -> None:
    cut_off(world)
    for _ in range(5):
        unknown.settle(world.db, {"sms": Mute()}, world.clock)
        world.pass_time(minutes=5)

    unknown.settle(world.db, {"sms": world.sms}, world.clock)

    row = world.queued("reminder")[0]
    assert (row.state, row.lookups) == ("unknown", 1)


def test_a_welcome_whose_provider_cannot_say_waits_as_long_as_it_may_still_be_delivered(world: World) -> None:
    world.enrol()
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()
    states = []
    for _ in range(2):
        world.pass_time(hours=9)
        unknown.settle(world.db, {"sms": Mute()}, world.clock)
        states.append(world.queued("welcome")[0].state)

    assert states == ["unknown", "expired"]


@dataclass
class Hanging:
    """A provider that cuts off some calls, and whose list hangs for 45 seconds and then says nothing."""

    world: World
    cuts: Callable[[Outgoing], bool]
    sent_at: dict[str, datetime] = field(default_factory=dict)
    looks: int = 0

    def send(self, outgoing: Outgoing) -> str:
        if self.cuts(outgoing):
            raise SendError("cut off", unknown=True)
        self.sent_at[outgoing.key] = self.world.now
        return f"SM-{outgoing.key}"

    def find(self, outgoing: Outgoing, since: datetime, taken: frozenset[str]) -> str | None:
        self.world.pass_time(seconds=45)
        self.looks += 1
        raise CannotSay("down")


def cut_off_crowd(world: World) -> Hanging:
    """Let the reminders of five be cut off, and the first looks be due."""
    for number in range(5):
        world.enrol(f"Bea Lind{number}", f"+1202555011{number}")
    world.send()
    world.now = HOUR
    world.plan()
    hanging = Hanging(world, lambda one: one.key.startswith("reminder"))
    beat(world, hanging)
    world.pass_time(minutes=2, seconds=1)
    return hanging


def beat(world: World, channel: Any) -> None:
    """Let a worker's sender do one of its short rounds."""
    sender = world.sender
    sender.channels = {**sender.channels, "sms": channel}
    deliver.send_due(sender, patient=False)


def test_looks_at_a_list_that_hangs_do_not_hold_up_a_danger_answer(world: World) -> None:
    hanging = cut_off_crowd(world)
    heard_at = world.now
    world.hear("I fell and hit my head", "+12025550112")

    beat(world, hanging)

    urgent = {key: at for key, at in hanging.sent_at.items() if key.startswith(("answer", "alert"))}
    assert set(urgent.values()) == {heard_at}
    assert hanging.looks == 1


def test_a_row_of_which_the_provider_cannot_say_is_left_alone_for_two_minutes(world: World) -> None:
    cut_off(world)
    asked = Hanging(world, lambda _: False)
    for seconds in (0, 30, 30, 60):
        world.pass_time(seconds=seconds)
        unknown.settle(world.db, {"sms": asked}, world.clock)
    assert asked.looks == 2


def test_an_urgent_unknown_is_looked_up_before_a_crowd_of_older_ones(world: World) -> None:
    cut_off_crowd(world)
    world.hear("I fell and hit my head", "+12025550112")
    beat(world, Hanging(world, lambda one: one.key.startswith("answer")))
    world.pass_time(minutes=2, seconds=1)
    with world.db.read() as tx:
        first, *others = outbox.unknown(tx, world.now, unknown.LOOK_UPS, limit=3)

    assert first.kind == "danger"
    assert {row.kind for row in others} == {"reminder"}


def test_rows_whose_look_is_not_due_yet_hide_none_that_is(world: World) -> None:
    cut_off(world)
    unknown.settle(world.db, {"sms": world.sms}, world.clock)  # the next look is three minutes away
    world.hear("I fell and hit my head")
    world.sms.errors.append(SendError("cut off", unknown=True))
    world.send()
    world.pass_time(minutes=2, seconds=1)
    with world.db.read() as tx:
        assert [row.kind for row in outbox.unknown(tx, world.now, unknown.LOOK_UPS, limit=1)] == ["alert"]
