"""One-time sign-in links: made, mailed, used once. What a session is once somebody is in belongs to the web."""

import hashlib
import secrets
from datetime import datetime, timedelta

from sqlalchemy import update
from sqlmodel import col, select

from reminders.flows import say
from reminders.store import outbox
from reminders.store.db import Tx
from reminders.store.tables import Clinic, SignInLink, Staff

# Out-of-band codes live ten minutes at most (OWASP ASVS 5.0, 6.5.5). A new staff member's first link is handed over by
# her admin, who may not find her at once: 24 hours, random and short-lived as 6.4.1 asks.
LIVES, FIRST_LIVES = timedelta(minutes=10), timedelta(hours=24)


def make_link(tx: Tx, staff: Staff, now: datetime, *, first: bool = False) -> str:
    """Return the token of a new one-time link; only its hash is kept, and earlier unused links stop working."""
    tx.execute(
        update(SignInLink)
        .where(col(SignInLink.staff_id) == staff.id, col(SignInLink.used_at).is_(None))
        .values(used_at=now)
    )
    token = secrets.token_urlsafe(32)
    lives = FIRST_LIVES if first else LIVES
    tx.add(SignInLink(staff_id=staff.id or 0, token_hash=kept(token), made_at=now, expires_at=now + lives))
    tx.flush()
    return token


def kept(token: str) -> str:
    """Return what is kept of a link's token."""
    return hashlib.sha256(token.encode()).hexdigest()


def mail_link(tx: Tx, clinic: Clinic, staff: Staff, base: str, now: datetime, *, first: bool = False) -> None:
    """Make a link and mail it to her; `base` is the service's public address."""
    token = make_link(tx, staff, now, first=first)
    details = {"link": f"{base}/sign-in/{token}", "lives": "24 hours" if first else "10 minutes"}
    key = outbox.staff_key("sign_in", staff.id or 0, kept(token)[:16])
    say.tell_staff(tx, clinic, staff, "sign_in", "sign_in", details, now, lambda _: key, channels=("email",))


def holder_of(tx: Tx, token: str, now: datetime) -> Staff | None:
    """Return whose unused link this is, None when it is unknown, used or too old; nothing is changed."""
    row = tx.exec(select(SignInLink).where(SignInLink.token_hash == kept(token))).first()
    if row is None or row.used_at is not None or now > row.expires_at:
        return None
    staff = tx.get(Staff, row.staff_id)
    return staff if staff and staff.is_active else None


def use_link(tx: Tx, token: str, now: datetime) -> Staff | None:
    """Return whose link this is and use it up; of two at once only one gets in."""
    staff = holder_of(tx, token, now)
    if staff is None:
        return None
    statement = update(SignInLink).where(
        col(SignInLink.token_hash) == kept(token), col(SignInLink.used_at).is_(None), col(SignInLink.expires_at) >= now
    )
    result = tx.execute(statement.values(used_at=now))
    return staff if result.rowcount == 1 else None  # type: ignore[attr-defined]
