"""Webhook calls as the SMS provider makes them, signed by the provider's own library."""

from collections.abc import Mapping, Sequence
from urllib.parse import urlencode

from twilio.request_validator import RequestValidator

ACCOUNT_SID = "AC00000000000000000000000000000001"
AUTH_TOKEN = "0f1e2d3c4b5a69788796a5b4c3d2e1f0"
SENDER = "+12025550199"

Fields = Mapping[str, str | Sequence[str]]


class Repeated(dict[str, list[str]]):
    """Fields in the shape that the provider's library signs when one comes more than once."""

    def getlist(self, name: str) -> list[str]:
        """Return every value of a field."""
        return self[name]


def signed_form(url: str, fields: Fields, token: str = AUTH_TOKEN) -> tuple[bytes, dict[str, str]]:
    """Return body and headers of a POST to this address, with the signature that the provider would send.

    A field's value may be a list when it is repeated. `url` is the public address, query and all.
    """
    lists = Repeated({name: [v] if isinstance(v, str) else list(v) for name, v in fields.items()})
    body = urlencode([(name, value) for name, values in lists.items() for value in values]).encode("ascii")
    return body, {
        "Content-Type": "application/x-www-form-urlencoded",
        "X-Twilio-Signature": RequestValidator(token).compute_signature(url, lists),
        "I-Twilio-Idempotency-Token": "00000000-0000-4000-8000-000000000000",
        "User-Agent": "TwilioProxy/1.1",
    }


def inbound_fields(sid: str, sender: str, text: str, to: str = SENDER, **more: str) -> dict[str, str]:
    """Return the fields that come with a text, as listed in Twilio, "Twilio's request to your webhook URL"."""
    return {
        "ToCountry": "US",
        "ToState": "DC",
        "SmsMessageSid": sid,
        "NumMedia": "0",
        "ToCity": "",
        "FromZip": "",
        "SmsSid": sid,
        "FromState": "DC",
        "SmsStatus": "received",
        "FromCity": "",
        "Body": text,
        "FromCountry": "US",
        "To": to,
        "ToZip": "",
        "NumSegments": "1",
        "MessageSid": sid,
        "AccountSid": ACCOUNT_SID,
        "From": sender,
        "ApiVersion": "2010-04-01",
        **more,
    }


def status_fields(sid: str, status: str, to: str, sender: str = SENDER, code: str = "") -> dict[str, str]:
    """Return the fields of a status callback, as listed in Twilio, "Track outbound message status"."""
    fields = {
        "SmsSid": sid,
        "SmsStatus": status,
        "MessageStatus": status,
        "To": to,
        "MessageSid": sid,
        "AccountSid": ACCOUNT_SID,
        "From": sender,
        "ApiVersion": "2010-04-01",
    }
    return fields | ({"ErrorCode": code} if code else {})
