"""Bearer tokens of other programs: found by their hash, of one clinic, with scopes."""

from dataclasses import dataclass
from datetime import timedelta
from typing import Annotated

from fastapi import Depends, Request
from sqlalchemy import update
from sqlmodel import col, select

from reminders.store.tables import ApiToken, Clinic
from reminders.web.auth import token_hash
from reminders.wiring import App

USED_EVERY = timedelta(minutes=1)  # the last use is noted at most this often


class NoToken(Exception):
    """A valid bearer token is needed."""


class MissingScope(Exception):
    """The token does not carry the scope that this needs."""


@dataclass(frozen=True)
class Caller:
    """The program that calls: its token, clinic and what it may do."""

    token_id: int
    clinic_id: int
    by: str
    scopes: tuple[str, ...]
    time_zone: str


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
    name = f"token {token.id}"
    request.state.caller = Caller(token.id or 0, token.clinic_id, name, scopes, clinic.time_zone)


def caller_of(request: Request) -> Caller:
    """Return the program that calls; the guard has put it there."""
    found: Caller = request.state.caller
    return found


TokenDep = Annotated[Caller, Depends(caller_of)]
