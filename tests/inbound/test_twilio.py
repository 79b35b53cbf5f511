"""Webhook forms: signatures against published examples and the provider's own library, and what the forms become."""

from datetime import UTC, datetime
from urllib.parse import quote, urlencode, urlsplit

import pytest
from hypothesis import given
from hypothesis import strategies as st

from reminders.inbound.twilio import Form, inbound_of, is_signed, public_address, signed_form, status_of
from reminders.settings import Settings
from tests.standins.forms import ACCOUNT_SID, AUTH_TOKEN, SENDER, inbound_fields, status_fields
from tests.standins.forms import signed_form as sign

NOW = datetime(2027, 3, 1, 13, 31, tzinfo=UTC)
PUBLIC = "https://reminders.example.org"
OURS = Settings(public_url=PUBLIC, twilio_account_sid=ACCOUNT_SID, twilio_auth_tokens=(AUTH_TOKEN,))
ANA = "+12025550101"
SID = "SM00000000000000000000000000000001"

# The provider's published signature examples; the numbers in them are the provider's own. Sources: twilio-python,
# tests/unit/test_request_validator.py (all but the second), and the security page's older example (the second).
CALL = {
    "CallSid": "CA1234567890ABCDE",
    "Caller": "+14158675309",
    "Digits": "1234",
    "From": "+14158675309",
    "To": "+18005551212",
}
OTHER_CALL = CALL | {"Caller": "+12349013030", "From": "+12349013030"}
REPEATED = [("Sid", "CA123"), ("SidAccount", "AC123"), ("Digits", "5678"), ("Digits", "1234")]
JSON_BODY = b'{"property": "value", "boolean": true}'
JSON_HASH = "0a1ff7634d9ab3b95db5c9a2dfe9416e41502b283a80c7cf19632632f96e6620"
HOST, TARGET = "mycompany.com", "/myapp.php?foo=1&bar=2"
FORM, JSON = "application/x-www-form-urlencoded", "application/json"
PUBLISHED = {
    "a call": (f"https://{HOST}", TARGET, urlencode(CALL).encode(), FORM, "RSOYDt4T1cUTdK1PDd93/VVr8B8="),
    "another caller": (f"https://{HOST}", TARGET, urlencode(OTHER_CALL).encode(), FORM, "0/KCTR6DLpKmkAf8muzZqo1nDgQ="),
    "an odd port": (f"http://{HOST}:1234", TARGET, urlencode(CALL).encode(), FORM, "Zmvh+3yNM1Phv2jhDCwEM3q5ebU="),
    "signed with the standard port of https": (
        f"https://{HOST}",
        TARGET,
        urlencode(CALL).encode(),
        FORM,
        "kvajT1Ptam85bY51eRf/AJRuM3w=",
    ),
    "signed with the standard port of http": (
        f"http://{HOST}",
        TARGET,
        urlencode(CALL).encode(),
        FORM,
        "0ZXoZLH/DfblKGATFgpif+LLRf4=",
    ),
    "a repeated field": (f"https://{HOST}", TARGET, urlencode(REPEATED).encode(), FORM, "IK+Dwps556ElfBT0I3Rgjkr1wJU="),
    "a JSON body by its digest": (
        f"https://{HOST}",
        f"{TARGET}&bodySHA256={JSON_HASH}",
        JSON_BODY,
        JSON,
        "a9nBmqA0ju/hNViExpshrM61xv4=",
    ),
}


@pytest.mark.parametrize(("base", "target", "raw", "kind", "signature"), PUBLISHED.values(), ids=PUBLISHED)
def test_a_published_signature_is_right_and_one_letter_off_is_wrong(
    base: str, target: str, raw: bytes, kind: str, signature: str
) -> None:
    theirs = Settings(public_url=base, twilio_account_sid="AC123", twilio_auth_tokens=("12345",))
    assert is_signed(theirs, target, raw, signature, kind)
    assert not is_signed(
        theirs, target, raw, signature.replace(signature[3], "A" if signature[3] != "A" else "B", 1), kind
    )
    assert not is_signed(theirs, target + "3", raw, signature, kind)
    assert not is_signed(theirs, target, raw + b"&More=1" if kind == FORM else raw + b" ", signature, kind)
    assert not is_signed(Settings(public_url=base, twilio_auth_tokens=("54321",)), target, raw, signature, kind)


