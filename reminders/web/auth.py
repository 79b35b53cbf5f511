"""Sessions of signed-in staff: begun, found, kept alive, ended on the server. The cookie holds only a random token.

Idle end after 15 minutes, since the desk's screen is in the open; absolute end after 12 hours, a long working day
(limits are to be written down with their reasons: OWASP ASVS 5.0, 7.1.1; automatic logoff: 45 CFR
164.312(a)(2)(iii), which gives no minutes). Tokens carry 256 random bits (128 are asked: 7.2.3).
"""

import hashlib
import hmac
import secrets
from dataclasses import dataclass
from datetime import datetime, timedelta

from sqlalchemy import update
from sqlmodel import col, select

from reminders.store.db import Tx
from reminders.store.tables import Clinic, Staff, WebSession

IDLE, ABSOLUTE = timedelta(minutes=15), timedelta(hours=12)
WARN_SECONDS = 60  # at least 20 s to extend: WCAG 2.2, success criterion 2.2.1
SEEN_EVERY = timedelta(seconds=10)  # a page writes the idle time at most this often
CONFIRMED_FOR = timedelta(minutes=10)


@dataclass(frozen=True)
class Person:
    """Who is signed in, for the length of one request."""

    staff_id: int
    clinic_id: int
    role: str
    name: str
    email: str
    session_id: int
    csrf: str
    idle_until: datetime
    ends_at: datetime
    confirmed_at: datetime | None
    has_password: bool
    clinic_name: str
    time_zone: str
    is_demo: bool


def token_hash(token: str) -> str:
    """Return what is kept of a random token; it is long enough that a plain hash cannot be searched."""
    return hashlib.sha256(token.encode()).hexdigest()


def begin_session(tx: Tx, staff: Staff, now: datetime) -> str:
    """Begin a session and return its token; every sign-in gets a new one (OWASP ASVS 5.0, 7.2.4)."""
    token = secrets.token_urlsafe(32)
    tx.add(
        WebSession(
            token_hash=token_hash(token),
            staff_id=staff.id or 0,
            csrf=secrets.token_urlsafe(24),
            began_at=now,
            seen_at=now,
            confirmed_at=now,
        )
    )
    return token


def find_session(tx: Tx, token: str) -> tuple[WebSession, Staff, Clinic] | None:
    """Return the session that a cookie names with its person and clinic, ended or not."""
    if not token:
        return None
    statement = (
        select(WebSession, Staff, Clinic)
        .join(Staff, col(WebSession.staff_id) == col(Staff.id))
        .join(Clinic, col(Staff.clinic_id) == col(Clinic.id))
        .where(WebSession.token_hash == token_hash(token))
    )
    return tx.exec(statement).first()


def is_live(session: WebSession, staff: Staff, now: datetime) -> bool:
    """Return whether a session still counts."""
    if session.ended_at is not None or not staff.is_active:
        return False
    return now - session.seen_at <= IDLE and now - session.began_at <= ABSOLUTE


def person_from(session: WebSession, staff: Staff, clinic: Clinic, seen_at: datetime) -> Person:
    """Return the person of a live session."""
    return Person(
        staff_id=staff.id or 0,
        clinic_id=staff.clinic_id,
        role=staff.role,
        name=staff.name,
        email=staff.email,
        session_id=session.id or 0,
        csrf=session.csrf,
        idle_until=min(seen_at + IDLE, session.began_at + ABSOLUTE),
        ends_at=session.began_at + ABSOLUTE,
        confirmed_at=session.confirmed_at,
        has_password=bool(staff.password_hash),
        clinic_name=clinic.name,
        time_zone=clinic.time_zone,
        is_demo=clinic.is_demo,
    )


def is_our_form(session: WebSession, given: str) -> bool:
    """Return whether a form was made for this session."""
    return hmac.compare_digest(session.csrf.encode(), given.encode())


def seen(tx: Tx, session_id: int, now: datetime) -> None:
    """Note that a session was used at an instant."""
    tx.execute(
        update(WebSession)
        .where(col(WebSession.id) == session_id, col(WebSession.seen_at) < now, col(WebSession.ended_at).is_(None))
        .values(seen_at=now)
    )


def confirmed(tx: Tx, session_id: int, now: datetime) -> None:
    """Note that she proved again who she is."""
    tx.execute(update(WebSession).where(col(WebSession.id) == session_id).values(confirmed_at=now, seen_at=now))


def end_session(tx: Tx, session_id: int, now: datetime) -> None:
    """End one session."""
    tx.execute(
        update(WebSession)
        .where(col(WebSession.id) == session_id, col(WebSession.ended_at).is_(None))
        .values(ended_at=now)
    )


def end_all_sessions(tx: Tx, staff_id: int, now: datetime, keep: int = 0) -> None:
    """End every session of a staff member but one: after a new password, a new role, or when she is switched off."""
    tx.execute(
        update(WebSession)
        .where(col(WebSession.staff_id) == staff_id, col(WebSession.ended_at).is_(None), col(WebSession.id) != keep)
        .values(ended_at=now)
    )
