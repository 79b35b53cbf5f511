"""Changed levels over the clinic's own record: how many alerts, for whom, which led to something, what would be missed.

Nothing is written and nothing is sent. The running of rules over a record is pure and stands in core/rules/replay.py.
"""

from collections import Counter
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta
from typing import Any

from sqlmodel import col, select

from reminders.core.levels import Levels, checked, merged
from reminders.core.rules.replay import Raised, replay
from reminders.core.schedule import client_day, local_date
from reminders.errors import BadInput
from reminders.flows.alert import LED_TO_SOMETHING
from reminders.store import histories
from reminders.store.db import Tx
from reminders.store.tables import Alert, Client, Clinic, InboundRow, Staff

REPLAYED = ("pain_up", "severe_pain", "missed")
# An alert of the record and a rehearsed one so many days apart are the same occasion: common practice, no source.
SAME_OCCASION_DAYS = 3


@dataclass(frozen=True)
class Changes:
    """Changed levels: for everyone, by therapist's e-mail, and by client's id."""

    everyone: Mapping[str, int] = field(default_factory=dict)
    therapists: Mapping[str, Mapping[str, int]] = field(default_factory=dict)
    clients: Mapping[int, Mapping[str, int]] = field(default_factory=dict)


def changes_of(table: Mapping[str, Any]) -> Changes:
    """Return the changes that a rules file states; raises BadInput naming the level, therapist or client."""
    therapists, clients = named_tables(table, "therapists"), named_tables(table, "clients")
    everyone = {name: value for name, value in table.items() if name not in ("therapists", "clients")}
    wrong = [name for name in clients if not name.isdigit()]
    if wrong:
        raise BadInput(f'"{wrong[0]}" under [clients] is no client number.')
    try:
        return Changes(
            checked(everyone),
            {email.lower(): checked(levels) for email, levels in therapists.items()},
            {int(number): checked(levels, client=True) for number, levels in clients.items()},
        )
    except ValueError as error:
        raise BadInput(str(error)) from None


def named_tables(table: Mapping[str, Any], name: str) -> dict[str, Mapping[str, Any]]:
    """Return the tables under a name, such as [clients.12]."""
    found = table.get(name, {})
    if not isinstance(found, Mapping) or not all(isinstance(value, Mapping) for value in found.values()):
        raise BadInput(f'"{name}" must hold tables, such as [{name}.{"12" if name == "clients" else "email"}].')
    return {str(key): value for key, value in found.items()}


@dataclass(frozen=True)
class Lived:
    """What one client's record would have raised with the levels as they are and as they would be."""

    client: Client
    as_is: Sequence[Raised]
    changed: Sequence[Raised]
    alerts: Sequence[tuple[date, Alert]]


def rehearse(tx: Tx, clinic: Clinic, changes: Changes | Mapping[str, Any], weeks: int, now: datetime) -> dict[str, Any]:
    """Return what the last weeks would have brought with changed levels, beside those that hold; raises BadInput."""
    if not isinstance(changes, Changes):
        changes = changes_of(changes)
    if not 1 <= weeks <= 104:
        raise BadInput(f"--weeks must be a whole number from 1 to 104, not {weeks}.")
    refuse_unknown(tx, clinic, changes)
    last = local_date(now, clinic.time_zone)
    first = last - timedelta(days=7 * weeks - 1)
    clients = tx.exec(select(Client).where(Client.clinic_id == clinic.id).order_by(col(Client.id)))
    lived = [one_client(tx, clinic, client, changes, first, last) for client in clients]
    return {
        "from": first.isoformat(),
        "until": last.isoformat(),
        "weeks": weeks,
        "rules": list(REPLAYED),
        "as_is": summary([one for client in lived for one in client.as_is], weeks),
        "changed": summary([one for client in lived for one in client.changed], weeks),
        "clients": [for_whom(one) for one in lived if one.as_is or one.changed],
        "led_to_something": sum(len(matched(one)) for one in lived),
        "would_have_missed": [row for one in lived for row in missed_of(one)],
    }


