"""What was asked of a client, what came back, what stops her: sessions, inbox, reports, questions, pauses, holds."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, Boolean, ColumnElement, Index, LargeBinary, UniqueConstraint, literal_column
from sqlmodel import Field, SQLModel

# Questions whose words still wait for a name; asked for in these words, an index of its own finds them.
WAITS_FOR_A_NAME: ColumnElement[bool] = literal_column(
    "kind = 'who' AND closed_how NOT IN ('answered', 'unanswered')", Boolean
)


class ExerciseSession(SQLModel, table=True):
    """One exercise day of one client.

    `state`: planned, reminded, done, part, skipped, missed, unsent, paused, held. `kind` `extra`: reported on a day
    without one, outside adherence and usual.
    """

    __tablename__ = "exercise_session"
    __table_args__ = (
        UniqueConstraint("client_id", "on_date", "kind"),
        Index("ix_session_state_due", "state", "due_at"),
        Index("ix_session_state_closes", "state", "closes_at"),
    )

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id")
    on_date: date
    kind: str = "planned"
    due_at: datetime
    closes_at: datetime | None = None
    queued_at: datetime | None = None  # when its reminders were written to the outbox
    state: str = "planned"
    list_letter: str = "A"
    program_id: int | None = Field(default=None, foreign_key="client_program.id")
    rung: int = 0
    is_easy: bool = False
    items: list[dict[str, Any]] = Field(default_factory=list, sa_type=JSON)  # as shown: letter, code, name, dose
    reminded_at: datetime | None = None
    completed: str | None = None  # all, part, none
    sets: int | None = None
    reps: int | None = None
    pain: int | None = None  # 0-10, the worst stated for it
    pain_before: int | None = None
    pain_after: int | None = None
    settled_at: datetime | None = None  # when it took its present closed state


class InboundRow(SQLModel, table=True):
    """A message as it came in, kept before it is read. (`source`, `provider_id`) is unique: a repeat is ignored."""

    __tablename__ = "inbound"
    __table_args__ = (
        UniqueConstraint("source", "provider_id"),
        Index("ix_inbound_waiting", "handled_at", "id"),
        Index("ix_inbound_address", "address", "received_at"),
        Index("ix_inbound_minute", "address", "minute_from_at"),
    )

    id: int | None = Field(default=None, primary_key=True)
    source: str  # sms, email, page, command, staff
    provider_id: str
    address: str
    to: str = ""
    text: str
    raw: bytes = Field(sa_type=LargeBinary)
    received_at: datetime  # the moment that counts
    kept_at: datetime
    pictures: int = 0
    is_verified: bool = True
    is_automatic: bool = False
    bounce_of: str = ""
    bounce_code: str = ""
    opt_out_type: str = ""
    answers: str = ""  # what of ours it answers, joined by blanks: Message-IDs, `token:…`, `session:…` of a page
    whole_text: str = ""  # a mail's subject and whole text, where danger words are sought
    client_id: int | None = Field(default=None, index=True)
    reading: dict[str, Any] | None = Field(default=None, sa_type=JSON)
    outcome: str = ""  # what became of it, in one word
    handled_at: datetime | None = None
    failures: int = 0
    retry_at: datetime | None = None
    fetched: bool = False  # fetched later from the provider's list, not pushed
    minute_from_at: datetime | None = None  # its answer went at once: texts in the minute after share one


class InboundMail(SQLModel, table=True):
    """How far a mailbox has been read: (UIDVALIDITY, UID)."""

    __tablename__ = "inbound_mailbox"

    id: int | None = Field(default=None, primary_key=True)
    mailbox: str = Field(unique=True)
    uid_validity: int = 0
    uid: int = 0


class Report(SQLModel, table=True):
    """What was read from one reply, page or correction. Reports add; nothing is overwritten."""

    __table_args__ = (Index("ix_report_client_at", "client_id", "at"),)

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id")
    session_id: int | None = Field(default=None, foreign_key="exercise_session.id", index=True)
    at: datetime
    channel: str  # sms, email, page, staff
    text: str
    reading: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    why: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)  # field -> words that led to it
    by: str = "client"  # client, helper, or a staff e-mail
    replaces: int | None = None  # the report that this one corrects
    is_settling: bool = False  # a morning rating of an earlier session, outside usual and session pain
    inbound_id: int | None = Field(default=None, foreign_key="inbound.id", index=True)
    body_part: str = ""


class Question(SQLModel, table=True):
    """A question that we asked; at most one is open for an address."""

    __table_args__ = (
        Index("ix_question_open", "address", "closed_at"),
        Index(
            "ix_question_waits_for_a_name",
            "lapses_at",
            sqlite_where=WAITS_FOR_A_NAME,
            postgresql_where=WAITS_FOR_A_NAME,
        ),
    )

    id: int | None = Field(default=None, primary_key=True)
    client_id: int | None = Field(default=None, foreign_key="client.id", index=True)
    address: str
    kind: str  # pain, amount, meaning, settling, reason, who, offer, effort, falls, where, keep, days, until
    session_id: int | None = Field(default=None, foreign_key="exercise_session.id")
    inbound_id: int | None = None
    asked_at: datetime
    lapses_at: datetime
    closed_at: datetime | None = None
    closed_how: str = ""  # answered, lapsed, replaced, unanswered
    details: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)


class Pause(SQLModel, table=True):
    """The client's own absence: no reminders from a date until a date."""

    __table_args__ = (Index("ix_pause_ended", "ended_at", "until_on"),)

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id", index=True)
    from_on: date
    until_on: date  # the last paused day
    reason: str = ""
    by: str = "client"
    opened_at: datetime
    ended_at: datetime | None = None
    ended_by: str = ""


class Hold(SQLModel, table=True):
    """A clinical stop, opened by a rule or a therapist and ended only by a therapist."""

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id", index=True)
    rule: str
    note: str = ""
    by: str = ""
    opened_at: datetime
    alert_id: int | None = None
    ended_at: datetime | None = None
    ended_by: str = ""
    lead_told_at: datetime | None = None
