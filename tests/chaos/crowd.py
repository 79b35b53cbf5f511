"""A crowd of clients for the chaos tests, and what must hold of each of them when the dust has settled."""

from collections import Counter
from collections.abc import Mapping, Sequence
from datetime import UTC, date, datetime, timedelta

from sqlmodel import col, func, select, update

from reminders.flows import tick
from reminders.store.db import Database
from reminders.store.tables import ClinicNote, Contact, ExerciseSession, Outbound
from tests.chaos.processes import working_here
from tests.chaos.provider import FileClock
from tests.clinic import a_world
from tests.standins.sms_provider import Text

MONDAY = datetime(2027, 3, 1, 15, 0, tzinfo=UTC)  # 10:00 in New York: welcomes may go
WEDNESDAY = datetime(2027, 3, 3, 13, 30, tzinfo=UTC)  # 08:30 there: the first reminder is due
FRIDAY = WEDNESDAY + timedelta(days=2)
STEP_SECONDS = 151.0  # each round is later than one look-up
MOST_STEPS = 95  # a reminder waits 4 hours at most
KINDS = ("welcome", "reminder")
SETTLED = ("accepted", "delivered", "failed", "expired", "withdrawn")


def mobile(number: int) -> str:
    """Return the n-th number of the blocks kept for fiction: 555-0100 to 555-0198 in area codes from 202 on."""
    block, place = divmod(number, 99)
    return f"+1{202 + block}55501{place:02d}"


def enrol_crowd(db: Database, clients: int) -> None:
    """Enrol clients with consent; each has a welcome waiting, and a reminder on Wednesday."""
    world = a_world(db, MONDAY)
    for number in range(clients):
        world.enrol(f"Client {number}", mobile(number))
    with db.begin() as tx:
        tx.execute(update(Contact).values(confirmed_at=MONDAY))


def settle(env: Mapping[str, str], clock: FileClock) -> None:
    """Let time pass until every message that was due has come to its end."""
    began_at = clock.now
    with working_here(env) as worker:
        for _ in range(MOST_STEPS):
            tick.run(worker, clock.now)
            if not still_open(worker.db, began_at):
                return
            clock.pass_time(STEP_SECONDS)
    raise AssertionError("messages are still under way after four hours")


def still_open(db: Database, until: datetime) -> int:
    """Return how many messages that were due at an instant have not come to an end, or are not even written.

    A planner that was killed holds its lease for a while, in which nobody else plans: what it left is written later.
    """
    due = select(ExerciseSession.id).where(col(ExerciseSession.due_at) <= until)
    begun = (col(Outbound.created_at) <= until) | col(Outbound.session_id).in_(due)
    with db.read() as tx:
        statement = select(func.count()).where(
            col(Outbound.state).not_in(SETTLED), begun, col(Outbound.kind).in_(KINDS)
        )
        unplanned = select(func.count()).where(
            col(ExerciseSession.state) == "planned",
            col(ExerciseSession.queued_at).is_(None),
            col(ExerciseSession.due_at) <= until,
        )
        return tx.exec(statement).one() + tx.exec(unplanned).one()


def check_exactly_once(url: str, texts: Sequence[Text], kind: str, clients: int, on: date | None = None) -> None:
    """Check that each client has a message once, among the texts taken and in the record, or not and staff know."""
    db = Database(url)
    with db.read() as tx:
        rows = [
            row for row in tx.exec(select(Outbound).where(Outbound.kind == kind)) if on is None or str(on) in row.key
        ]
        closed = {one.address for one in tx.exec(select(Contact)) if one.unusable == "21211"}
        told = Counter(note.client_id for note in tx.exec(select(ClinicNote)) if note.words == "address unusable")
        sessions = {one.id: one.state for one in tx.exec(select(ExerciseSession))}
    db.close()
    at_provider = Counter((text.to, text.body) for text in texts)
    sids = Counter(row.receipt for row in rows)
    reached = {row.to for row in rows} | closed
    assert reached >= {mobile(number) for number in range(clients)}
    for row in rows:
        times = at_provider[row.to, row.body] if row.body else 0
        if row.state in ("accepted", "delivered"):
            assert (times, sids[row.receipt]) == (1, 1), (row.key, times)
            assert kind != "reminder" or sessions[row.session_id] == "reminded"
        else:
            assert (row.state, times) == ("failed", 0), (row.key, row.why, times)
            assert row.to in closed
            assert told[row.client_id] == 1
            assert kind != "reminder" or sessions[row.session_id] == "unsent"