def refuse_unknown(tx: Tx, clinic: Clinic, changes: Changes) -> None:
    """Raise BadInput for a therapist or client of the file who is not the clinic's."""
    emails = set(tx.exec(select(Staff.email).where(Staff.clinic_id == clinic.id)))
    ids = set(tx.exec(select(Client.id).where(Client.clinic_id == clinic.id)))
    for email in changes.therapists:
        if email not in emails:
            raise BadInput(f'Nobody on the staff has the e-mail "{email}" of the rules file.')
    for number in changes.clients:
        if number not in ids:
            raise BadInput(f"There is no client {number}, whom the rules file names.")


def one_client(tx: Tx, clinic: Clinic, client: Client, changes: Changes, first: date, last: date) -> Lived:
    """Run the rules over one client's record twice, and read what her alerts of those days came to."""
    history = histories.history_of(tx, client, most=None)
    heard = heard_on(tx, client)
    other = replace(history, levels=levels_with(tx, clinic, client, changes))
    return Lived(
        client,
        replay(history, first, last, heard),
        replay(other, first, last, heard),
        alerts_of(tx, client, first, last),
    )


def levels_with(tx: Tx, clinic: Clinic, client: Client, changes: Changes) -> Levels:
    """Return a client's levels with the changes laid over what the clinic, her therapist and she have."""
    therapist = tx.get(Staff, client.therapist_id)
    hers = changes.therapists.get(therapist.email, {}) if therapist else {}
    return merged(
        {**clinic.levels, **changes.everyone},
        {**(therapist.levels if therapist else {}), **hers},
        {**client.levels, **changes.clients.get(client.id or 0, {})},
    )


def heard_on(tx: Tx, client: Client) -> list[date]:
    """Return the days on which a client was heard, oldest first."""
    statement = select(InboundRow.received_at).where(InboundRow.client_id == client.id)
    return sorted({client_day(at, client.time_zone) for at in tx.exec(statement)})


def alerts_of(tx: Tx, client: Client, first: date, last: date) -> list[tuple[date, Alert]]:
    """Return a client's own alerts of these rules and days, with the local day on which each was opened."""
    statement = select(Alert).where(Alert.client_id == client.id, col(Alert.rule).in_(REPLAYED))
    rows = tx.exec(statement.order_by(col(Alert.opened_at), col(Alert.id)))
    dated = [(local_date(row.opened_at, client.time_zone), row) for row in rows]
    return [(on, row) for on, row in dated if first <= on <= last]


def summary(raised: Sequence[Raised], weeks: int) -> dict[str, Any]:
    """Return how many alerts there are in all, a week, and by rule."""
    rules = Counter(one.finding.rule for one in raised)
    return {"alerts": len(raised), "per_week": round(len(raised) / weeks, 1), "by_rule": dict(rules.most_common())}


def for_whom(lived: Lived) -> dict[str, Any]:
    """Return one client's counts."""
    return {
        "client": lived.client.id,
        "name": lived.client.name,
        "as_is": len(lived.as_is),
        "changed": len(lived.changed),
    }


def is_same(on: date, alert: Alert, raised: Raised) -> bool:
    """Return whether a rehearsed alert is the occasion of one in the record."""
    pains = ("pain_up", "severe_pain")
    alike = raised.finding.rule == alert.rule or {raised.finding.rule, alert.rule} <= set(pains)
    return alike and abs((raised.on - on).days) <= SAME_OCCASION_DAYS


def useful(lived: Lived) -> list[tuple[date, Alert]]:
    """Return the alerts of the record that led to something."""
    return [(on, row) for on, row in lived.alerts if row.outcome in LED_TO_SOMETHING]


def matched(lived: Lived) -> list[Alert]:
    """Return the alerts which led to something and would be there with the changed levels too."""
    return [row for on, row in useful(lived) if any(is_same(on, row, one) for one in lived.changed)]


def missed_of(lived: Lived) -> list[dict[str, Any]]:
    """Return the alerts which led to something and would not be there with the changed levels."""
    kept = {row.id for row in matched(lived)}
    return [
        {"client": lived.client.id, "alert": row.number, "rule": row.rule, "on": on.isoformat(), "outcome": row.outcome}
        for on, row in useful(lived)
        if row.id not in kept
    ]
