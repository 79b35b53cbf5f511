"""What time alone brings about: sessions that close as missed, pauses that end, holds that last, answers that hang.

The rules of silence are pure and stand in core/rules/missed.py; what a review of one client does, in flows/progress.
"""

from collections.abc import Sequence
from datetime import date, datetime, timedelta

from sqlalchemy import bindparam
from sqlmodel import col, select

from reminders.core.rules.history import CLOSED_STATES
from reminders.core.rules.missed import Silence, missed_running
from reminders.core.schedule import client_day, local_date
from reminders.flows import alert, inquire, pause, review_at, watch
from reminders.store import around, clients, histories
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, ExerciseSession, Flag, Hold, Outbound, Pause

BATCH = 200
# No reason question so soon after one of these words.
HEAVY_WORDS = ("crisis", "surgery_or_hospital", "death")
QUIET_RULES = ("missed", "quiet")
QUIET_ALERTS = select(Alert).where(
    col(Alert.client_id) == bindparam("client"), col(Alert.rule).in_(QUIET_RULES), col(Alert.state) != "closed"
)


def close_sessions(tx: Tx, now: datetime, limit: int = BATCH) -> int:
    """Close sessions that nobody reported in time as missed, and those never reminded as unsent; return how many."""
    statement = (
        select(ExerciseSession)
        .where(ExerciseSession.state == "reminded", col(ExerciseSession.closes_at) <= now)
        .order_by(col(ExerciseSession.closes_at), col(ExerciseSession.id))
        .limit(limit)
        .with_for_update(skip_locked=True)
    )
    over = list(tx.exec(statement))
    for session in over:
        session.state, session.settled_at = "missed", now
    unsent = close_unsent(tx, now, limit)
    tx.flush()
    after_missing(tx, [session.client_id for session in over], now)
    return len(over) + unsent


def close_unsent(tx: Tx, now: datetime, limit: int) -> int:
    """Make sessions unsent whose reminders all came to nothing before the day was over."""
    alive = select(Outbound.id).where(
        Outbound.session_id == ExerciseSession.id,
        Outbound.kind == "reminder",
        col(Outbound.state).in_(around.UNDER_WAY),
    )
    statement = select(ExerciseSession).where(
        ExerciseSession.state == "planned",
        col(ExerciseSession.queued_at).is_not(None),
        col(ExerciseSession.closes_at) <= now,
        ~alive.exists(),
    )
    rows = list(tx.exec(statement.limit(limit)))
    for session in rows:
        session.state, session.settled_at = "unsent", now
    return len(rows)


def after_missing(tx: Tx, client_ids: Sequence[int], now: datetime) -> None:
    """Look at clients who missed a session: three running raise an alert; each is reviewed soon."""
    if not client_ids:
        return
    suspects = set(missed_lately(tx, client_ids, now))
    for client in tx.exec(select(Client).where(col(Client.id).in_(set(client_ids))).order_by(col(Client.id))):
        client.review_at = review_at.sooner(client, local_date(now, client.time_zone))
        if client.id in suspects:
            judge_silence(tx, client, now)


def missed_lately(tx: Tx, client_ids: Sequence[int], now: datetime) -> list[int]:
    """Return the clients whose last two closed sessions were missed: few, so that the rest costs one question."""
    statement = (
        select(ExerciseSession.client_id, ExerciseSession.state)
        .where(
            col(ExerciseSession.client_id).in_(set(client_ids)),
            ExerciseSession.kind == "planned",
            col(ExerciseSession.state).in_(CLOSED_STATES),
            col(ExerciseSession.on_date) >= (now - timedelta(days=60)).date(),
        )
        .order_by(col(ExerciseSession.on_date))
    )
    states: dict[int, list[str]] = {}
    for client_id, state in tx.exec(statement):
        states.setdefault(client_id, []).append(state)
    return [client_id for client_id, found in states.items() if found[-2:] == ["missed", "missed"]]


def judge_silence(tx: Tx, client: Client, now: datetime) -> None:
    """Raise the missed alert when its rule fires, and ask what gets in the way unless something heavy was said."""
    if not any(contact.confirmed_at for contact in clients.contacts_of(tx, client.id or 0)):
        return  # nobody ever answered from there: the desk is told, when it is stopped
    finding = missed_running(histories.history_of(tx, client), silence_of(tx, client, "missed", now))
    if finding is None:
        return
    clinic = clients.the_clinic(tx, client.clinic_id)
    entry = {"form": finding.form, "values": dict(finding.because)}
    alert.raise_alert(tx, clinic, client, finding.rule, finding.level, entry, now, finding.session_ids)
    if may_ask_why(tx, client, now):
        inquire.begin(tx, clinic, client, "reason", "reason", now)


def may_ask_why(tx: Tx, client: Client, now: datetime) -> bool:
    """Return whether she may be asked for a reason: no death, hospital or crisis word within 14 days."""
    today = local_date(now, client.time_zone)
    if client.bereaved_until_on is not None and today <= client.bereaved_until_on:
        return False
    levels = histories.history_of(tx, client).levels
    since = now - timedelta(days=levels.reason_quiet_days)
    statement = select(Flag.id).where(
        Flag.client_id == client.id, col(Flag.kind).in_(HEAVY_WORDS), col(Flag.at) >= since
    )
    return tx.exec(statement.limit(1)).first() is None


def silence_of(tx: Tx, client: Client, rule: str, now: datetime) -> Silence:
    """Return what the rules of silence need of a client."""
    zone = client.time_zone
    last = tx.exec(
        select(Alert.opened_at)
        .where(Alert.client_id == client.id, Alert.rule == rule)
        .order_by(col(Alert.opened_at).desc())
        .limit(1)
    ).first()
    return Silence(
        today=local_date(now, zone),
        since_on=counts_from(tx, client, now),
        heard_on=client_day(client.last_heard_at, zone) if client.last_heard_at else None,
        alerted_on=local_date(last, zone) if last else None,
    )


def counts_from(tx: Tx, client: Client, now: datetime) -> date:
    """Return from which local date silence counts: she became active, or her last pause or hold ended."""
    zone = client.time_zone
    today = local_date(now, zone)
    first = client.active_on or today
    for row in tx.exec(select(Pause).where(Pause.client_id == client.id)):
        ended = local_date(row.ended_at, zone) if row.ended_at else row.until_on + timedelta(days=1)
        first = max(first, min(ended, today)) if row.from_on <= today else first
    for hold in tx.exec(select(Hold).where(Hold.client_id == client.id)):
        first = max(first, local_date(hold.ended_at, zone) if hold.ended_at else today)
    return first


def report_arrived(tx: Tx, client: Client, session: ExerciseSession, now: datetime) -> None:
    """Let a report close missed and quiet alerts, and end what silence had brought: weekly reminders, the pause."""
    if not around.lacks(tx, "alert", client.id or 0):
        for one in tx.exec(QUIET_ALERTS, params={"client": client.id}):
            alert.close_by_report(tx, one, now)
    if client.weekly_only:
        client.weekly_only = False
    there = pause.open_pause(tx, client.id or 0, local_date(now, client.time_zone))
    if there is not None and there.reason == "quiet":
        pause.end(tx, client, "report", now)


def run(tx: Tx, now: datetime) -> int:
    """Do what lasts too long; return how much was done, 0 when nothing is left."""
    return watch.run(tx, now)
