"""Exercises of the clinic's own, program templates, and each client's dated program versions."""

from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, UniqueConstraint
from sqlmodel import Field, SQLModel


class Exercise(SQLModel, table=True):
    """An exercise of the library. `clinic_id` None: it came with the service; else the clinic's own."""

    __table_args__ = (UniqueConstraint("clinic_id", "code"),)

    id: int | None = Field(default=None, primary_key=True)
    clinic_id: int | None = Field(default=None, foreign_key="clinic.id")
    code: str
    body: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)


class Program(SQLModel, table=True):
    """A program template. `clinic_id` None: a starter program; else the clinic's own."""

    __table_args__ = (UniqueConstraint("clinic_id", "code"),)

    id: int | None = Field(default=None, primary_key=True)
    clinic_id: int | None = Field(default=None, foreign_key="clinic.id")
    code: str
    body: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    is_active: bool = True


class ClientProgram(SQLModel, table=True):
    """A version of one client's program, from a local date on. A session keeps the version its reminder showed."""

    __tablename__ = "client_program"
    __table_args__ = (UniqueConstraint("client_id", "number"),)

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id", index=True)
    number: int
    from_on: date
    body: dict[str, Any] = Field(default_factory=dict, sa_type=JSON)
    rung: int = 0  # place on the ladder
    rung_since_on: date
    recheck_on: date | None = None
    rechecked_on: date | None = None
    end_on: date | None = None
    why: str = ""
    by: str = ""
    created_at: datetime | None = None


class DailyAnswer(SQLModel, table=True):
    """How many days of a week the daily items were done; asked once a week, never part of adherence."""

    __tablename__ = "daily_answer"
    __table_args__ = (UniqueConstraint("client_id", "week"),)

    id: int | None = Field(default=None, primary_key=True)
    client_id: int = Field(foreign_key="client.id", index=True)
    week: str  # 2027-W10
    days: int | None = None  # 0-7
    at: datetime
