"""Names of our mails: the Message-ID of a key and the reply address of a token. What a mail says is not here."""

import hashlib
import hmac
import re
from email.utils import parseaddr

MESSAGE_ID = re.compile(r"<[^<>\s]{1,250}@[^<>\s]{1,250}>")
TOKEN = re.compile(r"[A-Za-z0-9_-]{8,48}")


def message_id(key: str, secret: bytes, sender: str) -> str:
    """Return the Message-ID of an outbound key, the same at every try (RFC 5322, section 3.6.4).

    The secret keeps it from being guessed: an answer is believed because it names it.
    """
    digest = hmac.new(secret, f"message-id:{key}".encode(), hashlib.sha256).hexdigest()
    return f"<r.{digest[:40]}@{domain(sender)}>"


def reply_address(sender: str, token: str) -> str:
    """Return the sender's address with `+token` in it, so that an answer names what it answers (RFC 5233, section 3).

    Raises ValueError for a token that could not come back whole: 8 to 48 letters, digits, hyphens and underscores.
    """
    if not TOKEN.fullmatch(token):
        raise ValueError("a reply token is 8 to 48 letters, digits, hyphens and underscores")
    local, _, host = parseaddr(sender)[1].partition("@")
    return f"{local}+{token}@{host}"


def reply_token(address: str) -> str:
    """Return the token in a mail address, empty where it has none. Its letters' case counts."""
    local, _, _ = address.rpartition("@")
    found = local.rpartition("+")[2] if "+" in local else ""
    return found if TOKEN.fullmatch(found) else ""


def message_ids(text: str) -> tuple[str, ...]:
    """Return every Message-ID in a header, in its order."""
    return tuple(MESSAGE_ID.findall(text))


def domain(sender: str) -> str:
    """Return the domain of a sender such as `Clinic <clinic@example.org>`."""
    return parseaddr(sender)[1].rpartition("@")[2].lower() or "localhost"
