"""The review of one client, some days after her sessions: silence, dose, and the questions asked now and then.

Only what is due is looked at; each client carries when that is. Steps themselves stand in flows/steps.
"""

from datetime import date, datetime, timedelta

from sqlmodel import col, select

from reminders.core.program_json import from_json
from reminders.core.programs import Program
from reminders.core.rules.history import History
from reminders.core.rules.missed import quiet, silence_step
from reminders.core.rules.progress import StepFacts, step_back, step_up
from reminders.core.schedule import at_local, client_day, local_date, week_of
from reminders.flows import alert, inquire, pause, plan, review_at, say, steps, sweep
from reminders.store import clients, histories
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, ClientProgram, Clinic, ClinicNote
from reminders.texts_exercises import exercise_words

BATCH = 50
REVIEW_DAYS = 7
EFFORT_AGAIN_DAYS = 14  # the effort question is not asked again sooner
EFFORT_WAIT_DAYS = 2  # an answer is waited for so long before the step is proposed without one
DAYS_QUESTION = 7
ENDS_TOLD_DAYS = 14


def run(tx: Tx, now: datetime, limit: int = BATCH) -> int:
    """Review the clients whose time has come; return how many, 0 when nothing is left."""
    statement = (
        select(Client)
        .where(col(Client.review_at) <= now)
        .order_by(col(Client.review_at), col(Client.id))
        .limit(limit)
        .with_for_update(skip_locked=True)
    )
    due = list(tx.exec(statement))
    for client in due:
        review(tx, client, now)
    tx.flush()
    return len(due)


def review(tx: Tx, client: Client, now: datetime) -> None:
    """Look at one client, and set when she is looked at next."""
    today = local_date(now, client.time_zone)
    if client.state != "active" or client.died_on is not None:
        client.review_at = None
        return
    client.review_at = review_at.review_on(client, today + timedelta(days=REVIEW_DAYS))
    version = clients.newest_program(tx, client.id or 0)
    if clients.open_hold(tx, client.id or 0) is not None or version is None:
        return
    if clients.pause_on(tx, client.id or 0, today) is not None:
        return
    clinic = clients.the_clinic(tx, client.clinic_id)
    history = histories.history_of(tx, client)
    if look_at_silence(tx, clinic, client, history, now):
        return
    program = from_json(version.body)
    tell_of_end(tx, clinic, client, version, today, now)
    look_at_dose(tx, clinic, client, history, version, program, now)
    ask_falls(tx, clinic, client, history, program, today, now)
    ask_days(tx, clinic, client, program, today, now)


def look_at_silence(tx: Tx, clinic: Clinic, client: Client, history: History, now: datetime) -> bool:
    """Go to weekly reminders after 14 silent days, to a pause and a call after 28; True while she is silent."""
    if heard_lately(client, history.levels.quiet_days, now):
        return False
    silence = sweep.silence_of(tx, client, "quiet", now)
    step = silence_step(silence, history.levels)
    if step is None:
        client.weekly_only = False
        days_left = history.levels.quiet_days - silence.silent_days
        client.review_at = review_at.sooner(client, silence.today + timedelta(days=days_left))
        return False
    if step == "pause":
        finding = quiet(silence, history.levels)
        if finding is not None:
            entry = {"form": finding.form, "values": dict(finding.because)}
            alert.raise_alert(tx, clinic, client, finding.rule, finding.level, entry, now)
        until = silence.today + timedelta(days=pause.MOST_DAYS - 1)
        pause.begin(tx, client, until, "service", now, reason="quiet")
        return True
    if not client.weekly_only:
        client.weekly_only = True
        inquire.begin(tx, clinic, client, "question", "keep", now)
        plan.replan(tx, client, now)
    days_left = history.levels.quiet_pause_days - silence.silent_days
    client.review_at = review_at.sooner(client, silence.today + timedelta(days=days_left))
    return True


def heard_lately(client: Client, quiet_days: int, now: datetime) -> bool:
    """Return whether she was heard too lately to be silent, whatever else may count; set when she could be next."""
    if client.last_heard_at is None:
        return False
    today = local_date(now, client.time_zone)
    days_left = quiet_days - (today - client_day(client.last_heard_at, client.time_zone)).days
    if days_left <= 0:
        return False
    client.weekly_only = False
    client.review_at = review_at.sooner(client, today + timedelta(days=days_left))
    return True


