"""Dose steps from the record to the next reminder, and the questions asked now and then."""

from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from sqlmodel import select

from reminders.errors import Refused
from reminders.flows import pause, progress
from reminders.store.tables import Client, ClientProgram, ClinicNote, DailyAnswer, Proposal, Question
from tests.clinic import ANA, World
from tests.flows.rounds import go, sent, started, until
from tests.flows.steps_made import proposed, settled

pytestmark = pytest.mark.weeks


def weeks_done(world: World, ana: int, end: datetime, reply: str = "Y2") -> None:
    """Answer every reminder until an instant."""
    answered = 0
    while world.now < end:
        world.pass_time(hours=4)
        go(world)
        reminders = len(sent(world, ANA, "reminder"))
        if reminders > answered:
            answered = reminders
            world.hear(reply)


def proposals(world: World) -> list[Proposal]:
    found: list[Proposal] = world.rows(Proposal)
    return found


def change(world: World, ana: int, **values: Any) -> None:
    with world.db.begin() as tx:
        row = tx.get(Client, ana)
        for name, value in values.items():
            setattr(row, name, value)


def answer_effort(world: World, choice: str) -> None:
    with world.db.begin() as tx:
        for row in tx.exec(select(Question).where(Question.kind == "effort")):
            row.closed_at, row.closed_how, row.details = world.now, "answered", {"choice": choice}


def until_effort_is_asked(world: World, ana: int) -> None:
    """Answer every reminder until the effort question is open."""
    while not [one for one in world.rows(Question) if one.kind == "effort"]:
        weeks_done(world, ana, world.now + timedelta(days=1))
        assert world.now < datetime(2027, 4, 1, tzinfo=UTC)


def test_the_effort_is_asked_before_a_step_is_proposed(world: World) -> None:
    ana = started(world)
    until_effort_is_asked(world, ana)
    assert "ask_effort" in [row.template for row in sent(world, ANA, "question")]
    assert proposals(world) == []
    answer_effort(world, "medium")

    weeks_done(world, ana, world.now + timedelta(days=4))

    made = proposals(world)
    assert [(one.direction, one.to_rung, one.state) for one in made] == [("up", 1, "open")]
    assert made[0].because[0] == "6 of the last 6 sessions in full"


def test_hard_is_no_step(world: World) -> None:
    ana = started(world)
    until_effort_is_asked(world, ana)
    answer_effort(world, "hard")
    weeks_done(world, ana, world.now + timedelta(days=7))
    assert proposals(world) == []


def test_nothing_is_proposed_while_an_alert_is_open(world: World) -> None:
    ana = started(world)
    world.hear("I have a fever")
    weeks_done(world, ana, datetime(2027, 3, 26, 12, 0, tzinfo=UTC))
    assert proposals(world) == []


def test_a_settled_proposal_is_not_settled_again(world: World) -> None:
    ana = started(world)
    proposed(world, ana)
    settled(world, "decline")
    with pytest.raises(Refused):
        settled(world, "approve")
    assert len(world.rows(ClientProgram)) == 1


def test_a_step_goes_by_itself_where_the_therapist_set_so(world: World) -> None:
    ana = started(world)
    change(world, ana, progress_by_itself=True)
    assert proposed(world, ana).state == "approved"
    assert world.rows(ClientProgram)[-1].by == "by itself"


def test_but_never_with_a_spinal_fracture(world: World) -> None:
    ana = started(world, precautions="spinal fracture")
    change(world, ana, progress_by_itself=True)
    assert proposed(world, ana).state == "open"


def test_and_never_for_load_or_less_hand_support(world: World) -> None:
    from reminders.core.program_json import from_json, to_json

    ana = started(world)
    change(world, ana, progress_by_itself=True)
    with world.db.begin() as tx:
        version = tx.get(ClientProgram, 1)
        assert version is not None
        body = to_json(from_json(version.body))
        body["lists"][0]["items"][0]["ladder"] = [{"dose": "1x10 2 kg", "days": 14}, {"dose": "1x8 3 kg", "days": 14}]
        version.body = body
    made = proposed(world, ana)
    assert made.state == "open"
    assert any("more than 10 %" in reason for reason in made.because)


def on_rung(world: World, rung: int) -> None:
    with world.db.begin() as tx:
        version = tx.get(ClientProgram, 1)
        assert version is not None
        version.rung = rung


# rung before, pause days, reason -> rung after
AWAY = {
    "two weeks": (2, 14, "", 1),
    "thirteen days": (2, 13, "", 2),
    "four weeks": (2, 28, "", 0),
    "an illness": (2, 5, "sick", 0),
}


