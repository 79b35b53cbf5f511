"""When a client's next session is, and the reminders that are due. Every active client has one planned session ahead.

`plan_next_session` writes it, `plan_due` turns those whose hour has come into waiting reminders (or into held,
paused or unsent days), `replan` starts over after a change of days, hour, zone, program, pause, hold or consent.
"""

from collections.abc import Sequence
from datetime import date, datetime, timedelta

from sqlalchemy import delete, update
from sqlmodel import col, select

from reminders.core.schedule import Plan, at_local, local_date
from reminders.errors import BadInput
from reminders.flows import say
from reminders.flows.planner import Planner, load, next_session, upcoming
from reminders.store import bulk, clients, inbox, outbox, slim
from reminders.store.db import Tx
from reminders.store.slim import SlimClient, SlimSession
from reminders.store.tables import (
    Client,
    Clinic,
    ExerciseSession,
    Outbound,
    Question,
    Report,
    Schedule,
)

LATEST_AFTER = timedelta(hours=4)  # a reminder later than this after its hour is not sent
BATCH = 200  # no write transaction holds more rows


def plan_next_session(tx: Tx, client: Client, after_on: date, now: datetime) -> ExerciseSession | None:
    """Write a client's next planned session after a local date; None when there is none to plan.

    While no address of hers is open, she is not active, or her program has ended, nothing is planned.
    """
    client_id = client.id or 0
    waiting = select(ExerciseSession).where(
        ExerciseSession.client_id == client_id,
        ExerciseSession.state == "planned",
        col(ExerciseSession.queued_at).is_(None),
        ExerciseSession.kind == "planned",
    )
    there = tx.exec(waiting).first()
    if there is not None:
        return there
    made = next_session(load(tx, [client], after_on), client, after_on)
    if made is None:
        return None
    tx.add(made)
    tx.flush()
    return made


def plan_due(tx: Tx, now: datetime, limit: int = BATCH, only: int | None = None) -> int:
    """Write the reminders of sessions whose hour has come, each client's next session too; return how many sessions.

    Call it again until it returns 0. A rerun finds nothing: the keys and the mark on the session are there. `only` is
    the id of the one session to look at.
    """
    pairs = slim.due_sessions(tx, now, inbox.rows_at_once(tx, now, limit), only)
    if not pairs:
        return 0
    planner = load(tx, [client for _, client in pairs], min(session.on_date for session, _ in pairs))
    reminders: list[bulk.Values] = []
    following: list[tuple[int, date, datetime]] = []
    queued: list[bulk.Values] = []
    gone: list[int] = []
    for session, client in pairs:
        found = upcoming(planner, client, session.on_date)
        state = state_when_due(planner, client, session, now)
        if found is not None:
            following.append((client.id, *found))
        if state == "gone":
            gone.append(session.id)
            continue
        queued.append(
            {
                "row": session.id,
                "at": now,
                "closes": closing(session.on_date, found[1] if found else None, client.time_zone),
            }
        )
        if state == "planned":
            reminders += reminder_rows(planner, client, session, now)
        else:
            not_reminded(tx, planner.clinics[client.clinic_id], session, state, now)
    tx.flush()
    bulk.mark_queued(tx, queued)
    bulk.queue(tx, reminders)
    bulk.plan_sessions(tx, following)
    take_out(tx, gone, now)
    return len(pairs)


def take_out(tx: Tx, ids: Sequence[int], now: datetime) -> None:
    """Delete sessions that will not be reminded; one with a report, a question or a message stays, as unsent.

    She may have rated the day or asked for its exercises before its hour: that is her record, and it refers to it.
    """
    if not ids:
        return
    referring = (col(Report.session_id), col(Question.session_id), col(Outbound.session_id))
    kept = {found for one in referring for found in tx.exec(select(one).where(one.in_(ids)).distinct())}
    if kept:
        settled = update(ExerciseSession).where(col(ExerciseSession.id).in_(kept))
        tx.execute(settled.values(state="unsent", queued_at=now, settled_at=now))
    tx.execute(delete(ExerciseSession).where(col(ExerciseSession.id).in_([one for one in ids if one not in kept])))


def not_reminded(tx: Tx, clinic: Clinic, due: SlimSession, state: str, now: datetime) -> None:
    """Settle a session that gets no reminder; operator or desk are told where they must act."""
    session, client = tx.get_one(ExerciseSession, due.id), tx.get_one(Client, due.client_id)
    session.state, session.settled_at = "paused" if state == "unanswered" else state, now
    if state == "unsent":
        say.tell_operator(tx, clinic, "late reminders", {}, now)
    if state == "unanswered" and not say.is_on_desk(tx, client, "never answered"):
        say.tell_desk(tx, clinic, client, "desk", "never answered", {}, now)


def state_when_due(planner: Planner, client: SlimClient, session: SlimSession, now: datetime) -> str:
    """Return what a session becomes at its hour: planned (a reminder goes), held, paused, unanswered, unsent, gone."""
    client_id = client.id
    clinic = planner.clinics[client.clinic_id]
    wanted = clients.wanted_contacts(client, planner.contacts.get(client_id, []))
    if client.state != "active" or session.on_date.isoformat() in clinic.closed_days:
        return "gone"
    if not clients.open_contacts(planner.contacts.get(client_id, [])):
        return "gone"
    if client_id in planner.held:
        return "held"
    covering = [p for p in planner.pauses.get(client_id, []) if p.from_on <= session.on_date <= p.until_on]
    if covering or (client.weekly_only and not is_first_of_week(planner.plans.get(client_id, []), session.on_date)):
        return "paused"
    if wanted and not clients.answered_contacts(client, planner.contacts.get(client_id, [])):
        return "unanswered"
    if not wanted or now > last_moment(clinic, client, session) or now >= day_end(clinic, client, session):
        return "unsent"
    return "planned"


