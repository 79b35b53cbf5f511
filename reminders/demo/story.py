"""The simulated weeks: a clock that jumps from one thing that is due to the next, through the service's own flows.

A moment is what can happen at one instant: texts arrive and are read, staff act, the recurring work runs, what is due
is sent, and what reached the clients makes them write later. Nothing is decided here that the service decides.
"""

import heapq
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from pathlib import Path
from random import Random

from sqlalchemy import bindparam
from sqlmodel import col, select

from reminders.core.schedule import at_local, local_date
from reminders.demo import building
from reminders.demo.answering import Life, Reached
from reminders.demo.arriving import Text, inbound_of
from reminders.demo.care import Act, Care
from reminders.demo.moments import MomentDatabase
from reminders.demo.people import CLINIC, Person
from reminders.demo.timing import Due, is_come, is_digest_hour, next_due, next_hour, on_grid
from reminders.flows import deliver, digest, keeping, receive, tick
from reminders.store import marks, outbox
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, InboundRow, Outbound, Question, Staff
from reminders.wiring import App, sender_of

ANSWERED_WHO = "answer who"


@dataclass
class Story:
    """The clinic's weeks, under way."""

    app: App
    db: MomentDatabase
    lives: dict[int, Life]
    care: Care
    now: datetime
    ends_at: datetime
    pending: list[tuple[datetime, int, Text | Act | None]] = field(default_factory=list)
    entered: int = 0
    arrived: int = 0
    due: Due = field(default_factory=Due)
    watches_at: datetime | None = None
    questions_seen: set[int] = field(default_factory=set)
    sessions_seen: set[int] = field(default_factory=set)
    last_writer: dict[str, int] = field(default_factory=dict)
    tell: Callable[[datetime], None] = lambda _: None

    def enter(self, at: datetime, thing: Text | Act | None) -> None:
        """Write down that something happens at an instant."""
        self.entered += 1
        heapq.heappush(self.pending, (at, self.entered, thing))

    def live(self) -> None:
        """Live through the weeks, moment by moment."""
        sender = replace(sender_of(self.app, own_clock=True), threads=1)
        moment: datetime | None = self.now
        while moment is not None and moment < self.ends_at:
            self.now = moment
            moment = self.happen(sender)
            self.tell(self.now)
        self.now = self.ends_at
        self.happen(sender)
        with self.db.begin() as tx:
            marks.set_mark(tx, marks.WORKED, at=self.now)
        self.tell(self.now)

    def happen(self, sender: deliver.Sender) -> datetime | None:
        """Let everything of this instant happen; return when something happens next.

        What is heard, done and worked through is one transaction, what is sent another: right before a message is
        handed over, consent, holds and pauses are read as they are committed.
        """
        with self.db.moment() as tx:
            known = [*tx.exec(CLINICS), *tx.exec(MEMBERS)]  # kept, so that flows find them without asking
            texts, acts = self.taken()
            self.hear(tx, texts)
            for act in acts:
                act(tx, self.now)
            self.work(tx)
            assert known
            if not is_come(next_due(tx).send, self.now):
                return self.look_ahead(tx)
        with self.db.moment() as tx:
            self.reach(tx, send(sender))
            return self.look_ahead(tx)

    def look_ahead(self, tx: Tx) -> datetime:
        """Let the staff see what is new, and return when something happens next."""
        for at, act in self.care.look(tx, self.now):
            self.enter(max(at, self.now), act)
        return self.next_moment(tx)

    def next_moment(self, tx: Tx) -> datetime:
        """Return when something happens next; what has come due already happens a minute later."""
        soon = self.now + timedelta(minutes=1)
        self.due, self.watches_at = next_due(tx), next_hour(self.now)
        pressing = [max(at, soon) for at in (self.due.send, self.due.plan, self.due.call) if at is not None]
        patient = [on_grid(max(at, soon)) for at in (self.due.closing, self.due.review) if at is not None]
        pending = [max(self.pending[0][0], self.now)] if self.pending else []
        return min([self.watches_at, *pressing, *patient, *pending])

    def taken(self) -> tuple[list[Text], list[Act]]:
        """Return what clients and staff do at this instant."""
        texts: list[Text] = []
        acts: list[Act] = []
        while self.pending and self.pending[0][0] <= self.now:
            thing = heapq.heappop(self.pending)[2]
            if isinstance(thing, Text):
                texts.append(thing)
            elif thing is not None:
                acts.append(thing)
        return texts, acts

    def hear(self, tx: Tx, texts: Sequence[Text]) -> None:
        """Keep what came in and have it handled."""
        for text in texts:
            self.arrived += 1
            self.last_writer[text.address] = self.id_of(text.life)
            row_id = keeping.keep(tx, inbound_of(text, self.arrived, self.now), self.now)
            waiting = list(tx.exec(KEPT, params={"row": row_id}))
            while waiting:
                row = waiting.pop()
                receive.handle_row(tx, row, self.now)
                if row.outcome == ANSWERED_WHO:  # what waited for a name is read again
                    waiting = list(tx.exec(select(InboundRow).where(col(InboundRow.handled_at).is_(None))))

    def id_of(self, life: Life) -> int:
        """Return the client that a life belongs to."""
        return next(client_id for client_id, one in self.lives.items() if one is life)

    def work(self, tx: Tx) -> None:
        """Do the recurring work that is due."""
        if is_digest_hour(self.now):
            digest.run(self.db, self.app.texts, self.now)
        for job, at in (
            (tick.SWEEP, self.due.closing),
            (tick.PLAN, self.due.plan),
            (tick.REVIEW, self.due.review),
            (tick.MORNING, self.now if tick.MORNING.is_due(tx, self.now) else None),
            (tick.WATCH, self.watches_at),
            (tick.ESCALATE, self.due.call),
        ):
            while is_come(at, self.now) and job.work(tx, self.now):
                pass

    def reach(self, tx: Tx, sent: Sequence[int]) -> None:
        """Let what was handed over reach the clients, who may write later."""
        wanted = select(Outbound).where(col(Outbound.id).in_(sent), col(Outbound.client_id).is_not(None))
        rows = list(tx.exec(wanted.order_by(col(Outbound.id))))
        sessions = outbox.sessions_of(tx, [row.session_id for row in rows])
        questions = self.questions_open(tx) if rows else []
        day = local_date(self.now, CLINIC["time_zone"])
        for row in rows:
            question = self.question_to(row, questions)
            client_id = self.last_writer.get(row.to, 0) if question == "who" else row.client_id or 0
            session = sessions.get(row.session_id or 0)
            if row.kind == "reminder" and session is not None:
                if session.id in self.sessions_seen:
                    continue
                self.sessions_seen.add(session.id or 0)
            life = self.lives.get(client_id)
            if life is not None:
                items = session.items if session else ()
                self.will_write(life, row, life.reached(Reached(row.kind, question, items, day)))

    def questions_open(self, tx: Tx) -> list[Question]:
        """Return the open questions that no client has met yet, newest first."""
        statement = select(Question).where(col(Question.closed_at).is_(None)).order_by(col(Question.id).desc())
        return [one for one in tx.exec(statement) if one.id not in self.questions_seen]

    def question_to(self, row: Outbound, questions: Sequence[Question]) -> str:
        """Return the kind of question that a message opened or carries, empty when it asks nothing new."""
        for one in questions:
            if one.id not in self.questions_seen and (one.address == row.to or one.client_id == row.client_id):
                self.questions_seen.add(one.id or 0)
                return one.kind
        return ""

    def will_write(self, life: Life, row: Outbound, said: Iterable[tuple[int, str]]) -> None:
        """Enter what a client writes after a message of ours, each text after the one before."""
        at = self.now
        for minutes, words in said:
            at = at + timedelta(minutes=minutes)
            if not life.is_in_a_moment:
                at = on_grid(at)
            self.enter(at, Text(life, row.to, words, f"row:{row.id}" if row.channel == "email" else ""))


