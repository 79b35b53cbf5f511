"""The end of a client's care: everything withdrawn, nothing said; and her return."""

from datetime import timedelta

import pytest

from reminders.errors import BadInput, Refused
from reminders.flows import closing, pause
from reminders.store.tables import Client, Contact, ExerciseSession, Outbound, Pause, Proposal
from tests.clinic import World

FAY = "fay@example.org"


def closed(world: World, client_id: int, reason: str = "goals met") -> None:
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        closing.close(tx, client, reason, FAY, world.now)


def reopened(world: World, client_id: int) -> None:
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        closing.reopen(tx, client, FAY, world.now)


def test_closing_withdraws_everything_and_says_nothing(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        pause.begin(tx, client, None, FAY, world.now)
        tx.add(Proposal(client_id=client_id, made_at=world.now, direction="up", to_rung=1))
    sent_before = len(world.rows(Outbound))

    closed(world, client_id)

    client = world.client(client_id)
    assert (client.state, client.closed_reason, client.closed_at) == ("closed", "goals met", world.now)
    assert [row.state for row in world.rows(Outbound)] == ["withdrawn"] * sent_before
    assert world.rows(ExerciseSession, client_id=client_id, state="planned") == []
    assert world.rows(Pause, client_id=client_id)[0].ended_by == FAY
    assert world.rows(Proposal, client_id=client_id)[0].state == "withdrawn"


def test_a_death_is_kept_with_its_day_and_the_record_stays_closed(world: World) -> None:
    client_id = world.enrol()
    closed(world, client_id, "died")

    assert world.client(client_id).died_on == (world.now - timedelta(hours=5)).date()
    with pytest.raises(Refused, match="has died"):
        reopened(world, client_id)


def test_a_closed_client_opens_again_as_invited_and_consent_is_asked_anew(world: World) -> None:
    client_id = world.enrol(email="ana@example.org")
    world.hear("STOP")
    closed(world, client_id)
    reopened(world, client_id)

    assert (world.client(client_id).state, world.client(client_id).closed_reason) == ("invited", "")
    consents = {row.kind: row.consent for row in world.rows(Contact, client_id=client_id)}
    assert consents == {"sms": "closed", "email": "none"}


def test_an_unknown_reason_and_a_second_closing_are_refused(world: World) -> None:
    client_id = world.enrol()
    with pytest.raises(BadInput, match="The reason must be one of"):
        closed(world, client_id, "bored")
    closed(world, client_id)
    with pytest.raises(Refused, match="closed already"):
        closed(world, client_id)


def test_only_a_closed_client_is_opened_again(world: World) -> None:
    client_id = world.enrol()
    with pytest.raises(Refused, match="is not closed"):
        reopened(world, client_id)
