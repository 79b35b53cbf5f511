"""The clinic, its staff, its clients, their addresses and what they agreed to."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, Index
from sqlmodel import Field, SQLModel


class Clinic(SQLModel, table=True):
    """A clinic and its rules of the house. A fresh database has one, without name and phone."""

    id: int | None = Field(default=None, primary_key=True)
    name: str = ""
    phone: str = ""
    time_zone: str = "America/New_York"
    hours: str = "mon-fri/08:00-17:00"
    closed_days: list[str] = Field(default_factory=list, sa_type=JSON)  # ISO dates
    emergency_number: str = "911"
    crisis_line: str = "988"
    window: str = "08:00-20:00"
    lead_email: str = ""
    retain_days: int = 2555
    note_hours: str = "11:30,16:00"  # when `today` notes go to staff; `routine` ones at the last
    on_call_email: str = ""  # empty: outside hours the steps begin at opening
    words_in_mail: bool = False  # staff mails carry the client's words and ratings only when switched on
    levels: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)  # changed rule levels, by name
    wording: dict[str, str] = Field(default_factory=dict, sa_type=JSON)  # changed texts, by "<lang>/<name>"
    next_alert_number: int = 1
    is_demo: bool = False
    created_at: datetime | None = None


class Staff(SQLModel, table=True):
    """Someone who works at a clinic: admin, therapist, assistant, lead or records."""

    id: int | None = Field(default=None, primary_key=True)
    clinic_id: int = Field(foreign_key="clinic.id", index=True)
    role: str
    name: str
    email: str = Field(unique=True)  # lower case
    mobile: str = Field(default="", index=True)  # E.164
    is_active: bool = True
    note_hours: str = ""  # empty: the clinic's
    alert_channels: str = "sms+email"
    cover_id: int | None = Field(default=None, foreign_key="staff.id")
    cover_from_on: date | None = None
    cover_until_on: date | None = None
    mobile_stopped_at: datetime | None = None  # STOP from her own number: alerts go to cover
    levels: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    password_hash: str = ""
    totp_secret: str = ""
    totp_step: int = 0  # the newest 30-second step whose code was used; a code serves once
    created_at: datetime | None = None


class Client(SQLModel, table=True):
    """A person who does a home program. `state`: invited, active, opted_out, closed."""

    __table_args__ = (Index("ix_client_therapist_state", "therapist_id", "state"),)

    id: int | None = Field(default=None, primary_key=True)
    clinic_id: int = Field(foreign_key="clinic.id", index=True)
    name: str
    state: str = Field(default="invited", index=True)
    therapist_id: int = Field(foreign_key="staff.id")
    program_code: str
    language: str = "en"
    time_zone: str
    channel: str = "sms"  # sms, email, sms+email
    holder: str = "self"  # who holds the contact: self, helper, shared
    usual_pain: int | None = None  # told at enrolment, 0-10
    pinned_usual: float | None = None  # set by a therapist
    kept_usual: float | None = None  # the last usual, after a re-check, surgery or new program
    kept_usual_on: date | None = None  # stands until three ratings later than this day
    precautions_stated: bool = False
    emergency_note: str = ""
    chart_id: str = ""
    birth_year: int | None = None
    window: str = ""  # empty: the clinic's
    compact_doses: bool = False  # "2x10" instead of words
    levels: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)  # levels a therapist set for her
    stop_with_easy_days: bool = False  # a stop-level rating brings easy days instead of a hold
    progress_by_itself: bool = False
    easy_sessions_left: int = 0
    easy_until_alert_closed: bool = False
    next_session_easy: bool = False
    easy_session_id: int | None = None  # whose rating alone asks for that easy day; a correction takes it back
    weekly_only: bool = False  # quiet for 14 days: one reminder a week
    morning_on: date | None = Field(default=None, index=True)  # the morning question is due on this local date
    morning_session_id: int | None = None  # the session that it asks about
    emergency_told_on: date | None = None  # when a reminder last carried the emergency number
    news: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)  # a dose change that rides in the next reminder
    review_at: datetime | None = Field(default=None, index=True)  # when her dose and silence are looked at next
    active_on: date | None = None  # local date on which she became active
    invited_at: datetime | None = None
    welcomed_at: datetime | None = None
    last_heard_at: datetime | None = None
    staff_wrote_at: datetime | None = None  # her replies go to the therapist's inbox for 48 hours
    bereaved_until_on: date | None = None  # no reason question until then
    died_on: date | None = None
    closed_at: datetime | None = None
    closed_reason: str = ""
    created_at: datetime | None = None


class Schedule(SQLModel, table=True):
    """Her days, hour and zone from a local date on; the newest that has begun counts."""

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id", index=True)
    from_on: date
    days: str  # mon+wed+fri
    time: str  # 08:30, local
    time_zone: str


class Contact(SQLModel, table=True):
    """One address of one client; a shared phone is a row for each client on it.

    `consent`: none, open or closed, the outcome of the address's consent events for this client.
    """

    __table_args__ = (Index("ix_contact_address", "address"),)

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id", index=True)
    kind: str  # sms, email
    address: str  # E.164, or a lower-case mail address
    consent: str = "none"
    ever_closed: bool = False  # an opted-out address comes back only by a reply from it
    consent_changed_at: datetime | None = None
    confirmed_at: datetime | None = None
    reminders_unconfirmed: int = 0
    unusable: str = ""  # why nothing can be sent there
    last_sure_at: datetime | None = None  # her last sure reply from here
    provider_blocked: bool = False


class ConsentEvent(SQLModel, table=True):
    """A change of consent for an address; appended, never changed. `client_id` None: all on that address."""

    __tablename__ = "consent_event"

    id: int | None = Field(default=None, primary_key=True)
    clinic_id: int = Field(foreign_key="clinic.id")
    address: str = Field(index=True)
    kind: str
    change: str  # given, withdrawn, restored, closed, taken away (from one record, which is no opt-out)
    client_id: int | None = Field(default=None, index=True)
    how: str  # signed form, spoken at desk, START, STOP, one-click, wrong number, …
    wording_version: str = ""
    language: str = "en"
    by: str  # client, staff e-mail, provider
    at: datetime
    inbound_id: int | None = None


class Precaution(SQLModel, table=True):
    """A reason to leave out or change exercises, by the console's English name."""

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id", index=True)
    kind: str
    noted_on: date
    note: str = ""
    review_on: date | None = None
    ended_on: date | None = None
