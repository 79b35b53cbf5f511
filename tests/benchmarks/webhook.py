"""A client's text by the provider's webhook: stored, read, judged and its answer queued, beside a bare insert."""

import http.client
import os
import shutil
import threading
import time
from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from pathlib import Path
from statistics import quantiles

import uvicorn
from fastapi import FastAPI, Request
from sqlalchemy import insert
from sqlmodel import col, select

from reminders.commands.work_command import LATER as LATER_BY
from reminders.flows import deliver
from reminders.store.db import Database
from reminders.store.tables import InboundRow
from tests.benchmarks.crowd import DUE, provider_process, sqlite_crowd
from tests.benchmarks.figures import Figure, Taken, alternating, middle, timed
from tests.benchmarks.quiet import wait_for
from tests.benchmarks.sending import ours, plan_all, sender_for
from tests.chaos import processes
from tests.chaos.crowd import mobile
from tests.chaos.test_hearing import free_port
from tests.standins.forms import inbound_fields, signed_form

CALLERS = 4
A_SECOND = 100
LATER = DUE + timedelta(minutes=10)
Form = tuple[bytes, dict[str, str]]


def bare_app(url: str) -> FastAPI:
    """Return an application whose one endpoint inserts one row through the same layer."""
    app, db = FastAPI(openapi_url=None), Database(url)

    @app.get("/healthz")
    def alive() -> str:
        return "ok"

    @app.post("/sms/inbound")
    async def keep(request: Request) -> str:
        raw = await request.body()
        return await to_thread(db, raw)

    return app


async def to_thread(db: Database, raw: bytes) -> str:
    """Insert in a thread, as the service does."""
    from starlette.concurrency import run_in_threadpool

    await run_in_threadpool(insert_one, db, raw)
    return "ok"


def insert_one(db: Database, raw: bytes) -> None:
    """Insert one row and commit."""
    row = InboundRow(
        source="bare", provider_id=f"{time.monotonic_ns()}-{threading.get_ident()}", address="", text="", raw=raw,
        received_at=datetime.now(UTC), kept_at=datetime.now(UTC), handled_at=datetime.now(UTC),
    )  # fmt: skip
    with db.begin() as tx:
        tx.execute(insert(InboundRow), [row.model_dump(exclude={"id"})])


def serve_bare(url: str, log: str, port: int) -> None:
    """Serve the bare application."""
    processes.complain_to(log)
    uvicorn.run(bare_app(url), host="127.0.0.1", port=port, access_log=False, log_config=None)


def forms(port: int, numbers: range) -> list[Form]:
    """Return signed forms of clients who did their exercises."""
    url = f"http://127.0.0.1:{port}/sms/inbound"
    return [
        signed_form(url, inbound_fields(f"SM{number:032d}", mobile(number % 10_000), f"done 2x10 pain {number % 4}"))
        for number in numbers
    ]


@dataclass
class Callers:
    """Post forms over connections that stay open."""

    port: int
    waited: list[float] = field(default_factory=list)

    def post_all(self, given: Sequence[Form]) -> None:
        """Post as fast as it goes, a few at a time."""
        shares = [given[place::CALLERS] for place in range(CALLERS)]
        threads = [threading.Thread(target=self.post_share, args=(share,)) for share in shares]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()

    def post_share(self, share: Sequence[Form], times: Sequence[float] = ()) -> None:
        """Post one after the other, at the given moments where there are any; keep how long each answer took."""
        connection = http.client.HTTPConnection("127.0.0.1", self.port, timeout=60)
        for place, (body, headers) in enumerate(share):
            at = times[place] if times else time.monotonic()
            time.sleep(max(0.0, at - time.monotonic()))
            connection.request("POST", "/sms/inbound", body, headers)
            answer = connection.getresponse()
            answer.read()
            assert answer.status == 200, answer.status
            self.waited.append(time.monotonic() - at)
        connection.close()

    def post_paced(self, given: Sequence[Form], a_second: float) -> None:
        """Post at a pace, from enough callers that a slow answer holds up nobody else."""
        hands, begin = 4 * CALLERS, time.monotonic() + 0.2
        shares = [
            (given[hand::hands], [begin + number / a_second for number in range(hand, len(given), hands)])
            for hand in range(hands)
        ]
        threads = [threading.Thread(target=self.post_share, args=share) for share in shares]
        for thread in threads:
            thread.start()
        for thread in threads:
            thread.join()


