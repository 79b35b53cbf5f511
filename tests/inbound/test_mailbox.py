"""A real mailbox: mail goes through a real SMTP server, and is read back through Dovecot's IMAP."""

import socket
import threading
import tracemalloc
from collections.abc import Callable, Iterator
from datetime import UTC, datetime, timedelta
from typing import BinaryIO, cast

import pytest

from reminders.channels.email import EmailChannel
from reminders.core.channel import Inbound, MailProgress, Outgoing
from reminders.errors import CannotSay
from reminders.inbound.mailbox import ImapMailbox, build
from reminders.settings import MailServer, Settings
from reminders.settings.servers import mail_server
from tests.standins.mail import ImapServer, SmtpServer, free_port, has_dovecot

CLINIC = "Elm Clinic <clinic@example.org>"


def real_server(test: Callable[..., None]) -> Callable[..., None]:
    """Mark a test that needs Dovecot."""
    reason = "needs Dovecot's IMAP server (Debian: dovecot-imapd)"
    return pytest.mark.mailserver(pytest.mark.skipif(not has_dovecot, reason=reason)(test))


@pytest.fixture
def imap() -> Iterator[ImapServer]:
    with ImapServer() as running:
        yield running


@pytest.fixture
def box(imap: ImapServer) -> ImapMailbox:
    return ImapMailbox(mail_server("REMINDERS_IMAP_URL", imap.url, "imap"))


def answer(words: str, number: int = 1, more: str = "") -> bytes:
    """Return an answering mail."""
    return (
        f"From: Ana <ana@example.org>\r\nTo: clinic@example.org\r\nSubject: Re: Exercises\r\n"
        f"Message-ID: <{number}@mail.example.org>\r\n{more}\r\n{words}\r\n"
    ).encode()


@real_server
def test_a_mail_of_ours_is_answered_and_the_answer_names_it(imap: ImapServer, box: ImapMailbox) -> None:
    with SmtpServer(deliver=imap.add) as smtp:
        ours = EmailChannel(MailServer("127.0.0.1", smtp.controller.port), CLINIC, b"secret")
        receipt = ours.send(Outgoing(key="reminder:7:2027-03-01", to="ana@example.org", body="Hola ñ", subject="Hoy"))
        hers = EmailChannel(MailServer("127.0.0.1", smtp.controller.port), "ana@example.org", b"other")
        hers.send(
            Outgoing(
                key="x",
                to="clinic+1c-k3J5h7_9f2@example.org",
                body="Sí, hecho, dolor 3",
                subject="Re: Hoy",
                headers={"In-Reply-To": receipt, "Auto-Submitted": "no"},
            )
        )
    first, second = box.fetch(None).inbound
    assert (first.text, first.automatic) == ("Hola ñ", True)
    assert (second.text, second.automatic, second.answers) == ("Sí, hecho, dolor 3", False, (receipt,))
    assert (second.address, second.reply_token) == ("ana@example.org", "1c-k3J5h7_9f2")
    assert timedelta(0) <= datetime.now(UTC) - second.received_at < timedelta(minutes=1)


@real_server
def test_progress_is_kept_by_the_caller_and_each_mail_comes_once(imap: ImapServer, box: ImapMailbox) -> None:
    for number in range(5):
        imap.add(answer(f"pain {number}", number))
    first = box.fetch(None, limit=3)
    assert ([one.text for one in first.inbound], first.more) == (["pain 0", "pain 1", "pain 2"], True)
    second = box.fetch(first.progress, limit=3)
    assert ([one.text for one in second.inbound], second.more) == (["pain 3", "pain 4"], False)
    assert box.fetch(second.progress).inbound == ()
    imap.add(answer("pain 5", 5))
    assert [one.text for one in box.fetch(second.progress).inbound] == ["pain 5"]
    assert [one.text for one in box.fetch(None, limit=3).inbound] == ["pain 0", "pain 1", "pain 2"], "nothing was lost"


@real_server
def test_reading_leaves_the_mailbox_as_it_was(imap: ImapServer, box: ImapMailbox) -> None:
    imap.add(answer("pain 3"))
    box.fetch(None)
    with box.opened() as (client, _):
        client.select_folder("INBOX")
        (flags,) = client.get_flags(client.search()).values()
    assert b"\\Seen" not in flags


