"""A small clinic for tests: Ben the therapist, Cleo of another clinic, Ana the client, channels that only record."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

from sqlmodel import col, select

from reminders.channels.recording import RecordingChannel
from reminders.core.channel import Inbound
from reminders.core.enrolment import Defaults, read_row
from reminders.core.programs import program_days
from reminders.core.schedule import local_date
from reminders.flows import enrol, keeping, plan
from reminders.store.db import Database
from reminders.store.tables import (
    Alert,
    Client,
    Clinic,
    Contact,
    ExerciseSession,
    InboundRow,
    Outbound,
    Report,
    Staff,
)
from reminders.texts import Texts

ANA, BEN, CLEO, DEE = "+12025550101", "+12025550150", "+12025550160", "+12025550170"


@dataclass
class World:
    """A database with a clinic in it, and a clock that tests move."""

    db: Database
    now: datetime
    sms: RecordingChannel = field(default_factory=RecordingChannel)
    email: RecordingChannel = field(default_factory=RecordingChannel)
    inbound: int = 0

    def clock(self) -> datetime:
        """Return the test's time."""
        return self.now

    @property
    def sender(self) -> Any:
        """Return a sender over the recording channels."""
        from reminders.flows.deliver import Sender
        from reminders.flows.render import Links

        return Sender(
            self.db,
            {"sms": self.sms, "email": self.email},
            Texts(),
            self.clock,
            Links("http://127.0.0.1:8000", ("test-secret-test-secret",)),
            own_clock=True,
            threads=1,
        )

    def enrol(self, name: str = "Ana Ruiz", mobile: str = ANA, *, confirmed: bool = True, **columns: str) -> int:
        """Enrol a client with consent; return her id."""
        row = {
            "name": name,
            "mobile": mobile,
            "therapist": "ben@example.org",
            "program": "spine-strength",
            "consent_on": local_date(self.now, "America/New_York").isoformat(),
            "consent_how": "signed form",
            "precautions": "none known",
        }
        row.update(columns)
        with self.db.begin() as tx:
            clinic = tx.exec(select(Clinic).order_by(col(Clinic.id))).first()
            assert clinic is not None
            programs = enrol.programs_of(tx, clinic)
            days = {code: "+".join(program_days(one)) for code, one in programs.items()}
            defaults = Defaults(clinic.time_zone, clinic.window, days, local_date(self.now, clinic.time_zone))
            made, wrong = read_row(row, defaults)
            assert made is not None, wrong
            against = enrol.refusals(tx, clinic, made, programs)
            assert not against, against
            client_id = enrol.enrol(tx, clinic, made, programs[made.program], "test", self.now).client.id or 0
            for contact in tx.exec(select(Contact).where(Contact.client_id == client_id)):
                contact.confirmed_at = self.now if confirmed else None
            return client_id

    def plan(self) -> int:
        """Plan what is due; return how many sessions."""
        total = 0
        while True:
            with self.db.begin() as tx:
                done = plan.plan_due(tx, self.now)
            total += done
            if not done:
                return total

    def send(self) -> Any:
        """Send what is due."""
        from reminders.flows import deliver

        return deliver.send_due(self.sender)

    def hear(self, text: str, address: str = ANA, *, provider_id: str = "", at: datetime | None = None) -> int:
        """Let a text come in, be kept and read; return the inbound row's id."""
        from reminders.flows import receive

        self.inbound += 1
        arrived = Inbound(
            source="email" if "@" in address else "sms",
            provider_id=provider_id or f"SM{self.inbound:032d}",
            address=address,
            to="+12025550199",
            text=text,
            raw=text.encode(),
            received_at=at or self.now,
        )
        with self.db.begin() as tx:
            keeping.keep(tx, arrived, self.now)
        receive.handle_waiting(self.db, self.now)
        with self.db.read() as tx:
            found = tx.exec(select(InboundRow.id).where(InboundRow.provider_id == arrived.provider_id)).one()
            return found or 0

    def pass_time(self, **spans: float) -> None:
        """Move the clock on."""
        self.now += timedelta(**spans)

    def rows(self, table: Any, **where: Any) -> list[Any]:
        """Return rows of a table that match, oldest first."""
        with self.db.read() as tx:
            statement = select(table).order_by(table.id)
            for name, value in where.items():
                statement = statement.where(getattr(table, name) == value)
            return list(tx.exec(statement))

    def client(self, client_id: int) -> Client:
        """Return a client as she stands."""
        found: Client = self.rows(Client, id=client_id)[0]
        return found

    def sessions(self, client_id: int) -> list[ExerciseSession]:
        """Return a client's sessions, oldest first."""
        return sorted(self.rows(ExerciseSession, client_id=client_id), key=lambda one: one.on_date)

    def reports(self, client_id: int) -> Sequence[Report]:
        """Return a client's reports."""
        return self.rows(Report, client_id=client_id)

    def alerts(self, client_id: int | None = None) -> Sequence[Alert]:
        """Return alerts, of one client or of all."""
        return self.rows(Alert, client_id=client_id) if client_id is not None else self.rows(Alert)

    def queued(self, kind: str | None = None) -> Sequence[Outbound]:
        """Return what was written to be sent, of one kind or of all."""
        return self.rows(Outbound, kind=kind) if kind else self.rows(Outbound)


def a_world(db: Database, now: datetime) -> World:
    """Set up the clinic and its staff; a second clinic has Cleo."""
    with db.begin() as tx:
        clinic = tx.exec(select(Clinic).order_by(col(Clinic.id))).first()
        assert clinic is not None
        clinic.name, clinic.phone, clinic.time_zone = "Alder Hill Physio", "+1 202 555 0100", "America/New_York"
        other = Clinic(name="Birch Lane Physio", phone="+1 202 555 0110", created_at=now)
        tx.add(other)
        tx.flush()
        for role, name, email, mobile, clinic_id in (
            ("therapist", "Ben Ames", "ben@example.org", BEN, clinic.id),
            ("lead", "Dee Lund", "dee@example.org", DEE, clinic.id),
            ("admin", "Fay Orr", "fay@example.org", "", clinic.id),
            ("therapist", "Cleo Day", "cleo@example.org", CLEO, other.id),
        ):
            row = Staff(clinic_id=clinic_id or 0, role=role, name=name, email=email, mobile=mobile, created_at=now)
            tx.add(row)
    return World(db, now)
