"""What the processes need to agree: leases on recurring work, and marks of how far it has come."""

from datetime import datetime

from sqlmodel import Field, SQLModel


class Lease(SQLModel, table=True):
    """Who runs a job, and until when."""

    job: str = Field(primary_key=True)
    holder: str
    until_at: datetime


class Mark(SQLModel, table=True):
    """A named value: the newest instant worked through, a job's heartbeat, a fetch's progress."""

    name: str = Field(primary_key=True)
    at: datetime | None = None
    value: str = ""
