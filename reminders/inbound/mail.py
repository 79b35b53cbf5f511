"""A mail as bytes, turned into the plain value: who wrote, what she wrote, which mail of ours it answers.

Whether an answer's parent is ours only the record knows. Fetching is in `inbound.mailbox`.
"""

import hashlib
import re
from collections.abc import Iterator
from datetime import datetime
from email import message_from_bytes
from email.message import EmailMessage
from email.policy import default

from reminders.core.channel import Inbound
from reminders.core.intake import MAX_ADDRESS, clean
from reminders.core.mail_ids import message_ids, reply_token
from reminders.inbound.mail_html import html_text
from reminders.inbound.mail_machine import bounce, is_automatic
from reminders.inbound.mail_reply import own_words

SOURCE = "email"
# No person writes more; a mail's danger words are sought in this much of it.
LONGEST_TEXT = 200_000
MAX_PARTS = 200
QUOTED_NAME = re.compile(r'"(?:\\.|[^"\\])*"')
ANGLED = re.compile(r"<([^<>\s]+@[^<>\s]+)>")
BARE = re.compile(r"[^\s<>,;()]+@[^\s<>,;()]+")
# What the standard library's mail parser has been seen to raise for mails that keep no rule.
BROKEN = (ValueError, LookupError, TypeError, AttributeError, AssertionError, RecursionError)
POLICY = default.clone(raise_on_defect=False)


def inbound_of(raw: bytes, received_at: datetime) -> Inbound:
    """Return what a mail says; `received_at` is its INTERNALDATE. No mail is too broken to be kept.

    Its provider id is a digest of what the sender wrote, so the same mail met again after a mailbox was rebuilt is the
    same, while its server's own trace lines are left out.
    """
    mail, text = parsed(raw)
    subject = clean(header(mail, "Subject"))[:500]
    bounced, code = bounce(mail, text)
    return Inbound(
        source=SOURCE,
        provider_id=digest(raw),
        address=first_address(mail, "From"),
        to=first_address(mail, "Delivered-To", "X-Original-To", "To"),
        text="" if bounced else own_words(text),
        raw=raw,
        received_at=received_at,
        pictures=sum(part.get_content_maintype() == "image" for part in parts(mail)),
        verified=False,
        automatic=is_automatic(mail, subject),
        bounce_of=bounced,
        bounce_code=code,
        answers=answered(mail),
        reply_token=token(mail),
        subject=subject,
        whole_text=f"{subject}\n{text}".strip(),
    )


def parsed(raw: bytes) -> tuple[EmailMessage, str]:
    """Return a mail and its shown text; of one that keeps no rule the head and all that follows as it stands."""
    try:
        mail = message_from_bytes(raw, policy=POLICY)
        assert isinstance(mail, EmailMessage)
        return mail, clean(flowed(mail))[:LONGEST_TEXT]
    except BROKEN:
        head, _, body = raw.replace(b"\r\n", b"\n").partition(b"\n\n")
        kept = b"\n".join(line for line in head.split(b"\n") if not line.lower().startswith(b"content-"))
        mail = message_from_bytes(kept + b"\n\n", policy=POLICY)
        assert isinstance(mail, EmailMessage)
        return mail, clean(body.decode("utf-8", "replace"))[:LONGEST_TEXT]


def header(mail: EmailMessage, name: str) -> str:
    """Return a header's text on one line, empty where it is missing or cannot be read at all."""
    try:
        value = mail.get(name, "")
    except BROKEN:
        # The standard library's header parsers fail on some malformed headers; the raw text still tells.
        value = next((text for key, text in mail.raw_items() if key.lower() == name.lower()), "")
    return " ".join(str(value).split())


def headers(mail: EmailMessage, name: str) -> list[str]:
    """Return the raw text of each header of this name; one that is malformed reads the same as any other."""
    return [" ".join(str(text).split()) for key, text in mail.raw_items() if key.lower() == name.lower()]


