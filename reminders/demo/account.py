"""The account of a story: who each client is, what she wrote, what was read, what followed; all from the record.

Only what the record holds is told; how it is worded stands in templates/demo/account.txt.
"""

from collections import Counter, defaultdict
from collections.abc import Sequence
from datetime import datetime
from statistics import mean
from typing import Any

from sqlmodel import col, select

from reminders.core.adherence import adherence
from reminders.core.schedule import local_date, zone_of
from reminders.demo.checks import checks
from reminders.demo.people import STAFF, Person
from reminders.flows import alert as alerts
from reminders.flows.explain import rule_name
from reminders.store.db import Tx
from reminders.store.tables import (
    Alert,
    Client,
    ClientProgram,
    Clinic,
    Contact,
    Digest,
    ExerciseSession,
    Hold,
    InboundRow,
    Outbound,
    Pause,
    Staff,
)
from reminders.texts import Texts
from reminders.texts_said import said_date, said_time

MOST_TOLD, FIRST_TOLD = 6, 2  # texts of one client that the account tells; the first plain ones among them
PLAIN = ("report", "skip", "chat", "settling", "written")
EVERYDAY = (*PLAIN, "pain", "unclear", "asked who")
ANSWERS = ("thanks", "ask", "said_back", "started", "stopped", "help", "danger", "stop_level", "resend", "sympathy")


def account(tx: Tx, texts: Texts, people: Sequence[Person], began_at: datetime, ended_at: datetime) -> str:
    """Return the whole account as plain text."""
    clinic = tx.exec(select(Clinic)).one()
    zone = clinic.time_zone
    everyone = list(tx.exec(select(Client).order_by(col(Client.id))))
    teller = Teller(tx, clinic)
    values = {
        "clinic": clinic.name,
        "first": said_date(local_date(began_at, zone), "en"),
        "last": said_date(local_date(ended_at, zone), "en"),
        "staff": [{"name": one.name, "role": one.role} for one in STAFF],
        "clients": [teller.client(one, person) for one, person in zip(everyone, people, strict=True)],
        "alerts": teller.alerts_by_rule(),
        "checks": checks(tx, clinic),
        "total": teller.totals(),
    }
    return str(texts.template("demo/account.txt").render(values))


def last_digests(tx: Tx) -> list[str]:
    """Return the newest week's digests as plain text, a therapist each."""
    rows = list(tx.exec(select(Digest).order_by(col(Digest.week), col(Digest.id))))
    return [row.text for row in rows if row.week == rows[-1].week]