def is_first_of_week(plans: Sequence[Plan], day: date) -> bool:
    """Return whether a date is the first exercise day of its week."""
    days = plans[-1].days if plans else ()
    return not days or day.weekday() == days[0]


def last_moment(clinic: Clinic, client: SlimClient, session: SlimSession) -> datetime:
    """Return until when a session's reminder may go: 4 hours after its hour, and inside her window."""
    return min(session.due_at + LATEST_AFTER, day_end(clinic, client, session))


def day_end(clinic: Clinic, client: SlimClient, session: SlimSession) -> datetime:
    """Return the instant at which her window of the session's day ends; nothing may begin at it."""
    window = clients.window_of(clinic, client)
    return at_local(local_date(session.due_at, client.time_zone), window[1], client.time_zone)


def closing(on_date: date, next_at: datetime | None, time_zone: str) -> datetime:
    """Return when an unanswered session closes: when the next reminder is due, or at noon of the second day after."""
    noon = at_local(on_date + timedelta(days=2), "12:00", time_zone)
    return min(noon, next_at) if next_at is not None else noon


def reminder_rows(planner: Planner, client: SlimClient, session: SlimSession, now: datetime) -> list[bulk.Values]:
    """Return a session's reminders, one for each address that her channel setting names."""
    clinic = planner.clinics[client.clinic_id]
    until = last_moment(clinic, client, session)
    return [
        bulk.message(
            kind="reminder",
            template="reminder",
            key=outbox.reminder_key(client.id, session.on_date, contact.id),
            session_id=session.id,
            due_at=session.due_at,
            expires_at=until,
            **say.frame(clinic, client, contact, now),
        )
        for contact in clients.answered_contacts(client, planner.contacts.get(client.id, []))
    ]


def replan(tx: Tx, client: Client, now: datetime) -> ExerciseSession | None:
    """Plan a client anew after a change; a date whose reminder has been claimed keeps it, and never gets two.

    A change counts from the first local date after today whose reminder has not been claimed; today's session stays
    unless she may no longer be reminded at all.
    """
    today = local_date(now, client.time_zone)
    ahead = select(ExerciseSession).where(
        ExerciseSession.client_id == client.id,
        ExerciseSession.state == "planned",
        ExerciseSession.kind == "planned",
        col(ExerciseSession.queued_at).is_(None),
    )
    stays = None
    reachable = client.state == "active" and say.is_reachable(clients.contacts_of(tx, client.id or 0))
    for session in list(tx.exec(ahead)):
        if session.on_date <= today and reachable:
            stays = session
            continue
        take_out(tx, [session.id or 0], now)
    tx.flush()
    following = stays or plan_next_session(tx, client, last_planned(tx, client, today), now)
    renew_closing(tx, client, following)
    return following


def renew_closing(tx: Tx, client: Client, following: ExerciseSession | None) -> None:
    """Let sessions that still wait for a report close by what is planned now: other days close them at another hour."""
    statement = select(ExerciseSession).where(
        ExerciseSession.client_id == client.id,
        ExerciseSession.kind == "planned",
        col(ExerciseSession.state).in_(("planned", "reminded")),
        col(ExerciseSession.queued_at).is_not(None),
    )
    for session in tx.exec(statement):
        session.closes_at = closing(session.on_date, following.due_at if following else None, client.time_zone)


def last_planned(tx: Tx, client: Client, today: date) -> date:
    """Return the date after which the next session lies: today, or the newest date that already has one."""
    statement = select(col(ExerciseSession.on_date)).where(
        ExerciseSession.client_id == client.id, ExerciseSession.kind == "planned"
    )
    newest = max(tx.exec(statement), default=today)
    return max(today, newest) if newest > today else today


def refuse_outside(clinic: Clinic, client: Client, hour: str) -> None:
    """Raise BadInput for a reminder hour outside a client's window: all her sessions would be unsent."""
    first, last = clients.window_of(clinic, client)
    if not first <= hour < last:
        raise BadInput(f"The hour {hour} is outside the window {first}-{last}; choose one inside it.")


def change_schedule(tx: Tx, client: Client, days: str, time: str, zone: str, now: datetime) -> date:
    """Give a client other days, hour or zone from tomorrow on, and plan anew; return the date from which they count.

    Raises BadInput for an hour outside her window.
    """
    refuse_outside(clients.the_clinic(tx, client.clinic_id), client, time)
    from_on = local_date(now, zone) + timedelta(days=1)
    for later in tx.exec(select(Schedule).where(Schedule.client_id == client.id, col(Schedule.from_on) >= from_on)):
        tx.delete(later)
    tx.flush()
    tx.add(Schedule(client_id=client.id or 0, from_on=from_on, days=days, time=time, time_zone=zone))
    client.time_zone = zone
    tx.add(client)
    tx.flush()
    replan(tx, client, now)
    return from_on
