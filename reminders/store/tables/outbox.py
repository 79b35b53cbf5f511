"""What is to be said, to whom, by when, and what became of it."""

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, Index
from sqlmodel import Field, SQLModel


class Outbound(SQLModel, table=True):
    """One message to one address for one cause; `key` names the cause and is unique.

    `state`: waiting, claimed, accepted, delivered, failed, expired, withdrawn, unknown. `template` and `details` are
    rendered into `body` when the row is claimed.
    """

    __table_args__ = (
        Index("ix_outbound_due", "state", "priority", "due_at"),
        Index("ix_outbound_client", "client_id", "id"),
        Index("ix_outbound_receipt", "receipt"),
        Index("ix_outbound_to_claimed", "to", "claimed_at"),
        Index("ix_outbound_client_claimed", "client_id", "claimed_at"),
    )

    id: int | None = Field(default=None, primary_key=True)
    key: str = Field(unique=True)
    clinic_id: int = Field(foreign_key="clinic.id")
    client_id: int | None = Field(default=None, foreign_key="client.id")
    staff_id: int | None = Field(default=None, foreign_key="staff.id")
    contact_id: int | None = Field(default=None, foreign_key="contact.id")
    session_id: int | None = Field(default=None, foreign_key="exercise_session.id", index=True)
    alert_id: int | None = Field(default=None, foreign_key="alert.id", index=True)
    inbound_id: int | None = Field(default=None, foreign_key="inbound.id", index=True)
    kind: str  # reminder, welcome, thanks, question, danger, alert, digest, …
    channel: str  # sms, email
    to: str
    language: str = "en"
    template: str = ""
    details: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    priority: int = 2  # 0 urgent, 1 answers, 2 the rest
    order_full: int = 9  # place when the caps are full: 1 welcome … 8 praise
    is_answer: bool = False  # answers and danger follow-ups: outside caps and windows
    state: str = "waiting"
    due_at: datetime
    expires_at: datetime | None = None
    window_from: str = ""  # her window when it was written; empty: any hour. The claim looks at the one she has then
    window_until: str = ""
    time_zone: str = ""
    created_at: datetime
    claimed_at: datetime | None = None
    called_at: datetime | None = None  # the claim's instant by the machine's clock, for the provider's list
    claim_until: datetime | None = None
    claimed_by: str = ""
    attempts: int = 0
    lookups: int = 0
    subject: str = ""
    body: str = ""
    html: str = ""
    headers: dict[str, str] = Field(default_factory=dict, sa_type=JSON)
    parts: int = 0
    receipt: str = ""
    accepted_at: datetime | None = None
    delivered_at: datetime | None = None
    settled_at: datetime | None = None
    code: str = ""
    why: str = ""  # why it failed, expired or was withdrawn
    maybe_doubled: bool = False


class Attempt(SQLModel, table=True):
    """One hand-over of an outbound row to a provider."""

    id: int | None = Field(default=None, primary_key=True)
    outbound_id: int = Field(foreign_key="outbound.id", index=True)
    number: int
    began_at: datetime
    ended_at: datetime | None = None
    outcome: str = ""  # accepted, retry, failed, unknown
    code: str = ""
    receipt: str = ""


class DeliveryEvent(SQLModel, table=True):
    """A status callback as it came; an unknown receipt is kept and matched later."""

    __tablename__ = "delivery_event"

    id: int | None = Field(default=None, primary_key=True)
    receipt: str = Field(index=True)
    outbound_id: int | None = Field(default=None, index=True)
    attempt: int | None = None
    status: str
    code: str = ""
    at: datetime
    is_matched: bool = False
