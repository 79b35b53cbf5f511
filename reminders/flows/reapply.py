"""What the journal says and a restored database does not know: closed addresses, holds, deaths, discharges, erasures.

Nothing is opened by it: an address that the journal has closed and opened again stays as the database has it.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from sqlmodel import col, select

from reminders.flows import consent, erase, hold, plan
from reminders.store import addresses, clients, journal, outbox
from reminders.store.db import Tx
from reminders.store.shapes import stamp
from reminders.store.tables import Client, Clinic, ConsentEvent, Contact, Hold
from reminders.texts import Texts

Line = dict[str, Any]
BY, HOW = journal.BY, "kept in the journal"


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
    keep_closings(tx, lines, now)
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
            closing = consent.Closing("withdrawn", how=HOW, by=BY)
            consent.close_contacts(tx, clinic, [contact], {contact.client_id: client}, closing, now, for_all=False)
            closed += 1
    return closed


def keep_closings(tx: Tx, lines: Sequence[Line], now: datetime) -> None:
    """Keep in the consent history where the journal has an opt-out that the file does not know; once.

    An address whose client is enrolled again, or was only invited, must not be opened at the desk: it comes back only
    by a reply from it. The opt-out of a client whom the file does not hold counts for all on the address.
    """
    clear, known = told_already(tx)
    first = tx.exec(select(Clinic).order_by(col(Clinic.id)).limit(1)).one()
    for address, told in standing(lines).items():
        found = [(line, client_of(tx, line)) for line in told]
        found = [(line, client) for line, client in found if line["what"] == "closed" or client is not None]
        found.sort(key=lambda pair: pair[1] is not None)  # what counts for all comes before each client's own
        opted_out = any(line["what"] == "closed" for line, _ in found)
        if not opted_out or all((address, line["at"], line["what"]) in known for line, _ in found):
            continue
        for line, client in found:
            made = ConsentEvent(
                clinic_id=client.clinic_id if client else first.id or 0,
                address=clear.get(address, address),
                kind=line["kind"],
                change="closed" if line["what"] == "closed" else "restored",
                client_id=client.id if client else None,
                how=HOW,
                by=BY,
                at=datetime.fromisoformat(line["at"]) if line["at"] else now,
            )
            tx.add(made)
            tx.flush()


def told_already(tx: Tx) -> tuple[dict[str, str], set[tuple[str, str | None, str]]]:
    """Return the addresses that the file holds, by their hashes, and which lines its own history stands for."""
    events = list(tx.exec(select(ConsentEvent)))
    plain = {one.address for one in events} | set(tx.exec(select(Contact.address)))
    hashes = {one: one if one.startswith(addresses.HASHED) else addresses.address_hash(tx, one) for one in plain}
    known = {
        (hashes[one.address], stamp(one.at), "closed" if one.change in journal.CLOSING else "opened") for one in events
    }
    return {hashed: one for one, hashed in hashes.items()}, known


def standing(lines: Sequence[Line]) -> dict[str, list[Line]]:
    """Return, by address, the last opt-out for all on it and the last word of each client since; a number that was
    merely taken from a record is no opt-out.
    """
    found: dict[str, dict[int | None, Line]] = {}
    for line in lines:
        if line["what"] not in ("closed", "opened") or line.get("taken_away"):
            continue
        told = found.setdefault(line["address"], {})
        if line["client"] is None:
            told.clear()
        told.pop(line["client"], None)
        told[line["client"]] = line
    return {address: list(told.values()) for address, told in found.items()}


def apply(
    tx: Tx, texts: Texts, client: Client, line: Line, later: Sequence[Line], done: Reapplied, now: datetime
) -> None:
    """Put one line in force, unless the database knows it already."""
    what = line["what"]
    if what == "hold" and not is_ended(line, later) and not has_hold(tx, client, line["rule"]):
        hold.open_hold(tx, client, line["rule"], BY, now, note=HOW)
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
