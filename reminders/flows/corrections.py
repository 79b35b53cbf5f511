"""What a correction means for an alert that is already there: added and told; downward it ends nothing.

Upward a correction raises as a new rating would, which flows/judge does by judging the session anew.
"""

from datetime import datetime

from sqlmodel import col, select

from reminders.flows import alert, calling
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Clinic, ExerciseSession, Report

PAIN_RULES = ("pain_up", "severe_pain")


def note(
    tx: Tx, clinic: Clinic, client: Client, session: ExerciseSession | None, report: Report, now: datetime
) -> None:
    """Add a correction of a rating to the pain alerts that it bears on, and let those who have them hear of it."""
    pain = report.reading.get("pain")
    if pain is None or (report.replaces is None and "@" not in report.by):
        return
    is_apart = session is None or report.is_settling  # a morning's, or one of no session
    for one in open_pain_alerts(tx, client):
        before = told_of(one, report.replaces) if session is None or report.is_settling else told_before(one, session)
        if before is None or int(pain) >= before:
            continue
        values = {"pain": int(pain), "before": before}
        entry = {"at": now.isoformat(), "of": "any", "form": "corrected", "values": values, "report": report.id}
        alert.keep(one, {**entry, "apart": True} if is_apart else entry)
        calling.add_event(tx, one, "corrected", now, by=report.by, details=values)
        tell(tx, clinic, one, now)


def open_pain_alerts(tx: Tx, client: Client) -> list[Alert]:
    """Return a client's pain alerts that are not closed."""
    statement = select(Alert).where(
        Alert.client_id == client.id, col(Alert.rule).in_(PAIN_RULES), Alert.state != "closed"
    )
    return list(tx.exec(statement.order_by(col(Alert.id))))


def told_before(one: Alert, session: ExerciseSession) -> int | None:
    """Return the rating of a session that an alert was told last; a morning's is none of the session's."""
    if session.id not in one.session_ids:
        return None
    for entry in reversed(one.because):
        values = entry.get("values") or {}
        if entry.get("apart"):
            continue
        if entry.get("form") == "corrected" or values.get("on") in (None, session.on_date.isoformat()):
            pain = values.get("pain")
            return int(pain) if pain is not None else None
    return None


def told_of(one: Alert, report_id: int | None) -> int | None:
    """Return the rating that an alert was told by one report: a morning's, or one of no session."""
    for entry in reversed(one.because):
        if entry.get("report") == report_id:
            values = entry.get("values") or {}
            pain = values.get("morning", values.get("pain"))
            return int(pain) if pain is not None else None
    return None


def tell(tx: Tx, clinic: Clinic, one: Alert, now: datetime) -> None:
    """Tell of a correction: an urgent alert that was called, once more and at once; another with the next note."""
    if one.level == "urgent":
        calling.tell_correction(tx, clinic, one, now)
    elif one.state == "open":
        one.next_step_at = alert.next_note_at(tx, clinic, one, now)
