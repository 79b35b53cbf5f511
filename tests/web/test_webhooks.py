"""The SMS provider's webhooks: signed forms are kept and handled, everything else is refused and leaves no trace."""

from dataclasses import replace

import pytest

from reminders.settings import Settings
from reminders.store.tables import DeliveryEvent, InboundRow
from reminders.texts import Texts
from reminders.web.app import create_app
from reminders.wiring import App
from tests.clinic import ANA, World
from tests.standins.forms import ACCOUNT_SID, AUTH_TOKEN, Fields, inbound_fields, signed_form, status_fields
from tests.web.desk import BASE, SECRET, TestClient

URL = "https://clinic.example.org"
INBOUND, STATUS = f"{URL}/sms/inbound", f"{URL}/sms/status"
SETTINGS = Settings(
    secret_keys=(SECRET,),
    public_url=URL,
    twilio_account_sid=ACCOUNT_SID,
    twilio_auth_tokens=(AUTH_TOKEN, "older-token"),
)


def browser(world: World, settings: Settings = SETTINGS) -> TestClient:
    """Return a caller of the web application, which a proxy reaches by another address than the public one."""
    given = replace(settings, database_url=world.db.url)
    app = App(given, world.db, {"sms": world.sms, "email": world.email}, Texts(), world.clock)
    return TestClient(create_app(app), base_url=BASE, follow_redirects=False)


def post(world: World, url: str, fields: Fields, token: str = AUTH_TOKEN, **headers: str):  # type: ignore[no-untyped-def]
    body, signed = signed_form(url, fields, token)
    return browser(world).post(url.removeprefix(URL), content=body, headers={**signed, **headers})


def test_a_signed_text_is_kept_handled_and_answered_with_an_empty_response(world: World) -> None:
    ana = world.enrol()

    answer = post(world, INBOUND, inbound_fields("SM1", ANA, "done pain 3"))

    assert answer.status_code == 200
    assert answer.headers["content-type"].startswith("text/xml")
    assert answer.text == "<Response/>"
    row = world.rows(InboundRow)[0]
    assert (row.provider_id, row.address, row.text, row.is_verified) == ("SM1", ANA, "done pain 3", True)
    assert b"done+pain+3" in row.raw
    assert row.handled_at is not None
    assert len(world.reports(ana)) == 1


def test_a_repeated_sid_is_answered_the_same_and_changes_nothing(world: World) -> None:
    ana = world.enrol()
    post(world, INBOUND, inbound_fields("SM1", ANA, "done pain 3"))

    answer = post(world, INBOUND, inbound_fields("SM1", ANA, "done pain 3"))

    assert (answer.status_code, answer.text) == (200, "<Response/>")
    assert len(world.reports(ana)) == 1


def test_a_text_that_cannot_be_handled_yet_is_a_200_all_the_same(world: World) -> None:
    world.enrol()
    with world.db.begin() as tx:
        tx.connection().exec_driver_sql("ALTER TABLE question RENAME TO question_away")

    answer = post(world, INBOUND, inbound_fields("SM1", ANA, "done pain 3"))

    assert answer.status_code == 200
    row = world.rows(InboundRow)[0]
    assert (row.handled_at, row.failures) == (None, 1)


def test_either_token_verifies_while_it_is_changed(world: World) -> None:
    assert post(world, INBOUND, inbound_fields("SM1", ANA, "hi"), "older-token").status_code == 200


def forged(world: World) -> dict[str, object]:
    """Return the status of each call that must be refused."""
    fields = inbound_fields("SM1", ANA, "done pain 3")
    body, signed = signed_form(INBOUND, fields)
    caller = browser(world)
    kind = {"Content-Type": signed["Content-Type"]}
    return {
        "no signature": caller.post("/sms/inbound", content=body, headers=kind),
        "a wrong token": post(world, INBOUND, fields, "wrong"),
        "another body": caller.post("/sms/inbound", content=body + b"&x=1", headers=signed),
        "another address": caller.post("/sms/inbound?x=1", content=body, headers=signed),
        "two signatures": caller.post(
            "/sms/inbound",
            content=body,
            headers=[*kind.items(), *[("X-Twilio-Signature", signed["X-Twilio-Signature"])] * 2],
        ),
        "another account": post(world, INBOUND, {**fields, "AccountSid": "AC" + "9" * 32}),
        "no SID": post(world, INBOUND, {"AccountSid": ACCOUNT_SID, "Body": "x", "From": ANA}),
        "signed for the inside address": caller.post(
            "/sms/inbound", content=body, headers=signed_form(f"{BASE}/sms/inbound", fields)[1]
        ),
    }


def test_what_is_not_signed_for_our_address_and_account_is_refused_and_not_stored(world: World) -> None:
    world.enrol()

    for name, answer in forged(world).items():
        assert answer.status_code == 403, name  # type: ignore[attr-defined]

    assert world.rows(InboundRow) == []


def test_over_64_kb_is_too_large(world: World) -> None:
    fields = inbound_fields("SM1", ANA, "a" * 70_000)

    assert post(world, INBOUND, fields).status_code == 413
    assert post(world, STATUS, fields).status_code == 413
    assert world.rows(InboundRow) == []


@pytest.mark.parametrize("path", ["/sms/inbound", "/sms/status"])
def test_without_an_auth_token_the_webhooks_do_not_exist(world: World, path: str) -> None:
    caller = browser(world, replace(SETTINGS, twilio_auth_tokens=()))

    assert caller.post(path, content=b"Body=x").status_code == 404


@pytest.mark.parametrize("path", ["/sms/inbound", "/sms/status"])
def test_a_get_changes_nothing(world: World, path: str) -> None:
    assert browser(world).get(path).status_code in (403, 404, 405)
    assert world.rows(InboundRow) == []


def test_a_status_callback_takes_effect(world: World) -> None:
    world.enrol()
    world.send()
    row = world.queued("welcome")[0]

    url = f"{STATUS}?row={row.id}&attempt=1"
    answer = post(world, url, status_fields(row.receipt, "delivered", ANA))

    assert answer.status_code in (200, 204)
    assert world.queued("welcome")[0].state == "delivered"
    assert [event.is_matched for event in world.rows(DeliveryEvent)] == [True]


def test_a_forged_status_leaves_no_trace(world: World) -> None:
    world.enrol()
    world.send()
    row = world.queued("welcome")[0]

    assert post(world, STATUS, status_fields(row.receipt, "failed", ANA), "wrong").status_code == 403

    assert world.rows(DeliveryEvent) == []
    assert world.queued("welcome")[0].state == "accepted"


ODD = {
    "only emoji": "🙂🙂",
    "control characters": "\x01\x02\x1b[31m",
    "a NUL": "done\x00pain 3",
    "nothing": "",
    "1,600 characters": "a" * 1600,
}


@pytest.mark.parametrize("text", ODD.values(), ids=ODD)
def test_any_text_is_kept(world: World, text: str) -> None:
    world.enrol()

    assert post(world, INBOUND, inbound_fields("SM1", ANA, text)).status_code == 200

    row = world.rows(InboundRow)[0]
    assert "\x00" not in row.text
    assert row.handled_at is not None