def test_a_json_body_whose_address_bears_no_digest_is_refused() -> None:
    theirs = Settings(public_url=f"https://{HOST}", twilio_account_sid="AC123", twilio_auth_tokens=("12345",))

    assert not is_signed(theirs, TARGET, b"abc", "RSOYDt4T1cUTdK1PDd93/VVr8B8=", JSON)


# Computed by hand: HMAC-SHA1 over the address and each field's name and value in name order, in base64 (Twilio,
# "Webhooks security"); none of our code took part.
BY_HAND = {
    "plain words": (
        {
            "Body": "done 2x10 pain 3",
            "From": "+12025550123",
            "MessageSid": SID,
            "NumMedia": "0",
            "To": "+12025550199",
        },
        "vA9W2N+l8Bhhv98upGI+NVWRGZk=",
    ),
    "words beyond ASCII": (
        {
            "Body": "sí, 2 series, dolor 3 ñ",
            "From": "+12025550123",
            "MessageSid": "SM00000000000000000000000000000002",
            "NumMedia": "0",
            "To": "+12025550199",
        },
        "Zp/XD4sfqfvIOdgjmjNCsCwPpK4=",
    ),
}


@pytest.mark.parametrize(("fields", "signature"), BY_HAND.values(), ids=BY_HAND)
def test_a_text_signed_by_hand_is_right(fields: dict[str, str], signature: str) -> None:
    theirs = Settings(public_url="https://clinic.example", twilio_auth_tokens=("12345",))
    assert is_signed(theirs, "/sms/in", urlencode(fields).encode(), signature)


@given(
    st.text(st.characters(exclude_categories=["Cs"]), max_size=400),
    st.lists(st.text("ab&=+% ñ😀", min_size=1), max_size=3),
)
def test_whatever_she_writes_the_providers_own_signature_is_right(text: str, repeated: list[str]) -> None:
    fields = inbound_fields(SID, ANA, text)
    body, headers = sign(f"{PUBLIC}/sms/inbound", {**fields, "Extra": repeated} if repeated else fields)
    form = signed_form(OURS, "/sms/inbound", body, [headers["X-Twilio-Signature"]])
    assert form is not None
    assert inbound_of(form, body, NOW).text == text.replace("\x00", "\ufffd")


def test_a_signature_is_needed_and_exactly_one() -> None:
    body, headers = sign(f"{PUBLIC}/sms/inbound", inbound_fields(SID, ANA, "Y3"))
    good = headers["X-Twilio-Signature"]
    assert signed_form(OURS, "/sms/inbound", body, [good]) is not None
    for wrong in ([], [""], [good, good], [good.lower()], ["ñ"], [good[:-1]], [f" {good}"]):
        assert signed_form(OURS, "/sms/inbound", body, wrong) is None


def test_a_signature_covers_the_public_address_whatever_we_were_called() -> None:
    body, headers = sign("http://127.0.0.1:8000/sms/inbound", inbound_fields(SID, ANA, "Y3"))
    assert signed_form(OURS, "/sms/inbound", body, [headers["X-Twilio-Signature"]]) is None


def test_another_account_is_not_ours_though_the_token_fits() -> None:
    other = inbound_fields(SID, ANA, "Y3") | {"AccountSid": "AC00000000000000000000000000000002"}
    body, headers = sign(f"{PUBLIC}/sms/inbound", other)
    assert signed_form(OURS, "/sms/inbound", body, [headers["X-Twilio-Signature"]]) is None


def test_a_form_without_a_name_is_not_a_text() -> None:
    body, headers = sign(f"{PUBLIC}/sms/inbound", {"AccountSid": ACCOUNT_SID, "Body": "Y3"})
    assert signed_form(OURS, "/sms/inbound", body, [headers["X-Twilio-Signature"]]) is None


def test_while_the_token_is_changed_both_count_and_without_one_none_does() -> None:
    body, headers = sign(f"{PUBLIC}/sms/inbound", inbound_fields(SID, ANA, "Y3"))
    signature = [headers["X-Twilio-Signature"]]
    both = Settings(public_url=PUBLIC, twilio_account_sid=ACCOUNT_SID, twilio_auth_tokens=("another0token", AUTH_TOKEN))
    assert signed_form(both, "/sms/inbound", body, signature) is not None
    assert signed_form(Settings(public_url=PUBLIC), "/sms/inbound", body, signature) is None


