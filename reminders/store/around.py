"""What stands around a message from one person's address, asked at once so that most other looks need not be made.

Most clients have no hold, pause, open question or alert. One question, asked under the client's lock, finds which of
these there are; what the transaction adds itself is noticed as it is added. Whoever looks for rows of a kind may ask
`lacks` first; a yes is sure, a no says only that one has to look.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, event, exists
from sqlalchemy import select as columns
from sqlalchemy.orm import aliased
from sqlmodel import col, select

from reminders.store.db import Tx
from reminders.store.tables import (
    Alert,
    Contact,
    Hold,
    InboundRow,
    Outbound,
    Pause,
    Precaution,
    Question,
    Report,
    Staff,
)

NAMED = {
    "hold": Hold,
    "pause": Pause,
    "question": Question,
    "asked": Question,
    "alert": Alert,
    "precaution": Precaution,
}
UNDER_WAY = ("waiting", "claimed", "unknown")
BEGUN = ("question", "reason", "morning")  # messages that open a question once they are accepted
Other = aliased(InboundRow)


def before(address: Any, row: Any) -> Any:
    """Return the question what became of the message that came from an address before one."""
    return (
        select(Other.outcome)
        .where(col(Other.address) == address, col(Other.id) < row, col(Other.handled_at).is_not(None))
        .order_by(col(Other.received_at).desc(), col(Other.id).desc())
        .limit(1)
    )


def marks(client: Any, address: Any, row: Any) -> list[Any]:
    """Return what is asked of a client and her address, a name each."""
    mine = {
        "hold": select(Hold.id).where(col(Hold.client_id) == client, col(Hold.ended_at).is_(None)),
        "pause": select(Pause.id).where(col(Pause.client_id) == client, col(Pause.ended_at).is_(None)),
        "phone": select(Question.id).where(col(Question.address) == address, col(Question.closed_at).is_(None)),
        "own": select(Question.id).where(col(Question.client_id) == client, col(Question.closed_at).is_(None)),
        "asked": select(Question.id).where(col(Question.client_id) == client),
        "alert": select(Alert.id).where(col(Alert.client_id) == client, col(Alert.state) != "closed"),
        "precaution": select(Precaution.id).where(
            col(Precaution.client_id) == client, col(Precaution.ended_on).is_(None)
        ),
        "morning": select(Report.id).where(col(Report.client_id) == client, col(Report.is_settling).is_(True)),
        "waiting": select(Outbound.id).where(col(Outbound.client_id) == client, col(Outbound.state) == "waiting"),
        "asking": select(Outbound.id).where(
            col(Outbound.client_id) == client, col(Outbound.kind).in_(BEGUN), col(Outbound.state).in_(UNDER_WAY)
        ),
        "staff": select(Staff.id).where(col(Staff.mobile) == address, col(Staff.is_active).is_(True)),
        "minute": select(Other.id).where(
            col(Other.address) == address, col(Other.minute_from_at) > bindparam("minute")
        ),
    }
    found = [exists(question).label(name) for name, question in mine.items()]
    return [*found, before(address, row).scalar_subquery().label("before")]


CLIENT: Any = bindparam("client")
ADDRESS: Any = bindparam("address")
ROW: Any = bindparam("row")
HEARD_BEFORE = before(ADDRESS, ROW)
LOOK = columns(*marks(CLIENT, ADDRESS, ROW))
# The same of many messages at once, each from an address that is a client's own.
LOOKS = columns(
    col(Contact.client_id).label("client"),
    col(InboundRow.address).label("address"),
    col(InboundRow.id).label("row"),
    *marks(col(Contact.client_id), col(InboundRow.address), col(InboundRow.id)),
).where(
    col(InboundRow.id).in_(bindparam("rows", expanding=True)),
    col(Contact.address) == col(InboundRow.address),
)

REPORTED = select(Report.session_id).where(col(Report.session_id).in_(bindparam("sessions", expanding=True))).distinct()


@dataclass
class Around:
    """What one transaction knows around a message, its client and address: `missing` names what there is none of."""

    row_id: int
    before: str | None
    missing: set[str] = field(default_factory=set)


@dataclass
class Known:
    """What one transaction knows, by client and by address."""

    clients: dict[int, Around] = field(default_factory=dict)
    addresses: dict[str, Around] = field(default_factory=dict)

    def learn(self, client_id: int, address: str, row_id: int, found: Any) -> None:
        """Keep what a question found."""
        there = {**found._mapping, "question": found.phone or found.own}
        missing = {name for name, is_there in there.items() if not is_there} - {"before"}
        self.clients[client_id] = self.addresses[address] = Around(row_id, found.before, missing)


def look(tx: Tx, client_id: int, row: InboundRow, minute: datetime) -> None:
    """Ask what stands around a message of a client who alone has that address and is locked."""
    known: Known = tx.info.setdefault("around", Known())
    mine = known.clients.get(client_id)
    if mine is not None and mine is known.addresses.get(row.address) and mine.row_id == row.id:
        return
    asked = {"client": client_id, "address": row.address, "minute": minute, "row": row.id}
    tx.flush()
    found = tx.connection().execute(LOOK, asked).one()
    known.learn(client_id, row.address, row.id or 0, found)


def look_at_all(tx: Tx, rows: Sequence[InboundRow], minute: datetime) -> None:
    """Ask what stands around many messages, no two of one address, all of it before the first of them is handled.

    An address that several clients have is left out, as is a client with two of these addresses.
    """
    found = tx.connection().execute(LOOKS, {"rows": [row.id for row in rows], "minute": minute}).all()
    clients, addresses = [one.client for one in found], [one.address for one in found]
    known: Known = tx.info.setdefault("around", Known())
    for one in found:
        if clients.count(one.client) == 1 and addresses.count(one.address) == 1:
            known.learn(one.client, one.address, one.row, one)


def note_unreported(tx: Tx, sessions: Mapping[int, int]) -> None:
    """Ask which of these sessions, their clients beside them, have no report yet, and note it."""
    known: Known = tx.info.setdefault("around", Known())
    reported = set(tx.connection().execute(REPORTED, {"sessions": list(sessions)}).scalars())
    for session_id, client_id in sessions.items():
        if session_id not in reported and client_id in known.clients:
            known.clients[client_id].missing.add(f"reports:{session_id}")


def lacks(tx: Tx, what: str, client_id: int) -> bool:
    """Return whether a client surely has no row of a kind; False when that is not known."""
    known: Known | None = tx.info.get("around")
    mine = known.clients.get(client_id) if known is not None else None
    return mine is not None and what in mine.missing


def lacks_at(tx: Tx, what: str, address: str) -> bool:
    """Return whether an address surely has no row of a kind; False when that is not known."""
    known: Known | None = tx.info.get("around")
    mine = known.addresses.get(address) if known is not None else None
    return mine is not None and what in mine.missing


def heard_before(tx: Tx, row: InboundRow) -> str | None:
    """Return what became of the message that came from an address before this one, None when it is the first."""
    known: Known | None = tx.info.get("around")
    mine = known.addresses.get(row.address) if known is not None else None
    if mine is not None:
        return mine.before
    found: str | None = tx.exec(HEARD_BEFORE, params={"address": row.address, "row": row.id}).first()
    return found


def note_added(tx: Tx, client_id: int | None, *kinds: str) -> None:
    """Note that a transaction adds rows of these kinds: a client's, or with None whosever they are."""
    known: Known | None = tx.info.get("around")
    if known is not None:
        mine = known.clients.get(client_id) if client_id is not None else None
        for one in [mine] if mine is not None else known.clients.values():
            one.missing.difference_update(kinds)


@event.listens_for(Tx, "after_attach")
def note_attached(tx: Any, row: Any) -> None:
    """Notice what a transaction adds by itself."""
    if "around" in tx.info:
        kinds = [name for name, kind in NAMED.items() if isinstance(row, kind)]
        if isinstance(row, Report):
            kinds += [f"reports:{row.session_id}", *(["morning"] if row.is_settling else [])]
        if kinds:
            note_added(tx, row.client_id, *kinds)