class Teller:
    """Gathers what the record holds of each client, read once for all."""

    def __init__(self, tx: Tx, clinic: Clinic) -> None:
        """Read the record."""
        self.tx, self.clinic = tx, clinic
        self.staff = {one.id or 0: one.name for one in tx.exec(select(Staff))}
        self.names = {one.email: one.name for one in tx.exec(select(Staff))}
        self.sessions = by_client(tx.exec(select(ExerciseSession).order_by(col(ExerciseSession.on_date))))
        self.alerts = list(tx.exec(select(Alert).order_by(col(Alert.id))))
        self.holds = by_client(tx.exec(select(Hold).order_by(col(Hold.id))))
        self.pauses = by_client(tx.exec(select(Pause).order_by(col(Pause.id))))
        self.programs = by_client(tx.exec(select(ClientProgram).order_by(col(ClientProgram.number))))
        self.answers: defaultdict[int, list[Outbound]] = defaultdict(list)
        for row in tx.exec(select(Outbound).where(col(Outbound.kind).in_(ANSWERS)).order_by(col(Outbound.id))):
            self.answers[row.inbound_id or 0].append(row)
        self.texts: defaultdict[int, list[InboundRow]] = defaultdict(list)
        first_at: dict[str, int] = {}
        for contact in tx.exec(select(Contact).order_by(col(Contact.id))):
            first_at.setdefault(contact.address, contact.client_id)
        for came in tx.exec(select(InboundRow).order_by(col(InboundRow.id))):
            self.texts[came.client_id or first_at.get(came.address, 0)].append(came)

    def client(self, client: Client, person: Person) -> dict[str, Any]:
        """Return what the account tells of one client."""
        client_id = client.id or 0
        mine = [one for one in self.sessions[client_id] if one.kind == "planned"]
        counts = adherence(one.state for one in mine)
        ratings = [one.pain for one in mine if one.pain is not None]
        wrote = self.texts[client_id]
        told = telling(wrote, {one for one in self.alerted() if one})
        versions = self.programs[client_id]
        return {
            "id": client_id,
            "name": client.name,
            "habit": person.habit.words,
            "therapist": self.staff.get(client.therapist_id, ""),
            "program": client.program_code,
            "state": client.state,
            "sessions": Counter(one.state for one in mine),
            "counts": counts,
            "pain": {"first": ratings[0], "last": ratings[-1], "mean": round(mean(ratings), 1), "most": max(ratings)}
            if ratings
            else None,
            "steps": [{"on": self.day(one.created_at), "why": one.why, "rung": one.rung} for one in versions[1:]],
            "holds": [self.hold(one) for one in self.holds[client_id]],
            "pauses": [
                {"from": said_date(one.from_on, "en"), "until": said_date(one.until_on, "en"), "by": one.by}
                for one in self.pauses[client_id]
            ],
            "texts": [self.text(row) for row in told],
            "others": len(wrote) - len(told),
            "wrote": len(wrote),
        }

    def alerted(self) -> set[int | None]:
        """Return the messages that an alert came from."""
        return {entry.get("inbound") for one in self.alerts for entry in one.because}

    def hold(self, one: Hold) -> dict[str, Any]:
        """Return one hold in words."""
        return {
            "rule": rule_name(one.rule),
            "from": self.day(one.opened_at),
            "until": self.day(one.ended_at),
            "by": self.names.get(one.ended_by, one.ended_by),
        }

    def text(self, row: InboundRow) -> dict[str, Any]:
        """Return one text of a client: when, her words, what was read, what followed."""
        return {
            "at": self.moment(row.received_at),
            "words": " ".join(row.text.split()),
            "reading": row.reading or {},
            "outcome": row.outcome,
            "answers": [{"kind": one.kind, "body": " ".join(one.body.split())} for one in self.answers[row.id or 0]],
            "alerts": [
                self.alert(one) for one in self.alerts if any(entry.get("inbound") == row.id for entry in one.because)
            ],
        }

    def alert(self, one: Alert) -> dict[str, Any]:
        """Return one alert in words: its rule, why it fired, who took it when, and what came of it."""
        taken = one.acknowledged_at
        return {
            "number": one.number,
            "level": one.level,
            "rule": rule_name(one.rule),
            "why": alerts.sentences(one)[0] if one.because else "",
            "opened": self.moment(one.opened_at),
            "taken": self.moment(taken) if taken else "",
            "by": self.names.get(one.acknowledged_by or one.closed_by, one.closed_by),
            "outcome": one.outcome,
            "note": one.note,
            "state": one.state,
        }

    def alerts_by_rule(self) -> list[dict[str, Any]]:
        """Return the alerts by rule: how many, of what level, and the reason of each with whose it was."""
        names = {one.id: one.name for one in self.tx.exec(select(Client))}
        found: defaultdict[str, list[dict[str, Any]]] = defaultdict(list)
        for one in self.alerts:
            found[one.rule].append({**self.alert(one), "name": names.get(one.client_id, "a number nobody knows")})
        return [{"rule": rule_name(rule), "alerts": rows} for rule, rows in found.items()]

    def totals(self) -> dict[str, Any]:
        """Return the clinic's counts: messages out by kind, texts in, sessions by state, adherence of all."""
        sent = self.tx.exec(select(Outbound.kind).where(col(Outbound.state).in_(("accepted", "delivered"))))
        states = [one.state for mine in self.sessions.values() for one in mine if one.kind == "planned"]
        kinds = Counter(sent)
        return {
            "texts": sum(len(rows) for rows in self.texts.values()),
            "sent": sum(kinds.values()),
            "kinds": sorted(kinds.items(), key=lambda pair: (-pair[1], pair[0])),
            "states": sorted(Counter(states).items(), key=lambda pair: (-pair[1], pair[0])),
            "counts": adherence(states),
            "alerts": len(self.alerts),
            "urgent": sum(one.level == "urgent" for one in self.alerts),
            "opted_out": sum(one.state == "opted_out" for one in self.tx.exec(select(Client))),
            "steps": sum(len(rows) - 1 for rows in self.programs.values()),
            "holds": sum(len(rows) for rows in self.holds.values()),
        }

    def day(self, at: datetime | None) -> str:
        """Return the local date of an instant in words."""
        return said_date(local_date(at, self.clinic.time_zone), "en") if at else ""

    def moment(self, at: datetime) -> str:
        """Return an instant in words: date and local hour."""
        local = at.astimezone(zone_of(self.clinic.time_zone))
        return f"{self.day(at)} {said_time(local.strftime('%H:%M'), 'en')}"


def by_client(rows: Any) -> defaultdict[int, list[Any]]:
    """Return rows by the client that they hang on."""
    found: defaultdict[int, list[Any]] = defaultdict(list)
    for row in rows:
        found[row.client_id].append(row)
    return found


def telling(wrote: Sequence[InboundRow], alerted: set[int | None]) -> list[InboundRow]:
    """Return the texts that say most of a client, in the order written: what raised an alert before all else."""
    plain = {row.id for row in [row for row in wrote if not is_telling(row)][:FIRST_TOLD]}
    ranked = sorted(wrote, key=lambda row: (row.id not in alerted, not_rare(row), row.id not in plain, row.id or 0))
    told = [row for row in ranked if row.id in alerted or row.id in plain or is_telling(row)][:MOST_TOLD]
    return sorted(told, key=lambda row: row.id or 0)


def not_rare(row: InboundRow) -> bool:
    """Return whether a text is of an everyday kind: a report, thanks, an answer to a question of ours."""
    reading = row.reading or {}
    everyday = row.outcome in EVERYDAY or row.outcome.startswith("answer ")
    return everyday and not (reading.get("red_flags") or reading.get("concerns") or reading.get("correction"))


def is_telling(row: InboundRow) -> bool:
    """Return whether a text is more than a plain report."""
    reading = row.reading or {}
    return bool(
        row.outcome not in PLAIN or reading.get("red_flags") or reading.get("concerns") or reading.get("correction")
    )
