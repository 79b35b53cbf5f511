"""A clinic with a little of everything, for tests that look at every page: built by what clients and staff do."""

from dataclasses import dataclass

from sqlmodel import select

from reminders.flows import say, sign_in
from reminders.flows.deliver import send_due
from reminders.store.tables import Client, Clinic, ClinicNote, ExerciseSession, Proposal, Report, Staff
from reminders.web import passwords
from tests.clinic import ANA, World
from tests.web.desk import alert_path, page_path

PASSWORD = "three quiet herons wade"
EVA, CORA, ROSA, MILO = "+12025550102", "+12025550103", "+12025550104", "+12025550105"


@dataclass(frozen=True)
class Busy:
    """The numbers of what the pages show."""

    ids: dict[str, int]
    client_page: str
    spanish_page: str
    alert_page: str
    sign_in_page: str


def a_busy_clinic(world: World) -> Busy:
    """Live through three weeks: ratings, a stop-level one, a fall, a question, silence, an opt-out, a new client."""
    for role, name in (("assistant", "Gil Roe"), ("records", "Hal Poe")):
        with world.db.begin() as tx:
            clinic = tx.exec(select(Clinic).where(Clinic.name == "Alder Hill Physio")).one()
            tx.add(Staff(clinic_id=clinic.id or 0, role=role, name=name, email=f"{role}@example.org"))
    lia = "Daughter Lia, +1 202 555 0190"
    world.enrol("Ana Ruiz", ANA, email="ana@example.org", channel="sms+email", emergency_note=lia)
    world.enrol("Eva Stone", EVA, program="falls-balance", precautions="low bone density+spinal fracture")
    world.enrol("Rosa Díaz", ROSA, language="es", program="whole-body", usual_pain="3")
    world.enrol("Milo Farr", MILO)
    replies = {
        ANA: ("done 2x10 pain 3", "Y4", "all but the heel raises, p4", "Y3", "done pain 2", "Y3"),
        EVA: ("Y2", "N", "", "Y3", "Y2", ""),
        ROSA: ("S3", "hice todo, dolor 4", "solo 1 serie, 3", "S4", "S3", "hice 2x10 dolor 7"),
        MILO: ("Y1", "STOP", "", "", "", ""),
    }
    for number in range(6):
        world.pass_time(days=2 if world.now.weekday() in (0, 2) else 3)
        world.plan()
        send_due(world.sender)
        world.pass_time(hours=1)
        for phone, said in replies.items():
            if said[number]:
                world.hear(said[number], phone)
        send_due(world.sender)
    world.hear("I fell in the kitchen this morning and my hip hurts", EVA)
    world.hear("Can I use the blue band instead of the red one?", ANA)
    send_due(world.sender)
    world.enrol("Cora Bell", CORA, precautions="", consent_on="", consent_how="")
    return numbers(world)


def numbers(world: World) -> Busy:
    """Give the staff a password, the desk something to do, and return the numbers."""
    with world.db.begin() as tx:
        ana = tx.exec(select(Client).where(Client.name == "Ana Ruiz")).one()
        clinic = tx.get(Clinic, ana.clinic_id)
        assert clinic is not None
        for staff in tx.exec(select(Staff)):
            staff.password_hash = passwords.hashed(PASSWORD)
            tx.add(staff)
        proposal = Proposal(
            client_id=ana.id or 0,
            made_at=world.now,
            direction="up",
            to_rung=1,
            because=["5 of the last 6 sessions in full", "worst pain 4 in them"],
            news={"name": "up", "values": {"done": 5, "of": 6}},
        )
        tx.add(proposal)
        say.tell_desk(tx, clinic, ana, "desk", "", {"what": "address unusable", "channel": "email"}, world.now)
        ben = tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()
        link = sign_in.make_link(tx, ben, world.now)
        tx.flush()
        note = tx.exec(select(ClinicNote).where(ClinicNote.kind == "question")).first()
        found = {"client_id": ana.id or 0, "staff_id": ben.id or 0, "proposal_id": proposal.id or 0}
        found["note_id"] = note.id if note and note.id else 0
    alert = world.alerts()[0].id or 0
    rosa = world.rows(Client, name="Rosa Díaz")[0].id
    return Busy(
        ids={
            **found,
            "alert_id": alert,
            "session_id": world.rows(ExerciseSession, client_id=found["client_id"])[0].id,
            "report_id": world.rows(Report, client_id=found["client_id"])[0].id,
        },
        client_page=page_of(world, found["client_id"]),
        spanish_page=page_of(world, rosa),
        alert_page=alert_path(world, alert),
        sign_in_page=f"/sign-in/{link}",
    )


def page_of(world: World, client_id: int) -> str:
    """Return the address of the page of a client's newest reminded session."""
    reminded = [one for one in world.sessions(client_id) if one.reminded_at is not None]
    return page_path(world, reminded[-1].id or 0)
