"""An alert's life: raised, added to, acknowledged, opened again, closed. One not closed for a client and rule.

Who is called stands in flows/calling, when the next call is due in flows/escalate.
"""

from collections.abc import Mapping, Sequence
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import update
from sqlmodel import col, select

from reminders.core.levels import Levels, merged
from reminders.core.rules import DANGER_RULES, STAFF_CLOSES
from reminders.core.rules.danger import is_higher
from reminders.core.schedule import at_local, local_date
from reminders.errors import BadInput, Refused
from reminders.flows import calling, say
from reminders.store import clients, histories, outbox
from reminders.store.db import Tx, lock_client
from reminders.store.tables import Alert, Client, Clinic, Outbound, Staff

OUTCOMES = ("called", "changed dose", "saw her", "expected", "nothing")
LED_TO_SOMETHING = frozenset({"called", "changed dose", "saw her"})
HOWS = ("console", "link", "text")
# The first things that fired and the newest; what lies between is in the reports.
KEPT_FIRST, KEPT_LAST = 5, 45
QUIET_RULES = ("missed", "quiet")


def raise_alert(
    tx: Tx,
    clinic: Clinic,
    client: Client | None,
    rule: str,
    level: str,
    because: Mapping[str, Any],
    now: datetime,
    session_ids: Sequence[int] = (),
    address: str = "",
    one_of_two: bool = False,
) -> Alert:
    """Open an alert, or add to the one of this client and rule that is not closed; call or note as its level says.

    `because` may carry `form` and `values` for the sentence, `notes`, and the ids of `report` and `inbound`.
    """
    entry = {"at": now.isoformat(), **because}
    if client is not None:
        lock_client(tx, client.id or 0)
    there = not_closed(tx, clinic, client, rule, address)
    if there is not None:
        add(tx, clinic, there, level, entry, now, session_ids, one_of_two)
        return there
    made = Alert(
        clinic_id=clinic.id or 0,
        number=next_number(tx, clinic),
        client_id=client.id if client else None,
        address=address,
        rule=rule,
        level=level,
        opened_at=now,
        last_added_at=now,
        because=[entry],
        session_ids=sorted(set(session_ids)),
        one_of_two=one_of_two,
    )
    return opened(tx, clinic, made, now)


def opened(tx: Tx, clinic: Clinic, made: Alert, now: datetime) -> Alert:
    """Write a new alert and begin to call about it."""
    tx.add(made)
    tx.flush()
    calling.add_event(tx, made, "opened", now, details={"level": made.level})
    begin_calls(tx, clinic, made, now)
    return made


def not_closed(tx: Tx, clinic: Clinic, client: Client | None, rule: str, address: str = "") -> Alert | None:
    """Return the alert of a client (or of an unknown address) and rule that is not closed."""
    statement = select(Alert).where(Alert.clinic_id == clinic.id, Alert.rule == rule, Alert.state != "closed")
    if client is not None:
        statement = statement.where(Alert.client_id == client.id)
    else:
        statement = statement.where(col(Alert.client_id).is_(None), Alert.address == address)
    return tx.exec(statement.limit(1)).first()


def next_number(tx: Tx, clinic: Clinic) -> int:
    """Return a clinic's next alert number; two at once never get the same."""
    statement = update(Clinic).where(col(Clinic.id) == clinic.id).values(next_alert_number=Clinic.next_alert_number + 1)
    taken = tx.execute(
        statement.returning(col(Clinic.next_alert_number)), execution_options={"synchronize_session": False}
    ).scalar_one()
    tx.refresh(clinic, ["next_alert_number"])
    return int(taken) - 1


def add(
    tx: Tx,
    clinic: Clinic,
    alert: Alert,
    level: str,
    entry: dict[str, Any],
    now: datetime,
    session_ids: Sequence[int],
    one_of_two: bool,
) -> None:
    """Add to an alert; a danger sign, a higher level or a later day's addition opens an acknowledged one again."""
    later_day = local_date(now, clinic.time_zone) > local_date(alert.last_added_at, clinic.time_zone)
    keep(alert, entry)
    alert.session_ids = sorted({*alert.session_ids, *session_ids})
    alert.last_added_at = now
    # A text that names her ends the doubt whose it is.
    alert.one_of_two = alert.one_of_two and one_of_two
    higher = is_higher(level, than=alert.level)
    if higher:
        alert.level = level
    calling.add_event(tx, alert, "added", now, details={"level": level})
    is_sign = alert.rule in DANGER_RULES and level == "urgent"
    if alert.state == "acknowledged":
        if is_sign or higher or later_day:
            open_again(tx, clinic, alert, now)
    elif higher or (is_sign and not called_lately(tx, clinic, alert, now)):
        alert.round += 1
        begin_calls(tx, clinic, alert, now)


