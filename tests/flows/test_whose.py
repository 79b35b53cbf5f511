"""Staff says whose a danger sign from a shared phone was."""

import pytest

from reminders.errors import Refused
from reminders.flows import hold, whose
from reminders.store.tables import Alert, Client, Flag
from tests.clinic import ANA, World
from tests.flows.hearing import heard, reminded


def shared(world: World) -> tuple[int, int]:
    """Let a fall be told from a phone that Ana and Eva share; return their ids."""
    eva = world.enrol("Eva Ruiz", ANA)
    ana = reminded(world)
    world.hear("fell down the stairs, cannot get up")
    return ana, eva


def said(world: World, client_id: int, by: str = "ben@example.org") -> int:
    with world.db.begin() as tx:
        one = next(row for row in world.alerts() if row.client_id == client_id)
        return len(whose.is_hers(tx, tx.get(Alert, one.id), by, world.now))  # type: ignore[arg-type]


def test_hers_stays_and_the_others_alert_and_hold_end(world: World) -> None:
    ana, eva = shared(world)

    assert said(world, ana) == 1

    states = {row.client_id: (row.state, row.one_of_two, row.outcome) for row in world.alerts()}
    assert states == {ana: ("open", False, ""), eva: ("closed", True, "expected")}
    with world.db.read() as tx:
        assert (hold.is_held(tx, ana), hold.is_held(tx, eva)) == (True, False)
    assert [row.client_id for row in world.queued("hold_cleared")] == [eva]
    assert said(world, ana) == 0


def test_another_hold_of_hers_stays_and_she_is_told_nothing(world: World) -> None:
    ana, eva = shared(world)
    with world.db.begin() as tx:
        hold.open_hold(tx, tx.get(Client, eva), "therapist", "ben@example.org", world.now)  # type: ignore[arg-type]

    said(world, ana)

    with world.db.read() as tx:
        assert hold.is_held(tx, eva)
    assert world.queued("hold_cleared") == []


def test_only_staff_say_so(world: World) -> None:
    ana, _ = shared(world)
    with pytest.raises(Refused):
        said(world, ana, "client")


def test_what_else_the_words_tell_is_kept_as_hers_once_and_nobody_is_called_again(world: World) -> None:
    eva = world.enrol("Eva Ruiz", ANA)
    ana = reminded(world)
    told = world.hear("did 1x10 then fell in the hall, pain 7")
    assert (world.reports(ana), world.reports(eva)) == ([], [])
    rounds = [(row.rule, row.round) for row in world.alerts(ana)]

    said(world, ana)

    assert [(one.reading["pain"], one.inbound_id) for one in world.reports(ana)] == [(7, told)]
    assert (world.sessions(ana)[0].pain, world.sessions(ana)[0].sets) == (7, 1)
    assert world.reports(eva) == []
    assert heard(world, told).client_id == ana
    assert [(row.rule, row.round) for row in world.alerts(ana)] == rounds


def test_a_sign_that_was_anothers_counts_among_her_own_no_more(world: World) -> None:
    ana, eva = shared(world)
    assert len(world.rows(Flag, client_id=eva)) == len(world.rows(Flag, client_id=ana)) > 0

    said(world, ana)

    assert world.rows(Flag, client_id=eva) == []
    assert len(world.rows(Flag, client_id=ana)) > 0
