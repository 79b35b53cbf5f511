from dataclasses import dataclass
from datetime import date
from pathlib import Path

import pytest

from reminders.core.channel import Inbound
from reminders.flows import alert, deliver, erase, fetch, hold, restore, tick
from reminders.store import backup, restored
from reminders.store.db import Database
from reminders.store.journal import Journal
from reminders.store.tables import Alert, Client, Clinic, Contact, Hold, InboundRow, Outbound
from reminders.texts import Texts
from tests.clinic import ANA, World

BO = "+12025550102"


@dataclass
class Provider:
    """A list of what came in, as the SMS provider keeps it."""

    kept: list[Inbound]

    def inbound_since(self, moment: object) -> list[Inbound]:
        return self.kept


@dataclass
class Lost:
    """A clinic whose database will be lost: its world, its last backup, its journal, the provider's list."""

    world: World
    folder: Path
    provider: Provider

    def back_up(self) -> None:
        backup.write(self.world.db, self.folder / "backup", "", self.world.now)

    def bring_back(self) -> World:
        """Bring the last backup back into a database of its own; the channels remember what they were given."""
        target = Database(f"sqlite:///{self.folder / 'restored.db'}")
        backup.bring_back(target, self.folder / "backup", "", self.folder / "aside")
        return World(target, self.world.now, self.world.sms, self.world.email, self.world.inbound)

    def resume(self, world: World) -> restore.Resumed:
        lines = Journal((self.folder / "clinic.journal",)).lines()
        return restore.resume(world.sender, fetch.Fetchers(self.provider), lines, world.now)  # type: ignore[arg-type]

    def heard(self, text: str, address: str = ANA) -> None:
        """A text that came in after the backup: the lost database had it, the provider's list has it."""
        row_id = self.world.hear(text, address)
        (row,) = self.world.rows(InboundRow, id=row_id)
        self.provider.kept.append(
            Inbound("sms", row.provider_id, row.address, row.to, row.text, row.raw, row.received_at)
        )


@pytest.fixture
def lost(world: World, tmp_path: Path) -> Lost:
    world.db.journal = Journal((tmp_path / "clinic.journal",))
    return Lost(world, tmp_path, Provider([]))


def states(world: World, kind: str) -> list[str]:
    return [row.state for row in world.rows(Outbound, kind=kind)]


def test_a_restored_database_sends_nothing_before_it_is_resumed(lost: Lost) -> None:
    lost.world.enrol()
    lost.back_up()
    world = lost.bring_back()
    given = lost.world.sms.given
    world.pass_time(days=3)
    world.plan()
    world.send()

    assert lost.world.sms.given == given
    assert states(world, "welcome") == ["waiting"]


def test_it_holds_what_the_file_held_and_the_one_before_is_kept_aside(lost: Lost) -> None:
    client_id = lost.world.enrol()
    lost.back_up()
    world = lost.bring_back()
    again = lost.bring_back()

    assert world.client(client_id).name == "Ana Ruiz"
    assert (lost.folder / "aside").is_file()
    with again.db.read() as tx:
        assert restored.waits_since(tx) == lost.world.now.replace(microsecond=0)


def test_what_was_sent_after_the_backup_is_found_and_not_sent_again(lost: Lost) -> None:
    client_id = lost.world.enrol()
    lost.world.send()
    lost.back_up()
    lost.world.pass_time(days=2)
    lost.world.plan()
    lost.world.send()
    given = lost.world.sms.given
    sent = [row.key for row in lost.world.rows(Outbound, kind="reminder", state="accepted")]
    world = lost.bring_back()
    done = lost.resume(world)
    world.plan()
    world.send()

    assert len(sent) == 1
    assert done.found == 1
    assert lost.world.sms.given == given
    assert [row.key for row in world.rows(Outbound, kind="reminder", state="accepted")] == sent
    assert world.sessions(client_id)[0].state == "reminded"


def test_what_was_not_sent_before_the_loss_goes_afterwards(lost: Lost) -> None:
    lost.world.enrol()
    lost.back_up()
    lost.world.pass_time(minutes=5)
    world = lost.bring_back()
    done = lost.resume(world)
    world.send()

    assert (done.found, done.to_go) == (0, 1)
    assert states(world, "welcome") == ["accepted"]


def test_a_stop_after_the_backup_is_kept_by_the_journal_and_the_list(lost: Lost) -> None:
    client_id = lost.world.enrol()
    lost.back_up()
    lost.heard("STOP")
    world = lost.bring_back()
    done = lost.resume(world)

    assert done.journal.closed == 1
    assert world.client(client_id).state == "opted_out"
    assert [row.consent for row in world.rows(Contact, client_id=client_id)] == ["closed"]


def test_a_start_after_the_stop_leaves_the_address_as_the_file_had_it(lost: Lost) -> None:
    client_id = lost.world.enrol()
    lost.back_up()
    lost.heard("STOP")
    lost.world.pass_time(minutes=5)
    lost.heard("START")
    lost.provider.kept.clear()
    world = lost.bring_back()

    assert lost.resume(world).journal.closed == 0
    assert [row.consent for row in world.rows(Contact, client_id=client_id)] == ["open"]


