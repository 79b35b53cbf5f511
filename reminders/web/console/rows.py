"""The day's list as rows, in order of harm: what happened, in whose words, why it is here, and what may be done.

Only values for the page are made here, from facts that were read before; nothing is asked of the database.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import datetime
from typing import Any

from reminders.flows import calling, explain, watch
from reminders.store import clients
from reminders.store.histories import levels_of
from reminders.store.tables import Alert, Client, ClinicNote, Contact, Outbound, Proposal, Report
from reminders.store.today import Facts, is_danger
from reminders.web.state_words import delivery_word

# The page's groups, in order of harm.
GROUPS = ("long holds", "danger", "pain", "questions", "holds", "missed", "proposals", "to check")


@dataclass(frozen=True)
class Said:
    """Someone's words, when and how they came."""

    words: str
    at: datetime
    channel: str


@dataclass(frozen=True)
class Told:
    """What we told her and what became of it: queued, sent, delivered or NOT delivered."""

    words: str
    state: str
    channel: str


@dataclass(frozen=True)
class Row:
    """One thing that needs a person."""

    anchor: str
    group: str
    level: str
    title: str
    since: datetime
    state: str = ""
    client: Client | None = None
    address: str = ""
    said: tuple[Said, ...] = ()
    why: tuple[str, ...] = ()
    told: tuple[Told, ...] = ()
    phones: tuple[str, ...] = ()
    therapist: str = ""
    holder: str = ""
    is_held: bool = False
    sharers: tuple[Client, ...] = ()
    item: Any = None
    may: frozenset[str] = frozenset()


def day_rows(facts: Facts, now: datetime) -> list[Row]:
    """Return everything that needs a person, the most harmful first and within that the oldest; what waits for nobody
    to read it stands before what somebody already has.
    """
    held = {hold.client_id for hold in facts.holds}
    rows = [alert_row(facts, alert, held) for alert in facts.alerts]
    with_alert = {row.client.id for row in rows if row.client is not None}
    rows += [note_row(facts, note, held) for note in facts.notes]
    rows += hold_rows(facts, with_alert, now)
    rows += [proposal_row(facts, proposal) for proposal in facts.proposals]
    rows += [check_row(facts, client, now) for client in facts.unchecked]
    return sorted(rows, key=lambda row: (GROUPS.index(row.group), row.state == "acknowledged", row.since, row.anchor))


def common(facts: Facts, client: Client | None) -> dict[str, Any]:
    """Return what every row of a client carries."""
    if client is None:
        return {}
    therapist = facts.therapists.get(client.therapist_id)
    numbers = phones(facts.contacts.get(client.id or 0, ()))
    return {
        "client": client,
        "phones": numbers,
        "therapist": therapist.name if therapist else "",
        "holder": client.holder if client.holder != "self" else "",
    }


def phones(contacts: Sequence[Contact]) -> tuple[str, ...]:
    """Return the numbers to call her on."""
    return tuple(contact.address for contact in contacts if contact.kind == "sms")


def group_of(alert: Alert) -> str:
    """Return where an alert stands in the order of harm."""
    if alert.level == "urgent" or is_danger(alert):
        return "danger"
    return "pain" if alert.level == "today" else "missed"


def alert_row(facts: Facts, alert: Alert, held: set[int]) -> Row:
    """Return an alert as a row."""
    client = facts.clients.get(alert.client_id or 0)
    may = {"acknowledge", "close"} if alert.state == "open" else {"close"}
    if client is not None:
        may |= {"write", "easy", "dose", "clear" if client.id in held else "hold"}
        may |= {"whose"} if alert.one_of_two else set()
    return Row(
        anchor=f"alert-{alert.id}",
        group=group_of(alert),
        level=alert.level,
        title=f"{explain.rule_name(alert.rule)}, alert {alert.number}",
        since=alert.opened_at,
        state=alert.state,
        address=alert.address,
        said=said_in(facts, alert),
        why=because_of(alert),
        told=told_in(facts, alert),
        is_held=client is not None and client.id in held,
        item=alert,
        may=frozenset(may),
        **common(facts, client),
    )


def said_in(facts: Facts, alert: Alert) -> tuple[Said, ...]:
    """Return the words that an alert came from; while whose they were is open, they stand in no report."""
    reports = [facts.words[entry["report"]] for entry in alert.because if entry.get("report") in facts.words]
    loose = [facts.heard[one] for one in inbound_of(alert) if one in facts.heard]
    return tuple(said_of(reports) or [Said(*one) for one in loose])


