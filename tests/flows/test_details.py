"""A client's details as the desk keeps them: checked field by field, planned anew where it matters."""

from datetime import date
from typing import Any

import pytest
from sqlmodel import select

from reminders.errors import BadInput, Refused
from reminders.flows import details
from reminders.flows.details import Wanted
from reminders.store.db import Tx
from reminders.store.tables import (
    Audit,
    Client,
    Clinic,
    ConsentEvent,
    Contact,
    ExerciseSession,
    Outbound,
    Schedule,
    Staff,
)
from tests.clinic import ANA, World

FAY = "fay@example.org"


def both(tx: Tx, client_id: int) -> tuple[Clinic, Client]:
    client = tx.get(Client, client_id)
    assert client is not None
    clinic = tx.get(Clinic, client.clinic_id)
    assert clinic is not None
    return clinic, client


def change(world: World, client_id: int, wanted: Wanted) -> list[str]:
    with world.db.begin() as tx:
        clinic, client = both(tx, client_id)
        return details.change(tx, clinic, client, wanted, FAY, world.now)


def test_what_differs_is_kept_and_named_in_the_log(world: World) -> None:
    client_id = world.enrol()

    changed = change(world, client_id, Wanted({"name": " Ana  Ruiz Vega ", "language": "es", "window": "7:00-19:00"}))

    assert sorted(changed) == ["language", "name", "window"]
    client = world.client(client_id)
    assert (client.name, client.language, client.window) == ("Ana Ruiz Vega", "es", "07:00-19:00")
    assert world.rows(Audit, action="details changed")[-1].details == {"fields": ["language", "name", "window"]}


def test_nothing_changed_leaves_no_line(world: World) -> None:
    client_id = world.enrol()

    assert change(world, client_id, Wanted({"name": "Ana Ruiz"})) == []
    assert world.rows(Audit, action="details changed") == []


def test_other_days_count_from_tomorrow_on_and_the_next_session_moves(world: World) -> None:
    client_id = world.enrol()

    assert change(world, client_id, Wanted({}, days="tue+thu+sat", time="10:00")) == ["days and hour"]

    newest = world.rows(Schedule, client_id=client_id)[-1]
    assert (newest.days, newest.time, newest.from_on) == ("tue+thu+sat", "10:00", date(2027, 3, 2))
    assert [row.on_date for row in world.rows(ExerciseSession, client_id=client_id)] == [date(2027, 3, 2)]


def test_another_zone_alone_is_a_change_of_days_and_hour(world: World) -> None:
    client_id = world.enrol()

    assert change(world, client_id, Wanted({}, time_zone="America/Chicago")) == ["days and hour"]
    assert world.client(client_id).time_zone == "America/Chicago"


def test_a_client_without_a_schedule_gets_none_from_an_empty_form(world: World) -> None:
    client_id = world.enrol()
    with world.db.begin() as tx:
        for row in tx.exec(select(Schedule)):
            tx.delete(row)

    assert change(world, client_id, Wanted({})) == []


def test_another_therapist_of_the_clinic_takes_over(world: World) -> None:
    client_id = world.enrol()
    dee, cleo = world.rows(Staff, email="dee@example.org")[0], world.rows(Staff, email="cleo@example.org")[0]

    assert change(world, client_id, Wanted({}, therapist_id=dee.id)) == ["therapist"]
    with pytest.raises(BadInput, match="The therapist must be one of the clinic's"):
        change(world, client_id, Wanted({}, therapist_id=cleo.id))


WRONG: dict[str, tuple[Wanted, str]] = {
    "no name": (Wanted({"name": " "}), "The name is empty"),
    "an unknown language": (Wanted({"language": "fr"}), "language must be one of: en, es"),
    "an odd window": (Wanted({"window": "20:00-08:00"}), "The window: .* must begin before it ends"),
    "an odd birth year": (Wanted({"birth_year": 1700}), "The birth year must be from 1900"),
    "an odd day": (Wanted({}, days="funday"), "Days and hour: 'funday' is not a day"),
    "an odd hour": (Wanted({}, time="25:00"), "Days and hour: '25:00' is not a time"),
    "an hour outside the window": (Wanted({}, time="20:30"), "20:30 is outside the window 08:00-20:00"),
    "a window that shuts her hour out": (Wanted({"window": "13:00-20:00"}), "08:30 is outside the window 13:00-20:00"),
    "an odd zone": (Wanted({}, time_zone="Mars/Base"), "Days and hour: 'Mars/Base' is not a time zone"),
}


@pytest.mark.parametrize(("wanted", "sentence"), WRONG.values(), ids=WRONG.keys())
def test_what_does_not_fit_is_one_sentence_naming_the_field(world: World, wanted: Wanted, sentence: str) -> None:
    client_id = world.enrol()
    with pytest.raises(BadInput, match=sentence):
        change(world, client_id, wanted)


def address(world: World, client_id: int, kind: str, text: str) -> None:
    with world.db.begin() as tx:
        clinic, client = both(tx, client_id)
        details.change_address(tx, clinic, client, kind, text, FAY, world.now)