def send(sender: deliver.Sender) -> list[int]:
    """Hand over what is due, claim by claim; return the rows that were accepted."""
    sent: list[int] = []
    while True:
        claims, _, touched = deliver.claim(sender)
        if claims:
            sent += deliver.hand_over(sender, claims).ids
        if touched < sender.batch:
            return sent


CLINICS, MEMBERS, KEPT = select(Clinic), select(Staff), select(InboundRow).where(col(InboundRow.id) == bindparam("row"))


def begin(path: Path, people: Sequence[Person], weeks: int, seed: int, port: int) -> Story:
    """Return a story about to be lived: the clinic is built, its people enrolled."""
    begins_at = building.begins_at()
    ends_on = building.FIRST_DAY + timedelta(weeks=weeks)
    ends_at = at_local(ends_on, building.ENDS, CLINIC["time_zone"])
    made: list[Story] = []
    app = building.build(path, port, people, seed, lambda: made[0].now if made else begins_at)
    with app.db.read() as tx:
        clients = list(tx.exec(select(Client).order_by(col(Client.id))))
    lives = {
        client.id or 0: Life(person, Random(f"{seed} {person.name} {place}"))
        for place, (client, person) in enumerate(zip(clients, people, strict=True))
    }
    app.db = db = MomentDatabase.instead_of(app.db)
    story = Story(app, db, lives, Care(Random(f"{seed} staff")), begins_at, ends_at)
    made.append(story)
    enter_dates(story, weeks)
    return story


def enter_dates(story: Story, weeks: int) -> None:
    """Enter the hours of the weekly digests, and what clients write out of their own heads."""
    zone = CLINIC["time_zone"]
    for week in range(1, weeks + 1):
        story.enter(at_local(building.FIRST_DAY + timedelta(weeks=week), digest.HOUR, zone), None)
    for life in story.lives.values():
        row = life.person.row
        address = row.get("mobile") or row.get("email", "")
        for day, hour, words in life.person.habit.dated:
            story.enter(at_local(building.FIRST_DAY + timedelta(days=day), hour, zone), Text(life, address, words))
