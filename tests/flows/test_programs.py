"""What a therapist changes in a client's program by hand: steps, versions, days, precautions, its end."""

from datetime import date, timedelta

import pytest
from sqlmodel import select

from reminders.core.program_data import STARTER_PROGRAMS
from reminders.core.program_json import from_json
from reminders.errors import BadInput, Refused
from reminders.flows import hold, programs
from reminders.flows.programs import Change
from reminders.store.db import Tx
from reminders.store.tables import Client, ClientProgram, ExerciseSession, Precaution, Proposal, Schedule
from tests.clinic import World

BEN = "ben@example.org"
SPINE, FALLS = STARTER_PROGRAMS["spine-strength"], STARTER_PROGRAMS["falls-balance"]


def client_of(tx: Tx, client_id: int) -> Client:
    client = tx.get(Client, client_id)
    assert client is not None
    return client


def versions(world: World, client_id: int) -> list[ClientProgram]:
    return world.rows(ClientProgram, client_id=client_id)


def step(world: World, client_id: int, direction: str) -> None:
    with world.db.begin() as tx:
        programs.step(tx, client_of(tx, client_id), direction, BEN, world.now)


def change(world: World, client_id: int, wanted: Change) -> ClientProgram | None:
    with world.db.begin() as tx:
        return programs.change(tx, client_of(tx, client_id), wanted, BEN, world.now)


