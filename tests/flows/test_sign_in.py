"""One-time sign-in links: used once, short-lived, mailed to the right person."""

from datetime import timedelta

import pytest
from sqlmodel import select

from reminders.flows import sign_in
from reminders.store.db import Tx
from reminders.store.tables import Clinic, SignInLink, Staff
from tests.clinic import World


def ben(tx: Tx) -> Staff:
    return tx.exec(select(Staff).where(Staff.email == "ben@example.org")).one()


def link(world: World, *, first: bool = False) -> str:
    with world.db.begin() as tx:
        return sign_in.make_link(tx, ben(tx), world.now, first=first)


def used(world: World, token: str) -> str | None:
    with world.db.begin() as tx:
        found = sign_in.use_link(tx, token, world.now)
        return found.email if found else None


def test_a_link_works_once_and_only_its_hash_is_kept(world: World) -> None:
    token = link(world)

    assert token not in str([row.model_dump() for row in world.rows(SignInLink)])
    assert used(world, token) == "ben@example.org"
    assert used(world, token) is None


@pytest.mark.parametrize(("first", "lives"), [(False, timedelta(minutes=10)), (True, timedelta(hours=24))])
def test_a_link_lives_ten_minutes_and_a_first_one_a_day(world: World, first: bool, lives: timedelta) -> None:
    early, late = link(world, first=first), ""
    world.now += lives
    assert used(world, early) == "ben@example.org"
    late = link(world, first=first)
    world.now += lives + timedelta(seconds=1)
    assert used(world, late) is None


def test_a_new_link_ends_the_one_before(world: World) -> None:
    early, late = link(world), link(world)

    assert (used(world, early), used(world, late)) == (None, "ben@example.org")


def test_a_link_of_somebody_switched_off_and_an_unknown_one_let_nobody_in(world: World) -> None:
    token = link(world)
    with world.db.begin() as tx:
        ben(tx).is_active = False

    assert used(world, token) is None
    assert used(world, "x" * 43) is None


def test_two_at_once_with_one_link_let_one_in(world: World) -> None:
    token = link(world)
    with world.db.begin() as tx:
        first = sign_in.holder_of(tx, token, world.now)
        assert sign_in.use_link(tx, token, world.now) is not None
        assert first is not None
        assert sign_in.use_link(tx, token, world.now) is None


def test_the_mail_carries_the_link_and_how_long_it_lives(world: World) -> None:
    with world.db.begin() as tx:
        clinic = tx.exec(select(Clinic).where(Clinic.name == "Alder Hill Physio")).one()
        sign_in.mail_link(tx, clinic, ben(tx), "https://reminders.example.org", world.now, first=True)
    world.send()

    mail = world.email.sent[-1]
    assert mail.to == "ben@example.org"
    assert "https://reminders.example.org/sign-in/" in mail.body
    assert "24 hours" in mail.body