@real_server
def test_a_rebuilt_mailbox_is_read_again_and_each_mail_keeps_its_name(imap: ImapServer, box: ImapMailbox) -> None:
    for number in range(3):
        imap.add(answer(f"pain {number}", number))
    before = box.fetch(None)
    imap.rebuild()
    after = box.fetch(before.progress)
    assert after.progress.validity != before.progress.validity
    assert {one.provider_id for one in after.inbound} == {one.provider_id for one in before.inbound}
    assert len({one.provider_id for one in before.inbound}) == 3


def large(words: str, megabytes: int = 20) -> bytes:
    """Return a mail with words, a picture of many megabytes, and more words behind it."""
    line = b"QUJD" * 18 + b"\r\n"
    picture = line * (megabytes * 1_000_000 // len(line))
    part = b"--b\r\nContent-Type: "
    return (
        answer("", more='MIME-Version: 1.0\r\nContent-Type: multipart/mixed;\r\n boundary="b"\r\n')
        + part
        + b"text/plain; charset=utf-8\r\nContent-Transfer-Encoding: 8bit\r\n\r\n"
        + words.encode()
        + b"\r\n"
        + part
        + b"image/jpeg\r\nContent-Transfer-Encoding: base64\r\n\r\n"
        + picture
        + part
        + b'multipart/alternative; boundary="c"\r\n\r\n--c\r\nContent-Type: text/plain\r\n\r\nbehind it\r\n--c--\r\n'
        + b"--b--\r\n"
    )


@real_server
def test_a_mail_of_20_megabytes_is_read_without_loading_it(imap: ImapServer, box: ImapMailbox) -> None:
    imap.add(large("Me caí, dolor 7"))
    imap.add(answer("pain 3", 2))
    tracemalloc.start()
    big, small = box.fetch(None).inbound
    _, peak = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    assert big.text.split("\n") == ["Me caí, dolor 7", "behind it"]
    assert (big.pictures, big.address, big.subject) == (1, "ana@example.org", "Re: Exercises")
    assert len(big.raw) < 2_000
    assert peak < 5_000_000
    assert small.text == "pain 3"


@real_server
def test_one_plain_text_of_many_megabytes_gives_its_beginning(imap: ImapServer, box: ImapMailbox) -> None:
    imap.add(answer("I fell\r\n" + "x" * 70 + "\r\n" + ("y" * 70 + "\r\n") * 40_000))
    (inbound,) = box.fetch(None).inbound
    assert inbound.text.startswith("I fell")
    assert len(inbound.raw) < 300_000


@real_server
def test_a_thousand_mails_come_in_batches(imap: ImapServer, box: ImapMailbox) -> None:
    for number in range(230):
        imap.add(answer(f"pain {number % 11}", number))
    found: list[Inbound] = []
    progress, more = None, True
    while more:
        batch = box.fetch(progress)
        assert len(batch.inbound) <= 100
        found += batch.inbound
        progress, more = batch.progress, batch.more
    assert len({one.provider_id for one in found}) == 230


@real_server
def test_a_wrong_password_or_folder_cannot_say(imap: ImapServer) -> None:
    right = mail_server("REMINDERS_IMAP_URL", imap.url, "imap")
    for wrong in (
        MailServer(right.host, right.port, right.user, "m4ple"),
        MailServer(right.host, right.port, right.user, right.password, folder="Nowhere"),
    ):
        with pytest.raises(CannotSay) as caught:
            ImapMailbox(wrong).fetch(None)
        assert "m4ple" not in str(caught.value)


def test_nobody_listening_cannot_say() -> None:
    with pytest.raises(CannotSay):
        ImapMailbox(MailServer("127.0.0.1", free_port())).fetch(MailProgress(1, 7))


def test_a_server_that_never_answers_holds_nobody_up() -> None:
    with socket.create_server(("127.0.0.1", 0)) as listener, pytest.raises(CannotSay):
        ImapMailbox(MailServer("127.0.0.1", listener.getsockname()[1]), answer_seconds=0.3).fetch(None)


class Scripted:
    """An IMAP server of a few words that cuts the line when the body of one mail is asked for."""

    def __init__(self, bad_uid: int, also_parts: bool) -> None:
        self.bad_uid, self.also_parts = bad_uid, also_parts
        self.listener = socket.create_server(("127.0.0.1", 0))
        self.thread = threading.Thread(target=self.serve, daemon=True)
        self.thread.start()

    @property
    def server(self) -> MailServer:
        """Where it listens."""
        return MailServer("127.0.0.1", self.listener.getsockname()[1], "u", "p")

    def close(self) -> None:
        """Stop listening."""
        self.listener.shutdown(socket.SHUT_RDWR)
        self.listener.close()
        self.thread.join()

    def serve(self) -> None:
        """Serve one connection after the other."""
        while True:
            try:
                connection, _ = self.listener.accept()
            except OSError:
                return
            with connection, connection.makefile("rwb") as file:
                self.talk(cast(BinaryIO, file))

    def talk(self, file: BinaryIO) -> None:
        """Answer one connection's commands."""

        def say(text: str) -> None:
            file.write(text.encode() + b"\r\n")
            file.flush()

        say("* OK ready")
        while line := file.readline().decode():
            tag, command = line.split(" ", 1)
            words = command.upper()
            if words.startswith("UID SEARCH"):
                say("* SEARCH 1 2 3")
            elif words.startswith(("EXAMINE", "SELECT")):
                say("* OK [UIDVALIDITY 5] ok")
            elif words.startswith("UID FETCH"):
                if not self.answer_fetch(words, say):
                    return
            elif words.startswith("CAPABILITY"):
                say("* CAPABILITY IMAP4rev1")
            say(f"{tag} OK done")

    def answer_fetch(self, words: str, say: Callable[[str], None]) -> bool:
        """Answer a FETCH; False when the line is to be cut."""
        uid = int(words.split()[2])
        if "RFC822.SIZE" in words:
            say(f'* {uid} FETCH (UID {uid} RFC822.SIZE 40 INTERNALDATE "01-Mar-2027 09:00:00 -0500")')
            return True
        is_head = "HEADER]" in words
        if uid == self.bad_uid and (not is_head) and ("BODY.PEEK[]" in words or self.also_parts):
            return False
        if "BODYSTRUCTURE" in words:
            say(f'* {uid} FETCH (UID {uid} BODYSTRUCTURE ("TEXT" "PLAIN" NIL NIL NIL "7BIT" 8 1))')
            return True
        name = "BODY[HEADER]" if is_head else "BODY[TEXT]<0>" if "TEXT]" in words else "BODY[]"
        body = f"Subject: mail {uid}\r\n\r\n" if is_head else f"pain {uid}"
        content = body if name != "BODY[]" else f"Subject: mail {uid}\r\n\r\n{body}"
        say(f"* {uid} FETCH (UID {uid} {name} {{{len(content)}}}\r\n{content})")
        return True


@pytest.mark.parametrize(
    ("also_parts", "expected"), [(False, "pain 2"), (True, "")], ids=["its parts come", "its head"]
)
def test_a_mail_that_breaks_the_line_is_asked_for_with_less_and_never_stops_the_rest(
    also_parts: bool, expected: str
) -> None:
    scripted = Scripted(bad_uid=2, also_parts=also_parts)
    box = ImapMailbox(scripted.server, answer_seconds=2)
    first = box.fetch(None)
    assert ([one.text for one in first.inbound], first.progress.uid, first.more) == (["pain 1"], 1, True)
    for _ in range(10):
        try:
            rest = box.fetch(first.progress)
            break
        except CannotSay:
            continue
    scripted.close()
    assert [(one.text, one.subject) for one in rest.inbound] == [(expected, "mail 2"), ("pain 3", "mail 3")]
    assert rest.inbound[0].received_at == datetime(2027, 3, 1, 14, 0, tzinfo=UTC)
    assert (rest.progress, rest.more) == (MailProgress(5, 3), False)


def test_without_a_setting_there_is_no_mailbox() -> None:
    assert build(Settings()) is None
    assert build(Settings(imap=MailServer("127.0.0.1", 143))) is not None
