"""What staff do for one client: write, hold, clear, ease, note, correct; each a line in the log."""

from datetime import date, timedelta
from typing import Any

import pytest

from reminders.errors import BadInput, Refused
from reminders.flows import care
from reminders.store.db import Tx
from reminders.store.tables import Audit, Client, Clinic, ClinicNote, ExerciseSession, Hold
from tests.clinic import ANA, World

BEN = "ben@example.org"


def both(tx: Tx, client_id: int) -> tuple[Clinic, Client]:
    client = tx.get(Client, client_id)
    assert client is not None
    clinic = tx.get(Clinic, client.clinic_id)
    assert clinic is not None
    return clinic, client


def write(world: World, client_id: int, words: str, once: int = 1) -> list[int]:
    with world.db.begin() as tx:
        clinic, client = both(tx, client_id)
        return care.write(tx, clinic, client, words, "Ben Ames", BEN, once, world.now)


def test_words_go_to_her_once_and_her_replies_go_to_the_inbox_for_two_days(world: World) -> None:
    client_id = world.enrol()

    assert len(write(world, client_id, "Rest today.")) == 1
    assert write(world, client_id, "Rest today.") == []

    world.send()
    assert world.sms.sent[-1].body == "Ana, Ben Ames of Alder Hill Physio writes: Rest today."
    assert world.client(client_id).staff_wrote_at == world.now
    assert len(world.rows(Audit, action="client written to")) == 1


@pytest.mark.parametrize(("words", "sentence"), [("  ", "are empty"), ("x" * 401, "401 letters")])
def test_words_that_are_none_or_too_many_are_refused(world: World, words: str, sentence: str) -> None:
    client_id = world.enrol()
    with pytest.raises(BadInput, match=sentence):
        write(world, client_id, words)


def test_nobody_writes_to_an_address_that_opted_out(world: World) -> None:
    client_id = world.enrol()
    world.hear("STOP")
    with pytest.raises(Refused, match="phone instead"):
        write(world, client_id, "Hello")


def test_a_hold_by_hand_is_opened_and_cleared(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        care.put_on_hold(tx, both(tx, client_id)[1], " sees her tomorrow ", BEN, world.now)
    hold = world.rows(Hold, client_id=client_id)[0]
    assert (hold.rule, hold.note, hold.by) == ("by_hand", "sees her tomorrow", BEN)

    with world.db.begin() as tx:
        care.clear_hold(tx, both(tx, client_id)[1], BEN, world.now)
    with pytest.raises(Refused, match="is not held"), world.db.begin() as tx:
        care.clear_hold(tx, both(tx, client_id)[1], BEN, world.now)
    assert [row.to for row in world.queued("hold_cleared")] == [ANA]


def test_the_next_session_becomes_an_easy_day(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        care.ease(tx, both(tx, client_id)[1], BEN, world.now)

    assert world.client(client_id).next_session_easy


def test_a_note_is_kept_and_asks_for_nobody(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        note = care.keep_note(tx, both(tx, client_id)[1], " likes mornings ", BEN, world.now)
        assert (note.words, note.closed_at) == ("likes mornings", world.now)
        with pytest.raises(BadInput, match="The note is empty"):
            care.keep_note(tx, both(tx, client_id)[1], " ", BEN, world.now)


def test_an_inbox_item_is_settled_once(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        clinic, _ = both(tx, client_id)
        note = ClinicNote(clinic_id=clinic.id or 0, client_id=client_id, kind="question", at=world.now)
        tx.add(note)
        tx.flush()
        care.settle_note(tx, note, BEN, world.now)
        care.settle_note(tx, note, "dee@example.org", world.now)
        assert note.closed_by == BEN
    assert len(world.rows(Audit, action="inbox item settled")) == 1


def reported(world: World) -> int:
    client_id = world.enrol()
    world.pass_time(days=2)
    world.plan()
    world.send()
    world.hear("done pain 3")
    return client_id


def correct(world: World, client_id: int, **values: Any) -> None:
    with world.db.begin() as tx:
        clinic, client = both(tx, client_id)
        session = tx.get(ExerciseSession, world.sessions(client_id)[0].id)
        assert session is not None
        stated = {"completed": "all", "sets": None, "reps": None, "pain": 3, **values}
        care.correct(tx, clinic, client, session, stated, "she said so", BEN, world.now)


def test_a_correction_counts_and_her_own_report_stays(world: World) -> None:
    client_id = reported(world)

    correct(world, client_id, completed="part", pain=1, sets=1, reps=8)

    session = world.sessions(client_id)[0]
    assert (session.state, session.pain, session.sets, session.reps) == ("part", 1, 1, 8)
    hers, ours = world.reports(client_id)
    assert (hers.text, hers.reading["pain"], ours.by, ours.text) == ("done pain 3", 3, BEN, "she said so")


def test_a_correction_may_say_that_no_pain_was_stated(world: World) -> None:
    client_id = reported(world)
    correct(world, client_id, pain=None)

    assert world.sessions(client_id)[0].pain is None


def test_an_upward_correction_raises_and_holds(world: World) -> None:
    client_id = reported(world)
    correct(world, client_id, pain=9)

    assert [row.rule for row in world.alerts(client_id)] == ["severe_pain"]
    assert world.rows(Hold, client_id=client_id)[0].ended_at is None


def test_an_unknown_completion_is_refused(world: World) -> None:
    client_id = reported(world)
    with pytest.raises(BadInput, match="What was done must be one of"):
        correct(world, client_id, completed="most")


def test_a_day_without_a_session_gets_an_extra_one_once(world: World) -> None:
    client_id = reported(world)
    day = world.sessions(client_id)[0].on_date
    with world.db.begin() as tx:
        _, client = both(tx, client_id)
        assert care.session_on(tx, client, day, world.now).kind == "planned"
        extra = care.session_on(tx, client, day - timedelta(days=1), world.now)
        assert (extra.kind, extra.on_date) == ("extra", date(2027, 3, 2))
        assert care.session_on(tx, client, extra.on_date, world.now).id == extra.id