def measure(place: Path, clients: int, texts: int, seconds: int, times: int) -> list[Figure]:
    """Return how fast texts are heard beside a bare insert, and how long an answer takes while the crowd is sent."""
    clock = place / "webhook-clock"
    clock.write_text(LATER.isoformat(), encoding="utf-8")
    log, port, bare_port = str(place / "web-log"), free_port(), free_port()
    with provider_process() as provider:
        ours(place, sqlite_crowd(place, clients), provider, clients)
        heard = place / "heard.db"
        shutil.copy(place / "ours.db", heard)
        waiting = sqlite_crowd(place, clients)
        url = f"sqlite:///{heard}"
        env = processes.environment(url, provider, clock, REMINDERS_PUBLIC_URL=f"http://127.0.0.1:{port}")
        servers = [
            processes.start(processes.serve, env, log, port),
            processes.start(serve_bare, url, log, bare_port),
        ]
        for one in (port, bare_port):
            wait_for(one)
        found = throughput(url, port, bare_port, texts, times)
        servers[0].kill()
        servers[0].join()
        found += while_sending(place, waiting, provider, clock, seconds)
        for server in servers:
            server.kill()
    return found


def throughput(url: str, port: int, bare_port: int, texts: int, times: int) -> list[Figure]:
    """Return texts a second, until the last of them is handled, beside bare inserts a second."""
    db = Database(url)
    Callers(port).post_all(forms(port, range(100)))
    wait_until_handled(db)
    Callers(bare_port).post_all(forms(bare_port, range(100)))
    begins = iter(range(100, 100 + texts * times, texts))

    def mine() -> Taken:
        begin = next(begins)
        given = forms(port, range(begin, begin + texts))
        return timed(lambda: (Callers(port).post_all(given), wait_until_handled(db)))

    def bare() -> Taken:
        given = forms(bare_port, range(texts))
        return timed(lambda: Callers(bare_port).post_all(given))

    one, other = alternating(mine, bare, times=times)
    db.close()
    ratios = sorted(there.wall / here.wall for here, there in zip(one, other, strict=True))
    note = f"{texts / middle(one).wall:.0f} a second beside {texts / middle(other).wall:.0f}"
    return [
        Figure(
            "a text heard, read, judged, answered, beside a bare insert", ratios[len(ratios) // 2], 0.5, 0.03, note=note
        )
    ]


def wait_until_handled(db: Database) -> None:
    """Wait until every text that was kept has been read, judged and answered."""
    waiting = select(InboundRow.id).where(col(InboundRow.handled_at).is_(None)).limit(1)
    while True:
        with db.read() as tx:
            if tx.exec(waiting).first() is None:
                return
        time.sleep(0.005)


def while_sending(place: Path, waiting: Path, provider: str, clock: Path, seconds: int) -> list[Figure]:
    """Return how long answers take at 100 a second while another process sends the crowd on the same database."""
    both = place / "both.db"
    shutil.copy(waiting, both)
    url, log, port = f"sqlite:///{both}", str(place / "web-log"), free_port()
    env = processes.environment(url, provider, clock, REMINDERS_PUBLIC_URL=f"http://127.0.0.1:{port}")
    server = processes.start(processes.serve, env, log, port)
    wait_for(port)
    sender = processes.start(send_crowd, url, provider)
    callers = Callers(port)
    callers.post_paced(forms(port, range(seconds * A_SECOND)), A_SECOND)
    was_sending = sender.is_alive()
    for process in (server, sender):
        process.kill()
        process.join()
    p99 = quantiles(callers.waited, n=100)[98] * 1000
    middle_one = quantiles(callers.waited, n=2)[0] * 1000
    note = f"half within {middle_one:.0f} ms" + ("" if was_sending else "; the crowd was sent before the end")
    work = f"99 of 100 texts at {A_SECOND} a second heard within, while the crowd is sent"
    return [Figure(work, p99, 50, 60_000, " ms", at_least=False, note=note)]


def send_crowd(url: str, provider: str) -> None:
    """Plan and send the crowd until killed, as nicely as the worker that `serve` starts beside itself."""
    os.nice(LATER_BY)
    db = Database(url)
    plan_all(db)
    deliver.send_due(sender_for(db, provider))