def test_a_form_of_too_many_fields_or_of_no_form_is_refused() -> None:
    assert signed_form(OURS, "/sms/inbound", b"&".join(b"a=1" for _ in range(2000)), ["x"]) is None
    assert signed_form(OURS, "/sms/inbound", b"\xff\xfe\x00", ["x"]) is None


# Public address, path as received, address that was signed.
ADDRESSES = {
    "at the root": (PUBLIC, "/sms/inbound", f"{PUBLIC}/sms/inbound"),
    "a query stays as it came": (PUBLIC, "/sms/status?row=4&attempt=%31", f"{PUBLIC}/sms/status?row=4&attempt=%31"),
    "a proxy took the path off": (f"{PUBLIC}/care", "/sms/inbound", f"{PUBLIC}/care/sms/inbound"),
    "a proxy left the path on": (f"{PUBLIC}/care", "/care/sms/inbound", f"{PUBLIC}/care/sms/inbound"),
    "a path that only begins alike": (f"{PUBLIC}/sms", "/smsx", f"{PUBLIC}/sms/smsx"),
}


@pytest.mark.parametrize(("public", "target", "expected"), ADDRESSES.values(), ids=ADDRESSES)
def test_what_was_signed_is_the_public_address(public: str, target: str, expected: str) -> None:
    assert public_address(public, target) == expected


def test_a_text_keeps_all_that_came_with_it() -> None:
    fields = inbound_fields(SID, ANA, "STOP", NumMedia="2", OptOutType="STOP")
    body, _ = sign(f"{PUBLIC}/sms/inbound", fields)
    inbound = inbound_of(Form.parse(body), body, NOW)
    assert (inbound.source, inbound.provider_id, inbound.address, inbound.to) == ("sms", SID, ANA, SENDER)
    assert (inbound.text, inbound.pictures, inbound.opt_out_type) == ("STOP", 2, "STOP")
    assert (inbound.raw, inbound.received_at, inbound.verified) == (body, NOW, True)


@pytest.mark.parametrize(
    "text", ["", " ", "\n\n", "😀" * 20, "x" * 1600, "\x01\x02\x07", "a\u202eb", "I fell\r\nin the bath"]
)
def test_odd_texts_come_through_letter_for_letter(text: str) -> None:
    body, headers = sign(f"{PUBLIC}/sms/inbound", inbound_fields(SID, ANA, text))
    form = signed_form(OURS, "/sms/inbound", body, [headers["X-Twilio-Signature"]])
    assert form is not None
    assert inbound_of(form, body, NOW).text == text


def test_octets_that_are_no_text_are_replaced_and_stay_in_the_raw_form() -> None:
    body = b"MessageSid=SM1&From=%2B12025550101&Body=I+fell+%00%ED%A0%BD%FF&NumMedia=many&AccountSid=AC1"
    inbound = inbound_of(Form.parse(body), body, NOW)
    assert inbound.text.startswith("I fell \ufffd\ufffd")
    assert "\x00" not in inbound.text
    assert inbound.text.encode("utf-8")
    assert (inbound.pictures, inbound.raw) == (0, body)


def test_a_status_tells_which_text_and_which_attempt_of_ours() -> None:
    target = "/sms/status?row=41&attempt=2"
    body, headers = sign(PUBLIC + target, status_fields(SID, "undelivered", ANA, code="30005"))
    form = signed_form(OURS, target, body, [headers["X-Twilio-Signature"]])
    assert form is not None
    report = status_of(form, body, target)
    assert (report.provider_id, report.status, report.code, report.to) == (SID, "undelivered", "30005", ANA)
    assert (report.row, report.attempt, report.raw) == (41, 2, body)


@pytest.mark.parametrize("query", ["", "?row=", "?row=-1&attempt=x", f"?row={quote('１２')}", "?row=" + "9" * 30])
def test_a_status_without_our_marks_has_none(query: str) -> None:
    body, _ = sign(f"{PUBLIC}/sms/status{query}", status_fields(SID, "delivered", ANA))
    report = status_of(Form.parse(body), body, f"/sms/status{query}")
    assert (report.row, report.attempt) == (0, 0)
    assert urlsplit(f"/sms/status{query}").path == "/sms/status"