def keep(alert: Alert, entry: dict[str, Any]) -> None:
    """Write down what fired; of a flood the first things and the newest are kept."""
    because = [*alert.because, entry]
    if len(because) > KEPT_FIRST + KEPT_LAST:
        because = because[:KEPT_FIRST] + because[-KEPT_LAST:]
    alert.because = because


def called_lately(tx: Tx, clinic: Clinic, alert: Alert, now: datetime) -> bool:
    """Return whether somebody was called within the time after which she would be called again."""
    last = calling.last_called_at(tx, alert)
    return last is not None and now - last < timedelta(minutes=levels_for(tx, clinic, alert).call_again_minutes)


def levels_for(tx: Tx, clinic: Clinic, alert: Alert) -> Levels:
    """Return the levels that hold for an alert's client, or the clinic's."""
    client = tx.get(Client, alert.client_id) if alert.client_id else None
    if client is None:
        return merged(clinic.levels)
    return histories.levels_of(clinic, tx.get(Staff, client.therapist_id), client)


def begin_calls(tx: Tx, clinic: Clinic, alert: Alert, now: datetime) -> None:
    """Call at once about an urgent alert; let a `today` or `routine` one wait for its note hour."""
    alert.step = 0
    if alert.level != "urgent":
        alert.steps_from_at, alert.next_step_at = None, next_note_at(tx, clinic, alert, now)
        return
    hours = clients.hours_of(clinic)
    steps_now = hours.is_open(now) or calling.on_call(tx, clinic, now) is not None
    alert.steps_from_at = now if steps_now else hours.next_opening(now) or now
    calling.call(tx, clinic, alert, calling.FIRST, now)
    alert.step = 1
    again = timedelta(minutes=levels_for(tx, clinic, alert).call_again_minutes)
    alert.next_step_at = alert.steps_from_at + again


def next_note_at(tx: Tx, clinic: Clinic, alert: Alert, after: datetime) -> datetime:
    """Return the next hour on an open day at which a note about this alert goes: `routine` at the last of the day."""
    client = tx.get(Client, alert.client_id) if alert.client_id else None
    slots = calling.note_slots(clinic, calling.in_charge(tx, clinic, client, after))
    wanted = slots[-1:] if alert.level == "routine" else slots
    hours = clients.hours_of(clinic)
    day = local_date(after, clinic.time_zone)
    for _ in range(60):
        later = [at_local(day, slot, clinic.time_zone) for slot in wanted] if hours.is_working_day(day) else []
        found = [moment for moment in later if moment > after]
        if found:
            return found[0]
        day += timedelta(days=1)
    return after + timedelta(days=1)


def open_again(tx: Tx, clinic: Clinic, alert: Alert, now: datetime) -> None:
    """Open an acknowledged alert again and call anew."""
    alert.state, alert.acknowledged_at, alert.acknowledged_by, alert.acknowledged_how = "open", None, "", ""
    alert.words_opened_by = ""
    alert.round += 1
    calling.add_event(tx, alert, "reopened", now)
    begin_calls(tx, clinic, alert, now)


def acknowledge(tx: Tx, alert: Alert, by: str, how: str, now: datetime) -> None:
    """Note that a staff member has an alert; it opens again when it is not closed by the next working noon.

    `how`: console, link or text. After reading an urgent alert's words behind sign-in, an acknowledgement there tells
    the client who has read them; by link or text it tells her nothing.
    """
    if how not in HOWS:
        raise BadInput(f"An alert is acknowledged by {', '.join(HOWS)}, not by {how!r}.")
    if alert.state == "closed":
        raise Refused(f"Alert {alert.number} is closed already.")
    if alert.state == "acknowledged":
        return
    clinic = clients.the_clinic(tx, alert.clinic_id)
    alert.state, alert.acknowledged_at, alert.acknowledged_by, alert.acknowledged_how = "acknowledged", now, by, how
    alert.next_step_at = clients.hours_of(clinic).next_working_noon(now)
    withdraw_calls(tx, alert, "acknowledged", now)
    calling.add_event(tx, alert, "acknowledged", now, by=by, details={"how": how})
    if how == "console" and alert.level == "urgent" and alert.words_opened_by == by:
        tell_who_read(tx, clinic, alert, by, now)


