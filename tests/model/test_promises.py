"""Never after STOP, never outside the window, never twice, never nothing: whatever happens in whatever order."""

from collections import Counter
from datetime import UTC, date, datetime, timedelta

import pytest
from hypothesis import HealthCheck, settings
from hypothesis import strategies as st
from hypothesis.stateful import (
    RuleBasedStateMachine,
    initialize,
    invariant,
    precondition,
    rule,
    run_state_machine_as_test,
)

from reminders.core.kinds import kind_of
from reminders.core.schedule import at_local, inside_window, local_date
from reminders.flows import deliver, hold, pause, say, tick
from reminders.store import clients
from reminders.store.tables import Client, ExerciseSession, Outbound
from tests.model.world import ZONE, Living, Person, living

WINDOW = ("08:00", "20:00")
HOUR = "08:30"
DAYS = (0, 2, 4)
# Around both changes of the clock: 14 March and 7 November 2027 in New York (IANA zone data, northamerica).
STARTS = (datetime(2027, 3, 10, 15, 0, tzinfo=UTC), datetime(2027, 11, 3, 15, 0, tzinfo=UTC))
WORDS = ("done 2x10 pain 2", "all, no pain", "N", "pain 9", "I fell in the bath", "ok", "what do I do?")
MOBILES = ("+12025550121", "+12025550122", "+12025550123")
ROUND = timedelta(minutes=40)
LATEST = timedelta(hours=4, minutes=30)


