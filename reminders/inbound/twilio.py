"""The SMS provider's webhook forms: whether their signature is right, and the plain values they carry.

Nothing is stored or answered here; the routes are in `web`, the provider's list of what came in is in `channels.sms`.
"""

from collections.abc import Iterator, Mapping, Sequence
from datetime import datetime
from urllib.parse import parse_qs, parse_qsl, urlsplit

from twilio.request_validator import RequestValidator

from reminders.core.channel import Inbound, StatusReport
from reminders.core.intake import clean, number, whole
from reminders.settings import Settings

SOURCE = "sms"
MAX_FIELDS = 1000
MAX_PICTURES = 1000


class Form(Mapping[str, str]):
    """A form in the shape that the provider's validator reads: each name once, all its values by `getlist`."""

    def __init__(self, pairs: Sequence[tuple[str, str]]) -> None:
        self.values_of: dict[str, list[str]] = {}
        for name, value in pairs:
            self.values_of.setdefault(name, []).append(value)

    @classmethod
    def parse(cls, raw: bytes) -> "Form":
        """Return the form in a urlencoded body, blank fields kept; raises ValueError when it is none."""
        text = raw.decode("utf-8", "replace")
        pairs = parse_qsl(text, keep_blank_values=True, max_num_fields=MAX_FIELDS, errors="replace")
        return cls(pairs)

    def getlist(self, name: str) -> list[str]:
        """Return every value of a field."""
        return self.values_of[name]

    def __getitem__(self, name: str) -> str:
        return self.values_of[name][0]

    def __iter__(self) -> Iterator[str]:
        return iter(self.values_of)

    def __len__(self) -> int:
        return len(self.values_of)


def signed_form(
    settings: Settings, target: str, raw: bytes, signatures: Sequence[str], content_type: str = ""
) -> Form | None:
    """Return the form of a webhook call, None unless the provider signed it for our account.

    `target` is the request's path and query as received; what was signed is the public address with it (Twilio,
    "Webhooks security"). `signatures` are all X-Twilio-Signature headers: none or several are as wrong as a bad one.
    """
    if len(signatures) != 1 or not is_signed(settings, target, raw, signatures[0], content_type):
        return None
    try:
        form = Form.parse(raw)
    except ValueError:
        return None
    is_ours = form.get("AccountSid") == settings.twilio_account_sid
    return form if is_ours and sid_of(form) else None


def is_signed(settings: Settings, target: str, raw: bytes, signature: str, content_type: str = "") -> bool:
    """Whether a signature is right for a call to our public address, under any of the account's tokens."""
    url = public_address(settings.public_url, target)
    try:
        body: Form | str = raw.decode("utf-8") if "json" in content_type.lower() else Form.parse(raw)
        return any(RequestValidator(token).validate(url, body, signature) for token in settings.twilio_auth_tokens)
    except (ValueError, TypeError):  # TypeError: the provider's library, for a JSON body without its digest
        return False


def public_address(public_url: str, target: str) -> str:
    """Return the address that the provider called, for a request's path and query.

    A proxy may or may not have taken the public address's own path off.
    """
    base = urlsplit(public_url)
    prefix = base.path.rstrip("/")
    if prefix and (target == prefix or target.startswith(f"{prefix}/")):
        return f"{base.scheme}://{base.netloc}{target}"
    return public_url.rstrip("/") + target


def inbound_of(form: Form, raw: bytes, now: datetime) -> Inbound:
    """Return what a signed form says came in; its moment is `now`, when we keep it."""
    return Inbound(
        source=SOURCE,
        provider_id=sid_of(form),
        address=number(form.get("From", "")),
        to=number(form.get("To", "")),
        text=clean(form.get("Body", "")),
        raw=raw,
        received_at=now,
        pictures=min(whole(form.get("NumMedia", "")), MAX_PICTURES),
        opt_out_type=clean(form.get("OptOutType", ""))[:20].upper(),
    )


def status_of(form: Form, raw: bytes, target: str) -> StatusReport:
    """Return what a signed status form says; our row and attempt stand in the query of its target."""
    query = parse_qs(urlsplit(target).query)
    return StatusReport(
        provider_id=sid_of(form),
        status=clean(form.get("MessageStatus") or form.get("SmsStatus") or "")[:40].lower(),
        code=clean(form.get("ErrorCode", ""))[:20],
        to=number(form.get("To", "")),
        row=whole(query.get("row", ["0"])[0]),
        attempt=whole(query.get("attempt", ["0"])[0]),
        raw=raw,
    )


def sid_of(form: Form) -> str:
    """Return the provider's own name for the message, empty where the form has none."""
    return clean(form.get("MessageSid") or form.get("SmsSid") or form.get("SmsMessageSid") or "")[:64]
