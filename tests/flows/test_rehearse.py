"""Rehearsal: changed levels over a lived record, beside what it raised and what that led to."""

from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest
from sqlmodel import select

from reminders.errors import BadInput
from reminders.flows import rehearse
from reminders.store.tables import Alert, Client, Clinic, ExerciseSession, Outbound
from tests.clinic import World

NOW = datetime(2027, 4, 26, 15, 0, tzinfo=UTC)
FIRST = date(2027, 3, 3)


def lived(world: World, *pains: int | None, usual: int = 2) -> int:
    """Give Ana a record: a session every other day with these ratings, None missed."""
    ana = world.enrol(usual_pain=str(usual))
    with world.db.begin() as tx:
        for planned in tx.exec(select(ExerciseSession)):
            tx.delete(planned)
        tx.flush()
        for place, pain in enumerate(pains):
            on = FIRST + timedelta(days=2 * place)
            due = datetime(on.year, on.month, on.day, 13, 30, tzinfo=UTC)
            state = "missed" if pain is None else "done"
            tx.add(ExerciseSession(client_id=ana, on_date=on, due_at=due, queued_at=due, state=state, pain=pain))
    return ana


def alerted(world: World, ana: int, day: int, outcome: str, rule: str = "pain_up") -> None:
    at = datetime(2027, 3, 3, 15, 0, tzinfo=UTC) + timedelta(days=day)
    with world.db.begin() as tx:
        number = len(list(world.alerts())) + 1
        tx.add(
            Alert(
                clinic_id=1, number=number, client_id=ana, rule=rule, level="today", state="closed", opened_at=at,
                last_added_at=at, closed_at=at, outcome=outcome,
            )
        )  # fmt: skip


def rehearsed(world: World, **changes: Any) -> dict[str, Any]:
    with world.db.read() as tx:
        clinic = tx.get(Clinic, 1)
        assert clinic is not None
        return rehearse.rehearse(tx, clinic, rehearse.changes_of(changes), 8, NOW)


def test_it_counts_alerts_as_it_is_and_with_changed_levels(world: World) -> None:
    ana = lived(world, 2, 6, 2, 2, 2, 2, 7, 2)

    found = rehearsed(world, stop_floor=7)

    assert found["as_is"] == {"alerts": 2, "per_week": 0.2, "by_rule": {"pain_up": 2}}
    assert found["changed"] == {"alerts": 1, "per_week": 0.1, "by_rule": {"pain_up": 1}}
    assert found["clients"] == [{"client": ana, "name": "Ana Ruiz", "as_is": 2, "changed": 1}]


def test_it_says_which_alerts_that_led_to_something_would_have_been_missed(world: World) -> None:
    ana = lived(world, 2, 6, 2, 2, 2, 2, 7, 2, 2, 2, 2, 6)
    alerted(world, ana, 2, "called")
    alerted(world, ana, 12, "changed dose")
    alerted(world, ana, 22, "nothing")

    found = rehearsed(world, stop_floor=7)

    assert found["led_to_something"] == 1
    assert found["would_have_missed"] == [
        {"client": ana, "alert": 1, "rule": "pain_up", "on": "2027-03-05", "outcome": "called"}
    ]


def test_missed_sessions_are_replayed_too(world: World) -> None:
    lived(world, 2, None, None, None, None, None)
    assert rehearsed(world, missed_running=2)["changed"]["by_rule"] == {"missed": 1}
    assert rehearsed(world, missed_running=6)["changed"]["by_rule"] == {}


def test_levels_of_one_therapist_or_client_are_changed_alone(world: World) -> None:
    ana = lived(world, 2, 6, 2)
    assert rehearsed(world, clients={str(ana): {"stop_floor": 7}})["changed"]["alerts"] == 0
    assert rehearsed(world, therapists={"ben@example.org": {"stop_floor": 7}})["changed"]["alerts"] == 0
    assert rehearsed(world, therapists={"dee@example.org": {"stop_floor": 7}})["changed"]["alerts"] == 1


def test_a_client_with_levels_of_her_own_keeps_them(world: World) -> None:
    ana = lived(world, 2, 6, 2)
    with world.db.begin() as tx:
        tx.get(Client, ana).levels = {"stop_floor": 6}  # type: ignore[union-attr]
    assert rehearsed(world, stop_floor=8)["changed"]["alerts"] == 1


def test_nothing_is_written_or_sent(world: World) -> None:
    lived(world, 2, 9, None, None, None, 9)
    before = (len(world.rows(Outbound)), len(world.rows(Alert)))
    rehearsed(world, usual_counts=0)
    assert (len(world.rows(Outbound)), len(world.rows(Alert))) == before


WRONG = {
    "an unknown level": ({"stop": 6}, '"stop" is no level'),
    "an unknown level of one client": ({"clients": {"1": {"stop": 6}}}, '"stop" is no level'),
    "a level that only one client may have": ({"severe": 9}, "one client"),
    "a client by name": ({"clients": {"Ana": {"up_floor": 5}}}, "no client number"),
    "a client who is not there": ({"clients": {"99": {"up_floor": 5}}}, "no client 99"),
    "another clinic's therapist": ({"therapists": {"cleo@example.org": {"up_floor": 5}}}, "cleo@example.org"),
    "no tables": ({"clients": 5}, "must hold tables"),
}


@pytest.mark.parametrize(("changes", "words"), WRONG.values(), ids=WRONG.keys())
def test_wrong_rules_are_named_in_one_sentence(world: World, changes: dict[str, Any], words: str) -> None:
    with pytest.raises(BadInput, match=words):
        rehearsed(world, **changes)


def test_weeks_are_refused_out_of_range(world: World) -> None:
    with world.db.read() as tx, pytest.raises(BadInput, match="--weeks"):
        rehearse.rehearse(tx, tx.get(Clinic, 1), {}, 0, NOW)  # type: ignore[arg-type]
