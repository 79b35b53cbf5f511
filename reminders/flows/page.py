"""What a client sends from her own page for one session: kept raw, read and judged at once, answered on the next page.

The page itself is web/client_page; how a report is kept and judged is the same as for a text.
"""

import json
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from reminders.core.channel import Inbound
from reminders.core.intake import clean
from reminders.core.reading import read_reply
from reminders.flows import consent, keeping, receive, say
from reminders.flows.understand import Heard, Part
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession, InboundRow

MOST_LETTERS = 4_000
URGENT = ("danger", "stop_level")


@dataclass(frozen=True)
class PageAnswer:
    """What the page that follows says: what stands recorded, and the danger or stop-level answer when there is one."""

    recorded: dict[str, Any]
    kind: str = ""
    template: str = ""
    details: dict[str, Any] | None = None


def submit(
    tx: Tx, session: ExerciseSession, done: str, pain: int | None, words: str, submission: str, now: datetime
) -> PageAnswer:
    """Keep and judge one submission: `done` is `all`, `some`, `no` or empty, `pain` 0-10 or None.

    `submission` names it, so that the same one sent twice counts once; another one is a correction.
    """
    client = tx.get(Client, session.client_id)
    assert client is not None
    own = clients.contacts_of(tx, client.id or 0)
    wanted = clients.wanted_contacts(client, own) or own
    text = clean(words)[:MOST_LETTERS]
    fields = {"done": done, "pain": pain, "words": text}
    inbound = Inbound(
        source="page",
        provider_id=f"{session.id}:{submission}",
        address=wanted[0].address if wanted else "",
        to="",
        text=text,
        raw=json.dumps(fields).encode(),
        received_at=now,
        answers=(f"session:{session.id}",),
    )
    row_id = keeping.keep(tx, inbound, now)
    if row_id is None:
        return PageAnswer(recorded(session))
    row = tx.get(InboundRow, row_id)
    assert row is not None
    heard = receive.handle_row(tx, row, now)
    tx.refresh(session)
    if heard is None:
        return PageAnswer(recorded(session))
    act_on_words(tx, heard, client)
    return answer(session, heard.parts)


def recorded(session: ExerciseSession) -> dict[str, Any]:
    """Return what stands recorded for a session."""
    return {"completed": session.completed, "sets": session.sets, "reps": session.reps, "pain": session.pain}


def answer(session: ExerciseSession, parts: list[Part]) -> PageAnswer:
    """Return the answer with the urgent part, when there is one."""
    urgent = next((part for part in parts if part.kind in URGENT), None)
    if urgent is None:
        return PageAnswer(recorded(session))
    return PageAnswer(recorded(session), urgent.kind, urgent.text, urgent.details)


def act_on_words(tx: Tx, heard: Heard, client: Client) -> None:
    """Act on words that say more than the boxes: an opt-out is honoured, the rest goes to the clinic's inbox."""
    text = heard.row.text
    if not text.strip():
        return
    said = read_reply(text, client.language, (), None, client.holder)
    if said.intent == "opt_out":
        consent.opt_out(tx, heard)
    elif said.intent not in ("report", "chat"):
        kind = said.intent if said.intent in ("question", "reschedule") else "written"
        say.tell_desk(tx, heard.clinic, client, kind, text, {}, heard.now, inbound_id=heard.row.id)
