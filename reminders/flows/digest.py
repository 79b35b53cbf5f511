"""The weekly digest of each therapist: made on Monday at 07:00 clinic time for the ISO week before, kept, and mailed.

What it says is computed in `core.digest`, read by `store.digest_facts`. The kept one has names, words and ratings and
is seen behind sign-in; the mail has initials and client numbers and, unless the clinic switched them on, no ratings
and no words.
"""

from collections.abc import Iterator
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import select as columns
from sqlmodel import col, select

from reminders.core import digest as values_of
from reminders.core.schedule import at_local, local_date
from reminders.flows import say
from reminders.flows.explain import initials, rule_name
from reminders.store import clients, marks, outbox
from reminders.store.db import Database, Tx, ask
from reminders.store.digest_facts import facts_of
from reminders.store.tables import Client, Clinic, Digest, Staff
from reminders.texts import Mail, Texts
from reminders.texts_said import said_date

HOUR = "07:00"
MOST_WEEKS = 8  # so many weeks back digests are made up for: older ones help nobody
LANGUAGE = "en"  # staff are written to in English
ZONES = columns(col(Clinic.id), col(Clinic.time_zone)).where(col(Clinic.name) != "").order_by(col(Clinic.id))
DATES = ("on", "from", "until", "last_on", "recheck_on", "end_on", "paused_until")


def run(db: Database, texts: Texts, now: datetime) -> int:
    """Make, keep and queue every digest that is due and not made yet; return how many."""
    done = 0
    with db.read() as tx:
        due = list(weeks_due(tx, now))
    for clinic_id, week in due:
        with db.read() as tx:
            therapist_ids = tx.exec(therapists(clinic_id)).all()
        for therapist_id in therapist_ids:
            with db.begin() as tx:
                done += make(tx, texts, clinic_id, therapist_id, week, now)
        with db.begin() as tx:
            marks.set_mark(tx, mark_name(clinic_id), at=now, value=week)
    return done


def weeks_due(tx: Tx, now: datetime) -> Iterator[tuple[int, str]]:
    """Yield each clinic with a week whose digests are due and not made yet, oldest first.

    After a stop over several Mondays each week is made, the newest `MOST_WEEKS` of them; at first only the newest.
    """
    for clinic_id, time_zone in ask(tx, ZONES).all():
        week = week_due(time_zone, now)
        made = marks.mark(tx, mark_name(clinic_id))
        if made is not None and made.value >= week:
            continue
        newest = values_of.week_days(week)[0]
        back = MOST_WEEKS if made is not None else 1
        for late in reversed(range(back)):
            one = values_of.week_of(newest - timedelta(weeks=late))
            if made is None or one > made.value:
                yield clinic_id, one


def mark_name(clinic_id: int) -> str:
    """Return the name of the mark that says up to which week a clinic's digests are made."""
    return f"digests {clinic_id}"


def week_due(time_zone: str, now: datetime) -> str:
    """Return the newest ISO week whose digest is due: the one before, from Monday 07:00 local on."""
    today = local_date(now, time_zone)
    monday = today - timedelta(days=today.weekday())
    late = now >= at_local(monday, HOUR, time_zone)
    return values_of.week_of(monday - timedelta(days=7 if late else 14))


def therapists(clinic_id: int) -> Any:
    """Return the question for the active staff who have clients."""
    return (
        select(Staff.id)
        .where(Staff.clinic_id == clinic_id, col(Staff.is_active).is_(True))
        .where(select(Client.id).where(Client.therapist_id == Staff.id).exists())
        .order_by(col(Staff.id))
    )