def because_of(alert: Alert) -> tuple[str, ...]:
    """Return why an alert fired, each sentence once."""
    return tuple(dict.fromkeys(calling.because_sentences(alert, "en")))


def told_in(facts: Facts, alert: Alert) -> tuple[Told, ...]:
    """Return what she was told about what an alert came from."""
    return tuple(told_of(row for one in inbound_of(alert) for row in facts.told.get(one, ())))


def inbound_of(alert: Alert) -> list[int]:
    """Return the messages that an alert came from, each once."""
    return list(dict.fromkeys(entry["inbound"] for entry in alert.because if entry.get("inbound")))


def said_of(reports: Iterable[Report]) -> list[Said]:
    """Return the words of reports in the order they came, each once."""
    unique = {report.id: report for report in reports}
    ordered = sorted(unique.values(), key=lambda report: (report.at, report.id or 0))
    return [Said(report.text or reading_words(report.reading), report.at, report.channel) for report in ordered]


def reading_words(reading: dict[str, Any]) -> str:
    """Return what a page's marks say, where she wrote no words."""
    done = {"all": "all done", "part": "part done", "none": "not done"}.get(str(reading.get("completed")), "")
    pain = reading.get("pain")
    return ", ".join(part for part in (done, f"pain {pain}" if pain is not None else "") if part) or "(no words)"


def told_of(rows: Iterable[Outbound]) -> list[Told]:
    """Return what she was told."""
    return [Told(row.body or row.kind.replace("_", " "), delivery_word(row.state), row.channel) for row in rows]


def note_row(facts: Facts, note: ClinicNote, held: set[int]) -> Row:
    """Return an item of the inbox as a row."""
    client = facts.clients.get(note.client_id or 0)
    return Row(
        anchor=f"note-{note.id}",
        group="questions",
        level="today",
        title=note.kind,
        since=note.at,
        address=str(note.details.get("address", "")),
        said=(Said(note.words, note.at, ""),) if note.words else (),
        is_held=client is not None and client.id in held,
        sharers=tuple(facts.sharers.get(note.inbound_id or 0, ())) if client is None else (),
        item=note,
        may=frozenset({"settle", "write"} if client is not None else {"settle"}),
        **common(facts, client),
    )


def hold_rows(facts: Facts, with_alert: set[int | None], now: datetime) -> list[Row]:
    """Return the holds as rows, one a client: those past their days at the top, others unless an alert shows them."""
    rows: list[Row] = []
    hours = clients.hours_of(facts.clinic)
    seen: set[int] = set()
    for hold in facts.holds:
        client = facts.clients[hold.client_id]
        days = watch.working_days(hold, hours, facts.clinic.time_zone, now)
        is_long = watch.is_long(days, levels_of(facts.clinic, facts.therapists.get(client.therapist_id), client))
        if hold.client_id in seen or (client.id in with_alert and not is_long):
            continue
        seen.add(hold.client_id)
        lasted = "Held since today." if days == 0 else f"Held for {days} working {'day' if days == 1 else 'days'}."
        cause = facts.hold_alerts.get(hold.alert_id or 0)
        rows.append(
            Row(
                anchor=f"hold-{hold.id}",
                group="long holds" if is_long else "holds",
                level="today",
                title=f"held, {explain.rule_name(hold.rule)}",
                since=hold.opened_at,
                said=said_in(facts, cause) if cause else (),
                why=(*(because_of(cause) if cause else ()), lasted, *((hold.note,) if hold.note else ())),
                told=told_in(facts, cause) if cause else (),
                is_held=True,
                item=hold,
                may=frozenset({"clear", "write"}),
                **common(facts, client),
            )
        )
    return rows


def proposal_row(facts: Facts, proposal: Proposal) -> Row:
    """Return a proposed dose step as a row."""
    return Row(
        anchor=f"proposal-{proposal.id}",
        group="proposals",
        level="routine",
        title="step up" if proposal.direction == "up" else "step back",
        since=proposal.made_at,
        why=tuple(proposal.because),
        item=proposal,
        may=frozenset({"propose", "write"}),
        **common(facts, facts.clients[proposal.client_id]),
    )


def check_row(facts: Facts, client: Client, now: datetime) -> Row:
    """Return a new client whose precautions nobody has stated."""
    first = facts.first_days.get(client.id or 0)
    return Row(
        anchor=f"check-{client.id}",
        group="to check",
        level="routine",
        title="new, check the program",
        since=client.created_at or now,
        item=first,
        may=frozenset({"check"}),
        **common(facts, client),
    )
