"""Mail through an SMTP server, by the standard library. What a mail says is rendered before it comes here.

A header can hold nothing but one line: what would break out of it is refused or flattened before the mail is made.
"""

import re
import smtplib
import ssl
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import datetime
from email.errors import MessageError
from email.headerregistry import Address
from email.message import EmailMessage
from email.policy import SMTP
from email.utils import format_datetime, parseaddr

from reminders.core.channel import Outgoing
from reminders.core.mail_ids import message_id, reply_address
from reminders.core.provider_codes import is_final
from reminders.errors import BadInput, CannotSay, SendError
from reminders.settings import MailServer, Settings
from reminders.settings.key_file import signing_keys

TIMEOUT_SECONDS = 40.0
# Headers that a mail of ours may be given from outside this file; anything else is a mistake of ours.
OPEN_HEADERS = frozenset({"auto-submitted", "in-reply-to", "references", "message-id", "list-id"})
CONTROL = re.compile(r"[\x00-\x1f\x7f-\x9f\u2028\u2029]+")
# Bodies keep to 76 signs a line (RFC 2045, section 6.7). Headers are written with the longest line that RFC 5322,
# section 2.1.1, allows: folding at 78 would tear a long Message-ID or address apart into encoded words.
POLICY = SMTP
HEADER_POLICY = SMTP.clone(max_line_length=998)


class EmailChannel:
    """Hands mails to one SMTP server."""

    def __init__(self, server: MailServer, sender: str, secret: bytes) -> None:
        self.server, self.sender, self.secret = server, sender, secret

    def send(self, outgoing: Outgoing) -> str:
        """Hand one mail over and return its Message-ID.

        Raises SendError, `unknown` when the connection was cut after the mail was on its way.
        """
        try:
            mail = self.mail(outgoing)
            content = mail.as_bytes(policy=HEADER_POLICY)
        except BadAddress:
            raise SendError("The mail's address is none.", permanent=True, code="smtp:553 5.1.3") from None
        except (ValueError, IndexError, MessageError, UnicodeError):
            raise SendError("The mail has a header that cannot be sent.", permanent=True, code="smtp:554") from None
        name, to = str(mail["Message-ID"]), str(mail["To"])
        with refusals():
            server = self.connected()
        try:
            with refusals():
                given = server.mail(
                    parseaddr(self.sender)[1], [f"SIZE={len(content)}"] if server.has_extn("size") else []
                )
                refuse(given)
                refuse(server.rcpt(to))
            with refusals(unknown=True):
                refuse(server.data(content))
        finally:
            leave(server)
        return name

    def find(
        self, outgoing: Outgoing, since: datetime, taken: frozenset[str], until: datetime | None = None
    ) -> str | None:
        """Raise CannotSay: a mail server keeps no list. Sent again, the mail has the same Message-ID."""
        raise CannotSay("A mail server cannot say whether it has a mail.")

    def mail(self, outgoing: Outgoing) -> EmailMessage:
        """Return the mail as it goes out; raises ValueError for a header that would hold more than its own line."""
        mail = EmailMessage(policy=POLICY)
        name, address = parseaddr(self.sender)
        mail["From"] = Address(name, addr_spec=address)
        mail["To"] = recipient(outgoing.to)
        mail["Subject"] = CONTROL.sub(" ", outgoing.subject).strip()
        if outgoing.claimed_at:
            mail["Date"] = format_datetime(outgoing.claimed_at)
        if outgoing.reply_token:
            mail["Reply-To"] = reply_address(self.sender, outgoing.reply_token)
        given = {name.lower(): one_line(value) for name, value in outgoing.headers.items()}
        if not given.keys() <= OPEN_HEADERS:
            raise ValueError("a mail was given a header that is not its own to set")
        mail["Message-ID"] = given.pop("message-id", message_id(outgoing.key, self.secret, self.sender))
        # RFC 3834, section 5: what no person wrote says so, and other machines then keep quiet.
        mail["Auto-Submitted"] = given.pop("auto-submitted", "auto-generated")
        for name, value in given.items():
            mail[name.title()] = value
        if outgoing.unsubscribe_url:
            # RFC 8058, section 3.1: both headers together make the mail program's one-click button.
            mail["List-Unsubscribe"] = f"<{one_line(outgoing.unsubscribe_url)}>"
            mail["List-Unsubscribe-Post"] = "List-Unsubscribe=One-Click"
        mail.set_content(outgoing.body, charset="utf-8", cte="quoted-printable")
        if outgoing.html:
            mail.add_alternative(outgoing.html, subtype="html", charset="utf-8", cte="quoted-printable")
        return mail

    def connected(self) -> smtplib.SMTP:
        """Return a connection that is greeted, encrypted and signed in."""
        where, context = self.server, ssl.create_default_context()
        if where.tls == "full":
            server: smtplib.SMTP = smtplib.SMTP_SSL(where.host, where.port, timeout=TIMEOUT_SECONDS, context=context)
        else:
            server = smtplib.SMTP(where.host, where.port, timeout=TIMEOUT_SECONDS)
        try:
            if where.tls == "start":
                server.starttls(context=context)
            server.ehlo_or_helo_if_needed()
            if where.user:
                server.login(where.user, where.password)
        except Exception:
            server.close()
            raise
        return server