class Promises(RuleBasedStateMachine):
    """One clinic; each rule is something that may happen to it."""

    world: Living

    def __init__(self) -> None:
        super().__init__()
        self.people: dict[str, Person] = {}
        self.checked = 0
        self.newest = datetime.min.replace(tzinfo=UTC)

    @initialize(start=st.sampled_from(STARTS))
    def begin(self, start: datetime) -> None:
        self.world = living(start)
        self.world.sms.on_loss = self.trouble  # type: ignore[attr-defined]
        self.worker = self.world.worker()
        self.enrol(MOBILES[0])
        self.work()

    def teardown(self) -> None:
        if hasattr(self, "world"):
            self.live(2)
            self.nothing_went_that_must_not_go()
            self.world.close()

    # What happens.

    @rule(mobile=st.sampled_from(MOBILES))
    def enrol(self, mobile: str) -> None:
        if mobile not in self.people:
            client_id = self.world.enrol(f"Client {len(self.people)}", mobile)
            self.people[mobile] = Person(client_id, mobile, self.today())

    @rule(days=st.integers(1, 3))
    def live(self, days: int) -> None:
        until = self.world.now + timedelta(days=days)
        while self.world.now < until:
            self.world.now += ROUND if inside_window(self.world.now, ("07:50", "13:00"), ZONE) else ROUND * 4
            self.work()

    @rule(minutes=st.integers(1, 200))
    def wait(self, minutes: int) -> None:
        self.world.now += timedelta(minutes=minutes)
        self.work()

    @rule(mobile=st.sampled_from(MOBILES), words=st.sampled_from(WORDS))
    def reply(self, mobile: str, words: str) -> None:
        if mobile in self.people:
            self.world.hear(words, mobile)

    @rule(mobile=st.sampled_from(MOBILES), words=st.sampled_from(("STOP", "please stop texting me")))
    def stop(self, mobile: str, words: str) -> None:
        if mobile in self.people:
            self.world.hear(words, mobile)
            self.people[mobile].open_since = None

    @rule(mobile=st.sampled_from(MOBILES))
    def start(self, mobile: str) -> None:
        if mobile in self.people:
            self.world.hear("START", mobile)
            person = self.people[mobile]
            person.open_since = person.open_since or self.today()

    @rule(mobile=st.sampled_from(MOBILES), days=st.integers(1, 6))
    def pause(self, mobile: str, days: int) -> None:
        if mobile in self.people:
            with self.world.db.begin() as tx:
                client = tx.get_one(Client, self.people[mobile].client_id)
                pause.begin(tx, client, self.today() + timedelta(days=days), "client", self.world.now)

    @rule(mobile=st.sampled_from(MOBILES))
    def resume(self, mobile: str) -> None:
        if mobile in self.people:
            with self.world.db.begin() as tx:
                pause.end(tx, tx.get_one(Client, self.people[mobile].client_id), "client", self.world.now)
            self.trouble()

    @rule(mobile=st.sampled_from(MOBILES))
    def release(self, mobile: str) -> None:
        if mobile in self.people:
            with self.world.db.begin() as tx:
                client = tx.get_one(Client, self.people[mobile].client_id)
                hold.end_hold(tx, client, "ben@example.org", self.world.now)

    @rule(taken=st.lists(st.booleans(), min_size=1, max_size=3))
    def lose_answers(self, taken: list[bool]) -> None:
        self.world.sms.loses += taken  # type: ignore[attr-defined]
        self.trouble()

    @rule()
    def crash_after_the_claim(self) -> None:
        self.reminder_hour()
        deliver.claim(self.world.sender)
        self.restart()

    @rule()
    def crash_after_the_call(self) -> None:
        self.reminder_hour()
        for one in deliver.claim(self.world.sender)[0]:
            deliver.call(self.world.sender, one)
        self.restart()

    @rule(mobile=st.sampled_from(MOBILES))
    def stop_between_claim_and_call(self, mobile: str) -> None:
        self.reminder_hour()
        claims, _, _ = deliver.claim(self.world.sender)
        self.nothing_went_that_must_not_go()
        self.stop(mobile, "STOP")
        if claims:
            deliver.hand_over(self.world.sender, claims)

    @rule(mobile=st.sampled_from(MOBILES))
    def stop_before_the_evening(self, mobile: str) -> None:
        self.reminder_hour()
        self.work()
        self.nothing_went_that_must_not_go()
        self.stop(mobile, "STOP")
        self.world.now = at_local(self.today(), "18:00", ZONE)
        self.work()

    @rule(mobile=st.sampled_from(MOBILES))
    def therapist_writes_at_night(self, mobile: str) -> None:
        if mobile in self.people:
            self.trouble()  # the rest of the day is left out
            self.world.now = at_local(self.today(), "22:00", ZONE)
            with self.world.db.begin() as tx:
                client = tx.get_one(Client, self.people[mobile].client_id)
                say.tell_client(
                    tx, clients.the_clinic(tx, client.clinic_id), client, "therapist_note", "operator",
                    {"what": "a word"}, self.world.now, lambda contact: f"note:{self.world.now}:{contact}",
                    due_at=self.world.now,
                )  # fmt: skip
            self.work()

    def reminder_hour(self) -> None:
        """Go on to the next hour at which reminders are due, and plan them."""
        day = self.today()
        while day.weekday() not in DAYS or at_local(day, HOUR, ZONE) <= self.world.now:
            day += timedelta(days=1)
        self.world.now = at_local(day, HOUR, ZONE)
        self.world.plan()

    @rule()
    def restart(self) -> None:
        self.trouble()
        self.worker = self.world.worker()

    @rule(hours=st.integers(1, 60))
    def machine_off(self, hours: int) -> None:
        self.trouble(hours)
        self.world.now += timedelta(hours=hours)
        self.worker = self.world.worker()
        self.work()

    @rule(hours=st.integers(1, 30))
    def clock_set_back(self, hours: int) -> None:
        self.world.now -= timedelta(hours=hours)
        self.trouble(hours + 24)
        self.work()

    def work(self) -> None:
        """Do a round of everything."""
        tick.run(self.worker, self.world.now)
        self.newest = max(self.newest, self.world.now)

    def trouble(self, hours: int = 24) -> None:
        """Note that until so many hours from now a reminder may be late for a good reason."""
        for person in self.people.values():
            for ahead in range(0, hours + 24, 24):
                person.troubled.add(local_date(self.world.now + timedelta(hours=ahead), ZONE))

    def today(self) -> date:
        """Return the local date."""
        return local_date(self.world.now, ZONE)

    # What must hold.

    @precondition(lambda self: hasattr(self, "world"))
    @invariant()
    def nothing_went_that_must_not_go(self) -> None:
        seen = self.world.sms.seen  # type: ignore[attr-defined]
        rows = {row.id: row for row in self.world.rows(Outbound)}
        for at, outgoing in seen[self.checked :]:
            row, rules = rows[outgoing.row], kind_of(rows[outgoing.row].kind)
            person = self.people.get(outgoing.to)
            if person is not None and rules.needs_consent:
                assert person.open_since is not None, f"{row.kind} after STOP"
            if rules.order_full:
                assert inside_window(at, WINDOW, ZONE), f"{row.kind} at {at}"
        self.checked = len(seen)
        keys = Counter(outgoing.key for _, outgoing in seen if not rows[outgoing.row].maybe_doubled)
        assert not [key for key, times in keys.items() if times > 1]
        begun = Counter((o.to, local_date(at, ZONE)) for at, o in seen if kind_of(rows[o.row].kind).order_full)
        assert max(begun.values(), default=0) <= 2

    @precondition(lambda self: hasattr(self, "world") and self.newest == self.world.now)
    @invariant()
    def every_day_is_accounted_for(self) -> None:
        with self.world.db.read() as tx:
            for person in self.people.values():
                client = tx.get_one(Client, person.client_id)
                is_open = bool(clients.open_contacts(clients.contacts_of(tx, person.client_id)))
                assert is_open == (person.open_since is not None)
                sessions = {
                    one.on_date: one
                    for one in self.world.rows(ExerciseSession, client_id=person.client_id)
                    if one.kind == "planned"
                }
                if person.open_since is not None:
                    assert client.state == "active"
                    self.check_days(person, sessions)

    def check_days(self, person: Person, sessions: dict[date, ExerciseSession]) -> None:
        """Check that no exercise day since her address was opened is missing or left hanging."""
        assert person.open_since is not None
        day = person.open_since + timedelta(days=1)
        while day <= self.today():
            due_at = at_local(day, HOUR, ZONE)
            if day.weekday() in DAYS and due_at <= self.world.now:
                assert day in sessions, f"no session on {day}"
                state = sessions[day].state
                if state == "planned" and self.world.now >= due_at + LATEST:
                    assert self.is_looked_up(sessions[day]), f"{day} hangs"
                if state == "unsent":
                    assert self.may_be_unsent(person, day), f"{day} was not sent"
            day += timedelta(days=1)

    def is_looked_up(self, session: ExerciseSession) -> bool:
        """Return whether a reminder of a session is cut off and being looked for: three looks, one a round."""
        return any(row.state == "unknown" for row in self.world.rows(Outbound, session_id=session.id, kind="reminder"))

    def may_be_unsent(self, person: Person, day: date) -> bool:
        """Return whether a reminder was rightly not sent: trouble that day or the day before, or full caps."""
        begun = [
            local_date(row.claimed_at, ZONE)
            for row in self.world.rows(Outbound, to=person.mobile)
            if kind_of(row.kind).order_full and row.claimed_at is not None
        ]
        full = begun.count(day) >= 2 or sum(day - timedelta(days=7) < one <= day for one in begun) >= 5
        return full or day in person.troubled or day - timedelta(days=1) in person.troubled


@pytest.mark.parametrize(
    ("examples", "steps"),
    [pytest.param(8, 25, id="short"), pytest.param(300, 40, id="long", marks=pytest.mark.long)],
)
def test_never_after_stop_never_outside_the_window_never_twice_never_nothing(examples: int, steps: int) -> None:
    run_state_machine_as_test(
        Promises,
        settings=settings(
            max_examples=examples,
            stateful_step_count=steps,
            deadline=None,
            database=None,
            suppress_health_check=list(HealthCheck),
        ),
    )
