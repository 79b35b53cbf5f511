"""What the tests of hearing share: a day on which Ana has been reminded, and what was answered."""

from datetime import UTC, datetime
from typing import Any

from reminders.core.channel import Inbound
from reminders.flows import keeping
from reminders.store.tables import Contact, InboundRow, Outbound
from tests.clinic import ANA, World

WEDNESDAY = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)  # 08:30 in New York, an exercise day
ANSWERS = ("thanks", "ask", "said_back", "resend", "started", "stopped", "help", "danger", "stop_level", "sympathy")


def reminded(world: World, **columns: Any) -> int:
    """Enrol Ana and let her first reminder go out on Wednesday."""
    client_id = world.enrol(**columns)
    world.now = WEDNESDAY
    world.plan()
    world.send()
    world.pass_time(minutes=5)
    return client_id


def answers(world: World, address: str = ANA) -> list[Outbound]:
    """Return the answers queued to an address, oldest first."""
    return [row for row in world.queued() if row.to == address and row.kind in ANSWERS]


def templates(world: World, address: str = ANA) -> list[str]:
    """Return which texts were answered with."""
    return [row.template for row in answers(world, address)]


def heard(world: World, row_id: int) -> InboundRow:
    """Return a kept message."""
    found: InboundRow = world.rows(InboundRow, id=row_id)[0]
    return found


def inbound(text: str, provider_id: str, world: World, **fields: object) -> Inbound:
    """Return a message as it comes in."""
    values: dict[str, object] = {
        "source": "sms",
        "provider_id": provider_id,
        "address": ANA,
        "to": "+12025550199",
        "text": text,
        "raw": text.encode(),
        "received_at": world.now,
    }
    return Inbound(**{**values, **fields})  # type: ignore[arg-type]


def keep(world: World, *messages: Inbound, fetched: bool = False) -> None:
    """Keep messages without handling them."""
    with world.db.begin() as tx:
        for message in messages:
            keeping.keep(tx, message, world.now, fetched=fetched)


def contact(world: World, kind: str = "sms") -> Contact:
    found: Contact = world.rows(Contact, kind=kind)[0]
    return found


def couple(world: World) -> tuple[int, int]:
    """Enrol Ana and Hugo on one phone, with a session of each today."""
    ana = world.enrol("Ana Ruiz", holder="shared")
    hugo = reminded(world, name="Hugo Ruiz", holder="shared")
    return ana, hugo
