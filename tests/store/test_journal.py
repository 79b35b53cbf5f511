import json
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from sqlmodel import select

from reminders.flows import alert, hold
from reminders.store.journal import Journal
from reminders.store.tables import Client, Clinic, ConsentEvent
from tests.clinic import ANA, World


@pytest.fixture
def kept(world: World, tmp_path: Path) -> Path:
    """The journal's file; the world's database writes it on."""
    path = tmp_path / "clinic.journal"
    world.db.journal = Journal((path,))
    return path


def lines(path: Path) -> list[dict[str, Any]]:
    return [json.loads(line) for line in path.read_text().splitlines()] if path.exists() else []


def whats(path: Path) -> list[str]:
    return [line["what"] for line in lines(path)]


def test_a_stop_by_text_is_in_the_journal_without_the_number(world: World, kept: Path) -> None:
    world.enrol()
    world.hear("STOP")

    assert whats(kept) == ["opened", "closed"]
    assert ANA not in kept.read_text()
    assert ANA.removeprefix("+1") not in kept.read_text()


def test_a_hold_its_end_and_an_alerts_number_are_in_the_journal(world: World, kept: Path) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        client, clinic = tx.get(Client, client_id), tx.get(Clinic, 1)
        assert client is not None
        assert clinic is not None
        raised = alert.raise_alert(tx, clinic, client, "severe_pain", "urgent", {"words": "9"}, world.now)
        hold.open_hold(tx, client, "severe_pain", "rule", world.now, alert_id=raised.id)
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        hold.end_hold(tx, client, "ben@example.org", world.now)

    assert whats(kept) == ["opened", "hold", "alert", "hold ended"]
    assert lines(kept)[1]["client"] == client_id
    assert lines(kept)[2]["number"] == 1


def test_a_death_and_a_discharge_are_in_the_journal(world: World, kept: Path) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        client.died_on = date(2027, 3, 1)
        client.state, client.closed_at, client.closed_reason = "closed", world.now, "died"

    assert whats(kept) == ["opened", "death", "discharge"]


def test_what_changes_nothing_of_these_writes_no_line(world: World, kept: Path) -> None:
    client_id = world.enrol()
    before = kept.read_text()
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        client.chart_id = "C-17"

    assert kept.read_text() == before


def test_what_was_rolled_back_may_be_in_the_journal_but_never_the_reverse(world: World, kept: Path) -> None:
    """The line comes first: a crash before the commit closes somebody for nothing, which is the safe side."""
    world.enrol()

    class Broken(Journal):
        def keep(self, tx: Any, seen: Any) -> None:
            super().keep(tx, seen)
            raise RuntimeError("the machine went down")

    world.db.journal = Broken((kept,))
    with pytest.raises(RuntimeError), world.db.begin() as tx:
        tx.add(
            ConsentEvent(clinic_id=1, address=ANA, kind="sms", change="closed", how="STOP", by="client", at=world.now)
        )

    assert whats(kept)[-1] == "closed"
    with world.db.read() as tx:
        assert [one.change for one in tx.exec(select(ConsentEvent))] == ["given"]


def test_a_file_that_cannot_be_written_does_not_lose_the_other_nor_the_stop(world: World, tmp_path: Path) -> None:
    (tmp_path / "taken.journal").mkdir()
    world.db.journal = Journal((tmp_path / "taken.journal", tmp_path / "good.journal"))
    world.enrol()
    world.hear("STOP")

    assert whats(tmp_path / "good.journal") == ["opened", "closed"]
    with world.db.read() as tx:
        assert [one.change for one in tx.exec(select(ConsentEvent))][-1] in ("withdrawn", "closed")


def test_a_line_that_a_crash_cut_short_is_left_out_and_doubled_lines_count_once(tmp_path: Path) -> None:
    whole = '{"what":"closed","address":"hash:1","kind":"sms","at":null,"client":null}\n'
    (tmp_path / "a").write_text(whole + '{"what":"hold","cli')
    (tmp_path / "b").write_text(whole)

    assert [line["what"] for line in Journal((tmp_path / "a", tmp_path / "b", tmp_path / "none")).lines()] == ["closed"]


def line(what: str, at: str) -> str:
    return json.dumps({"what": what, "address": "hash:1", "at": f"2027-03-01T{at}:00Z", "client": None}) + "\n"


FIRST, SECOND, THIRD = line("closed", "10:00"), line("opened", "10:10"), line("closed", "10:20")
FOURTH = line("opened", "10:30")
EARLIER = line("closed", "09:55")  # written last, after a clock that was fast had been set back
FILES: dict[str, tuple[list[str], list[str], list[str]]] = {
    "one lacks a line in the middle": ([FIRST, THIRD], [FIRST, SECOND, THIRD], [FIRST, SECOND, THIRD]),
    "the other lacks it": ([FIRST, SECOND, THIRD], [FIRST, THIRD], [FIRST, SECOND, THIRD]),
    "each lacks one": ([FIRST, THIRD], [FIRST, SECOND], [FIRST, SECOND, THIRD]),
    "each lacks one, the other way": ([SECOND, FOURTH], [FIRST, THIRD], [FIRST, SECOND, THIRD, FOURTH]),
    "one begins late": ([SECOND, THIRD], [FIRST, SECOND, THIRD], [FIRST, SECOND, THIRD]),
    "a clock was set back": ([SECOND, EARLIER], [FIRST, SECOND, EARLIER], [FIRST, SECOND, EARLIER]),
    "the same twice": ([FIRST, SECOND, FIRST], [FIRST, SECOND, FIRST], [FIRST, SECOND, FIRST]),
    "one is empty": ([], [FIRST, SECOND], [FIRST, SECOND]),
}


@pytest.mark.parametrize(("one", "other", "whole"), FILES.values(), ids=FILES.keys())
def test_lines_stand_in_the_order_in_which_they_were_written_though_a_file_lacks_some(
    tmp_path: Path, one: list[str], other: list[str], whole: list[str]
) -> None:
    (tmp_path / "a").write_text("".join(one))
    (tmp_path / "b").write_text("".join(other))

    assert Journal((tmp_path / "a", tmp_path / "b")).lines() == [json.loads(text) for text in whole]


def test_a_cut_line_does_not_spoil_the_next(world: World, kept: Path) -> None:
    kept.write_text('{"what":"hold","cli')
    world.enrol()

    assert [line["what"] for line in Journal((kept,)).lines()] == ["opened"]


def test_the_journal_is_for_its_owner_alone(world: World, kept: Path) -> None:
    world.enrol()

    assert kept.stat().st_mode & 0o777 == 0o600
