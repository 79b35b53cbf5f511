"""A clinic's own details and wording, changed within what is safe; each change is a line in the audit log."""

import re
from collections.abc import Mapping, Sequence
from datetime import date, datetime, timedelta
from typing import Any

from sqlmodel import col, or_, select

from reminders.core.clinic_fields import READERS
from reminders.core.languages import LANGUAGES
from reminders.core.schedule import local_date, parse_window
from reminders.core.segments import parts, plain
from reminders.errors import BadInput
from reminders.flows import audit, plan
from reminders.store.db import Tx, lock_clients
from reminders.store.tables import Client, Clinic, ExerciseSession, Schedule
from reminders.texts import Texts, squeezed

# Texts that a clinic may word for itself, the values that each must keep, and the words it must say: who writes, that a
# computer reads, the emergency number, how to end it. Every other text carries safety or the record and stays as it is.
WORDABLE: dict[str, tuple[str, ...]] = {
    "welcome": ("clinic", "days", "time", "emergency", "phone"),
    "help": ("clinic", "phone", "emergency"),
    "therapist_note": ("writer", "words"),
}
MUST_SAY = {
    "en/welcome": ("STOP", "HELP", "computer"),
    "es/welcome": ("ALTO", "AYUDA", "computadora"),
    "en/help": ("STOP", "computer"),
    "es/help": ("STOP", "computadora"),
}
MOST_PARTS = 3
FIELDS = tuple(READERS)
CALLED = {name: name.replace("_", " ") for name in FIELDS}
VALUE = re.compile(r"\{\{[^{}]*\}\}")
NAME = re.compile(r"\{\{\s*([a-z_]+)")


def change(
    tx: Tx,
    clinic: Clinic,
    given: Mapping[str, str],
    by: str,
    now: datetime,
    called: Mapping[str, str] = CALLED,
) -> list[str]:
    """Keep changed details; return their names. Nothing is kept when anything is wrong: BadInput names the field, as
    it is `called` where it was filled in.
    """
    changes: dict[str, Any] = {}
    closed_before = list(clinic.closed_days)
    for name, text in given.items():
        try:
            value = READERS[name](text)
        except ValueError as error:
            raise BadInput(f"{called[name]}: {error}.") from None
        if getattr(clinic, name) != value:
            changes[name] = value
    if "window" in changes:
        refuse_shutting_out(tx, clinic, changes["window"], called["window"])
    for name, value in changes.items():
        setattr(clinic, name, value)
    tx.add(clinic)
    tx.flush()
    if "closed_days" in changes:
        plan_around(tx, clinic, closed_before, now)
    if changes:
        audit.record(tx, clinic.id, by, "clinic changed", None, {"fields": sorted(changes)}, now)
    return sorted(changes)


def refuse_shutting_out(tx: Tx, clinic: Clinic, window: str, field: str) -> None:
    """Raise BadInput for a window that leaves out the hour of a client who has no window of her own."""
    first, last = parse_window(window)
    statement = (
        select(Schedule.client_id, Schedule.time)
        .join(Client, col(Client.id) == col(Schedule.client_id))
        .where(Client.clinic_id == clinic.id, Client.window == "", Client.state != "closed")
        .order_by(col(Schedule.client_id), col(Schedule.from_on))
    )
    newest = dict(tx.exec(statement).all())
    shut_out = sorted(hour for hour in newest.values() if not first <= hour < last)
    if shut_out:
        raise BadInput(
            f"{field}: it leaves out the reminder hours of clients ({len(shut_out)} of them, the first at "
            f"{shut_out[0]}); change those hours first."
        )


def plan_around(tx: Tx, clinic: Clinic, closed_before: Sequence[str], now: datetime) -> None:
    """Plan anew the clients whose next session falls on a closed day, or after one that is open again."""
    first = local_date(now, clinic.time_zone) - timedelta(days=1)
    closed = [day for text in clinic.closed_days if (day := date.fromisoformat(text)) >= first]
    opened = [date.fromisoformat(text) for text in closed_before if text not in clinic.closed_days]
    after = min((day for day in opened if day >= first), default=date.max)
    if not closed and after == date.max:
        return
    statement = (
        select(Client)
        .join(ExerciseSession, col(ExerciseSession.client_id) == col(Client.id))
        .where(
            Client.clinic_id == clinic.id,
            ExerciseSession.state == "planned",
            col(ExerciseSession.queued_at).is_(None),
            or_(col(ExerciseSession.on_date).in_(closed), col(ExerciseSession.on_date) > after),
        )
        .order_by(col(Client.id))
    )
    found = list(tx.exec(statement))
    lock_clients(tx, [client.id for client in found])
    for client in found:
        plan.replan(tx, client, now)


def reword(tx: Tx, clinic: Clinic, texts: Texts, language: str, name: str, words: str, by: str, now: datetime) -> None:
    """Keep a clinic's own wording of a text; an empty one brings ours back. Raises BadInput with what is not safe."""
    if language not in LANGUAGES or name not in WORDABLE:
        raise BadInput("This text cannot be changed; safety wording stays as it is.")
    key = f"{language}/{name}"
    own = dict(clinic.wording)
    if words.strip():
        refuse_unsafe(texts, language, name, words.strip())
        own[key] = words.strip()
    else:
        own.pop(key, None)
    clinic.wording = own
    tx.add(clinic)
    audit.record(tx, clinic.id, by, "wording changed", None, {"text": key, "own": key in own}, now)


def ours(texts: Texts, language: str, name: str) -> str:
    """Return our own wording of a text that a clinic may change."""
    return (texts.folder / "texts" / language / f"{name}.txt").read_text(encoding="utf-8").strip()


def refuse_unsafe(texts: Texts, language: str, name: str, words: str) -> None:
    """Raise BadInput unless a wording keeps its values, says what it must, fits, and does not begin with bare Stop.

    Only the values of our own wording may stand in it, written as there: anything else could run as a template.
    """
    known = set(VALUE.findall(ours(texts, language, name)))
    used = VALUE.findall(words)
    if foreign := [value for value in used if value not in known]:
        raise BadInput(f"{foreign[0]} cannot be used here; use: {', '.join(sorted(known))}.")
    rest = VALUE.sub(" ", words)
    if any(sign in rest for sign in ("{", "}")):
        raise BadInput("The signs { and } stand only around values, as in our own wording.")
    names = {found[1] for value in used if (found := NAME.match(value))}
    if missing := [value for value in WORDABLE[name] if value not in names]:
        raise BadInput(f"The wording must keep the value {missing[0]}.")
    for word in MUST_SAY.get(f"{language}/{name}", ()):
        if word not in rest:
            raise BadInput(f"The wording must keep the word {word}.")
    first = plain(squeezed(words)).split(maxsplit=1)[0].strip(".,!:;").upper()
    if first in ("STOP", "ALTO", "PARE"):
        raise BadInput(
            "A message must not begin with the word Stop: it draws the answer STOP, which ends all messages."
        )
    if parts(plain(VALUE.sub("x" * 12, words))) > MOST_PARTS:
        raise BadInput("The wording is too long: it would take more than three text parts.")
