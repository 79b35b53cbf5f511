"""Writes of other programs: the same Idempotency-Key gets the same answer, and the thing is done once."""

import hashlib
from collections.abc import Callable
from dataclasses import dataclass
from typing import Annotated, Any

from fastapi import Depends, Header, Request
from fastapi.encoders import jsonable_encoder
from sqlalchemy.exc import IntegrityError
from sqlmodel import select
from starlette.responses import JSONResponse

from reminders.errors import BadInput
from reminders.store.db import Tx
from reminders.store.tables import IdempotentAnswer
from reminders.web.api.tokens import Caller, TokenDep
from reminders.web.deps import AppDep
from reminders.wiring import App

Act = Callable[[Tx], Any]
Key = Annotated[
    str | None,
    Header(
        alias="Idempotency-Key",
        description="A name of your own for this write; sent again, it gets the same answer and nothing is done twice.",
        min_length=1,
        max_length=100,
        pattern=r"^[\x21-\x7e]+$",
    ),
]


@dataclass(frozen=True)
class Once:
    """One write of one caller."""

    app: App
    caller: Caller
    key: str | None
    request: str  # method and path

    def __call__(self, body: Any, act: Act, status: int = 200) -> JSONResponse:
        """Do it in one transaction and answer; or give the answer that this key got before."""
        asked = hashlib.sha256(f"{self.request} {jsonable_encoder(body)!r}".encode()).hexdigest()
        for _ in range(2):
            try:
                return self.attempt(asked, act, status)
            except IntegrityError:
                if self.key is None:
                    raise
        return self.attempt(asked, act, status)

    def attempt(self, asked: str, act: Act, status: int) -> JSONResponse:
        """Do it, unless this key has its answer already."""
        with self.app.db.begin() as tx:
            there = self.earlier(tx)
            if there is not None:
                if there.request_hash != asked:
                    raise BadInput("Idempotency-Key: this key was used for another request; take a new one.")
                return JSONResponse(there.body["body"], there.status, {"Idempotent-Replayed": "true"})
            answer = jsonable_encoder(act(tx))
            if self.key is not None:
                kept = IdempotentAnswer(
                    token_id=self.caller.token_id,
                    key=self.key,
                    request_hash=asked,
                    status=status,
                    body={"body": answer},
                    at=self.caller.now,
                )
                tx.add(kept)
                tx.flush()
        return JSONResponse(answer, status)

    def earlier(self, tx: Tx) -> IdempotentAnswer | None:
        """Return the answer that this key got."""
        if self.key is None:
            return None
        statement = select(IdempotentAnswer).where(
            IdempotentAnswer.token_id == self.caller.token_id, IdempotentAnswer.key == self.key
        )
        return tx.exec(statement).first()


def once_of(request: Request, app: AppDep, caller: TokenDep, key: Key = None) -> Once:
    """Return the way to write once."""
    return Once(app, caller, key, f"{request.method} {request.url.path}")


OnceDep = Annotated[Once, Depends(once_of)]
