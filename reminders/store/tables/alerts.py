"""What asks for a person: flags, alerts and their story, notes for the clinic's inbox, proposals, digests."""

from datetime import datetime
from typing import Any

from sqlalchemy import JSON, Index, UniqueConstraint, text
from sqlmodel import Field, SQLModel

NOT_CLOSED = text("state <> 'closed'")


class Flag(SQLModel, table=True):
    """A danger sign or concern read in a reply. `grade`: call_now, urgent, today."""

    id: int | None = Field(default=None, primary_key=True)
    client_id: int | None = Field(default=None, foreign_key="client.id", index=True)
    inbound_id: int | None = None
    report_id: int | None = None
    kind: str
    grade: str
    at: datetime


class Alert(SQLModel, table=True):
    """Something a staff member should act on: open, acknowledged, closed. One not closed a client and rule."""

    __table_args__ = (
        UniqueConstraint("clinic_id", "number"),
        Index(
            "ix_alert_one_open",
            "client_id",
            "rule",
            unique=True,
            sqlite_where=NOT_CLOSED,
            postgresql_where=NOT_CLOSED,
        ),
        Index("ix_alert_step", "state", "next_step_at"),
    )

    id: int | None = Field(default=None, primary_key=True)
    clinic_id: int = Field(foreign_key="clinic.id")
    number: int  # short, never reused
    client_id: int | None = Field(default=None, foreign_key="client.id", index=True)
    address: str = ""  # an unknown number that used danger words
    rule: str
    level: str  # urgent, today, routine
    state: str = "open"
    opened_at: datetime
    last_added_at: datetime
    acknowledged_at: datetime | None = None
    acknowledged_by: str = ""
    acknowledged_how: str = ""  # console, link, text
    closed_at: datetime | None = None
    closed_by: str = ""
    outcome: str = ""  # called, changed dose, saw her, expected, nothing, report
    note: str = ""
    because: list[dict[str, Any]] = Field(default_factory=list, sa_type=JSON)  # what fired, in order of time
    session_ids: list[int] = Field(default_factory=list, sa_type=JSON)
    step: int = 0  # calls made so far
    round: int = 1  # rises each time it opens again
    steps_from_at: datetime | None = None  # when the steps began
    next_step_at: datetime | None = None
    words_opened_by: str = ""  # staff e-mail that opened the words behind sign-in
    one_of_two: bool = False


class AlertEvent(SQLModel, table=True):
    """A line of an alert's story."""

    __tablename__ = "alert_event"

    id: int | None = Field(default=None, primary_key=True)
    alert_id: int = Field(foreign_key="alert.id", index=True)
    at: datetime
    kind: str  # opened, added, called, acknowledged, reopened, closed, corrected, answered
    by: str = ""
    details: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)


class ClinicNote(SQLModel, table=True):
    """An item of the clinic's inbox: a question, a wish for other days, an unclear reply, a stranger's words."""

    __tablename__ = "clinic_note"
    __table_args__ = (Index("ix_note_open", "clinic_id", "closed_at"),)

    id: int | None = Field(default=None, primary_key=True)
    clinic_id: int = Field(foreign_key="clinic.id")
    client_id: int | None = Field(default=None, foreign_key="client.id", index=True)
    inbound_id: int | None = None
    kind: str  # question, reschedule, unclear, written, stranger, desk, operator
    words: str = ""
    details: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    at: datetime
    closed_at: datetime | None = None
    closed_by: str = ""


class Proposal(SQLModel, table=True):
    """A dose step the therapist may approve: one a client for all exercises together."""

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id", index=True)
    made_at: datetime
    direction: str  # up, back
    to_rung: int
    because: list[str] = Field(default_factory=list, sa_type=JSON)
    news: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)  # what the client will be told
    state: str = "open"  # open, approved, declined, withdrawn
    settled_at: datetime | None = None
    settled_by: str = ""


class Digest(SQLModel, table=True):
    """One therapist's week, kept as sent."""

    __table_args__ = (UniqueConstraint("therapist_id", "week"),)

    id: int | None = Field(default=None, primary_key=True)
    therapist_id: int = Field(foreign_key="staff.id", index=True)
    week: str  # 2027-W10
    values: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    text: str = ""
    html: str = ""
    made_at: datetime
