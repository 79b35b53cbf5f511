"""The mailbox that answers come to, read by IMAP without changing anything in it.

How far it has been read is kept by the caller, in the transaction that keeps the mails. What a mail says is in
`inbound.mail`.
"""

import ssl
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from dataclasses import replace
from datetime import UTC, datetime
from typing import Any

from imapclient import IMAPClient, SocketTimeout
from imapclient.exceptions import IMAPClientError

from reminders.core.channel import Inbound, MailBatch, MailProgress
from reminders.errors import CannotSay
from reminders.inbound import mail
from reminders.settings import MailServer, Settings

CONNECT_SECONDS, ANSWER_SECONDS = 15.0, 60.0
BATCH = 100
# A mail up to this size is kept whole, 1 MiB; of a larger one the head and the beginning of its text parts.
WHOLE_OCTETS = 1_048_576
PART_OCTETS = 262_144
MOST_PARTS = 10
# A mail that breaks the connection this often is asked for with less and less of it.
TRIES = 2
BOUNDARY = b"reminders-parts-of-a-larger-mail"
EXPECTED = (IMAPClientError, OSError, ssl.SSLError, ValueError, KeyError, IndexError, TypeError, AssertionError)


class ImapMailbox:
    """One mailbox; a new connection for each fetch."""

    def __init__(self, server: MailServer, answer_seconds: float = ANSWER_SECONDS) -> None:
        self.server, self.answer_seconds = server, answer_seconds
        self.failures: dict[tuple[int, int], int] = {}

    def fetch(self, progress: MailProgress | None, limit: int = BATCH) -> MailBatch:
        """Return the next mails, at most `limit`, and the progress once they are kept.

        A mailbox with a new UIDVALIDITY is read from its beginning: a mail met again has the same provider id. When
        the connection breaks midway, what came before it is returned. Raises CannotSay when nothing could be read.
        """
        try:
            with self.opened() as (client, validity):
                start = progress.uid if progress and progress.validity == validity else 0
                # A server answers "N:*" with its last mail even when that is older (RFC 3501, section 6.4.8).
                uids = sorted(uid for uid in client.search(["UID", f"{start + 1}:*"]) if uid > start)
                return self.batch(client, validity, start, uids, limit)
        except EXPECTED:
            raise CannotSay("The mailbox of REMINDERS_IMAP_URL cannot be read.") from None

    @contextmanager
    def opened(self) -> Iterator[tuple[Any, int]]:
        """Yield a signed-in client with the folder open for reading only, and its UIDVALIDITY."""
        where, context = self.server, ssl.create_default_context()
        client = IMAPClient(
            where.host,
            where.port,
            ssl=where.tls == "full",
            ssl_context=context if where.tls == "full" else None,
            timeout=SocketTimeout(connect=min(CONNECT_SECONDS, self.answer_seconds), read=self.answer_seconds),
        )
        # Else the library turns INTERNALDATE into a naive local time.
        client.normalise_times = False
        try:
            if where.tls == "start":
                client.starttls(context)
            client.login(where.user, where.password)
            chosen = client.select_folder(where.folder, readonly=True)
            yield client, int(chosen[b"UIDVALIDITY"])
        finally:
            leave(client)

    def batch(self, client: Any, validity: int, start: int, uids: list[int], limit: int) -> MailBatch:
        """Return the mails of these UIDs up to the limit, or up to the one at which the connection broke."""
        found: list[Inbound] = []
        done = start
        for uid in uids[:limit]:
            tries = self.failures.get((validity, uid), 0)
            try:
                inbound = fetched(client, uid, tries)
            except EXPECTED:
                self.failures[validity, uid] = tries + 1
                if not found:
                    raise
                return MailBatch(tuple(found), MailProgress(validity, done), more=True)
            self.failures.pop((validity, uid), None)
            if inbound is not None:
                found.append(inbound)
            done = uid
        return MailBatch(tuple(found), MailProgress(validity, done), more=len(uids) > limit)


