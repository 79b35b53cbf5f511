"""What a report means clinically: flags kept, alerts raised, holds opened, and which urgent answer she gets.

The rules themselves are pure and stand in core/rules; what else a reply leads to stands in flows/replies.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from typing import Any

from reminders.core.reading.model import Reading
from reminders.core.rules import findings_for
from reminders.core.rules.danger import CALL_NOW, concern_findings, danger_findings, grade_of, wording
from reminders.core.rules.history import Finding, History, SessionFact
from reminders.core.rules.pain import pain_up_in_the_morning
from reminders.core.schedule import client_day
from reminders.flows import alert, corrections, follow_ups
from reminders.flows import hold as holds
from reminders.store import clients, histories, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, ExerciseSession, Flag, InboundRow, Report

# A rating of a session further back than this is kept and raises nothing.
JUDGED_DAYS = 7
# Stands for the session of a rating that has none; later than any of the same day.
WITHOUT_A_SESSION = 2**62
BEREAVED_DAYS = 14  # no reason question for so long


@dataclass(frozen=True)
class Judgement:
    """What the client is to hear, and what was done.

    `kind` danger or stop_level with its template and values; None with a template is an ordinary word (a flare), None
    without one says nothing. `held`: her reminders are stopped by this report.
    """

    kind: str | None = None
    template: str | None = None
    details: dict[str, Any] = field(default_factory=dict)
    held: bool = False
    alert_ids: list[int] = field(default_factory=list)


def judge_report(
    tx: Tx, clinic: Clinic, client: Client, session: ExerciseSession | None, report: Report, now: datetime
) -> Judgement:
    """Judge one report after it was kept and its session worked out anew; in the same transaction."""
    reading = plain(reading_of(report))
    history = histories.history_of(tx, client)
    severe = history.levels.severe
    signs = danger_findings(reading, severe, session.id if session else None)
    concerns = concern_findings(reading, history, session.id if session else None)
    ratings = rating_findings(history, session, client, report, now)
    fresh = [one for one in ratings if one.rule != "severe_pain" or not has_severe(signs)]
    found = worst_first([*signs, *concerns, *fresh])
    if found or reading.get("concerns"):
        tx.flush()  # what follows names the report by its number
    keep_flags(tx, client, report.inbound_id, report.id, reading, signs, now)
    made = act(tx, clinic, client, found, report, now)
    corrections.note(tx, clinic, client, session, report, now)
    follow_ups.after(tx, clinic, client, history, session, report, now)
    other_words(tx, client, reading, now)
    return answer(clinic, client, reading, found, made, now)


def reading_of(report: Report) -> dict[str, Any]:
    """Return a report's reading, and whether severe pain stood there in words."""
    said = report.why.get("red_flags") if isinstance(report.why, dict) else None
    words = said.get("severe_pain") if isinstance(said, dict) else None
    return {**report.reading, "severe_in_words": bool(words) and not any(mark.isdigit() for mark in str(words))}


def plain(reading: Reading | Mapping[str, Any]) -> dict[str, Any]:
    """Return a reading as plain values."""
    return reading.as_dict() if isinstance(reading, Reading) else dict(reading)


def rating_findings(
    history: History, session: ExerciseSession | None, client: Client, report: Report, now: datetime
) -> list[Finding]:
    """Return what the rating that a report states means, for sessions of the last 7 days.

    A rating without a session is judged like a session's. One below what the session keeps says nothing new.
    """
    told = [report.reading.get(name) for name in ("pain", "before", "after")]
    stated = max((value for value in told if value is not None), default=None)
    today = client_day(now, client.time_zone)
    if stated is None:
        return []
    if session is None:
        history = history.with_session(SessionFact(WITHOUT_A_SESSION, today, pain=int(stated), is_extra=True))
        return without_it(findings_for(history, history.place(WITHOUT_A_SESSION)))
    if (today - session.on_date).days > JUDGED_DAYS or session.id not in [one.id for one in history.sessions]:
        return []
    place = history.place(session.id or 0)
    if report.is_settling:
        finding = pain_up_in_the_morning(history, place)
        return [finding] if finding else []
    judged = history.sessions[place].judged
    return findings_for(history, place) if judged is not None and stated >= judged else []


