"""Who works at a clinic: added, changed, covered, moved from; nobody with clients just goes."""

from datetime import date
from typing import Any

import pytest
from sqlmodel import select

from reminders.errors import BadInput, Refused
from reminders.flows import staffing
from reminders.store.db import Tx
from reminders.store.tables import Client, Clinic, Staff
from tests.clinic import World

FAY = "fay@example.org"


def staff(tx: Tx, email: str) -> Staff:
    return tx.exec(select(Staff).where(Staff.email == email)).one()


def clinic(tx: Tx) -> Clinic:
    return tx.exec(select(Clinic).where(Clinic.name == "Alder Hill Physio")).one()


def test_a_new_staff_member_has_her_address_and_number_normalised(world: World) -> None:
    with world.db.begin() as tx:
        made = staffing.add(
            tx, clinic(tx), "therapist", " Pia  Lott ", "Pia@Example.org", "202 555 0180", FAY, world.now
        )

        assert (made.name, made.email, made.mobile) == ("Pia Lott", "pia@example.org", "+12025550180")


WRONG: dict[str, tuple[dict[str, str], str]] = {
    "an unknown role": ({"role": "boss"}, "The role must be one of"),
    "no name": ({"name": " "}, "The name is empty"),
    "no address": ({"email": "pia"}, "The e-mail: 'pia' is not an e-mail address"),
    "no number": ({"mobile": "12"}, "The mobile: '12' is not a phone number"),
    "somebody who is there": ({"email": "ben@example.org"}, "is on the staff already"),
}


@pytest.mark.parametrize(("given", "sentence"), WRONG.values(), ids=WRONG.keys())
def test_a_staff_member_with_something_wrong_is_not_added(world: World, given: dict[str, str], sentence: str) -> None:
    fields = {"role": "therapist", "name": "Pia Lott", "email": "pia@example.org", "mobile": "", **given}
    with pytest.raises(BadInput, match=sentence), world.db.begin() as tx:
        staffing.add(tx, clinic(tx), **fields, by=FAY, now=world.now)


def test_somebody_with_clients_cannot_be_switched_off_before_they_are_moved(world: World) -> None:
    client_id = world.enrol()
    with pytest.raises(Refused, match="Ben Ames still has 1 clients and 0 open alerts"), world.db.begin() as tx:
        staffing.change(tx, staff(tx, "ben@example.org"), "therapist", False, "", FAY, world.now)

    with world.db.begin() as tx:
        ben, dee = staff(tx, "ben@example.org"), staff(tx, "dee@example.org")
        assert staffing.move_clients(tx, ben, dee, FAY, world.now) == 1
        staffing.change(tx, ben, "therapist", False, "", FAY, world.now)

    assert world.client(client_id).therapist_id == world.rows(Staff, email="dee@example.org")[0].id
    assert not world.rows(Staff, email="ben@example.org")[0].is_active


def test_an_open_alert_of_a_closed_client_keeps_her_therapist_too(world: World) -> None:
    client_id = world.enrol()
    world.hear("my chest feels tight")
    with world.db.begin() as tx:
        client = tx.get(Client, client_id)
        assert client is not None
        client.state = "closed"
        tx.add(client)

    with pytest.raises(Refused, match="0 clients and 1 open alerts"), world.db.begin() as tx:
        staffing.change(tx, staff(tx, "ben@example.org"), "admin", True, "", FAY, world.now)


def test_the_last_admin_stays_one(world: World) -> None:
    for role, is_active in (("therapist", True), ("admin", False)):
        with pytest.raises(Refused, match="the clinic's last admin"), world.db.begin() as tx:
            staffing.change(tx, staff(tx, FAY), role, is_active, "", FAY, world.now)


def test_another_number_ends_a_stop_from_the_old_one(world: World) -> None:
    with world.db.begin() as tx:
        ben = staff(tx, "ben@example.org")
        ben.mobile_stopped_at = world.now
        staffing.change(tx, ben, "therapist", True, ben.mobile, FAY, world.now)
        assert ben.mobile_stopped_at is not None
        staffing.change(tx, ben, "therapist", True, "+12025550151", FAY, world.now)
        assert (ben.mobile, ben.mobile_stopped_at) == ("+12025550151", None)


def test_an_unknown_role_is_refused_in_a_change_too(world: World) -> None:
    with pytest.raises(BadInput, match="The role must be one of"), world.db.begin() as tx:
        staffing.change(tx, staff(tx, FAY), "boss", True, "", FAY, world.now)


@pytest.mark.parametrize("email", ["ben@example.org", "fay@example.org", "cleo@example.org"])
def test_clients_move_only_to_another_therapist_of_the_clinic(world: World, email: str) -> None:
    with pytest.raises(BadInput, match="Choose another therapist"), world.db.begin() as tx:
        staffing.move_clients(tx, staff(tx, "ben@example.org"), staff(tx, email), FAY, world.now)


def test_cover_is_set_and_taken_away(world: World) -> None:
    with world.db.begin() as tx:
        ben, dee = staff(tx, "ben@example.org"), staff(tx, "dee@example.org")
        staffing.set_cover(tx, ben, dee.id, date(2027, 3, 1), None)
        assert (ben.cover_id, ben.cover_from_on) == (dee.id, date(2027, 3, 1))
        staffing.set_cover(tx, ben, None, date(2027, 3, 1), None)
        assert (ben.cover_id, ben.cover_from_on) == (None, None)


COVERS: dict[str, tuple[str, Any, Any, str]] = {
    "another clinic's": ("cleo@example.org", None, None, "a colleague who is at work"),
    "herself": ("ben@example.org", None, None, "Nobody covers for herself"),
    "backwards": ("dee@example.org", date(2027, 3, 2), date(2027, 3, 1), "lies before"),
}


@pytest.mark.parametrize(("email", "first", "last", "sentence"), COVERS.values(), ids=COVERS.keys())
def test_a_cover_that_cannot_be_is_refused(world: World, email: str, first: Any, last: Any, sentence: str) -> None:
    with pytest.raises(BadInput, match=sentence), world.db.begin() as tx:
        staffing.set_cover(tx, staff(tx, "ben@example.org"), staff(tx, email).id, first, last)
