"""Mails that no person wrote: automatic answers, list mail and bounces. They are kept and read, and never answered."""

import re
from email.message import EmailMessage, Message

from reminders.core.mail_ids import message_ids

# The Message-IDs that we make, see core.mail_ids.message_id.
OURS = re.compile(r"<r\.[0-9a-f]{40}@[^<>\s]{1,250}>")
STATUS = re.compile(r"\b([245]\.\d{1,3}\.\d{1,3})\b")
# A server's final refusal of a mail (RFC 5321, section 4.2.3), or what mail servers say instead.
REFUSED = re.compile(r"\b55[0-4]\b|\bpermanent (error|failure)\b", re.IGNORECASE)
DAEMON = re.compile(r"\b(mailer-daemon|postmaster)@|\bmailer-daemon\b", re.IGNORECASE)
# Programs that answer for a person without saying so in a header (common practice, no source).
AWAY = re.compile(
    r"\s*(auto(matic)?[- ]?(reply|response)\b|out of (the )?office\b|respuesta autom[aá]tica|fuera de (la )?oficina)",
    re.IGNORECASE,
)


def is_automatic(mail: EmailMessage, subject: str) -> bool:
    """Whether a mail must never be answered (RFC 3834, section 2): it says so, or its look does.

    `subject` is the decoded one.
    """
    submitted = first(mail, "Auto-Submitted").partition(";")[0].strip().lower()
    precedence = first(mail, "Precedence").strip().lower()
    return (
        submitted not in ("", "no")
        or precedence in ("bulk", "junk", "list", "auto_reply")
        or any(first(mail, name) for name in ("List-Id", "List-Unsubscribe", "X-Autoreply", "X-Autorespond"))
        or is_from_daemon(mail)
        or bool(AWAY.match(subject))
        or mail.get_content_type() == "multipart/report"
    )


def is_from_daemon(mail: EmailMessage) -> bool:
    """Whether a mail came from a mail server itself: the null sender, or a daemon's name."""
    return first(mail, "Return-Path").replace(" ", "") == "<>" or is_named_daemon(mail)


def is_named_daemon(mail: EmailMessage) -> bool:
    """Whether a mail bears a mail server's name as its sender."""
    return bool(DAEMON.search(first(mail, "From")))


def bounce(mail: EmailMessage, text: str) -> tuple[str, str]:
    """Return the Message-ID of ours that could not be delivered and why, two empty texts for anything else.

    A report that delivery only takes longer is no bounce (RFC 3464, section 2.3.3, Action). Without a report only a
    daemon's own words that name a failure are one: an absence note has the null sender too (RFC 3834, section 3.3).
    """
    is_report = mail.get_content_type() == "multipart/report"
    if not (is_report or is_named_daemon(mail)):
        return "", ""
    code = report_status(mail) if is_report else loose_status(text)
    lost = lost_id(mail, text) if code else ""
    return (lost, f"smtp:{code}") if lost else ("", "")


def report_status(mail: EmailMessage) -> str:
    """Return the status of the first recipient that a delivery report says failed, empty where none did."""
    for part in mail.walk():
        if part.get_content_type() != "message/delivery-status":
            continue
        for block in part.get_payload() if part.is_multipart() else []:
            if isinstance(block, Message) and str(block.get("Action", "")).strip().lower() == "failed":
                found = STATUS.search(str(block.get("Status", "")))
                return found[1] if found else "5.0.0"
    return ""


def loose_status(text: str) -> str:
    """Return the status of failure that a bounce without a report names in its words, empty where it names none."""
    found = STATUS.search(text)
    if found:
        return found[1] if found[1].startswith("5") else ""
    return "5.0.0" if REFUSED.search(text) else ""


def lost_id(mail: EmailMessage, text: str) -> str:
    """Return the Message-ID of the mail that a bounce gives back."""
    for part in mail.walk():
        if part.get_content_type() == "message/rfc822" and part.is_multipart():
            inner = part.get_payload(0)
            if isinstance(inner, Message) and (found := message_ids(str(inner.get("Message-ID", "")))):
                return found[0]
        if part.get_content_type() == "text/rfc822-headers":
            content = part.get_payload(decode=True)
            named = re.search(
                rb"(?im)^message-id:\s*(<[^<>\s]+@[^<>\s]+>)", content if isinstance(content, bytes) else b""
            )
            if named:
                return named[1].decode("ascii", "replace")
    mentioned = OURS.search(text) or OURS.search(f"{first(mail, 'In-Reply-To')} {first(mail, 'References')}")
    return mentioned[0] if mentioned else ""


def first(mail: EmailMessage, name: str) -> str:
    """Return the raw text of a header, empty where it is missing; a malformed one cannot fail here."""
    found = (str(text) for key, text in mail.raw_items() if key.lower() == name.lower())
    return " ".join(next(found, "").split())