def first_address(mail: EmailMessage, *names: str) -> str:
    """Return the first mail address in the first of these headers that holds one, lower-case."""
    for name in names:
        for address in (one for text in headers(mail, name) for one in addresses(text)):
            return clean(address).lower()[:MAX_ADDRESS]
    return ""


def addresses(text: str) -> list[str]:
    """Return the mail addresses in a header, those in angle brackets alone where there are any.

    A quoted name is dropped first: it may hold anything, another person's address too.
    """
    bare = QUOTED_NAME.sub(" ", text)
    return ANGLED.findall(bare) or BARE.findall(bare)


def token(mail: EmailMessage) -> str:
    """Return the token of the reply address that the mail was sent to, empty where it was sent to none."""
    names = ("Delivered-To", "X-Original-To", "Envelope-To", "To", "Cc")
    found = (reply_token(one) for name in names for text in headers(mail, name) for one in addresses(text))
    return next((one for one in found if one), "")


def answered(mail: EmailMessage) -> tuple[str, ...]:
    """Return the Message-IDs that a mail names as its parents, nearest first (RFC 5322, section 3.6.4)."""
    direct = [one for text in headers(mail, "In-Reply-To") for one in message_ids(text)]
    thread = [one for text in headers(mail, "References") for one in message_ids(text)]
    return tuple(dict.fromkeys([*direct, *reversed(thread)]))[:50]


def digest(raw: bytes) -> str:
    """Return a name for a mail made from its own identity and its body, trace lines left out."""
    head, _, body = raw.replace(b"\r\n", b"\n").partition(b"\n\n")
    own = re.findall(rb"(?im)^(?:message-id|from|date|subject):.*(?:\n[ \t].*)*", head)
    return hashlib.sha256(b"\n".join([*sorted(own), b"", body])).hexdigest()


def parts(mail: EmailMessage) -> Iterator[EmailMessage]:
    """Yield the parts of a mail that are not mails themselves, at most 200."""
    waiting = [mail]
    for _ in range(MAX_PARTS):
        if not waiting:
            return
        part = waiting.pop(0)
        if part.get_content_maintype() == "multipart" and part.is_multipart():
            inner = part.get_payload()
            waiting[:0] = [one for one in inner if isinstance(one, EmailMessage)]
        elif part.get_content_maintype() != "message":
            yield part


def flowed(mail: EmailMessage) -> str:
    """Return all text that a mail program would show: the plain parts, or the HTML ones where those are blank."""
    plain: list[str] = []
    html: list[str] = []
    for part in parts(mail):
        if part.get_content_maintype() != "text" or part.get_content_disposition() == "attachment":
            continue
        text = decoded(part)
        if part.get_content_subtype() == "html":
            html.append(html_text(text))
        elif part.get_content_subtype() == "plain":
            is_flowed = str(part.get_param("format", "")).lower() == "flowed"
            plain.append(unflowed(text) if is_flowed else text)
    return "\n".join(plain) if any(text.strip() for text in plain) else "\n".join(html)


def decoded(part: EmailMessage) -> str:
    """Return a part's text; an unknown or wrong charset never loses it."""
    payload = part.get_payload(decode=True)
    octets = payload if isinstance(payload, bytes) else b""
    for charset in (part.get_content_charset("utf-8"), "utf-8", "cp1252"):
        try:
            return octets.decode(charset)
        except (LookupError, ValueError):
            continue
    return octets.decode("latin-1")


def unflowed(text: str) -> str:
    """Return format=flowed text with its soft line breaks closed (RFC 3676, section 4)."""
    lines: list[str] = []
    is_open = False
    for line in text.replace("\r\n", "\n").split("\n"):
        mark = line[: len(line) - len(line.lstrip(">"))]
        words = line[len(mark) :].removeprefix(" ")
        if is_open and lines and quote_of(lines[-1]) == mark:
            lines[-1] += words
        else:
            lines.append(f"{mark} {words}" if mark else words)
        is_open = words.endswith(" ") and words != "-- "
    return "\n".join(lines)


def quote_of(line: str) -> str:
    """Return the quote marks that a line begins with."""
    return line[: len(line) - len(line.lstrip(">"))]