def tell_who_read(tx: Tx, clinic: Clinic, alert: Alert, by: str, now: datetime) -> None:
    """Tell the client who has read her words; not when it is not sure that they were hers."""
    client = tx.get(Client, alert.client_id) if alert.client_id else None
    staff = clients.staff_by_email(tx, by)
    if client is None or staff is None or alert.one_of_two or client.died_on is not None:
        return
    rows = say.tell_client(
        tx,
        clinic,
        client,
        "read_by",
        "read_by",
        {"reader": staff.name, "crisis_words": alert.rule == "crisis"},
        now,
        lambda contact: outbox.client_key(f"read_by-{alert.round}", client.id or 0, alert.id or 0, contact),
        due_at=now,
        alert_id=alert.id,
    )
    for row in tx.exec(select(Outbound).where(col(Outbound.id).in_(rows))):
        row.window_from = row.window_until = ""  # it follows up on her danger sign, which waits for no window
    calling.add_event(tx, alert, "answered", now, by=by, details={"what": "read_by"})


def withdraw_calls(tx: Tx, alert: Alert, why: str, now: datetime) -> None:
    """Take back calls about an alert that still wait."""
    statement = update(Outbound).where(
        col(Outbound.alert_id) == alert.id, col(Outbound.state) == "waiting", col(Outbound.kind) == "alert"
    )
    tx.execute(statement.values(state="withdrawn", why=why, settled_at=now))


def close(tx: Tx, alert: Alert, by: str, outcome: str, note: str, now: datetime) -> None:
    """Close an alert with what was done; an urgent one needs a note. Holds stay until a therapist ends them."""
    if outcome not in OUTCOMES:
        raise BadInput(f"Say what was done: {', '.join(OUTCOMES)}.")
    if alert.level == "urgent" and not note.strip():
        raise BadInput("An urgent alert is closed with a note: say in a few words what was done.")
    settle(tx, alert, by, outcome, note.strip(), now)


def close_by_report(tx: Tx, alert: Alert, now: datetime) -> None:
    """Close a missed or quiet alert since she reported; pain and danger are closed by staff alone."""
    if alert.rule in STAFF_CLOSES:
        raise Refused(f"Only staff close an alert of the rule {alert.rule}.")
    settle(tx, alert, "report", "report", "", now)


def settle(tx: Tx, alert: Alert, by: str, outcome: str, note: str, now: datetime) -> None:
    """Write down the end of an alert; closing it twice changes nothing."""
    if alert.state == "closed":
        return
    alert.state, alert.closed_at, alert.closed_by = "closed", now, by
    alert.outcome, alert.note, alert.next_step_at = outcome, note, None
    withdraw_calls(tx, alert, "closed", now)
    calling.add_event(tx, alert, "closed", now, by=by, details={"outcome": outcome})
    client = tx.get(Client, alert.client_id) if alert.client_id else None
    if client is not None and alert.rule == "pain_up":
        client.easy_until_alert_closed = False


def sentences(alert: Alert, language: str = "en") -> list[str]:
    """Return why an alert fired, in words, oldest first."""
    return calling.because_sentences(alert, language)


def shares(tx: Tx, clinic: Clinic, since: datetime | None = None) -> dict[str, dict[str, int]]:
    """Return, by rule, how many alerts were closed by staff and how many of them led to something."""
    statement = select(Alert).where(Alert.clinic_id == clinic.id, Alert.state == "closed", Alert.outcome != "report")
    if since is not None:
        statement = statement.where(col(Alert.closed_at) >= since)
    found: dict[str, dict[str, int]] = {}
    for one in tx.exec(statement):
        counts = found.setdefault(one.rule, {"closed": 0, "led": 0})
        counts["closed"] += 1
        counts["led"] += one.outcome in LED_TO_SOMETHING
    return found