def without_it(findings: Sequence[Finding]) -> list[Finding]:
    """Return findings without the number that stands for a session which is not there."""
    return [
        replace(one, session_ids=tuple(known for known in one.session_ids if known != WITHOUT_A_SESSION))
        for one in findings
    ]


def has_severe(findings: Sequence[Finding]) -> bool:
    """Return whether severe pain is among the findings."""
    return any(one.rule == "severe_pain" for one in findings)


def worst_first(findings: Sequence[Finding]) -> list[Finding]:
    """Return the findings, urgent ones before the others."""
    return sorted(findings, key=lambda one: one.level != "urgent")


def keep_flags(
    tx: Tx,
    client: Client | None,
    inbound_id: int | None,
    report_id: int | None,
    reading: Mapping[str, Any],
    signs: Sequence[Finding],
    now: datetime,
) -> None:
    """Keep every danger sign and concern of a reading as a flag."""
    graded = {one.rule: str(one.because["grade"]) for one in signs}
    graded |= {concern: "today" for concern in reading.get("concerns") or () if concern not in ("bereaved", "flare")}
    for kind, grade in graded.items():
        tx.add(
            Flag(
                client_id=client.id if client else None,
                inbound_id=inbound_id,
                report_id=report_id,
                kind=kind,
                grade=grade,
                at=now,
            )
        )


def act(
    tx: Tx, clinic: Clinic, client: Client, findings: Sequence[Finding], report: Report, now: datetime
) -> dict[str, Any]:
    """Raise an alert for each finding and open the holds; return the alerts' ids and whether she is held."""
    if not findings:
        return {"alert_ids": [], "held": False}
    notes = ["one_answer"] if is_closed_to_us(tx, client) else []
    alert_ids: list[int] = []
    held = False
    for one in findings:
        entry = {
            "form": one.form,
            "values": dict(one.because),
            "report": report.id,
            "inbound": report.inbound_id,
            "notes": notes,
        }
        raised = alert.raise_alert(tx, clinic, client, one.rule, one.level, entry, now, one.session_ids)
        alert_ids.append(raised.id or 0)
        if one.rule == "severe_pain":
            add_to_pain_up(tx, clinic, client, one, entry, now)
        held = stop_her(tx, client, one, raised.id or 0, now) or held
    return {"alert_ids": alert_ids, "held": held}


def stop_her(tx: Tx, client: Client, finding: Finding, alert_id: int, now: datetime) -> bool:
    """Open a hold for a finding that asks for one; easy days instead where the therapist set so. True when held."""
    if not finding.holds:
        return False
    if finding.rule == "pain_up" and client.stop_with_easy_days:
        client.easy_until_alert_closed = True
        return False
    if client.state != "closed":
        holds.open_hold(tx, client, finding.rule, "rule", now, alert_id=alert_id)
    return True


def add_to_pain_up(
    tx: Tx, clinic: Clinic, client: Client, finding: Finding, entry: dict[str, Any], now: datetime
) -> None:
    """Add severe pain to a "pain is up" that is not closed; it opens none."""
    there = alert.not_closed(tx, clinic, client, "pain_up")
    if there is not None and finding.because.get("pain") is not None:
        values = {"on": client_day(now, client.time_zone).isoformat(), **finding.because}
        added = {**entry, "form": "severe_too", "values": values}
        alert.raise_alert(tx, clinic, client, "pain_up", there.level, added, now, finding.session_ids)


def is_closed_to_us(tx: Tx, client: Client) -> bool:
    """Return whether she opted out, so that she gets at most one answer a day."""
    contacts = clients.contacts_of(tx, client.id or 0)
    return bool(contacts) and not any(one.consent == "open" for one in contacts) and client.state != "invited"


