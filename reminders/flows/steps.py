"""Dose steps: proposed, approved, declined, made by themselves, and back after an absence. One proposal a client.

When the record speaks for a step is pure and stands in core/rules/progress.py; the doses in the program itself.
"""

from datetime import datetime, timedelta
from typing import Any

from sqlmodel import col, select

from reminders.core.dose import LARGEST_LOAD_STEP_PERCENT, load_step_percent, raises
from reminders.core.library_limits import SPINE
from reminders.core.program_json import from_json
from reminders.core.programs import Program, ProgramItem
from reminders.core.rules.progress import Step, after_absence
from reminders.core.schedule import local_date
from reminders.errors import Refused
from reminders.flows import explain
from reminders.store import clients, histories
from reminders.store.db import Tx, lock_client
from reminders.store.tables import Client, ClientProgram, Pause, Precaution, Proposal

ILL = ("sick", "ill", "illness")
NEVER_BY_ITSELF = frozenset({"load", "less hand support"})


def items_of(program: Program) -> list[ProgramItem]:
    """Return every exercise of a program's lists."""
    return [item for day_list in program.lists for item in day_list.items]


def has_next(program: Program, rung: int) -> bool:
    """Return whether any exercise has a rung above this one."""
    return any(rung + 1 < len(item.ladder.rungs) for item in items_of(program))


def least_days(program: Program, rung: int) -> int:
    """Return the longest stay that an exercise asks on this rung, in days."""
    return max((item.ladder.at(rung).days for item in items_of(program)), default=14)


def asked_reps(program: Program, rung: int) -> int | None:
    """Return the fewest reps that an exercise asks on this rung, None when all count seconds."""
    reps = [item.ladder.at(rung).dose.reps for item in items_of(program)]
    return min((one for one in reps if one is not None), default=None)


def raised_by(program: Program, rung: int, to_rung: int) -> frozenset[str]:
    """Return what a step asks more of, over all exercises: volume, load, less hand support."""
    more: set[str] = set()
    for item in items_of(program):
        more |= raises(item.ladder.at(rung).dose, item.ladder.at(to_rung).dose)
    return frozenset(more)


def large_loads(program: Program, rung: int, to_rung: int) -> list[str]:
    """Return the exercises whose load a step raises by more than 10 %."""
    found = []
    for item in items_of(program):
        percent = load_step_percent(item.ladder.at(rung).dose.load, item.ladder.at(to_rung).dose.load)
        if percent is not None and percent > LARGEST_LOAD_STEP_PERCENT + 1e-6:
            found.append(item.exercise)
    return found


def open_proposal(tx: Tx, client_id: int) -> Proposal | None:
    """Return the proposal that waits for the therapist."""
    return tx.exec(select(Proposal).where(Proposal.client_id == client_id, Proposal.state == "open")).first()


def propose(tx: Tx, client: Client, version: ClientProgram, step: Step, now: datetime) -> Proposal:
    """Write a proposal for all exercises together; make the step at once where the therapist set "by itself"."""
    program = from_json(version.body)
    because = [explain.reason(name, values) for name, values in step.reasons]
    large = large_loads(program, version.rung, step.to_rung)
    because += [explain.reason("load_over", {"exercise": code, "most": LARGEST_LOAD_STEP_PERCENT}) for code in large]
    proposal = Proposal(
        client_id=client.id or 0,
        made_at=now,
        direction=step.direction,
        to_rung=step.to_rung,
        because=because,
        news={"name": step.direction, "values": dict(step.reasons[0][1])},
    )
    tx.add(proposal)
    tx.flush()
    if may_go_by_itself(tx, client, program, version.rung, step):
        settle(tx, proposal, client, version, "by itself", now)
    return proposal


def may_go_by_itself(tx: Tx, client: Client, program: Program, rung: int, step: Step) -> bool:
    """Return whether a step needs no button: set so for her, no load, no less hand support, no spinal fracture."""
    if not client.progress_by_itself or raised_by(program, rung, step.to_rung) & NEVER_BY_ITSELF:
        return False
    fractures = select(Precaution.id).where(
        Precaution.client_id == client.id, Precaution.kind == SPINE, col(Precaution.ended_on).is_(None)
    )
    return tx.exec(fractures.limit(1)).first() is None


def approve(tx: Tx, proposal: Proposal, by: str, now: datetime) -> ClientProgram:
    """Make the proposed step from tomorrow on; the client hears what changes and why in her next reminder.

    Raises Refused for a step up while she is held: what speaks for it is older than what stopped her.
    """
    client = tx.get(Client, proposal.client_id)
    version = clients.newest_program(tx, proposal.client_id)
    if proposal.state != "open" or client is None or version is None:
        raise Refused("This proposal is settled already.")
    if proposal.direction == "up" and clients.open_hold(tx, proposal.client_id) is not None:
        raise Refused("She is on hold: clear the hold before her dose goes up.")
    return settle(tx, proposal, client, version, by, now)


def settle(
    tx: Tx,
    proposal: Proposal,
    client: Client,
    version: ClientProgram,
    by: str,
    now: datetime,
) -> ClientProgram:
    """Write the new program version of an approved proposal."""
    proposal.state, proposal.settled_at, proposal.settled_by = "approved", now, by
    return move(tx, client, version, proposal.to_rung, by, "; ".join(proposal.because), proposal.news, now)


def decline(tx: Tx, proposal: Proposal, by: str, now: datetime) -> None:
    """Let a proposal go; the dose stays as it is."""
    if proposal.state != "open":
        raise Refused("This proposal is settled already.")
    proposal.state, proposal.settled_at, proposal.settled_by = "declined", now, by


def withdraw(tx: Tx, client_id: int, now: datetime) -> None:
    """Take back a proposal that no longer fits."""
    there = open_proposal(tx, client_id)
    if there is not None:
        there.state, there.settled_at, there.settled_by = "withdrawn", now, "rule"


def move(
    tx: Tx,
    client: Client,
    version: ClientProgram,
    to_rung: int,
    by: str,
    why: str,
    news: dict[str, Any],
    now: datetime,
) -> ClientProgram:
    """Write a program version on another rung, from her tomorrow on; re-check and end stay.

    The first reminder of that version, and none before it, tells her the `news`.
    """
    lock_client(tx, client.id or 0)
    from_on = max(local_date(now, client.time_zone) + timedelta(days=1), version.from_on)
    values = version.model_dump(exclude={"id"})
    values |= {"number": version.number + 1, "from_on": from_on, "rung": to_rung, "rung_since_on": from_on}
    made = ClientProgram(**{**values, "why": why, "by": by, "created_at": now})
    tx.add(made)
    client.news = {**news, "from_on": from_on.isoformat(), "rung": to_rung}
    tx.flush()
    return made


def after_pause(tx: Tx, client: Client, pause: Pause, now: datetime) -> bool:
    """Step back after an absence of two weeks or an illness; False when she was on the first rung or it was done."""
    version = clients.newest_program(tx, client.id or 0)
    if version is None or version.rung == 0 or version.rung_since_on > pause.from_on:
        return False
    back_on = local_date(pause.ended_at or now, client.time_zone)
    days = (min(pause.until_on + timedelta(days=1), back_on) - pause.from_on).days
    levels = histories.history_of(tx, client).levels
    to_rung = after_absence(version.rung, days, pause.reason in ILL, levels)
    if to_rung == version.rung:
        return False
    withdraw(tx, client.id or 0, now)
    move(tx, client, version, to_rung, "rule", f"away for {days} days", {"name": "absence", "values": {}}, now)
    return True