def look_at_dose(
    tx: Tx, clinic: Clinic, client: Client, history: History, version: ClientProgram, program: Program, now: datetime
) -> None:
    """Propose a step when the record speaks for one; the effort question comes before a step up."""
    today = local_date(now, client.time_zone)
    if version.rung == 0 and (today - version.rung_since_on).days < steps.least_days(program, 0):
        return  # too early for a step up, and there is none back
    facts = facts_of(tx, client, version, program, today)
    back = step_back(history, facts)
    if back is not None:
        steps.propose(tx, client, version, back, now)
        return
    asked = inquire.last_asked_on(tx, client, "effort")
    asked = asked if asked is not None and asked >= version.rung_since_on else None
    is_fresh = asked is not None and (today - asked).days < EFFORT_AGAIN_DAYS
    up = step_up(history, facts if is_fresh else without_effort(facts))
    if up is None:
        return
    if not is_fresh:
        if inquire.begin(tx, clinic, client, "question", "effort", now):
            client.review_at = review_at.sooner(client, today + timedelta(days=EFFORT_WAIT_DAYS))
        return
    steps.propose(tx, client, version, up, now)


def without_effort(facts: StepFacts) -> StepFacts:
    """Return the facts as if the effort had not been asked yet."""
    return StepFacts(**{**vars(facts), "efforts": ()})


def facts_of(tx: Tx, client: Client, version: ClientProgram, program: Program, today: date) -> StepFacts:
    """Return what the rules of the dose need beside the sessions."""
    since = at_local(version.rung_since_on, "00:00", client.time_zone)
    answers = inquire.answers_to(tx, client, "effort", since)
    return StepFacts(
        today=today,
        rung=version.rung,
        rung_on=version.rung_since_on,
        has_next=steps.has_next(program, version.rung),
        least_days=steps.least_days(program, version.rung),
        recheck_on=None if is_rechecked(version) else version.recheck_on,
        anything_open=anything_open(tx, client),
        efforts=tuple(str(one) for one in answers),
        prescribed_reps=steps.asked_reps(program, version.rung),
    )


def is_rechecked(version: ClientProgram) -> bool:
    """Return whether the re-check of a version was done on its date or later."""
    return version.rechecked_on is not None and (
        version.recheck_on is None or version.rechecked_on >= version.recheck_on
    )


def anything_open(tx: Tx, client: Client) -> bool:
    """Return whether an alert or a proposal of hers is open."""
    there = select(Alert.id).where(Alert.client_id == client.id, Alert.state != "closed")
    if tx.exec(there.limit(1)).first() is not None:
        return True
    return steps.open_proposal(tx, client.id or 0) is not None


def ask_falls(
    tx: Tx, clinic: Clinic, client: Client, history: History, program: Program, today: date, now: datetime
) -> None:
    """Ask once a month whether she fell, where her program asks for it."""
    since = inquire.last_asked_on(tx, client, "falls") or client.active_on or today
    if program.asks_falls and (today - since).days >= history.levels.falls_days:
        inquire.begin(tx, clinic, client, "question", "falls", now, details={"since": since.isoformat()})


def ask_days(tx: Tx, clinic: Clinic, client: Client, program: Program, today: date, now: datetime) -> None:
    """Ask once a week on how many days the daily items were done."""
    since = inquire.last_asked_on(tx, client, "days") or client.active_on or today
    if not program.daily or (today - since).days < DAYS_QUESTION:
        return
    words = exercise_words(client.language)
    names = [words.name(item.exercise) for item in program.daily]
    details = {"names": names, "week": week_of(today - timedelta(days=1))}
    inquire.begin(tx, clinic, client, "question", "days", now, details=details)


def tell_of_end(tx: Tx, clinic: Clinic, client: Client, version: ClientProgram, today: date, now: datetime) -> None:
    """Tell the therapist two weeks ahead that a program ends, once; extending it is one tap."""
    if version.end_on is None or not 0 <= (version.end_on - today).days <= ENDS_TOLD_DAYS:
        return
    details = {"what": "program ends", "on": version.end_on.isoformat()}
    there = tx.exec(select(ClinicNote).where(ClinicNote.client_id == client.id, ClinicNote.kind == "desk"))
    if not any(note.details == details for note in there):
        say.tell_desk(tx, clinic, client, "desk", "", details, now)