def fetched(client: Any, uid: int, tries: int) -> Inbound | None:
    """Return one mail, None when it was removed meanwhile.

    Of a large mail, or of one that broke the connection before, only the text parts are asked for, at last its head.
    """
    facts = client.fetch([uid], ["RFC822.SIZE", "INTERNALDATE"]).get(uid)
    if facts is None:
        return None
    received_at: datetime = facts[b"INTERNALDATE"].astimezone(UTC)
    if facts[b"RFC822.SIZE"] <= WHOLE_OCTETS and tries < TRIES:
        content = item(client, uid, "BODY.PEEK[]")
    elif tries < 2 * TRIES:
        return abridged(client, uid, received_at)
    else:
        content = item(client, uid, "BODY.PEEK[HEADER]")
    return mail.inbound_of(content, received_at)


def item(client: Any, uid: int, name: str) -> bytes:
    """Return one item of a mail; the server leaves PEEK out of its answer's name, and the length of a part."""
    answer = client.fetch([uid], [name])[uid]
    wanted = name.replace(".PEEK", "").partition("<")[0].encode("ascii")
    content = next(value for key, value in answer.items() if key.partition(b"<")[0] == wanted)
    return content if isinstance(content, bytes) else b""


def abridged(client: Any, uid: int, received_at: datetime) -> Inbound:
    """Return a mail read from its head and the beginnings of its text parts, so that 20 MB are never in memory."""
    head = item(client, uid, "BODY.PEEK[HEADER]")
    structure = client.fetch([uid], ["BODYSTRUCTURE"])[uid][b"BODYSTRUCTURE"]
    if not structure.is_multipart:
        return mail.inbound_of(head + item(client, uid, f"BODY.PEEK[TEXT]<0.{PART_OCTETS}>"), received_at)
    sections = [section for section, is_text in sections_of(structure, "") if is_text]
    pictures = sum(not is_text for _, is_text in sections_of(structure, ""))
    pieces = [
        item(client, uid, f"BODY.PEEK[{section}.MIME]").rstrip(b"\r\n")
        + b"\r\n\r\n"
        + item(client, uid, f"BODY.PEEK[{section}]<0.{PART_OCTETS}>")
        for section in sections[:MOST_PARTS]
    ]
    body = b"".join(b"--" + BOUNDARY + b"\r\n" + piece + b"\r\n" for piece in pieces)
    kind = b'Content-Type: multipart/mixed; boundary="' + BOUNDARY + b'"\r\n\r\n'
    content = without_content_headers(head) + kind + body + b"--" + BOUNDARY + b"--\r\n"
    return replace(mail.inbound_of(content, received_at), pictures=pictures)


def sections_of(structure: Any, prefix: str) -> Iterator[tuple[str, bool]]:
    """Yield the section numbers of texts (True) and pictures (False), mails inside the mail left out.

    How sections are numbered: RFC 3501, section 6.4.5.
    """
    for number, part in enumerate(structure[0], 1):
        section = f"{prefix}{number}"
        if part.is_multipart:
            yield from sections_of(part, f"{section}.")
        elif bytes(part[0]).lower() == b"image":
            yield section, False
        elif bytes(part[0]).lower() == b"text" and bytes(part[1]).lower() in (b"plain", b"html"):
            yield section, True


def without_content_headers(head: bytes) -> bytes:
    """Return a mail's head, ready for another line, without the headers that speak of its former body."""
    kept: list[bytes] = []
    is_kept = True
    for line in head.replace(b"\r\n", b"\n").rstrip(b"\n").split(b"\n"):
        if not line[:1].isspace():
            is_kept = not line.lower().startswith((b"content-", b"mime-version"))
        if is_kept:
            kept.append(line)
    return b"\r\n".join([*kept, b"MIME-Version: 1.0", b""])


def leave(client: Any) -> None:
    """End a connection whatever state it is in."""
    try:
        client.logout()
    except (IMAPClientError, OSError):
        with suppress(IMAPClientError, OSError):
            client.shutdown()


def build(settings: Settings) -> ImapMailbox | None:
    """Return the mailbox of the settings, None where there is none."""
    return ImapMailbox(settings.imap) if settings.imap else None
