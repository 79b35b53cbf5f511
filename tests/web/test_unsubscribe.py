"""The unsubscribe link: a page with one button, and the one-click POST of RFC 8058."""

import pytest

from reminders.core.tokens import CLIENT_PAGE, UNSUBSCRIBE, make_token
from reminders.store.tables import ConsentEvent, Contact
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
    return f"/unsubscribe/{make_token((SECRET,), UNSUBSCRIBE, mail.id)}"


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
