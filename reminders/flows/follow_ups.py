"""What a rating leads to below an alert: an easy day, the morning question, where it hurts, the next look at the dose.

Only what is remembered on the client's row or asked of her belongs here; alerts are raised in flows/judge.
"""

from datetime import date, datetime, timedelta

from reminders.core.rules.history import History
from reminders.core.rules.pain import asks_for_an_easy_day, asks_this_morning, asks_where
from reminders.core.schedule import client_day
from reminders.flows import easy_day, inquire, review_at
from reminders.flows import hold as holds
from reminders.store import histories
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, ExerciseSession, Report


def after(
    tx: Tx,
    clinic: Clinic,
    client: Client,
    history: History,
    session: ExerciseSession | None,
    report: Report,
    now: datetime,
) -> None:
    """Set what follows a report: easy days, the next morning question, the question where, the next review."""
    today = client_day(now, client.time_zone)
    if "flare" in (report.reading.get("concerns") or ()):
        client.easy_sessions_left = max(client.easy_sessions_left, history.levels.flare_sessions)
    client.review_at = review_at.sooner(client, today + timedelta(days=1))
    if session is None or session.id not in [one.id for one in history.sessions]:
        return
    place = history.place(session.id or 0)
    is_recent = (today - session.on_date).days <= history.levels.morning_most
    if holds.is_held(tx, client.id or 0):
        return  # the first session after a hold is an easy day anyway, and nothing is asked meanwhile
    if not report.is_settling:
        easy_day.after_rating(client, session.id or 0, is_recent and asks_for_an_easy_day(history, place))
    set_morning(client, history, place, today)
    # The morning question comes first: a week has room for few texts.
    is_due = is_recent and client.morning_session_id is None
    if is_due and asks_where(history, place, asked_on(tx, client), today):
        inquire.begin(tx, clinic, client, "question", "where", now, session_id=session.id, after=timedelta(minutes=10))


def set_morning(client: Client, history: History, place: int, today: date) -> None:
    """Remember when the morning question about a session is due next, if it is."""
    session = history.sessions[place]
    for day in (today, today + timedelta(days=1)):
        if asks_this_morning(history, place, day):
            client.morning_on, client.morning_session_id = day, session.id
            return
    if client.morning_session_id == session.id:
        client.morning_on, client.morning_session_id = None, None


def asked_on(tx: Tx, client: Client) -> date | None:
    """Return her local date on which she was last asked where it hurts."""
    return inquire.last_asked_on(tx, client, "where")


def keep_usual(tx: Tx, client: Client, on: date) -> None:
    """Let her usual of now stand until three ratings later than a day: after a re-check, surgery or a new program."""
    client.kept_usual, client.kept_usual_on = histories.history_of(tx, client).usual_now, on
