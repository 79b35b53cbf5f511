"""What a therapist changes in a client's program: a step by hand, a proposal answered, a version of her own, its end.

Steps by rule stand in flows/steps. Sessions keep the version that their reminder showed.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from sqlmodel import col, select

from reminders.core.library_limits import PRECAUTIONS
from reminders.core.program_json import from_json, to_json
from reminders.core.programs import Program
from reminders.core.schedule import days_text, local_date, parse_days
from reminders.errors import BadInput, Refused
from reminders.flows import audit, plan, steps
from reminders.store import clients, histories
from reminders.store.db import Tx, lock_client
from reminders.store.tables import Client, ClientProgram, Precaution, Proposal

STEPS = ("back", "up", "first")
MOST_WEEKS = 52


@dataclass(frozen=True)
class Change:
    """A version as the therapist wrote it: the program, the step she is on, her precautions and hour.

    `precautions` None: nobody was asked. `days` are all exercise days, `time` her local hour as "08:30".
    """

    program: Program
    rung: int
    precautions: tuple[str, ...] | None
    days: str
    time: str
    by_itself: bool = False


def step(tx: Tx, client: Client, direction: str, by: str, now: datetime) -> ClientProgram:
    """Move a client a step up or back, or to the first, from tomorrow on; she hears of it in her next reminder."""
    lock_client(tx, client.id or 0)
    version = version_of(tx, client)
    to_rung = {"back": version.rung - 1, "up": version.rung + 1, "first": 0}[direction]
    if direction == "up" and not steps.has_next(from_json(version.body), version.rung):
        raise Refused("This is the last step of her program; open the program to add one.")
    if to_rung < 0 or to_rung == version.rung:
        raise Refused("She is on the first step already; an easy day or another program may help.")
    steps.withdraw(tx, client.id or 0, now)
    news: dict[str, Any] = {"name": "more" if direction == "up" else "back", "values": {}}
    made = steps.move(tx, client, version, to_rung, by, f"by hand: {direction}", news, now)
    audit.record(tx, client.clinic_id, by, "dose changed", client.id, {"version": made.number, "step": to_rung}, now)
    return made


def version_of(tx: Tx, client: Client) -> ClientProgram:
    """Return a client's newest program version; raises Refused when she has none."""
    version = clients.newest_program(tx, client.id or 0)
    if version is None:
        raise Refused("This client has no program yet; give her one first.")
    return version


def answer_proposal(tx: Tx, client: Client, proposal: Proposal, is_yes: bool, by: str, now: datetime) -> None:
    """Make the proposed step, or put the proposal aside."""
    if is_yes:
        steps.approve(tx, proposal, by, now)
    else:
        steps.decline(tx, proposal, by, now)
    action = "step approved" if is_yes else "step declined"
    audit.record(tx, client.clinic_id, by, action, client.id, {"proposal": proposal.id}, now)


def change(tx: Tx, client: Client, wanted: Change, by: str, now: datetime) -> ClientProgram | None:
    """Keep the program as the therapist wrote it, with its days, hour and precautions; None when only those changed.

    Nothing is fitted behind her back: what her precautions forbid is said on the page, and she decides. Another
    program starts its weeks anew and keeps her usual until three new ratings exist.
    """
    lock_client(tx, client.id or 0)
    today = local_date(now, client.time_zone)
    set_precautions(tx, client, wanted.precautions, today)
    client.progress_by_itself = wanted.by_itself
    newest = clients.newest_program(tx, client.id or 0)
    body = to_json(wanted.program)
    made = None
    if newest is None or newest.body != body or newest.rung != wanted.rung:
        made = next_version(tx, client, newest, wanted, today, by, now)
    change_days(tx, client, wanted.days, wanted.time, now)
    plan.replan(tx, client, now)
    details = {"version": made.number if made else None, "days": wanted.days}
    audit.record(tx, client.clinic_id, by, "program changed", client.id, details, now)
    return made