def other_words(tx: Tx, client: Client, reading: Mapping[str, Any], now: datetime) -> None:
    """Act on concerns that open no alert: a flare, a death near her; and on her own death."""
    concerns = set(reading.get("concerns") or ())
    today = client_day(now, client.time_zone)
    if "bereaved" in concerns:
        client.bereaved_until_on = today + timedelta(days=BEREAVED_DAYS)
    if "surgery_or_hospital" in concerns:
        follow_ups.keep_usual(tx, client, today)
    if "death" in concerns:
        client.died_on = client.died_on or today
        outbox.withdraw(tx, now, "death", client_id=client.id or 0)


def answer(
    clinic: Clinic,
    client: Client,
    reading: Mapping[str, Any],
    found: list[Finding],
    made: dict[str, Any],
    now: datetime,
) -> Judgement:
    """Return which answer she gets: for her death none, then danger, stop level, other concerns, a flare."""
    done = {"held": made["held"], "alert_ids": made["alert_ids"]}
    if "death" in (reading.get("concerns") or ()):
        return Judgement(**done)
    details = danger_details(clinic, reading, found, now)
    template = wording(reading, found)
    if template is not None:
        return Judgement("danger", template, details, **done)
    stop = next((one for one in found if one.rule == "pain_up" and one.holds), None)
    if stop is not None:
        return Judgement(
            "stop_level", "stop_level", {**details, "pain": stop.because["pain"], "held": made["held"]}, **done
        )
    others = [one for one in found if one.rule not in ("pain_up", "missed", "quiet")]
    if others:
        return Judgement("stop_level", "concern", {**details, "held": made["held"]}, **done)
    if "flare" in (reading.get("concerns") or ()):
        return Judgement(None, "flare", {"sessions": client.easy_sessions_left}, **done)
    return Judgement(**done)


def danger_details(
    clinic: Clinic, reading: Mapping[str, Any], found: Sequence[Finding], now: datetime
) -> dict[str, Any]:
    """Return the values of the danger texts: whether minutes count, and whether somebody is on call while closed."""
    grades = [str(one.because.get("grade")) for one in found if one.rule != "crisis"]
    return {
        "call_now": CALL_NOW in grades,
        "on_call": bool(clinic.on_call_email) and not clients.hours_of(clinic).is_open(now),
    }


def danger_answer(clinic: Clinic, reading: Reading | Mapping[str, Any]) -> tuple[str, dict[str, Any]]:
    """Return template and values of the danger wording for an address that no client has.

    A sign that is told as older gets the wording of the other kinds: nothing more is known of a stranger.
    """
    told = plain(reading)
    found = danger_findings(told)
    grades = [grade_of(one.rule, told) for one in found if one.rule != "crisis"]
    template = wording(told, found) or "danger_today"
    return template, {"call_now": CALL_NOW in grades, "on_call": False, "stranger": True}


def judge_unattributed(
    tx: Tx,
    clinic: Clinic,
    clients_: Sequence[Client],
    inbound: InboundRow,
    reading: Reading | Mapping[str, Any],
    now: datetime,
) -> Judgement:
    """Judge danger words before it is known whose they are: alerts and holds for every client it may be.

    Each alert is one of her own clinic's; `clinic` is the one that answers.
    """
    told = plain(reading)
    alert_ids: list[int] = []
    held = False
    found: list[Finding] = []
    for client in clients_:
        history = histories.history_of(tx, client)
        signs = danger_findings(told, history.levels.severe)
        mine = worst_first([*signs, *concern_findings(told, history)])
        keep_flags(tx, client, inbound.id, None, told, signs, now)
        for one in mine:
            entry: dict[str, Any] = {"form": one.form, "values": dict(one.because), "inbound": inbound.id, "notes": []}
            hers = clients.the_clinic(tx, client.clinic_id)
            raised = alert.raise_alert(tx, hers, client, one.rule, one.level, entry, now, one_of_two=len(clients_) > 1)
            alert_ids.append(raised.id or 0)
            held = stop_her(tx, client, one, raised.id or 0, now) or held
        found += [one for one in mine if one not in found]
    if not clients_:
        return Judgement()
    return answer(clinic, clients_[0], told, found, {"held": held, "alert_ids": alert_ids}, now)