@pytest.mark.parametrize("case", AWAY.values(), ids=AWAY.keys())
def test_an_absence_brings_her_back_lower(world: World, case: tuple[int, int, str, int]) -> None:
    before, days, why, after = case
    ana = started(world)
    on_rung(world, before)
    last = date(2027, 3, 3) + timedelta(days=days - 1)
    with world.db.begin() as tx:
        client = tx.get(Client, ana)
        pause.begin(tx, client, last, "client", world.now, reason=why)  # type: ignore[arg-type]
    until(world, datetime(2027, 3, 3, 15, 0, tzinfo=UTC) + timedelta(days=days + 1), hours=12)
    with world.db.read() as tx:
        from reminders.store import clients

        version = clients.newest_program(tx, ana)
    assert version is not None
    assert version.rung == after
    assert len(world.rows(ClientProgram)) == (1 if after == before else 2)


def test_falls_are_asked_once_a_month_where_the_program_asks_for_it(world: World) -> None:
    ana = started(world, program="falls-balance")
    weeks_done(world, ana, datetime(2027, 3, 28, 12, 0, tzinfo=UTC))
    assert [row for row in sent(world, ANA, "question") if row.template == "ask_falls"] == []
    weeks_done(world, ana, datetime(2027, 4, 16, 12, 0, tzinfo=UTC))
    asked = [row for row in sent(world, ANA, "question") if row.template == "ask_falls"]
    assert len(asked) == 1
    assert asked[0].body.startswith("Any falls since Mon Mar 1? Reply 0, 1, 2")


def test_daily_items_are_asked_once_a_week(world: World) -> None:
    ana = started(world)
    weeks_done(world, ana, datetime(2027, 3, 19, 12, 0, tzinfo=UTC))
    asked = [row for row in sent(world, ANA, "question") if row.template == "ask_days"]
    assert 1 <= len(asked) <= 2
    assert asked[0].details["week"].startswith("2027-W")
    assert world.rows(DailyAnswer) == []


def test_the_therapist_is_told_two_weeks_before_a_program_ends_once(world: World) -> None:
    ana = started(world)
    with world.db.begin() as tx:
        tx.get(ClientProgram, 1).end_on = date(2027, 3, 20)  # type: ignore[union-attr]
    weeks_done(world, ana, datetime(2027, 3, 19, 12, 0, tzinfo=UTC))
    told = [note for note in world.rows(ClinicNote, kind="desk") if note.details.get("what") == "program ends"]
    assert [note.details["on"] for note in told] == ["2027-03-20"]


def test_a_review_twice_at_the_same_instant_does_nothing_more(world: World) -> None:
    ana = started(world)
    weeks_done(world, ana, datetime(2027, 3, 22, 12, 0, tzinfo=UTC))
    answer_effort(world, "easy")
    change(world, ana, review_at=world.now)
    for _ in range(2):
        with world.db.begin() as tx:
            progress.review(tx, tx.get(Client, ana), world.now)  # type: ignore[arg-type]
    assert len(proposals(world)) == 1


def test_nobody_is_reviewed_who_is_not_active(world: World) -> None:
    ana = started(world)
    change(world, ana, state="closed", review_at=world.now)
    go(world)
    assert world.client(ana).review_at is None


def test_nothing_is_looked_at_while_she_is_paused(world: World) -> None:
    ana = started(world)
    with world.db.begin() as tx:
        pause.begin(tx, tx.get(Client, ana), date(2027, 3, 30), "client", world.now)  # type: ignore[arg-type]
    change(world, ana, review_at=world.now)
    go(world)
    assert world.client(ana).review_at == datetime(2027, 3, 10, 15, 31, tzinfo=UTC)


def test_few_reps_twice_running_propose_a_step_back(world: World) -> None:
    started(world)
    on_rung(world, 1)
    for day in (3, 5):
        world.now = datetime(2027, 3, day, 14, 0, tzinfo=UTC)
        go(world)
        world.hear("did 2x6, pain 2")
        world.pass_time(minutes=5)
    until(world, datetime(2027, 3, 6, 20, 0, tzinfo=UTC), hours=6)
    made = proposals(world)
    assert [(one.direction, one.to_rung) for one in made] == [("back", 0)]
    assert made[0].because == ["6 reps twice running where 8 are the least"]


def test_a_proposal_is_withdrawn_when_she_was_away_too_long_for_it(world: World) -> None:
    ana = started(world)
    on_rung(world, 1)
    proposed(world, ana)
    with world.db.begin() as tx:
        pause.begin(tx, tx.get(Client, ana), date(2027, 3, 20), "client", world.now)  # type: ignore[arg-type]
    until(world, datetime(2027, 3, 22, 15, 0, tzinfo=UTC), hours=12)
    assert [one.state for one in proposals(world)] == ["withdrawn"]


def test_a_declined_proposal_stays_declined(world: World) -> None:
    ana = started(world)
    proposed(world, ana)
    settled(world, "decline")
    with pytest.raises(Refused):
        settled(world, "decline")
    assert [(one.state, one.settled_by) for one in proposals(world)] == [("declined", "ben@example.org")]
