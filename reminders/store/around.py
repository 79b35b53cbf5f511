"""What stands around a message from one person's address, asked at once so that most other looks need not be made.

Most clients have no hold, pause, open question or alert. One question, asked under the client's lock, finds which of
these there are; what the transaction adds itself is noticed as it is added. Whoever looks for rows of a kind may ask
`lacks` first; a yes is sure, a no says only that one has to look.
"""

from dataclasses import dataclass, field
from datetime import datetime
from typing import Any

from sqlalchemy import bindparam, event, exists
from sqlalchemy import select as columns
from sqlmodel import col, select

from reminders.store.db import Tx
from reminders.store.tables import Alert, Hold, InboundRow, Outbound, Pause, Precaution, Question, Report, Staff

CLIENT: Any = bindparam("client")
ADDRESS: Any = bindparam("address")
NAMED = {
    "hold": Hold,
    "pause": Pause,
    "question": Question,
    "asked": Question,
    "alert": Alert,
    "precaution": Precaution,
}
HEARD_BEFORE = (
    select(InboundRow.outcome)
    .where(
        col(InboundRow.address) == ADDRESS,
        col(InboundRow.id) < bindparam("row"),
        col(InboundRow.handled_at).is_not(None),
    )
    .order_by(col(InboundRow.received_at).desc(), col(InboundRow.id).desc())
    .limit(1)
)
LOOK = columns(
    exists(select(Hold.id).where(col(Hold.client_id) == CLIENT, col(Hold.ended_at).is_(None))).label("hold"),
    exists(select(Pause.id).where(col(Pause.client_id) == CLIENT, col(Pause.ended_at).is_(None))).label("pause"),
    exists(select(Question.id).where(col(Question.address) == ADDRESS, col(Question.closed_at).is_(None))).label(
        "phone"
    ),
    exists(select(Question.id).where(col(Question.client_id) == CLIENT, col(Question.closed_at).is_(None))).label(
        "own"
    ),
    exists(select(Question.id).where(col(Question.client_id) == CLIENT)).label("asked"),
    exists(select(Alert.id).where(col(Alert.client_id) == CLIENT, col(Alert.state) != "closed")).label("alert"),
    exists(select(Precaution.id).where(col(Precaution.client_id) == CLIENT, col(Precaution.ended_on).is_(None))).label(
        "precaution"
    ),
    exists(select(Report.id).where(col(Report.client_id) == CLIENT, col(Report.is_settling).is_(True))).label(
        "morning"
    ),
    exists(select(Outbound.id).where(col(Outbound.client_id) == CLIENT, col(Outbound.state) == "waiting")).label(
        "waiting"
    ),
    exists(select(Staff.id).where(col(Staff.mobile) == ADDRESS, col(Staff.is_active).is_(True))).label("staff"),
    exists(
        select(InboundRow.id).where(
            col(InboundRow.address) == ADDRESS, col(InboundRow.minute_from_at) > bindparam("minute")
        )
    ).label("minute"),
    HEARD_BEFORE.scalar_subquery().label("before"),
)


@dataclass
class Around:
    """What one transaction knows of a client and her address: `missing` names what there is none of."""

    client_id: int
    address: str
    before: str | None
    missing: set[str] = field(default_factory=set)


def look(tx: Tx, client_id: int, row: InboundRow, minute: datetime) -> None:
    """Ask what stands around a message of a client who alone has that address and is locked."""
    asked = {"client": client_id, "address": row.address, "minute": minute, "row": row.id}
    found = tx.connection().execute(LOOK, asked).one()
    known = Around(client_id, row.address, found.before)
    there = {**found._mapping, "question": found.phone or found.own}
    known.missing = {name for name, is_there in there.items() if not is_there} - {"before"}
    tx.info["around"] = known


def lacks(tx: Tx, what: str, client_id: int) -> bool:
    """Return whether a client surely has no row of a kind; False when that is not known."""
    known: Around | None = tx.info.get("around")
    return known is not None and known.client_id == client_id and what in known.missing


def lacks_at(tx: Tx, what: str, address: str) -> bool:
    """Return whether an address surely has no row of a kind; False when that is not known."""
    known: Around | None = tx.info.get("around")
    return known is not None and known.address == address and what in known.missing


def heard_before(tx: Tx, row: InboundRow) -> str | None:
    """Return what became of the message that came from an address before this one, None when it is the first."""
    known: Around | None = tx.info.get("around")
    if known is not None and known.address == row.address:
        return known.before
    return tx.exec(HEARD_BEFORE, params={"address": row.address, "row": row.id}).first()


def note_added(tx: Tx, *kinds: str) -> None:
    """Note that a transaction adds rows of these kinds."""
    known: Around | None = tx.info.get("around")
    if known is not None:
        known.missing.difference_update(kinds)


@event.listens_for(Tx, "after_attach")
def note_attached(tx: Any, row: Any) -> None:
    """Notice what a transaction adds by itself."""
    if "around" in tx.info:
        note_added(tx, *(name for name, kind in NAMED.items() if isinstance(row, kind)))
        if isinstance(row, Report) and row.is_settling:
            note_added(tx, "morning")