def next_version(
    tx: Tx, client: Client, newest: ClientProgram | None, wanted: Change, today: date, by: str, now: datetime
) -> ClientProgram:
    """Write the next version; the weeks of another program start today."""
    same = newest if newest is not None and newest.body.get("code") == wanted.program.code else None
    made = ClientProgram(
        client_id=client.id or 0,
        number=newest.number + 1 if newest else 1,
        from_on=today,
        body=to_json(wanted.program),
        rung=wanted.rung,
        rung_since_on=same.rung_since_on if same and same.rung == wanted.rung else today,
        recheck_on=same.recheck_on if same else today + timedelta(weeks=wanted.program.recheck_weeks),
        end_on=same.end_on if same else today + timedelta(weeks=wanted.program.end_weeks),
        rechecked_on=same.rechecked_on if same else None,
        why="changed by hand" if same else "another program",
        by=by,
        created_at=now,
    )
    if newest is not None and same is None:
        keep_usual(tx, client, today)
    steps.withdraw(tx, client.id or 0, now)
    client.program_code = wanted.program.code
    if same is None or client.news.get("rung") != wanted.rung:
        client.news = {}  # the step that they tell of is taken back
    tx.add(client)
    tx.add(made)
    tx.flush()
    return made


def keep_usual(tx: Tx, client: Client, today: date) -> None:
    """Let her present usual stand until three ratings later than today exist."""
    client.kept_usual, client.kept_usual_on = histories.history_of(tx, client).usual_now, today


def set_precautions(tx: Tx, client: Client, wanted: Sequence[str] | None, today: date) -> None:
    """Make the precautions that hold the ones named: others end today, new ones begin."""
    if wanted is None:
        return
    unknown = [kind for kind in wanted if kind not in PRECAUTIONS]
    if unknown:
        raise BadInput(f"{unknown[0]!r} is no precaution.")
    held = list(
        tx.exec(select(Precaution).where(Precaution.client_id == client.id, col(Precaution.ended_on).is_(None)))
    )
    for row in held:
        if row.kind not in wanted:
            row.ended_on = today
    there = {row.kind for row in held}
    for kind in wanted:
        if kind not in there:
            tx.add(Precaution(client_id=client.id or 0, kind=kind, noted_on=today))
    client.precautions_stated = True
    tx.flush()


def change_days(tx: Tx, client: Client, days: str, time: str, now: datetime) -> None:
    """Give her other days or another hour, when they differ from those that hold."""
    wanted = days_text(parse_days(days))
    plans = clients.plans_of(tx, client.id or 0)
    newest = plans[-1] if plans else None
    if newest is None or days_text(newest.days) != wanted or newest.time != time:
        plan.change_schedule(tx, client, wanted, time, client.time_zone, now)


def extend(tx: Tx, client: Client, weeks: int, by: str, now: datetime) -> ClientProgram:
    """Let a program end some weeks later than it would."""
    if not 1 <= weeks <= MOST_WEEKS:
        raise BadInput(f"The weeks must be 1 to {MOST_WEEKS}.")
    lock_client(tx, client.id or 0)
    version = version_of(tx, client)
    today = local_date(now, client.time_zone)
    version.end_on = max(version.end_on or today, today) + timedelta(weeks=weeks)
    tx.add(version)
    tx.flush()
    plan.replan(tx, client, now)
    details = {"end_on": version.end_on.isoformat()}
    audit.record(tx, client.clinic_id, by, "program extended", client.id, details, now)
    return version


def rechecked(tx: Tx, client: Client, by: str, now: datetime) -> ClientProgram:
    """Note that she was looked at again today; her usual stands until three new ratings exist."""
    lock_client(tx, client.id or 0)
    version = version_of(tx, client)
    today = local_date(now, client.time_zone)
    version.rechecked_on = today
    version.recheck_on = today + timedelta(weeks=from_json(version.body).recheck_weeks)
    keep_usual(tx, client, today)
    tx.add(version)
    tx.add(client)
    audit.record(tx, client.clinic_id, by, "re-checked", client.id, {"version": version.number}, now)
    return version
