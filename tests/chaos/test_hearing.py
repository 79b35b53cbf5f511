"""The web process killed at random while texts come in: what it answered 2xx is kept once, the rest is fetched."""

import http.client
import random
import socket
import threading
import time
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field
from multiprocessing.context import ForkServerProcess
from pathlib import Path

import pytest
from sqlmodel import col, select

from reminders.flows import keeping, tick
from reminders.store.db import Database
from reminders.store.tables import Alert, Client, InboundRow, Outbound, Report
from tests.chaos import processes
from tests.chaos.conftest import MEDIUM
from tests.chaos.crowd import MONDAY, WEDNESDAY, mobile, settle
from tests.chaos.provider import FileClock, LateProvider
from tests.standins.forms import inbound_fields, signed_form

Crowd = Callable[[int], str]
FORMS = [pytest.param(2, id="short"), pytest.param(200, id="long", marks=pytest.mark.long)]
WORDS = ("done 2x10 pain 1", "all, no pain", "part, pain 2", "I fell on the stairs", "done 1x8")
POSTERS = 3
PATIENCE_SECONDS = 12.0
MOST_TICKS = 15  # minutes of the clock, in which a list that cannot be read is tried again


@dataclass
class Phones:
    """Clients who text without pause; each text stands in the provider's list and is posted to the service once."""

    provider: LateProvider
    port: int
    sent: dict[str, str] = field(default_factory=dict)
    answered: set[str] = field(default_factory=set)
    lock: threading.Lock = field(default_factory=threading.Lock)
    stop: threading.Event = field(default_factory=threading.Event)

    def text(self, post: bool = True) -> None:
        """Let one client write."""
        with self.lock:
            place = len(self.sent)
            heard = self.provider.hear(mobile(place % MEDIUM), WORDS[place % len(WORDS)], post=False)
            self.sent[heard.sid] = heard.body
        if post and self.post(heard.sid, heard.sender, heard.body) // 100 == 2:
            self.answered.add(heard.sid)

    def post(self, sid: str, sender: str, body: str) -> int:
        """Post one signed form; return the status, 0 when nobody answers."""
        url = f"http://127.0.0.1:{self.port}/sms/inbound"
        data, headers = signed_form(url, inbound_fields(sid, sender, body))
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=PATIENCE_SECONDS)
        try:
            connection.request("POST", "/sms/inbound", data, headers)
            return connection.getresponse().status
        except (OSError, http.client.HTTPException):
            self.stop.wait(0.15)
            return 0
        finally:
            connection.close()

    def keep_texting(self) -> None:
        """Write until told to stop."""
        while not self.stop.is_set():
            self.text()


def free_port() -> int:
    """Return a port that nobody has."""
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


def kill_while_texting(
    start: Callable[[], ForkServerProcess], phones: Phones, kills: int, chance: random.Random
) -> None:
    """Kill the web process after some answers, again and again, and start it anew."""
    threads = [threading.Thread(target=phones.keep_texting) for _ in range(POSTERS)]
    for thread in threads:
        thread.start()
    for _ in range(kills):
        process = start()
        wanted, until = len(phones.answered) + chance.randint(1, 12), time.monotonic() + PATIENCE_SECONDS
        while len(phones.answered) < wanted and time.monotonic() < until:
            time.sleep(0.002)
        time.sleep(chance.uniform(0.0, 0.02))
        process.kill()
        process.join()
    phones.stop.set()
    for thread in threads:
        thread.join()


@pytest.mark.parametrize("kills", FORMS)
def test_every_text_is_in_the_record_once_however_often_the_web_process_is_killed(
    crowd: Crowd, tmp_path: Path, kills: int
) -> None:
    clock, log, url = FileClock(tmp_path / "clock", MONDAY), tmp_path / "log", crowd(MEDIUM)
    with LateProvider(clock, seed=kills, clock=clock) as provider:
        port = free_port()
        env = processes.environment(url, provider.url, clock.path, REMINDERS_PUBLIC_URL=f"http://127.0.0.1:{port}")
        for moment in (MONDAY, WEDNESDAY):
            clock.set(moment)
            settle(env, clock)
        clock.pass_time(900)
        phones = Phones(provider, port)
        kill_while_texting(
            lambda: processes.start(processes.serve, env, str(log), port), phones, kills, random.Random(kills)
        )
        assert len(phones.answered) >= kills
        db = Database(url)
        keeping.bring_in(db)
        check_kept(db, phones.answered)
        for _ in range(20):
            phones.text(post=False)  # while nobody serves
        clock.pass_time(600)
        with processes.working_here(env) as worker:
            for _ in range(MOST_TICKS):
                tick.run(worker, clock.now)
                clock.pass_time(60)
                if has_caught_up(db, phones):
                    break
                time.sleep(1.0)
        check_kept(db, set(phones.sent))
        check_understood(db, phones)
        db.close()
    assert "error" not in (log.read_text() if log.exists() else "")


def has_caught_up(db: Database, phones: Phones) -> bool:
    """Return whether what nobody heard has been fetched and all is handled. On a busy machine the list's pages may time
    out at first, and what a killed process was handling is held by its database session until that ends.
    """
    with db.read() as tx:
        waits = tx.exec(select(InboundRow.id).where(col(InboundRow.handled_at).is_(None))).first()
        return waits is None and set(phones.sent) <= set(tx.exec(select(InboundRow.provider_id)))


def check_kept(db: Database, sids: set[str]) -> None:
    """Check that each of these texts is in the record once."""
    with db.read() as tx:
        kept = Counter(tx.exec(select(InboundRow.provider_id)))
    assert {sid: kept[sid] for sid in sids} == dict.fromkeys(sids, 1)


def check_understood(db: Database, phones: Phones) -> None:
    """Check that each text was read once: one report of it, one alert for a client who fell, no answer twice."""
    with db.read() as tx:
        rows = {row.id: row for row in tx.exec(select(InboundRow))}
        reports = Counter(tx.exec(select(Report.inbound_id)))
        fallen = Counter(tx.exec(select(Alert.client_id).where(col(Alert.rule).contains("fall"))))
        keys = Counter(tx.exec(select(Outbound.key)))
        clients = {one.id: one for one in tx.exec(select(Client))}
    assert {row.provider_id for row in rows.values()} == set(phones.sent)
    assert not [(row.id, row.failures, row.text) for row in rows.values() if row.handled_at is None or row.failures]
    assert set(reports.values()) == {1}
    told = {rows[one].text for one in reports if one}
    assert {words for words in phones.sent.values() if words != WORDS[3]} <= told
    fell = {row.client_id for row in rows.values() if row.text == WORDS[3]}
    assert {one: fallen[one] for one in fell} == dict.fromkeys(fell, 1)
    assert set(keys.values()) == {1}
    assert fell <= set(clients)