def test_steps_by_hand_go_up_and_back_and_to_the_first_and_she_hears_of_it(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        tx.add(Proposal(client_id=client_id, made_at=world.now, direction="up", to_rung=1))

    step(world, client_id, "up")
    step(world, client_id, "up")
    assert [(one.rung, one.by) for one in versions(world, client_id)][-1] == (2, BEN)
    assert world.client(client_id).news["name"] == "more"
    assert world.rows(Proposal, client_id=client_id)[0].state == "withdrawn"
    step(world, client_id, "back")
    step(world, client_id, "first")
    assert [one.rung for one in versions(world, client_id)] == [0, 1, 2, 1, 0]
    assert world.client(client_id).news["name"] == "back"


def test_a_step_taken_back_by_another_program_is_not_told(world: World) -> None:
    client_id = world.enrol()
    step(world, client_id, "up")
    same_step = versions(world, client_id)[-1]

    change(world, client_id, Change(from_json(same_step.body), 1, None, "mon+wed+fri", "09:00"))
    assert world.client(client_id).news["name"] == "more"
    change(world, client_id, Change(from_json(same_step.body), 0, None, "mon+wed+fri", "09:00"))

    assert world.client(client_id).news == {}


def test_there_is_no_step_below_the_first_nor_above_the_last(world: World) -> None:
    client_id = world.enrol()
    with pytest.raises(Refused, match="first step already"):
        step(world, client_id, "back")
    for _ in range(2):
        step(world, client_id, "up")
    with pytest.raises(Refused, match="last step"):
        step(world, client_id, "up")


def test_a_client_without_a_program_is_told_so(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        for row in tx.exec(select(ClientProgram)):
            tx.delete(row)
    with pytest.raises(Refused, match="no program yet"):
        step(world, client_id, "up")


@pytest.mark.parametrize(("is_yes", "state", "rungs"), [(True, "approved", [0, 1]), (False, "declined", [0])])
def test_a_proposal_is_answered(world: World, is_yes: bool, state: str, rungs: list[int]) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        proposal = Proposal(client_id=client_id, made_at=world.now, direction="up", to_rung=1)
        tx.add(proposal)
        tx.flush()
        programs.answer_proposal(tx, client_of(tx, client_id), proposal, is_yes, BEN, world.now)

    assert world.rows(Proposal, client_id=client_id)[0].state == state
    assert [one.rung for one in versions(world, client_id)] == rungs


def test_a_step_up_is_refused_while_she_is_held(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        proposal = Proposal(client_id=client_id, made_at=world.now, direction="up", to_rung=1)
        tx.add(proposal)
        hold.open_hold(tx, client_of(tx, client_id), "therapist", BEN, world.now)

    with world.db.begin() as tx, pytest.raises(Refused, match="clear the hold"):
        programs.answer_proposal(tx, client_of(tx, client_id), tx.get_one(Proposal, proposal.id), True, BEN, world.now)

    assert [one.rung for one in versions(world, client_id)] == [0]


def test_another_program_starts_its_weeks_anew_and_keeps_her_usual(world: World) -> None:
    client_id = world.enrol(usual_pain="4")
    world.pass_time(days=20)

    made = change(world, client_id, Change(FALLS, 0, None, "mon+wed+fri", "09:15"))

    assert made is not None
    today = world.now.date()
    assert (made.number, made.from_on, made.why) == (2, today, "another program")
    assert (made.recheck_on, made.end_on) == (today + timedelta(weeks=6), today + timedelta(weeks=12))
    client = world.client(client_id)
    assert (client.program_code, client.kept_usual, client.kept_usual_on) == ("falls-balance", 4.0, today)
    assert world.rows(Schedule, client_id=client_id)[-1].time == "09:15"


def test_the_same_program_on_another_step_keeps_its_weeks(world: World) -> None:
    client_id = world.enrol()
    first = versions(world, client_id)[0]
    world.pass_time(days=20)

    made = change(world, client_id, Change(SPINE, 1, None, "mon+wed+fri", "08:30"))

    assert made is not None
    assert (made.rung, made.rung_since_on) == (1, world.now.date())
    assert (made.recheck_on, made.end_on, made.why) == (first.recheck_on, first.end_on, "changed by hand")
    assert world.client(client_id).kept_usual is None


def test_days_alone_make_no_new_version_and_the_next_session_moves(world: World) -> None:
    client_id = world.enrol()

    assert change(world, client_id, Change(SPINE, 0, None, "tue+thu", "08:30")) is None

    assert len(versions(world, client_id)) == 1
    assert [row.on_date for row in world.rows(ExerciseSession, client_id=client_id)] == [date(2027, 3, 2)]


def test_a_first_program_and_a_first_schedule_are_given(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        for table in (ExerciseSession, ClientProgram, Schedule):
            for row in tx.exec(select(table)):
                tx.delete(row)

    made = change(world, client_id, Change(SPINE, 0, (), "mon+wed+fri", "08:30", by_itself=True))

    assert made is not None
    assert made.number == 1
    assert world.client(client_id).progress_by_itself
    assert world.client(client_id).kept_usual is None


def test_precautions_begin_and_end_and_unasked_ones_stay(world: World) -> None:
    client_id = world.enrol(precautions="vertigo+poor sight")

    change(world, client_id, Change(SPINE, 0, ("poor sight", "walking aid"), "mon+wed+fri", "08:30"))
    change(world, client_id, Change(SPINE, 0, None, "mon+wed+fri", "08:30"))

    held = {row.kind for row in world.rows(Precaution, client_id=client_id) if row.ended_on is None}
    ended = {row.kind for row in world.rows(Precaution, client_id=client_id) if row.ended_on is not None}
    assert (held, ended) == ({"poor sight", "walking aid"}, {"vertigo"})
    with pytest.raises(BadInput, match="'gout' is no precaution"):
        change(world, client_id, Change(SPINE, 0, ("gout",), "mon+wed+fri", "08:30"))


def test_stating_that_none_is_known_ends_the_asking(world: World) -> None:
    client_id = world.enrol(precautions="")
    assert not world.client(client_id).precautions_stated

    change(world, client_id, Change(SPINE, 0, (), "mon+wed+fri", "08:30"))

    assert world.client(client_id).precautions_stated


def test_a_program_is_extended_from_its_end_or_from_today(world: World) -> None:
    client_id = world.enrol()
    end_on = versions(world, client_id)[0].end_on
    assert end_on is not None
    with world.db.begin() as tx:
        programs.extend(tx, client_of(tx, client_id), 2, BEN, world.now)
    assert versions(world, client_id)[0].end_on == end_on + timedelta(weeks=2)

    world.pass_time(days=365)
    with world.db.begin() as tx:
        programs.extend(tx, client_of(tx, client_id), 1, BEN, world.now)
        with pytest.raises(BadInput, match="The weeks must be 1 to 52"):
            programs.extend(tx, client_of(tx, client_id), 0, BEN, world.now)
    assert versions(world, client_id)[0].end_on == world.now.date() + timedelta(weeks=1)


def test_a_recheck_is_noted_and_the_next_one_follows(world: World) -> None:
    client_id = world.enrol(usual_pain="3")
    with world.db.begin() as tx:
        programs.rechecked(tx, client_of(tx, client_id), BEN, world.now)

    version = versions(world, client_id)[0]
    assert (version.rechecked_on, version.recheck_on) == (date(2027, 3, 1), date(2027, 4, 12))
    assert world.client(client_id).kept_usual == 3.0
