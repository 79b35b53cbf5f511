"""What the journal says and a restored database does not know: closed addresses, holds, deaths, discharges, erasures.

Nothing is opened by it: an address that the journal has closed and opened again stays as the database has it.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from sqlmodel import col, select

from reminders.flows import consent, erase, hold, plan
from reminders.store import addresses, clients, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, Contact, Hold
from reminders.texts import Texts

Line = dict[str, Any]
BY = "journal"


@dataclass
class Reapplied:
    """How many of each were put in force again; `strangers` are lines about clients whom the file does not hold."""

    closed: int = 0
    holds: int = 0
    deaths: int = 0
    discharged: int = 0
    erased: int = 0
    strangers: int = 0


def reapply(tx: Tx, texts: Texts, lines: Sequence[Line], since: datetime, now: datetime) -> Reapplied:
    """Put in force what the journal's lines say, once; lines on holds, deaths and erasures count from `since` on."""
    done = Reapplied()
    for clinic_id, number in highest_numbers(lines).items():
        clinic = tx.get(Clinic, clinic_id)
        if clinic is not None:
            clinic.next_alert_number = max(clinic.next_alert_number, number + 1)
    done.closed = close_addresses(tx, lines, now)
    later = [line for line in lines if line["what"] == "erasure" or is_since(line, since)]
    for line in later:
        client = client_of(tx, line)
        if client is None:
            done.strangers += line["what"] in ("hold", "death", "discharge", "erasure") and bool(line.get("client"))
        else:
            apply(tx, texts, client, line, later, done, now)
    return done


def is_since(line: Line, since: datetime) -> bool:
    """Return whether a line was written at or after an instant; one without an instant counts as late."""
    at = line.get("at")
    return at is None or datetime.fromisoformat(at) >= since.replace(microsecond=0)


def highest_numbers(lines: Sequence[Line]) -> dict[int, int]:
    """Return the highest alert number of each clinic that the journal knows."""
    highest: dict[int, int] = {}
    for line in lines:
        if line["what"] == "alert":
            highest[line["clinic"]] = max(highest.get(line["clinic"], 0), line["number"])
    return highest


def client_of(tx: Tx, line: Line) -> Client | None:
    """Return the client whom a line is about, None when the number is another person's here or nobody's."""
    client = tx.get(Client, line["client"]) if line.get("client") else None
    if client is None or addresses.client_hash(tx, client) != line.get("who"):
        return None
    return client


def close_addresses(tx: Tx, lines: Sequence[Line], now: datetime) -> int:
    """Close the open contacts whose address the journal has closed last; return how many."""
    closed = 0
    told = [line for line in lines if line["what"] in ("closed", "opened")]
    known = {line["address"] for line in told}
    for contact in tx.exec(select(Contact).where(Contact.consent == "open").order_by(col(Contact.id))).all():
        address = addresses.address_hash(tx, contact.address)
        if address not in known:
            continue
        states = [
            line["what"] for line in told if line["address"] == address and line["client"] in (None, contact.client_id)
        ]
        client = tx.get(Client, contact.client_id)
        if states and states[-1] == "closed" and client is not None:
            clinic = clients.the_clinic(tx, client.clinic_id)
            closing = consent.Closing("withdrawn", how="kept in the journal", by=BY)
            consent.close_contacts(tx, clinic, [contact], {contact.client_id: client}, closing, now, for_all=False)
            closed += 1
    return closed


def apply(
    tx: Tx, texts: Texts, client: Client, line: Line, later: Sequence[Line], done: Reapplied, now: datetime
) -> None:
    """Put one line in force, unless the database knows it already."""
    what = line["what"]
    if what == "hold" and not is_ended(line, later) and not has_hold(tx, client, line["rule"]):
        hold.open_hold(tx, client, line["rule"], BY, now, note="kept in the journal")
        done.holds += 1
    elif what == "death" and client.died_on is None:
        client.died_on = date.fromisoformat(line["on"])
        outbox.withdraw(tx, now, "death", client_id=client.id or 0)
        done.deaths += 1
    elif what == "discharge" and client.state != "closed" and not is_followed(line, later, "reopened", "client"):
        client.state, client.closed_at = "closed", datetime.fromisoformat(line["at"])
        client.closed_reason = line["reason"]
        outbox.withdraw(tx, now, "client closed", client_id=client.id or 0)
        done.discharged += 1
    elif what == "reopened" and client.state != "closed" and not is_followed(line, later, "opened", "client"):
        invite_again(tx, client, now)
    elif what == "erasure" and client.closed_reason != "erased":
        erase.erase(tx, texts, client.clinic_id, client.id or 0, BY, "erased before the restore", now)
        done.erased += 1


def invite_again(tx: Tx, client: Client, now: datetime) -> None:
    """Let a client who was discharged and opened again wait for the consent that she had not given anew."""
    client.state, client.active_on = "invited", None
    for contact in clients.contacts_of(tx, client.id or 0):
        if contact.consent == "open":
            contact.consent, contact.consent_changed_at = "none", now
    outbox.withdraw(tx, now, "client closed", client_id=client.id or 0)
    tx.flush()
    plan.replan(tx, client, now)


def has_hold(tx: Tx, client: Client, rule: str) -> bool:
    """Return whether a hold of that rule stops a client; one of another rule may end before it."""
    open_ones = select(Hold.id).where(Hold.client_id == client.id, Hold.rule == rule, col(Hold.ended_at).is_(None))
    return tx.exec(open_ones.limit(1)).first() is not None


def is_ended(line: Line, later: Sequence[Line]) -> bool:
    """Return whether a hold was ended after it was opened; the end of another rule's hold leaves it open."""
    return is_followed(line, later, "hold ended", "client", "rule")


def is_followed(line: Line, later: Sequence[Line], what: str, *same: str) -> bool:
    """Return whether a line of that kind comes after another one, about the same in each of the fields named."""
    place = next(at for at, one in enumerate(later) if one is line)
    return any(one["what"] == what and all(one[name] == line[name] for name in same) for one in later[place + 1 :])
