"""The crowd of one minute: plan, render, hand over, record, against a bare loop that only hands over."""

import shutil
import sys
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path
from typing import Any

from sqlmodel import select
from twilio.rest import Client

from reminders.channels.sms import SmsChannel
from reminders.core.channel import Outgoing
from reminders.flows import deliver, plan
from reminders.flows.deliver import THREADS, Sender
from reminders.flows.render import Links
from reminders.memory import collect_rarely
from reminders.settings import Settings
from reminders.store.db import Database
from reminders.store.tables import Outbound
from reminders.texts import Texts
from tests.benchmarks.crowd import DUE, provider_process, sqlite_crowd
from tests.benchmarks.figures import Figure, Taken, alternating, middle, timed
from tests.standins.forms import ACCOUNT_SID, AUTH_TOKEN, SENDER

TEXTS = Texts()


def settings_for(url: str) -> Settings:
    """Return settings that text through the stand-in."""
    return Settings(
        sms="twilio",
        twilio_account_sid=ACCOUNT_SID,
        twilio_auth_tokens=(AUTH_TOKEN,),
        twilio_sender=SENDER,
        twilio_api_url=url,
        sms_per_second=0.0,
    )


def sender_for(db: Database, url: str) -> Sender:
    """Return a sender over the stand-in, without a pace."""
    channel = SmsChannel(settings_for(url))
    links = Links("http://127.0.0.1:8000", ("benchmark-secret-benchmark",))
    return Sender(db, {"sms": channel}, TEXTS, lambda: DUE, links, own_clock=True)


def plan_all(db: Database) -> int:
    """Plan until nothing more is due; return how many sessions."""
    total = 0
    while True:
        with db.begin() as tx:
            done = plan.plan_due(tx, DUE)
        total += done
        if not done:
            return total


def ours(place: Path, crowd: Path, url: str, clients: int) -> Taken:
    """Send a fresh crowd's reminders the service's way."""
    path = place / "ours.db"
    shutil.copy(crowd, path)
    db = Database(f"sqlite:///{path}")
    sender = sender_for(db, url)

    def work() -> None:
        assert plan_all(db) == clients
        assert deliver.send_due(sender).sent == clients

    taken = timed(work)
    deliver.close(sender)
    db.close()
    return taken


def texts_of(place: Path) -> list[Outgoing]:
    """Return what the service has just sent, word for word."""
    db = Database(f"sqlite:///{place / 'ours.db'}")
    with db.read() as tx:
        rows = tx.exec(select(Outbound).where(Outbound.kind == "reminder"))
        found = [Outgoing(key=row.key, to=row.to, body=row.body, row=row.id or 0, valid_seconds=14_400) for row in rows]
    db.close()
    return found


def as_shipped(url: str) -> Any:
    """Return the provider's client as its library makes it."""
    client = Client(ACCOUNT_SID, AUTH_TOKEN, environment={"TWILIO_EDGE": ""})
    client.http_client.session.trust_env = False  # no proxy to loopback
    client.api.base_url = url
    return client


def bare(texts: list[Outgoing], client: Any) -> Taken:
    """Post the same texts with a client of the provider's library and the same threads; nothing is recorded."""
    callback = "http://127.0.0.1:8000/sms/status?row=1&attempt=1"

    def post(one: Outgoing) -> str:
        made = client.messages.create(
            to=one.to, from_=SENDER, body=one.body, validity_period=one.valid_seconds, smart_encoded=False,
            status_callback=callback,
        )  # fmt: skip
        return str(made.sid)

    def work() -> None:
        with ThreadPoolExecutor(THREADS) as pool:
            assert len(list(pool.map(post, texts))) == len(texts)

    return timed(work)


def measure(place: Path, clients: int, times: int) -> list[Figure]:
    """Return how fast the service sends beside the bare loop."""
    crowd = sqlite_crowd(place, clients)
    collect_rarely()  # as every process of ours does; it helps the bare loops too
    with provider_process() as url:
        ours(place, crowd, url, clients)  # warm on both sides
        texts = texts_of(place)
        shipped, over_ours = as_shipped(url), SmsChannel(settings_for(url)).clients[0]
        mine, loop, light = alternating(
            lambda: ours(place, crowd, url, clients),
            lambda: bare(texts, shipped),
            lambda: bare(texts, over_ours),
            times=times,
        )
    name = f"{clients} due in one minute, sent and recorded"
    return [
        figure(f"{name}, beside the library as shipped", clients, mine, loop, 0.7),
        figure(f"{name}, beside the library over our own connections", clients, mine, light, None),
    ]


def figure(name: str, clients: int, mine: list[Taken], loop: list[Taken], goal: float | None) -> Figure:
    """Return the middle ratio of a bare loop's time to ours."""
    ratios = [other.wall / one.wall for one, other in zip(mine, loop, strict=True)]
    ratio = sorted(ratios)[len(ratios) // 2]
    one, other = middle(mine), middle(loop)
    note = (
        f"{clients / one.wall:.0f} a second beside {clients / other.wall:.0f}; "
        f"work {one.work / clients * 1000:.2f} ms beside {other.work / clients * 1000:.2f} ms a text"
    )
    return Figure(name, ratio, goal, 0.08, note=note)


if __name__ == "__main__":
    from tests.benchmarks.crowd import folder

    with folder() as place:
        for one in measure(place, int(sys.argv[1]), int(sys.argv[2])):
            print(one.line())