def test_a_new_number_needs_a_consent_of_its_own_and_the_old_one_gets_nothing_more(world: World) -> None:
    client_id = world.enrol()

    address(world, client_id, "sms", "(202) 555-0102")

    contact = world.rows(Contact, client_id=client_id)[0]
    assert (contact.address, contact.consent) == ("+12025550102", "none")
    assert {row.state for row in world.rows(Outbound, to=ANA)} == {"withdrawn"}
    assert world.rows(ExerciseSession, client_id=client_id, state="planned") == []


def test_the_same_number_changes_nothing(world: World) -> None:
    client_id = world.enrol()
    address(world, client_id, "sms", ANA)

    assert world.rows(Contact, client_id=client_id)[0].consent == "open"
    assert world.rows(Audit, action="address changed") == []


def test_an_address_is_added_and_taken_away(world: World) -> None:
    client_id = world.enrol()
    address(world, client_id, "email", "Ana@Example.org")
    assert [row.address for row in world.rows(Contact, client_id=client_id, kind="email")] == ["ana@example.org"]

    address(world, client_id, "sms", "")

    contact = world.rows(Contact, client_id=client_id, kind="sms")[0]
    assert (contact.consent, contact.unusable) == ("closed", "taken away at the desk")


@pytest.mark.parametrize(("kind", "text", "field"), [("sms", "12", "The mobile"), ("email", "ana", "The e-mail")])
def test_an_address_that_is_none_is_refused(world: World, kind: str, text: str, field: str) -> None:
    client_id = world.enrol()
    with pytest.raises(BadInput, match=field):
        address(world, client_id, kind, text)


def consent(world: World, client_id: int, how: str = "signed form", on: Any = date(2027, 3, 1)) -> int:
    with world.db.begin() as tx:
        clinic, client = both(tx, client_id)
        return details.consent_given(tx, clinic, client, how, on, FAY, world.now)


def test_a_consent_at_the_desk_makes_her_active_and_welcomed(world: World) -> None:
    client_id = world.enrol(consent_on="", consent_how="")
    assert world.client(client_id).state == "invited"

    assert consent(world, client_id) == 1

    assert world.client(client_id).state == "active"
    assert [row.to for row in world.queued("welcome")] == [ANA]
    assert world.rows(ConsentEvent)[-1].how == "signed form on 2027-03-01"


def test_an_address_that_opted_out_is_not_opened_by_the_desk(world: World) -> None:
    client_id = world.enrol()
    world.hear("STOP")
    with pytest.raises(Refused, match="comes back only by START"):
        consent(world, client_id)


def test_a_consent_needs_a_way_and_a_day_and_an_open_record(world: World) -> None:
    client_id = world.enrol(consent_on="", consent_how="")
    with pytest.raises(BadInput, match="How she agreed"):
        consent(world, client_id, "START")
    with pytest.raises(BadInput, match="The day of the consent is empty"):
        consent(world, client_id, on=None)
    with world.db.begin() as tx:
        _, client = both(tx, client_id)
        client.state = "closed"
    with pytest.raises(Refused, match="closed"):
        consent(world, client_id)


def test_her_word_at_the_desk_closes_every_address_for_her_alone(world: World) -> None:
    ana = world.enrol(email="home@example.org", holder="shared")
    tom = world.enrol("Tom Ruiz", "+12025550102", email="home@example.org", holder="shared")
    with world.db.begin() as tx:
        clinic, client = both(tx, ana)
        details.consent_withdrawn(tx, clinic, client, FAY, world.now)

    assert world.client(ana).state == "opted_out"
    assert {row.consent for row in world.rows(Contact, client_id=ana)} == {"closed"}
    assert {row.consent for row in world.rows(Contact, client_id=tom)} == {"open"}


def test_her_word_at_the_desk_holds_for_a_new_record_with_her_number(world: World) -> None:
    ana = world.enrol()
    with world.db.begin() as tx:
        clinic, client = both(tx, ana)
        details.consent_withdrawn(tx, clinic, client, FAY, world.now)
    again = world.enrol("Ana R. Ruiz")

    assert world.client(again).state == "invited"
    assert [row.client_id for row in world.rows(Outbound, kind="welcome", state="waiting")] == []


def test_a_number_that_is_put_back_is_used_again_once_she_agrees(world: World) -> None:
    client_id = world.enrol()
    address(world, client_id, "sms", "")
    address(world, client_id, "sms", ANA)
    contact = world.rows(Contact, client_id=client_id)[0]
    assert (contact.consent, contact.unusable) == ("none", "")

    assert consent(world, client_id) == 1
    assert [row.to for row in world.queued("welcome")][-1] == ANA
    assert world.rows(Contact, client_id=client_id)[0].consent == "open"


def test_taking_a_number_away_and_putting_it_back_opens_none_that_opted_out(world: World) -> None:
    client_id = world.enrol()
    world.hear("STOP")
    for text in ("", ANA, "+12025550102", ANA):
        address(world, client_id, "sms", text)
    with pytest.raises(Refused, match="comes back only by START"):
        consent(world, client_id)
