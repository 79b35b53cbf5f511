"""Every table of the record, by subject. A row's meaning stands at its class."""

from sqlmodel import SQLModel

from reminders.store.tables.access import ApiToken, Audit, IdempotentAnswer, SignInLink, SignInTry, WebSession
from reminders.store.tables.alerts import Alert, AlertEvent, ClinicNote, Digest, Flag, Proposal
from reminders.store.tables.outbox import Attempt, DeliveryEvent, Outbound
from reminders.store.tables.people import Client, Clinic, ConsentEvent, Contact, Precaution, Schedule, Staff
from reminders.store.tables.programs import ClientProgram, DailyAnswer, Exercise, Program
from reminders.store.tables.record import (
    ExerciseSession,
    Hold,
    InboundMail,
    InboundRow,
    Pause,
    Question,
    Report,
)
from reminders.store.tables.system import Lease, Mark

metadata = SQLModel.metadata

__all__ = [
    "Alert",
    "AlertEvent",
    "ApiToken",
    "Attempt",
    "Audit",
    "Client",
    "ClientProgram",
    "Clinic",
    "ClinicNote",
    "ConsentEvent",
    "Contact",
    "DailyAnswer",
    "DeliveryEvent",
    "Digest",
    "Exercise",
    "ExerciseSession",
    "Flag",
    "Hold",
    "IdempotentAnswer",
    "InboundMail",
    "InboundRow",
    "Lease",
    "Mark",
    "Outbound",
    "Pause",
    "Precaution",
    "Program",
    "Proposal",
    "Question",
    "Report",
    "Schedule",
    "SignInLink",
    "SignInTry",
    "Staff",
    "WebSession",
    "metadata",
]