class BadAddress(ValueError):
    """What a mail should go to is not one bare address."""


def recipient(text: str) -> Address:
    """Return the one address a mail goes to; raises BadAddress for several, a name with it, or signs beyond ASCII."""
    try:
        found = Address(addr_spec=one_line(text))
    except (ValueError, IndexError, MessageError):
        raise BadAddress from None
    if not text.isascii() or not found.domain or found.addr_spec != text:
        raise BadAddress
    return found


def one_line(text: str) -> str:
    """Return the text; raises ValueError when it would not stay on its line."""
    if CONTROL.search(text):
        raise ValueError("a header holds a control character")
    return text


def refuse(answer: tuple[int, bytes]) -> None:
    """Raise what smtplib raises itself for an answer that is not a yes (RFC 5321, section 4.2.1)."""
    if not 200 <= answer[0] < 300:
        raise smtplib.SMTPResponseException(answer[0], answer[1].decode("utf-8", "replace"))


@contextmanager
def refusals(*, unknown: bool = False) -> Iterator[None]:
    """Turn what a mail server or the way to it does into SendError; `unknown`: a lost connection may have delivered."""
    try:
        yield
    except smtplib.SMTPResponseException as error:
        words = error.smtp_error.decode("utf-8", "replace") if isinstance(error.smtp_error, bytes) else error.smtp_error
        code = smtp_code(error.smtp_code, words)
        raise SendError(f"The mail server refused the mail ({code}).", permanent=is_final(code), code=code) from None
    except smtplib.SMTPNotSupportedError:
        raise SendError("The mail server lacks what the settings ask for.", code="smtp:503") from None
    except (smtplib.SMTPException, OSError):
        words = "The call to the mail server was cut off." if unknown else "The mail server could not be reached."
        raise SendError(words, unknown=unknown) from None


def smtp_code(reply: int, words: str) -> str:
    """Return the server's answer as `provider_codes` takes it, with its enhanced code where it has one (RFC 2034)."""
    enhanced = re.match(r"([245]\.\d{1,3}\.\d{1,3})\b", words)
    if not 400 <= reply < 600:
        return "smtp:451"
    return f"smtp:{reply} {enhanced[1]}" if enhanced else f"smtp:{reply}"


def leave(server: smtplib.SMTP) -> None:
    """End a connection; what the server says to that changes nothing."""
    try:
        server.quit()
    except (smtplib.SMTPException, OSError):
        server.close()


def build(settings: Settings) -> EmailChannel:
    """Return the channel for mail; raises BadInput when a setting is missing."""
    if settings.smtp is None or not settings.email_from:
        raise BadInput("REMINDERS_SMTP_URL and REMINDERS_EMAIL_FROM must be given when REMINDERS_EMAIL is smtp.")
    # The oldest key: while the secret is changed, a mail that is tried again keeps its Message-ID.
    return EmailChannel(settings.smtp, settings.email_from, signing_keys(settings)[-1].encode())
