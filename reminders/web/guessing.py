"""Slowing whoever guesses passwords or codes, an account and a network address at a time.

Nobody is locked out: the owner at another address is not slowed by a stranger's tries (OWASP ASVS 5.0, 6.1.1, 6.3.1).
An address that tries many accounts is slowed as a whole. Only keyed hashes of both are kept.
"""

from collections.abc import Sequence
from datetime import datetime, timedelta

from sqlmodel import col, delete, select

from reminders.core.tokens import GUESSING, proof
from reminders.store.db import Tx
from reminders.store.tables import SignInTry

# Five free tries for one account, thirty for one address over all accounts: common practice, no source.
FREE_TRIES, FREE_TRIES_IN_ALL = 5, 30
LONGEST_WAIT = timedelta(minutes=15)
FORGOTTEN_AFTER = timedelta(hours=24)


def names_of(secrets: Sequence[str], email: str, address: str) -> tuple[tuple[str, int], tuple[str, int]]:
    """Return what tries are counted under, each with its free tries: this account from here, any account from here."""
    return (
        (proof(secrets[0], GUESSING, f"{email.strip().lower()} {address}"), FREE_TRIES),
        (proof(secrets[0], GUESSING, address), FREE_TRIES_IN_ALL),
    )


def wait_for(tx: Tx, secrets: Sequence[str], email: str, address: str, now: datetime) -> timedelta:
    """Return how long she must wait before the next try counts; zero when she may try now."""
    free = dict(names_of(secrets, email, address))
    rows = tx.exec(select(SignInTry).where(col(SignInTry.who).in_(free)))
    waits = [row.last_at + wait_after(row.failures - free[row.who]) - now for row in rows]
    return max([*waits, timedelta(0)])


def wait_after(beyond: int) -> timedelta:
    """Return the wait after this many failures beyond the free ones: doubling from two seconds."""
    if beyond < 0:
        return timedelta(0)
    return min(timedelta(seconds=2 ** min(beyond + 1, 12)), LONGEST_WAIT)


def failed(tx: Tx, secrets: Sequence[str], email: str, address: str, now: datetime) -> None:
    """Count one failed try."""
    tx.exec(delete(SignInTry).where(col(SignInTry.last_at) < now - FORGOTTEN_AFTER))
    for who, _ in names_of(secrets, email, address):
        row = tx.exec(select(SignInTry).where(SignInTry.who == who)).first() or SignInTry(who=who, last_at=now)
        row.failures += 1
        row.last_at = now
        tx.add(row)


def succeeded(tx: Tx, secrets: Sequence[str], email: str, address: str) -> None:
    """Forget this account's failures from here; those of the address stay."""
    (who, _), _ = names_of(secrets, email, address)
    tx.exec(delete(SignInTry).where(col(SignInTry.who) == who))
