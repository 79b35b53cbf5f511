"""Who may come in, and what was done: sign-in links, web sessions, tokens, the audit log."""

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, Index, UniqueConstraint
from sqlmodel import Field, SQLModel


class SignInLink(SQLModel, table=True):
    """A one-time sign-in link; only its hash is kept."""

    __tablename__ = "sign_in_link"

    id: int | None = Field(default=None, primary_key=True)
    staff_id: int = Field(foreign_key="staff.id", index=True)
    token_hash: str = Field(unique=True)
    made_at: datetime
    expires_at: datetime
    used_at: datetime | None = None


class WebSession(SQLModel, table=True):
    """A signed-in browser; ended on the server at sign-out, idle or absolute end."""

    __tablename__ = "web_session"

    id: int | None = Field(default=None, primary_key=True)
    token_hash: str = Field(unique=True)
    staff_id: int = Field(foreign_key="staff.id", index=True)
    csrf: str
    began_at: datetime
    seen_at: datetime
    confirmed_at: datetime | None = None  # when the password or link was last given
    ended_at: datetime | None = None


class SignInTry(SQLModel, table=True):
    """Failed sign-ins of one account from one address, both kept as keyed hashes; guessing is slowed by them."""

    __tablename__ = "sign_in_try"

    id: int | None = Field(default=None, primary_key=True)
    who: str = Field(unique=True)
    failures: int = 0
    last_at: datetime


class ApiToken(SQLModel, table=True):
    """A bearer token of one clinic; only its hash is kept."""

    __tablename__ = "api_token"

    id: int | None = Field(default=None, primary_key=True)
    clinic_id: int = Field(foreign_key="clinic.id", index=True)
    token_hash: str = Field(unique=True)
    name: str = ""
    scopes: str = ""  # joined by spaces
    made_at: datetime
    made_by: str = ""
    revoked_at: datetime | None = None
    last_used_at: datetime | None = None


class IdempotentAnswer(SQLModel, table=True):
    """The answer that a write with this idempotency key got; the same key gets it again."""

    __tablename__ = "idempotent_answer"
    __table_args__ = (UniqueConstraint("token_id", "key"),)

    id: int | None = Field(default=None, primary_key=True)
    token_id: int = Field(foreign_key="api_token.id")
    key: str
    request_hash: str
    status: int
    body: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    at: datetime


class Audit(SQLModel, table=True):
    """A view, change, export or message that carried her data; each entry's hash covers the one before it."""

    __table_args__ = (Index("ix_audit_clinic_at", "clinic_id", "at"),)

    id: int | None = Field(default=None, primary_key=True)
    clinic_id: int | None = Field(default=None)
    at: datetime
    by: str
    action: str
    client_id: int | None = Field(default=None, index=True)
    details: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    previous_hash: str = ""
    hash: str = ""
