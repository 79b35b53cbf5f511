"""Bearer tokens of other programs: found by their hash, of one clinic, with scopes. Making one is a command."""

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Annotated

from fastapi import Depends, Request
from sqlalchemy import update
from sqlmodel import col, select

from reminders.errors import BadInput
from reminders.store import clients
from reminders.store.db import Tx
from reminders.store.tables import ApiToken, Clinic
from reminders.web.auth import token_hash
from reminders.web.refusals import MissingScope, NoToken
from reminders.web.sight import Sight
from reminders.wiring import App

USED_EVERY = timedelta(minutes=1)  # the last use is noted at most this often
DECIDING = ("therapist", "lead")


@dataclass(frozen=True)
class Caller:
    """The program that calls: its token, clinic and what it may do."""

    token_id: int
    clinic_id: int
    scopes: tuple[str, ...]
    time_zone: str
    now: datetime

    @property
    def by(self) -> str:
        """Who the audit log names."""
        return f"token {self.token_id}"

    @property
    def sight(self) -> Sight:
        """What it sees: its whole clinic, as far as its scopes go."""
        return Sight(self.clinic_id)

    def staff_named(self, tx: Tx, email: str, roles: tuple[str, ...] = DECIDING) -> str:
        """Return the e-mail of the staff member in whose name it acts; raises BadInput for anybody who may not."""
        staff = clients.staff_by_email(tx, email)
        if staff is None or staff.clinic_id != self.clinic_id or not staff.is_active or staff.role not in roles:
            raise BadInput(f"by: name a staff member of the clinic who is at work ({', '.join(roles)}).")
        return staff.email


def check_token(request: Request, app: App, scope: str) -> None:
    """Put the caller on the request; raises NoToken or MissingScope."""
    scheme, _, given = request.headers.get("authorization", "").partition(" ")
    if scheme.lower() != "bearer" or not given.strip():
        raise NoToken
    now = app.clock()
    with app.db.read() as tx:
        found = tx.exec(
            select(ApiToken, Clinic)
            .join(Clinic, col(ApiToken.clinic_id) == col(Clinic.id))
            .where(ApiToken.token_hash == token_hash(given.strip()), col(ApiToken.revoked_at).is_(None))
        ).first()
    if found is None:
        raise NoToken
    token, clinic = found
    scopes = tuple(token.scopes.split())
    if scope not in scopes:
        raise MissingScope(scope)
    if token.last_used_at is None or now - token.last_used_at > USED_EVERY:
        with app.db.begin() as tx:
            tx.execute(update(ApiToken).where(col(ApiToken.id) == token.id).values(last_used_at=now))
    request.state.caller = Caller(token.id or 0, token.clinic_id, scopes, clinic.time_zone, now)


def caller_of(request: Request) -> Caller:
    """Return the program that calls; the guard has put it there."""
    found: Caller = request.state.caller
    return found


TokenDep = Annotated[Caller, Depends(caller_of)]