def test_a_reply_after_the_backup_is_fetched_and_judged_but_not_answered_again(lost: Lost) -> None:
    client_id = lost.world.enrol()
    lost.world.pass_time(days=2)
    lost.world.plan()
    lost.world.send()
    lost.back_up()
    lost.heard("done 2x10 pain 3")
    lost.world.send()
    given = lost.world.sms.given
    world = lost.bring_back()
    done = lost.resume(world)
    world.send()

    assert (done.fetched, done.not_answered) == (1, 1)
    assert (world.sessions(client_id)[0].state, world.sessions(client_id)[0].pain) == ("done", 3)
    assert lost.world.sms.given == given


def test_a_danger_answer_that_never_went_is_sent(lost: Lost) -> None:
    lost.world.enrol()
    lost.world.send()
    lost.back_up()
    lost.heard("I fell and hit my head")
    world = lost.bring_back()
    lost.resume(world)
    before = len(lost.world.sms.sent)
    world.send()

    assert [one.to for one in lost.world.sms.sent[before:] if one.key.startswith("answer:")] == [ANA]
    assert world.rows(Hold)[0].ended_at is None


def test_a_danger_answer_that_went_is_not_sent_twice(lost: Lost) -> None:
    lost.world.enrol()
    lost.world.send()
    lost.back_up()
    lost.heard("I fell and hit my head")
    lost.world.send()
    world = lost.bring_back()
    lost.resume(world)
    before = len(lost.world.sms.sent)
    world.send()

    assert [one.to for one in lost.world.sms.sent[before:] if one.key.startswith("answer:")] == []


def test_holds_deaths_discharges_and_erasures_are_put_in_force_again(lost: Lost) -> None:
    names = ("Ana Ruiz", "Bo Lund", "Cy Moss", "Di Nash", "Ed Oaks")
    ids = [lost.world.enrol(name, f"+120255501{number:02d}") for number, name in enumerate(names, 10)]
    lost.back_up()
    with lost.world.db.begin() as tx:
        people = [tx.get(Client, number) for number in ids]
        held, freed, dead, gone, _ = [one for one in people if one is not None]
        hold.open_hold(tx, held, "pain_up", "rule", lost.world.now)
        hold.open_hold(tx, freed, "pain_up", "rule", lost.world.now)
        dead.died_on = date(2027, 3, 1)
        gone.state, gone.closed_at, gone.closed_reason = "closed", lost.world.now, "goals met"
    with lost.world.db.begin() as tx:
        freed_now = tx.get(Client, ids[1])
        assert freed_now is not None
        hold.end_hold(tx, freed_now, "ben@example.org", lost.world.now)
        erase.erase(tx, Texts(), 1, ids[4], "command", "he asked", lost.world.now)
    world = lost.bring_back()
    done = lost.resume(world).journal

    assert (done.holds, done.deaths, done.discharged, done.erased) == (1, 1, 1, 1)
    assert [row.client_id for row in world.rows(Hold)] == [ids[0]]
    assert world.client(ids[2]).died_on == date(2027, 3, 1)
    assert world.client(ids[3]).closed_reason == "goals met"
    assert "Oaks" not in world.client(ids[4]).name


def test_alert_numbers_go_on_past_the_last_that_was_used(lost: Lost) -> None:
    client_id = lost.world.enrol()
    lost.back_up()
    with lost.world.db.begin() as tx:
        client, clinic = tx.get(Client, client_id), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        for rule in ("missed", "quiet", "pain_up"):
            alert.raise_alert(tx, clinic, client, rule, "routine", {}, lost.world.now)
    world = lost.bring_back()
    lost.resume(world)
    with world.db.begin() as tx:
        client, clinic = tx.get(Client, client_id), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        alert.raise_alert(tx, clinic, client, "missed", "routine", {}, world.now)

    assert [row.number for row in world.rows(Alert)] == [4]


def test_another_client_with_the_same_number_is_not_held_in_her_place(lost: Lost) -> None:
    lost.back_up()
    lost.world.pass_time(hours=1)
    client_id = lost.world.enrol()
    with lost.world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        hold.open_hold(tx, client, "pain_up", "rule", lost.world.now)
    world = lost.bring_back()
    world.pass_time(hours=1)
    assert world.enrol("Bo Lund", BO) == client_id
    done = lost.resume(world)

    assert done.journal.strangers == 1
    assert world.rows(Hold) == []
    assert "do not hold" in " ".join(restore.said(done)) or "does not hold" in " ".join(restore.said(done))


def test_resuming_twice_changes_nothing_more(lost: Lost) -> None:
    lost.world.enrol()
    lost.back_up()
    lost.heard("STOP")
    world = lost.bring_back()
    lost.resume(world)
    kept = world.rows(Outbound)

    assert lost.resume(world).since is None
    assert world.rows(Outbound) == kept


def test_a_round_says_that_it_is_held_back(lost: Lost) -> None:
    lost.world.enrol()
    lost.back_up()
    world = lost.bring_back()
    worker = tick.Worker(world.db, world.sender, world.clock, fetch.Fetchers(), "test", world.now)
    done = tick.run(worker, world.now)
    deliver.close(worker.sender)

    assert done.sent == 0
    assert any("db resume" in sentence for sentence in done.said)
