"""Which report a correction means, looked up in the record; the rule stands in core/correcting.

Where it may mean one of two nothing is replaced: the rating is judged as it stands, and she is asked.
"""

from dataclasses import replace
from datetime import date, timedelta

from sqlalchemy import Row
from sqlalchemy import select as columns
from sqlmodel import col

from reminders.core.attribution import LATE_REPORT_DAYS, OPEN_STATES, named_day
from reminders.core.correcting import Correcting, Earlier, meant, taken_back
from reminders.core.decide import ABOUT_A_SESSION
from reminders.core.schedule import client_day
from reminders.flows import reports
from reminders.flows.lately import recent_sessions
from reminders.flows.understand import Heard
from reminders.store.db import Tx
from reminders.store.tables import Client, ExerciseSession, Report

MOST = 100  # reports looked back on; a phone that sends more by itself corrects nothing


def settle(tx: Tx, heard: Heard, client: Client) -> bool:
    """Note which report a correction puts right; True when it may be one of two, which is then to be asked."""
    reading = heard.reading
    is_plain = reading.intent in ABOUT_A_SESSION and reading.ask not in ("meaning", "who")
    if not reading.correction or not is_plain:
        return False
    today = client_day(heard.row.received_at, client.time_zone)
    found = meant(earlier(tx, heard, client), said(tx, heard, client, today))
    if found.is_torn:
        heard.reading = replace(reading, ask="meaning")
    elif found.report is not None:
        heard.corrects = tx.get(Report, found.report.id)
    return found.is_torn


def said(tx: Tx, heard: Heard, client: Client, today: date) -> Correcting:
    """Return what a correction says, and what stands open beside it."""
    reading = heard.reading
    asked, says_done = reports.session_asked_about(tx, heard.question, client), reports.says_done(reading)
    kind = heard.question.kind if heard.question is not None else ""
    answers = asked is not None and reading.when is None and reports.answers_about_it(heard, says_done)
    still_open = (one.on_date for one in recent_sessions(tx, client, today) if one.state in OPEN_STATES | {"planned"})
    return Correcting(
        today,
        states_pain=reading.pain is not None,
        tells_session=says_done or reading.completed is not None,
        taken_back=taken_back(heard.row.text),
        on=named_day(reading.when, today),
        asked_session=asked.id if asked is not None and answers and kind != "settling" else None,
        asks_morning=kind == "settling",
        open_on=max(still_open, default=None),
    )


def earlier(tx: Tx, heard: Heard, client: Client) -> list[Earlier]:
    """Return her reports of the last days that came before a message, oldest first."""
    until = heard.row.received_at
    statement = (
        columns(
            col(Report.id), col(Report.at), col(Report.session_id), col(Report.reading), col(Report.replaces),
            col(Report.by), col(Report.is_settling), col(ExerciseSession.on_date),
        )
        .outerjoin(ExerciseSession, col(ExerciseSession.id) == col(Report.session_id))
        .where(
            col(Report.client_id) == client.id,
            col(Report.at) <= until,
            col(Report.at) > until - timedelta(days=LATE_REPORT_DAYS),
        )
        .order_by(col(Report.at).desc(), col(Report.id).desc())
        .limit(MOST)
    )  # fmt: skip
    tx.flush()
    return [earlier_of(row, client) for row in reversed(tx.connection().execute(statement).all())]


def earlier_of(row: Row[tuple[object, ...]], client: Client) -> Earlier:
    """Return one report as the rule sees it."""
    given_on, pain = client_day(row.at, client.time_zone), row.reading.get("pain")
    return Earlier(
        row.id,
        row.on_date if row.on_date is not None and not row.is_settling else given_on,
        given_on,
        row.session_id,
        int(pain) if pain is not None else None,
        row.is_settling,
        row.replaces if pain is not None else None,
        "@" in row.by,
    )
