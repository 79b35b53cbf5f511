"""The unsubscribe link: a page with one button, and the one-click POST of RFC 8058."""

import pytest
from sqlmodel import select

from reminders.core.schedule import local_date
from reminders.core.tokens import CLIENT_PAGE, UNSUBSCRIBE, make_token
from reminders.flows import details
from reminders.flows.link_marks import contact_mark
from reminders.store.tables import Client, Clinic, ConsentEvent, Contact, Outbound
from tests.clinic import World
from tests.web.desk import SECRET, Desk

BOUNDARY = "----one"
# RFC 8058, section 3.2: the body should be multipart/form-data and may be urlencoded.
BODIES = {
    "urlencoded": ("application/x-www-form-urlencoded", b"List-Unsubscribe=One-Click"),
    "multipart": (
        f"multipart/form-data; boundary={BOUNDARY}",
        (
            f'--{BOUNDARY}\r\nContent-Disposition: form-data; name="List-Unsubscribe"\r\n\r\n'
            f"One-Click\r\n--{BOUNDARY}--\r\n"
        ).encode(),
    ),
    "our own button": ("application/x-www-form-urlencoded", b""),
}


def link(world: World) -> str:
    """Return Ana's unsubscribe link."""
    mail = world.rows(Contact, kind="email")[0]
    return f"/unsubscribe/{make_token((SECRET,), UNSUBSCRIBE, mail.id, contact_mark(mail.address))}"


def consents(world: World) -> dict[str, str]:
    return {one.kind: one.consent for one in world.rows(Contact)}


@pytest.mark.parametrize(("kind", "body"), BODIES.values(), ids=BODIES)
def test_one_click_closes_the_address_with_no_redirect(desk: Desk, kind: str, body: bytes) -> None:
    desk.world.enrol(email="ana@example.org", channel="sms+email")

    answer = desk.visitor().post(link(desk.world), content=body, headers={"Content-Type": kind})

    assert answer.status_code == 200
    assert "location" not in answer.headers
    assert consents(desk.world) == {"sms": "open", "email": "closed"}
    assert [one.how for one in desk.world.rows(ConsentEvent) if one.change == "withdrawn"] == ["one-click"]


def test_opening_the_link_changes_nothing(desk: Desk) -> None:
    desk.world.enrol(email="ana@example.org", channel="sms+email")

    answer = desk.visitor().get(link(desk.world))

    assert answer.status_code == 200
    assert answer.text.count("<button") == 1
    assert consents(desk.world) == {"sms": "open", "email": "open"}


def test_the_page_speaks_her_language_and_says_when_it_is_done(desk: Desk) -> None:
    desk.world.enrol(email="ana@example.org", channel="sms+email", language="es")
    visitor = desk.visitor()
    assert "No más correos" in visitor.get(link(desk.world)).text

    visitor.post(link(desk.world))

    assert "<button" not in visitor.get(link(desk.world)).text


def test_the_token_never_expires(desk: Desk) -> None:
    desk.world.enrol(email="ana@example.org", channel="sms+email")
    desk.world.pass_time(days=900)

    assert desk.visitor().post(link(desk.world)).status_code == 200
    assert consents(desk.world)["email"] == "closed"


@pytest.mark.parametrize("token", ["", "x", "1-aaaaaaaaaaaaaaaaaaaa", make_token((SECRET,), CLIENT_PAGE, 1)])
def test_a_token_that_is_not_ours_for_this_use_changes_nothing(desk: Desk, token: str) -> None:
    desk.world.enrol(email="ana@example.org", channel="sms+email")

    assert desk.visitor().post(f"/unsubscribe/{token}").status_code == 404
    assert consents(desk.world)["email"] == "open"


def moved(world: World, client_id: int, address: str) -> None:
    """Give a client another e-mail at the desk, with her consent."""
    with world.db.begin() as tx:
        clinic, client = tx.get(Clinic, 1), tx.get(Client, client_id)
        assert clinic is not None
        assert client is not None
        details.change_address(tx, clinic, client, "email", address, "fay@example.org", world.now)
        on = local_date(world.now, clinic.time_zone)
        details.consent_given(tx, clinic, client, "signed form", on, "fay@example.org", world.now)


def test_the_link_of_an_old_mail_closes_the_address_that_the_mail_went_to(desk: Desk) -> None:
    ana = desk.world.enrol(email="old@example.org", channel="sms+email")
    old = link(desk.world)
    moved(desk.world, ana, "new@example.org")
    visitor = desk.visitor()

    assert "<button" in visitor.get(old).text
    for _ in range(2):
        assert visitor.post(old).status_code == 200
    assert "<button" not in visitor.get(old).text

    assert consents(desk.world)["email"] == "open"
    assert [row.address for row in desk.world.rows(ConsentEvent, how="one-click")] == ["old@example.org"]
    bo = desk.world.enrol("Bo Lund", "", email="old@example.org", channel="email")
    assert desk.world.client(bo).state == "invited"


def test_the_link_of_an_old_mail_closes_its_address_for_whoever_has_it_now(desk: Desk) -> None:
    ana = desk.world.enrol(email="old@example.org", channel="sms+email")
    old = link(desk.world)
    moved(desk.world, ana, "new@example.org")
    bo = desk.world.enrol("Bo Lund", "", email="old@example.org", channel="email")
    desk.visitor().post(old)

    assert [row.consent for row in desk.world.rows(Contact, client_id=bo)] == ["closed"]
    assert [row.consent for row in desk.world.rows(Contact, client_id=ana, kind="email")] == ["open"]


def test_a_link_changes_nothing_once_its_number_is_another_address(desk: Desk) -> None:
    desk.world.enrol("Ana Ruiz", "", email="ana@example.org", channel="email")
    old = link(desk.world)
    (mail,) = desk.world.rows(Contact)
    with desk.world.db.begin() as tx:  # as after an erasure, or in a database restored from an older file
        for event in tx.exec(select(ConsentEvent)):
            event.address = "bo@example.org"
        for row in tx.exec(select(Outbound)):
            row.to = "bo@example.org"
        contact = tx.get(Contact, mail.id)
        assert contact is not None
        contact.address = "bo@example.org"

    assert desk.visitor().post(old).status_code == 404
    assert consents(desk.world)["email"] == "open"


def test_a_link_from_before_addresses_stood_in_its_proof_closes_the_present_one(desk: Desk) -> None:
    desk.world.enrol(email="ana@example.org", channel="sms+email")
    mail = desk.world.rows(Contact, kind="email")[0]

    assert desk.visitor().post(f"/unsubscribe/{make_token((SECRET,), UNSUBSCRIBE, mail.id)}").status_code == 200
    assert consents(desk.world)["email"] == "closed"