def make(tx: Tx, texts: Texts, clinic_id: int, therapist_id: int, week: str, now: datetime) -> int:
    """Make, keep and queue one therapist's digest; 0 when it was made before or she had no client to tell of."""
    kept = tx.exec(select(Digest.id).where(Digest.therapist_id == therapist_id, Digest.week == week)).first()
    clinic, therapist = clients.the_clinic(tx, clinic_id), tx.get(Staff, therapist_id)
    if kept is not None or therapist is None:
        return 0
    values = computed(tx, clinic, therapist, week, now)
    if not values["clients"]:
        return 0
    mail = rendered(texts, clinic, therapist, values)
    tx.add(Digest(therapist_id=therapist_id, week=week, values=values, text=mail.text, html=mail.html, made_at=now))
    tx.flush()
    send(tx, clinic, therapist, values, now)
    return 1


def computed(tx: Tx, clinic: Clinic, therapist: Staff, week: str, now: datetime) -> dict[str, Any]:
    """Return the values of a week's digest as they are now."""
    values = values_of.digest(week, facts_of(tx, clinic, therapist, week, now))
    return {"therapist": therapist.name, **values}


def send(tx: Tx, clinic: Clinic, therapist: Staff, values: dict[str, Any], now: datetime) -> None:
    """Queue the mail to the therapist and, while she is away, to her cover."""
    details = {"digest": with_words(values), "shows_words": clinic.words_in_mail, "discreet": True}
    week = values["week"]
    mail = ("email",)
    say.tell_staff(
        tx, clinic, therapist, "digest", "digest", details, now,
        lambda _channel: outbox.digest_key(therapist.id or 0, week), channels=mail,
    )  # fmt: skip
    cover = tx.get(Staff, therapist.cover_id) if therapist.cover_id else None
    if cover is not None and cover.is_active and clients.on_leave(therapist, local_date(now, clinic.time_zone)):
        say.tell_staff(
            tx, clinic, cover, "digest", "digest", details, now,
            lambda _channel: outbox.staff_key("digest", cover.id or 0, f"{therapist.id}:{week}"), channels=mail,
        )  # fmt: skip


def rendered(texts: Texts, clinic: Clinic, therapist: Staff, values: dict[str, Any]) -> Mail:
    """Return the full digest as it is kept and shown behind sign-in."""
    shown = {
        "digest": with_words(values),
        "shows_words": True,
        "discreet": False,
        "staff": therapist.name,
        "clinic": clinic.name,
        "phone": clinic.phone,
        "language": LANGUAGE,
    }
    return texts.mail("digest", LANGUAGE, shown)


def with_words(value: Any, language: str = LANGUAGE) -> Any:
    """Return the values with words beside them: a rule's name, a date as it is said, a name's initials."""
    if isinstance(value, list):
        return [with_words(one, language) for one in value]
    if not isinstance(value, dict):
        return value
    made = {key: with_words(one, language) for key, one in value.items()}
    for key in DATES:
        if isinstance(value.get(key), str):
            made[f"{key}_said"] = said_date(datetime.fromisoformat(value[key]).date(), language)
    if value.get("rule"):
        made["rule_name"] = rule_name(value["rule"], language)
    if "kind" in value and "grade" in value:
        made["kind_name"] = rule_name(value["kind"], language)
    if "name" in value:
        made["initials"] = initials(value["name"])
    return made


def without(values: dict[str, Any], client_id: int) -> dict[str, Any]:
    """Return a digest's values without one client's lines; the sums stay as they were sent."""
    return {
        name: [row for row in value if row["id"] != client_id] if name in ("attention", "clients") else value
        for name, value in values.items()
    }


def kept(tx: Tx, therapist: Staff, week: str) -> Digest | None:
    """Return a digest as it was made, None when it was not."""
    return tx.exec(select(Digest).where(Digest.therapist_id == therapist.id, Digest.week == week)).first()


def is_kept(tx: Tx, therapist: Staff, week: str) -> bool:
    """Return whether a digest was made; a kept one is wide, and often only this is asked."""
    statement = select(Digest.id).where(Digest.therapist_id == therapist.id, Digest.week == week)
    return tx.exec(statement.limit(1)).first() is not None
